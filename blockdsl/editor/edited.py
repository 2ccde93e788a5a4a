"""The text of a file that is open in an editor."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterator
from typing import Any, Final, TypeVar

from blockdsl.diagnostics import Source

Made = TypeVar("Made")

_ROOM: Final = 1 << 32
"""Offsets kept for each line; none is longer."""


class EditedSource(Source):
    """A text whose lines keep their offsets while their letters stay the same, wherever other lines move them to.

    So what was made of a line, spans and all, holds for as long as the line does, and is remembered with it. The lines
    are numbered in the order in which they were typed, not in that of the text.
    """

    def __init__(self, name: str, text: str) -> None:
        """Start with this text."""
        super().__init__(name, "")
        self._next = 1
        self._numbers: list[int] = []
        self._lines: list[str] = []
        self._places: dict[int, int] = {}
        self._made: dict[int, dict[Hashable, Any]] = {}
        self.replace(text)

    def replace(self, text: str) -> None:
        """The text from now on. Lines that are as they were keep their numbers, those that were moved too."""
        self.text = text
        before, after = self._lines, text.split("\n")
        most = min(len(before), len(after))
        top = next((place for place in range(most) if before[place] != after[place]), most)
        most -= top
        foot = next((place for place in range(most) if before[-1 - place] != after[-1 - place]), most)
        freed: dict[str, list[int]] = {}
        for place in range(top, len(before) - foot):
            freed.setdefault(before[place], []).append(self._numbers[place])
        middle = [self._number_for(freed.get(line)) for line in after[top : len(after) - foot]]
        self._numbers = [*self._numbers[:top], *middle, *self._numbers[len(before) - foot :]]
        for numbers in freed.values():
            for number in numbers:
                self._made.pop(number, None)
        self._lines = after
        self._places = {number: place for place, number in enumerate(self._numbers)}

    def _number_for(self, freed: list[int] | None) -> int:
        """The number of a line with the same letters that stood elsewhere, if there is one, or a new one."""
        if freed:
            return freed.pop(0)
        self._next += 1
        return self._next - 1

    @property
    def line_starts(self) -> tuple[int, ...]:
        """Offset of each line."""
        return tuple(number * _ROOM for number in self._numbers)

    def lines(self) -> Iterator[tuple[int, str]]:
        """As for every source."""
        for place, (number, line) in enumerate(zip(self._numbers, self._lines, strict=True)):
            mark = 1 if not place and line.startswith("\ufeff") else 0
            whole = line[:-1] if line.endswith("\r") and len(line) > mark else line
            yield number * _ROOM + mark, whole[mark:]

    def line(self, number: int) -> str:
        """As for every source."""
        return self._lines[number - 1].rstrip("\r")

    def position(self, offset: int) -> tuple[int, int]:
        """As for every source; the first letter of the text for a line that is gone."""
        number, column = divmod(offset, _ROOM)
        place = self._places.get(number)
        return (1, 1) if place is None else (place + 1, column + 1)

    def between(self, start: int, stop: int) -> str:
        """As for every source."""
        (line, column), (last_line, last_column) = self.position(start), self.position(stop)
        if line == last_line:
            return self._lines[line - 1][column - 1 : last_column - 1]
        middle = self._lines[line : last_line - 1]
        return "\n".join([self._lines[line - 1][column - 1 :], *middle, self._lines[last_line - 1][: last_column - 1]])

    def order(self, offset: int) -> tuple[int, ...]:
        """As for every source."""
        return self.position(offset)

    def offset(self, line: int, column: int) -> int:
        """As for every source."""
        place = min(max(line, 1), len(self._lines)) - 1
        return self._numbers[place] * _ROOM + min(max(column - 1, 0), len(self._lines[place]))

    def recall(self, key: Hashable, make: Callable[[], Made]) -> Made:
        """What was made of the line that the key ends with, while it stays as it was."""
        of_line = self._made.setdefault(key[-1] // _ROOM, {})  # type: ignore[index]  # its offset
        if key not in of_line:
            of_line[key] = make()
        made: Made = of_line[key]
        return made
