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


def test_errors_of_one_kind_are_gathered_for_people_and_listed_for_programs(folder: Path, run: Run) -> None:
    """A block twice as wide as its size says: each of its 400 cells is at fault, and one message says so."""
    rows = "".join("  row " + " ".join(["fog/slate"] * 20) + "\n" for _ in range(20))
    text = f'use "palette.block"\n\nblock "Field"\n  size 12 x 6 in\n{rows}'
    (folder / "field.block").write_text(text, encoding="utf-8")

    ended = run("check", "field.block")
    listed = run("check", "field.block", "--message-format", "json")

    assert ended.told.count("error[unit-does-not-fit]") == 1
    assert "   and 399 more like it, in lines 5 to 24\n" in ended.told
    assert ended.told.endswith("400 errors\n")
    assert len(listed.told.splitlines()) == 400


def test_of_many_different_problems_the_first_twenty_are_told(folder: Path, run: Run) -> None:
    lines = "".join(f'fabric f{number} "F" #123456\nfabric f{number} "F" #123456\n' for number in range(30))
    (folder / "twice.block").write_text(lines, encoding="utf-8")

    ended = run("check", "twice.block")

    shown = ended.told.count("twice.block:") - ended.told.count(" = twice.block:")
    assert shown <= 21
    assert "more" in ended.told


def test_after_a_size_that_cannot_be_read_nothing_that_follows_from_it_is_told(folder: Path, run: Run) -> None:
    (folder / "pinwheel.block").write_text(
        PINWHEEL.replace("size 6 in", "size 6 inn").replace("  row slate/fog  slate\\fog\n", ""), encoding="utf-8"
    )

    ended = run("check", "pinwheel.block")

    assert ended.told.count("error[") == 1
    assert "error[length-needs-unit]" in ended.told


# --- putting right ---------------------------------------------------------------------------------

CROOKED = PINWHEEL.replace("6 in", '6"').replace("row fog\\slate  fog", "row fog \\ slate  fog")


def test_what_needs_no_choice_is_put_right_and_what_is_left_is_told(folder: Path, run: Run) -> None:
    path = folder / "pinwheel.block"
    path.write_text(CROOKED.replace("slate/fog", "slat/fog"), encoding="utf-8")
    path.chmod(0o640)

    ended = run("check", "--fix", "pinwheel.block")

    assert path.read_text(encoding="utf-8") == PINWHEEL.replace("slate/fog", "slat/fog")
    assert path.stat().st_mode & 0o777 == 0o640
    # Whether `slat` is `slate`, or a fabric that is still to come, only the maker knows.
    assert ended.status == 1
    assert "error[name-unknown]" in ended.told
    assert ended.told.endswith("1 error\n")


def test_a_difference_is_shown_and_nothing_is_written(folder: Path, run: Run) -> None:
    path = folder / "pinwheel.block"
    path.write_text(CROOKED, encoding="utf-8")

    ended = run("check", "--diff", "pinwheel.block")

    assert path.read_text(encoding="utf-8") == CROOKED
    assert '-  size 6"\n+  size 6 in\n' in ended.out.replace("-  row fog \\ slate  fog/slate\n", "").replace(
        "+  row fog\\slate  fog/slate\n", ""
    )
    assert "+  row fog\\slate  fog/slate\n" in ended.out
    assert ended.status == 1


def test_a_file_that_is_right_stays_untouched(folder: Path, run: Run) -> None:
    before = (folder / "pinwheel.block").stat().st_mtime_ns

    ended = run("check", "--fix", "pinwheel.block")

    assert (ended.status, ended.out, ended.told) == (0, "", "")
    assert (folder / "pinwheel.block").stat().st_mtime_ns == before


def test_standard_input_is_put_right_to_standard_output(folder: Path, run: Run) -> None:
    ended = run("check", "--fix", "-", typed=CROOKED)

    assert (ended.status, ended.out) == (0, PINWHEEL)


def test_standard_input_is_read_as_if_it_lay_where_it_is_said_to(folder: Path, run: Run) -> None:
    (folder / "deep").mkdir()
    text = PINWHEEL.replace("palette.block", "../palette.block")

    ended = run("check", "--stdin-filename", "deep/try.block", "-", typed=text)
    assert (ended.status, ended.told) == (0, "")

    ended = run("check", "--fix", "--stdin-filename", "deep/try.block", "-", typed=text.replace("6 in", "6 inn"))
    assert ended.told.startswith("deep/try.block:4:8: error[")
    assert not (folder / "deep" / "try.block").exists()


def test_a_write_protected_file_is_left_alone(folder: Path, run: Run) -> None:
    path = folder / "pinwheel.block"
    path.write_text(CROOKED, encoding="utf-8")
    path.chmod(0o444)

    ended = run("check", "--fix", "pinwheel.block")

    assert ended.status == 1
    assert "write-protected" in ended.told
    assert path.read_text(encoding="utf-8") == CROOKED
