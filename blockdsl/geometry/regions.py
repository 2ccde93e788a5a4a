"""Gaps and overlaps as connected regions, from the segments that did not cancel in the proof of cover.

The plane is cut into level slices at every end and crossing of the segments, each slice into trapezoids at the
segments that run through it. From left to right the count (patches minus block) changes by what each segment weighs.
Trapezoids of one kind that share part of a side are one region.
"""

from __future__ import annotations

from itertools import pairwise
from typing import Literal, NamedTuple, TypeAlias

from msgspec import Struct

from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.number import Exact, Surd
from blockdsl.geometry.polygon import Point, Polygon

Kind: TypeAlias = Literal["gap", "overlap", "outside"]

# How many segments, slice by slice, are looked at before the search stops: well under a second's work.
_BUDGET = 12_000
_BUDGET_WITH_ROOTS = 1_500
_MOST_PIECES = 6


class Residue(NamedTuple):
    """A segment, `start` left of `end` (above it when upright); `weight` sides ran that way more than back."""

    start: Point
    end: Point
    weight: int


class Found(Struct, frozen=True):
    """A region; `place` lies strictly inside; `pieces` are its largest trapezoids (or triangles)."""

    kind: Kind
    area: Exact
    place: Point
    pieces: tuple[Polygon, ...]
    box: tuple[Exact, Exact, Exact, Exact]


class _Cut(NamedTuple):
    """A segment where it runs through a slice."""

    at_top: Exact
    at_bottom: Exact
    gain: int


class _Trapezoid(NamedTuple):
    kind: Kind
    top: Exact
    bottom: Exact
    left: _Cut
    right: _Cut

    @property
    def area(self) -> Exact:
        widths = self.right.at_top - self.left.at_top + self.right.at_bottom - self.left.at_bottom
        return widths * (self.bottom - self.top) / 2

    @property
    def outline(self) -> Polygon:
        return (
            Point(self.left.at_top, self.top),
            Point(self.right.at_top, self.top),
            Point(self.right.at_bottom, self.bottom),
            Point(self.left.at_bottom, self.bottom),
        )

    @property
    def middle(self) -> Point:
        across = self.left.at_top + self.left.at_bottom + self.right.at_top + self.right.at_bottom
        return Point(across / 4, (self.top + self.bottom) / 2)


class _Slope(NamedTuple):
    """A segment that is not level, from its upper end; `gain` is what the count grows by from its left to its right."""

    upper: Point
    lower: Point
    gain: int

    def at(self, level: Exact) -> Exact:
        if self.upper.x == self.lower.x or level == self.upper.y:
            return self.upper.x
        if level == self.lower.y:
            return self.lower.x
        part = (level - self.upper.y) / (self.lower.y - self.upper.y)
        return self.upper.x + (self.lower.x - self.upper.x) * part


def find_regions(
    residue: list[Residue], width: Exact, height: Exact, end: Exact | None = None
) -> tuple[list[Found], bool]:
    """All regions where the count is not nothing, and whether the search went to the end.

    Shape:  more than nothing inside the block is an overlap, outside it "outside"; less than nothing is a gap.
    Takes:  all segments that begin above the level `end`, where the search stops; without one, all there are.
    """
    slopes = _slopes(residue, width, height)
    levels = _levels(residue, height, end)
    has_roots = any(isinstance(part, Surd) for one in residue for point in one[:2] for part in point)
    budget = _BUDGET_WITH_ROOTS if has_roots else _BUDGET
    groups = _Groups()
    waiting = sorted(slopes, key=lambda slope: slope.upper.y, reverse=True)
    active: list[_Slope] = []
    for top, bottom in pairwise(levels):
        active = [slope for slope in active if slope.lower.y > top]
        while waiting and waiting[-1].upper.y <= top:
            active.append(waiting.pop())
        here = top
        while here < bottom:
            budget -= len(active) + 1
            if budget < 0:
                return groups.found(), False
            cuts = sorted(_Cut(slope.at(here), slope.at(bottom), slope.gain) for slope in active)
            until = _first_crossing(cuts, here, bottom)
            if until < bottom:
                cuts = sorted(_Cut(slope.at(here), slope.at(until), slope.gain) for slope in active)
            groups.add_slice(_trapezoids(cuts, here, until, width, height))
            here = until
    return groups.found(), True


def _slopes(residue: list[Residue], width: Exact, height: Exact) -> list[_Slope]:
    """All segments that are not level, and the block's upright sides, which part outside from inside."""
    found = []
    for start, end, weight in residue:
        if start.y < end.y:
            found.append(_Slope(start, end, -weight))
        elif end.y < start.y:
            found.append(_Slope(end, start, weight))
    zero: Exact = Fraction(0)
    return [
        *found,
        _Slope(Point(zero, zero), Point(zero, height), 0),
        _Slope(Point(width, zero), Point(width, height), 0),
    ]


def _levels(residue: list[Residue], height: Exact, end: Exact | None) -> list[Exact]:
    levels: set[Exact] = {point.y for one in residue for point in (one.start, one.end)}
    first, last = min(levels), max(levels) if end is None else end
    levels |= {Fraction(0), height, last}
    return sorted(level for level in levels if first <= level <= last)


def _first_crossing(cuts: list[_Cut], top: Exact, bottom: Exact) -> Exact:
    """The highest level below `top` where two segments cross: before it neighbours stay neighbours."""
    first = bottom
    for one, two in pairwise(cuts):
        if one.at_bottom > two.at_bottom:
            apart = two.at_top - one.at_top
            level = top + (bottom - top) * apart / (apart + one.at_bottom - two.at_bottom)
            first = min(first, level)
    return first


def _trapezoids(cuts: list[_Cut], top: Exact, bottom: Exact, width: Exact, height: Exact) -> list[_Trapezoid]:
    found: list[_Trapezoid] = []
    level_inside = top >= 0 and bottom <= height
    count = 0
    for left, right in pairwise(cuts):
        count += left.gain
        if not count or (left.at_top == right.at_top and left.at_bottom == right.at_bottom):
            continue
        inside = level_inside and min(left[:2]) >= 0 and max(right[:2]) <= width
        kind: Kind = "gap" if count < 0 else "overlap" if inside else "outside"
        found.append(_Trapezoid(kind, top, bottom, left, right))
    return found


class _Groups:
    """Trapezoids gathered into regions while the slices come from top to bottom (a forest of linked numbers)."""

    def __init__(self) -> None:
        self._all: list[_Trapezoid] = []
        self._link: list[int] = []
        self._above: list[int] = []

    def _root(self, number: int) -> int:
        while self._link[number] != number:
            self._link[number] = self._link[self._link[number]]
            number = self._link[number]
        return number

    def _join(self, one: int, two: int) -> None:
        first, second = sorted((self._root(one), self._root(two)))
        self._link[second] = first

    def add_slice(self, trapezoids: list[_Trapezoid]) -> None:
        """Take the next slice, from left to right, and join it to the one above and within itself."""
        first = len(self._all)
        for trapezoid in trapezoids:
            number = len(self._all)
            self._all.append(trapezoid)
            self._link.append(number)
            before = self._all[number - 1] if number > first else None
            if before and before.kind == trapezoid.kind and before.right[:2] == trapezoid.left[:2]:
                self._join(number - 1, number)
        self._join_above(list(range(first, len(self._all))))

    def _join_above(self, here: list[int]) -> None:
        over, under = 0, 0
        while over < len(self._above) and under < len(here):
            above, below = self._all[self._above[over]], self._all[here[under]]
            touching = above.bottom == below.top and above.kind == below.kind
            if touching and above.left.at_bottom < below.right.at_top and below.left.at_top < above.right.at_bottom:
                self._join(self._above[over], here[under])
            if above.right.at_bottom <= below.right.at_top:
                over += 1
            else:
                under += 1
        self._above = here

    def found(self) -> list[Found]:
        """The regions so far."""
        members: dict[int, list[_Trapezoid]] = {}
        for number, trapezoid in enumerate(self._all):
            members.setdefault(self._root(number), []).append(trapezoid)
        return [_as_region(each) for each in members.values()]


def _as_region(members: list[_Trapezoid]) -> Found:
    sized = sorted(((one.area, one) for one in members), key=lambda pair: pair[0], reverse=True)
    area: Exact = Fraction(0)
    for size, _ in sized:
        area = area + size
    box = (
        min(min(one.left[:2]) for one in members),
        min(one.top for one in members),
        max(max(one.right[:2]) for one in members),
        max(one.bottom for one in members),
    )
    pieces = tuple(one.outline for _, one in sized[:_MOST_PIECES])
    return Found(members[0].kind, area, sized[0][1].middle, pieces, box)
