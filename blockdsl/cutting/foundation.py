"""The pieces for patches that are sewn to papers: cut larger than needed, for they are trimmed after sewing.

A piece is laid with one edge along the seam that sews it, an allowance beyond the line, and folded open over its area.
So it is measured along that seam, however the area lies in the unit. The first piece of a section is laid over its area
as it is, and measured whichever way takes the least fabric.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from functools import lru_cache
from typing import Literal, TypeVar

from msgspec import Struct

from blockdsl.cutting.sizes import Extent, round_up
from blockdsl.geometry import Exact, Point, Polygon, ceil_to, sign, square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.offset import offset_outward
from blockdsl.geometry.polygon import clockwise, cross, dot, drop_straight_corners, edges, step
from blockdsl.model import BlockDesign

ROOM: dict[str, Fraction] = {"in": Fraction(1, 4), "cm": Fraction(3, 4)}
"""What a piece for a paper has beyond the seam allowance on each side (common practice, no source)."""

STEP: dict[str, Fraction] = {"in": Fraction(1, 2), "cm": Fraction(1)}
"""Pieces that are trimmed later are cut to the next half inch or whole centimetre (common practice, no source)."""

Seam = tuple[Point, Point]
Edge = Literal["long", "short", "any"]
RoomySubcut = Literal["none", "once"]

_Length = TypeVar("_Length", Fraction, Exact)
_ACROSS = Point(Fraction(1), Fraction(0))
_WORTH_TURNING = Fraction(9, 10)
"""A first piece lies along the unit's sides unless it takes less than so much of that fabric when it is turned."""
_MEASURED_UP_TO = Fraction(1, 2)
"""Half of one, the square of the cosine of 45°."""


class RoomyPiece(Struct, frozen=True):
    """What is cut for one area: `cut` (shorter, longer) on the ruler, `exact` before rounding up.

    `subcut`: a square cut corner to corner gives two such pieces. `edge` is the one that is laid along the line: the
    long one (of half a square the cut one), the short one, or any of a square; None for the first piece of a section.
    """

    cut: tuple[Fraction, Fraction]
    exact: Extent
    subcut: RoomySubcut
    edge: Edge | None


def roomy_piece(patch: Polygon, seam: Seam | None, fabric: str, design: BlockDesign) -> RoomyPiece:
    """What to cut for an area of a paper, sewn by a seam (two points of the unit); None for the first of a section.

    Shape:  a rectangle with an edge along the seam; for a right triangle with equal legs that is sewn by its long edge,
            or is the first and has its legs along the unit's sides, half of a square. The first piece of any other
            shape lies along the unit's sides or along one edge of its area where that takes clearly less fabric; a
            print with an up and a down lies upright.
    Exact:  see `_sides`; rounded up to the next half inch or centimetre that the ruler has.
    """
    upright = any(each.directional for each in design.fabrics if each.name == fabric)
    outline = clockwise(drop_straight_corners(patch))
    measure = ceil_to(STEP[design.unit], design.measure)
    return _piece(outline, seam, upright, design.seam, ROOM[design.unit], measure)


@lru_cache(maxsize=4096)
def _piece(
    outline: Polygon, seam: Seam | None, upright: bool, allowance: Fraction, room: Fraction, measure: Fraction
) -> RoomyPiece:
    corner = None if upright else _square_corner(outline)
    if corner is not None and (_is_level(outline, corner) if seam is None else _is_opposite(outline, corner, seam)):
        return _half_square(outline, corner, seam, allowance, room, measure)
    if seam is not None:
        along, deep = _sides(outline, step(*seam), allowance, room)
        across, down = round_up((along, deep), measure)
        edge: Edge = "any" if across == down else "long" if across > down else "short"
        return RoomyPiece(_sorted((across, down)), _sorted((along, deep)), "none", edge)
    ways = [_ACROSS] if upright else [_ACROSS, *(step(*edge) for edge in edges(outline))]
    exact = [_sides(outline, way, allowance, room) for way in ways]
    level, best = exact[0], min(exact, key=lambda sides: _fabric(round_up(sides, measure)))
    if _fabric(round_up(best, measure)) > _WORTH_TURNING * _fabric(round_up(level, measure)):
        best = level
    return RoomyPiece(_sorted(round_up(best, measure)), _sorted(best), "none", None)


def _fabric(cut: tuple[Fraction, Fraction]) -> Fraction:
    return cut[0] * cut[1]


def _sorted(sides: tuple[_Length, _Length]) -> tuple[_Length, _Length]:
    return sides if sides[0] <= sides[1] else (sides[1], sides[0])


def _sides(outline: Polygon, way: Point, allowance: Fraction, room: Fraction) -> Extent:
    """The sides of the rectangle for an area, the first along `way`.

    Exact:  the area's extent + 2 × (allowance + room), so that all that is no further from the area than the allowance
            is covered with `room` to spare; and no less than what holds the corners of the area with its allowance
            and half that room.
    """
    along = _unit(way)
    deep = Point(-along.y, along.x)
    beyond = list(_corners(outline, allowance))
    return tuple(  # type: ignore[return-value]  # two directions, two sides
        max(_extent(outline, each) + 2 * (allowance + room), _extent(beyond, each) + room) for each in (along, deep)
    )


def _extent(corners: Iterable[Point], along: Point) -> Exact:
    places = [dot(corner, along) for corner in corners]
    return max(places) - min(places)


def _corners(outline: Polygon, allowance: Fraction) -> Iterator[Point]:
    """The corners of an area with its allowance; those sharper than 45° are trimmed.

    At such a point a seam runs on along either side until it meets the edge of the paper, an allowance outside the
    other side: the piece reaches as far, allowance / sin(angle).
    """
    moved = offset_outward(outline, allowance)
    for i, corner in enumerate(outline):
        into, out = step(outline[i - 1], corner), step(corner, outline[(i + 1) % len(outline)])
        bend, squares = dot(into, out), dot(into, into) * dot(out, out)
        if sign(bend) >= 0 or sign(bend * bend - squares * _MEASURED_UP_TO) <= 0:
            yield moved[i]
            continue
        turn = cross(into, out)  # positive: the outline runs clockwise, and an area has no corner inward
        on, back = (allowance * square_root(dot(other, other)) / turn for other in (out, into))
        yield Point(corner.x + on * into.x, corner.y + on * into.y)
        yield Point(corner.x - back * out.x, corner.y - back * out.y)


# --- half of a square ------------------------------------------------------------------------------


def _square_corner(outline: Polygon) -> int | None:
    """The place of the square corner of a right triangle with equal legs; None for all else."""
    if len(outline) != 3:
        return None
    for i in range(3):
        into, out = step(outline[i - 1], outline[i]), step(outline[i], outline[(i + 1) % 3])
        if dot(into, out) == 0 and dot(into, into) == dot(out, out):
            return i
    return None


def _is_level(outline: Polygon, corner: int) -> bool:
    leg = step(outline[corner], outline[corner - 1])
    return not (leg.x and leg.y)


def _is_opposite(outline: Polygon, corner: int, seam: Seam) -> bool:
    """Whether the triangle is sewn by its long edge."""
    return cross(step(outline[corner - 1], outline[corner - 2]), step(*seam)) == 0


def _half_square(
    outline: Polygon, corner: int, seam: Seam | None, allowance: Fraction, room: Fraction, measure: Fraction
) -> RoomyPiece:
    """Half of a square cut corner to corner.

    Exact:  finished leg + allowance × √2, for the long edge lies an allowance beyond its line, + 2 × (allowance +
            room), for each leg lies so far outside; nowhere less than half the room where the piece lies in the middle.
    """
    leg = step(outline[corner], outline[corner - 1])
    finished, root = square_root(dot(leg, leg)), square_root(2)
    along_line = finished + allowance * root + 2 * (allowance + room)
    side = max(along_line, finished + (allowance + room / 2) * (2 + root))
    exact = (side, side)
    return RoomyPiece(round_up(exact, measure), exact, "once", None if seam is None else "long")


# --- how a piece lies ------------------------------------------------------------------------------


def laid_outline(outline: Polygon, seam: Seam | None, piece: RoomyPiece, allowance: Fraction) -> Polygon:
    """The piece as it lies over its area, folded open along its seam; its seam allowance lies beyond the line.

    Shape:  clockwise; in the middle of what it covers.
    """
    outline = clockwise(drop_straight_corners(outline))
    corner = _square_corner(outline) if piece.subcut == "once" else None
    if corner is not None and seam is None:
        return _half_square_over(outline, corner, piece.cut[0])
    if seam is None:
        return _over(outline, piece.cut, allowance)
    start, end = seam
    if any(sign(cross(step(start, end), step(start, each))) < 0 for each in outline):
        start, end = end, start
    along = _unit(step(start, end))
    deep = Point(-along.y, along.x)
    middle = _middle([*outline, *_corners(outline, allowance)], along)
    if corner is not None:
        half = piece.cut[0] * square_root(2) / 2
        middle = _middle(seam, along)
        ends: tuple[tuple[Exact, Exact], ...] = (
            (middle - half, -allowance),
            (middle + half, -allowance),
            (middle, half - allowance),
        )
    else:
        wide, high = piece.cut if piece.edge == "short" else piece.cut[::-1]
        left, right, far = middle - wide / 2, middle + wide / 2, high - allowance
        ends = ((left, -allowance), (right, -allowance), (right, far), (left, far))
    line = dot(start, deep)
    return tuple(_at(along, deep, place, line + depth) for place, depth in ends)


def _over(outline: Polygon, cut: tuple[Fraction, Fraction], allowance: Fraction) -> Polygon:
    """A first piece, turned to the first way in which it covers its area."""
    ways = [_ACROSS, *(step(*edge) for edge in edges(outline))]
    for along in map(_unit, ways):
        deep = Point(-along.y, along.x)
        wide, high = (_extent(outline, each) + 2 * allowance for each in (along, deep))
        sides = next(((a, b) for a, b in (cut, cut[::-1]) if a >= wide and b >= high), None)
        if sides is not None:
            break
    else:
        raise ValueError("the piece is smaller than its area")
    x, y = _middle(outline, along), _middle(outline, deep)
    half, tall = sides[0] / 2, sides[1] / 2
    corners = ((x - half, y - tall), (x + half, y - tall), (x + half, y + tall), (x - half, y + tall))
    return tuple(_at(along, deep, *each) for each in corners)


def _half_square_over(outline: Polygon, corner: int, side: Fraction) -> Polygon:
    """Half of a square over a like triangle, equally far beyond each of its edges."""
    ends = [outline[corner - 2], outline[corner - 1]]
    apex = outline[corner]
    one, other = (_unit(step(apex, end)) for end in ends)
    finished = dot(step(apex, ends[0]), one)
    beyond = (side - finished) / (2 + square_root(2))
    start = Point(apex.x - beyond * (one.x + other.x), apex.y - beyond * (one.y + other.y))
    return clockwise((start, *(Point(start.x + side * leg.x, start.y + side * leg.y) for leg in (one, other))))


def _unit(way: Point) -> Point:
    length = square_root(dot(way, way))
    return Point(way.x / length, way.y / length)


def _middle(corners: Iterable[Point], along: Point) -> Exact:
    places = [dot(corner, along) for corner in corners]
    return (min(places) + max(places)) / 2


def _at(along: Point, deep: Point, place: Exact, depth: Exact) -> Point:
    return Point(place * along.x + depth * deep.x, place * along.y + depth * deep.y)
