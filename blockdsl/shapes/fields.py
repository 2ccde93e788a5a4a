"""Fields of 60° patches in a box: what reaches over the edge is cut off straight.

Equilateral triangles and regular hexagons have √3 in their proportions, a box has not: a field that comes out even one
way cannot do so the other way. There it is set in the middle of the box, in the one of two ways that leaves the larger
pieces at the edges, and trimmed.
"""

from __future__ import annotations

from math import ceil

from blockdsl.geometry import Exact, Polygon, square_root, to_float
from blockdsl.geometry.polygon import bounding_box, drop_straight_corners
from blockdsl.shapes.outlines import outline

MOST_PATCHES = 20_000
ROOT_THREE = square_root(3)


def trimmed(polygon: Polygon, width: Exact, height: Exact) -> Polygon:
    """What lies within the box from (0, 0) to (width, height) of a convex polygon; empty when nothing does."""
    zero = 0 * width
    left, top, right, bottom = bounding_box(polygon)
    if left >= zero and top >= zero and right <= width and bottom <= height:
        return polygon
    for axis, limit, way in ((0, zero, 1), (1, zero, 1), (0, width, -1), (1, height, -1)):
        polygon = _cut_off(polygon, axis, limit, way)
    return drop_straight_corners(polygon)


def _cut_off(polygon: Polygon, axis: int, limit: Exact, way: int) -> Polygon:
    """The part of a convex polygon where the coordinate is at least (way 1) or at most (way -1) the limit."""
    kept: list[tuple[Exact, Exact]] = []
    for here, there in zip(polygon, (*polygon[1:], *polygon[:1]), strict=True):
        from_here, from_there = way * (here[axis] - limit), way * (there[axis] - limit)
        if from_here >= 0:
            kept.append((here.x, here.y))
        if (from_here > 0 and from_there < 0) or (from_here < 0 and from_there > 0):
            part = from_here / (from_here - from_there)
            across, down = here.x + part * (there.x - here.x), here.y + part * (there.y - here.y)
            kept.append((limit, down) if axis == 0 else (across, limit))
    return outline(*kept)


def reach(half: Exact, pitch: Exact) -> int:
    """How many steps of `pitch` it takes from the middle to get at least as far as `half`."""
    return max(0, ceil(to_float(half / pitch) + 1e-9))
