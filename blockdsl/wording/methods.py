"""The steps of units that a method makes as a whole: its parts in words, each with its picture."""

from __future__ import annotations

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.stepfacts import StepFacts
from blockdsl.wording.measures import size_words
from blockdsl.wording.messages import Messages
from blockdsl.wording.steptext import StepPart
from blockdsl.wording.takes import take_sentence


def method_parts(step: StepFacts, block: BlockFacts, words: Messages, as_in: int) -> tuple[StepPart, ...]:
    """The parts of a step that a method makes; of one that an earlier step taught (`as_in`) only what is new."""
    take = take_sentence(step, block, words)
    often = step.sentences[-1] if step.sentences[-1] != f"Make {step.count}." else ""
    measure = size_words(step.unfinished, block.unit, words) if step.unfinished else ""
    before = tuple(filter(None, (take, often)))
    if as_in:
        return (StepPart((*before, words("step-as-in", number=as_in)), measure),)
    last = len(step.lesson) - 1
    return tuple(
        StepPart((*(before if place == 0 else ()), each.text), measure if place == last else "", each.title, place)
        for place, each in enumerate(step.lesson)
    )
