"""What the sheet says of appliqué: which pieces, how they are prepared, laid and sewn."""

from __future__ import annotations

from blockdsl.drawing.lengths import show_measure
from blockdsl.facts.applique_step import METHOD
from blockdsl.facts.blockfacts import BlockFacts


def say_applique(facts: BlockFacts) -> tuple[str, ...]:
    """The paragraphs; none for a block without appliqué.

    Working from the bottom piece up, needle-turn and a close stitch round raw edges: common practice, no source.
    """
    if not facts.appliques:
        return ()
    under = {piece.label: piece.turn_under for piece in facts.appliques}
    turned = [label for label, width in under.items() if width]
    raw = [label for label, width in under.items() if not width]
    first = (
        "Sew the block first and press it. The pieces are laid on it in the order of their letters, the first lowest."
    )
    said = [first]
    if turned:
        widths = sorted({under[label] for label in turned})
        width = show_measure(widths[0], facts.unit) if len(widths) == 1 else "what the template says"
        said.append(
            f"{_letters(turned)}: cut on the solid line of the template. Trace the dashed line on the right side of "
            f"the cloth, snip the allowance where the edge bends inward, fold {width} under along the line, pin, and "
            "sew the fold down with small blind stitches. What lies under another piece stays flat."
        )
    if raw:
        said.append(
            f"{_letters(raw)}: cut on the line, nothing is turned under. Hold the piece in place with fusible web or "
            "glue for cloth, as its maker says, and sew round it with a close stitch."
        )
    said.append("Pins and needles: count them in and out. Sharp scissors: cut away from the hand that holds the cloth.")
    return tuple(said)


def is_told_in_a_step(facts: BlockFacts) -> bool:
    """Whether the steps end with one of their own for the appliqué: not those of blocks too large for steps."""
    return any(step.method == METHOD for step in facts.steps)


def _letters(labels: list[str]) -> str:
    return labels[0] if len(labels) == 1 else f"{', '.join(labels[:-1])} and {labels[-1]}"
