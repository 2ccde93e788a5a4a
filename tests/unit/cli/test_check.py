"""What `check` says, and how it ends."""

import json
from pathlib import Path

import pytest

from tests.unit.cli.pinwheel import PALETTE, PINWHEEL, Run, spoil


def test_a_file_without_problems_is_passed_in_silence(folder: Path, run: Run) -> None:
    ended = run("check", "pinwheel.block")

    assert (ended.status, ended.out, ended.told) == (0, "", "")


def test_a_slip_is_told_with_its_place_its_line_and_a_count_and_ends_with_1(folder: Path, run: Run) -> None:
    spoil(folder / "pinwheel.block")

    ended = run("check", "pinwheel.block")

    lines = ended.told.splitlines()
    assert ended.status == 1
    assert ended.out == ""
    assert lines[0].startswith("pinwheel.block:5:7: error[name-unknown]: there is no fabric")
    assert lines[1] == "5 |   row frog\\slate  fog/slate"
    assert lines[-1] == "1 error"


def test_a_warning_is_told_and_ends_with_0(folder: Path, run: Run) -> None:
    (folder / "spare.block").write_text(
        PALETTE + 'fabric sand "Sand" #d9c7a0\n' + PINWHEEL.split("\n", 1)[1], encoding="utf-8"
    )

    ended = run("check", "spare.block")

    assert ended.status == 0
    assert "spare.block:3:8: warning[fabric-unused]" in ended.told
    assert ended.told.endswith("1 warning\n")


def test_a_slip_in_a_palette_that_two_files_use_is_told_once(folder: Path, run: Run) -> None:
    (folder / "second.block").write_text(PINWHEEL.replace("Pinwheel", "Second"), encoding="utf-8")
    (folder / "palette.block").write_text(PALETTE.replace("#dfe3e0", "#dfe3"), encoding="utf-8")

    ended = run("check", "pinwheel.block", "second.block")

    assert ended.told.count("palette.block:1:") == 1
    assert ended.told.endswith("1 error\n")


def test_a_file_on_standard_input_is_called_stdin_and_finds_what_it_uses_in_the_current_folder(
    folder: Path, run: Run
) -> None:
    assert run("check", "-", typed=PINWHEEL).status == 0
    assert run("check", "-", typed=PINWHEEL.replace("6 in", "6")).told.startswith("<stdin>:4:8: error[")


@pytest.mark.parametrize(
    ("name", "data", "code", "words"),
    [
        ("missing.block", None, "file-unreadable", "no such file"),
        ("folder.block", "folder", "file-unreadable", "it is a folder"),
        ("latin.block", b'block "Ren\xe9e"', "file-unreadable", "byte 11 is not UTF-8 text"),
        ("long.block", b"#" * (1024 * 1024 + 1), "file-too-large", "larger than 1 MiB"),
    ],
)
def test_a_file_that_cannot_be_read_is_a_problem_at_its_first_line(
    folder: Path, run: Run, name: str, data: bytes | str | None, code: str, words: str
) -> None:
    if data == "folder":
        (folder / name).mkdir()
    elif isinstance(data, bytes):
        (folder / name).write_bytes(data)

    ended = run("check", name, "pinwheel.block")

    assert ended.status == 1
    first = ended.told.splitlines()[0]
    assert first.startswith(f"{name}:1:1: error[{code}]: ")
    assert words in first


def test_a_mistyped_name_is_mended_with_the_names_that_are_there(folder: Path, run: Run) -> None:
    assert "help: in that folder there is palette.block, pinwheel.block\n" in run("check", "pinwheal.block").told


def test_json_messages_are_one_object_a_line_and_nothing_else(folder: Path, run: Run) -> None:
    spoil(folder / "pinwheel.block")

    ended = run("check", "--message-format", "json", "pinwheel.block", "missing.block")

    problems = [json.loads(line) for line in ended.told.splitlines()]
    assert ended.status == 1
    assert [(p["file"], p["line"], p["column"], p["code"], p["severity"]) for p in problems] == [
        ("pinwheel.block", 5, 7, "name-unknown", "error"),
        ("missing.block", 1, 1, "file-unreadable", "error"),
    ]


def test_a_file_named_in_two_ways_is_read_once(folder: Path, run: Run) -> None:
    spoil(folder / "pinwheel.block")

    assert run("check", "pinwheel.block", "./pinwheel.block", str(folder / "pinwheel.block")).told.count("error[") == 1


def test_a_file_below_the_current_folder_may_use_what_lies_above_it_there(folder: Path, run: Run) -> None:
    (folder / "deep").mkdir()
    (folder / "deep" / "one.block").write_text(PINWHEEL.replace("palette", "../palette"), encoding="utf-8")

    assert run("check", "deep/one.block").status == 0


def test_a_file_elsewhere_may_use_only_what_lies_beside_or_below_it(
    folder: Path, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    (folder / "deep").mkdir()
    (folder / "deep" / "one.block").write_text(PINWHEEL.replace("palette", "../palette"), encoding="utf-8")
    (folder / "aside").mkdir()
    monkeypatch.chdir(folder / "aside")

    assert "error[use-leaves-project]" in run("check", "../deep/one.block").told
    assert run("check", "../pinwheel.block").status == 0


def test_a_library_file_finds_what_it_uses_in_the_library(folder: Path, run: Run) -> None:
    (folder / "mine.block").write_text(
        'use library "demo/harbour-light"\nblock "Mine"\n  size 6 in\n  row fog\n', encoding="utf-8"
    )
    (folder / "library" / "demo").mkdir(parents=True)
    (folder / "library" / "demo" / "palette.block").write_text("no palette at all\n", encoding="utf-8")

    assert run("check", "mine.block").status == 0
