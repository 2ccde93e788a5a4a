"""Parts with their real edges, and what becomes of those when two parts are sewn together."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from itertools import pairwise
from math import hypot
from typing import NamedTuple

from msgspec import Struct

from blockdsl.geometry import Exact, Point, Polygon, square_root, to_float
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import cross, dot, edges, step, turn_at

NOTHING = Fraction(0)


class SewnSide(NamedTuple):
    """A side of a patch on the edge of a part, clockwise as drawn.

    `off` is how far outside it the real side lies at its start, `off_end` at its end, `longer` how much longer the real
    side is, measured between the corners of its own piece.
    """

    start: Point
    end: Point
    off: Exact
    off_end: Exact
    longer: Exact
    patch: int

    def off_at(self, portion: Exact) -> Exact:
        """How far outside it the real side lies so far along, 0 at its start and 1 at its end."""
        return self.off if self.off == self.off_end else self.off + (self.off_end - self.off) * portion


def least(sides: Iterable[SewnSide]) -> Exact:
    """How far outside the real sides lie where they reach least: there a seam is sewn."""
    return min(min(side.off, side.off_end) for side in sides)


class Misfit(Struct, frozen=True):
    """Two parts that differ in length along a seam: how long each really is there, and the patches that lie along it.

    `drawn` is how long the seam should be, finished.
    """

    drawn: Exact
    lengths: tuple[Exact, Exact]
    patches: tuple[tuple[int, ...], tuple[int, ...]]

    @property
    def off(self) -> Exact:
        """By how much they miss each other."""
        difference = self.lengths[0] - self.lengths[1]
        return difference if difference >= 0 else -difference


BESIDE = 1e-6
"""Twice the area of three corners of a block, below 10 m, from which floats tell that they are not in line."""
SQUARE_NEAR = 1e-12
"""Normals whose (sine of the angle between them)² is less are one direction: errors of floats."""
Reach = tuple[Exact, Exact]
"""The least and the most of a measure."""


class SewnPart(Struct, frozen=True):
    """What is sewn: its sides, and how far its seams lie from their places.

    `moved` has for each direction of seams, by its normal, how far along that they lie from where they are drawn.
    """

    sides: Sequence[SewnSide]
    moved: Mapping[tuple[Exact, Exact], Reach]

    @property
    def is_as_drawn(self) -> bool:
        """Whether it is nowhere larger than drawn, and its seams are where they are drawn."""
        return not self.moved and not any(side.off or side.off_end or side.longer for side in self.sides)


class Sewer:
    """Sews parts together, and remembers directions: a block has few.

    `scale` is what the corners are multiplied by (offsets are not), so that they can be whole numbers; nothing where
    they have roots. `rough`: in floats, for a first look: offsets, and corners where they have roots. Lengths of seams
    are not compared then.
    """

    def __init__(self, scale: int, *, rough: bool = False) -> None:
        self._scale = scale or 1
        self._rough = rough
        self._rooted = scale == 0
        self._floats: dict[Point, tuple[float, float]] = {}
        self.nothing: Exact = 0.0 if rough else NOTHING  # type: ignore[assignment]  # a float among floats
        self._stretches: dict[tuple[Point, Point], _Stretch] = {}
        self._normals: dict[Point, tuple[Exact, Exact]] = {}
        self._corners: dict[tuple[Point, Point], tuple[Exact, Exact]] = {}

    def number_pair(self, way: Point) -> Point:
        """A step in the numbers that are calculated with: floats for a first look."""
        return Point(to_float(way.x), to_float(way.y)) if self._rough else way  # type: ignore[arg-type]  # floats for both

    def lengthened(self, outline: Polygon, offsets: Sequence[tuple[Exact, Exact]]) -> tuple[Exact, ...]:
        """How much longer than drawn the real sides of a piece with these offsets at their ends are.

        With unit steps u and v along two sides that meet, their lines moved outward by a and b meet at
        (b - a u·v) / (u × v) beyond the corner, measured along u; and so at the other end of v.
        """
        longer = [self.nothing] * len(outline)
        if any(map(any, offsets)):
            steps = [step(start, end) for start, end in edges(outline)]
            for place, way in enumerate(steps):
                cosine, over_sine = self._corner(steps[place - 1], way)
                before, after = offsets[place - 1][1], offsets[place][0]
                longer[place - 1] = longer[place - 1] + (after - before * cosine) * over_sine
                longer[place] = longer[place] + (before - after * cosine) * over_sine
        return tuple(longer)

    def joined(self, one: SewnPart, other: SewnPart, line: Sequence[Point]) -> tuple[SewnPart, list[Misfit]]:
        """Both parts sewn along a seam, and how they differ in length along it.

        The other part is moved square to the seam by what both are larger there, and along it until it stands out as
        far at both ends. At a seam with corners it goes where it suits all stretches best.
        """
        misfits: list[Misfit] = []
        kept_one, kept_other = list(one.sides), list(other.sides)
        pushes: list[tuple[tuple[Exact, Exact], Exact]] = []
        seams: dict[tuple[Exact, Exact], Reach] = dict(one.moved)
        beside: tuple[Sequence[SewnSide], Sequence[SewnSide]] = ((), ())
        for stretch in (self._stretch(start, end) for start, end in pairwise(line)):
            (ours, kept_one), (theirs, kept_other) = self._split(kept_one, stretch), self._split(kept_other, stretch)
            if ours and theirs:
                normal = self._normal(step(ours[0].start, ours[0].end))
                off = least(ours)
                pushes.append((normal, off + least(theirs)))
                widen(seams, normal, (off, off))
                misfits += [] if self._rough else self._misfit(stretch, ours, theirs)
                beside = (ours, theirs)
        x, y = _moved(pushes)
        if len(line) == 2 and pushes:
            (nx, ny), along = pushes[0][0], self._along_seam((one.sides, other.sides), beside, (line[0], line[1]))
            x, y = x - ny * along, y + nx * along
        pushed = self.pushed(SewnPart(kept_other, other.moved), x, y)
        for normal, reach in pushed.moved.items():
            widen(seams, normal, reach)
        return SewnPart([*kept_one, *pushed.sides], seams), misfits

    def _along_seam(
        self,
        parts: tuple[Sequence[SewnSide], Sequence[SewnSide]],
        beside: tuple[Sequence[SewnSide], Sequence[SewnSide]],
        line: tuple[Point, Point],
    ) -> Exact:
        """How far the other part is slid along a seam, in the way of the first part's sides (it lies on their right).

        It stands out beyond the first as far at both ends then; where only one end can be compared both are even there.
        """
        first = beside[0][0]
        start, end = line if dot(step(first.start, first.end), step(*line)) > 0 else line[::-1]
        beyond = [
            [self._beyond(part, on, place) for part, on in zip(parts, beside, strict=True)] for place in (start, end)
        ]
        more = [None if mine is None or yours is None else yours - mine for mine, yours in beyond]
        if more[0] is not None and more[1] is not None:
            return (more[0] - more[1]) / 2
        if more[0] is not None:
            return more[0]
        return NOTHING if more[1] is None else -more[1]

    def _beyond(self, part: Sequence[SewnSide], seam: Sequence[SewnSide], place: Point) -> Exact | None:
        """How far a part reaches beyond a drawn end of a seam, along it; None where it has no corner there."""
        off = least(seam)
        for on in seam:
            if place not in (on.start, on.end):
                continue
            way = step(on.start, on.end)
            ahead = on.end == place
            for side in part:
                if (side.start if ahead else side.end) != place or side is on:
                    continue
                other = step(side.start, side.end)
                if abs(to_float(cross(way, other))) > BESIDE:
                    cosine, over_sine = self._corner(way, other) if ahead else self._corner(other, way)
                    return ((side.off if ahead else side.off_end) - off * cosine) * over_sine
        return None

    def pushed(self, part: SewnPart, x: Exact, y: Exact) -> SewnPart:
        """A part after it was moved."""
        if not x and not y:
            return part
        moved = {}
        for (nx, ny), (low, high) in part.moved.items():
            more = x * nx + y * ny
            moved[nx, ny] = (low + more, high + more)
        return SewnPart([self._pushed(side, x, y) for side in part.sides], moved)

    def closed(self, part: SewnPart, start: Point, end: Point) -> SewnPart:
        """A part without the sides of a partial seam whose open end is closed."""
        stretch = self._stretch(start, end)
        return SewnPart(self._split(part.sides, stretch)[1], part.moved)

    def apart(self, a: Point, b: Point, c: Point, d: Point) -> Exact | None:
        """How far two edges that face each other lie apart, a clockwise outline's; None when they do not."""
        one, other, away = step(a, b), step(c, d), step(a, c)
        if cross(one, other) != 0 or dot(one, other) > 0:
            return None
        over = cross(one, away)
        return None if over <= 0 else over / square_root(Fraction(1) * dot(one, one))

    def mean(self, part: Sequence[SewnSide], start: Point, end: Point) -> Exact:
        """How far outside an edge of a part its real sides lie, on an average along the edge."""
        stretch = self._stretch(start, end)
        total = self.nothing
        for side in self._split(part, stretch)[0]:
            off = side.off if side.off == side.off_end else (side.off + side.off_end) / 2
            if off:
                along = dot(stretch.way, step(side.start, side.end)) / (Fraction(1) * stretch.square)
                total += off * (along if along >= 0 else -along)
        return total

    def _split(self, part: Iterable[SewnSide], stretch: _Stretch) -> tuple[list[SewnSide], list[SewnSide]]:
        """The sides of a part that lie on a stretch, at least in part; and what is left of all its sides beside it.

        Sides that run on beyond the stretch come as long as they are, with the offsets that they have at its ends.
        """
        along, left = [], []
        for side in part:
            ends = (side.start, side.end)
            if ends not in stretch.known:
                stretch.known[ends] = self._on(stretch, *ends)
            beyond = stretch.known[ends]
            if beyond is None:
                left.append(side)
                continue
            on = side
            for corner, portion, is_before in beyond:
                off = side.off_at(portion)
                if is_before:
                    left.append(side._replace(end=corner, off_end=off))
                    on = on._replace(off=off)
                else:
                    left.append(side._replace(start=corner, off=off))
                    on = on._replace(off_end=off)
            along.append(on)
        return along, left

    def _stretch(self, start: Point, end: Point) -> _Stretch:
        known = self._stretches.get((start, end))
        if known is None:
            known = self._stretches[start, end] = _Stretch(start, end)
        return known

    def _on(self, stretch: _Stretch, side_start: Point, side_end: Point) -> tuple[_Beyond, ...] | None:
        """Where a side that lies on a stretch, at least in part, runs on beyond it; None for one that lies beside."""
        start = self._place(side_start, stretch)
        end = None if start is None else self._place(side_end, stretch)
        if start is None or end is None:
            return None
        forward = start < end
        low, high = (start, end) if forward else (end, start)
        if max(low, 0) >= min(high, stretch.square):
            return None
        return tuple(
            (corner, (place - start) / (Fraction(1) * (end - start)), (place == 0) == forward)
            for place, corner in ((Fraction(0), stretch.start), (stretch.square, stretch.end))
            if low < place < high
        )

    def _place(self, point: Point, stretch: _Stretch) -> Exact | None:
        """How far along a stretch a point lies, `square` at its end; None for a point beside it."""
        if self._rooted and self._rough:
            return _place_in_floats(step(stretch.start, point), stretch)
        if self._rooted:
            (ax, ay), (bx, by), (x, y) = self._near(stretch.start), self._near(stretch.end), self._near(point)
            if abs((bx - ax) * (y - ay) - (by - ay) * (x - ax)) > BESIDE:
                return None
            if turn_at(stretch.start, stretch.end, point) != 0:
                return None
        elif cross(stretch.way, step(stretch.start, point)) != 0:
            return None
        return dot(stretch.way, step(stretch.start, point))

    def _near(self, point: Point) -> tuple[float, float]:
        known = self._floats.get(point)
        if known is None:
            known = self._floats[point] = (to_float(point.x), to_float(point.y))
        return known

    def _misfit(self, stretch: _Stretch, ours: Sequence[SewnSide], theirs: Sequence[SewnSide]) -> list[Misfit]:
        more = [sum((side.longer for side in sides), start=NOTHING) for sides in (ours, theirs)]
        if more[0] == more[1]:
            return []
        drawn = stretch.length / self._scale
        patches = [tuple(side.patch for side in sides) for sides in (ours, theirs)]
        return [Misfit(drawn, (drawn + more[0], drawn + more[1]), (patches[0], patches[1]))]

    def _normal(self, way: Point) -> tuple[Exact, Exact]:
        if way not in self._normals:
            if self._rough:
                x, y = to_float(way.x), to_float(way.y)
                self._normals[way] = (y / hypot(x, y), -x / hypot(x, y))  # type: ignore[assignment]  # floats for both
            else:
                length = square_root(Fraction(1) * dot(way, way))
                self._normals[way] = (way.y / length, -way.x / length)
        return self._normals[way]

    def _corner(self, before: Point, after: Point) -> tuple[Exact, Exact]:
        """(u·v, 1 / u × v) for the unit steps of two sides that meet."""
        key = (before, after)
        known = self._corners.get(key)
        if known is None:
            # the normals of both sides are their steps, a quarter turn on
            (ux, uy), (vx, vy) = self._normal(before), self._normal(after)
            known = self._corners[key] = (ux * vx + uy * vy, 1 / (ux * vy - uy * vx))
        return known

    def _pushed(self, side: SewnSide, x: Exact, y: Exact) -> SewnSide:
        nx, ny = self._normal(step(side.start, side.end))
        more = x * nx + y * ny
        return side._replace(off=side.off + more, off_end=side.off_end + more) if more else side


_Beyond = tuple[Point, Exact, bool]
"""An end of a stretch that a side runs on beyond, how far along it is (0 to 1), and whether the side begins before."""


class _Stretch:
    """A straight part of a seam; `known` are sides, by their ends, that were compared with it."""

    def __init__(self, start: Point, end: Point) -> None:
        self.known: dict[tuple[Point, Point], tuple[_Beyond, ...] | None] = {}
        self.start, self.end = start, end
        self.way = step(start, end)
        self.square = dot(self.way, self.way)

    @property
    def length(self) -> Exact:
        """As long as drawn, enlarged."""
        return square_root(Fraction(1) * self.square)


def _place_in_floats(away: Point, stretch: _Stretch) -> Exact | None:
    """How far along a stretch something lies that is so far away from its start; the same, near enough, as exactly."""
    if abs(to_float(cross(stretch.way, away))) > BESIDE:
        return None
    along = dot(stretch.way, away)
    if abs(to_float(along)) < BESIDE:
        return NOTHING
    return stretch.square if abs(to_float(along - stretch.square)) < BESIDE else along


def widen(seams: dict[tuple[Exact, Exact], Reach], normal: tuple[Exact, Exact], reach: Reach) -> None:
    """Add seams of one direction; normals that point opposite ways are one direction."""
    (x, y), (low, high) = normal, reach
    if x < 0 or (x == 0 and y < 0):
        x, y, low, high = -x, -y, -high, -low
    before = seams.get((x, y))
    seams[x, y] = (low, high) if before is None else (min(low, before[0]), max(high, before[1]))


def _moved(pushes: Sequence[tuple[tuple[Exact, Exact], Exact]]) -> tuple[Exact, Exact]:
    """The move (x, y) that comes nearest to move · normal = push for all pushes: the sum of the squares is least.

    With one direction only it is the mean push along that normal.
    """
    if not any(push for _, push in pushes):
        return NOTHING, NOTHING
    (nx, ny), push = pushes[0]
    if len(pushes) == 1:
        return push * nx, push * ny
    xx, xy, yy, px, py = NOTHING, NOTHING, NOTHING, NOTHING, NOTHING  # type: Exact, Exact, Exact, Exact, Exact
    for (nx, ny), push in pushes:
        xx, xy, yy = xx + nx * nx, xy + nx * ny, yy + ny * ny
        px, py = px + push * nx, py + push * ny
    turn = xx * yy - xy * xy
    if to_float(turn) > SQUARE_NEAR:
        return (px * yy - py * xy) / turn, (py * xx - px * xy) / turn
    return px / len(pushes), py / len(pushes)
