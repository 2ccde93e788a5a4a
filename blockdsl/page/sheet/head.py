"""The head of the sheet: name, sizes, the block in colour beside its lettered diagram, the key of fabrics."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec.structs import replace

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.geometry import to_float
from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.prose import TextStyle, line, lines_of, paragraph, rule
from blockdsl.marks.theme import (
    BODY_PT,
    BOLD_RULE_PT,
    CONTENT_WIDTH_PT,
    GUTTER_PT,
    INK,
    QUIET,
    SMALL_PT,
    STEP_PT,
    TITLE_PT,
    Box,
    span_pt,
)
from blockdsl.page.flow import Flowable
from blockdsl.page.sheet.fabrics import key_column, key_columns
from blockdsl.pictures.block import block_picture, letter_diagram
from blockdsl.pictures.placing import fit
from blockdsl.wording.grammar import many
from blockdsl.wording.lengths import show_extent
from blockdsl.wording.messages import words_of
from blockdsl.wording.sheet import format_grid

_TITLE_SIZES_PT: Final = (TITLE_PT, 22.0, 17.0)
_TITLE_LINES: Final = 2
_TITLE_LEADING: Final = 1.12
_CAPTION: Final = TextStyle(SMALL_PT, "regular", QUIET)
_LARGE_COLUMNS: Final = 7
_SMALL_COLUMNS: Final = 5
_WIDE: Final = 2.6
_TALL: Final = 0.6
_BEFORE_PT: Final = 3.5 * STEP_PT


def sheet_head(facts: BlockFacts) -> list[Flowable]:
    """Everything above the cutting table."""
    return [title_of(facts), _measures(facts), *pictures_of(facts)]


def title_of(facts: BlockFacts) -> Flowable:
    """The block's name under a strong rule."""
    return title_flowable(facts.name)


def title_flowable(name: str) -> Flowable:
    """A name under a strong rule, smaller when it is long, cut at no length."""
    for size in _TITLE_SIZES_PT:
        style = TextStyle(size, "bold", INK)
        lines = lines_of(name, CONTENT_WIDTH_PT, style)
        if len(lines) <= _TITLE_LINES:
            break
    top = 4 * STEP_PT
    pitch = style.size_pt * _TITLE_LEADING
    marks: list[Mark] = [rule(BOLD_RULE_PT / 2, CONTENT_WIDTH_PT, INK, BOLD_RULE_PT)]
    for place, words in enumerate(lines):
        marks += line(words, -0.04 * style.size_pt, top + style.capitals_pt + 2 + place * pitch, style)
    height = top + style.capitals_pt + 2 + (len(lines) - 1) * pitch + 4.5 * STEP_PT
    return Flowable(height, tuple(marks), keep_with_next=True)


def _measures(facts: BlockFacts) -> Flowable:
    """Finished and unfinished size, the grid, how much there is of it."""
    grid, unfinished_cell = format_grid(facts)
    words = words_of(facts)
    patches, fabrics = many(len(facts.placed), "patches", words), many(len(facts.fabrics), "fabrics", words)
    entries = (
        (words("sheet-finished"), show_extent(facts.finished, facts.unit, words_of(facts)), "", 3),
        (words("sheet-unfinished"), show_extent(facts.unfinished, facts.unit, words_of(facts)), "", 3),
        (words("sheet-grid"), grid, unfinished_cell, 4),
        (words("sheet-made-of"), patches, fabrics, 2),
    )
    return measures_flowable(entries)


def measures_flowable(entries: Sequence[tuple[str, str, str, int]]) -> Flowable:
    """Small names over what they are, with a quiet second line, each over so many of the twelve columns."""
    marks: list[Mark] = []
    x = height = 0.0
    for name, value, more, columns in entries:
        bottom, entry = _measure(name, value, more, span_pt(columns))
        marks += moved(entry, x, 0.0)
        height = max(height, bottom)
        x += span_pt(columns) + GUTTER_PT
    return Flowable(height, tuple(marks), keep_with_next=True)


def _measure(name: str, value: str, more: str, width_pt: float) -> tuple[float, tuple[Mark, ...]]:
    small, value_style = TextStyle(SMALL_PT, "regular", QUIET), TextStyle(BODY_PT + 1, "regular", INK)
    height, words = paragraph(value, width_pt, value_style)
    y = small.line_pt + 1
    marks = [*line(name, 0.0, small.baseline_pt, small), *moved(words, 0.0, y)]
    y += height
    if more:
        height, words = paragraph(more, width_pt, TextStyle(BODY_PT, "regular", QUIET))
        marks += moved(words, 0.0, y)
        y += height
    return y, tuple(marks)


def pictures_of(facts: BlockFacts) -> list[Flowable]:
    """The block in colour, its letters, the key of fabrics, arranged by the block's proportion."""
    ratio = to_float(facts.finished[0]) / to_float(facts.finished[1])
    if ratio >= _WIDE:
        return _one_under_the_other(facts)
    if ratio <= _TALL:
        return _three_beside(facts)
    return _two_beside(facts)


def _two_beside(facts: BlockFacts) -> list[Flowable]:
    """Colour at the left, letters at the right, the key under the letters.

    A key that would hang below the picture goes under both, and then both pictures are of one size.
    """
    large, small = span_pt(_LARGE_COLUMNS), span_pt(_SMALL_COLUMNS)
    key_height, key = key_column(facts.fabrics, small, words_of(facts))
    letters_height = fit(facts.finished, Box(0.0, 0.0, small, small))[1].height_pt
    if letters_height + _CAPTION.line_pt + 3 * STEP_PT + key_height <= large:
        height, marks, bottom = _pair(facts, large, small)
        top = max(bottom + 2 * STEP_PT, height - key_height)
        marks += moved(key, large + GUTTER_PT, top)
        return [Flowable(max(height, top + key_height), marks, before_pt=_BEFORE_PT)]
    height, marks, _ = _pair(facts, span_pt(6), span_pt(6))
    return [Flowable(height, marks, before_pt=_BEFORE_PT), *_key_below(facts)]


def _pair(facts: BlockFacts, left_pt: float, right_pt: float) -> tuple[float, tuple[Mark, ...], float]:
    """Both pictures beside each other: their height, their marks, and where the right one with its caption ends."""
    colour, colour_box = block_picture(facts, Box(0.0, 0.0, left_pt, left_pt))
    bottom, letters = _lettered(facts, Box(0.0, 0.0, right_pt, right_pt))
    marks = (colour, *moved(letters, left_pt + GUTTER_PT, 0.0))
    return max(colour_box.height_pt, bottom), marks, bottom


def _lettered(facts: BlockFacts, box: Box) -> tuple[float, tuple[Mark, ...]]:
    """The lettered diagram with its caption: where they end, and their marks."""
    letters, filled = letter_diagram(facts, box)
    top = filled.bottom_pt + STEP_PT
    caption = line(words_of(facts)("sheet-letters"), filled.x_pt, top + _CAPTION.baseline_pt, _CAPTION)
    return top + _CAPTION.line_pt, (letters, *caption)


def _three_beside(facts: BlockFacts) -> list[Flowable]:
    """For a tall block: colour, letters and key, four columns of the page each."""
    width, height = span_pt(4), span_pt(_LARGE_COLUMNS)
    colour, colour_box = block_picture(facts, Box(0.0, 0.0, width, height))
    bottom, letters = _lettered(facts, Box(0.0, 0.0, width, height))
    key_height, key = key_column(facts.fabrics, width, words_of(facts))
    below = key_height > height
    marks = (colour, *moved(letters, width + GUTTER_PT, 0.0))
    marks += () if below else moved(key, 2 * (width + GUTTER_PT), 0.0)
    pictures = Flowable(max(colour_box.height_pt, bottom, 0.0 if below else key_height), marks, before_pt=_BEFORE_PT)
    return [pictures, *(_key_below(facts) if below else [])]


def _one_under_the_other(facts: BlockFacts) -> list[Flowable]:
    """For a wide block: colour and letters over the whole width, then the key."""
    colour, colour_box = block_picture(facts, Box(0.0, 0.0, CONTENT_WIDTH_PT, CONTENT_WIDTH_PT))
    bottom, letters = _lettered(facts, Box(0.0, 0.0, CONTENT_WIDTH_PT, CONTENT_WIDTH_PT))
    return [
        Flowable(colour_box.height_pt, (colour,), before_pt=_BEFORE_PT),
        Flowable(bottom, letters, before_pt=3 * STEP_PT),
        *_key_below(facts),
    ]


def _key_below(facts: BlockFacts) -> list[Flowable]:
    rows = key_columns(facts.fabrics, CONTENT_WIDTH_PT, words_of(facts))
    return [replace(rows[0], before_pt=3 * STEP_PT), *rows[1:]] if rows else []
