"""Reading the words of a shape: small steps that each either fit or do not."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.geometry.fraction import Fraction
from blockdsl.syntax.ast import Number, Word


class WordReader:
    """Walks over the words after a shape's name."""

    def __init__(self, words: Sequence[Word | Number]) -> None:
        """Start at the first word."""
        self._words = words
        self._next = 0

    @property
    def done(self) -> bool:
        """Whether all words are read."""
        return self._next >= len(self._words)

    def word(self) -> str | None:
        """The next word, or None when there is none or it is a number."""
        if not self.done and isinstance(found := self._words[self._next], Word):
            self._next += 1
            return found.text
        return None

    def number(self) -> Fraction | None:
        """The next number, or None."""
        if not self.done and isinstance(found := self._words[self._next], Number):
            self._next += 1
            return found.value
        return None

    def is_next(self, *spellings: str) -> bool:
        """Whether the next word is this one, in any of its spellings; if so it is passed over."""
        if not self.done and isinstance(found := self._words[self._next], Word) and found.text in spellings:
            self._next += 1
            return True
        return False

    def rest(self) -> tuple[str, ...] | None:
        """All words that are left, or None when a number is among them."""
        left = self._words[self._next :]
        self._next = len(self._words)
        texts = tuple(found.text for found in left if isinstance(found, Word))
        return texts if len(texts) == len(left) else None

    def several(self, *options: str, until: str = "") -> tuple[str, ...]:
        """The words up to the word `until`, one of the `options` with its number, a number or the end.

        An option's word without a number after it may be a fabric's name.
        """
        found: list[str] = []
        while not self.done and isinstance(left := self._words[self._next], Word):
            after = self._words[self._next + 1 : self._next + 2]
            if left.text == until or (left.text in options and after and isinstance(after[0], Number)):
                break
            found.append(left.text)
            self._next += 1
        return tuple(found)

    def count(self, most: int) -> int | None:
        """The next number when it is whole and from 1 to `most`, else None."""
        found = self.number()
        return int(found) if found is not None and found.denominator == 1 and 1 <= found <= most else None
