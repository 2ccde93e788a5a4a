"""What the sheet says of appliqué: which pieces, how they are prepared, laid and sewn."""

from __future__ import annotations

from blockdsl.facts.applique_step import METHOD
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.pictures.lengths import show_measure


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
        "Sew and press the block first. Place the pieces on it in the order of their letters, the first one undermost."
    )
    said = [first]
    if turned:
        widths = sorted({under[label] for label in turned})
        width = show_measure(widths[0], facts.unit) if len(widths) == 1 else "the allowance"
        said.append(
            f"{_letters(turned)}: cut on the solid line of the template. Trace the dashed line on the right side of "
            f"the fabric. Clip the allowance where the edge curves inward, turn {width} under on the line, pin, and "
            "sew the fold down with small blind stitches. Leave edges flat where another piece covers them."
        )
    if raw:
        said.append(
            f"{_letters(raw)}: cut on the line; no edges are turned under. Hold each piece in place with fusible web "
            "or fabric glue, as its maker directs, and sew around the edges with a close zigzag or blanket stitch."
        )
    said.append("Pins and needles: count them in and out. Sharp scissors: cut away from the hand holding the fabric.")
    return tuple(said)


def is_told_in_a_step(facts: BlockFacts) -> bool:
    """Whether the steps end with one of their own for the appliqué: not those of blocks too large for steps."""
    return any(step.method == METHOD for step in facts.steps)


def _letters(labels: list[str]) -> str:
    return labels[0] if len(labels) == 1 else f"{', '.join(labels[:-1])} and {labels[-1]}"
