"""The smallest nodes of the ast, and the cells of a row. Every node knows its place in the text."""

from __future__ import annotations

from typing import Literal

from msgspec import Struct

from blockdsl.diagnostics import Span
from blockdsl.geometry.fraction import Fraction

LengthUnit = Literal["in", "cm", "mm"]
Turn = Literal[">", "<", "~"]


class Word(Struct, frozen=True):
    """A bare word: a name, or a word of the trade such as `on` or `with`."""

    span: Span
    text: str


class Text(Struct, frozen=True):
    """Quoted text, without its quotes."""

    span: Span
    text: str


Quoted = Text
"""Quoted text to the letter: the name of a file, a path."""


class Number(Struct, frozen=True):
    """A rational number: `3`, `1/2`, `1 1/2`, `2.5`."""

    span: Span
    value: Fraction


class LengthLiteral(Struct, frozen=True):
    """A number with its unit, as written; the value is in that unit."""

    span: Span
    value: Fraction
    unit: LengthUnit


class UnreadableLine(Struct, frozen=True):
    """A line that could not be read; it has been reported. What holds it must not be judged further.

    `name` is what the line would have declared, when that much could be read, so that a later use of the
    name is no second problem.
    """

    span: Span
    keyword: str
    name: str | None = None


# --- cells -------------------------------------------------------------------------------------


class Continue(Struct, frozen=True):
    """`-` goes on with the cell on the left, `|` with the cell above."""

    span: Span
    toward: Literal["left", "above"]


class NameCell(Struct, frozen=True):
    """A fabric or a named unit."""

    span: Span
    name: Word
    turns: tuple[Turn, ...]


class PairCell(Struct, frozen=True):
    r"""`fog/lantern` or `fog\lantern`: two triangles, the left word left of the line."""

    span: Span
    left: Word
    right: Word
    slope: Literal["/", "\\"]
    turns: tuple[Turn, ...]


class ShapeCall(Struct, frozen=True):
    """A shape and its words, as written: `geese lantern on fog`; each shape reads its own words."""

    span: Span
    shape: Word
    words: tuple[Word | Number, ...]


class ShapeCell(Struct, frozen=True):
    """A shape in brackets."""

    span: Span
    call: ShapeCall
    turns: tuple[Turn, ...]


Cell = Continue | NameCell | PairCell | ShapeCell
