"""Which blocks are one block, whatever their colours, turn, mirror or size: an exact form that all of them share.

A block is laid into a square of side 1. In each of the eight symmetries its patches are put into one order, and its
fabrics are numbered as they come; the least of the eight is the form. Two blocks are one block when their forms are
equal: nothing is measured, so nothing can be nearly equal. Seams count: a square cut in two along its diagonal is
not the square.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Sequence
from functools import cached_property
from itertools import permutations
from typing import Final

from blockdsl.geometry import Exact
from blockdsl.geometry.arc import Curved
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import Polygon, drop_straight_corners
from blockdsl.geometry.symmetry import ALL_EIGHT, IDENTITY, Symmetry
from blockdsl.model import BlockDesign
from blockdsl.model.block import Patch

_MOST_FABRICS: Final = 6
"""With up to this many fabrics, every way to pair them with the other block's is tried; with more, the likeliest."""

_Place = tuple[int, int]
_Edge = tuple[_Place, _Place, _Place, bool]
"""Both ends, the lesser first, of an arc its centre and whether it is hollow; places are ranks of coordinates."""
_Outline = tuple[_Edge, ...]
_Laid = list[tuple[_Outline, str]]
_STRAIGHT: Final = (-1, -1)

Form = tuple[Exact, tuple[Exact, ...], tuple[_Outline, ...], tuple[int, ...]]
"""How wide it is for its height, the coordinates that occur, the outlines, and the number of each one's fabric."""


class Likeness:
    """A block or unit as it compares with others: its form, and the same without its colours."""

    def __init__(self, patches: Sequence[Patch], corner: tuple[Exact, Exact], extent: tuple[Exact, Exact]) -> None:
        """Of patches that cover a box of this extent, its top left corner at `corner`."""
        (left, top), (width, height) = corner, extent
        self._aspect = width / height
        self._patches = [(patch.fabric, patch.curved or drop_straight_corners(patch.outline)) for patch in patches]
        self._across: Callable[[Exact], Exact] = lambda x: (x - left) / width
        self._down: Callable[[Exact], Exact] = lambda y: (y - top) / height
        self.patches = len(patches)

    @cached_property
    def _ranked(self) -> tuple[tuple[Exact, ...], _Laid]:
        """The coordinates that occur, with their mirror images, and each patch by the ranks of its coordinates."""
        xs: dict[Exact, Exact] = {}
        ys: dict[Exact, Exact] = {}
        for _, outline in self._patches:
            for x, y in _points(outline):
                if x not in xs:
                    xs[x] = self._across(x)
                if y not in ys:
                    ys[y] = self._down(y)
        values = {*xs.values(), *ys.values()}
        ordered = tuple(sorted(values | {1 - value for value in values}))
        rank = {value: place for place, value in enumerate(ordered)}

        def place(x: Exact, y: Exact) -> _Place:
            return rank[xs[x]], rank[ys[y]]

        return ordered, [(_ranks(outline, place), fabric) for fabric, outline in self._patches]

    def laid(self, symmetry: Symmetry) -> _Laid:
        """Each patch and its fabric in this symmetry, in the order of the outlines."""
        ordered, patches = self._ranked
        last = len(ordered) - 1

        def turned(place: _Place) -> _Place:
            x, y = (place[1], place[0]) if symmetry.swaps_sides else place
            if place == _STRAIGHT:
                return place
            return (
                last - x if symmetry.x_from_x + symmetry.x_from_y < 0 else x,
                last - y if symmetry.y_from_x + symmetry.y_from_y < 0 else y,
            )

        def edge(each: _Edge) -> _Edge:
            start, end = sorted((turned(each[0]), turned(each[1])))
            return start, end, turned(each[2]), each[3]

        if symmetry == IDENTITY:
            return sorted(patches)
        return sorted((tuple(sorted(map(edge, outline))), fabric) for outline, fabric in patches)

    def _aspect_in(self, symmetry: Symmetry) -> Exact:
        return 1 / self._aspect if symmetry.swaps_sides else self._aspect

    def _forms(self) -> Iterator[Form]:
        for symmetry in ALL_EIGHT:
            laid = self.laid(symmetry)
            numbers: dict[str, int] = {}
            colours = tuple(numbers.setdefault(fabric, len(numbers)) for _, fabric in laid)
            yield self._aspect_in(symmetry), self._ranked[0], tuple(outline for outline, _ in laid), colours

    @cached_property
    def form(self) -> Form:
        """Equal for blocks that are one block, whatever their colours, turn, mirror or size."""
        return min(self._forms())

    @property
    def seams(self) -> tuple[Exact, tuple[Exact, ...], tuple[_Outline, ...]]:
        """Equal for blocks that have the same seams, whatever the fabrics of their patches."""
        return self.form[:3]

    def patches_that_differ(self, other: Likeness) -> int | None:
        """How few patches would have to change their fabric to make the two one block; None where seams differ."""
        if self.seams != other.seams:
            return None
        theirs = other.laid(IDENTITY)
        outlines = [outline for outline, _ in theirs]
        fewest = self.patches
        for symmetry in ALL_EIGHT:
            ours = self.laid(symmetry)
            if [outline for outline, _ in ours] == outlines:
                pairs = Counter((mine, yours) for (_, mine), (_, yours) in zip(ours, theirs, strict=True))
                fewest = min(fewest, self.patches - _most_alike(pairs))
        return fewest


def _points(outline: Polygon | Curved) -> Iterator[tuple[Exact, Exact]]:
    if isinstance(outline, Curved):
        yield from outline.corners
        yield from (bend.centre for bend in outline.bends if bend is not None)
    else:
        yield from outline


def _ranks(outline: Polygon | Curved, place: Callable[[Exact, Exact], _Place]) -> _Outline:
    edges: list[_Edge] = []
    if isinstance(outline, Curved):
        for side in outline.sides():
            start, end = sorted((place(*side.start), place(*side.end)))
            centre = _STRAIGHT if side.bend is None else place(*side.bend.centre)
            edges.append((start, end, centre, side.bend is not None and side.bend.hollow))
    else:
        corners = [place(*corner) for corner in outline]
        for before, after in zip(corners, (*corners[1:], corners[0]), strict=True):
            start, end = sorted((before, after))
            edges.append((start, end, _STRAIGHT, False))
    return tuple(sorted(edges))


def _most_alike(pairs: Counter[tuple[str, str]]) -> int:
    """How many patches agree when each fabric stands for one of the other's: the best pairing of the two."""
    mine = sorted({first for first, _ in pairs})
    yours = sorted({second for _, second in pairs})
    if len(mine) > len(yours):
        return _most_alike(Counter({(second, first): count for (first, second), count in pairs.items()}))
    if len(yours) <= _MOST_FABRICS:
        return max(
            sum(pairs[pair] for pair in zip(mine, chosen, strict=True)) for chosen in permutations(yours, len(mine))
        )
    taken: set[str] = set()
    total = 0
    for (first, second), count in sorted(pairs.items(), key=lambda item: (-item[1], item[0])):
        if first not in taken and f"\0{second}" not in taken:
            taken |= {first, f"\0{second}"}
            total += count
    return total


def likeness_of(design: BlockDesign) -> Likeness:
    """A block as it compares with others."""
    return Likeness(design.patches, (Fraction(0), Fraction(0)), (design.width, design.height))


def units_of(design: BlockDesign) -> Iterable[tuple[str, Likeness]]:
    """Each unit that has a name of its own and more than one patch, once."""
    named: dict[str, Likeness] = {}
    for unit in design.units:
        if unit.name is not None and unit.name not in named and unit.stop - unit.first > 1:
            extent = unit.symmetry.turned_extent(unit.width, unit.height)
            named[unit.name] = Likeness(design.patches[unit.first : unit.stop], (unit.x, unit.y), extent)
    return named.items()
