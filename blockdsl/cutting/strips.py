"""Strips across the fabric: how wide a fabric can be used, and pieces that are cut from strips at an angle."""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta
from msgspec.structs import replace

from blockdsl.cutting.angled import (
    Form,
    Slant,
    StripWay,
    length_of,
    most_in,
    slanted,
    turned,
)
from blockdsl.cutting.sizes import Extent
from blockdsl.geometry import ceil_to, floor_to
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import BlockDesign
from blockdsl.model.fabric import RulerUnit
from blockdsl.record import Count, Record, says

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


def usable_width(fabric: str, design: BlockDesign) -> Fraction:
    """Width of fabric that strips can be cut from, in the block's unit."""
    for known in design.fabrics:
        if known.name == fabric and known.width is not None:
            return without_selvages(known.width, design.unit, design.measure)
    return USABLE[design.unit]


def without_selvages(width: tuple[Fraction, RulerUnit], unit: RulerUnit, measure: Fraction) -> Fraction:
    """What is left of a cloth's width when its selvages are cut off, in `unit`, down to the ruler's `measure`.

    Down, because whole strips are as long as this, and a cloth of the other unit is no whole number of measures wide.
    """
    number, given = width
    return floor_to((number - SELVAGES[given]) * IN_UNIT[given, unit], measure)


_Angle = Annotated[int, Meta(extra_json_schema={"enum": [45, 60, 90]})]


class StripCut(Record, frozen=True):
    """Pieces cut from strips across the fabric, on the ruler."""

    form: Annotated[
        Form,
        says(
            "All cuts side by side at one angle; each piece turned half round from the one before; a diamond with its "
            "sharp points cut off; or round a template in the strip."
        ),
    ]
    width: Fraction
    every: Annotated[
        Fraction | None,
        says(
            "How far apart the cuts are, square to the cut, or turned along the longer edge; null where each cut "
            "begins at the end of the last."
        ),
    ]
    across: Annotated[Fraction | None, says("What is left between the points.")]
    angles: Annotated[tuple[_Angle, ...], says("Of the two cuts to the strip, the flatter first."), Meta(max_length=2)]
    slant: Annotated[
        Slant | None,
        says(
            "Of the cut at the flatter angle as the strip lies across, the right side up; null where cuts of both "
            "slants take turns."
        ),
    ]
    exact: Annotated[Extent, says("Width and spacing before rounding up; the width twice where there is no spacing.")]
    strips: Count
    each: Annotated[Count, says("How many pieces a strip gives.")]
    length: Annotated[Fraction, says("What those take of the length of a strip, the slanted ends with them.")]


def cut_from_strips(way: StripWay, count: int, fabric: str, design: BlockDesign) -> tuple[StripCut, StripWay] | None:
    """The strips for so many pieces, and the way as it is on the ruler; None when a piece is longer than a strip.

    Rounding up a strip's width and the spacing moves each edge outward along with its parallel one, so every piece
    holds the exact one. Trapezoids in a wider strip keep their longer edge, and triangles grow all round.
    """
    real, usable = on_the_ruler(way, design.measure), usable_width(fabric, design)
    each = most_in(real, usable)
    if not each:
        return None
    strips = -(-count // each)
    length = ceil_to(length_of(real, min(each, count)), design.measure)
    exact = (way.width, way.width if way.every is None else way.every)
    width = ceil_to(real.width, design.measure)
    every, across = (None if side is None else ceil_to(side, design.measure) for side in (real.every, real.across))
    return StripCut(real.form, width, every, across, real.angles, real.slant, exact, strips, each, length), real


def on_the_ruler(way: StripWay, measure: Fraction) -> StripWay:
    """The way with its width and spacings rounded up; angles are what they are."""
    width = ceil_to(way.width, measure)
    every = None if way.every is None else ceil_to(way.every, measure)
    if way.form == "template":
        return replace(way, width=width)
    if way.form == "turned":
        assert len(way.angles) == 2  # noqa: S101
        least = turned(width, None, (way.angles[0], way.angles[1]), way.slant, way.grain).run
        # A strip rounded up much may leave a small trapezoid no shorter edge: its cuts must not cross.
        every = every if every is None or every >= least else ceil_to(least, measure)
        return turned(width, every, (way.angles[0], way.angles[1]), way.slant, way.grain)
    assert every is not None  # noqa: S101  cuts at one angle are so far apart
    across = None if way.across is None else ceil_to(way.across, measure)
    return replace(slanted(width, every, way.angles[0], way.slant, way.grain), form=way.form, across=across)
