"""What is left of a shape when everything on one side of a straight line is cut away.

The line is moved inward by less than any number, so that a corner on it counts as cut away. Where the outline leaves
the kept side and where it comes back are then sorted along the line; between two neighbours of them the line runs
inside the shape, and there the outline is closed. What is left may be several pieces, if corners point inward.
"""

from __future__ import annotations

from collections import deque

from msgspec import Struct

from blockdsl.geometry.number import Exact, sign
from blockdsl.geometry.polygon import Point, Polygon, clockwise, drop_straight_corners


class Edge(Struct, frozen=True):
    """The edge of a half plane: what lies `distance` or farther from the origin along the step `towards` is kept."""

    towards: Point
    distance: Exact

    def depth(self, corner: Point) -> Exact:
        """How far inside the kept half a corner lies; negative outside."""
        return self.towards.x * corner.x + self.towards.y * corner.y - self.distance

    def along(self, corner: Point) -> Exact:
        """Where along the edge a corner lies, counted clockwise round what is kept."""
        return self.towards.y * corner.x - self.towards.x * corner.y


def kept_of(polygon: Polygon, edge: Edge) -> tuple[Polygon, ...]:
    """The pieces of a simple polygon that lie in the half plane, each clockwise and without straight corners.

    Exact:  wherever the coordinates are; nothing when the polygon has no area there.
    """
    outline = clockwise(polygon)
    depths = [edge.depth(corner) for corner in outline]
    signs = [sign(depth) for depth in depths]
    if min(signs) >= 0:
        return (outline,)
    if max(signs) <= 0:
        return ()
    runs = _runs(outline, depths, signs)
    pieces = (drop_straight_corners(piece) for piece in _joined(runs, edge))
    return tuple(piece for piece in pieces if piece)


def _runs(outline: Polygon, depths: list[Exact], signs: list[int]) -> list[list[Point]]:
    """The stretches of the outline on the kept side, each from where it comes in to where it leaves."""
    count = len(outline)
    start = next(i for i in range(count) if signs[i - 1] <= 0 < signs[i])
    runs: list[list[Point]] = []
    for step in range(count):
        i = (start + step) % count
        if signs[i] <= 0:
            continue
        if signs[i - 1] <= 0:
            runs.append([_crossing(outline, depths, i)])
        runs[-1].append(outline[i])
        after = (i + 1) % count
        if signs[after] <= 0:
            runs[-1].append(_crossing(outline, depths, after))
    return runs


def _crossing(outline: Polygon, depths: list[Exact], i: int) -> Point:
    """Where the side that ends at corner i meets the edge."""
    a, b, before, here = outline[i - 1], outline[i], depths[i - 1], depths[i]
    if not before or not here:
        return b if not here else a
    share = before / (before - here)
    return Point(a.x + share * (b.x - a.x), a.y + share * (b.y - a.y))


def _joined(runs: list[list[Point]], edge: Edge) -> list[Polygon]:
    """Runs closed along the edge: from where one leaves to the run that comes in next along it."""
    comes_in = {place: run[0] for place, run in enumerate(runs)}
    follows = _followers([(edge.along(run[-1]), edge.along(comes_in[place])) for place, run in enumerate(runs)])
    left = deque(range(len(runs)))
    pieces: list[Polygon] = []
    used: set[int] = set()
    while left:
        first = left.popleft()
        if first in used:
            continue
        corners: list[Point] = []
        place = first
        while place not in used:
            used.add(place)
            corners += runs[place]
            place = follows[place]
        pieces.append(tuple(corners))
    return pieces


def _followers(ends: list[tuple[Exact, Exact]]) -> dict[int, int]:
    """For each run the one that it is joined to. `ends` are where it leaves and where it came in, along the edge.

    Along the edge, the kept side on the right hand, every stretch inside the shape begins where a run leaves and ends
    where one comes in: in order they take turns, whatever corners share a place.
    """
    leaves = sorted(range(len(ends)), key=lambda place: ends[place][0])
    comes = sorted(range(len(ends)), key=lambda place: ends[place][1])
    return dict(zip(leaves, comes, strict=True))
