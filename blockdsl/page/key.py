"""The key of fabrics: swatch, number, label, value."""

from __future__ import annotations

from typing import Final

from blockdsl.document.content import FabricKey, FabricLine
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Element, Mark, moved, tagged
from blockdsl.marks.prose import TextStyle, fitted, line, lines_of, width_of
from blockdsl.marks.theme import BODY_PT, CONTENT_WIDTH_PT, GUTTER_PT, INK, QUIET, SMALL_PT, STEP_PT, Box
from blockdsl.page.flow import Drawn, Flowable
from blockdsl.page.table import picture_marks

_SWATCH: Final = Box(0.0, 0.0, 26.0, 13.0)
_NUMBER: Final = TextStyle(SMALL_PT, "regular", QUIET)
_NUMBER_WIDTH_PT: Final = 12.0
_LABEL: Final = TextStyle(BODY_PT, "bold", INK)
_VALUE: Final = TextStyle(SMALL_PT, "regular", QUIET)
_MOST_LINES: Final = 9
_BRIEF_LINES: Final = 2


def key_column(key: FabricKey, width_pt: float) -> Drawn:
    """The whole key in one column: its height and its marks."""
    y = 0.0
    marks: list[Mark] = []
    whole = Element("L")
    for place, fabric in enumerate(key.fabrics):
        entry = _entry(fabric, width_pt, _BRIEF_LINES if key.brief else _MOST_LINES, whole)
        y += entry.before_pt if place else 0.0
        marks += moved(entry.marks, 0.0, y)
        y += entry.height_pt
    return y, tuple(marks)


def key_columns(key: FabricKey) -> list[Flowable]:
    """The key in four columns, or three where a label is long, read across; a flowable for each line of it."""
    fits = all(_width(fabric) <= (CONTENT_WIDTH_PT - 3 * GUTTER_PT) / 4 for fabric in key.fabrics)
    columns = 4 if fits else 3
    column_pt = (CONTENT_WIDTH_PT - (columns - 1) * GUTTER_PT) / columns
    flowables = []
    whole = Element("L")
    for start in range(0, len(key.fabrics), columns):
        entries = [_entry(fabric, column_pt, _MOST_LINES, whole) for fabric in key.fabrics[start : start + columns]]
        marks: list[Mark] = []
        for place, entry in enumerate(entries):
            marks += moved(entry.marks, place * (column_pt + GUTTER_PT), 0.0)
        height = max(entry.height_pt for entry in entries)
        flowables.append(Flowable(height, tuple(marks), before_pt=1.5 * STEP_PT))
    return flowables


def _width(fabric: FabricLine) -> float:
    """What an entry takes on one line."""
    text = width_of(fabric.label, _LABEL) + STEP_PT + width_of(fabric.value, _VALUE)
    return _SWATCH.width_pt + 2 * STEP_PT + _NUMBER_WIDTH_PT + text


def _entry(fabric: FabricLine, width_pt: float, most_lines: int, whole: Element) -> Flowable:
    """One fabric: its swatch, its number, its label on as many lines as it needs or may have, its value after it."""
    left = _SWATCH.width_pt + 2 * STEP_PT
    room = width_pt - left - _NUMBER_WIDTH_PT
    lines = lines_of(fraction_text(fabric.label), room, _LABEL)
    if len(lines) > most_lines:
        lines = [*lines[: most_lines - 1], fitted(" ".join(lines[most_lines - 1 :]), room, _LABEL)]
    middle = _SWATCH.height_pt / 2
    baseline = middle + _LABEL.capitals_pt / 2
    marks: list[Mark] = [*picture_marks(fabric.swatch, _SWATCH)]
    marks += line(str(fabric.number), left, baseline, _NUMBER)
    x = left + _NUMBER_WIDTH_PT
    for place, text in enumerate(lines):
        marks += line(text, x, baseline + place * _LABEL.line_pt, _LABEL)
    last = (len(lines) - 1) * _LABEL.line_pt
    end = x + width_of(lines[-1], _LABEL) + STEP_PT
    if end + width_of(fabric.value, _VALUE) <= width_pt:
        marks += line(fabric.value, end, baseline + last, _VALUE)
    else:
        last += _VALUE.line_pt
        marks += line(fabric.value, x, baseline + last, _VALUE)
    height = max(_SWATCH.height_pt, middle + last + _LABEL.line_pt / 2)
    return Flowable(height, tagged(marks, whole, Element("LI"), Element("LBody")), before_pt=1.5 * STEP_PT)
