"""What a part of a book is about, as a small picture and in a few words."""

from __future__ import annotations

from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Figure
from blockdsl.marks.theme import Box
from blockdsl.page.book.parts import BookPart
from blockdsl.pictures.block import block_picture
from blockdsl.pictures.quilt import quilt_picture
from blockdsl.wording.lengths import show_extent
from blockdsl.wording.messages import words_of
from blockdsl.wording.sheet import format_sizes


def part_picture(part: BookPart, box: Box) -> tuple[Figure, Box]:
    """The block or the quilt that a part is about, as large as the box allows; and the box it fills.

    Errors: ValueError for a part that is about neither.
    """
    if part.quilt is not None:
        return quilt_picture(part.quilt, box, name=part.anchor)
    if part.block is None:
        raise ValueError(f"{part.title} has no picture")
    return block_picture(part.block.sizes[0], box)


def format_part(part: BookPart) -> str:
    """The sizes of a block, the size of a quilt."""
    if part.quilt is not None:
        words = words_of(part.quilt)
        return words("book-quilt-size", size=show_extent(part.quilt.finished, part.quilt.unit, words))
    return fraction_text(format_sizes(part.block.sizes)) if part.block is not None else ""
