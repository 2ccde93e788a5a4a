"""A folder of outputs: nothing strange is replaced, nothing is half moved in, nothing of others is taken away."""

import json
import os
from pathlib import Path

import pytest

from blockdsl.export import output_folder
from blockdsl.export.output_folder import Busy, OutputFolder, Refused
from tests.outputs import bytes_below

BY = "../a.block"
OF = {"a.svg": BY, "a.csv": BY}


def record(folder: Path) -> Path:
    return folder / ".blockdsl" / "written.jsonl"


def test_files_are_written_together_and_known_afterwards(tmp_path: Path) -> None:
    OutputFolder(tmp_path / "out").write({"a.svg": b"one", "a.web/index.html": b"two"}, BY, OF)

    assert bytes_below(tmp_path / "out") == {"a.svg": b"one", "a.web/index.html": b"two"}
    known = OutputFolder(tmp_path / "out").known()
    assert {name: entry.by for name, entry in known.items()} == {"a.svg": (BY,), "a.web/index.html": (BY,)}
    assert known["a.svg"].of == BY


def test_a_file_that_was_not_written_here_is_refused_by_name_and_nothing_is_written(tmp_path: Path) -> None:
    (tmp_path / "a.svg").write_bytes(b"mine")

    with pytest.raises(Refused, match=r"a\.svg was not written by blockdsl"):
        OutputFolder(tmp_path).write({"a.csv": b"1", "a.svg": b"2"}, BY, OF)

    assert bytes_below(tmp_path) == {"a.svg": b"mine"}


def test_a_file_that_was_changed_by_hand_is_refused(tmp_path: Path) -> None:
    OutputFolder(tmp_path).write({"a.csv": b"1"}, BY, OF)
    (tmp_path / "a.csv").write_bytes(b"my own notes")

    with pytest.raises(Refused, match=r"a\.csv was changed after blockdsl wrote it"):
        OutputFolder(tmp_path).write({"a.csv": b"2"}, BY, OF)

    assert bytes_below(tmp_path) == {"a.csv": b"my own notes"}


def test_a_file_that_was_only_touched_is_ours_still(tmp_path: Path) -> None:
    OutputFolder(tmp_path).write({"a.csv": b"1"}, BY, OF)
    os.utime(tmp_path / "a.csv", (1, 1))

    OutputFolder(tmp_path).write({"a.csv": b"2"}, BY, OF)

    assert bytes_below(tmp_path) == {"a.csv": b"2"}


@pytest.mark.parametrize("kind", ["link", "folder", "pipe"])
def test_what_is_no_plain_file_is_never_replaced(tmp_path: Path, kind: str) -> None:
    (tmp_path / "own.txt").write_bytes(b"mine")
    if kind == "link":
        (tmp_path / "a.svg").symlink_to(tmp_path / "own.txt")
    elif kind == "folder":
        (tmp_path / "a.svg").mkdir()
    else:
        os.mkfifo(tmp_path / "a.svg")

    with pytest.raises(Refused):
        OutputFolder(tmp_path).write({"a.svg": b"1"}, BY, OF)

    assert (tmp_path / "own.txt").read_bytes() == b"mine"


def test_in_a_folder_without_a_record_files_that_look_like_ours_are_taken_for_ours(tmp_path: Path) -> None:
    """An SVG by its mark, a table by its first line; a table of hers has another."""
    (tmp_path / "a.svg").write_bytes(b'<?xml version="1.0"?>\n<!-- blockdsl -->\n<svg/>')
    (tmp_path / "a.csv").write_bytes(b"fabric,cut\nFog,4\n")
    (tmp_path / "b.csv").write_bytes(b"shopping,list\n")

    OutputFolder(tmp_path).write({"a.svg": b"<svg>", "a.csv": b"fabric,cut\nFog,8\n"}, BY, OF)

    assert bytes_below(tmp_path)["a.csv"] == b"fabric,cut\nFog,8\n"
    with pytest.raises(Refused):
        OutputFolder(tmp_path).write({"b.csv": b"fabric,cut\n"}, BY, {})


def test_what_a_killed_writer_had_ready_is_moved_in_and_what_it_had_not_is_taken_away(tmp_path: Path) -> None:
    place = OutputFolder(tmp_path)
    place.write({"a.svg": b"old", "a.csv": b"old"}, BY, OF)
    (tmp_path / ".blockdsl-1-1-0.part").write_bytes(b"new")
    (tmp_path / ".other.part").write_bytes(b"another program's")
    entry = [[BY], BY, "0" * 64, 3, 0]
    with record(tmp_path).open("a") as file:
        file.write(json.dumps({"begin": [".blockdsl-1-1-0.part", ".blockdsl-1-1-1.part"]}) + "\n")
        # The second file has been moved already: the kill came between the two moves.
        (tmp_path / "a.csv").write_bytes(b"new")
        parts = {"a.svg": ".blockdsl-1-1-0.part", "a.csv": ".blockdsl-1-1-1.part"}
        file.write(json.dumps({"ready": parts, "known": {"a.svg": entry, "a.csv": entry}}) + "\n")

    OutputFolder(tmp_path).known()

    assert bytes_below(tmp_path) == {"a.svg": b"new", "a.csv": b"new", ".other.part": b"another program's"}

    (tmp_path / ".blockdsl-2-1-0.part").write_bytes(b"half of it")
    with record(tmp_path).open("a") as file:
        file.write(json.dumps({"begin": [".blockdsl-2-1-0.part"]}) + "\n" + '{"ready": {"a.svg"')  # torn

    OutputFolder(tmp_path).known()

    assert bytes_below(tmp_path) == {"a.svg": b"new", "a.csv": b"new", ".other.part": b"another program's"}


def test_a_planted_record_moves_and_removes_nothing_outside_the_folder(tmp_path: Path) -> None:
    out = tmp_path / "out"
    OutputFolder(out).write({"a.svg": b"1"}, BY, OF)
    (tmp_path / "precious.txt").write_bytes(b"mine")
    (out / "notes.txt").write_bytes(b"mine")
    with record(out).open("a") as file:
        for line in (
            {"begin": ["../precious.txt", "notes.txt", "/etc/hostname"]},
            {"ready": {"../stolen": "notes.txt", "a.svg": "notes.txt"}, "known": {}},
            ["neither", "this"],
            {"known": {"../precious.txt": [[BY], BY, "0", 4, 0]}},
        ):
            file.write(json.dumps(line) + "\n")

    place = OutputFolder(out)
    assert place.remove(["../precious.txt", "notes.txt"], BY) == []

    assert bytes_below(tmp_path) == {"precious.txt": b"mine", "out/a.svg": b"1", "out/notes.txt": b"mine"}


def test_only_what_one_file_alone_makes_is_removed_for_it(tmp_path: Path) -> None:
    place = OutputFolder(tmp_path)
    place.write({"a.svg": b"1", "shared.svg": b"2", "changed.svg": b"3"}, BY, {})
    place.write({"shared.svg": b"2"}, "../b.block", {})
    (tmp_path / "changed.svg").write_bytes(b"by hand")

    assert place.remove(["a.svg", "shared.svg", "changed.svg"], BY) == ["a.svg"]
    assert set(bytes_below(tmp_path)) == {"shared.svg", "changed.svg"}
    assert place.remove(["shared.svg"], "../b.block") == ["shared.svg"]


def test_a_writer_waits_for_another_says_so_and_gives_up_in_the_end(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(output_folder, "_FIRST_WAIT_SECONDS", 0.05)
    monkeypatch.setattr(output_folder, "LONGEST_WAIT_SECONDS", 0.05)
    told: list[Path] = []
    first, second = OutputFolder(tmp_path), OutputFolder(tmp_path, told.append)
    with first._locked(), pytest.raises(Busy):
        second.write({"a.svg": b"1"}, BY, OF)
    assert told == [tmp_path]

    second.write({"a.svg": b"1"}, BY, OF)
    assert bytes_below(tmp_path) == {"a.svg": b"1"}


def test_the_record_does_not_grow_without_end(tmp_path: Path) -> None:
    for number in range(60):
        OutputFolder(tmp_path).write({"a.svg": b"%d" % number}, BY, OF)
    assert len(record(tmp_path).read_bytes().splitlines()) < 80
