"""`geese a on b [c]`: flying geese, point up; c is the right sky when it differs."""

from __future__ import annotations

from fractions import Fraction

from blockdsl.geometry import Exact
from blockdsl.model import Filling
from blockdsl.shapes.outlines import outline
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader


def _read(words: WordReader) -> Filling | None:
    goose = words.word()
    if not goose or not words.is_next("on") or not (left := words.word()):
        return None
    right = left if words.done else words.word()
    return Filling("geese", (goose, left, right)) if right and words.done else None


def _draw(filling: Filling, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    goose, left, right = filling.fabrics
    zero, point = 0 * width, (width / 2, 0 * width)
    return (
        (left, outline((zero, zero), point, (zero, height))),
        (goose, outline(point, (width, height), (zero, height))),
        (right, outline(point, (width, zero), (width, height))),
    )


SHAPE = Shape(
    "geese",
    "geese GOOSE on SKY [RIGHT-SKY]",
    "flying geese",
    "a large triangle, point up, with a small one on each side; twice as wide as high",
    Fraction(2),
    _read,
    _draw,
)
