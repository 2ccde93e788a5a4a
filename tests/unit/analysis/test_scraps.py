"""Scraps: prints spread over blocks so that no two side by side are alike, judged by going through every spread."""

from __future__ import annotations

from itertools import combinations, pairwise, product
from random import Random

import pytest

from blockdsl.analysis.scraps import Neighbours, Pair, PrintSpread, spread_prints


def rows_and_columns(across: int, down: int, *, dropped: bool = False) -> Neighbours:
    """Blocks set straight; or with every second column half a block lower, where each touches six others."""
    beside: list[Pair] = []
    corner: list[Pair] = []
    for y, x in product(range(down), range(across)):
        block = y * across + x
        if y + 1 < down:
            beside.append((block, block + across))
        if x + 1 < across:
            beside.append((block, block + 1))
            lower, upper = block + 1 + across, block + 1 - across
            if dropped and (below := lower if x % 2 else upper) in range(across * down):
                beside.append((min(block, below), max(block, below)))
            elif not dropped and y + 1 < down:
                corner += [(block, lower), (block + 1, block + across)]
    return Neighbours(across * down, tuple(beside), tuple(corner))


def clashes(pairs: tuple[Pair, ...], spread: PrintSpread) -> int:
    return sum(spread.assignment[one] == spread.assignment[other] for one, other in pairs)


def fewest(neighbours: Neighbours, prints: int) -> int:
    """The fewest clashes of all spreads there are."""
    return min(
        sum(spread[one] == spread[other] for one, other in neighbours.beside)
        for spread in product(range(prints), repeat=neighbours.count)
    )


def test_forty_eight_blocks_from_eight_fat_quarters_never_meet_their_like() -> None:
    quilt = rows_and_columns(6, 8)
    spread = spread_prints(quilt, 8)
    assert clashes(quilt.beside, spread) == 0
    assert clashes(quilt.corner, spread) == 0
    assert spread.uses == (6,) * 8
    assert (spread.clashes, spread.corner_clashes, spread.proved, spread.balanced) == (0, 0, True, True)


def test_two_prints_make_a_chequerboard() -> None:
    spread = spread_prints(rows_and_columns(3, 3), 2)
    # five of one and four of the other; all eight pairs at corners are alike
    assert sorted(spread.uses) == [4, 5]
    assert (spread.clashes, spread.corner_clashes, spread.proved, spread.balanced) == (0, 8, True, True)


def test_one_print_clashes_with_itself_everywhere() -> None:
    # 3 x 3 blocks have 12 pairs side by side and 8 at corners
    spread = spread_prints(rows_and_columns(3, 3), 1)
    assert (spread.clashes, spread.corner_clashes, spread.bound, spread.assignment) == (12, 8, 12, (1,) * 9)


def test_more_prints_than_blocks_are_used_once_at_most() -> None:
    spread = spread_prints(rows_and_columns(2, 2), 7)
    assert len(set(spread.assignment)) == 4
    assert spread.balanced


@pytest.mark.parametrize("blocks", [3, 5, 7])
def test_a_ring_of_an_odd_number_of_blocks_in_two_prints_has_one_clash(blocks: int) -> None:
    ring = Neighbours(blocks, (*pairwise(range(blocks)), (0, blocks - 1)))
    spread = spread_prints(ring, 2)
    assert (spread.clashes, spread.bound) == (1, 1)


def test_four_blocks_that_all_touch_in_three_prints_have_one_clash() -> None:
    spread = spread_prints(Neighbours(4, tuple(combinations(range(4), 2))), 3)
    assert (spread.clashes, spread.bound) == (1, 1)


def test_dropped_columns_in_three_prints_have_no_clash_but_no_choice_either() -> None:
    # Three blocks that meet have all three prints, and each next block is settled by the two that it meets: there is
    # one spread alone, whatever use it makes of each print.
    quilt = rows_and_columns(5, 7, dropped=True)
    spread = spread_prints(quilt, 3)
    assert clashes(quilt.beside, spread) == 0
    assert spread.proved
    assert not spread.balanced


def test_dropped_columns_in_two_prints_have_the_fewest_clashes_that_there_can_be() -> None:
    # Of three blocks that meet two are alike. There are 12 such threes in each of 4 gaps between columns, and a pair
    # belongs to two of them at most: at least 24 clashes, and so many are enough.
    quilt = rows_and_columns(5, 7, dropped=True)
    spread = spread_prints(quilt, 2)
    assert clashes(quilt.beside, spread) == spread.clashes == 24
    assert spread.proved
    assert spread.balanced


def test_a_large_quilt_with_too_few_prints_says_how_far_it_may_be_from_the_fewest_clashes() -> None:
    # as above: 9 gaps of 22 threes, so 99 at least
    quilt = rows_and_columns(10, 12, dropped=True)
    spread = spread_prints(quilt, 2)
    assert clashes(quilt.beside, spread) == spread.clashes
    assert spread.bound == 99
    assert 99 <= spread.clashes <= 101


@pytest.mark.parametrize("seed", range(40))
def test_no_spread_of_a_small_quilt_has_fewer_clashes(seed: int) -> None:
    chance = Random(seed)  # noqa: S311  # a quilt made at random, the same each time
    count, prints = chance.randint(4, 7), chance.randint(2, 4)
    pairs = tuple(pair for pair in combinations(range(count), 2) if chance.random() < 0.6)
    neighbours = Neighbours(count, pairs)
    spread = spread_prints(neighbours, prints)
    best = fewest(neighbours, prints)
    assert clashes(pairs, spread) == spread.clashes == best
    assert spread.bound == best


def test_prints_are_used_alike_wherever_that_costs_no_clash() -> None:
    for across, down, prints in product((3, 5, 8), (4, 7), (3, 4, 5, 6, 9)):
        quilt = rows_and_columns(across, down)
        spread = spread_prints(quilt, prints)
        assert clashes(quilt.beside, spread) == 0
        assert max(spread.uses) - min(spread.uses) <= 1
        assert spread.balanced


def test_five_prints_keep_apart_at_the_corners_too() -> None:
    quilt = rows_and_columns(9, 11)
    assert clashes(quilt.corner, spread_prints(quilt, 5)) == 0


@pytest.mark.parametrize(("across", "down"), [(4, 4), (6, 8), (8, 10)])
def test_four_prints_can_keep_apart_at_the_corners(across: int, down: int) -> None:
    # rows of 1 2 1 2 … and 3 4 3 4 … in turn do it, each print as often as every other
    quilt = rows_and_columns(across, down)
    spread = spread_prints(quilt, 4)
    assert clashes(quilt.beside, spread) == clashes(quilt.corner, spread) == 0
    assert spread.balanced


def test_ten_thousand_blocks_are_spread_without_a_clash() -> None:
    quilt = rows_and_columns(100, 100)
    for prints in (2, 8):
        spread = spread_prints(quilt, prints)
        assert clashes(quilt.beside, spread) == 0
        assert spread.balanced


def test_the_same_quilt_gives_the_same_spread() -> None:
    assert spread_prints(rows_and_columns(6, 8), 5) == spread_prints(rows_and_columns(6, 8), 5)


def test_scraps_from_no_print_are_no_scraps() -> None:
    with pytest.raises(ValueError, match="at least one print"):
        spread_prints(rows_and_columns(2, 2), 0)
