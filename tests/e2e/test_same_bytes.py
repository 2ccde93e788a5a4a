"""The same file gives the same bytes wherever and by whomever it is built."""

import os
import shutil
import subprocess
from pathlib import Path

import pytest

from tests.outputs import bytes_below

Built = dict[str, bytes]


SMALL = """
use "palette.block"
use "harbour-light.block"

quilt "Breakwater Mat"
  set straight 2 x 2 of "Harbour Light"
  border 2 in slate mitred
  binding 2 1/4 in slate

book "A Small Sampler"
  text "text/intro.md"
  chapter "Lights"
    block "Harbour Light" sizes 6 12 in
    quilt "Breakwater Mat"
  techniques
"""
"""A book with all kinds of pages; `make trial` builds the whole demo so."""


def small_demo(project: Path, folder: Path) -> Path:
    """The palette and a block of the demo, and a book of that block and a small quilt."""
    demo = project / "library" / "demo"
    shutil.copytree(demo / "text", folder / "text")
    for name in ("palette.block", "harbour-light.block"):
        shutil.copy(demo / name, folder)
    (folder / "sampler.block").write_text(SMALL, encoding="utf-8")
    return folder


def build(folder: Path, command: str, demo: Path, umask: int = 0o022, **environment: str) -> Built:
    """Build a copy of a folder of block files, and give all that was written."""
    shutil.copytree(demo, folder)
    names = sorted(path.name for path in folder.glob("*.block"))
    words = ("build", *names, "-o", "out", "--depfile", "out/rules.d")
    ended = subprocess.run(
        (command, *words),
        cwd=folder,
        env={"PATH": os.environ["PATH"], **environment},
        umask=umask,
        capture_output=True,
        timeout=300,
        check=False,
    )
    assert ended.returncode == 0, ended.stderr.decode()
    out = folder / "out"
    return bytes_below(out)


@pytest.fixture(scope="module")
def built(project: Path, blockdsl_command: str, tmp_path_factory: pytest.TempPathFactory) -> tuple[Built, Built]:
    """One folder built twice, under conditions as different as they can be."""
    folder = tmp_path_factory.mktemp("built")
    return built_twice(folder, blockdsl_command, small_demo(project, tmp_path_factory.mktemp("small")))


def built_twice(folder: Path, command: str, demo: Path) -> tuple[Built, Built]:
    """What is built of a folder here, and what by someone else in another place."""
    home = folder / "home of nobody-at-all"
    home.mkdir()
    one = build(folder / "one", command, demo, LC_ALL="C", TZ="UTC", HOME="/nonexistent", PYTHONHASHSEED="1")
    other = build(
        folder / "somewhere-secret" / "zwei und drei",
        command,
        demo,
        umask=0o077,
        LC_ALL="tr_TR.UTF-8",
        TZ="Pacific/Kiritimati",
        HOME=str(home),
        PYTHONHASHSEED="2",
        PYTHONUTF8="0",
        FORCE_COLOR="1",
        COLUMNS="20",
    )
    return one, other


def test_folder_home_language_time_zone_and_terminal_leave_every_byte_as_it_is(built: tuple[Built, Built]) -> None:
    one, other = built
    endings = {".pdf", ".svg", ".md", ".csv", ".xlsx", ".d", ".html", ".css", ".js", ".woff2"}
    assert {Path(name).suffix for name in one} == endings
    assert sorted(one) == sorted(other)
    assert [name for name in one if one[name] != other[name]] == []


def test_no_output_tells_where_it_was_built_or_by_whom(built: tuple[Built, Built]) -> None:
    _, written = built
    told = [name for name, data in written.items() if b"somewhere-secret" in data or b"nobody-at-all" in data]
    assert told == []
