"""What a plan for cutting cloth says: exact lengths, in the order in which it is cut."""

from __future__ import annotations

from msgspec import Struct

from blockdsl.geometry.fraction import Fraction


class PlacedPiece(Struct, frozen=True):
    """One piece where it lies: `x` across, `y` along, from the corner of its strip; `width` and `height` as it lies."""

    key: str
    x: Fraction
    y: Fraction
    width: Fraction
    height: Fraction
    turned: bool

    @property
    def lies(self) -> tuple[Fraction, Fraction]:
        """Its size as it lies, across the cloth and along it."""
        return self.width, self.height


class StripSection(Struct, frozen=True):
    """What one sub-cut of a strip takes off: a piece, or several above one another, cut apart last.

    A piece may be lower than its strip, and in a stack narrower than its section: it is trimmed.
    """

    x: Fraction
    width: Fraction
    pieces: tuple[PlacedPiece, ...]


class Strip(Struct, frozen=True):
    """`times` strips that are cut alike, `height` along the cloth, `width` across; `left` is over at their end."""

    height: Fraction
    width: Fraction
    sections: tuple[StripSection, ...]
    times: int = 1

    @property
    def left(self) -> Fraction:
        """What is over at the end of the strip."""
        return self.width - sum((section.width for section in self.sections), Fraction(0))

    @property
    def cuts(self) -> int:
        """Cuts for one such strip: one to take it off, then its sections, their stacks, and what is trimmed."""
        count = 1
        for place, section in enumerate(self.sections):
            last = place == len(self.sections) - 1 and not self.left
            count += 0 if last else 1
            covered = sum((piece.height for piece in section.pieces), Fraction(0))
            count += len(section.pieces) - (1 if covered == self.height else 0)
            count += sum(1 for piece in section.pieces if piece.width < section.width)
        return count


class Panel(Struct, frozen=True):
    """`times` lengths of cloth for what is cut lengthwise: columns side by side, then narrower strips beside them.

    `height` along the cloth; `width` that the columns take together, the strips begin there.
    """

    height: Fraction
    width: Fraction
    columns: tuple[StripSection, ...]
    strips: tuple[Strip, ...] = ()
    times: int = 1

    @property
    def cuts(self) -> int:
        """Cuts for one such panel: to take it off, its columns and their pieces, the strips beside them."""
        columns = Strip(self.height, self.width, self.columns)
        return columns.cuts + (1 if self.strips else 0) + sum(strip.cuts * strip.times for strip in self.strips)


class ClothPlan(Struct, frozen=True):
    """A length of cloth: panels first, since they need it longest, then strips across, the highest first.

    `length`: of cloth that the plan takes. `bound`: no plan of this kind is shorter (of `stages` cuts: 2 when strips
    are sub-cut, 3 when sections are cut again; what is lengthwise side by side as here).
    """

    usable_width: Fraction
    panels: tuple[Panel, ...]
    strips: tuple[Strip, ...]
    length: Fraction
    bound: Fraction
    stages: int = 2

    @property
    def proved(self) -> bool:
        """Whether no plan of this kind can be shorter."""
        return self.length == self.bound

    @property
    def at_most_longer(self) -> Fraction:
        """By how much, at most, the plan is longer than the shortest possible."""
        return self.length - self.bound

    @property
    def cuts(self) -> int:
        """Cuts in all, when each strip is cut by itself."""
        parts: list[Panel | Strip] = [*self.panels, *self.strips]
        return sum(part.cuts * part.times for part in parts)

    @property
    def strip_count(self) -> int:
        """Strips across the whole width."""
        return sum(strip.times for strip in self.strips)


class CutSheet(Struct, frozen=True):
    """`times` sheets that are cut alike: strips, the highest first; `left` is over below them.

    `along`: the sheet lies turned a quarter, so that its length runs from left to right and the strips are cut along
    it; whether a piece is turned is still told from the weave.
    """

    strips: tuple[Strip, ...]
    left: Fraction
    along: bool = False
    times: int = 1

    @property
    def cuts(self) -> int:
        """Cuts for one such sheet; the last strip needs none where nothing is left below it."""
        return sum(strip.cuts * strip.times for strip in self.strips) - (0 if self.left else 1)


class SheetPlan(Struct, frozen=True):
    """Sheets of one size, such as fat quarters. `bound`: fewer cannot do, when each is cut into strips first."""

    sheet_width: Fraction
    sheet_length: Fraction
    sheets: tuple[CutSheet, ...]
    bound: int

    @property
    def count(self) -> int:
        """How many sheets."""
        return sum(sheet.times for sheet in self.sheets)

    @property
    def proved(self) -> bool:
        """Whether fewer sheets cannot do."""
        return self.count == self.bound
