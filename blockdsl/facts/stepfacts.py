"""The steps of a block as plain data: what each takes and makes, its seams, its words, and what its picture shows.

All lengths are exact and in the block's unit. Pictures are those of the sewing room, finished, in true measure.
"""

from __future__ import annotations

from dataclasses import dataclass

from blockdsl.facts.blockfacts import Extent, FabricFacts
from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.method_steps import MethodPart, MethodStep
from blockdsl.sewing.order import SeamKind
from blockdsl.sewing.steps import Ingredient, Stage, StepSeam, Variant
from blockdsl.sewing.steps.action import Action
from blockdsl.sewing.techniques.scene import Step as LessonStep

__all__ = [
    "Ingredient",
    "JoinFacts",
    "LessonStep",
    "MethodPart",
    "MethodStep",
    "SeamKind",
    "Stage",
    "StepFacts",
    "StepSeam",
    "Variant",
]


@dataclass(frozen=True, slots=True)
class JoinFacts:
    """So many of one thing that a step takes: patches of one letter, what an earlier step made, or cut pieces.

    `step` is the earlier step's number, or 0; `name` what it made, or the patches' letter; `fabric` is empty for what
    a step made. `piece` says what is cut where a method takes other pieces than patches: `square`, `strip` …, and `cut`
    its size: the side of a square, both sides of a rectangle, the width of a strip.
    """

    name: str
    count: int
    step: int = 0
    fabric: str = ""
    piece: str = ""
    cut: tuple[Fraction, ...] = ()


@dataclass(frozen=True, slots=True)
class StepFacts:
    """One numbered step. `count` is how many are made, `spare` how many of them are left over.

    `finished` and `unfinished` are None for what is no upright rectangle; `size` is finished, of anything, as it lies
    on the table. `actions` are what is done, in order, in a step that joins patches and units. `hands` is what is
    made as it lies in its first place, and its mirror image when a method makes both. `cells` are the places in the
    block's grid, (column, row, columns, rows) from 1. Of a unit made by a method `lesson` has the method's own steps,
    with `fabrics` for their pictures, `made_by` what is taken and done, and `hands` no parts.
    `sections` are those of foundation papers, by letter: one that is sewn to its paper, or several that are joined;
    `foundation` is their unit's place among the block's foundations.
    """

    number: int
    makes: str
    count: int
    spare: int
    method: str
    joins: tuple[JoinFacts, ...]
    seam: SeamKind
    finished: Extent | None
    unfinished: Extent | None
    cells: tuple[tuple[int, int, int, int], ...]
    hands: tuple[Variant, ...]
    size: Extent
    actions: tuple[Action, ...] = ()
    lesson: tuple[LessonStep, ...] | tuple[MethodPart, ...] = ()
    fabrics: tuple[FabricFacts, ...] = ()
    made_by: MethodStep | None = None
    sections: tuple[str, ...] = ()
    foundation: int | None = None
