"""By how much one outline is turned to lie as another does."""

from __future__ import annotations

from blockdsl.geometry import Point, square_root
from blockdsl.geometry.arc import Bend, Curved
from blockdsl.geometry.fraction import Fraction as F  # noqa: N817 - many small numbers
from blockdsl.geometry.turning import turn_between

KITE = (Point(F(0), F(0)), Point(F(3), F(0)), Point(F(4), F(4)), Point(F(0), F(4)))


def test_an_outline_moved_is_not_turned() -> None:
    assert turn_between(KITE, tuple(Point(x + 2, y - 7) for x, y in KITE)) == (F(1), F(0))


def test_a_quarter_turn_clockwise_has_a_cosine_of_nothing_and_a_sine_of_one() -> None:
    # (x, y) comes to lie at (-y, x), y downward; the outline begins with another corner
    turned = [Point(-y, x) for x, y in KITE]
    assert turn_between(KITE, (*turned[2:], *turned[:2])) == (F(0), F(1))


def test_an_eighth_turn_has_roots() -> None:
    half = square_root(F(1, 2))
    turned = tuple(Point((x - y) * half, (x + y) * half) for x, y in KITE)
    assert turn_between(KITE, turned) == (half, half)


def test_a_mirror_image_is_no_turn() -> None:
    mirrored = tuple(Point(-x, y) for x, y in reversed(KITE))
    assert turn_between(KITE, mirrored) is None


def test_what_looks_the_same_turned_is_not_turned() -> None:
    square = (Point(F(0), F(0)), Point(F(2), F(0)), Point(F(2), F(2)), Point(F(0), F(2)))
    assert turn_between(square, (*square[1:], square[0])) == (F(1), F(0))


def test_outlines_of_other_corners_are_no_turn_of_each_other() -> None:
    assert turn_between(KITE, KITE[:3]) is None


def test_a_curved_side_tells_the_turns_of_a_square_apart() -> None:
    corners = (Point(F(0), F(0)), Point(F(2), F(0)), Point(F(2), F(2)), Point(F(0), F(2)))
    bend = Bend(Point(F(1), F(1)), square_root(F(2)), hollow=False)
    # the bent side leads from the second corner here: down the right side, a quarter turn clockwise
    lying = Curved(corners, (None, bend, None, None))
    assert turn_between(Curved(corners, (bend, None, None, None)), lying) == (F(0), F(1))
