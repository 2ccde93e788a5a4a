"""The cutting table as a table of words: by fabric, a row to tick off for each size; columns with no words left out."""

from __future__ import annotations

from typing import Final

from blockdsl.document.parts import Cell, Column, RowGroup, Run, SizeCell, Table, TickCell, plain
from blockdsl.document.pictures import swatch_page
from blockdsl.facts.blockfacts import BlockFacts, CutFacts, FabricFacts
from blockdsl.page.cutting_words import cuts_by_fabric, plain_cut_size
from blockdsl.pictures.lengths import plain_length
from blockdsl.pictures.words import many, say_piece, say_purpose, say_subcut

_COLUMNS: Final = (
    Column("done", "tick"),
    Column("cut", "count"),
    Column("piece", "words"),
    Column("size", "size"),
    Column("then", "then"),
    Column("patch", "letter"),
    Column("for", "purpose"),
    Column("spare", "spare"),
)


def cutting_table(facts: BlockFacts, *, finished: str = "") -> Table:
    """The whole table; `finished` is the block's size where a page has a table for each of several."""
    groups = [(fabric, lines, [_row(cut, fabric, facts) for cut in lines]) for fabric, lines in cuts_by_fabric(facts)]
    rows = [row for _, _, of_fabric in groups for row in of_fabric]
    unit = "inches" if facts.unit == "in" else "centimetres"
    kept = [place for place in range(len(_COLUMNS)) if any(row[place] for row in rows)]
    return Table(
        f"Pieces for {facts.name}{f', {finished} finished' if finished else ''}: sizes in {unit}, with seam allowance",
        tuple(_COLUMNS[place] for place in kept),
        tuple(
            RowGroup(
                tuple(tuple(row[place] for place in kept) for row in of_fabric),
                (Run(_label(fabric)),),
                swatch_page(fabric),
                f"{many(sum(cut.count for cut in lines), 'piece')} to cut",
            )
            for fabric, lines, of_fabric in groups
        ),
    )


def _label(fabric: FabricFacts) -> str:
    return fabric.label or fabric.name


def _row(cut: CutFacts, fabric: FabricFacts, facts: BlockFacts) -> tuple[Cell, ...]:
    """A cell for each column; one with nothing to say is empty."""
    sides = cut.sides
    what = f"{cut.count} {say_piece(cut)} {plain_cut_size(cut, facts)}, {_label(fabric)}"
    return (
        TickCell(what),
        plain(str(cut.count)),
        plain(say_piece(cut)),
        SizeCell(tuple(plain_length(side, facts.unit) for side in sides)),
        _said(say_subcut(cut, facts.unit)),
        _said(cut.label),
        _said(say_purpose(cut)),
        _said(str(cut.spare) if cut.spare else ""),
    )


def _said(text: str) -> Cell:
    return plain(text) if text else ()
