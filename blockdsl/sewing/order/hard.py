"""Regions that no straight line crosses: set-in and partial seams, as few as can be found."""

from __future__ import annotations

from msgspec import Struct

from blockdsl.sewing.order.alike import Looks
from blockdsl.sewing.order.bends import MOST_WASTED, part_along_a_bend
from blockdsl.sewing.order.divide import choose_division
from blockdsl.sewing.order.region import Region, look_at
from blockdsl.sewing.order.slits import fewest_openings
from blockdsl.sewing.order.zigzags import part_in_zigzags


class HardParting(Struct, frozen=True):
    """The parts, the sides of partial seams that are closed when these parts are joined, and whether one is set in."""

    parts: list[list[int]]
    opened: frozenset[int]
    bent: bool


def part_the_hard_way(region: Region, looks: Looks) -> HardParting | None:
    """Part the region with set-in seams where seams meet in a Y, else with partial ones; None when nothing helps."""
    opened: frozenset[int] = frozenset()
    here = region
    while True:
        division = choose_division(here, looks)
        parts = division.parts if division else part_in_zigzags(here) or part_along_a_bend(here, wasted=0)
        if parts:
            return HardParting(parts, opened, bent=division is None)
        more = fewest_openings(here)
        if more is None:
            break
        opened |= more
        here = look_at(region.net, region.patches, region.atom, region.opened | opened)
    for wasted in range(1, MOST_WASTED + 1):
        parts = part_along_a_bend(region, wasted=wasted)
        if parts:
            return HardParting(parts, frozenset(), bent=True)
    return None
