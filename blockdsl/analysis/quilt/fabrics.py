"""Which fabrics a quilt has: those of its blocks as they are coloured, of its plain cloth and of its finishing."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from blockdsl.model import Fabric
from blockdsl.model.quilt import PlacedBlock, QuiltKind


def fabrics_of(
    named: Iterable[str], kinds: Sequence[QuiltKind], blocks: Iterable[PlacedBlock], palette: Sequence[Fabric]
) -> tuple[Fabric, ...]:
    """The fabrics that are `named` and those of the blocks, as the `palette` declares them.

    Those that a block's own file alone declares come last.
    """
    used = set(named)
    of_blocks: dict[str, Fabric] = {}
    for kind, colourway in sorted({(place.kind, place.colourway) for place in blocks}):
        design = kinds[kind].design
        replaces = next((dict(plan.replaces) for plan in design.colourways if plan.name == colourway), {})
        declared = {fabric.name: fabric for fabric in design.palette}
        for fabric in design.fabrics:
            name = replaces.get(fabric.name, fabric.name)
            of_blocks.setdefault(name, declared.get(name, fabric))
    ours = [fabric for fabric in palette if fabric.name in used or fabric.name in of_blocks]
    known = {fabric.name for fabric in ours}
    return (*ours, *(fabric for name, fabric in of_blocks.items() if name not in known))
