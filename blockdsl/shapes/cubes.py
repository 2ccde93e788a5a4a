"""`cubes TOP LEFT RIGHT across 4`: a honeycomb whose hexagons are each three 60° diamonds, like boxes seen from above.

The three meet in the middle of the hexagon: TOP lies between its upper three corners, LEFT and RIGHT below it.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import accumulate, pairwise

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes.fields import trimmed
from blockdsl.shapes.hexagons import MOST_ACROSS, about_how_many, honeycomb
from blockdsl.shapes.outlines import outline
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader

DIAMONDS = 3


def _read(words: WordReader) -> ShapeUse | None:
    fabrics = words.several("across")
    across = words.count(MOST_ACROSS) if words.is_next("across") else None
    if len(fabrics) != DIAMONDS or across is None or not words.done:
        return None
    return ShapeUse("cubes", fabrics, (Fraction(across),))


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    return tuple(cloth for box in _boxes(filling, width, height) for cloth in box)


def _boxes(filling: ShapeUse, width: Exact, height: Exact) -> Iterator[list[Cloth]]:
    """What shows of each box."""
    for hexagon in honeycomb(int(filling.numbers[0]), width, height):
        top, right, lower_right, bottom, lower_left, left = hexagon.outline()
        middle = (hexagon.x, hexagon.y)
        diamonds = (
            outline(top, right, middle, left),
            outline(left, middle, bottom, lower_left),
            outline(middle, right, lower_right, bottom),
        )
        shown = (
            (fabric, trimmed(diamond, width, height)) for fabric, diamond in zip(filling.fabrics, diamonds, strict=True)
        )
        yield [(fabric, inside) for fabric, inside in shown if inside]


def _parts(filling: ShapeUse, width: Exact, height: Exact) -> tuple[tuple[int, int], ...]:
    """Each box by itself."""
    stops = [0, *accumulate(len(box) for box in _boxes(filling, width, height))]
    return tuple(pairwise(stops))


def _count(filling: ShapeUse, width: Exact, height: Exact) -> int:
    return DIAMONDS * about_how_many(int(filling.numbers[0]), width, height)


def _measured(filling: ShapeUse, width: Exact, _height: Exact) -> Exact:
    """The height of a diamond: half of a hexagon from flat to flat."""
    return width / int(filling.numbers[0]) / 2


SHAPE = Shape(
    "cubes",
    "cubes TOP LEFT RIGHT across 4",
    "cubes of 60° diamonds",
    "three diamonds to each hexagon of a honeycomb, like boxes seen from above, trimmed at top and bottom",
    None,
    _read,
    _draw,
    count=_count,
    measured=_measured,
    parts=_parts,
    also_called=("tumbling block",),
)
