"""What may stand below a `book` or a `maker`: for each line its node, how it is read, and its row in the table."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from blockdsl.diagnostics import Span
from blockdsl.syntax.block_lines import Language, Press
from blockdsl.syntax.line_kind import LineKind
from blockdsl.syntax.nodes import Damaged, LengthLiteral, Quoted, Text, Word


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
    path: Quoted


@dataclass(frozen=True, slots=True)
class Techniques:
    """`techniques`: the book ends with the ways of making that its blocks use."""

    span: Span


@dataclass(frozen=True, slots=True)
class Font:
    """`font "My.ttf"`: a font for letters that ours lacks; the path is relative to this file."""

    span: Span
    path: Quoted


BookLine = By | Paper | Chapter | BookBlock | BookQuilt | BookText | Techniques | Press | Language | Damaged
MakerLine = Press | Language | Font | Damaged

BOOK_KINDS: Final = (
    LineKind("by", "book", '`by "The maker"`', {"by": By}, once=True),
    LineKind("paper", "book", "`paper letter`, `paper a4` or `paper roll 36 in`", {"paper": Paper}, once=True),
    LineKind("chapter", "book", '`chapter "Lights"`', {"chapter": Chapter}),
    LineKind("text", "book", '`text "intro.md"`', {"book_text": BookText}),
    LineKind("techniques", "book", "`techniques`, and nothing after it", {"techniques": Techniques}, once=True),
    LineKind("font", "maker alone", '`font "My.ttf"`', {"font": Font}),
)
