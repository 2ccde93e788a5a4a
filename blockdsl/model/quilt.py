"""A quilt top as it will look when it is finished: which blocks lie where, and the plain cloth between and round them.

Blocks are placed by kind, never patch by patch: ten thousand places of one block are ten thousand short lines.
"""

from __future__ import annotations

from typing import Final, Literal

from msgspec import Struct

from blockdsl.diagnostics import Span
from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.symmetry import ALL_EIGHT, Symmetry
from blockdsl.model.block import BlockDesign
from blockdsl.model.fabric import Fabric, PressingChoice, RulerUnit
from blockdsl.model.language import Language
from blockdsl.model.maker import NOBODY, Maker
from blockdsl.record import Record, Rest

_TURNS: Final = dict(zip(ALL_EIGHT, ("", ">", ">>", "<", "~", "~>", "~>>", "~<"), strict=True))
Setting = Literal["straight", "dropped columns", "on point", "strippy", "rows", "medallion"]
KindRole = Literal["block", "half block", "border unit"]
"""What a design does in the quilt: a block; a part of one at the end of a column; a unit that a border repeats."""

PieceRole = Literal[
    "plain square",
    "half block",
    "side triangle",
    "corner triangle",
    "sash",
    "sash strip",
    "post",
    "edge post",
    "strip",
    "border",
    "border corner",
]
"""What a piece of plain cloth does. A sash lies between two blocks; a sash strip runs between whole rows or columns;
a strip is a plain column of a strippy quilt; an edge post is half a post, where sashes on point meet the edge.
"""

Corners = Literal["butted", "mitred", "squares"]


class QuiltKind(Struct, frozen=True):
    """One design at its size, and what it does. `name` is the design's own.

    `mirror_of` is the place of its mirror image in the list of kinds, when that comes before it.
    """

    design: BlockDesign
    role: KindRole
    mirror_of: int | None = None

    @property
    def name(self) -> str:
        """What it is called."""
        return self.design.name


class PlacedBlock(Struct, frozen=True):
    """One block in its place. `kind` is its place in the quilt's list of kinds, `colourway` a colour plan or nothing.

    The block, turned by `symmetry`, has the top left corner of its upright box at (x, y). `on_point`: it is then
    turned an eighth clockwise about that corner, which is its topmost: what lay `across` and `down` from the corner
    comes to lie at (x + (across - down)/√2, y + (across + down)/√2).
    `row` and `column` count the setting's places from 0; in a ring round the middle (`ring` from 1, inside out)
    `row` is the side (top, right, bottom, left) and `column` the place along it, clockwise.
    """

    kind: int
    symmetry: Symmetry
    x: Exact
    y: Exact
    on_point: bool = False
    colourway: str = ""
    row: int = 0
    column: int = 0
    ring: int = 0

    @property
    def turns(self) -> str:
        """Its symmetry as the language writes it after a block."""
        return _TURNS[self.symmetry]


class PlacedCloth(Struct, frozen=True):
    """One piece of plain cloth in its place: finished, clockwise as seen, in the quilt's unit.

    `lengthwise`: it is to be cut along the length of the cloth. `ring` is the border it belongs to, 0 for none.
    """

    role: PieceRole
    fabric: str
    outline: Polygon
    lengthwise: bool = False
    ring: int = 0


class InRow(Record, frozen=True, omit_defaults=True):
    """A member of a row that is sewn together: the place of a block, or of a piece of cloth, in the quilt's lists."""

    block: Rest | None = None
    cloth: Rest | None = None

    @property
    def index(self) -> int:
        """Its place in the list that it is in."""
        return next(place for place in (self.block, self.cloth) if place is not None)

    @property
    def what(self) -> Literal["block", "cloth"]:
        """Which list that is."""
        return "cloth" if self.block is None else "block"


RowKind = Literal["row", "column", "diagonal row", "sash row", "strip"]
"""A sash row is sashes and posts sewn end to end, or one long strip; a strip lies between two columns."""


class AssemblyRow(Struct, frozen=True):
    """Blocks and cloth that are sewn end to end, in order: across, down a column, or up a diagonal.

    `length` and `breadth` are finished; of a diagonal row along its blocks and the sashes beside them, of a row of
    sashes on point, which ends on the slant, along its middle.
    """

    kind: RowKind
    members: tuple[InRow, ...]
    length: Exact
    breadth: Exact


class Ring(Struct, frozen=True):
    """A border, or a round of a medallion: what is sewn round all four sides. `number` counts from 1, inside out.

    `inner` and `outer` are finished sizes before and after. `sides_first`: left and right before top and bottom.
    `kind` is the design that it is pieced from, or None for plain cloth.
    """

    number: int
    word: Literal["border", "round"]
    width: Exact
    corners: Corners
    sides_first: bool
    lengthwise: bool
    fabric: str
    kind: int | None
    inner: tuple[Exact, Exact]
    outer: tuple[Exact, Exact]
    span: Span


class BindingChoice(Struct, frozen=True):
    """`binding 2 1/4 in slate straight`: the width that strips are cut."""

    fabric: str
    strip_width: Fraction
    bias: bool
    span: Span


class BackingChoice(Struct, frozen=True):
    """`backing fog overage 4 in width 108 in`: more on each side; `width` is the whole width of a wide fabric."""

    fabric: str
    overage: Fraction
    width: Fraction | None
    span: Span


class WaddingChoice(Struct, frozen=True):
    """`wadding overage 4 in`: more on each side."""

    overage: Fraction
    span: Span


class SleeveChoice(Struct, frozen=True):
    """`sleeve 4 in fog`: a tube to hang the quilt by, as deep as is said, finished."""

    fabric: str
    depth: Fraction
    span: Span


class ScrapsChoice(Struct, frozen=True):
    """`scraps lantern from 8 fat quarters`: one role spread over so many prints."""

    fabric: str
    prints: int
    span: Span


class QuiltDesign(Struct, frozen=True):
    """A whole quilt. `width` and `height` are finished, borders included; the numbers are exact, in `unit`.

    `middle` is the finished size without borders and rounds. `across` and `down` count the setting's places.
    `usable_width` is what `fabric width … usable` says, `shrinkage` a share (1/20 for 5 %); None when nothing is said.
    `fabrics` are all that it is made of, backing and binding too, as the files declare them. `pressing` is how its
    seams are pressed, and those of its blocks where they do not say; None where nobody says so: as they nest.
    `language` is that of its pages, and of those of its blocks printed with it; `maker` what stands at their foot.
    """

    name: str
    span: Span
    unit: RulerUnit
    seam: Fraction
    measure: Fraction
    setting: Setting
    across: int
    down: int
    width: Exact
    height: Exact
    middle: tuple[Exact, Exact]
    kinds: tuple[QuiltKind, ...]
    blocks: tuple[PlacedBlock, ...]
    cloth: tuple[PlacedCloth, ...]
    rows: tuple[AssemblyRow, ...]
    rings: tuple[Ring, ...]
    fabrics: tuple[Fabric, ...]
    palette: tuple[Fabric, ...]
    notes: tuple[str, ...] = ()
    binding: BindingChoice | None = None
    backing: BackingChoice | None = None
    wadding: WaddingChoice | None = None
    sleeve: SleeveChoice | None = None
    scraps: tuple[ScrapsChoice, ...] = ()
    usable_width: Fraction | None = None
    shrinkage: Fraction | None = None
    pressing: PressingChoice | None = None
    language: Language | None = None
    maker: Maker = NOBODY
