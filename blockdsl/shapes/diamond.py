"""`diamond a on b [c d e]`: square in a square; b alone, or the corners clockwise from the top left."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes.outlines import CORNER_NAMES, outline
from blockdsl.shapes.shape import Cloth, DrawnUnit, Shape
from blockdsl.shapes.words import WordReader

CORNERS = 4


def _read(words: WordReader) -> ShapeUse | None:
    centre = words.word()
    if not centre or not words.is_next("on"):
        return None
    corners = words.rest() or ()
    if len(corners) == 1:
        corners *= CORNERS
    return ShapeUse("diamond", (centre, *corners)) if len(corners) == CORNERS else None


def draw_diamond(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    """The diamond between the middles of the sides of a box, its corners first from the top left to the right."""
    centre, top_left, top_right, bottom_right, bottom_left = filling.fabrics
    zero = 0 * width
    top, right, bottom, left = (width / 2, zero), (width, height / 2), (width / 2, height), (zero, height / 2)
    return (
        (top_left, outline((zero, zero), top, left)),
        (top_right, outline(top, (width, zero), right)),
        (centre, outline(top, right, bottom, left)),
        (bottom_right, outline(right, (width, height), bottom)),
        (bottom_left, outline(left, bottom, (zero, height))),
    )


def _corners(_outlines: Sequence[Polygon]) -> tuple[str, ...]:
    return CORNER_NAMES


def _written_as(unit: DrawnUnit) -> str:
    corners = {unit.fabrics[role] for role in (1, 2, 3, 4)}
    return unit.writes if len(corners) == 1 else f"{unit.writes} c d e"


SHAPE = Shape(
    "diamond",
    "diamond CENTRE on CORNERS, or diamond CENTRE on TOP-LEFT TOP-RIGHT BOTTOM-RIGHT BOTTOM-LEFT",
    "square in a square",
    "a square on point with a triangle at each corner",
    Fraction(1),
    _read,
    draw_diamond,
    also_called=("square in a square", "square in square", "square on point", "economy"),
    middle=2,
    turning=(1, 2),
    corners=_corners,
    written_as=_written_as,
)
