"""The cutting table as plain words, for tables in Markdown and CSV, and its order: by fabric, then as listed."""

from __future__ import annotations

from collections.abc import Iterator

from blockdsl.facts.blockfacts import BlockFacts, CutFacts, FabricFacts
from blockdsl.geometry import Exact
from blockdsl.wording.grammar import in_clauses, in_thousands
from blockdsl.wording.lengths import plain_length
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.sheet import format_piece, format_purpose, format_subcut

Cell = str | int | Exact
"""What stands in a place of a spreadsheet."""


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
    rows = [
        (before[0], str(before[1]), before[2], plain_cut_size(cut, facts), *after[:-1], str(after[-1] or ""))
        + ((in_clauses(cut.cutters, words_of(facts)),) if facts.cutters else ())
        for cut, before, after in _lines(facts)
    ]
    return _heads(facts, "size"), rows


def cutting_cells(facts: BlockFacts) -> tuple[tuple[str, ...], list[tuple[Cell, ...]]]:
    """The same with its numbers as numbers, for a spreadsheet: how many, and width and height in the block's unit."""
    rows: list[tuple[Cell, ...]] = [
        (*before, cut.sides[0], cut.sides[-1], *after)
        + ((in_clauses(cut.cutters, words_of(facts)),) if facts.cutters else ())
        for cut, before, after in _lines(facts)
    ]
    return _heads(facts, "width", "height"), rows


def _heads(facts: BlockFacts, *sizes: str) -> tuple[str, ...]:
    names = ("fabric", "cut", "piece", *sizes, "then", "patch", "for", "spare")
    return tuple(words_of(facts)(f"head-{name}") for name in ((*names, "cutter") if facts.cutters else names))


def _lines(facts: BlockFacts) -> Iterator[tuple[CutFacts, tuple[str, int, str], tuple[str, str, str, int]]]:
    """Each line of the table: what stands before its size, and after it."""
    words = words_of(facts)
    for fabric, cuts in cuts_by_fabric(facts):
        for cut in cuts:
            then = format_subcut(cut, facts.unit, words)
            before = fabric.label, cut.count, format_piece(cut, words)
            yield cut, before, (then, cut.label, format_purpose(cut, words), cut.spare)


def format_to_cut(pieces: int, words: Messages) -> str:
    """`24 pieces to cut`."""
    return words("cutting-to-cut", count=pieces, number=in_thousands(pieces, words))
