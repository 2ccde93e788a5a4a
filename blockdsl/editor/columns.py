"""The one place where code points, lines and columns from 1 become the editor's columns, and back.

The protocol counts from 0, and columns in the units of an encoding that both sides agree on: UTF-16 unless the editor
asks for another.
"""

from __future__ import annotations

from typing import Final

from lsprotocol import types
from msgspec import Struct

from blockdsl.diagnostics import Source, Span

_ENCODINGS: Final = {"utf-8": ("utf-8", 1), "utf-16": ("utf-16-le", 2), "utf-32": ("utf-32-le", 4)}


class Columns(Struct, frozen=True):
    """Columns in one encoding, by its name in the protocol."""

    encoding: str = "utf-16"

    def width(self, text: str) -> int:
        """How many columns the letters take."""
        if text.isascii():
            return len(text)
        encoding, size = _ENCODINGS[self.encoding]
        return len(text.encode(encoding, "surrogatepass")) // size

    def position(self, source: Source, offset: int) -> types.Position:
        """Where a place lies for the editor."""
        line, column = source.position(offset)
        if column == 1 or not source.text:
            return types.Position(line - 1, column - 1)
        text = source.line(line) + "\r"
        return types.Position(line - 1, self.width(text[: column - 1]))

    def range(self, span: Span) -> types.Range:
        """A span for the editor."""
        return types.Range(self.position(span.source, span.start), self.position(span.source, span.stop))

    def offset(self, source: Source, position: types.Position) -> int:
        """The place that the editor means: the nearest one, and in front of a letter where it points inside one."""
        number = min(max(position.line, 0), len(source.line_starts) - 1) + 1
        return source.offset(number, self.letters(source.line(number), position.character) + 1)

    def letters(self, text: str, column: int) -> int:
        """How many letters of a line stand before a column; one that points inside a letter is in front of it."""
        if text.isascii():
            return min(max(column, 0), len(text))
        taken = 0
        for count, letter in enumerate(text):
            taken += self.width(letter)
            if taken > column:
                return count
        return len(text)

    def whole(self, source: Source) -> types.Range:
        """All of a text."""
        last = len(source.line_starts)
        return types.Range(types.Position(0, 0), types.Position(last - 1, self.width(source.line(last))))
