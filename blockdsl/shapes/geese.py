"""`geese a on b [c]`: flying geese, point up; c is the right sky when it differs."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes.outlines import outline
from blockdsl.shapes.shape import Cloth, DrawnUnit, Shape
from blockdsl.shapes.words import WordReader


def _read(words: WordReader) -> ShapeUse | None:
    goose = words.word()
    if not goose or not words.is_next("on") or not (left := words.word()):
        return None
    right = left if words.done else words.word()
    return ShapeUse("geese", (goose, left, right)) if right and words.done else None


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    goose, left, right = filling.fabrics
    zero, point = 0 * width, (width / 2, 0 * width)
    return (
        (left, outline((zero, zero), point, (zero, height))),
        (goose, outline(point, (width, height), (zero, height))),
        (right, outline(point, (width, zero), (width, height))),
    )


def _corners(_outlines: Sequence[Polygon]) -> tuple[str, ...]:
    return ("tl", "tr")


def _written_as(unit: DrawnUnit) -> str:
    return unit.writes if unit.fabrics.get(2) == unit.fabrics.get(1) else f"{unit.writes} c"


SHAPE = Shape(
    "geese",
    "geese GOOSE on SKY [RIGHT-SKY]",
    "flying geese",
    "a large triangle, point up, with a small one on each side; twice as wide as high",
    Fraction(2),
    _read,
    _draw,
    also_called=("flying geese", "flying goose", "goose"),
    middle=1,
    turning=(1, 2),
    corners=_corners,
    written_as=_written_as,
)
