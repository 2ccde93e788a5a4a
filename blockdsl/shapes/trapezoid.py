"""`trapezoid a on b [c] [cut 1/4]`: a strip that narrows toward the top, a triangle in each corner there."""

from __future__ import annotations

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes.outlines import outline
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader

USUAL_CUT = Fraction(1, 4)
"""When nothing is said. Common practice, no source."""


def _read(words: WordReader) -> ShapeUse | None:
    middle = words.word()
    if not middle or not words.is_next("on"):
        return None
    corners = words.several("cut")
    cut = words.number() if words.is_next("cut") else USUAL_CUT
    if len(corners) not in (1, 2) or not words.done or cut is None or not 0 < cut < Fraction(1, 2):
        return None
    return ShapeUse("trapezoid", (middle, corners[0], corners[-1]), (cut,))


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    middle, left, right = filling.fabrics
    zero, cut = 0 * width, filling.numbers[0] * width
    return (
        (left, outline((zero, zero), (cut, zero), (zero, height))),
        (middle, outline((cut, zero), (width - cut, zero), (width, height), (zero, height))),
        (right, outline((width - cut, zero), (width, zero), (width, height))),
    )


SHAPE = Shape(
    "trapezoid",
    "trapezoid MIDDLE on CORNERS [RIGHT-CORNER] [cut 1/4]",
    "trapezoid unit",
    "a strip that narrows toward the top, with a triangle in both upper corners; cut is the share of the width that "
    "each of them takes",
    None,
    _read,
    _draw,
    middle=1,
)
