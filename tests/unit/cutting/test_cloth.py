"""How one cloth is cut: small plans, worked out by hand."""

from __future__ import annotations

import subprocess
import sys

import pytest

from blockdsl.cutting.cloth import ClothPiece, Effort, fits_cloth, fits_sheet, plan_length, plan_sheets
from blockdsl.cutting.cloth.pieces import coarsest, merge_sizes
from blockdsl.cutting.cloth.sheet_filling import SheetTask, SheetWay, counts_of
from blockdsl.cutting.cloth.sheet_search import one_piece
from blockdsl.geometry.fraction import Fraction

WIDTH, EIGHTH = Fraction(40), Fraction(1, 8)
FAT_QUARTER = (Fraction(35, 2), Fraction(41, 2))


def piece(width: int, height: int, count: int, *, may_turn: bool = True, lengthwise: bool = False) -> ClothPiece:
    """A piece in whole inches; its key says its size."""
    return ClothPiece(f"{width} x {height}", Fraction(width), Fraction(height), count, may_turn, lengthwise)


def told(*what: object) -> tuple[object, ...]:
    """Things said of a plan, to be compared together."""
    return what


def test_ten_squares_of_four_inches_are_one_strip() -> None:
    plan = plan_length([piece(4, 4, 10)], WIDTH, EIGHTH)
    assert told(plan.length, plan.bound, plan.proved) == (4, 4, True)
    assert [told(strip.height, strip.times, len(strip.sections), strip.left) for strip in plan.strips] == [
        (4, 1, 10, 0)
    ]
    assert plan.cuts == 1 + 9  # the strip off the cloth, then nine cuts part ten squares


def test_an_eleventh_square_takes_another_strip() -> None:
    assert plan_length([piece(4, 4, 11)], WIDTH, EIGHTH).length == 8


def test_sizes_share_a_strip() -> None:
    plan = plan_length([piece(4, 4, 5), piece(2, 4, 10)], WIDTH, EIGHTH)
    assert plan.length == 4
    assert plan.strip_count == 1


def test_a_piece_turns_where_that_takes_less_cloth_and_a_directional_one_does_not() -> None:
    # 12 pieces 3 in wide and 10 in high: upright, 13 go across 40 in; turned, 4 do, in three strips of 3 in.
    assert plan_length([piece(3, 10, 12)], WIDTH, EIGHTH).length == 9
    upright = plan_length([piece(3, 10, 12, may_turn=False)], WIDTH, EIGHTH)
    assert upright.length == 10
    assert not any(one.turned for strip in upright.strips for section in strip.sections for one in section.pieces)


def test_long_borders_lie_along_the_cloth_and_squares_beside_them() -> None:
    # Two borders side by side are 8 in wide; beside them 32 in by 60 in hold 8 × 15 = 120 squares of 4 in.
    plan = plan_length([piece(60, 4, 2), piece(4, 4, 120)], WIDTH, EIGHTH)
    (panel,) = plan.panels
    assert told(panel.height, panel.width, len(panel.columns)) == (60, 8, 2)
    assert told(plan.length, plan.strips, plan.proved) == (60, (), True)


def test_a_short_border_lies_along_the_cloth_when_asked_to() -> None:
    (panel,) = plan_length([piece(30, 4, 1, lengthwise=True)], WIDTH, EIGHTH).panels
    assert panel.height == 30
    (strip,) = plan_length([piece(30, 4, 1)], WIDTH, EIGHTH).strips
    assert strip.height == 4


def test_a_section_is_cut_again_only_where_that_buys_less_cloth() -> None:
    # From 10 in: beside a piece 6 in wide and 8 in high two squares of 4 in lie above one another.
    pieces = [piece(6, 8, 1, may_turn=False), piece(4, 4, 2)]
    assert plan_length(pieces, Fraction(10), EIGHTH, three_stage=False).length == 12
    plan = plan_length(pieces, Fraction(10), EIGHTH)
    assert told(plan.length, plan.stages) == (8, 3)
    bought_alike = plan_length(pieces, Fraction(10), EIGHTH, buying_step=Fraction(18))
    assert told(bought_alike.length, bought_alike.stages) == (12, 2)


def test_what_is_cut_by_a_finer_measure_is_rounded_up() -> None:
    plan = plan_length([ClothPiece("a", Fraction(49, 16), Fraction(49, 16), 1)], WIDTH, EIGHTH)
    assert plan.length == Fraction(25, 8)


def test_equal_plans_have_the_fewest_kinds_of_strip() -> None:
    # 20 squares of 4 in and 10 of 2 in: two strips of 4 in and one of 2 in, and no strip with both.
    plan = plan_length([piece(4, 4, 20), piece(2, 2, 20)], WIDTH, EIGHTH)
    assert plan.length == 10
    assert [told(strip.height, strip.times) for strip in plan.strips] == [(4, 2), (2, 1)]


def test_a_fat_quarter_gives_twelve_squares_of_four_and_a_half_inches() -> None:
    # Three across 17 1/2 in, four strips in 20 1/2 in.
    square = ClothPiece("a", Fraction(9, 2), Fraction(9, 2), 12)
    plan = plan_sheets([square], *FAT_QUARTER, EIGHTH)
    assert (plan.count, plan.proved) == (1, True)
    more = ClothPiece("a", Fraction(9, 2), Fraction(9, 2), 13)
    assert plan_sheets([more], *FAT_QUARTER, EIGHTH).count == 2


def test_a_sheet_is_cut_along_where_that_holds_more() -> None:
    # Directional, 5 in wide and 20 1/2 in high: side by side across the sheet, in one strip as long as the sheet.
    stripe = ClothPiece("a", Fraction(5), Fraction(41, 2), 3, may_turn=False)
    (sheet,) = plan_sheets([stripe], *FAT_QUARTER, EIGHTH).sheets
    assert not any(one.turned for strip in sheet.strips for section in strip.sections for one in section.pieces)
    assert plan_sheets([stripe], *FAT_QUARTER, EIGHTH).count == 1


def test_no_pieces_take_no_cloth() -> None:
    assert plan_length([], WIDTH, EIGHTH).length == 0
    assert plan_length([piece(4, 4, 0)], WIDTH, EIGHTH).length == 0
    assert plan_sheets([], *FAT_QUARTER, EIGHTH).count == 0


@pytest.mark.parametrize("wrong", [piece(41, 50, 1), piece(50, 4, 1, may_turn=False), piece(0, 4, 1), piece(4, 4, -1)])
def test_a_piece_that_the_cloth_cannot_hold_is_refused(wrong: ClothPiece) -> None:
    with pytest.raises(ValueError, match=wrong.key):
        plan_length([wrong], WIDTH, EIGHTH, Effort.QUICK)


def test_whether_a_piece_fits_is_known_before() -> None:
    assert fits_cloth(piece(4, 90, 1), WIDTH)
    assert fits_cloth(piece(90, 4, 1), WIDTH)
    assert not fits_cloth(piece(90, 4, 1, may_turn=False), WIDTH)
    assert not fits_cloth(piece(41, 41, 1), WIDTH)
    assert fits_sheet(piece(20, 4, 1), *FAT_QUARTER)
    assert not fits_sheet(piece(20, 4, 1, may_turn=False), *FAT_QUARTER)


def test_the_solver_is_loaded_with_the_first_plan_alone() -> None:
    say = "import sys, blockdsl.cutting.cloth; print('highspy' in sys.modules, 'numpy' in sys.modules)"
    ended = subprocess.run([sys.executable, "-c", say], check=True, capture_output=True, text=True)
    assert ended.stdout.split() == ["False", "False"]


def test_sides_of_4_6_and_10_in_are_all_measured_in_steps_of_2_in() -> None:
    # In eighths 32, 48 and 80: 16 of them, 2 in, is the longest step that measures all.
    assert coarsest([piece(4, 6, 1), piece(10, 4, 2)], EIGHTH) == 2


def test_pieces_so_large_that_a_fat_quarter_holds_one_take_one_each_at_every_effort() -> None:
    # 16 in and 11 in squares: neither two of a size nor one of each lie beside or below one another in 17 1/2 × 20 1/2.
    for effort in Effort:
        plan = plan_sheets([piece(16, 16, 2), piece(11, 11, 3)], *FAT_QUARTER, EIGHTH, effort)
        assert plan.count == 5


def test_there_is_a_sheet_for_each_size_even_where_it_holds_one_piece_alone() -> None:
    # Of squares of 16 and 11 in, 17 1/2 × 20 1/2 in holds one.
    sizes = merge_sizes([piece(16, 16, 2), piece(11, 11, 3)], (0, 1), *FAT_QUARTER, Fraction(1))
    sheets = one_piece(SheetTask((SheetWay(sizes, 17, 20),), (2, 3)))
    assert [counts_of(sheet) for sheet in sheets] == [{0: 1}, {1: 1}]
