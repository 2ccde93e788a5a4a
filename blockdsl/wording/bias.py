"""What lies on the bias, in a sentence or two: edges that stretch, and what to do about those on the outside."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.facts.blockfacts import BiasFacts, BlockFacts
from blockdsl.wording.grammar import in_clauses, listed
from blockdsl.wording.messages import Messages, words_of


def format_bias(facts: BlockFacts) -> str:
    """Which edges lie on the bias, letters alike together; outer edges by themselves. Empty where all are straight.

    That bias stretches and is pressed, not ironed, and staystitched where it stays open: common practice, no source.
    """
    if not facts.bias:
        return ""
    words = words_of(facts)
    told = words("bias-edges", edges=_edges(facts.bias, words))
    outside = [bias.label for bias in facts.bias if bias.outside]
    if not outside:
        return told
    return f"{told} {words('bias-outside', count=len(outside), letters=listed(outside, words))}"


def _edges(found: Sequence[BiasFacts], words: Messages) -> str:
    letters: dict[tuple[str, int, int], list[str]] = {}
    for bias in found:
        count = len(bias.lengths)
        alike = (bias.which, count, bias.edges) if bias.which == "some" else (bias.which, min(count, 2), 0)
        letters.setdefault(alike, []).append(bias.label)
    return in_clauses(
        (
            words(f"bias-{which}", count=count, of=str(of), letters=listed(labels, words))
            for (which, count, of), labels in letters.items()
        ),
        words,
    )
