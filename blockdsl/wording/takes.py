"""What a step takes, in words."""

from __future__ import annotations

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.stepfacts import JoinFacts, StepFacts
from blockdsl.wording.grammar import listed, name_of
from blockdsl.wording.measures import figure
from blockdsl.wording.messages import Messages
from blockdsl.wording.part_names import PartNames


def take_sentence(step: StepFacts, block: BlockFacts, words: Messages) -> str:
    """What a unit that a method makes takes for all of them: `Take 4 Harbour fog squares 2 3/8 in`."""
    if not step.joins:
        return ""
    labels = {fabric.name: fabric.label for fabric in block.fabrics}
    return words("step-take", list=listed([_piece(join, labels, block, words) for join in step.joins], words))


def _piece(join: JoinFacts, labels: dict[str, str], block: BlockFacts, words: Messages) -> str:
    label = labels.get(join.fabric, join.fabric)
    if join.step:
        names = PartNames(words, frozenset(labels.values()))
        return words("take-from-step", name=names.one(join.name, "the"), step=join.step)
    if not join.piece:
        return words("take-patches", count=join.count, letter=join.name, form="plain", fabric=label)
    size = " × ".join(figure(side, block.unit, words) for side in join.cut)
    piece = name_of(f"piece-{join.piece}", words, count=join.count)
    key = "take-strips" if join.piece == "strip" else "take-pieces"
    return words(key, count=join.count, fabric=label, piece=piece, size=size, unit=block.unit)
