"""`half-rectangle a b`: a rectangle cut corner to corner, the line running from bottom left to top right."""

from __future__ import annotations

from blockdsl.geometry import Exact
from blockdsl.model import ShapeUse
from blockdsl.shapes.outlines import outline
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader


def _read(words: WordReader) -> ShapeUse | None:
    left, right = words.word(), words.word()
    return ShapeUse("half-rectangle", (left, right)) if left and right and words.done else None


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    left, right = filling.fabrics
    zero = 0 * width
    return (
        (left, outline((zero, zero), (width, zero), (zero, height))),
        (right, outline((width, zero), (width, height), (zero, height))),
    )


SHAPE = Shape(
    "half-rectangle",
    "half-rectangle LEFT RIGHT",
    "half-rectangle triangle",
    "a rectangle of two triangles; LEFT fills the top left corner. A turn never makes the line slant the other way: "
    "mirror it with `~`",
    None,
    _read,
    _draw,
    also_called=("hrt", "half rectangle triangle"),
)
