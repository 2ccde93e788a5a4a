"""Set-in seams: lines across a region that turn at a corner.

Where seams meet and none runs straight through (a Y), whichever of them is sewn last has to turn there. So every such
corner costs one turn, whatever the order; a path that turns at such corners only wastes nothing.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Mapping
from itertools import pairwise

from blockdsl.geometry import Exact
from blockdsl.sewing.order.net import OUTSIDE
from blockdsl.sewing.order.region import Region, Sides, chords, flood, look_at, reading_place, runs

MOST_TURNS = 8
MOST_WASTED = 4
MOST_STEPS = 20_000
MOST_COMPARED = 8
_A_BOX = 3

# How much of a cost says what kind of part is set in; the rest says where it lies.
_IN_KIND = 4


def part_along_a_bend(region: Region, *, wasted: int) -> list[list[int]] | None:
    """The larger part and the one to be set in, with the fewest turns; `wasted` of them may be where no Y is."""
    paths = _Paths(region, wasted)
    for turns in range(1, MOST_TURNS + 1):
        found = list(paths.across(turns))
        if found:
            return _least(region, [_parted(region, path) for path in found])
    return None


def _least(region: Region, partings: list[list[list[int]]]) -> list[list[int]]:
    """The parting of the least cost; of several alike one after which the rest falls into halves."""
    costs = [_cost(region, parts) for parts in partings]
    alike = min(cost[:_IN_KIND] for cost in costs)
    best = [number for number, cost in enumerate(costs) if cost[:_IN_KIND] == alike]
    if 1 < len(best) <= MOST_COMPARED:
        best = [number for number in best if _falls_in_halves(region, partings[number])] or best
    if len(region.patches) == _A_BOX:
        best = [number for number in best if _stands_side_by_side(region, partings[number])] or best
    return partings[min(best, key=costs.__getitem__)]


def _falls_in_halves(region: Region, parts: list[list[int]]) -> bool:
    """Whether one straight line then parts the larger part into two of as many patches each."""
    rest = look_at(region.net, parts[0], region.atom, region.opened)
    halves = (flood(rest, frozenset(chord)) for chord in chords(rest))
    return any(len(two) == 2 and len(two[0]) == len(two[1]) for two in halves)


def _stands_side_by_side(region: Region, parts: list[list[int]]) -> bool:
    """Whether the other two are left and right of each other: of a box the two sides, and its top is set in."""
    rest = look_at(region.net, parts[0], region.atom, region.opened)
    return any(region.net.way[chord[0]] == 1 for chord in chords(rest))


def _parted(region: Region, path: Sides) -> list[list[int]]:
    return sorted(flood(region, frozenset(path)), key=lambda part: (-len(part), part[0]))


def _cost(region: Region, parts: list[list[int]]) -> tuple[int | Exact, ...]:
    """Set in the smallest part; of patches that of which there are fewest, as the ground between a star's points.

    What is parted first is sewn last: the large ones, then the last in reading order.
    """
    net = region.net
    small = parts[-1]
    area = sum(net.areas[patch] for patch in small)
    as_many = sum(net.areas[patch] == area for patch in region.patches)
    top, left = reading_place(net, small)
    return len(parts), len(small), as_many, -area, -top, -left


class _Paths:
    """Paths from outline to outline, by the number of their turns."""

    def __init__(self, region: Region, wasted: int) -> None:
        self._region = region
        self._wasted = wasted
        self._at = _seams_at(region)
        self._straight_on: dict[tuple[int, int], int] = {}
        through: set[int] = set()
        net = region.net
        for run in runs(region):
            for one, other in pairwise(run):
                corner = net.end[one]
                through.add(corner)
                self._straight_on[corner, one] = other
                self._straight_on[corner, other] = one
        self._ys = set(self._at) - region.rim - through
        self._steps = 0

    def across(self, turns: int) -> Iterator[Sides]:
        """Paths with exactly so many turns, each once."""
        self._steps = 0
        rim = self._region.rim
        for corner in sorted(self._at):
            if corner in rim:
                for side in self._at[corner]:
                    yield from self._onward([corner], [side], turns, self._wasted)

    def _onward(self, corners: list[int], path: list[int], turns: int, wasted: int) -> Iterator[Sides]:
        net, rim = self._region.net, self._region.rim
        waiting = [(corners, path, turns, wasted)]
        while waiting and self._steps < MOST_STEPS:
            self._steps += 1
            corners, path, turns, wasted = waiting.pop()
            side = path[-1]
            here = net.start[side] if net.end[side] == corners[-1] else net.end[side]
            if here in corners:
                continue
            if here in rim:
                if turns == 0 and corners[0] < here:  # from the other end it is the same path
                    yield tuple(path)
                continue
            ahead = self._straight_on.get((here, side), OUTSIDE)
            if ahead != OUTSIDE:
                waiting.append(([*corners, here], [*path, ahead], turns, wasted))
            spent = 0 if here in self._ys else 1
            if turns and wasted >= spent:
                waiting.extend(
                    ([*corners, here], [*path, other], turns - 1, wasted - spent)
                    for other in self._at[here]
                    if other not in (side, ahead)
                )


def _seams_at(region: Region) -> Mapping[int, list[int]]:
    at: dict[int, list[int]] = defaultdict(list)
    for side in region.seams:
        at[region.net.start[side]].append(side)
        at[region.net.end[side]].append(side)
    return at
