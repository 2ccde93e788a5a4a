"""The sheet's last part, for a block that is told at several sizes: the sizes, their cutting, their units."""

from __future__ import annotations

from dataclasses import replace

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.page.flow import Slice
from blockdsl.page.headings import heading
from blockdsl.page.sheet.size_tables import cutting_tables, size_table
from blockdsl.page.sheet.size_units import units_at_sizes
from blockdsl.wording.messages import words_of


def other_sizes(facts: BlockFacts) -> list[Slice]:
    """Nothing for a block at one size; else all its sizes beside each other, its own first."""
    if not facts.sizes:
        return []
    sizes = (facts, *facts.sizes)
    words = words_of(facts)
    head = replace(heading(words("sizes-title-other"), aside=words("sizes-aside-other")), keep=True)
    return [head, *size_table(sizes), *cutting_tables(sizes), *units_at_sizes(sizes)]
