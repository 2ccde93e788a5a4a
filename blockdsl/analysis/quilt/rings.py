"""Borders, and the rounds of a medallion: what is sewn round all four sides, inside out."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final, Literal

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.analysis.quilt.middle import BlockHere, Top
from blockdsl.diagnostics import Span
from blockdsl.geometry import Exact, Point, Polygon
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.symmetry import HALF_TURN, IDENTITY, QUARTER_ANTICLOCKWISE, QUARTER_CLOCKWISE, Symmetry
from blockdsl.model import BlockDesign
from blockdsl.model.quilt import Corners, KindRole, PieceRole, PlacedBlock, PlacedCloth, Ring
from blockdsl.shapes.outlines import box

_OUTWARD: Final = (IDENTITY, QUARTER_CLOCKWISE, HALF_TURN, QUARTER_ANTICLOCKWISE)
"""How a unit of the top side is turned on the top, the right, the bottom and the left."""


class Pieces(Struct, frozen=True):
    """What a pieced ring repeats: a design with its top outward once it is turned by `symmetry`."""

    design: BlockDesign
    symmetry: Symmetry
    role: KindRole

    @property
    def length(self) -> Fraction:
        """Along the edge of the quilt, finished."""
        return self.symmetry.turned_extent(self.design.width, self.design.height)[0]  # type: ignore[return-value]


class RingPlan(Struct, frozen=True):
    """One ring as it was asked for. `fabric` is that of a plain one, `corner` that of corner squares, else nothing."""

    word: Literal["border", "round"]
    width: Fraction
    fabric: str
    pieces: Pieces | None
    corners: Corners
    corner: str
    sides_first: bool
    lengthwise: bool
    span: Span


def lay_rings(top: Top, rings: list[RingPlan], middle: tuple[Exact, Exact]) -> list[Ring]:
    """All rings round a middle that begins at the top's own `left` and `top`; the last ends at the origin."""
    done: list[Ring] = []
    start, inner = (top.left, top.top), middle
    for number, ring in enumerate(rings, start=1):
        start = start[0] - ring.width, start[1] - ring.width
        outer = inner[0] + 2 * ring.width, inner[1] + 2 * ring.width
        kind = _lay(top, ring, number, start, inner)
        done.append(
            Ring(
                number=number,
                word=ring.word,
                width=ring.width,
                corners=ring.corners,
                sides_first=ring.sides_first,
                lengthwise=ring.lengthwise,
                fabric=ring.fabric,
                kind=kind,
                inner=inner,
                outer=outer,
                span=ring.span,
            )
        )
        inner = outer
    return done


class _Frame(Struct, frozen=True):
    """A ring in its place: its outer top left corner, the size inside it, its width."""

    x: Exact
    y: Exact
    inner: tuple[Exact, Exact]
    width: Fraction

    def sides(self, *, mitred: bool, full: tuple[bool, bool]) -> Iterator[Polygon]:
        """Top, right, bottom, left. `full`: whether top and bottom, and left and right, take in the corners."""
        x, y, w = self.x, self.y, self.width
        right, bottom = x + self.inner[0] + 2 * w, y + self.inner[1] + 2 * w
        if mitred:
            outside = (Point(x, y), Point(right, y), Point(right, bottom), Point(x, bottom))
            inside = (
                Point(x + w, y + w),
                Point(right - w, y + w),
                Point(right - w, bottom - w),
                Point(x + w, bottom - w),
            )
            for side in range(4):
                after = (side + 1) % 4
                yield outside[side], outside[after], inside[after], inside[side]
            return
        across, down = ((Fraction(0) if whole else w) for whole in full)
        yield box(x + across, y, right - across, y + w)
        yield box(right - w, y + down, right, bottom - down)
        yield box(x + across, bottom - w, right - across, bottom)
        yield box(x, y + down, x + w, bottom - down)

    def corners(self) -> Iterator[Polygon]:
        """The squares at top left, top right, bottom right, bottom left."""
        w = self.width
        right, bottom = self.x + self.inner[0] + w, self.y + self.inner[1] + w
        for x, y in ((self.x, self.y), (right, self.y), (right, bottom), (self.x, bottom)):
            yield box(x, y, x + w, y + w)


def _lay(top: Top, ring: RingPlan, number: int, start: tuple[Exact, Exact], inner: tuple[Exact, Exact]) -> int | None:
    """Put the ring's cloth or blocks; gives the kind of what it is pieced from."""
    frame = _Frame(*start, inner, ring.width)
    butted = ring.corners == "butted"
    full = (butted and ring.sides_first, butted and not ring.sides_first)
    outlines = list(frame.sides(mitred=ring.corners == "mitred", full=full))
    if ring.corners == "squares":
        for outline in frame.corners():
            top.put_cloth(PlacedCloth("border corner", ring.corner, outline, ring=number))
    if ring.pieces is None:
        role: PieceRole = "border"
        for outline in outlines:
            top.put_cloth(PlacedCloth(role, ring.fabric, outline, lengthwise=ring.lengthwise, ring=number))
        return None
    sewn = top.as_sewn(BlockHere(ring.pieces.design, ring.pieces.symmetry))
    kind = top.kind_of(sewn.design, ring.pieces.role)
    for side, outline in enumerate(outlines):
        _lay_side(
            top,
            ring.pieces.length,
            PlacedBlock(kind, sewn.symmetry, Fraction(0), Fraction(0), row=side, ring=number),
            outline,
        )
    return kind


def _lay_side(top: Top, length: Fraction, unit: PlacedBlock, outline: Polygon) -> None:
    """Unit by unit, clockwise round the quilt; `unit` is one of the top side, its `row` the side that it is laid on."""
    first, _, last, _ = outline
    side = unit.row
    level = side % 2 == 0
    whole = last.x - first.x if level else last.y - first.y
    symmetry = unit.symmetry.then(_OUTWARD[side])
    count = int(whole / length)  # type: ignore[arg-type]  # units have been found to come out even
    for place in range(count):
        along = length * (place if side < 2 else count - 1 - place)
        x, y = (first.x + along, first.y) if level else (first.x, first.y + along)
        top.add(replace(unit, symmetry=symmetry, x=x, y=y, column=place))


def units_along(ring: RingPlan, inner: tuple[Exact, Exact]) -> tuple[Exact, Exact]:
    """How many units a pieced ring has along its top and down its side; not whole where it does not come out even."""
    assert ring.pieces is not None  # noqa: S101  asked of pieced rings alone
    butted = 2 * ring.width if ring.corners == "butted" else Fraction(0)
    across = inner[0] + (butted if ring.sides_first else 0)
    down = inner[1] + (Fraction(0) if ring.sides_first else butted)
    return across / ring.pieces.length, down / ring.pieces.length
