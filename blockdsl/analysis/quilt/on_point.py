"""Blocks on point: turned an eighth, in diagonal rows, with setting triangles at the edge.

Places are counted on a lattice of half diagonals: blocks of the outer grid stand at odd, odd, those between four of
them at even, even, triangles at the edges at even numbers beside them. Every measure is √2 times a rational one, so
places are worked out in rational numbers and multiplied once.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from msgspec import Struct, field

from blockdsl.analysis.quilt.middle import BlockHere, Chooser, PlainSquare, Sashing, Top
from blockdsl.geometry import Exact, Point, Polygon, square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.quilt import InRow, PieceRole, PlacedBlock, PlacedCloth

_ROOT: Final = square_root(Fraction(2))
Lattice = tuple[int, int]
_UP_RIGHT: Final = (1, -1)
_DOWN_RIGHT: Final = (1, 1)


def on_point_size(across: int, down: int, block: Fraction, sashing: Sashing | None) -> tuple[Exact, Exact]:
    """Finished, with the setting triangles, from point to point of the outer blocks' (or their sashes') corners.

    Exact:  as many diagonals as blocks, √2 × (block + sash) each.
    """
    pitch = block + (sashing.width if sashing else 0)
    return across * pitch * _ROOT, down * pitch * _ROOT


def places_on_point(across: int, down: int) -> int:
    """How many blocks there are: across × down, and one between every four of them."""
    return across * down + (across - 1) * (down - 1)


def lay_on_point(
    top: Top, across: int, down: int, block: Fraction, sashing: Sashing | None, choose: Chooser, fill: str
) -> None:
    """Diagonal row by diagonal row from the top left corner, each from its lower left end up to the right.

    With sashing, sashes lie on all four sides of every block, posts where they cross, half posts at the edges. The four
    corner triangles are sewn on last and belong to no row. The row of a place counts lattice rows from the top.
    """
    field_ = _Field(top, across, down, block, sashing, choose, fill)
    for number in range(1, across + down):
        if sashing:
            field_.lay_sash_row(number - 1, sashing)
        field_.lay_row(number)
    if sashing:
        field_.lay_sash_row(across + down - 1, sashing)
    field_.lay_corners()


class _Field(Struct):
    """The lattice and what it is filled with."""

    top: Top
    across: int
    down: int
    block: Fraction
    sashing: Sashing | None
    choose: Chooser
    fill: str
    _xs: dict[Fraction, Exact] = field(default_factory=dict)
    _ys: dict[Fraction, Exact] = field(default_factory=dict)

    @property
    def _pitch(self) -> Fraction:
        return self.block + (self.sashing.width if self.sashing else 0)

    def _point(self, x: Fraction, y: Fraction) -> Point:
        """The place √2·(x, y) of the middle, in the quilt."""
        if x not in self._xs:
            self._xs[x] = self.top.left + _ROOT * x
        if y not in self._ys:
            self._ys[y] = self.top.top + _ROOT * y
        return Point(self._xs[x], self._ys[y])

    def _centre(self, place: Lattice) -> tuple[Fraction, Fraction]:
        """The middle of a lattice place, divided by √2: half diagonals are half pitches."""
        return place[0] * self._pitch / 2, place[1] * self._pitch / 2

    def _is_place(self, a: int, b: int) -> bool:
        return 0 < a < 2 * self.across and 0 < b < 2 * self.down

    # --- rows --------------------------------------------------------------------------------

    def _row(self, number: int) -> list[Lattice]:
        """The blocks of a diagonal row, from its lower left end: a + b is twice its number."""
        total = 2 * number
        return [(a, total - a) for a in range(1, 2 * self.across) if self._is_place(a, total - a)]

    def lay_row(self, number: int) -> None:
        """Triangle, blocks and sashes in turn, triangle."""
        row = self._row(number)
        (first_a, first_b), (last_a, last_b) = row[0], row[-1]
        members: list[InRow] = []
        members += self._side_triangle((first_a - 1, first_b + 1))
        for a, b in row:
            if self.sashing:
                members.append(self._sash((2 * a - 1, 2 * b + 1), _DOWN_RIGHT, self.sashing))
            members.append(self._put((a, b)))
        if self.sashing:
            members.append(self._sash((2 * last_a + 1, 2 * last_b - 1), _DOWN_RIGHT, self.sashing))
        members += self._side_triangle((last_a + 1, last_b - 1))
        sash = self.sashing.width if self.sashing else Fraction(0)
        length = len(row) * self._pitch + sash
        self.top.end_row("diagonal row", members, length, self.block)

    def _put(self, place: Lattice) -> InRow:
        a, b = place
        x, y = self._centre(place)
        here = self.choose(b - 1, a - 1)
        if isinstance(here, PlainSquare):
            return self._diamond("plain square", here.fabric, (x, y), self.block / 2)
        corner = self._point(x, y - self.block / 2)
        return self.top.add(self._placed(here, corner, place))

    def _placed(self, here: BlockHere, corner: Point, place: Lattice) -> PlacedBlock:
        here = self.top.as_sewn(here)
        kind = self.top.kind_of(here.design, "block")
        column, row = place[0] - 1, place[1] - 1
        return PlacedBlock(
            kind, here.symmetry, corner.x, corner.y, on_point=True, colourway=here.colourway, row=row, column=column
        )

    # --- cloth -------------------------------------------------------------------------------

    def _cloth(self, role: PieceRole, fabric: str, corners: Iterator[tuple[Fraction, Fraction]]) -> InRow:
        outline: Polygon = tuple(self._point(x, y) for x, y in corners)
        return self.top.put_cloth(PlacedCloth(role, fabric, outline))

    def _diamond(self, role: PieceRole, fabric: str, centre: tuple[Fraction, Fraction], half: Fraction) -> InRow:
        """A square on point; `half` is half its diagonal, divided by √2."""
        x, y = centre
        return self._cloth(role, fabric, iter([(x, y - half), (x + half, y), (x, y + half), (x - half, y)]))

    def _triangle_at_the_edge(self, role: PieceRole, fabric: str, place: Lattice, half: Fraction) -> InRow:
        """Half a square on point, its long edge on the quilt's; `half` is half of that, divided by √2."""
        x, y = self._centre(place)
        a, b = place
        around = [(x, y - half), (x + half, y), (x, y + half), (x - half, y)]
        outside = {(0, 1): 3, (1, 0): 0, (2, 1): 1, (1, 2): 2}[_edge_of(a, self.across), _edge_of(b, self.down)]
        return self._cloth(role, fabric, iter(around[outside + 1 :] + around[:outside]))

    def _side_triangle(self, place: Lattice) -> list[InRow]:
        """The triangle at the end of a row; none where a corner of the quilt is."""
        a, b = place
        if a in (0, 2 * self.across) and b in (0, 2 * self.down):
            return []
        return [self._triangle_at_the_edge("side triangle", self.fill, place, self.block / 2)]

    def lay_corners(self) -> None:
        """The four corner triangles; their short edges lie on the quilt's edges."""
        leg = self.block / 2
        right, bottom = (count * self._pitch for count in (self.across, self.down))
        for x, y, dx, dy in (
            (Fraction(0), Fraction(0), 1, 1),
            (right, Fraction(0), -1, 1),
            (right, bottom, -1, -1),
            (Fraction(0), bottom, 1, -1),
        ):
            across, along = (x + dx * leg, y), (x, y + dy * leg)
            corners = [(x, y), across, along] if dx == dy else [(x, y), along, across]
            self._cloth("corner triangle", self.fill, iter(corners))

    # --- sashing -----------------------------------------------------------------------------

    def _sash(self, doubled: Lattice, along: Lattice, sashing: Sashing) -> InRow:
        """A sash with its middle at half a lattice place (`doubled` says twice as much), running along a diagonal."""
        x, y = (count * self._pitch / 4 for count in doubled)
        long_, short = self.block / 4, sashing.width / 4
        dx, dy = along
        # Half of the sash along the diagonal, and half of it across: a quarter turn clockwise from there.
        ux, uy, vx, vy = dx * long_, dy * long_, -dy * short, dx * short
        corners = [
            (x - ux - vx, y - uy - vy),
            (x + ux - vx, y + uy - vy),
            (x + ux + vx, y + uy + vy),
            (x - ux + vx, y - uy + vy),
        ]
        return self._cloth("sash", sashing.fabric, iter(corners))

    def lay_sash_row(self, number: int, sashing: Sashing) -> None:
        """Between the rows `number` and `number + 1`: post, sash, post from the lower left, half posts at the ends."""
        total = 2 * number + 1
        members: list[InRow] = []
        length = Fraction(0)
        for a in range(2 * self.across + 1):
            b = total - a
            if not 0 <= b <= 2 * self.down:
                continue
            members.append(self._post((a, b), sashing))
            # The sash from this post to the next is one side of the block above it or below it.
            if self._is_place(a, b - 1) or self._is_place(a + 1, b):
                members.append(self._sash((2 * a + 1, 2 * b - 1), _UP_RIGHT, sashing))
                length += self._pitch
        self.top.end_row("sash row", members, length, sashing.width)

    def _post(self, place: Lattice, sashing: Sashing) -> InRow:
        fabric = sashing.posts or sashing.fabric
        half = sashing.width / 2
        if place[0] in (0, 2 * self.across) or place[1] in (0, 2 * self.down):
            return self._triangle_at_the_edge("edge post", fabric, place, half)
        return self._diamond("post", fabric, self._centre(place), half)


def _edge_of(count: int, most: int) -> int:
    """0 at the near edge, 2 at the far one, 1 between."""
    return 0 if count == 0 else 2 if count == 2 * most else 1
