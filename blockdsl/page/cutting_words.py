"""The cutting table as plain words, for tables in Markdown and CSV, and its order: by fabric, then as listed."""

from __future__ import annotations

from typing import Final

from blockdsl.facts.blockfacts import BlockFacts, CutFacts, FabricFacts
from blockdsl.pictures.lengths import plain_length
from blockdsl.pictures.words import say_piece, say_purpose, say_subcut

HEADERS: Final = ("fabric", "cut", "piece", "size", "then", "patch", "for", "spare")


def cuts_by_fabric(facts: BlockFacts) -> list[tuple[FabricFacts, list[CutFacts]]]:
    """Each fabric of the block that something is cut from, with its lines of the cutting table."""
    groups = [(fabric, [cut for cut in facts.cutting if cut.fabric == fabric.name]) for fabric in facts.fabrics]
    return [(fabric, cuts) for fabric, cuts in groups if cuts]


def plain_cut_size(cut: CutFacts, facts: BlockFacts) -> str:
    """What the ruler reads, with ordinary fractions: `2 7/8 in` for a square, `2 × 3 1/2 in` for anything else."""
    sides = cut.sides
    return f"{' × '.join(plain_length(side, facts.unit) for side in sides)} {facts.unit}"


def cutting_rows(facts: BlockFacts) -> tuple[tuple[str, ...], list[tuple[str, ...]]]:
    """Headers and rows of the cutting table; sizes carry their unit, empty cells are empty words.

    A maker who has declared cutters of her own has a last column for them.
    """
    rows: list[tuple[str, ...]] = [
        (
            fabric.label,
            str(cut.count),
            say_piece(cut),
            plain_cut_size(cut, facts),
            say_subcut(cut, facts.unit),
            cut.label,
            say_purpose(cut),
            str(cut.spare) if cut.spare else "",
            *(("; ".join(cut.cutters),) if facts.cutters else ()),
        )
        for fabric, cuts in cuts_by_fabric(facts)
        for cut in cuts
    ]
    return (*HEADERS, "cutter") if facts.cutters else HEADERS, rows
