"""How a maker would sew the block, found from its patches alone.

Takes:    a block whose cover is proved.
Gives:    the order as a tree of parts and seams; the units in it that are made several times; an independent check.
Measures: exact, finished.
Reports:  which patches no seam parts, as a result of its own kind.
Does not know: methods, cloth, allowances, words for steps.
"""

from blockdsl.sewing.order.assembly import (
    Assembly,
    Joined,
    Piece,
    SeamCount,
    SeamKind,
    SeamLine,
    Unsewable,
    count_seams,
    walk,
)
from blockdsl.sewing.order.find import find_order
from blockdsl.sewing.order.rebuild import rebuild
from blockdsl.sewing.order.subunits import PartOf, SubUnit, SubUnitPlace, subunits

__all__ = [
    "Assembly",
    "Joined",
    "PartOf",
    "Piece",
    "SeamCount",
    "SeamKind",
    "SeamLine",
    "SubUnit",
    "SubUnitPlace",
    "Unsewable",
    "count_seams",
    "find_order",
    "rebuild",
    "subunits",
    "walk",
]
