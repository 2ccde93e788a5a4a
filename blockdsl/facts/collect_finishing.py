"""Collecting what finishes a quilt: its cloth, backing, binding, wadding and sleeve."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.cutting.finishing import JOIN, AskedOfBack, backing_plan, sleeve_plan, wadding_plan
from blockdsl.cutting.finishing_binding import (
    BindingCloth,
    BindingCut,
    BindingPlan,
    binding_plan,
    can_be_cut,
    edge_length,
)
from blockdsl.cutting.quilt_cloth import QuiltPiece, backing_width, cloth_width
from blockdsl.facts.collect_cloth import BINDING, LAST_OF_SLEEVE, SLEEVE, Line, collect_cloth, shrinkage_of
from blockdsl.facts.finishingfacts import BackingFacts, BindingFacts, FinishingFacts, ScrapsFacts, SleeveFacts
from blockdsl.facts.quiltrecord import QuiltCutFacts, QuiltKindFacts
from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.quilt import QuiltDesign


def collect_finishing(
    design: QuiltDesign,
    cuts: Sequence[QuiltCutFacts],
    kinds: Sequence[QuiltKindFacts],
    scraps: tuple[ScrapsFacts, ...],
    *,
    quickly: bool = False,
) -> FinishingFacts:
    """What the quilt takes besides its piecing; `quickly` as for `collect_cloth`."""
    binding, sleeve = _binding(design), _sleeve(design)
    further = [*_binding_pieces(design, binding), *_sleeve_pieces(design, sleeve)]
    backing = _backing(design)
    wadding = design.wadding.overage if design.wadding else backing.plan.overage if backing else None
    return FinishingFacts(
        fabrics=collect_cloth(design, cuts, kinds, further, scraps, quickly=quickly),
        backing=backing,
        binding=binding,
        wadding=None if wadding is None else wadding_plan(_raw(design), design.unit, design.measure, wadding),
        sleeve=sleeve,
        scraps=scraps,
    )


def _raw(design: QuiltDesign) -> tuple[Exact, Exact]:
    """The size of the top with the seam allowances at its edges: what is layered, and bound."""
    return design.width + 2 * design.seam, design.height + 2 * design.seam


def can_be_backed(design: QuiltDesign) -> bool:
    """Whether a backing is asked for, and its cloth is wider than a join takes."""
    return design.backing is not None and backing_width(design, design.backing) > 2 * JOIN[design.unit]


def can_be_bound(design: QuiltDesign) -> bool:
    """Whether a binding is asked for, and its strips can be cut from its fabric."""
    choice = design.binding
    return choice is not None and can_be_cut(choice.strip_width, _binding_cloth(design, choice.fabric))


def can_have_sleeve(design: QuiltDesign) -> bool:
    """Whether a sleeve is asked for, and its cloth is wider than a join takes."""
    return design.sleeve is not None and cloth_width(design, design.sleeve.fabric) > 2 * design.seam


def _binding_cloth(design: QuiltDesign, fabric: str) -> BindingCloth:
    width = cloth_width(design, fabric)
    return BindingCloth(width, design.measure, design.seam, design.unit, shrinkage=shrinkage_of(design))


def _backing(design: QuiltDesign) -> BackingFacts | None:
    choice = design.backing
    if choice is None:
        return None
    if not can_be_backed(design):
        return None
    asked = AskedOfBack(choice.overage, backing_width(design, choice), shrinkage_of(design))
    return BackingFacts(choice.fabric, backing_plan(_raw(design), design.unit, design.measure, asked))


def _binding(design: QuiltDesign) -> BindingFacts | None:
    choice = design.binding
    if choice is None:
        return None
    if not can_be_bound(design):
        return None
    cloth = _binding_cloth(design, choice.fabric)
    cut: BindingCut = "bias" if choice.bias else "straight"
    plan = binding_plan(edge_length(_raw(design)), choice.strip_width, cut, cloth)
    return BindingFacts(choice.fabric, plan)


def _binding_pieces(design: QuiltDesign, binding: BindingFacts | None) -> list[tuple[str, Line]]:
    """Strips across the whole width, or squares, to be cut from the binding's fabric with all else."""
    if binding is None:
        return []
    count, cut = _binding_cut(binding.plan, cloth_width(design, binding.fabric))
    return [(binding.fabric, (QuiltPiece(BINDING, cut, count), {BINDING: count}))]


def _binding_cut(plan: BindingPlan, usable_width: Fraction) -> tuple[int, tuple[Fraction, Fraction]]:
    if plan.square is not None:
        return plan.squares, (plan.square, plan.square)
    return plan.strips, (usable_width, plan.strip_width)


def _sleeve(design: QuiltDesign) -> SleeveFacts | None:
    choice = design.sleeve
    if choice is None:
        return None
    if not can_have_sleeve(design):
        return None
    cloth = (cloth_width(design, choice.fabric), design.measure)
    return SleeveFacts(choice.fabric, sleeve_plan(design.width, choice.depth, design.seam, design.unit, cloth))


def _sleeve_pieces(design: QuiltDesign, sleeve: SleeveFacts | None) -> list[tuple[str, Line]]:
    if sleeve is None:
        return []
    plan, usable = sleeve.plan, cloth_width(design, sleeve.fabric)
    full = plan.strips - 1
    sides = ((SLEEVE, usable, full), (LAST_OF_SLEEVE if full else SLEEVE, plan.last, 1))
    return [
        (sleeve.fabric, (QuiltPiece(key, (long, plan.cut[1]), count), {SLEEVE: count}))
        for key, long, count in sides
        if count
    ]
