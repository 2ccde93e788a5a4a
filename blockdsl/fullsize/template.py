"""A template as it is drawn in each of its turns: its two outlines with its words inside, or beside them."""

from __future__ import annotations

from blockdsl.fullsize.pattern import Pattern, quarter_turn
from blockdsl.fullsize.template_marks import cutting_lines, notch_lines, sewing_lines
from blockdsl.fullsize.words_beside import Drawn, words_beside
from blockdsl.fullsize.words_inside import words_inside
from blockdsl.marks.display_list import Mark


def outlines(pattern: Pattern) -> tuple[Mark, ...]:
    """The cutting line, the sewing line, and the marks of curved seams."""
    lines = cutting_lines((pattern.cutting,), closed=True), sewing_lines((pattern.sewing,), closed=True)
    return *lines, *notch_lines(pattern.notches)


class Drawings:
    """Every template in every turn that was asked for; each is drawn once, for its words take the time."""

    def __init__(self, patterns: tuple[Pattern, ...]) -> None:
        self._turned: dict[tuple[int, int], Pattern] = {(number, 0): each for number, each in enumerate(patterns)}
        self._drawn: dict[tuple[int, int], Drawn] = {}

    def pattern(self, number: int, turns: int) -> Pattern:
        """A template after so many quarter turns clockwise."""
        found = self._turned.get((number, turns))
        if found is None:
            found = self._turned[number, turns] = quarter_turn(self.pattern(number, turns - 1))
        return found

    def drawn(self, number: int, turns: int) -> Drawn:
        """The turned template with its words, which stay upright."""
        found = self._drawn.get((number, turns))
        if found is None:
            found = self._drawn[number, turns] = _drawn(self.pattern(number, turns))
        return found


def _drawn(pattern: Pattern) -> Drawn:
    inside = words_inside(pattern, pattern.sewing)
    if inside is None:
        return words_beside(pattern, outlines(pattern))
    return Drawn(pattern.width_pt, pattern.height_pt, (*outlines(pattern), *inside), (pattern.cutting,))
