"""The sizes of a technique: the units of the block at hand, and a table of common sizes."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec.structs import replace

from blockdsl.facts.techniquefacts import TechniqueFacts, TechniqueSection
from blockdsl.geometry import Exact
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.prose import TextStyle, paragraph, rule
from blockdsl.marks.theme import BODY_PT, CONTENT_WIDTH_PT, HAIRLINE_PT, INK, QUIET, SMALL_PT, STEP_PT
from blockdsl.page.flow import Flowable
from blockdsl.page.headings import continued, heading
from blockdsl.page.table import TableCell, TableColumn, lengths_axes, lengths_cell, table_row, words_cell
from blockdsl.wording.lengths import show_length
from blockdsl.wording.lessons import (
    sizes_aside,
    sizes_remark,
    sizes_title,
    table_heads,
    use_words,
    uses_more,
    uses_title,
)
from blockdsl.wording.messages import words_of

_BODY: Final = TextStyle(BODY_PT, "regular", INK)
_BOLD: Final = TextStyle(BODY_PT, "bold", INK)
_HEAD: Final = TextStyle(SMALL_PT, "regular", QUIET)
_MOST_USES: Final = 12
_MOST_BOUND: Final = 20  # a table of no more rows stands on one page


# --- the block at hand -----------------------------------------------------------------------------


def block_uses(section: TechniqueSection) -> list[Flowable]:
    """For each unit of the block that is made in this way a line or two; nothing without a block."""
    if not section.uses:
        return []
    named = len({use.block for use in section.uses}) > 1
    title = uses_title(section)
    flowables = [heading(title)]
    for use in section.uses[:_MOST_USES]:
        height, words = paragraph(fraction_text(use_words(use, named=named)), CONTENT_WIDTH_PT, _BODY)
        flowables.append(Flowable(height + 1.5 * STEP_PT, words, head=(continued(title, words_of(section)),)))
    left_out = len(section.uses) - _MOST_USES
    if left_out > 0:
        height, words = paragraph(uses_more(left_out, section), CONTENT_WIDTH_PT, _BODY)
        flowables.append(Flowable(height, words))
    return flowables


# --- common sizes ----------------------------------------------------------------------------------


def common_sizes(section: TechniqueSection) -> list[Flowable]:
    """A row for each finished size: what to cut, oversized or not, and what the unit should measure."""
    table = section.table
    if not table.rows:
        return []
    heads = table_heads(section)
    rows = [[_shown(lengths, section) for lengths in (row.finished, *row.cuts, row.unfinished)] for row in table.rows]
    width = CONTENT_WIDTH_PT / len(heads)
    columns = [TableColumn(head, width) for head in heads]
    title = sizes_title(section)
    head = _head(columns)
    flowables = [heading(title, aside=fraction_text(sizes_aside(section))), head]
    axes = [lengths_axes([row[place] for row in rows], _BODY)[0] for place in range(len(heads))]
    for number, row in enumerate(rows):
        cells: list[TableCell] = []
        for place, lengths in enumerate(row):
            cells.append(lengths_cell(lengths, axes[place], _BOLD if place == 0 else _BODY))
        row_flowable = table_row(columns, cells, ruled=number > 0)
        bound = len(rows) <= _MOST_BOUND and number < len(rows) - 1
        flowables.append(replace(row_flowable, keep_with_next=bound, head=(continued(title, words_of(section)), head)))
    return flowables


def _shown(lengths: Sequence[Exact], section: TechniqueSection) -> list[str]:
    return [show_length(length, section.unit, words_of(section)) for length in lengths]


def _head(columns: Sequence[TableColumn]) -> Flowable:
    """Heads of one line or more, standing on a rule."""
    cells = [words_cell(column.head, column, _HEAD) for column in columns]
    height = max(cell.height_pt for cell in cells)
    marks: list[Mark] = []
    x = 0.0
    for column, cell in zip(columns, cells, strict=True):
        marks += moved(cell.marks, x, height - cell.height_pt)
        x += column.width_pt
    marks.append(rule(height + STEP_PT / 2, x, QUIET, HAIRLINE_PT))
    return Flowable(height + STEP_PT / 2, tuple(marks), keep_with_next=True)


def size_remark(technique: TechniqueFacts) -> list[Flowable]:
    """What the columns of all the tables mean; nothing without a table."""
    sections = [section for section in technique.sections if section.table.rows]
    if not sections:
        return []
    style = TextStyle(SMALL_PT + 0.5, "regular", QUIET)
    height, words = paragraph(fraction_text(sizes_remark(sections)), CONTENT_WIDTH_PT, style)
    return [Flowable(height, words, before_pt=2.5 * STEP_PT)]
