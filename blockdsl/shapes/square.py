"""`square a`: one patch that fills the cell."""

from __future__ import annotations

from blockdsl.geometry import Exact
from blockdsl.model import ShapeUse
from blockdsl.shapes.outlines import box
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader


def _read(words: WordReader) -> ShapeUse | None:
    fabric = words.word()
    return ShapeUse("square", (fabric,)) if fabric and words.done else None


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    zero = 0 * width
    return ((filling.fabrics[0], box(zero, zero, width, height)),)


SHAPE = Shape("square", "square FABRIC", "plain patch", "one patch that fills the cell", None, _read, _draw)
