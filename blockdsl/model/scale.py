"""A design at another size, for trying: every measure of the drawing times a number, all that is chosen as it is."""

from __future__ import annotations

from msgspec.structs import replace

from blockdsl.geometry import Point
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.block import BlockDesign, Patch


def scaled(design: BlockDesign, factor: Fraction) -> BlockDesign:
    """The block so many times as large; seam, measure and methods stay. Not for curves or appliqué, which it drops."""
    patches = tuple(
        Patch(
            patch.fabric,
            tuple(Point(corner.x * factor, corner.y * factor) for corner in patch.outline),
            span=patch.span,
        )
        for patch in design.patches
    )
    units = tuple(
        replace(unit, x=unit.x * factor, y=unit.y * factor, width=unit.width * factor, height=unit.height * factor)
        for unit in design.units
    )
    return replace(
        design,
        width=design.width * factor,
        height=design.height * factor,
        columns=tuple(step * factor for step in design.columns),
        heights=tuple(step * factor for step in design.heights),
        cover_area=design.cover_area * factor * factor,
        patches=patches,
        units=units,
        sizes=(),
        appliques=(),
    )
