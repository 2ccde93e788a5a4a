"""The scale check in two units, and the page that checks the print by itself."""

from __future__ import annotations

from itertools import combinations

import pytest
from shapely.geometry import LineString, box

from blockdsl.fullsize.templates import template_pages
from blockdsl.geometry.fraction import Fraction
from blockdsl.marks.display_list import Document, Path, TextMark
from blockdsl.marks.theme import PAPERS, paper_named
from blockdsl.page.scale_check import EIGHT_INCHES, FIFTEEN_CENTIMETRES, SIX_INCHES, TWENTY_CENTIMETRES, BarReading
from blockdsl.page.scale_check_page import check_print_page
from tests.unit.fullsize.sample_templates import sample_block
from tests.unit.fullsize.test_templates_words import box_of, flat, texts


@pytest.fixture(params=[*PAPERS, "roll 24 in", "roll 90 cm"])
def paper(request: pytest.FixtureRequest) -> str:
    return str(request.param)


def test_every_page_says_the_square_and_the_bar_in_inches_and_in_millimetres_or_centimetres() -> None:
    # 5 cm are 1.9685 in; 1 31/32 in are 1.96875.
    for page in template_pages(sample_block(), paper="tabloid").pages:
        words = texts(Document("", (page,)))
        assert [words.count(said) for said in ("1 in", "25.4 mm", "5 cm (1 ³¹⁄₃₂ in)")] == [1, 1, 1]


def test_the_long_bars_say_their_length_in_both_units() -> None:
    # 6 in are 15.24 cm; 15 cm are 5.9055 in, and 5 29/32 in are 5.90625.
    words = texts(template_pages(sample_block(), paper="letter"))
    assert words[words.index("6 in") + 1] == "(15.24 cm)"
    assert words[words.index("15 cm") + 1] == "(5 ²⁹⁄₃₂ in)"


@pytest.mark.parametrize("bar", [SIX_INCHES, FIFTEEN_CENTIMETRES, EIGHT_INCHES, TWENTY_CENTIMETRES])
def test_the_table_of_a_bar_runs_from_94_to_104_per_cent_in_what_a_ruler_shows(bar: BarReading) -> None:
    scales = [reading / bar.meant for reading in bar.readings]
    assert scales == sorted(scales)
    assert scales.count(Fraction(1)) == 1
    assert float(scales[0]) == pytest.approx(0.94, abs=0.003)
    assert float(scales[-1]) == pytest.approx(1.04, abs=0.003)
    step = Fraction(1, 16) if bar.unit == "in" else Fraction(1, 10)
    assert all((reading / step).denominator == 1 for reading in bar.readings)


def test_the_page_that_checks_the_print_has_the_size_of_its_paper(paper: str) -> None:
    page, sheet = check_print_page(paper), paper_named(paper)
    assert (page.width_pt, page.height_pt) == (sheet.width_pt, sheet.height_pt)


def test_nothing_on_the_page_that_checks_the_print_leaves_184_by_254_mm(paper: str) -> None:
    content = paper_named(paper).content
    edge = box(content.x_pt, content.y_pt, content.right_pt, content.bottom_pt).buffer(0.5)
    for mark in flat(check_print_page(paper).marks):
        if isinstance(mark, TextMark):
            assert edge.contains(box_of(mark)), mark.text
        else:
            assert all(edge.covers(LineString(ring)) for ring in mark.rings)


def test_no_words_of_the_page_that_checks_the_print_overlap_or_are_crossed_by_a_line() -> None:
    marks = list(flat(check_print_page("letter").marks))
    words = [(mark.text, box_of(mark)) for mark in marks if isinstance(mark, TextMark)]
    for (one, first), (two, second) in combinations(words, 2):
        assert first.intersection(second).area < 0.01, f"{one!r} over {two!r}"
    lines = [
        LineString((*ring, ring[0]) if mark.closed else ring)
        for mark in marks
        if isinstance(mark, Path)
        for ring in mark.rings
    ]
    for text, area in words:
        assert not [line for line in lines if line.intersects(area)], text


def test_an_unknown_paper_has_no_page_that_checks_the_print() -> None:
    with pytest.raises(ValueError, match="unknown paper"):
        check_print_page("napkin")
