"""What a quilter calls a patch with curved sides, and when two of them are the same piece of cloth."""

from __future__ import annotations

from collections.abc import Hashable
from functools import lru_cache

from blockdsl.geometry.arc import Bend, Curved, Side, bisector, tidy
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.number import Exact, square_root
from blockdsl.geometry.polygon import Point, bounding_box, cross, dot, step
from blockdsl.geometry.recognise import Recognised

QUARTER_CIRCLE = "quarter circle"
SURROUND = "quarter-circle surround"
BLADE = "fan blade"

_DOWN = (Fraction(0), Fraction(1))


def recognise_curved(outline: Curved) -> Recognised:
    """The name, measures and grain of a patch with curved sides.

    Kinds:    quarter circle (radius, radius); quarter-circle surround (width, height of the square that it is cut
              from); fan blade (length from curve to curve or to the point, straight across its outer end); any other
              is a curved patch (width, height).
    Grain:    along the straight edges of the first two, down the middle of a blade.
    """
    sides = list(outline.sides())
    arcs = [side for side in sides if side.bend is not None]
    outer = [side for side in arcs if side.bend and not side.bend.hollow]
    left, top, right, bottom = bounding_box(outline.corners)
    if len(arcs) == 1 and not outer:
        return Recognised(SURROUND, (right - left, bottom - top), _DOWN)
    if len(outer) == 1 and len(arcs) <= 2:
        start, end, bend = outer[0]
        if bend is not None and len(sides) == 3 and dot(step(bend.centre, start), step(bend.centre, end)) == 0:
            return Recognised(QUARTER_CIRCLE, (bend.radius, bend.radius), _DOWN)
        if bend is not None:
            return _blade(Side(start, end, bend), bend, arcs)
    return Recognised("curved patch", (right - left, bottom - top), _DOWN)


def _blade(side: Side, bend: Bend, arcs: list[Side]) -> Recognised:
    inner = next((arc.bend.radius for arc in arcs if arc.bend is not None and arc.bend.hollow), Fraction(0))
    chord = step(side.start, side.end)
    way = bisector(side.start, side.end, bend)
    grain = way if way.y > 0 or (way.y == 0 and way.x > 0) else Point(-way.x, -way.y)
    across = tidy(square_root(dot(chord, chord)))
    return Recognised(BLADE, (bend.radius - inner, across), grain)


@lru_cache(maxsize=4096)
def curved_key(outline: Curved, *, mirrored: bool = False) -> Hashable:
    """Equal for curved patches that are the same piece of cloth, turned or not; `mirrored` for its mirror image.

    Shape:  squared chord, dot and cross product at each corner, and for each side its bend, in the least of their
            cyclic orders. Never equal to the key of a straight patch.
    """
    sides = list(outline.sides())
    if mirrored:
        sides = [Side(Point(-end.x, end.y), Point(-start.x, start.y), bend) for start, end, bend in reversed(sides)]
    steps = [step(side.start, side.end) for side in sides]
    around = [
        (dot(after, after), dot(before, after), cross(before, after), *_bend_key(side.bend))
        for before, after, side in zip((steps[-1], *steps), steps, sides, strict=False)
    ]
    return ("curved", *min(tuple(around[i:] + around[:i]) for i in range(len(around))))


def _bend_key(bend: Bend | None) -> tuple[int, Exact]:
    """0 for a straight side, 1 for one that bends outward, 2 for a hollow one; and the radius."""
    return (0, Fraction(0)) if bend is None else (2 if bend.hollow else 1, bend.radius)
