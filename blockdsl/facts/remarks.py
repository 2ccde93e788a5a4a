"""In which step a designer's remarks stand."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec.structs import replace

from blockdsl.facts.stepfacts import StepFacts
from blockdsl.model.remark import LAST, ROWS, Remark
from blockdsl.shapes import SHAPES

_OF_ROWS = frozenset({"row", "column"})


def with_remarks(steps: Sequence[StepFacts], remarks: Sequence[Remark]) -> tuple[StepFacts, ...]:
    """The steps, each with the remarks that belong to it; what no step makes stands in none of them."""
    at: dict[int, list[Remark]] = {}
    for remark in remarks:
        place = _step_of(remark.place, steps) if remark.place else None
        if place is not None:
            at.setdefault(place, []).append(remark)
    return tuple(replace(step, remarks=tuple(at[place])) if place in at else step for place, step in enumerate(steps))


def _step_of(place: str, steps: Sequence[StepFacts]) -> int | None:
    """The first step that makes what is named; for rows that are no step of their own the last one."""
    if not steps:
        return None
    for number, step in enumerate(steps):
        name = step.names[step.makes]
        made = {name.own, name.noun, ROWS if name.noun in _OF_ROWS else ""}
        if place in made or (place in SHAPES and SHAPES[place].title in made):
            return number
    return len(steps) - 1 if place in (LAST, ROWS) else None
