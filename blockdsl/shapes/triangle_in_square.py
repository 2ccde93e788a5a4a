"""`triangle-in-square a on b [c]`: a triangle as wide and as high as the cell, point up, a narrow one on each side."""

from __future__ import annotations

from blockdsl.geometry import Exact
from blockdsl.model import ShapeUse
from blockdsl.shapes.outlines import outline
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader


def _read(words: WordReader) -> ShapeUse | None:
    middle = words.word()
    if not middle or not words.is_next("on") or not (left := words.word()):
        return None
    right = left if words.done else words.word()
    return ShapeUse("triangle-in-square", (middle, left, right)) if right and words.done else None


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    middle, left, right = filling.fabrics
    zero, point = 0 * width, (width / 2, 0 * width)
    return (
        (left, outline((zero, zero), point, (zero, height))),
        (middle, outline(point, (width, height), (zero, height))),
        (right, outline(point, (width, zero), (width, height))),
    )


SHAPE = Shape(
    "triangle-in-square",
    "triangle-in-square TRIANGLE on BACKGROUND [RIGHT-BACKGROUND]",
    "triangle in a square",
    "a triangle on the whole lower side, its point in the middle of the upper one, with a narrow one on each side",
    None,
    _read,
    _draw,
    former=("peak",),
    middle=1,
    also_called=("triangle in a square",),
)
