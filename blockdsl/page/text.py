"""Words of content as marks: runs of different weight on lines no wider than there is room for, fractions set."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec.structs import replace

from blockdsl.document.content import RichText, TextRun
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Element, Mark, tagged
from blockdsl.marks.prose import TextStyle, lines_of, paragraph, runs, together, width_of
from blockdsl.marks.theme import ACCENT, BODY_PT, HEADING_PT, INK, LEAD_PT, QUIET, SMALL_PT
from blockdsl.marks.typeset import wrap

BODY: Final = TextStyle(BODY_PT, "regular", INK)
BOLD: Final = TextStyle(BODY_PT, "bold", INK)
QUIETLY: Final = TextStyle(BODY_PT, "regular", QUIET)
SMALL: Final = TextStyle(SMALL_PT, "regular", INK)
CAPTION: Final = TextStyle(SMALL_PT, "regular", QUIET)
LETTER: Final = TextStyle(BODY_PT, "bold", ACCENT)
LEAD: Final = TextStyle(LEAD_PT, "bold", INK)
HEADING: Final = TextStyle(HEADING_PT, "bold", INK)

Spans = Sequence[tuple[str, TextStyle]]


def plain_words(words: RichText) -> str:
    """The words of all runs, fractions set."""
    return fraction_text("".join(run.text for run in words))


def styled(run: TextRun, style: TextStyle) -> TextStyle:
    """The style of a run within words of a style; what is emphasised is bold, for there are no italics."""
    if run.weight in ("strong", "emphasis"):
        return replace(style, weight="bold")
    return replace(style, colour=QUIET) if run.weight == "quiet" else style


def spans_of(words: RichText, style: TextStyle) -> list[tuple[str, TextStyle]]:
    """Each run with its style."""
    return [(fraction_text(run.text), styled(run, style)) for run in words]


def rich(words: RichText, width_pt: float, style: TextStyle = BODY) -> tuple[float, tuple[Mark, ...]]:
    """Height and marks of words broken to a width, from (0, 0)."""
    if len(words) == 1:
        return paragraph(fraction_text(words[0].text), width_pt, styled(words[0], style))
    marks: list[Mark] = []
    lines = broken(spans_of(words, style), width_pt)
    for place, spans in enumerate(lines):
        marks += runs(spans, 0.0, place * style.line_pt + style.baseline_pt)
    return len(lines) * style.line_pt, tagged(marks, Element("P"))


def rich_lines(words: RichText, width_pt: float, style: TextStyle) -> list[list[tuple[str, TextStyle]]]:
    """The words as lines no wider than that."""
    if len(words) == 1:
        alone = styled(words[0], style)
        return [[(text, alone)] for text in lines_of(fraction_text(words[0].text), width_pt, alone)]
    return broken(spans_of(words, style), width_pt)


def broken(spans: Spans, width_pt: float) -> list[list[tuple[str, TextStyle]]]:
    """Lines no wider than that; words of different styles that touch are not parted."""
    lines: list[list[tuple[str, TextStyle]]] = [[]]
    x = 0.0
    for word in _joined(spans):
        if word is None:
            lines.append([])
            x = 0.0
            continue
        gap = width_of(" ", word[0][1]) if lines[-1] else 0.0
        width = sum(width_of(text, style) for text, style in word)
        if lines[-1] and x + gap + width > width_pt:
            lines.append([])
            x = gap = 0.0
        if width > width_pt:
            for piece in wrap("".join(text for text, _ in word), word[0][1].size_pt, word[0][1].weight, width_pt):
                lines[-1:] = [*([lines[-1]] if lines[-1] else []), [(piece, word[0][1])]]
            x = width_of(lines[-1][-1][0], word[0][1])
            continue
        if gap:
            lines[-1] = [*lines[-1][:-1], (lines[-1][-1][0] + " ", lines[-1][-1][1])]
        lines[-1] += word
        x += gap + width
    return [_merged(words) for words in lines]


def _joined(spans: Spans) -> list[list[tuple[str, TextStyle]] | None]:
    """Words as runs of one style or more; None is a line's end that the maker wants."""
    words: list[list[tuple[str, TextStyle]] | None] = []
    touching = False
    for text, style in spans:
        for number, part in enumerate(text.split("\n")):
            if number:
                words.append(None)
                touching = False
            pieces = together(part)
            if pieces and touching and not part[:1].isspace() and words and words[-1] is not None:
                words[-1].append((pieces.pop(0), style))
            words += [[(piece, style)] for piece in pieces]
            touching = bool(part) and not part[-1].isspace() if part else touching
    return words


def _merged(words: Spans) -> list[tuple[str, TextStyle]]:
    """Neighbouring runs of one style as one, so that the line is one run to those who take its text."""
    merged: list[tuple[str, TextStyle]] = []
    for text, style in words:
        if merged and merged[-1][1] == style:
            merged[-1] = (merged[-1][0] + text, style)
        else:
            merged.append((text, style))
    return merged
