"""The actions of a step as JSON: what is done, with which parts, in order.

A part is a number: one of the step's `parts`, or beyond them what an earlier stage of the same step made.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import fields
from typing import Final

from blockdsl.facts.stepfacts import Ingredient, StepFacts, Variant
from blockdsl.geometry import Exact, Surd
from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.steps.action import Action, Landmark, Press

_WORD: Final = re.compile(r"(?<!^)(?=[A-Z])")
_FINE: Final = 64
"""How far points extend is told to such a share of an inch or a centimetre."""


def parts_document(step: StepFacts) -> list[dict[str, object]]:
    """The parts that the actions speak of, each with its letter and fabric or with the step that made it."""
    return [_part(part) for hand in step.hands[:1] for part in hand.ingredients]


def _part(part: Ingredient) -> dict[str, object]:
    if part.fabric is not None:
        return {"patch": part.name, "fabric": part.fabric}
    return {"step": part.step, "unit": part.name}


def actions_document(step: StepFacts, say: Callable[[Exact], str]) -> list[dict[str, object]]:
    """What is done in a step that joins patches and units; nothing for other steps."""
    return [_action(action, step.hands[0], say) for action in step.actions]


def _action(action: Action, hand: Variant, say: Callable[[Exact], str]) -> dict[str, object]:
    document: dict[str, object] = {"do": _WORD.sub("-", type(action).__name__).lower()}
    if isinstance(action, Press):
        seams = [hand.stages[stage].seams[place] for stage, place in action.seams]
        toward = [None if seam.toward is None else seam.parts[seam.toward] for seam in seams]
        return document | {"seams": [list(seam) for seam in action.seams], "toward": toward}
    for each in fields(action):
        value = getattr(action, each.name)
        if value is not None and value is not False and value not in ((), ""):
            document[each.name] = _plain(value, say)
    return document


def _plain(value: object, say: Callable[[Exact], str]) -> object:
    if isinstance(value, Landmark):
        return _landmark(value)
    if isinstance(value, Fraction | Surd):
        return say(value)
    if isinstance(value, float):
        return say(Fraction(round(value * _FINE), _FINE))
    if isinstance(value, Sequence) and not isinstance(value, str):
        return [_plain(each, say) for each in value]
    return value


def _landmark(landmark: Landmark) -> dict[str, object]:
    document: dict[str, object] = {"kind": landmark.kind, "places": list(landmark.places)}
    return document | {key: value for key in ("fabric", "letter") if (value := getattr(landmark, key))}
