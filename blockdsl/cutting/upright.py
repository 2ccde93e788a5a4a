"""Cloth whose print has an up and a down: every patch is cut as it stands in the block, so nothing may be turned.

Patches of one letter that lie in different turns are different pieces then. Of a square that is cut corner to corner
the two triangles lie half a turn apart, and of one that is cut twice the four lie a quarter turn apart: all of them
stand upright where the block has them so, and those that it has not are left over.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Hashable, Iterable
from typing import Literal

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.cutting.angled import Slant
from blockdsl.cutting.curved import box_for_curved
from blockdsl.cutting.grain import at_origin
from blockdsl.cutting.sizes import box_for
from blockdsl.cutting.ways import Way, on_the_bias, ways_to_cut
from blockdsl.geometry import Polygon
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.number import sign
from blockdsl.geometry.polygon import Point, bounding_box, clockwise, cross, dot, drop_straight_corners, edges, step
from blockdsl.model import Patch

UP = Point(Fraction(0), Fraction(1))
LEVEL = Point(Fraction(1), Fraction(0))


class Standing(Struct, frozen=True):
    """Patches of one letter that are cut alike: the way, which side of the size is upright, how many, of what.

    `pieces` are the squares, rectangles or single pieces to cut for `count` patches, `patch` is the first of them.
    """

    way: Way
    upright: Literal[0, 1]
    count: int
    pieces: int
    patch: Patch


def upright_pieces(patches: Iterable[Patch], allowance: Fraction) -> list[Standing]:
    """How patches of one letter are cut so that the print stands upright in all of them, as they come."""
    counts: Counter[Polygon] = Counter()
    known: dict[Polygon, Patch] = {}
    for patch in patches:
        look = _look(patch.outline)
        counts[look] += 1
        known.setdefault(look, patch)
    together: dict[Hashable, list[tuple[Way, Literal[0, 1], int, Patch]]] = {}
    for look, count in counts.items():
        way, side = _way(look, known[look], allowance)
        key = (way.piece, way.exact, way.subcut, way.slant, side) if way.subcut != "none" else look
        together.setdefault(key, []).append((way, side, count, known[look]))
    return [
        Standing(
            way=found[0][0],
            upright=found[0][1],
            count=sum(count for _, _, count, _ in found),
            pieces=max(count for _, _, count, _ in found),
            patch=found[0][3],
        )
        for found in together.values()
    ]


def _look(patch: Polygon) -> Polygon:
    """The outline at the origin from its topmost, then leftmost corner: the same for all patches that lie alike."""
    outline = clockwise(drop_straight_corners(at_origin(patch)))
    first = min(range(len(outline)), key=lambda place: (outline[place].y, outline[place].x))
    return outline[first:] + outline[:first]


def _way(look: Polygon, patch: Patch, allowance: Fraction) -> tuple[Way, Literal[0, 1]]:
    """The way that needs no turning, and which of its two measures is upright in the block."""
    if patch.curved is not None:
        across, up = box_for_curved(patch.curved, allowance, UP)
        return Way("template", (across, up), "none", UP), 1
    left, top, right, bottom = bounding_box(look)
    tall: Literal[0, 1] = 1 if bottom - top >= right - left else 0
    for way in ways_to_cut(look, allowance):
        if on_the_bias(way.grain, UP):
            continue
        if way.piece in ("square", "rectangle", "octagon"):
            # Two triangles of a square lie along the same line: which line it is tells them from the other two.
            side: Literal[0, 1] = 1 if way.exact[0] == way.exact[1] else tall
            return (replace(way, slant=_slant_of(look, tall)) if way.subcut == "once" else way), side
        if way.strip is not None and way.strip.form in ("side by side", "points off") and not way.grain.y:
            return way, 0
    return Way("template", box_for(look, allowance, UP), "none", UP), 1


def _slant_of(look: Polygon, tall: int) -> Slant:
    """Of the long edge, as the rectangle stands on its shorter side; a square stands as it does in the block."""
    long_edge = max((step(a, b) for a, b in edges(look)), key=lambda side: dot(side, side))
    across = LEVEL if tall else UP
    return "rising" if sign(dot(across, long_edge)) * sign(cross(across, long_edge)) < 0 else "falling"
