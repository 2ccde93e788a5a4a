"""Hatches, judged by shapely: every line lies in its patch, none is missing, and cloth runs on over a seam."""

from collections.abc import Iterable
from math import hypot

import pytest
from shapely.geometry import LineString, MultiLineString, Point, Polygon, box

from blockdsl.marks.display_list import Path, Segment
from blockdsl.marks.hatch import (
    HATCHES,
    Dots,
    HatchLines,
    clipped_dots,
    clipped_lines,
    contrast,
    hatch,
    hatch_all,
    hatch_ink,
    luminance,
)

ARROW = ((10.0, 10.0), (90.0, 15.0), (80.0, 95.0), (45.0, 40.0), (5.0, 70.0))
SQUARE = ((0.0, 0.0), (72.0, 0.0), (72.0, 72.0), (0.0, 72.0))
NUMBERS = range(1, len(HATCHES) + 1)


def family(lines: HatchLines) -> MultiLineString:
    """The lines without clipping: those clipped to a box far larger than the patch."""
    wide = ((-300.0, -300.0), (400.0, -300.0), (400.0, 400.0), (-300.0, 400.0))
    return MultiLineString([LineString(segment) for segment in clipped_lines(wide, lines)])


@pytest.mark.parametrize(
    "lines", [part for style in HATCHES for part in style if isinstance(part, HatchLines)], ids=str
)
def test_lines_are_clipped_to_a_patch_with_a_hollow_and_none_is_missing(lines: HatchLines) -> None:
    clipped = MultiLineString([LineString(segment) for segment in clipped_lines(ARROW, lines)])
    assert clipped.difference(Polygon(ARROW).buffer(1e-6)).length == pytest.approx(0, abs=1e-6)
    assert clipped.length == pytest.approx(family(lines).intersection(Polygon(ARROW)).length, rel=1e-6)


@pytest.mark.parametrize("lines", [HatchLines(-45, 4.5), HatchLines(0, 7), HatchLines(30, 5)], ids=str)
def test_lines_stand_as_far_apart_as_the_hatch_says(lines: HatchLines) -> None:
    # As many points of line as the area divided by the spacing, up to the lines that the edges cut off.
    length = sum(hypot(x1 - x0, y1 - y0) for (x0, y0), (x1, y1) in clipped_lines(SQUARE, lines))
    assert length == pytest.approx(72 * 72 / lines.spacing_pt, rel=0.05)


def middles(rows: Iterable[Segment], dots: Dots) -> set[tuple[float, float]]:
    """The middle of every dot of the rows, to a thousandth of a point."""
    return {
        (round(left + place * dots.spacing_pt, 3), round(y, 3))
        for (left, y), (right, _) in rows
        for place in range(round((right - left) / dots.spacing_pt) + 1)
    }


@pytest.mark.parametrize("dots", [part for style in HATCHES for part in style if isinstance(part, Dots)], ids=str)
def test_dots_lie_in_their_patch_altogether_and_none_is_missing(dots: Dots) -> None:
    found = middles(clipped_dots(ARROW, dots), dots)
    wide = ((-300.0, -300.0), (400.0, -300.0), (400.0, 400.0), (-300.0, 400.0))
    surely = {dot for dot in middles(clipped_dots(wide, dots), dots) if within(dot, dots.radius_pt)}
    assert len(surely) > 5
    # A slanting edge may graze the side of a dot.
    assert all(within(dot, 0.65 * dots.radius_pt) for dot in found)
    assert surely <= found


def within(middle: tuple[float, float], radius: float) -> bool:
    return bool(Polygon(ARROW).contains(Point(middle).buffer(radius)))


@pytest.mark.parametrize("number", [3, 12])
def test_dots_are_dashes_of_no_length_with_round_ends_as_far_apart_as_the_hatch_says(number: int) -> None:
    (mark,), (dots,) = hatch(SQUARE, number), HATCHES[number - 1]
    assert isinstance(dots, Dots)
    assert mark.round_ends
    assert mark.stroke_width_pt == 2 * dots.radius_pt
    assert mark.dash[0] < 0.1 * dots.radius_pt
    assert sum(mark.dash) == pytest.approx(dots.spacing_pt)


@pytest.mark.parametrize("number", NUMBERS)
def test_a_hatch_runs_on_over_a_seam(number: int) -> None:
    whole, halves = (
        ((0, 0), (80, 0), (80, 40), (0, 40)),
        (((0, 0), (40, 0), (40, 40), (0, 40)), ((40, 0), (80, 0), (80, 40), (40, 40))),
    )
    together, apart = open_length(hatch(whole, number)), open_length(hatch_all(halves, number))
    assert together == pytest.approx(apart)


@pytest.mark.parametrize("number", [3, 12])
def test_dots_stand_in_the_same_rows_on_both_sides_of_a_seam(number: int) -> None:
    (dots,) = HATCHES[number - 1]
    assert isinstance(dots, Dots)
    left, right = (((0, 0), (40, 0), (40, 40), (0, 40)), ((40, 0), (80, 0), (80, 40), (40, 40)))
    whole = middles(clipped_dots(((0, 0), (80, 0), (80, 40), (0, 40)), dots), dots)
    apart = middles(clipped_dots(left, dots), dots) | middles(clipped_dots(right, dots), dots)
    assert apart == {(x, y) for x, y in whole if abs(x - 40) > dots.radius_pt - 1e-6}


def open_length(marks: tuple[Path, ...]) -> float:
    return sum(float(LineString(ring).length) for mark in marks if not mark.round_ends for ring in mark.rings)


def test_twelve_fabrics_have_twelve_hatches_and_the_thirteenth_begins_again() -> None:
    drawn = [hatch(SQUARE, number) for number in NUMBERS]
    assert len(set(drawn)) == len(drawn) == 12
    assert hatch(SQUARE, 13) == drawn[0]


def test_a_fabrics_hatch_is_one_mark_however_many_patches_it_has() -> None:
    patches = [box(left, 0, left + 30, 30).exterior.coords[:-1] for left in range(0, 900, 30)]
    assert [len(hatch_all(patches, number)) for number in (1, 2, 3, 6)] == [0, 1, 1, 1]


def test_a_patch_smaller_than_the_hatch_may_stay_bare_without_harm() -> None:
    assert hatch(((0, 0), (0.1, 0), (0, 0.1)), 2) == ()
    assert hatch((), 2) == ()


@pytest.mark.parametrize(
    "fill", ["#ffffff", "#000000", "#dfe3e0", "#e0a030", "#3a4750", "#777777", "#0000ff", "#ffff00"]
)
def test_the_ink_shows_on_light_and_dark_fabric_and_is_discreet(fill: str) -> None:
    seen = contrast(luminance(fill), luminance(hatch_ink(fill)))
    assert 2.2 <= seen < 3.2


def test_ink_is_dark_on_light_fabric_and_light_on_dark() -> None:
    assert luminance(hatch_ink("#dfe3e0")) < luminance("#dfe3e0")
    assert luminance(hatch_ink("#3a4750")) > luminance("#3a4750")


def test_contrast_of_black_on_white_is_21() -> None:
    assert contrast(luminance("#000000"), luminance("#ffffff")) == pytest.approx(21)
