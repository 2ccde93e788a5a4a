"""A block in a book: its pictures once, then what to cut and to make at each of its sizes, and what is said of it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.bookfacts import BookBlockFacts, WordsFacts
from blockdsl.marks.prose import TextStyle, paragraph
from blockdsl.marks.theme import BODY_PT, CONTENT_WIDTH_PT, INK, LEAD_PT, QUIET, SMALL_PT, STEP_PT, PaperSize, span_pt
from blockdsl.page.book.parts import Bodies, flowed, part_title
from blockdsl.page.book.pictures import book_pictures, other_colourways
from blockdsl.page.book.words import said
from blockdsl.page.flow import Flowable
from blockdsl.page.sheet.head import sheet_head
from blockdsl.page.sheet.notes import applique_notes, before_the_first_cut
from blockdsl.page.sheet.size_tables import cutting_tables, size_table
from blockdsl.page.sheet.size_units import units_at_sizes
from blockdsl.page.sheet.strips import strip_pictures
from blockdsl.page.steps import step_list
from blockdsl.wording.bias import format_bias
from blockdsl.wording.lengths import show_extent
from blockdsl.wording.messages import words_of
from blockdsl.wording.sheet import format_sources

_NOTE: Final = TextStyle(LEAD_PT, "regular", INK)
_REMARK: Final = TextStyle(BODY_PT, "regular", QUIET)
_SOURCE: Final = TextStyle(SMALL_PT, "regular", QUIET)


def block_pages(block: BookBlockFacts, words: Sequence[WordsFacts], over: str, paper: PaperSize) -> Bodies:
    """All pages of one block without their feet; `over` stands above its name."""
    first = block.sizes[0]
    flowables = [part_title(block.name, over), *_notes(first.notes), *_sizes(block.sizes), *book_pictures(first)]
    if any(cut.piece == "template" for facts in block.sizes for cut in facts.cutting):
        height, marks = paragraph(words_of(first)("book-templates"), CONTENT_WIDTH_PT, _REMARK)
        flowables.append(Flowable(height, marks, before_pt=2.5 * STEP_PT))
    for facts in block.sizes:
        flowables += before_the_first_cut(facts)
    flowables += cutting_tables(block.sizes)
    if bias := format_bias(first):
        height, marks = paragraph(bias, CONTENT_WIDTH_PT, _REMARK)
        flowables.append(Flowable(height, marks, before_pt=2.5 * STEP_PT))
    if len(block.sizes) == 1:  # the measures in the pictures are those of one size
        flowables += strip_pictures(first)
    flowables += units_at_sizes(block.sizes)
    flowables += _steps(block.sizes)
    flowables += applique_notes(first)
    flowables += other_colourways(first)
    flowables += _sources(first)
    for text in words:
        flowables += said(text)
    return flowed(flowables, paper)


def _steps(sizes: Sequence[BlockFacts]) -> list[Flowable]:
    """The steps once, with the measures of the first size; the tables above have those of the others."""
    flowables = step_list(sizes[0])
    if flowables and len(sizes) > 1:
        words = words_of(sizes[0])
        told = words("book-other-sizes", size=show_extent(sizes[0].finished, sizes[0].unit, words))
        height, marks = paragraph(told, CONTENT_WIDTH_PT, _REMARK)
        flowables.insert(1, Flowable(height + STEP_PT, marks, keep_with_next=True))
    return flowables


def _notes(notes: Sequence[str]) -> list[Flowable]:
    """What the designer says of the block, under its name."""
    flowables = []
    for text in notes:
        height, marks = paragraph(text, span_pt(9), _NOTE)
        flowables.append(Flowable(height + 2 * STEP_PT, marks, keep_with_next=True))
    return [*flowables, Flowable(STEP_PT, keep_with_next=True)] if flowables else []


def _sources(facts: BlockFacts) -> list[Flowable]:
    """Where the block comes from, in small type under all that is said of its making."""
    flowables: list[Flowable] = []
    for text in format_sources(facts):
        height, marks = paragraph(text, span_pt(9), _SOURCE)
        flowables.append(Flowable(height, marks, before_pt=STEP_PT if flowables else 4 * STEP_PT))
    return flowables


def _sizes(sizes: Sequence[BlockFacts]) -> list[Flowable]:
    """The measures of the one size, or a table of all."""
    return sheet_head(sizes[0])[1:2] if len(sizes) == 1 else size_table(sizes)
