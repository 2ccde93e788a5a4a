"""The head of the sheet: name, sizes, the block in colour beside its line drawing, the key of fabrics."""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from blockdsl.drawing.diagram import block_picture, letter_diagram
from blockdsl.drawing.flow import Slice, moved
from blockdsl.drawing.lengths import show_extent
from blockdsl.drawing.marks import Mark
from blockdsl.drawing.prose import Style, line, lines_of, paragraph, rule
from blockdsl.drawing.sheet_fabrics import key_column, key_columns
from blockdsl.drawing.theme import (
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
from blockdsl.drawing.words import many, say_grid
from blockdsl.facts.blockfacts import BlockFacts

_TITLE_SIZES_PT: Final = (TITLE_PT, 22.0, 17.0)
_TITLE_LINES: Final = 2
_TITLE_LEADING: Final = 1.12
_CAPTION: Final = Style(SMALL_PT, "regular", QUIET)
_LARGE_COLUMNS: Final = 7
_SMALL_COLUMNS: Final = 5
_KEY_COLUMNS: Final = 3


def sheet_head(facts: BlockFacts) -> list[Slice]:
    """Everything above the cutting table."""
    return [_title(facts), _measures(facts), *_pictures(facts)]


def _title(facts: BlockFacts) -> Slice:
    """The name under a strong rule, smaller when it is long, cut at no length."""
    for size in _TITLE_SIZES_PT:
        style = Style(size, "bold", INK)
        lines = lines_of(facts.name, CONTENT_WIDTH_PT, style)
        if len(lines) <= _TITLE_LINES:
            break
    top = 4 * STEP_PT
    pitch = style.size_pt * _TITLE_LEADING
    marks: list[Mark] = [rule(BOLD_RULE_PT / 2, CONTENT_WIDTH_PT, INK, BOLD_RULE_PT)]
    for place, words in enumerate(lines):
        marks += line(words, -0.04 * style.size_pt, top + style.capitals_pt + 2 + place * pitch, style)
    height = top + style.capitals_pt + 2 + (len(lines) - 1) * pitch + 4.5 * STEP_PT
    return Slice(height, tuple(marks), keep=True)


def _measures(facts: BlockFacts) -> Slice:
    """Finished and unfinished size, the grid, how much there is of it: small names over what they are."""
    grid, unfinished_cell = say_grid(facts)
    entries = (
        ("Finished", show_extent(facts.finished, facts.unit), "", 3),
        ("Unfinished", show_extent(facts.unfinished, facts.unit), "", 3),
        ("Grid, finished", grid, unfinished_cell, 4),
        ("Made of", many(len(facts.placed), "patch", "patches"), many(len(facts.fabrics), "fabric"), 2),
    )
    marks: list[Mark] = []
    x = height = 0.0
    for name, value, more, columns in entries:
        bottom, entry = _measure(name, value, more, span_pt(columns))
        marks += moved(entry, x, 0.0)
        height = max(height, bottom)
        x += span_pt(columns) + GUTTER_PT
    return Slice(height, tuple(marks), keep=True)


def _measure(name: str, value: str, more: str, width_pt: float) -> tuple[float, tuple[Mark, ...]]:
    small, value_style = Style(SMALL_PT, "regular", QUIET), Style(BODY_PT + 1, "regular", INK)
    height, words = paragraph(value, width_pt, value_style)
    y = small.line_pt + 1
    marks = [*line(name, 0.0, small.baseline_pt, small), *moved(words, 0.0, y)]
    y += height
    if more:
        height, words = paragraph(more, width_pt, Style(BODY_PT, "regular", QUIET))
        marks += moved(words, 0.0, y)
        y += height
    return y, tuple(marks)


def _pictures(facts: BlockFacts) -> list[Slice]:
    """The block in colour at the left, its letters at the right; the key under the letters, or under both."""
    large, small = span_pt(_LARGE_COLUMNS), span_pt(_SMALL_COLUMNS)
    colour, colour_box = block_picture(facts, Box(0.0, 0.0, large, large))
    letters, letters_box = letter_diagram(facts, Box(0.0, 0.0, small, small))
    right = large + GUTTER_PT
    caption = "Patches by letter"
    marks: list[Mark] = [colour, *moved([letters], right, 0.0)]
    letters_bottom = letters_box.height_pt + 1.5 * STEP_PT
    marks += line(caption, right, letters_bottom + _CAPTION.baseline_pt - 3, _CAPTION)
    letters_bottom += _CAPTION.line_pt
    height = max(colour_box.height_pt, letters_bottom)
    key_height, key = key_column(facts.fabrics, small)
    room = large - letters_bottom - 2 * STEP_PT
    if key_height <= room:
        top = max(letters_bottom + 2 * STEP_PT, height - key_height)
        marks += moved(key, right, top)
        return [Slice(max(height, top + key_height), tuple(marks), before_pt=4 * STEP_PT)]
    rows = key_columns(facts.fabrics, CONTENT_WIDTH_PT, _KEY_COLUMNS)
    rows[0] = replace(rows[0], before_pt=3 * STEP_PT)
    return [Slice(height, tuple(marks), before_pt=4 * STEP_PT), *rows]
