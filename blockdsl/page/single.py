"""Pictures that stand alone, each a page of its own size: in colour, with letters, the grid, the cutting table."""

from __future__ import annotations

from typing import Final

from blockdsl.document.cutting import cutting
from blockdsl.facts.blockfacts import BlockFacts, ColourwayFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.marks.display_list import Figure, Page
from blockdsl.marks.theme import CONTENT_WIDTH_PT, Box
from blockdsl.page.flow import in_columns
from blockdsl.page.parts import flowables
from blockdsl.pictures.block import block_picture, grid_diagram, letter_diagram
from blockdsl.pictures.quilt import quilt_picture, rows_picture
from blockdsl.wording.messages import words_of

_SIDE_PT: Final = 432.0
_MARGIN_PT: Final = 12.0
TALLEST_PT: Final = 7_200.0
"""A picture taller than 100 in is set in columns: no program shows it well."""


def quilt_page(facts: QuiltFacts) -> Page:
    """The quilt in colour, its longer side 6 in."""
    return _alone(*quilt_picture(facts, _box()))


def rows_page(facts: QuiltFacts) -> Page:
    """The quilt's rows drawn apart, at most 6 in wide and high."""
    return _alone(*rows_picture(facts, _box()))


def _alone(picture: Figure, filled: Box) -> Page:
    """The picture on a page just larger than itself."""
    return Page(filled.width_pt + 2 * _MARGIN_PT, filled.height_pt + 2 * _MARGIN_PT, (picture,))


def _box() -> Box:
    return Box(_MARGIN_PT, _MARGIN_PT, _SIDE_PT, _SIDE_PT)


def colour_page(facts: BlockFacts, colourway: ColourwayFacts | None = None) -> Page:
    """The block in colour, its longer side 6 in."""
    return _alone(*block_picture(facts, _box(), colourway=colourway))


def letters_page(facts: BlockFacts) -> Page:
    """The lettered diagram of the patches, at most 6 in wide and high."""
    return _alone(*letter_diagram(facts, _box()))


def grid_page(facts: BlockFacts) -> Page:
    """The grid with the size of its cells, at most 6 in wide and high."""
    return _alone(*grid_diagram(facts, _box()))


def cutting_page(facts: BlockFacts) -> Page:
    """The cutting table alone, as wide as on the sheet and as tall as it needs to be; a very long one in columns."""
    return in_columns(flowables(cutting((facts,), 2), words_of(facts)), CONTENT_WIDTH_PT, TALLEST_PT, _MARGIN_PT)
