"""The designer's notes, what the sizes mean, and the cautions: a name at the left, words at the right."""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from blockdsl.drawing.flow import Slice, moved
from blockdsl.drawing.marks import Mark
from blockdsl.drawing.prose import Style, line, lines_of, rule
from blockdsl.drawing.theme import BODY_PT, CONTENT_WIDTH_PT, GUTTER_PT, INK, STEP_PT, span_pt
from blockdsl.drawing.words import CAUTIONS, say_allowance, say_metric_rule, say_templates
from blockdsl.facts.blockfacts import BlockFacts

_NAME: Final = Style(BODY_PT, "bold", INK)
_BODY: Final = Style(BODY_PT, "regular", INK)
_LEFT_COLUMNS: Final = 3
_RIGHT_COLUMNS: Final = 9


def notes(facts: BlockFacts) -> list[Slice]:
    """All that is said in sentences, as slices of one line so that long notes run over pages."""
    sizes = [text for text in (say_allowance(facts), say_metric_rule(facts), say_templates(facts)) if text]
    return [*_section("Notes", facts.notes), *_section("About the sizes", sizes), *_section("Take care", CAUTIONS)]


def _section(name: str, texts: tuple[str, ...] | list[str]) -> list[Slice]:
    """A name beside its paragraphs, under a rule; nothing when there is nothing to say."""
    slices: list[Slice] = []
    left = span_pt(_LEFT_COLUMNS) + GUTTER_PT
    for text in texts:
        lines = lines_of(text, span_pt(_RIGHT_COLUMNS), _BODY)
        for place, words in enumerate(lines):
            marks = line(words, left, _BODY.baseline_pt, _BODY)
            before = STEP_PT if place == 0 and slices else 0.0
            keep = place in (0, len(lines) - 2)
            slices.append(Slice(_BODY.line_pt, marks, before_pt=before, keep=keep and place < len(lines) - 1))
    if not slices:
        return []
    top: list[Mark] = [rule(0.0, CONTENT_WIDTH_PT), *line(name, 0.0, 2 * STEP_PT + _NAME.baseline_pt, _NAME)]
    top += moved(slices[0].marks, 0.0, 2 * STEP_PT)
    height = slices[0].height_pt + 2 * STEP_PT
    slices[0] = replace(slices[0], height_pt=height, marks=tuple(top), before_pt=5 * STEP_PT)
    return slices
