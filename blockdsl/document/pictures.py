"""The pictures of the web pages: those of the sheets, each on a page just large enough for it."""

from __future__ import annotations

from typing import Final

from blockdsl.document.finishing import PICTURE
from blockdsl.facts.blockfacts import BlockFacts, ColourwayFacts, FabricFacts, UnitFacts
from blockdsl.facts.finishingfacts import ScrapsFacts
from blockdsl.facts.quiltfacts import QuiltFacts, RingFacts
from blockdsl.marks.display_list import Figure, Page, moved
from blockdsl.marks.theme import CONTENT_WIDTH_PT, Box
from blockdsl.pictures.block import block_picture, fabrics_of, letter_diagram, swatch, unit_picture
from blockdsl.pictures.border import mitre_picture, ring_picture
from blockdsl.pictures.quilt import quilt_picture, rows_picture
from blockdsl.pictures.spread import prints_picture
from blockdsl.wording.messages import Messages, words_of

_LARGE_PT: Final = 432.0
_SMALL_PT: Final = 180.0
_RING_PT: Final = 216.0
_MITRE_PT: Final = (290.0, 74.0)
_UNIT_PT: Final = 108.0
_SWATCH_PT: Final = (30.0, 15.0)
_EDGE_PT: Final = 1.0  # room for half of an outline


def _box(side_pt: float) -> Box:
    return Box(_EDGE_PT, _EDGE_PT, side_pt, side_pt)


def _around(figure: Figure, filled: Box) -> Page:
    return Page(filled.right_pt + _EDGE_PT, filled.bottom_pt + _EDGE_PT, (figure,))


def colour_page(facts: BlockFacts, colourway: ColourwayFacts | None = None) -> Page:
    """The block in colour, large."""
    return _around(*block_picture(facts, _box(_LARGE_PT), colourway=colourway))


def small_page(facts: BlockFacts) -> Page:
    """The block in colour as it stands beside its name in a list."""
    return _around(*block_picture(facts, _box(_SMALL_PT)))


def letters_page(facts: BlockFacts) -> Page:
    """The lettered diagram of the patches."""
    return _around(*letter_diagram(facts, _box(_LARGE_PT)))


def unit_page(facts: BlockFacts, unit: UnitFacts) -> Page:
    """A unit in the block's own colours."""
    return _around(*unit_picture(unit, fabrics_of(facts), _box(_UNIT_PT), words_of(facts), unit_of_length=facts.unit))


def swatch_page(fabric: FabricFacts) -> Page:
    """A small rectangle of the fabric."""
    width, height = _SWATCH_PT
    marks = swatch(fabric, Box(_EDGE_PT, _EDGE_PT, width, height))
    return Page(width + 2 * _EDGE_PT, height + 2 * _EDGE_PT, marks)


# --- quilts --------------------------------------------------------------------------------------------


def quilt_page(facts: QuiltFacts) -> Page:
    """The quilt in colour, large."""
    return _around(*quilt_picture(facts, _box(_LARGE_PT)))


def small_quilt_page(facts: QuiltFacts, name: str) -> Page:
    """The quilt as it stands beside its name in a list; `name` tells it from other quilts on the page."""
    return _around(*quilt_picture(facts, _box(_SMALL_PT), name=name))


def rows_page(facts: QuiltFacts) -> Page:
    """The quilt's rows drawn apart."""
    return _around(*rows_picture(facts, _box(_LARGE_PT)))


def ring_page(facts: QuiltFacts, ring: RingFacts) -> Page:
    """A border drawn round the top."""
    return _around(*ring_picture(facts, ring, _box(_RING_PT)))


def mitre_page(words: Messages) -> Page:
    """How a mitred corner is sewn."""
    box = Box(_EDGE_PT, _EDGE_PT, _MITRE_PT[0], _MITRE_PT[1])
    return _around(mitre_picture(box, words), box)


def prints_page(facts: QuiltFacts, spread: ScrapsFacts, fabric: FabricFacts) -> Page:
    """Which block is of which print, with the list of the prints."""
    height, marks = prints_picture(facts, spread, fabric)
    return Page(CONTENT_WIDTH_PT + 2 * _EDGE_PT, height + 2 * _EDGE_PT, moved(marks, _EDGE_PT, _EDGE_PT))


def finishing_page(figure: Figure) -> Page:
    """A small picture of finishing."""
    marks = moved([figure], _EDGE_PT - PICTURE.x_pt, _EDGE_PT - PICTURE.y_pt)
    return Page(PICTURE.width_pt + 2 * _EDGE_PT, PICTURE.height_pt + 2 * _EDGE_PT, marks)
