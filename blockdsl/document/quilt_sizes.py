"""What the sizes of a quilt's sheet mean."""

from __future__ import annotations

from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.wording.sheet import say_allowance, say_metric_rule, say_squaring, say_templates


def sizes_said(facts: QuiltFacts) -> list[str]:
    """What the sizes mean, of the quilt and of its blocks, each thing once."""
    blocks = [kind.block for kind in facts.kinds]
    says = (say_squaring, say_metric_rule, say_templates)
    texts = dict.fromkeys([say_allowance(facts), *(say(block) for say in says for block in blocks)])
    return [text for text in texts if text]
