"""`snowball a with b at tl tr bl br [cut 1/3]`: a square with corners cut off."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import bounding_box
from blockdsl.model import ShapeUse
from blockdsl.shapes.outlines import CORNER_NAMES, outline
from blockdsl.shapes.shape import Cloth, DrawnUnit, Shape
from blockdsl.shapes.words import WordReader

PLACES = ("tl", "tr", "br", "bl")
USUAL_CUT = Fraction(1, 3)
"""When nothing is said. Common practice, no source."""


def _read(words: WordReader) -> ShapeUse | None:
    ball = words.word()
    if not ball or not words.is_next("with") or not (corner := words.word()):
        return None
    places = _places(words) if words.is_next("at") else PLACES
    cut = words.number() if words.is_next("cut") else USUAL_CUT
    if not places or not words.done or cut is None or not 0 < cut <= Fraction(1, 2):
        return None
    return ShapeUse("snowball", (ball, corner), (cut,), places)


def _places(words: WordReader) -> tuple[str, ...]:
    named = set(iter(lambda: next((place for place in PLACES if words.is_next(place)), ""), ""))
    return tuple(place for place in PLACES if place in named)


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    ball, corner = filling.fabrics
    cut, zero = filling.numbers[0] * width, 0 * width
    triangles = {
        "tl": ((zero, cut), (zero, zero), (cut, zero)),
        "tr": ((width - cut, zero), (width, zero), (width, cut)),
        "br": ((width, height - cut), (width, height), (width - cut, height)),
        "bl": ((cut, height), (zero, height), (zero, height - cut)),
    }
    around: list[tuple[Exact, Exact]] = []
    for place in PLACES:
        before, square_corner, after = triangles[place]
        around.extend((before, after) if place in filling.places else (square_corner,))
    # Cuts of half the side meet in the middle of an edge; a doubled corner is one corner.
    rim = [point for place, point in enumerate(around) if point != around[place - 1]]
    order = ("tl", "tr", "bl", "br")
    cut_off = tuple((corner, outline(*triangles[place])) for place in order if place in filling.places)
    return ((ball, outline(*rim)), *cut_off)


def _corners(outlines: Sequence[Polygon]) -> tuple[str, ...]:
    found = set()
    for patch in outlines[1:]:
        left, top, _, _ = bounding_box(patch)
        found.add(("t" if top == 0 else "b") + ("l" if left == 0 else "r"))
    return tuple(corner for corner in CORNER_NAMES if corner in found)


def _written_as(unit: DrawnUnit) -> str:
    left, _, right, _ = bounding_box(unit.outlines[1])
    return f"{unit.writes} at {' '.join(_corners(unit.outlines))} cut {(right - left) / unit.width}"


SHAPE = Shape(
    "snowball",
    "snowball BALL with CORNER at tl tr bl br [cut 1/3]",
    "snowball",
    "a square with some or all of its corners cut off; cut is the share of the side",
    Fraction(1),
    _read,
    _draw,
    middle=0,
    corners=_corners,
    written_as=_written_as,
)
