"""`fan a b c on ground [handle h [1/4]] [radius 3/4]`: blades of a quarter circle about the corner of a square."""

from __future__ import annotations

from typing import Final

from blockdsl.geometry import Exact, Point, Polygon
from blockdsl.geometry.arc import TWELFTHS, Bend, Curved, cosine, sine
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes import curve
from blockdsl.shapes.curve import quarter_circle, surround
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader

BLADES: Final = (2, 3, 6)
"""Blades of 45, 30 or 15 degrees, whose corners are exact."""
USUAL_RADIUS: Final = Fraction(3, 4)
"""When nothing is said. Common practice, no source."""
USUAL_HANDLE: Final = Fraction(1, 4)
"""When nothing is said. Common practice, no source."""
_QUARTER: Final = TWELFTHS // 2


def _read(words: WordReader) -> ShapeUse | None:
    blades: list[str] = []
    while not words.is_next("on"):
        blade = words.word()
        if not blade:
            return None
        blades.append(blade)
    ground = words.word()
    handle, handle_radius = "", Fraction(0)
    if words.is_next("handle"):
        handle = words.word() or ""
        given = words.number()
        handle_radius = USUAL_HANDLE if given is None else given
        if not handle or handle_radius <= 0:
            return None
    radius = words.number() if words.is_next("radius") else USUAL_RADIUS
    if not ground or radius is None or not words.done or not handle_radius < radius < 1 or len(blades) not in BLADES:
        return None
    held = (handle,) if handle else ()
    return ShapeUse("fan", (ground, *blades, *held), (radius, handle_radius))


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    """The straight twin: the corners of the blades along their seams to the chord of the whole arc."""
    true = _bend(filling, width, height)
    radius, handle = (number * width for number in filling.numbers)
    blades = _blades(filling)
    outer, inner = (_on_chord(each, blades, height) for each in (radius, handle))
    middles = [_blade(outer, inner, i) for i in range(blades)]
    twins = [true[0].corners, *middles, *(curved.corners for curved in true[1 + blades :])]
    return tuple(zip(filling.fabrics, twins, strict=True))


def _bend(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Curved, ...]:
    radius, handle = (number * width for number in filling.numbers)
    blades, centre = _blades(filling), Point(0 * width, height)
    outer, inner = (_on_arc(each, blades, height) for each in (radius, handle))
    round_outside = Bend(centre, radius, hollow=False)
    inside = (Bend(centre, handle, hollow=True),) if handle else ()
    middles = [Curved(_blade(outer, inner, i), (None, round_outside, None, *inside)) for i in range(blades)]
    held = (quarter_circle(handle, height),) if handle else ()
    return surround(radius, width, height), *middles, *held


def _blades(filling: ShapeUse) -> int:
    return len(filling.fabrics) - (2 if filling.numbers[1] else 1)


def _blade(outer: Polygon, inner: Polygon, place: int) -> Polygon:
    """Clockwise from the inner end of its left seam; without a handle all blades meet in one point."""
    ends = (inner[place], outer[place], outer[place + 1], inner[place + 1])
    return ends[:3] if ends[0] == ends[3] else ends


def _on_arc(radius: Exact, blades: int, height: Exact) -> Polygon:
    """Where the seams between the blades, and the two sides, reach the arc; from the top."""
    turns = [_QUARTER // blades * i for i in range(blades + 1)]
    return tuple(Point(radius * sine(turn), height - radius * cosine(turn)) for turn in turns)


def _on_chord(radius: Exact, blades: int, height: Exact) -> Polygon:
    """The same for the chord: a seam at the angle t from upright reaches it after radius / (sin t + cos t)."""
    turns = [_QUARTER // blades * i for i in range(blades + 1)]
    lengths = [radius / (sine(turn) + cosine(turn)) for turn in turns]
    return tuple(
        Point(length * sine(turn), height - length * cosine(turn)) for turn, length in zip(turns, lengths, strict=True)
    )


SHAPE = Shape(
    "fan",
    "fan BLADE BLADE BLADE on GROUND [handle HANDLE [1/4]] [radius 3/4]",
    "fan",
    "2, 3 or 6 blades of a quarter circle about the bottom left corner, left to right, with a small quarter circle for "
    "the handle when one is named; both radii are shares of the side, less than 1",
    Fraction(1),
    _read,
    _draw,
    bend=_bend,
    middle=1,
    family="curved",
    taught_as=curve.SHAPE.name,
)
