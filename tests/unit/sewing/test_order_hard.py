"""Seams that are not straight right across: partial ones and set-in ones, as few as there can be.

How the places of the seams were found is written beside each; orders are common practice, no source.
"""

from time import process_time

import pytest

from blockdsl.geometry import Point
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import BlockDesign
from blockdsl.sewing.order import Joined, SeamLine, count_seams, walk
from tests.unit.sewing.order_sample import (
    ROOT_3,
    drawn,
    laid,
    order_of,
    pinwheel_lines,
    rectangle,
    seams,
    star_of_diamonds,
    told,
)


def point(x: int | Fraction, y: int | Fraction) -> Point:
    return Point(Fraction(x), Fraction(y))


def hard_seams(order: Joined) -> list[SeamLine]:
    return [seam for node in walk(order) if isinstance(node, Joined) for seam in node.seams if seam.kind != "straight"]


# --- partial ------------------------------------------------------------------------------------------


def test_a_pinwheel_of_rectangles_has_one_partial_seam_and_three_straight_ones() -> None:
    assert seams(drawn(*pinwheel_lines(), size="3 in")) == (3, 1, 0)


def test_the_first_rectangle_of_a_pinwheel_is_sewn_half_way_along_the_square_and_finished_last() -> None:
    # The rectangle on top, 2 × 1, meets the square from x = 1 to 2 and the left rectangle from x = 0 to 1.
    block = drawn(*pinwheel_lines(), size="3 in")
    order = order_of(block)
    assert isinstance(order, Joined)
    assert told(block) == "((((s f)!partial s) s) s)"
    (seam,) = hard_seams(order)
    assert seam.start == point(2, 1)
    assert seam.end == point(0, 1)
    assert seam.stop == point(Fraction(3, 2), 1)
    assert order.closes == ((seam.stop, seam.end),)


def test_pinwheels_turned_and_mirrored_have_one_partial_seam_each() -> None:
    above = "\n".join(["unit wheel", *(f"  {line}" for line in pinwheel_lines())])
    block = drawn("row wheel wheel>", "row wheel~ moss", above=above, size="6 in")
    assert seams(block) == (12, 3, 0)


def test_a_pinwheel_inside_a_pinwheel_has_two_partial_seams() -> None:
    arms = [rectangle(0, 0, 6, 3), rectangle(6, 0, 9, 6), rectangle(3, 6, 9, 9), rectangle(0, 3, 3, 9)]
    inner = [rectangle(3, 3, 5, 4), rectangle(5, 3, 6, 5), rectangle(4, 5, 6, 6), rectangle(3, 4, 4, 6)]
    block = laid([("fog", corners) for corners in [*arms, *inner]] + [("slate", rectangle(4, 4, 5, 5))], 9, 9)
    assert seams(block) == (6, 2, 0)


def test_a_frame_whose_strips_go_round_has_one_partial_seam_about_a_whole_unit() -> None:
    above = "unit middle = checker 2 x 2 fog slate"
    block = drawn("row fog - - slate", "row moss middle - |", "row | | | |", "row | lantern - -", above=above)
    assert seams(block) == (6, 1, 0)


# --- set in -------------------------------------------------------------------------------------------


def test_a_patch_round_a_corner_is_one_set_in_seam_that_turns_at_the_corner() -> None:
    corner = [(0, 0), (2, 0), (2, 1), (1, 1), (1, 2), (0, 2)]
    order = order_of(laid([("fog", corner), ("slate", rectangle(1, 1, 2, 2))], 2, 2))
    assert isinstance(order, Joined)
    (seam,) = order.seams
    assert seam.kind == "set-in"
    assert {seam.start, seam.end} == {point(2, 1), point(1, 2)}
    assert seam.turns == (point(1, 1),)


@pytest.mark.parametrize("fabrics", ["f", "fl", "fflf"])
def test_a_star_of_eight_diamonds_sets_in_four_squares_and_four_triangles(fabrics: str) -> None:
    # Sixteen patches take fifteen seams; at each of the eight places between two points three patches meet in a Y.
    order = order_of(star_of_diamonds(fabrics))
    count = count_seams(order)
    assert (count.straight, count.partial, count.set_in) == (7, 0, 8)


def test_the_points_of_a_star_are_sewn_to_each_other_before_the_ground_is_set_in_between_them() -> None:
    order = order_of(star_of_diamonds())
    for node in walk(order):
        if isinstance(node, Joined) and node.kind == "set-in":
            assert len(node.parts[-1].patches) == 1
            assert node.parts[-1].patches[0] >= 8, "a square or triangle, not a diamond"


def test_a_star_is_two_halves_with_a_corner_each_and_its_other_corners_are_set_in_last() -> None:
    # Common practice, no source: pairs with a triangle, halves with a square, the long seam, the last two squares.
    order = order_of(star_of_diamonds())
    for _ in range(2):
        assert isinstance(order, Joined)
        assert order.parts[-1].patches[0] >= 12, "a corner square"
        order = order.parts[0]
    assert isinstance(order, Joined)
    assert order.kind == "straight"
    halves = [sorted(patch // 8 + (patch >= 12) for patch in half.patches) for half in order.parts]
    assert halves == [[0, 0, 0, 0, 1, 1, 2]] * 2, "four diamonds, two triangles and a square in each"


def test_a_hexagon_in_a_box_of_its_own_size_takes_four_corners_along_straight_seams() -> None:
    # Sides of 2, standing on its point: 2√3 wide and 4 high.
    half, zero = ROOT_3, Fraction(0)
    steps = [(1, 0), (2, 1), (2, 3), (1, 4), (0, 3), (0, 1)]
    whole = [(x * half, Fraction(y)) for x, y in steps]
    corners = [
        [(zero, zero), (half, zero), (zero, Fraction(1))],
        [(half, zero), (2 * half, zero), (2 * half, Fraction(1))],
        [(2 * half, Fraction(3)), (2 * half, Fraction(4)), (half, Fraction(4))],
        [(half, Fraction(4)), (zero, Fraction(4)), (zero, Fraction(3))],
    ]
    block = laid([("fog", whole), *(("slate", corner) for corner in corners)], 2 * half, 4)
    assert seams(block) == (4, 0, 0)


def test_three_hexagons_that_meet_take_one_set_in_seam() -> None:
    # Hexagons at the top left, top right and below, cut off by the block from (√3, 1) to (3√3, 6).
    # They meet at (2√3, 3).
    half = ROOT_3
    left = [(half, Fraction(1)), (2 * half, Fraction(1)), (2 * half, Fraction(3)), (half, Fraction(4))]
    right = [(2 * half, Fraction(1)), (3 * half, Fraction(1)), (3 * half, Fraction(4)), (2 * half, Fraction(3))]
    below = [
        (half, Fraction(4)),
        (2 * half, Fraction(3)),
        (3 * half, Fraction(4)),
        (3 * half, Fraction(6)),
        (half, Fraction(6)),
    ]
    moved = [[(x - half, y - 1) for x, y in corners] for corners in (left, right, below)]
    block = laid([("fog", moved[0]), ("slate", moved[1]), ("moss", moved[2])], 2 * half, 5)
    assert seams(block) == (1, 0, 1)


# --- honeycombs -----------------------------------------------------------------------------------------


def honeycomb(across: int, down: int) -> BlockDesign:
    """Rows of hexagons on their points, 2 in from flat to flat, so that rows are √3 = 1.73 in apart."""
    return drawn(f"row (hexagons fog across {across})", size=f"{2 * across} x {down} in")


def test_seven_rows_of_seven_hexagons_are_sewn_row_by_row_in_less_than_a_second() -> None:
    block = honeycomb(7, 14)
    started = process_time()
    order = order_of(block)
    assert process_time() - started < 1
    assert isinstance(order, Joined)
    assert len(order.parts) == 9  # four rows of 1.73 in fit into half the height and a side, 8.15 in
    for row in order.parts:
        inner = [node for node in walk(row) if isinstance(node, Joined)]
        assert all(seam.kind == "straight" for node in inner for seam in node.seams)
    assert all(seam.kind == "set-in" for seam in order.seams)


def test_a_row_of_a_honeycomb_turns_at_every_corner_of_its_zigzag() -> None:
    # Between a row of seven whole hexagons and one of six and two halves: a point of each of the seven looks into the
    # other row, and so do the six places between them, thirteen corners, all on two levels.
    order = order_of(honeycomb(7, 14))
    assert isinstance(order, Joined)
    for seam in order.seams:
        assert len(seam.turns) == 13
        assert len({corner.y for corner in (seam.start, *seam.turns, seam.end)}) == 2


def test_half_hexagons_need_no_set_in_seam() -> None:
    block = drawn("row (hexagons fog lantern slate across 4 halves)", size="8 in")
    assert seams(block)[1:] == (0, 0)
