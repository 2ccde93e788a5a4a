"""Files are written whole or not at all."""

import os
from pathlib import Path

import pytest

from blockdsl.export.files import write_all, write_whole


def names(folder: Path) -> list[str]:
    return sorted(path.name for path in folder.iterdir())


def test_a_file_is_written_and_nothing_else_is_left_beside_it(tmp_path: Path) -> None:
    write_whole(tmp_path / "new" / "sheet.svg", b"one")
    write_whole(tmp_path / "new" / "sheet.svg", b"two")
    assert (tmp_path / "new" / "sheet.svg").read_bytes() == b"two"
    assert names(tmp_path / "new") == ["sheet.svg"]


def test_when_one_file_cannot_be_written_none_is(tmp_path: Path) -> None:
    (tmp_path / "sheet.svg").write_bytes(b"old")
    (tmp_path / "file").write_bytes(b"in the way")
    with pytest.raises(OSError):
        write_all({tmp_path / "sheet.svg": b"new", tmp_path / "file" / "sheet.pdf": b"new"})
    assert (tmp_path / "sheet.svg").read_bytes() == b"old"
    assert names(tmp_path) == ["file", "sheet.svg"]


def test_a_folder_that_stands_where_a_file_should_go_stops_all_files(tmp_path: Path) -> None:
    (tmp_path / "z.pdf").mkdir()
    with pytest.raises(IsADirectoryError):
        write_all({tmp_path / "a.svg": b"new", tmp_path / "z.pdf": b"new"})
    assert names(tmp_path) == ["z.pdf"]


def test_a_disk_that_fills_up_leaves_the_old_file(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def full(handle: int) -> None:
        raise OSError(28, "No space left on device")

    (tmp_path / "sheet.svg").write_bytes(b"old")
    monkeypatch.setattr(os, "fsync", full)
    with pytest.raises(OSError, match="No space"):
        write_whole(tmp_path / "sheet.svg", b"new")
    assert (tmp_path / "sheet.svg").read_bytes() == b"old"
    assert names(tmp_path) == ["sheet.svg"]


def test_others_may_read_a_file_as_the_users_mask_allows(tmp_path: Path) -> None:
    before = os.umask(0o027)
    try:
        write_whole(tmp_path / "sheet.svg", b"x")
    finally:
        os.umask(before)
    assert (tmp_path / "sheet.svg").stat().st_mode & 0o777 == 0o640
