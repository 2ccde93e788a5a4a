"""`build --book`: one PDF of all sheets, with a title page, contents and a test page."""

import re
from pathlib import Path

import pytest
from pypdf import PdfReader

from blockdsl.drawing.book_cover import rows_that_fit
from tests.unit.cli.pinwheel import PINWHEEL, Run


def book(folder: Path, run: Run, names: tuple[str, ...], *words: str) -> PdfReader:
    """The book of pinwheels under these names."""
    for place, name in enumerate(names):
        (folder / f"{place}.block").write_text(PINWHEEL.replace("Pinwheel", name), encoding="utf-8")
    files = [f"{place}.block" for place in range(len(names))]
    ended = run("build", *files, "-o", "out", "--only", "book", "--book", "out/all.pdf", *words)
    assert (ended.status, ended.told) == (0, "")
    assert [path.name for path in (folder / "out").iterdir()] == ["all.pdf"]
    return PdfReader(folder / "out" / "all.pdf")


def page_of(reader: PdfReader, words: str) -> list[int]:
    """The numbers, from 1, of the pages whose foot begins with the words."""
    feet = [re.search(rf"{words}\s+page (\d+) of (\d+)", page.extract_text()) for page in reader.pages]
    return [int(foot[1]) for foot in feet if foot]


def told_page(contents: str, name: str) -> int:
    """The page that the contents tell for a name: it stands behind the line about the block."""
    told = re.search(rf"{name}\n[^\n]+\n(\d+)\b", contents)
    assert told, contents
    return int(told[1])


def test_the_contents_give_the_page_on_which_each_sheet_begins(folder: Path, run: Run) -> None:
    names = ("Early Boat", "Late Boat", "Night Boat")
    reader = book(folder, run, names, "--title", "Boats")

    contents = reader.pages[1].extract_text()
    for name in names:
        assert told_page(contents, name) == page_of(reader, name)[0]


def test_the_pages_are_numbered_through_from_the_contents_to_the_test_page(folder: Path, run: Run) -> None:
    reader = book(folder, run, ("One", "Two"), "--title", "Both")

    numbers = [re.search(r"page (\d+) of (\d+)", page.extract_text()) for page in reader.pages]
    count = len(reader.pages)
    assert numbers[0] is None
    assert [(int(n[1]), int(n[2])) for n in numbers if n] == [(page, count) for page in range(2, count + 1)]


def test_the_bookmarks_lead_to_the_title_the_contents_every_block_and_the_test_page(folder: Path, run: Run) -> None:
    reader = book(folder, run, ("One", "Two"), "--title", "Both")

    marks = {mark["/Title"]: reader.get_destination_page_number(mark) for mark in reader.outline}  # type: ignore[arg-type,call-overload]
    assert list(marks) == ["Both", "Contents", "One", "Two", "Test page"]
    assert marks["Both"] == 0
    assert marks["Contents"] == 1
    assert marks["Two"] == page_of(reader, "Two")[0] - 1
    assert marks["Test page"] == len(reader.pages) - 1


def test_a_book_without_a_title_is_called_as_its_file(folder: Path, run: Run) -> None:
    reader = book(folder, run, ("One",))

    assert reader.metadata is not None
    assert reader.metadata.title == "all"


def test_long_contents_go_on_over_pages_and_the_numbers_stay_right(folder: Path, run: Run) -> None:
    names = tuple(f"Boat {number} End" for number in range(1, 15))
    reader = book(folder, run, names)

    assert "Contents, continued" in reader.pages[2].extract_text()
    assert page_of(reader, "Boat 1 End")[0] == 4
    contents = reader.pages[1].extract_text() + reader.pages[2].extract_text()
    for name in names:
        assert told_page(contents, name) == page_of(reader, name)[0]


def test_a_book_of_no_block_is_refused(folder: Path, run: Run) -> None:
    ended = run("build", "palette.block", "-o", "out", "--book", "book.pdf")

    assert ended.status == 1
    assert ended.told == "blockdsl: there is no block to make a book of\n"
    assert not (folder / "book.pdf").exists()


@pytest.mark.parametrize(
    ("count", "rows"),
    [
        (1, (1,)),  # one picture as wide as the page
        (2, (2,)),  # under each other they would be 200 high
        (3, (3,)),  # one over two would be 100 + 50 high
        (4, (2, 2)),  # 50 + 50
        (5, (2, 3)),  # 50 + 33
        (9, (3, 3, 3)),
    ],
)
def test_pictures_on_the_title_page_stand_in_as_many_full_rows_as_there_is_room_for(
    count: int, rows: tuple[int, ...]
) -> None:
    """By hand, for a room as high as wide, twelve points between pictures."""
    assert rows_that_fit(count, 1000.0, 1020.0) == rows
