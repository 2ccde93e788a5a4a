"""What may stand below a `quilt`: for each line its node, how it is read, and its row in the table.

Its rules are in `grammars/quilt.lark`; some of its words begin lines of a block too and mean something else there.
"""

from __future__ import annotations

from typing import Final, Literal, cast

from lark import Token
from msgspec import Struct

from blockdsl.diagnostics import Span
from blockdsl.syntax.atoms import LineAt, issue_at
from blockdsl.syntax.block_lines import ExpectFinished, MakerChoice, Note
from blockdsl.syntax.issue import IssueFound
from blockdsl.syntax.line_kind import LineKind, node_from
from blockdsl.syntax.nodes import LengthLiteral, Number, Text, Turn, UnreadableLine, Word
from blockdsl.syntax.tree import LineTree, find, length_of, tokens_of, trees_of, turns_of

Pattern = Literal["straight", "dropped columns", "on point", "strippy"]
Where = Literal["all", "every second", "odd rows", "even rows", "odd columns", "even columns"]
"""Rows and columns are counted from 1. Every second place: the second of the first row, the first of the second."""


# --- the setting -------------------------------------------------------------------------------


class SetGrid(Struct, frozen=True):
    """`set on point 4 x 6 of "Harbour Light"`: so many across and down."""

    span: Span
    pattern: Pattern
    across: Number
    down: Number
    block: Text


def _set_grid(at: LineAt, span: Span, tree: LineTree) -> SetGrid:
    across, down = (at.number(token) for token in tokens_of(tree, "NUMBER"))
    (pattern,) = trees_of(tree, "pattern")
    return SetGrid(span, cast("Pattern", _said(pattern)), across, down, at.text(tokens_of(tree, "TEXT")[0]))


class SetCount(Struct, frozen=True):
    """`set on point of 25 "Harbour Light"`: so many blocks, the rows and columns to be found."""

    span: Span
    pattern: Pattern
    count: Number
    block: Text


def _set_count(at: LineAt, span: Span, tree: LineTree) -> SetCount:
    (pattern,) = trees_of(tree, "pattern")
    count = at.number(tokens_of(tree, "NUMBER")[0])
    return SetCount(span, cast("Pattern", _said(pattern)), count, at.text(tokens_of(tree, "TEXT")[0]))


def _said(tree: LineTree) -> str:
    """The words of a tree that has nothing but words, joined by single spaces."""
    return " ".join(str(child) for child in tree.children)


class SetRows(Struct, frozen=True):
    """`set rows`: every place is named in a row."""

    span: Span


class SetMedallion(Struct, frozen=True):
    """`set medallion of "Harbour Light"`: one block in the middle, rounds about it."""

    span: Span
    on_point: bool
    block: Text


class RowPlace(Struct, frozen=True):
    """A block by its title, or a fabric for a plain square, with its turns."""

    span: Span
    name: Text | Word
    turns: tuple[Turn, ...]


class QuiltRow(Struct, frozen=True):
    """`row "A" "B"> fog`: one row of the quilt, left to right."""

    span: Span
    places: tuple[RowPlace, ...]


def _quilt_row(at: LineAt, span: Span, tree: LineTree) -> QuiltRow:
    places = []
    for child in cast("list[LineTree]", tree.children[1:]):
        first, last = cast("Token", child.children[0]), find(child, "TURNS")
        places.append(node_from(RowPlace, at, at.span(first, last), child))
    return QuiltRow(span, tuple(places))


class BlocksSize(Struct, frozen=True):
    """`blocks 9 in`: every block at this finished width."""

    span: Span
    width: LengthLiteral


class Fill(Struct, frozen=True):
    """`fill fog`: the fabric of half blocks, setting triangles and plain strips."""

    span: Span
    fabric: Word


class Alternate(Struct, frozen=True):
    """`alternate "Chain"` or `alternate fog`: what stands on every second place."""

    span: Span
    what: Text | Word


class TurnRule(Struct, frozen=True):
    """`turn > on even rows`."""

    span: Span
    turns: tuple[Turn, ...]
    where: Where


def _turn(_at: LineAt, span: Span, tree: LineTree) -> TurnRule:
    return TurnRule(span, turns_of(find(tree, "MARKS")), _where(tree))


def _where(tree: LineTree) -> Where:
    (where,) = trees_of(tree, "where")
    return cast("Where", _said(where).removeprefix("on "))


class ColourwayRule(Struct, frozen=True):
    """`colourway "Night" on every second`."""

    span: Span
    name: Text
    where: Where


def _colourway(at: LineAt, span: Span, tree: LineTree) -> ColourwayRule:
    return ColourwayRule(span, at.text(tokens_of(tree, "TEXT")[0]), _where(tree))


# --- what lies between and around --------------------------------------------------------------


class Sash(Struct, frozen=True):
    """`sash 1 1/2 in slate posts lantern outer`."""

    span: Span
    width: LengthLiteral
    fabric: Word
    posts: Word | None
    outer: bool


class Band(Struct, frozen=True):
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


def _border(at: LineAt, span: Span, tree: LineTree) -> Band:
    return _band(at, span, "border", cast("LineTree", tree.children[1]))


def _round(at: LineAt, span: Span, tree: LineTree) -> Band:
    return _band(at, span, "round", cast("LineTree", tree.children[1]))


def _ring(at: LineAt, span: Span, tree: LineTree) -> Band:
    corner = find(tree, "NAME")
    what, named = at.text(tokens_of(tree, "TEXT")[0]), at.word(corner) if corner else None
    return Band(span, "round", None, what, (), None, named, pieced=True, top_first=False, along_length=False)


def _band(at: LineAt, span: Span, word: Literal["border", "round"], tree: LineTree) -> Band:
    given: dict[str, Token] = {}
    corner: Word | None = None
    for choice in trees_of(tree, "choice"):
        first = cast("Token", choice.children[0])
        kind = "joint" if first.type in {"BUTTED", "MITRED"} else first.type
        if kind in given:
            what = "how the corners are sewn" if kind == "joint" else f"{first}"
            raise IssueFound(issue_at("setting-twice", first, "leave one of them out", what=what))
        given[kind] = first
        if kind == "CORNERS":
            corner = at.word(tokens_of(choice, "NAME")[0])
    title = find(tree, "TEXT")
    return Band(
        span=span,
        word=word,
        width=length_of(at, tree),
        what=at.text(title) if title else at.word(tokens_of(tree, "NAME")[0]),
        turns=turns_of(find(tree, "TURNS")),
        joint=_joint(given.get("joint")),
        corner=corner,
        pieced=tree.data == "pieced",
        top_first="TOP" in given,
        along_length="ALONG" in given,
    )


def _joint(token: Token | None) -> Literal["butted", "mitred"] | None:
    if token is None:
        return None
    return "butted" if token.type == "BUTTED" else "mitred"


# --- what the whole quilt takes ----------------------------------------------------------------


class Binding(Struct, frozen=True):
    """`binding 2 1/4 in slate straight`: the width that its strips are cut."""

    span: Span
    width: LengthLiteral
    fabric: Word
    bias: bool


class Backing(Struct, frozen=True):
    """`backing fog overage 4 in width 108 in`."""

    span: Span
    fabric: Word
    overage: LengthLiteral | None
    width: LengthLiteral | None


def _backing(at: LineAt, span: Span, tree: LineTree) -> Backing:
    lengths: dict[str, LengthLiteral] = {}
    for over in trees_of(tree, "over"):
        first = cast("Token", over.children[0])
        if first.type in lengths:
            raise IssueFound(issue_at("setting-twice", first, "leave one of them out", what=str(first)))
        lengths[first.type] = length_of(at, over)
    return Backing(span, at.word(tokens_of(tree, "NAME")[0]), lengths.get("OVERAGE"), lengths.get("WIDTH"))


class Wadding(Struct, frozen=True):
    """`wadding overage 4 in`."""

    span: Span
    overage: LengthLiteral | None


class Sleeve(Struct, frozen=True):
    """`sleeve 4 in fog`."""

    span: Span
    depth: LengthLiteral
    fabric: Word


class Scraps(Struct, frozen=True):
    """`scraps lantern from 8 fat quarters`."""

    span: Span
    fabric: Word
    prints: Number


class UsableWidth(Struct, frozen=True):
    """`fabric width 40 in usable`."""

    span: Span
    width: LengthLiteral


class Shrinkage(Struct, frozen=True):
    """`shrinkage 5 %`."""

    span: Span
    percent: Number


class ExpectBlocks(Struct, frozen=True):
    """`expect blocks "Harbour Light" 22`."""

    span: Span
    block: Text
    count: Number


# --- the table ---------------------------------------------------------------------------------

QuiltOwnLine = (
    SetGrid
    | SetCount
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

QuiltLine = QuiltOwnLine | Note | MakerChoice | ExpectFinished | UnreadableLine

QUILT_OWN_KINDS: Final = (
    LineKind(
        "set",
        "quilt",
        '`set straight 4 x 6 of "Harbour Light"`, with `dropped columns`, `on point` or `strippy` for `straight`; '
        '`set straight of 24 "Harbour Light"`; `set medallion of "Harbour Light"`; or `set rows`',
        {"set_grid": _set_grid, "set_count": _set_count, "set_rows": SetRows, "set_medallion": SetMedallion},
        once=True,
    ),
    LineKind("row", "quilt", '`row "Harbour Light" "Chain"> fog`', {"quilt_row": _quilt_row}),
    LineKind(
        "blocks",
        "quilt",
        '`blocks 9 in`; a number of blocks is said where they are set, `set straight of 24 "Harbour Light"`',
        {"blocks": BlocksSize},
        once=True,
    ),
    LineKind("fill", "quilt", "`fill fog`", {"fill": Fill}, once=True),
    LineKind("alternate", "quilt", '`alternate "Chain"` or `alternate fog`', {"alternate": Alternate}, once=True),
    LineKind(
        "turn", "quilt", "`turn > on even rows`, `on odd columns`, `on every second` or `on all`", {"turn": _turn}
    ),
    LineKind(
        "colourway",
        "quilt",
        '`colourway "Night" on even rows`, `on odd columns`, `on every second` or `on all`',
        {"colourway": _colourway},
        also=("colorway",),
        former=("colouring", "coloring"),
    ),
    LineKind("sash", "quilt", "`sash 1 1/2 in slate posts lantern outer`", {"sash": Sash}, once=True),
    LineKind(
        "border",
        "quilt",
        "`border 2 in lantern mitred` or `border 3 in pieced beam corners slate`",
        {"border": _border},
    ),
    LineKind(
        "round",
        "quilt",
        '`round 2 in lantern`, `round 3 in pieced beam` or `round "Chain"`',
        {"round": _round, "ring": _ring},
    ),
    LineKind("binding", "quilt", "`binding 2 1/4 in slate straight` or `bias`", {"binding": Binding}, once=True),
    LineKind("backing", "quilt", "`backing fog overage 4 in`", {"backing": _backing}, once=True),
    LineKind("wadding", "quilt", "`wadding overage 4 in`", {"wadding": Wadding}, once=True, also=("batting",)),
    LineKind("sleeve", "quilt", "`sleeve 4 in fog`", {"sleeve": Sleeve}, once=True),
    LineKind("scraps", "quilt", "`scraps lantern from 8 fat quarters`", {"scraps": Scraps}, once=True),
    LineKind("fabric", "quilt", "`fabric width 40 in usable`", {"usable": UsableWidth}, once=True),
    LineKind("shrinkage", "quilt", "`shrinkage 5 %`", {"shrinkage": Shrinkage}, once=True),
    LineKind("note", "quilt", '`note "Press toward the dark."`', {"note": Note}),
    LineKind(
        "expect",
        "quilt",
        '`expect finished 62 x 86 in` or `expect blocks "Harbour Light" 22`',
        {"expect_finished": ExpectFinished, "expect_blocks": ExpectBlocks},
    ),
)
