"""The units of a block at several sizes: each pictured once, with what it should measure at every size."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.facts.blockfacts import BlockFacts, UnitFacts
from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.prose import TextStyle, line, lines_of, paragraph, rule, runs, width_of
from blockdsl.marks.theme import (
    BODY_PT,
    CONTENT_WIDTH_PT,
    GUTTER_PT,
    HAIRLINE_PT,
    INK,
    LEAD_PT,
    QUIET,
    RULE,
    SMALL_PT,
    STEP_PT,
    Box,
    span_pt,
)
from blockdsl.page.flow import Flowable
from blockdsl.page.headings import continued, heading
from blockdsl.page.sheet.size_tables import format_size
from blockdsl.page.sheet.units import unit_list
from blockdsl.pictures.block import Fabrics, fabrics_of, unit_picture
from blockdsl.wording.grammar import capital
from blockdsl.wording.lengths import show_extent
from blockdsl.wording.messages import words_of
from blockdsl.wording.sheet import format_method, unit_title

_PICTURE_PT: Final = 60.0
_ACROSS: Final = 2
_TITLE: Final = TextStyle(LEAD_PT, "bold", INK)
_BODY: Final = TextStyle(BODY_PT, "regular", INK)
_BOLD: Final = TextStyle(BODY_PT, "bold", INK)
_QUIET: Final = TextStyle(BODY_PT, "regular", QUIET)
_HEAD: Final = TextStyle(SMALL_PT, "regular", QUIET)


def units_at_sizes(sizes: Sequence[BlockFacts]) -> list[Flowable]:
    """Two units beside each other on each flowable; sizes whose units differ are listed one after the other.

    Nothing for a block without units.
    """
    if len(sizes) == 1:
        return unit_list(sizes[0])
    if len({_way_of_making(facts) for facts in sizes}) > 1:
        return [piece for facts in sizes for piece in _named(unit_list(facts), facts)]
    if not sizes[0].units:
        return []
    fabrics = fabrics_of(sizes[0])
    cards = [_card(sizes, [facts.units[place] for facts in sizes], fabrics) for place in range(len(sizes[0].units))]
    words = words_of(sizes[0])
    title = words("units-title")
    flowables = [heading(title, aside=words("units-aside"))]
    for start in range(0, len(cards), _ACROSS):
        pair = cards[start : start + _ACROSS]
        marks: list[Mark] = [rule(0.0, CONTENT_WIDTH_PT, RULE, HAIRLINE_PT)] if start else []
        for place, (_, card) in enumerate(pair):
            marks += moved(card, place * (span_pt(6) + GUTTER_PT), 2.5 * STEP_PT)
        height = max(height for height, _ in pair) + 5 * STEP_PT
        flowables.append(Flowable(height, tuple(marks), head=(continued(title, words),)))
    return flowables


def _way_of_making(facts: BlockFacts) -> object:
    return tuple((unit.title, unit.count, unit.method, unit.spare) for unit in facts.units)


def _named(flowables: list[Flowable], facts: BlockFacts) -> list[Flowable]:
    """The list of one size with a heading that says which."""
    return [heading(words_of(facts)("units-title-size", size=format_size(facts))), *flowables[1:]] if flowables else []


def _card(sizes: Sequence[BlockFacts], units: Sequence[UnitFacts], fabrics: Fabrics) -> tuple[float, tuple[Mark, ...]]:
    """Picture at the left; name, number and way at its right, then a line for each size."""
    unit, words = units[0], words_of(sizes[0])
    box = Box(0.0, 0.0, _PICTURE_PT, _PICTURE_PT)
    picture, placed = unit_picture(unit, fabrics, box, words, unit_of_length=sizes[0].unit)
    x = _PICTURE_PT + 3 * STEP_PT
    space = span_pt(6) - x
    marks: list[Mark] = [*moved([picture], (_PICTURE_PT - placed.width_pt) / 2, 0.0)]
    y = -3.0
    for text in lines_of(capital(unit_title(unit, words)), space, _TITLE):
        marks += line(text, x, y + _TITLE.baseline_pt, _TITLE)
        y += _TITLE.line_pt
    spare = words("units-spare", count=unit.spare) if unit.spare else ""
    marks += runs([(words("units-make", count=unit.count), _BOLD), (spare, _BODY)], x, y + _BODY.baseline_pt)
    y += _BODY.line_pt
    height, words_marks = paragraph(words("units-method", method=format_method(unit.method, words)), space, _QUIET)
    marks += moved(words_marks, x, y)
    y += height + STEP_PT
    height, table = _measures(sizes, units, space)
    marks += moved(table, x, y)
    return max(placed.height_pt, y + height), tuple(marks)


def _measures(
    sizes: Sequence[BlockFacts], units: Sequence[UnitFacts], width_pt: float
) -> tuple[float, tuple[Mark, ...]]:
    """For each size of the block what the unit should measure, and its finished size."""
    rows = [
        (
            format_size(facts),
            *(show_extent(size, facts.unit, words_of(facts)) for size in (unit.unfinished, unit.finished)),
        )
        for facts, unit in zip(sizes, units, strict=True)
    ]
    heads = tuple(words_of(sizes[0])(f"units-head-{name}") for name in ("block", "measure", "finished"))
    columns = list(zip(heads, *rows, strict=True))
    widths = [
        max(width_of(head, _HEAD), *(width_of(words, _BOLD) for words in column)) + 2.5 * STEP_PT
        for head, *column in columns
    ]
    if sum(widths) > width_pt + 2.5 * STEP_PT:  # a narrow card: what it should measure matters most
        widths, heads, rows = widths[:2], heads[:2], [row[:2] for row in rows]
    starts = [sum(widths[:place]) for place in range(len(widths))]
    marks: list[Mark] = []
    for head, x in zip(heads, starts, strict=True):
        marks += line(head, x, _HEAD.baseline_pt, _HEAD)
    y = _HEAD.line_pt + 1
    marks.append(rule(y, min(sum(widths) - 2.5 * STEP_PT, width_pt), RULE, HAIRLINE_PT))
    y += 1
    for row in rows:
        for words, x, style in zip(row, starts, (_BODY, _BOLD, _QUIET), strict=False):
            marks += line(words, x, y + _BODY.baseline_pt, style)
        y += _BODY.line_pt
    return y, tuple(marks)
