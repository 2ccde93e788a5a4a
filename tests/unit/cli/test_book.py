"""`build`: books that files declare, and `--book`, one of all blocks."""

import re
from pathlib import Path

import pytest
from pypdf import PdfReader

from blockdsl.page.book.cover import rows_that_fit
from tests.outputs import in_folder
from tests.unit.cli.pinwheel import PINWHEEL, Run


def book(folder: Path, run: Run, names: tuple[str, ...], *words: str) -> PdfReader:
    """The book of pinwheels under these names."""
    for place, name in enumerate(names):
        (folder / f"{place}.block").write_text(PINWHEEL.replace("Pinwheel", name), encoding="utf-8")
    files = [f"{place}.block" for place in range(len(names))]
    ended = run("build", *files, "-o", "out", "--only", "book", "--book", "out/all.pdf", *words)
    assert (ended.status, ended.told) == (0, "")
    assert [path.name for path in in_folder(folder / "out")] == ["all.pdf"]
    return PdfReader(folder / "out" / "all.pdf")


def feet(reader: PdfReader) -> list[tuple[str, str]]:
    """What each page is called, and what its foot says: read once, for reading takes long."""
    pages = zip(reader.page_labels, reader.pages, strict=True)
    return [(label, page.extract_text().rpartition("\n")[2]) for label, page in pages]


def page_of(read: list[tuple[str, str]], words: str) -> list[str]:
    """What the pages are called whose foot says the words, in order."""
    return [label for label, foot in read if words in foot]


def told_page(contents: str, name: str) -> str:
    """The page that the contents tell for a name: it stands behind what is said of the block."""
    told = re.search(rf"{name}\s[^\n]*?(\d+)$", contents, re.MULTILINE)
    assert told, contents
    return told[1]


def test_the_contents_give_the_page_on_which_each_block_begins(folder: Path, run: Run) -> None:
    names = ("Early Boat", "Late Boat", "Night Boat")
    reader = book(folder, run, names, "--title", "Boats")

    contents = reader.pages[1].extract_text()
    read = feet(reader)
    for name in names:
        assert told_page(contents, name) == page_of(read, name)[0]


def test_the_bookmarks_lead_to_the_title_the_contents_every_block_and_the_test_page(folder: Path, run: Run) -> None:
    reader = book(folder, run, ("One", "Two"), "--title", "Both")

    top = [mark for mark in reader.outline if not isinstance(mark, list)]
    inner, *_ = [mark for mark in reader.outline if isinstance(mark, list)]  # the chapter's; then the techniques'
    pages = {str(mark["/Title"]): reader.get_destination_page_number(mark) for mark in (*top, *inner)}  # type: ignore[arg-type,call-overload]
    assert list(pages)[:2] == ["Both", "Contents"]
    assert (pages["Both"], pages["Contents"]) == (0, 1)
    assert [str(mark["/Title"]) for mark in inner] == ["One", "Two"]  # type: ignore[call-overload]
    assert reader.page_labels[pages["Two"] or 0] == page_of(feet(reader), "Two")[0]
    assert pages["Test page"] == len(reader.pages) - 1


def test_a_book_without_a_title_is_called_as_its_file(folder: Path, run: Run) -> None:
    reader = book(folder, run, ("One",))

    assert reader.metadata is not None
    assert reader.metadata.title == "all"


def test_long_contents_go_on_over_pages_and_the_numbers_stay_right(folder: Path, run: Run) -> None:
    names = tuple(f"Boat {number} End" for number in range(1, 21))
    reader = book(folder, run, names)

    assert "Contents, continued" in reader.pages[2].extract_text()
    contents = reader.pages[1].extract_text() + reader.pages[2].extract_text()
    read = feet(reader)
    for name in names:
        assert told_page(contents, name) == page_of(read, name)[0]


BOOK = """use "pinwheel.block"

book "Boats"
  by "The maker"
  paper a4
  chapter "Small ones"
    block "Pinwheel" sizes 6 9 in 15 cm
"""


def test_a_book_that_a_file_declares_is_written_with_the_sheets_of_the_blocks_that_it_brings_in(
    folder: Path, run: Run
) -> None:
    (folder / "boats.block").write_text(BOOK, encoding="utf-8")

    ended = run("build", "boats.block", "-o", "out", "--only", "book,sheet")

    assert (ended.status, ended.told) == (0, "")
    assert {path.name for path in in_folder(folder / "out")} == {"boats.pdf", "pinwheel.sheet.pdf"}
    for name in ("boats.pdf", "pinwheel.sheet.pdf"):  # A4 is 210 mm wide (ISO 216)
        assert float(PdfReader(folder / "out" / name).pages[0].mediabox.width) == pytest.approx(595.28, abs=0.01)


def test_a_block_that_is_asked_for_by_its_file_and_by_a_book_is_written_once(folder: Path, run: Run) -> None:
    (folder / "boats.block").write_text(BOOK, encoding="utf-8")

    run("build", "boats.block", "pinwheel.block", "-o", "out", "--only", "book,sheet")

    assert {path.name for path in in_folder(folder / "out")} == {"boats.pdf", "pinwheel.sheet.pdf"}


def test_the_paper_that_is_asked_for_goes_before_the_paper_of_the_book(folder: Path, run: Run) -> None:
    (folder / "boats.block").write_text(BOOK, encoding="utf-8")

    run("build", "boats.block", "-o", "out", "--only", "book", "--paper", "letter")

    assert float(PdfReader(folder / "out" / "boats.pdf").pages[0].mediabox.width) == 612


def test_the_words_of_a_book_are_among_what_it_was_made_from(folder: Path, run: Run) -> None:
    (folder / "boats.block").write_text(BOOK.replace("  paper a4", '  text "sea.md"'), encoding="utf-8")
    (folder / "sea.md").write_text("# The sea\n\nIt is *wide*.\n", encoding="utf-8")

    ended = run("build", "boats.block", "-o", "out", "--only", "book", "--depfile", "rules.d")

    assert ended.status == 0
    rules = (folder / "rules.d").read_text(encoding="utf-8")
    assert {"sea.md:", "pinwheel.block:", "boats.block:"} <= set(rules.splitlines())


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
