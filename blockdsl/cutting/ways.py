"""The ways in which the cloth of a patch can be cut, the usual one first: by ruler where that goes."""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache
from typing import Literal

from msgspec import Struct

from blockdsl.cutting.angled import BY_RULER, Form, Slant, StripWay, strip_ways
from blockdsl.cutting.sizes import (
    Extent,
    box_for,
    rectangle_for,
    rectangle_for_right_triangle,
    square_for_half_square_triangle,
    square_for_quarter_square_triangle,
    with_allowance,
)
from blockdsl.geometry import Exact, Polygon, square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.number import sign
from blockdsl.geometry.polygon import Point, clockwise, cross, dot, drop_straight_corners, edges, step
from blockdsl.geometry.recognise import recognise

Piece = Literal[
    "square",
    "rectangle",
    "strip",
    "triangle",
    "diamond",
    "parallelogram",
    "trapezoid",
    "hexagon",
    "octagon",
    "template",
]
Subcut = Literal["none", "once", "twice"]


class Way(Struct, frozen=True):
    """One way to cut a patch.

    `exact` is the piece of cloth before rounding up; of a piece from a strip the width of the strip and the length of
    it that one piece takes. `grain` is a step along the straight grain, in the patch as it lies. `slant` is that of a
    cut from corner to corner as the piece stands on its shorter side, the right side up, where that matters. `corner`
    is how far from each corner of a square or rectangle its corners are cut off at 45°.
    """

    piece: Piece
    exact: Extent
    subcut: Subcut
    grain: Point
    slant: Slant | None = None
    strip: StripWay | None = None
    corner: Exact | None = None


@lru_cache(maxsize=2048)
def ways_to_cut(patch: Polygon, allowance: Fraction) -> tuple[Way, ...]:
    """Every way for a patch at the origin, the usual one first.

    Shape:  squares and rectangles one way; a right triangle with equal legs as half or as quarter of a square,
            whichever keeps its axis edges straight first; other right triangles as half of a rectangle; octagons as
            squares or rectangles with all corners cut off alike; what has its
            slanted edges at 45° or 60° from a strip; all else by template, in a strip where two edges are parallel.
    """
    outline = clockwise(drop_straight_corners(patch))
    known = recognise(outline)
    grain = Point(*known.grain)
    match known.kind:
        case "square" | "rectangle":
            shorter, longer = sorted(rectangle_for(outline, allowance))
            return (Way("square" if shorter == longer else "rectangle", (shorter, longer), "none", grain),)
        case "half-square triangle" | "quarter-square triangle" | "triangle":
            ways = tuple(_triangle_ways(outline, allowance, known.kind))
            if ways:
                return ways
        case "octagon":
            return (*_corners_off(outline, allowance, grain), *_templates(outline, allowance, grain))
    return (*_strips(outline, allowance, grain), *_templates(outline, allowance, grain))


def _triangle_ways(outline: Polygon, allowance: Fraction, kind: str) -> Iterator[Way]:
    """Right triangles out of squares and rectangles, those of 60° out of a strip."""
    sides = [step(a, b) for a, b in edges(outline)]
    corner = next((i for i in range(3) if dot(sides[i - 1], sides[i]) == 0), None)
    if corner is None:
        return
    before, after, long_edge = sides[corner - 1], sides[corner], sides[corner - 2]
    if dot(before, before) == dot(after, after):
        half, quarter = (
            square_for_half_square_triangle(outline, allowance),
            square_for_quarter_square_triangle(outline, allowance),
        )
        once = Way("square", (half, half), "once", after)
        twice = Way("square", (quarter, quarter), "twice", long_edge)
        yield from (twice, once) if kind == "quarter-square triangle" else (once, twice)
        return
    yield from _strips(outline, allowance, Point(*recognise(outline).grain), forms=("turned",))
    legs = rectangle_for_right_triangle(outline, allowance)
    shorter = min(before, after, key=lambda side: dot(side, side))
    # The rectangle stands on its shorter side, which lies level; y is downward.
    slant: Slant = "rising" if sign(dot(shorter, long_edge)) * sign(cross(shorter, long_edge)) < 0 else "falling"
    yield Way("rectangle", legs, "once", after, slant)
    yield Way("template", box_for(outline, allowance, long_edge), "none", long_edge)


def _corners_off(outline: Polygon, allowance: Fraction, grain: Point) -> list[Way]:
    """A square or rectangle, an edge along the grain, whose four corners are cut off alike at 45°; none for others."""
    sides = [step(a, b) for a, b in edges(outline)]
    start = next((place for place in (0, 1) if _square_to(sides[place], grain)), None)
    if start is None:
        return []
    rim, cuts = sides[start::2], [sides[(start + 1 + 2 * place) % 8] for place in range(4)]
    square = all(dot(rim[place - 1], rim[place]) == 0 for place in range(4))
    halfway = all(dot(cut, side) == cross(side, cut) for cut, side in zip(cuts, rim, strict=True))
    alike = len({dot(cut, cut) for cut in cuts}) == 1
    if not (square and halfway and alike):
        return []
    along = rim[0]
    piece = with_allowance(outline, allowance)
    off = step(piece[(start + 1) % 8], piece[(start + 2) % 8])
    length = square_root(dot(along, along))
    corner = max(dot(off, along), -dot(off, along)) / length
    shorter, longer = sorted(box_for(outline, allowance, along))
    return [Way("octagon", (shorter, longer), "none", along, corner=corner)]


def _strips(outline: Polygon, allowance: Fraction, grain: Point, forms: tuple[Form, ...] = BY_RULER) -> list[Way]:
    """By the ruler alone; first with an edge along the grain that suits the outline, then the longest edge."""
    found = [way for way in strip_ways(outline, allowance) if way.form in forms]
    return [_from_strip(_named(way, outline), way) for way in _in_order(found, grain)]


def _named(way: StripWay, outline: Polygon) -> Piece:
    if way.form == "points off":
        return "hexagon"
    if way.form == "side by side":
        return "diamond" if recognise(outline).kind == "diamond" else "parallelogram"
    return "triangle" if way.every is None else "trapezoid"


def _from_strip(piece: Piece, way: StripWay) -> Way:
    return Way(piece, (way.width, way.run), "none", way.grain, None, way)


def _templates(outline: Polygon, allowance: Fraction, grain: Point) -> list[Way]:
    """Round a template: in a strip between two parallel edges, else along the grain of its longest edge on an axis."""
    strips = [way for way in strip_ways(outline, allowance) if way.form == "template"]
    if strips:
        return [_from_strip("template", way) for way in _in_order(strips, grain)]
    sides = [step(a, b) for a, b in edges(outline)]
    grains = [grain, *(side for side in sides if not _square_to(side, grain))]
    return [Way("template", box_for(outline, allowance, way), "none", way) for way in grains]


def _in_order(ways: list[StripWay], grain: Point) -> list[StripWay]:
    """Edges along the grain first, then square to it, then long before short; of the same kind as they come."""

    def rank(way: StripWay) -> tuple[int, Exact]:
        lies = 0 if cross(way.grain, grain) == 0 else 1 if dot(way.grain, grain) == 0 else 2
        return lies, -dot(way.grain, way.grain)

    return sorted(ways, key=rank)


def _square_to(one: Point, other: Point) -> bool:
    """Whether two steps lie along or square to each other: the same grain."""
    return cross(one, other) == 0 or dot(one, other) == 0


def on_the_bias(edge: Point, grain: Point) -> bool:
    """Whether an edge runs neither along nor across the grain."""
    return not _square_to(edge, grain)
