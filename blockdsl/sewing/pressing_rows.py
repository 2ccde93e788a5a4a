"""Rows that are alike and lie alike: pressed the other way in every second one where their seams then nest.

A unit is pressed the same way each time, because it is made in one go; a row is sewn by itself, so its seams may go to
the left in one and to the right in the next (common practice, no source).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from msgspec.structs import replace

from blockdsl.sewing.pressing import Pressing, meetings_of
from blockdsl.sewing.pressing_seams import SeamKey, UnitSeams

Rows = Mapping[int, Sequence[int]]
"""For a unit that is a row of the block its places among the parts of the block, from 0."""

_Costs = Mapping[int, Mapping[tuple[bool, bool], int]]
"""For each join at how many places it is loose, when the rows before and after it are turned over or not."""


def press_by_row(seams: UnitSeams, pressing: Pressing, block: int, rows: Rows) -> tuple[Pressing, frozenset[int]]:
    """The pressing with what then nests, and the places of the rows that are pressed the other way.

    `block` is the number of the unit that the block is; `rows` are those of which there are several, none turned.
    """
    free = {place: unit for unit, places in rows.items() if _is_one_way(seams, pressing, unit) for place in places}
    if not free:
        return pressing, frozenset()
    joins = [seam for seam in seams.of(block) if seam.key not in pressing.fans]
    costs: dict[int, Mapping[tuple[bool, bool], int]] = {}
    for seam in joins:
        part = seam.key[1]
        costs[part] = {
            (before, after): _loose(seams, pressing, seam.key, (free.get(part), before), (free.get(part + 1), after))
            for before in (False, True)
            for after in (False, True)
        }
    turned = _cheapest(costs, free, len(seams.of(block)) + 1)
    unnested = dict(pressing.unnested)
    for part, cost in costs.items():
        unnested[block, part] = cost[part in turned, part + 1 in turned]
    if sum(unnested.values()) >= sum(pressing.unnested.values()):
        return pressing, frozenset()
    return replace(pressing, unnested=unnested), turned


def _is_one_way(seams: UnitSeams, pressing: Pressing, unit: int) -> bool:
    """Whether all seams of a row are straight and go to one side, so that a few words say which."""
    toward = {pressing.toward.get(seam.key) for seam in seams.of(unit)}
    return len(toward) == 1 and None not in toward and all(seam.kind == "straight" for seam in seams.of(unit))


def _loose(
    seams: UnitSeams, pressing: Pressing, join: SeamKey, before: tuple[int | None, bool], after: tuple[int | None, bool]
) -> int:
    """At how many places of a join seams lie the same way, when the rows beside it are turned over or not."""
    nested: dict[object, bool] = {}
    for meeting in meetings_of(seams, join):
        if not meeting.locks:
            continue
        one, other = (
            pressing.toward[key] != (turned and key[0] == unit)
            for key, (unit, turned) in ((meeting.one, before), (meeting.other, after))
        )
        nested[meeting.where] = nested.get(meeting.where, True) and (one != other) == meeting.opposite
    return sum(not each for each in nested.values())


def _cheapest(
    costs: Mapping[int, Mapping[tuple[bool, bool], int]], free: Mapping[int, int], count: int
) -> frozenset[int]:
    """Which rows to turn over so that the fewest places are loose, and then the fewest rows are turned."""
    best: dict[bool, tuple[int, int, tuple[int, ...]]] = {False: (0, 0, ())}
    for place in range(count):
        here: dict[bool, tuple[int, int, tuple[int, ...]]] = {}
        for turned in (False, True) if place in free and place > 0 else (False,):
            ways = [
                (loose + costs.get(place - 1, {}).get((before, turned), 0), many + turned, (*rows, *[place] * turned))
                for before, (loose, many, rows) in best.items()
            ]
            here[turned] = min(ways)
        best = here
    return frozenset(min(best.values())[2])
