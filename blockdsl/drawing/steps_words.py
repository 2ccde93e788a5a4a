"""What the pages of steps say beside the sentences of the steps: what to take, alternative texts."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from blockdsl.drawing.lengths import plain_length
from blockdsl.drawing.words import many
from blockdsl.facts.blockfacts import BlockFacts, RulerUnit
from blockdsl.facts.stepfacts import JoinFacts, StepFacts, plural

_MOST_ROWS: Final = 6
_PIECES: Final = {"template": "piece"}
TOO_MANY: Final = "This block has {count:,} patches, too many for a list of steps: sew it in rows."


def say_take(step: StepFacts, labels: Mapping[str, str], unit: RulerUnit) -> str:
    """What one making takes: `Take 1 A (Harbour fog), 2 beams from step 3`; of a method what all of it takes."""
    if step.lesson:
        return f"Take {_listed([_piece(join, labels, unit) for join in step.joins])}." if step.joins else ""
    if len(step.joins) > _MOST_ROWS and {join.name.split(" ")[0] for join in step.joins} in ({"row"}, {"column"}):
        from_steps = _listed([str(number) for number in sorted({join.step for join in step.joins})])
        return f"Take all the {step.joins[0].name.split(' ')[0]}s, from step {from_steps}."
    shares = [_join(join, labels, _share(join.count, step)) for join in step.joins]
    start = "For each take" if step.count > 1 and all(join.count % step.count == 0 for join in step.joins) else "Take"
    return f"{start} {_listed(shares)}."


def _share(count: int, step: StepFacts) -> int:
    return count // step.count if count % step.count == 0 else count


def _join(join: JoinFacts, labels: Mapping[str, str], count: int) -> str:
    fabric = labels.get(join.fabric, join.fabric)
    if join.step and count == 1 and join.name.startswith(("row ", "column ", "unit ")):
        return f"{join.name} (step {join.step})"
    if join.step:
        return f"{count} {plural(join.name, count)} (step {join.step})"
    return f"{count} {join.name} ({fabric})"


def _piece(join: JoinFacts, labels: Mapping[str, str], unit: RulerUnit) -> str:
    """`4 Harbour fog squares 2 3/8 in`, `3 Lantern strips 1 1/2 in wide`; of appliqué `2 B (Moss)`."""
    if join.step:
        return f"the {join.name} (step {join.step})"
    if not join.piece:
        return _join(join, labels, join.count)
    noun = _PIECES.get(join.piece, join.piece) + "s" * (join.count != 1)
    size = " × ".join(plain_length(side, unit) for side in join.cut)
    wide = " wide" if join.piece == "strip" else ""
    return f"{join.count} {labels.get(join.fabric, join.fabric)} {noun} {size} {unit}{wide}"


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
