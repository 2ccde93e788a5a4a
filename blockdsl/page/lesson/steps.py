"""The numbered steps of a technique as rows of cards, each with its picture, and the key to the pictures."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec import Struct

from blockdsl.facts.blockfacts import FabricFacts
from blockdsl.facts.techniquefacts import LineKind, Step, TechniqueSection
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.prose import TextStyle, fitted, line, paragraph, rectangle, runs, width_of
from blockdsl.marks.theme import (
    ACCENT,
    BODY_PT,
    CONTENT_WIDTH_PT,
    GUTTER_PT,
    INK,
    LEAD_PT,
    QUIET,
    SMALL_PT,
    STEP_PT,
    TINT,
    Box,
    span_pt,
)
from blockdsl.page.flow import Flowable
from blockdsl.pictures.scene import arrow_marks, cloth_marks, line_marks, technique_picture
from blockdsl.wording.lessons import step_title, step_words
from blockdsl.wording.messages import Messages, words_of

_INNER_PT: Final = 5.0
_TOLD_PT: Final = 7.0
_ACROSS: Final = 3
_NUMBER: Final = TextStyle(LEAD_PT, "bold", ACCENT)
_TITLE: Final = TextStyle(LEAD_PT, "bold", INK)
_BODY: Final = TextStyle(BODY_PT, "regular", INK)
_QUIET: Final = TextStyle(SMALL_PT, "regular", QUIET)


class _Cards(Struct, frozen=True):
    """What the cards of a section have in common."""

    section: TechniqueSection
    picture_pt: float


def step_rows(section: TechniqueSection, picture_pt: float) -> list[Flowable]:
    """The steps, three pictures of that height across; a pair of pictures takes two places."""
    rows = _rows(section.steps)
    flowables = []
    number = 1
    for place, row in enumerate(rows):
        pictures = sum(len(step.pictures) for step in row)
        # A row that a pair would not fit into is spread over the page; the last one keeps its places.
        columns = 12 // (pictures if place < len(rows) - 1 else max(pictures, _ACROSS))
        flowables.append(_row(_Cards(section, picture_pt), row, number, columns))
        number += len(row)
    return flowables


def _rows(steps: Sequence[Step]) -> list[list[Step]]:
    rows: list[list[Step]] = [[]]
    taken = 0
    for step in steps:
        if taken + len(step.pictures) > _ACROSS:
            rows.append([])
            taken = 0
        rows[-1].append(step)
        taken += len(step.pictures)
    return _without_a_lone_step(rows)


def _without_a_lone_step(rows: list[list[Step]]) -> list[list[Step]]:
    """A single picture at the end joins the row before it, which then has four smaller ones."""
    lone = rows[-1]
    if len(rows) > 1 and len(lone) == 1 and len(lone[0].pictures) == 1:
        before = [*rows[-2], *lone]
        if sum(len(step.pictures) for step in before) <= _ACROSS + 1:
            return [*rows[:-2], before]
    return rows


def _row(cards: _Cards, row: Sequence[Step], first: int, columns: int) -> Flowable:
    marks: list[Mark] = []
    x = height = 0.0
    for place, step in enumerate(row):
        width = span_pt(columns * len(step.pictures))
        card_height, card = _card(cards, step, first + place, width)
        marks += moved(card, x, 0.0)
        height = max(height, card_height)
        x += width + GUTTER_PT
    return Flowable(height, tuple(marks), before_pt=3 * STEP_PT)


def _card(cards: _Cards, step: Step, number: int, width: float) -> tuple[float, tuple[Mark, ...]]:
    """Pictures on a tinted ground, the number and name of the step, what to do."""
    section = cards.section
    marks: list[Mark] = [rectangle(0.0, 0.0, width, cards.picture_pt, fill=TINT)]
    each = width / len(step.pictures)
    for place, picture in enumerate(step.pictures):
        told = _TOLD_PT if picture.hand else 0.0
        height = cards.picture_pt - 2 * _INNER_PT - told
        inner = Box(place * each + _INNER_PT, _INNER_PT + told, each - 2 * _INNER_PT, height)
        marks.append(technique_picture(picture, section.fabrics, section.unit, inner, section.language))
        if picture.hand:
            hand = words_of(section)(f"hand-{picture.hand}")
            marks += line(hand, place * each + 2 * STEP_PT, _INNER_PT + SMALL_PT - 2.0, _QUIET)
    y = cards.picture_pt + STEP_PT
    title = fitted(step_title(step, section), width - width_of(f"{number}  ", _NUMBER), _TITLE)
    marks += runs([(f"{number}  ", _NUMBER), (title, _TITLE)], 0.0, y + _TITLE.baseline_pt)
    y += _TITLE.line_pt
    height, words = paragraph(fraction_text(step_words(step, section)), width, _BODY)
    marks += moved(words, 0.0, y)
    return y + height, tuple(marks)


# --- the key ---------------------------------------------------------------------------------------


def picture_key(fabrics: Sequence[FabricFacts], words: Messages) -> Flowable:
    """What the pictures' signs mean, in one line, or two in a language of long words."""
    height = 18.0
    middle = height / 2
    fabric = max(fabrics, key=lambda each: ("light", "medium", "dark").index(each.value))
    ring = ((0.0, middle - 6), (20.0, middle - 6), (20.0, middle + 6), (0.0, middle + 6))
    signs: list[tuple[str, tuple[Mark, ...], float]] = [
        ("right-side", cloth_marks(ring, fabric, wrong=False), 20.0),
        ("wrong-side", cloth_marks(ring, fabric, wrong=True), 20.0),
    ]
    lines: tuple[tuple[str, LineKind], ...] = (("pencil-line", "drawn"), ("seam", "sewn"), ("cut", "cut"))
    signs += [(sign, line_marks(kind, (0.0, middle), (24.0, middle)), 24.0) for sign, kind in lines]
    signs.append(("press", arrow_marks((0.0, middle), (20.0, middle)), 20.0))
    marks: list[Mark] = []
    x = y = 0.0
    for sign, drawn, wide in signs:
        said = words(f"sign-{sign}")
        start = wide + 1.5 * STEP_PT
        end = start + width_of(said, _BODY)
        if x and x + end > CONTENT_WIDTH_PT:
            x, y = 0.0, y + height
        marks += moved((*drawn, *line(said, start, middle + _BODY.capitals_pt / 2, _BODY)), x, y)
        x += end + 4 * STEP_PT
    return Flowable(y + height, tuple(marks), before_pt=2 * STEP_PT)
