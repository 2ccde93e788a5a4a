"""The cutting table: by fabric, a row to tick off for each size, fractions on common axes."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Final

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.facts.blockfacts import BlockFacts, CutFacts, FabricFacts
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Mark
from blockdsl.marks.prose import TextStyle, fitted, line, line_ending, width_of
from blockdsl.marks.theme import ACCENT, BODY_PT, CONTENT_WIDTH_PT, INK, LEAD_PT, QUIET, SMALL_PT, STEP_PT, Box
from blockdsl.page.flow import Flowable, stacked
from blockdsl.page.headings import continued, heading
from blockdsl.page.table import (
    EMPTY,
    TableCell,
    TableColumn,
    grouped,
    lengths_axes,
    lengths_cell,
    table_head,
    table_row,
    tick_cell,
    words_cell,
)
from blockdsl.pictures.block import swatch
from blockdsl.wording.cutting_rows import cuts_by_fabric, format_to_cut
from blockdsl.wording.grammar import in_thousands
from blockdsl.wording.lengths import show_length
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.sheet import format_piece, format_purpose, format_subcut

_NUMBER: Final = TextStyle(BODY_PT, "bold", INK)
_BODY: Final = TextStyle(BODY_PT, "regular", INK)
_LETTER: Final = TextStyle(BODY_PT, "bold", ACCENT)
_QUIET: Final = TextStyle(BODY_PT, "regular", QUIET)
_GROUP: Final = TextStyle(LEAD_PT, "bold", INK)
_SMALL: Final = TextStyle(SMALL_PT, "regular", QUIET)
_LETTERS_MOST_PT: Final = 60.0
_PURPOSE_MOST_PT: Final = 118.0
_MORE_GAP_PT: Final = 40.0


class _Layout(Struct, frozen=True):
    """Columns that suit all rows of the table, and the axes of its sizes."""

    columns: tuple[TableColumn, ...]
    axes: tuple[tuple[float, float], ...]


Totals = Mapping[int, int]
"""For a cut, by its place in the block's list, how many are cut for a whole quilt."""


def cutting_table(facts: BlockFacts, totals: Totals | None = None) -> list[Flowable]:
    """The heading and the whole table as flowables; nothing when there is nothing to cut.

    With `totals` the table of one block of a quilt: what all of them take stands beside each line, and nothing is said
    of what is left over, since what one leaves the next one takes.
    """
    groups = cuts_by_fabric(facts)
    if not groups:
        return []
    layout = _layout(facts, [cut for _, cuts in groups for cut in cuts], totals)
    head = table_head(layout.columns)
    words = words_of(facts)
    flowables = [heading(words("cutting"), aside=words(f"cutting-sizes-{facts.unit}")), head]
    again_head = head_again(head, words)
    for place, (fabric, cuts) in enumerate(groups):
        rows = [_row(facts, cut, layout, totals, ruled=row > 0) for row, cut in enumerate(cuts)]
        group = fabric_group(fabric, sum(cut.count for cut in cuts), words)
        named_again = fabric_group(fabric, None, words)
        whole = grouped(again_head, group, rows, named_again)
        flowables += [replace(whole[0], before_pt=2.5 * STEP_PT if place else 0.0), *whole[1:]]
    return flowables


def head_again(head: Flowable, words: Messages) -> Flowable:
    """The table's head as it is said again on a new page."""
    height, marks = stacked([continued(words("cutting"), words), head])
    return Flowable(height, marks, keep_with_next=True)


def cut_sides(cut: CutFacts, facts: BlockFacts) -> list[str]:
    """The side of a square, or both sides of another piece, as they are printed."""
    sides = cut.sides
    return [show_length(side, facts.unit, words_of(facts)) for side in sides]


def _layout(facts: BlockFacts, cuts: Sequence[CutFacts], totals: Totals | None) -> _Layout:
    """Narrow columns take what their words need, the sub-cut takes the rest; columns with no words are left out."""
    words = words_of(facts)
    axes, size_pt = lengths_axes([cut_sides(cut, facts) for cut in cuts], _BODY)
    gap = 3 * STEP_PT

    heads = {
        name: words(f"head-{name}") for name in ("cut", "piece", "size", "then", "patch", "for", "spare", "in-all")
    }

    def need(texts: Sequence[str], head: str, style: TextStyle) -> float:
        widest = max((width_of(text, style) for text in texts), default=0.0)
        return max(widest, width_of(head, _SMALL)) + gap + 0.1  # what is just as wide as its column is not broken

    letters = min(need([cut.label for cut in cuts], heads["patch"], _LETTER), _LETTERS_MOST_PT)
    purposes = [format_purpose(cut, words) for cut in cuts]
    purpose = min(need(purposes, heads["for"], _QUIET), _PURPOSE_MOST_PT) if any(purposes) else 0.0
    last = heads["spare" if totals is None else "in-all"]
    beside = [_beside(facts, cut, totals) for cut in cuts]
    spare = need(beside, last, _BODY) if any(beside) else 0.0
    count = need([str(cut.count) for cut in cuts], heads["cut"], _NUMBER) - STEP_PT
    piece = need([format_piece(cut, words) for cut in cuts], heads["piece"], _BODY)
    size = max(size_pt, width_of(heads["size"], _SMALL)) + gap + STEP_PT
    tick = 4 * STEP_PT
    subcuts = [fraction_text(format_subcut(cut, facts.unit, words)) for cut in cuts]
    then = need(subcuts, heads["then"], _BODY) if any(subcuts) else 0.0
    free = CONTENT_WIDTH_PT - tick - count - piece - size - then - letters - purpose - spare
    if free < 0:  # a rare case of long words everywhere: the sub-cut breaks over lines
        then += free
    more = min(max(free, 0.0) / 5, _MORE_GAP_PT)
    piece, size, letters = piece + more, size + more, letters + more
    then += more if then else 0.0
    purpose += more if purpose else 0.0
    rest = max(0.0, CONTENT_WIDTH_PT - tick - count - piece - size - then - letters - purpose - spare)
    letters, purpose = (letters, purpose + rest) if purpose else (letters + rest, purpose)
    columns = (
        TableColumn("", tick),
        TableColumn(heads["cut"], count, "right", gap - STEP_PT),
        TableColumn(heads["piece"], piece, gap_pt=gap),
        TableColumn(heads["size"], size, gap_pt=gap),
        TableColumn(heads["then"] if then else "", then, gap_pt=gap),
        TableColumn(heads["patch"], letters, gap_pt=gap),
        TableColumn(heads["for"] if purpose else "", purpose, gap_pt=gap if spare else 0.0),
        TableColumn(last if spare else "", spare, "right", 0.0),
    )
    return _Layout(columns, tuple(axes))


def fabric_group(fabric: FabricFacts, pieces: int | None, words: Messages) -> Flowable:
    """A fabric's name beside its swatch, over its rows; without a count the name as it is said again on a new page."""
    height = 5.5 * STEP_PT
    box = Box(0.0, height / 2 - 6.5, 26.0, 13.0)
    x = box.right_pt + 2 * STEP_PT
    baseline = height / 2 + _GROUP.capitals_pt / 2
    aside = format_to_cut(pieces, words) if pieces is not None else ""
    after = "" if aside else words("fabric-continued")
    room = CONTENT_WIDTH_PT - x - width_of(aside + after, _SMALL) - 4 * STEP_PT
    label = fitted(fabric.label or fabric.name, room, _GROUP)
    marks: list[Mark] = [*swatch(fabric, box), *line(label, x, baseline, _GROUP)]
    marks += line(after, x + width_of(label, _GROUP), baseline, _SMALL)
    marks += line_ending(aside, CONTENT_WIDTH_PT, baseline, _SMALL)
    return Flowable(height, tuple(marks))


def _beside(facts: BlockFacts, cut: CutFacts, totals: Totals | None) -> str:
    """At the end of a line how many are left over, or how many a whole quilt takes."""
    count = cut.spare if totals is None else totals.get(facts.cutting.index(cut), 0)
    return in_thousands(count, words_of(facts)) if count else ""


def _row(facts: BlockFacts, cut: CutFacts, layout: _Layout, totals: Totals | None, *, ruled: bool) -> Flowable:
    words = words_of(facts)
    _, count, piece, _, then, letters, purpose, spare = layout.columns
    cells: tuple[TableCell, ...] = (
        tick_cell(_BODY),
        words_cell(str(cut.count), count, _NUMBER),
        words_cell(format_piece(cut, words), piece, _BODY),
        lengths_cell(cut_sides(cut, facts), layout.axes, _BODY),
        words_cell(fraction_text(format_subcut(cut, facts.unit, words)), then, _BODY) if then.width_pt else EMPTY,
        words_cell(cut.label, letters, _LETTER),
        words_cell(format_purpose(cut, words), purpose, _QUIET) if purpose.width_pt else EMPTY,
        words_cell(_beside(facts, cut, totals), spare, _BODY) if spare.width_pt else EMPTY,
    )
    return table_row(layout.columns, cells, ruled=ruled)
