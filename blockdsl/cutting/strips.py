"""Strips for strip sets: how long, and how many across the fabric."""

from __future__ import annotations

from fractions import Fraction

from blockdsl.cutting.sizes import Extent, rectangle_for, round_up
from blockdsl.geometry import ceil_to
from blockdsl.model import BlockDesign
from blockdsl.sewing import NeededPart

USABLE: dict[str, Fraction] = {"in": Fraction(40), "cm": Fraction(100)}
"""Usable width of fabric when none is given: 40 in (a teacher's convention, see the outside values), 100 cm."""

SELVAGES: dict[str, Fraction] = {"in": Fraction(2), "cm": Fraction(5)}
"""What selvages and squaring up take of a fabric whose width is given: 40 in of 42 are usable."""
IN_UNIT = {
    ("in", "in"): Fraction(1),
    ("cm", "cm"): Fraction(1),
    ("in", "cm"): Fraction(254, 100),
    ("cm", "in"): Fraction(100, 254),
}

Strip = tuple[tuple[Fraction, Fraction], Extent, int, int]


def cut_strips(needed: NeededPart, design: BlockDesign) -> list[Strip]:
    """Strips (width, length), their exact size, how many, and the segments that their sets give.

    Every segment is cut at the ruler's measure, so a strip is as long as its segments together. What does
    not fit across the narrowest fabric of the set goes into further strips.
    """
    exact = rectangle_for(needed.part.patch, design.seam)
    width, segment = round_up(exact, design.measure)
    across = min(usable_width(fabric, design) for fabric in needed.together)
    each = max(1, int(across // segment))
    full, rest = divmod(needed.segments, each)
    strips: list[Strip] = []
    for sets, segments in ((full, each), (1 if rest else 0, rest)):
        if sets:
            size = (width, ceil_to(segment * segments, design.measure))
            strips.append((size, (exact[0], exact[1] * segments), sets * needed.count, sets * segments))
    return strips


def usable_width(fabric: str, design: BlockDesign) -> Fraction:
    """Width of fabric that strips can be cut from, in the block's unit."""
    for known in design.fabrics:
        if known.name == fabric and known.width is not None:
            width, unit = known.width
            return (width - SELVAGES[unit]) * IN_UNIT[unit, design.unit]
    return USABLE[design.unit]
