"""The steps of a quilt in the JSON of the facts: takes, actions, result, and the words where they are made."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import fields, is_dataclass
from typing import Final, Protocol

from blockdsl.facts.blockfacts import Extent
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.facts.quiltstepfacts import (
    CornerTriangles,
    JoinRows,
    LayAlike,
    MeasuredBorder,
    MitredBorder,
    PiecedBorder,
    PressRows,
    QuiltAction,
    QuiltStepFacts,
    SewInOrder,
    TrimStrips,
)
from blockdsl.geometry import Exact, Surd
from blockdsl.geometry.fraction import Fraction

Say = Callable[[Exact], str]
_NAMES: Final[dict[type, str]] = {
    LayAlike: "lay",
    SewInOrder: "sew in order",
    PressRows: "press",
    TrimStrips: "trim strips",
    JoinRows: "join rows",
    CornerTriangles: "corner triangles",
    MeasuredBorder: "measured border",
    MitredBorder: "mitred border",
    PiecedBorder: "pieced border",
}
_EMPTY: Final = ("", None, ())


class StepWords(Protocol):
    """The words of a step: its title, and all that there is to do."""

    @property
    def title(self) -> str:
        """Its name, how many are made, their size."""

    @property
    def text(self) -> str:
        """All sentences and measures on one line."""


DescribeQuilt = Callable[[QuiltFacts], Sequence[StepWords]]
"""Gives the words of all steps of a quilt, in order; they are made where a document is written."""


def steps_document(quilt: QuiltFacts, say: Say, describe: DescribeQuilt | None) -> list[dict[str, object]]:
    """All steps; without `describe` they have their data and no words."""
    words: Sequence[StepWords | None] = describe(quilt) if describe else [None] * len(quilt.steps)
    return [_step(step, text, say) for step, text in zip(quilt.steps, words, strict=True)]


def _step(step: QuiltStepFacts, words: StepWords | None, say: Say) -> dict[str, object]:
    told = {"title": words.title, "text": words.text} if words else {}
    return {
        "number": step.number,
        "makes": step.makes,
        **told,
        "count": step.count,
        "takes": [_record(take, say) for take in step.takes],
        "actions": [_action(action, say) for action in step.actions],
        "finished": _extent(step.finished, say) if step.finished else None,
        "measures": _extent(step.unfinished, say) if step.unfinished else None,
        "rows": list(step.rows),
        "round": step.ring,
        "of_top": step.of_top,
    }


def _action(action: QuiltAction, say: Say) -> dict[str, object]:
    return {"do": _NAMES[type(action)], **_record(action, say)}


def _record(record: object, say: Say) -> dict[str, object]:
    """A record as a dictionary, without what it leaves empty."""
    values = {each.name: getattr(record, each.name) for each in fields(record)}  # type: ignore[arg-type]
    return {name: _value(value, say) for name, value in values.items() if value not in _EMPTY}


def _value(value: object, say: Say) -> object:
    if isinstance(value, Fraction | Surd):
        return say(value)
    if isinstance(value, tuple):
        return [_value(each, say) for each in value]
    return _record(value, say) if is_dataclass(value) else value


def _extent(extent: Extent, say: Say) -> list[str]:
    return [say(extent[0]), say(extent[1])]
