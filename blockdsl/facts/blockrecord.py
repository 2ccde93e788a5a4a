"""The numbers of a block as records: what its JSON has, and what its steps and pages are made from.

All lengths are exact and in the block's own unit (`unit`: inches or centimetres). Outlines are in
finished measure, clockwise as seen, x to the right and y downward from the block's top left corner.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Annotated, Literal

from msgspec import Meta, field

from blockdsl.cutting import Cut, Template, ways
from blockdsl.cutting.cutlist import CutPiece
from blockdsl.cutting.cutters import Lacking
from blockdsl.cutting.grain import Bias
from blockdsl.cutting.sizes import Extent
from blockdsl.cutting.strip_sets import StripSet
from blockdsl.cutting.strips import StripCut
from blockdsl.facts.foundationfacts import FoundationFacts
from blockdsl.facts.papers import PaperOfPatch
from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.arc import Bends, Curved
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import Outline
from blockdsl.model.fabric import PressingChoice
from blockdsl.model.language import Language
from blockdsl.model.maker import NOBODY, Maker
from blockdsl.model.remark import Remark
from blockdsl.record import Colour, Count, Letter, Name, Record, Rest, says

RulerUnit = Literal["in", "cm"]
Value = Literal["light", "medium", "dark"]
Piece = ways.Piece
Subcut = ways.Subcut
StripFacts = StripCut
StripSetFacts = StripSet
BiasFacts = Bias
LackingFacts = Lacking
TemplateFacts = Template


class FabricFacts(Record, frozen=True):
    """A fabric, by what it does in the design."""

    name: Name
    label: Annotated[str, says("What is printed for it.")]
    colour: Colour
    value: Value
    number: Annotated[Count, says("Its place in the list of fabrics, from 1, which also picks its hatch.")]


class PlacedPatch(Record, frozen=True, omit_defaults=True):
    """One patch where it lies."""

    label: Letter
    fabric: Name
    outline: Outline
    bends: Bends = ()

    @property
    def curved(self) -> Curved | None:
        """Its outline with the arcs; None where all sides are straight."""
        return Curved(self.outline, self.bends) if self.bends else None

    @property
    def shown(self) -> Polygon | Curved:
        """The outline as it is cut and drawn."""
        return self.curved or self.outline


class AppliqueFacts(Record, frozen=True):
    """One piece of appliqué where it lies, on all those before it."""

    label: Letter
    fabric: Name
    outline: Outline
    turn_under: Annotated[Fraction, says("0 for a raw edge.")]


class PatchFacts(Record, frozen=True):
    """All patches of one letter and one fabric."""

    label: Letter
    shape: Name
    finished: Annotated[
        Extent,
        says("Half-square triangles: (leg, leg); quarter-square triangles: (long edge, height)."),
    ]
    fabric: Name
    count: Count


class CutFacts(Cut, frozen=True, kw_only=True):
    """One line of the cutting table."""

    purpose: Annotated[Name, says("`patches`, or the method and its unit: `two at a time half`.")] = field(
        name="for", default="patches"
    )
    cutters: Annotated[
        tuple[str, ...],
        says("Which of the maker's own cutters cut it, by her labels."),
        Meta(extra_json_schema={"uniqueItems": True}),
    ] = ()
    upright: Annotated[Fraction | None, says("The side of `cut` that runs up the print of a directional fabric.")] = (
        None
    )

    @property
    def sides(self) -> tuple[Exact, ...]:
        """What is given of its size: a square's side, a strip's width and how far apart its cuts are, else both."""
        if self.strip is not None and self.strip.form != "template":
            return (self.strip.width,) if self.strip.every is None else (self.strip.width, self.strip.every)
        is_square = self.piece == "square" or (self.piece == "octagon" and self.cut[0] == self.cut[1])
        return self.cut[:1] if is_square else self.cut


class UnitFacts(Record, frozen=True):
    """A unit to make. Mirror images are units of their own."""

    name: Name
    title: Name
    count: Count
    finished: Extent
    unfinished: Extent
    method: Name
    spare: Rest
    picture: Annotated[tuple[PlacedPatch, ...], says("Its patches, in the unit's own box.")]
    also: Annotated[tuple[str, ...], says("Its other names.")] = ()
    mirror: Annotated[
        int | None, says("The place of its mirror image in the list of units, when the block has that too.")
    ] = None
    shape: Annotated[str, says("The shape of the language that it is; empty for a unit of rows or free patches.")] = ""
    strip_sets: Annotated[
        tuple[StripSet, ...], says("The strip sets that it is made from; none where the method is another.")
    ] = ()


class Alternative(Record, frozen=True):
    """One way in which the units can be made."""

    method: Name
    chosen: bool
    cuts: tuple[CutPiece, ...] = field(name="cutting")
    cloth: Annotated[Exact, says("The area of cloth that is cut.")]
    waste: Annotated[
        Exact,
        says(
            "The area of cloth cut that is not seen when they are finished: seam allowances, what is cut off, units "
            "left over."
        ),
    ]
    seams: Annotated[Rest, says("How many are sewn for all of them.")]
    spare: Rest


class ColourwayFacts(Record, frozen=True):
    """Another colourway."""

    name: Name
    fabrics: Annotated[tuple[FabricFacts, ...], says("Its fabrics, numbered on from the block's.")] = field(
        name="colours"
    )
    replaces: Annotated[Mapping[str, str], says("For each fabric of the block the one that takes its place.")] = field(
        name="fabrics"
    )
    cutting: Annotated[
        tuple[CutFacts, ...],
        says("The block's table in these fabrics; lines of fabrics that become one are merged."),
    ] = ()


class CoverFacts(Record, frozen=True):
    """The proof that the patches cover the block once."""

    area: Exact
    gaps: Rest
    overlaps: Rest


class Instead(Record, frozen=True):
    """A unit and another way of making it."""

    what: Name
    method: Name = field(name="as")


class DriftFacts(Record, frozen=True):
    """Where cut sizes rounded up to the ruler add up to more than a seam can ease in, and what each by itself helps."""

    off: Annotated[Exact, says("How far seams end up from their places, at most.")]
    row: Annotated[
        tuple[str, ...],
        says("The letters along the longer side of the seam where lengths differ most; none where they do not."),
    ]
    beside: Annotated[tuple[str, ...], says("The letters across from them.")]
    drawn: Annotated[Exact | None, says("How long the seam should be, finished; null without a `row`.")]
    lengths: Annotated[Extent | None, says("What both sides of the seam come to; null without a `row`.")]
    measure: Annotated[Fraction | None, says("A finer measure of the ruler that helps.")]
    templates: Annotated[tuple[str, ...], says("Letters to be cut round their templates.")]
    sizes: Annotated[tuple[Extent, ...], says("Other finished sizes.")]
    methods: Annotated[tuple[Instead, ...], says("Units to be made otherwise.")]


class AtSize(Record, frozen=True):
    """What differs from size to size of a block."""

    unit: RulerUnit
    seam: Fraction
    measure: Annotated[Fraction, says("The ruler's: cut sizes are multiples of it.")]
    finished: Extent
    unfinished: Extent
    cutting: tuple[CutFacts, ...]
    units: tuple[UnitFacts, ...]


class BlockRecord(AtSize, frozen=True, kw_only=True):
    """One block at one size."""

    name: Name
    family: Annotated[
        str | None,
        says("The kind of block that it is, such as nine-patch, as the designer says; null when nothing is said."),
    ] = None
    sources: Annotated[tuple[str, ...], says("Where the block or its name comes from, as the designer says.")] = ()
    grid: Annotated[
        tuple[Count, Count],
        says(
            "The least even grid on which the block's lines lie, across and down; its own columns and rows when that "
            "is of no use."
        ),
    ]
    columns: Annotated[tuple[Exact, ...], says("The finished steps of its own grid lines, across.")]
    heights: Annotated[tuple[Exact, ...], says("The same, down.")]
    cell: Annotated[Extent | None, says("Finished size of a square of the grid, or null when there is no even grid.")]
    cover: CoverFacts
    fabrics: tuple[FabricFacts, ...]
    patches: tuple[PatchFacts, ...]
    bias: Annotated[
        tuple[Bias, ...],
        says("What lies on the bias, letter by letter; letters of which all edges are straight are left out."),
    ] = ()
    lacking: tuple[Lacking, ...] = ()
    drift: Annotated[
        DriftFacts | None, says("Null when all seams come to lie in their places, to 1/16 in or 1.5 mm.")
    ] = None
    foundations: tuple[FoundationFacts, ...] = ()
    papers: tuple[PaperOfPatch, ...] = ()
    colourways: tuple[ColourwayFacts, ...]
    pressing: Annotated[
        PressingChoice,
        says("How seams are pressed: the maker's choice, that of the innermost line which says so."),
    ] = "as it nests"
    language: Annotated[Language, says("The language of the pages and of the words of steps.")] = "en-US"
    maker: Annotated[Maker, says("Who made it, and what stands at the foot of its pages.")] = NOBODY
    notes: tuple[str, ...]
    remarks: Annotated[
        tuple[Remark, ...], says("Notes for single steps, and addresses of the web, as the designer gives them.")
    ] = ()
    level: Annotated[str, says("For whom it is, as the designer says.")] = ""
    time: Annotated[str, says("How long one takes, as the designer says.")] = ""
    placed: tuple[PlacedPatch, ...]
    appliques: Annotated[
        tuple[AppliqueFacts, ...], says("Pieces sewn onto the pieced ground, each on those before it.")
    ] = ()
    templates: tuple[Template, ...]
    cutters: Annotated[tuple[str, ...], says("The maker's own cutters in the block's unit, by her labels.")] = ()
    compares_methods: Annotated[bool, says("Whether its sheet prints all ways of making its units.")] = False
