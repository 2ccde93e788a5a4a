"""A contact sheet: many blocks side by side, small, by family, each with its name."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from blockdsl.document.gallery import families_of, words_of_all
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.marks.display_list import Document, Mark, Page, moved
from blockdsl.marks.prose import TextStyle, fitted, line, lines_of
from blockdsl.marks.theme import (
    CONTENT_WIDTH_PT,
    FOOTER_HEIGHT_PT,
    GUTTER_PT,
    INK,
    QUIET,
    SMALL_PT,
    STEP_PT,
    TITLE_PT,
    Box,
    paper_named,
)
from blockdsl.page.flow import Flowable, in_columns, run_over_pages
from blockdsl.page.headings import heading
from blockdsl.page.sheet import numbered_pages
from blockdsl.page.single import TALLEST_PT
from blockdsl.pictures.block import block_picture
from blockdsl.wording.grammar import many
from blockdsl.wording.lengths import show_extent
from blockdsl.wording.messages import words_of

_COLUMNS: Final = 5
_COLUMN_PT: Final = (CONTENT_WIDTH_PT - (_COLUMNS - 1) * GUTTER_PT) / _COLUMNS
_NAME: Final = TextStyle(SMALL_PT, "bold", INK)
_QUIET: Final = TextStyle(SMALL_PT, "regular", QUIET)
_TITLE: Final = TextStyle(TITLE_PT, "bold", INK)
_NAME_LINES: Final = 2
_MARGIN_PT: Final = 18.0


def gallery_document(blocks: Sequence[BlockFacts], title: str, *, paper: str = "letter") -> Document:
    """The contact sheet on pages of paper."""
    sheet = paper_named(paper)
    content = sheet.content
    room = Box(content.x_pt, content.y_pt, content.width_pt, content.height_pt - FOOTER_HEIGHT_PT)
    words = words_of_all(blocks)
    bodies = run_over_pages(_flowables(blocks, title), room)
    pages = numbered_pages(bodies, title, sheet, words)
    subject = words("gallery-subject", blocks=many(len(blocks), "patchwork-blocks", words))
    return Document(title, pages, subject=subject, language=blocks[0].language if blocks else "en-US")


def gallery_page(blocks: Sequence[BlockFacts], title: str) -> Page:
    """The whole contact sheet as one page, as wide as a sheet's content; a very long one in several columns."""
    return in_columns(_flowables(blocks, title), CONTENT_WIDTH_PT, TALLEST_PT, _MARGIN_PT)


def _flowables(blocks: Sequence[BlockFacts], title: str) -> list[Flowable]:
    name = fitted(title, CONTENT_WIDTH_PT, _TITLE)
    head = Flowable(_TITLE.line_pt + STEP_PT, line(name, 0.0, _TITLE.baseline_pt, _TITLE), keep_with_next=True)
    flowables = [head]
    for family, found in families_of(blocks):
        flowables.append(heading(family, aside=many(len(found), "blocks", words_of_all(blocks))))
        flowables += _rows(found)
    return flowables


def _rows(blocks: Sequence[BlockFacts]) -> Iterator[Flowable]:
    for start in range(0, len(blocks), _COLUMNS):
        marks: list[Mark] = []
        height = 0.0
        for place, block in enumerate(blocks[start : start + _COLUMNS]):
            bottom, entry = _entry(block)
            marks += moved(entry, place * (_COLUMN_PT + GUTTER_PT), 0.0)
            height = max(height, bottom)
        yield Flowable(height, tuple(marks), before_pt=3 * STEP_PT if start else 0.0)


def _entry(block: BlockFacts) -> tuple[float, tuple[Mark, ...]]:
    """The block in colour, its name and its size below."""
    figure, _ = block_picture(block, Box(0.0, 0.0, _COLUMN_PT, _COLUMN_PT))
    marks: list[Mark] = [figure]
    y = _COLUMN_PT + STEP_PT
    lines = lines_of(block.name, _COLUMN_PT, _NAME)
    if len(lines) > _NAME_LINES:
        lines = [lines[0], fitted(" ".join(lines[1:]), _COLUMN_PT, _NAME)]
    for words in lines:
        marks += line(words, 0.0, y + _NAME.baseline_pt, _NAME)
        y += _NAME.line_pt
    marks += line(show_extent(block.finished, block.unit, words_of(block)), 0.0, y + _QUIET.baseline_pt, _QUIET)
    return y + _QUIET.line_pt, tuple(marks)
