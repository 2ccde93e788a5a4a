"""`spool centre a with b c [cut 1/4]`: a square with four trapezoids round it that meet in mitred corners."""

from __future__ import annotations

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes.outlines import outline
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader

USUAL_CUT = Fraction(1, 4)
"""When nothing is said. Common practice, no source."""


def _read(words: WordReader) -> ShapeUse | None:
    if not words.is_next("centre", "center") or not (centre := words.word()) or not words.is_next("with"):
        return None
    ends, sides = words.word(), words.word()
    cut = words.number() if words.is_next("cut") else USUAL_CUT
    if not ends or not sides or not words.done or cut is None or not 0 < cut < Fraction(1, 2):
        return None
    return ShapeUse("spool", (centre, ends, sides), (cut,))


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    centre, ends, sides = filling.fabrics
    zero, near = 0 * width, filling.numbers[0] * width
    far, low = width - near, height - near
    return (
        (ends, outline((zero, zero), (width, zero), (far, near), (near, near))),
        (sides, outline((zero, zero), (near, near), (near, low), (zero, height))),
        (centre, outline((near, near), (far, near), (far, low), (near, low))),
        (sides, outline((width, zero), (width, height), (far, low), (far, near))),
        (ends, outline((near, low), (far, low), (width, height), (zero, height))),
    )


SHAPE = Shape(
    "spool",
    "spool centre THREAD with ENDS SIDES [cut 1/4]",
    "spool",
    "a square with a trapezoid at the top and the bottom (ENDS) and at the sides, meeting in mitred corners; cut is "
    "their width as a share of the side",
    Fraction(1),
    _read,
    _draw,
)
