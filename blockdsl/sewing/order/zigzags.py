"""Zigzag seams: rows of a honeycomb, joined row to row by one long seam that turns at every corner.

Setting in one hexagon after the other costs as many turns, but a row at a time is sewn in order and is easily found
again on the table. A zigzag goes to and fro between two levels, from outline to outline.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from itertools import pairwise

from blockdsl.sewing.order.region import Region, Sides, flood, reading_place, runs

LEAST_TURNS = 2


def part_in_zigzags(region: Region) -> list[list[int]] | None:
    """The rows between all level zigzags, else the columns between upright ones; None when there are none."""
    through = _passed_straight(region)
    for axis in (1, 0):
        closed: set[int] = set()
        parts = [list(region.patches)]
        for path in _zigzags(region, axis, through):
            more = flood(region, closed | set(path))
            # A path that leaves single patches with nothing between them (the tops of boxes) parts no rows.
            if len(more) == len(parts) + 1:
                closed |= set(path)
                parts = more
        if len(parts) > 1:
            return sorted(parts, key=lambda part: reading_place(region.net, part)[:: 1 if axis else -1])
    return None


def _passed_straight(region: Region) -> set[int]:
    """Corners that some seam runs straight through: no seam has to turn there."""
    net = region.net
    return {net.end[side] for run in runs(region) for side in run[:-1]}


def _zigzags(region: Region, axis: int, through: set[int]) -> Iterator[Sides]:
    """Paths between two levels (axis 1) or two uprights (axis 0) that turn more than once and mostly where they must.

    All sides between the same two levels are one such path when each begins where the one before it ends.
    """
    net = region.net
    between: dict[tuple[int, int], list[int]] = defaultdict(list)
    for side in region.seams:
        one, other = net.ranks[net.start[side]][axis], net.ranks[net.end[side]][axis]
        if one != other:
            between[min(one, other), max(one, other)].append(side)
    for _, sides in sorted(between.items()):
        if len(sides) <= LEAST_TURNS:
            continue
        path = sorted(sides, key=lambda side: _span(region, side, 1 - axis))
        corners = _corners(region, path)
        if corners is None or not (corners[0] in region.rim and corners[-1] in region.rim):
            continue
        turns = corners[1:-1]
        if not region.rim & set(turns) and 2 * sum(corner in through for corner in turns) <= len(turns):
            yield tuple(path)


def _span(region: Region, side: int, axis: int) -> tuple[int, int]:
    net = region.net
    one, other = net.ranks[net.start[side]][axis], net.ranks[net.end[side]][axis]
    return min(one, other), max(one, other)


def _corners(region: Region, path: list[int]) -> list[int] | None:
    """The corners along sides that are one path in this order, each turning back; None when they are not."""
    net = region.net
    first, second = ({net.start[side], net.end[side]} for side in path[:2])
    shared = first & second
    if len(shared) != 1:
        return None
    here = shared.pop()
    corners = [(first - {here}).pop(), here]
    for before, side in pairwise(path):
        ends = {net.start[side], net.end[side]}
        if here not in ends or net.line[side] == net.line[before]:
            return None
        here = (ends - {here}).pop()
        corners.append(here)
    return corners
