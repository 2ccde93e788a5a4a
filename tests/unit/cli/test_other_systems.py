"""What other systems do otherwise, tried here by simulation: Windows and macOS."""

from __future__ import annotations

import os
from pathlib import Path

import platformdirs
import pytest

from blockdsl.cli.cache import usual_folder
from blockdsl.export.naming import Taken, slug
from tests.unit.cli.pinwheel import PINWHEEL, Run


def test_patterns_are_matched_where_the_shell_leaves_that_to_us(folder: Path, run: Run) -> None:
    (folder / "second.block").write_text(
        PINWHEEL.replace("Pinwheel", "Second").replace("fog\\slate", "frog\\slate"), "utf-8"
    )

    told = run("check", "*.block").told

    assert "second.block:5:7: error[name-unknown]" in told
    assert told.endswith("1 error\n")


def test_a_file_whose_name_is_a_pattern_is_meant_itself(folder: Path, run: Run) -> None:
    (folder / "[ab].block").write_text(PINWHEEL, encoding="utf-8")
    (folder / "a.block").write_text("block\n", encoding="utf-8")

    assert run("check", "[ab].block").status == 0
    assert "there is no such file" in run("check", "?x?.block").told


@pytest.mark.parametrize("title", ["Con", "AUX", "nul", "COM1", "lpt9", "Prn", "com¹"])
def test_no_output_has_a_name_that_windows_keeps_for_itself(title: str) -> None:
    """Reserved names with any ending, as Windows documents them: CON, PRN, AUX, NUL, COM1-9, LPT1-9 (from memory)."""
    assert slug(title) == f"{title.lower()}-block"
    assert Taken().take(title) == f"{title.lower()}-block"


def test_a_name_that_only_begins_so_is_free() -> None:
    assert [slug(title) for title in ("Console", "Aux Table", "Com", "com10")] == [
        "console",
        "aux-table",
        "com",
        "com10",
    ]


def test_a_use_with_other_capitals_is_refused_where_the_system_would_find_it(
    folder: Path, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A link with the other name makes a folder here behave as one that tells no capitals apart."""
    (folder / "Palette.block").symlink_to(folder / "palette.block")
    listed = os.listdir
    monkeypatch.setattr(os, "listdir", lambda place: [name for name in listed(place) if name != "Palette.block"])
    (folder / "mine.block").write_text(PINWHEEL.replace("palette.block", "Palette.block"), encoding="utf-8")

    ended = run("check", "mine.block")

    assert ended.status == 1
    assert "error[use-missing]" in ended.told
    assert "the file is called `palette.block`" in ended.told


def test_a_sheet_that_a_viewer_holds_open_is_told_by_name_and_the_old_one_stays(
    folder: Path, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    run("build", "pinwheel.block", "-o", "out", "--only", "sheet")
    sheet = folder / "out" / "pinwheel.sheet.pdf"
    before = sheet.read_bytes()
    (folder / "pinwheel.block").write_text(PINWHEEL.replace("6 in", "9 in"), encoding="utf-8")
    replace = Path.replace

    def held(self: Path, target: Path) -> Path:
        if Path(target).name == sheet.name:
            raise PermissionError(13, "The process cannot access the file", str(self), 32, str(target))
        return replace(self, target)

    monkeypatch.setattr(Path, "replace", held)
    moved = os.replace

    def held_too(source: str, target: str) -> None:
        if Path(target).name == sheet.name:
            raise PermissionError(13, "The process cannot access the file", str(source), 32, str(target))
        moved(source, target)

    monkeypatch.setattr(os, "replace", held_too)

    ended = run("build", "pinwheel.block", "-o", "out", "--only", "sheet")

    assert ended.status == 1
    assert "pinwheel.sheet.pdf cannot be written" in ended.told
    assert "if another program shows it, close it there" in ended.told
    assert sheet.read_bytes() == before


@pytest.mark.parametrize(
    ("system", "place"),
    [
        ("macos.MacOS", "Library/Caches/blockdsl"),
        ("unix.Unix", ".cache/blockdsl"),
    ],
)
def test_the_cache_lies_where_the_system_keeps_such_things(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, system: str, place: str
) -> None:
    """Apple's File System Programming Guide and the XDG Base Directory Specification, by platformdirs."""
    module, _, name = system.partition(".")
    chosen = getattr(__import__(f"platformdirs.{module}", fromlist=[name]), name)
    monkeypatch.setenv("HOME", str(tmp_path))
    monkeypatch.delenv("XDG_CACHE_HOME", raising=False)
    monkeypatch.setattr(platformdirs, "PlatformDirs", chosen)

    assert usual_folder() == tmp_path / place
