"""From the order found to what is said of it: exact seams, what kind they are, outlines."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Sequence
from collections.abc import Set as AbstractSet
from itertools import pairwise

from msgspec import Struct

from blockdsl.geometry import Point, Polygon
from blockdsl.sewing.order.assembly import Assembly, Joined, Piece, SeamKind, SeamLine
from blockdsl.sewing.order.cuts import CutLine
from blockdsl.sewing.order.net import OUTSIDE, Net

_HARDNESS: tuple[SeamKind, ...] = ("straight", "curved", "partial", "set-in")


def dress(net: Net, whole: CutLine) -> Assembly:
    """The finished tree."""
    return _Dresser(net, whole).tree()


class _Stretch(Struct, frozen=True):
    """The open end of a partial seam: from where sewing stopped to its end, its sides and the patches beside them."""

    stop: Point
    end: Point
    sides: frozenset[int]
    beside: frozenset[int]


class _Dresser:
    def __init__(self, net: Net, whole: CutLine) -> None:
        self._net = net
        self._order = list(whole.walk())
        self._opened = frozenset(side for cut in self._order for side in cut.opened)
        self._part_of = [OUTSIDE] * len(net.rings)
        self._still_open = set(self._opened)
        self._stretches: list[_Stretch] = []
        self._begun: set[int] = set()

    def tree(self) -> Assembly:
        """Parts before what they make, which is the walk backwards."""
        done: dict[int, Assembly] = {}
        for cut in reversed(self._order):
            if not cut.parts:
                done[id(cut)] = Piece(cut.patches[0], self._outline(cut.patches) or ())
                continue
            seams = self._seams(cut)
            closes = self._closed_by(cut)
            kind = max((seam.kind for seam in seams), key=_HARDNESS.index)
            parts = tuple(done.pop(id(part)) for part in cut.parts)
            done[id(cut)] = Joined(parts, seams, kind, closes, tuple(cut.patches), self._outline(cut.patches))
        return done[id(self._order[0])]

    def _closed_by(self, cut: CutLine) -> tuple[tuple[Point, Point], ...]:
        """Open stretches are sewn as soon as everything beside them is joined."""
        if not self._stretches:
            return ()
        closed = [stretch for stretch in self._stretches if stretch.beside.issubset(cut.patches)]
        self._stretches = [stretch for stretch in self._stretches if stretch not in closed]
        for stretch in closed:
            self._still_open -= stretch.sides
        return tuple((stretch.stop, stretch.end) for stretch in closed)

    def _seams(self, cut: CutLine) -> tuple[SeamLine, ...]:
        net, part_of = self._net, self._part_of
        for number, part in enumerate(cut.parts):
            for patch in part.patches:
                part_of[patch] = number
        inside = frozenset(cut.patches) if len(cut.parts) > 1 else frozenset()
        largest = max(range(len(cut.parts)), key=lambda number: len(cut.parts[number].patches))
        between: list[set[int]] = [set() for _ in cut.parts[1:]]
        for number, part in enumerate(cut.parts):
            if number == largest:
                continue
            for patch in part.patches:
                for side in net.sides[patch]:
                    other = net.left[side] if net.right[side] == patch else net.right[side]
                    if other in inside and part_of[other] != number and side not in self._opened:
                        between[max(number, part_of[other]) - 1].add(side)
        return tuple(self._seam(sides) for sides in between)

    def _seam(self, sides: AbstractSet[int]) -> SeamLine:
        net = self._net
        path = in_one_path(net, sides) or sorted(sides)
        corners = corners_of(net, path)
        after, end = self._open_beyond(path[-1], corners[-1])
        before, start = self._open_beyond(path[0], corners[0])
        if before and not after:
            path, corners, after, before, start, end = path[::-1], corners[::-1], before, after, end, start
        both = bool(before) and len(path) == 1
        stop = self._within(path[-1], corners[-1], 3 if both else 2) if after else None
        begin = self._within(path[0], corners[0], 3 if both else 2) if before else None
        for open_sides, last_sewn, end_point in ((after, stop, end), (before, begin, start)):
            if last_sewn is not None:
                beside = frozenset(patch for side in open_sides for patch in (net.left[side], net.right[side]))
                self._stretches.append(_Stretch(last_sewn, net.points[end_point], frozenset(open_sides), beside))
                self._begun.update(open_sides)
        turns = tuple(net.points[corner] for corner in corners[1:-1])
        bends = {net.bends.get(side) for side in path}
        bend = bends.pop() if len(bends) == 1 else None
        kind: SeamKind = "set-in" if turns else "partial" if after else "straight" if bend is None else "curved"
        return SeamLine(net.points[start], net.points[end], kind, turns, stop, begin, bend)

    def _open_beyond(self, side: int, end: int) -> tuple[list[int], int]:
        """The sides of a partial seam, left open, that go straight on from the end of a side; and where they end."""
        net = self._net
        # What one seam goes on to sew shut no other one does.
        open_here = [o for o in self._opened if net.line[o] == net.line[side] and o not in self._begun]
        found: list[int] = []
        while True:
            onward = [o for o in open_here if end in (net.start[o], net.end[o]) and o not in found]
            if not onward:
                return found, end
            found.append(onward[0])
            end = net.start[onward[0]] if net.end[onward[0]] == end else net.end[onward[0]]

    def _within(self, side: int, corner: int, part: int) -> Point:
        """A place on a side, one part of it away from the corner at its end."""
        net = self._net
        here = net.points[corner]
        far = net.points[net.start[side] if net.end[side] == corner else net.end[side]]
        return Point(here.x + (far.x - here.x) / part, here.y + (far.y - here.y) / part)

    def _outline(self, patches: Sequence[int]) -> Polygon | None:
        """Clockwise from the top left corner, or None when it meets itself or a seam inside is still open."""
        net, inside = self._net, frozenset(patches)
        after: dict[int, int] = {}
        for patch in patches:
            for side in net.sides[patch]:
                on_right = net.right[side] == patch
                if (net.left[side] if on_right else net.right[side]) in inside:
                    if side in self._still_open:
                        return None
                else:
                    start, end = (net.start[side], net.end[side]) if on_right else (net.end[side], net.start[side])
                    if start in after:
                        return None
                    after[start] = end
        first = min(after, key=lambda corner: (net.ranks[corner][1], net.ranks[corner][0]))
        ring, here = [first], after[first]
        while here != first:
            ring.append(here)
            here = after[here]
        if len(ring) < len(after):
            return None
        return tuple(net.points[corner] for corner in self._bends(ring))

    def _bends(self, ring: Sequence[int]) -> list[int]:
        net = self._net
        line = {}
        pairs = list(zip(ring, [*ring[1:], ring[0]], strict=True))
        for one, other in pairs:
            side = net.side_of.get((one, other))
            line[one] = net.line[net.side_of[other, one] if side is None else side]
        return [here for place, here in enumerate(ring) if line[ring[place - 1]] != line[here]]


def in_one_path(net: Net, sides: Collection[int]) -> list[int] | None:
    """The sides in the order in which they are walked, from the end that comes first; None when they are no path."""
    ordered = sorted(sides)
    if all(net.line[one] == net.line[other] and net.end[one] == net.start[other] for one, other in pairwise(ordered)):
        return ordered
    at: dict[int, list[int]] = defaultdict(list)
    for side in ordered:
        at[net.start[side]].append(side)
        at[net.end[side]].append(side)
    ends = [corner for corner, meeting in at.items() if len(meeting) == 1]
    if len(ends) != 2 or any(len(meeting) > 2 for meeting in at.values()):
        return None
    here = min(ends, key=lambda corner: at[corner][0])
    path: list[int] = []
    while True:
        onward = [side for side in at[here] if not path or side != path[-1]]
        if not onward:
            return path if len(path) == len(ordered) else None
        path.append(onward[0])
        here = net.start[onward[0]] if net.end[onward[0]] == here else net.end[onward[0]]


def corners_of(net: Net, path: Sequence[int]) -> list[int]:
    """Where a path begins, turns and ends."""
    first = path[0]
    if len(path) > 1 and net.start[first] in (net.start[path[1]], net.end[path[1]]):
        here = net.end[first]
    else:
        here = net.start[first]
    corners = [here]
    for place, side in enumerate(path):
        here = net.start[side] if net.end[side] == here else net.end[side]
        if place + 1 == len(path) or net.line[path[place + 1]] != net.line[side]:
            corners.append(here)
    return corners
