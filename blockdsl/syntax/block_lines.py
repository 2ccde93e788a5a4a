"""What may stand below a `unit` or a `block`: for each line its node, how it is read, and its row in the table.

A new line of a block is its rule in `grammars/line.lark` and a class and a row here; a class whose fields have the
names and kinds of what the rule has is read without a function of its own (`line_kind.py`).
"""

from __future__ import annotations

from typing import Final, Literal, cast

from msgspec import Struct

from blockdsl.diagnostics import Span, nearest_word
from blockdsl.geometry import Exact
from blockdsl.syntax.atoms import LineAt, number_issue
from blockdsl.syntax.cells import build_cells
from blockdsl.syntax.issue import IssueFound, LineFix, SyntaxIssue
from blockdsl.syntax.line_kind import LineKind
from blockdsl.syntax.nodes import Cell, LengthLiteral, Number, Quoted, Text, UnreadableLine, Word
from blockdsl.syntax.numbers import NumberFault, read_place
from blockdsl.syntax.tree import LineTree, find, tokens_of, trees_of

Pressed = Literal["open", "as it nests", "toward dark"]


# --- the grid ----------------------------------------------------------------------------------


class Row(Struct, frozen=True):
    """One row of cells, left to right."""

    span: Span
    cells: tuple[Cell, ...]


def _row(at: LineAt, span: Span, tree: LineTree) -> Row:
    return Row(span, build_cells(at, cast("list[LineTree]", tree.children[1:])))


class Columns(Struct, frozen=True):
    """Relative widths of the columns."""

    span: Span
    numbers: tuple[Number, ...]


class Heights(Struct, frozen=True):
    """Relative heights of the rows."""

    span: Span
    numbers: tuple[Number, ...]


class GridExtent(Struct, frozen=True):
    """`grid 4 x 4`: the extent that free patches fill."""

    span: Span
    across: Number
    down: Number


class Corner(Struct, frozen=True):
    """One corner of a free patch in grid coordinates, y downward."""

    span: Span
    x: Exact
    y: Exact


class FreePatch(Struct, frozen=True):
    """`patch FABRIC at X,Y X,Y X,Y`."""

    span: Span
    fabric: Word
    corners: tuple[Corner, ...]


def _patch(at: LineAt, span: Span, tree: LineTree) -> FreePatch:
    corners = []
    for token in tokens_of(tree, "PLACE"):
        try:
            corners.append(Corner(at.span(token), *read_place(token)))
        except NumberFault as fault:
            raise number_issue(fault, token) from None
    return FreePatch(span, at.word(tokens_of(tree, "NAME")[0]), tuple(corners))


class Applique(Struct, frozen=True):
    """`applique FABRIC "path" turn-under 1/4 in`, or `raw edge` behind it; with neither the usual is turned under."""

    span: Span
    fabric: Word
    path: Quoted
    turn_under: LengthLiteral | None = None
    raw_edge: bool = False


# --- sizes and seams ---------------------------------------------------------------------------


class Size(Struct, frozen=True):
    """`size 12 in`, `size 12 x 9 in`; finished. Both lengths carry the same unit."""

    span: Span
    width: LengthLiteral
    height: LengthLiteral


class Seam(Struct, frozen=True):
    """`seam 1/4 in`."""

    span: Span
    length: LengthLiteral


class Measure(Struct, frozen=True):
    """`measure 1/8 in`: what the ruler reads."""

    span: Span
    length: LengthLiteral


class Trim(Struct, frozen=True):
    """`trim 1/8 in`: cut that much larger and trim down."""

    span: Span
    length: LengthLiteral


class Sizes(Struct, frozen=True):
    """`sizes 6 9 12 in`: further finished widths of the block; at least one."""

    span: Span
    widths: tuple[LengthLiteral, ...]


# --- choices -----------------------------------------------------------------------------------


class Make(Struct, frozen=True):
    """`make geese as four at a time`; `method` is the words after `as`, joined by single spaces.

    `count` is that of `make 4 of geese as …`.
    """

    span: Span
    what: Word
    method: Word
    count: Number | None = None


def _make(at: LineAt, span: Span, tree: LineTree) -> Make:
    what, *method = (at.word(token) for token in tokens_of(tree, "NAME"))
    count = find(tree, "NUMBER")
    number = at.number(count) if count else None
    return Make(span, what, Word(method[0].span.to(method[-1].span), " ".join(word.text for word in method)), number)


class Grain(Struct, frozen=True):
    """`grain B long edge`: which edges of the patches of a letter lie on the straight grain."""

    span: Span
    letter: Word
    edge: Word


def _grain(at: LineAt, span: Span, tree: LineTree) -> Grain:
    return Grain(span, at.word(tokens_of(tree, "NAME")[0]), at.word(tokens_of(tree, "LONG", "SHORT")[0]))


class Compare(Struct, frozen=True):
    """`compare methods`: print every way in which each unit can be made."""

    span: Span


class Colourway(Struct, frozen=True):
    """`colourway "Night" fog=slate slate=fog`."""

    span: Span
    name: Text
    changes: tuple[tuple[Word, Word], ...]


def _colourway(at: LineAt, span: Span, tree: LineTree) -> Colourway:
    changes = []
    for change in trees_of(tree, "change"):
        before, after = tokens_of(change, "NAME")
        changes.append((at.word(before), at.word(after)))
    return Colourway(span, at.text(tokens_of(tree, "TEXT")[0]), tuple(changes))


# --- what is printed ---------------------------------------------------------------------------


class Note(Struct, frozen=True):
    """`note "Press before you trim." at foot`: words printed in the step that makes a unit, or with the block."""

    span: Span
    text: Text
    place: Word | None = None


class See(Struct, frozen=True):
    """`see "https://…" "The foot, sewn" at foot`: its words and its QR code are printed in the step or above."""

    span: Span
    address: Quoted
    text: Text
    place: Word | None = None


def _see(at: LineAt, span: Span, tree: LineTree) -> See:
    return See(span, *_at_place(at, tree))


def _at_place(at: LineAt, tree: LineTree) -> tuple[Quoted, Text, Word | None]:
    """What is shown, what is said of it, and the unit whose step it stands in."""
    shown, said = tokens_of(tree, "TEXT")
    place = next(iter(tokens_of(tree, "NAME")), None)
    return at.quoted(shown), at.text(said), at.word(place) if place is not None else None


class PhotoLine(Struct, frozen=True):
    """`picture "foot.jpg" "How it should look" at foot`: a file of pixels, and what it shows."""

    span: Span
    path: Quoted
    text: Text
    place: Word | None = None


def _picture(at: LineAt, span: Span, tree: LineTree) -> PhotoLine:
    return PhotoLine(span, *_at_place(at, tree))


class Level(Struct, frozen=True):
    """`level "Confident beginner"`: for whom the block is."""

    span: Span
    text: Text


class Time(Struct, frozen=True):
    """`time "2 hours"`: how long it takes to make one."""

    span: Span
    text: Text


class Family(Struct, frozen=True):
    """`family nine-patch`: the kind of block that it is, in one word."""

    span: Span
    name: Word


class Origin(Struct, frozen=True):
    """`source "A list of 1915."`: where the block or its name comes from."""

    span: Span
    text: Text


# --- the designer's own checks -----------------------------------------------------------------


class ExpectCut(Struct, frozen=True):
    """`expect cut fog 4 squares 2 7/8`, with `3 x 5` for rectangles and strips, `once` or `twice` when asked."""

    span: Span
    fabric: Word
    count: Number
    piece: Word
    width: Number
    height: Number
    subcut: Word | None


def _expect_cut(at: LineAt, span: Span, tree: LineTree) -> ExpectCut:
    fabric, piece = (at.word(token) for token in tokens_of(tree, "NAME"))
    count, *sides = (at.number(token) for token in tokens_of(tree, "NUMBER"))
    subcut = find(tree, "ONCE", "TWICE")
    return ExpectCut(span, fabric, count, piece, sides[0], sides[-1], at.word(subcut) if subcut else None)


class ExpectUnit(Struct, frozen=True):
    """`expect unit beam 4 x 2 in count 4`; finished size, the count only when asked."""

    span: Span
    unit: Word
    width: LengthLiteral
    height: LengthLiteral
    count: Number | None


class ExpectFinished(Struct, frozen=True):
    """`expect finished 12 in`."""

    span: Span
    width: LengthLiteral
    height: LengthLiteral


class ExpectSymmetric(Struct, frozen=True):
    """`expect symmetric by half turn`; without a `way` in every way that its shape can be.

    `expect no symmetry` is not `asked` for anything: it says that none is meant.
    """

    span: Span
    way: str = ""
    asked: bool = True


SYMMETRIES: Final = ("by quarter turn", "by half turn", "left to right", "top to bottom")


def _expect_symmetric(_at: LineAt, span: Span, tree: LineTree) -> ExpectSymmetric:
    words = tokens_of(tree, "NAME")
    way = " ".join(words)
    if words and way not in SYMMETRIES:
        first, last = cast("int", words[0].start_pos), cast("int", words[-1].end_pos)
        near = nearest_word(way, SYMMETRIES)
        fixes = (LineFix(first, last, near),) if near else ()
        advice = f"a block can be symmetric {', '.join(f'`{each}`' for each in SYMMETRIES)}"
        raise IssueFound(SyntaxIssue("symmetry-unknown", first, last, advice, {"text": way}, fixes))
    return ExpectSymmetric(span, way)


def _expect_no_symmetry(_at: LineAt, span: Span, _tree: LineTree) -> ExpectSymmetric:
    return ExpectSymmetric(span, asked=False)


# --- a maker's own way, in a maker, a book, a quilt or a block ---------------------------------


class Press(Struct, frozen=True):
    """`press open`, `press as it nests` or `press toward dark`."""

    span: Span
    how: Pressed


_PRESSED: Final[dict[str, Pressed]] = {
    "open": "open",
    "as it nests": "as it nests",
    "toward dark": "toward dark",
    "toward the dark": "toward dark",
    "towards dark": "toward dark",
    "towards the dark": "toward dark",
}


def _press(_at: LineAt, span: Span, tree: LineTree) -> Press:
    words = tokens_of(tree, "NAME")
    said = " ".join(words)
    if said not in _PRESSED:
        advice = "seams are pressed `open`, `as it nests` or `toward dark`"
        first, last = cast("int", words[0].start_pos), cast("int", words[-1].end_pos)
        near = nearest_word(said, _PRESSED)
        fixes = (LineFix(first, last, near),) if near else ()
        raise IssueFound(SyntaxIssue("pressing-unknown", first, last, advice, {"text": said}, fixes))
    return Press(span, _PRESSED[said])


class Language(Struct, frozen=True):
    """`language en-GB`: what the pages are in."""

    span: Span
    tag: Word


class FootLine(Struct, frozen=True):
    """`line "© 2026 Marsh Street Patterns"`: printed at the foot of every page."""

    span: Span
    text: Text


class MakerLink(Struct, frozen=True):
    """`link "https://marsh-street.example"`: the maker's page on the web."""

    span: Span
    address: Quoted


class Accent(Struct, frozen=True):
    """`colour #8a2b2b`: the one colour of the pages that is no fabric's, in lower case."""

    span: Span
    colour: str


def _accent(_at: LineAt, span: Span, tree: LineTree) -> Accent:
    return Accent(span, tokens_of(tree, "COLOUR")[0].lower())


MakerChoice = Press | Language | FootLine | MakerLink | Accent

# --- the table ---------------------------------------------------------------------------------

UnitLine = Row | Columns | Heights | GridExtent | FreePatch | Applique | Note | UnreadableLine
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
    | MakerChoice
    | See
    | PhotoLine
    | Level
    | Time
    | ExpectCut
    | ExpectUnit
    | ExpectFinished
    | ExpectSymmetric
)

MAKER_KINDS: Final = (
    LineKind(
        "press", "maker", "`press open`, `press as it nests` or `press toward dark`", {"press": _press}, once=True
    ),
    LineKind(
        "language",
        "maker",
        "`language en-US`, `language en-GB`, `language de` or `language fr`",
        {"language": Language},
        once=True,
    ),
    LineKind("line", "maker", '`line "© 2026 Marsh Street Patterns"`', {"foot_line": FootLine}),
    LineKind(
        "colour",
        "maker",
        '`colour #8a2b2b` for the pages; cloth is `fabric fog "Harbour fog" #dfe3e0`',
        {"accent": _accent},
        also=("color",),
        once=True,
    ),
    LineKind("link", "maker", '`link "https://marsh-street.example"`', {"maker_link": MakerLink}, once=True),
)
"""Lines of a maker that may stand in a book, a quilt or a block too, where they win."""

BLOCK_KINDS: Final = (
    LineKind("row", "grid", "`row fog fog/lantern (geese lantern on fog)> -`", {"row": _row}),
    LineKind("columns", "grid", "`columns 1 2 1`", {"columns": Columns}, once=True),
    LineKind("heights", "grid", "`heights 1 2 1`", {"heights": Heights}, once=True),
    LineKind("grid", "grid", "`grid 4 x 4`", {"grid": GridExtent}, once=True),
    LineKind("patch", "grid", "`patch fog at 0,0 2,0 0,2`", {"patch": _patch}),
    LineKind(
        "applique",
        "grid",
        '`applique fog "M1 1 H3 V3 H1 Z"`, with `turn-under 1/4 in` or `raw edge` behind it if it is not usual',
        {"applique": Applique},
    ),
    LineKind("note", "grid", '`note "Press toward the dark."` or `note "Trim it first." at foot`', {"note": Note}),
    LineKind("size", "block", "`size 12 in` or `size 12 x 9 in`", {"size": Size}, once=True),
    LineKind("seam", "block", "`seam 1/4 in`", {"seam": Seam}, once=True),
    LineKind("measure", "block", "`measure 1/8 in`", {"measure": Measure}, once=True),
    LineKind("trim", "block", "`trim 1/8 in`", {"trim": Trim}, once=True),
    LineKind("sizes", "block", "`sizes 6 9 12 in`", {"block_sizes": Sizes}),
    LineKind("make", "block", "`make half as two at a time` or `make 4 of half as two at a time`", {"make": _make}),
    LineKind("grain", "block", "`grain B long edge` or `grain B short edges`", {"grain": _grain}),
    LineKind("compare", "block", "`compare methods`", {"compare": Compare}),
    LineKind(
        "colourway",
        "block",
        '`colourway "Night" fog=slate slate=fog`',
        {"colourway": _colourway},
        also=("colorway",),
        former=("colouring", "coloring"),
    ),
    LineKind("see", "block", '`see "https://marsh-street.example/foot" "The foot, sewn" at foot`', {"see": _see}),
    LineKind("picture", "block", '`picture "foot.jpg" "How it should look" at foot`', {"picture": _picture}),
    LineKind("level", "block", '`level "Confident beginner"`', {"level": Level}, once=True),
    LineKind("time", "block", '`time "2 hours"`', {"time": Time}, once=True),
    LineKind("family", "block", "`family nine-patch`", {"family": Family}, once=True),
    LineKind("source", "block", '`source "Listed in a book of 1915."`', {"source": Origin}),
    LineKind(
        "expect",
        "block",
        "`expect cut fog 4 squares 2 7/8`, `expect unit beam 4 x 2 in count 4`, `expect finished 12 in` or "
        "`expect symmetric`",
        {
            "expect_cut": _expect_cut,
            "expect_unit": ExpectUnit,
            "expect_finished": ExpectFinished,
            "expect_symmetric": _expect_symmetric,
            "expect_no_symmetry": _expect_no_symmetry,
        },
    ),
)
