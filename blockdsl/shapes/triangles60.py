"""`triangles60 a b … rows 3`: rows of equilateral triangles, points up and down in turn.

With R rows in a box of height H a triangle is h = H/R high and its side is 2h/√3, so that the next one begins h/√3
further on. Left and right the field is trimmed straight.
"""

from __future__ import annotations

from collections.abc import Iterator

from blockdsl.geometry import Exact, Polygon, floor_to
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes.fields import ROOT_THREE, reach, trimmed
from blockdsl.shapes.outlines import outline
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader

MOST_ROWS = 40


def _read(words: WordReader) -> ShapeUse | None:
    fabrics = words.several("rows")
    rows = words.number() if words.is_next("rows") else None
    if not fabrics or rows is None or rows.denominator != 1 or not 1 <= rows <= MOST_ROWS or not words.done:
        return None
    return ShapeUse("triangles60", fabrics, (rows,))


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    rows = int(filling.numbers[0])
    found: list[Cloth] = []
    for row in range(rows):
        for place, triangle in _triangles(row, rows, width, height):
            inside = trimmed(triangle, width, height)
            if inside:
                found.append((filling.fabrics[(place + row) % len(filling.fabrics)], inside))
    return tuple(found)


def _triangles(row: int, rows: int, width: Exact, height: Exact) -> Iterator[tuple[int, Polygon]]:
    """The triangles of a row from left to right; by number from the middle. Even ones of the first row point up."""
    high = height / rows
    pitch = high / ROOT_THREE
    middle = width / 2 + (pitch / 2 if _is_larger_aside(width, pitch) else 0)
    top, bottom = high * row, high * (row + 1)
    far = reach(width / 2, pitch) + 2
    for place in range(-far, far + 1):
        x = middle + place * pitch
        if x + pitch <= 0 or x - pitch >= width:
            continue
        if (place + row) % 2 == 0:
            yield place, outline((x, top), (x + pitch, bottom), (x - pitch, bottom))
        else:
            yield place, outline((x - pitch, top), (x + pitch, top), (x, bottom))


def _is_larger_aside(width: Exact, pitch: Exact) -> bool:
    """Whether the pieces at both ends are larger when the middle of a slanting seam, not a point, lies in the middle.

    From the middle to the edge are so many whole steps of h/√3 and a rest. The rest is the width of the piece at the
    end; moving the field by half a step makes it larger when it is less than that.
    """
    steps = width / 2 / pitch
    return steps - floor_to(steps, Fraction(1)) < Fraction(1, 2)


def _count(filling: ShapeUse, width: Exact, height: Exact) -> int:
    rows = int(filling.numbers[0])
    return rows * (2 * reach(width / 2, height / rows / ROOT_THREE) + 4)


def _measured(filling: ShapeUse, _width: Exact, height: Exact) -> Exact:
    """The height of a triangle."""
    return height / int(filling.numbers[0])


SHAPE = Shape(
    "triangles60",
    "triangles60 FABRIC … rows 3",
    "60° triangles",
    "rows of equilateral triangles, points up and down in turn, their fabrics in turn along each row; both ends are "
    "trimmed straight",
    None,
    _read,
    _draw,
    count=_count,
    measured=_measured,
    family="one-patch of 60° triangles",
)
