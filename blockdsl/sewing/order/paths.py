"""Seams as paths: sides in a row, and the corners where they turn."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Sequence
from itertools import pairwise

from blockdsl.sewing.order.net import Net


def in_one_path(net: Net, sides: Collection[int]) -> list[int] | None:
    """The sides in the order in which they are walked, from the end that comes first; None when they are no path."""
    ordered = sorted(sides)
    if all(net.line[one] == net.line[other] and net.end[one] == net.start[other] for one, other in pairwise(ordered)):
        return ordered
    at: dict[int, list[int]] = defaultdict(list)
    for side in ordered:
        at[net.start[side]].append(side)
        at[net.end[side]].append(side)
    ends = [corner for corner, meeting in at.items() if len(meeting) == 1]
    if len(ends) != 2 or any(len(meeting) > 2 for meeting in at.values()):
        return None
    here = min(ends, key=lambda corner: at[corner][0])
    path: list[int] = []
    while True:
        onward = [side for side in at[here] if not path or side != path[-1]]
        if not onward:
            return path if len(path) == len(ordered) else None
        path.append(onward[0])
        here = net.start[onward[0]] if net.end[onward[0]] == here else net.end[onward[0]]


def corners_of(net: Net, path: Sequence[int]) -> list[int]:
    """Where a path begins, turns and ends."""
    first = path[0]
    if len(path) > 1 and net.start[first] in (net.start[path[1]], net.end[path[1]]):
        here = net.end[first]
    else:
        here = net.start[first]
    corners = [here]
    for place, side in enumerate(path):
        here = net.start[side] if net.end[side] == here else net.end[side]
        if place + 1 == len(path) or net.line[path[place + 1]] != net.line[side]:
            corners.append(here)
    return corners
