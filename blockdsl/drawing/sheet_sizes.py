"""The sheet's last part, for a block that is told at several sizes: the sizes, their cutting, their units."""

from __future__ import annotations

from dataclasses import replace

from blockdsl.drawing.book_sizes import cutting_tables, size_table
from blockdsl.drawing.book_units import units_at_sizes
from blockdsl.drawing.flow import Slice
from blockdsl.drawing.prose import heading
from blockdsl.facts.blockfacts import BlockFacts


def other_sizes(facts: BlockFacts) -> list[Slice]:
    """Nothing for a block at one size; else all its sizes beside each other, its own first."""
    if not facts.sizes:
        return []
    sizes = (facts, *facts.sizes)
    head = replace(heading("At other sizes", aside="the steps are the same; use these measures"), keep=True)
    return [head, *size_table(sizes), *cutting_tables(sizes), *units_at_sizes(sizes)]
