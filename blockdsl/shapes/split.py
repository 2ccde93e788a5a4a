"""`split a b c`: one half-square triangle and two quarter-square triangles."""

from __future__ import annotations

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes.outlines import outline
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader


def _read(words: WordReader) -> ShapeUse | None:
    large, right, bottom = words.word(), words.word(), words.word()
    if not (large and right and bottom and words.done):
        return None
    return ShapeUse("split", (large, right, bottom))


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    large, right, bottom = filling.fabrics
    zero, middle = 0 * width, (width / 2, height / 2)
    return (
        (large, outline((zero, zero), (width, zero), (zero, height))),
        (right, outline((width, zero), (width, height), middle)),
        (bottom, outline((width, height), (zero, height), middle)),
    )


SHAPE = Shape(
    "split",
    "split HALF RIGHT BOTTOM",
    "split square",
    "a square of one large triangle (top left) and two small ones (right and bottom)",
    Fraction(1),
    _read,
    _draw,
    turning=(1, 2),
)
