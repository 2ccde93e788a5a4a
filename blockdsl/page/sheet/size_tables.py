"""One block at several sizes: a table of the sizes, and one cutting table with a column for each.

Where the sizes are cut alike (the same pieces, as many, made the same way) they share a table; others follow apart.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec.structs import replace

from blockdsl.facts.blockfacts import BlockFacts, CutFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.prose import TextStyle, width_of
from blockdsl.marks.theme import ACCENT, BODY_PT, CONTENT_WIDTH_PT, INK, QUIET, SMALL_PT, STEP_PT
from blockdsl.page.flow import Flowable
from blockdsl.page.headings import heading
from blockdsl.page.sheet.cutting import cut_sides, cutting_table, fabric_group, head_again
from blockdsl.page.table import (
    EMPTY,
    TableCell,
    TableColumn,
    grouped,
    lengths_axes,
    lengths_cell,
    table_head,
    table_row,
    words_cell,
)
from blockdsl.wording.cutting_rows import cuts_by_fabric
from blockdsl.wording.grammar import listed
from blockdsl.wording.lengths import plain_extent, show_extent, show_length, show_measure
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.sheet import format_piece, format_purpose, format_sides, format_subcut

_NUMBER: Final = TextStyle(BODY_PT, "bold", INK)
_BODY: Final = TextStyle(BODY_PT, "regular", INK)
_LETTER: Final = TextStyle(BODY_PT, "bold", ACCENT)
_QUIET: Final = TextStyle(BODY_PT, "regular", QUIET)
_SMALL: Final = TextStyle(SMALL_PT, "regular", QUIET)
_GAP_PT: Final = 3 * STEP_PT
_SIZE_HEADS: Final = ("finished", "unfinished", "grid", "cells", "seam", "ruler")
_MOST_SIZE_GAP_PT: Final = 30.0
_MOST_LETTERS_PT: Final = 60.0
_MOST_PURPOSE_PT: Final = 118.0
_MOST_THEN_PT: Final = 240.0
_LEAST_THEN_PT: Final = 110.0
_MOST_EXTRA_PT: Final = 22.0


def format_size(facts: BlockFacts | QuiltFacts) -> str:
    """What a size is called: `9 in`, or `6 × 9 in` when the block is no square."""
    if facts.finished[0] == facts.finished[1]:
        return show_measure(facts.finished[0], facts.unit, words_of(facts))
    return show_extent(facts.finished, facts.unit, words_of(facts))


def format_sizes(sizes: Sequence[BlockFacts]) -> str:
    """All sizes in a row: `6, 9, and 12 in`; unit by unit."""
    words, told = words_of(sizes[0]), []
    for unit in dict.fromkeys(facts.unit for facts in sizes):
        of_unit = [facts for facts in sizes if facts.unit == unit]
        figures = listed([_size_in_figures(facts) for facts in of_unit], words)
        told.append(words("length", length=figures, unit=unit))
    return listed(told, words) if len(sizes) == len(told) else ", ".join(told)


def _size_in_figures(facts: BlockFacts) -> str:
    """A size without its unit: `9`, or `6 × 9` when the block is no square."""
    words = words_of(facts)
    if facts.finished[0] == facts.finished[1]:
        return show_length(facts.finished[0], facts.unit, words)
    return fraction_text(plain_extent(facts.finished, facts.unit, words))


def size_table(sizes: Sequence[BlockFacts]) -> list[Flowable]:
    """A row for each size: finished, unfinished, the squares of the grid, the seam allowance, the ruler's measure."""
    heads = tuple(words_of(sizes[0])(f"sizes-head-{name}") for name in _SIZE_HEADS)
    rows = [_size_row(facts) for facts in sizes]
    needs = [max(width_of(words, _NUMBER) for words in column) + 1 for column in zip(heads, *rows, strict=True)]
    extra = min((CONTENT_WIDTH_PT - sum(needs)) / (len(needs) - 1), _MOST_SIZE_GAP_PT)
    if extra < STEP_PT:  # very long measures: the ruler and the seam are told with the sizes in front
        return size_table_of(heads[:4], [row[:4] for row in rows], [CONTENT_WIDTH_PT / 4] * 4, STEP_PT)
    widths = [need + extra for need in needs]
    widths[-1] += CONTENT_WIDTH_PT - sum(widths)
    return size_table_of(heads, rows, widths, extra)


def size_table_of(
    heads: Sequence[str], rows: Sequence[Sequence[str]], widths: Sequence[float], gap_pt: float
) -> list[Flowable]:
    """A table whose first column is bold, all of it bound together."""
    gaps = [*(min(gap_pt - 0.5, width / 2) for width in widths[:-1]), 0.0]  # nothing comes after the last
    columns = [TableColumn(head, width, gap_pt=gap) for head, width, gap in zip(heads, widths, gaps, strict=True)]
    flowables = [table_head(columns)]
    for place, row in enumerate(rows):
        cells = [
            words_cell(words, column, _BODY if number else _NUMBER)
            for number, (words, column) in enumerate(zip(row, columns, strict=True))
        ]
        flowables.append(replace(table_row(columns, cells, ruled=place > 0), keep_with_next=True))
    return flowables


def _size_row(facts: BlockFacts) -> tuple[str, ...]:
    words = words_of(facts)
    cell = unfinished_cell = words("sizes-uneven")
    if facts.cell is not None:
        one, other = facts.cell
        grown = (one + 2 * facts.seam, other + 2 * facts.seam)
        finished, unfinished_cell = (
            format_sides(size, facts.unit, words, square=one == other) for size in (facts.cell, grown)
        )
        cell = words("sizes-cells", columns=facts.grid[0], rows=facts.grid[1], size=finished)
    return (
        show_extent(facts.finished, facts.unit, words_of(facts)),
        show_extent(facts.unfinished, facts.unit, words_of(facts)),
        cell,
        unfinished_cell,
        show_measure(facts.seam, facts.unit, words_of(facts)),
        show_measure(facts.measure, facts.unit, words_of(facts)),
    )


def cutting_tables(sizes: Sequence[BlockFacts]) -> list[Flowable]:
    """The cutting of all sizes; nothing when there is nothing to cut."""
    flowables: list[Flowable] = []
    alike: dict[object, list[BlockFacts]] = {}
    for facts in sizes:
        alike.setdefault(_way_of_cutting(facts), []).append(facts)
    for group in alike.values():
        for part in _that_fit(group):
            words = words_of(part[0])
            alone = len(part) == len(sizes)
            named = words("cutting") if alone else words("sizes-cutting-for", sizes=format_sizes(part))
            flowables += _together(part, named) if len(part) > 1 else _alone(part[0], named)
    return flowables


def _way_of_cutting(facts: BlockFacts) -> object:
    """Equal for sizes that differ in nothing but the sizes of their pieces."""
    return tuple(
        (
            cut.fabric,
            cut.label,
            cut.piece,
            cut.subcut,
            cut.method,
            cut.unit,
            cut.count,
            cut.yields,
            cut.spare,
            cut.slant,
            cut.upright,
            cut.print_up,
            cut.strip and cut.strip.strips,
        )
        for cut in facts.cutting
    )


def _alone(facts: BlockFacts, named: str) -> list[Flowable]:
    """The table of one size, as on its sheet, under its own heading."""
    flowables = cutting_table(facts)
    aside = words_of(facts)(f"cutting-sizes-{facts.unit}")
    return [heading(named, aside=aside), *flowables[1:]] if flowables else []


def _that_fit(sizes: Sequence[BlockFacts]) -> list[Sequence[BlockFacts]]:
    """The sizes in as few groups as the page's width allows."""
    if len(sizes) == 1 or _free_pt(sizes) >= 0:
        return [sizes]
    middle = (len(sizes) + 1) // 2
    return [*_that_fit(sizes[:middle]), *_that_fit(sizes[middle:])]


def _free_pt(sizes: Sequence[BlockFacts]) -> float:
    return CONTENT_WIDTH_PT - sum(column.width_pt for column in _columns(sizes)[0])


def _columns(sizes: Sequence[BlockFacts]) -> tuple[list[TableColumn], list[list[tuple[float, float]]]]:
    """The columns as narrow as their words allow, and the axes of each column of sizes."""
    cuts, words = sizes[0].cutting, words_of(sizes[0])
    heads = {name: words(f"head-{name}") for name in ("cut", "piece", "then", "patch", "for")}

    def need(texts: Sequence[str], head: str, style: TextStyle) -> float:
        return max(*(width_of(text, style) for text in texts), width_of(head, _SMALL)) + _GAP_PT + 1

    count = TableColumn(heads["cut"], need([str(cut.count) for cut in cuts], heads["cut"], _NUMBER), "right", _GAP_PT)
    piece = TableColumn(
        heads["piece"], need([format_piece(cut, words) for cut in cuts], heads["piece"], _BODY), gap_pt=_GAP_PT
    )
    columns, axes = [count, piece], []
    for facts in sizes:
        found, width = lengths_axes([cut_sides(cut, facts) for cut in facts.cutting], _BODY)
        columns.append(
            TableColumn(
                format_size(facts), max(width, width_of(format_size(facts), _SMALL)) + _GAP_PT + 1, gap_pt=_GAP_PT
            )
        )
        axes.append(found)
    thens, letters = [_then(cut, words) for cut in cuts], [cut.label for cut in cuts]
    for head, texts, most in ((heads["then"], thens, _MOST_THEN_PT), (heads["patch"], letters, _MOST_LETTERS_PT)):
        width = min(need(texts, head, _LETTER), most) if any(texts) else 0.0
        columns.append(TableColumn(head if width else "", width, gap_pt=_GAP_PT))
    purposes = [format_purpose(cut, words) for cut in cuts]
    width = min(need(purposes, heads["for"], _QUIET), _MOST_PURPOSE_PT) if any(purposes) else 0.0
    columns.append(TableColumn(heads["for"] if width else "", width, gap_pt=0.0))
    over = sum(column.width_pt for column in columns) - CONTENT_WIDTH_PT
    then = columns[-3]
    if over > 0 and then.width_pt > _LEAST_THEN_PT:  # what is done with a piece may take several lines
        columns[-3] = replace(then, width_pt=max(_LEAST_THEN_PT, then.width_pt - over))
    return columns, axes


def _then(cut: CutFacts, words: Messages) -> str:
    """What is done with a piece, and what is left over."""
    spare = words("count-spare", number=cut.spare) if cut.spare else ""
    return ", ".join(text for text in (format_subcut(cut, None, words), spare) if text)


def _together(sizes: Sequence[BlockFacts], named: str) -> list[Flowable]:
    """One table for sizes that are cut alike: a column for each size between the piece and what is done with it."""
    columns, axes = _columns(sizes)
    columns = _widened(columns)
    head = table_head(columns)
    words = words_of(sizes[0])
    flowables = [heading(named, aside=words("sizes-cutting-aside")), head]
    again = head_again(head, words)
    tables = [cuts_by_fabric(facts) for facts in sizes]
    for place, (fabric, cuts) in enumerate(tables[0]):
        rows = [
            _row(sizes, [table[place][1][number] for table in tables], columns, axes, ruled=number > 0)
            for number in range(len(cuts))
        ]
        group = fabric_group(fabric, sum(cut.count for cut in cuts), words)
        whole = grouped(again, group, rows, fabric_group(fabric, None, words))
        flowables += [replace(whole[0], before_pt=2.5 * STEP_PT if place else 0.0), *whole[1:]]
    return flowables


def _widened(columns: Sequence[TableColumn]) -> list[TableColumn]:
    """The columns spread over the page's width, their words no further apart than the eye can follow."""
    free = max(0.0, CONTENT_WIDTH_PT - sum(column.width_pt for column in columns))
    seen = [place for place, column in enumerate(columns) if column.width_pt]
    extra = min(free / (len(seen) - 1), _MOST_EXTRA_PT)
    wide = [
        replace(column, width_pt=column.width_pt + extra, gap_pt=column.gap_pt + extra) if place in seen[1:] else column
        for place, column in enumerate(columns)
    ]
    rest = CONTENT_WIDTH_PT - sum(column.width_pt for column in wide)
    wide[seen[-1]] = replace(wide[seen[-1]], width_pt=wide[seen[-1]].width_pt + rest)
    return wide


def _row(
    sizes: Sequence[BlockFacts],
    cuts: Sequence[CutFacts],
    columns: Sequence[TableColumn],
    axes: Sequence[Sequence[tuple[float, float]]],
    *,
    ruled: bool,
) -> Flowable:
    """The same line of the table at each size."""
    cut, words = cuts[0], words_of(sizes[0])
    count, piece, *_ = columns
    then, letters, purpose = columns[-3:]
    lengths = [
        lengths_cell(cut_sides(at_size, facts), axis, _BODY)
        for at_size, facts, axis in zip(cuts, sizes, axes, strict=True)
    ]
    cells: list[TableCell] = [
        words_cell(str(cut.count), count, _NUMBER),
        words_cell(format_piece(cut, words), piece, _BODY),
        *lengths,
        words_cell(_then(cut, words), then, _BODY) if then.width_pt else EMPTY,
        words_cell(cut.label, letters, _LETTER),
        words_cell(format_purpose(cut, words), purpose, _QUIET) if purpose.width_pt else EMPTY,
    ]
    return table_row(columns, cells, ruled=ruled)
