"""One step as a page of its own, 16 to 9: for a screen, a class, a film."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec.structs import replace

from blockdsl.document.content import Picture, Step, StepPart
from blockdsl.document.steps import scenes_of, step_of
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Mark, Page, moved
from blockdsl.marks.prose import TextStyle, fitted, line, line_ending, paragraph, rectangle, width_of
from blockdsl.marks.theme import ACCENT, INK, QUIET, TINT, Box
from blockdsl.page.steps import part_marks
from blockdsl.pictures.hands import look_of
from blockdsl.wording.messages import words_of

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
_TITLE: Final = TextStyle(28.0, "bold", INK)
_NUMBER: Final = TextStyle(28.0, "bold", ACCENT)
_SMALL: Final = TextStyle(12.0, "regular", QUIET)


class StepSlides:
    """The pages of a block's steps. The words of all of them are made once, and each page too."""

    def __init__(self, facts: BlockFacts) -> None:
        """Nothing is drawn yet."""
        self._facts = facts
        self._look = look_of(facts)
        self._drawn: dict[int, Page] = {}

    def page(self, number: int) -> Page:
        """Step `number`, from 1: its pictures large, what to take and what to do beside them.

        Units:  960 × 540 pt; at 144 pixels to the inch 1920 × 1080.
        Errors: ValueError when the block has no such step.
        """
        if number not in self._drawn:
            self._drawn[number] = self._draw(number)
        return self._drawn[number]

    def _draw(self, number: int) -> Page:
        facts = self._facts
        step = next((each for each in facts.steps if each.number == number), None)
        if step is None:
            raise ValueError(f"{facts.name} has no step {number}; it has {len(facts.steps)}")
        content = step_of(step, self._look, _SIGNS)
        if any(part.picture is not None for part in content.parts):
            body = _method(content)
        else:
            body = _pieced(content, content.pictures or scenes_of(step, self._look))
        return Page(WIDTH_PT, HEIGHT_PT, (*_head(content), *body, *_foot(facts, content)))


def _head(step: Step) -> tuple[Mark, ...]:
    number, count = f"{step.number}  ", step.made
    x = _MARGIN_PT + width_of(number, _NUMBER)
    room = WIDTH_PT - _MARGIN_PT - x - width_of(count, _TITLE) - _GAP_PT
    baseline = _MARGIN_PT + _TITLE.baseline_pt - 6.0
    return (
        *line(number, _MARGIN_PT, baseline, _NUMBER),
        *line(fitted(step.name, room, _TITLE), x, baseline, _TITLE),
        *line_ending(count, WIDTH_PT - _MARGIN_PT, baseline, _TITLE),
    )


def _foot(facts: BlockFacts, step: Step) -> tuple[Mark, ...]:
    words = words_of(facts)("steps-of", number=step.number, count=len(facts.steps))
    care = words_of(facts)("step-care")
    baseline, wide = HEIGHT_PT - 14.0, width_of(care, _SMALL)
    left = (WIDTH_PT - wide) / 2
    return (
        *line(fitted(facts.name, left - _MARGIN_PT - _GAP_PT, _SMALL), _MARGIN_PT, baseline, _SMALL),
        *line(care, left, baseline, _SMALL),
        *line_ending(words, WIDTH_PT - _MARGIN_PT, baseline, _SMALL),
    )


def _pieced(step: Step, pictures: tuple[Picture, ...]) -> list[Mark]:
    """Pictures at the left, one band for each; words at the right, as large as they fit.

    A strip set that is sewn as an earlier one has no hands; the scenes of its lesson are the bands then.
    """
    width = WIDTH_PT - 2 * _MARGIN_PT - _WORDS_PT - _GAP_PT
    height = _BOTTOM_PT - _TOP_PT
    each = height / len(pictures)
    marks: list[Mark] = [rectangle(_MARGIN_PT, _TOP_PT, width, height, fill=TINT)]
    for place, picture in enumerate(pictures):
        edge = 0.0 if step.pictures else 12.0
        top = _TOP_PT + place * each
        box = Box(_MARGIN_PT + edge, top + edge, width - 2 * edge, each - 2 * edge)
        marks += picture.draw(box)[0]
    x = _MARGIN_PT + width + _GAP_PT
    return [
        *marks,
        *moved(_words(step, _WORDS_PT, height), x, _TOP_PT),
    ]


def _words(step: Step, width: float, height: float) -> tuple[Mark, ...]:
    """The size, then each sentence as a paragraph, in the largest type in which all of it fits."""
    marks: list[Mark] = []
    for size in _SIZES_PT:
        marks, y = [], 0.0
        style = TextStyle(size, "regular", INK)
        if step.size:
            y, words = paragraph(fraction_text(step.size), width, TextStyle(size, "regular", QUIET))
            marks += words
            y += size * 0.45
        for part in step.parts:
            for place, sentence in enumerate(part.sentences):
                told = f"{part.letter} {sentence}".strip() if place == 0 else sentence
                tall, words = paragraph(fraction_text(told), width, style)
                marks += moved(words, 0.0, y)
                y += tall + size * 0.45
            tall, words = part_marks(replace(part, sentences=()), width, style)
            marks += moved(words, 0.0, y)
            y += tall + (size * 0.45 if tall else 0.0)
        if y <= height:
            break
    return tuple(marks)


def _method(step: Step) -> list[Mark]:
    """The method's pictures in one or two rows, each with its words below it."""
    marks: list[Mark] = []
    top = _TOP_PT
    parts = step.parts
    across = len(parts) if len(parts) <= 4 else (len(parts) + 1) // 2
    rows = -(-len(parts) // across)
    width = (WIDTH_PT - 2 * _MARGIN_PT - (across - 1) * _GAP_PT) / across
    height = (_BOTTOM_PT - top - (rows - 1) * 12.0) / rows
    picture = height * 0.5
    size = _type_size(parts, width, height - picture - 6.0)
    for place, part in enumerate(parts):
        x, y = _MARGIN_PT + place % across * (width + _GAP_PT), top + place // across * (height + 12.0)
        marks.append(rectangle(x, y, width, picture, fill=TINT))
        inner = Box(x + 8.0, y + 8.0, width - 16.0, picture - 16.0)
        if part.picture is not None:
            marks += part.picture.draw(inner)[0]
        bold = TextStyle(size, "bold", INK)
        marks += line(f"{part.letter} {part.heading}".strip(), x, y + picture + 6.0 + bold.baseline_pt, bold)
        _, told = part_marks(part, width, TextStyle(size, "regular", INK), lettered=False)
        marks += moved(told, x, y + picture + 6.0 + bold.line_pt)
    return marks


def _type_size(parts: Sequence[StepPart], width: float, height: float) -> float:
    """The largest type in which the words of every picture fit below it."""
    for size in _SIZES_PT:
        style = TextStyle(size, "regular", INK)
        tall = max(part_marks(part, width, style, lettered=False)[0] for part in parts)
        if tall + style.line_pt <= height:
            break
    return size
