"""Quilts in books and on web sites: found by their pictures and in the index, each block's making told once."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

import pytest

from blockdsl.document.content import Cards, Heading, Part, Section, TextRun, WebPage
from blockdsl.document.site import RESERVED, web_site
from blockdsl.export.naming import Taken
from blockdsl.marks.display_list import Figure, Link, Mark, Page, TextMark
from blockdsl.page.book.book import book_document
from blockdsl.wording.sheet import format_count
from tests.unit.page import books


def flat(marks: Iterable[Mark]) -> Iterator[Mark]:
    for mark in marks:
        yield mark
        if isinstance(mark, Figure | Link):
            yield from flat(mark.marks)


def said(page: Page) -> str:
    return "\n".join(mark.text for mark in flat(page.marks) if isinstance(mark, TextMark))


@pytest.fixture(scope="module")
def pages() -> list[str]:
    return [said(page) for page in book_document(books.quilted()).pages]


def section(page: WebPage, title: str) -> tuple[Part, ...]:
    return next(
        part.parts
        for part in page.parts
        if isinstance(part, Section) and "".join(run.text for run in part.heading.words) == title
    )


def headings(parts: Iterable[Part]) -> Iterator[Heading]:
    for part in parts:
        if isinstance(part, Heading):
            yield part
        elif isinstance(part, Section):
            yield part.heading
            yield from headings(part.parts)
        elif isinstance(part, Cards):
            for card in part.cards:
                yield from headings(card.parts)


def test_the_title_page_counts_blocks_and_quilts(pages: list[str]) -> None:
    assert "1 patchwork block and 2 quilts to cut and sew" in pages[0]
    assert format_count(books.shores()) == "3 patchwork blocks"


def test_the_contents_list_a_quilt_with_its_size(pages: list[str]) -> None:
    """Two by two lights of 6 in: 12 in."""
    contents = next(page for page in pages if page.startswith("Contents"))
    assert "Small lights" in contents
    assert "quilt, 12 × 12 in" in contents


def test_the_index_has_the_quilts_by_name_by_size_and_as_quilts(pages: list[str]) -> None:
    index = next(page for page in pages if page.startswith("Index"))
    assert index.count("Lights at sea") == 3
    assert "Quilts" in index


def test_a_block_that_the_book_tells_at_that_size_is_not_told_again_with_the_quilt(pages: list[str]) -> None:
    """The lights of 12 in are those of the block's own pages; the ones of 6 in are not."""
    at_sea = [page for page in pages if "Lights at sea" in page.splitlines()[-2]]
    small = [page for page in pages if "Small lights" in page.splitlines()[-2]]
    own = next(page for page in pages if page.startswith("Quilts\nLight\n"))
    (reference,) = [page for page in at_sea if "Cutting and sewing one Light: page" in page]
    assert own.splitlines()[-1] in reference.splitlines()
    assert not any("Cutting for one" in page for page in at_sea)
    assert any("Cutting for one" in page for page in small)


def test_words_that_follow_a_quilt_end_its_pages(pages: list[str]) -> None:
    at_sea = [page for page in pages if "Lights at sea" in page.splitlines()[-2]]
    assert "Afterwards" in at_sea[-1]
    assert "Label" in "".join(at_sea[-2:])


def test_the_techniques_teach_what_the_blocks_of_quilts_use() -> None:
    """The book's one block is made two at a time."""
    document = book_document(books.quilted())
    assert any("Two at a time" in said(page) for page in document.pages)


def test_a_quilts_web_page_leads_to_the_page_of_its_block_and_tells_the_making_of_others() -> None:
    site = web_site(books.quilted(), Taken(RESERVED).take)
    named = {page.title: page for page in site.pages}
    linked = [run.target for part in headings(section(named["Lights at sea"], "Blocks to make")) for run in part.words]
    assert linked == [named["Light"].name]
    making = section(named["Small lights"], "Blocks to make: Light")
    assert next("".join(run.text for run in part.words) for part in headings(making)) == "Cutting for one block"


def test_every_quilt_is_a_card_of_the_contents() -> None:
    home = web_site(books.quilted(), Taken(RESERVED).take).pages[0]
    (cards,) = [
        part for part in section(home, "Quilts") if isinstance(part, Cards) and part.cards[0].target != "light"
    ][:1]
    assert cards.cards[0].target == "lights-at-sea"
    assert TextRun("Lights at sea", "strong") in [
        run for part in cards.cards[0].parts for run in getattr(part, "words", ())
    ]
