"""Finishing: layers, quilting, a sleeve and binding, in words and small pictures."""

from __future__ import annotations

from typing import Final

from blockdsl.document.finishing import PICTURE, FinishingStep, finishing_steps
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.prose import TextStyle
from blockdsl.marks.theme import BODY_PT, CONTENT_WIDTH_PT, GUTTER_PT, INK, STEP_PT, span_pt
from blockdsl.page.flow import Flowable
from blockdsl.page.headings import heading
from blockdsl.page.quilt.assembly import NUMBER_PT, head_marks
from blockdsl.page.steps import part_marks
from blockdsl.wording.messages import words_of

_BODY: Final = TextStyle(BODY_PT, "regular", INK)
_WORDS_PT: Final = CONTENT_WIDTH_PT - NUMBER_PT - PICTURE.width_pt - GUTTER_PT


def finishing(facts: QuiltFacts) -> list[Flowable]:
    """The heading, then step by step."""
    steps = finishing_steps(facts)
    if not steps:
        return []
    words = words_of(facts)
    return [
        heading(words("finishing-title"), aside=words("finishing-aside")),
        *(each for step in steps for each in _flowables(step)),
    ]


def _flowables(step: FinishingStep) -> list[Flowable]:
    """The head with the first stretch, then each further stretch with its picture."""
    flowables = []
    for place, (lettered, picture) in enumerate(step.stretches):
        room = _WORDS_PT if picture is not None else span_pt(10)
        y, marks = head_marks(step.text, room) if not place else (0.0, list[Mark]())
        for letter, part in lettered:
            height, words = part_marks(f"{letter} ".lstrip(), part, room, _BODY)
            marks += moved(words, NUMBER_PT, y)
            y += height + STEP_PT / 2
        if picture is not None:
            marks.append(picture)
            y = max(y, PICTURE.height_pt)
        last = place == len(step.stretches) - 1
        flowables.append(
            Flowable(y, tuple(marks), before_pt=STEP_PT if place else 3 * STEP_PT, keep_with_next=not last)
        )
    return flowables
