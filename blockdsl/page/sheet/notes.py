"""What is said in sentences: the designer's notes, the block's source, at the end what the sizes mean and cautions."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec.structs import replace

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.prose import TextStyle, line, lines_of, paragraph, rule
from blockdsl.marks.theme import BODY_PT, CONTENT_WIDTH_PT, GUTTER_PT, INK, SMALL_PT, STEP_PT, span_pt
from blockdsl.page.flow import Flowable
from blockdsl.wording.applique import format_applique, is_told_in_a_step
from blockdsl.wording.bias import format_bias
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.sheet import (
    cautions,
    format_allowance,
    format_between_marks,
    format_drift,
    format_metric_rule,
    format_sources,
    format_squaring,
    format_templates,
)

_NAME: Final = TextStyle(BODY_PT, "bold", INK)
_BODY: Final = TextStyle(BODY_PT, "regular", INK)
_SMALL: Final = TextStyle(SMALL_PT, "regular", INK)
_CLOSING: Final = TextStyle(BODY_PT - 0.75, "regular", INK)
_LEFT_COLUMNS: Final = 3
_RIGHT_COLUMNS: Final = 9
_HALF_COLUMNS: Final = 6
_FEW_LINES: Final = 6
"""So many lines of small type stay on one page."""


def notes(facts: BlockFacts) -> list[Flowable]:
    """The designer's notes, where the block comes from, then the closing lines."""
    return [
        *designer_notes(facts),
        *_beside(words_of(facts)("sheet-source"), format_sources(facts), _SMALL),
        _closing(facts),
    ]


def applique_notes(facts: BlockFacts) -> list[Flowable]:
    """How appliqué is prepared and sewn on, where no step explains it; nothing for a block without."""
    return [] if is_told_in_a_step(facts) else _beside(words_of(facts)("sheet-applique"), format_applique(facts), _BODY)


def designer_notes(facts: BlockFacts | QuiltFacts) -> list[Flowable]:
    """A name beside its paragraphs; nothing without notes."""
    return _beside(words_of(facts)("sheet-notes"), facts.notes, _BODY)


def before_the_first_cut(facts: BlockFacts) -> list[Flowable]:
    """Where rounding to the ruler adds up, and what to do about it; nothing for most blocks."""
    return _beside(words_of(facts)("sheet-before-cutting"), format_drift(facts), _BODY)


def _beside(name: str, texts: Sequence[str], style: TextStyle) -> list[Flowable]:
    """A name beside its paragraphs, line by line so that long ones run over pages; nothing without words."""
    flowables: list[Flowable] = []
    left = span_pt(_LEFT_COLUMNS) + GUTTER_PT
    # Small words stand on the line of the name beside them.
    drop = _NAME.baseline_pt - style.baseline_pt
    for text in texts:
        lines = lines_of(text, span_pt(_RIGHT_COLUMNS), style)
        for place, words in enumerate(lines):
            marks = line(words, left, drop + style.baseline_pt, style)
            before = STEP_PT if place == 0 and flowables else 0.0
            keep = place in (0, len(lines) - 2) and place < len(lines) - 1
            flowables.append(Flowable(style.line_pt, marks, before_pt=before, keep_with_next=keep))
    if not flowables:
        return []
    if style is _SMALL and len(flowables) <= _FEW_LINES:
        flowables = [replace(piece, keep_with_next=place < len(flowables) - 1) for place, piece in enumerate(flowables)]
    top: list[Mark] = [rule(0.0, CONTENT_WIDTH_PT), *line(name, 0.0, 2 * STEP_PT + _NAME.baseline_pt, _NAME)]
    top += moved(flowables[0].marks, 0.0, 2 * STEP_PT)
    height = flowables[0].height_pt + 2 * STEP_PT
    flowables[0] = replace(flowables[0], height_pt=height, marks=tuple(top), before_pt=5 * STEP_PT)
    return flowables


def _closing(facts: BlockFacts) -> Flowable:
    """What the sizes mean at the left, the cautions at the right, under one rule."""
    says = (format_allowance, format_squaring, format_between_marks, format_metric_rule, format_templates, format_bias)
    sizes = [text for say in says if (text := say(facts))]
    return closing_flowable(sizes, words_of(facts))


def closing_flowable(sizes: Sequence[str], words: Messages) -> Flowable:
    """What is said of the sizes at the left, the cautions at the right, under one rule."""
    left_height, left = _column(words("sheet-sizes"), sizes)
    right_height, right = _column(words("sheet-care"), cautions(words))
    marks = (rule(0.0, CONTENT_WIDTH_PT), *left, *moved(right, span_pt(_HALF_COLUMNS) + GUTTER_PT, 0.0))
    return Flowable(max(left_height, right_height), marks, before_pt=5 * STEP_PT)


def _column(name: str, texts: Sequence[str]) -> tuple[float, tuple[Mark, ...]]:
    y = 2 * STEP_PT
    marks: list[Mark] = [*line(name, 0.0, y + _NAME.baseline_pt, _NAME)]
    y += _NAME.line_pt + STEP_PT / 2
    for text in texts:
        height, words = paragraph(text, span_pt(_HALF_COLUMNS), _CLOSING)
        marks += moved(words, 0.0, y)
        y += height + STEP_PT * 0.75
    return y, tuple(marks)
