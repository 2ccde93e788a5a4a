"""The steps on the sheet: two columns of cards, and the methods with all their pictures across the page."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.stepfacts import StepFacts
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.prose import TextStyle, line, line_ending, lines_of, paragraph, rectangle, width_of
from blockdsl.marks.theme import (
    ACCENT,
    BODY_PT,
    CONTENT_WIDTH_PT,
    GUTTER_PT,
    INK,
    LEAD_PT,
    QUIET,
    RULE,
    STEP_PT,
    TINT,
    Box,
    span_pt,
)
from blockdsl.page.flow import Flowable
from blockdsl.page.headings import continued, heading
from blockdsl.page.table import tick_cell
from blockdsl.pictures.hands import StepLook, hand_pictures, look_of
from blockdsl.pictures.scene import technique_picture
from blockdsl.pictures.step import arrow, dot, letter_mark, stitches
from blockdsl.wording import StepPart, StepText
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.step_pictures import format_too_many

_NUMBER: Final = TextStyle(LEAD_PT, "bold", ACCENT)
_NAME: Final = TextStyle(LEAD_PT, "bold", INK)
_BODY: Final = TextStyle(BODY_PT, "regular", INK)
_BOLD: Final = TextStyle(BODY_PT, "bold", INK)
_QUIET: Final = TextStyle(BODY_PT, "regular", QUIET)
_PICTURE_PT: Final = 104.0
_HANDS_PT: Final = 78.0
_WIDE_PT: Final = 150.0
_LESSON_PT: Final = 84.0
_MOST_WIDE: Final = 2
_INNER_PT: Final = 6.0


def step_list(facts: BlockFacts) -> list[Flowable]:
    """The section of steps; nothing for a block of one patch, a remark for one of too many."""
    steps = facts.steps
    if not steps:
        return _remark(facts)
    look = look_of(facts)
    has_dots = any(seam.dots for step in steps for hand in step.hands for stage in hand.stages for seam in stage.seams)
    words = look.words
    flowables = [heading(look.title, aside=words("steps-aside")), _key(words)]
    if has_dots:
        flowables.append(_key_of_dots(words))
    waiting: list[StepFacts] = []
    for step in steps:
        if any(part.picture is not None for part in look.text(step).parts):
            flowables += _cards(waiting, look)
            waiting = []
            flowables += _lesson(step, look)
        else:
            waiting.append(step)
    return [*flowables, *_cards(waiting, look)]


def _key(words: Messages) -> Flowable:
    """What the signs in the pictures mean."""
    height = _BODY.line_pt + STEP_PT
    middle = height / 2
    marks: list[Mark] = []
    x = y = 0.0
    for what, sign in (
        ("seam", stitches((0.0, middle), (24.0, middle))),
        ("press", arrow((4.0, middle), (18.0, middle), 13.0)),
        ("letter", letter_mark("A", 12.0, middle)),
    ):
        said = words(f"steps-key-{what}")
        wide = 30.0 + width_of(said, _BODY)
        if x and x + wide > CONTENT_WIDTH_PT:  # in a language of long words
            x, y = 0.0, y + height
        marks += moved((*sign, *line(said, 30.0, middle + _BODY.capitals_pt / 2, _BODY)), x, y)
        x += wide + 5 * STEP_PT
    return Flowable(y + height, tuple(marks), keep_with_next=True)


def _key_of_dots(words: Messages) -> Flowable:
    """The sign of seams that end short of the edge, where something is set in later."""
    height = _BODY.line_pt + STEP_PT
    middle = height / 2
    said = words("steps-key-dot")
    return Flowable(
        height, (dot(12.0, middle), *line(said, 30.0, middle + _BODY.capitals_pt / 2, _BODY)), keep_with_next=True
    )


def _remark(facts: BlockFacts) -> list[Flowable]:
    if facts.sewing is None or facts.sewing.is_told:
        return []
    height, words = paragraph(format_too_many(facts), CONTENT_WIDTH_PT, _BODY)
    return [heading(words_of(facts)("sheet-steps")), Flowable(height, words)]


# --- cards, two beside each other ------------------------------------------------------------------


def _cards(steps: list[StepFacts], look: StepLook) -> list[Flowable]:
    flowables = []
    for start in range(0, len(steps), 2):
        if start + 1 == len(steps):
            height, wide = _wide_card(steps[start], look)
            flowables.append(Flowable(height, wide, before_pt=4 * STEP_PT, head=(continued(look.title, look.words),)))
            break
        marks: list[Mark] = []
        height = 0.0
        for place, step in enumerate(steps[start : start + 2]):
            card_height, card = step_card(step, look, span_pt(6))
            marks += moved(card, place * (span_pt(6) + GUTTER_PT), 0.0)
            height = max(height, card_height)
        flowables.append(
            Flowable(height, tuple(marks), before_pt=4 * STEP_PT, head=(continued(look.title, look.words),))
        )
    return flowables


def _wide_card(step: StepFacts, look: StepLook) -> tuple[float, tuple[Mark, ...]]:
    """A card across the page, pictures at the left, words at the right: for the last of an odd number."""
    width, x = span_pt(7), span_pt(7) + GUTTER_PT
    height, marks = _pictures(step, look, width, _WIDE_PT)
    y, words = _text(step, look, span_pt(5), 0.0)
    return max(height, y), (*marks, *moved(words, x, 0.0))


def step_card(step: StepFacts, look: StepLook, width: float) -> tuple[float, tuple[Mark, ...]]:
    """Height and marks of one card: the pictures on a tinted ground, number and name, what to take, what to do."""
    height, marks = _pictures(step, look, width, _PICTURE_PT)
    y, words = _text(step, look, width, height + STEP_PT)
    return y, (*marks, *words)


def _text(step: StepFacts, look: StepLook, width: float, y: float) -> tuple[float, list[Mark]]:
    """Number and name, then what to do, from a height downward; where it ends."""
    text = look.text(step)
    y, marks = _head(text, width, y)
    for letter, part in text.lettered:
        tall, said = part_marks(f"{letter} ".lstrip(), part, width, _BODY)
        marks += moved(said, 0.0, y)
        y += tall
    return y, marks


def part_marks(letter: str, part: StepPart, width: float, style: TextStyle) -> tuple[float, tuple[Mark, ...]]:
    """Height and marks of one part of a step: its sentences, the measure on a line of its own, what follows."""
    height = 0.0
    marks: list[Mark] = []
    if part.sentences:
        height, words = paragraph(fraction_text(letter + " ".join(part.sentences)), width, style)
        marks += words
    if part.measure:
        bold = TextStyle(style.size_pt, "bold", INK)
        indent = style.size_pt + STEP_PT
        tall, words = paragraph(fraction_text(part.measure), width - indent, bold)
        marks += moved((*tick_cell(bold, style.size_pt * 0.8).marks,), 0.0, height)
        marks += moved(words, indent, height)
        height += tall
    if part.after:
        tall, words = paragraph(fraction_text(" ".join(part.after)), width, style)
        marks += moved(words, 0.0, height)
        height += tall
    return height, tuple(marks)


def _head(text: StepText, width: float, y: float) -> tuple[float, list[Mark]]:
    """Number and name at the left, how many at the right, the finished size below."""
    number = f"{text.number}  "
    indent = width_of(number, _NUMBER)
    room = width - indent - (width_of(text.made, _BOLD) + 2 * STEP_PT if text.made else 0.0)
    beside = bool(text.made) and room > width / 3
    marks: list[Mark] = [*line(number, 0.0, y + _NUMBER.baseline_pt, _NUMBER)]
    if beside:
        marks += line_ending(text.made, width, y + _NAME.baseline_pt, _BOLD)
    for words in lines_of(text.name, room if beside else width - indent, _NAME):
        marks += line(words, indent, y + _NAME.baseline_pt, _NAME)
        y += _NAME.line_pt
    below = " · ".join(filter(None, (text.size, "" if beside else text.made)))
    if below:
        tall, sizes = paragraph(fraction_text(below), width - indent, _QUIET)
        marks += moved(sizes, indent, y)
        y += tall
    return y + STEP_PT / 2, marks


def _pictures(step: StepFacts, look: StepLook, width: float, high: float) -> tuple[float, list[Mark]]:
    """The parts apart and joined; once more for the other hand."""
    each = high if len(step.hands) == 1 else _HANDS_PT
    height = each * len(step.hands)
    marks: list[Mark] = [rectangle(0.0, 0.0, width, height, fill=TINT)]
    for place in range(len(step.hands)):
        top = place * each
        marks += hand_pictures(step, place, look, Box(0.0, top, width, each))
        if place:
            marks.append(rectangle(0.0, top, width, 0.0, stroke=RULE, stroke_width_pt=0.4))
    return height, marks


# --- the steps of a method -------------------------------------------------------------------------


def _lesson(step: StepFacts, look: StepLook) -> list[Flowable]:
    """Number and name; then the parts of the method with their pictures, two to four across."""
    text = look.text(step)
    bottom, marks = _head(text, CONTENT_WIDTH_PT, 0.0)
    parts = text.lettered
    across = _across(len(parts))
    flowables = [
        Flowable(
            bottom + STEP_PT,
            tuple(marks),
            before_pt=4 * STEP_PT,
            keep_with_next=True,
            head=(continued(look.title, look.words),),
        )
    ]
    return [
        *flowables,
        *(_lesson_row(step, parts[start : start + across], across, look) for start in range(0, len(parts), across)),
    ]


def _across(parts: int) -> int:
    """How many parts lie beside each other: few are wide, so that their words are easy to read."""
    if parts <= _MOST_WIDE:
        return _MOST_WIDE
    return 4 if parts % 4 == 0 or parts % 3 == 1 else 3


def _lesson_row(step: StepFacts, parts: Sequence[tuple[str, StepPart]], across: int, look: StepLook) -> Flowable:
    width = span_pt(12 // across)
    marks: list[Mark] = []
    height = 0.0
    for place, (letter, part) in enumerate(parts):
        tall, card = lesson_card(step, part, letter, width, look)
        marks += moved(card, place * (width + GUTTER_PT), 0.0)
        height = max(height, tall)
    again = continued(look.words("steps-step-continued", number=step.number), look.words)
    return Flowable(height, tuple(marks), before_pt=2 * STEP_PT, head=(again,))


def lesson_card(
    step: StepFacts, part: StepPart, letter: str, width: float, look: StepLook
) -> tuple[float, tuple[Mark, ...]]:
    """One part of a method: its picture (for the right hand where there are two), letter and heading, words."""
    inner = Box(_INNER_PT, _INNER_PT, width - 2 * _INNER_PT, _LESSON_PT - 2 * _INNER_PT)
    marks: list[Mark] = [rectangle(0.0, 0.0, width, _LESSON_PT, fill=TINT)]
    if part.picture is not None:
        scene = step.lesson[part.picture].pictures[0]
        marks.append(technique_picture(scene, step.fabrics, look.unit, inner, look.language))
    y = _LESSON_PT + STEP_PT
    if letter:
        marks += line(letter, 0.0, y + _BOLD.baseline_pt, TextStyle(BODY_PT, "bold", ACCENT))
    if part.heading:
        marks += line(part.heading, width_of(f"{letter} ".lstrip(), _BOLD), y + _BOLD.baseline_pt, _BOLD)
    y += _BOLD.line_pt
    height, words = part_marks("", part, width, _BODY)
    return y + height, (*marks, *moved(words, 0.0, y))
