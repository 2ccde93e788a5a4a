"""The sizes of a technique: the units of the block at hand, and a table of common sizes."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from typing import Final

from blockdsl.drawing.flow import Slice, moved
from blockdsl.drawing.lengths import show_extent, show_length, show_measure
from blockdsl.drawing.marks import Mark
from blockdsl.drawing.prose import Style, continued, heading, paragraph, rule
from blockdsl.drawing.table import Cell, Column, lengths_axes, lengths_cell, table_row, words_cell
from blockdsl.drawing.theme import BODY_PT, CONTENT_WIDTH_PT, HAIRLINE_PT, INK, QUIET, SMALL_PT, STEP_PT
from blockdsl.drawing.words import many, say_piece
from blockdsl.facts.blockfacts import CutFacts, RulerUnit
from blockdsl.facts.techniquefacts import TechniqueFacts, TechniqueSection, UnitUse
from blockdsl.geometry import Exact

_BODY: Final = Style(BODY_PT, "regular", INK)
_BOLD: Final = Style(BODY_PT, "bold", INK)
_HEAD: Final = Style(SMALL_PT, "regular", QUIET)
_MOST_USES: Final = 12
_MOST_BOUND: Final = 20  # a table of no more rows stands on one page


# --- the block at hand -----------------------------------------------------------------------------


def block_uses(technique: TechniqueFacts, section: TechniqueSection) -> list[Slice]:
    """For each unit of the block that is made in this way a line or two; nothing without a block."""
    if not section.uses:
        return []
    names = list(dict.fromkeys(use.block for use in section.uses))
    title = f"{section.title} in {'these blocks' if len(names) > 1 else names[0]}"
    slices = [heading(title)]
    for use in section.uses[:_MOST_USES]:
        height, words = paragraph(_say_use(use, technique.method, named=len(names) > 1), CONTENT_WIDTH_PT, _BODY)
        slices.append(Slice(height + 1.5 * STEP_PT, words, head=(continued(title),)))
    left_out = len(section.uses) - _MOST_USES
    if left_out > 0:
        height, words = paragraph(f"{many(left_out, 'more unit')} of other sizes or fabrics.", CONTENT_WIDTH_PT, _BODY)
        slices.append(Slice(height, words))
    return slices


def _say_use(use: UnitUse, method: str, *, named: bool) -> str:
    unit = use.unit
    block = f"{use.block}: " if named else ""
    spare = f" ({use.spare} spare)" if use.spare else ""
    title = use.title if named else _capital(use.title)
    head = f"{block}{title}, make {use.count}{spare}, {show_extent(use.finished, unit)} finished."
    cuts = ", ".join(_say_cut(cut, use, unit) for cut in use.cuts)
    whole = " for the whole block" if method == "cut patches" else ""
    cut = f" Cut{whole} {cuts}." if cuts else ""
    return f"{head}{cut} Each should measure {show_extent(use.unfinished, unit)} before it is joined."


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]


def _say_cut(cut: CutFacts, use: UnitUse, unit: RulerUnit) -> str:
    size = show_measure(cut.cut[0], unit) if cut.piece == "square" else show_extent(cut.cut, unit)
    subcut = {"none": "", "once": ", cut once", "twice": ", cut twice"}[cut.subcut]
    return f"{cut.count} {use.fabrics.get(cut.fabric, cut.fabric)} {say_piece(cut)} {size}{subcut}"


# --- common sizes ----------------------------------------------------------------------------------


def common_sizes(section: TechniqueSection) -> list[Slice]:
    """A row for each finished size: what to cut, roomy or not, and what the unit should measure."""
    table = section.table
    if not table.rows:
        return []
    unit = section.unit
    heads = ("Finished", *table.heads, "Should measure")
    rows = [[_shown(lengths, unit) for lengths in (row.finished, *row.cuts, row.unfinished)] for row in table.rows]
    width = CONTENT_WIDTH_PT / len(heads)
    columns = [Column(head, width) for head in heads]
    title = f"{section.title}: common sizes"
    head = _head(columns)
    measured = "inches" if unit == "in" else "centimetres"
    slices = [heading(title, aside=f"in {measured}, seam allowance {show_measure(section.seam, unit)}"), head]
    axes = [lengths_axes([row[place] for row in rows], _BODY)[0] for place in range(len(heads))]
    for number, row in enumerate(rows):
        cells: list[Cell] = []
        for place, lengths in enumerate(row):
            cells.append(lengths_cell(lengths, axes[place], _BOLD if place == 0 else _BODY))
        row_slice = table_row(columns, cells, ruled=number > 0)
        bound = len(rows) <= _MOST_BOUND and number < len(rows) - 1
        slices.append(replace(row_slice, keep=bound, head=(continued(title), head)))
    return slices


def _shown(lengths: Sequence[Exact], unit: RulerUnit) -> list[str]:
    return [show_length(length, unit) for length in lengths]


def _head(columns: Sequence[Column]) -> Slice:
    """Heads of one line or more, standing on a rule."""
    cells = [words_cell(column.head, column, _HEAD) for column in columns]
    height = max(cell.height_pt for cell in cells)
    marks: list[Mark] = []
    x = 0.0
    for column, cell in zip(columns, cells, strict=True):
        marks += moved(cell.marks, x, height - cell.height_pt)
        x += column.width_pt
    marks.append(rule(height + STEP_PT / 2, x, QUIET, HAIRLINE_PT))
    return Slice(height + STEP_PT / 2, tuple(marks), keep=True)


def size_remark(technique: TechniqueFacts) -> list[Slice]:
    """What the columns of all the tables mean, and how a block asks for roomy pieces; nothing without a table."""
    sections = [section for section in technique.sections if section.table.rows]
    if not sections:
        return []
    seam = _either(show_measure(section.seam, section.unit) for section in sections)
    text = (
        "Finished: as it measures in the sewn block. Should measure: before it is joined, "
        f"with a seam allowance of {seam} on every side."
    )
    extra = _either(show_measure(each.table.roomy, each.unit) for each in sections if each.table.roomy)
    if extra:
        text += (
            f" Roomy: cut so that every unit comes out at least {extra} too large and is trimmed to what it should "
            f"measure; a block asks for it with the line “trim {extra}”."
        )
    height, words = paragraph(text, CONTENT_WIDTH_PT, Style(SMALL_PT + 0.5, "regular", QUIET))
    return [Slice(height, words, before_pt=2.5 * STEP_PT)]


def _either(words: Iterable[str]) -> str:
    return " or ".join(dict.fromkeys(words))
