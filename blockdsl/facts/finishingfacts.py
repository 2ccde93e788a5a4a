"""What a quilt takes besides its piecing, as plain data: cloth to buy, backing, binding, wadding, sleeve, scraps.

The plans are those of the layer `cutting`, exact and in the quilt's own unit; here they are given to their fabrics.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Annotated

from msgspec import Struct, field

from blockdsl.cutting.buying import Buy
from blockdsl.cutting.cloth import ClothPlan, SheetPlan
from blockdsl.cutting.fat_quarters import FatQuarterUse
from blockdsl.cutting.finishing import BackingPlan, SleevePlan, WaddingPlan
from blockdsl.cutting.finishing_binding import BindingPlan
from blockdsl.cutting.quilt_cloth import JoinedStrips
from blockdsl.geometry.fraction import Fraction
from blockdsl.record import Count, Name, Record, says


class ClothPieceFacts(Record, frozen=True):
    """A size that is cut from a fabric."""

    key: Annotated[Name, says("That of its pieces in the plan.")]
    cut: tuple[Fraction, Fraction]
    count: Count
    uses: Annotated[Mapping[str, Count], says("How many of the pieces are for what.")] = field(name="for")


class FabricClothFacts(Struct, frozen=True):
    """The cloth of one fabric for the whole quilt, backing apart; binding and sleeve are in it.

    `pieces` are all that are cut from it. `scraps`: its blocks are cut from fat quarters, each from one print, and only
    the rest of it by the length. `plan`: strip by strip, in the order in which it is cut; None when nothing is, or when
    the cloth holds a piece in no way. `joined`: strips that are sewn end to end before lengths are cut off.
    `fat_quarters`: what they do for the blocks of scraps, else what they would do; None when a piece is too large for
    one, or when they would be far too many.
    """

    fabric: str
    usable_width: Fraction
    pieces: tuple[ClothPieceFacts, ...]
    scraps: bool
    plan: ClothPlan | None
    joined: tuple[JoinedStrips, ...]
    buy: Buy | None
    fat_quarters: FatQuarterUse | None


class BackingFacts(Struct, frozen=True):
    """The back and its fabric."""

    fabric: str
    plan: BackingPlan


class BindingFacts(Struct, frozen=True):
    """The binding and its fabric."""

    fabric: str
    plan: BindingPlan


class SleeveFacts(Struct, frozen=True):
    """The hanging sleeve and its fabric."""

    fabric: str
    plan: SleevePlan


class ScrapsFacts(Struct, frozen=True):
    """One role spread over prints. `blocks` are places in the quilt's list, `assignment` the print of each, from 1.

    `clashes`: blocks side by side with the same print, of which no spread has fewer than `bound`; `corner_clashes`: at
    corners alone. `balanced`: prints are used equally often, to within one block. `uses`: in how many blocks each is.
    `blocks_each`: how many blocks one fat quarter gives; `fat_quarters`: how many of each print, None when a block
    takes more than one. `layout`: how one fat quarter is cut for `layout_blocks` blocks, as many as it gives or as a
    print has, its pieces keyed by the letters of their patches.
    """

    role: str
    prints: int
    blocks: tuple[int, ...]
    assignment: tuple[int, ...]
    uses: tuple[int, ...]
    clashes: int
    corner_clashes: int
    bound: int
    balanced: bool
    blocks_each: int
    fat_quarters: tuple[int, ...] | None
    layout: SheetPlan | None = None
    layout_blocks: int = 0

    @property
    def proved(self) -> bool:
        """Whether no spread over so many prints has fewer clashes."""
        return self.clashes == self.bound


class FinishingFacts(Struct, frozen=True):
    """All of it for one quilt; None for what the quilt does not ask for."""

    fabrics: tuple[FabricClothFacts, ...]
    backing: BackingFacts | None
    binding: BindingFacts | None
    wadding: WaddingPlan | None
    sleeve: SleeveFacts | None
    scraps: tuple[ScrapsFacts, ...]
