"""Pictures as content: each knows how to draw itself, and how much room it wants by itself."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import Final

from blockdsl.document.content import FabricKey, FabricLine, Picture
from blockdsl.facts.blockfacts import BlockFacts, ColourwayFacts, CutFacts, FabricFacts, UnitFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry import to_float
from blockdsl.marks.display_list import Figure, Mark, RasterMark, moved
from blockdsl.marks.theme import CONTENT_WIDTH_PT, Box
from blockdsl.pictures.block import Fabrics, block_picture, letter_diagram, swatch, unit_picture
from blockdsl.pictures.block_letters import MARGIN_PT
from blockdsl.pictures.quilt import quilt_picture
from blockdsl.pictures.strip import cut_picture
from blockdsl.raster import Raster
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.sheet import value_words

_LARGE_PT: Final = 432.0
_SMALL_PT: Final = 180.0
_UNIT_PT: Final = 108.0
_SWATCH_PT: Final = (30.0, 15.0)
_CUT_PT: Final = 264.0
_PHOTO_PT: Final = (254.0, 170.0)


def pictured(
    draw: Callable[[Box], tuple[Figure, Box]], width_pt: float, height_pt: float = 0.0, *, caption: str = ""
) -> Picture:
    """What draws one figure, as content; square unless its height is given."""

    def drawn(box: Box) -> tuple[tuple[Mark, ...], Box]:
        figure, filled = draw(box)
        return (figure,), filled

    return Picture(drawn, width_pt, height_pt or width_pt, caption)


def filling(draw: Callable[[Box], Figure | tuple[Mark, ...]], width_pt: float, height_pt: float) -> Picture:
    """What fills the whole box that it is given."""

    def drawn(box: Box) -> tuple[tuple[Mark, ...], Box]:
        found = draw(box)
        return ((found,) if isinstance(found, Figure) else found), box

    return Picture(drawn, width_pt, height_pt)


def photo(raster: Raster, alternative: str) -> Picture:
    """A picture of pixels, as large as a card of a step has room for."""

    def drawn(box: Box) -> tuple[tuple[Mark, ...], Box]:
        width = min(box.width_pt, box.height_pt * raster.ratio)
        filled = Box(box.x_pt, box.y_pt, width, width / raster.ratio)
        mark = RasterMark(raster, filled.x_pt, filled.y_pt, filled.width_pt, filled.height_pt)
        return (Figure(alternative, (mark,)),), filled

    return Picture(drawn, *_PHOTO_PT)


def in_colour(
    facts: BlockFacts, colourway: ColourwayFacts | None = None, *, small: bool = False, caption: str = ""
) -> Picture:
    """The block in colour, large, or small as beside its name in a list."""
    room = _room(facts, _SMALL_PT if small else _LARGE_PT)
    return pictured(partial(block_picture, facts, colourway=colourway), *room, caption=caption)


def _room(facts: BlockFacts, side_pt: float) -> tuple[float, float]:
    """The room of a block whose longer side is that long."""
    width, height = map(to_float, facts.finished)
    return side_pt * min(1.0, width / height), side_pt * min(1.0, height / width)


def by_letter(facts: BlockFacts) -> Picture:
    """The lettered diagram of the patches, with room for letters beside a block that is very narrow."""
    width, height = _room(facts, _LARGE_PT)
    caption = words_of(facts)("sheet-letters")
    return pictured(partial(letter_diagram, facts), max(width, 3 * MARGIN_PT), height, caption=caption)


def of_unit(facts: BlockFacts, unit: UnitFacts, fabrics: Fabrics) -> Picture:
    """A unit in the block's own colours."""
    words = words_of(facts)
    return pictured(lambda box: unit_picture(unit, fabrics, box, words, unit_of_length=facts.unit), _UNIT_PT)


def of_cut(facts: BlockFacts, cut: CutFacts) -> Picture:
    """How the pieces of a line are cut from a strip or a rectangle."""
    words = words_of(facts)

    def drawn(box: Box) -> tuple[Figure, Box]:
        height, figure = cut_picture(cut, facts.unit, box.width_pt, words)
        return _at(figure, box), Box(box.x_pt, box.y_pt, box.width_pt, height)

    return pictured(drawn, _CUT_PT, CONTENT_WIDTH_PT)


def _at(figure: Figure, box: Box) -> Figure:
    return Figure(figure.alternative, moved(figure.marks, box.x_pt, box.y_pt))


def swatch_of(fabric: FabricFacts) -> Picture:
    """A small rectangle of the fabric; the words beside it say what it is."""
    return Picture(lambda box: (swatch(fabric, box), box), *_SWATCH_PT, repeats=True)


def key_of(fabrics: list[FabricFacts] | tuple[FabricFacts, ...], words: Messages, *, brief: bool = False) -> FabricKey:
    """The key of these fabrics: swatch, number, label, value."""
    return FabricKey(
        tuple(
            FabricLine(swatch_of(fabric), fabric.number, fabric.label or fabric.name, value_words(fabric, words))
            for fabric in fabrics
        ),
        brief,
    )


# --- quilts --------------------------------------------------------------------------------------------


def of_quilt(facts: QuiltFacts, name: str = "quilt", *, small: bool = False) -> Picture:
    """The quilt in colour; `name` tells it from other pictures of quilts on the page."""
    return pictured(partial(quilt_picture, facts, name=name), _SMALL_PT if small else _LARGE_PT)
