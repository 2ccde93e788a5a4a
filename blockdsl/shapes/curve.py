"""`curve a in b [radius 2/3]`: a quarter circle in the corner of a square, as in the drunkard's path."""

from __future__ import annotations

from typing import Final

from blockdsl.geometry import Exact, Point
from blockdsl.geometry.arc import Bend, Curved
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes.outlines import outline
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader

USUAL_RADIUS: Final = Fraction(2, 3)
"""Of the side: where a unit of nine squares has its arc run from the second square to the second (common practice)."""


def _read(words: WordReader) -> ShapeUse | None:
    pie = words.word()
    if not pie or not words.is_next("in") or not (ground := words.word()):
        return None
    radius = words.number() if words.is_next("radius") else USUAL_RADIUS
    if radius is None or not words.done or not 0 < radius < 1:
        return None
    return ShapeUse("curve", (ground, pie), (radius,))


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    ground, pie = filling.fabrics
    true = _bend(filling, width, height)
    return tuple((fabric, curved.corners) for fabric, curved in zip((ground, pie), true, strict=True))


def quarter_circle(radius: Exact, height: Exact) -> Curved:
    """The quarter circle about the bottom left corner of a box so high."""
    centre = Point(0 * height, height)
    above, beside = (centre.x, height - radius), (radius, height)
    return Curved(outline(above, beside, (centre.x, height)), (Bend(centre, radius, hollow=False), None, None))


def surround(radius: Exact, width: Exact, height: Exact) -> Curved:
    """What is left of the box round that quarter circle."""
    zero, centre = 0 * width, Point(0 * width, height)
    corners = outline((zero, zero), (width, zero), (width, height), (radius, height), (zero, height - radius))
    return Curved(corners, (None, None, None, Bend(centre, radius, hollow=True), None))


def _bend(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Curved, ...]:
    radius = filling.numbers[0] * width
    return surround(radius, width, height), quarter_circle(radius, height)


SHAPE = Shape(
    "curve",
    "curve PIE in GROUND [radius 2/3]",
    "quarter-circle unit",
    "a square with a quarter circle about its bottom left corner; radius is the share of the side, less than 1",
    Fraction(1),
    _read,
    _draw,
    bend=_bend,
    also_called=("drunkard", "quarter circle"),
    middle=1,
    family="curved",
)
