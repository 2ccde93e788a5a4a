"""A curved outline with its seam allowance: an arc keeps its centre, its radius grows or shrinks by the allowance.

A side and an arc that meet in the corner V are both moved outward. Seen from the arc's centre, the moved side (unit
normal n outward, unit step u) is the line h·n + t·u, and it meets the moved circle of radius R where t² = R² - h². Of
the two places the one on V's side is the corner. Where two straight sides meet, geometry/offset.py has the formula.
"""

from __future__ import annotations

from blockdsl.geometry.arc import Bend, Curved, Side
from blockdsl.geometry.number import Exact, sign, square_root
from blockdsl.geometry.offset import offset_outward, trim_points
from blockdsl.geometry.polygon import Point, Polygon, dot, step


def least_radius(allowance: Exact) -> Exact:
    """A hollow arc must have more than this radius, or its allowance closes up: R² - h² > 0 with R = r - s, h = s."""
    return 2 * allowance


def offset_curved(outline: Curved, allowance: Exact) -> Curved:
    """The outline that lies the allowance outside, with mitred corners.

    Shape:  corner i of the result belongs to corner i of the outline.
    Exact:  wherever `square_root` is; otherwise too large by less than 10⁻²⁸.
    Errors: ValueError where two arcs meet in a corner, or a hollow arc is no more than `least_radius`.
    """
    sides = list(outline.sides())
    corners = tuple(_corner(sides[i - 1], sides[i], allowance) for i in range(len(sides)))
    return Curved(corners, tuple(side.bend and _moved(side.bend, allowance) for side in sides))


def _moved(bend: Bend, allowance: Exact) -> Bend:
    radius = bend.radius - allowance if bend.hollow else bend.radius + allowance
    return Bend(bend.centre, radius, bend.hollow)


def _corner(before: Side, after: Side, allowance: Exact) -> Point:
    if before.bend is None and after.bend is None:
        # The corner of a triangle with these two sides.
        return offset_outward((before.start, before.end, after.end), allowance)[1]
    if before.bend is not None and after.bend is not None:
        raise ValueError("two arcs in one corner have no mitre here")
    straight, bend = (before, after.bend) if before.bend is None else (after, before.bend)
    assert bend is not None  # noqa: S101  one of the two is an arc
    return _meet(straight, _moved(bend, allowance), after.start, allowance)


def _meet(straight: Side, circle: Bend, corner: Point, allowance: Exact) -> Point:
    along = step(straight.start, straight.end)
    length = square_root(dot(along, along))
    unit = Point(along.x / length, along.y / length)
    normal = Point(unit.y, -unit.x)
    from_centre = step(circle.centre, straight.start)
    away = dot(from_centre, normal) + allowance
    square = circle.radius * circle.radius - away * away
    if sign(square) <= 0 or sign(circle.radius) <= 0:
        raise ValueError("the allowance closes a hollow arc")
    reach = square_root(square)
    if sign(dot(step(circle.centre, corner), unit)) < 0:
        reach = -reach
    return Point(circle.centre.x + away * normal.x + reach * unit.x, circle.centre.y + away * normal.y + reach * unit.y)


def trim_curved(cutting: Curved, sewing: Curved, allowance: Exact) -> Curved:
    """The cutting outline with its long points trimmed as `trim_points` does; only corners of straight sides have any.

    Takes:  the outline that `offset_curved` gave for `sewing` and `allowance`.
    """
    sides = list(sewing.sides())
    corners: list[Point] = []
    bends: list[Bend | None] = []
    for place, (corner, bend) in enumerate(zip(cutting.corners, cutting.bends, strict=True)):
        before, after = sides[place - 1], sides[place]
        trimmed: Polygon = (corner,)
        if before.bend is None and after.bend is None:
            wedge = (before.start, before.end, after.end)
            mitred = offset_outward(wedge, allowance)[1]
            trimmed = trim_points((mitred,), wedge, allowance)
        corners.extend(trimmed)
        bends.extend([None] * (len(trimmed) - 1))
        bends.append(bend)
    return Curved(tuple(corners), tuple(bends))
