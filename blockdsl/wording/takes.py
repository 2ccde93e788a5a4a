"""What a step takes, in words."""

from __future__ import annotations

from typing import Final

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.stepfacts import JoinFacts, StepFacts
from blockdsl.wording.grammar import listed, plural
from blockdsl.wording.measures import figure
from blockdsl.wording.messages import Messages

_PIECES: Final = {"template": "piece"}


def take_sentence(step: StepFacts, block: BlockFacts, words: Messages) -> str:
    """What a unit that a method makes takes for all of them: `Take 4 Harbour fog squares 2 3/8 in`."""
    if not step.joins:
        return ""
    labels = {fabric.name: fabric.label for fabric in block.fabrics}
    return words("step-take", list=listed([_piece(join, labels, block, words) for join in step.joins], words))


def _piece(join: JoinFacts, labels: dict[str, str], block: BlockFacts, words: Messages) -> str:
    label = labels.get(join.fabric, join.fabric)
    if join.step:
        return f"the {join.name} (step {join.step})"
    if not join.piece:
        return f"{join.count} {join.name} ({label})"
    noun = _PIECES.get(join.piece, join.piece)
    size = " × ".join(figure(side, block.unit) for side in join.cut)
    wide = " wide" if join.piece == "strip" else ""
    return f"{join.count} {label} {plural(noun, words) if join.count > 1 else noun} {size} {block.unit}{wide}"
