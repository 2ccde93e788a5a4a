"""From the sewing room's steps to facts: names as headings, counts of what is taken, what a method does."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import chain

from msgspec.structs import replace

from blockdsl.facts.blockrecord import BlockRecord, CutFacts, UnitFacts
from blockdsl.facts.method_steps import method_step
from blockdsl.facts.paper_steps import on_papers
from blockdsl.facts.star_steps import is_star_of_strips, star_steps
from blockdsl.facts.stepfacts import GridPlace, JoinFacts, StepFacts, join_of
from blockdsl.facts.strip_steps import first_set, is_a_segment, is_pieced_from_strips, strip_steps
from blockdsl.facts.unit_lesson import unit_lesson
from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.methods import PATCH_BY_PATCH, STRIPS
from blockdsl.sewing.part_name import PartName
from blockdsl.sewing.steps import MakingStep, Variant
from blockdsl.sewing.steps.measure import finished_size

_ALREADY_CUT = ("lesson-strips-cut", "lesson-star-strips-cut")
_TWO_SIDES = ("rectangle", "triangle", "template")


def step_facts(steps: Sequence[MakingStep], block: BlockRecord) -> tuple[StepFacts, ...]:
    """The steps of a block; `block` is the same block's facts, for what is cut and for the methods."""
    units = [block.units[step.unit] for step in steps if step.unit is not None]
    joining = [unit for unit in units if unit.method == STRIPS and not is_a_segment(unit)]
    return tuple(chain.from_iterable(_steps(step, joining, block) for step in steps))


def _steps(step: MakingStep, joining: Sequence[UnitFacts], block: BlockRecord) -> tuple[StepFacts, ...]:
    """The step, or of a unit of strip sets those that make its segments and the one that joins them."""
    made = _step(step, block)
    if step.sections:
        return (on_papers(made, step, block),)
    unit = None if step.unit is None else block.units[step.unit]
    if unit is not None and is_pieced_from_strips(unit):
        return strip_steps(made, unit, joining, block)
    if unit is not None and is_star_of_strips(unit):
        return star_steps(made, unit, _cuts_for(_hands(step, block), block), first_set(unit, joining), block)
    if step.method in PATCH_BY_PATCH or step.unit is None:
        return (made,)
    return (_taught(made, _hands(step, block), block),)


def _step(step: MakingStep, block: BlockRecord) -> StepFacts:
    first = step.variants[0]
    square = first.is_rectangle
    allowance = 2 * block.seam
    cells = sorted((cell for variant in step.variants for cell in variant.cells), key=lambda c: (c[1], c[0]))
    return StepFacts(
        number=step.number,
        makes=step.makes.notation,
        count=step.count,
        spare=sum(block.units[place].spare for place in _hands(step, block)),
        method=step.method,
        joins=_joins(step.variants),
        seam=step.seam,
        actions=step.actions,
        size=finished_size(first),
        finished=first.extent if square else None,
        unfinished=(first.extent[0] + allowance, first.extent[1] + allowance) if square else None,
        cells=tuple(GridPlace(*cell) for cell in cells),
        hands=step.variants,
        names={part.notation: part for part in (step.makes, *_parts(step.variants))},
    )


def _parts(variants: Sequence[Variant]) -> Iterator[PartName]:
    """What earlier steps made, as data."""
    return (part.part for variant in variants for part in variant.ingredients if part.part is not None)


def _joins(variants: Sequence[Variant]) -> tuple[JoinFacts, ...]:
    """What all of what the step makes takes together, patches by letter and fabric, in the order of sewing."""
    counts: dict[tuple[str, int, str], int] = {}
    for variant in variants:
        many = len(variant.ingredients)
        for number in (part for stage in variant.stages for part in stage.parts if part < many):
            part = variant.ingredients[number]
            key = part.name, part.step or 0, part.fabric or ""
            counts[key] = counts.get(key, 0) + variant.count
    return tuple(join_of(name, count, step, fabric) for (name, step, fabric), count in counts.items())


# --- units made by a method ------------------------------------------------------------------------


def _taught(made: StepFacts, hands: Sequence[int], block: BlockRecord) -> StepFacts:
    """What the method takes and does; of one without a step of its own the steps of its lesson but for cutting."""
    cuts = _cuts_for(hands, block)
    counts: dict[tuple[str, str, str, tuple[Fraction, ...]], int] = {}
    for cut in cuts:
        key = cut.label, cut.fabric, cut.piece, cut.cut if cut.piece in _TWO_SIDES else cut.cut[:1]
        counts[key] = counts.get(key, 0) + cut.count
    joins = tuple(join_of(name, count, 0, fabric, piece, size) for (name, fabric, piece, size), count in counts.items())
    found = method_step(hands, cuts, block)
    if found is not None:
        told, fabrics = found
        return replace(made, joins=joins, lesson=told.parts, fabrics=fabrics, made_by=told)
    lesson, fabrics = unit_lesson(block.units[hands[0]], block)
    rest = tuple(step for step in lesson if step.key not in _ALREADY_CUT)
    return replace(made, joins=joins, lesson=rest, fabrics=fabrics)


def _hands(step: MakingStep, block: BlockRecord) -> tuple[int, ...]:
    """The places of the units that a step makes: one, or with its mirror image two."""
    if step.unit is None:
        return ()
    mirror = block.units[step.unit].mirror
    return (step.unit,) if mirror is None else (step.unit, mirror)


def _cuts_for(hands: Sequence[int], block: BlockRecord) -> list[CutFacts]:
    """The lines of the cutting table that are for a unit or its mirror image, with the share that is for them."""
    counted = [(cut, sum(share for places, share in cut.shares if set(places) & set(hands))) for cut in block.cutting]
    return [replace(cut, count=count) for cut, count in counted if count]
