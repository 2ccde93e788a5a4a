"""Real sizes from the printed ones: what rounding adds up to, worked out by hand."""

from __future__ import annotations

import pytest

from blockdsl.cutting.cutlist import Cut
from blockdsl.cutting.drift.pieces import PieceShape, side_offsets
from blockdsl.cutting.drift.sides import SewnSide
from blockdsl.facts import BlockFacts
from blockdsl.geometry import Point, to_float
from blockdsl.geometry.fraction import Fraction
from tests.unit.model.blocks import block, read, warnings, written

ON_POINT = (
    "grid 6 x 6",
    "patch slate at 3,0 4,1 3,2 2,1",
    "patch fog at 2,1 3,2 2,3 1,2",
    "patch slate at 1,2 2,3 1,4 0,3",
    "patch fog at 4,1 5,2 4,3 3,2",
    "patch slate at 3,2 4,3 3,4 2,3",
    "patch fog at 2,3 3,4 2,5 1,4",
    "patch slate at 5,2 6,3 5,4 4,3",
    "patch fog at 4,3 5,4 4,5 3,4",
    "patch slate at 3,4 4,5 3,6 2,5",
    "patch moss at 0,0 3,0 0,3",
    "patch moss at 6,0 6,3 3,0",
    "patch moss at 6,6 3,6 6,3",
    "patch moss at 0,6 0,3 3,6",
)
"""Nine squares on point with corners of triangles, patch by patch."""


def codes(*lines: str, size: str) -> list[str]:
    return [problem.code for problem in warnings(*lines, size=size)]


def drift(*lines: str, size: str) -> BlockFacts:
    return block(*lines, size=size)


def test_three_squares_on_point_cut_at_2_in_are_4_1_2_in_long_where_the_triangle_is_4_1_4() -> None:
    # A square finishes 6/3 × √2/2 = 1.4142; with its allowance 1.914, cut 2, so it finishes 1.5 and three of them 4.5.
    # The triangle's leg: cut 3 7/8, less 1/4 (2 + √2) = 3.0214; its long edge √2 as long, 4.2730; drawn 3√2 = 4.2426.
    found = block(*ON_POINT, size="6 in").drift
    assert found is not None
    assert found.lengths is not None
    assert found.drawn is not None
    assert (found.row, found.beside) == (("A", "A", "A"), ("B",))
    assert [to_float(length) for length in found.lengths] == pytest.approx([4.5, 4.27297], abs=1e-5)
    assert to_float(found.drawn) == pytest.approx(4.24264, abs=1e-5)
    # The outer seams lie half of what is over from their places: (4.5 - 4.2426) / 2.
    assert to_float(found.off) == pytest.approx(0.12868, abs=1e-5)


def test_a_maker_is_warned_of_it_by_the_block_and_of_nothing_else() -> None:
    assert codes(*ON_POINT, size="6 in") == ["rounding-adds-up"]
    problem = warnings(*ON_POINT, size="6 in")[0]
    assert "3 A in a row finish 4 1/2 in long where about 4 1/4 in fits" in problem.message


def test_what_is_offered_works() -> None:
    found = block(*ON_POINT, size="6 in").drift
    assert found is not None
    assert found.measure is not None
    assert found.sizes
    assert codes(*ON_POINT, f"measure {found.measure} in", size="6 in") == []
    for width, height in found.sizes:
        assert codes(*ON_POINT, size=f"{to_float(width):g} x {to_float(height):g} in") == []
    # 1.914 in round a template stays 1.914 in.
    assert found.templates == ("A",)


@pytest.mark.parametrize("upright", [True, False])
def test_five_rails_that_are_rounded_up_in_width_alone_are_warned_of(*, upright: bool) -> None:
    # A rail finishes 4/5 in wide: 1.3 cut 1 3/8, so it finishes 7/8 and five of them 4 3/8 beside 4. The first seam
    # lies one and a half of them from the middle. 2 in long is cut 2 1/2.
    rails = [((rail, 0), (rail + 1, 0), (rail + 1, 2), (rail, 2)) for rail in range(5)]
    corners = [*rails, ((0, 2), (5, 2), (5, 4), (0, 4))]
    places = [" ".join(f"{x},{y}" if upright else f"{y},{x}" for x, y in each) for each in corners]
    lines = [
        f"patch {fabric} at {place}"
        for fabric, place in zip((*["slate", "fog"] * 2, "slate", "moss"), places, strict=True)
    ]
    found = block(f"grid {'5 x 4' if upright else '4 x 5'}", *lines, size="4 in").drift
    assert found is not None
    assert to_float(found.off) == pytest.approx(1.5 * (0.875 - 0.8))


def test_a_size_at_which_the_square_falls_just_below_a_mark_is_let_off() -> None:
    # 9 in: 9/6 × √2 = 2.1213, with its allowance 2.6213, cut 2 5/8 = 2.625: three are 0.011 in over.
    assert codes(*ON_POINT, size="9 in") == []
    # 12 in: 2.8284 + 1/2 = 3.3284, cut 3 3/8: three are 0.140 in over, 0.070 at each end.
    assert codes(*ON_POINT, size="12 in") == ["rounding-adds-up"]


@pytest.mark.parametrize("size", ["6 in", "9 in", "12 in", "30 cm"])
@pytest.mark.parametrize(
    "rows",
    [
        ("row slate/fog fog\\slate slate/fog",) * 3,
        ("row slate fog slate",) * 3,
        ("row (hourglass slate fog) (quarters fog slate moss lantern) fog",) * 3,
        ("row (geese slate on fog)", "row (geese slate on fog)"),
    ],
    ids=["half squares", "squares", "quarter squares", "geese"],
)
def test_blocks_whose_pieces_are_the_usual_bit_too_large_are_not_warned_of(rows: tuple[str, ...], size: str) -> None:
    """Half squares, quarter squares and geese are cut up to 1/16 in larger everywhere: finished + 7/8, + 1 1/4."""
    assert "rounding-adds-up" not in codes(*rows, size=size)


def test_where_units_do_not_fall_on_the_ruler_that_is_said_once() -> None:
    assert codes("row fog slate fog", "row slate fog slate", "row fog slate fog", size="4 in") == ["size-off-ruler"]


@pytest.mark.parametrize("method", ["cut patches", "strip set"])
def test_a_star_of_many_diamonds_is_judged_from_strips_as_from_patches(method: str) -> None:
    # 12 in, three rows: a diamond is 12 × 0.2071 / 3 = 0.8284 high, with its allowance 1.3284, cut 1 3/8: 0.875 high,
    # so three of its sides are 3 × 0.875 × √2 = 3.7123, and the side of a corner square is 12 / (2 + √2) = 3.5147.
    star = "row (star45 points lantern moss rows 3 ground fog corners slate)"
    found = block(star, f"make star45 as {method}", size="12 in").drift
    assert found is not None
    assert found.lengths is not None
    assert found.drawn is not None
    assert to_float(found.lengths[0]) == pytest.approx(3.7123, abs=1e-4)
    assert to_float(found.drawn) == pytest.approx(3.5147, abs=1e-4)


def test_papers_are_exact_so_nothing_adds_up_on_them() -> None:
    star = "row (star45 points lantern moss rows 3 ground fog corners slate)"
    assert "rounding-adds-up" not in codes(star, "make star45 as over papers", size="12 in")


def test_the_block_at_further_sizes_has_its_own_finding_without_a_warning_of_its_own() -> None:
    facts, problems = read(written(*ON_POINT, "sizes 6 in", size="9 in"))
    assert [problem.code for problem in problems if problem.code == "rounding-adds-up"] == []
    assert facts.blocks[0].drift is None
    assert facts.blocks[0].sizes[0].drift is not None


@pytest.mark.parametrize("shape", ["hexagons slate fog across 2", "cubes slate fog moss across 2"])
def test_pieces_wider_than_the_cloth_come_from_no_strip_and_nothing_is_said_of_their_rounding(shape: str) -> None:
    assert "rounding-adds-up" not in codes(f"row ({shape})", "measure 1 mm", size="1000 cm")


def test_half_of_a_rectangle_that_is_rounded_up_in_one_side_has_its_long_edge_turned() -> None:
    """Legs of 4 and 3 in, a long edge of 5: with 1/4 in all round legs of 5 and 3 3/4, cut 5 × 4.

    The cut edge is the line x/5 + y/4 = 1 from the square corner of the cloth. Square to the long edge, along
    (3, 4)/5, it lies t beyond the corners (4 1/4, 1/4) and (1/4, 3 1/4), a seam in from both legs: 0.8 and 0.75 of the
    way, and 3/25 + 4/20 = 0.32 an inch. So t is 0.0875/0.32 and 0.1375/0.32.
    """
    triangle = tuple(Point(Fraction(x), Fraction(y)) for x, y in ((0, 0), (4, 0), (0, 3)))
    cut, exact = (Fraction(4), Fraction(5)), (Fraction(15, 4), Fraction(5))
    shape = PieceShape.of(triangle, Fraction(1, 4))
    offsets = side_offsets(shape, Cut("fog", "A", "rectangle", cut, exact, 1, "once", 2, 0, "patches"))
    assert not any(offsets[0] + offsets[2])
    start, end = map(to_float, offsets[1])
    assert (start, end) == pytest.approx((0.0875 / 0.32 - 0.25, 0.1375 / 0.32 - 0.25))


def test_a_long_edge_that_is_turned_lies_half_as_far_out_at_its_middle() -> None:
    # Nothing over at one end and an eighth at the other; a quarter of the way a quarter of it.
    start, end = Point(Fraction(0), Fraction(0)), Point(Fraction(5), Fraction(0))
    side = SewnSide(start, end, Fraction(0), Fraction(1, 8), Fraction(0), 0)
    assert [side.off_at(Fraction(portion, 4)) for portion in (0, 1, 2, 4)] == [
        Fraction(0),
        Fraction(1, 32),
        Fraction(1, 16),
        Fraction(1, 8),
    ]
