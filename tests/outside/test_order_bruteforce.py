"""The fewest set-in and partial seams, against a search through every way to part a small block in two.

The search knows nothing of ours: it walks squared paper, one step of an outline at a time, and tries every pair of
parts that hang together and share one path, and every way of leaving the end of a straight seam open.
"""

from __future__ import annotations

import random
from collections import defaultdict
from collections.abc import Iterator, Sequence
from itertools import combinations, pairwise
from math import gcd

import pytest

from blockdsl.sewing.order import count_seams
from tests.unit.sewing.order_sample import grown_together, laid_on_paper, order_of, with_pinwheels

Place = tuple[int, int]
Side = frozenset[Place]
Cost = tuple[int, int]
"""Turns of set-in seams first, then ends of partial ones."""

NEVER: Cost = (99, 99)
MOST_OPEN = 10


def fine(outline: Sequence[Place]) -> Iterator[Side]:
    """The outline in steps from one place of squared paper to the next."""
    for (x, y), (next_x, next_y) in pairwise([*outline, outline[0]]):
        steps = gcd(next_x - x, next_y - y)
        dx, dy = (next_x - x) // steps, (next_y - y) // steps
        for number in range(steps):
            here = (x + number * dx, y + number * dy)
            yield frozenset((here, (here[0] + dx, here[1] + dy)))


def straight(one: Side, other: Side) -> bool:
    """Whether two steps lie in one direction."""
    (a, b), (c, d) = sorted(one), sorted(other)
    return (b[0] - a[0]) * (d[1] - c[1]) == (b[1] - a[1]) * (d[0] - c[0])


class EveryWay:
    """The least cost of a block, by trying everything."""

    def __init__(self, outlines: Sequence[Sequence[Place]]) -> None:
        self._sides = [frozenset(fine(outline)) for outline in outlines]
        self._known: dict[tuple[frozenset[int], frozenset[Side]], Cost] = {}

    def least(self) -> Cost:
        return self._least(frozenset(range(len(self._sides))), frozenset())

    def _inner(self, patches: frozenset[int]) -> set[Side]:
        count: dict[Side, int] = defaultdict(int)
        for patch in patches:
            for side in self._sides[patch]:
                count[side] += 1
        return {side for side, times in count.items() if times == 2}

    def _hangs_together(self, patches: frozenset[int], opened: frozenset[Side]) -> bool:
        reached = {min(patches)}
        waiting = list(reached)
        while waiting:
            here = self._sides[waiting.pop()] - opened
            new = {patch for patch in patches - reached if here & self._sides[patch]}
            reached |= new
            waiting.extend(new)
        return len(reached) == len(patches)

    def _turns(
        self, one: frozenset[int], other: frozenset[int], opened: frozenset[Side], rim: set[Place]
    ) -> int | None:
        """The turns of the path between two parts, or None when it is no path from rim to rim."""
        ours = frozenset[Side]().union(*(self._sides[patch] for patch in one))
        theirs = frozenset[Side]().union(*(self._sides[patch] for patch in other))
        at: dict[Place, list[Side]] = defaultdict(list)
        for side in (ours & theirs) - opened:
            for end in side:
                at[end].append(side)
        ends = [place for place, sides in at.items() if len(sides) == 1]
        if len(ends) != 2 or any(len(sides) > 2 or (place in rim) != (place in ends) for place, sides in at.items()):
            return None
        turns, here, side = 0, ends[0], at[ends[0]][0]
        length = 1
        while True:
            (here,) = side - {here}
            if here in ends:
                return turns if 2 * length == sum(len(sides) for sides in at.values()) else None
            (onward,) = (other_side for other_side in at[here] if other_side != side)
            turns += not straight(side, onward)
            side = onward
            length += 1

    def _least(self, patches: frozenset[int], opened: frozenset[Side]) -> Cost:
        if len(patches) == 1:
            return (0, 0)
        inner = self._inner(patches)
        opened &= inner
        key = (patches, opened)
        if key in self._known:
            return self._known[key]
        every = frozenset[Side]().union(*(self._sides[patch] for patch in patches))
        rim = {place for side in (every - inner) | opened for place in side}
        best = self._parted(patches, opened, rim)
        if best > (0, 0) and len(opened) < MOST_OPEN:
            for opening in self._openings(inner - opened, rim):
                turns, ends = self._least(patches, opened | opening)
                best = min(best, (turns, ends + 1))
        self._known[key] = best
        return best

    def _parted(self, patches: frozenset[int], opened: frozenset[Side], rim: set[Place]) -> Cost:
        best = NEVER
        first, *rest = sorted(patches)
        for size in range(len(rest)):
            for chosen in combinations(rest, size):
                one = frozenset((first, *chosen))
                other = patches - one
                if not (self._hangs_together(one, opened) and self._hangs_together(other, opened)):
                    continue
                turns = self._turns(one, other, opened, rim)
                if turns is None or turns > best[0]:
                    continue
                parts = self._least(one, opened), self._least(other, opened)
                best = min(best, (turns + parts[0][0] + parts[1][0], parts[0][1] + parts[1][1]))
        return best

    def _openings(self, seams: set[Side], rim: set[Place]) -> Iterator[frozenset[Side]]:
        """Straight seams from the rim inward, of every length but the whole."""
        for first in seams:
            for start in first & rim:
                here, side, path = start, first, [first]
                while True:
                    (here,) = side - {here}
                    onward = [s for s in seams if here in s and s != side and straight(s, side)]
                    if here in rim or not onward:
                        break
                    yield frozenset(path)
                    side = onward[0]
                    path.append(side)


def found(outlines: Sequence[Sequence[Place]], rng: random.Random) -> Cost:
    count = count_seams(order_of(laid_on_paper(outlines, rng)))
    return count.set_in, count.partial


@pytest.mark.parametrize("number", range(15))
def test_no_order_of_a_few_rectangles_has_fewer_partial_seams(number: int) -> None:
    rng = random.Random(number)  # noqa: S311  the same blocks every time
    outlines = with_pinwheels(rng, rng.randrange(5, 9), side=6)
    assert found(outlines, rng) == EveryWay(outlines).least()


@pytest.mark.parametrize("number", range(30))
def test_no_order_of_a_few_patches_with_bends_has_fewer_set_in_seams(number: int) -> None:
    rng = random.Random(number)  # noqa: S311  the same blocks every time
    outlines = grown_together(rng, rng.randrange(3, 8))
    assert found(outlines, rng) == EveryWay(outlines).least()


def test_the_search_itself_finds_the_one_partial_seam_of_a_pinwheel() -> None:
    boxes = [(0, 0, 2, 1), (2, 0, 3, 2), (1, 2, 3, 3), (0, 1, 1, 3), (1, 1, 2, 2)]
    assert EveryWay([[(x, t), (r, t), (r, b), (x, b)] for x, t, r, b in boxes]).least() == (0, 1)


def test_the_search_itself_finds_the_turn_of_a_patch_round_a_corner() -> None:
    round_it = [(0, 0), (2, 0), (2, 1), (1, 1), (1, 2), (0, 2)]
    assert EveryWay([round_it, [(1, 1), (2, 1), (2, 2), (1, 2)]]).least() == (1, 0)
