"""The cutting table as a table of words: by fabric, a row to tick off for each size; columns with no words left out."""

from __future__ import annotations

from typing import Final

from blockdsl.document.parts import (
    ColumnKind,
    DataCell,
    DataColumn,
    RowGroup,
    SizeCell,
    Table,
    TextRun,
    TickCell,
    plain,
)
from blockdsl.document.pictures import swatch_page
from blockdsl.facts.blockfacts import BlockFacts, CutFacts, FabricFacts
from blockdsl.wording.cutting_rows import cuts_by_fabric, format_to_cut, plain_cut_size
from blockdsl.wording.lengths import plain_length
from blockdsl.wording.messages import words_of
from blockdsl.wording.sheet import format_piece, format_purpose, format_subcut

_HEADS: Final[tuple[tuple[str, ColumnKind], ...]] = (
    ("done", "tick"),
    ("cut", "count"),
    ("piece", "words"),
    ("size", "size"),
    ("then", "then"),
    ("patch", "letter"),
    ("for", "purpose"),
    ("spare", "spare"),
)


def cutting_table(facts: BlockFacts, *, finished: str = "") -> Table:
    """The whole table; `finished` is the block's size where a page has a table for each of several."""
    groups = [(fabric, lines, [_row(cut, fabric, facts) for cut in lines]) for fabric, lines in cuts_by_fabric(facts)]
    rows = [row for _, _, of_fabric in groups for row in of_fabric]
    words = words_of(facts)
    kept = [place for place in range(len(_HEADS)) if any(row[place] for row in rows)]
    caption = f"cutting-caption{'-at' if finished else ''}-{facts.unit}"
    return Table(
        words(caption, block=facts.name, finished=finished),
        tuple(DataColumn(words(f"head-{_HEADS[place][0]}"), _HEADS[place][1]) for place in kept),
        tuple(
            RowGroup(
                tuple(tuple(row[place] for place in kept) for row in of_fabric),
                (TextRun(_label(fabric)),),
                swatch_page(fabric),
                format_to_cut(sum(cut.count for cut in lines), words),
            )
            for fabric, lines, of_fabric in groups
        ),
    )


def _label(fabric: FabricFacts) -> str:
    return fabric.label or fabric.name


def _row(cut: CutFacts, fabric: FabricFacts, facts: BlockFacts) -> tuple[DataCell, ...]:
    """A cell for each column; one with nothing to say is empty."""
    words, piece = words_of(facts), format_piece(cut, words_of(facts))
    size = plain_cut_size(cut, facts)
    what = words("cutting-tick", count=cut.count, piece=piece, size=size, fabric=_label(fabric))
    return (
        TickCell(words("site-done", what=what)),
        plain(str(cut.count)),
        plain(piece),
        SizeCell(tuple(plain_length(side, facts.unit, words_of(facts)) for side in cut.sides)),
        _said(format_subcut(cut, facts.unit, words)),
        _said(cut.label),
        _said(format_purpose(cut, words)),
        _said(str(cut.spare) if cut.spare else ""),
    )


def _said(text: str) -> DataCell:
    return plain(text) if text else ()
