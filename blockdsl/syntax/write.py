"""One line written back in its usual form; words and numbers stay as the maker wrote them."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Final

from lark import Token

from blockdsl.syntax.ast import (
    Cell,
    Continue,
    FabricDeclaration,
    Make,
    NameCell,
    PairCell,
    QuiltRow,
    Row,
    RowPlace,
    ShapeCell,
    Text,
    UnitDeclaration,
    Word,
)
from blockdsl.syntax.grammar import parse_line
from blockdsl.syntax.kinds import FORMER
from blockdsl.syntax.lines import RawLine

_TIGHT_AFTER: Final = {"OPEN"}
_TIGHT_BEFORE: Final = {"CLOSE", "TURNS"}


def line_parts(
    line: RawLine, node: object, renamed: Mapping[str, str] = MappingProxyType({}), *, in_quilt: bool = False
) -> tuple[str, ...]:
    """The parts of a line that stand in columns of their own: keyword and cells of a row, the words of a fabric.

    Any other line is one part. The line has no issue. `in_quilt`: it is one of a quilt. `renamed`: shapes that have a
    new name, which is written for the old one.
    """
    if isinstance(node, Row):
        return ("row", *(_cell(cell, renamed) for cell in node.cells))
    if isinstance(node, QuiltRow):
        return ("row", *(_place(place) for place in node.places))
    tree = parse_line(line.text, "quilt" if in_quilt else "line")
    tokens = list(tree.scan_values(lambda value: isinstance(value, Token)))
    if isinstance(node, FabricDeclaration):
        first = [_token(token) for token in tokens[:4]]
        return (*first, " ".join(_token(token) for token in tokens[4:])) if len(tokens) > 4 else tuple(first)
    return (_joined(tokens, _new_words(line, node, renamed)),)


def _new_words(line: RawLine, node: object, renamed: Mapping[str, str]) -> dict[int | None, str]:
    """Words of the line that are called something else now, by their place in it."""
    found: dict[int | None, str] = {0: FORMER[line.word]} if line.word in FORMER else {}
    shape = node.shape.shape if isinstance(node, UnitDeclaration) and node.shape else None
    shape = node.what if isinstance(node, Make) else shape
    if shape is not None and shape.text in renamed:
        found[shape.span.start - line.start] = renamed[shape.text]
    return found


def _joined(tokens: list[Token], new_words: Mapping[int | None, str]) -> str:
    in_colourway = tokens[0].type == "COLOURWAY"
    text = ""
    glued = True
    for token in tokens:
        close = glued or token.type in _TIGHT_BEFORE or (in_colourway and token.type == "EQUALS")
        word = new_words.get(token.start_pos) or _token(token)
        text += word if close else f" {word}"
        glued = token.type in _TIGHT_AFTER or (in_colourway and token.type == "EQUALS")
    return text


def _token(token: Token) -> str:
    if token.type == "TIMES":
        return "x"
    if token.type == "COLOUR":
        return token.lower()
    if token.type == "TEXT":
        return quoted(token)
    return " ".join(token.split()) if token.type == "NUMBER" else str(token)


def quoted(text: str) -> str:
    """Quoted text with straight marks, unless a straight mark is among the words."""
    inside = text[1:-1]
    return text if '"' in inside else f'"{inside}"'


def _place(place: RowPlace) -> str:
    written = place.name.span.text
    return (quoted(written) if isinstance(place.name, Text) else written) + "".join(place.turns)


def _cell(cell: Cell, renamed: Mapping[str, str]) -> str:
    if isinstance(cell, Continue):
        return cell.span.text
    turns = "".join(cell.turns)
    if isinstance(cell, NameCell):
        return cell.name.span.text + turns
    if isinstance(cell, PairCell):
        return f"{cell.left.span.text}{cell.slope}{cell.right.span.text}{turns}"
    return _shape(cell, renamed) + turns


def _shape(cell: ShapeCell, renamed: Mapping[str, str]) -> str:
    words = [renamed.get(cell.call.shape.text, cell.call.shape.span.text)]
    for word in cell.call.words:
        times = isinstance(word, Word) and word.text == "x"
        words.append("x" if times else " ".join(word.span.text.split()))
    return f"({' '.join(words)})"
