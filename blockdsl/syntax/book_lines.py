"""What may stand below a `book` or a `maker`: for each line its node, how it is read, and its row in the table."""

from __future__ import annotations

from typing import Final

from msgspec import Struct

from blockdsl.diagnostics import Span
from blockdsl.syntax.block_lines import MakerChoice
from blockdsl.syntax.line_kind import LineKind
from blockdsl.syntax.nodes import LengthLiteral, Quoted, Text, UnreadableLine, Word


class By(Struct, frozen=True):
    """`by "The maker"`."""

    span: Span
    maker: Text


class Subtitle(Struct, frozen=True):
    """`subtitle "Seven blocks and a quilt"`: printed below the title."""

    span: Span
    text: Text


class Paper(Struct, frozen=True):
    """`paper letter`, `paper roll 36 in`; a roll alone has a width."""

    span: Span
    name: Word
    width: LengthLiteral | None


class Chapter(Struct, frozen=True):
    """`chapter "Lights"`: it lasts until the next one."""

    span: Span
    title: Text


class BookBlock(Struct, frozen=True):
    """`block "Harbour Light" sizes 6 9 12 in`: finished widths; without any the block's own size is meant."""

    span: Span
    name: Text
    widths: tuple[LengthLiteral, ...]


class BookQuilt(Struct, frozen=True):
    """`quilt "Breakwater"` in a book."""

    span: Span
    name: Text


class BookText(Struct, frozen=True):
    """`text "lights.md"`: words of the maker, in Markdown; the path is relative to this file."""

    span: Span
    path: Quoted


class Techniques(Struct, frozen=True):
    """`techniques`: the book ends with the ways of making that its blocks use."""

    span: Span


class Font(Struct, frozen=True):
    """`font "My.ttf"`: a font for letters that ours lacks; the path is relative to this file."""

    span: Span
    path: Quoted


BookLine = (
    By | Subtitle | Paper | Chapter | BookBlock | BookQuilt | BookText | Techniques | MakerChoice | UnreadableLine
)
MakerLine = MakerChoice | Font | UnreadableLine

BOOK_KINDS: Final = (
    LineKind("by", "book", '`by "The maker"`', {"by": By}, once=True),
    LineKind("subtitle", "book", '`subtitle "Seven blocks and a quilt"`', {"subtitle": Subtitle}, once=True),
    LineKind("paper", "book", "`paper letter`, `paper a4` or `paper roll 36 in`", {"paper": Paper}, once=True),
    LineKind("chapter", "book", '`chapter "Lights"`', {"chapter": Chapter}),
    LineKind("text", "book", '`text "intro.md"`', {"book_text": BookText}),
    LineKind("techniques", "book", "`techniques`, and nothing after it", {"techniques": Techniques}, once=True),
    LineKind("font", "maker alone", '`font "My.ttf"`', {"font": Font}),
)
