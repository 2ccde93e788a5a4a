"""Which of the maker's own cutters cut a line of the cutting list, and what she has none for.

A cutter for a finished shape cuts it with the block's seam allowance round it.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated

from blockdsl.analysis.letters import Lettered
from blockdsl.cutting.cutlist import Cut
from blockdsl.cutting.sizes import Extent, edge_lengths
from blockdsl.cutting.ways import Subcut
from blockdsl.geometry import Exact, Polygon, square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import area, dot, edges, step
from blockdsl.geometry.recognise import recognise
from blockdsl.model import BlockDesign
from blockdsl.model.cutter import Cutter
from blockdsl.record import Letter, Name, Record, says
from blockdsl.sewing.methods import CUT_PATCHES


class Lacking(Record, frozen=True):
    """A cutter that the maker lacks, as a `cutter` line would say it, and the patches that it would cut."""

    shape: Annotated[Name, says("One that a cutter may have.")]
    size: Annotated[Extent, says("Of a strip cut, of all others finished.")]
    labels: Annotated[tuple[Letter, ...], says("The letters of the patches.")]


def cutters_for(cut: Cut, design: BlockDesign, lettered: Lettered) -> tuple[str, ...]:
    """The labels of the cutters that cut this line, in the order in which they are declared."""
    wanted = _wanted(cut, design, lettered)
    return tuple(cutter.label for cutter in design.cutters if cutter.unit == design.unit and _cuts(cutter, cut, wanted))


def lacking_cutters(cuts: Sequence[Cut], design: BlockDesign, lettered: Lettered) -> tuple[Lacking, ...]:
    """The cutters that would cut what none of hers does; nothing for a maker who declares none."""
    if not design.cutters:
        return ()
    found: dict[tuple[str, Extent], list[str]] = {}
    for cut in cuts:
        wanted = _wanted(cut, design, lettered)
        if wanted is not None and not cutters_for(cut, design, lettered):
            found.setdefault(wanted, []).append(cut.label)
    return tuple(Lacking(shape, size, tuple(dict.fromkeys(labels))) for (shape, size), labels in found.items())


def _wanted(cut: Cut, design: BlockDesign, lettered: Lettered) -> tuple[str, Extent] | None:
    """The cutter that a line asks for: its shape and size; None for what no cutter can have."""
    if cut.piece == "strip":
        return "strip", (cut.cut[0], cut.cut[0])
    if cut.method == CUT_PATCHES:
        by_ruler = cut.label in lettered.first and cut.label not in lettered.curved
        return _for_patch(lettered.first[cut.label], cut.subcut) if by_ruler else None
    shorter, longer = (side - 2 * design.seam for side in cut.exact)
    return ("square" if shorter == longer else "rectangle"), (shorter, longer)


def _for_patch(patch: Polygon, subcut: Subcut) -> tuple[str, Extent] | None:
    shape = recognise(patch)
    legs = sorted(edge_lengths(patch)) if len(patch) == 3 else []
    if legs and legs[0] == legs[1] and subcut != "none":
        # A half has its legs on the grain, a quarter its long edge: the way of cutting decides, not how the patch lies.
        return ("half", (legs[0], legs[0])) if subcut == "once" else ("quarter", (legs[2], legs[2]))
    if shape.kind in ("square", "rectangle"):
        return shape.kind, shape.finished
    side = _side_of_45_degree_diamond(patch) if shape.kind == "diamond" else None
    return None if side is None else ("diamond", (side, side))


def _side_of_45_degree_diamond(patch: Polygon) -> Exact | None:
    """The side s of a diamond whose area is s² sin 45°, else None."""
    along = step(*next(iter(edges(patch))))
    square = dot(along, along)
    return square_root(square) if 2 * area(patch) == square * square_root(Fraction(2)) else None


def _cuts(cutter: Cutter, cut: Cut, wanted: tuple[str, Extent] | None) -> bool:
    if wanted is not None and wanted == (cutter.shape, cutter.size):
        return True
    if cutter.shape != "strip":
        return False
    # A strip that is as wide as a square or rectangle gives it with one more cut, and slanted pieces at an angle.
    if cut.strip is not None:
        return cutter.size[0] == cut.strip.width
    return cut.piece in ("square", "rectangle") and cutter.size[0] in cut.cut
