"""A book's pages: nothing overlaps or leaves the page, everything is told, numbers lead where they say."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator

import pytest
from msgspec import structs
from msgspec.structs import replace

from blockdsl.facts import BookFacts
from blockdsl.marks.display_list import Anchor, Figure, Link, Mark, Page, Publication, TextMark
from blockdsl.marks.theme import PAPERS, paper_named
from blockdsl.marks.typeset import CAP_HEIGHT, measure
from blockdsl.model.book import SHEETS
from blockdsl.page.book.book import book_document, roman
from blockdsl.wording import messages
from blockdsl.wording.glossary import all_terms, terms_used
from tests.unit.page import books

BOOKS = {"shores": books.shores, "strained": books.strained, "many": books.many, "quilted": books.quilted}


@pytest.fixture(scope="module", params=list(BOOKS))
def pages(request: pytest.FixtureRequest) -> list[Page]:
    return list(book_document(BOOKS[request.param]()).pages)


def flat(marks: Iterable[Mark]) -> Iterator[Mark]:
    for mark in marks:
        yield mark
        if isinstance(mark, Figure | Link):
            yield from flat(mark.marks)


def texts(page: Page, *, figures: bool = True) -> list[TextMark]:
    marks = page.marks if figures else tuple(mark for mark in page.marks if not isinstance(mark, Figure))
    return [mark for mark in flat(marks) if isinstance(mark, TextMark)]


def said(page: Page) -> str:
    return "\n".join(text.text for text in texts(page))


def page_with(document: Publication, words: str) -> Page:
    return next(page for page in document.pages if words in said(page))


def test_no_words_lie_on_other_words(pages: list[Page]) -> None:
    for page in pages:
        covered = sorted(
            (t.x_pt, t.y_pt - CAP_HEIGHT * t.size_pt, t.x_pt + measure(t.text, t.size_pt, t.weight), t.y_pt, t.text)
            for t in texts(page, figures=False)
            if not t.turn_degrees
        )
        for place, (_, top, right, bottom, words) in enumerate(covered):
            for left2, top2, _, bottom2, words2 in covered[place + 1 :]:
                if left2 >= right - 0.3:
                    break
                assert bottom2 <= top + 0.3 or top2 >= bottom - 0.3, f"{words!r} lies on {words2!r}"


def test_all_words_lie_in_the_box_that_prints_on_letter_and_a4(pages: list[Page]) -> None:
    box = paper_named("letter").content
    for page in pages:
        for t in texts(page):
            if not t.turn_degrees:
                assert t.x_pt >= box.x_pt - 2.0, t.text  # large capitals stand out a hair to look flush
                assert t.x_pt + measure(t.text, t.size_pt, t.weight) <= box.right_pt + 0.1, t.text
                assert box.y_pt <= t.y_pt <= box.bottom_pt, t.text


def test_every_link_leads_to_an_anchor_and_no_anchor_is_there_twice(pages: list[Page]) -> None:
    anchors = [mark.name for page in pages for mark in flat(page.marks) if isinstance(mark, Anchor)]
    targets = {mark.target for page in pages for mark in flat(page.marks) if isinstance(mark, Link)}
    assert len(anchors) == len(set(anchors))
    assert targets
    assert targets <= set(anchors)


def test_a_link_tells_the_number_of_the_page_on_which_its_anchor_stands(pages: list[Page]) -> None:
    where: dict[str, str] = {}
    for page in pages:
        foot = texts(page)[-1].text
        where |= {mark.name: foot for mark in flat(page.marks) if isinstance(mark, Anchor)}
    for page in pages:
        for link in (mark for mark in flat(page.marks) if isinstance(mark, Link)):
            assert where[link.target] in [text.text for text in flat(link.marks) if isinstance(text, TextMark)]


def test_pages_are_numbered_in_roman_figures_before_the_first_chapter_and_from_one_after_it(pages: list[Page]) -> None:
    feet = [texts(page)[-1].text for page in pages[1:]]
    ahead = feet.index("1")
    assert feet == [roman(number) for number in range(2, ahead + 2)] + [str(n) for n in range(1, len(feet) - ahead + 1)]


def test_roman_figures_are_those_of_every_book() -> None:
    numbers = {1: "i", 2: "ii", 4: "iv", 5: "v", 9: "ix", 14: "xiv", 19: "xix", 20: "xx"}
    assert {number: roman(number) for number in numbers} == numbers


def test_every_picture_says_what_it_shows(pages: list[Page]) -> None:
    figures = [mark for page in pages for mark in page.marks if isinstance(mark, Figure)]
    assert figures
    assert [figure.alternative for figure in figures if len(figure.alternative) < 10] == []


@pytest.mark.parametrize("paper", SHEETS)
def test_a_book_may_be_on_every_paper_that_the_language_names(paper: str) -> None:
    document = book_document(replace(books.shores(), paper=paper))
    sizes = {(page.width_pt, page.height_pt) for page in document.pages}
    assert sizes == {(PAPERS[paper].width_pt, PAPERS[paper].height_pt)}


def test_letter_and_a4_break_the_pages_at_the_same_places() -> None:
    letter, a4 = (list(book_document(replace(books.shores(), paper=paper)).pages) for paper in ("letter", "a4"))
    assert [said(page) for page in letter[:-1]] == [said(page) for page in a4[:-1]]  # the test page names its paper


def test_the_outline_is_a_tree_of_chapters_and_their_blocks() -> None:
    document = book_document(books.shores())
    tree = [(bookmark.words, [inner.words for inner in bookmark.inner]) for bookmark in document.outline]
    assert tree == [
        ("Shores", []),
        ("Contents", []),
        ("Welcome", []),
        ("Before you begin", []),
        ("Chapter 1: Lights", ["Light", "Kite"]),
        ("Chapter 2: Tides", ["Tide"]),
        ("Techniques", ["Piecing from single patches", "Two at a time", "Strip sets"]),
        ("Glossary", []),
        ("Index", []),
        ("Test page", []),
    ]


def test_a_bookmark_leads_to_the_page_that_begins_with_its_words() -> None:
    document = book_document(books.shores())
    pages = list(document.pages)
    marks = [inner for bookmark in document.outline for inner in (bookmark, *bookmark.inner)]
    for bookmark in marks[:-1]:
        assert bookmark.words.rpartition(": ")[2] in [text.text for text in texts(pages[bookmark.page])[:3]]
    assert marks[-1].page == len(pages) - 1


def test_a_book_says_what_it_is() -> None:
    document = book_document(books.shores())
    assert (document.title, document.author, document.language) == ("Shores", "The maker", "en-US")
    assert document.subject == "Pattern book of 3 patchwork blocks"


def row_of(page: Page, first: str) -> list[str]:
    """All words on one line with the first, from left to right."""
    all_texts = texts(page, figures=False)
    start = next(text for text in all_texts if text.text == first)
    return [text.text for text in sorted(all_texts, key=lambda t: t.x_pt) if abs(text.y_pt - start.y_pt) < 0.1]


def test_a_block_at_three_sizes_is_cut_from_one_table_with_a_column_for_each() -> None:
    """By hand: 2 in, 3 in and 4 in cells are cut 1/2 in larger; two at a time, 7/8 in larger (published rule)."""
    pages = [page for page in book_document(books.shores()).pages if "cut\npiece\n6 in" in said(page)]
    page = next(page for page in pages if "a column for each finished size; cut sizes" in said(page))
    words = [text.text for text in texts(page, figures=False)]
    assert [w for w in words if re.fullmatch(r"\d+ in", w)][:3] == ["6 in", "9 in", "12 in"]
    rows = [row_of_text(page, text) for page in pages for text in texts(page, figures=False) if text.text == "squares"]
    assert [row[2:-1] for row in rows if row[-1].startswith("half-square triangle,")] == [
        ["2", "⁷⁄₈", "3", "⁷⁄₈", "4", "⁷⁄₈", "for 4 units", "A"],
    ] * 2
    assert ["4", "squares", "2", "¹⁄₂", "3", "¹⁄₂", "4", "¹⁄₂", "B"] in rows


def row_of_text(page: Page, start: TextMark) -> list[str]:
    line = [text for text in texts(page, figures=False) if abs(text.y_pt - start.y_pt) < 0.1]
    return [text.text for text in sorted(line, key=lambda t: t.x_pt)]


def test_a_book_says_what_stays_on_the_bias_of_a_block_of_half_squares() -> None:
    # a half square is cut corner to corner: its long edge is the diagonal of straight cloth
    page = page_with(book_document(books.shores()), "Bias edges if cut as listed: the long edge of A")
    assert "press without sliding the iron" in said(page).replace("\n", " ")


def test_a_size_that_is_cut_differently_has_a_table_of_its_own() -> None:
    one = books.shores()
    block = next(iter(one.blocks))
    small, middle, large = block.sizes
    odd = replace(block, sizes=(small, structs.replace(middle, cutting=middle.cutting[1:]), large))
    document = book_document(replace(one, chapters=(replace(one.chapters[1], items=(odd,)),)))
    found = [t.text for page in document.pages for t in texts(page) if t.text.startswith("Cutting for")]
    headings = [text for text in found if not text.endswith("continued")]
    assert headings == ["Cutting for 6 and 12 in", "Cutting for 9 in"]


def test_a_unit_says_what_it_should_measure_at_every_size() -> None:
    """By hand: a 2 in cell should measure 2 1/2 in before it is joined, one of 3 in 3 1/2 in, one of 4 in 4 1/2 in."""
    page = page_with(book_document(books.shores()), "Units to make")
    words = said(page)
    for size in ("2 ¹⁄₂ × 2 ¹⁄₂ in", "3 ¹⁄₂ × 3 ¹⁄₂ in", "4 ¹⁄₂ × 4 ¹⁄₂ in"):
        assert size in words


def test_the_techniques_are_those_that_the_blocks_use_each_with_its_blocks_and_its_page() -> None:
    page = page_with(book_document(books.shores()), "Used by")
    words = [text.text for text in texts(page)]
    assert [w for w in words if w.startswith("Used by")] == ["Used by Light, Kite", "Used by Light", "Used by Tide"]
    links = [mark for mark in flat(page.marks) if isinstance(mark, Link)]
    assert [text.text for link in links for text in link.marks[:1] if isinstance(text, TextMark)] == [
        "Piecing from single patches",
        "Two at a time",
        "Strip sets",
    ]


def test_a_book_without_techniques_has_none() -> None:
    document = book_document(replace(books.shores(), techniques=False))
    assert "Techniques" not in [bookmark.words for bookmark in document.outline]


def test_the_cautions_stand_in_full_once() -> None:
    words = [said(page).replace("\n", " ") for page in book_document(books.shores()).pages]
    for caution in ("Close its blade each time", "let it cool", "Count pins", "out of the reach", "come first"):
        assert sum(caution in page for page in words) == 1, caution


def test_the_glossary_explains_the_words_that_are_said_with_their_first_page() -> None:
    texts = {"1": "Cut the Strip Sets.", "2": "strip set, half-square triangle units", "3": "sizes"}
    found = terms_used(texts, messages())
    assert {each.term: each.page for each in found} == {"half-square triangle": "2", "strip set": "1", "unit": "2"}


def test_the_glossary_is_in_the_order_of_the_alphabet_in_each_language() -> None:
    for language, first in (("en-US", "baste"), ("en-GB", "tack")):
        terms = all_terms(messages(language))
        assert list(terms) == sorted(terms)
        assert first in terms


def test_the_index_lists_blocks_by_name_by_size_and_by_number_of_patches() -> None:
    *_, index, test = list(book_document(books.shores()).pages)
    words = [t.text for t in sorted(texts(index), key=lambda t: (t.y_pt > 300, t.x_pt // 100, t.y_pt))]
    assert [w for w in words if re.fullmatch(r"\d+ (in|cm|patches)", w)] == [
        "6 in", "9 in", "24 cm", "30 cm", "12 in", "3 patches", "12 patches", "16 patches"
    ]  # fmt: skip
    assert "actual size" in said(test)


def test_blocks_without_a_chapter_get_one_and_the_pages_can_be_taken_again() -> None:
    one = books.shores()
    plain = replace(one, chapters=(replace(one.chapters[1], title=""),))
    assert [bookmark.words for bookmark in book_document(plain).outline][3] == "Chapter 1: The blocks"


def test_a_long_book_tells_the_same_pages_in_contents_and_at_the_foot() -> None:
    facts: BookFacts = books.many()
    document = book_document(facts)
    count = sum(1 for _ in document.pages)
    assert count > 150
    assert document.labels[1].first >= 3  # the contents take more than a page
