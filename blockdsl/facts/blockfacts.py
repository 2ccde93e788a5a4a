"""The numbers of a block as plain data: the only thing that sheets, editors and `blockdsl facts` read.

All lengths are exact and in the block's own unit (`unit`: inches or centimetres). Outlines are in
finished measure, clockwise as seen, x to the right and y downward from the block's top left corner.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Literal

from blockdsl.cutting import ways
from blockdsl.cutting.angled import Slant
from blockdsl.cutting.grain import Bias
from blockdsl.cutting.strip_sets import StripSet
from blockdsl.cutting.strips import StripCut
from blockdsl.facts.foundationfacts import FoundationFacts
from blockdsl.facts.papers import PaperOfPatch
from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.arc import Curved, CurvedArea
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.fabric import PressingChoice
from blockdsl.model.language import Language

if TYPE_CHECKING:
    from blockdsl.facts.alternatives import Alternative
    from blockdsl.facts.drift import DriftFacts
    from blockdsl.facts.sewn import Sewing
    from blockdsl.facts.stepfacts import StepFacts
    from blockdsl.sewing.order import SeamCount

RulerUnit = Literal["in", "cm"]
Value = Literal["light", "medium", "dark"]
Piece = ways.Piece
Subcut = ways.Subcut
StripFacts = StripCut
StripSetFacts = StripSet
BiasFacts = Bias
Extent = tuple[Exact, Exact]


@dataclass(frozen=True, slots=True)
class FabricFacts:
    """A colour role; `number` is its place in the block's list of fabrics, from 1, which also picks its hatch."""

    name: str
    label: str
    colour: str
    value: Value
    number: int


@dataclass(frozen=True, slots=True)
class PlacedPatch:
    """One patch where it lies. `label` is its letter (`A`, `B`, `Br` for a mirrored B, …).

    `outline` are its corners; where sides are curved `curved` says along which arcs they are joined.
    """

    label: str
    fabric: str
    outline: Polygon
    curved: Curved | None = None

    @property
    def shown(self) -> Polygon | Curved:
        """The outline as it is cut and drawn."""
        return self.curved or self.outline


@dataclass(frozen=True, slots=True)
class AppliqueFacts:
    """One piece of appliqué where it lies, on all those before it; `turn_under` is nothing for a raw edge."""

    label: str
    fabric: str
    outline: Polygon
    turn_under: Fraction


@dataclass(frozen=True, slots=True)
class PatchFacts:
    """All patches of one letter and one fabric. Triangles: (leg, leg) or (long edge, height)."""

    label: str
    shape: str
    finished: Extent
    fabric: str
    count: int


@dataclass(frozen=True, slots=True)
class CutFacts:
    """One line of the cutting table: `count` pieces of one size, for one purpose.

    `cut` is what the ruler reads, `exact` the size before rounding up. `yields` is what all the
    pieces of the line give (patches, or for the methods their part of so many units); `spare` of them are left over.
    `purpose` is the "for" of the JSON: `patches`, or the method with its unit, `two at a time half`; `method`
    and `unit` are the same apart. `cutters` are the maker's own that cut it, by her labels.
    `shares` say how many of the pieces are for which of the block's units, by their places in its list: for two
    units where mirror images come of one batch.
    Of a piece from a strip `strip` says how it is cut, and `cut` is the width of the strip and the length of it that
    one piece takes. `slant` is that of a cut corner to corner where it matters: the piece stands on its shorter side,
    the right side up. `upright` is the place in `cut` of the side that runs up a print with an up and a down, if any;
    `print_up`, of a piece by template, is the step (dx, dy) that runs up the print, on the template as it is drawn.
    `outside`: for patches at the edge of the block, cut so that their outer edge is straight. `corner`: how far from
    each corner the four corners of an octagon are cut off at 45°. `areas`: those of foundation papers that the pieces
    are for.
    """

    fabric: str
    label: str
    piece: Piece
    cut: tuple[Fraction, Fraction]
    exact: Extent
    count: int
    subcut: Subcut
    yields: int
    spare: int
    purpose: str
    method: str = "cut patches"
    unit: str = ""
    shares: tuple[tuple[tuple[int, ...], int], ...] = ()
    cutters: tuple[str, ...] = ()
    strip: StripFacts | None = None
    slant: Slant = ""
    upright: int | None = None
    print_up: tuple[Exact, Exact] | None = None
    outside: bool = False
    corner: Fraction | None = None
    areas: tuple[str, ...] = ()

    @property
    def sides(self) -> tuple[Exact, ...]:
        """Of its size what is told: a square's side, a strip's width and how far apart its cuts are, else both."""
        if self.strip is not None and self.strip.form != "template":
            return (self.strip.width,) if self.strip.every is None else (self.strip.width, self.strip.every)
        is_square = self.piece == "square" or (self.piece == "octagon" and self.cut[0] == self.cut[1])
        return self.cut[:1] if is_square else self.cut


@dataclass(frozen=True, slots=True)
class LackingFacts:
    """A cutter that the maker does not have: its shape and size as a `cutter` line says them, and what it would cut."""

    shape: str
    size: Extent
    labels: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class UnitFacts:
    """A unit made `count` times; mirror images are units of their own. `picture` is in the unit's own box.

    `shape` is the shape of the language that it is, empty for a unit of rows or free patches.
    `mirror` is the place of its mirror image in the list of units, when the block has that too. `strip_sets` are
    the strip sets that it is made from.
    """

    name: str
    title: str
    count: int
    finished: Extent
    unfinished: Extent
    method: str
    spare: int
    picture: tuple[PlacedPatch, ...]
    also: tuple[str, ...] = ()
    mirror: int | None = None
    shape: str = ""
    strip_sets: tuple[StripSetFacts, ...] = ()


@dataclass(frozen=True, slots=True)
class TemplateFacts:
    """One different patch at full size. `sewing` and `cutting` are outlines around the same origin.

    `grain` is a direction (dx, dy) along the straight grain. `uses` is how many of which fabric (name, count).
    `mirror_of` is the letter whose mirror image this is. Where sides are curved, `curved` has both outlines as they
    are, the cutting outline with its points trimmed, and the others have their corners alone.
    """

    label: str
    shape: str
    finished: Extent
    sewing: Polygon
    cutting: Polygon
    grain: tuple[Exact, Exact]
    uses: tuple[tuple[str, int], ...]
    mirror_of: str | None
    curved: tuple[Curved, Curved] | None = None


@dataclass(frozen=True, slots=True)
class ColouringFacts:
    """Another colour plan: for each fabric of the block the fabric that takes its place, both by name.

    `cutting` is the block's table in those fabrics: where two of them become one, their lines are merged.
    """

    name: str
    fabrics: tuple[FabricFacts, ...]
    replaces: tuple[tuple[str, str], ...]
    cutting: tuple[CutFacts, ...] = ()


@dataclass(frozen=True, slots=True)
class CoverFacts:
    """The proof: the area covered, and how many gaps and overlaps were found."""

    area: Exact
    gaps: int
    overlaps: int


@dataclass(frozen=True, slots=True)
class BlockFacts:
    """Everything about one block at one size.

    `columns` and `heights` are the finished steps of its own grid lines. `grid` is the even grid of squared
    paper on which they lie (columns of 1, 2, 1 lie on four squares) and `cell` the finished size of its square;
    when no such grid is of use `grid` counts the block's own columns and rows and `cell` is None. `family` is the
    kind of block that it is, None when the designer does not say, and `sources` where it comes from. `sizes` are the
    same block at the further sizes that it asks for. `pressing` is how its seams are pressed where this is printed,
    `language` that of the pages.
    `drift` says where sizes rounded to the ruler add up to more than a seam takes in.
    """

    name: str
    unit: RulerUnit
    seam: Fraction
    measure: Fraction
    finished: Extent
    unfinished: Extent
    columns: tuple[Exact, ...]
    heights: tuple[Exact, ...]
    grid: tuple[int, int]
    cell: Extent | None
    cover: CoverFacts
    fabrics: tuple[FabricFacts, ...]
    placed: tuple[PlacedPatch, ...]
    patches: tuple[PatchFacts, ...]
    cutting: tuple[CutFacts, ...]
    units: tuple[UnitFacts, ...]
    templates: tuple[TemplateFacts, ...]
    colourings: tuple[ColouringFacts, ...]
    area_by_fabric: tuple[tuple[str, Exact | CurvedArea], ...]
    notes: tuple[str, ...]
    family: str | None = None
    sources: tuple[str, ...] = ()
    foundations: tuple[FoundationFacts, ...] = ()
    papers: tuple[PaperOfPatch, ...] = ()
    cutters: tuple[str, ...] = ()
    lacking: tuple[LackingFacts, ...] = ()
    bias: tuple[BiasFacts, ...] = ()
    sewing: Sewing | None = field(default=None, compare=False)
    compares_methods: bool = False
    sizes: tuple[BlockFacts, ...] = ()
    appliques: tuple[AppliqueFacts, ...] = ()
    pressing: PressingChoice = "as it nests"
    language: Language = "en-US"
    drift: DriftFacts | None = None

    @property
    def steps(self) -> tuple[StepFacts, ...]:
        """The steps of making it, in order; none when no order of sewing is known. Worked out at the first call."""
        return self.sewing.steps(self) if self.sewing is not None else ()

    @property
    def alternatives(self) -> tuple[tuple[Alternative, ...], ...]:
        """For each of its units every way in which it can be made."""
        return self.sewing.alternatives if self.sewing is not None else ()

    @property
    def seams(self) -> SeamCount | None:
        """How many seams of each kind it has; None when no order of sewing is known."""
        return self.sewing.seams if self.sewing is not None else None
