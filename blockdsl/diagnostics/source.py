"""A text and a place in it."""

from __future__ import annotations

from bisect import bisect_right
from functools import cached_property

from msgspec import Struct


class Source:
    """One file's text under the name the user knows it by."""

    def __init__(self, name: str, text: str) -> None:
        """Keep the text as it is; a byte order mark and line ends are the reader's business."""
        self.name = name
        self.text = text

    @cached_property
    def line_starts(self) -> tuple[int, ...]:
        """Offset of the first code point of each line."""
        starts = [0]
        starts.extend(place + 1 for place, letter in enumerate(self.text) if letter == "\n")
        return tuple(starts)

    def line(self, number: int) -> str:
        """Line `number` (from 1) without its end."""
        start = self.line_starts[number - 1]
        stop = self.line_starts[number] - 1 if number < len(self.line_starts) else len(self.text)
        return self.text[start:stop].rstrip("\r")

    def position(self, offset: int) -> tuple[int, int]:
        """Line and column, both from 1, of a code point offset."""
        line = bisect_right(self.line_starts, offset)
        return line, offset - self.line_starts[line - 1] + 1


class Span(Struct, frozen=True):
    """The code points from `start` up to `stop` of a source; an empty span is a place between two letters."""

    source: Source
    start: int
    stop: int

    @property
    def text(self) -> str:
        """The words that the span covers."""
        return self.source.text[self.start : self.stop]

    @property
    def line(self) -> int:
        """Line of the first code point, from 1."""
        return self.source.position(self.start)[0]

    @property
    def column(self) -> int:
        """Column of the first code point, from 1."""
        return self.source.position(self.start)[1]

    def to(self, other: Span) -> Span:
        """The span from the start of this one to the end of the other."""
        return Span(self.source, self.start, max(self.stop, other.stop))
