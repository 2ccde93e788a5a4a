"""`rails a b c …`: equal strips stacked from top to bottom."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.geometry import Exact, Polygon
from blockdsl.model import ShapeUse
from blockdsl.shapes.outlines import LETTERS, box
from blockdsl.shapes.shape import Cloth, DrawnUnit, Shape
from blockdsl.shapes.words import WordReader


def _read(words: WordReader) -> ShapeUse | None:
    fabrics = words.rest()
    return ShapeUse("rails", fabrics) if fabrics else None


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    count, zero = len(filling.fabrics), 0 * width
    step = height / count
    return tuple((fabric, box(zero, step * i, width, step * (i + 1))) for i, fabric in enumerate(filling.fabrics))


def _counts(outlines: Sequence[Polygon]) -> tuple[int, ...]:
    return (len(outlines),)


def _written_as(unit: DrawnUnit) -> str:
    return " ".join(["rails", *LETTERS[: len(unit.outlines)]])


SHAPE = Shape(
    "rails",
    "rails TOP … BOTTOM",
    "rail unit",
    "equal strips, one below the other",
    None,
    _read,
    _draw,
    also_called=("strip", "rail fence"),
    upright_in=("strip set",),
    counts=_counts,
    written_as=_written_as,
)
