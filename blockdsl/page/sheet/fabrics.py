"""The key of fabrics: swatch, number, label, value."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.facts.blockfacts import FabricFacts
from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.prose import TextStyle, fitted, line, lines_of, width_of
from blockdsl.marks.theme import BODY_PT, GUTTER_PT, INK, QUIET, SMALL_PT, STEP_PT, Box
from blockdsl.page.flow import Flowable
from blockdsl.pictures.block import swatch
from blockdsl.wording.messages import Messages
from blockdsl.wording.sheet import value_words

SWATCH_WIDTH_PT: Final = 26.0
SWATCH_HEIGHT_PT: Final = 13.0
_NUMBER: Final = TextStyle(SMALL_PT, "regular", QUIET)
_NUMBER_WIDTH_PT: Final = 12.0
_LABEL: Final = TextStyle(BODY_PT, "bold", INK)
_VALUE: Final = TextStyle(SMALL_PT, "regular", QUIET)


def key_entry(fabric: FabricFacts, width_pt: float, words: Messages, most_lines: int = 9) -> Flowable:
    """One fabric: its swatch, its number, its label on as many lines as it needs or may have, its value after it."""
    left = SWATCH_WIDTH_PT + 2 * STEP_PT
    room = width_pt - left - _NUMBER_WIDTH_PT
    lines = lines_of(fabric.label or fabric.name, room, _LABEL)
    if len(lines) > most_lines:
        lines = [*lines[: most_lines - 1], fitted(" ".join(lines[most_lines - 1 :]), room, _LABEL)]
    value = value_words(fabric, words)
    middle = SWATCH_HEIGHT_PT / 2
    baseline = middle + _LABEL.capitals_pt / 2
    marks: list[Mark] = [*swatch(fabric, Box(0.0, 0.0, SWATCH_WIDTH_PT, SWATCH_HEIGHT_PT))]
    marks += line(str(fabric.number), left, baseline, _NUMBER)
    x = left + _NUMBER_WIDTH_PT
    for place, text in enumerate(lines):
        marks += line(text, x, baseline + place * _LABEL.line_pt, _LABEL)
    last = (len(lines) - 1) * _LABEL.line_pt
    end = x + width_of(lines[-1], _LABEL) + STEP_PT
    if end + width_of(value, _VALUE) <= width_pt:
        marks += line(value, end, baseline + last, _VALUE)
    else:
        last += _VALUE.line_pt
        marks += line(value, x, baseline + last, _VALUE)
    return Flowable(max(SWATCH_HEIGHT_PT, middle + last + _LABEL.line_pt / 2), tuple(marks), before_pt=1.5 * STEP_PT)


def key_column(
    fabrics: Sequence[FabricFacts], width_pt: float, words: Messages, most_lines: int = 9
) -> tuple[float, tuple[Mark, ...]]:
    """The whole key in one column: its height and its marks."""
    y = 0.0
    marks: list[Mark] = []
    for place, fabric in enumerate(fabrics):
        entry = key_entry(fabric, width_pt, words, most_lines)
        y += entry.before_pt if place else 0.0
        marks += moved(entry.marks, 0.0, y)
        y += entry.height_pt
    return y, tuple(marks)


def _width(fabric: FabricFacts, words: Messages) -> float:
    """What an entry takes on one line."""
    text = width_of(fabric.label or fabric.name, _LABEL) + STEP_PT + width_of(value_words(fabric, words), _VALUE)
    return SWATCH_WIDTH_PT + 2 * STEP_PT + _NUMBER_WIDTH_PT + text


def key_columns(fabrics: Sequence[FabricFacts], width_pt: float, words: Messages) -> list[Flowable]:
    """The key in four columns, or three where a label is long, read across; a flowable for each line of it."""
    columns = 4 if all(_width(fabric, words) <= (width_pt - 3 * GUTTER_PT) / 4 for fabric in fabrics) else 3
    column_pt = (width_pt - (columns - 1) * GUTTER_PT) / columns
    flowables = []
    for start in range(0, len(fabrics), columns):
        entries = [key_entry(fabric, column_pt, words) for fabric in fabrics[start : start + columns]]
        marks: list[Mark] = []
        for place, entry in enumerate(entries):
            marks += moved(entry.marks, place * (column_pt + GUTTER_PT), 0.0)
        height = max(entry.height_pt for entry in entries)
        flowables.append(Flowable(height, tuple(marks), before_pt=1.5 * STEP_PT))
    return flowables
