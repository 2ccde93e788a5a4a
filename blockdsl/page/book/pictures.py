"""The pictures of a book: what a part is about, small; of a block its colours, its letters and its other colourways."""

from __future__ import annotations

from typing import Final

from blockdsl.facts.blockfacts import BlockFacts, ColourwayFacts, FabricFacts
from blockdsl.geometry import to_float
from blockdsl.marks.display_list import Figure, Mark, moved
from blockdsl.marks.prose import TextStyle, fitted, line
from blockdsl.marks.theme import GUTTER_PT, INK, LEAD_PT, QUIET, SMALL_PT, STEP_PT, Box, span_pt
from blockdsl.page.book.parts import BookPart
from blockdsl.page.flow import Flowable
from blockdsl.page.headings import continued, heading
from blockdsl.page.sheet.fabrics import key_column
from blockdsl.page.sheet.head import pictures_of
from blockdsl.page.sheet.size_tables import format_sizes
from blockdsl.pictures.block import block_picture, fabrics_of, letter_diagram
from blockdsl.pictures.quilt import quilt_picture
from blockdsl.wording.lengths import show_extent
from blockdsl.wording.messages import words_of

_CAPTION: Final = TextStyle(SMALL_PT, "regular", QUIET)
_NAME: Final = TextStyle(LEAD_PT, "bold", INK)
_COLOUR_COLUMNS: Final = 5
_LETTER_COLUMNS: Final = 4
_KEY_COLUMNS: Final = 3
_ACROSS: Final = 4
_MOST_TOLD: Final = 6
_WIDEST: Final = 1.6
_TALLEST: Final = 0.7
_MOST_PATCHES: Final = 100
"""With more the letters want a larger picture."""


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
    return format_sizes(part.block.sizes) if part.block is not None else ""


def book_pictures(facts: BlockFacts) -> list[Flowable]:
    """Colour, letters and key side by side, so that the cutting begins on the same page.

    A block that is far from square, has very many patches or more fabrics than the row is high is pictured as on its
    sheet.
    """
    ratio = to_float(facts.finished[0]) / to_float(facts.finished[1])
    side = span_pt(_COLOUR_COLUMNS)
    key_height, key = key_column(facts.fabrics, span_pt(_KEY_COLUMNS), words_of(facts))
    if not _TALLEST < ratio < _WIDEST or len(facts.placed) > _MOST_PATCHES or key_height > side:
        return pictures_of(facts)
    colour, placed = block_picture(facts, Box(0.0, 0.0, side, side))
    width = span_pt(_LETTER_COLUMNS)
    letters, filled = letter_diagram(facts, Box(0.0, 0.0, width, side))
    top = filled.bottom_pt + STEP_PT
    caption = line(words_of(facts)("sheet-letters"), filled.x_pt, top + _CAPTION.baseline_pt, _CAPTION)
    marks = (
        colour,
        *moved((letters, *caption), side + GUTTER_PT, 0.0),
        *moved(key, side + width + 2 * GUTTER_PT, 0.0),
    )
    return [Flowable(max(placed.height_pt, top + _CAPTION.line_pt, key_height), marks, before_pt=4 * STEP_PT)]


def other_colourways(facts: BlockFacts) -> list[Flowable]:
    """Four colourways on each flowable, each over its name and its key; nothing when the block has one alone."""
    if not facts.colourways:
        return []
    cards = [_card(facts, colourway) for colourway in facts.colourways]
    words = words_of(facts)
    title = words("book-other-colorways")
    flowables = [heading(title)]
    for start in range(0, len(cards), _ACROSS):
        row = cards[start : start + _ACROSS]
        marks: list[Mark] = []
        for place, (_, card) in enumerate(row):
            marks += moved(card, place * (span_pt(_KEY_COLUMNS) + GUTTER_PT), 0.0)
        before = (5 if start else 1) * STEP_PT
        head = (continued(title, words),)
        flowables.append(Flowable(max(height for height, _ in row), tuple(marks), before, head=head))
    return flowables


def _card(facts: BlockFacts, colourway: ColourwayFacts) -> tuple[float, tuple[Mark, ...]]:
    side = span_pt(_KEY_COLUMNS)
    picture, placed = block_picture(facts, Box(0.0, 0.0, side, side), colourway=colourway)
    y = placed.height_pt + 1.5 * STEP_PT
    name = line(fitted(colourway.name, side, _NAME), 0.0, y + _NAME.baseline_pt, _NAME)
    y += _NAME.line_pt + 1.5 * STEP_PT
    height, key = key_column(_told(facts, colourway), side, words_of(facts), 2)
    return y + height, (picture, *name, *moved(key, 0.0, y))


def _told(facts: BlockFacts, colourway: ColourwayFacts) -> list[FabricFacts]:
    """The fabrics of a colourway, each once; of many those alone that take another's place."""
    fabrics = fabrics_of(facts, colourway)
    seen = {fabric.name: fabric for fabric in fabrics.values()}
    if len(seen) > _MOST_TOLD:
        seen = {fabric.name: fabric for name, fabric in fabrics.items() if fabric.name != name}
    return list(seen.values())
