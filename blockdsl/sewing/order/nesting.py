"""Units as the piecing order follows them: which patches belong together, unit in unit."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

from msgspec import Struct

from blockdsl.model import BlockDesign, UnitPlace
from blockdsl.sewing.order.net import Net
from blockdsl.sewing.order.region import box_of, flood, look_at
from blockdsl.sewing.order.small_units import small_units
from blockdsl.shapes import SHAPES

Span = tuple[int, int]
Unnamed = Literal["all", "shapes", "none"]


class Nest(Struct, frozen=True):
    """Some patches, by their numbers in order, and the units inside; the outermost nest is the block."""

    patches: tuple[int, ...]
    inside: tuple[Nest, ...]

    @property
    def atom(self) -> int:
        """What stands for all its patches while they are not to be parted."""
        return self.patches[0]


def nest_units(design: BlockDesign, net: Net, *, unnamed: Unnamed = "all") -> Nest:
    """The units that can be nodes of their own: those whose patches fill their box and hang together.

    `unnamed`: also what nobody has named, but a maker sews by itself all the same: the parts that `shapes` are made
    of (the points of a star, the boxes of a field of cubes), and with `all` the small units too among patches that were
    drawn one by one (half squares, hourglasses, striped squares).
    """
    spans = {
        (unit.first, unit.stop) for unit in design.units if unit.stop - unit.first > 1 and _fills_its_box(net, unit)
    }
    shapes = {(unit.first, unit.stop) for unit in design.units if unit.filling is not None}
    if unnamed != "none":
        spans |= parts_of_shapes(design, net)
    open_nests: list[tuple[Span, list[Nest]]] = [((0, len(design.patches)), [])]
    search = _Search(design, net, shapes if unnamed == "all" else None)
    for span in sorted(spans, key=lambda span: (span[0], -span[1])):
        while span[0] >= open_nests[-1][0][1]:
            search.close(open_nests)
        if span != open_nests[-1][0]:
            open_nests.append((span, []))
    while len(open_nests) > 1:
        search.close(open_nests)
    return search.nest(*open_nests[0])


class _Search:
    """Makes nests of spans; `shapes` are the spans that a shape has drawn, None when nothing is to be looked for."""

    def __init__(self, design: BlockDesign, net: Net, shapes: set[Span] | None) -> None:
        self._design = design
        self._net = net
        self._shapes = shapes

    def close(self, open_nests: list[tuple[Span, list[Nest]]]) -> None:
        """Put the innermost nest that is open into the one round it."""
        span, inside = open_nests.pop()
        open_nests[-1][1].append(self.nest(span, inside))

    def nest(self, span: Span, inside: Sequence[Nest]) -> Nest:
        """The nest of a span, with the small units among the patches that are directly inside."""
        patches = tuple(range(*span))
        if self._shapes is None or span in self._shapes:
            return Nest(patches, tuple(inside))
        taken = {patch for nest in inside for patch in nest.patches}
        alone = [patch for patch in patches if patch not in taken]
        found = [Nest(unit, ()) for unit in small_units(self._design, self._net, alone) if unit != patches]
        return Nest(patches, tuple(sorted((*inside, *found), key=lambda nest: nest.atom)))


def parts_of_shapes(design: BlockDesign, net: Net) -> frozenset[Span]:
    """The spans of patches that shapes want sewn by themselves: they are never opened up."""
    return frozenset(part for unit in design.units for part in _parts_of_shape(unit, net))


def _parts_of_shape(unit: UnitPlace, net: Net) -> list[Span]:
    shape = SHAPES[unit.filling.shape] if unit.filling else None
    if unit.filling is None or shape is None or shape.parts is None:
        return []
    spans = [
        (unit.first + start, unit.first + stop) for start, stop in shape.parts(unit.filling, unit.width, unit.height)
    ]
    return [span for span in spans if span[1] - span[0] > 1 and _is_one_piece(net, range(*span))]


def _fills_its_box(net: Net, unit: UnitPlace) -> bool:
    """Whether the patches, which do not overlap, lie within as large a box and are in one piece."""
    patches = range(unit.first, unit.stop)
    covered = sum(net.areas[patch] for patch in patches)
    if not net.is_whole:
        return covered == unit.width * unit.height and _is_one_piece(net, patches)
    left, top, right, bottom = box_of(net, patches)
    twice = 2 * (net.across[right] - net.across[left]) * (net.down[bottom] - net.down[top])
    return covered == twice and _is_one_piece(net, patches)


def _is_one_piece(net: Net, patches: Sequence[int]) -> bool:
    return len(flood(look_at(net, patches, range(len(net.rings))), ())) == 1


def set_atoms(nest: Nest, atom: list[int]) -> None:
    """Let each unit directly inside be parted from the rest, but not within itself."""
    for patch in nest.patches:
        atom[patch] = patch
    for unit in nest.inside:
        for patch in unit.patches:
            atom[patch] = unit.atom


def inside_out(nest: Nest) -> list[Nest]:
    """All nests, each after those inside it, in reading order."""
    found, waiting = [], [nest]
    while waiting:
        here = waiting.pop()
        found.append(here)
        waiting.extend(here.inside)
    return found[::-1]
