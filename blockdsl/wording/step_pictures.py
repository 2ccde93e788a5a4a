"""What the pictures of steps show, for those who cannot see them."""

from __future__ import annotations

from collections.abc import Mapping

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.stepfacts import JoinFacts, StepFacts
from blockdsl.wording.grammar import in_thousands, listed
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.part_names import PartNames


def format_too_many(facts: BlockFacts) -> str:
    """That a block has too many patches for a list of steps."""
    words = words_of(facts)
    return words("steps-too-many", count=in_thousands(len(facts.placed), words))


def _share(count: int, step: StepFacts) -> int:
    return count // step.count if count % step.count == 0 else count


def _join(join: JoinFacts, labels: Mapping[str, str], count: int, names: PartNames, words: Messages) -> str:
    fabric = labels.get(join.fabric, join.fabric)
    if not join.step:
        return words("take-patches", count=count, letter=join.name, form="plain", fabric=fabric)
    part = names.part(join.name)
    if count == 1 and (part.is_numbered or part.noun == "unit"):
        return words("apart-step", name=names.one(join.name), step=join.step)
    return words("apart-steps", count=count, name=names.many(join.name, count), step=join.step)


def _made(step: StepFacts, words: Messages) -> str:
    return PartNames(words, step.names).one(step.makes)


def format_apart(step: StepFacts, labels: Mapping[str, str], words: Messages) -> str:
    """Alternative text of the parts apart."""
    names = PartNames(words, step.names)
    parts = [_join(join, labels, _share(join.count, step), names, words) for join in step.joins]
    made = _made(step, words)
    return words("picture-apart", number=step.number, name=made, parts=listed(parts, words))


def format_joined(step: StepFacts, words: Messages) -> str:
    """Alternative text of the parts joined."""
    seams = [seam for hand in step.hands[:1] for stage in hand.stages for seam in stage.seams]
    key = "picture-joined" if step.seam == "straight" else f"picture-joined-{step.seam}"
    return words(key, count=len(seams), number=step.number, name=_made(step, words))


def format_step(step: StepFacts, words: Messages) -> str:
    """Alternative text of what a method makes."""
    return words("picture-step", number=step.number, name=_made(step, words))


def labels_of(facts: BlockFacts) -> dict[str, str]:
    """The printed name of each fabric."""
    return {fabric.name: fabric.label for fabric in facts.fabrics}
