"""Where a block lies on the page, and the middle of a patch: here the exact outline becomes floats, once."""

from __future__ import annotations

import heapq
import math
from collections.abc import Sequence
from functools import lru_cache
from typing import Final

from msgspec import Struct

from blockdsl.facts.blockfacts import Extent
from blockdsl.geometry import Exact, Point, Polygon, to_float
from blockdsl.geometry.arc import Bend, Curved
from blockdsl.marks.display_list import Contour
from blockdsl.marks.theme import Box
from blockdsl.pictures.arcs import arc_places, outline_places

_CLOSE_ENOUGH: Final = 0.04  # the middle is found to this share of its own distance from the sides
_FROM_EDGE_PT: Final = 4.0
_CENTROID_SHARE: Final = 0.9  # the centroid stands steadier on the page; it is taken when it is nearly as deep


class Placing(Struct, frozen=True):
    """Block measure to points: `scale` points for a unit of length, from the block's top left corner."""

    scale: float
    x_pt: float
    y_pt: float

    def ring(self, outline: Polygon | Curved) -> Contour:
        """The outline on the page, arcs as fine steps."""
        if isinstance(outline, Curved):
            places = outline_places(outline, self.scale)
            return tuple((self.x_pt + x * self.scale, self.y_pt + y * self.scale) for x, y in places)
        return tuple((self.x_pt + to_float(x) * self.scale, self.y_pt + to_float(y) * self.scale) for x, y in outline)

    def arc(self, start: Point, end: Point, bend: Bend | None) -> Contour:
        """A side on the page, from end to end."""
        places = arc_places(start, end, bend, self.scale)
        return tuple((self.x_pt + x * self.scale, self.y_pt + y * self.scale) for x, y in places)

    def x(self, length: Exact) -> float:
        """The x on the page of that distance from the block's left edge."""
        return self.x_pt + to_float(length) * self.scale

    def y(self, length: Exact) -> float:
        """The y on the page of that distance from the block's top edge."""
        return self.y_pt + to_float(length) * self.scale


def fit(extent: Extent, box: Box) -> tuple[Placing, Box]:
    """The largest placing of the extent in the box, at its top left, and the box that it fills."""
    width, height = (to_float(side) for side in extent)
    scale = min(box.width_pt / width, box.height_pt / height)
    placed = Box(box.x_pt, box.y_pt, width * scale, height * scale)
    return Placing(scale, box.x_pt, box.y_pt), placed


def toward_side(ring: Contour, place: tuple[float, float], side_x_pt: float) -> tuple[float, float]:
    """From a place inside the outline straight toward the upright line, as far as the outline reaches, not quite."""
    x, y = place
    crossings = []
    ax, ay = ring[-1]
    for bx, by in ring:
        if (ay > y) != (by > y):
            crossings.append((bx - ax) * (y - ay) / (by - ay) + ax)
        ax, ay = bx, by
    ahead = [crossing for crossing in crossings if (crossing - x) * (side_x_pt - x) > 0]
    if not ahead:
        return place
    edge = min(ahead, key=lambda crossing: abs(crossing - x))
    inset = min(abs(edge - x) / 2, _FROM_EDGE_PT)
    return (edge - inset if edge > x else edge + inset), y


def middle(ring: Contour) -> tuple[float, float, float]:
    """A point deep inside the outline and its distance from the nearest side: (x, y, radius).

    Source: the quadtree search known as "pole of inaccessibility": cells are halved while one could hold a point
            deeper than the best yet. Same shapes elsewhere on the page are looked up, not searched again.
    """
    x0, y0 = ring[0]
    shape = tuple((round(x - x0, 2), round(y - y0, 2)) for x, y in ring)
    x, y, radius = _middle_of_shape(shape)
    return x0 + x, y0 + y, radius


@lru_cache(maxsize=4096)
def _middle_of_shape(ring: Contour) -> tuple[float, float, float]:
    xs, ys = [x for x, _ in ring], [y for _, y in ring]
    side = min(max(xs) - min(xs), max(ys) - min(ys))
    if side <= 0:
        return xs[0], ys[0], 0.0
    centroid = _centroid(ring)
    steady = best = (*centroid, _depth(centroid, ring))
    queue: list[tuple[float, float, float, float]] = []
    half = side / 2
    for column in range(max(1, math.ceil((max(xs) - min(xs)) / side))):
        for row in range(max(1, math.ceil((max(ys) - min(ys)) / side))):
            _push(queue, (min(xs) + half + column * side, min(ys) + half + row * side), half, ring)
    while queue:
        reach, x, y, half = heapq.heappop(queue)
        depth = -reach - half * math.sqrt(2)
        best = max(best, (x, y, depth), key=lambda place: place[2])
        if -reach - best[2] <= _CLOSE_ENOUGH * max(best[2], side * _CLOSE_ENOUGH):
            break
        half /= 2
        for dx in (-half, half):
            for dy in (-half, half):
                _push(queue, (x + dx, y + dy), half, ring)
    return steady if steady[2] >= _CENTROID_SHARE * best[2] else best


def _push(
    queue: list[tuple[float, float, float, float]], place: tuple[float, float], half: float, ring: Contour
) -> None:
    """Queued by how deep a point of the square cell could lie at most, deepest first."""
    heapq.heappush(queue, (-(_depth(place, ring) + half * math.sqrt(2)), *place, half))


def _depth(place: tuple[float, float], ring: Contour) -> float:
    """Distance from the outline, negative outside."""
    x, y = place
    inside = False
    least = math.inf
    ax, ay = ring[-1]
    for bx, by in ring:
        if (ay > y) != (by > y) and x < (bx - ax) * (y - ay) / (by - ay) + ax:
            inside = not inside
        least = min(least, _squared_distance(x, y, (ax, ay), (bx, by)))
        ax, ay = bx, by
    return math.sqrt(least) if inside else -math.sqrt(least)


def _squared_distance(x: float, y: float, a: tuple[float, float], b: tuple[float, float]) -> float:
    dx, dy = b[0] - a[0], b[1] - a[1]
    length = dx * dx + dy * dy
    share = 0.0 if not length else max(0.0, min(1.0, ((x - a[0]) * dx + (y - a[1]) * dy) / length))
    return (a[0] + share * dx - x) ** 2 + (a[1] + share * dy - y) ** 2


def _centroid(ring: Sequence[tuple[float, float]]) -> tuple[float, float]:
    area = x = y = 0.0
    ax, ay = ring[-1]
    for bx, by in ring:
        cross = ax * by - bx * ay
        area += cross
        x += (ax + bx) * cross
        y += (ay + by) * cross
        ax, ay = bx, by
    return (x / (3 * area), y / (3 * area)) if area else ring[0]
