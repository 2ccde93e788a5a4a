"""Curved edges as the machine has them: steps of a quarter of a degree, at the same angles for cloth and seams.

So a chord of the cutting line lies an allowance outside the chord of the seam, but for a share of the allowance of
one in four hundred thousand, less than what the machine takes for nothing.
"""

from __future__ import annotations

from itertools import pairwise
from math import atan2, ceil, cos, degrees, floor, hypot, radians, sin
from typing import Any

from shapely.geometry import Polygon
from shapely.ops import unary_union

Spot = tuple[float, float]
STEP = 0.25
"""Degrees; ends of seams at multiples of fifteen degrees are steps."""
LEAST_TURN = 2.0
"""Degrees; where an outline turns by less it follows a curve."""
Bend = tuple[Spot, float]
"""Centre and radius."""


def arc(start: Spot, end: Spot, bend: Bend) -> list[Spot]:
    """From start to end along the shorter arc, without the end."""
    (x, y), radius = bend
    first = degrees(atan2(start[1] - y, start[0] - x))
    turn = (degrees(atan2(end[1] - y, end[0] - x)) - first + 180) % 360 - 180
    low, high = sorted((first, first + turn))
    angles = [step * STEP for step in range(floor(low / STEP), ceil(high / STEP) + 1)]
    inside = [angle for angle in angles if low + STEP / 100 < angle < high - STEP / 100]
    if turn < 0:
        inside.reverse()
    return [start, *((x + radius * cos(radians(angle)), y + radius * sin(radians(angle))) for angle in inside)]


def shape(corners: list[Spot], bends: list[Bend | None]) -> Any:
    """An outline with its arcs."""
    ends = [*corners[1:], corners[0]]
    places = []
    for start, end, bend in zip(corners, ends, bends, strict=True):
        places += [start] if bend is None else arc(start, end, bend)
    return Polygon(places)


def straight_edges(outline: Any) -> list[tuple[Spot, Spot]]:
    """The edges of a shape, the same way round for all shapes, without the steps of its curves."""
    corners = list(outline.exterior.coords)
    if not outline.exterior.is_ccw:
        corners.reverse()
    edges = list(pairwise(corners))
    ways = [degrees(atan2(y - b, x - a)) for (a, b), (x, y) in edges]
    turns = [abs((ways[place] - ways[place - 1] + 180) % 360 - 180) for place in range(len(edges))]
    kept = [edge for place, edge in enumerate(edges) if min(turns[place], turns[(place + 1) % len(edges)]) > LEAST_TURN]
    return kept or edges


def band(line: tuple[Spot, ...], normals: list[Spot], deep: float) -> Any:
    """All that lies within a depth of a curved line on the side of its normals (those of its steps)."""
    pairs = list(zip([normals[0], *normals], [*normals, normals[-1]], strict=True))
    far = []
    for (x, y), ((a, b), (c, d)) in zip(line, pairs, strict=True):
        length = hypot(a + c, b + d)
        far.append((x + deep * (a + c) / length, y + deep * (b + d) / length))
    return Polygon([*line, *reversed(far)])


def has_curves(outline: Any) -> bool:
    return len(straight_edges(outline)) < len(outline.exterior.coords) - 1


def inset(outline: Any, by: float) -> Any:
    """What is left when a strip along every edge is cut off: the library's own way leaves steps of curves out."""
    corners = list(outline.exterior.coords)
    if not outline.exterior.is_ccw:
        corners.reverse()
    strips = []
    before = _inward(corners[-2], corners[-1])
    for (a, b), (c, d) in pairwise(corners):
        x, y = normal = _inward((a, b), (c, d))
        strips.append(Polygon([(a, b), (c, d), (c + by * x, d + by * y), (a + by * x, b + by * y)]))
        if before[0] * y - before[1] * x < 0:  # two strips along a hollow edge stand apart at their inner ends
            (p, q), (u, v) = before, normal
            reach = by / (1 + p * u + q * v)
            tip = (a + reach * (p + u), b + reach * (q + v))
            strips.append(Polygon([(a, b), (a + by * p, b + by * q), tip, (a + by * x, b + by * y)]))
        before = normal
    rest = outline.difference(unary_union(strips))
    return max(getattr(rest, "geoms", [rest]), key=lambda part: float(part.area))


def _inward(start: Spot, end: Spot) -> Spot:
    length = hypot(end[0] - start[0], end[1] - start[1])
    return -(end[1] - start[1]) / length, (end[0] - start[0]) / length
