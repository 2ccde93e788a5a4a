"""What a block file says, before anything is looked up. Every node knows its place in the text."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from blockdsl.diagnostics import Source, Span
from blockdsl.geometry import Exact
from blockdsl.syntax.ast_quilt import QuiltOwnLine

LengthUnit = Literal["in", "cm", "mm"]
Turn = Literal[">", "<", "~"]
Pressed = Literal["open", "as it nests", "toward dark"]


@dataclass(frozen=True, slots=True)
class Word:
    """A bare word: a name, or a word of the trade such as `on` or `with`."""

    span: Span
    text: str


@dataclass(frozen=True, slots=True)
class Text:
    """Quoted text, without its quotes."""

    span: Span
    text: str


@dataclass(frozen=True, slots=True)
class Number:
    """A rational number: `3`, `1/2`, `1 1/2`, `2.5`."""

    span: Span
    value: Fraction


@dataclass(frozen=True, slots=True)
class LengthLiteral:
    """A number with its unit, as written; the value is in that unit."""

    span: Span
    value: Fraction
    unit: LengthUnit


@dataclass(frozen=True, slots=True)
class Damaged:
    """A line that could not be read; it has been reported. What holds it must not be judged further.

    `name` is what the line would have declared, when that much could be read, so that a later use of the
    name is no second problem.
    """

    span: Span
    keyword: str
    name: str | None = None


# --- cells -------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Continue:
    """`-` goes on with the cell on the left, `|` with the cell above."""

    span: Span
    toward: Literal["left", "above"]


@dataclass(frozen=True, slots=True)
class NameCell:
    """A fabric or a named unit."""

    span: Span
    name: Word
    turns: tuple[Turn, ...]


@dataclass(frozen=True, slots=True)
class PairCell:
    r"""`fog/lantern` or `fog\lantern`: two triangles, the left word left of the line."""

    span: Span
    left: Word
    right: Word
    slope: Literal["/", "\\"]
    turns: tuple[Turn, ...]


@dataclass(frozen=True, slots=True)
class ShapeCall:
    """A shape and its words, as written: `geese lantern on fog`; each shape reads its own words."""

    span: Span
    shape: Word
    words: tuple[Word | Number, ...]


@dataclass(frozen=True, slots=True)
class ShapeCell:
    """A shape in brackets."""

    span: Span
    call: ShapeCall
    turns: tuple[Turn, ...]


Cell = Continue | NameCell | PairCell | ShapeCell


# --- lines inside a unit or a block -----------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Row:
    """One row of cells, left to right."""

    span: Span
    cells: tuple[Cell, ...]


@dataclass(frozen=True, slots=True)
class Columns:
    """Relative widths of the columns."""

    span: Span
    numbers: tuple[Number, ...]


@dataclass(frozen=True, slots=True)
class Heights:
    """Relative heights of the rows."""

    span: Span
    numbers: tuple[Number, ...]


@dataclass(frozen=True, slots=True)
class GridExtent:
    """`grid 4 x 4`: the extent that free patches fill."""

    span: Span
    across: Number
    down: Number


@dataclass(frozen=True, slots=True)
class Corner:
    """One corner of a free patch in grid coordinates, y downward."""

    span: Span
    x: Exact
    y: Exact


@dataclass(frozen=True, slots=True)
class FreePatch:
    """`patch FABRIC at X,Y X,Y X,Y`."""

    span: Span
    fabric: Word
    corners: tuple[Corner, ...]


@dataclass(frozen=True, slots=True)
class Applique:
    """`applique FABRIC "path" turn-under 1/4 in`, or `raw edge` behind it; with neither the usual is turned under."""

    span: Span
    fabric: Word
    path: Text
    turn_under: LengthLiteral | None = None
    raw_edge: bool = False


@dataclass(frozen=True, slots=True)
class Size:
    """`size 12 in`, `size 12 x 9 in`; finished. Both lengths carry the same unit."""

    span: Span
    width: LengthLiteral
    height: LengthLiteral


@dataclass(frozen=True, slots=True)
class Seam:
    """`seam 1/4 in`."""

    span: Span
    length: LengthLiteral


@dataclass(frozen=True, slots=True)
class Measure:
    """`measure 1/8 in`: what the ruler reads."""

    span: Span
    length: LengthLiteral


@dataclass(frozen=True, slots=True)
class Trim:
    """`trim 1/8 in`: cut that much larger and trim down."""

    span: Span
    length: LengthLiteral


@dataclass(frozen=True, slots=True)
class Grain:
    """`grain B long edge`: which edges of the patches of a letter lie on the straight grain."""

    span: Span
    letter: Word
    edge: Word


@dataclass(frozen=True, slots=True)
class Compare:
    """`compare methods`: print every way in which each unit can be made."""

    span: Span


@dataclass(frozen=True, slots=True)
class Sizes:
    """`sizes 6 9 12 in`: further finished widths at which the block is told; never none."""

    span: Span
    widths: tuple[LengthLiteral, ...]


@dataclass(frozen=True, slots=True)
class Make:
    """`make geese as four at a time`; `method` is the words after `as`, joined by single spaces.

    `count` is that of `make 4 of geese as …`.
    """

    span: Span
    what: Word
    method: Word
    count: Number | None = None


@dataclass(frozen=True, slots=True)
class Colourway:
    """`colourway "Night" fog=slate slate=fog`."""

    span: Span
    name: Text
    changes: tuple[tuple[Word, Word], ...]


@dataclass(frozen=True, slots=True)
class ExpectCut:
    """`expect cut fog 4 squares 2 7/8`, with `3 x 5` for rectangles and strips, `once` or `twice` when asked."""

    span: Span
    fabric: Word
    count: Number
    piece: Word
    width: Number
    height: Number
    subcut: Word | None


@dataclass(frozen=True, slots=True)
class ExpectUnit:
    """`expect unit beam 4 x 2 in count 4`; finished size, the count only when asked."""

    span: Span
    unit: Word
    width: LengthLiteral
    height: LengthLiteral
    count: Number | None


@dataclass(frozen=True, slots=True)
class ExpectFinished:
    """`expect finished 12 in`."""

    span: Span
    width: LengthLiteral
    height: LengthLiteral


@dataclass(frozen=True, slots=True)
class Note:
    """Words printed with the block."""

    span: Span
    text: Text


@dataclass(frozen=True, slots=True)
class Family:
    """`family nine-patch`: the kind of block that it is, in one word."""

    span: Span
    name: Word


@dataclass(frozen=True, slots=True)
class Origin:
    """`source "A list of 1915."`: where the block or its name comes from."""

    span: Span
    text: Text


@dataclass(frozen=True, slots=True)
class Press:
    """`press open`, `press as it nests` or `press toward dark`."""

    span: Span
    how: Pressed


@dataclass(frozen=True, slots=True)
class Language:
    """`language en-GB`: what the pages are in."""

    span: Span
    tag: Word


UnitLine = Row | Columns | Heights | GridExtent | FreePatch | Applique | Note | Damaged
BlockLine = (
    UnitLine
    | Size
    | Seam
    | Measure
    | Trim
    | Sizes
    | Make
    | Grain
    | Compare
    | Colourway
    | Family
    | Origin
    | Press
    | Language
    | ExpectCut
    | ExpectUnit
    | ExpectFinished
)


# --- lines inside a book -----------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class By:
    """`by "The maker"`."""

    span: Span
    maker: Text


@dataclass(frozen=True, slots=True)
class Paper:
    """`paper letter`, `paper roll 36 in`; a roll alone has a width."""

    span: Span
    name: Word
    width: LengthLiteral | None


@dataclass(frozen=True, slots=True)
class Chapter:
    """`chapter "Lights"`: it lasts until the next one."""

    span: Span
    title: Text


@dataclass(frozen=True, slots=True)
class BookBlock:
    """`block "Harbour Light" sizes 6 9 12 in`: finished widths; without any the block's own size is meant."""

    span: Span
    name: Text
    widths: tuple[LengthLiteral, ...]


@dataclass(frozen=True, slots=True)
class BookQuilt:
    """`quilt "Breakwater"` in a book."""

    span: Span
    name: Text


@dataclass(frozen=True, slots=True)
class BookText:
    """`text "lights.md"`: words of the maker, in Markdown; the path is relative to this file."""

    span: Span
    path: Text


@dataclass(frozen=True, slots=True)
class Techniques:
    """`techniques`: the book ends with the ways of making that its blocks use."""

    span: Span


BookLine = By | Paper | Chapter | BookBlock | BookQuilt | BookText | Techniques | Press | Language | Damaged


@dataclass(frozen=True, slots=True)
class Font:
    """`font "My.ttf"`: a font for letters that ours lacks; the path is relative to this file."""

    span: Span
    path: Text


MakerLine = Press | Language | Font | Damaged


# --- declarations ------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Use:
    """`use "path.block"` or `use library "stars"`."""

    span: Span
    path: Text
    library: bool


@dataclass(frozen=True, slots=True)
class FabricDeclaration:
    """A colour role. `colour` is `#rrggbb` in lower case; `value` is None when it is to be worked out."""

    span: Span
    name: Word
    label: Text
    colour: str
    value: Word | None
    width: LengthLiteral | None
    directional: bool


@dataclass(frozen=True, slots=True)
class UnitDeclaration:
    """A named unit: a shape, or grid lines (`shape` is None then)."""

    span: Span
    name: Word
    shape: ShapeCall | None
    lines: tuple[UnitLine, ...]


@dataclass(frozen=True, slots=True)
class BlockDeclaration:
    """A finished block. `span` is its first line only."""

    span: Span
    name: Text
    lines: tuple[BlockLine, ...]


@dataclass(frozen=True, slots=True)
class BookDeclaration:
    """What to print, in what order. `span` is its first line only."""

    span: Span
    name: Text
    lines: tuple[BookLine, ...]


QuiltLine = QuiltOwnLine | Note | Press | Language | ExpectFinished | Damaged


@dataclass(frozen=True, slots=True)
class QuiltDeclaration:
    """Blocks set into a top. `span` is its first line only."""

    span: Span
    name: Text
    lines: tuple[QuiltLine, ...]


@dataclass(frozen=True, slots=True)
class CutterDeclaration:
    """`cutter "My 3 in squares" square 3 in`: a die or ruler of the maker's; one measure stands in both places."""

    span: Span
    label: Text
    shape: Word
    width: LengthLiteral
    height: LengthLiteral


@dataclass(frozen=True, slots=True)
class MakerDeclaration:
    """`maker "Marsh Street Patterns"`: who makes the patterns, and her ways. `span` is its first line only."""

    span: Span
    name: Text
    lines: tuple[MakerLine, ...]


Declaration = (
    Use
    | FabricDeclaration
    | UnitDeclaration
    | BlockDeclaration
    | CutterDeclaration
    | QuiltDeclaration
    | BookDeclaration
    | MakerDeclaration
    | Damaged
)


@dataclass(frozen=True, slots=True)
class File:
    """All declarations of one text, in order."""

    source: Source
    declarations: tuple[Declaration, ...]
