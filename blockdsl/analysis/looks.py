"""How a quilt looks: whether two are the same, turned over or about, and how different two others are.

Whether they are the same is judged by where each block and each piece of cloth lies and which of its turns it is in;
turns in which a block looks the same are one. How different they are is judged by colours seen at a few hundred places
of the quilt, as if both were equally large.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import cached_property, lru_cache
from itertools import product
from math import ceil, sqrt
from typing import Final

from blockdsl.analysis.likeness import likeness_of
from blockdsl.geometry import to_float
from blockdsl.geometry.symmetry import ALL_EIGHT, QUARTER_ANTICLOCKWISE, Symmetry
from blockdsl.model import BlockDesign
from blockdsl.model.quilt import PlacedBlock, QuiltDesign

_ACROSS: Final = 24
_DOWN: Final = 30
_SEEN: Final = 16
"""Places across a block, and down, at which its colour is looked up."""
_HALF_ROOT: Final = sqrt(0.5)
_DECIMALS: Final = 4
"""Places of a quilt's unit that differ beyond so many decimals are the same place."""
_WHITEST: Final = 255.0

Colour = tuple[int, int, int]
Spot = tuple[float, float]
Form = tuple[Spot, frozenset[tuple[object, ...]]]
"""The size of a quilt, and what lies where."""


class Look:
    """A quilt as it is seen."""

    def __init__(self, design: QuiltDesign) -> None:
        """Nothing is worked out before it is asked for."""
        self._design = design
        self._size = to_float(design.width), to_float(design.height)
        self._colours = {fabric.name: _rgb(fabric.colour) for fabric in design.fabrics}

    @cached_property
    def form(self) -> Form:
        """Equal for quilts that look the same as they hang."""
        return next(iter(self._forms))

    @property
    def turned_forms(self) -> Sequence[Form]:
        """The forms of this quilt turned over and about."""
        return self._forms

    def differs_from(self, other: Look) -> float:
        """How different the colours are, from 0 for the same everywhere to 1 for black against white."""
        apart = sum(
            sqrt(sum((one - two) ** 2 for one, two in zip(mine, yours, strict=True)))
            for mine, yours in zip(self._seen, other._seen, strict=True)
        )
        return apart / (len(self._seen) * _WHITEST * sqrt(3))

    # --- what lies where --------------------------------------------------------------------------

    @cached_property
    def _forms(self) -> tuple[Form, ...]:
        design = self._design
        blocks = [
            (place, _centre(place, design), self._kind_of(place), _turns_of(design.kinds[place.kind].design))
            for place in design.blocks
        ]
        cloth = [(piece.fabric, [_spot(corner) for corner in piece.outline]) for piece in design.cloth]
        forms = []
        for turn in ALL_EIGHT:
            size = self._size[::-1] if turn.swaps_sides else self._size
            items: list[tuple[object, ...]] = [
                (_same(_turned(centre, turn, self._size)), kind, alike[_after(place, turn)], place.on_point)
                for place, centre, kind, alike in blocks
            ]
            items += [
                (fabric, frozenset(_same(_turned(corner, turn, self._size)) for corner in corners))
                for fabric, corners in cloth
            ]
            forms.append((_same(size), frozenset(items)))
        return tuple(forms)

    def _kind_of(self, place: PlacedBlock) -> tuple[object, ...]:
        """What makes a block another one: its name, what it does, and the fabrics of its colourway."""
        kind = self._design.kinds[place.kind]
        return kind.name, kind.role, tuple(sorted(_replaced(kind.design, place.colourway).items()))

    # --- what is seen -----------------------------------------------------------------------------

    @cached_property
    def _seen(self) -> list[Colour]:
        """The colours at places that are spread evenly over the quilt, row by row."""
        seen: list[Colour] = [(255, 255, 255)] * (_ACROSS * _DOWN)
        for piece in self._design.cloth:
            corners = [_spot(corner) for corner in piece.outline]
            for place, spot in self._spots(corners):
                if _within(spot, corners):
                    seen[place] = self._colours[piece.fabric]
        for block in self._design.blocks:
            design = self._design.kinds[block.kind].design
            raster, replaced = _raster(design), _replaced(design, block.colourway)
            for place, spot in self._spots(_corners(block, design)):
                across, down = _inside(spot, block, design)
                if 0 <= across < 1 and 0 <= down < 1:
                    fabric = raster[int(down * _SEEN)][int(across * _SEEN)]
                    seen[place] = self._colours.get(replaced.get(fabric, fabric), (255, 255, 255))
        return seen

    def _spots(self, corners: Sequence[Spot]) -> Iterator[tuple[int, Spot]]:
        """The places within the upright box round these corners, each with its number."""
        steps = self._size[0] / _ACROSS, self._size[1] / _DOWN
        ranges = [
            range(
                max(0, ceil(min(corner[axis] for corner in corners) / steps[axis] - 0.5)),
                min(most, ceil(max(corner[axis] for corner in corners) / steps[axis] - 0.5)),
            )
            for axis, most in enumerate((_ACROSS, _DOWN))
        ]
        for column, row in product(*ranges):
            yield row * _ACROSS + column, ((column + 0.5) * steps[0], (row + 0.5) * steps[1])


def _rgb(colour: str) -> Colour:
    red, green, blue = (int(colour[place : place + 2], 16) for place in (1, 3, 5))
    return red, green, blue


def _spot(corner: Sequence[object]) -> Spot:
    x, y = corner
    return to_float(x), to_float(y)  # type: ignore[arg-type]


def _same(spot: Spot) -> Spot:
    """Rounded, so that what lies at one place is equal; never a zero with a sign."""
    return round(spot[0], _DECIMALS) + 0.0, round(spot[1], _DECIMALS) + 0.0


def _turned(spot: Spot, turn: Symmetry, size: Spot) -> Spot:
    x, y = (spot[0] - size[0] / 2, spot[1] - size[1] / 2)
    width, height = size[::-1] if turn.swaps_sides else size
    return (
        turn.x_from_x * x + turn.x_from_y * y + width / 2,
        turn.y_from_x * x + turn.y_from_y * y + height / 2,
    )


def _after(place: PlacedBlock, turn: Symmetry) -> Symmetry:
    """How a block lies once its quilt is turned.

    On point, an eighth turn E comes between: the quilt's turn T after it is E after the turn E⁻¹TE. For a rotation that
    is T; for a mirror TE = E⁻¹T, so that it is E⁻²T, a quarter turn back after T.
    """
    if place.on_point and turn.is_mirrored:
        turn = turn.then(QUARTER_ANTICLOCKWISE)
    return place.symmetry.then(turn)


@lru_cache(maxsize=64)
def _turns_of(design: BlockDesign) -> dict[Symmetry, Symmetry]:
    """For each turn of a block the first in which it looks the same."""
    if design.appliques:
        return {turn: turn for turn in ALL_EIGHT}
    likeness = likeness_of(design)
    first: dict[object, Symmetry] = {}
    alike = {}
    for turn in ALL_EIGHT:
        look = (turn.swaps_sides and design.width != design.height, tuple(likeness.laid(turn)))
        alike[turn] = first.setdefault(look, turn)
    return alike


@lru_cache(maxsize=64)
def _raster(design: BlockDesign) -> list[list[str]]:
    """The fabric at each place of an even grid over the block, as it is drawn."""
    patches = [(patch.fabric, [_spot(corner) for corner in patch.corners]) for patch in design.patches]
    width, height = to_float(design.width), to_float(design.height)
    rows = []
    for row in range(_SEEN):
        spots = [((column + 0.5) * width / _SEEN, (row + 0.5) * height / _SEEN) for column in range(_SEEN)]
        rows.append([next((fabric for fabric, corners in patches if _within(spot, corners)), "") for spot in spots])
    return rows


def _replaced(design: BlockDesign, colourway: str) -> dict[str, str]:
    return next((dict(plan.replaces) for plan in design.colourways if plan.name == colourway), {})


def _extent(block: PlacedBlock, design: BlockDesign) -> Spot:
    """Width and height of the block as it was turned, before it was put on point."""
    width, height = block.symmetry.turned_extent(design.width, design.height)
    return to_float(width), to_float(height)


def _corners(block: PlacedBlock, design: BlockDesign) -> list[Spot]:
    width, height = _extent(block, design)
    return [_on_quilt(spot, block) for spot in ((0.0, 0.0), (width, 0.0), (width, height), (0.0, height))]


def _centre(block: PlacedBlock, design: QuiltDesign) -> Spot:
    width, height = _extent(block, design.kinds[block.kind].design)
    return _on_quilt((width / 2, height / 2), block)


def _on_quilt(spot: Spot, block: PlacedBlock) -> Spot:
    """Where a place of a turned block lies on the quilt: see PlacedBlock."""
    across, down = spot
    if block.on_point:
        across, down = (across - down) * _HALF_ROOT, (across + down) * _HALF_ROOT
    return to_float(block.x) + across, to_float(block.y) + down


def _inside(spot: Spot, block: PlacedBlock, design: BlockDesign) -> Spot:
    """The place of the block as it is drawn that lies at a spot of the quilt, as shares of its width and height."""
    across, down = spot[0] - to_float(block.x), spot[1] - to_float(block.y)
    if block.on_point:
        across, down = (across + down) * _HALF_ROOT, (down - across) * _HALF_ROOT
    width, height = _extent(block, design)
    x, y = _turned((across, down), block.symmetry.inverse, (width, height))
    return x / to_float(design.width), y / to_float(design.height)


def _within(spot: Spot, corners: Sequence[Spot]) -> bool:
    """Whether a spot lies in a polygon, by how often a line from it to the right crosses its sides."""
    x, y = spot
    inside = False
    for (x1, y1), (x2, y2) in zip(corners, (*corners[1:], corners[0]), strict=True):
        if (y1 > y) != (y2 > y) and x < (x2 - x1) * (y - y1) / (y2 - y1) + x1:
            inside = not inside
    return inside
