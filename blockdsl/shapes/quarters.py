"""`quarters a b c d`: four quarter-square triangles, top, right, bottom, left."""

from __future__ import annotations

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes.outlines import outline
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader

CORNERS = 4


def _read(words: WordReader) -> ShapeUse | None:
    fabrics = words.rest()
    return ShapeUse("quarters", fabrics) if fabrics and len(fabrics) == CORNERS else None


def draw_quarters(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    """The four quarters of a box, top, right, bottom, left, in the four fabrics of `filling`."""
    top, right, bottom, left = filling.fabrics
    zero, middle = 0 * width, (width / 2, height / 2)
    return (
        (top, outline((zero, zero), (width, zero), middle)),
        (right, outline((width, zero), (width, height), middle)),
        (bottom, outline((width, height), (zero, height), middle)),
        (left, outline((zero, height), (zero, zero), middle)),
    )


SHAPE = Shape(
    "quarters",
    "quarters TOP RIGHT BOTTOM LEFT",
    "quarter-square unit",
    "a square of four triangles that meet in the middle",
    Fraction(1),
    _read,
    draw_quarters,
    turning=(0, 1),
)
