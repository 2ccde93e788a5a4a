"""A block in a book: its pictures once, then what to cut and to make at each of its sizes, and what is said of it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.bookfacts import BookBlockFacts, WordsFacts
from blockdsl.marks.prose import Style, paragraph
from blockdsl.marks.theme import BODY_PT, CONTENT_WIDTH_PT, INK, LEAD_PT, QUIET, SMALL_PT, STEP_PT, Paper, span_pt
from blockdsl.page.book.parts import Bodies, flowed, part_title
from blockdsl.page.book.pictures import book_pictures, other_colourings
from blockdsl.page.book.words import said
from blockdsl.page.flow import Slice
from blockdsl.page.sheet.head import sheet_head
from blockdsl.page.sheet.notes import applique_notes, before_the_first_cut
from blockdsl.page.sheet.size_tables import cutting_tables, size_table
from blockdsl.page.sheet.size_units import units_at_sizes
from blockdsl.page.sheet.strips import strip_pictures
from blockdsl.page.steps import step_list
from blockdsl.wording.bias import say_bias
from blockdsl.wording.lengths import show_extent
from blockdsl.wording.messages import words_of
from blockdsl.wording.sheet import say_sources

_NOTE: Final = Style(LEAD_PT, "regular", INK)
_REMARK: Final = Style(BODY_PT, "regular", QUIET)
_SOURCE: Final = Style(SMALL_PT, "regular", QUIET)


def block_pages(block: BookBlockFacts, words: Sequence[WordsFacts], over: str, paper: Paper) -> Bodies:
    """All pages of one block without their feet; `over` stands above its name."""
    first = block.sizes[0]
    slices = [part_title(block.name, over), *_notes(first.notes), *_sizes(block.sizes), *book_pictures(first)]
    if any(cut.piece == "template" for facts in block.sizes for cut in facts.cutting):
        height, marks = paragraph(words_of(first)("book-templates"), CONTENT_WIDTH_PT, _REMARK)
        slices.append(Slice(height, marks, before_pt=2.5 * STEP_PT))
    for facts in block.sizes:
        slices += before_the_first_cut(facts)
    slices += cutting_tables(block.sizes)
    if bias := say_bias(first):
        height, marks = paragraph(bias, CONTENT_WIDTH_PT, _REMARK)
        slices.append(Slice(height, marks, before_pt=2.5 * STEP_PT))
    if len(block.sizes) == 1:  # the measures in the pictures are those of one size
        slices += strip_pictures(first)
    slices += units_at_sizes(block.sizes)
    slices += _steps(block.sizes)
    slices += applique_notes(first)
    slices += other_colourings(first)
    slices += _sources(first)
    for text in words:
        slices += said(text)
    return flowed(slices, paper)


def _steps(sizes: Sequence[BlockFacts]) -> list[Slice]:
    """The steps once, with the measures of the first size; the tables above have those of the others."""
    slices = step_list(sizes[0])
    if slices and len(sizes) > 1:
        words = words_of(sizes[0])
        told = words("book-other-sizes", size=show_extent(sizes[0].finished, sizes[0].unit, words))
        height, marks = paragraph(told, CONTENT_WIDTH_PT, _REMARK)
        slices.insert(1, Slice(height + STEP_PT, marks, keep=True))
    return slices


def _notes(notes: Sequence[str]) -> list[Slice]:
    """What the designer says of the block, under its name."""
    slices = []
    for text in notes:
        height, marks = paragraph(text, span_pt(9), _NOTE)
        slices.append(Slice(height + 2 * STEP_PT, marks, keep=True))
    return [*slices, Slice(STEP_PT, keep=True)] if slices else []


def _sources(facts: BlockFacts) -> list[Slice]:
    """Where the block comes from, in small type under all that is said of its making."""
    slices: list[Slice] = []
    for text in say_sources(facts):
        height, marks = paragraph(text, span_pt(9), _SOURCE)
        slices.append(Slice(height, marks, before_pt=STEP_PT if slices else 4 * STEP_PT))
    return slices


def _sizes(sizes: Sequence[BlockFacts]) -> list[Slice]:
    """The measures of the one size, or a table of all."""
    return sheet_head(sizes[0])[1:2] if len(sizes) == 1 else size_table(sizes)
