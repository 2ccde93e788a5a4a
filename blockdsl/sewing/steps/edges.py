"""Which edges are sewn together, in words: `the 3 1/2 in edges`, `the long edge of A`."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

from blockdsl.geometry import Exact, Point, Polygon, sign
from blockdsl.geometry.polygon import cross, dot, edges, step
from blockdsl.model.fabric import RulerUnit
from blockdsl.model.lengths import write_length


def edge_of(outline: Polygon | None, line: tuple[Point, ...], seam: Fraction, unit: RulerUnit) -> str:
    """The edge of a part that a straight seam lies on, as a maker calls it; empty when it has no plain name.

    Of a rectangle its length with the allowances, `3 1/2 in edge`; of a triangle `long edge`, `short edge`; of a
    trapezoid the same for the two edges that lie the same way.
    """
    if outline is None or len(line) != 2:
        return ""
    side = _side(outline, line)
    if side is None:
        return ""
    if _is_rectangle(outline):
        whole = _straight_length(*side)
        return "" if whole is None else f"{write_length(whole + 2 * seam, unit)} {unit} edge"
    if len(outline) == 3:
        return _of_triangle(outline, side)
    return _of_trapezoid(outline, side) if len(outline) == 4 else ""


def _side(outline: Polygon, line: tuple[Point, ...]) -> tuple[Point, Point] | None:
    way = step(*line)
    for start, end in edges(outline):
        edge = step(start, end)
        if not sign(cross(way, edge)) and not sign(cross(way, step(line[0], start))):
            shares = sorted((dot(way, step(line[0], start)), dot(way, step(line[0], end))))
            if sign(shares[1]) > 0 and sign(shares[0] - dot(way, way)) < 0:
                return start, end
    return None


def _is_rectangle(outline: Polygon) -> bool:
    return len(outline) == 4 and all(start.x == end.x or start.y == end.y for start, end in edges(outline))


def _straight_length(start: Point, end: Point) -> Exact | None:
    if start.x == end.x:
        return max(start.y, end.y) - min(start.y, end.y)
    return max(start.x, end.x) - min(start.x, end.x) if start.y == end.y else None


def _of_triangle(outline: Polygon, side: tuple[Point, Point]) -> str:
    lengths = [dot(step(*edge), step(*edge)) for edge in edges(outline)]
    own = dot(step(*side), step(*side))
    longer = sum(sign(length - own) > 0 for length in lengths)
    alike = sum(length == own for length in lengths)
    if alike == 3:
        return "edge"
    if not longer:
        return "long edge" if alike == 1 else "longer edge"
    if alike == 2:
        return "short edge"
    return ("", "middle edge", "shortest edge")[longer]


def _of_trapezoid(outline: Polygon, side: tuple[Point, Point]) -> str:
    around = [step(start, end) for start, end in edges(outline)]
    own, opposite = next((one, around[place - 2]) for place, one in enumerate(around) if one == step(*side))
    parallel = [place for place in (0, 1) if not sign(cross(around[place], around[place + 2]))]
    if len(parallel) != 1 or sign(cross(own, opposite)):
        return ""
    return "long edge" if sign(dot(own, own) - dot(opposite, opposite)) > 0 else "short edge"


def is_slanted(line: tuple[Point, ...]) -> bool:
    """Whether the seam leads aslant, so that points (dog ears) stand out at its ends."""
    return any(start.x != end.x and start.y != end.y for start, end in pairwise(line))
