"""From the grammar's tree of a line of a quilt to the node that the line says."""

from __future__ import annotations

from collections.abc import Callable
from typing import Final, Literal, cast

from lark import Token

from blockdsl.diagnostics import Span
from blockdsl.syntax.ast import ExpectFinished, LengthLiteral, Note, QuiltLine, Text, Turn, Word
from blockdsl.syntax.ast_quilt import (
    Alternate,
    Backing,
    Band,
    Binding,
    BlocksSize,
    ColourwayRule,
    ExpectBlocks,
    Fill,
    Pattern,
    QuiltRow,
    RowPlace,
    Sash,
    Scraps,
    SetGrid,
    SetMedallion,
    SetRows,
    Shrinkage,
    Sleeve,
    TurnRule,
    UsableWidth,
    Wadding,
    Where,
)
from blockdsl.syntax.atoms import Place, SlipFound, slip_at
from blockdsl.syntax.build import extent_of, language_of, length_of, press_of
from blockdsl.syntax.grammar import LineTree
from blockdsl.syntax.lines import RawLine


def build_quilt_line(line: RawLine, tree: LineTree) -> QuiltLine:
    """The node of one line of a quilt.

    Errors: SlipFound where a word fits the grammar but cannot stand.
    """
    return _BUILD[tree.data](Place(line.source, line.start), line.span(), tree)


# --- reading a tree ----------------------------------------------------------------------------


def _tokens(tree: LineTree, *kinds: str) -> list[Token]:
    return [child for child in tree.children if isinstance(child, Token) and child.type in kinds]


def _maybe(tree: LineTree, kind: str) -> Token | None:
    found = _tokens(tree, kind)
    return found[0] if found else None


def _tree(tree: LineTree, rule: str) -> LineTree:
    return next(child for child in tree.children if not isinstance(child, Token) and child and child.data == rule)


def _said(tree: LineTree) -> str:
    """The words of a tree that has nothing but words, joined by single spaces."""
    return " ".join(str(child) for child in tree.children)


def _name(place: Place, tree: LineTree) -> Word:
    return place.word(_tokens(tree, "NAME")[0])


def _title(place: Place, tree: LineTree) -> Text:
    return place.text(_tokens(tree, "TEXT")[0])


def _title_or_name(place: Place, tree: LineTree) -> Text | Word:
    text = _maybe(tree, "TEXT")
    return _name(place, tree) if text is None else place.text(text)


def _turns(token: Token | None) -> tuple[Turn, ...]:
    return cast("tuple[Turn, ...]", tuple(str(token))) if token is not None else ()


def _where(tree: LineTree) -> Where:
    return cast("Where", _said(_tree(tree, "where")).removeprefix("on "))


# --- the setting -------------------------------------------------------------------------------


def _set_grid(place: Place, span: Span, tree: LineTree) -> SetGrid:
    across, down = (place.number(token) for token in _tokens(tree, "NUMBER"))
    return SetGrid(span, cast("Pattern", _said(_tree(tree, "pattern"))), across, down, _title(place, tree))


def _set_rows(_place: Place, span: Span, _tree: LineTree) -> SetRows:
    return SetRows(span)


def _set_medallion(place: Place, span: Span, tree: LineTree) -> SetMedallion:
    return SetMedallion(span, _maybe(tree, "POINT") is not None, _title(place, tree))


def _quilt_row(place: Place, span: Span, tree: LineTree) -> QuiltRow:
    places = []
    for child in cast("list[LineTree]", tree.children[1:]):
        first, last = cast("Token", child.children[0]), _maybe(child, "TURNS")
        places.append(RowPlace(place.span(first, last), _title_or_name(place, child), _turns(last)))
    return QuiltRow(span, tuple(places))


def _blocks(place: Place, span: Span, tree: LineTree) -> BlocksSize:
    return BlocksSize(span, length_of(place, tree))


def _fill(place: Place, span: Span, tree: LineTree) -> Fill:
    return Fill(span, _name(place, tree))


def _alternate(place: Place, span: Span, tree: LineTree) -> Alternate:
    return Alternate(span, _title_or_name(place, tree))


def _turn(_place: Place, span: Span, tree: LineTree) -> TurnRule:
    return TurnRule(span, _turns(_maybe(tree, "MARKS")), _where(tree))


def _colourway(place: Place, span: Span, tree: LineTree) -> ColourwayRule:
    return ColourwayRule(span, _title(place, tree), _where(tree))


# --- what lies between and around --------------------------------------------------------------


def _sash(place: Place, span: Span, tree: LineTree) -> Sash:
    fabric, *posts = (place.word(token) for token in _tokens(tree, "NAME"))
    outer = _maybe(tree, "OUTER") is not None
    return Sash(span, length_of(place, tree), fabric, posts[0] if posts else None, outer)


def _border(place: Place, span: Span, tree: LineTree) -> Band:
    return _band(place, span, "border", cast("LineTree", tree.children[1]))


def _round(place: Place, span: Span, tree: LineTree) -> Band:
    return _band(place, span, "round", cast("LineTree", tree.children[1]))


def _ring(place: Place, span: Span, tree: LineTree) -> Band:
    corner = _maybe(tree, "NAME")
    what, named = _title(place, tree), place.word(corner) if corner else None
    return Band(span, "round", None, what, (), None, named, pieced=True, top_first=False, along_length=False)


def _band(place: Place, span: Span, word: Literal["border", "round"], tree: LineTree) -> Band:
    said: dict[str, Token] = {}
    corner: Word | None = None
    for choice in (child for child in tree.children if not isinstance(child, Token) and child):
        if choice.data != "choice":
            continue
        first = cast("Token", choice.children[0])
        kind = "joint" if first.type in {"BUTTED", "MITRED"} else first.type
        if kind in said:
            what = "how the corners are sewn" if kind == "joint" else f"{first}"
            raise SlipFound(slip_at("setting-twice", first, "leave one of them out", what=what))
        said[kind] = first
        if kind == "CORNERS":
            corner = _name(place, choice)
    return Band(
        span=span,
        word=word,
        width=length_of(place, tree),
        what=_title_or_name(place, tree),
        turns=_turns(_maybe(tree, "TURNS")),
        joint=_joint(said.get("joint")),
        corner=corner,
        pieced=tree.data == "pieced",
        top_first="TOP" in said,
        along_length="ALONG" in said,
    )


def _joint(token: Token | None) -> Literal["butted", "mitred"] | None:
    if token is None:
        return None
    return "butted" if token.type == "BUTTED" else "mitred"


# --- what the whole quilt takes ----------------------------------------------------------------


def _binding(place: Place, span: Span, tree: LineTree) -> Binding:
    return Binding(span, length_of(place, tree), _name(place, tree), _maybe(tree, "BIAS") is not None)


def _backing(place: Place, span: Span, tree: LineTree) -> Backing:
    lengths: dict[str, LengthLiteral] = {}
    for over in (child for child in tree.children if not isinstance(child, Token) and child):
        first = cast("Token", over.children[0])
        if first.type in lengths:
            raise SlipFound(slip_at("setting-twice", first, "leave one of them out", what=str(first)))
        lengths[first.type] = length_of(place, over)
    return Backing(span, _name(place, tree), lengths.get("OVERAGE"), lengths.get("WIDTH"))


def _wadding(place: Place, span: Span, tree: LineTree) -> Wadding:
    return Wadding(span, length_of(place, tree) if _maybe(tree, "OVERAGE") else None)


def _sleeve(place: Place, span: Span, tree: LineTree) -> Sleeve:
    return Sleeve(span, length_of(place, tree), _name(place, tree))


def _scraps(place: Place, span: Span, tree: LineTree) -> Scraps:
    return Scraps(span, _name(place, tree), place.number(_tokens(tree, "NUMBER")[0]))


def _usable(place: Place, span: Span, tree: LineTree) -> UsableWidth:
    return UsableWidth(span, length_of(place, tree))


def _shrinkage(place: Place, span: Span, tree: LineTree) -> Shrinkage:
    return Shrinkage(span, place.number(_tokens(tree, "NUMBER")[0]))


def _note(place: Place, span: Span, tree: LineTree) -> Note:
    return Note(span, _title(place, tree))


def _expect_finished(place: Place, span: Span, tree: LineTree) -> ExpectFinished:
    return ExpectFinished(span, *extent_of(place, tree))


def _expect_blocks(place: Place, span: Span, tree: LineTree) -> ExpectBlocks:
    return ExpectBlocks(span, _title(place, tree), place.number(_tokens(tree, "NUMBER")[0]))


_BUILD: Final[dict[str, Callable[[Place, Span, LineTree], QuiltLine]]] = {
    "set_grid": _set_grid,
    "set_rows": _set_rows,
    "set_medallion": _set_medallion,
    "quilt_row": _quilt_row,
    "blocks": _blocks,
    "fill": _fill,
    "alternate": _alternate,
    "turn": _turn,
    "colourway": _colourway,
    "sash": _sash,
    "border": _border,
    "round": _round,
    "ring": _ring,
    "binding": _binding,
    "backing": _backing,
    "wadding": _wadding,
    "sleeve": _sleeve,
    "scraps": _scraps,
    "usable": _usable,
    "shrinkage": _shrinkage,
    "note": _note,
    "press": press_of,
    "language": language_of,
    "expect_finished": _expect_finished,
    "expect_blocks": _expect_blocks,
}
