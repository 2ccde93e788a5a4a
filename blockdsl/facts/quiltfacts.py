"""The numbers of a quilt with what is found out when it is first asked for: what sheets and sites read.

The records themselves are in `quiltrecord`.
"""

from __future__ import annotations

from blockdsl.cutting.finishing import WaddingPlan
from blockdsl.facts.blockrecord import FabricFacts
from blockdsl.facts.finishing import QuiltFinishing
from blockdsl.facts.finishingfacts import BackingFacts, BindingFacts, FabricClothFacts, ScrapsFacts, SleeveFacts
from blockdsl.facts.quiltrecord import (
    PlacedClothFacts,
    QuiltCutFacts,
    QuiltKindFacts,
    QuiltPieceFacts,
    QuiltRecord,
    QuiltRowFacts,
    RingFacts,
)
from blockdsl.facts.quiltstepfacts import QuiltStepFacts
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.quilt import KindRole, PlacedBlock

__all__ = [
    "PlacedClothFacts",
    "QuiltCutFacts",
    "QuiltFacts",
    "QuiltKindFacts",
    "QuiltPieceFacts",
    "QuiltRowFacts",
    "RingFacts",
]


class QuiltFacts(QuiltRecord, frozen=True, kw_only=True):
    """Everything about one quilt.

    `blocks` count the whole blocks by name (borders' units and half blocks apart).
    """

    across: int
    down: int
    fabrics_used: tuple[FabricFacts, ...]
    kinds: tuple[QuiltKindFacts, ...]
    placed: tuple[PlacedBlock, ...]
    steps: tuple[QuiltStepFacts, ...]
    usable_width: Fraction | None = None
    shrinkage: Fraction | None = None
    finishing: QuiltFinishing | None = None

    @property
    def fabrics(self) -> tuple[FabricClothFacts, ...]:
        """Each fabric's cloth: how it is cut and what to buy. Worked out at the first call."""
        return self.finishing.facts.fabrics if self.finishing is not None else ()

    @property
    def backing(self) -> BackingFacts | None:
        """The back, when the quilt asks for one."""
        return self.finishing.facts.backing if self.finishing is not None else None

    @property
    def binding(self) -> BindingFacts | None:
        """The binding, when the quilt asks for one."""
        return self.finishing.facts.binding if self.finishing is not None else None

    @property
    def wadding(self) -> WaddingPlan | None:
        """The wadding, as large as the back when only that is asked for."""
        return self.finishing.facts.wadding if self.finishing is not None else None

    @property
    def sleeve(self) -> SleeveFacts | None:
        """The sleeve to hang it by, when the quilt asks for one."""
        return self.finishing.facts.sleeve if self.finishing is not None else None

    @property
    def scraps(self) -> tuple[ScrapsFacts, ...]:
        """The roles that are spread over prints."""
        return self.finishing.facts.scraps if self.finishing is not None else ()

    @property
    def blocks(self) -> tuple[tuple[str, int], ...]:
        """How many whole blocks of each name."""
        return self._counted("block")

    @property
    def half_blocks(self) -> tuple[tuple[str, int], ...]:
        """How many pieced half blocks of each name."""
        return self._counted("half block")

    def _counted(self, role: KindRole) -> tuple[tuple[str, int], ...]:
        return tuple((kind.name, kind.count) for kind in self.kinds if kind.role == role)
