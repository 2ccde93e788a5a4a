"""A template as it is drawn in each of its turns: its two outlines with its words inside, or beside them."""

from __future__ import annotations

from blockdsl.fullsize.pattern import TemplatePattern, quarter_turn
from blockdsl.fullsize.template_marks import cutting_lines, notch_lines, sewing_lines
from blockdsl.fullsize.words_beside import DrawnTemplate, words_beside
from blockdsl.fullsize.words_inside import words_inside
from blockdsl.marks.display_list import Mark


def outlines(pattern: TemplatePattern) -> tuple[Mark, ...]:
    """The cutting line, the sewing line, and the marks of curved seams."""
    lines = cutting_lines((pattern.cutting,), closed=True), sewing_lines((pattern.sewing,), closed=True)
    return *lines, *notch_lines(pattern.notches)


class Drawings:
    """Every template in every turn that was asked for; each is drawn once, for its words take the time."""

    def __init__(self, patterns: tuple[TemplatePattern, ...]) -> None:
        self._turned: dict[tuple[int, int], TemplatePattern] = {
            (number, 0): each for number, each in enumerate(patterns)
        }
        self._drawn: dict[tuple[int, int], DrawnTemplate] = {}

    def pattern(self, number: int, turns: int) -> TemplatePattern:
        """A template after so many quarter turns clockwise."""
        found = self._turned.get((number, turns))
        if found is None:
            found = self._turned[number, turns] = quarter_turn(self.pattern(number, turns - 1))
        return found

    def drawn(self, number: int, turns: int) -> DrawnTemplate:
        """The turned template with its words, which stay upright."""
        found = self._drawn.get((number, turns))
        if found is None:
            found = self._drawn[number, turns] = _drawn(self.pattern(number, turns))
        return found


def _drawn(pattern: TemplatePattern) -> DrawnTemplate:
    inside = words_inside(pattern, pattern.sewing)
    if inside is None:
        return words_beside(pattern, outlines(pattern))
    return DrawnTemplate(pattern.width_pt, pattern.height_pt, (*outlines(pattern), *inside), (pattern.cutting,))
