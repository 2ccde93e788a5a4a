"""Partial seams: a seam sewn only part of the way, so that others can run past its open end.

Seen from the finished block: the last stretch of the seam is opened from the outline inward, as far as a corner where
another seam meets it. What is open counts as outline, and the other seam leads right across.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from collections.abc import Set as AbstractSet

from blockdsl.sewing.order.bends import part_along_a_bend
from blockdsl.sewing.order.region import Region, chords, flood, look_at, runs

MOST_ATOMS_SEARCHED = 40
MOST_LOOKED_AT = 6_000
MOST_LOOKED_AT_FOR_ONE = 3_000
MOST_SLITS = 6


def fewest_openings(region: Region) -> frozenset[int] | None:
    """The sides to open so that the region can be parted, chosen so that the fewest seams are partial all in all.

    None when opening no end of a seam helps. Regions of many patches are not searched to the end: there the opening
    that leaves least to be done is taken.
    """
    search = _Search()
    if len({region.atom[patch] for patch in region.patches}) <= MOST_ATOMS_SEARCHED:
        for limit in range(1, MOST_SLITS + 1):
            found = search.first_of(region, limit)
            if found is not None or search.is_spent:
                break
        if found is not None:
            return found
    return search.most_helpful(region)


def _openings(region: Region) -> Iterator[frozenset[int]]:
    """The ends of straight runs, from the outline as far as each corner on the way."""
    net = region.net
    for run in runs(region):
        for one_way, end in ((run, net.start[run[0]]), (run[::-1], net.end[run[-1]])):
            if end in region.rim:
                for length in range(1, len(one_way)):
                    yield frozenset(one_way[:length])


def unparted(region: Region) -> list[Region]:
    """What is left after everything that can be parted without partial seams has been."""
    left: list[Region] = []
    waiting = [region]
    while waiting:
        here = waiting.pop()
        parts = _parts(here)
        if parts:
            waiting.extend(look_at(here.net, part, here.atom, here.opened) for part in parts)
        elif here.seams:
            left.append(here)
    return left


def _parts(region: Region) -> Sequence[list[int]] | None:
    lines = chords(region)
    if not lines:
        return part_along_a_bend(region, wasted=0) if region.seams else None
    way = region.net.way[lines[0][0]]
    return flood(region, frozenset(side for line in lines if region.net.way[line[0]] == way for side in line))


class _Search:
    def __init__(self) -> None:
        self._failed: dict[tuple[AbstractSet[int], AbstractSet[int]], int] = {}
        self._looked_at = 0

    @property
    def is_spent(self) -> bool:
        """Whether so many patches have been looked at that the search is to end."""
        return self._looked_at > MOST_LOOKED_AT

    def _opened(self, region: Region, opening: AbstractSet[int]) -> list[Region]:
        self._looked_at += len(region.patches)
        return unparted(look_at(region.net, region.patches, region.atom, region.opened | opening))

    def first_of(self, region: Region, limit: int) -> frozenset[int] | None:
        """The first opening of a way with at most `limit` of them, or None."""
        inside = region.inside
        open_here = frozenset(
            s for s in region.opened if region.net.left[s] in inside and region.net.right[s] in inside
        )
        if self._failed.get((inside, open_here), 0) >= limit:
            return None
        for opening in _openings(region):
            if self.is_spent:
                return None
            if self._suffices(self._opened(region, opening), limit - 1):
                return opening
        self._failed[inside, open_here] = limit
        return None

    def _suffices(self, left: Sequence[Region], limit: int) -> bool:
        if len(left) > limit:
            return False
        for region in left:
            spare = limit - len(left) + 1
            needed = next((n for n in range(1, spare + 1) if self.first_of(region, n) is not None), None)
            if needed is None:
                return False
            limit -= needed - 1
        return True

    def most_helpful(self, region: Region) -> frozenset[int] | None:
        """The opening after which the least is left to part, of as many as there is time for."""
        best, least = None, len(region.seams)
        self._looked_at = 0
        for opening in _openings(region):
            left = sum(len(part.seams) for part in self._opened(region, opening))
            if left < least:
                best, least = opening, left
            if best is not None and self._looked_at > MOST_LOOKED_AT_FOR_ONE:
                break
        return best
