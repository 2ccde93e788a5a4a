"""Stars of many small diamonds from strip sets: sets cut at 45°, segments joined to points, points to a star."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable
from itertools import pairwise
from math import cos, hypot, radians, sin
from typing import Any

from shapely.geometry import Polygon
from shapely.ops import linemerge

from tests.outside.virtual.cloth import Fault, Work, fitted, joined, settled, sewn
from tests.outside.virtual.plan import Line, Patch
from tests.outside.virtual.stripsets import fill, segments_from

ROOT_HALF = 0.5**0.5
POINTS = 8
Laid = tuple[Work, Any]
"""What is sewn, and its finished shape."""


def rows_of_points(picture: tuple[Patch, ...]) -> list[list[list[Patch]]]:
    """For each point, clockwise from straight up, its rows of diamonds, both counted from the middle."""
    whole = joined(patch.shape for patch in picture)
    middle = whole.centroid
    diamonds = [patch for patch in picture if _is_diamond(patch)]
    size = round((len(diamonds) / POINTS) ** 0.5)
    side = _edges(diamonds[0].shape)[0]
    points: list[list[list[Patch]]] = []
    for number in range(POINTS):
        one, other = _way(number), _way(number + 1)
        rows: list[list[Patch | None]] = [[None] * size for _ in range(size)]
        for patch in diamonds:
            x, y = (patch.shape.centroid.x - middle.x) / side, (patch.shape.centroid.y - middle.y) / side
            turn = one[0] * other[1] - one[1] * other[0]
            i, j = (x * other[1] - y * other[0]) / turn - 0.5, (one[0] * y - one[1] * x) / turn - 0.5
            if min(i, j) > -0.25 and max(i, j) < size - 0.75:
                rows[round(i)][round(j)] = patch
        found = [[patch for patch in row if patch is not None] for row in rows]
        if any(len(row) != size for row in found):
            raise Fault("a point of the star is not all diamonds")
        points.append(found)
    return points


def _is_diamond(patch: Patch) -> bool:
    corners = list(patch.shape.exterior.coords)[:-1]
    edges = _edges(patch.shape)
    box = patch.shape.minimum_rotated_rectangle
    return len(corners) == 4 and max(edges) - min(edges) < 1e-6 and patch.shape.area < 0.9 * box.area


def _edges(shape: Any) -> list[float]:
    return [hypot(x - a, y - b) for (a, b), (x, y) in pairwise(shape.exterior.coords)]


def _way(number: int) -> tuple[float, float]:
    angle = radians(45 * number - 90)
    return cos(angle), sin(angle)


# --- cloth -----------------------------------------------------------------------------------------


def take_strips(
    points: list[list[list[Patch]]], units: int, lines: dict[Line, int], squared: tuple[float, float]
) -> dict[Line, tuple[int, int]]:
    """Strips sewn to sets and cut until there are all rows of all points: (strips, segments) of each line."""
    used: dict[Line, tuple[int, int]] = {}
    wanted: dict[tuple[tuple[str, str], ...], int] = {}
    for point in points:
        for row in point:
            cloths = tuple((patch.fabric, patch.label) for patch in row)
            wanted[cloths] = wanted.get(cloths, 0) + units
    width = max(line.cut[0] for line in lines)
    for cloths, segments in wanted.items():
        fill(Counter(cloths), segments, in_strip(width, squared), lines, used)
    return used


def in_strip(width: float, squared: tuple[float, float]) -> Callable[[float], int]:
    """How many segments as wide as the strip come out of a length of it: the slanted end takes the width once.

    Everything is measured along the strip, where it is √2 times as long as square to the cuts.
    """
    along = width / ROOT_HALF
    return lambda length: segments_from(length - width, along, (squared[0] / ROOT_HALF, squared[1] / ROOT_HALF))


def rhombus(width: float) -> Polygon:
    """What a strip becomes when its set is cut at 45°, as wide as the strip."""
    along = width / ROOT_HALF
    return Polygon([(0, 0), (along, 0), (along + width, width), (width, width)])


# --- sewing ----------------------------------------------------------------------------------------


def star(
    points: list[list[list[Patch]]], ground: list[Laid], width_of: Callable[[Patch], float], seam: float, measure: float
) -> Work:
    """Rows, points, halves, the whole; then the ground set in, triangles first."""
    made = []
    for point in points:
        rows = [_all([_piece(patch, width_of(patch), seam, measure) for patch in row], seam) for row in point]
        made.append(_all(rows, seam))
    whole = _joined(_all(made[:4], seam), _all(made[4:], seam), seam)
    for patch in sorted(ground, key=lambda laid: len(laid[1].exterior.coords)):
        whole = _joined(whole, patch, seam)
    return settled(*whole, seam)


def _piece(patch: Patch, width: float, seam: float, measure: float) -> Laid:
    if fitted(rhombus(width - measure), patch.shape, seam) is not None:
        raise Fault(f"the strips of {patch.label} ({patch.fabric}) are wider than need be: {width}")
    laid = fitted(rhombus(width), patch.shape, seam)
    if laid is None:
        raise Fault(f"the strips of {patch.label} ({patch.fabric}) are too narrow: {width}")
    return Work((Patch(patch.label, patch.fabric, laid),)), patch.shape


def _all(works: list[Laid], seam: float) -> Laid:
    whole = works[0]
    for other in works[1:]:
        whole = _joined(whole, other, seam)
    return whole


def _joined(one: Laid, other: Laid, seam: float) -> Laid:
    line = _shared(one[1], other[1])
    return sewn(one[0], other[0], line, seam, (one[1], other[1])), joined([one[1], other[1]])


def _shared(one: Any, other: Any) -> tuple[tuple[float, float], ...]:
    """The line between two shapes, its corners without those that lie straight on it."""
    met = one.buffer(1e-7).intersection(other.exterior)
    merged = linemerge(met) if met.geom_type == "MultiLineString" else met
    if merged.geom_type != "LineString":
        raise Fault("two parts of a star do not lie along one line")
    corners = list(merged.simplify(1e-5).coords)
    return tuple((float(x), float(y)) for x, y in corners)
