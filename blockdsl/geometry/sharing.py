"""Which patches lie under a region: those that share area with it, not only a side or a corner."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import chain

from blockdsl.geometry.number import sign
from blockdsl.geometry.polygon import Bounds, Point, Polygon, bounding_box, cross, edges, signed_area, step

_MOST_PATCHES = 12


def patches_under(regions: list[tuple[Polygon, ...]], polygons: Sequence[Polygon]) -> list[tuple[int, ...]]:
    """For each region, given by convex pieces, the numbers of the first dozen polygons that share area with it."""
    if not regions:
        return []
    here: list[list[int]] = [[] for _ in regions]
    open_regions = [
        (bounding_box(tuple(chain(*pieces))), pieces, found) for pieces, found in zip(regions, here, strict=True)
    ]
    open_regions.sort(key=lambda each: each[0][1])
    hull = bounding_box(tuple(chain(*chain(*regions))))
    for number, polygon in enumerate(polygons):
        if not open_regions:
            break
        box = bounding_box(polygon)
        if _apart(hull, box):
            continue
        for region_box, pieces, found in open_regions:
            if region_box[1] >= box[3]:
                break
            if _apart(box, region_box):
                continue
            if any(not _apart(box, bounding_box(piece)) and _share_area(polygon, piece) for piece in pieces):
                found.append(number)
        open_regions = [each for each in open_regions if len(each[2]) < _MOST_PATCHES]
    return [tuple(found) for found in here]


def share_area(polygon: Polygon, box: Bounds, piece: Polygon, piece_box: Bounds) -> bool:
    """Whether a polygon and a convex, clockwise piece share area; each comes with its bounding box."""
    return not _apart(box, piece_box) and _share_area(polygon, piece)


def _apart(one: Bounds, two: Bounds) -> bool:
    return two[1] >= one[3] or one[1] >= two[3] or two[0] >= one[2] or one[0] >= two[2]


def _share_area(polygon: Polygon, piece: Polygon) -> bool:
    """Whether a polygon has area inside a convex, clockwise piece: clipped by each side in turn, something is left."""
    for start, end in edges(piece):
        if start != end:
            polygon = _clip(polygon, start, step(start, end))
    return len(polygon) > 2 and signed_area(polygon) != 0


def _clip(polygon: Polygon, start: Point, along: Point) -> Polygon:
    """What lies to the inner side of a line; parts that fall away leave only folds without area."""
    kept: list[Point] = []
    for a, b in edges(polygon):
        from_a, from_b = cross(along, step(start, a)), cross(along, step(start, b))
        if from_a >= 0:
            kept.append(a)
        if sign(from_a) * sign(from_b) < 0:
            part = from_a / (from_a - from_b)
            kept.append(Point(a.x + part * (b.x - a.x), a.y + part * (b.y - a.y)))
    return tuple(kept)
