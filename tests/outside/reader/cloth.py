"""Patches and what is sewn of them, as outlines in the plane: turned, laid against each other, joined.

Points are complex numbers, x to the right and y downward; lengths are finished inches or centimetres. An outline runs
so that its inside lies on the side of `1j * edge`.
"""

from __future__ import annotations

from cmath import phase
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from math import pi

from tests.outside.reader.words import Refused

HAIR = 1e-4
"""Closer than this is the same point."""
TOP = "top"
"""Lies along the edge to which a note with this word is pinned."""
EITHER, OPEN = "either", "open"


@dataclass(frozen=True, slots=True)
class Edge:
    """A stretch of an outline with what lies along it: the letter, the fabric, the units that it belongs to."""

    a: complex
    b: complex
    tags: frozenset[str]
    curve: int = 0
    """Edges of one curve have one number; straight ones have none."""

    @property
    def along(self) -> complex:
        return self.b - self.a


@dataclass(frozen=True, slots=True)
class End:
    """Where a seam reaches an outline: which way it runs inward, and on which side of it the allowance lies."""

    at: complex
    into: complex
    seam: int
    side: int
    """1 where the allowance lies toward 1j * into when it is pressed toward the piece that was sewn on, else -1."""
    pressed: str | None = None
    """`on`: as `side` says; `base`: the other way; open; either; None before it is pressed."""
    curved: bool = False

    @property
    def lies(self) -> int:
        """The side where the allowance lies; 0 where it lies on both, or on either."""
        return self.side if self.pressed == "on" else -self.side if self.pressed == "base" else 0


@dataclass(frozen=True, slots=True)
class Patch:
    """A patch where it lies."""

    label: str
    fabric: str
    points: tuple[complex, ...]


@dataclass(frozen=True, slots=True)
class Cloth:
    """A patch, or patches sewn together."""

    edges: tuple[Edge, ...]
    ends: tuple[End, ...]
    parts: tuple[tuple[complex, complex, Cloth], ...] = ()
    patch: Patch | None = None

    def moved(self, turn: complex, shift: complex = 0) -> Cloth:
        """Turned about the origin and then shifted."""
        edges = tuple(Edge(edge.a * turn + shift, edge.b * turn + shift, edge.tags, edge.curve) for edge in self.edges)
        ends = tuple(replace(end, at=end.at * turn + shift, into=end.into * turn) for end in self.ends)
        return Cloth(edges, ends, ((turn, shift, self),))

    def patches(self, turn: complex = 1, shift: complex = 0) -> Iterator[Patch]:
        """All patches where they lie."""
        if self.patch:
            points = tuple(point * turn + shift for point in self.patch.points)
            yield Patch(self.patch.label, self.patch.fabric, points)
        for own_turn, own_shift, part in self.parts:
            yield from part.patches(turn * own_turn, shift + turn * own_shift)

    def tagged(self, name: str) -> Cloth:
        """The same as a unit of this name: whatever lies along its outline belongs to it."""
        return replace(self, edges=tuple(replace(edge, tags=edge.tags | {name}) for edge in self.edges))

    def box(self) -> tuple[complex, complex]:
        """The upper left and lower right corners of the upright box about it."""
        xs = [edge.a.real for edge in self.edges]
        ys = [edge.a.imag for edge in self.edges]
        return complex(min(xs), min(ys)), complex(max(xs), max(ys))

    def size(self) -> tuple[float, float]:
        low, high = self.box()
        return (high - low).real, (high - low).imag


def piece(label: str, fabric: str, points: Iterable[complex], curves: Iterable[int] = ()) -> Cloth:
    """A patch by itself."""
    corners = list(points)
    marks = list(curves) or [0] * len(corners)
    if area(corners) < 0:
        corners.reverse()
        marks = [*reversed(marks[:-1]), marks[-1]]
    tags = frozenset({label, fabric, f"{label} ({fabric})"})
    edges = tuple(Edge(a, b, tags, mark) for a, b, mark in zip(corners, corners[1:] + corners[:1], marks, strict=True))
    return Cloth(edges, (), (), Patch(label, fabric, tuple(corners)))


def area(points: list[complex]) -> float:
    return sum(cross(a, b) for a, b in zip(points, points[1:] + points[:1], strict=True)) / 2


def cross(a: complex, b: complex) -> float:
    return a.real * b.imag - a.imag * b.real


def dot(a: complex, b: complex) -> float:
    return a.real * b.real + a.imag * b.imag


def near(a: complex, b: complex) -> bool:
    return abs(a - b) < HAIR


def unit(vector: complex) -> complex:
    return vector / abs(vector)


# --- runs of an outline ---------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Run:
    """A straight stretch of an outline from one corner to the next, or a whole curve."""

    edges: tuple[Edge, ...]

    @property
    def a(self) -> complex:
        return self.edges[0].a

    @property
    def b(self) -> complex:
        return self.edges[-1].b

    @property
    def length(self) -> float:
        return abs(self.b - self.a)

    @property
    def outward(self) -> complex:
        return unit(self.b - self.a) * -1j

    @property
    def tags(self) -> frozenset[str]:
        return frozenset().union(*(edge.tags for edge in self.edges))

    @property
    def curve(self) -> int:
        return self.edges[0].curve


def runs(cloth: Cloth) -> list[Run]:
    """The straight runs and curves of an outline in their order."""
    edges = cloth.edges
    begins = [place for place in range(len(edges)) if not _goes_on(edges[place - 1], edges[place])]
    if not begins:
        raise Misfit("an outline without corners")
    found = []
    for place, begin in enumerate(begins):
        end = begins[place + 1] if place + 1 < len(begins) else begins[0] + len(edges)
        found.append(Run(tuple(edges[index % len(edges)] for index in range(begin, end))))
    return found


def _goes_on(one: Edge, other: Edge) -> bool:
    if not near(one.b, other.a):
        return False
    if one.curve or other.curve:
        return one.curve == other.curve
    a, b = unit(one.along), unit(other.along)
    return abs(cross(a, b)) < HAIR and dot(a, b) > 0


# --- joining --------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Stretch:
    """A part of a joint: from where to where along the base's outline, and what lies on each side of it."""

    a: complex
    b: complex
    on: frozenset[str]
    base: frozenset[str]
    curved: bool = False


class Misfit(Refused):
    """What is to be sewn together does not lie edge to edge."""


def shared(on: Cloth, base: Cloth) -> list[Stretch]:
    """Where two outlines lie against each other."""
    found = []
    for one in base.edges:
        along = unit(one.along)
        for other in on.edges:
            if abs(cross(along, other.a - one.a)) > HAIR or abs(cross(along, other.b - one.a)) > HAIR:
                continue
            if dot(along, other.along) >= 0:
                continue
            low = max(0.0, dot(along, other.b - one.a))
            high = min(abs(one.along), dot(along, other.a - one.a))
            if high - low > HAIR:
                found.append(Stretch(one.a + along * low, one.a + along * high, other.tags, one.tags, bool(one.curve)))
    return found


def joined(on: Cloth, base: Cloth, seam: int, along: Run | None = None) -> tuple[Cloth, list[Stretch]]:
    """Both as they lie, sewn together along an edge of the base, or wherever their outlines lie against each other.

    Errors: Misfit where they do not touch, or where one lies on the other.
    """
    stretches = [s for s in shared(on, base) if along is None or _along(s, along)]
    if not stretches:
        raise Misfit("no edges lie together")
    left = _without(on, [(s.b, s.a) for s in stretches]) + _without(base, [(s.a, s.b) for s in stretches])
    edges = _chained(left)
    ends = [end for end in (*on.ends, *base.ends) if on_outline(end.at, edges)]
    ends += _new_ends(stretches, edges, seam)
    return Cloth(tuple(edges), tuple(ends), ((1, 0, on), (1, 0, base))), stretches


def _along(stretch: Stretch, run: Run) -> bool:
    """Whether a stretch lies in a run of the base."""
    middle = (stretch.a + stretch.b) / 2
    return any(
        abs(cross(unit(edge.along), middle - edge.a)) < HAIR
        and -HAIR < dot(unit(edge.along), middle - edge.a) < abs(edge.along) + HAIR
        for edge in run.edges
    )


def closed(cloth: Cloth, seam: int) -> tuple[Cloth, list[Stretch]]:
    """Cloth with the open part of a seam sewn: where its outline lies against itself.

    Errors: Misfit where it does nowhere.
    """
    stretches: list[Stretch] = []
    for stretch in shared(cloth, cloth):
        if not any(near(stretch.a, other.b) and near(stretch.b, other.a) for other in stretches):
            stretches.append(stretch)
    if not stretches:
        raise Misfit("no seam is open")
    taken = [pair for s in stretches for pair in ((s.a, s.b), (s.b, s.a))]
    edges = _chained(_without(cloth, taken))
    ends = [end for end in cloth.ends if on_outline(end.at, edges)] + _new_ends(stretches, edges, seam)
    return Cloth(tuple(edges), tuple(ends), ((1, 0, cloth),)), stretches


def is_open(cloth: Cloth) -> bool:
    """Whether a part of a seam is still to be sewn."""
    return bool(shared(cloth, cloth))


def _without(cloth: Cloth, taken: list[tuple[complex, complex]]) -> list[Edge]:
    """What is left of an outline when stretches of it lie in a seam."""
    left = []
    for edge in cloth.edges:
        along, reach = unit(edge.along), abs(edge.along)
        gone = []
        for a, b in taken:
            if abs(cross(along, a - edge.a)) < HAIR and abs(cross(along, b - edge.a)) < HAIR:
                low, high = dot(along, a - edge.a), dot(along, b - edge.a)
                if low < high and high > HAIR and low < reach - HAIR:
                    gone.append((low, high))
        at = 0.0
        for low, high in sorted(gone):
            if low - at > HAIR:
                left.append(replace(edge, a=edge.a + along * at, b=edge.a + along * low))
            at = max(at, high)
        if reach - at > HAIR:
            left.append(replace(edge, a=edge.a + along * at))
    return left


def _chained(edges: list[Edge]) -> list[Edge]:
    """Edges put end to end as one outline."""
    rest, chain = list(edges[1:]), [edges[0]]
    while rest:
        following = [edge for edge in rest if near(edge.a, chain[-1].b)]
        if not following:
            break
        # Where an outline touches itself, the sharpest turn toward the inside stays with the same cloth.
        best = max(following, key=lambda edge: _turning(chain[-1].along, edge.along))
        chain.append(best)
        rest.remove(best)
    if rest or not near(chain[-1].b, chain[0].a):
        raise Misfit("what is sewn does not close to one outline")
    return chain


def _turning(a: complex, b: complex) -> float:
    turn = phase(b / a)
    return turn if turn < pi - HAIR else turn - 2 * pi


def on_outline(point: complex, edges: list[Edge]) -> bool:
    for edge in edges:
        along = unit(edge.along)
        reach = dot(along, point - edge.a)
        if abs(cross(along, point - edge.a)) < HAIR and -HAIR < reach < abs(edge.along) + HAIR:
            return True
    return False


def _new_ends(stretches: list[Stretch], edges: list[Edge], seam: int) -> list[End]:
    """The two ends of each straight or broken line of a seam, where they lie on the new outline."""
    ends = []
    for stretch in stretches:
        along = unit(stretch.b - stretch.a)
        # The base lies on the side of 1j * along, what was sewn on lies on the other.
        for at, into, side in ((stretch.a, along, -1), (stretch.b, -along, 1)):
            inner = any(near(at, other) for s in stretches if s is not stretch for other in (s.a, s.b))
            if not inner and on_outline(at, edges):
                ends.append(End(at, into, seam, side, curved=stretch.curved))
    return ends


# --- sameness -------------------------------------------------------------------------------------------


def pattern_of(patches: Iterable[Patch], turn: complex = 1) -> frozenset[tuple[object, ...]]:
    """Patches as they lie when turned, wherever they are: a thing that can be compared."""
    turned = [(patch, [point * turn for point in patch.points]) for patch in patches]
    left = min(point.real for _, points in turned for point in points)
    top = min(point.imag for _, points in turned for point in points)
    return frozenset(
        (patch.label, patch.fabric, frozenset(_grid(point - complex(left, top)) for point in corners(points)))
        for patch, points in turned
    )


def lying_of(cloth: Cloth) -> object:
    """How a cloth lies, wherever it is: its patches, and how the seams at its outline are pressed."""
    low, _ = cloth.box()
    ends = frozenset((_grid(end.at - low), _grid(end.into), end.lies) for end in cloth.ends if end.lies)
    top = frozenset(_grid(edge.a - low) for edge in cloth.edges if TOP in edge.tags)
    return pattern_of(cloth.patches()), ends, top


def _grid(point: complex) -> tuple[int, int]:
    return round(point.real * GRID), round(point.imag * GRID)


def corners(points: list[complex]) -> list[complex]:
    """The points of an outline at which it turns."""
    found = []
    for before, at, after in zip(points[-1:] + points[:-1], points, points[1:] + points[:1], strict=True):
        if not near(before, at) and abs(cross(unit(at - before), after - at)) > HAIR:
            found.append(at)
    return found


GRID = 487.3137
"""Steps to the inch: no fraction of an inch or centimetre lies between two of them."""


def quarter(turns: int) -> complex:
    return (1, 1j, -1, -1j)[turns % 4]
