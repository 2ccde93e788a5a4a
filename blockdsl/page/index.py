"""An index in three columns read downward, each entry with its page."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.document.content import DefinitionList
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Link, Mark, moved
from blockdsl.marks.prose import TextStyle, fitted, line, line_ending
from blockdsl.marks.theme import BODY_PT, GUTTER_PT, INK, LEAD_PT, QUIET, span_pt
from blockdsl.page.flow import Flowable, PageNumbers
from blockdsl.page.prose import NUMBER_PT

_ENTRY: Final = TextStyle(BODY_PT, "regular", INK)
_PAGE: Final = TextStyle(BODY_PT, "regular", QUIET)
_GROUP: Final = TextStyle(LEAD_PT, "bold", INK)
_COLUMNS: Final = 3
_COLUMN_PT: Final = span_pt(4)
_LARGEST_GROUP: Final = 30

Entries = list[tuple[str, str]]
"""Words and the anchor that they lead to; no anchor for a group's name."""


def index_flowables(index: DefinitionList, pages: PageNumbers, again: tuple[Flowable, ...]) -> list[Flowable]:
    """Rows of the page: the entries run down the first column, then the next; a group's name never ends a column."""
    entries: Entries = []
    for group in index.entries:
        entries += [(fraction_text(group.name), "")] if group.name else []
        entries += [(run.text, run.target) for text in group.lines for run in text if run.target]
    columns = _columns(entries)
    flowables = []
    for row in range(max(len(column) for column in columns)):
        marks: list[Mark] = []
        for place, column in enumerate(columns):
            if row < len(column):
                marks += moved(_entry(*column[row], pages), place * (_COLUMN_PT + GUTTER_PT), 0.0)
        flowables.append(Flowable(_GROUP.line_pt + 1, tuple(marks), keep_with_next=row == 0, head=again))
    return flowables


def _columns(entries: Entries) -> list[Entries]:
    """The entries in three columns, as short as they can be with every group whole; a huge group is cut."""
    groups: list[Entries] = []
    grouped = any(not anchor for _, anchor in entries)
    for entry in entries:
        if not groups or not entry[1] or not grouped:
            groups.append([])
        groups[-1].append(entry)
    largest = max((len(group) for group in groups), default=0)
    if largest > _LARGEST_GROUP:
        groups = [[entry] for entry in entries]
    for length in range(-(-len(entries) // _COLUMNS), len(entries) + 1):
        columns = _filled(groups, length)
        if len(columns) <= _COLUMNS:
            return columns
    return [entries]


def _filled(groups: Sequence[Entries], length: int) -> list[Entries]:
    columns: list[Entries] = [[]]
    for group in groups:
        if columns[-1] and len(columns[-1]) + len(group) > length:
            columns.append([])
        columns[-1] += group
    return columns


def _entry(words: str, anchor: str, pages: PageNumbers) -> list[Mark]:
    if not anchor:
        return list(line(fitted(words, _COLUMN_PT, _GROUP), 0.0, _GROUP.baseline_pt + 1, _GROUP))
    marks = [
        *line(fitted(words, _COLUMN_PT - NUMBER_PT, _ENTRY), 0.0, _GROUP.baseline_pt, _ENTRY),
        *line_ending(pages.get(anchor, "0"), _COLUMN_PT, _GROUP.baseline_pt, _PAGE),
    ]
    return [Link(anchor, 0.0, 0.0, _COLUMN_PT, _GROUP.line_pt, tuple(marks))]
