"""Words as marks: a line, a run of differently set words, a paragraph; rules and rectangles beside them."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from msgspec import Struct

from blockdsl.marks.display_list import Element, Mark, Path, TextMark, Weight, tagged
from blockdsl.marks.theme import BODY_PT, INK, LEADING, THIN_PT
from blockdsl.marks.typeset import CAP_HEIGHT, ellipsis, measure, words_of, wrap

# The first baseline stands this share of a line below its top, so that capitals look centred in their line.
_BASELINE_SHARE = 0.76
_CAPITALS_SHARE = CAP_HEIGHT

_JOIN: Final = "\ue000"  # stands for a space that holds while lines are broken, never printed
_MEASURE: Final = re.compile(
    r"(?<=\d) (?=[⁰¹²³⁴⁵⁶⁷⁸⁹]+⁄|\d+/)|(?<=[\d₀₁₂₃₄₅₆₇₈₉]) (?=(?:in|cm|mm|Zoll|po)\b|×)|(?<=×) "
)


class TextStyle(Struct, frozen=True):
    """How a run of words is set."""

    size_pt: float = BODY_PT
    weight: Weight = "regular"
    colour: str = INK

    @property
    def line_pt(self) -> float:
        """From one line to the next."""
        return self.size_pt * LEADING

    @property
    def baseline_pt(self) -> float:
        """From the top of a line to its baseline."""
        return self.line_pt * _BASELINE_SHARE

    @property
    def capitals_pt(self) -> float:
        """Height of its capitals and figures."""
        return self.size_pt * _CAPITALS_SHARE


BODY = TextStyle()


def width_of(text: str, style: TextStyle) -> float:
    """Width of the words in points."""
    return measure(text, style.size_pt, style.weight)


def line(text: str, x_pt: float, baseline_pt: float, style: TextStyle = BODY) -> tuple[Mark, ...]:
    """One line of words from its left end; nothing for no words."""
    if not text:
        return ()
    return (TextMark(x_pt, baseline_pt, text, style.size_pt, style.weight, style.colour),)


def line_ending(text: str, right_pt: float, baseline_pt: float, style: TextStyle = BODY) -> tuple[Mark, ...]:
    """One line of words that ends at `right_pt`."""
    return line(text, right_pt - width_of(text, style), baseline_pt, style)


def line_centred(text: str, x_pt: float, y_pt: float, style: TextStyle = BODY) -> tuple[Mark, ...]:
    """One line of words whose capitals have their middle at the point."""
    return line(text, x_pt - width_of(text, style) / 2, y_pt + style.capitals_pt / 2, style)


def fitted(text: str, width_pt: float, style: TextStyle = BODY) -> str:
    """The words, cut short with an ellipsis when they are wider than that."""
    return ellipsis(text, style.size_pt, style.weight, width_pt)


def runs(words: Sequence[tuple[str, TextStyle]], x_pt: float, baseline_pt: float) -> tuple[Mark, ...]:
    """Runs of different styles one after the other on one line."""
    marks: list[Mark] = []
    for text, style in words:
        marks += line(text, x_pt, baseline_pt, style)
        x_pt += width_of(text, style)
    return tuple(marks)


def lines_of(text: str, width_pt: float, style: TextStyle = BODY) -> list[str]:
    """The words broken into lines no wider than that."""
    return [words for part in text.splitlines() or [""] for words in _filled(together(part), width_pt, style)]


def together(text: str) -> list[str]:
    """Words, a number with its fraction and its unit counted as one word: a line never ends between them.

    Nor does it at a no-break space, as French writes before a colon and inside guillemets.
    """
    return [word.replace(_JOIN, " ") for word in words_of(_MEASURE.sub(_JOIN, text))]


def _filled(words: Sequence[str], width_pt: float, style: TextStyle) -> list[str]:
    lines: list[str] = []
    for word in words:
        if width_of(word, style) > width_pt:
            lines += wrap(word, style.size_pt, style.weight, width_pt)
            continue
        longer = f"{lines[-1]} {word}" if lines else word
        if lines and width_of(longer, style) <= width_pt:
            lines[-1] = longer
        else:
            lines.append(word)
    return lines or [""]


def paragraph(text: str, width_pt: float, style: TextStyle = BODY) -> tuple[float, tuple[Mark, ...]]:
    """Height and marks of words broken to a width, from (0, 0); they are read as one paragraph."""
    marks: list[Mark] = []
    lines = lines_of(text, width_pt, style)
    for place, words in enumerate(lines):
        marks += line(words, 0.0, place * style.line_pt + style.baseline_pt, style)
    return len(lines) * style.line_pt, tagged(marks, Element("P"))


def rule(y_pt: float, width_pt: float, colour: str = INK, thickness_pt: float = THIN_PT, x_pt: float = 0.0) -> Path:
    """A level line."""
    return Path((((x_pt, y_pt), (x_pt + width_pt, y_pt)),), closed=False, stroke=colour, stroke_width_pt=thickness_pt)


def rectangle(
    x_pt: float, y_pt: float, width_pt: float, height_pt: float, *, fill: str | None = None,
    stroke: str | None = None, stroke_width_pt: float = THIN_PT,
) -> Path:  # fmt: skip
    """An upright rectangle from its top left corner."""
    right, bottom = x_pt + width_pt, y_pt + height_pt
    ring = ((x_pt, y_pt), (right, y_pt), (right, bottom), (x_pt, bottom))
    return Path((ring,), fill=fill, stroke=stroke, stroke_width_pt=stroke_width_pt)
