"""What a file declares: for each first line its node, how it is read, and its row in the table."""

from __future__ import annotations

from typing import Final, cast

from lark import Token
from msgspec import Struct

from blockdsl.diagnostics import Source, Span, nearest_word
from blockdsl.syntax.atoms import LineAt, issue_at
from blockdsl.syntax.block_lines import BlockLine, UnitLine
from blockdsl.syntax.book_lines import BookBlock, BookLine, MakerLine
from blockdsl.syntax.cells import build_shape
from blockdsl.syntax.issue import IssueFound
from blockdsl.syntax.line_kind import LineKind
from blockdsl.syntax.nodes import LengthLiteral, Quoted, ShapeCall, Text, UnreadableLine, Word
from blockdsl.syntax.quilt_lines import QuiltLine
from blockdsl.syntax.tree import LineTree, length_of, tokens_of, trees_of


class Use(Struct, frozen=True):
    """`use "path.block"` or `use library "stars"`."""

    span: Span
    path: Quoted
    library: bool


class FabricDeclaration(Struct, frozen=True):
    """A colour role. `colour` is `#rrggbb` in lower case; `value` is None when it is to be worked out."""

    span: Span
    name: Word
    label: Text
    colour: str
    value: Word | None
    width: LengthLiteral | None
    directional: bool


def _fabric(at: LineAt, span: Span, tree: LineTree) -> FabricDeclaration:
    value: Word | None = None
    width: LengthLiteral | None = None
    directional = False
    for choice in trees_of(tree, "fabric_choice"):
        first = cast("Token", choice.children[0])
        if first.type == "WIDTH":
            _not_twice(first, "width", said=width is not None)
            width = length_of(at, choice)
        elif first == "directional":
            _not_twice(first, "directional", said=directional)
            directional = True
        elif first in {"light", "medium", "dark"}:
            _not_twice(first, "the value", said=value is not None)
            value = at.word(first)
        else:
            advice = "after the colour come only `light`, `medium` or `dark`, `width 42 in` and `directional`"
            near = nearest_word(first, ("light", "medium", "dark", "width", "directional"))
            raise IssueFound(issue_at("value-unknown", first, advice, near, name=str(first)))
    name, label, colour = (tokens_of(tree, kind)[0] for kind in ("NAME", "TEXT", "COLOUR"))
    return FabricDeclaration(span, at.word(name), at.text(label), colour.lower(), value, width, directional)


def _not_twice(token: Token, what: str, *, said: bool) -> None:
    if said:
        raise IssueFound(issue_at("setting-twice", token, "leave one of them out", what=what))


class UnitDeclaration(Struct, frozen=True):
    """A named unit: a shape, or grid lines (`shape` is None then)."""

    span: Span
    name: Word
    shape: ShapeCall | None
    lines: tuple[UnitLine, ...] = ()


def _unit(at: LineAt, span: Span, tree: LineTree) -> UnitDeclaration:
    shapes = trees_of(tree, "shape")
    shape = build_shape(at, shapes[0]) if shapes else None
    return UnitDeclaration(span, at.word(tokens_of(tree, "NAME")[0]), shape)


class BlockDeclaration(Struct, frozen=True):
    """A finished block. `span` is its first line only."""

    span: Span
    name: Text
    lines: tuple[BlockLine, ...] = ()


class QuiltDeclaration(Struct, frozen=True):
    """Blocks set into a top. `span` is its first line only."""

    span: Span
    name: Text
    lines: tuple[QuiltLine, ...] = ()


class BookDeclaration(Struct, frozen=True):
    """What to print, in what order. `span` is its first line only."""

    span: Span
    name: Text
    lines: tuple[BookLine, ...] = ()


class MakerDeclaration(Struct, frozen=True):
    """`maker "Marsh Street Patterns"`: who makes the patterns, and her ways. `span` is its first line only."""

    span: Span
    name: Text
    lines: tuple[MakerLine, ...] = ()


class CutterDeclaration(Struct, frozen=True):
    """`cutter "My 3 in squares" square 3 in`: a die or ruler of the maker's; one measure stands in both places."""

    span: Span
    label: Text
    shape: Word
    width: LengthLiteral
    height: LengthLiteral


Head = (
    Use
    | FabricDeclaration
    | UnitDeclaration
    | BlockDeclaration
    | CutterDeclaration
    | QuiltDeclaration
    | BookDeclaration
    | MakerDeclaration
)
"""The first line of a declaration, and with its lines the whole of it."""

Declaration = Head | UnreadableLine


class File(Struct, frozen=True):
    """All declarations of one text, in order."""

    source: Source
    declarations: tuple[Declaration, ...]


DECLARATION_KINDS: Final = (
    LineKind("use", "file", '`use "path.block"` or `use library "stars"`', {"use": Use}),
    LineKind("fabric", "file", '`fabric fog "Harbour fog" #dfe3e0 light`', {"fabric": _fabric}),
    LineKind("unit", "file", "`unit beam = geese lantern on fog`, or `unit beam` with its rows below", {"unit": _unit}),
    LineKind(
        "block",
        "file",
        '`block "Harbour Light"`; in a book also `block "Harbour Light" sizes 6 9 12 in`',
        {"block": BlockDeclaration, "book_block": BookBlock},
    ),
    LineKind("cutter", "file", '`cutter "My 3 in squares" square 3 in`', {"cutter": CutterDeclaration}),
    LineKind("quilt", "file", '`quilt "Breakwater"`', {"quilt": QuiltDeclaration}),
    LineKind("book", "file", '`book "A Harbour Sampler"`', {"book": BookDeclaration}),
    LineKind("maker", "file", '`maker "Marsh Street Patterns"`', {"maker": MakerDeclaration}),
)
