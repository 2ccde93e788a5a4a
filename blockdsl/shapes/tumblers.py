"""`tumblers a b c … [taper 1/2]`: tumblers side by side, every other one upside down, half ones at both ends."""

from __future__ import annotations

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes.outlines import outline
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader

USUAL_TAPER = Fraction(1, 2)
"""When nothing is said. Common practice, no source."""
MOST_TUMBLERS = 100


def _read(words: WordReader) -> ShapeUse | None:
    fabrics = words.several("taper")
    taper = words.number() if words.is_next("taper") else USUAL_TAPER
    if not 2 <= len(fabrics) <= MOST_TUMBLERS or not words.done or taper is None or not 0 < taper < 1:
        return None
    return ShapeUse("tumblers", fabrics, (taper,))


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    (taper,) = filling.numbers
    zero, count = 0 * width, len(filling.fabrics)
    # Two half tumblers make one; each is as wide, half way up, as the mean of its two ends.
    mean = width / (count - 1)
    lean = mean * (1 - taper) / (1 + taper) / 2
    sides = [(zero, zero)]
    for place in range(count - 1):
        middle = mean * place + mean / 2
        outward = lean if place % 2 == 0 else -lean
        sides.append((middle + outward, middle - outward))
    sides.append((width, width))
    return tuple(
        (fabric, outline((left[0], zero), (right[0], zero), (right[1], height), (left[1], height)))
        for fabric, left, right in zip(filling.fabrics, sides, sides[1:], strict=False)
    )


SHAPE = Shape(
    "tumblers",
    "tumblers HALF TUMBLER … HALF [taper 1/2]",
    "row of tumblers",
    "tumblers side by side, every other one upside down, the first wide at the top; the first and the last are halves, "
    "so that the row ends straight; taper is the narrow end as a part of the wide one",
    None,
    _read,
    _draw,
    family="one-patch of tumblers",
)
