"""Lessons on paper: one or two pages for each kind of unit, its pictures as large as leave all of it on one page."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec.structs import replace

from blockdsl.document.content import Part, Picture, Section, Step, Steps
from blockdsl.document.lesson import lesson_parts
from blockdsl.facts.techniquefacts import TechniqueFacts
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Mark, Page, moved
from blockdsl.marks.prose import TextStyle, fitted, line, paragraph, rectangle, runs, width_of
from blockdsl.marks.theme import (
    FOOTER_HEIGHT_PT,
    GUTTER_PT,
    INK,
    SMALL_PT,
    STEP_PT,
    TINT,
    Box,
    PaperSize,
    paper_named,
    span_pt,
)
from blockdsl.page.flow import Drawn, Flowable, pages_taken, run_over_pages, stacked
from blockdsl.page.headings import heading
from blockdsl.page.parts import flowables
from blockdsl.page.sheet import footer
from blockdsl.page.steps import NUMBER
from blockdsl.page.text import BODY, CAPTION, LEAD, plain_words
from blockdsl.wording.lessons import technique_title
from blockdsl.wording.messages import Messages, words_of

_PICTURES_PT: Final = (132.0, 124.0, 116.0, 108.0, 100.0, 92.0, 84.0)
_TITLE: Final = TextStyle(22.0, "bold", INK)
_INNER_PT: Final = 5.0
_TOLD_PT: Final = 7.0
_ACROSS: Final = 3


def technique_pages(techniques: Sequence[TechniqueFacts], *, paper: str = "letter") -> tuple[Page, ...]:
    """All pages of the techniques, each beginning a page, with their title and number at the foot.

    Units:  points at real size; everything lies in the box that prints on Letter and A4 alike.
    Errors: ValueError for an unknown paper.
    """
    sheet = paper_named(paper)
    pages: list[Page] = []
    for technique in techniques:
        bodies, title, words = technique_bodies(technique, sheet), technique_title(technique), _words(technique)
        pages += [
            Page(sheet.width_pt, sheet.height_pt, (*marks, *footer(title, number, len(bodies), sheet, words)))
            for number, marks in enumerate(bodies, start=1)
        ]
    return tuple(pages)


def _words(technique: TechniqueFacts) -> Messages:
    return words_of(technique.sections[0])


def technique_bodies(technique: TechniqueFacts, paper: PaperSize, *, cautioned: bool = False) -> list[tuple[Mark, ...]]:
    """What stands on each page of a technique above its foot, for whoever binds it with others.

    One kind of unit follows the other, then all sizes. The pictures are the largest with which that takes the fewest
    pages. In a book whose reader has been `cautioned` the cautions are not said again.
    """
    content = paper.content
    room = Box(content.x_pt, content.y_pt, content.width_pt, content.height_pt - FOOTER_HEIGHT_PT)
    parts, words = lesson_parts(technique, cautioned=cautioned), _words(technique)
    title = line(technique_title(technique), -0.8, _TITLE.baseline_pt, _TITLE)
    head = Flowable(_TITLE.line_pt + STEP_PT, title, keep_with_next=True)
    laid = [None if _is_lesson(part) else flowables((part,), words) for part in parts]

    def tried(picture_pt: float) -> tuple[int, int, list[Flowable]]:
        """How many kinds of unit are too long for a page, how many pages all of it takes, and what they are."""
        found, too_long = [head], 0
        for part, known in zip(parts, laid, strict=True):
            lesson = _steps(part, picture_pt) if known is None and isinstance(part, Section) else known or []
            too_long += known is None and stacked(lesson)[0] > room.height_pt
            found += lesson
        return too_long, pages_taken(found, room), found

    _, _, pieces = min(map(tried, _PICTURES_PT), key=lambda each: each[:2])
    return run_over_pages(pieces, room)


def _is_lesson(part: Part) -> bool:
    return isinstance(part, Section) and isinstance(part.parts[0], Steps)


def _steps(lesson: Section, picture_pt: float) -> list[Flowable]:
    """The kind of unit and its steps, bound together: nobody turns the page in the middle of a lesson."""
    (steps,) = (part for part in lesson.parts if isinstance(part, Steps))
    first, *others = step_rows(steps.steps, picture_pt)
    named = heading(plain_words(lesson.heading.words), aside=fraction_text(lesson.heading.aside))
    pieces = [replace(named, before_pt=3 * STEP_PT), replace(first, before_pt=0.0), *others]
    return [*(replace(piece, keep_with_next=True) for piece in pieces[:-1]), pieces[-1]]


# --- rows of cards -------------------------------------------------------------------------------------


def step_rows(steps: Sequence[Step], picture_pt: float) -> list[Flowable]:
    """The steps, three pictures of that height across; a pair of pictures takes two places."""
    rows = _rows(steps)
    pieces = []
    for place, row in enumerate(rows):
        pictures = sum(len(step.pictures) for step in row)
        # A row that a pair would not fit into is spread over the page; the last one keeps its places.
        columns = 12 // (pictures if place < len(rows) - 1 else max(pictures, _ACROSS))
        pieces.append(_row(row, columns, picture_pt))
    return pieces


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


def _row(row: Sequence[Step], columns: int, picture_pt: float) -> Flowable:
    marks: list[Mark] = []
    x = height = 0.0
    for step in row:
        width = span_pt(columns * len(step.pictures))
        card_height, card = _card(step, width, picture_pt)
        marks += moved(card, x, 0.0)
        height = max(height, card_height)
        x += width + GUTTER_PT
    return Flowable(height, tuple(marks), before_pt=3 * STEP_PT)


def _card(step: Step, width: float, picture_pt: float) -> Drawn:
    """Pictures on a tinted ground, the number and name of the step, what to do."""
    marks: list[Mark] = [rectangle(0.0, 0.0, width, picture_pt, fill=TINT)]
    each = width / len(step.pictures)
    for place, picture in enumerate(step.pictures):
        marks += _picture(picture, place * each, each, picture_pt)
    y = picture_pt + STEP_PT
    number = f"{step.number}  "
    title = fitted(step.name, width - width_of(number, NUMBER), LEAD)
    marks += runs([(number, NUMBER), (title, LEAD)], 0.0, y + LEAD.baseline_pt)
    y += LEAD.line_pt
    height, words = paragraph(fraction_text(" ".join(part.text for part in step.parts)), width, BODY)
    return y + height, (*marks, *moved(words, 0.0, y))


def _picture(picture: Picture, x: float, width: float, picture_pt: float) -> tuple[Mark, ...]:
    """A picture within its place, whose hand stands above it."""
    told = _TOLD_PT if picture.caption else 0.0
    inner = Box(x + _INNER_PT, _INNER_PT + told, width - 2 * _INNER_PT, picture_pt - 2 * _INNER_PT - told)
    caption = line(picture.caption, x + 2 * STEP_PT, _INNER_PT + SMALL_PT - 2.0, CAPTION)
    return (*picture.draw(inner)[0], *caption)
