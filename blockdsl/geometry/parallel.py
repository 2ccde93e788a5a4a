"""An outline drawn again at a distance outside, for cloth that is turned under: round at points, closed in notches.

A hem is judged by the eye: round points its line is good to a hundredth of the distance, along straight sides exact.
"""

from __future__ import annotations

from itertools import pairwise
from math import atan2, ceil, cos, hypot, pi, sin
from typing import Final

from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import Point, Polygon, drop_straight_corners

_ROUND: Final = pi / 16
"""Steps round a point."""
_HAIR: Final = 1e-6
_Place = tuple[float, float]


def parallel_outside(outline: Polygon, distance: Fraction) -> Polygon:
    """The outline that lies the distance outside a clockwise, simple polygon; the polygon itself for no distance.

    Shape:  every side moved outward, arcs round corners that point outward; what comes nearer to another part of the
            outline than the distance is left out, so that narrow notches close.
    Exact:  upright and level sides lie the distance away; others to a millionth, round points up to a hundredth more.
    """
    if not distance:
        return outline
    by = float(distance)
    corners = [(float(x), float(y)) for x, y in outline]
    moved = [
        place
        for number, corner in enumerate(corners)
        for place in _round(corners[number - 1], corner, corners[(number + 1) % len(corners)], by)
    ]
    sides = list(pairwise([*corners, corners[0]]))
    kept = [place for place in moved if not _is_near(place, sides, by - _HAIR)]
    return drop_straight_corners(tuple(Point(_told(x), _told(y)) for x, y in kept))


def _told(length: float) -> Fraction:
    """The simplest number so near that the two cannot be told apart: what was exact before is so again."""
    return Fraction(length).limit_denominator(10**6)


def _round(before: _Place, here: _Place, after: _Place, by: float) -> list[_Place]:
    """Where a corner goes: to the ends of both moved sides, with an arc between them where it points outward."""
    first, last = _outward(before, here), _outward(here, after)
    start, turn = atan2(first[1], first[0]), atan2(_cross(first, last), first[0] * last[0] + first[1] * last[1])
    ends = [(here[0] + by * x, here[1] + by * y) for x, y in (first, last)]
    if turn <= 0:
        return ends
    count = max(1, ceil(turn / _ROUND))
    wide = by / cos(turn / count / 2)  # the arc's chords lie no nearer than the arc
    angles = (start + turn * (step + 0.5) / count for step in range(count))
    return [ends[0], *((here[0] + wide * cos(angle), here[1] + wide * sin(angle)) for angle in angles), ends[1]]


def _outward(start: _Place, end: _Place) -> _Place:
    """The way square to a side, out of a clockwise outline."""
    dx, dy = end[0] - start[0], end[1] - start[1]
    length = hypot(dx, dy)
    return dy / length, -dx / length


def _cross(one: _Place, other: _Place) -> float:
    return one[0] * other[1] - one[1] * other[0]


def _is_near(place: _Place, sides: list[tuple[_Place, _Place]], least: float) -> bool:
    x, y = place
    for (ax, ay), (bx, by) in sides:
        dx, dy = bx - ax, by - ay
        share = max(0.0, min(1.0, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)))
        if hypot(x - ax - share * dx, y - ay - share * dy) < least:
            return True
    return False
