"""What a quilter calls a shape, and when two shapes are the same piece of cloth.

The block's own straight grain runs along its sides, so along the axes here. Answers depend on the shape and how it
lies, not on where; they are remembered by the corners as seen from the first one.
"""

from __future__ import annotations

import math
from collections.abc import Hashable
from functools import lru_cache

from msgspec import Struct

from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.number import Exact, Surd, sign, square_root
from blockdsl.geometry.polygon import Point, Polygon, clockwise, cross, dot, drop_straight_corners, edges, step, turns

_BY_CORNERS = {5: "pentagon", 6: "hexagon", 7: "heptagon", 8: "octagon"}
_ACROSS, _DOWN = Point(Fraction(1), Fraction(0)), Point(Fraction(0), Fraction(1))


class Recognised(Struct, frozen=True):
    """A shape's name, its finished measures and the direction of its straight grain.

    `finished`: squares and rectangles (shorter, longer); half-square triangles (leg, leg); quarter-square triangles
    (long edge, height); all others the extent along the grain and the extent across it.
    `grain` is any step in that direction, pointing down, or right when level.
    """

    kind: str
    finished: tuple[Exact, Exact]
    grain: tuple[Exact, Exact]


class _Corners(Struct, frozen=True):
    """Corners seen from the first: whole numbers after their common denominator, or exact where roots are in them."""

    whole: tuple[int, ...]
    exact: Polygon


def _seen_from_first(polygon: Polygon) -> _Corners:
    flat: list[Fraction] = []
    for corner in polygon:
        for part in corner:
            if isinstance(part, Surd):
                return _Corners((), tuple(step(polygon[0], each) for each in polygon))
            flat.append(part)
    scale = math.lcm(*(part.denominator for part in flat))
    whole = [part.numerator * (scale // part.denominator) for part in flat]
    first = whole[:2]
    return _Corners((scale, *(part - first[i & 1] for i, part in enumerate(whole))), ())


def _outline(corners: _Corners) -> Polygon:
    """The clockwise outline without straight corners; ValueError when it has no area."""
    polygon = corners.exact
    if corners.whole:
        scale, *parts = corners.whole
        points = zip(parts[::2], parts[1::2], strict=True)
        polygon = tuple(Point(Fraction(x, scale), Fraction(y, scale)) for x, y in points)
    outline = drop_straight_corners(polygon)
    if not outline:
        raise ValueError("a shape without area has no name")
    return clockwise(outline)


def recognise(polygon: Polygon) -> Recognised:
    """The name, measures and grain of a simple polygon.

    Kinds:  square, rectangle, half-square triangle, quarter-square triangle, triangle, diamond, parallelogram,
            trapezoid, kite, quadrilateral, pentagon, hexagon, heptagon, octagon, polygon.
    Shape:  a right isosceles triangle with its legs along the axes is a half-square triangle, with its long edge
            along an axis a quarter-square triangle; any other way its cloth would be cut as no square's part.
    Errors: ValueError when the polygon has no area.
    """
    return _recognise(_seen_from_first(polygon))


@lru_cache(maxsize=8192)
def _recognise(corners: _Corners) -> Recognised:
    outline = _outline(corners)
    sides = [step(a, b) for a, b in edges(outline)]
    grain = _axis_grain(sides)
    if len(sides) == 3:
        kind = _triangle_kind(sides)
    elif len(sides) == 4:
        kind = _quadrilateral_kind(outline, sides)
    else:
        kind = _BY_CORNERS.get(len(sides), "polygon")
    if kind in ("square", "rectangle"):
        return _recognise_rectangle(kind, sides)
    along, across = _extents(outline, grain)
    if kind == "half-square triangle":
        return Recognised(kind, (min(along, across), min(along, across)), grain)
    return Recognised(kind, (along, across), grain)


def _axis_grain(sides: list[Point]) -> Point:
    """Across or down, whichever the longest side along an axis has; down when there is none or they are equal."""
    none: Exact = Fraction(0)
    across = max([none, *(dot(side, side) for side in sides if side.y == 0)])
    down = max([none, *(dot(side, side) for side in sides if side.x == 0)])
    return _ACROSS if across > down else _DOWN


def _extents(outline: Polygon, grain: Point) -> tuple[Exact, Exact]:
    xs, ys = [corner.x for corner in outline], [corner.y for corner in outline]
    width, height = max(xs) - min(xs), max(ys) - min(ys)
    return (width, height) if grain == _ACROSS else (height, width)


def _triangle_kind(sides: list[Point]) -> str:
    for i, side in enumerate(sides):
        before, opposite = sides[i - 1], sides[i - 2]
        if dot(before, side) == 0 and dot(before, before) == dot(side, side):
            if side.x == 0 or side.y == 0:
                return "half-square triangle"
            if opposite.x == 0 or opposite.y == 0:
                return "quarter-square triangle"
    return "triangle"


def _quadrilateral_kind(outline: Polygon, sides: list[Point]) -> str:
    a, b, c, d = sides
    squares = [dot(side, side) for side in sides]
    if a.x == -c.x and a.y == -c.y:
        equal = squares[0] == squares[1]
        if dot(a, b) == 0:
            return "square" if equal else "rectangle"
        return "diamond" if equal else "parallelogram"
    if -1 in turns(outline):
        return "quadrilateral"
    if cross(a, c) == 0 or cross(b, d) == 0:
        return "trapezoid"
    one_way = squares[0] == squares[1] and squares[2] == squares[3]
    other_way = squares[1] == squares[2] and squares[3] == squares[0]
    return "kite" if one_way or other_way else "quadrilateral"


def _recognise_rectangle(kind: str, sides: list[Point]) -> Recognised:
    one, two = square_root(dot(sides[0], sides[0])), square_root(dot(sides[1], sides[1]))
    if kind == "square":
        grain = next((side for side in sides if side.x == 0), sides[0])
    else:
        grain = sides[0] if one > two else sides[1]
    return Recognised(kind, (min(one, two), max(one, two)), directed(grain))


def directed(side: Point) -> Point:
    """The same direction pointing down, or right when it is level; a step of one along the axes."""
    if side.x == 0:
        return _DOWN
    if side.y == 0:
        return _ACROSS
    return side if side.y > 0 else Point(-side.x, -side.y)


def congruence_key(polygon: Polygon) -> Hashable:
    """Equal for shapes that are the same piece of cloth: one moves onto the other by sliding and turning.

    Shape:  the squared sides with dot and cross product at each corner, in the least of their cyclic orders, fix a
            polygon up to sliding and turning; mirror images differ, unless the shape is its own mirror image.
            Half-square and quarter-square triangles are kept apart, since their grain differs.
    Errors: ValueError when the polygon has no area.
    """
    return _key(_seen_from_first(polygon), mirrored=False)


def mirrored_key(polygon: Polygon) -> Hashable:
    """The `congruence_key` of the polygon's mirror image; the same as its own when a flip leaves the shape alike."""
    return _key(_seen_from_first(polygon), mirrored=True)


@lru_cache(maxsize=16384)
def _key(corners: _Corners, *, mirrored: bool) -> Hashable:
    outline = _outline(corners)
    if mirrored:
        outline = tuple(Point(-corner.x, corner.y) for corner in reversed(outline))
    sides = [step(a, b) for a, b in edges(outline)]
    if len(sides) == 4 and _quadrilateral_kind(outline, sides) in ("square", "rectangle"):
        one, two = dot(sides[0], sides[0]), dot(sides[1], sides[1])
        return ("rectangle", min(one, two), max(one, two))
    kind = _triangle_kind(sides) if len(sides) == 3 else ""
    around = [(dot(b, b), dot(a, b), cross(a, b)) for a, b in zip((sides[-1], *sides), sides, strict=False)]
    return (kind, *min(tuple(around[i:] + around[:i]) for i in range(len(around))))


def is_own_mirror_image(polygon: Polygon) -> bool:
    """Whether the shape turned over is the same piece, so that its template serves both ways."""
    return congruence_key(polygon) == mirrored_key(polygon)


def turns_inward(polygon: Polygon) -> bool:
    """Whether some corner points inward, so that a seam there has to be set in."""
    return any(sign(turn) < 0 for turn in turns(clockwise(polygon)))
