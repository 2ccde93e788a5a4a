"""`long-diamond a on b [c d e]`: a diamond in a rectangle; b alone, or the corners clockwise from the top left."""

from __future__ import annotations

from blockdsl.geometry import Exact
from blockdsl.model import ShapeUse
from blockdsl.shapes.diamond import CORNERS, draw_diamond
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader


def _read(words: WordReader) -> ShapeUse | None:
    centre = words.word()
    if not centre or not words.is_next("on"):
        return None
    corners = words.rest() or ()
    if len(corners) == 1:
        corners *= CORNERS
    return ShapeUse("long-diamond", (centre, *corners)) if len(corners) == CORNERS else None


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    return draw_diamond(filling, width, height)


SHAPE = Shape(
    "long-diamond",
    "long-diamond CENTRE on CORNERS, or long-diamond CENTRE on TOP-LEFT TOP-RIGHT BOTTOM-RIGHT BOTTOM-LEFT",
    "diamond in a rectangle",
    "a diamond that touches the middles of the four sides, with a triangle at each corner",
    None,
    _read,
    _draw,
    middle=2,
)
