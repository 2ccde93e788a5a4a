"""A partial seam: sewn only as far as both parts lie along it, its open end closed when a later part lies there."""

from __future__ import annotations

from typing import Any

from shapely.geometry import LineString, Point
from shapely.ops import linemerge

from tests.outside.virtual.cloth import NEAR, Fault, Work, allowance, normal_of
from tests.outside.virtual.plan import Spot

Stretch = tuple[Spot, Spot]


def parted(line: tuple[Spot, ...], ours: Any, theirs: Any) -> tuple[Stretch, list[Stretch]]:
    """What of a partial seam is sewn now, and what of it stays open: where one of two finished shapes is not there yet.

    Errors: Fault when the two do not lie along it, or when nothing is left open.
    """
    whole = LineString(line)
    now = _stretches(whole.intersection(_edge(ours)).intersection(_edge(theirs)))
    later = _stretches(whole.difference(LineString(now[0]).buffer(NEAR))) if len(now) == 1 else []
    if not later:
        raise Fault("a partial seam has no open end")
    return now[0], later


def closed(ends: list[Stretch], one: Work, other: Work, theirs: Any, seam: float) -> list[Stretch]:
    """The ends that stay open when a part is sewn in; those along which it lies are sewn now.

    Errors: Fault when the allowance of one of the two is short at such an end.
    """
    left = []
    for end in ends:
        if LineString(end).intersection(_edge(theirs)).length < LineString(end).length / 2:
            left.append(end)
            continue
        nx, ny = _toward(end, theirs)
        reach = min(allowance(one.cloth, end, (nx, ny), seam), allowance(other.cloth, end, (-nx, -ny), seam))
        if reach < seam - max(one.drift, other.drift) - NEAR:
            raise Fault(f"the cloth reaches {reach:.3f} beyond the open end of a partial seam")
    return left


def _toward(end: Stretch, theirs: Any) -> Spot:
    """The normal of an open end that points to the part that closes it."""
    nx, ny = normal_of(end)
    (a, b), (x, y) = end
    ahead = Point((a + x) / 2 + nx * 1e-3, (b + y) / 2 + ny * 1e-3)
    return (nx, ny) if theirs.distance(ahead) < NEAR else (-nx, -ny)


def _edge(shape: Any) -> Any:
    return shape.boundary.buffer(NEAR)


def _stretches(lines: Any) -> list[Stretch]:
    """The straight runs of some lines, crumbs left out."""
    parts = [lines] if lines.geom_type == "LineString" else [part for part in lines.geoms if part.length > 0]
    merged = linemerge(parts) if len(parts) > 1 else lines
    runs = [merged] if merged.geom_type == "LineString" else list(merged.geoms)
    return [(run.coords[0], run.coords[-1]) for run in runs if run.length > 100 * NEAR]
