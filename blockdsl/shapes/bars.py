"""`bars a b c …`: equal strips side by side."""

from __future__ import annotations

from blockdsl.geometry import Exact
from blockdsl.model import Filling
from blockdsl.shapes.outlines import box
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader


def _read(words: WordReader) -> Filling | None:
    fabrics = words.rest()
    return Filling("bars", fabrics) if fabrics else None


def _draw(filling: Filling, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    count, zero = len(filling.fabrics), 0 * width
    step = width / count
    return tuple((fabric, box(step * i, zero, step * (i + 1), height)) for i, fabric in enumerate(filling.fabrics))


SHAPE = Shape("bars", "bars LEFT … RIGHT", "bar unit", "equal strips, side by side", None, _read, _draw)
