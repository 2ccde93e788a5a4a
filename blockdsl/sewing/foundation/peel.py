"""Taking a section apart patch by patch, from the last one sewn to the first.

A patch can be the last one sewn when one straight line, right across what is sewn, has the patch on one side of it and
all others on the other: then its seam covers the whole edge that it is added to. Whichever such patch is taken off
first, the others can still be taken off (each part of a line across is a line across its part), so that looking one
step ahead is enough, and the choice is one of good order only.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from msgspec import Struct

from blockdsl.sewing.order.net import Net
from blockdsl.sewing.order.region import Region, Sides, chords, look_at, reading_place


class Added(Struct, frozen=True):
    """A patch in its turn, and the sides (of the net) along which it is sewn on; none for the first."""

    patch: int
    seam: Sides


def seen(net: Net, patches: Sequence[int]) -> Region:
    """The region of these patches, none of them bound to another."""
    return look_at(net, patches, range(len(net.sides)))


def sewing_sequence(net: Net, patches: Sequence[int], *, as_numbered: bool = False) -> tuple[Added, ...] | None:
    """The patches in the order in which they are sewn to one paper, or None when they do not share one.

    Our own rule: where all seams are parallel, from the smaller end to the larger; otherwise from the middle, the
    patch that most others touch, outward. What is alike comes in reading order. The patches of a unit in rounds are
    numbered in their order of sewing (`as_numbered`).
    """
    left = sorted(patches)
    region = seen(net, left)
    touching = _neighbours(region)
    parallel = len({net.way[side] for side in region.seams}) < 2
    taken: list[Added] = []
    while len(left) > 1:
        found = _removable(region)
        if not found:
            return None
        if as_numbered:
            best = max(found)
        else:
            best = min(found, key=lambda patch: _late(net, patch, found, touching, parallel=parallel, left=len(left)))
        taken.append(Added(best, found[best]))
        left.remove(best)
        region = seen(net, left)
    return (Added(left[0], ()), *reversed(taken))


def _late(
    net: Net, patch: int, found: dict[int, Sides], touching: Counter[int], *, parallel: bool, left: int
) -> tuple[object, ...]:
    """Less is taken off sooner, and so sewn later."""
    top, side = reading_place(net, (patch,))
    area = net.areas[patch]
    if parallel:
        return -area, -top, -side
    if left == 2:  # the other one is sewn first
        return touching[patch], area, -top, -side
    return len(found[patch]), -area, -top, -side


def _neighbours(region: Region) -> Counter[int]:
    """How many of the others each patch touches along a side."""
    net = region.net
    pairs = {(net.left[side], net.right[side]) for side in region.seams}
    return Counter(patch for pair in pairs for patch in pair)


def _removable(region: Region) -> dict[int, Sides]:
    """The patches that can have been sewn last, each with its seam."""
    net = region.net
    inner = Counter(patch for side in region.seams for patch in (net.left[side], net.right[side]))
    found: dict[int, Sides] = {}
    for chord in chords(region):
        for hand in (net.left, net.right):
            beside = {hand[side] for side in chord}
            if len(beside) == 1:
                (patch,) = beside
                if inner[patch] == len(chord):
                    found[patch] = chord
    return found
