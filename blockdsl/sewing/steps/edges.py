"""Which edge of a patch lies along a seam: the long edge of a triangle, the short edge of a trapezoid."""

from __future__ import annotations

from itertools import pairwise

from blockdsl.geometry import Point, Polygon, sign
from blockdsl.geometry.polygon import cross, dot, edges, step
from blockdsl.sewing.steps.action import Edge


def edge_kind(outline: Polygon | None, line: tuple[Point, ...]) -> Edge:
    """Which of its kinds of edges lies along a straight seam; empty where it has but one kind, or none with a name.

    Of a triangle `long`, `short` (or `longer`, `middle`, `shortest`), of a trapezoid `long` and `short` for the two
    edges that lie the same way.
    """
    if outline is None or len(line) != 2:
        return ""
    side = _side(outline, line)
    if side is None or is_rectangle(outline):
        return ""
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


def is_rectangle(outline: Polygon) -> bool:
    """Whether it has four square corners, however it lies."""
    if len(outline) != 4:
        return False
    ways = [step(start, end) for start, end in edges(outline)]
    return all(not sign(dot(way, ways[number - 1])) for number, way in enumerate(ways))


def _of_triangle(outline: Polygon, side: tuple[Point, Point]) -> Edge:
    lengths = [dot(step(*edge), step(*edge)) for edge in edges(outline)]
    own = dot(step(*side), step(*side))
    longer = sum(sign(length - own) > 0 for length in lengths)
    alike = sum(length == own for length in lengths)
    if alike == 3:
        return ""
    if not longer:
        return "long" if alike == 1 else "longer"
    if alike == 2:
        return "short"
    kinds: tuple[Edge, ...] = ("", "middle", "shortest")
    return kinds[longer]


def _of_trapezoid(outline: Polygon, side: tuple[Point, Point]) -> Edge:
    around = [step(start, end) for start, end in edges(outline)]
    own, opposite = next((one, around[place - 2]) for place, one in enumerate(around) if one == step(*side))
    parallel = [place for place in (0, 1) if not sign(cross(around[place], around[place + 2]))]
    if len(parallel) != 1 or sign(cross(own, opposite)):
        return ""
    return "long" if sign(dot(own, own) - dot(opposite, opposite)) > 0 else "short"


def is_askew(line: tuple[Point, ...]) -> bool:
    """Whether the seam is one line that is neither level nor upright nor at 45 degrees."""
    if len(line) != 2:
        return False
    across, down = line[1].x - line[0].x, line[1].y - line[0].y
    return bool(sign(across)) and bool(sign(down)) and across not in (down, -down)


def is_slanted(line: tuple[Point, ...]) -> bool:
    """Whether the seam leads aslant, so that points (dog ears) stand out at its ends."""
    return any(start.x != end.x and start.y != end.y for start, end in pairwise(line))
