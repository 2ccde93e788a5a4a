"""Cloth with an up and a down: patches are cut as they stand in the block, and what turns a print is pointed out."""

from __future__ import annotations

import pytest

from blockdsl.geometry.fraction import Fraction
from blockdsl.wording import messages
from blockdsl.wording.cutting import print_words
from tests.unit.model.blocks import block, cut_lines, exactly, warnings

SHIPS = 'fabric ships "Ships" #904030 directional'


def ships(*lines: str, size: str) -> list[tuple[str, str, str | None, str | None]]:
    """The lines cut from the ships: what, how often, the slant of the cut and which side is upright."""
    facts = block(*lines, size=size, above=SHIPS)
    found = [cut for cut in facts.cutting if cut.fabric == "ships"]
    told = cut_lines(facts, "ships")
    return [
        (text.removeprefix("ships: "), cut.label, cut.slant, None if cut.upright is None else str(cut.upright))
        for text, cut in zip(told, found, strict=True)
    ]


def test_rectangles_that_stand_and_that_lie_are_two_pieces() -> None:
    found = ships("columns 1 2", "heights 2 1", "row ships fog", "row fog ships", size="6 in")
    assert found == [
        ("1 rectangle 2 1/2 x 4 1/2 for 1", "A", None, "9/2"),
        ("1 rectangle 2 1/2 x 4 1/2 for 1", "A", None, "5/2"),
    ]


def test_squares_are_squares_however_they_lie() -> None:
    assert ships("row ships fog", "row fog ships", size="6 in") == [
        ("2 square 3 1/2 for 2", "B", None, "7/2")
    ] or ships("row ships fog", "row fog ships", size="6 in") == [("2 square 3 1/2 for 2", "A", None, "7/2")]


def test_both_triangles_of_a_square_are_used_where_the_block_has_them_half_a_turn_apart() -> None:
    # top left and bottom right: one square, cut from bottom left to top right
    assert ships("row ships/fog fog/ships", size="6 x 3 in") == [("1 square 3 7/8 once for 2", "A", "rising", "31/8")]


def test_triangles_a_quarter_turn_apart_take_a_square_each() -> None:
    assert ships("row ships/fog fog\\ships", size="6 x 3 in") == [
        ("1 square 3 7/8 once for 2, 1 spare", "A", "rising", "31/8"),
        ("1 square 3 7/8 once for 2, 1 spare", "A", "rising", "31/8"),
    ] or ships("row ships/fog fog\\ships", size="6 x 3 in") == [
        ("1 square 3 7/8 once for 2, 1 spare", "A", "rising", "31/8"),
        ("1 square 3 7/8 once for 2, 1 spare", "A", "falling", "31/8"),
    ]


def test_two_triangles_that_lie_alike_take_two_squares() -> None:
    assert ships("row ships/fog ships/fog", size="6 x 3 in") == [
        ("2 square 3 7/8 once for 4, 2 spare", "A", "rising", "31/8")
    ]


def test_a_square_cut_twice_has_a_triangle_for_each_side_of_the_block() -> None:
    assert ships("row (quarters ships ships ships ships)", size="6 in") == [
        ("1 square 7 1/4 twice for 4", "A", None, "29/4")
    ]
    assert ships("row (hourglass ships fog) (hourglass ships fog)", size="12 x 6 in") == [
        ("2 square 7 1/4 twice for 8, 4 spare", "A", None, "29/4")
    ]


def test_other_cloth_is_cut_as_ever() -> None:
    facts = block("row ships/fog fog\\ships", size="6 x 3 in", above=SHIPS)
    assert cut_lines(facts, "fog") == ["fog: 1 square 3 7/8 once for 2"]
    assert [cut.upright for cut in facts.cutting if cut.fabric == "fog"] == [None]


def test_halves_of_rectangles_stand_as_they_do_in_the_block() -> None:
    # the left one stands, the right one is its mirror image: two rectangles, a triangle of each left over
    found = ships(
        "grid 4 x 4", "patch ships at 0,0 2,0 0,4", "patch fog at 2,0 4,4 0,4", "patch ships at 2,0 4,0 4,4",
        size="4 in",
    )  # fmt: skip
    assert [(what, slant, upright) for what, _, slant, upright in found] == [
        ("1 rectangle 2 3/4 x 5 3/8 once for 2, 1 spare", "rising", "43/8"),
        ("1 rectangle 2 3/4 x 5 3/8 once for 2, 1 spare", "falling", "43/8"),
    ]


def test_halves_of_rectangles_that_lie_are_cut_apart_from_those_that_stand() -> None:
    # four turns of one triangle: two stand, half a turn apart, and two lie
    half = "unit half-of-one\n  grid 2 x 4\n  patch ships at 0,0 2,0 0,4\n  patch fog at 2,0 2,4 0,4"
    facts = block(
        "columns 1 1 2", "heights 1 1", "row half-of-one half-of-one>> half-of-one>", "row | | half-of-one<",
        size="8 x 4 in", above=f"{SHIPS}\n{half}",
    )  # fmt: skip
    found = [cut for cut in facts.cutting if cut.fabric == "ships"]
    assert [(cut.count, cut.yields, cut.spare, cut.upright_side) for cut in found] == [(1, 2, 0, 1), (1, 2, 0, 0)]


def test_level_parallelograms_come_from_a_strip_and_upright_ones_by_template() -> None:
    level = ("patch fog at 0,0 2,0 0,2", "patch ships at 2,0 5,0 3,2 0,2", "patch slate at 5,0 6,0 6,2 3,2")
    ((what, *_, upright),) = ships("grid 6 x 2", *level, size="6 x 2 in")
    assert what.startswith("1 parallelogram")
    assert upright == "5/2"
    standing = ("patch fog at 0,0 2,0 0,2", "patch ships at 2,0 2,3 0,5 0,2", "patch slate at 2,3 2,6 0,6 0,5")
    ((what, *_, upright),) = ships("grid 2 x 6", *standing, size="2 x 6 in")
    assert what.startswith("1 template")


@pytest.mark.parametrize(
    ("row", "make"),
    [
        ("row ships/fog fog/ships", "make half as two at a time"),
        ("row (geese ships on fog)", "make geese as stitch and flip"),
        ("row (bars ships fog) (bars fog ships)", "make bars as strip set"),
    ],
)
def test_a_method_that_turns_the_print_is_pointed_out(row: str, make: str) -> None:
    found = [problem.code for problem in warnings(row, make, size="6 x 3 in", above=SHIPS)]
    assert found == ["directional-method"]


@pytest.mark.parametrize(
    ("row", "make"),
    [
        ("row (rails ships fog) (rails fog ships)", "make rails as strip set"),
        ("row ships/fog fog/ships", "make half as cut patches"),
    ],
)
def test_a_way_that_leaves_the_print_upright_is_not_pointed_out(row: str, make: str) -> None:
    assert warnings(row, make, size="6 x 3 in", above=SHIPS) == []


BIT = (
    SHIPS
    + """
unit bit
  grid 4 x 4
  patch ships at 0,0 3,0 4,4 0,4
  patch fog at 3,0 4,0 4,4
"""
)


def test_patches_by_template_that_lie_otherwise_are_lines_of_their_own() -> None:
    # Turned clockwise, the side that was at the left is at the top: there the print runs up.
    facts = block("row bit bit>> bit> bit", size="16 x 4 in", above=BIT)
    found = [(cut.count, cut.yields, cut.print_up) for cut in facts.cutting if cut.fabric == "ships"]
    assert exactly(sorted(found, key=str)) == [(1, 1, (-1, 0)), (1, 1, (0, 1)), (2, 2, (0, -1))]


@pytest.mark.parametrize(
    ("up", "side"),
    [
        ((0, -1), "top"),
        ((1, 0), "right side"),
        ((0, 1), "bottom"),
        ((-1, 0), "left side"),
        ((1, -1), "upper right"),
        ((-1, 1), "lower left"),
    ],
)
def test_a_template_says_toward_which_of_its_sides_the_print_runs_up(up: tuple[int, int], side: str) -> None:
    said = print_words((Fraction(up[0]), Fraction(up[1])), messages())
    assert said == f"print up toward the {side} of the template"
