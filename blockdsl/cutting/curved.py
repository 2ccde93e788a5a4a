"""Cloth for patches with curved sides: their allowance, and the box of cloth that a template is laid on."""

from __future__ import annotations

from functools import lru_cache

from blockdsl.cutting.sizes import Extent
from blockdsl.geometry import Point, square_root
from blockdsl.geometry.arc import Curved, reach, tidy
from blockdsl.geometry.arc_offset import offset_curved, trim_curved
from blockdsl.geometry.fraction import Fraction


@lru_cache(maxsize=4096)
def curved_with_allowance(patch: Curved, allowance: Fraction) -> Curved:
    """The patch with its seam allowance, its long points trimmed.

    Exact:  straight sides move outward, an arc's radius r becomes r + allowance, a hollow one's r - allowance.
    Errors: ValueError where the allowance closes a hollow arc (reported earlier as `curve-too-tight`).
    """
    return trim_curved(offset_curved(patch, allowance), patch, allowance)


def box_for_curved(patch: Curved, allowance: Fraction, grain: Point) -> Extent:
    """Across and along the grain, the rectangle of cloth that holds the patch with its allowance; the shorter first.

    Source: for a quarter circle and its surround the sides differ by what the unit has beyond the circle: a unit of
            4 in with a radius of 3 in takes squares of 4 1/2 in and 3 1/2 in, as class handouts have it.
    """
    cut = curved_with_allowance(patch, allowance)
    length = square_root(grain.x * grain.x + grain.y * grain.y)
    sides = []
    for way in (Point(-grain.y, grain.x), grain):
        least, most = reach(cut, way)
        sides.append(tidy((most - least) / length))
    shorter, longer = sorted(sides)
    return shorter, longer
