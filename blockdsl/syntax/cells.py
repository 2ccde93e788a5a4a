"""The cells of a row, and a shape with its words, from the grammar's tree."""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Final, Literal, cast

from lark import Token, Tree

from blockdsl.diagnostics import Span
from blockdsl.syntax.atoms import LineAt, is_name, issue_at, normalized
from blockdsl.syntax.issue import IssueFound, SyntaxIssue
from blockdsl.syntax.nodes import (
    Cell,
    Continue,
    NameCell,
    Number,
    PairCell,
    ShapeCall,
    ShapeCell,
    Word,
)
from blockdsl.syntax.tree import LineTree, turns_of

# --- from the tree -----------------------------------------------------------------------------


def build_shape(at: LineAt, tree: LineTree) -> ShapeCall:
    """A shape and its words."""
    first, *rest = cast("list[Token]", tree.children)
    words: list[Word | Number] = []
    for token in rest:
        if token.type == "NUMBER":
            words.extend(at.numbers(token))
        elif token.type == "TIMES":
            words.append(at.times(token))
        else:
            words.append(at.word(token))
    return ShapeCall(at.span(first, rest[-1] if rest else None), at.word(first), tuple(words))


def build_cells(at: LineAt, trees: list[LineTree]) -> tuple[Cell, ...]:
    """The cells of a row; each stands apart from the next."""
    cells: list[Cell] = []
    for tree in trees:
        cell = _CELLS[tree.data](at, tree)
        if cells and cells[-1].span.stop == cell.span.start:
            start = cell.span.start - at.start
            advice = "put a space between cells"
            values = {"found": cell.span.text, "wanted": "a space"}
            raise IssueFound(SyntaxIssue("word-unexpected", start, cell.span.stop - at.start, advice, values))
        cells.append(cell)
    return tuple(cells)


def _tokens(tree: LineTree) -> list[Token]:
    return [child for child in tree.children if isinstance(child, Token)]


def _continue(at: LineAt, tree: LineTree) -> Continue:
    (token,) = _tokens(tree)
    return Continue(at.span(token), "left" if token.type == "LEFT" else "above")


def _name_cell(at: LineAt, tree: LineTree) -> NameCell:
    name, turns = tree.children
    last = cast("Token | None", turns)
    return NameCell(at.span(cast("Token", name), last), at.word(cast("Token", name)), turns_of(last))


def _pair_cell(at: LineAt, tree: LineTree) -> PairCell:
    pair, turns = cast("tuple[Token, Token | None]", tuple(tree.children))
    left, slope, right = re.split(r"([/\\])", pair)
    start = at.start + cast("int", pair.start_pos)
    for name in (left, right):
        if not is_name(name):
            raise IssueFound(issue_at("name-needs-letter", pair, "use letters, digits, `-` and `_`", name=name))
    return PairCell(
        at.span(pair, turns),
        Word(Span(at.source, start, start + len(left)), normalized(left)),
        Word(Span(at.source, start + len(left) + 1, start + len(pair)), normalized(right)),
        cast("Literal['/', '\\\\']", slope),
        turns_of(turns),
    )


def _shape_cell(at: LineAt, tree: LineTree) -> ShapeCell:
    bracket, shape, close, turns = tree.children
    last = cast("Token | None", turns) or cast("Token", close)
    call = build_shape(at, cast("Tree[Token]", shape))
    return ShapeCell(at.span(cast("Token", bracket), last), call, turns_of(cast("Token | None", turns)))


_CELLS: Final[dict[str, Callable[[LineAt, LineTree], Cell]]] = {
    "cell": _continue,
    "name_cell": _name_cell,
    "pair_cell": _pair_cell,
    "shape_cell": _shape_cell,
}
