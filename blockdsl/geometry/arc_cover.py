"""The proof that curved patches cover a block as their straight twins do.

The twins have been proved to cover the block (geometry/cover.py). Walk each curved patch clockwise, and its twin the
other way round: straight sides add up line by line, arcs circle by circle, where an arc that bends out of its patch
runs clockwise about the centre and a hollow one back. If everything cancels, then how often curved patches lie over a
place cannot differ from how often their twins do, and those lie over every place once.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence

from msgspec import Struct

from blockdsl.geometry.arc import Curved, Side, sweep
from blockdsl.geometry.number import Exact, sign
from blockdsl.geometry.polygon import Point, Polygon, cross, dot, edges, is_simple, step

_Circle = tuple[Point, Exact]
_Line = tuple[object, ...]


class CurvedPatch(Struct, frozen=True):
    """A curved outline and its straight twin."""

    true: Curved
    twin: Polygon


def prove_arcs(patches: Sequence[CurvedPatch]) -> tuple[Point, ...]:
    """Places where the curved patches do not lie as their twins do; none when the proof holds.

    Exact:  every arc is met by its reverse on the same circle, stretch by stretch; straight sides likewise. Each
            outline is simple: its corners are, and no corner lies between a chord and its arc.
    """
    return tuple(dict.fromkeys([*_crossed(patches), *_uneven_lines(patches), *_uneven_arcs(patches)]))


def _crossed(patches: Iterable[CurvedPatch]) -> list[Point]:
    found: list[Point] = []
    for patch in patches:
        if not is_simple(patch.true.corners):
            found.append(patch.true.corners[0])
        for side in patch.true.sides():
            found += [corner for corner in patch.true.corners if side.bend is not None and in_sliver(corner, side)]
    return found


def in_sliver(place: Point, side: Side) -> bool:
    """Whether a place lies between an arc and its chord, or on the arc but for its ends."""
    if side.bend is None or place in (side.start, side.end):
        return False
    outward = step(side.bend.centre, place)
    if dot(outward, outward) > side.bend.radius * side.bend.radius:
        return False
    chord = step(side.start, side.end)
    beyond = sign(cross(chord, step(side.start, place))) * sign(cross(chord, step(side.start, side.bend.centre)))
    return beyond < 0


def _uneven_lines(patches: Iterable[CurvedPatch]) -> list[Point]:
    changes: dict[_Line, dict[Point, int]] = defaultdict(lambda: defaultdict(int))

    def add(start: Point, end: Point, weight: int) -> None:
        key = _line_of(start, end)
        changes[key][start] += weight
        changes[key][end] -= weight

    for patch in patches:
        for side in patch.true.sides():
            if side.bend is None:
                add(side.start, side.end, 1)
        for start, end in edges(patch.twin):
            add(start, end, -1)
    # Chords are sides of twins alone: they cancel among themselves.
    return [place for places in changes.values() for place, change in places.items() if change]


def _line_of(start: Point, end: Point) -> _Line:
    """A key for the line through both."""
    dx, dy = end.x - start.x, end.y - start.y
    if dx == 0:
        return (start.x,)
    slope = dy / dx
    return slope, start.y - slope * start.x


def _uneven_arcs(patches: Iterable[CurvedPatch]) -> list[Point]:
    changes: dict[_Circle, dict[Point, int]] = defaultdict(lambda: defaultdict(int))
    turned: dict[_Circle, int] = defaultdict(int)
    for patch in patches:
        for start, end, bend in patch.true.sides():
            if bend is None:
                continue
            circle, weight = (bend.centre, bend.radius), -1 if bend.hollow else 1
            first, last = (end, start) if bend.hollow else (start, end)
            changes[circle][first] += weight
            changes[circle][last] -= weight
            turned[circle] += weight * sweep(start, end, bend)
    uneven = [place for places in changes.values() for place, change in places.items() if change]
    return uneven + [centre for (centre, _), sum_of in turned.items() if sum_of]
