"""What the lines of a quilt say, before anything is looked up."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal

if TYPE_CHECKING:
    from blockdsl.diagnostics import Span
    from blockdsl.syntax.ast import LengthLiteral, Number, Text, Turn, Word

Pattern = Literal["straight", "dropped columns", "on point", "strippy"]
Where = Literal["all", "every second", "odd rows", "even rows", "odd columns", "even columns"]
"""Rows and columns are counted from 1. Every second place: the second of the first row, the first of the second."""


# --- the setting -------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class SetGrid:
    """`set on point 4 x 6 of "Harbour Light"`: so many across and down."""

    span: Span
    pattern: Pattern
    across: Number
    down: Number
    block: Text


@dataclass(frozen=True, slots=True)
class SetRows:
    """`set rows`: every place is named in a row."""

    span: Span


@dataclass(frozen=True, slots=True)
class SetMedallion:
    """`set medallion of "Harbour Light"`: one block in the middle, rounds about it."""

    span: Span
    on_point: bool
    block: Text


@dataclass(frozen=True, slots=True)
class RowPlace:
    """A block by its title, or a fabric for a plain square, with its turns."""

    span: Span
    name: Text | Word
    turns: tuple[Turn, ...]


@dataclass(frozen=True, slots=True)
class QuiltRow:
    """`row "A" "B"> fog`: one row of the quilt, left to right."""

    span: Span
    places: tuple[RowPlace, ...]


@dataclass(frozen=True, slots=True)
class BlocksSize:
    """`blocks 9 in`: every block at this finished width."""

    span: Span
    width: LengthLiteral


@dataclass(frozen=True, slots=True)
class Fill:
    """`fill fog`: the fabric of half blocks, setting triangles and plain strips."""

    span: Span
    fabric: Word


@dataclass(frozen=True, slots=True)
class Alternate:
    """`alternate "Chain"` or `alternate fog`: what stands on every second place."""

    span: Span
    what: Text | Word


@dataclass(frozen=True, slots=True)
class TurnRule:
    """`turn > on even rows`."""

    span: Span
    turns: tuple[Turn, ...]
    where: Where


@dataclass(frozen=True, slots=True)
class ColourwayRule:
    """`colourway "Night" on every second`."""

    span: Span
    name: Text
    where: Where


# --- what lies between and around --------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Sash:
    """`sash 1 1/2 in slate posts lantern outer`."""

    span: Span
    width: LengthLiteral
    fabric: Word
    posts: Word | None
    outer: bool


@dataclass(frozen=True, slots=True)
class Band:
    """A `border`, or a `round` of a medallion: plain, pieced from a unit or a block, or a ring of blocks.

    `what` is the fabric of a plain one, else the unit (a word) or the block (a text). `width` is None for a ring of
    blocks. `joint` is None when nothing is said of the corners.
    """

    span: Span
    word: Literal["border", "round"]
    width: LengthLiteral | None
    what: Word | Text
    turns: tuple[Turn, ...]
    joint: Literal["butted", "mitred"] | None
    corner: Word | None
    pieced: bool
    top_first: bool
    along_length: bool


# --- what the whole quilt takes ----------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Binding:
    """`binding 2 1/4 in slate straight`: the width that its strips are cut."""

    span: Span
    width: LengthLiteral
    fabric: Word
    bias: bool


@dataclass(frozen=True, slots=True)
class Backing:
    """`backing fog overage 4 in width 108 in`."""

    span: Span
    fabric: Word
    overage: LengthLiteral | None
    width: LengthLiteral | None


@dataclass(frozen=True, slots=True)
class Wadding:
    """`wadding overage 4 in`."""

    span: Span
    overage: LengthLiteral | None


@dataclass(frozen=True, slots=True)
class Sleeve:
    """`sleeve 4 in fog`."""

    span: Span
    depth: LengthLiteral
    fabric: Word


@dataclass(frozen=True, slots=True)
class Scraps:
    """`scraps lantern from 8 fat quarters`."""

    span: Span
    fabric: Word
    prints: Number


@dataclass(frozen=True, slots=True)
class UsableWidth:
    """`fabric width 40 in usable`."""

    span: Span
    width: LengthLiteral


@dataclass(frozen=True, slots=True)
class Shrinkage:
    """`shrinkage 5 %`."""

    span: Span
    percent: Number


@dataclass(frozen=True, slots=True)
class ExpectBlocks:
    """`expect blocks "Harbour Light" 22`."""

    span: Span
    block: Text
    count: Number


QuiltOwnLine = (
    SetGrid
    | SetRows
    | SetMedallion
    | QuiltRow
    | BlocksSize
    | Fill
    | Alternate
    | TurnRule
    | ColourwayRule
    | Sash
    | Band
    | Binding
    | Backing
    | Wadding
    | Sleeve
    | Scraps
    | UsableWidth
    | Shrinkage
    | ExpectBlocks
)
"""Lines that stand in quilts alone; `note` and `expect finished` are those of blocks."""
