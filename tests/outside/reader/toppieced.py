"""Reading the steps of pieced borders and rounds: units in strips, corner squares, the tops of the units outward."""

from __future__ import annotations

import re

from tests.outside.reader.cloth import HAIR, pattern_of
from tests.outside.reader.landmarks import best
from tests.outside.reader.tops import (
    Lying,
    Piece,
    Table,
    begin_round,
    lying_of_part,
    one,
    reads,
    tests_of,
    turned_size,
)
from tests.outside.reader.words import LENGTH, Refused, length

OUTWARD = {"left": -1j, "right": 1j, "top": 1 + 0j, "bottom": -1 + 0j}
"""How a unit is turned so that its top is outward at an edge."""


@reads(r"Lay each (?P<what>.+?) with (?P<how>.+): its top is the outer edge of the (?:border|round)")
def lay_outer(table: Table, found: re.Match[str]) -> None:
    part = one(table.stock.find(found["what"]))
    tests = tests_of(table, found["how"])
    if part.cloth is None:  # a unit whose picture the facts do not have is trusted to lie as it is drawn
        table.turns[part.key] = 1 + 0j
        return
    turns = (1 + 0j, 1j, -1 + 0j, -1j)
    fitting = best([part.cloth.moved(turn) for turn in turns], tests)
    if len({pattern_of(cloth.patches()) for cloth in fitting}) != 1:
        raise Refused(f"{found['what']} may lie in {len(fitting)} ways")
    chosen = pattern_of(fitting[0].patches())
    table.turns[part.key] = next(turn for turn in turns if pattern_of(part.cloth.patches(turn)) == chosen)


@reads(
    r"Sew them together from left to right: (?P<a>\d+) in each of (?P<n>\d+) strips"
    r"(?: for the sides, (?P<b>\d+) in each of 2 strips for the top and bottom)?"
)
def sew_units(table: Table, found: re.Match[str]) -> None:
    sides, top = int(found["a"]), int(found["b"] or found["a"])
    if int(found["n"]) != (2 if found["b"] else 4):
        raise Refused("a border has four strips")
    part, count = next((each for each in table.taken if each[0].key[0] == "block"), (None, 0))
    if part is None or 2 * (sides + top) != count:
        raise Refused(f"{2 * (sides + top)} are sewn, {count} were taken")
    turn = table.turns.get(part.key, 1 + 0j)
    for way in OUTWARD:
        table.pieced[way] = (part, turn, sides if way in ("left", "right") else top)


@reads(r"Each of them is a strip by itself")
def alone(table: Table, found: re.Match[str]) -> None:
    """One unit along each edge, and nothing to press yet."""
    part, count = next((each for each in table.taken if each[0].key[0] == "block"), (None, 0))
    if part is None or count != len(OUTWARD):
        raise Refused("there are not four units")
    table.pieced = {way: (part, table.turns.get(part.key, 1 + 0j), 1) for way in OUTWARD}


@reads(r"Sew a corner square \((?P<fabric>.+)\) to each end of the strips for the top and bottom")
def sew_corners(table: Table, found: re.Match[str]) -> None:
    squares = [(part, count) for part, count in table.taken if "corner square" in part.names]
    if len(squares) != 1 or squares[0][1] != len(OUTWARD) or squares[0][0].fabric != found["fabric"]:
        raise Refused("four corner squares of that fabric were not taken")
    table.corner = squares[0][0]


@reads(
    rf"Measure the (?P<what>.+?) through the middle, about (?P<w>{LENGTH}) (?:in|cm) from side to side and "
    rf"(?P<h>{LENGTH}) (?:in|cm) from top to bottom"
)
def measure_both(table: Table, found: re.Match[str]) -> None:
    base = begin_round(table, found["what"])
    for size, said in zip(base.size, (found["w"], found["h"]), strict=True):
        if abs(size + 2 * table.stock.seam - float(length(said))) > 1 / 16 + HAIR:
            raise Refused(f"it measures {size + 2 * table.stock.seam}")


@reads(r"Compare each strip with its edge; if they differ, take in or let out a few of its seams by a thread")
def compare_strips(table: Table, found: re.Match[str]) -> None:
    """Care that moves nothing."""


@reads(
    r"Sew a strip to the (?P<a>left|top) edge and a strip to the (?P<b>right|bottom) edge, the tops of the .+ outward"
)
def sew_outward(table: Table, found: re.Match[str]) -> None:
    base = table.result
    if base is None or (found["a"], found["b"]) not in (("left", "right"), ("top", "bottom")):
        raise Refused("nothing is there to be bordered, or those edges do not face each other")
    upright = found["a"] == "left"
    edge = base.size[1] if upright else base.size[0]
    first, second = (_strip(table, found[which], edge) for which in "ab")
    deep = first.size[0 if upright else 1]
    shift = complex(deep, 0) if upright else complex(0, deep)
    far = base.size[0] + deep if upright else (base.size[1] + deep) * 1j
    lying = [*(each.moved(shift) for each in base.lying), *first.lying, *(each.moved(far) for each in second.lying)]
    grown = (base.size[0] + 2 * deep, edge) if upright else (edge, base.size[1] + 2 * deep)
    table.result = Piece(tuple(lying), grown)


def _strip(table: Table, way: str, edge: float) -> Piece:
    """Units end to end along an edge, with a corner square at both ends where top and bottom have them."""
    if way not in table.pieced:
        raise Refused(f"there is no strip for the {way}")
    part, turn, count = table.pieced.pop(way)
    upright = way in ("left", "right")
    corner = None if upright else table.corner
    begin = max(corner.size) if corner else 0.0
    turn *= OUTWARD[way]
    if part.cloth is None and abs(count * part.size[0] + 2 * begin - edge) > HAIR:
        turn *= 1j  # a unit without a picture that the border has turned
    wide, high = turned_size(part.size, turn)
    along, deep = (high, wide) if upright else (wide, high)
    if abs(count * along + 2 * begin - edge) > HAIR:
        raise Refused(f"the strip is {count * along + 2 * begin:g} long, its edge {edge:g}")
    step, across = (1j, deep / 2 + 0j) if upright else (1 + 0j, deep / 2 * 1j)
    lying: list[Lying] = [
        lying_of_part(part, step * (begin + (number + 0.5) * along) + across, turn) for number in range(count)
    ]
    if corner:
        lying += [lying_of_part(corner, step * at + across, 1) for at in (begin / 2, edge - begin / 2)]
        table.corner = corner if table.pieced else None
    return Piece(tuple(lying), (deep, edge) if upright else (edge, deep))
