"""The block as a net of seams: every side of every patch, split where another patch has a corner.

All exact geometry of the piecing order is done here, once. What follows asks only which side touches which patch,
which sides lie on one line, and in what order: whole numbers, whatever roots the corners are made of.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping, Sequence
from math import gcd

from msgspec import Struct, field

from blockdsl.geometry import Exact, Point
from blockdsl.geometry.arc import Bend
from blockdsl.geometry.polygon import cross, edges, signed_area, step
from blockdsl.model import BlockDesign
from blockdsl.sewing.order.whole import WholeNumbers, whole_numbers

OUTSIDE = -1
Line = tuple[object, ...]


class Net(Struct, frozen=True):
    """Sides are numbered line by line, and along each line in order; lines of one direction follow one another.

    `start`, `end`: a side's corners, along its line. `left`, `right`: the patches beside it, or OUTSIDE; the right
    is the right hand of one who walks from start to end. `line` and `way`: its line and the line's direction,
    0 level, 1 upright, more for slanting ones. `side_of`: a side by its start and end.
    `sides`, `rings`: for each patch its sides, and its corners clockwise. `boxes`: for each patch (left, top, right,
    bottom) as ranks in `across` and `down`, the different places of all corners (as lengths `exact_across`,
    `exact_down`); `ranks` the same for each corner.
    `areas` can be added and compared (twice the area where `is_whole`).
    `bends`: for each side that is a chord, or lies on one, the circle of its arc (hollow, whichever patch is meant).
    `faulty`: patches that overlap or leave a gap; then nothing else may be relied on.
    """

    points: Sequence[Point]
    whole: Sequence[tuple[int, int]]
    start: Sequence[int]
    end: Sequence[int]
    left: Sequence[int]
    right: Sequence[int]
    line: Sequence[int]
    way: Sequence[int]
    sides: Sequence[Sequence[int]]
    boxes: Sequence[tuple[int, int, int, int]]
    across: Sequence[int]
    down: Sequence[int]
    exact_across: Sequence[Exact]
    exact_down: Sequence[Exact]
    areas: Sequence[Exact | int]
    is_whole: bool
    rings: Sequence[Sequence[int]]
    ranks: Sequence[tuple[int, int]]
    side_of: Mapping[tuple[int, int], int]
    faulty: tuple[int, ...]
    bends: Mapping[int, Bend] = field(default_factory=dict)


def make_net(design: BlockDesign) -> Net:
    """The net of a block.

    Shape: every patch's outline runs clockwise as seen and is simple.
    Exact: corners, lines and areas are compared exactly.
    """
    return _Maker(design).net()


class _Maker:
    def __init__(self, design: BlockDesign) -> None:
        self._design = design
        self._numbers: WholeNumbers = whole_numbers(patch.outline for patch in design.patches)
        self._ids: dict[tuple[int, int], int] = {}
        self._points: list[Point] = []
        self._rings = [self._ring(patch.outline) for patch in design.patches]
        self._whole = list(self._ids)
        self._across = self._ranks(0)
        self._down = self._ranks(1)
        self._seen = {x: rank for rank, x in enumerate(self._across)}
        self._level = {y: rank for rank, y in enumerate(self._down)}
        # A side as (from, to, patch, whether it runs along its line).
        self._by_line: dict[Line, list[tuple[int, int, int, bool]]] = defaultdict(list)
        self._values: dict[Line, tuple[object, Exact | int]] = {}
        self._faulty: set[int] = set()

    def _ring(self, outline: Sequence[Point]) -> list[int]:
        ring = []
        for corner in outline:
            place = self._numbers.of(corner.x), self._numbers.of(corner.y)
            number = self._ids.setdefault(place, len(self._points))
            if number == len(self._points):
                self._points.append(corner)
            ring.append(number)
        return ring

    def _ranks(self, axis: int) -> list[int]:
        """The different places along an axis, least first; whole numbers of roots do not keep their order."""
        places = {place[axis] for place in self._whole}
        if self._numbers.scale:
            return sorted(places)
        value = {place[axis]: point[axis] for place, point in zip(self._whole, self._points, strict=True)}
        return sorted(places, key=value.__getitem__)

    def _exact(self, axis: int, places: Sequence[int]) -> list[Exact]:
        value = {place[axis]: point[axis] for place, point in zip(self._whole, self._points, strict=True)}
        return [value[place] for place in places]

    def net(self) -> Net:
        for patch, ring in enumerate(self._rings):
            before = ring[-1]
            for here in ring:
                self._add_side(before, here, patch)
                before = here
        boxes, areas = self._measures()
        start, end, left, right, line, way = self._split_sides()
        sides: list[list[int]] = [[] for _ in self._rings]
        for side, patches in enumerate(zip(left, right, strict=True)):
            for patch in patches:
                if patch != OUTSIDE:
                    sides[patch].append(side)
            if OUTSIDE in patches and not self._on_rim(start[side], end[side]):
                self._faulty.add(max(patches))
        return Net(
            points=self._points,
            whole=self._whole,
            start=start,
            end=end,
            left=left,
            right=right,
            line=line,
            way=way,
            sides=sides,
            boxes=boxes,
            across=self._across,
            down=self._down,
            exact_across=self._exact(0, self._across),
            exact_down=self._exact(1, self._down),
            areas=areas,
            is_whole=self._numbers.scale > 0,
            rings=self._rings,
            ranks=[(self._seen[x], self._level[y]) for x, y in self._whole],
            side_of={ends: side for side, ends in enumerate(zip(start, end, strict=True))},
            faulty=tuple(sorted(self._faulty)),
            bends=self._bends(sides, start, end),
        )

    def _bends(self, sides: Sequence[Sequence[int]], start: Sequence[int], end: Sequence[int]) -> dict[int, Bend]:
        """The arcs whose chords the sides of curved patches lie on; no two sides of one twin lie on one line."""
        found: dict[int, Bend] = {}
        for patch, own in zip(self._design.patches, sides, strict=True):
            if patch.curved is None:
                continue
            for (one, other), bend in zip(edges(patch.outline), patch.curved.bends, strict=True):
                if bend is None:
                    continue
                chord = step(one, other)
                for side in own:
                    ends = (self._points[start[side]], self._points[end[side]])
                    if not any(cross(chord, step(one, place)) for place in ends):
                        found[side] = Bend(bend.centre, bend.radius, hollow=True)
        return found

    def _add_side(self, before: int, here: int, patch: int) -> None:
        (x, y), (next_x, next_y) = self._whole[before], self._whole[here]
        if y == next_y:
            forward = self._seen[x] < self._seen[next_x]
            key: Line = (0, y)
        elif x == next_x:
            forward = self._level[y] < self._level[next_y]
            key = (1, x)
        else:
            forward = self._seen[x] < self._seen[next_x]
            key = self._slanting(before, here)
        ends = (before, here) if forward else (here, before)
        self._by_line[key].append((*ends, patch, forward))

    def _slanting(self, before: int, here: int) -> Line:
        """A key for the line through both: its slope and where it lies."""
        if self._numbers.scale:
            (x, y), (next_x, next_y) = self._whole[before], self._whole[here]
            dx, dy = next_x - x, next_y - y
            common = gcd(dx, dy) if dx > 0 else -gcd(dx, dy)
            dx, dy = dx // common, dy // common
            offset = dx * y - dy * x
            key: Line = (2, dx, dy, offset)
            self._values[key] = ((dx, dy), offset)
            return key
        one, other = self._points[before], self._points[here]
        slope = (other.y - one.y) / (other.x - one.x)
        lies = one.y - slope * one.x
        key = (2, slope, lies)
        self._values[key] = (slope, lies)
        return key

    def _lines_in_order(self) -> list[tuple[int, Line]]:
        """Every line with its direction's number: level ones from the top, upright ones from the left, then others."""
        ordered: list[tuple[int, Line]] = [(0, (0, y)) for y in self._down if (0, y) in self._by_line]
        ordered.extend((1, (1, x)) for x in self._across if (1, x) in self._by_line)
        slanting: dict[object, list[tuple[Exact | int, Line]]] = {}
        for key, (slope, offset) in self._values.items():
            slanting.setdefault(slope, []).append((offset, key))
        for number, lines in enumerate(slanting.values(), start=2):
            lines.sort(key=lambda line: line[0])
            ordered.extend((number, key) for _, key in lines)
        return ordered

    def _split_sides(self) -> tuple[list[int], ...]:
        columns: tuple[list[int], ...] = ([], [], [], [], [], [])
        start, end, left, right, line, way = columns
        for number, (direction, key) in enumerate(self._lines_in_order()):
            along, axis = (self._level, 1) if direction == 1 else (self._seen, 0)
            whole, sides = self._whole, self._by_line[key]
            corners = sorted({c for side in sides for c in side[:2]}, key=lambda c: along[whole[c][axis]])
            index = {corner: place for place, corner in enumerate(corners)}
            beside = [[OUTSIDE, OUTSIDE] for _ in corners]
            for one, other, patch, forward in sides:
                for place in range(index[one], index[other]):
                    if beside[place][forward] != OUTSIDE:
                        self._faulty.update((patch, beside[place][forward]))
                    beside[place][forward] = patch
            for place, (on_left, on_right) in enumerate(beside):
                if on_left != on_right:
                    for column, value in zip(
                        columns, (corners[place], corners[place + 1], on_left, on_right, number, direction), strict=True
                    ):
                        column.append(value)
        return start, end, left, right, line, way

    def _measures(self) -> tuple[list[tuple[int, int, int, int]], list[Exact | int]]:
        boxes, areas = [], []
        for ring, patch in zip(self._rings, self._design.patches, strict=True):
            xs = [self._seen[self._whole[corner][0]] for corner in ring]
            ys = [self._level[self._whole[corner][1]] for corner in ring]
            boxes.append((min(xs), min(ys), max(xs), max(ys)))
            areas.append(self._twice_area(ring) if self._numbers.scale else signed_area(patch.outline))
        return boxes, areas

    def _twice_area(self, ring: Sequence[int]) -> int:
        total = 0
        x, y = self._whole[ring[-1]]
        for corner in ring:
            next_x, next_y = self._whole[corner]
            total += x * next_y - next_x * y
            x, y = next_x, next_y
        return total

    def _on_rim(self, one: int, other: int) -> bool:
        a, b = self._points[one], self._points[other]
        return (a.x == b.x and a.x in (0, self._design.width)) or (a.y == b.y and a.y in (0, self._design.height))
