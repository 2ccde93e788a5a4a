"""The steps of a unit on foundation papers: a step for each section, then one that joins them.

A unit of one section is that one step. Everything lies as the unit is drawn, the papers' TOP at the top.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from msgspec.structs import replace

from blockdsl.geometry import Point
from blockdsl.geometry.polygon import bounding_box, dot, step, translate
from blockdsl.model import Patch
from blockdsl.sewing.foundation import FoundationPlan, PaperSection, SectionJoin
from blockdsl.sewing.methods import FOUNDATION
from blockdsl.sewing.part_name import PartName
from blockdsl.sewing.steps.paper_meetings import meetings_of
from blockdsl.sewing.steps.step import Ingredient, MakingStep, Stage, StepSeam, Variant

SECTION: Final = "section"
"""What a section is called before its letter."""


def step_count(plan: FoundationPlan) -> int:
    """How many steps the unit takes."""
    return len(plan.sections) + (1 if plan.joins else 0)


def paper_steps(plan: FoundationPlan, first: int, name: PartName, unit: int, whole: Variant) -> tuple[MakingStep, ...]:
    """The unit's steps, numbered from `first`; `name` is what the last one makes, `whole` what it is."""
    drawn = _drawn(plan, whole)
    if not plan.joins:
        (section,) = plan.sections
        alone = replace(_section(section, drawn), cells=drawn.cells)
        return (MakingStep(first, name, FOUNDATION, unit, (alone,), sections=(section.letter,)),)
    made = {section.letter: first + place for place, section in enumerate(plan.sections)}
    steps = [
        MakingStep(
            made[section.letter],
            PartName(SECTION, number=section.letter),
            FOUNDATION,
            unit,
            (_section(section, drawn),),
            sections=(section.letter,),
        )
        for section in plan.sections
    ]
    joined = _joined(plan, drawn, made)
    letters = tuple(section.letter for section in plan.sections)
    return (*steps, MakingStep(first + len(steps), name, FOUNDATION, unit, (joined,), sections=letters))


def _drawn(plan: FoundationPlan, whole: Variant) -> Variant:
    """The unit as it is drawn, and not as it lies in its first place in the block."""
    group = plan.group
    zero, width, height = group.width * 0, group.width, group.height
    corners = ((zero, zero), (width, zero), (width, height), (zero, height))
    return Variant(
        count=whole.count,
        extent=(width, height),
        outline=tuple(Point(x, y) for x, y in corners),
        picture=tuple(group.picture),
        patches=tuple(range(group.places[0].first, group.places[0].stop)),
        ingredients=(),
        stages=(),
        cells=whole.cells,
    )


def _section(section: PaperSection, drawn: Variant) -> Variant:
    """A section by itself, its box at the origin; its patches in the order of sewing."""
    left, top, right, bottom = bounding_box(section.outline)
    return Variant(
        count=drawn.count,
        extent=(right - left, bottom - top),
        outline=translate(section.outline, -left, -top),
        picture=tuple(patch.moved(-left, -top) for patch in _patches(section, drawn)),
        patches=tuple(drawn.patches[sewn.index] for sewn in section.patches),
        ingredients=(),
        stages=(),
        cells=(),
    )


def _patches(section: PaperSection, drawn: Variant) -> tuple[Patch, ...]:
    return tuple(drawn.picture[sewn.index] for sewn in section.patches)


def _joined(plan: FoundationPlan, drawn: Variant, made: Mapping[str, int]) -> Variant:
    """The sections, where they lie in the unit, and one stage for each join."""
    ingredients = tuple(
        Ingredient(
            name=name.notation,
            step=made[section.letter],
            fabric=None,
            patches=tuple(drawn.patches[sewn.index] for sewn in section.patches),
            picture=_patches(section, drawn),
            outline=section.outline,
            part=name,
        )
        for section in plan.sections
        for name in (PartName(SECTION, number=section.letter),)
    )
    number: dict[tuple[str, ...], int] = {(section.letter,): place for place, section in enumerate(plan.sections)}
    outlines = {section.letter: section.outline for section in plan.sections}
    stages = []
    for join in plan.joins:
        parts = number[join.before], number[join.after]
        corners = [corner for letter in join.before for corner in outlines[letter]]
        stages.append(Stage(parts, (_seam(join, parts, corners, meetings_of(join, plan)),), ()))
        number[join.before + join.after] = len(ingredients) + len(stages) - 1
    return Variant(
        count=drawn.count,
        extent=drawn.extent,
        outline=drawn.outline,
        picture=drawn.picture,
        patches=drawn.patches,
        ingredients=ingredients,
        stages=tuple(stages),
        cells=drawn.cells,
    )


def _seam(join: SectionJoin, parts: tuple[int, int], before: list[Point], meetings: tuple[int, int]) -> StepSeam:
    """Pressed toward the sections that come before."""
    start, end = join.seam
    way = step(start, end)
    square = Point(-way.y, way.x)
    back = any(dot(square, step(start, corner)) > 0 for corner in before)
    arrow = square if back else Point(-square.x, -square.y)
    return StepSeam(
        line=(start, end),
        over=Point(-arrow.x, -arrow.y),
        kind="straight",
        stop=None,
        begin=None,
        parts=parts,
        toward=0,
        arrow=arrow,
        meetings=meetings[0],
        unnested=meetings[1],
    )
