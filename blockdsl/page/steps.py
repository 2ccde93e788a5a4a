"""Steps: pieces in two columns of cards, methods with all their pictures across the page, rows of a quilt, lessons."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from blockdsl.document.content import Picture, Step, StepPart, Steps
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Mark, Path, moved, tagged
from blockdsl.marks.prose import TextStyle, line, line_ending, lines_of, paragraph, rectangle, width_of
from blockdsl.marks.theme import (
    ACCENT,
    BODY_PT,
    CONTENT_WIDTH_PT,
    GUTTER_PT,
    INK,
    LEAD_PT,
    RULE,
    STEP_PT,
    TINT,
    Box,
    span_pt,
)
from blockdsl.page.flow import Drawn, Flowable
from blockdsl.page.headings import continued, heading_element
from blockdsl.page.table import tick_cell
from blockdsl.page.text import BODY, BOLD, QUIETLY
from blockdsl.page.web_link import web_link
from blockdsl.wording.messages import Messages

NUMBER: Final = TextStyle(LEAD_PT, "bold", ACCENT)
_NAME: Final = TextStyle(LEAD_PT, "bold", INK)
_PICTURE_PT: Final = 104.0
_HANDS_PT: Final = 78.0
_WIDE_PT: Final = 150.0
_LESSON_PT: Final = 84.0
_MOST_WIDE: Final = 2
_NUMBER_PT: Final = 18.0
_ASIDE_PT: Final = span_pt(4)
_INNER_PT: Final = 6.0
_NOTE_PT: Final = 8.0


def step_flowables(steps: Steps, words: Messages, again: tuple[Flowable, ...] = ()) -> list[Flowable]:
    """Steps that are sewn: cards two beside each other, and methods across the page; a quilt's one below the other."""
    if steps.kind == "rows":
        return [piece for step in steps.steps for piece in _across_the_page(step)]
    flowables: list[Flowable] = []
    waiting: list[Step] = []
    for step in steps.steps:
        if any(part.picture is not None for part in step.parts):
            flowables += [*_cards(waiting, again), *_method(step, words, again)]
            waiting = []
        else:
            waiting.append(step)
    return [*flowables, *_cards(waiting, again)]


# --- cards, two beside each other ------------------------------------------------------------------


def _cards(steps: Sequence[Step], again: tuple[Flowable, ...]) -> list[Flowable]:
    flowables = []
    for start in range(0, len(steps), 2):
        pair = steps[start : start + 2]
        cards = [_card(step) for step in pair] if len(pair) > 1 else [_wide_card(pair[0])]
        marks: list[Mark] = []
        for place, (_, card) in enumerate(cards):
            marks += moved(card, place * (span_pt(6) + GUTTER_PT), 0.0)
        height = max(height for height, _ in cards)
        flowables.append(Flowable(height, tuple(marks), before_pt=4 * STEP_PT, head=again))
    return flowables


def _wide_card(step: Step) -> Drawn:
    """A card across the page, pictures at the left, words at the right: for the last of an odd number."""
    width, x = span_pt(7), span_pt(7) + GUTTER_PT
    height, marks = _pictures(step.pictures, width, _WIDE_PT)
    y, words = _text(step, span_pt(5))
    return max(height, y), (*moved(words, x, 0.0), *marks)


def _card(step: Step) -> Drawn:
    """The pictures on a tinted ground, number and name, what to take, what to do."""
    width = span_pt(6)
    height, marks = _pictures(step.pictures, width, _PICTURE_PT)
    y, words = _text(step, width)
    # The words are read first: their heading names the pictures.
    return height + STEP_PT + y, (*moved(words, 0.0, height + STEP_PT), *marks)


def _pictures(pictures: Sequence[Picture], width: float, high: float) -> tuple[float, list[Mark]]:
    """The pictures one under the other on a tinted ground: the parts apart and joined; once more for the other hand."""
    each = high if len(pictures) == 1 else _HANDS_PT
    marks: list[Mark] = [rectangle(0.0, 0.0, width, each * len(pictures), fill=TINT)]
    for place, picture in enumerate(pictures):
        top = place * each
        marks += picture.draw(Box(0.0, top, width, each))[0]
        if place:
            marks.append(rectangle(0.0, top, width, 0.0, stroke=RULE, stroke_width_pt=0.4))
    return each * len(pictures), marks


def _text(step: Step, width: float) -> Drawn:
    """Number and name, then what to do, and what the designer adds."""
    y, marks = _head(step, width)
    for part in step.parts:
        tall, said = part_marks(part, width, BODY)
        marks += moved(said, 0.0, y)
        y += tall
    for tall, said in _added(step, width):
        marks += moved(said, 0.0, y + STEP_PT)
        y += tall + STEP_PT
    return y, tuple(marks)


def _added(step: Step, width: float) -> Iterator[Drawn]:
    """The designer's notes, each behind a rule at its left, her pictures and her addresses."""
    for note in step.notes:
        tall, words = paragraph(note, width - _NOTE_PT, BODY)
        bar = Path((((1.0, 2.0), (1.0, tall)),), closed=False, stroke=ACCENT, stroke_width_pt=1.2)
        yield tall, (bar, *moved(words, _NOTE_PT, 0.0))
    for photo in step.photos:
        marks, filled = photo.draw(Box(0.0, 0.0, min(width, photo.width_pt), photo.height_pt))
        yield filled.height_pt, marks
    for link in step.links:
        yield web_link(link, width)


def _head(step: Step, width: float) -> tuple[float, list[Mark]]:
    """Number and name at the left, how many at the right, the finished size below."""
    number = f"{step.number}  "
    indent = width_of(number, NUMBER)
    room = width - indent - (width_of(step.made, BOLD) + 2 * STEP_PT if step.made else 0.0)
    on_one_line = bool(step.made) and room > width / 3
    whole = heading_element(3)
    marks: list[Mark] = [*tagged(line(number, 0.0, NUMBER.baseline_pt, NUMBER), whole)]
    y = 0.0
    for words in lines_of(step.name, room if on_one_line else width - indent, _NAME):
        marks += tagged(line(words, indent, y + _NAME.baseline_pt, _NAME), whole)
        y += _NAME.line_pt
    if on_one_line:
        marks += line_ending(step.made, width, _NAME.baseline_pt, BOLD)
    below = " · ".join(filter(None, (step.size, "" if on_one_line else step.made)))
    if below:
        tall, sizes = paragraph(fraction_text(below), width - indent, QUIETLY)
        marks += moved(sizes, indent, y)
        y += tall
    return y + STEP_PT / 2, marks


def part_marks(part: StepPart, width: float, style: TextStyle, *, lettered: bool = True) -> Drawn:
    """Height and marks of one part of a step: its sentences, the measure on a line of its own, what follows."""
    height = 0.0
    marks: list[Mark] = []
    if part.sentences:
        letter = f"{part.letter} ".lstrip() if lettered else ""
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


# --- the steps of a quilt --------------------------------------------------------------------------


def _across_the_page(step: Step) -> list[Flowable]:
    """Number, name and words; small pictures at their right, each beside a part of its own, wide ones below them."""
    small = [picture for picture in step.pictures if picture.width_pt <= _ASIDE_PT]
    wide = [picture for picture in step.pictures if picture.width_pt > _ASIDE_PT]
    pieces = []
    stretches = _stretches(step.parts, small)
    for place, (parts, picture) in enumerate(stretches):
        last = place == len(stretches) - 1
        aside = min(picture.width_pt, _ASIDE_PT) if picture is not None else 0.0
        room = CONTENT_WIDTH_PT - _NUMBER_PT - (aside + GUTTER_PT if aside else 0.0)
        y, marks = (0.0, list[Mark]()) if place else _quilt_head(step, room)
        words = min(room, span_pt(8))
        for part in parts:
            height, drawn = part_marks(part, words, BODY)
            marks += moved(drawn, _NUMBER_PT, y)
            y += height
        if last and step.remark:
            height, drawn = paragraph(fraction_text(step.remark), words, QUIETLY)
            marks += moved(drawn, _NUMBER_PT, y)
            y += height
        for below in wide if last else ():
            marks += below.draw(Box(_NUMBER_PT, y + 2 * STEP_PT, min(room, below.width_pt * 1.2), below.height_pt))[0]
            y += below.height_pt + 3 * STEP_PT
        if picture is not None:
            drawn, filled = picture.draw(Box(CONTENT_WIDTH_PT - aside, 0.0, aside, picture.height_pt))
            marks += drawn
            y = max(y, filled.bottom_pt)
        pieces.append(Flowable(y, tuple(marks), before_pt=(1 if place else 3) * STEP_PT, keep_with_next=not last))
    return pieces


def _stretches(
    parts: tuple[StepPart, ...], pictures: Sequence[Picture]
) -> tuple[tuple[tuple[StepPart, ...], Picture | None], ...]:
    """The parts of a step beside its pictures: the first beside the first, what is left beside the last."""
    if len(pictures) < 2 or len(parts) < 2:
        return ((parts, pictures[0] if pictures else None),)
    return ((parts[:1], pictures[0]), *_stretches(parts[1:], pictures[1:]))


def _quilt_head(step: Step, width: float) -> tuple[float, list[Mark]]:
    """Number and name, then how many are made and the finished size."""
    named = (
        *line(str(step.number), 0.0, NUMBER.baseline_pt, NUMBER),
        *line(step.name, _NUMBER_PT, _NAME.baseline_pt, _NAME),
    )
    marks = [*tagged(named, heading_element(3))]
    more = fraction_text(" · ".join(filter(None, (step.made, step.size))))
    at = _NUMBER_PT + width_of(step.name, _NAME) + 2 * STEP_PT
    if at + width_of(more, QUIETLY) <= _NUMBER_PT + width:
        return _NAME.line_pt, [*marks, *line(more, at, _NAME.baseline_pt, QUIETLY)]
    height, drawn = paragraph(more, width, QUIETLY)
    return _NAME.line_pt + height, [*marks, *moved(drawn, _NUMBER_PT, _NAME.line_pt)]


# --- the steps of a method -------------------------------------------------------------------------


def _method(step: Step, words: Messages, again: tuple[Flowable, ...]) -> list[Flowable]:
    """Number and name; then the parts of the method with their pictures, two to four across."""
    bottom, marks = _head(step, CONTENT_WIDTH_PT)
    across = _across(len(step.parts))
    head = Flowable(bottom + STEP_PT, tuple(marks), before_pt=4 * STEP_PT, keep_with_next=True, head=again)
    named = (continued(words("steps-step-continued", number=step.number), words),)
    rows = (step.parts[start : start + across] for start in range(0, len(step.parts), across))
    added = (Flowable(tall, marks, before_pt=STEP_PT, head=named) for tall, marks in _added(step, span_pt(8)))
    return [head, *(_method_row(row, span_pt(12 // across), named) for row in rows), *added]


def _across(parts: int) -> int:
    """How many parts lie beside each other: few are wide, so that their words are easy to read."""
    if parts <= _MOST_WIDE:
        return _MOST_WIDE
    return 4 if parts % 4 == 0 or parts % 3 == 1 else 3


def _method_row(parts: Sequence[StepPart], width: float, again: tuple[Flowable, ...]) -> Flowable:
    marks: list[Mark] = []
    height = 0.0
    for place, part in enumerate(parts):
        tall, card = _method_card(part, width)
        marks += moved(card, place * (width + GUTTER_PT), 0.0)
        height = max(height, tall)
    return Flowable(height, tuple(marks), before_pt=2 * STEP_PT, head=again)


def _method_card(part: StepPart, width: float) -> Drawn:
    """One part of a method: its picture (for the right hand where there are two), letter and heading, words."""
    inner = Box(_INNER_PT, _INNER_PT, width - 2 * _INNER_PT, _LESSON_PT - 2 * _INNER_PT)
    marks: list[Mark] = [rectangle(0.0, 0.0, width, _LESSON_PT, fill=TINT)]
    if part.picture is not None:
        marks += part.picture.draw(inner)[0]
    y = _LESSON_PT + STEP_PT
    if part.letter:
        marks += line(part.letter, 0.0, y + BOLD.baseline_pt, TextStyle(BODY_PT, "bold", ACCENT))
    if part.heading:
        marks += line(part.heading, width_of(f"{part.letter} ".lstrip(), BOLD), y + BOLD.baseline_pt, BOLD)
    y += BOLD.line_pt
    height, words = part_marks(part, width, BODY, lettered=False)
    return y + height, (*marks, *moved(words, 0.0, y))
