"""The index of a book's blocks and quilts: by name, by finished size, by family, by number of patches."""

from __future__ import annotations

import unicodedata
from collections.abc import Sequence
from typing import Final

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry import to_float
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.prose import TextStyle, fitted, line, line_ending
from blockdsl.marks.theme import BODY_PT, GUTTER_PT, INK, LEAD_PT, QUIET, PaperSize, span_pt
from blockdsl.page.book.parts import Bodies, BookPart, linked
from blockdsl.page.flow import Flowable, PageNumbers
from blockdsl.page.headings import continued, heading
from blockdsl.page.parts import flowed, title_flowable
from blockdsl.page.prose import NUMBER_PT
from blockdsl.wording.grammar import many
from blockdsl.wording.messages import Messages
from blockdsl.wording.sheet import families_in_order, format_family, format_finished

_ENTRY: Final = TextStyle(BODY_PT, "regular", INK)
_PAGE: Final = TextStyle(BODY_PT, "regular", QUIET)
_GROUP: Final = TextStyle(LEAD_PT, "bold", INK)
_COLUMNS: Final = 3
_COLUMN_PT: Final = span_pt(4)
_LARGEST_GROUP: Final = 30
_CM_IN_AN_INCH: Final = 2.54

Entries = list[tuple[str, str]]
"""Words and the anchor that they lead to; no anchor for a group's name."""


def index_pages(parts: Sequence[BookPart], words: Messages, pages: PageNumbers, paper: PaperSize) -> Bodies:
    """The four lists, each in three columns read downward; a list with nothing in it is left out."""
    flowables = [title_flowable(words("book-index"))]
    for by, entries in (
        ("name", _by_name(parts)),
        ("size", _by_size(parts)),
        ("family", _by_family(parts, words)),
        ("patches", _by_patches(parts, words)),
    ):
        name = words(f"index-by-{by}")
        flowables += [heading(name), *_in_columns(entries, pages, name, words)] if entries else []
    return flowed(flowables, paper)


def _sorting(words: str) -> tuple[str, str]:
    """Where a name stands in the alphabet: accents and capitals play no part."""
    apart = unicodedata.normalize("NFKD", words)
    return "".join(letter for letter in apart if not unicodedata.combining(letter)).casefold(), words


def _by_name(parts: Sequence[BookPart]) -> Entries:
    return sorted(((part.title, part.anchor) for part in parts), key=lambda entry: _sorting(entry[0]))


def _by_size(parts: Sequence[BookPart]) -> Entries:
    """Under each size the blocks and quilts that have it, small to large, whatever the unit."""
    groups: dict[tuple[float, str], Entries] = {}
    for part in parts:
        for facts in (part.quilt,) if part.quilt else part.block.sizes if part.block else ():
            groups.setdefault((_area(facts), fraction_text(format_finished(facts))), []).append(
                (part.title, part.anchor)
            )
    return _grouped([(name, groups[area, name]) for area, name in sorted(groups)])


def _area(facts: BlockFacts | QuiltFacts) -> float:
    """In square centimetres, to put sizes of both units in order."""
    scale = _CM_IN_AN_INCH if facts.unit == "in" else 1.0
    return round(to_float(facts.finished[0]) * to_float(facts.finished[1]) * scale * scale, 4)


def _by_family(parts: Sequence[BookPart], words: Messages) -> Entries:
    """The families of the blocks, then the quilts."""
    groups: dict[str, Entries] = {}
    quilts = [(part.title, part.anchor) for part in parts if part.quilt]
    for part in parts:
        if part.block:
            groups.setdefault(format_family(part.block.sizes[0]), []).append((part.title, part.anchor))
    families = [(family, groups[family]) for family in families_in_order(groups, words)]
    return _grouped([*families, (words("book-quilts"), quilts)] if quilts else families)


def _by_patches(parts: Sequence[BookPart], words: Messages) -> Entries:
    groups: dict[int, Entries] = {}
    for part in parts:
        if part.block:
            groups.setdefault(len(part.block.sizes[0].placed), []).append((part.title, part.anchor))
    return _grouped([(many(count, "patches", words), groups[count]) for count in sorted(groups)])


def _grouped(groups: Sequence[tuple[str, Entries]]) -> Entries:
    return [
        entry for name, entries in groups for entry in ((name, ""), *sorted(entries, key=lambda one: _sorting(one[0])))
    ]


def _in_columns(entries: Entries, pages: PageNumbers, name: str, words: Messages) -> list[Flowable]:
    """Rows of the page: the entries run down the first column, then the next; a group's name never ends a column."""
    columns = _columns(entries)
    flowables = []
    for row in range(max(len(column) for column in columns)):
        marks: list[Mark] = []
        for place, column in enumerate(columns):
            if row < len(column):
                marks += moved(_entry(*column[row], pages), place * (_COLUMN_PT + GUTTER_PT), 0.0)
        flowables.append(
            Flowable(_GROUP.line_pt + 1, tuple(marks), keep_with_next=row == 0, head=(continued(name, words),))
        )
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
    return [linked(anchor, _COLUMN_PT, _GROUP.line_pt, marks)]
