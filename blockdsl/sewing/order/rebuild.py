"""The check that an order makes the block: sewn together again from outlines alone.

Nothing here knows how the order was found. Each part is the list of its outer edges; a seam takes the same stretch
from both parts, once forward and once backward; what is left at the end must be the block's own four edges.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from blockdsl.geometry import Point, sign
from blockdsl.geometry.polygon import cross, dot, edges, step
from blockdsl.model import BlockDesign
from blockdsl.sewing.order.assembly import Assembly, Joined, Piece, SeamLine, count_seams, walk

_Edge = tuple[Point, Point]
_Edges = list[_Edge]


class _CannotSew(Exception):
    """What does not fit. Never leaves this file."""


def rebuild(assembly: Assembly, design: BlockDesign) -> tuple[str, ...]:
    """What is wrong with the order; nothing when it makes the block.

    Shape:  each patch is used once; every seam lies on an edge of both its parts, and where the block has straight
            seams only it is the whole of an edge of both; the outlines given are those that result.
    Exact:  no tolerance anywhere.
    """
    used = sorted(node.patch for node in walk(assembly) if isinstance(node, Piece))
    if used != list(range(len(design.patches))):
        return ("not every patch is used once",)
    count = count_seams(assembly)
    sewing = _Sewing(design, whole_edges=not (count.partial or count.set_in))
    try:
        made = sewing.make(assembly)
    except _CannotSew as fault:
        return (str(fault),)
    zero = 0 * design.width
    corners = (
        Point(zero, zero),
        Point(design.width, zero),
        Point(design.width, design.height),
        Point(zero, design.height),
    )
    return () if set(made) == set(edges(corners)) else ("what is made is not the block",)


class _Sewing:
    def __init__(self, design: BlockDesign, *, whole_edges: bool) -> None:
        self._design = design
        self._whole_edges = whole_edges

    def make(self, assembly: Assembly) -> _Edges:
        """The outer edges of what is made."""
        done: dict[int, _Edges] = {}
        for node in reversed(list(walk(assembly))):
            if isinstance(node, Piece):
                made = list(edges(self._design.patches[node.patch].outline))
            else:
                made = self._joined(node, [done.pop(id(part)) for part in node.parts])
            if node.outline is not None and set(made) != set(edges(node.outline)):
                raise _CannotSew(f"the outline of patches {node.patches} is not the one given")
            done[id(node)] = made
        return done[id(assembly)]

    def _joined(self, node: Joined, parts: Sequence[_Edges]) -> _Edges:
        if len(node.seams) != len(parts) - 1 or len(parts) < 2:
            raise _CannotSew(f"the seams of patches {node.patches} are not one fewer than the parts")
        if node.patches != tuple(sorted(patch for part in node.parts for patch in part.patches)):
            raise _CannotSew(f"the patches of {node.patches} are not those of its parts")
        remaining = [list(part) for part in parts]
        for place, seam in enumerate(node.seams):
            self._sew(seam, remaining[place], remaining[place + 1])
        left = [edge for part in remaining for edge in part]
        for stop, end in node.closes:
            _close(left, stop, end)
        return _merged(left)

    def _sew(self, seam: SeamLine, one: _Edges, other: _Edges) -> None:
        corners = [seam.start, *seam.turns, seam.end]
        if seam.stop is not None:
            known = corners[-2] if seam.turns or seam.begin is None else seam.begin
            corners[-1] = _as_far_as_both(one, other, (known, seam.end), seam.stop)
        if seam.begin is not None:
            known = corners[1] if seam.turns or seam.stop is None else seam.stop
            corners[0] = _as_far_as_both(one, other, (known, seam.start), seam.begin)
        whole = self._whole_edges
        for a, b in pairwise(corners):
            forward = _holder(one, a, b) is not None
            here, back = (a, b) if forward else (b, a)
            _take(one, here, back, whole=whole)
            _take(other, back, here, whole=whole)


def _holder(part: _Edges, a: Point, b: Point) -> _Edge | None:
    """The edge that runs over the whole of a → b, that way."""
    along = step(a, b)
    for start, end in part:
        side = step(start, end)
        if (
            cross(side, along) == 0
            and cross(side, step(start, a)) == 0
            and sign(dot(side, along)) > 0
            and sign(dot(side, step(start, a))) >= 0
            and sign(dot(side, step(b, end))) >= 0
        ):
            return start, end
    return None


def _take(part: _Edges, a: Point, b: Point, *, whole: bool) -> None:
    holder = (a, b) if (a, b) in part else None if whole else _holder(part, a, b)
    if holder is None:
        raise _CannotSew(f"the seam from {a} to {b} is no edge of both its parts")
    part.remove(holder)
    part.extend(edge for edge in ((holder[0], a), (b, holder[1])) if edge[0] != edge[1])


def _as_far_as_both(one: _Edges, other: _Edges, stretch: _Edge, stop: Point) -> Point:
    """How far the last stretch of a partial seam has both parts beside it: past `stop`, and short of its end."""
    start, end = stretch
    along = step(start, end)
    ahead = {
        corner
        for edge in (*one, *other)
        for corner in edge
        if cross(along, step(start, corner)) == 0 and sign(dot(along, step(stop, corner))) > 0 and corner != end
    }
    fitting = [
        corner
        for corner in ahead
        if all(_holder(part, start, corner) or _holder(part, corner, start) for part in (one, other))
    ]
    if not fitting:
        raise _CannotSew(f"the partial seam from {start} to {end} does not fit its parts")
    return max(fitting, key=lambda corner: dot(along, step(start, corner)))


def _close(left: _Edges, stop: Point, end: Point) -> None:
    """Sew what is still open between the two: every stretch that two edges share."""
    along = step(stop, end)
    corners = {
        corner
        for corner in (corner for edge in left for corner in edge)
        if cross(along, step(stop, corner)) == 0
        and sign(dot(along, step(stop, corner))) > 0
        and sign(dot(along, step(corner, end))) >= 0
    }
    in_order = sorted(corners, key=lambda corner: dot(along, step(stop, corner)))
    closed = 0
    for a, b in pairwise(in_order):
        if _holder(left, a, b) and _holder(left, b, a):
            _take(left, a, b, whole=False)
            _take(left, b, a, whole=False)
            closed += 1
    if not closed:
        raise _CannotSew(f"there is nothing to close between {stop} and {end}")


def _merged(left: _Edges) -> _Edges:
    """Edges that go straight on are one edge."""
    from_corner: dict[Point, _Edges] = {}
    for edge in left:
        from_corner.setdefault(edge[0], []).append(edge)
    to_corner: dict[Point, int] = {}
    for edge in left:
        to_corner[edge[1]] = to_corner.get(edge[1], 0) + 1
    straight_on = {
        edge
        for edge in left
        if to_corner[edge[1]] == 1
        and len(from_corner.get(edge[1], ())) == 1
        and cross(step(*edge), step(*from_corner[edge[1]][0])) == 0
        and sign(dot(step(*edge), step(*from_corner[edge[1]][0]))) > 0
    }
    joined = {from_corner[edge[1]][0] for edge in straight_on}
    merged = []
    for edge in left:
        if edge not in joined:
            end = edge
            while end in straight_on:
                end = from_corner[end[1]][0]
            merged.append((edge[0], end[1]))
    return merged
