"""The middle of a quilt while it is laid: places, cloth, and the rows in which they are sewn."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterable
from typing import Final

from msgspec import Struct, field
from msgspec.structs import replace

from blockdsl.analysis.quilt.halves import Side, half_of, side_towards
from blockdsl.geometry import Exact, Point, Polygon
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.symmetry import HALF_TURN, IDENTITY, MIRROR, QUARTER_ANTICLOCKWISE, QUARTER_CLOCKWISE, Symmetry
from blockdsl.model import BlockDesign, UnitPlace
from blockdsl.model.quilt import AssemblyRow, InRow, KindRole, PieceRole, PlacedBlock, PlacedCloth, QuiltKind, RowKind
from blockdsl.shapes.outlines import box

ZERO: Final = Fraction(0)


class PlainSquare(Struct, frozen=True):
    """A place of the setting that is plain cloth."""

    fabric: str


class BlockHere(Struct, frozen=True):
    """A place of the setting that is a block: as it is turned, in which colour plan."""

    design: BlockDesign
    symmetry: Symmetry = IDENTITY
    colourway: str = ""


Here = BlockHere | PlainSquare
Chooser = Callable[[int, int], Here]
"""What stands in a row and a column of the setting, both counted from 0."""


class Sashing(Struct, frozen=True):
    """Strips between blocks; `posts` is the fabric of the squares where they cross, or None for strips that run on."""

    width: Fraction
    fabric: str
    posts: str | None
    outer: bool


class Top(Struct):
    """What has been laid so far; `left` and `top` are where the middle begins, inside its borders."""

    left: Exact
    top: Exact
    kinds: list[QuiltKind] = field(default_factory=list)
    blocks: list[PlacedBlock] = field(default_factory=list)
    cloth: list[PlacedCloth] = field(default_factory=list)
    rows: list[AssemblyRow] = field(default_factory=list)
    _known: dict[tuple[int, KindRole], int] = field(default_factory=dict)
    _halves: dict[tuple[int, Side, Fraction], BlockDesign] = field(default_factory=dict)
    _mirrors: dict[int, BlockDesign | None] = field(default_factory=dict)

    def kind_of(self, design: BlockDesign, role: KindRole) -> int:
        """The place of a design in the list of kinds; it is put there the first time."""
        key = (id(design), role)
        if key not in self._known:
            self._known[key] = len(self.kinds)
            self.kinds.append(QuiltKind(design, role, self._mirror_of(design, role)))
        return self._known[key]

    def _mirror_of(self, design: BlockDesign, role: KindRole) -> int | None:
        """The place of the design's mirror image among the kinds, when it is there already."""
        for original, mirrored in self._mirrors.items():
            if mirrored is not None and id(design) in (original, id(mirrored)):
                other = id(mirrored) if id(design) == original else original
                return self._known.get((other, role))
        return None

    def as_sewn(self, here: BlockHere) -> BlockHere:
        """A mirrored block as the block that is sewn for it: its mirror image, turned."""
        if not here.symmetry.is_mirrored:
            return here
        key = id(here.design)
        if key not in self._mirrors:
            self._mirrors[key] = mirror_image(here.design)
        mirrored = self._mirrors[key]
        return here if mirrored is None else BlockHere(mirrored, MIRROR.then(here.symmetry), here.colourway)

    def put_block(self, here: BlockHere, x: Exact, y: Exact, row: int, column: int) -> InRow:
        """A whole block with its top left corner at (x, y) of the middle."""
        here = self.as_sewn(here)
        kind = self.kind_of(here.design, "block")
        place = PlacedBlock(
            kind, here.symmetry, self.left + x, self.top + y, colourway=here.colourway, row=row, column=column
        )
        return self.add(place)

    def put_half(self, here: BlockHere, depth: Fraction, *, lower: bool, at: tuple[Exact, Exact, int, int]) -> InRow:
        """The lower or upper part of a block as it is turned, `depth` deep; `at` is (x, y, row, column)."""
        here = self.as_sewn(here)
        kept = here.symmetry.inverse.apply_direction(Point(ZERO, Fraction(1 if lower else -1)))
        side = side_towards(kept)
        key = (id(here.design), side, depth)
        if key not in self._halves:
            self._halves[key] = half_of(here.design, side, depth)
        kind = self.kind_of(self._halves[key], "half block")
        x, y, row, column = at
        place = PlacedBlock(
            kind, here.symmetry, self.left + x, self.top + y, colourway=here.colourway, row=row, column=column
        )
        return self.add(place)

    def add(self, place: PlacedBlock) -> InRow:
        """One more block."""
        self.blocks.append(place)
        return InRow(block=len(self.blocks) - 1)

    def put_cloth(self, cloth: PlacedCloth) -> InRow:
        """One more piece of cloth, in the quilt's own place."""
        self.cloth.append(cloth)
        return InRow(cloth=len(self.cloth) - 1)

    def put_box(self, role: PieceRole, fabric: str, at: tuple[Exact, Exact], extent: tuple[Exact, Exact]) -> InRow:
        """An upright rectangle of cloth with its top left corner `at` a place of the middle."""
        x, y = self.left + at[0], self.top + at[1]
        return self.put_cloth(PlacedCloth(role, fabric, box(x, y, x + extent[0], y + extent[1])))

    def end_row(self, kind: RowKind, members: Iterable[InRow], length: Exact, breadth: Exact) -> None:
        """What has been put is sewn end to end."""
        self.rows.append(AssemblyRow(kind, tuple(members), length, breadth))


def mirror_image(design: BlockDesign) -> BlockDesign | None:
    """The block left for right, as a design of its own; None when that is the block itself, turned perhaps."""
    turns: tuple[Symmetry, ...] = (IDENTITY, HALF_TURN)
    if design.width == design.height:
        turns = (*turns, QUARTER_CLOCKWISE, QUARTER_ANTICLOCKWISE)
    seen = _picture(design, MIRROR)
    if any(_picture(design, turn) == seen for turn in turns):
        return None
    width, height = design.width, design.height
    return replace(
        design,
        name=f"{design.name}, mirror image",
        columns=design.columns[::-1],
        patches=tuple(patch.turned(MIRROR, width, height) for patch in design.patches),
        units=tuple(_mirrored(unit, design) for unit in design.units),
        appliques=tuple(piece.turned(MIRROR, width, height) for piece in design.appliques),
        grains=(),
        sizes=(),
    )


def _mirrored(unit: UnitPlace, design: BlockDesign) -> UnitPlace:
    across, _ = unit.symmetry.turned_extent(unit.width, unit.height)
    return replace(unit, x=design.width - unit.x - across, symmetry=unit.symmetry.then(MIRROR))


def _picture(design: BlockDesign, symmetry: Symmetry) -> frozenset[Hashable]:
    """What is seen: which fabric lies where; of curved patches the straight twins, and that they are curved."""
    size = design.width, design.height
    patches = (
        (patch.fabric, patch.curved is not None, _from_least_corner(symmetry.apply_polygon(patch.outline, *size)))
        for patch in design.patches
    )
    laid_on = (
        (piece.fabric, "applique", _from_least_corner(symmetry.apply_polygon(piece.outline, *size)))
        for piece in design.appliques
    )
    return frozenset((*patches, *laid_on))


def _from_least_corner(outline: Polygon) -> Polygon:
    start = min(range(len(outline)), key=outline.__getitem__)
    return outline[start:] + outline[:start]
