"""A top sewn by its words, held against the quilt of the facts."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from tests.outside.reader import topmitred, toponpoint, toppieced
from tests.outside.reader.cloth import pattern_of
from tests.outside.reader.sentences import Step
from tests.outside.reader.stock import point
from tests.outside.reader.tops import Lying, Piece, lying_of_part, sew_top, turned_size
from tests.outside.reader.topstock import TopStock, top_stock
from tests.outside.reader.words import Refused

EIGHTH = (1 + 1j) / 2**0.5
"""Half of a quarter turn clockwise."""
KINDS = (topmitred, toponpoint, toppieced)
"""Each adds the sentences that it can read."""


def compare_top(piece: Piece, quilt: Mapping[str, Any], stock: TopStock) -> None:
    """Nothing where every block and every piece of cloth lies where it should.

    Errors: Refused where one does not, or something is left.
    """
    left = [min(part.names) for part in stock.parts if stock.left[part.key]]
    if left:
        raise Refused(f"left over: {', '.join(left)}")
    sewn = {_place(lying) for lying in piece.lying}
    wanted = set()
    for placed in quilt["placed"]:
        part = next(p for p in stock.parts if p.key == ("block", placed["kind"], placed["colourway"]))
        turn = 1j ** (placed["turns"].count(">") - placed["turns"].count("<"))
        if placed["on_point"]:  # its first corner is the topmost
            turn *= EIGHTH
            wanted.add(_place(lying_of_part(part, point(placed["at"]) + abs(complex(*part.size)) / 2 * 1j, turn)))
            continue
        size = complex(*turned_size(part.size, turn))
        wanted.add(_place(lying_of_part(part, point(placed["at"]) + size / 2, turn)))
    for cloth in quilt["cloth"]:
        part = next(p for p in stock.parts if p.key == ("cloth", cloth["piece"], ""))
        points = tuple(map(point, cloth["outline"]))
        wanted.add((part.key[:1], part.fabric, frozenset(map(_rounded, points)), None))
    if sewn != wanted:
        raise Refused(f"{len(wanted - sewn)} of {len(wanted)} parts lie elsewhere")


def _place(lying: Lying) -> tuple[object, ...]:
    pattern = pattern_of(lying.part.cloth.patches(lying.turn)) if lying.part.cloth else None
    return lying.part.key[:1], lying.part.fabric, frozenset(map(_rounded, lying.points)), pattern


def _rounded(at: complex) -> tuple[int, int]:
    return round(at.real * 487.3137), round(at.imag * 487.3137)


def check_top(document: Mapping[str, Any], quilt: Mapping[str, Any]) -> None:
    """Sew a quilt's top by its words and hold it against the quilt."""
    steps = [Step(s["number"], s["title"], s["text"]) for s in quilt["steps"] if s["of_top"]]
    stock = top_stock(quilt, document)
    compare_top(sew_top(steps, stock), quilt, stock)
