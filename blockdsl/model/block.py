"""A block as it will look when it is finished, patch by patch and unit by unit."""

from __future__ import annotations

from typing import Final, Literal

from msgspec import Struct, structs
from msgspec.structs import replace

from blockdsl.diagnostics import Span
from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.arc import Curved
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import translate
from blockdsl.geometry.symmetry import Symmetry
from blockdsl.model.cutter import Cutter
from blockdsl.model.fabric import Fabric, PressingChoice, RulerUnit
from blockdsl.model.language import Language
from blockdsl.model.maker import NOBODY, Maker
from blockdsl.model.remark import Remark
from blockdsl.raster import Raster

APPLIQUE: Final = "appliqué piece"
"""What the shape of a piece is called that is sewn onto the pieced ground."""


class Patch(Struct, frozen=True, eq=False):
    """One finished shape of one fabric, in place; clockwise as seen, in the block's unit.

    Of a patch with curved sides `outline` is the straight twin, and `curved` how it really looks (geometry/arc.py).
    `span` is the cell or the line that drew it, for editors; it makes no patch different from another.
    """

    fabric: str
    outline: Polygon
    curved: Curved | None = None
    span: Span | None = None

    def __eq__(self, other: object) -> bool:
        """The same but for its span."""
        if not isinstance(other, Patch):
            return NotImplemented
        return self.fabric == other.fabric and self.outline == other.outline and self.curved == other.curved

    def __hash__(self) -> int:
        """Equal for equal patches."""
        return hash((self.fabric, self.outline, self.curved))

    def __repr__(self) -> str:
        """Without the span, which holds the whole file."""
        return f"Patch({self.fabric!r}, {self.outline!r}, {self.curved!r})"

    @property
    def shown(self) -> Polygon | Curved:
        """The outline as it is cut and drawn."""
        return self.curved or self.outline

    @property
    def corners(self) -> Polygon:
        """The corners that it really has, with chords for its arcs."""
        return self.curved.corners if self.curved else self.outline

    def moved(self, dx: Exact, dy: Exact, drawn_by: Span | None = None) -> Patch:
        """The patch moved by (dx, dy); `drawn_by` is the cell that drew it, where no other is known."""
        curved = self.curved and self.curved.moved(dx, dy)
        return Patch(self.fabric, translate(self.outline, dx, dy), curved, self.span or drawn_by)

    def turned(self, symmetry: Symmetry, width: Exact, height: Exact) -> Patch:
        """The patch in the turned box; the box before turning is width × height."""
        outline = symmetry.apply_polygon(self.outline, width, height)
        return Patch(self.fabric, outline, self.curved and self.curved.turned(symmetry, width, height), self.span)


class Applique(Struct, frozen=True):
    """A piece that is sewn onto the pieced ground, in place; template only.

    `drawn` is its outline as it was drawn, before it was moved and turned; `mirrored` whether it lies as its mirror
    image. `turn_under` is the allowance all round that is folded under, with its unit: None for the usual one, and
    no thought is given to it where the edge stays raw.
    """

    fabric: str
    outline: Polygon
    drawn: Polygon
    turn_under: tuple[Fraction, RulerUnit] | None = None
    raw_edge: bool = False
    mirrored: bool = False

    def moved(self, dx: Exact, dy: Exact) -> Applique:
        """The piece moved by (dx, dy)."""
        return replace(self, outline=translate(self.outline, dx, dy))

    def turned(self, symmetry: Symmetry, width: Exact, height: Exact) -> Applique:
        """The piece in the turned box; the box before turning is width × height."""
        outline = symmetry.apply_polygon(self.outline, width, height)
        return replace(self, outline=outline, mirrored=self.mirrored != symmetry.is_mirrored)


class ShapeUse(Struct, frozen=True):
    """A shape with its words understood: which fabrics in which roles, and the numbers that go with them.

    `places` are the corners of a snowball; `numbers` what the shape needs (rows and columns, a share of the side).
    """

    shape: str
    fabrics: tuple[str, ...]
    numbers: tuple[Fraction, ...] = ()
    places: tuple[str, ...] = ()


class UnitPlace(Struct, frozen=True, eq=False):
    """A unit in its cell. `filling` is None for a unit drawn as grid lines or free patches.

    `width` and `height` are finished and those of the unit before it was turned; its patches are
    `first` up to `stop` of the block's patches; `name` is the designer's own, or None. `span` is its cell.
    """

    name: str | None
    filling: ShapeUse | None
    x: Exact
    y: Exact
    width: Exact
    height: Exact
    symmetry: Symmetry
    first: int
    stop: int
    span: Span | None = None

    def __eq__(self, other: object) -> bool:
        """The same but for its span."""
        return self._compared == other._compared if isinstance(other, UnitPlace) else NotImplemented

    def __hash__(self) -> int:
        """Equal for equal places."""
        return hash(self._compared)

    def __repr__(self) -> str:
        """Without the span, which holds the whole file."""
        return f"UnitPlace{self._compared!r}"

    @property
    def _compared(self) -> tuple[object, ...]:
        return structs.astuple(self)[:-1]


class Choice(Struct, frozen=True):
    """`make what as method`, or `make 4 of what as method` with the `count` of them."""

    what: str
    method: str
    what_span: Span
    method_span: Span
    count: int | None = None


class GrainChoice(Struct, frozen=True):
    """`grain B long edge`: which edges of the patches of a letter lie on the straight grain; `span` is the letter's."""

    letter: str
    edge: Literal["long", "short"]
    span: Span


class ColourPlan(Struct, frozen=True):
    """Another colour plan: fabric by fabric what takes its place."""

    name: str
    replaces: tuple[tuple[str, str], ...]


class BlockDesign(Struct, frozen=True):
    """One block at its size. `columns` and `heights` are the finished measures of its grid, `cutters` the maker's.

    `family` is the kind of block that it is, `sources` where it or its name comes from, both as the designer says.
    `pressing` is how its seams are pressed, None where nobody says so: as they nest. `language` is that of its pages,
    None where nobody says so: the usual one for its unit; `maker` what stands at the foot of them.
    `remarks` are her notes for single steps, her addresses and pictures; `photos` has the pixels of those by their
    paths; `level` says for whom the block is, `time` how long one takes.
    """

    name: str
    span: Span
    unit: RulerUnit
    seam: Fraction
    measure: Fraction
    trim: Fraction
    width: Fraction
    height: Fraction
    columns: tuple[Fraction, ...]
    heights: tuple[Fraction, ...]
    cover_area: Exact
    fabrics: tuple[Fabric, ...]
    patches: tuple[Patch, ...]
    units: tuple[UnitPlace, ...]
    choices: tuple[Choice, ...]
    colourways: tuple[ColourPlan, ...]
    palette: tuple[Fabric, ...]
    notes: tuple[str, ...]
    family: str | None = None
    sources: tuple[str, ...] = ()
    cutters: tuple[Cutter, ...] = ()
    compares_methods: bool = False
    grains: tuple[GrainChoice, ...] = ()
    sizes: tuple[BlockDesign, ...] = ()
    appliques: tuple[Applique, ...] = ()
    pressing: PressingChoice | None = None
    language: Language | None = None
    maker: Maker = NOBODY
    remarks: tuple[Remark, ...] = ()
    level: str = ""
    time: str = ""
    photos: tuple[tuple[str, Raster], ...] = ()
