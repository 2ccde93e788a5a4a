"""A block's own plan of cutting, at other sizes: the same as a plan made anew for each."""

from __future__ import annotations

from typing import Final

import pytest
from msgspec.structs import replace

from blockdsl.analysis.letters import letter_patches
from blockdsl.cutting import Cut, cut_list
from blockdsl.cutting.resized import FinishedSize, LooseCuts
from blockdsl.diagnostics import Problems
from blockdsl.geometry import Exact, to_float
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import BlockDesign
from blockdsl.model.scale import scaled
from blockdsl.sewing import Making, plan_making
from tests.outside.virtual.library import FAMILIES, blocks_of
from tests.unit.model.blocks import block

SIZES: Final = (
    FinishedSize(Fraction(1, 2), "in", Fraction(1, 4), Fraction(1, 8)),
    FinishedSize(Fraction(5, 3), "in", Fraction(3, 8), Fraction(1, 16)),
    FinishedSize(Fraction(33, 16), "cm", Fraction(3, 4), Fraction(1, 10)),
)


def planned_anew(design: BlockDesign, making: Making, size: FinishedSize) -> tuple[Cut, ...]:
    other = replace(scaled(design, size.scale), unit=size.unit, seam=size.seam, measure=size.measure)
    return cut_list(other, replace(making, parts=(), foundations=()), letter_patches(other.patches))


def near(extent: tuple[Exact, Exact]) -> tuple[float, ...]:
    """Roots that no sum of roots gives are known to thirty digits."""
    return tuple(round(to_float(side), 12) for side in extent)


def sizes_of(cuts: tuple[Cut, ...]) -> set[tuple[object, ...]]:
    return {
        (
            cut.fabric, cut.label, cut.piece, cut.cut, near(cut.exact), cut.subcut, cut.strip and cut.strip.width,
            cut.strip and (cut.strip.form, cut.strip.every, cut.strip.across, near(cut.strip.exact)), cut.corner,
            cut.outside, cut.upright_side,
        )
        for cut in cuts
    }  # fmt: skip


def design_of(facts: object) -> BlockDesign:
    design: BlockDesign = facts.sewing._design  # type: ignore[attr-defined]
    return design


@pytest.mark.parametrize("name", FAMILIES)
def test_every_patch_of_the_library_is_cut_as_a_plan_for_that_size_has_it(name: str) -> None:
    for facts in blocks_of(name):
        design = design_of(facts)
        if any(patch.curved for patch in design.patches):
            continue  # at another size their arcs are not drawn, and what is left is no such block
        making = plan_making(design, Problems())
        loose = LooseCuts(design, making)
        for size in SIZES:
            assert sizes_of(loose.cuts(size)) == sizes_of(planned_anew(design, making, size)), (facts.name, size)


def test_fabrics_with_an_up_and_a_down_are_cut_as_they_stand_at_every_size() -> None:
    above = 'fabric ships "Ships" #904030 directional\n'
    rows = (
        "row ships/fog fog\\ships (triangle-in-square ships on fog)",
        "row (hourglass ships fog) (slant ships between fog moss) ships",
    )
    design = design_of(block(*rows, size="9 x 6 in", above=above))
    making = plan_making(design, Problems())
    for size in SIZES:
        assert sizes_of(LooseCuts(design, making).cuts(size)) == sizes_of(planned_anew(design, making, size)), size
