"""Fat quarters: pieces and blocks from one, against the counts that quilters print."""

from __future__ import annotations

from math import floor

import pytest

from blockdsl.cutting.cloth import ClothPiece, Effort
from blockdsl.cutting.fat_quarters import (
    alike,
    blocks_from_sheet,
    fat_quarter_use,
    fat_quarters_of_prints,
    pieces_from_sheet,
    sheets_for,
    usable_fat_quarter,
)
from blockdsl.geometry.fraction import Fraction, read_fraction
from tests.outside.published.judge import length

EIGHTH = Fraction(1, 8)
# Fast fat quarter facts (forum post) — http://www.quiltingboard.com/main-f1/fast-fat-quarter-facts-t73923.html
# Number of squares from a fat quarter, Piecefulliving —
# http://piecefulliving.blogspot.com/2011/08/number-of-squares-from-fat-quarter.html
# Side of the square; how many from 18 x 22, 18 x 21 and 18 x 20 in, nothing trimmed.
SQUARES = [
    ("2", 99, 90, 90),
    ("2 1/2", 56, 56, 56),
    ("3 1/2", 30, 30, 25),
    ("4", 20, 20, 20),
    ("5", 12, 12, 12),
    ("5 1/2", 12, 9, 9),
    ("6 1/2", 6, 6, 6),
]


def piece(width: str, height: str, count: int, *, may_turn: bool = True) -> ClothPiece:
    return ClothPiece(f"{width} x {height}", length(width), length(height), count, may_turn=may_turn)


@pytest.mark.parametrize(("side", "of_22", "of_21", "of_20"), SQUARES, ids=[row[0] for row in SQUARES])
def test_a_fat_quarter_gives_as_many_squares_as_published(side: str, of_22: int, of_21: int, of_20: int) -> None:
    cut = (length(side), length(side))
    found = [pieces_from_sheet(cut, (Fraction(long), Fraction(18))) for long in (22, 21, 20)]
    assert found == [of_22, of_21, of_20]


@pytest.mark.parametrize(("side", "squared_up", "perfect"), [("7", 4, 6), ("8", 4, 4), ("9", 2, 4)])
def test_large_squares_want_perfect_cutting(side: str, squared_up: int, perfect: int) -> None:
    # "7 in: 4 (6 if perfect), 8 in: 4, 9 in: 4 with perfect cutting": Fast fat quarter facts, as above. Squared up to
    # 17 1/2 in there is room for one row of 9 in squares alone.
    cut = (length(side), length(side))
    assert pieces_from_sheet(cut, (Fraction(22), Fraction(18))) == perfect
    assert pieces_from_sheet(cut, usable_fat_quarter("in")) == squared_up


@pytest.mark.parametrize(("cut", "each"), [("3 7/8 x 7 3/4", 5), ("3 1/2 x 14", 3)])
def test_a_strip_of_42_in_gives_as_many_units_as_published(cut: str, each: int) -> None:
    # "always round down": Start Quilting p.2 —
    # http://quilterscache.com/StartQuiltingPages/startquiltingtwo.html
    high, wide = (length(side) for side in cut.split(" x "))
    assert pieces_from_sheet((wide, high), (Fraction(42), high)) == each


def test_an_eighth_of_a_yard_gives_14_squares_of_3_in_and_a_washed_quarter_28() -> None:
    # June meeting group quilt, Ozark Foothills guild —
    # https://ozarkfoothillssaga.blogspot.com/2013/06/june-meeting-ozark-foothills-group-quilt.html
    cut, washed = (Fraction(3), Fraction(3)), Fraction(95, 100)
    assert pieces_from_sheet(cut, (Fraction(42), length("4 1/2"))) == 14
    assert pieces_from_sheet(cut, (Fraction(42), 9 * washed)) == 28


def test_300_rectangles_are_13_in_a_row_and_24_rows() -> None:
    # How much fabric, Bobbin In Quilts —
    # https://www.bobbininquilts.com/blogs/news/how-to-figure-out-how-much-fabric-you-need-for-your-quilt
    cut = (Fraction(3), Fraction(2))
    assert pieces_from_sheet(cut, (Fraction(40), Fraction(2)), may_turn=False) == 13
    assert pieces_from_sheet(cut, (Fraction(40), Fraction(46)), may_turn=False) < 300
    assert pieces_from_sheet(cut, (Fraction(40), Fraction(48)), may_turn=False) >= 300


def test_rectangles_are_turned_where_that_gives_more() -> None:
    # 20 1/2 x 17 1/2: four strips of 4 in with eight of 2 1/2 in are 32; seven of 2 1/2 in with five of 4 in are 35
    usable = usable_fat_quarter("in")
    cut = (length("2 1/2"), length("4"))
    assert pieces_from_sheet(cut, usable) == 35
    assert pieces_from_sheet(cut, usable, may_turn=False) == 32


def test_a_strip_of_what_is_left_over_gives_pieces_the_other_way() -> None:
    # 10 x 7 in: two strips of 3 in with two each; a fifth piece would make 75 of 70 square inches
    assert pieces_from_sheet((Fraction(5), Fraction(3)), (Fraction(10), Fraction(7))) == 4
    # 11 x 8 in: one strip of 5 in with three upright pieces, one of 3 in with two: five
    assert pieces_from_sheet((Fraction(5), Fraction(3)), (Fraction(11), Fraction(8))) == 5


def test_three_sawtooth_stars_come_of_one_fat_quarter() -> None:
    # How to cut three Sawtooth Stars from one fat quarter, Katie Mae —
    # https://www.katiemaequilts.com/blog/2018/3/6/how-to-cut-three-sawtooth-stars-from-one-fat-quarter-a-tutorial
    # 3 @ 5 1/4, 3 @ 4 1/2, 12 @ 2 1/2, 12 @ 2 7/8, which is one block three times
    star = [
        piece("5 1/4", "5 1/4", 1),
        piece("4 1/2", "4 1/2", 1),
        piece("2 1/2", "2 1/2", 4),
        piece("2 7/8", "2 7/8", 4),
    ]
    assert blocks_from_sheet(alike(star), (Fraction(21), Fraction(18)), EIGHTH) >= 3


def test_blocks_of_one_square_are_as_many_as_squares() -> None:
    assert blocks_from_sheet(alike([piece("2 1/2", "2 1/2", 1)]), usable_fat_quarter("in"), EIGHTH) == 8 * 7
    assert blocks_from_sheet(alike([piece("2 1/2", "2 1/2", 5)]), usable_fat_quarter("in"), EIGHTH) == 56 // 5


def test_a_block_that_takes_more_than_a_fat_quarter_comes_of_none() -> None:
    assert blocks_from_sheet(alike([piece("10", "10", 3)]), usable_fat_quarter("in"), EIGHTH) == 0
    assert blocks_from_sheet(alike([piece("18", "21", 1)]), usable_fat_quarter("in"), EIGHTH) == 0


def test_long_pieces_are_cut_along_whichever_side_is_longer() -> None:
    # 19 x 3 in lies along the 20 1/2 in: five in 17 1/2 in
    plan = sheets_for([piece("3", "19", 10)], usable_fat_quarter("in"), EIGHTH, Effort.QUICK)
    assert plan.count == 2


def test_a_directional_print_is_not_turned() -> None:
    assert fat_quarter_use(None, 0, [piece("3", "19", 1, may_turn=False)], usable_fat_quarter("in"), EIGHTH) is None
    upright = fat_quarter_use(None, 0, [piece("19", "3", 5, may_turn=False)], usable_fat_quarter("in"), EIGHTH)
    assert upright is not None
    assert upright.mixed == 1


def test_a_quilt_says_how_many_fat_quarters_it_takes_one_print_a_block_and_mixed() -> None:
    # 22 blocks of one 8 in square and two 4 in squares. From 20 1/2 x 17 1/2 in: a strip of 8 in gives two 8 in squares
    # and a 4 in square beside them, two strips of 4 in five each: two blocks. Four blocks would want all four 8 in
    # squares that there is room for, and eight 4 in squares; beside the large ones only four fit.
    block = [piece("8", "8", 1), piece("4", "4", 2)]
    whole = [piece("8", "8", 22), piece("4", "4", 44)]
    use = fat_quarter_use(alike(block), 22, whole, usable_fat_quarter("in"), EIGHTH)
    assert use is not None
    assert 2 <= use.blocks_each <= 3
    assert use.one_print_a_block == -(-22 // use.blocks_each)
    # by area alone (22 x 64 + 44 x 16) / 358 3/4 = 5.9, and four 8 in squares a sheet ask for six
    assert 6 <= use.mixed <= use.one_print_a_block
    assert use.mixed_bound <= use.mixed
    assert {each.cut: each.each for each in use.per_piece} == {
        (Fraction(8), Fraction(8)): 4,
        (Fraction(4), Fraction(4)): 20,
    }


def test_a_print_in_more_blocks_than_a_fat_quarter_gives_takes_two() -> None:
    assert fat_quarters_of_prints((6, 6, 5), 5) == (2, 2, 1)
    assert fat_quarters_of_prints((6, 6, 5), 0) is None


def test_a_metric_fat_quarter_is_50_by_55_cm_squared_up() -> None:
    assert usable_fat_quarter("cm") == (read_fraction("53.5"), read_fraction("48.5"))
    # squares of 6.5 cm: 8 across, 7 along
    assert (
        pieces_from_sheet((read_fraction("6.5"), read_fraction("6.5")), usable_fat_quarter("cm"))
        == floor(53.5 / 6.5) * 7
    )


def test_a_piece_of_no_size_is_no_piece() -> None:
    with pytest.raises(ValueError, match="some size"):
        pieces_from_sheet((Fraction(0), Fraction(1)), usable_fat_quarter("in"))
