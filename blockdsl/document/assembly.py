"""The steps of a quilt with their words, and what its rows measure."""

from __future__ import annotations

from collections.abc import Iterator

from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.facts.quiltstepfacts import QuiltStepFacts
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.wording import StepText, quilt_names, quilt_step_texts


def alike_rows(facts: QuiltFacts) -> Iterator[tuple[str, str, str]]:
    """(which rows, what one takes, what it should measure), as their steps say."""
    names = quilt_names(facts)
    for step, text in steps_with_words(facts):
        if step.makes == "rows":
            yield text.name, names.takes(step.takes), fraction_text(text.parts[-1].measure)


def steps_with_words(facts: QuiltFacts) -> list[tuple[QuiltStepFacts, StepText]]:
    """Every step of the quilt with its words."""
    return list(zip(facts.steps, quilt_step_texts(facts), strict=True))
