"""A block in another colour plan: the same patches and units, other fabrics."""

from __future__ import annotations

from msgspec.structs import replace

from blockdsl.model.block import BlockDesign, ColourPlan, ShapeUse


def recoloured(design: BlockDesign, plan: ColourPlan) -> BlockDesign:
    """The block in another colour plan, made in the same way; its further sizes too."""
    replaces = dict(plan.replaces)

    def new(fabric: str) -> str:
        return replaces.get(fabric, fabric)

    def filled(filling: ShapeUse | None) -> ShapeUse | None:
        return filling and replace(filling, fabrics=tuple(new(fabric) for fabric in filling.fabrics))

    used = {new(fabric.name) for fabric in design.fabrics}
    return replace(
        design,
        fabrics=tuple(fabric for fabric in design.palette if fabric.name in used),
        patches=tuple(replace(patch, fabric=new(patch.fabric)) for patch in design.patches),
        units=tuple(replace(unit, filling=filled(unit.filling)) for unit in design.units),
        appliques=tuple(replace(piece, fabric=new(piece.fabric)) for piece in design.appliques),
        colourways=(),
        sizes=tuple(recoloured(size, plan) for size in design.sizes),
    )
