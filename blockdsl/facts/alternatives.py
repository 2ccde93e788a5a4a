"""The ways in which a unit can be made, side by side: what each cuts, wastes and sews."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec.structs import replace

from blockdsl.cutting import Cut, cut_block
from blockdsl.cutting.cutlist import CutPiece
from blockdsl.diagnostics import Problems
from blockdsl.facts.blockrecord import Alternative
from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.symmetry import IDENTITY, MIRROR
from blockdsl.model import BlockDesign, Choice, UnitPlace
from blockdsl.sewing import UnitClass, plan_making
from blockdsl.sewing.methods import CUT_PATCHES, METHODS, OVER_PAPERS, STRIPS, methods_for
from blockdsl.sewing.strips import seams_of_strip_sets

MOST_PATCHES = 400
"""All copies of a unit together; of more no ways are compared."""


def alternatives(design: BlockDesign, unit: UnitClass, letters: Sequence[str]) -> tuple[Alternative, ...]:
    """Every method that can make the unit, the plainest first; none for units of very many patches.

    `letters` are those of the block's patches, which the pieces keep.

    Papers to fold round take the cloth of patches cut by themselves: they are compared only where they are chosen.
    A unit of rows or free patches, which no other method makes, is compared with the papers that are chosen for it.
    """
    group = unit.group
    if len(group.picture) * unit.count > MOST_PATCHES or not isinstance(group.width, Fraction):
        return ()
    alone = _alone(design, unit)
    shape = group.filling.shape if group.filling else None
    methods = methods_for(shape) if shape else tuple(dict.fromkeys((CUT_PATCHES, unit.method)))
    methods = tuple(each for each in methods if each != OVER_PAPERS or unit.method == OVER_PAPERS)
    found = (_alternative(alone, unit, letters, method) for method in methods)
    return tuple(each for each in found if each is not None)


def _alone(design: BlockDesign, unit: UnitClass) -> BlockDesign:
    """A strip of nothing but the units of this kind, side by side."""
    group, many = unit.group, len(unit.group.picture)
    turn = MIRROR if group.mirrored else IDENTITY
    patches = tuple(
        patch.moved(copy * group.width, Fraction(0)) for copy in range(unit.count) for patch in group.picture
    )
    zero = Fraction(0)
    places = tuple(
        UnitPlace(
            group.name, group.filling, copy * group.width, zero, group.width, group.height, turn,
            copy * many, (copy + 1) * many,
        )
        for copy in range(unit.count)
    )  # fmt: skip
    return replace(
        design,
        patches=patches,
        units=places,
        choices=(),
        appliques=(),
        width=unit.count * group.width,
        height=group.height,
    )


def _alternative(alone: BlockDesign, unit: UnitClass, letters: Sequence[str], method: str) -> Alternative | None:
    """None when the method cannot make this very unit."""
    shape = unit.group.filling.shape if unit.group.filling else None
    what = shape or unit.group.name
    choices = () if what is None else (Choice(what, method, alone.span, alone.span),)
    design = replace(alone, choices=choices)
    problems = Problems()
    making = plan_making(design, problems)
    if any(problem.severity == "error" for problem in problems):
        return None
    cut, first = cut_block(design, making), unit.group.places[0].first
    in_block = dict(zip(cut.lettered.letters, letters[first : first + len(unit.group.picture)], strict=False))
    cuts = cut.cuts
    cloth: Exact = sum((cut.cloth for cut in cuts), Fraction(0))
    spare = making.units[0].spare
    seams = _seams(method, shape, unit, spare, cuts)
    waste = cloth - design.width * design.height
    pieces = tuple(
        CutPiece(cut.fabric, in_block[cut.label], cut.piece, cut.cut, cut.exact, cut.count, cut.subcut) for cut in cuts
    )
    return Alternative(method, method == unit.method, pieces, cloth, waste, seams, spare)


def _seams(method: str, shape: str | None, unit: UnitClass, spare: int, cuts: Sequence[Cut]) -> int:
    """One seam joins two patches, whatever the order; batches sew several units' seams as one."""
    patches, filling = len(unit.group.picture), unit.group.filling
    if filling is not None and shape is not None and shape in METHODS[method]:
        if method == STRIPS:
            return seams_of_strip_sets(
                filling, patches, sum(cut.count for cut in cuts if cut.piece == "strip"), unit.count
            )
        recipe = METHODS[method][shape](filling, unit.group.width, unit.group.height, Fraction(0))
        if recipe.seams:
            return -(-(unit.count + spare) // (recipe.alike + recipe.mirrored)) * recipe.seams
    return (patches - 1) * unit.count
