"""What can be seen of a part of the block that is still in one: its rim, its seams, the straight lines across it."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from collections.abc import Set as AbstractSet

from msgspec import Struct

from blockdsl.sewing.order.net import OUTSIDE, Net

Sides = tuple[int, ...]


class Region(Struct, frozen=True):
    """Some patches seen together. `atom` gives for each patch of the block what it is not to be parted from.

    `seams`: the sides between atoms, in the net's order. `rim`: every corner on the region's outline. Sides in
    `opened` (a partial seam that is not closed yet) count as outline.
    """

    net: Net
    patches: Sequence[int]
    inside: AbstractSet[int]
    atom: Sequence[int]
    opened: AbstractSet[int]
    seams: Sequence[int]
    rim: AbstractSet[int]


def look_at(net: Net, patches: Sequence[int], atom: Sequence[int], opened: AbstractSet[int] = frozenset()) -> Region:
    """The region of these patches."""
    inside = frozenset(patches)
    left, right, start, end = net.left, net.right, net.start, net.end
    seams: list[int] = []
    rim: set[int] = set()
    for patch in patches:
        for side in net.sides[patch]:
            one, other = left[side], right[side]
            if one not in inside or other not in inside or side in opened:
                rim.add(start[side])
                rim.add(end[side])
            elif one == patch and atom[one] != atom[other]:
                seams.append(side)
    seams.sort()
    return Region(net, patches, inside, atom, opened, seams, rim)


def runs(region: Region) -> list[Sides]:
    """The seams as straight runs, each as long as it can be inside the region."""
    net = region.net
    found: list[list[int]] = []
    last = OUTSIDE
    for side in region.seams:
        if last >= 0 and net.line[side] == net.line[last] and net.end[last] == net.start[side]:
            if net.start[side] in region.rim:
                found.append([side])
            else:
                found[-1].append(side)
        else:
            found.append([side])
        last = side
    return [tuple(run) for run in found]


def chords(region: Region) -> list[Sides]:
    """The straight lines right across, from outline to outline, that part no atom."""
    net, rim = region.net, region.rim
    return [run for run in runs(region) if net.start[run[0]] in rim and net.end[run[-1]] in rim]


def flood(region: Region, closed: Collection[int]) -> list[list[int]]:
    """The pieces into which sides `closed` part the region, each sorted, by their first patches."""
    net, inside, opened = region.net, region.inside, region.opened
    seen: set[int] = set()
    found: list[list[int]] = []
    for first in region.patches:
        if first in seen:
            continue
        seen.add(first)
        here, waiting = [], [first]
        while waiting:
            patch = waiting.pop()
            here.append(patch)
            for side in net.sides[patch]:
                if side in closed or side in opened:
                    continue
                other = net.left[side] if net.right[side] == patch else net.right[side]
                if other in inside and other not in seen:
                    seen.add(other)
                    waiting.append(other)
        here.sort()
        found.append(here)
    return found


def box_of(net: Net, patches: Sequence[int]) -> tuple[int, int, int, int]:
    """(left, top, right, bottom) as ranks of the net."""
    lefts, tops, rights, bottoms = zip(*(net.boxes[patch] for patch in patches), strict=True)
    return min(lefts), min(tops), max(rights), max(bottoms)


def reading_place(net: Net, patches: Sequence[int]) -> tuple[int, int]:
    """Where the patches come in reading order: their top, then their left."""
    left, top, _, _ = box_of(net, patches)
    return top, left
