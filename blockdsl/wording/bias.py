"""What lies on the bias, in a sentence or two: edges that stretch, and what to do about those on the outside."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from blockdsl.facts.blockfacts import BiasFacts, BlockFacts
from blockdsl.wording.grammar import listed
from blockdsl.wording.messages import Messages, words_of

_SOME: Final = re.compile("([0-9]+) of the ([0-9]+) edges")
_KEYS: Final = {
    "all edges": ("bias-all", 2),
    "the long edge": ("bias-long", 1),
    "the long edges": ("bias-long", 2),
    "the short edge": ("bias-short", 1),
    "the short edges": ("bias-short", 2),
}
"""The message of what the facts say of a letter's edges, and its number."""


def say_bias(facts: BlockFacts) -> str:
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
    letters: dict[str, list[str]] = {}
    for bias in found:
        letters.setdefault(bias.which, []).append(bias.label)
    return "; ".join(_which(which, listed(labels, words), words) for which, labels in letters.items())


def _which(which: str, letters: str, words: Messages) -> str:
    if (some := _SOME.fullmatch(which)) is not None:
        return words("bias-some", count=int(some[1]), of=some[2], letters=letters)
    key, count = _KEYS[which]
    return words(key, count=count, letters=letters)
