"""`slant a between b c [cut 1/2]`: a strip that leans to the right, with a triangle on each side."""

from __future__ import annotations

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes.outlines import outline
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader

USUAL_CUT = Fraction(1, 2)
"""When nothing is said. Common practice, no source."""


def _read(words: WordReader) -> ShapeUse | None:
    strip = words.word()
    if not strip or not words.is_next("between"):
        return None
    left, right = words.word(), words.word()
    cut = words.number() if words.is_next("cut") else USUAL_CUT
    if not left or not right or not words.done or cut is None or not 0 < cut < 1:
        return None
    return ShapeUse("slant", (strip, left, right), (cut,))


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    strip, left, right = filling.fabrics
    zero, cut = 0 * width, filling.numbers[0] * width
    return (
        (left, outline((zero, zero), (cut, zero), (zero, height))),
        (strip, outline((cut, zero), (width, zero), (width - cut, height), (zero, height))),
        (right, outline((width, zero), (width, height), (width - cut, height))),
    )


SHAPE = Shape(
    "slant",
    "slant STRIP between LEFT RIGHT [cut 1/2]",
    "slanting strip",
    "a parallelogram that leans to the right, with a triangle at the top left and one at the bottom right; cut is the "
    "share of the width that each triangle takes: at 1/2 in a cell twice as wide as high it leans at 45°",
    None,
    _read,
    _draw,
)
