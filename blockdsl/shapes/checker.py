"""`checker R x C a b`: squares or rectangles of two fabrics in turn; four-patch and nine-patch are checkers."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import bounding_box
from blockdsl.model import ShapeUse
from blockdsl.shapes.outlines import box
from blockdsl.shapes.shape import Cloth, DrawnUnit, Shape
from blockdsl.shapes.words import WordReader

MOST = 200


def _read(words: WordReader) -> ShapeUse | None:
    down = words.number()
    if down is None or not (words.is_next("x") or words.is_next("×")):
        return None
    across = words.number()
    first, second = words.word(), words.word()
    if across is None or not first or not second or not words.done:
        return None
    if any(number.denominator != 1 or not 1 <= number <= MOST for number in (down, across)):
        return None
    return ShapeUse("checker", (first, second), (down, across))


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    down, across = (int(number) for number in filling.numbers)
    lines_x = [width * Fraction(i, across) for i in range(across + 1)]
    lines_y = [height * Fraction(i, down) for i in range(down + 1)]
    return tuple(
        (filling.fabrics[(row + column) % 2], box(lines_x[column], lines_y[row], lines_x[column + 1], lines_y[row + 1]))
        for row in range(down)
        for column in range(across)
    )


def _counts(outlines: Sequence[Polygon]) -> tuple[int, ...]:
    rows = len({bounding_box(outline)[1] for outline in outlines})
    return rows, len(outlines) // rows


def _written_as(unit: DrawnUnit) -> str:
    rows, columns = _counts(unit.outlines)
    return f"checker {rows} x {columns} a b"


SHAPE = Shape(
    "checker",
    "checker ROWS x COLUMNS FIRST SECOND",
    "checkerboard",
    "equal patches of two fabrics in turn; FIRST is at the top left",
    None,
    _read,
    _draw,
    also_called=("four patch", "nine patch", "checkerboard"),
    upright_in=("strip set",),
    counts=_counts,
    written_as=_written_as,
)
