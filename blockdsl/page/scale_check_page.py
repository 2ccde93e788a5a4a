"""A page for measuring alone: whether this printer, with these settings, prints at actual size, across and down.

Printed once before anything else. A printer may stretch the paper's length otherwise than its width, so the bars stand
both ways; they are as long as fits Letter and A4, for the longer a bar, the smaller a fault it shows.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.geometry.fraction import Fraction
from blockdsl.marks.display_list import Element, Mark, Page, Path, TextMark, tagged
from blockdsl.marks.theme import (
    BODY_PT,
    HAIRLINE_PT,
    LEAD_PT,
    LEADING,
    POINTS_PER_CENTIMETRE,
    POINTS_PER_INCH,
    QUIET,
    RULE,
    SMALL_PT,
    Box,
    paper_named,
)
from blockdsl.marks.typeset import measure, wrap
from blockdsl.model.language import Language
from blockdsl.page.scale_check import (
    CENTIMETRE_BAR_PT,
    EIGHT_INCHES,
    FIFTEEN_CENTIMETRES,
    INCH_BAR_PT,
    SIX_INCHES,
    TWENTY_CENTIMETRES,
    BarReading,
    reading_table,
    ruled_bar,
    square_and_bar,
)
from blockdsl.wording.lengths import show_measure
from blockdsl.wording.messages import Messages, messages

INCH_UPRIGHT_PT: Final = 8 * POINTS_PER_INCH
CENTIMETRE_UPRIGHT_PT: Final = 20 * POINTS_PER_CENTIMETRE

_TITLE_PT: Final = 20.0
_STEPS: Final = ("print", "lay", "find", "right")
_UPRIGHT_ROOM_PT: Final = 84.0


def check_print_page(paper: str, language: Language = "en-US") -> Page:
    """The page to print first: a test square, bars of 6 in, 15 cm, 5 cm across, bars of 8 in and 20 cm down, tables.

    Units:  points; the page has the size of the paper, upright; on a roll it is as short as a roll's page can be.
    Errors: ValueError for an unknown paper.
    """
    sheet = paper_named(paper)
    box, words = sheet.content, messages(language)
    title = TextMark(box.x_pt, box.y_pt + 15.0, words("scale-title"), _TITLE_PT, "bold")
    marks: list[Mark] = [*tagged((title,), Element("H1"))]
    said = words("scale-subtitle", paper=sheet.title)
    marks.append(TextMark(box.x_pt, box.y_pt + 33.0, said, LEAD_PT, colour=QUIET))
    y = box.y_pt + 45.0
    marks.append(Path((((box.x_pt, y), (box.right_pt, y)),), closed=False, stroke=RULE, stroke_width_pt=HAIRLINE_PT))
    below = Box(box.x_pt, y + 22.0, box.width_pt, box.bottom_pt - y - 22.0)
    marks += _down(below, words)
    room = Box(below.x_pt + _UPRIGHT_ROOM_PT, below.y_pt, below.width_pt - _UPRIGHT_ROOM_PT, below.height_pt)
    marks += _across(room, words)
    return Page(sheet.width_pt, sheet.height_pt, tuple(marks))


def _down(box: Box, words: Messages) -> list[Mark]:
    """The bars that run down the page, at its left; their words stand beside them, read from below."""
    marks: list[Mark] = []
    for x, length, parts, reading in (
        (box.x_pt + 8.0, INCH_UPRIGHT_PT, 8, EIGHT_INCHES),
        (box.x_pt + 46.0, CENTIMETRE_UPRIGHT_PT, 20, TWENTY_CENTIMETRES),
    ):
        marks += ruled_bar(x, box.y_pt, length, parts, upright=True)
        wide, other = measure(reading.title(words), BODY_PT, "bold"), reading.beside(words)
        start = box.y_pt + length / 2 + (wide + 5.0 + measure(other, SMALL_PT)) / 2
        marks.append(TextMark(x + 17.0, start, reading.title(words), BODY_PT, "bold", turn_degrees=-90.0))
        marks.append(TextMark(x + 17.0, start - wide - 5.0, other, SMALL_PT, colour=QUIET, turn_degrees=-90.0))
    return marks


def _across(box: Box, words: Messages) -> list[Mark]:
    """How to read the scale, then the square and the bars across with a table for every bar."""
    marks: list[Mark] = []
    y = box.y_pt + 4.0
    eighth = show_measure(Fraction(1, 8), "in", words)
    for number, step in enumerate(_STEPS, 1):
        marks.append(TextMark(box.x_pt, y, str(number), BODY_PT, "bold"))
        for row in wrap(words(f"scale-step-{step}", eighth=eighth), BODY_PT, "regular", box.width_pt - 14.0):
            marks.append(TextMark(box.x_pt + 14.0, y, row, BODY_PT))
            y += BODY_PT * LEADING
        y += 4.0
    y += 16.0
    marks += square_and_bar(box.x_pt, y, words)
    y += POINTS_PER_INCH + 34.0
    marks.append(TextMark(box.x_pt, y, words("scale-across"), LEAD_PT, "bold"))
    y += 8.0
    for length, parts, reading in ((INCH_BAR_PT, 6, SIX_INCHES), (CENTIMETRE_BAR_PT, 15, FIFTEEN_CENTIMETRES)):
        marks.append(TextMark(box.x_pt, y + 10.0, reading.title(words), BODY_PT, "bold"))
        beside = box.x_pt + measure(reading.title(words), BODY_PT, "bold") + 5.0
        marks.append(TextMark(beside, y + 10.0, reading.beside(words), SMALL_PT, colour=QUIET))
        marks += ruled_bar(box.x_pt, y + 22.0, length, parts)
        y = _tables(marks, (reading,), Box(box.x_pt, y + 43.0, box.width_pt, 0.0), words)
    y += 12.0
    marks.append(TextMark(box.x_pt, y, words("scale-down"), LEAD_PT, "bold"))
    _tables(marks, (EIGHT_INCHES, TWENTY_CENTIMETRES), Box(box.x_pt, y + 20.0, box.width_pt, 0.0), words)
    return marks


def _tables(marks: list[Mark], readings: Sequence[BarReading], box: Box, words: Messages) -> float:
    """A table for each bar, one below the other; the y below them."""
    y = box.y_pt
    for reading in readings:
        marks += reading_table(box.x_pt, y, reading, words, box.width_pt)
        y += 34.0
    return y
