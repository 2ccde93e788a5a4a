"""Pieces that are cut from a strip across the fabric: the strip's width, the angle of the cuts, how far apart they lie.

Two edges of the piece, or one edge and the corner across from it, lie along the edges of the strip; all else is cut
with the ruler laid at 45° or 60° to the strip. Everything is measured on the patch with its allowance, so no constant
of cutting is known here: "height + 3 seams" for a triangle of 60° and "height + 2 seams" for a diamond come out.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final, Literal

from msgspec import Struct

from blockdsl.cutting.sizes import with_allowance
from blockdsl.geometry import Exact, Polygon, square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.number import floor_to, sign
from blockdsl.geometry.polygon import Point, cross, dot, edges, is_convex, step

Form = Literal["side by side", "turned", "points off", "template"]
Slant = Literal["rising", "falling"]
BY_RULER: Final[tuple[Form, ...]] = ("turned", "side by side", "points off")

_SIN: Final[dict[int, Exact]] = {45: square_root(Fraction(1, 2)), 60: square_root(Fraction(3, 4)), 90: Fraction(1)}
_COT: Final[dict[int, Exact]] = {45: Fraction(1), 60: square_root(Fraction(1, 3)), 90: Fraction(0)}


class StripWay(Struct, frozen=True):
    """How the piece of one patch comes out of a strip. All sizes are exact, with the allowance.

    `form`: `side by side` (all cuts at one angle), `turned` (each piece lies the other way round from the one before),
    `points off` (a diamond whose two sharp points are cut off then) or `template` (round a template, in the strip).
    `width` is that of the strip. `every` is how far apart the cuts are: square to the cut side by side, along the
    longer edge turned, None where each cut begins at the end of the last. `across` is what is left between the points.
    `angles` are those of the two cuts to the strip, the flatter first. `slant` is that of the cut at the flatter angle
    as the strip lies across, the right side up; None where cuts of both slants take turns.
    `run` is the length of strip that one piece takes alone, `pitch` what each further one adds.
    `grain` is a step along the strip, in the patch as it lies.
    """

    form: Form
    width: Exact
    every: Exact | None
    across: Exact | None
    angles: tuple[int, ...]
    slant: Slant | None
    run: Exact
    pitch: Exact
    grain: Point


def strip_ways(patch: Polygon, allowance: Fraction) -> Iterator[StripWay]:
    """Every way to cut a patch from a strip, by the edges that lie along it; none for patches with an inward corner.

    Takes:  a clockwise outline without straight corners.
    """
    if not is_convex(patch):
        return
    piece = with_allowance(patch, allowance)
    sides = [step(a, b) for a, b in edges(patch)]
    if len(piece) != len(sides):
        return
    for place in range(len(sides)):
        way = _way(sides, piece, place)
        if way is not None:
            yield way


def _way(sides: list[Point], piece: Polygon, place: int) -> StripWay | None:
    """The way with this edge along the strip."""
    if len(sides) == 3:
        return _turned(sides, piece, place) or _triangle_by_template(sides, piece, place)
    facing = next((other for other in range(place + 1, len(sides)) if _parallel(sides[place], sides[other])), None)
    if facing is None:
        return None
    if len(sides) == 4:
        if facing != place + 2:
            return None
        first, second = sides[(place + 1) % 4], sides[(place + 3) % 4]
        found = _side_by_side(sides, piece, place) if _parallel(first, second) else _trapezoid(sides, piece, place)
        if found is not None:
            return found
    if len(sides) == 6 and facing == place + 3:
        found = _hexagon(sides, piece, place)
        if found is not None:
            return found
    return _by_template(sides, piece, place, facing)


# --- the forms -----------------------------------------------------------------------------------


def _side_by_side(sides: list[Point], piece: Polygon, place: int) -> StripWay | None:
    along, cut = sides[place], sides[place + 1]
    angle = _angle(along, cut)
    if angle in (None, 90):
        return None
    width, every = _apart(piece, place, along), _apart(piece, place + 1, cut)
    return slanted(width, every, angle or 0, _slant(along, cut), along)


def slanted(width: Exact, every: Exact, angle: int, slant: Slant | None, grain: Point) -> StripWay:
    """Cuts at one angle. Along the strip's edge they are every / sin apart, and the slanted end takes width × cot."""
    pitch = every / _SIN[angle]
    return StripWay(
        "side by side", width, every, None, (angle, angle), slant, pitch + width * _COT[angle], pitch, grain
    )


def _trapezoid(sides: list[Point], piece: Polygon, place: int) -> StripWay | None:
    """The longer of the two parallel edges is the one that is measured."""
    facing = (place + 2) % 4
    return _turned(sides, piece, max((place, facing), key=lambda edge: _squared(piece, edge)))


def _turned(sides: list[Point], piece: Polygon, base: int) -> StripWay | None:
    """Trapezoids and triangles, each turned half round from the one before, so that they share their slanted cuts."""
    count = len(sides)
    along, after, before = sides[base], sides[(base + 1) % count], sides[base - 1]
    if sign(dot(along, after)) > 0 or sign(dot(along, before)) > 0:
        return None
    first, second = _angle(along, after), _angle(along, before)
    if first is None or second is None or first == second == 90:
        return None
    flat, steep = min(first, second), max(first, second)
    slant = None if first == second else _slant(along, after if first == flat else before)
    width, long_edge = _apart(piece, base, along), square_root(_squared(piece, base))
    every = None if count == 3 else long_edge
    return turned(width, every, (flat, steep), slant, along)


def turned(width: Exact, every: Exact | None, angles: tuple[int, int], slant: Slant | None, grain: Point) -> StripWay:
    """Cuts that take turns. Two pieces take their longer and shorter edge; a triangle has no shorter one."""
    lost = width * (_COT[angles[0]] + _COT[angles[1]])
    longer = lost if every is None else every
    return StripWay("turned", width, every, None, angles, slant, longer, longer - lost / 2, grain)


def _hexagon(sides: list[Point], piece: Polygon, place: int) -> StripWay | None:
    """Opposite edges alike and all corners of 120°: a diamond of 60° that loses its two sharp points."""
    alike = all(sides[i] == Point(-sides[i + 3].x, -sides[i + 3].y) for i in range(3))
    if not alike or any(_angle(sides[i - 1], sides[i]) != 60 or dot(sides[i - 1], sides[i]) < 0 for i in range(6)):
        return None
    along, cut, point = (sides[(place + i) % 6] for i in range(3))
    width, every = _apart(piece, place, along), _apart(piece, (place + 1) % 6, cut)
    across = _apart(piece, (place + 2) % 6, point)
    plain = slanted(width, every, 60, _slant(along, cut), along)
    return StripWay("points off", width, every, across, plain.angles, plain.slant, plain.run, plain.pitch, along)


def _by_template(sides: list[Point], piece: Polygon, place: int, facing: int) -> StripWay:
    """Round a template in a strip just wide enough; four-sided templates are laid close, others box by box."""
    along = sides[place]
    length = square_root(dot(along, along))
    places = [dot(along, corner) / length for corner in piece]
    run = max(places) - min(places)
    pitch = run
    if len(sides) == 4:
        pitch = (square_root(_squared(piece, place)) + square_root(_squared(piece, facing))) / 2
    return StripWay("template", _apart(piece, place, along), None, None, (), None, run, pitch, along)


def _triangle_by_template(sides: list[Point], piece: Polygon, place: int) -> StripWay | None:
    """Round a template, each turned half round from the one before; not along an edge that has a blunt corner."""
    along, after, before = sides[place], sides[(place + 1) % 3], sides[place - 1]
    if sign(dot(along, after)) > 0 or sign(dot(along, before)) > 0:
        return None
    base = square_root(_squared(piece, place))
    return StripWay("template", _apart(piece, place, along), None, None, (), None, base, base / 2, along)


# --- measures ------------------------------------------------------------------------------------


def _parallel(one: Point, other: Point) -> bool:
    return cross(one, other) == 0


def _angle(one: Point, other: Point) -> int | None:
    """Between two lines, where it is one that rulers are marked with (45° and 60°) or a right angle."""
    along, over = dot(one, other), cross(one, other)
    if along == 0:
        return 90
    if along * along == over * over:
        return 45
    return 60 if over * over == 3 * along * along else None


def _slant(along: Point, cut: Point) -> Slant:
    """With `along` lying across the page, whether the cut goes up or down to the right; y is downward."""
    return "rising" if sign(dot(cut, along)) * sign(cross(along, cut)) < 0 else "falling"


def _squared(piece: Polygon, edge: int) -> Exact:
    side = step(piece[edge], piece[(edge + 1) % len(piece)])
    return dot(side, side)


def _apart(piece: Polygon, edge: int, along: Point) -> Exact:
    """From an edge of the piece square to it as far as the piece reaches."""
    start = piece[edge % len(piece)]
    return max(cross(along, step(start, corner)) for corner in piece) / square_root(dot(along, along))


# --- from one strip ------------------------------------------------------------------------------


def length_of(way: StripWay, count: int) -> Exact:
    """How much of a strip so many pieces take, from its square end: what the slanted ends lose is in it."""
    if way.form != "turned":
        return way.run + (count - 1) * way.pitch
    # Begun with the steeper cut. Each pair takes a longer and a shorter edge; the last of an odd number its longer one,
    # the last of an even number reaches as far as its slanted end.
    pairs, odd = divmod(count, 2)
    return pairs * 2 * way.pitch + (way.run if odd else way.width * _COT[way.angles[1]])


def along_the_strip(square: Exact, angle: int) -> Exact:
    """How much of a strip's length a band takes that is cut off at an angle, from its width square to the cut."""
    return square / _SIN[angle]


def most_in(way: StripWay, length: Fraction) -> int:
    """The most pieces that come out of a strip of this length."""
    about = int(floor_to((length - way.run) / way.pitch, Fraction(1))) + 1 if length >= way.run else 0
    return next(count for count in range(about + 2, -1, -1) if not count or length_of(way, count) <= length)
