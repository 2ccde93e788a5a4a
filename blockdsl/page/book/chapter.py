"""The opening of a chapter: its name, its words, and what lies in it with the page of each block and quilt."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.document.reading import prose_of
from blockdsl.facts.bookfacts import WordsFacts
from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.prose import TextStyle, fitted, line, line_ending
from blockdsl.marks.theme import BODY_PT, COLUMNS, GUTTER_PT, INK, LEAD_PT, QUIET, STEP_PT, Box, PaperSize, span_pt
from blockdsl.page.book.parts import Bodies, BookPart, linked
from blockdsl.page.book.pictures import format_part, part_picture
from blockdsl.page.flow import Flowable, PageNumbers
from blockdsl.page.headings import heading
from blockdsl.page.parts import flowables as part_flowables
from blockdsl.page.parts import flowed, title_flowable
from blockdsl.page.prose import NUMBER_PT
from blockdsl.wording.messages import Messages

_TITLE_SIZES_PT: Final = (38.0, 30.0, 23.0)
_NAME: Final = TextStyle(LEAD_PT, "bold", INK)
_NUMBER: Final = TextStyle(LEAD_PT, "regular", INK)
_SIZES: Final = TextStyle(BODY_PT, "regular", QUIET)
_FEW: Final = 2
_MANY: Final = 3


def chapter_pages(
    title: str,
    over: str,
    texts: Sequence[WordsFacts],
    blocks: Sequence[BookPart],
    words: Messages,
    pages: PageNumbers,
    paper: PaperSize,
) -> Bodies:
    """The opening: a large title, the maker's words, a gallery of the chapter's blocks and quilts."""
    flowables = [title_flowable(title, over, _TITLE_SIZES_PT)]
    for text in texts:
        flowables += part_flowables((prose_of(text),), words, pages)
    across = _FEW if len(blocks) <= _FEW else _MANY
    side = span_pt(COLUMNS // across)
    cards = [_card(part, pages, side) for part in blocks if part.pictured]
    if cards:
        flowables.append(heading(words("book-in-this-chapter")))
    for start in range(0, len(cards), across):
        row = cards[start : start + across]
        marks: list[Mark] = []
        for place, (_, card) in enumerate(row):
            marks += moved(card, place * (side + GUTTER_PT), 0.0)
        flowables.append(
            Flowable(max(height for height, _ in row), tuple(marks), before_pt=(6 if start else 2) * STEP_PT)
        )
    return flowed(flowables, paper)


def _card(part: BookPart, pages: PageNumbers, side: float) -> tuple[float, tuple[Mark, ...]]:
    """A picture over its name, its page and its sizes; all of it leads there."""
    picture, placed = part_picture(part, Box(0.0, 0.0, side, side))
    top = placed.height_pt + 2 * STEP_PT
    words = [
        *line(fitted(part.title, side - NUMBER_PT, _NAME), 0.0, top + _NAME.baseline_pt, _NAME),
        *line_ending(pages.get(part.anchor, "0"), side, top + _NAME.baseline_pt, _NUMBER),
        *line(fitted(format_part(part), side, _SIZES), 0.0, top + _NAME.line_pt + _SIZES.baseline_pt, _SIZES),
    ]
    height = top + _NAME.line_pt + _SIZES.line_pt
    return height, (picture, linked(part.anchor, side, height, words))
