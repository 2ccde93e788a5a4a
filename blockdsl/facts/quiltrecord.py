"""The numbers of a quilt as records: what its JSON has, and what its steps and pages are made from.

All lengths are exact and in the quilt's own unit. Blocks are told by kind, each once with all its own facts, and
where each lies; nothing here is told patch by patch.
"""

from __future__ import annotations

from typing import Annotated, Literal

from msgspec import field

from blockdsl.cutting.quilt_cuts import QuiltCut
from blockdsl.cutting.quilt_pieces import PlainCloth
from blockdsl.cutting.sizes import Extent
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.blockrecord import RulerUnit
from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import Outline
from blockdsl.model.fabric import PressingChoice
from blockdsl.model.language import Language
from blockdsl.model.maker import NOBODY, Maker
from blockdsl.model.quilt import Corners, InRow, KindRole, PieceRole, RowKind, Setting
from blockdsl.record import Count, Name, Record, Rest, says

QuiltCutFacts = QuiltCut
QuiltPieceFacts = PlainCloth


class QuiltKindFacts(Record, frozen=True):
    """One block of the quilt (or half block, or unit of a border) at its size, and how often it is made.

    `colourways` say how many in which colour plan; the first, without a name, is the block's own colours.
    """

    block: BlockFacts
    role: KindRole
    count: Count
    colourways: tuple[tuple[str, int], ...]

    @property
    def name(self) -> str:
        """What it is called."""
        return self.block.name


class PlacedClothFacts(Record, frozen=True):
    """Plain cloth in its place."""

    role: PieceRole
    fabric: Name
    outline: Outline
    piece: Annotated[Rest, says("Its place in the list of pieces.")]


class QuiltRowFacts(Record, frozen=True):
    """Blocks and cloth that are sewn end to end.

    Of a diagonal row with triangles at its ends only the breadth can be measured: `unfinished` is then that of the
    blocks between them. A row of sashes on point, which ends on the slant, is measured along its middle.
    """

    kind: RowKind
    members: Annotated[tuple[InRow, ...], says("Places in the lists `placed` and `cloth`, in order.")]
    finished: Annotated[Extent, says("Length and breadth; of a diagonal row without the triangles at its ends.")]
    unfinished: Extent


class RingFacts(Record, frozen=True):
    """What is sewn round all four sides."""

    number: Annotated[Count, says("From the inside out.")]
    word: Literal["border", "round"]
    width: Exact
    fabric: Annotated[str, says("Empty when it is pieced.")]
    unit: Annotated[str, says("The block or unit that it is pieced from, empty for plain cloth.")]
    corners: Corners
    sides_first: Annotated[bool, says("Whether left and right are sewn on before top and bottom.")]
    lengthwise: bool
    before: Annotated[Extent, says("Finished size of the top inside it.")]
    after: Annotated[Extent, says("Finished size of the top with it.")]
    unfinished: Annotated[Extent, says("What the top measures with it, raw edge to raw edge.")]


class QuiltRecord(Record, frozen=True, kw_only=True):
    """A quilt top: what lies where, all that is cut, the order of sewing, and what the whole quilt takes."""

    name: Name
    unit: RulerUnit
    seam: Fraction
    measure: Annotated[Fraction, says("The ruler's: cut sizes are multiples of it.")]
    setting: Setting
    finished: Extent
    unfinished: Extent
    middle: Annotated[Extent, says("Finished, without borders and rounds.")]
    pieces: tuple[PlainCloth, ...]
    cutting: Annotated[
        tuple[QuiltCut, ...], says("All that the top is cut from, batches counted over the whole quilt.")
    ]
    rows: Annotated[tuple[QuiltRowFacts, ...], says("What is sewn end to end, with its measures.")]
    rings: Annotated[tuple[RingFacts, ...], says("Borders, and the rounds of a medallion, from the inside out.")] = (
        field(name="rounds")
    )
    cloth: tuple[PlacedClothFacts, ...]
    pressing: Annotated[
        PressingChoice,
        says("How seams are pressed: the maker's choice, that of the innermost line which says so."),
    ] = "as it nests"
    language: Annotated[Language, says("The language of the pages and of the words of steps.")] = "en-US"
    maker: Annotated[Maker, says("Who made it, and what stands at the foot of its pages.")] = NOBODY
    notes: tuple[str, ...]
