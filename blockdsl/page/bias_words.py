"""What lies on the bias, in a sentence or two: edges that stretch, and what to do about those on the outside."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.facts.blockfacts import BiasFacts, BlockFacts


def say_bias(facts: BlockFacts) -> str:
    """Which edges lie on the bias, letters alike together; outer edges by themselves. Empty where all are straight.

    That bias stretches and is pressed, not ironed, and staystitched where it stays open: common practice, no source.
    """
    if not facts.bias:
        return ""
    stretch = "Bias stretches: handle these edges gently, and press without sliding the iron."
    told = f"Bias edges if cut as listed: {_listed(facts.bias)}. {stretch}"
    outside = [bias.label for bias in facts.bias if bias.outside]
    if not outside:
        return told
    edges = "The outer edges of" if len(outside) > 1 else "The outer edge of"
    are = "are" if len(outside) > 1 else "is"
    sew = "staystitch them inside the seam allowance before you handle the block."
    return f"{told} {edges} {_and(outside)} {are} on the bias too: {sew}"


def _listed(found: Sequence[BiasFacts]) -> str:
    letters: dict[str, list[str]] = {}
    for bias in found:
        letters.setdefault(bias.which, []).append(bias.label)
    return "; ".join(f"{which} of {_and(labels)}" for which, labels in letters.items())


def _and(words: Sequence[str]) -> str:
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} and {words[-1]}"
