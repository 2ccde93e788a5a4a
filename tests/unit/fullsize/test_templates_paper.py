"""Papers: their sizes, what of them is printed on, how they lie, and rolls cut to length."""

from __future__ import annotations

import pytest

from blockdsl.fullsize.templates import template_pages
from blockdsl.geometry.fraction import Fraction
from blockdsl.marks.display_list import Document, TextMark
from blockdsl.marks.theme import ACCENT, PAPERS, paper_named
from tests.unit.fullsize.sample_templates import (
    block_of,
    half_square,
    outline,
    sample_block,
    small_templates,
    square,
    template,
)
from tests.unit.fullsize.test_templates_words import flat, texts

MILLIMETRE = 72 / 25.4


def page_size(document: Document) -> tuple[float, float]:
    (size,) = {(page.width_pt, page.height_pt) for page in document.pages}
    return size


@pytest.mark.parametrize(
    ("name", "wide_mm", "tall_mm"),
    # Letter 8.5 × 11 in, Legal 8.5 × 14 in, Tabloid 11 × 17 in; A4 and A3 from ISO 216.
    [
        ("letter", 215.9, 279.4),
        ("a4", 210, 297),
        ("legal", 215.9, 355.6),
        ("tabloid", 279.4, 431.8),
        ("a3", 297, 420),
    ],
)
def test_papers_have_their_trade_sizes(name: str, wide_mm: float, tall_mm: float) -> None:
    paper = paper_named(name)
    assert paper.width_pt == pytest.approx(wide_mm * MILLIMETRE)
    assert paper.height_pt == pytest.approx(tall_mm * MILLIMETRE)


@pytest.mark.parametrize(
    ("name", "wide_pt"),
    [("roll 24 in", 1728.0), ("roll 36 in", 2592.0), ("Roll  36in", 2592.0), ("roll 90 cm", 900 * MILLIMETRE)],
)
def test_a_roll_is_named_by_its_width(name: str, wide_pt: float) -> None:
    paper = paper_named(name)
    assert paper.roll
    assert paper.width_pt == pytest.approx(wide_pt)


@pytest.mark.parametrize("name", ["roll", "roll 36", "roll in", "36 in", "roll -36 in", "roll 36 ft", "roll 36 in x"])
def test_a_roll_without_a_plain_width_is_an_unknown_paper(name: str) -> None:
    with pytest.raises(ValueError, match="unknown paper"):
        paper_named(name)


@pytest.mark.parametrize("name", ["roll 8 in", "roll 201 in", "roll 0 cm"])
def test_a_roll_too_narrow_or_too_wide_is_refused(name: str) -> None:
    with pytest.raises(ValueError, match=r"a roll is from 8\.2 in"):
        paper_named(name)


@pytest.mark.parametrize("name", ["letter", "a4"])
@pytest.mark.parametrize("lying", [False, True])
def test_letter_and_a4_share_a_box_of_184_by_254_mm_however_they_lie(name: str, lying: bool) -> None:
    paper = paper_named(name).landscape if lying else paper_named(name)
    box = paper.printable(30.0)
    sides = (box.width_pt / MILLIMETRE, box.height_pt / MILLIMETRE)
    assert sides == pytest.approx((254, 184) if lying else (184, 254))
    assert (box.x_pt + box.right_pt, box.y_pt + box.bottom_pt) == pytest.approx((paper.width_pt, paper.height_pt))


def test_larger_papers_are_filled_up_to_their_margin() -> None:
    box = paper_named("a3").printable(10 * MILLIMETRE)
    assert (box.width_pt / MILLIMETRE, box.height_pt / MILLIMETRE) == pytest.approx((277, 400))
    assert paper_named("tabloid").printable().x_pt == pytest.approx(12 * MILLIMETRE)


def test_a_margin_that_leaves_too_little_of_the_paper_is_refused() -> None:
    # Legal is 215.9 mm wide: less twice 17 mm it is 181.9 mm, and 184 are needed.
    with pytest.raises(ValueError, match="a margin of 17 mm does not leave 184 × 254 mm of Legal"):
        template_pages(sample_block(), paper="legal", margin_pt=17 * MILLIMETRE)
    with pytest.raises(ValueError, match="a margin of -1 mm"):
        template_pages(sample_block(), paper="a3", margin_pt=-MILLIMETRE)


@pytest.mark.parametrize("paper", [*PAPERS, "roll 24 in", "roll 90 cm"])
def test_all_pages_of_a_file_have_one_size(paper: str) -> None:
    document = template_pages(sample_block(), paper=paper)
    sheet = paper_named(paper)
    wide, tall = page_size(document)
    if sheet.roll:
        assert wide == pytest.approx(sheet.width_pt)
    else:
        assert sorted((wide, tall)) == pytest.approx(sorted((sheet.width_pt, sheet.height_pt)))


def test_paper_lies_on_its_side_where_that_needs_fewer_pages() -> None:
    # A strip of 9 3/8 in is 9 7/8 in with its seams, 711 pt. On Letter upright 617 pt are free above the scale check,
    # or 522 across; on its side the box of 254 mm has 720 pt across.
    long, half = Fraction(75, 8), Fraction(1, 2)
    strip = template("W", "rectangle", (long, half), outline((0, 0), (long, 0), (long, half), (0, half)))
    upright = page_size(template_pages(block_of([square("A", 3)]), paper="letter"))
    lying = template_pages(block_of([strip]), paper="letter")
    assert upright == (612.0, 792.0)
    assert page_size(lying) == (792.0, 612.0)
    assert not any("tile" in word for word in texts(lying))


def test_a_roll_is_as_long_as_its_templates_need() -> None:
    # A triangle of 20 in stands on a roll of 36 in beside the head. With its seam it is at most
    # 20 + (2 + √2)/4 = 20.8536 in high; below it 10 + 72 + 20 pt for the scale check and the foot, 12 mm at both ends.
    block = block_of([half_square("H", 20)])
    wide, tall = page_size(template_pages(block, paper="roll 36 in"))
    assert wide == 2592.0
    assert tall <= 20.8536 * 72 + 102 + 24 * MILLIMETRE + 1
    assert tall > 20 * 72
    assert not any("tile" in word for word in texts(template_pages(block, paper="roll 36 in")))


def test_a_roll_no_longer_than_its_head_when_there_is_nothing_to_print() -> None:
    _, tall = page_size(template_pages(block_of([]), paper="roll 24 in"))
    assert tall < 500


def test_a_template_wider_than_the_roll_runs_over_tiles_of_the_roll() -> None:
    words = texts(template_pages(block_of([half_square("H", 30)]), paper="roll 24 in"))
    assert words.count("H, tile 1 of 2 (row 1, column 1)") == 1


def test_no_page_of_a_roll_is_longer_than_14_400_points() -> None:
    letters = [f"{one}{two}" for one in "ABCDE" for two in "ABCDE"]
    document = template_pages(block_of([square(letter, 20) for letter in letters]), paper="roll 24 in")
    assert len(document.pages) > 1
    assert page_size(document)[1] <= 14_400.0


@pytest.mark.parametrize("paper", [*PAPERS, "roll 24 in"])
def test_no_join_crosses_a_template_that_fits_the_page(paper: str) -> None:
    block = block_of((*small_templates(), half_square("H", 30)))
    words = texts(template_pages(block, paper=paper))
    assert {word.split(",")[0] for word in words if ", tile 1 of" in word} == {"H"}


@pytest.mark.parametrize("paper", [*PAPERS, "roll 24 in"])
def test_every_join_has_at_least_two_marks_and_each_stands_on_both_tiles(paper: str) -> None:
    # A mark has its letter on both sides of its join line, so that whichever tile lies on top shows one.
    document = template_pages(block_of([half_square("H", 30)]), paper=paper)
    stood: dict[str, list[int]] = {}
    joins = 0
    for number, page in enumerate(document.pages):
        words = [mark for mark in flat(page.marks) if isinstance(mark, TextMark) and mark.colour == ACCENT]
        joins += sum(word.text.startswith("join here to tile ") for word in words)
        for word in words:
            if len(word.text) <= 2 and word.text.islower():
                stood.setdefault(word.text, []).append(number)
    assert stood
    for letter, pages in stood.items():
        assert sorted(pages.count(page) for page in set(pages)) == [2, 2], letter
    # Each join is named on both its tiles and has two letters or more.
    assert joins <= len(stood)


def test_triangles_nest_where_that_saves_a_page() -> None:
    # Eight triangles of 7 in, 7.85 in with the seam less the trimmed points, over 7 1/2 in = 540 pt both ways. Tabloid
    # has 724 × 1054 pt for them: no two such boxes go side by side or below one another, which makes eight pages;
    # in pairs, long edge to long edge, they need four.
    block = block_of([half_square(f"B{number}", 7) for number in range(8)])
    assert len(template_pages(block, paper="tabloid").pages) == 4
