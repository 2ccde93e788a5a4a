"""The measures that a technique speaks of."""

from __future__ import annotations

from collections.abc import Mapping

from msgspec import Struct

from blockdsl.geometry import Exact, square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.fabric import RulerUnit
from blockdsl.sewing.message import CutArgument, Length, SizeArgument

Extent = tuple[Exact, Exact]
ROOT_TWO = square_root(2)


class Measures(Struct, frozen=True):
    """One unit of a technique: its sizes, and what is cut for one making.

    `cuts` gives for each role of the shape what the ruler reads (width, height) and how many pieces; of strips the
    width of the strip and the width of its segments. `dark` are the roles whose fabric is the darker one; `counts`
    what the shape counts (rows and columns, strips); `corners` which corners have a patch; `radius` that of
    its curved seam; `made` is the finished size of the unit that is made, where the pictures show another;
    `open_seams` says that seams are pressed open; `squared_up` is what a strip set is cut longer for squaring up, the
    first time and each time again.
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
    open_seams: bool = False
    squared_up: Extent = (Fraction(0), Fraction(0))

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

    @property
    def unfinished(self) -> Extent:
        """What the unit measures before it is joined."""
        return self.width + 2 * self.seam, self.height + 2 * self.seam

    @property
    def size(self) -> SizeArgument:
        """What the unit should measure."""
        return SizeArgument(*self.unfinished)

    @property
    def allowance(self) -> Length:
        """The seam allowance, to be written."""
        return Length(self.seam)

    @property
    def made_size(self) -> SizeArgument:
        """What the unit that is made should measure."""
        width, height = self.made or self.finished
        return SizeArgument(width + 2 * self.seam, height + 2 * self.seam)

    def piece(self, role: int) -> CutArgument:
        """What is cut for a role."""
        return CutArgument(*self.cuts[role][0])
