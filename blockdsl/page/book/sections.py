"""Sections set alike: a heading at the left, paragraphs or numbered steps at its right."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec.structs import replace

from blockdsl.marks.display_list import Mark
from blockdsl.marks.prose import TextStyle, line, lines_of
from blockdsl.marks.theme import BODY_PT, GUTTER_PT, HEADING_PT, INK, QUIET, STEP_PT, span_pt
from blockdsl.page.book.parts import READING, READING_PT, SIDE_PT, hairline
from blockdsl.page.flow import Flowable

_NAME: Final = TextStyle(HEADING_PT, "bold", INK)
_UNDER: Final = TextStyle(BODY_PT, "regular", QUIET)
_STEP: Final = TextStyle(READING.size_pt, "bold", INK)
_LINE_PT: Final = READING.size_pt * 1.46
_STEP_PT: Final = 18.0
_WHOLE_PT: Final = 300.0
"""A section that is no higher stays on one page."""


def section(
    name: str, texts: Sequence[str], *, under: Sequence[str] = (), numbered: bool = False, ruled: bool = True
) -> list[Flowable]:
    """A section as flowables, line by line, so that it may run over pages; `under` stands below its name.

    The first text of a numbered section has no number: it says what is to be done.
    """
    left: list[tuple[str, TextStyle]] = [(words, _NAME) for words in lines_of(name, span_pt(4) - GUTTER_PT, _NAME)]
    for words in under:
        left += [(part, _UNDER) for part in lines_of(words, span_pt(4) - GUTTER_PT, _UNDER)]
    right = [entry for place, text in enumerate(texts) for entry in _lines(text, place if numbered else 0)]
    marks: list[Mark] = [hairline(0.0)] if ruled else []
    y = 2.5 * STEP_PT
    for words, style in left:
        marks += line(words, 0.0, y + READING.baseline_pt, style)
        y += style.line_pt
    top = 2.5 * STEP_PT
    first_height = top + _LINE_PT
    flowables: list[Flowable] = []
    for place, (number, words, gap, keep) in enumerate(right):
        x = SIDE_PT + (_STEP_PT if numbered and number != "-" else 0.0)
        at = top if place == 0 else 0.0
        row = [*line(words, x, at + READING.baseline_pt, READING)]
        if number not in ("", "-"):
            row += line(number, x - _STEP_PT, at + READING.baseline_pt, _STEP)
        if place == 0:
            flowables.append(Flowable(first_height, (*marks, *row), before_pt=5 * STEP_PT, keep_with_next=True))
        else:
            flowables.append(Flowable(_LINE_PT, tuple(row), before_pt=gap, keep_with_next=keep))
    if sum(piece.before_pt + piece.height_pt for piece in flowables) < _WHOLE_PT:
        flowables[:-1] = [replace(piece, keep_with_next=True) for piece in flowables[:-1]]
    height = sum(piece.before_pt + piece.height_pt for piece in flowables[1:]) + first_height
    if y > height:
        flowables.append(Flowable(y - height))
    return flowables


def _lines(text: str, number: int) -> list[tuple[str, str, float, bool]]:
    """The lines of a text: the number before it, its words, the white above it, whether it is bound to the next.

    The mark "-" says that the text stands at the edge, for it has no number while others have.
    """
    width = READING_PT - _STEP_PT
    lines = lines_of(text, width, READING)
    rows = []
    for place, words in enumerate(lines):
        lead = f"{number}" if number and place == 0 else "" if number else "-"
        keep = place < len(lines) - 1 and place in (0, len(lines) - 2)
        rows.append((lead, words, 0.5 * _LINE_PT if place == 0 else 0.0, keep))
    return rows
