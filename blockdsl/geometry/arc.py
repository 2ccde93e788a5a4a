"""Outlines with circular arcs: exact corners, and for each side either nothing or the circle that it bends along.

Everything that asks how patches lie (the proof of cover, the order of sewing) works on a straight twin of the outline,
in which chords take the place of arcs. What is cut, measured and drawn is the curved outline. An arc is at most a
quarter circle, and its sweep is a multiple of fifteen degrees, so that its ends and its area are exact.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Annotated, Final, NamedTuple, TypeAlias

from msgspec import Struct

from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.number import Exact, Surd, ceil_to, sign, square_root, write_exact
from blockdsl.geometry.polygon import Point, Polygon, dot, signed_area, step, translate
from blockdsl.geometry.symmetry import Symmetry
from blockdsl.record import Record, says

TWELFTHS: Final = 12
"""Arcs are counted in twelfths of a half turn: fifteen degrees each."""

_LONG: Final = 10**12

_R2, _R3, _R6 = (square_root(Fraction(n)) for n in (2, 3, 6))
_COSINES: Final[tuple[Exact, ...]] = (
    Fraction(1), (_R6 + _R2) / 4, _R3 / 2, _R2 / 2, Fraction(1, 2), (_R6 - _R2) / 4, Fraction(0),
)  # fmt: skip
"""Cosines of 0, 15, 30 … 90 degrees: half angles of those of 30 and of 45 degrees."""


def cosine(twelfths: int) -> Exact:
    """Cosine of so many times fifteen degrees, from none to a quarter turn. Errors: IndexError beyond."""
    return _COSINES[twelfths]


def sine(twelfths: int) -> Exact:
    """Sine of so many times fifteen degrees, from none to a quarter turn. Errors: IndexError beyond."""
    return _COSINES[TWELFTHS // 2 - twelfths]


class Bend(Record, frozen=True):
    """The circle that a side bends along; `hollow` when it bends into the patch instead of out of it."""

    centre: Point
    radius: Exact
    hollow: bool


Bends: TypeAlias = Annotated[
    tuple[Bend | None, ...],
    says("For each side, from a corner to the next, null where it is straight, else the circle that it bends along."),
]


class Side(NamedTuple):
    """A side from corner to corner, clockwise round the patch; `bend` is None where it is straight."""

    start: Point
    end: Point
    bend: Bend | None


class CurvedArea(Struct, frozen=True):
    """An area with curved sides, exactly: `straight` + `round` × π."""

    straight: Exact
    round: Exact

    def __add__(self, other: CurvedArea | Exact) -> CurvedArea:
        """Exact sum, also with the area of a straight patch."""
        if isinstance(other, CurvedArea):
            return CurvedArea(self.straight + other.straight, self.round + other.round)
        return CurvedArea(self.straight + other, self.round)

    __radd__ = __add__

    def __mul__(self, times: int) -> CurvedArea:
        """So many of it."""
        return CurvedArea(self.straight * times, self.round * times)

    def __str__(self) -> str:
        """As facts write it: `36-9/4pi`."""
        if not self.round:
            return write_exact(self.straight)
        amount = f"({write_exact(self.round)})" if not isinstance(self.round, Fraction) else str(abs(self.round))
        minus = isinstance(self.round, Fraction) and self.round < 0
        before = write_exact(self.straight) if self.straight else ""
        return f"{before}{'-' if minus else '+' if before else ''}{'' if amount == '1' else amount}pi"


class Curved(Struct, frozen=True):
    """A patch with curved sides: corners clockwise as seen, side i leading from corner i to the next along `bends`[i].

    Its straight twin has as many corners in the same order; where an arc is parted (the blades of a fan), a corner of
    the twin lies on the chord of the whole arc, straight below the corner here.
    """

    corners: Polygon
    bends: tuple[Bend | None, ...]

    def sides(self) -> Iterator[Side]:
        """The sides in order; the last leads back to the first corner."""
        after = (*self.corners[1:], *self.corners[:1])
        return (Side(*each) for each in zip(self.corners, after, self.bends, strict=True))

    def moved(self, dx: Exact, dy: Exact) -> Curved:
        """The outline moved by (dx, dy)."""
        bends = tuple(
            bend and Bend(Point(bend.centre.x + dx, bend.centre.y + dy), bend.radius, bend.hollow)
            for bend in self.bends
        )
        return Curved(translate(self.corners, dx, dy), bends)

    def turned(self, symmetry: Symmetry, width: Exact, height: Exact) -> Curved:
        """The outline in the turned box, clockwise again, from the same first corner (see `apply_polygon`)."""
        bends = tuple(
            bend and Bend(symmetry.apply(bend.centre, width, height), bend.radius, bend.hollow) for bend in self.bends
        )
        corners = symmetry.apply_polygon(self.corners, width, height)
        return Curved(corners, bends[::-1] if symmetry.is_mirrored else bends)

    @property
    def area(self) -> CurvedArea:
        """Area of the corners' polygon, and of the slivers between chords and arcs, added or taken off.

        Exact:  a sliver of the angle t is r²(t - sin t) / 2.
        """
        total = CurvedArea(signed_area(self.corners), Fraction(0))
        for start, end, bend in self.sides():
            if bend is not None:
                twelfths = sweep(start, end, bend)
                half = bend.radius * bend.radius / (-2 if bend.hollow else 2)
                total = total + CurvedArea(-half * sine(twelfths), half * twelfths / TWELFTHS)
        return total


def sweep(start: Point, end: Point, bend: Bend) -> int:
    """How many times fifteen degrees an arc sweeps. Errors: ValueError for an arc that this module does not know."""
    square = bend.radius * bend.radius
    along = dot(step(bend.centre, start), step(bend.centre, end))
    for twelfths, value in enumerate(_COSINES):
        if twelfths and along == square * value:
            return twelfths
    raise ValueError("an arc sweeps fifteen degrees or a multiple, up to a quarter circle")


def tidy(length: Exact) -> Exact:
    """A length; where it has no exact form that anybody would write down, rounded up to a thousandth."""
    terms = length.terms if isinstance(length, Surd) else ((1, length),)
    if all(part.denominator < _LONG for _, part in terms):
        return length
    return ceil_to(length, Fraction(1, 1000))


def bisector(start: Point, end: Point, bend: Bend) -> Point:
    """A step from the centre through the middle of an arc, twice as long as to the chord's middle."""
    one, other = step(bend.centre, start), step(bend.centre, end)
    return Point(one.x + other.x, one.y + other.y)


def reach(outline: Curved | Polygon, way: Point) -> tuple[Exact, Exact]:
    """(least, most) of the outline along a direction of any length: dot products with the step `way`.

    Exact:  the corners, and for an arc its farthest place where that lies between its ends.
    """
    corners = outline.corners if isinstance(outline, Curved) else outline
    found = [dot(corner, way) for corner in corners]
    if isinstance(outline, Curved):
        length: Exact | None = None
        for start, end, bend in outline.sides():
            if bend is None or bend.hollow:
                continue  # a hollow bend lies inside its chord
            middle = bisector(start, end, bend)
            edge = dot(middle, step(bend.centre, start))
            for sense in (1, -1):
                ahead = Point(way.x * sense, way.y * sense)
                if _between(ahead, middle, edge, bend.radius):
                    length = length or square_root(dot(way, way))
                    found.append(dot(bend.centre, way) + sense * bend.radius * length)
    return min(found), max(found)


def _between(way: Point, middle: Point, edge: Exact, radius: Exact) -> bool:
    """Whether a direction from the centre passes through an arc: no farther from its middle than its ends are.

    The cosine of the angle to the middle, `way`·`middle` / |way||middle|, is at least the ends': `edge` / r|middle|.
    """
    along = dot(way, middle)
    if sign(along) <= 0:
        return False
    return along * along * radius * radius >= edge * edge * dot(way, way)
