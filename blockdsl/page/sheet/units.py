"""The measuring list: each unit with its picture, how many, and what it should measure before it is joined."""

from __future__ import annotations

from typing import Final

from blockdsl.facts.blockfacts import BlockFacts, UnitFacts
from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.prose import TextStyle, line, lines_of, paragraph, rule, runs
from blockdsl.marks.theme import (
    BODY_PT,
    CONTENT_WIDTH_PT,
    GUTTER_PT,
    HAIRLINE_PT,
    INK,
    LEAD_PT,
    QUIET,
    RULE,
    STEP_PT,
    Box,
    span_pt,
)
from blockdsl.page.flow import Flowable
from blockdsl.page.headings import continued, heading
from blockdsl.page.table import tick_cell
from blockdsl.pictures.block import Fabrics, fabrics_of, unit_picture
from blockdsl.wording.grammar import capital
from blockdsl.wording.lengths import show_extent
from blockdsl.wording.messages import words_of
from blockdsl.wording.sheet import format_method, unit_title

_PICTURE_PT: Final = 66.0
_ACROSS: Final = 2
_TITLE: Final = TextStyle(LEAD_PT, "bold", INK)
_BODY: Final = TextStyle(BODY_PT, "regular", INK)
_BOLD: Final = TextStyle(BODY_PT, "bold", INK)
_QUIET: Final = TextStyle(BODY_PT, "regular", QUIET)


def unit_list(facts: BlockFacts) -> list[Flowable]:
    """The heading and two units beside each other on each flowable; nothing when the block has no units."""
    if not facts.units:
        return []
    fabrics = fabrics_of(facts)
    cards = [_card(facts, unit, fabrics) for unit in facts.units]
    words = words_of(facts)
    title = words("units-title")
    flowables = [heading(title, aside=words("units-aside"))]
    for start in range(0, len(cards), _ACROSS):
        pair = cards[start : start + _ACROSS]
        marks: list[Mark] = [rule(0.0, CONTENT_WIDTH_PT, RULE, HAIRLINE_PT)] if start else []
        for place, (_, card) in enumerate(pair):
            x = place * (span_pt(6) + GUTTER_PT)
            marks += moved(card, x, 2.5 * STEP_PT)
        height = max(height for height, _ in pair) + 4.5 * STEP_PT
        flowables.append(Flowable(height, tuple(marks), head=(continued(title, words),)))
    return flowables


def _card(facts: BlockFacts, unit: UnitFacts, fabrics: Fabrics) -> tuple[float, tuple[Mark, ...]]:
    """Height and marks of one unit: picture at the left, words at its right."""
    words = words_of(facts)
    box = Box(0.0, 0.0, _PICTURE_PT, _PICTURE_PT)
    picture, placed = unit_picture(unit, fabrics, box, words, unit_of_length=facts.unit)
    x = _PICTURE_PT + 3 * STEP_PT
    room = span_pt(6) - x
    marks: list[Mark] = [*moved([picture], (_PICTURE_PT - placed.width_pt) / 2, 0.0)]
    y = -3.0
    for text in lines_of(capital(unit_title(unit, words)), room, _TITLE):
        marks += line(text, x, y + _TITLE.baseline_pt, _TITLE)
        y += _TITLE.line_pt
    spare = words("units-spare", count=unit.spare) if unit.spare else ""
    marks += runs([(words("units-make", count=unit.count), _BOLD), (spare, _BODY)], x, y + _BODY.baseline_pt)
    y += _BODY.line_pt
    finished = words("units-finished", size=show_extent(unit.finished, facts.unit, words))
    for text in (finished, words("units-method", method=format_method(unit.method, words))):
        height, words_marks = paragraph(text, room, _QUIET)
        marks += moved(words_marks, x, y)
        y += height
    y += STEP_PT / 2
    marks += moved(tick_cell(_BODY).marks, x, y)
    indent = 3.5 * STEP_PT
    measure = words("units-measure", size=show_extent(unit.unfinished, facts.unit, words))
    height, words_marks = paragraph(measure, room - indent, _BOLD)
    marks += moved(words_marks, x + indent, y)
    return max(placed.height_pt, y + height), tuple(marks)
