"""The steps of a block as records: what each takes and makes, its seams, and what its picture shows.

All lengths are exact and in the block's unit. Pictures are those of the sewing layer, finished, in true measure.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Annotated

from msgspec import Meta

from blockdsl.cutting.sizes import Extent
from blockdsl.facts.blockrecord import FabricFacts
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.remark import Remark
from blockdsl.record import Count, Name, Record, Rest, says
from blockdsl.sewing.method_steps import MethodPart, MethodStep
from blockdsl.sewing.order import SeamKind
from blockdsl.sewing.part_name import PartName
from blockdsl.sewing.steps import Ingredient, Stage, StepSeam, Variant
from blockdsl.sewing.steps.action import Action
from blockdsl.sewing.techniques.scene import LessonStep

__all__ = [
    "GridPlace",
    "Ingredient",
    "JoinFacts",
    "LessonStep",
    "MethodPart",
    "MethodStep",
    "Part",
    "SeamKind",
    "Stage",
    "StepFacts",
    "StepRecord",
    "StepSeam",
    "Variant",
    "join_of",
]


class Part(Record, frozen=True, omit_defaults=True):
    """A patch by its letter and fabric, or what an earlier step made."""

    step: Annotated[Rest, says("The earlier step that made it.")] = 0
    unit: Annotated[str, says("What that step made.")] = ""
    patch: Annotated[str, says("The letter of the patch.")] = ""
    fabric: str = ""


class JoinFacts(Part, frozen=True, kw_only=True, omit_defaults=True):
    """So many patches of one letter and fabric; or of what an earlier step made; or of pieces cut for a method."""

    count: Count
    piece: Annotated[str, says("What is cut, where a method takes other pieces than patches: `square`, `strip` …")] = ""
    cut: Annotated[
        tuple[Fraction, ...],
        says("Of a cut piece: the side of a square, both sides of a rectangle, the width of a strip."),
        Meta(max_length=2),
    ] = ()

    @property
    def name(self) -> str:
        """What an earlier step made, or the letter of patches."""
        return self.unit or self.patch


def join_of(
    name: str, count: int, step: int = 0, fabric: str = "", piece: str = "", cut: tuple[Fraction, ...] = ()
) -> JoinFacts:
    """What a step takes by the name of what an earlier step made, or without one by the letter of its patches."""
    named = {"unit" if step else "patch": name}
    return JoinFacts(count=count, step=step, **named, fabric=fabric, piece=piece, cut=cut)


class GridPlace(Record, frozen=True):
    """A place in the block's grid, from 1, and how many columns and rows it fills."""

    column: Count
    row: Count
    columns: Count
    rows: Count


class StepRecord(Record, frozen=True, kw_only=True):
    """One step.

    A method's unit takes cut pieces and has no seams of its own.
    """

    number: Count
    makes: Name
    count: Annotated[Count, says("How many are made in all, mirror images included.")]
    spare: Annotated[Rest, says("How many of those are left over.")]
    method: Name
    joins: Annotated[tuple[JoinFacts, ...], says("What all of them take.")]
    seam: SeamKind
    sections: Annotated[
        tuple[str, ...],
        says(
            "The sections of foundation papers that the step sews (one) or joins (several), by their letters; none in "
            "other steps."
        ),
    ] = ()
    finished: Annotated[Extent | None, says("Null for what is no rectangle.")]
    unfinished: Annotated[
        Extent | None, says("What it should measure before it is joined; null for what is no rectangle.")
    ]
    size: Annotated[
        Extent, says("Finished, as it lies on the table; of what is no rectangle that of the box round it.")
    ]
    actions: Annotated[
        tuple[Action, ...],
        says(
            "What is done to make one, in order, in a step that joins patches and units; a part beyond the step's "
            "parts is what an earlier stage made, counted on from there. A seam is its stage and its place among the "
            "stage's seams."
        ),
    ] = ()
    remarks: Annotated[tuple[Remark, ...], says("What the designer adds to it, in her own words.")] = ()
    cells: Annotated[tuple[GridPlace, ...], says("Where it goes in the block; none when it fills no whole cells.")]


class StepFacts(StepRecord, frozen=True, kw_only=True):
    """A step with what its pictures show.

    `names` has each name in the step as data. `hands` is what is made as it lies in its first place, and its mirror
    image when a method makes both. Of a unit made by a method `lesson` has the method's own steps, with `fabrics` for
    their pictures, `made_by` what is taken and done, and `hands` no parts. `foundation` is the place of the papers'
    unit among the block's foundations.
    """

    hands: tuple[Variant, ...]
    names: Mapping[str, PartName]
    lesson: tuple[LessonStep, ...] | tuple[MethodPart, ...] = ()
    fabrics: tuple[FabricFacts, ...] = ()
    made_by: MethodStep | None = None
    foundation: int | None = None
