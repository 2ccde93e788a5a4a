"""The step from a block's making to its cut list: letters for its patches, their grain, and all that is cut."""

from __future__ import annotations

from msgspec import Struct

from blockdsl.analysis.letters import Lettered, letter_patches
from blockdsl.cutting.cutlist import Cut, cut_list
from blockdsl.cutting.grain import GrainPlan, plan_grain
from blockdsl.model import BlockDesign
from blockdsl.sewing import Making


class BlockCuts(Struct, frozen=True):
    """A block with its making, the letters of its patches, the way each is cut, and the cut list of one copy."""

    design: BlockDesign
    making: Making
    lettered: Lettered
    grain: GrainPlan
    cuts: tuple[Cut, ...]


def cut_block(design: BlockDesign, making: Making) -> BlockCuts:
    """All that is cut for one copy of a block that is made so."""
    lettered = letter_patches(design.patches)
    grain = plan_grain(design, lettered)
    return BlockCuts(design, making, lettered, grain, cut_list(design, making, lettered, grain=grain))
