"""`bars a b c …`: equal strips side by side."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.geometry import Exact, Polygon
from blockdsl.model import ShapeUse
from blockdsl.shapes.outlines import LETTERS, box
from blockdsl.shapes.shape import Cloth, DrawnUnit, Shape
from blockdsl.shapes.words import WordReader


def _read(words: WordReader) -> ShapeUse | None:
    fabrics = words.rest()
    return ShapeUse("bars", fabrics) if fabrics else None


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    count, zero = len(filling.fabrics), 0 * width
    step = width / count
    return tuple((fabric, box(step * i, zero, step * (i + 1), height)) for i, fabric in enumerate(filling.fabrics))


def _counts(outlines: Sequence[Polygon]) -> tuple[int, ...]:
    return len(outlines), 1


def _written_as(unit: DrawnUnit) -> str:
    return " ".join(["bars", *LETTERS[: len(unit.outlines)]])


SHAPE = Shape(
    "bars",
    "bars LEFT … RIGHT",
    "bar unit",
    "equal strips, side by side",
    None,
    _read,
    _draw,
    counts=_counts,
    written_as=_written_as,
)
