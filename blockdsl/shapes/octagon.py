"""`octagon a with b [c d e]`: a regular octagon in a square; b alone, or the corners clockwise from the top left."""

from __future__ import annotations

from blockdsl.geometry import Exact, square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes.outlines import outline
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader

CORNERS = 4


def _read(words: WordReader) -> ShapeUse | None:
    octagon = words.word()
    if not octagon or not words.is_next("with"):
        return None
    corners = words.rest() or ()
    if len(corners) == 1:
        corners *= CORNERS
    return ShapeUse("octagon", (octagon, *corners)) if len(corners) == CORNERS else None


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    """Corners of (2 - √2)/2 of the side: then a cut corner is as long as what is left of the side, (√2 - 1)."""
    octagon, top_left, top_right, bottom_right, bottom_left = filling.fabrics
    zero, cut = 0 * width, width * (2 - square_root(2)) / 2
    far, low = width - cut, height - cut
    rim = ((cut, zero), (far, zero), (width, cut), (width, low), (far, height), (cut, height), (zero, low), (zero, cut))
    return (
        (octagon, outline(*rim)),
        (top_left, outline((zero, cut), (zero, zero), (cut, zero))),
        (top_right, outline((far, zero), (width, zero), (width, cut))),
        (bottom_left, outline((cut, height), (zero, height), (zero, low))),
        (bottom_right, outline((width, low), (width, height), (far, height))),
    )


SHAPE = Shape(
    "octagon",
    "octagon OCTAGON with CORNERS, or octagon OCTAGON with TOP-LEFT TOP-RIGHT BOTTOM-RIGHT BOTTOM-LEFT",
    "octagon",
    "a regular octagon, all its sides equal, with a triangle at each corner",
    Fraction(1),
    _read,
    _draw,
    middle=0,
)
