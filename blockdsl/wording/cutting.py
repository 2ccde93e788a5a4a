"""What is said of the cutting table."""

from __future__ import annotations

from blockdsl.cutting.squaring import SQUARED_AGAIN, SQUARED_FIRST
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.model.lengths import write_length
from blockdsl.wording.messages import Messages


def squaring_sentence(block: BlockFacts, words: Messages) -> str:
    """What the strips of strip sets have for squaring up; empty for a block without any."""
    if not any(unit.strip_sets for unit in block.units):
        return ""
    unit = block.unit
    first, again = (write_length(each[unit], unit) for each in (SQUARED_FIRST, SQUARED_AGAIN))
    return words("squaring-up", first=first, again=again, unit=unit)
