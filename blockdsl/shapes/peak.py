"""`peak a on b [c]`: a triangle as wide and as high as the cell, point up, with a narrow one on each side."""

from __future__ import annotations

from blockdsl.geometry import Exact
from blockdsl.model import Filling
from blockdsl.shapes.outlines import outline
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader


def _read(words: WordReader) -> Filling | None:
    peak = words.word()
    if not peak or not words.is_next("on") or not (left := words.word()):
        return None
    right = left if words.done else words.word()
    return Filling("peak", (peak, left, right)) if right and words.done else None


def _draw(filling: Filling, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    peak, left, right = filling.fabrics
    zero, point = 0 * width, (width / 2, 0 * width)
    return (
        (left, outline((zero, zero), point, (zero, height))),
        (peak, outline(point, (width, height), (zero, height))),
        (right, outline(point, (width, zero), (width, height))),
    )


SHAPE = Shape(
    "peak",
    "peak PEAK on SKY [RIGHT-SKY]",
    "peak",
    "a triangle on the whole lower side, its point in the middle of the upper one, with a narrow one on each side; in "
    "a square cell the triangle in a square",
    None,
    _read,
    _draw,
)
