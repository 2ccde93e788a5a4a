"""How the ends of two parts lie on each other, right sides together: which extends beyond the other, and how far.

The allowance beyond an end of a seam is the longer the sharper the corner there: by the cotangent of half its angle.
Where the corners of the two parts differ, the edges of the cloth are not even though the seam lines are.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from math import sqrt

from blockdsl.geometry import Exact, Point, Polygon, sign, to_float
from blockdsl.geometry.polygon import cross, dot, edges, step


def overhang(line: Sequence[Point], one: Iterable[Polygon], other: Iterable[Polygon]) -> tuple[float, float]:
    """How far the first part extends beyond the second at the start and at the end of a straight seam.

    Units:  in allowances; below 0 where the second extends. Each part is given by the outlines of its patches.
    """
    one, other = list(one), list(other)
    found = []
    for start, end in ((line[0], line[-1]), (line[-1], line[0])):
        way = step(start, end)
        here, there = _corner(start, way, one), _corner(start, way, other)
        square = to_float(dot(way, way))
        found.append(0.0 if _same(here, there) else _beyond(here, square) - _beyond(there, square))
    return found[0], found[1]


def beyond(before: Point, here: Point, after: Point) -> float:
    """How far the cut edge goes on beyond a finished corner, in allowances: the cotangent of half the angle there."""
    way, lead = step(here, before), step(here, after)
    return _beyond((dot(way, lead), dot(lead, lead)), to_float(dot(way, way)))


def _beyond(angle: Angle, square: float) -> float:
    cosine = to_float(angle[0]) / sqrt(square * to_float(angle[1]))
    return sqrt((1 + cosine) / (1 - cosine)) if cosine < 1 else 0.0


Angle = tuple[Exact, Exact]
"""Of a corner at the end of a seam: the way of the outline along the seam, and its length squared."""


def _corner(place: Point, way: Point, outlines: Iterable[Polygon]) -> Angle:
    """The outermost edge that leads from the place, on the side of the seam where the part lies."""
    leads = [lead for outline in outlines for lead in _leads(place, outline)]
    farthest = way
    for lead in leads:
        turn = sign(cross(farthest, lead)) * _side(way, leads)
        if turn > 0 or (turn == 0 and sign(dot(farthest, lead)) < 0):
            farthest = lead
    return dot(way, farthest), dot(farthest, farthest)


def _side(way: Point, leads: Iterable[Point]) -> int:
    return next((turn for lead in leads if (turn := sign(cross(way, lead)))), 1)


def _leads(place: Point, outline: Polygon) -> list[Point]:
    """The ways in which an outline leads from a place on it, a corner or not."""
    found = []
    for start, end in edges(outline):
        back, on = step(place, start), step(place, end)
        if not sign(cross(back, on)) and sign(dot(back, on)) <= 0:
            found += [lead for lead in (back, on) if lead != Point(back.x * 0, back.y * 0)]
    return found


def _same(one: Angle, other: Angle) -> bool:
    """Whether two corners are equally sharp: (way · lead)² / lead² says it, with the sign of the first."""
    return sign(one[0]) == sign(other[0]) and one[0] * one[0] * other[1] == other[0] * other[0] * one[1]
