"""A block in a book: its pictures once, then what to cut and to make at each of its sizes, and what is said of it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.drawing.book_parts import Bodies, flowed, part_title
from blockdsl.drawing.book_sizes import cutting_tables, size_table
from blockdsl.drawing.book_units import units_at_sizes
from blockdsl.drawing.book_words import read_words
from blockdsl.drawing.flow import Slice
from blockdsl.drawing.prose import Style, paragraph
from blockdsl.drawing.sheet_colourings import colouring_gallery
from blockdsl.drawing.sheet_head import pictures_of, sheet_head
from blockdsl.drawing.sheet_notes import designer_notes
from blockdsl.drawing.theme import BODY_PT, CONTENT_WIDTH_PT, QUIET, STEP_PT, Paper
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.bookfacts import BookBlockFacts, WordsFacts

_REMARK: Final = Style(BODY_PT, "regular", QUIET)
_TEMPLATES: Final = (
    "Pieces marked “by template” are cut around full-size templates, which are printed in a file of their own for each "
    "size: the test square on it must measure 1 in. Their sizes here are those of the cloth that each takes."
)


def block_pages(block: BookBlockFacts, words: Sequence[WordsFacts], over: str, paper: Paper) -> Bodies:
    """All pages of one block without their feet; `over` stands above its name."""
    first = block.sizes[0]
    slices = [part_title(block.name, over), *_sizes(block.sizes), *pictures_of(first)]
    slices += cutting_tables(block.sizes)
    if any(cut.piece == "template" for facts in block.sizes for cut in facts.cutting):
        height, marks = paragraph(_TEMPLATES, CONTENT_WIDTH_PT, _REMARK)
        slices.append(Slice(height, marks, before_pt=2.5 * STEP_PT))
    slices += units_at_sizes(block.sizes)
    slices += colouring_gallery(first)
    slices += designer_notes(first.notes)
    for text in words:
        slices += said(text)
    return flowed(slices, paper)


def _sizes(sizes: Sequence[BlockFacts]) -> list[Slice]:
    """The measures of the one size, or a table of all."""
    return sheet_head(sizes[0])[1:2] if len(sizes) == 1 else size_table(sizes)


def said(text: WordsFacts) -> list[Slice]:
    """The maker's words after a block; a title that they begin with becomes their first heading."""
    words = read_words(text.markdown)
    if not words.title:
        return list(words.slices)
    return list(read_words(f"#{text.markdown.lstrip()}").slices)
