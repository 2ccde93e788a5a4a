"""Units that are sewn in rounds about a middle, log cabins and their kin: there the order is no matter of choice.

Their shape draws the patches in the order of sewing, so what has been sewn at any time are the first so many of them.
"""

from __future__ import annotations

from blockdsl.model import BlockDesign
from blockdsl.sewing.order.alike import Span
from blockdsl.shapes import SHAPES


def added_last(design: BlockDesign) -> dict[Span, int]:
    """For each thing that there is on the way, by its first patch and the one after its last: how many came last."""
    found: dict[Span, int] = {}
    for unit in design.units:
        shape = SHAPES[unit.filling.shape] if unit.filling else None
        if unit.filling is None or shape is None or shape.rounds is None:
            continue
        stop = unit.first + 1
        for each in shape.rounds(unit.filling):
            for count in each.added:
                stop += count
                found[unit.first, stop] = count
    return found
