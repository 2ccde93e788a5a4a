"""The smallest nodes of the ast, and the cells of a row. Every node knows its place in the text."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from blockdsl.diagnostics import Span
from blockdsl.geometry.fraction import Fraction

LengthUnit = Literal["in", "cm", "mm"]
Turn = Literal[">", "<", "~"]


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


Quoted = Text
"""Quoted text to the letter: the name of a file, a path."""


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
