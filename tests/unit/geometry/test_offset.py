"""Seam allowances; all values derived by hand from distances between lines."""

from blockdsl.geometry.fraction import Fraction, read_fraction
from blockdsl.geometry.number import ceil_to, square_root
from blockdsl.geometry.offset import offset_outward, trim_points
from blockdsl.geometry.polygon import Point, Polygon, bounding_box, is_convex, is_simple

ROOT_TWO = square_root(2)
ROOT_THREE = square_root(3)
QUARTER = Fraction(1, 4)
EIGHTH = Fraction(1, 8)


def shape(corners: str) -> Polygon:
    return tuple(Point(*(read_fraction(part) for part in corner.split(","))) for corner in corners.split())


def test_a_square_of_3_in_is_cut_3_1_2() -> None:
    assert offset_outward(shape("0,0 3,0 3,3 0,3"), QUARTER) == shape("-1/4,-1/4 13/4,-1/4 13/4,13/4 -1/4,13/4")


def test_a_half_square_triangle_of_3_in_is_cut_from_3_7_8_squares() -> None:
    left, top, right, bottom = bounding_box(offset_outward(shape("0,0 3,3 0,3"), QUARTER))
    leg = 3 + (2 + ROOT_TWO) / 4
    assert (right - left, bottom - top) == (leg, leg)
    assert ceil_to(leg, EIGHTH) == Fraction(31, 8)


def test_a_quarter_square_triangle_of_4_in_is_cut_from_5_1_4_squares() -> None:
    left, _, right, _ = bounding_box(offset_outward(shape("0,2 2,0 4,2"), QUARTER))
    assert right - left == 4 + (1 + ROOT_TWO) / 2
    assert ceil_to(right - left, EIGHTH) == Fraction(21, 4)


def test_a_triangle_with_three_equal_sides_grows_by_two_roots_of_three_allowances() -> None:
    # the centre stays, the distance to each side grows by s, so each side by s · 2√3
    height = ROOT_THREE
    triangle = (Point(Fraction(1), Fraction(0)), Point(Fraction(2), height), Point(Fraction(0), height))
    left, top, right, bottom = bounding_box(offset_outward(triangle, Fraction(1)))
    assert right - left == 2 + 2 * ROOT_THREE
    assert bottom - top == height + 3


def test_an_inward_corner_moves_into_the_notch() -> None:
    corner = shape("0,0 4,0 4,2 2,2 2,4 0,4")
    assert offset_outward(corner, QUARTER) == shape("-1/4,-1/4 17/4,-1/4 17/4,9/4 9/4,9/4 9/4,17/4 -1/4,17/4")


def test_straight_corners_do_not_stop_the_allowance() -> None:
    assert offset_outward(shape("0,0 1,0 3,0 3,3 0,3"), QUARTER) == offset_outward(shape("0,0 3,0 3,3 0,3"), QUARTER)


def test_a_notch_narrower_than_two_allowances_closes() -> None:
    notched = shape("0,0 2,0 2,3 3,3 3,0 6,0 6,6 0,6")
    assert offset_outward(notched, Fraction(3, 4)) == shape("-3/4,-3/4 27/4,-3/4 27/4,27/4 -3/4,27/4")


def test_a_narrow_notch_between_unequal_shoulders_closes_to_a_step() -> None:
    notched = shape("0,0 2,0 2,3 3,3 3,1 6,1 6,6 0,6")
    assert offset_outward(notched, Fraction(3, 4)) == shape("-3/4,-3/4 11/4,-3/4 11/4,1/4 27/4,1/4 27/4,27/4 -3/4,27/4")


def test_long_points_of_a_half_square_triangle_are_trimmed_square_to_its_sides() -> None:
    sewing = shape("0,0 3,3 0,3")
    cutting = offset_outward(sewing, QUARTER)
    trimmed = trim_points(cutting, sewing, QUARTER)
    # at (0, 0), with s = 1/4: the cut square to the long edge leaves the left side s·tan 22.5° above the corner,
    # the two cuts meet as far left of it, and the cut square to the left side runs level at y = -s
    short = QUARTER * (ROOT_TWO - 1)
    assert trimmed[:3] == (Point(-QUARTER, -short), Point(-short, -QUARTER), Point(short, -QUARTER))
    assert len(trimmed) == 7
    assert trimmed[-1] == cutting[-1]
    assert is_convex(trimmed)
    assert is_simple(trimmed)


def test_right_and_blunt_corners_are_left_alone() -> None:
    square, slab = shape("0,0 3,0 3,3 0,3"), shape("1,0 3,0 4,1 3,2 1,2 0,1")
    for sewing in (square, slab):
        cutting = offset_outward(sewing, QUARTER)
        assert trim_points(cutting, sewing, QUARTER) == cutting
