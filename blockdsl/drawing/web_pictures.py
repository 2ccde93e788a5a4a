"""The pictures of the web pages: those of the sheet, each on a page just large enough for it."""

from __future__ import annotations

from typing import Final

from blockdsl.drawing.diagram import block_picture, fabrics_of, letter_diagram, swatch, unit_picture
from blockdsl.drawing.marks import Figure, Page
from blockdsl.drawing.theme import Box
from blockdsl.facts.blockfacts import BlockFacts, ColouringFacts, FabricFacts, UnitFacts

_LARGE_PT: Final = 432.0
_SMALL_PT: Final = 180.0
_UNIT_PT: Final = 108.0
_SWATCH_PT: Final = (30.0, 15.0)
_EDGE_PT: Final = 1.0  # room for half of an outline


def _box(side_pt: float) -> Box:
    return Box(_EDGE_PT, _EDGE_PT, side_pt, side_pt)


def _around(figure: Figure, filled: Box) -> Page:
    return Page(filled.right_pt + _EDGE_PT, filled.bottom_pt + _EDGE_PT, (figure,))


def colour_page(facts: BlockFacts, colouring: ColouringFacts | None = None) -> Page:
    """The block in colour, large."""
    return _around(*block_picture(facts, _box(_LARGE_PT), colouring=colouring))


def small_page(facts: BlockFacts) -> Page:
    """The block in colour as it stands beside its name in a list."""
    return _around(*block_picture(facts, _box(_SMALL_PT)))


def letters_page(facts: BlockFacts) -> Page:
    """The line drawing with the letters of the patches."""
    return _around(*letter_diagram(facts, _box(_LARGE_PT)))


def unit_page(facts: BlockFacts, unit: UnitFacts) -> Page:
    """A unit in the block's own colours."""
    return _around(*unit_picture(unit, fabrics_of(facts), _box(_UNIT_PT), unit_of_length=facts.unit))


def swatch_page(fabric: FabricFacts) -> Page:
    """A small rectangle of the fabric."""
    width, height = _SWATCH_PT
    marks = swatch(fabric, Box(_EDGE_PT, _EDGE_PT, width, height))
    return Page(width + 2 * _EDGE_PT, height + 2 * _EDGE_PT, marks)
