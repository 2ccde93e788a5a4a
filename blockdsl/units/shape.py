"""What a shape of the language is, and the list of them.

A new shape is one file beside this one and one line in `SHAPES`: grammar, checks, cutting, help and the
language reference learn of it from here.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction

from blockdsl.geometry import Exact, Polygon
from blockdsl.model import Filling
from blockdsl.units.words import WordReader

Cloth = tuple[str, Polygon]
"""A fabric and the finished outline that it fills."""


@dataclass(frozen=True, slots=True)
class Shape:
    """One shape of the language.

    `usage` is how it is written, `title` its name in the trade. `proportion` is width over height, or None
    when any box will do. `read` gives None when the words do not fit. `draw` fills a box width × height
    (origin top left) and gives the patches in reading order.
    """

    name: str
    usage: str
    title: str
    summary: str
    proportion: Fraction | None
    read: Callable[[WordReader], Filling | None]
    draw: Callable[[Filling, Exact, Exact], tuple[Cloth, ...]]


def _all_shapes() -> dict[str, Shape]:
    from blockdsl.units import (  # noqa: PLC0415  the shapes use the class above
        bars,
        checker,
        diamond,
        geese,
        half,
        hourglass,
        quarters,
        rails,
        snowball,
        split,
        square,
    )

    modules = (square, half, quarters, hourglass, split, geese, diamond, snowball, rails, bars, checker)
    return {module.SHAPE.name: module.SHAPE for module in modules}


SHAPES: dict[str, Shape] = {}
SHAPES.update(_all_shapes())
