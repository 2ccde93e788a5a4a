"""`hourglass a b`: quarters with a at top and bottom, b at the sides."""

from __future__ import annotations

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes.quarters import draw_quarters
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader


def _read(words: WordReader) -> ShapeUse | None:
    upright, sides = words.word(), words.word()
    return ShapeUse("hourglass", (upright, sides)) if upright and sides and words.done else None


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    upright, sides = filling.fabrics
    return draw_quarters(ShapeUse("quarters", (upright, sides, upright, sides)), width, height)


SHAPE = Shape(
    "hourglass",
    "hourglass UPRIGHT SIDES",
    "hourglass",
    "a square of four triangles, opposite ones alike; UPRIGHT at top and bottom",
    Fraction(1),
    _read,
    _draw,
    also_called=("qst", "quarter square triangle", "quarter square"),
)
