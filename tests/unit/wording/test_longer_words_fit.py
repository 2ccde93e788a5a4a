"""Words two fifths longer than English find room on every page: nothing lies on anything else or leaves the page."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import cast

import pytest

from blockdsl import pipeline
from blockdsl.analysis.reading import FileReader
from blockdsl.diagnostics import Source
from blockdsl.facts import FileFacts
from blockdsl.fullsize.foundation import foundation_pages
from blockdsl.fullsize.papers import paper_pages
from blockdsl.fullsize.templates import template_pages
from blockdsl.marks.display_list import Figure, Mark, Page, TextMark
from blockdsl.marks.theme import paper_named
from blockdsl.marks.typeset import CAP_HEIGHT, measure
from blockdsl.model.language import Language
from blockdsl.page.book.book import book_document
from blockdsl.page.scale_check_page import check_print_page
from blockdsl.page.sheet import block_sheet, quilt_sheet
from blockdsl.resources import library_folder
from tests.unit.wording import pseudo

FILES = ("basics", "curves", "eight-point", "five-patch", "rounds", "strips", "triangles", "demo/harbour-light")


@pytest.fixture(scope="module", autouse=True)
def _longer() -> Iterator[None]:
    with pseudo.spoken():
        yield


def read(name: str) -> FileFacts:
    path = Path(library_folder()) / f"{name}.block"
    source = Source(path.name, path.read_text(encoding="utf-8"))
    return pipeline.run(source, FileReader(path.parent), language=cast("Language", pseudo.LANGUAGE)).facts


def texts(marks: Iterable[Mark]) -> Iterator[TextMark]:
    """The words of a page, those in pictures aside: they are letters and measures."""
    for mark in marks:
        if isinstance(mark, TextMark):
            yield mark
        elif not isinstance(mark, Figure) and hasattr(mark, "marks"):
            yield from texts(mark.marks)


def check(pages: Iterable[Page]) -> None:
    box = paper_named("letter").content
    for page in pages:
        covered = sorted(
            (t.x_pt, t.y_pt - CAP_HEIGHT * t.size_pt, t.x_pt + measure(t.text, t.size_pt, t.weight), t.y_pt, t.text)
            for t in texts(page.marks)
        )
        for place, (left, top, right, bottom, words) in enumerate(covered):
            assert left >= box.x_pt - 3.0, words  # large capitals stand out a hair to look flush
            assert right <= box.right_pt + 0.1, words
            assert bottom <= box.bottom_pt, words
            for left2, top2, _, bottom2, words2 in covered[place + 1 :]:
                if left2 >= right - 0.3:
                    break
                assert bottom2 <= top + 0.3 or top2 >= bottom - 0.3, f"{words!r} lies on {words2!r}"


def test_a_longer_word_is_longer_by_two_fifths() -> None:
    assert pseudo.longer("Cutting sizes { $x } 4") == "Cuuuttiing siizees { $x } 4"


@pytest.mark.parametrize("name", FILES)
def test_longer_words_find_room_on_the_sheets_of_the_library(name: str) -> None:
    for block in read(name).blocks:
        check(block_sheet(block).pages)


def test_longer_words_find_room_on_the_sheets_of_quilts() -> None:
    for quilt in read("demo/book").quilts:
        check(quilt_sheet(quilt).pages)


def test_longer_words_find_room_in_a_book() -> None:
    for book in read("demo/book").books:
        check(book_document(book).pages)


def test_longer_words_find_room_on_templates_and_papers() -> None:
    for block in read("curves").blocks[:4]:
        check(template_pages(block, paper="letter").pages)
    for name in ("basics", "pictures", "stars"):
        for block in read(name).blocks:
            if block.foundations:
                check(foundation_pages(block, paper="letter").pages)
            if block.papers:
                check(paper_pages(block, paper="letter").pages)


def test_longer_words_find_room_on_the_page_that_checks_the_print() -> None:
    check([check_print_page("letter", cast("Language", pseudo.LANGUAGE))])
