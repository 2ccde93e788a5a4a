"""Turning and mirroring in a box, looked at on squared paper."""

import pytest

from blockdsl.geometry.fraction import Fraction, read_fraction
from blockdsl.geometry.number import Exact, Surd
from blockdsl.geometry.polygon import Point, Polygon, signed_area
from blockdsl.geometry.symmetry import (
    ALL_EIGHT,
    HALF_TURN,
    IDENTITY,
    MIRROR,
    QUARTER_ANTICLOCKWISE,
    QUARTER_CLOCKWISE,
    from_turns,
)

ACROSS, DOWN = Fraction(4), Fraction(2)


def exact(*numbers: Exact | int) -> tuple[Exact, ...]:
    return tuple(number if isinstance(number, Surd) else Fraction(number) for number in numbers)


def shape(corners: str) -> Polygon:
    return tuple(Point(*(read_fraction(part) for part in corner.split(","))) for corner in corners.split())


def test_a_quarter_turn_clockwise_takes_the_top_left_corner_to_the_top_right() -> None:
    assert QUARTER_CLOCKWISE.turned_extent(ACROSS, DOWN) == exact(2, 4)
    assert QUARTER_CLOCKWISE.apply(Point(Fraction(0), Fraction(0)), ACROSS, DOWN) == exact(2, 0)
    assert QUARTER_CLOCKWISE.apply(Point(Fraction(4), Fraction(0)), ACROSS, DOWN) == exact(2, 4)


def test_a_flying_geese_point_turned_clockwise_looks_right() -> None:
    goose = shape("2,0 4,2 0,2")
    assert QUARTER_CLOCKWISE.apply_polygon(goose, ACROSS, DOWN) == shape("2,2 0,4 0,0")


def test_a_mirror_takes_left_for_right_and_keeps_outlines_clockwise() -> None:
    patch = shape("0,0 4,0 0,2")
    mirrored = MIRROR.apply_polygon(patch, ACROSS, DOWN)
    assert mirrored == shape("4,0 4,2 0,0")
    assert signed_area(mirrored) == signed_area(patch) > 0


@pytest.mark.parametrize(
    ("marks", "symmetry"),
    [
        ("", IDENTITY),
        (">>>>", IDENTITY),
        ("<>", IDENTITY),
        ("~~", IDENTITY),
        (">>", HALF_TURN),
        (">>>", QUARTER_ANTICLOCKWISE),
    ],
)
def test_marks_after_a_cell_add_up(marks: str, symmetry: object) -> None:
    assert from_turns(marks) == symmetry


def test_marks_apply_in_order_from_left_to_right() -> None:
    # mirror, then turn: the top left corner goes to the top right, then to the bottom right
    assert from_turns("~>").apply(Point(Fraction(0), Fraction(0)), ACROSS, DOWN) == exact(2, 4)
    # turn, then mirror: to the top right, then to the top left
    assert from_turns(">~").apply(Point(Fraction(0), Fraction(0)), ACROSS, DOWN) == exact(0, 0)
    assert from_turns("~>") == from_turns("<~")


def test_there_are_eight_of_which_four_are_mirrored() -> None:
    assert len(set(ALL_EIGHT)) == 8
    assert [each.is_mirrored for each in ALL_EIGHT].count(True) == 4
    assert [each.swaps_sides for each in ALL_EIGHT].count(True) == 4


def test_the_grain_turns_with_the_patch() -> None:
    assert QUARTER_CLOCKWISE.apply_direction(Point(Fraction(1), Fraction(0))) == exact(0, 1)
    assert MIRROR.apply_direction(Point(Fraction(1), Fraction(2))) == exact(-1, 2)
