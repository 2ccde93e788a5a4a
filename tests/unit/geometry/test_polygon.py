"""Polygons by their corners; all values counted on squared paper."""

import pytest

from blockdsl.geometry.fraction import Fraction, read_fraction
from blockdsl.geometry.number import Exact, Surd
from blockdsl.geometry.polygon import (
    Point,
    Polygon,
    area,
    bounding_box,
    clockwise,
    contains,
    drop_straight_corners,
    edges,
    inside_point,
    is_convex,
    is_simple,
    signed_area,
    translate,
)


def exact(*numbers: Exact | int) -> tuple[Exact, ...]:
    return tuple(number if isinstance(number, Surd) else Fraction(number) for number in numbers)


def shape(corners: str) -> Polygon:
    return tuple(Point(*(read_fraction(part) for part in corner.split(","))) for corner in corners.split())


SQUARE = shape("0,0 2,0 2,2 0,2")
ARROW = shape("0,0 4,0 4,4 2,2 0,4")
BOW_TIE = shape("0,0 2,2 2,0 0,2")


def test_an_outline_that_runs_clockwise_on_the_page_has_positive_area() -> None:
    assert signed_area(SQUARE) == 4
    assert signed_area(SQUARE[::-1]) == -4
    assert area(SQUARE[::-1]) == 4


def test_turning_an_outline_clockwise_keeps_its_first_corner() -> None:
    assert clockwise(SQUARE) == SQUARE
    assert clockwise(shape("0,0 0,2 2,2 2,0")) == SQUARE


def test_the_area_of_an_outline_with_an_inward_corner() -> None:
    # a square of 16 less a triangle with base 4 and height 2
    assert area(ARROW) == 12


def test_sides_lead_round_to_the_first_corner() -> None:
    assert list(edges(SQUARE))[-1] == (Point(Fraction(0), Fraction(2)), Point(Fraction(0), Fraction(0)))
    assert len(list(edges(SQUARE))) == 4


def test_box_and_moving() -> None:
    assert bounding_box(ARROW) == exact(0, 0, 4, 4)
    assert bounding_box(translate(ARROW, Fraction(1, 2), Fraction(-1))) == exact(Fraction(1, 2), -1, Fraction(9, 2), 3)


def test_straight_repeated_and_folded_corners_are_dropped() -> None:
    assert drop_straight_corners(shape("0,0 1,0 2,0 2,2 2,2 0,2")) == SQUARE
    assert drop_straight_corners(shape("1,0 2,0 2,2 0,2 0,0")) == shape("2,0 2,2 0,2 0,0")
    assert drop_straight_corners(shape("0,0 2,0 4,0 2,0 2,2 0,2")) == SQUARE


def test_nothing_is_left_of_a_polygon_without_area() -> None:
    assert drop_straight_corners(shape("0,0 1,1 3,3")) == ()
    assert drop_straight_corners(shape("0,0 1,1")) == ()


def test_a_simple_outline_meets_itself_nowhere() -> None:
    assert is_simple(SQUARE)
    assert is_simple(ARROW)


@pytest.mark.parametrize(
    "corners",
    [
        "0,0 2,2 2,0 0,2",  # bow tie: two sides cross
        "0,0 4,0 4,2 2,0 0,2",  # a corner touches a side
        "0,0 2,0 2,2 2,0 0,2",  # a corner comes twice
        "0,0 4,0 2,0 0,2",  # a side folds back
        "0,0 2,0",  # too few corners
        "0,0 4,0 4,4 3,4 3,0 1,0 1,4 0,4",  # a side lies along another
    ],
)
def test_outlines_that_cross_touch_or_fold_are_not_simple(corners: str) -> None:
    assert not is_simple(shape(corners))


def test_convex_outlines_have_no_inward_corner() -> None:
    assert is_convex(SQUARE)
    assert is_convex(SQUARE[::-1])
    assert not is_convex(ARROW)


def test_a_place_is_inside_on_the_outline_or_outside() -> None:
    assert contains(ARROW, Point(Fraction(1), Fraction(1)))
    assert contains(ARROW, Point(Fraction(2), Fraction(2)))
    assert not contains(ARROW, Point(Fraction(2), Fraction(3)))
    assert not contains(ARROW, Point(Fraction(5), Fraction(0)))


def test_a_point_inside_is_strictly_inside_even_between_prongs() -> None:
    fork = shape("0,0 6,0 6,6 5,6 5,1 1,1 1,6 0,6")
    assert inside_point(SQUARE) == exact(1, 1)
    place = inside_point(fork)
    assert contains(fork, place)
    assert place in (exact(Fraction(1, 2), Fraction(7, 2)), exact(Fraction(11, 2), Fraction(7, 2)))


def test_a_line_has_no_inside() -> None:
    with pytest.raises(ValueError, match="inside"):
        inside_point(shape("0,0 1,0 2,0"))


def test_a_bow_tie_has_no_area_at_all() -> None:
    # which is why such outlines are refused before the proof of cover
    assert signed_area(BOW_TIE) == 0
