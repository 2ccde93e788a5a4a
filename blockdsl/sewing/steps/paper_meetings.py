"""Where seams meet in the join of two runs of sections, and whether their allowances lie opposite ways there.

On papers every seam is pressed toward the piece that it adds, and a join toward the sections that come before: so it is
known how each lies.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from msgspec import Struct

from blockdsl.geometry import Exact, Point, sign
from blockdsl.geometry.polygon import cross, dot, step
from blockdsl.sewing.foundation import FoundationPlan, SectionJoin

Line = tuple[Point, Point]


class _End(Struct, frozen=True):
    """A seam that ends at a place: it leads `inward` from there, and its allowances lie toward `lies`."""

    place: Point
    inward: Point
    lies: Point


def meetings_of(join: SectionJoin, plan: FoundationPlan) -> tuple[int, int]:
    """How many seams of the two sides meet in a join, and how many of them lie the same way.

    Two meet where they lie on each other once the work is folded: one is the mirror image of the other. Where some are
    square to the join, slanted ones beside them are not counted.
    """
    way = step(*join.seam)
    before, after = ([end for end in _ends(run, plan) if _is_inside(end.place, join.seam)] for run in _runs(join))
    met = same = 0
    for place in dict.fromkeys(end.place for end in before):
        pairs = [
            (one, other)
            for one in before
            for other in after
            if one.place == other.place == place and _lie_on_each_other(one, other, way)
        ]
        upright = [(one, other) for one, other in pairs if not dot(one.inward, way)]
        for one, other in upright or pairs:
            met += 1
            same += sign(dot(one.lies, way)) == sign(dot(other.lies, way))
    return met, same


def _runs(join: SectionJoin) -> tuple[tuple[str, ...], tuple[str, ...]]:
    return join.before, join.after


def _ends(run: Sequence[str], plan: FoundationPlan) -> Iterator[_End]:
    """The ends of all seams inside a run of sections, those of its areas and those of its joins."""
    for section in plan.sections:
        if section.letter in run:
            for sewn in section.patches:
                if sewn.seam is not None:
                    yield from _both(sewn.seam, plan.group.picture[sewn.index].outline)
    outlines = {section.letter: section.outline for section in plan.sections}
    for join in plan.joins:
        if set(join.before) | set(join.after) <= set(run):
            yield from _both(join.seam, [corner for letter in join.before for corner in outlines[letter]])


def _both(line: Line, beside: Sequence[Point]) -> Iterator[_End]:
    """Both ends of a seam whose allowances lie on the side of these corners."""
    start, end = line
    way = step(start, end)
    square = Point(-way.y, way.x)
    lies = square if any(sign(dot(square, step(start, corner))) > 0 for corner in beside) else _back(square)
    yield _End(start, way, lies)
    yield _End(end, _back(way), lies)


def _back(way: Point) -> Point:
    return Point(-way.x, -way.y)


def _is_inside(place: Point, line: Line) -> bool:
    start, end = line
    way, to = step(start, end), step(start, place)
    along: Exact = dot(way, to)
    return not sign(cross(way, to)) and sign(along) > 0 and sign(along - dot(way, way)) < 0


def _lie_on_each_other(one: _End, other: _End, way: Point) -> bool:
    """Whether one is the mirror image of the other across a line."""
    (a, b), (c, d) = ((dot(end.inward, way), cross(way, end.inward)) for end in (one, other))
    return not sign(a * d + b * c) and sign(a * c - b * d) > 0
