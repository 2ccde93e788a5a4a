"""The designer's units as the piecing order follows them: which patches belong together, unit in unit."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from blockdsl.model import BlockDesign, UnitPlace
from blockdsl.sewing.order.net import Net
from blockdsl.sewing.order.region import box_of, flood, look_at


@dataclass(frozen=True, slots=True)
class Nest:
    """Patches `first` up to `stop`, and the units inside; the outermost nest is the block."""

    first: int
    stop: int
    inside: tuple[Nest, ...]


def nest_units(design: BlockDesign, net: Net) -> Nest:
    """The units that can be nodes of their own: those whose patches fill their box and hang together."""
    places = sorted({(unit.first, -unit.stop): unit for unit in design.units}.items())
    kept = [unit for _, unit in places if unit.stop - unit.first > 1 and _fills_its_box(net, unit)]
    open_nests: list[tuple[int, int, list[Nest]]] = [(0, len(design.patches), [])]
    for unit in kept:
        while unit.first >= open_nests[-1][1]:
            _close(open_nests)
        if (unit.first, unit.stop) != open_nests[-1][:2]:
            open_nests.append((unit.first, unit.stop, []))
    while len(open_nests) > 1:
        _close(open_nests)
    first, stop, inside = open_nests[0]
    return Nest(first, stop, tuple(inside))


def _close(open_nests: list[tuple[int, int, list[Nest]]]) -> None:
    first, stop, inside = open_nests.pop()
    open_nests[-1][2].append(Nest(first, stop, tuple(inside)))


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
    for patch in range(nest.first, nest.stop):
        atom[patch] = patch
    for unit in nest.inside:
        for patch in range(unit.first, unit.stop):
            atom[patch] = unit.first


def inside_out(nest: Nest) -> list[Nest]:
    """All nests, each after those inside it, in reading order."""
    found, waiting = [], [nest]
    while waiting:
        here = waiting.pop()
        found.append(here)
        waiting.extend(here.inside)
    return found[::-1]
