"""The numbers of a block and how it is sewn: what sheets and sites read.

The records themselves are in `blockrecord`; here they meet what is found out about a block when it is first asked for.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from blockdsl.cutting.sizes import Extent
from blockdsl.facts.blockrecord import (
    Alternative,
    AppliqueFacts,
    BiasFacts,
    BlockRecord,
    ColourwayFacts,
    CoverFacts,
    CutFacts,
    FabricFacts,
    LackingFacts,
    PatchFacts,
    Piece,
    PlacedPatch,
    RulerUnit,
    StripFacts,
    StripSetFacts,
    Subcut,
    TemplateFacts,
    UnitFacts,
    Value,
)
from blockdsl.facts.sewn import Sewing
from blockdsl.geometry import Exact
from blockdsl.geometry.arc import CurvedArea
from blockdsl.model.remark import Remark
from blockdsl.raster import Raster
from blockdsl.sewing.order import SeamCount

if TYPE_CHECKING:
    from blockdsl.facts.stepfacts import StepFacts

__all__ = [
    "AppliqueFacts",
    "BiasFacts",
    "BlockFacts",
    "ColourwayFacts",
    "CoverFacts",
    "CutFacts",
    "Extent",
    "FabricFacts",
    "LackingFacts",
    "PatchFacts",
    "Piece",
    "PlacedPatch",
    "RulerUnit",
    "StripFacts",
    "StripSetFacts",
    "Subcut",
    "TemplateFacts",
    "UnitFacts",
    "Value",
]


class BlockFacts(BlockRecord, frozen=True, kw_only=True):
    """Everything about one block at one size. `sizes` are the same block at the further sizes that it asks for.

    `photos` has the pixels of the pictures that its remarks name.
    """

    area_by_fabric: tuple[tuple[str, Exact | CurvedArea], ...]
    sewing: Sewing | None = None
    sizes: tuple[BlockFacts, ...] = ()
    photos: tuple[tuple[str, Raster], ...] = ()

    @property
    def steps(self) -> tuple[StepFacts, ...]:
        """The steps of making it, in order; none when no order of sewing is known. Worked out at the first call."""
        return self.sewing.steps(self) if self.sewing is not None else ()

    @property
    def remarks_with_block(self) -> tuple[Remark, ...]:
        """What the designer adds to the block itself, and to units that have no step of their own."""
        if not self.remarks:
            return ()
        told = {remark for step in self.steps for remark in step.remarks}
        return tuple(remark for remark in self.remarks if remark not in told)

    @property
    def alternatives(self) -> tuple[tuple[Alternative, ...], ...]:
        """For each of its units every way in which it can be made."""
        return self.sewing.alternatives if self.sewing is not None else ()

    @property
    def seams(self) -> SeamCount | None:
        """How many seams of each kind it has; None when no order of sewing is known."""
        return self.sewing.seams if self.sewing is not None else None
