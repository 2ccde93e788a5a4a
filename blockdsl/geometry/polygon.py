"""Straight-sided shapes by their corners.

Corners are named once, without repeating the first at the end. x goes to the right and y downward, so an outline
that runs clockwise on the page has a positive shoelace sum.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise
from typing import Annotated, NamedTuple, TypeAlias

from msgspec import Meta

from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.number import Exact, Surd, sign
from blockdsl.geometry.surd import near


class Point(NamedTuple):
    """A place, or a step from one place to another."""

    x: Exact
    y: Exact


Polygon: TypeAlias = tuple[Point, ...]
Outline: TypeAlias = Annotated[
    Polygon,
    Meta(min_length=3, description="Corners (x, y) clockwise as seen, x to the right and y downward."),
]
Bounds: TypeAlias = tuple[Exact, Exact, Exact, Exact]


def step(start: Point, end: Point) -> Point:
    """The step that leads from `start` to `end`."""
    return Point(end.x - start.x, end.y - start.y)


def cross(a: Point, b: Point) -> Exact:
    """Cross product of two steps: positive when b turns clockwise (on the page) from a."""
    return a.x * b.y - a.y * b.x


def dot(a: Point, b: Point) -> Exact:
    """Dot product of two steps: positive when they are less than a right angle apart."""
    return a.x * b.x + a.y * b.y


def edges(polygon: Polygon) -> Iterator[tuple[Point, Point]]:
    """The sides in order, each as (from, to); the last leads back to the first corner."""
    return zip(polygon, (*polygon[1:], *polygon[:1]), strict=True)


def signed_area(polygon: Polygon) -> Exact:
    """Area, positive for a clockwise outline (shoelace formula)."""
    # Measured from the first corner, which keeps the numbers small.
    total: Exact = Fraction(0)
    steps = [step(polygon[0], corner) for corner in polygon[1:]]
    for a, b in pairwise(steps):
        total = total + cross(a, b)
    return total / 2


def area(polygon: Polygon) -> Exact:
    """Area, whichever way the outline runs."""
    signed = signed_area(polygon)
    return -signed if sign(signed) < 0 else signed


def clockwise(polygon: Polygon) -> Polygon:
    """The same outline running clockwise, from the same first corner."""
    return polygon if sign(signed_area(polygon)) >= 0 else (polygon[0], *reversed(polygon[1:]))


def bounding_box(polygon: Polygon) -> Bounds:
    """(left, top, right, bottom)."""
    xs = [corner.x for corner in polygon]
    ys = [corner.y for corner in polygon]
    return min(xs), min(ys), max(xs), max(ys)


def translate(polygon: Polygon, dx: Exact, dy: Exact) -> Polygon:
    """The polygon moved by (dx, dy)."""
    return tuple(Point(corner.x + dx, corner.y + dy) for corner in polygon)


def drop_straight_corners(polygon: Polygon) -> Polygon:
    """Without corners that repeat the one before or lie straight on (or fold back along) a side.

    A polygon with no area left gives an empty tuple.
    """
    corners = list(polygon)
    index = 0
    kept_since = 0
    while len(corners) >= 3 and kept_since < len(corners):
        index %= len(corners)
        before, here, after = corners[index - 1], corners[index], corners[(index + 1) % len(corners)]
        if turn_at(before, here, after) == 0:
            del corners[index]
            index -= 1
            kept_since = 0
        else:
            index += 1
            kept_since += 1
    return tuple(corners) if len(corners) >= 3 else ()


def turns(polygon: Polygon) -> list[int]:
    """For each corner the sign of its turn: 1 clockwise, -1 anticlockwise, 0 straight on."""
    count = len(polygon)
    return [turn_at(polygon[i - 1], polygon[i], polygon[(i + 1) % count]) for i in range(count)]


def turn_at(before: Point, here: Point, after: Point) -> int:
    """The sign of the turn at a corner: 1 clockwise, -1 anticlockwise, 0 straight on or back.

    Exact:  floats with a bound for their error where roots are among the corners, exact numbers where that is no help.
    """
    flat = (*before, *here, *after)
    if any(isinstance(number, Surd) for number in flat):
        places = [near(number) for number in flat]
        (ax, _), (ay, _), (bx, _), (by, _), (cx, _), (cy, _) = places
        value = (bx - ax) * (cy - by) - (by - ay) * (cx - bx)
        # Six differences of numbers up to `size`, each wrong by twice `error` and a rounding, in two products.
        size, error = max(abs(value) for value, _ in places), max(error for _, error in places)
        if abs(value) > 32 * size * (error + size * 2.0**-50):
            return 1 if value > 0 else -1
    return sign(cross(step(before, here), step(here, after)))


def is_convex(polygon: Polygon) -> bool:
    """Whether no corner points inward; the outline must be simple."""
    found = set(turns(polygon))
    return not {1, -1} <= found


def is_simple(polygon: Polygon) -> bool:
    """Whether no side crosses, touches or lies along another, but for sharing a corner with its neighbours."""
    count = len(polygon)
    if count < 3 or len(set(polygon)) < count:
        return False
    sides = list(edges(polygon))
    order = sorted(range(count), key=lambda i: min(sides[i][0].x, sides[i][1].x))
    for place, i in enumerate(order):
        reach = max(sides[i][0].x, sides[i][1].x)
        for j in order[place + 1 :]:
            if min(sides[j][0].x, sides[j][1].x) > reach:
                break
            if _clash(sides, i, j):
                return False
    return True


def _clash(sides: list[tuple[Point, Point]], i: int, j: int) -> bool:
    count = len(sides)
    if (i + 1) % count == j:
        return _folds_back(sides[i], sides[j])
    if (j + 1) % count == i:
        return _folds_back(sides[j], sides[i])
    return segments_meet(*sides[i], *sides[j])


def _folds_back(first: tuple[Point, Point], second: tuple[Point, Point]) -> bool:
    one, two = step(*first), step(*second)
    return cross(one, two) == 0 and sign(dot(one, two)) < 0


def segments_meet(a: Point, b: Point, c: Point, d: Point) -> bool:
    """Whether the closed segments ab and cd have a point in common."""
    if max(a.y, b.y) < min(c.y, d.y) or max(c.y, d.y) < min(a.y, b.y):
        return False
    if max(a.x, b.x) < min(c.x, d.x) or max(c.x, d.x) < min(a.x, b.x):
        return False
    ab, cd = step(a, b), step(c, d)
    c_side, d_side = sign(cross(ab, step(a, c))), sign(cross(ab, step(a, d)))
    a_side, b_side = sign(cross(cd, step(c, a))), sign(cross(cd, step(c, b)))
    return c_side * d_side <= 0 and a_side * b_side <= 0


def contains(polygon: Polygon, place: Point) -> bool:
    """Whether the place lies inside a simple polygon or on its outline."""
    crossings = 0
    for a, b in edges(polygon):
        along = step(a, b)
        side = sign(cross(along, step(a, place)))
        if side == 0 and min(a.x, b.x) <= place.x <= max(a.x, b.x) and min(a.y, b.y) <= place.y <= max(a.y, b.y):
            return True
        if (a.y > place.y) != (b.y > place.y) and (side > 0) == (b.y > a.y):
            crossings += 1
    return crossings % 2 == 1


def inside_point(polygon: Polygon) -> Point:
    """A point strictly inside a simple polygon, in the middle of the widest run of its tallest slice.

    Errors: ValueError when the polygon has no area.
    """
    levels = sorted({corner.y for corner in polygon})
    if len(levels) < 2:
        raise ValueError("a polygon without area has no inside")
    top, bottom = max(pairwise(levels), key=lambda pair: pair[1] - pair[0])
    level = (top + bottom) / 2
    crossings = sorted(
        a.x + (b.x - a.x) * (level - a.y) / (b.y - a.y)
        for a, b in edges(polygon)
        if min(a.y, b.y) < level < max(a.y, b.y)
    )
    left, right = max(zip(crossings[::2], crossings[1::2], strict=True), key=lambda pair: pair[1] - pair[0])
    return Point((left + right) / 2, level)
