"""How the ends of two parts lie on each other, right sides together: level, standing out evenly, or crossing.

The allowance beyond an end of a seam is the longer the sharper the corner there; where the corners of the two parts
differ, the edges of the cloth are not level though the seam lines are.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Literal

from blockdsl.geometry import Exact, Point, Polygon, sign
from blockdsl.geometry.polygon import cross, dot, edges, step

Ends = Literal["level", "even", "crossing", "one level", "uneven"]
"""level: the cloth of both ends at the same place. even: one part stands out at both ends by as much. crossing: where
an end is not level, the edges go straight on into each other and cross on the seam line. one level: the others are
not. uneven: neither."""


def ends_of(line: Sequence[Point], one: Iterable[Polygon], other: Iterable[Polygon]) -> Ends:
    """How two parts, each told by the outlines of its patches, lie on each other along a straight seam."""
    corners = []
    one, other = list(one), list(other)
    for start, end in ((line[0], line[-1]), (line[-1], line[0])):
        way = step(start, end)
        corners.append((_corner(start, way, one), _corner(start, way, other)))
    level = [_same(*corner) for corner in corners]
    if all(level):
        return "level"
    (first, second), (third, fourth) = corners
    if _same(first, third) and _same(second, fourth):
        return "even"
    if all(flush or _same(one, _other_way(other)) for flush, (one, other) in zip(level, corners, strict=True)):
        return "crossing"
    return "one level" if any(level) else "uneven"


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


def _other_way(angle: Angle) -> Angle:
    return -angle[0], angle[1]
