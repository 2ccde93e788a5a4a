"""One step as a page of its own, 16 to 9: for a screen, a class, a film."""

from __future__ import annotations

from typing import Final

from blockdsl.drawing.flow import moved
from blockdsl.drawing.marks import Mark, Page
from blockdsl.drawing.prose import Style, fitted, line, line_ending, paragraph, rectangle, width_of
from blockdsl.drawing.steps import hand_pictures, look_of
from blockdsl.drawing.steps_words import labels_of, say_take
from blockdsl.drawing.technique_picture import technique_picture
from blockdsl.drawing.theme import ACCENT, INK, QUIET, TINT, Box
from blockdsl.drawing.typeset import fraction_text
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.stepfacts import StepFacts

WIDTH_PT: Final = 960.0
HEIGHT_PT: Final = 540.0
PIXELS_AN_INCH: Final = 144
"""At which the page is 1920 × 1080 pixels."""

_MARGIN_PT: Final = 36.0
_TOP_PT: Final = 84.0
_BOTTOM_PT: Final = 506.0
_WORDS_PT: Final = 300.0
_GAP_PT: Final = 24.0
_SIGNS: Final = 2.0
_SIZES_PT: Final = (17.0, 15.0, 13.5, 12.0, 10.5, 9.5, 8.5, 7.5)
_TITLE: Final = Style(28.0, "bold", INK)
_NUMBER: Final = Style(28.0, "bold", ACCENT)
_SMALL: Final = Style(12.0, "regular", QUIET)


def step_page(facts: BlockFacts, number: int) -> Page:
    """Step `number` of the block, from 1: its pictures large, what to take and what to do beside them.

    Units:  960 × 540 pt; at 144 pixels to the inch 1920 × 1080.
    Errors: ValueError when the block has no such step.
    """
    step = next((each for each in facts.steps if each.number == number), None)
    if step is None:
        raise ValueError(f"{facts.name} has no step {number}; it has {len(facts.steps)}")
    body = _lesson(facts, step) if step.lesson else _pieced(facts, step)
    return Page(WIDTH_PT, HEIGHT_PT, (*_head(step), *body, *_foot(facts, step)))


def _head(step: StepFacts) -> tuple[Mark, ...]:
    number, count = f"{step.number}  ", f"make {step.count}" if step.count > 1 else ""
    x = _MARGIN_PT + width_of(number, _NUMBER)
    room = WIDTH_PT - _MARGIN_PT - x - width_of(count, _TITLE) - _GAP_PT
    baseline = _MARGIN_PT + _TITLE.baseline_pt - 6.0
    return (
        *line(number, _MARGIN_PT, baseline, _NUMBER),
        *line(fitted(step.title, room, _TITLE), x, baseline, _TITLE),
        *line_ending(count, WIDTH_PT - _MARGIN_PT, baseline, _TITLE),
    )


def _foot(facts: BlockFacts, step: StepFacts) -> tuple[Mark, ...]:
    words = f"step {step.number} of {len(facts.steps)}"
    baseline = HEIGHT_PT - 14.0
    return (
        *line(fitted(facts.name, WIDTH_PT / 2, _SMALL), _MARGIN_PT, baseline, _SMALL),
        *line_ending(words, WIDTH_PT - _MARGIN_PT, baseline, _SMALL),
    )


def _pieced(facts: BlockFacts, step: StepFacts) -> list[Mark]:
    """Pictures at the left, one band for each hand; words at the right, as large as they fit."""
    width = WIDTH_PT - 2 * _MARGIN_PT - _WORDS_PT - _GAP_PT
    height = _BOTTOM_PT - _TOP_PT
    each = height / len(step.hands)
    marks: list[Mark] = [rectangle(_MARGIN_PT, _TOP_PT, width, height, fill=TINT)]
    look = look_of(facts)
    for place in range(len(step.hands)):
        box = Box(_MARGIN_PT, _TOP_PT + place * each, width, each)
        marks += hand_pictures(step, place, look, box, _SIGNS)
    x = _MARGIN_PT + width + _GAP_PT
    return [
        *marks,
        *moved(_words([say_take(step, look.labels, look.unit), *step.sentences], _WORDS_PT, height), x, _TOP_PT),
    ]


def _words(sentences: list[str], width: float, height: float) -> tuple[Mark, ...]:
    """The first quiet, each sentence a paragraph, in the largest type in which all of it fits."""
    marks: list[Mark] = []
    for size in _SIZES_PT:
        marks, y = [], 0.0
        for place, sentence in enumerate(filter(None, sentences)):
            style = Style(size, "regular", QUIET if place == 0 else INK)
            tall, words = paragraph(fraction_text(sentence), width, style)
            marks += moved(words, 0.0, y)
            y += tall + size * 0.45
        if y <= height:
            break
    return tuple(marks)


def _lesson(facts: BlockFacts, step: StepFacts) -> list[Mark]:
    """The method's pictures in one or two rows, each with its words below it."""
    lead = Style(13.0, "regular", QUIET)
    tall, words = paragraph(
        fraction_text(f"{say_take(step, labels_of(facts), facts.unit)} {step.sentences[-1]}"), WIDTH_PT - 72.0, lead
    )
    marks: list[Mark] = [*moved(words, _MARGIN_PT, _TOP_PT - 6.0)]
    top = _TOP_PT + tall + 2.0
    across = len(step.lesson) if len(step.lesson) <= 4 else (len(step.lesson) + 1) // 2
    rows = -(-len(step.lesson) // across)
    width = (WIDTH_PT - 2 * _MARGIN_PT - (across - 1) * _GAP_PT) / across
    height = (_BOTTOM_PT - top - (rows - 1) * 12.0) / rows
    picture = height * 0.5
    size = _lesson_size(step, width, height - picture - 6.0)
    for place, each in enumerate(step.lesson):
        x, y = _MARGIN_PT + place % across * (width + _GAP_PT), top + place // across * (height + 12.0)
        marks.append(rectangle(x, y, width, picture, fill=TINT))
        inner = Box(x + 8.0, y + 8.0, width - 16.0, picture - 16.0)
        marks.append(technique_picture(each.pictures[0], step.fabrics, facts.unit, inner))
        bold = Style(size, "bold", INK)
        name = f"{step.number}{chr(ord('a') + place)}  {each.title}"
        marks += line(name, x, y + picture + 6.0 + bold.baseline_pt, bold)
        _, told = paragraph(fraction_text(each.text), width, Style(size, "regular", INK))
        marks += moved(told, x, y + picture + 6.0 + bold.line_pt)
    return marks


def _lesson_size(step: StepFacts, width: float, height: float) -> float:
    """The largest type in which the words of every picture fit below it."""
    for size in _SIZES_PT:
        style = Style(size, "regular", INK)
        tall = max(paragraph(fraction_text(each.text), width, style)[0] for each in step.lesson)
        if tall + style.line_pt <= height:
            break
    return size
