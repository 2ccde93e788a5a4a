"""Whether the print came out at actual size: a test square, a short bar, and long bars with a table.

A square of an inch shows that Letter was fitted to A4 as three hundredths of an inch, which is easily overlooked; the
long bars show it as nearly a fifth. All lengths are exact: from the middle of one end stroke to the middle of the
other, and so for the square's lines. Each length is said in both units, for rulers of either kind: of a bar in
centimetres the inches are those that come nearest, to a thirty-second (5 cm are 1 31/32 in to 0.0003 in, 15 cm are
5 29/32 in to 0.0008 in, 20 cm are 7 7/8 in to 0.001 in).
"""

from __future__ import annotations

from typing import Final

from msgspec import Struct

from blockdsl.facts.blockfacts import RulerUnit
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Element, Mark, PagePoint, Path, TextMark, Weight, tagged
from blockdsl.marks.prose import TextStyle, line_centred
from blockdsl.marks.theme import (
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
from blockdsl.marks.typeset import measure
from blockdsl.wording.grammar import in_figures
from blockdsl.wording.lengths import drafted_length, exact_figure
from blockdsl.wording.messages import Messages

TEST_SQUARE_PT: Final = POINTS_PER_INCH
SHORT_BAR_PT: Final = 5 * POINTS_PER_CENTIMETRE
INCH_BAR_PT: Final = 6 * POINTS_PER_INCH
CENTIMETRE_BAR_PT: Final = 15 * POINTS_PER_CENTIMETRE

_FIVE_CENTIMETRES: Final = Fraction(63, 32)
_LABEL_PT: Final = 112.0


class BarReading(Struct, frozen=True):
    """What a bar of a known length may measure; the lengths are in its unit. `other` is its length in the other."""

    meant: int
    unit: RulerUnit
    readings: tuple[Fraction, ...]
    other: Fraction

    def title(self, words: Messages) -> str:
        """`6 in`."""
        return words("length", length=str(self.meant), unit=self.unit)

    def beside(self, words: Messages) -> str:
        """Its length in the other unit, in brackets."""
        return f"({_exactly(self.other, 'cm' if self.unit == 'in' else 'in', words)})"


def _exactly(length: Fraction, unit: RulerUnit, words: Messages) -> str:
    """A length as it is, not rounded to what a ruler shows: `1 ³¹⁄₃₂ in`, `15.24 cm`."""
    return fraction_text(words("length", length=exact_figure(length, unit, words), unit=unit))


# From 94 % to 104 %, in sixteenths of an inch and in millimetres: what a ruler shows.
SIX_INCHES: Final = BarReading(
    6, "in", tuple(Fraction(k, 16) for k in (90, 92, 93, 94, 95, 96, 97, 98, 100)), Fraction(1524, 100)
)
FIFTEEN_CENTIMETRES: Final = BarReading(
    15,
    "cm",
    tuple(Fraction(k, 10) for k in (141, 144, 146, 147, 149, 150, 151, 153, 156)),
    Fraction(189, 32),
)
EIGHT_INCHES: Final = BarReading(
    8, "in", tuple(Fraction(k, 16) for k in (120, 123, 124, 126, 127, 128, 129, 130, 133)), Fraction(2032, 100)
)
TWENTY_CENTIMETRES: Final = BarReading(
    20,
    "cm",
    tuple(Fraction(k, 10) for k in (188, 192, 195, 197, 199, 200, 201, 203, 208)),
    Fraction(63, 8),
)


def square_and_bar(x: float, y: float, words: Messages) -> tuple[Mark, ...]:
    """The 1-inch test square with the 5 cm bar and the printing note to its right; 72 pt high, about 234 pt wide."""
    side = TEST_SQUARE_PT
    square = ((x, y), (x + side, y), (x + side, y + side), (x, y + side))
    middle = x + side / 2
    five = f"5 cm ({_exactly(_FIVE_CENTIMETRES, 'in', words)})"
    bar_x, bar_y = x + side + 20.0, y + side - 20.0
    return (
        Path((square,), stroke=INK, stroke_width_pt=THIN_PT),
        *line_centred(words("scale-square"), middle, y + 18.0, TextStyle(SMALL_PT, colour=QUIET)),
        *line_centred(words("length", length="1", unit="in"), middle, y + 31.0, TextStyle(BODY_PT, "bold")),
        *line_centred(
            words("length", length=in_figures("25.4", words), unit="mm"), middle, y + 43.0, TextStyle(BODY_PT)
        ),
        *line_centred(words("scale-each-side"), middle, y + 55.0, TextStyle(SMALL_PT, colour=QUIET)),
        TextMark(bar_x, y + 7.0, words("scale-print"), BODY_PT, "bold"),
        TextMark(bar_x, y + 19.0, words("scale-not-fit"), BODY_PT, "bold"),
        *ruled_bar(bar_x, bar_y, SHORT_BAR_PT, 5),
        *line_centred(five, bar_x + SHORT_BAR_PT / 2, y + side - 3.0, TextStyle(SMALL_PT, colour=QUIET)),
    )


def ruled_bar(x: float, y: float, length: float, parts: int, *, upright: bool = False) -> tuple[Path, Path]:
    """A bar of that length with strokes across its ends and, shorter, at each part: the line, then the strokes.

    It runs from (x, y) to the right, or downward when upright.
    """
    strokes = []
    for number in range(parts + 1):
        reach = 6.0 if number in (0, parts) else 3.0
        at = length * number / parts
        strokes.append(((at, -reach), (at, reach)))

    def placed(line: tuple[PagePoint, PagePoint]) -> tuple[PagePoint, ...]:
        return tuple((x + across, y + along) if upright else (x + along, y + across) for along, across in line)

    return (
        Path((placed(((0.0, 0.0), (length, 0.0))),), closed=False, stroke=INK, stroke_width_pt=THIN_PT),
        Path(tuple(placed(stroke) for stroke in strokes), closed=False, stroke=INK, stroke_width_pt=THIN_PT),
    )


LONG_BARS_HEIGHT_PT: Final = 112.0


def long_bars(x: float, y: float, words: Messages) -> tuple[Mark, ...]:
    """The 6 in and 15 cm bars, each with its line of the table "it measures … / your scale was …"."""
    marks: list[Mark] = []
    for reading, length, parts, top in (
        (SIX_INCHES, INCH_BAR_PT, 6, y),
        (FIFTEEN_CENTIMETRES, CENTIMETRE_BAR_PT, 15, y + LONG_BARS_HEIGHT_PT / 2),
    ):
        marks += ruled_bar(x, top + 8.0, length, parts)
        marks.append(TextMark(x + length + 10.0, top + 11.0, reading.title(words), BODY_PT, "bold"))
        beside = x + length + 10.0 + measure(reading.title(words), BODY_PT, "bold") + 5.0
        marks.append(TextMark(beside, top + 11.0, reading.beside(words), SMALL_PT, colour=QUIET))
        marks += reading_table(x, top + 27.0, reading, words)
    return tuple(marks)


def reading_table(
    x: float, y: float, reading: BarReading, words: Messages, width_pt: float = CONTENT_WIDTH_PT
) -> list[Mark]:
    """Two rows: what the bar measures, and the scale that this means; baselines at y and 13 pt below."""
    column = (width_pt - _LABEL_PT) / len(reading.readings)
    marks: list[Mark] = [
        Path((((x, y + 3.8), (x + width_pt, y + 3.8)),), closed=False, stroke=RULE, stroke_width_pt=HAIRLINE_PT)
    ]
    whole, across = Element("Table"), len(reading.readings) + 1
    measured = words("scale-measured", bar=reading.title(words), unit=reading.unit)
    lengths = [drafted_length(length, reading.unit, words) for length in reading.readings]
    scales = [_scale(length, reading, words) for length in reading.readings]
    for name, baseline, cells in ((measured, y, lengths), (words("scale-means"), y + 13.0, scales)):
        row = Element("TR", columns=across)
        named = TextMark(x, baseline, name, SMALL_PT, colour=QUIET)
        marks += tagged((named,), whole, row, Element("TH", scope="Row"))
        for number, (length, said) in enumerate(zip(reading.readings, cells, strict=True), start=1):
            weight: Weight = "bold" if length == reading.meant else "regular"
            left = x + _LABEL_PT + column * number - measure(said, SMALL_PT, weight)
            cell = TextMark(left, baseline, said, SMALL_PT, weight)
            marks += tagged((cell,), whole, row, Element("TD", column=number))
    return marks


def _scale(length: Fraction, reading: BarReading, words: Messages) -> str:
    """The scale at which the bar measures that much: `98.5 %`."""
    if length == reading.meant:
        return "100 %"
    return f"{in_figures(f'{float(length) / reading.meant * 100:.1f}', words)} %"
