"""What a maker measures of what a step makes: both sides of a rectangle, one straight edge of anything else."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

from blockdsl.geometry import Exact, Point, Polygon, sign, square_root, to_float
from blockdsl.geometry.arc import reach
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import bounding_box, cross, dot, edges, step
from blockdsl.model import Patch
from blockdsl.sewing.steps.action import Measure, Position
from blockdsl.sewing.steps.directions import ORDER, outward, towards
from blockdsl.sewing.steps.edges import is_rectangle
from blockdsl.sewing.steps.ends import beyond
from blockdsl.sewing.steps.step import Variant
from blockdsl.sewing.steps.upright import upright

_ROOT_HALF = square_root(Fraction(1, 2))
_FINE = 64
"""Of an edge with slanted ends the length is rounded to such a share of an inch or a centimetre: it is *about* that."""


def finished_size(variant: Variant) -> tuple[Exact, Exact]:
    """Its sides, width first as it lies; of what is no rectangle those of the box round it as it lies on the table."""
    outline = variant.outline
    if any(patch.curved for patch in variant.picture):
        return _curved_size(variant.picture)
    if outline is not None and not variant.is_rectangle and is_rectangle(outline):
        return _sides(outline)
    lying = upright(variant)
    if lying is variant:
        return variant.extent
    # Laid upright it is drawn longer by the root of 2.
    return lying.extent[0] * _ROOT_HALF, lying.extent[1] * _ROOT_HALF


def _curved_size(picture: Sequence[Patch]) -> tuple[Exact, Exact]:
    """Width and height of the box round patches some of which have arcs: these bulge beyond their chords."""
    outlines = [patch.curved or patch.outline for patch in picture]
    ways = Point(Fraction(1), Fraction(0)), Point(Fraction(0), Fraction(1))
    across, down = ([reach(outline, way) for outline in outlines] for way in ways)
    width = max(high for _, high in across) - min(low for low, _ in across)
    return width, max(high for _, high in down) - min(low for low, _ in down)


def _sides(outline: Polygon) -> tuple[Exact, Exact]:
    """Of a rectangle that lies aslant: the edge that is nearest to level first.

    At 45 degrees that is the edge that rises to the right: an eighth of a turn clockwise lays it level (see `upright`).
    """
    ways = [step(start, end) for start, end in edges(outline)][:2]
    lengths = [_length(way) for way in ways]
    flat = [(sign(way.x * sign(way.x) - way.y * sign(way.y)), -sign(way.x) * sign(way.y)) for way in ways]
    return (lengths[1], lengths[0]) if flat[1] > flat[0] else (lengths[0], lengths[1])


def _length(way: Point) -> Exact:
    if not way.y:
        return way.x * sign(way.x)
    return way.y * sign(way.y) if not way.x else square_root(dot(way, way))


def measure_of(variant: Variant, seam: Fraction, *, is_laid: bool = True) -> Measure:
    """What to measure once it is sewn, unfinished; `is_laid` says that the words say how it lies."""
    outline = variant.outline
    if outline is None:
        return Measure((variant.extent[0] + 2 * seam, variant.extent[1] + 2 * seam))
    if is_rectangle(outline):
        width, height = finished_size(variant)
        return Measure((width + 2 * seam, height + 2 * seam), points=_points(variant))
    across = None if any(patch.curved for patch in variant.picture) else _across(outline)
    if across is None:
        return _edge(outline, seam, variant.picture, is_laid=is_laid)
    return Measure(None, length=across + 2 * seam, across=True)


def _across(outline: Polygon) -> Exact | None:
    """How far it is from the longest edge to one that lies the same way, across from it; None without such an edge."""
    ring = list(edges(outline))
    ways = [step(start, end) for start, end in ring]
    lengths = [dot(way, way) for way in ways]
    longest = max(range(len(ring)), key=lambda number: lengths[number])
    way = ways[longest]
    far = [
        cross(way, step(ring[longest][0], ring[number][0]))
        for number, other in enumerate(ways)
        if sign(dot(way, other)) < 0 and not sign(cross(way, other))
    ]
    # Across the whole of it: nothing of it lies beyond either edge.
    reach = [cross(way, step(ring[longest][0], corner)) for corner in outline]
    inside = [each for each in far if each == max(reach)] if min(reach) == 0 else []
    return inside[0] / _length(way) if inside else None


def _edge(outline: Polygon, seam: Fraction, picture: Sequence[Patch], *, is_laid: bool) -> Measure:
    """The length of an edge whose place has a name that no other edge has: upright and level ones first, then long.

    Beside a curved edge it goes on beyond its corner as far as the curve begins to lead away from it there.
    """
    leads = _curves_from(picture)
    count = len(outline)
    named: dict[str, list[int]] = {}
    ring = list(edges(outline))
    for number, (start, end) in enumerate(ring):
        named.setdefault(towards(outward(start, end)), []).append(number)
    lengths = [dot(way, way) for way in (step(start, end) for start, end in ring)]
    named["long"] = [number for number in range(count) if lengths[number] == max(lengths)]
    places: tuple[Literal["long"] | Position, ...] = ORDER if is_laid else ("long",)
    for place in places:
        if len(named.get(place, ())) == 1:
            number = named[place][0]
            start, end = ring[number]
            before, after = outline[number - 1], outline[(number + 2) % count]
            ends = beyond(end, start, leads.get(start, before)), beyond(start, end, leads.get(end, after))
            whole = _length(step(start, end))
            if min(ends) == max(ends) == 1 and not leads.keys() & {start, end}:
                return Measure(None, place, whole + 2 * seam)
            length = to_float(whole) + float(seam) * sum(ends)
            return Measure(None, place, Fraction(round(length * _FINE), _FINE), about=True)
    left, top, right, bottom = bounding_box(outline)
    return Measure((right - left + 2 * seam, bottom - top + 2 * seam))


def _curves_from(picture: Sequence[Patch]) -> dict[Point, Point]:
    """For each corner from which a curve leads a point that lies straight on from there, the way the curve begins."""
    found: dict[Point, Point] = {}
    for side in (side for patch in picture if patch.curved for side in patch.curved.sides()):
        if side.bend is None:
            continue
        for here, there in ((side.start, side.end), (side.end, side.start)):
            out = step(side.bend.centre, here)
            way = Point(-out.y, out.x)
            on = sign(dot(way, step(here, there)))
            found[here] = Point(here.x + on * way.x, here.y + on * way.y)
    return found


def _points(variant: Variant) -> int:
    """How many patches touch the outer edge with a corner alone."""
    outline = variant.outline
    if outline is None:
        return 0
    found: set[Point] = set()
    sides = [(start, step(start, end)) for start, end in edges(outline)]
    corners = set(outline)
    for patch in variant.picture:
        ring = patch.outline
        for number, corner in enumerate(ring):
            if corner in corners or corner in found:
                continue
            for start, way in sides:
                if _is_on(start, way, corner):
                    beside = (ring[number - 1], ring[(number + 1) % len(ring)])
                    if not any(_is_on(start, way, other) for other in beside):
                        found.add(corner)
    return len(found)


def _is_on(start: Point, way: Point, place: Point) -> bool:
    if not way.x:
        return place.x == start.x
    if not way.y:
        return place.y == start.y
    return not sign(cross(way, step(start, place)))
