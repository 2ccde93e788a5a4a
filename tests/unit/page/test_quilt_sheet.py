"""A quilt's sheet: nothing overlaps or leaves the page, and everything from the shop to the label is told."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

import pytest

from blockdsl.facts import QuiltFacts
from blockdsl.marks.display_list import Document, Figure, Mark, Page, Stamp, TextMark
from blockdsl.marks.theme import paper_named
from blockdsl.marks.typeset import CAP_HEIGHT, measure
from blockdsl.page.sheet import quilt_sheet
from tests.unit.model.quilts import quilt
from tests.unit.page import quilts


@pytest.fixture(params=list(quilts.ALL))
def facts(request: pytest.FixtureRequest) -> QuiltFacts:
    return quilts.ALL[request.param]()


def flat(marks: Iterable[Mark]) -> Iterator[Mark]:
    for mark in marks:
        yield mark
        if isinstance(mark, Figure | Stamp):
            yield from flat(mark.marks)


def texts(page: Page, *, figures: bool = True) -> list[TextMark]:
    marks = page.marks if figures else tuple(mark for mark in page.marks if not isinstance(mark, Figure))
    return [mark for mark in flat(marks) if isinstance(mark, TextMark)]


def said(document: Document) -> str:
    """All words, fractions as they are typed."""
    return " ".join(text.text for page in document.pages for text in texts(page))


def test_no_words_lie_on_other_words(facts: QuiltFacts) -> None:
    for page in quilt_sheet(facts).pages:
        covered = sorted(
            (t.x_pt, t.y_pt - CAP_HEIGHT * t.size_pt, t.x_pt + measure(t.text, t.size_pt, t.weight), t.y_pt, t.text)
            for t in texts(page, figures=False)
        )
        for place, (_, top, right, bottom, words) in enumerate(covered):
            for left2, top2, _, bottom2, words2 in covered[place + 1 :]:
                if left2 >= right - 0.3:
                    break
                assert bottom2 <= top + 0.3 or top2 >= bottom - 0.3, f"{words!r} lies on {words2!r}"


def test_all_words_lie_in_the_box_that_prints_on_letter_and_a4(facts: QuiltFacts) -> None:
    box = paper_named("letter").content
    for page in quilt_sheet(facts).pages:
        for t in texts(page):
            assert t.x_pt >= box.x_pt - 2.0, t.text  # large capitals stand out a hair to look flush
            assert t.x_pt + measure(t.text, t.size_pt, t.weight) <= box.right_pt + 0.1, t.text
            assert box.y_pt <= t.y_pt <= box.bottom_pt, t.text


def test_letter_and_a4_break_the_pages_at_the_same_places(facts: QuiltFacts) -> None:
    letter, a4 = (quilt_sheet(facts, paper=paper) for paper in ("letter", "a4"))
    assert [[t.text for t in texts(page)] for page in letter.pages] == [
        [t.text for t in texts(page)] for page in a4.pages
    ]


def test_every_picture_says_what_it_shows(facts: QuiltFacts) -> None:
    figures = [mark for page in quilt_sheet(facts).pages for mark in page.marks if isinstance(mark, Figure)]
    assert figures
    assert [figure.alternative for figure in figures if len(figure.alternative) < 10] == []


def test_stamps_of_one_page_have_names_of_their_own(facts: QuiltFacts) -> None:
    for page in quilt_sheet(facts).pages:
        names = [mark.name for mark in flat(page.marks) if isinstance(mark, Stamp)]
        assert len(names) == len(set(names))


def test_the_sheet_goes_from_the_shop_to_the_label_in_the_order_of_the_work() -> None:
    words = said(quilt_sheet(quilts.harbour_quilt()))
    order = [
        "Harbour Light", "Fabric requirements", "Notes", "Take care", "Cutting", "Blocks to make", "Assembly",
        "First border", "Finishing", "Backing", "Layers", "Hanging sleeve", "Binding", "Label",
    ]  # fmt: skip
    place = 0
    for heading in order:
        place = words.index(heading, place) + len(heading)


def test_the_cautions_stand_before_the_first_cut(facts: QuiltFacts) -> None:
    words = said(quilt_sheet(facts))
    assert words.index("Rotary cutter: close the blade") < words.index("cut lengthwise pieces first")


def test_a_quilt_of_one_block_goes_straight_to_its_making() -> None:
    """A card of the only block would say the same again."""
    alone = said(quilt_sheet(quilt('set straight 2 x 2 of "Four"')))
    assert "Blocks to make: Four" in alone
    assert "make 4, each 6 ¹⁄₂ × 6 ¹⁄₂ in unfinished" in alone


def test_a_quilt_of_two_blocks_lists_both_with_how_many() -> None:
    """Of 3 × 3 places five are the one and four the other."""
    words = said(quilt_sheet(quilt('set straight 3 x 3 of "Four"', 'alternate "Chain"')))
    assert "Make 5" in words
    assert "Make 4" in words


def test_each_page_says_which_it_is_of_how_many(facts: QuiltFacts) -> None:
    pages = quilt_sheet(facts).pages
    for number, page in enumerate(pages, start=1):
        assert f"page {number} of {len(pages)}" in [text.text for text in texts(page)]
