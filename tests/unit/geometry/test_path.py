"""Outlines of appliqué: paths followed, and drawn again outside for what is turned under."""

from __future__ import annotations

from math import pi

import pytest

from blockdsl.geometry import Point, Polygon, to_float
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.parallel import parallel_outside
from blockdsl.geometry.path import MOST_CORNERS, PathFault, outline_of_path, reaches_beyond
from blockdsl.geometry.polygon import area, bounding_box

F = Fraction
GRID = (F(4), F(4))
SIZE = (F(8), F(8))


def drawn(path: str) -> Polygon:
    """In a grid of 4 x 4, finished 8 x 8."""
    return outline_of_path(path, GRID, SIZE)


def test_straight_sides_come_out_exact_and_clockwise() -> None:
    square = (Point(F(2), F(2)), Point(F(6), F(2)), Point(F(6), F(6)), Point(F(2), F(6)))
    assert drawn("M1 1 H3 V3 H1 Z") == square
    assert drawn("m1,1 h2 v2 h-2 z") == square
    assert drawn("M1 1 L3 1 3 3 1 3 1 1") == square
    assert set(drawn("M1 1 V3 H3 V1 Z")) == set(square)


def test_numbers_are_read_as_svg_writes_them() -> None:
    assert drawn("M1.5.5l1-0L2.5,1.5e0 1.5 15e-1z") == drawn("M1.5 0.5 L2.5 0.5 L2.5 1.5 L1.5 1.5 Z")


def test_two_half_circles_have_the_area_of_a_circle() -> None:
    """Radius 1 of the grid is 2 in: 4π; steps lie within it by 8 in / 6000 at most."""
    circle = drawn("M1 2A1 1 0 1 1 3 2A1 1 0 1 1 1 2Z")
    assert 4 * pi - 4 * pi * 8 / 6000 <= to_float(area(circle)) <= 4 * pi
    assert drawn("M1 2A1 1 0 113 2A1 1 0 111 2Z") == circle


def test_a_quarter_of_a_quadratic_curve_has_the_area_that_calculus_gives() -> None:
    """Under a quadratic curve lie two thirds of its triangle: 2/3 of 8 in × 8 in / 2."""
    assert to_float(area(drawn("M0 4 Q0 0 4 0 L0 4 Z"))) == pytest.approx(64 / 3, rel=1e-3)


def test_a_smooth_curve_goes_on_with_the_mirrored_handle() -> None:
    assert drawn("M0 2 Q1 0 2 2 T4 2 V4 H0 Z") == drawn("M0 2 Q1 0 2 2 Q3 4 4 2 V4 H0 Z")
    assert drawn("M0 2 C0 1 2 1 2 2 S4 3 4 2 V4 H0 Z") == drawn("M0 2 C0 1 2 1 2 2 C2 3 4 3 4 2 V4 H0 Z")


@pytest.mark.parametrize(
    ("path", "why"),
    [
        ("", "not closed"),
        ("1 1 L2 2 Z", "begins with `M`"),
        ("L2 2 Z", "begins with `M`"),
        ("M1 1 B2 2 Z", "`B` is no command"),
        ("M1 1 L2 Z", "wants 2 numbers"),
        ("M1 1 ! Z", "no command and no number"),
        ("M1 1 H3 V3 H1", "not closed"),
        ("M1 1 H3 V3 H1 Z M0 0 H1 V1 Z", "more than one outline"),
        ("M1 1 L3 3 H1 L3 1 Z", "crosses or touches itself"),
        ("M1 1 H3 H1 Z", "encloses nothing"),
        ("M1 1 L3 1 L3 1e99 Z", "the outline goes too far, to 1e99"),
        ("M1 1 A1 1 0 2 1 3 3 Z", "wants 7 numbers"),
        (f"M0.{'1' * 40} 1 H3 V3 Z", "too many digits"),
        (
            "M0 0" + "".join(f" L{n / 1000} {n % 2}" for n in range(1, 2 * MOST_CORNERS)) + " Z",
            "more than 1000 corners",
        ),
    ],
)
def test_a_path_that_cannot_be_followed_is_told_why(path: str, why: str) -> None:
    with pytest.raises(PathFault, match=why):
        drawn(path)


def test_a_piece_that_reaches_over_the_edge_is_found() -> None:
    assert not reaches_beyond(drawn("M0 0 H4 V4 H0 Z"), *SIZE)
    assert reaches_beyond(drawn("M0 0 H4.1 V4 H0 Z"), *SIZE)


def test_what_is_turned_under_of_a_square_lies_just_so_far_outside() -> None:
    outside = parallel_outside(drawn("M1 1 H3 V3 H1 Z"), F(3, 10))
    assert bounding_box(outside) == (F(17, 10), F(17, 10), F(63, 10), F(63, 10))
    # four sides of 4 in by 0.3 in, and round the corners a circle of 0.3 in, a hundredth larger at most
    more = to_float(area(outside)) - 16 - 4 * 4 * 0.3
    assert pi * 0.09 <= more <= pi * 0.09 * 1.02


def test_nothing_is_added_to_a_raw_edge() -> None:
    square = drawn("M1 1 H3 V3 H1 Z")
    assert parallel_outside(square, F(0)) == square


def test_a_narrow_notch_closes() -> None:
    """A slit of 0.2 in between two bars: with 1/4 in from both sides nothing of it is left below its mouth."""
    slit = drawn("M1 1 H1.95 V2.5 H2.05 V1 H3 V3 H1 Z")
    outside = parallel_outside(slit, F(1, 4))
    assert not any(3 < to_float(x) < 5 and 2 < to_float(y) < 6 for x, y in outside)
