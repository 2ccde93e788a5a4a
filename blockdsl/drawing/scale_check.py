"""Whether the print came out at actual size: a test square, a short bar, and long bars with a table.

A square of an inch shows that Letter was fitted to A4 as three hundredths of an inch, which is easily overlooked; the
long bars show it as nearly a fifth. All lengths are exact: from the middle of one end stroke to the middle of the
other, and so for the square's lines.
"""

from __future__ import annotations

from fractions import Fraction
from typing import Final

from blockdsl.drawing.lengths import show_length
from blockdsl.drawing.marks import Mark, Path, Text
from blockdsl.drawing.template_marks import centred
from blockdsl.drawing.theme import (
    BODY_PT,
    CONTENT_WIDTH_PT,
    HAIRLINE_PT,
    INK,
    POINTS_PER_CENTIMETRE,
    POINTS_PER_INCH,
    QUIET,
    RULE,
    SMALL_PT,
    THIN_PT,
)
from blockdsl.drawing.typeset import measure
from blockdsl.facts.blockfacts import RulerUnit

TEST_SQUARE_PT: Final = POINTS_PER_INCH
SHORT_BAR_PT: Final = 5 * POINTS_PER_CENTIMETRE
INCH_BAR_PT: Final = 6 * POINTS_PER_INCH
CENTIMETRE_BAR_PT: Final = 15 * POINTS_PER_CENTIMETRE
ACTUAL_SIZE: Final = ("Print at actual size (100 %),", "not fit to page")

# What each bar may measure, in sixteenths of an inch and in millimetres: from 94 % to 104 %.
_INCH_READINGS: Final = tuple(Fraction(sixteenths, 16) for sixteenths in (90, 92, 93, 94, 95, 96, 97, 98, 100))
_CENTIMETRE_READINGS: Final = tuple(Fraction(mm, 10) for mm in (141, 144, 146, 147, 149, 150, 151, 153, 156))
_LABEL_PT: Final = 112.0
_COLUMN_PT: Final = (CONTENT_WIDTH_PT - _LABEL_PT) / len(_INCH_READINGS)


def square_and_bar(x: float, y: float) -> tuple[Mark, ...]:
    """The 1-inch test square with the 5 cm bar and the printing note to its right; 72 pt high, about 234 pt wide."""
    side = TEST_SQUARE_PT
    square = ((x, y), (x + side, y), (x + side, y + side), (x, y + side))
    middle = x + side / 2
    bar_x, bar_y = x + side + 20.0, y + side - 20.0
    return (
        Path((square,), stroke=INK, stroke_width_pt=THIN_PT),
        centred((middle, y + 24.0), "test square", SMALL_PT, colour=QUIET),
        centred((middle, y + 37.0), "1 in", BODY_PT, "bold"),
        centred((middle, y + 50.0), "each side", SMALL_PT, colour=QUIET),
        *(Text(bar_x, y + 7.0 + row * 12.0, words, BODY_PT, "bold") for row, words in enumerate(ACTUAL_SIZE)),
        *ruled_bar(bar_x, bar_y, SHORT_BAR_PT, 5),
        centred((bar_x + SHORT_BAR_PT / 2, y + side - 3.0), "5 cm", SMALL_PT, colour=QUIET),
    )


def ruled_bar(x: float, y: float, length: float, parts: int) -> tuple[Path, Path]:
    """A bar of that length with upright strokes at its ends and, shorter, at each part: the line, then the strokes."""
    strokes = []
    for number in range(parts + 1):
        reach = 6.0 if number in (0, parts) else 3.0
        at = x + length * number / parts
        strokes.append(((at, y - reach), (at, y + reach)))
    return (
        Path((((x, y), (x + length, y)),), closed=False, stroke=INK, stroke_width_pt=THIN_PT),
        Path(tuple(strokes), closed=False, stroke=INK, stroke_width_pt=THIN_PT),
    )


LONG_BARS_HEIGHT_PT: Final = 112.0


def long_bars(x: float, y: float) -> tuple[Mark, ...]:
    """The 6 in and 15 cm bars, each with its line of the table "it measures … / your scale was …"."""
    marks: list[Mark] = []
    for title, length, parts, unit, readings, top in (
        ("6 in", INCH_BAR_PT, 6, "in", _INCH_READINGS, y),
        ("15 cm", CENTIMETRE_BAR_PT, 15, "cm", _CENTIMETRE_READINGS, y + LONG_BARS_HEIGHT_PT / 2),
    ):
        marks += ruled_bar(x, top + 8.0, length, parts)
        marks.append(Text(x + length + 10.0, top + 11.0, title, BODY_PT, "bold"))
        marks += _readings(x, top + 27.0, title, "in" if unit == "in" else "cm", readings)
    return tuple(marks)


def _readings(x: float, y: float, title: str, unit: RulerUnit, readings: tuple[Fraction, ...]) -> list[Mark]:
    """Two rows: what the bar measures, and the scale that this means."""
    right = x + _LABEL_PT + _COLUMN_PT * len(readings)
    marks: list[Mark] = [
        Text(x, y, f"{title} bar measured, {unit}", SMALL_PT, colour=QUIET),
        Text(x, y + 13.0, "means your scale was", SMALL_PT, colour=QUIET),
        Path((((x, y + 3.8), (right, y + 3.8)),), closed=False, stroke=RULE, stroke_width_pt=HAIRLINE_PT),
    ]
    meant = 6 if unit == "in" else 15
    for number, reading in enumerate(readings):
        edge = x + _LABEL_PT + _COLUMN_PT * (number + 1)
        exact = reading == meant
        scale = "100 %" if exact else f"{float(reading) / meant * 100:.1f} %"
        for words, row in ((show_length(reading, unit), y), (scale, y + 13.0)):
            weight = "bold" if exact else "regular"
            left = edge - measure(words, SMALL_PT, "bold" if exact else "regular")
            marks.append(Text(left, row, words, SMALL_PT, "bold" if weight == "bold" else "regular"))
    return marks
