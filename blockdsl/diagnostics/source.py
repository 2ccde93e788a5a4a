"""A text and a place in it."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Callable, Hashable, Iterator
from functools import cached_property
from typing import TypeVar

from msgspec import Struct

Made = TypeVar("Made")


class Source:
    """One file's text under the name the user knows it by.

    An offset says where in the text a place is: here the number of code points before it. An editor's text numbers
    them otherwise (`blockdsl/editor/edited.py`), so only a source turns an offset into a line and a column.
    """

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

    def lines(self) -> Iterator[tuple[int, str]]:
        """Each line's offset and its letters without its end; a byte order mark is passed over."""
        mark = self.text.startswith("\ufeff")
        for number, place in enumerate(self.line_starts, start=1):
            first = place + 1 if mark and number == 1 else place
            last = self.line_starts[number] - 1 if number < len(self.line_starts) else len(self.text)
            if last > first and self.text[last - 1] == "\r":
                last -= 1
            yield first, self.text[first:last]

    def line(self, number: int) -> str:
        """Line `number` (from 1) without its end."""
        start = self.line_starts[number - 1]
        stop = self.line_starts[number] - 1 if number < len(self.line_starts) else len(self.text)
        return self.text[start:stop].rstrip("\r")

    def position(self, offset: int) -> tuple[int, int]:
        """Line and column, both from 1, of a code point offset."""
        line = bisect_right(self.line_starts, offset)
        return line, offset - self.line_starts[line - 1] + 1

    def offset(self, line: int, column: int) -> int:
        """The offset of a line and a column, both from 1; the nearest place that there is."""
        number = min(max(line, 1), len(self.line_starts))
        return self.line_starts[number - 1] + min(max(column - 1, 0), len(self.line(number)))

    def between(self, start: int, stop: int) -> str:
        """The letters from one offset up to another."""
        return self.text[start:stop]

    def order(self, offset: int) -> tuple[int, ...]:
        """What places of one text are sorted by."""
        return (offset,)

    def recall(self, _key: Hashable, make: Callable[[], Made]) -> Made:
        """What is made of one of its lines; a text that is edited remembers it while the line stays as it is."""
        return make()


class Span(Struct, frozen=True):
    """The code points from `start` up to `stop` of a source; an empty span is a place between two letters."""

    source: Source
    start: int
    stop: int

    @property
    def text(self) -> str:
        """The words that the span covers."""
        return self.source.between(self.start, self.stop)

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

    @property
    def before(self) -> Span:
        """The place in front of it."""
        return Span(self.source, self.start, self.start)

    @property
    def after(self) -> Span:
        """The place behind it."""
        return Span(self.source, self.stop, self.stop)
