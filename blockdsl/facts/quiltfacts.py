"""The numbers of a quilt as plain data: the only thing that sheets, sites and `blockdsl facts` read.

All lengths are exact and in the quilt's own unit. Blocks are told by kind, each once with all its own facts, and
where each lies; nothing here is told patch by patch.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from blockdsl.facts.blockfacts import BlockFacts, Extent, FabricFacts, Piece, RulerUnit, Subcut
from blockdsl.facts.quiltstepfacts import QuiltStepFacts
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.fabric import PressingChoice
from blockdsl.model.language import Language
from blockdsl.model.quilt import Corners, InRow, KindRole, PieceRole, PlacedBlock, RowKind, Setting

if TYPE_CHECKING:
    from blockdsl.cutting.finishing import WaddingPlan
    from blockdsl.facts.finishing import QuiltFinishing
    from blockdsl.facts.finishingfacts import (
        BackingFacts,
        BindingFacts,
        FabricClothFacts,
        ScrapsFacts,
        SleeveFacts,
    )
    from blockdsl.geometry import Exact, Polygon


@dataclass(frozen=True, slots=True)
class QuiltKindFacts:
    """One block of the quilt (or half block, or unit of a border) at its size, and how often it is made.

    `colourings` say how many in which colour plan; the first, without a name, is the block's own colours.
    """

    block: BlockFacts
    role: KindRole
    count: int
    colourings: tuple[tuple[str, int], ...]

    @property
    def name(self) -> str:
        """What it is called."""
        return self.block.name


@dataclass(frozen=True, slots=True)
class QuiltPieceFacts:
    """Plain cloth of one role, fabric and size: sashes, setting triangles, borders and so on.

    `shape` is its finished shape (`square`, `rectangle`, `quarter-square triangle`, …) and `finished` its measures;
    `exact` is the cut size before rounding, `cut` on the ruler; `pieces` of it are cut (squares that are sub-cut
    `once` or `twice` give two or four), `count` are needed, `spare` are left over.
    `lengthwise`: along the length of the cloth. `ring` is the border's number, 0 for none.
    `joined`: it is longer than any width of its fabric, so strips are joined for it unless it is cut lengthwise.
    `to_spare`: how much longer it is cut than it will be, to be trimmed to what is measured; 0 of most.
    """

    role: PieceRole
    fabric: str
    shape: str
    finished: Extent
    piece: Piece
    cut: tuple[Fraction, Fraction]
    exact: Extent
    count: int
    pieces: int
    subcut: Subcut
    spare: int
    lengthwise: bool
    ring: int
    joined: bool = False
    to_spare: Fraction = Fraction(0)


@dataclass(frozen=True, slots=True)
class PlacedClothFacts:
    """One piece of plain cloth where it lies, finished; `piece` is its place in the quilt's list of pieces."""

    role: PieceRole
    fabric: str
    outline: Polygon
    piece: int


@dataclass(frozen=True, slots=True)
class QuiltRowFacts:
    """Blocks and cloth sewn end to end. Lengths to measure: finished, and unfinished with the seams at the edges.

    Of a diagonal row with triangles at its ends only the breadth can be measured: `unfinished` is then that of the
    blocks between them. A row of sashes on point, which ends on the slant, is measured along its middle.
    """

    kind: RowKind
    members: tuple[InRow, ...]
    finished: Extent
    unfinished: Extent


@dataclass(frozen=True, slots=True)
class RingFacts:
    """A border or a round of a medallion, inside out. `before` and `after` are finished sizes of the top.

    `unfinished` is what the top measures once it is on, raw edge to raw edge. `unit` is the design it is pieced from.
    """

    number: int
    word: str
    width: Exact
    fabric: str
    unit: str
    corners: Corners
    sides_first: bool
    lengthwise: bool
    before: Extent
    after: Extent
    unfinished: Extent


@dataclass(frozen=True, slots=True)
class QuiltCutFacts:
    """One size of one fabric over the whole quilt: all that is cut alike, whatever it is for.

    `piece`, `cut`, `subcut` as in a block's table; `count` pieces. `uses` say what for: the block and its unit or
    patch, or the role of plain cloth, with how many of the pieces. `may_turn` is untrue for a directional fabric.
    """

    fabric: str
    piece: Piece
    cut: tuple[Fraction, Fraction]
    count: int
    subcut: Subcut
    lengthwise: bool
    may_turn: bool
    joined: bool
    uses: tuple[tuple[str, int], ...]


@dataclass(frozen=True, slots=True)
class QuiltFacts:
    """Everything about one quilt.

    `blocks` count the whole blocks by name (borders' units and half blocks apart). `middle` is without borders.
    """

    name: str
    unit: RulerUnit
    seam: Fraction
    measure: Fraction
    setting: Setting
    across: int
    down: int
    finished: Extent
    unfinished: Extent
    middle: Extent
    fabrics_used: tuple[FabricFacts, ...]
    kinds: tuple[QuiltKindFacts, ...]
    placed: tuple[PlacedBlock, ...]
    pieces: tuple[QuiltPieceFacts, ...]
    cloth: tuple[PlacedClothFacts, ...]
    rows: tuple[QuiltRowFacts, ...]
    rings: tuple[RingFacts, ...]
    cutting: tuple[QuiltCutFacts, ...]
    steps: tuple[QuiltStepFacts, ...]
    notes: tuple[str, ...]
    usable_width: Fraction | None = None
    shrinkage: Fraction | None = None
    finishing: QuiltFinishing | None = field(default=None, compare=False)
    pressing: PressingChoice = "as it nests"
    language: Language = "en-US"

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
