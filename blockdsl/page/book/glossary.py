"""The trade's words that a book uses, each explained in a sentence or two."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec.structs import replace

from blockdsl.marks.display_list import Mark
from blockdsl.marks.prose import TextStyle, line, line_ending, lines_of
from blockdsl.marks.theme import BODY_PT, CONTENT_WIDTH_PT, GUTTER_PT, INK, QUIET, STEP_PT, PaperSize, span_pt
from blockdsl.page.book.parts import READING, READING_PT, SIDE_PT, Bodies, hairline
from blockdsl.page.flow import Flowable
from blockdsl.page.parts import PageNumbers, flowed, title_flowable
from blockdsl.wording.glossary import TermUsed
from blockdsl.wording.messages import Messages

_TERM: Final = TextStyle(READING.size_pt, "bold", INK)
_PAGE: Final = TextStyle(BODY_PT, "regular", QUIET)
_LINE_PT: Final = READING.size_pt * 1.4


def glossary_pages(terms: Sequence[TermUsed], words: Messages, paper: PaperSize, pages: PageNumbers) -> Bodies:
    """A line or two for each term: the word, what it means, the page that uses it first."""
    del pages
    flowables: list[Flowable] = [title_flowable(words("glossary-title"))]
    for place, used in enumerate(terms):
        flowables += _entry(used.term, used.meaning, used.page, ruled=place > 0)
    return flowed(flowables, paper)


def _entry(term: str, meaning: str, page: str, *, ruled: bool) -> Sequence[Flowable]:
    words = lines_of(meaning, READING_PT - 2 * GUTTER_PT, READING)
    names = lines_of(term, span_pt(4) - GUTTER_PT, _TERM)
    rows: list[Flowable] = []
    for place in range(max(len(words), len(names))):
        marks: list[Mark] = []
        if place < len(names):
            marks += line(names[place], 0.0, STEP_PT / 2 + READING.baseline_pt, _TERM)
        if place < len(words):
            marks += line(words[place], SIDE_PT, STEP_PT / 2 + READING.baseline_pt, READING)
        if place == 0:
            marks += line_ending(page, CONTENT_WIDTH_PT, STEP_PT / 2 + READING.baseline_pt, _PAGE)
            marks += [hairline(0.0)] if ruled else []
        rows.append(Flowable(_LINE_PT, tuple(marks), keep_with_next=True))
    rows[-1] = replace(rows[-1], height_pt=_LINE_PT + STEP_PT, keep_with_next=False)
    return rows
