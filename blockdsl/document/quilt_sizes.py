"""What the sizes of a quilt's sheet mean."""

from __future__ import annotations

from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.wording.sheet import format_allowance, format_metric_rule, format_squaring, format_templates


def sizes_said(facts: QuiltFacts) -> list[str]:
    """What the sizes mean, of the quilt and of its blocks, each thing once."""
    blocks = [kind.block for kind in facts.kinds]
    says = (format_squaring, format_metric_rule, format_templates)
    texts = dict.fromkeys([format_allowance(facts), *(say(block) for say in says for block in blocks)])
    return [text for text in texts if text]
