"""The measures that a technique speaks of, and how they are said."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from blockdsl.geometry import Exact, floor_to, square_root
from blockdsl.model.fabric import RulerUnit
from blockdsl.model.lengths import write_length

Extent = tuple[Exact, Exact]
ROOT_TWO = square_root(2)


_READABLE = {"in": 64, "cm": 100}
_NEAREST = {"in": Fraction(1, 16), "cm": Fraction(1, 10)}


def _told(length: Exact, unit: RulerUnit) -> str:
    """The length itself, or "about" the nearest that a ruler shows when no short number states it."""
    if isinstance(length, Fraction) and _READABLE[unit] % length.denominator == 0:
        return write_length(length, unit)
    step = _NEAREST[unit]
    return f"about {write_length(floor_to(length + step / 2, step), unit)}"


@dataclass(frozen=True, slots=True)
class Measures:
    """One unit of a technique: its sizes, and what is cut for one making.

    `cuts` gives for each role of the shape what the ruler reads (width, height) and how many pieces; of strips the
    width of the strip and the width of its segments. `dark` are the roles whose fabric is the darker one; `counts`
    what the shape counts (rows and columns, strips); `corners` which corners have a patch; `radius` that of
    its curved seam; `made` is the finished size of the unit that is made, where the pictures show another.
    """

    unit: RulerUnit
    seam: Fraction
    finished: Extent
    cuts: Mapping[int, tuple[Extent, int]]
    dark: frozenset[int] = frozenset()
    counts: tuple[int, ...] = ()
    corners: tuple[str, ...] = ()
    radius: Exact | None = None
    made: Extent | None = None

    @property
    def width(self) -> Exact:
        """Finished width."""
        return self.finished[0]

    @property
    def height(self) -> Exact:
        """Finished height."""
        return self.finished[1]

    @property
    def slant(self) -> Exact:
        """What a seam allowance measures along an edge that it crosses at 45 degrees: allowance × √2."""
        return self.seam * ROOT_TWO

    def side(self, role: int) -> Exact:
        """The longer cut side of the role's piece."""
        return max(self.cuts[role][0])

    def cut(self, role: int) -> Extent:
        """Both cut sides of the role's piece."""
        return self.cuts[role][0]

    def say(self, length: Exact) -> str:
        """`2 7/8 in`."""
        return f"{_told(length, self.unit)} {self.unit}"

    def say_size(self, extent: Sequence[Exact]) -> str:
        """`3 1/2 × 6 1/2 in`; a square too says both sides, so that nobody takes one for the other."""
        return f"{_told(extent[0], self.unit)} × {_told(extent[1], self.unit)} {self.unit}"

    def say_piece(self, role: int) -> str:
        """`3 7/8 in square`, `3 1/2 × 6 1/2 in rectangle`."""
        first, second = self.cuts[role][0]
        return f"{self.say(first)} square" if first == second else f"{self.say_size((first, second))} rectangle"

    @property
    def say_seam(self) -> str:
        """The seam allowance."""
        return self.say(self.seam)

    @property
    def unfinished(self) -> Extent:
        """What the unit measures before it is joined."""
        return self.width + 2 * self.seam, self.height + 2 * self.seam

    @property
    def say_unfinished(self) -> str:
        """What the unit should measure."""
        return self.say_size(self.unfinished)

    @property
    def say_made(self) -> str:
        """What the unit that is made should measure."""
        width, height = self.made or self.finished
        return self.say_size((width + 2 * self.seam, height + 2 * self.seam))
