"""The proof that patches cover a block: no gap, no overlap, nothing outside.

Walk each patch clockwise and take the block's own outline the other way round: every side walked is a directed
segment, and opposite segments cancel. If all of them cancel, then how often patches lie over a place minus how often
the block does cannot change from one side of any line to the other; far away it is nothing, so it is nothing
everywhere. Each patch lies once over its inside, so every place of the block is covered exactly once.

Sides that meet their exact reverse are dropped at once. The rest is added up line by line, which deals with corners
that meet the middle of a side. Only what is left after that is looked at for regions (geometry/regions.py).
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import TypeAlias

from msgspec import Struct

from blockdsl.geometry.number import Exact
from blockdsl.geometry.polygon import Point, Polygon
from blockdsl.geometry.regions import Found, Residue, find_regions
from blockdsl.geometry.sharing import patches_under
from blockdsl.geometry.wholes import WholeCorners, whole_corners

MOST_REGIONS = 20
_MOST_SEGMENTS = 2000

# Corners as pairs of whole numbers (geometry/wholes.py).
_Corner: TypeAlias = tuple[int, int]
_Ring: TypeAlias = list[_Corner]
_Segment: TypeAlias = tuple[Point, Point, int]
_Line: TypeAlias = tuple[Exact | int, Exact | int, Exact | int]


class Region(Struct, frozen=True):
    """One connected place where the cover is wrong.

    `place` lies strictly inside it; `box` is (left, top, right, bottom); `patches` are the numbers, from 0, of the
    patches that lie there (the first dozen, when more do): none for a gap.
    """

    area: Exact
    place: Point
    box: tuple[Exact, Exact, Exact, Exact]
    patches: tuple[int, ...]


class Cover(Struct, frozen=True):
    """`area` is the sum of all patches. When all three lists are empty the cover is proved.

    Regions come in reading order. `complete` is False when there were too many to list: then the first are given,
    and those that reach furthest down may go on beyond what their area says.
    """

    area: Exact
    gaps: tuple[Region, ...]
    overlaps: tuple[Region, ...]
    outside: tuple[Region, ...]
    complete: bool = True

    @property
    def is_proved(self) -> bool:
        """Whether every place of the block is covered exactly once and nothing sticks out."""
        return not (self.gaps or self.overlaps or self.outside)


def prove_cover(polygons: Sequence[Polygon], width: Exact, height: Exact) -> Cover:
    """Prove that simple polygons cover the box from (0, 0) to (width, height) exactly once, or say where not.

    Exact:  areas and places are exact; nothing is lost to rounding.
    Errors: none for any list of simple polygons, whichever way they run; polygons that cross themselves must be
            refused before (`is_simple`), since the two halves of a bow tie would count against each other.
    """
    block = (
        Point(width * 0, height * 0),
        Point(width, height * 0),
        Point(width, height),
        Point(width * 0, height),
    )
    corners = whole_corners([*polygons, block])
    rings = corners.rings
    doubled = 0
    for i, ring in enumerate(rings[:-1]):
        twice = _twice_area(ring)
        if corners.area_sign(twice) < 0:
            rings[i] = ring[::-1]
            twice = -twice
        doubled += twice
    area = corners.area(doubled)
    rings[-1].reverse()
    uneven = [changes for changes in _add_up(_uncancelled(rings), corners) if any(changes.values())]
    if not uneven:
        return Cover(area, (), (), ())
    residue, end = _topmost(_left_over(uneven, corners))
    found, complete = find_regions(residue, width, height, end)
    found.sort(key=lambda one: (one.box[1], one.box[0]))
    complete = complete and end is None and len(found) <= MOST_REGIONS
    found = found[:MOST_REGIONS]
    patches = patches_under([one.pieces for one in found if one.kind != "gap"], polygons)
    return _report(area, found, iter(patches), complete=complete)


def _twice_area(ring: _Ring) -> int:
    total = 0
    x, y = ring[-1]
    for next_x, next_y in ring:
        total += x * next_y - next_x * y
        x, y = next_x, next_y
    return total


def _uncancelled(rings: list[_Ring]) -> dict[tuple[_Corner, _Corner], int]:
    """Directed sides, with how often, after each has been dropped together with its exact reverse."""
    chain: dict[tuple[_Corner, _Corner], int] = {}
    for ring in rings:
        start = ring[-1]
        for end in ring:
            back = (end, start)
            count = chain.get(back)
            if count is None:
                forth = (start, end)
                chain[forth] = chain.get(forth, 0) + 1
            elif count == 1:
                del chain[back]
            else:
                chain[back] = count - 1
            start = end
    return chain


def _line_of(start: _Corner, end: _Corner) -> _Line:
    """A key for the line through both: its direction in lowest terms and where it lies."""
    dx, dy = end[0] - start[0], end[1] - start[1]
    common = math.gcd(dx, dy)
    if dx < 0 or (dx == 0 and dy < 0):
        common = -common
    dx, dy = dx // common, dy // common
    return dx, dy, dx * start[1] - dy * start[0]


class _RootedLines:
    """The same where roots are among the corners: the slope itself, worked out once for each step."""

    def __init__(self, corners: WholeCorners) -> None:
        self._corners = corners
        self._slopes: dict[_Corner, Exact] = {}

    def line_of(self, start: _Corner, end: _Corner) -> _Line:
        dx, dy = end[0] - start[0], end[1] - start[1]
        if dx == 0:
            return 0, 1, start[0]
        if dy == 0:
            return 1, 0, start[1]
        slope = self._slopes.get((dx, dy))
        if slope is None:
            one, other = self._corners.point(start), self._corners.point(end)
            slope = self._slopes[dx, dy] = (other.y - one.y) / (other.x - one.x)
        here = self._corners.point(start)
        return 1, slope, here.y - slope * here.x


def _add_up(chain: dict[tuple[_Corner, _Corner], int], corners: WholeCorners) -> list[dict[_Corner, int]]:
    """For each line the places where the number of sides that run forward minus those that run back changes."""
    line_of = _RootedLines(corners).line_of if corners.has_roots else _line_of
    lines: dict[_Line, dict[_Corner, int]] = {}
    for (start, end), count in chain.items():
        if start != end:
            changes = lines.setdefault(line_of(start, end), {})
            changes[start] = changes.get(start, 0) + count
            changes[end] = changes.get(end, 0) - count
    return list(lines.values())


def _left_over(uneven: list[dict[_Corner, int]], corners: WholeCorners) -> list[_Segment]:
    """The segments that did not cancel."""
    left: list[_Segment] = []
    for changes in uneven:
        places = sorted((corners.point(place), change) for place, change in changes.items() if change)
        running = 0
        for (start, change), (end, _) in pairwise(places):
            running += change
            if running:
                left.append((start, end, running))
    return left


def _topmost(segments: list[_Segment]) -> tuple[list[Residue], Exact | None]:
    """The segments; of very many those that begin above a level, and that level."""
    tops = [min(start.y, end.y) for start, end, _ in segments]
    level: Exact | None = None
    if len(segments) > _MOST_SEGMENTS:
        level = sorted(tops)[_MOST_SEGMENTS]
        if level == min(tops):  # very many begin at the very top: take just those
            level = min((top for top in tops if top > level), default=None)
    residue = [Residue(*segment) for segment, top in zip(segments, tops, strict=True) if level is None or top < level]
    return residue, level


def _report(area: Exact, found: list[Found], patches: Iterator[tuple[int, ...]], *, complete: bool) -> Cover:
    listed: dict[str, list[Region]] = {"gap": [], "overlap": [], "outside": []}
    for one in found:
        here = () if one.kind == "gap" else next(patches)
        listed[one.kind].append(Region(one.area, one.place, one.box, here))
    return Cover(area, tuple(listed["gap"]), tuple(listed["overlap"]), tuple(listed["outside"]), complete)
