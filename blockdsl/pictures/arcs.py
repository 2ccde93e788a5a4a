"""Arcs as runs of short lines, so fine that neither eye nor scissors can tell: within 0.005 mm on the page.

Here the exact ends, centre and radius of an arc become floats, once.
"""

from __future__ import annotations

from math import acos, atan2, ceil, cos, pi, sin
from typing import Final

from blockdsl.geometry import Point, Polygon, to_float
from blockdsl.geometry.arc import TWELFTHS, Bend, Curved, sweep
from blockdsl.geometry.fraction import Fraction
from blockdsl.marks.display_list import PagePoint

FINENESS_PT: Final = 0.005 / 25.4 * 72
"""How far the middle of a line may lie from its arc, on the page."""
_FEWEST: Final = 4
_NOTCHES: Final = (2, 3, 4)
"""Where a quarter circle is marked, in sixths of its sweep: at its middle and its thirds."""


def outline_places(outline: Polygon | Curved, scale: float) -> tuple[PagePoint, ...]:
    """The corners of an outline and fine steps along its arcs, in its own measure; `scale` is points for a unit."""
    if not isinstance(outline, Curved):
        return tuple((to_float(x), to_float(y)) for x, y in outline)
    places: list[PagePoint] = []
    for start, end, bend in outline.sides():
        places += arc_places(start, end, bend, scale)[:-1]
    return tuple(places)


def arc_places(start: Point, end: Point, bend: Bend | None, scale: float) -> tuple[PagePoint, ...]:
    """A side from end to end: two places when it is straight, else fine steps along its arc."""
    (ax, ay), (bx, by) = ((to_float(place.x), to_float(place.y)) for place in (start, end))
    if bend is None:
        return (ax, ay), (bx, by)
    cx, cy, radius = to_float(bend.centre.x), to_float(bend.centre.y), to_float(bend.radius)
    first, last = atan2(ay - cy, ax - cx), atan2(by - cy, bx - cx)
    turn = (last - first + pi) % (2 * pi) - pi  # the short way round
    # A line over the angle t lies r(1 - cos(t/2)) from its arc at most.
    finest = 2 * acos(max(0.0, 1 - FINENESS_PT / (radius * scale)))
    count = max(_FEWEST, ceil(abs(turn) / finest))
    between = ((first + turn * step / count) for step in range(1, count))
    return (ax, ay), *((cx + radius * cos(at), cy + radius * sin(at)) for at in between), (bx, by)


def notches_of(sewing: Curved, allowance: Fraction, scale: float) -> tuple[tuple[PagePoint, PagePoint], ...]:
    """Marks to match at: across the allowance of every quarter circle, at its middle and its thirds, on the page.

    The blades of a fan need none: their seams come to lie at these places.
    """
    found: list[tuple[PagePoint, PagePoint]] = []
    for start, end, bend in sewing.sides():
        if bend is None or sweep(start, end, bend) < TWELFTHS // 2:
            continue
        cx, cy = to_float(bend.centre.x), to_float(bend.centre.y)
        inner = to_float(bend.radius)
        outer = inner - to_float(allowance) if bend.hollow else inner + to_float(allowance)
        first, last = (atan2(to_float(place.y) - cy, to_float(place.x) - cx) for place in (start, end))
        turn = (last - first + pi) % (2 * pi) - pi
        for sixth in _NOTCHES:
            x, y = cos(first + turn * sixth / 6), sin(first + turn * sixth / 6)
            ends = ((cx + x * radius, cy + y * radius) for radius in (outer, inner))
            (ax, ay), (bx, by) = ends
            found.append(((ax * scale, ay * scale), (bx * scale, by * scale)))
    return tuple(found)
