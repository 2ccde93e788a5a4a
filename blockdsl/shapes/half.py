"""`half a b`: two half-square triangles, the line running from bottom left to top right."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes.outlines import outline
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader


def _read(words: WordReader) -> ShapeUse | None:
    left, right = words.word(), words.word()
    return ShapeUse("half", (left, right)) if left and right and words.done else None


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    left, right = filling.fabrics
    zero = 0 * width
    return (
        (left, outline((zero, zero), (width, zero), (zero, height))),
        (right, outline((width, zero), (width, height), (zero, height))),
    )


def _corners(_outlines: Sequence[Polygon]) -> tuple[str, ...]:
    return ("br",)


SHAPE = Shape(
    "half",
    "half LEFT RIGHT",
    "half-square triangle",
    "a square of two triangles; LEFT fills the top left corner, as in LEFT/RIGHT",
    Fraction(1),
    _read,
    _draw,
    also_called=("hst", "half square triangle", "half square"),
    corners=_corners,
)
