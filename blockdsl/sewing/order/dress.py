"""From the order found to what is said of it: exact seams, what kind they are, outlines."""

from __future__ import annotations

from collections.abc import Sequence
from collections.abc import Set as AbstractSet

from blockdsl.geometry import Point, Polygon
from blockdsl.sewing.order.assembly import Assembly, Joined, Piece, SeamKind, SeamLine
from blockdsl.sewing.order.cuts import Cut
from blockdsl.sewing.order.net import OUTSIDE, Net
from blockdsl.sewing.order.paths import corners_of, in_one_path

_HARDNESS: tuple[SeamKind, ...] = ("straight", "partial", "set-in")


def dress(net: Net, whole: Cut) -> Assembly:
    """The finished tree."""
    return _Dresser(net, whole).tree()


class _Dresser:
    def __init__(self, net: Net, whole: Cut) -> None:
        self._net = net
        self._order = list(whole.walk())
        self._opened = frozenset(side for cut in self._order for side in cut.opened)
        self._part_of = [OUTSIDE] * len(net.rings)
        self._begun: dict[int, SeamLine] = {}

    def tree(self) -> Assembly:
        """Parts before what they make, which is the walk backwards."""
        done: dict[int, Assembly] = {}
        for cut in reversed(self._order):
            outline = self._outline(cut.patches)
            if not cut.parts:
                done[id(cut)] = Piece(cut.patches[0], outline or ())
                continue
            seams = self._seams(cut)
            closes = {self._begun[side] for side in sorted(cut.opened) if side in self._begun}
            kind = max((seam.kind for seam in seams), key=_HARDNESS.index)
            parts = tuple(done.pop(id(part)) for part in cut.parts)
            in_order = tuple(sorted(closes, key=lambda seam: min(self._begun_at(seam))))
            done[id(cut)] = Joined(parts, seams, kind, in_order, tuple(cut.patches), outline)
        return done[id(self._order[0])]

    def _begun_at(self, seam: SeamLine) -> list[int]:
        return [side for side, begun in self._begun.items() if begun == seam]

    def _seams(self, cut: Cut) -> tuple[SeamLine, ...]:
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
        path = corners_of(net, in_one_path(net, sides) or sorted(sides))
        points = [net.points[corner] for corner in path]
        if len(path) > 2:
            return SeamLine(points[0], points[-1], "set-in", tuple(points[1:-1]))
        return self._partial(sides, path) or SeamLine(points[0], points[1])

    def _partial(self, sides: AbstractSet[int], path: Sequence[int]) -> SeamLine | None:
        """The seam as a partial one, when sides that were left open go on from one of its ends."""
        net = self._net
        line = net.line[min(sides)]
        open_here = {side for side in self._opened if net.line[side] == line}
        for near, far in (path, path[::-1]):
            end, still_open = far, []
            while True:
                following = [s for s in open_here if end in (net.start[s], net.end[s]) and s not in still_open]
                if not following:
                    break
                still_open.append(following[0])
                end = net.start[following[0]] if net.end[following[0]] == end else net.end[following[0]]
            if still_open:
                last = next(side for side in sides if far in (net.start[side], net.end[side]))
                one, other = net.points[net.start[last]], net.points[net.end[last]]
                stop = Point((one.x + other.x) / 2, (one.y + other.y) / 2)
                seam = SeamLine(net.points[near], net.points[end], "partial", (stop,))
                self._begun.update(dict.fromkeys(still_open, seam))
                return seam
        return None

    def _outline(self, patches: Sequence[int]) -> Polygon | None:
        """Clockwise from the top left corner, or None when the outline meets itself."""
        net, inside = self._net, frozenset(patches)
        after: dict[int, int] = {}
        for patch in patches:
            for side in net.sides[patch]:
                on_right = net.right[side] == patch
                if (net.left[side] if on_right else net.right[side]) not in inside:
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
