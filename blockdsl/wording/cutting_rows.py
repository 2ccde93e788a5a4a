"""The cutting table as plain words, for tables in Markdown and CSV, and its order: by fabric, then as listed."""

from __future__ import annotations

from blockdsl.facts.blockfacts import BlockFacts, CutFacts, FabricFacts
from blockdsl.wording.grammar import in_clauses, in_thousands
from blockdsl.wording.lengths import plain_length
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.sheet import format_piece, format_purpose, format_subcut

_HEADS = ("fabric", "cut", "piece", "size", "then", "patch", "for", "spare")


def cuts_by_fabric(facts: BlockFacts) -> list[tuple[FabricFacts, list[CutFacts]]]:
    """Each fabric of the block that something is cut from, with its lines of the cutting table."""
    groups = [(fabric, [cut for cut in facts.cutting if cut.fabric == fabric.name]) for fabric in facts.fabrics]
    return [(fabric, cuts) for fabric, cuts in groups if cuts]


def plain_cut_size(cut: CutFacts, facts: BlockFacts) -> str:
    """What the ruler reads, with ordinary fractions: `2 7/8 in` for a square, `2 × 3 1/2 in` for anything else."""
    words = words_of(facts)
    size = " × ".join(plain_length(side, facts.unit, words) for side in cut.sides)
    return words("length", length=size, unit=facts.unit)


def cutting_rows(facts: BlockFacts) -> tuple[tuple[str, ...], list[tuple[str, ...]]]:
    """Headers and rows of the cutting table; sizes carry their unit, empty cells are empty words.

    A maker who has declared cutters of her own has a last column for them.
    """
    words = words_of(facts)
    rows: list[tuple[str, ...]] = [
        (
            fabric.label,
            str(cut.count),
            format_piece(cut, words),
            plain_cut_size(cut, facts),
            format_subcut(cut, facts.unit, words),
            cut.label,
            format_purpose(cut, words),
            str(cut.spare) if cut.spare else "",
            *((in_clauses(cut.cutters, words),) if facts.cutters else ()),
        )
        for fabric, cuts in cuts_by_fabric(facts)
        for cut in cuts
    ]
    heads = tuple(words(f"head-{name}") for name in ((*_HEADS, "cutter") if facts.cutters else _HEADS))
    return heads, rows


def format_to_cut(pieces: int, words: Messages) -> str:
    """`24 pieces to cut`."""
    return words("cutting-to-cut", count=pieces, number=in_thousands(pieces, words))
