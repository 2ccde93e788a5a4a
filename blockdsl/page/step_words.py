"""What the pages of steps say beside the sentences of the steps: alternative texts."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.stepfacts import JoinFacts, StepFacts
from blockdsl.pictures.words import many
from blockdsl.wording.english import plural

TOO_MANY: Final = "This block has {count:,} patches, too many for a list of steps: sew it in rows."


def _share(count: int, step: StepFacts) -> int:
    return count // step.count if count % step.count == 0 else count


def _join(join: JoinFacts, labels: Mapping[str, str], count: int) -> str:
    fabric = labels.get(join.fabric, join.fabric)
    if join.step and count == 1 and join.name.startswith(("row ", "column ", "unit ")):
        return f"{join.name} (step {join.step})"
    if join.step:
        return f"{count} {plural(join.name) if count > 1 else join.name} (step {join.step})"
    return f"{count} {join.name} ({fabric})"


def _listed(words: list[str]) -> str:
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} and {words[-1]}"


def say_apart(step: StepFacts, labels: Mapping[str, str]) -> str:
    """Alternative text of the parts apart."""
    parts = [_join(join, labels, _share(join.count, step)) for join in step.joins]
    return f"Step {step.number}, {step.makes}: the parts apart, {_listed(parts)}."


def say_joined(step: StepFacts) -> str:
    """Alternative text of the parts joined."""
    seams = [seam for hand in step.hands[:1] for stage in hand.stages for seam in stage.seams]
    hard = {
        "straight": "",
        "curved": ", one of them curved",
        "partial": ", one of them partial",
        "set-in": ", one of them set in",
    }[step.seam]
    return (
        f"Step {step.number}, {step.makes}: the parts joined with {many(len(seams), 'seam')}{hard}; "
        "arrows show the way to press."
    )


def labels_of(facts: BlockFacts) -> dict[str, str]:
    """The printed name of each fabric."""
    return {fabric.name: fabric.label for fabric in facts.fabrics}
