"""Names of shapes and the grain they are cut on."""

import pytest

from blockdsl.geometry.fraction import Fraction, read_fraction
from blockdsl.geometry.number import Exact, Surd, square_root
from blockdsl.geometry.polygon import Point, Polygon
from blockdsl.geometry.recognise import (
    congruence_key,
    is_own_mirror_image,
    mirrored_key,
    recognise,
    turns_inward,
)

ROOT_TWO = square_root(2)
ROOT_THREE = square_root(3)


def exact(*numbers: Exact | int) -> tuple[Exact, ...]:
    return tuple(number if isinstance(number, Surd) else Fraction(number) for number in numbers)


def shape(corners: str) -> Polygon:
    return tuple(Point(*(read_fraction(part) for part in corner.split(","))) for corner in corners.split())


@pytest.mark.parametrize(
    ("corners", "kind"),
    [
        ("0,0 2,0 2,2 0,2", "square"),
        ("1,0 2,1 1,2 0,1", "square"),
        ("0,0 3,0 3,2 0,2", "rectangle"),
        ("0,0 3,3 0,3", "half-square triangle"),
        ("0,2 2,0 4,2", "quarter-square triangle"),
        ("0,0 2,1 1,3", "triangle"),
        ("0,0 4,0 4,1", "triangle"),
        ("0,0 2,0 3,1 1,1", "parallelogram"),
        ("0,0 1,2 0,4 -1,2", "diamond"),
        ("0,0 4,0 3,1 1,1", "trapezoid"),
        ("0,0 1,1 0,3 -1,1", "kite"),
        ("0,0 3,0 2,2 0,1", "quadrilateral"),
        ("0,0 2,3 0,2 -2,3", "quadrilateral"),
        ("0,0 1,0 2,1 2,2 0,2", "pentagon"),
        ("1,0 2,0 3,1 2,2 1,2 0,1", "hexagon"),
        ("1,0 2,0 3,1 3,2 2,3 1,3 0,2 0,1", "octagon"),
        ("0,0 4,0 4,4 3,4 3,3 2,3 2,4 1,4 1,3 0,3", "polygon"),
    ],
)
def test_shapes_have_the_names_a_quilter_gives_them(corners: str, kind: str) -> None:
    assert recognise(shape(corners)).kind == kind
    assert recognise(shape(corners)[::-1]).kind == kind


def test_corners_on_a_straight_side_do_not_change_the_name() -> None:
    assert recognise(shape("0,0 1,0 2,0 2,1 2,2 0,2")).kind == "square"


def test_a_half_square_triangle_is_measured_by_its_legs_and_cut_along_them() -> None:
    found = recognise(shape("5,5 8,8 5,8"))
    assert found.finished == exact(3, 3)
    assert found.grain in (exact(0, 1), exact(1, 0))


def test_a_quarter_square_triangle_is_measured_and_cut_along_its_long_edge() -> None:
    assert recognise(shape("0,2 2,0 4,2")).finished == exact(4, 2)
    assert recognise(shape("0,2 2,0 4,2")).grain == exact(1, 0)
    assert recognise(shape("0,0 2,2 0,4")).grain == exact(0, 1)


def test_a_rectangle_gives_its_shorter_side_first_at_any_angle() -> None:
    level, tilted = recognise(shape("0,0 3,0 3,2 0,2")), recognise(shape("0,1 1,0 3,2 2,3"))
    assert (level.finished, level.grain) == (exact(2, 3), exact(1, 0))
    assert (tilted.finished, tilted.grain) == (exact(ROOT_TWO, 2 * ROOT_TWO), exact(2, 2))


def test_a_square_on_point_is_measured_along_its_sides() -> None:
    assert recognise(shape("1,0 2,1 1,2 0,1")).finished == exact(ROOT_TWO, ROOT_TWO)


def test_other_shapes_lie_with_their_longest_level_or_upright_side_on_the_grain() -> None:
    trapezoid = recognise(shape("0,0 1,1 1,3 0,4"))
    assert (trapezoid.finished, trapezoid.grain) == (exact(4, 1), exact(0, 1))


def test_an_eight_point_star_diamond_is_a_diamond() -> None:
    slant = ROOT_TWO / 2
    zero, one = Fraction(0), Fraction(1)
    points = (Point(zero, zero), Point(one, zero), Point(1 + slant, slant), Point(slant, slant))
    assert recognise(points).kind == "diamond"
    assert recognise(points).finished == exact(1 + slant, slant)


def test_a_shape_without_area_has_no_name() -> None:
    with pytest.raises(ValueError, match="area"):
        recognise(shape("0,0 1,1 2,2"))


def test_turned_and_moved_shapes_are_the_same_piece() -> None:
    piece = shape("0,0 2,0 3,1 1,1")
    turned = shape("9,4 9,6 8,7 8,5")
    assert congruence_key(piece) == congruence_key(turned)
    assert congruence_key(shape("0,0 3,0 3,2 0,2")) == congruence_key(shape("5,5 7,5 7,8 5,8"))


def test_a_piece_turned_by_forty_five_degrees_is_still_the_same() -> None:
    square = (Point(Fraction(0), Fraction(0)), Point(ROOT_TWO, Fraction(0)), Point(ROOT_TWO, ROOT_TWO))
    assert congruence_key((*square, Point(Fraction(0), ROOT_TWO))) == congruence_key(shape("1,0 2,1 1,2 0,1"))


def test_a_mirrored_parallelogram_is_another_piece_until_it_is_turned_over() -> None:
    left, right = shape("0,0 2,0 3,1 1,1"), shape("1,0 3,0 2,1 0,1")
    assert congruence_key(left) != congruence_key(right)
    assert mirrored_key(left) == congruence_key(right)
    assert not is_own_mirror_image(left)


def test_triangles_squares_and_kites_serve_both_ways() -> None:
    for corners in ("0,0 3,3 0,3", "0,0 3,0 3,2 0,2", "0,0 1,1 0,3 -1,1", "0,0 1,2 0,4 -1,2"):
        assert is_own_mirror_image(shape(corners))


def test_half_and_quarter_square_triangles_of_one_size_are_not_the_same_piece() -> None:
    # legs of √2 both times, once along the axes, once with the long edge of 2 along them
    zero = Fraction(0)
    half = (Point(zero, zero), Point(ROOT_TWO, ROOT_TWO), Point(zero, ROOT_TWO))
    assert recognise(half).kind == "half-square triangle"
    assert congruence_key(half) != congruence_key(shape("0,1 1,0 2,1"))


def test_sizes_are_not_mixed_up() -> None:
    assert congruence_key(shape("0,0 2,0 2,2 0,2")) != congruence_key(shape("0,0 3,0 3,3 0,3"))


def test_a_corner_that_points_inward_is_noticed() -> None:
    assert turns_inward(shape("0,0 4,0 4,4 2,2 0,4"))
    assert not turns_inward(shape("0,0 0,4 4,4"))


def test_sixty_degree_diamonds_are_named_too() -> None:
    tall = ROOT_THREE
    points = (
        Point(Fraction(1), Fraction(0)),
        Point(Fraction(2), tall),
        Point(Fraction(1), 2 * tall),
        Point(Fraction(0), tall),
    )
    assert recognise(points).kind == "diamond"
    assert recognise(points).finished == exact(2 * tall, 2)
