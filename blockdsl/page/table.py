"""A table as flowables: a head that is said again on each page, groups, rows of cells with thin rules between."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final, Literal

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.prose import TextStyle, line, line_ending, paragraph, rectangle, rule, width_of
from blockdsl.marks.theme import HAIRLINE_PT, INK, QUIET, RULE, SMALL_PT, STEP_PT
from blockdsl.page.flow import Flowable

PADDING_PT: Final = 3.0
TICK_PT: Final = 8.0
_HEAD: Final = TextStyle(SMALL_PT, "regular", QUIET)


class TableColumn(Struct, frozen=True):
    """A column of a table; `gap_pt` is the white at its right, within its width."""

    head: str
    width_pt: float
    align: Literal["left", "right"] = "left"
    gap_pt: float = 2 * STEP_PT


class TableCell(Struct, frozen=True):
    """What stands in a column: its height and its marks, from (0, 0)."""

    height_pt: float
    marks: tuple[Mark, ...] = ()


EMPTY: Final = TableCell(0.0)


def words_cell(text: str, column: TableColumn, style: TextStyle) -> TableCell:
    """Words broken to the column's width, or ending at its right."""
    room = column.width_pt - column.gap_pt
    if column.align == "right":
        return TableCell(style.line_pt, line_ending(text, room, style.baseline_pt, style))
    return TableCell(*paragraph(text, room, style)) if text else EMPTY


def tick_cell(style: TextStyle, side_pt: float = TICK_PT) -> TableCell:
    """An empty box to tick, level with the capitals of a line in that style."""
    top = style.baseline_pt - style.capitals_pt / 2 - side_pt / 2
    return TableCell(style.line_pt, (rectangle(0.0, top, side_pt, side_pt, stroke=INK, stroke_width_pt=0.7),))


def aligned_parts(lengths: Sequence[str]) -> list[tuple[str, str]]:
    """Each length as the part that ends at the column's axis and the part that starts there.

    `2 ⁷⁄₈` is ("2", "⁷⁄₈"), `⁷⁄₈` ("", "⁷⁄₈"), `7.5` ("7", ".5"), `3` ("3", "").
    """
    parts = []
    for length in lengths:
        if "⁄" in length:
            whole, _, fraction = length.rpartition(" ")
            parts.append((whole, fraction))
        else:
            whole, point, rest = length.partition(".")
            parts.append((whole, point + rest))
    return parts


def lengths_cell(lengths: Sequence[str], axes: Sequence[tuple[float, float]], style: TextStyle) -> TableCell:
    """One or two lengths, the whole numbers ending and the fractions beginning at common axes, × between.

    `axes` holds for each length its axis and, for all but the first, the place of the × before it.
    """
    marks: list[Mark] = []
    for (whole, rest), (axis, times) in zip(aligned_parts(lengths), axes, strict=False):
        gap = 0.0 if rest.startswith(".") else 1.5
        marks += line_ending(whole, axis, style.baseline_pt, style)
        marks += line(rest, axis + gap, style.baseline_pt, style)
        if times:
            marks += line("×", times, style.baseline_pt, style)
    return TableCell(style.line_pt, tuple(marks))


def lengths_axes(rows: Sequence[Sequence[str]], style: TextStyle) -> tuple[list[tuple[float, float]], float]:
    """Axes that suit all the rows, for `lengths_cell`, and the width that they take."""
    axes: list[tuple[float, float]] = []
    x = 0.0
    for place in range(max((len(row) for row in rows), default=0)):
        parts = aligned_parts([row[place] for row in rows if len(row) > place])
        times = 0.0
        if place:
            times = x + STEP_PT
            x = times + width_of("×", style) + STEP_PT
        x += max(width_of(whole, style) for whole, _ in parts)
        axes.append((x, times))
        x += max(width_of(rest, style) + (1.5 if rest else 0.0) for _, rest in parts)
    return axes, x


def table_head(columns: Sequence[TableColumn]) -> Flowable:
    """The names of the columns over a rule; bound to the first row."""
    marks: list[Mark] = []
    x = 0.0
    for column in columns:
        cell = words_cell(column.head, column, _HEAD)
        marks += moved(cell.marks, x, 0.0)
        x += column.width_pt
    height = _HEAD.line_pt + STEP_PT / 2
    marks.append(rule(height, x, QUIET, HAIRLINE_PT))
    return Flowable(height, tuple(marks), keep_with_next=True)


def table_row(columns: Sequence[TableColumn], cells: Sequence[TableCell], *, ruled: bool = True) -> Flowable:
    """One row, as tall as its tallest cell, with a pale rule above it unless it follows a head."""
    marks: list[Mark] = []
    x = 0.0
    height = max(cell.height_pt for cell in cells) + 2 * PADDING_PT
    for column, cell in zip(columns, cells, strict=True):
        marks += moved(cell.marks, x, PADDING_PT)
        x += column.width_pt
    if ruled:
        marks.append(rule(0.0, x, RULE, HAIRLINE_PT))
    return Flowable(height, tuple(marks))


def grouped(head: Flowable, group: Flowable, rows: Sequence[Flowable], continued: Flowable) -> list[Flowable]:
    """A group's name and its rows, ready for the flow: what is said again on a new page is bound to each."""
    whole = [replace(group, keep_with_next=True, head=(head,))]
    whole += [replace(row, head=(head, continued)) for row in rows]
    if len(whole) > 2:  # the last two rows stay together: no row stands alone on a page
        whole[-2] = replace(whole[-2], keep_with_next=True)
    return whole
