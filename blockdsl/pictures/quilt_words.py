"""What is said of a quilt's pictures and pieces."""

from __future__ import annotations

from typing import Final

from blockdsl.facts.blockfacts import RulerUnit
from blockdsl.facts.quiltfacts import QuiltFacts, QuiltKindFacts, QuiltPieceFacts, RingFacts
from blockdsl.geometry import to_float
from blockdsl.geometry.fraction import Fraction
from blockdsl.pictures.lengths import plain_extent, plain_length
from blockdsl.pictures.words import many

_SETTINGS: Final = {
    "straight": "straight setting",
    "dropped columns": "dropped columns",
    "on point": "set on point",
    "strippy": "strippy setting",
    "rows": "rows as written",
    "medallion": "medallion",
}


def say_setting(facts: QuiltFacts) -> str:
    """The setting and its count: `straight setting, 4 × 6`."""
    name = _SETTINGS[facts.setting]
    return name if facts.setting in {"medallion", "rows"} else f"{name}, {facts.across} × {facts.down}"


def say_blocks(facts: QuiltFacts) -> str:
    """The blocks by name: `22 Harbour Light`."""
    told = [f"{count} {name}" for name, count in (*facts.blocks, *facts.half_blocks)]
    return ", ".join(told)


def title_of(kind: QuiltKindFacts) -> str:
    """A block's name as it stands; a unit of a border with a capital, as units have it on the sheets of blocks."""
    return kind.name[:1].upper() + kind.name[1:] if kind.role == "border unit" else kind.name


def say_strips_of_ring(facts: QuiltFacts, ring: RingFacts) -> str:
    """What is cut for a plain border, and how much of each length is to spare. Nothing of one whose step says it."""
    if ring.corners == "mitred":
        return ""
    pieces = sorted(
        (piece for piece in facts.pieces if piece.ring == ring.number), key=lambda piece: _turn_of(piece, ring)
    )
    sizes = ", ".join(_say_strip(piece, ring, facts.unit) for piece in pieces)
    if not sizes:
        return ""
    spare = max((piece.to_spare for piece in pieces), default=Fraction(0))
    more = f" Each strip has {plain_length(spare, facts.unit)} {facts.unit} to spare." if spare else ""
    return f"In the cutting list: {sizes}.{more}"


_NAMES: Final = {"sides": "for the sides", "ends": "for top and bottom", "corners": "for the corners", "all": ""}


def _say_strip(piece: QuiltPieceFacts, ring: RingFacts, unit: RulerUnit) -> str:
    """`2 of 3 1/2 × 80 1/2 in for the sides`; a square says its side once."""
    short, long = min(piece.cut), max(piece.cut)
    size = plain_length(short, unit) if short == long else plain_extent((short, long), unit)
    return f"{piece.pieces} of {size} {unit} {_NAMES[_place_of(piece, ring)]}".rstrip()


def _turn_of(piece: QuiltPieceFacts, ring: RingFacts) -> int:
    """When a piece is sewn on: first or second, corners last."""
    order = ("all", "sides", "ends", "corners") if ring.sides_first else ("all", "ends", "sides", "corners")
    return order.index(_place_of(piece, ring))


def _place_of(piece: QuiltPieceFacts, ring: RingFacts) -> str:
    """Where a piece of a plain border lies; all four strips of a square one are alike."""
    if piece.role == "border corner":
        return "corners"
    if piece.count == 4:
        return "all"
    sides, ends = (ring.after if ring.corners == "mitred" else ring.before)[1], ring.after[0]
    if ring.corners != "mitred" and not ring.sides_first:
        sides = ring.after[1]
    return "sides" if max(piece.finished, key=to_float) == sides and sides != ends else "ends"


def say_quilt_picture(facts: QuiltFacts) -> str:
    """Alternative text of the whole quilt."""
    size = f"{plain_extent(facts.finished, facts.unit)} {facts.unit} finished"
    rings = many(len(facts.rings), "border") if facts.rings else "no border"
    return f"The quilt {facts.name}: {say_setting(facts)}, {say_blocks(facts)}, {rings}, {size}."


def say_rows_picture(facts: QuiltFacts) -> str:
    """Alternative text of the rows drawn apart."""
    return f"The {many(len(facts.rows), 'row')} of {facts.name} drawn apart, in the order in which they are joined."
