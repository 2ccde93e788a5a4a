"""The contents of a book: chapters, the blocks and quilts in each with a small picture, the page of everything."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec.structs import replace

from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.prose import TextStyle, fitted, line, line_ending, lines_of, width_of
from blockdsl.marks.theme import (
    ACCENT,
    BODY_PT,
    CONTENT_WIDTH_PT,
    GUTTER_PT,
    HEADING_PT,
    INK,
    LEAD_PT,
    QUIET,
    STEP_PT,
    Box,
    PaperSize,
    span_pt,
)
from blockdsl.page.book.parts import Bodies, BookPart, hairline, linked
from blockdsl.page.book.pictures import format_part, part_picture
from blockdsl.page.flow import Flowable, PageNumbers
from blockdsl.page.headings import continued
from blockdsl.page.parts import flowed, title_flowable
from blockdsl.page.prose import NUMBER_PT
from blockdsl.wording.messages import Messages

_CHAPTER: Final = TextStyle(HEADING_PT, "bold", INK)
_OVER: Final = TextStyle(BODY_PT, "bold", ACCENT)
_BLOCK: Final = TextStyle(LEAD_PT, "regular", INK)
_QUIET: Final = TextStyle(BODY_PT, "regular", QUIET)
_PICTURE_PT: Final = 26.0
_MOST_PICTURES: Final = 60
_LEFT_PT: Final = span_pt(3) + GUTTER_PT


def contents_pages(parts: Sequence[BookPart], pages: PageNumbers, paper: PaperSize, words: Messages) -> Bodies:
    """All pages of the contents without their feet; lessons are listed on the page of the techniques instead."""
    parts = [part for part in parts if not part.level or part.pictured]
    pictured = sum(part.pictured for part in parts) <= _MOST_PICTURES
    flowables = [title_flowable(words("book-contents"))]
    for place, part in enumerate(parts):
        below = place + 1 < len(parts) and parts[place + 1].level > part.level
        row = _block_row(part, pages, pictured=pictured) if part.level else _row(part, pages)
        before = 3 * STEP_PT if not part.level and place else 0.0
        flowables.append(
            replace(row, before_pt=before, keep_with_next=below, head=(continued(words("book-contents"), words),))
        )
    return flowed(flowables, paper)


def _row(part: BookPart, pages: PageNumbers) -> Flowable:
    """A chapter or a section: its number at the left, its name, its page."""
    baseline = STEP_PT + _CHAPTER.baseline_pt
    lines = lines_of(part.title, CONTENT_WIDTH_PT - _LEFT_PT - NUMBER_PT, _CHAPTER)
    height = len(lines) * _CHAPTER.line_pt + 2 * STEP_PT
    words = [*line(part.over, 0.0, baseline, _OVER)]
    for place, text in enumerate(lines):
        words += line(text, _LEFT_PT, baseline + place * _CHAPTER.line_pt, _CHAPTER)
    words += line_ending(pages.get(part.anchor, "0"), CONTENT_WIDTH_PT, baseline, _CHAPTER)
    return Flowable(height, (hairline(0.0), linked(part.anchor, CONTENT_WIDTH_PT, height, words)))


def _block_row(part: BookPart, pages: PageNumbers, *, pictured: bool) -> Flowable:
    """A block or a quilt: its small picture, its name, its sizes, its page."""
    x = _LEFT_PT + (_PICTURE_PT + 3 * STEP_PT if pictured else 0.0)
    lines = lines_of(part.title, CONTENT_WIDTH_PT - x - NUMBER_PT, _BLOCK)
    words_height = len(lines) * _BLOCK.line_pt
    height = max(_PICTURE_PT + 2 * STEP_PT if pictured else 0.0, words_height + STEP_PT)
    baseline = (height - words_height) / 2 + _BLOCK.baseline_pt
    marks: list[Mark] = []
    about = format_part(part)
    if pictured:
        marks.append(_small_picture(part, height))
    words: list[Mark] = []
    for place, text in enumerate(lines):
        words += line(text, x, baseline + place * _BLOCK.line_pt, _BLOCK)
    left = x + width_of(lines[-1], _BLOCK) + 3 * STEP_PT
    last = baseline + (len(lines) - 1) * _BLOCK.line_pt
    words += line(fitted(about, max(0.0, CONTENT_WIDTH_PT - NUMBER_PT - left), _QUIET), left, last, _QUIET)
    words += line_ending(pages.get(part.anchor, "0"), CONTENT_WIDTH_PT, last, _BLOCK)
    return Flowable(height, (*marks, linked(part.anchor, CONTENT_WIDTH_PT, height, words)))


def _small_picture(part: BookPart, height_pt: float) -> Mark:
    picture, placed = part_picture(part, Box(0.0, 0.0, _PICTURE_PT, _PICTURE_PT))
    dx = _LEFT_PT + (_PICTURE_PT - placed.width_pt) / 2 - placed.x_pt
    (mark,) = moved([picture], dx, (height_pt - placed.height_pt) / 2 - placed.y_pt)
    return mark
