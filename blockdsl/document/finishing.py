"""The steps of finishing a quilt, each with its small pictures."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec import Struct

from blockdsl.document.assembly import steps_with_words
from blockdsl.document.materials import finishing_of
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.facts.quiltstepfacts import Makes
from blockdsl.marks.display_list import Figure
from blockdsl.marks.theme import CONTENT_WIDTH_PT, Box, span_pt
from blockdsl.pictures.finishing import (
    backing_picture,
    corner_picture,
    join_picture,
    layers_picture,
    sleeve_picture,
)
from blockdsl.wording import StepPart, StepText
from blockdsl.wording.messages import words_of

PICTURE: Final = Box(CONTENT_WIDTH_PT - span_pt(4), 0.0, span_pt(4), 112.0)
"""Where on its step a small picture stands."""


LetteredParts = tuple[tuple[str, StepPart], ...]


class FinishingStep(Struct, frozen=True):
    """A step of finishing: its words, and stretches of its parts, each with a picture or none."""

    text: StepText
    stretches: tuple[tuple[LetteredParts, Figure | None], ...]


def finishing_steps(facts: QuiltFacts) -> list[FinishingStep]:
    """All that is done to the top when it is sewn, in order; nothing where nothing is known of it."""
    if finishing_of(facts) is None:
        return []
    return [
        FinishingStep(text, _stretches(text.lettered, _pictures(facts, step.makes)))
        for step, text in steps_with_words(facts)
        if not step.of_top
    ]


def _stretches(lettered: LetteredParts, pictures: Sequence[Figure]) -> tuple[tuple[LetteredParts, Figure | None], ...]:
    """The parts of a step beside its pictures: the first beside the first, what is left beside the last."""
    if len(pictures) < 2 or len(lettered) < 2:
        return ((lettered, pictures[0] if pictures else None),)
    return ((lettered[:1], pictures[0]), *_stretches(lettered[1:], pictures[1:]))


def _pictures(facts: QuiltFacts, makes: Makes) -> tuple[Figure, ...]:
    """The small pictures of a step, in order."""
    words = words_of(facts)
    if makes == "backing" and facts.backing is not None:
        return (backing_picture(facts.backing.plan, facts.unfinished, PICTURE, words),)
    if makes == "layers":
        names = (words("quilt-top-right"), words("quilt-batting"), words("quilt-backing-wrong"))
        return (layers_picture(PICTURE, names, words),)
    if makes == "sleeve":
        return (sleeve_picture(PICTURE, words),)
    if makes == "binding" and facts.binding is not None:
        straight = facts.binding.plan.square is None
        return (*((join_picture(PICTURE, words),) if straight else ()), corner_picture(PICTURE, words))
    return ()
