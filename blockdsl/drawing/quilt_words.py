"""What is said of a quilt's pictures and pieces."""

from __future__ import annotations

from typing import Final

from blockdsl.drawing.lengths import plain_extent
from blockdsl.drawing.words import many
from blockdsl.facts.quiltfacts import QuiltFacts, RingFacts

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


def say_strips_of_ring(facts: QuiltFacts, ring: RingFacts) -> str:
    """What is cut for a plain border; of a mitred one that the lengths are exact. Nothing of a pieced one.

    To cut mitred strips longer and to trim them: common practice, no source.
    """
    pieces = [piece for piece in facts.pieces if piece.ring == ring.number]
    sizes = ", ".join(
        f"{piece.pieces} of {plain_extent((min(piece.cut), max(piece.cut)), facts.unit)} {facts.unit}"
        for piece in pieces
    )
    if not sizes:
        return ""
    extra = "2 in" if facts.unit == "in" else "5 cm"
    mitred = (
        f" These lengths are exact, from tip to tip: where your cloth allows, cut each {extra} longer and trim "
        "the ends when the mitres are sewn."
    )
    return f"In the cutting list: {sizes}.{mitred if ring.corners == 'mitred' else ''}"


def say_quilt_picture(facts: QuiltFacts) -> str:
    """Alternative text of the whole quilt."""
    size = f"{plain_extent(facts.finished, facts.unit)} {facts.unit} finished"
    rings = many(len(facts.rings), "border") if facts.rings else "no border"
    return f"The quilt {facts.name}: {say_setting(facts)}, {say_blocks(facts)}, {rings}, {size}."


def say_rows_picture(facts: QuiltFacts) -> str:
    """Alternative text of the rows drawn apart."""
    return f"The {many(len(facts.rows), 'row')} of {facts.name} drawn apart, in the order in which they are joined."
