"""What the sheet says of appliqué: which pieces, how they are prepared, laid and sewn."""

from __future__ import annotations

from blockdsl.facts.applique_step import METHOD
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.wording.grammar import listed
from blockdsl.wording.lengths import show_measure
from blockdsl.wording.messages import words_of


def format_applique(facts: BlockFacts) -> tuple[str, ...]:
    """The paragraphs; none for a block without appliqué.

    Working from the bottom piece up, needle-turn and a close stitch round raw edges: common practice, no source.
    """
    if not facts.appliques:
        return ()
    words = words_of(facts)
    under = {piece.label: piece.turn_under for piece in facts.appliques}
    turned = [label for label, width in under.items() if width]
    raw = [label for label, width in under.items() if not width]
    said = [words("applique-order")]
    if turned:
        widths = sorted({under[label] for label in turned})
        key = "applique-turned" if len(widths) == 1 else "applique-turned-mixed"
        width = show_measure(widths[0], facts.unit, words)
        said.append(words(key, letters=listed(turned, words), width=width))
    if raw:
        said.append(words("applique-raw", letters=listed(raw, words)))
    return (*said, words("applique-care"))


def is_told_in_a_step(facts: BlockFacts) -> bool:
    """Whether the steps end with one of their own for the appliqué: not those of blocks too large for steps."""
    return any(step.method == METHOD for step in facts.steps)
