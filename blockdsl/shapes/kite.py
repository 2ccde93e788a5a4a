"""`kite a on b [c] [cut 1/2]`: a kite from the bottom left corner to the top right one, a triangle on each side."""

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
    kite = words.word()
    if not kite or not words.is_next("on"):
        return None
    sides = words.several("cut")
    cut = words.number() if words.is_next("cut") else USUAL_CUT
    if len(sides) not in (1, 2) or not words.done or cut is None or not 0 < cut < 1:
        return None
    return ShapeUse("kite", (kite, sides[0], sides[-1]), (cut,))


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    kite, left, right = filling.fabrics
    zero, cut = 0 * width, filling.numbers[0] * width
    tail, head, on_top, on_right = (zero, height), (width, zero), (width - cut, zero), (width, cut)
    return (
        (left, outline((zero, zero), on_top, tail)),
        (kite, outline(on_top, head, on_right, tail)),
        (right, outline(on_right, (width, height), tail)),
    )


SHAPE = Shape(
    "kite",
    "kite KITE on SIDES [RIGHT-SIDE] [cut 1/2]",
    "kite in a square",
    "a kite with its tail at the bottom left and its head at the top right, a triangle on each side; cut is the share "
    "of the side that the head takes",
    Fraction(1),
    _read,
    _draw,
    middle=1,
)
