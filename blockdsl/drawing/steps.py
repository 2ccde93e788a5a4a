"""The steps on the sheet: two columns of cards, and the methods with all their pictures across the page."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Final

from blockdsl.drawing.diagram import Fabrics, fabrics_of
from blockdsl.drawing.flow import Slice, moved
from blockdsl.drawing.marks import Mark
from blockdsl.drawing.prose import (
    Style,
    continued,
    heading,
    line,
    line_ending,
    lines_of,
    paragraph,
    rectangle,
    width_of,
)
from blockdsl.drawing.steps_picture import apart_picture, arrow, dot, joined_picture, letter_mark, stitches
from blockdsl.drawing.steps_words import TOO_MANY, labels_of, say_apart, say_joined, say_take
from blockdsl.drawing.technique_picture import technique_picture
from blockdsl.drawing.theme import (
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
from blockdsl.drawing.typeset import fraction_text
from blockdsl.facts.blockfacts import BlockFacts, RulerUnit
from blockdsl.facts.stepfacts import LessonStep, StepFacts, Variant
from blockdsl.geometry import to_float


@dataclass(frozen=True, slots=True)
class StepLook:
    """What all cards of a block share: its fabrics and their labels, its ruler, and methods told already by step."""

    fabrics: Fabrics
    labels: dict[str, str]
    unit: RulerUnit
    told: dict[tuple[str, ...], int] = field(default_factory=dict)


def look_of(facts: BlockFacts) -> StepLook:
    """The look of a block's steps, nothing told yet."""
    return StepLook(fabrics_of(facts), labels_of(facts), facts.unit)


TITLE: Final = "Steps"
_NUMBER: Final = Style(LEAD_PT, "bold", ACCENT)
_NAME: Final = Style(LEAD_PT, "bold", INK)
_BODY: Final = Style(BODY_PT, "regular", INK)
_BOLD: Final = Style(BODY_PT, "bold", INK)
_QUIET: Final = Style(BODY_PT, "regular", QUIET)
_PICTURE_PT: Final = 104.0
_HANDS_PT: Final = 78.0
_WIDE_PT: Final = 150.0
_LESSON_PT: Final = 84.0
_INNER_PT: Final = 6.0
_ARROW_ROOM_PT: Final = 20.0


def step_list(facts: BlockFacts) -> list[Slice]:
    """The section of steps; nothing for a block of one patch, a remark for one of too many."""
    steps = facts.steps
    if not steps:
        return _remark(facts)
    look = look_of(facts)
    has_dots = any(seam.dots for step in steps for hand in step.hands for stage in hand.stages for seam in stage.seams)
    slices = [heading(TITLE, aside="sew in this order; the pictures show the right side, finished"), _key()]
    if has_dots:
        slices.append(_key_of_dots())
    waiting: list[StepFacts] = []
    for step in steps:
        if step.lesson and _words_of(step) not in look.told:
            slices += _cards(waiting, look)
            waiting = []
            slices += _lesson(step, look)
            look.told[_words_of(step)] = step.number
        else:
            waiting.append(step)
    return [*slices, *_cards(waiting, look)]


def _key() -> Slice:
    """What the signs in the pictures mean."""
    height = _BODY.line_pt + STEP_PT
    middle = height / 2
    marks: list[Mark] = []
    x = 0.0
    for words, sign in (
        ("seam to sew now", stitches((0.0, middle), (24.0, middle))),
        ("press the allowances this way", arrow((4.0, middle), (18.0, middle), 13.0)),
        ("patch, by its letter in the line drawing", letter_mark("A", 12.0, middle)),
    ):
        marks += moved(sign, x, 0.0)
        marks += line(words, x + 30.0, middle + _BODY.capitals_pt / 2, _BODY)
        x += 30.0 + width_of(words, _BODY) + 5 * STEP_PT
    return Slice(height, tuple(marks), keep=True)


def _key_of_dots() -> Slice:
    """The sign of seams that end short of the edge, where something is set in later."""
    height = _BODY.line_pt + STEP_PT
    middle = height / 2
    said = "stop a seam allowance from the edge: something is set in here later"
    return Slice(height, (dot(12.0, middle), *line(said, 30.0, middle + _BODY.capitals_pt / 2, _BODY)), keep=True)


def _words_of(step: StepFacts) -> tuple[str, ...]:
    return tuple(each.text for each in step.lesson)


def _remark(facts: BlockFacts) -> list[Slice]:
    if facts.sewing is None or facts.sewing.is_told:
        return []
    height, words = paragraph(TOO_MANY.format(count=len(facts.placed)), CONTENT_WIDTH_PT, _BODY)
    return [heading(TITLE), Slice(height, words)]


# --- cards, two beside each other ------------------------------------------------------------------


def _cards(steps: list[StepFacts], look: StepLook) -> list[Slice]:
    slices = []
    for start in range(0, len(steps), 2):
        if start + 1 == len(steps):
            height, wide = _wide_card(steps[start], look)
            slices.append(Slice(height, wide, before_pt=4 * STEP_PT, head=(continued(TITLE),)))
            break
        marks: list[Mark] = []
        height = 0.0
        for place, step in enumerate(steps[start : start + 2]):
            card_height, card = step_card(step, look, span_pt(6))
            marks += moved(card, place * (span_pt(6) + GUTTER_PT), 0.0)
            height = max(height, card_height)
        slices.append(Slice(height, tuple(marks), before_pt=4 * STEP_PT, head=(continued(TITLE),)))
    return slices


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
    """Number and name, what to take, what to do, from a height downward; where it ends."""
    y, marks = _head(step, width, y)
    for text, style in ((say_take(step, look.labels, look.unit), _QUIET), (_sentences(step, look), _BODY)):
        if text:
            tall, lines = paragraph(fraction_text(text), width, style)
            marks += moved(lines, 0.0, y)
            y += tall
    return y, marks


def _sentences(step: StepFacts, look: StepLook) -> str:
    """What to do; how many to make stands beside the name already."""
    if not step.lesson:
        return " ".join(sentence for sentence in step.sentences if sentence != f"Make {step.count}.")
    return f"Do as in step {look.told.get(_words_of(step), 1)}, with these pieces. {_often(step)}"


def _often(step: StepFacts) -> str:
    return step.sentences[-1] if step.sentences[-1] != f"Make {step.count}." else ""


def _head(step: StepFacts, width: float, y: float) -> tuple[float, list[Mark]]:
    """Number and name at the left, how many at the right."""
    number = f"{step.number}  "
    count = f"make {step.count}" if step.count > 1 else ""
    indent = width_of(number, _NUMBER)
    room = width - indent - (width_of(count, _BOLD) + 2 * STEP_PT if count else 0.0)
    marks: list[Mark] = [*line(number, 0.0, y + _NUMBER.baseline_pt, _NUMBER)]
    marks += line_ending(count, width, y + _NAME.baseline_pt, _BOLD)
    for words in lines_of(step.title, room, _NAME):
        marks += line(words, indent, y + _NAME.baseline_pt, _NAME)
        y += _NAME.line_pt
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


def hand_pictures(step: StepFacts, place: int, look: StepLook, box: Box, size: float = 1.0) -> tuple[Mark, ...]:
    """The two pictures of one hand in a box, an arrow between them; one alone for what a method makes.

    Side by side, or one above the other where they come out larger so.
    """
    hand = step.hands[place]
    edge = _INNER_PT * size
    inner = Box(box.x_pt + edge, box.y_pt + edge, box.width_pt - 2 * edge, box.height_pt - 2 * edge)
    if not hand.ingredients:
        return (joined_picture(hand, look.fabrics, inner, f"Step {step.number}: {step.makes}.", size)[0],)
    first, second, turned = _halves(hand, inner, _ARROW_ROOM_PT * size)
    apart, _ = apart_picture(hand, look.fabrics, first, say_apart(step, look.labels), size)
    joined, _ = joined_picture(hand, look.fabrics, second, say_joined(step), size)
    x, y = (first.right_pt + second.x_pt) / 2, (first.bottom_pt + second.y_pt) / 2
    reach = 6.0 * size
    if turned:
        x = inner.x_pt + inner.width_pt / 2
        return (apart, *arrow((x, y - reach), (x, y + reach), 10.0 * size), joined)
    y = inner.y_pt + inner.height_pt / 2
    return (apart, *arrow((x - reach, y), (x + reach, y), 10.0 * size), joined)


def _halves(hand: Variant, box: Box, between: float) -> tuple[Box, Box, bool]:
    """Boxes for the two pictures, and whether they lie one above the other."""
    wide, high = (to_float(side) for side in hand.extent)
    across, down = (box.width_pt - between) / 2, (box.height_pt - between) / 2
    beside = min(across / wide, box.height_pt / high)
    below = min(box.width_pt / wide, down / high)
    if beside >= below:
        right = Box(box.x_pt + across + between, box.y_pt, across, box.height_pt)
        return Box(box.x_pt, box.y_pt, across, box.height_pt), right, False
    lower = Box(box.x_pt, box.y_pt + down + between, box.width_pt, down)
    return Box(box.x_pt, box.y_pt, box.width_pt, down), lower, True


# --- the steps of a method -------------------------------------------------------------------------


def _lesson(step: StepFacts, look: StepLook) -> list[Slice]:
    """Number, name and what to take; then the method's pictures, three or four across."""
    bottom, marks = _head(step, CONTENT_WIDTH_PT, 0.0)
    for text, style in ((say_take(step, look.labels, look.unit), _QUIET), (_often(step), _BOLD)):
        if text:
            height, words = paragraph(fraction_text(text), CONTENT_WIDTH_PT, style)
            marks += moved(words, 0.0, bottom)
            bottom += height
    across = 4 if len(step.lesson) % 4 == 0 or len(step.lesson) % 3 == 1 else 3
    slices = [Slice(bottom + STEP_PT, tuple(marks), before_pt=4 * STEP_PT, keep=True, head=(continued(TITLE),))]
    return [*slices, *(_lesson_row(step, start, across, look.unit) for start in range(0, len(step.lesson), across))]


def _lesson_row(step: StepFacts, start: int, across: int, unit: RulerUnit) -> Slice:
    width = span_pt(12 // across)
    marks: list[Mark] = []
    height = 0.0
    for place, each in enumerate(step.lesson[start : start + across]):
        tall, card = lesson_card(step, each, chr(ord("a") + start + place), width, unit)
        marks += moved(card, place * (width + GUTTER_PT), 0.0)
        height = max(height, tall)
    return Slice(height, tuple(marks), before_pt=2 * STEP_PT, head=(continued(f"{TITLE}, step {step.number}"),))


def lesson_card(
    step: StepFacts, lesson: LessonStep, letter: str, width: float, unit: RulerUnit
) -> tuple[float, tuple[Mark, ...]]:
    """One thing to do of a method: its picture (for the right hand where there are two), name and words."""
    inner = Box(_INNER_PT, _INNER_PT, width - 2 * _INNER_PT, _LESSON_PT - 2 * _INNER_PT)
    marks: list[Mark] = [
        rectangle(0.0, 0.0, width, _LESSON_PT, fill=TINT),
        technique_picture(lesson.pictures[0], step.fabrics, unit, inner),
    ]
    y = _LESSON_PT + STEP_PT
    name = f"{step.number}{letter}  "
    marks += line(name, 0.0, y + _BOLD.baseline_pt, Style(BODY_PT, "bold", ACCENT))
    marks += line(lesson.title, width_of(name, _BOLD), y + _BOLD.baseline_pt, _BOLD)
    y += _BOLD.line_pt
    height, words = paragraph(fraction_text(lesson.text), width, _BODY)
    return y + height, (*marks, *moved(words, 0.0, y))
