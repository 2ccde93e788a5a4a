"""Putting the top together: its rows drawn apart, what each row measures, then the steps."""

from __future__ import annotations

from typing import Final

from blockdsl.document.assembly import alike_rows, steps_with_words
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.facts.quiltstepfacts import QuiltStepFacts
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.prose import TextStyle, line, paragraph, width_of
from blockdsl.marks.theme import (
    ACCENT,
    BODY_PT,
    CONTENT_WIDTH_PT,
    GUTTER_PT,
    INK,
    LEAD_PT,
    QUIET,
    STEP_PT,
    Box,
    span_pt,
)
from blockdsl.page.flow import Flowable
from blockdsl.page.headings import continued, heading
from blockdsl.page.steps import part_marks
from blockdsl.page.table import TableColumn, grouped, table_head, table_row, tick_cell, words_cell
from blockdsl.pictures.border import mitre_picture, ring_picture
from blockdsl.pictures.quilt import rows_picture
from blockdsl.wording import StepText
from blockdsl.wording.messages import words_of
from blockdsl.wording.quilt_words import format_strips_of_ring

_TALLEST_PT: Final = 380.0
_STEP_NUMBER: Final = TextStyle(LEAD_PT, "bold", ACCENT)
_STEP_NAME: Final = TextStyle(LEAD_PT, "bold", INK)
_BODY: Final = TextStyle(BODY_PT, "regular", INK)
_BOLD: Final = TextStyle(BODY_PT, "bold", INK)
_QUIET: Final = TextStyle(BODY_PT, "regular", QUIET)
NUMBER_PT: Final = 18.0
"""Where the words of a step begin, beside its number."""
_RING_PT: Final = 150.0
_MITRE_PT: Final = 74.0


def assembly(facts: QuiltFacts) -> list[Flowable]:
    """The picture, the table of rows, and the steps; borders with a picture each."""
    words = words_of(facts)
    flowables = [heading(words("assembly-title"), aside=words("assembly-aside"))]
    if len(facts.rows) > 1:
        picture, filled = rows_picture(facts, Box(0.0, 0.0, CONTENT_WIDTH_PT, _TALLEST_PT))
        flowables.append(Flowable(filled.height_pt + 2 * STEP_PT, (picture,)))
    flowables += _rows(facts)
    flowables += _steps(facts)
    return flowables


# --- rows ----------------------------------------------------------------------------------------


def _rows(facts: QuiltFacts) -> list[Flowable]:
    """Rows that are alike share a line."""
    if len(facts.rows) < 2:
        return []
    words = words_of(facts)
    columns = (
        TableColumn("", 18.0),
        TableColumn(words("rows-head-row"), 124.0),
        TableColumn(words("rows-head-takes"), CONTENT_WIDTH_PT - 18.0 - 124.0 - 150.0),
        TableColumn(words("rows-head-measure"), 150.0, gap_pt=0.0),
    )
    head = table_head(columns)
    lines = list(alike_rows(facts))
    if not lines:
        return []
    rows = [_row(line, columns, ruled=place > 0) for place, line in enumerate(lines)]
    group = Flowable(0.0, keep_with_next=True)
    return [head, *grouped(head, group, rows, continued(words("rows-title"), words))[1:]]


def _row(told: tuple[str, str, str], columns: tuple[TableColumn, ...], *, ruled: bool) -> Flowable:
    name, members, size = told
    _, first, second, third = columns
    cells = (
        tick_cell(_BODY),
        words_cell(name, first, _BOLD),
        words_cell(members, second, _BODY),
        words_cell(size, third, _BOLD),
    )
    return table_row(columns, cells, ruled=ruled)


# --- steps ---------------------------------------------------------------------------------------


def _steps(facts: QuiltFacts) -> list[Flowable]:
    return [_step(facts, step, text) for step, text in steps_with_words(facts) if step.of_top]


def head_marks(text: StepText, width: float) -> tuple[float, list[Mark]]:
    """Number and name, how many are made, the finished size; and how high that is."""
    marks: list[Mark] = [
        *line(str(text.number), 0.0, _STEP_NUMBER.baseline_pt, _STEP_NUMBER),
        *line(text.name, NUMBER_PT, _STEP_NAME.baseline_pt, _STEP_NAME),
    ]
    more = " · ".join(filter(None, (text.made, text.size)))
    if more:
        at = NUMBER_PT + width_of(text.name, _STEP_NAME) + 2 * STEP_PT
        said = fraction_text(more)
        if at + width_of(said, _QUIET) <= NUMBER_PT + width:
            marks += line(said, at, _STEP_NAME.baseline_pt, _QUIET)
        else:
            height, quiet = paragraph(said, width, _QUIET)
            marks += moved(quiet, NUMBER_PT, _STEP_NAME.line_pt)
            return _STEP_NAME.line_pt + height, marks
    return _STEP_NAME.line_pt, marks


def _step(facts: QuiltFacts, step: QuiltStepFacts, text: StepText) -> Flowable:
    """Number, name and words; of a border its picture beside them."""
    ring = next((ring for ring in facts.rings if ring.number == step.ring), None) if step.ring else None
    left = NUMBER_PT
    room = CONTENT_WIDTH_PT - left - (_RING_PT + GUTTER_PT if ring is not None else 0.0)
    y, marks = head_marks(text, room)
    for letter, part in text.lettered:
        height, words = part_marks(f"{letter} ".lstrip(), part, min(room, span_pt(10)), _BODY)
        marks += moved(words, left, y)
        y += height
    if ring is not None and (cut := format_strips_of_ring(facts, ring)):
        height, words = paragraph(fraction_text(cut), min(room, span_pt(10)), _QUIET)
        marks += moved(words, left, y)
        y += height
    if ring is not None and ring.corners == "mitred":
        marks.append(mitre_picture(Box(left, y + 2 * STEP_PT, room, _MITRE_PT), words_of(facts)))
        y += _MITRE_PT + 3 * STEP_PT
    if ring is not None:
        picture, filled = ring_picture(facts, ring, Box(CONTENT_WIDTH_PT - _RING_PT, 0.0, _RING_PT, _RING_PT))
        marks.append(picture)
        y = max(y, filled.bottom_pt)
    return Flowable(y, tuple(marks), before_pt=3 * STEP_PT)
