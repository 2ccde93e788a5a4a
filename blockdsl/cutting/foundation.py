"""Cloth for patches that are sewn to papers: cut with room to spare, for it is trimmed after sewing."""

from __future__ import annotations

from fractions import Fraction

from blockdsl.cutting.sizes import Extent, round_up
from blockdsl.geometry import Polygon
from blockdsl.geometry.polygon import bounding_box
from blockdsl.model import BlockDesign

ROOM: dict[str, Fraction] = {"in": Fraction(1, 4), "cm": Fraction(3, 4)}
"""What a piece for a paper has beyond the seam allowance on each side (common practice, no source)."""


def generous_piece(patch: Polygon, design: BlockDesign) -> tuple[tuple[Fraction, Fraction], Extent]:
    """What to cut for a patch on a paper, on the ruler and exactly.

    Shape:  (shorter, longer) of the upright box round the patch, on the straight grain of the unit as drawn.
    Exact:  each side of the box + 2 × (allowance + room); rounded up to the ruler's measure.
    """
    left, top, right, bottom = bounding_box(patch)
    more = 2 * (design.seam + ROOM[design.unit])
    shorter, longer = sorted((right - left + more, bottom - top + more))
    return round_up((shorter, longer), design.measure), (shorter, longer)
