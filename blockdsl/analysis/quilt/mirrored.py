"""A block as its own mirror image: another block to sew, unless it looks the same in the mirror."""

from __future__ import annotations

from collections.abc import Hashable

from msgspec.structs import replace

from blockdsl.geometry import Polygon
from blockdsl.geometry.symmetry import HALF_TURN, IDENTITY, MIRROR, QUARTER_ANTICLOCKWISE, QUARTER_CLOCKWISE, Symmetry
from blockdsl.model import BlockDesign, UnitPlace


def mirror_image(design: BlockDesign) -> BlockDesign | None:
    """The block left for right, as a design of its own; None when that is the block itself, turned perhaps."""
    turns: tuple[Symmetry, ...] = (IDENTITY, HALF_TURN)
    if design.width == design.height:
        turns = (*turns, QUARTER_CLOCKWISE, QUARTER_ANTICLOCKWISE)
    seen = _picture(design, MIRROR)
    if any(_picture(design, turn) == seen for turn in turns):
        return None
    width, height = design.width, design.height
    return replace(
        design,
        name=f"{design.name}, mirror image",
        columns=design.columns[::-1],
        patches=tuple(patch.turned(MIRROR, width, height) for patch in design.patches),
        units=tuple(_mirrored(unit, design) for unit in design.units),
        appliques=tuple(piece.turned(MIRROR, width, height) for piece in design.appliques),
        grains=(),
        sizes=(),
    )


def _mirrored(unit: UnitPlace, design: BlockDesign) -> UnitPlace:
    across, _ = unit.symmetry.turned_extent(unit.width, unit.height)
    return replace(unit, x=design.width - unit.x - across, symmetry=unit.symmetry.then(MIRROR))


def _picture(design: BlockDesign, symmetry: Symmetry) -> frozenset[Hashable]:
    """What is seen: which fabric lies where; of curved patches the straight twins, and that they are curved."""
    size = design.width, design.height
    patches = (
        (patch.fabric, patch.curved is not None, _from_least_corner(symmetry.apply_polygon(patch.outline, *size)))
        for patch in design.patches
    )
    laid_on = (
        (piece.fabric, "applique", _from_least_corner(symmetry.apply_polygon(piece.outline, *size)))
        for piece in design.appliques
    )
    return frozenset((*patches, *laid_on))


def _from_least_corner(outline: Polygon) -> Polygon:
    start = min(range(len(outline)), key=outline.__getitem__)
    return outline[start:] + outline[:start]
