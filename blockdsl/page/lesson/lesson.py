"""Technique pages: how a method is sewn, for someone who has never sewn; one or two pages for each kind of unit."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec.structs import replace

from blockdsl.facts.techniquefacts import TechniqueFacts, TechniqueSection
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Mark, Page, moved
from blockdsl.marks.prose import TextStyle, line, paragraph
from blockdsl.marks.theme import (
    BODY_PT,
    CONTENT_WIDTH_PT,
    FOOTER_HEIGHT_PT,
    GUTTER_PT,
    INK,
    LEAD_PT,
    STEP_PT,
    Box,
    PaperSize,
    paper_named,
    span_pt,
)
from blockdsl.page.flow import Flowable, run_over_pages
from blockdsl.page.headings import heading
from blockdsl.page.lesson.sizes import block_uses, common_sizes, size_remark
from blockdsl.page.lesson.steps import picture_key, step_rows
from blockdsl.page.sheet.sheet import footer
from blockdsl.wording.lessons import section_shown, section_title, take_care, technique_about, technique_title
from blockdsl.wording.messages import words_of
from blockdsl.wording.sheet import cautions

_PICTURES_PT: Final = (132.0, 124.0, 116.0, 108.0, 100.0, 92.0, 84.0)
_TITLE: Final = TextStyle(22.0, "bold", INK)
_LEAD: Final = TextStyle(LEAD_PT, "regular", INK)
_SMALL: Final = TextStyle(BODY_PT - 0.75, "regular", INK)
_NAME: Final = TextStyle(BODY_PT, "bold", INK)


def technique_pages(techniques: Sequence[TechniqueFacts], *, paper: str = "letter") -> tuple[Page, ...]:
    """All pages of the techniques, each beginning a page, with their title and number at the foot.

    Units:  points at real size; everything lies in the box that prints on Letter and A4 alike.
    Errors: ValueError for an unknown paper.
    """
    sheet = paper_named(paper)
    pages: list[Page] = []
    for technique in techniques:
        bodies = technique_bodies(technique, sheet)
        pages += [
            Page(
                sheet.width_pt,
                sheet.height_pt,
                (
                    *marks,
                    *footer(technique_title(technique), number, len(bodies), sheet, words_of(technique.sections[0])),
                ),
            )
            for number, marks in enumerate(bodies, start=1)
        ]
    return tuple(pages)


def technique_bodies(technique: TechniqueFacts, paper: PaperSize) -> list[tuple[Mark, ...]]:
    """What stands on each page of a technique above its foot, for whoever binds it with others."""
    content = paper.content
    room = Box(content.x_pt, content.y_pt, content.width_pt, content.height_pt - FOOTER_HEIGHT_PT)
    return [marks for flowables in _parts(technique, room) for marks in run_over_pages(flowables, room)]


def _parts(technique: TechniqueFacts, room: Box) -> list[list[Flowable]]:
    """Parts that each begin a page: the steps of each kind of unit, then all sizes, with the cautions at the end."""
    sizes: list[Flowable] = []
    for section in technique.sections:
        sizes += [*block_uses(section), *common_sizes(section)]
    end = [*sizes, *size_remark(technique), _cautions(technique)]
    parts = []
    for place, section in enumerate(technique.sections):
        head = [] if place else _head(technique)
        last = not sizes and place == len(technique.sections) - 1
        parts.append(_on_one_page(section, (head, end if last else []), room))
    return [*parts, end] if sizes else parts


def _head(technique: TechniqueFacts) -> list[Flowable]:
    """The method's name, what it is good for, and the key to the pictures."""
    title = Flowable(
        _TITLE.line_pt + STEP_PT,
        line(technique_title(technique), -0.8, _TITLE.baseline_pt, _TITLE),
        keep_with_next=True,
    )
    height, words = paragraph(technique_about(technique), CONTENT_WIDTH_PT, _LEAD)
    return [
        title,
        Flowable(height, words, keep_with_next=True),
        picture_key(technique.sections[0].fabrics, words_of(technique.sections[0])),
    ]


def _on_one_page(section: TechniqueSection, around: tuple[list[Flowable], list[Flowable]], room: Box) -> list[Flowable]:
    """The steps with the largest pictures that leave all on one page, or all but the end, or as small as they get."""
    head, end = around
    for closing in (end, []):
        for picture_pt in _PICTURES_PT:
            flowables = [*head, *_steps(section, picture_pt)]
            if len(run_over_pages([*flowables, *closing], room)) == 1:
                return [*flowables, *end]
    return [*flowables, *end]


def _steps(section: TechniqueSection, picture_pt: float) -> list[Flowable]:
    """The kind of unit and its steps."""
    shown = fraction_text(section_shown(section))
    first, *others = step_rows(section, picture_pt)
    return [
        replace(heading(section_title(section), aside=shown), before_pt=3 * STEP_PT),
        replace(first, before_pt=0.0),
        *others,
    ]


def _cautions(technique: TechniqueFacts) -> Flowable:
    """The usual cautions in two columns at the end."""
    said = cautions(words_of(technique.sections[0]))
    half = (len(said) + 1) // 2
    name = Flowable(
        _NAME.line_pt + STEP_PT / 2,
        line(take_care(technique), 0.0, _NAME.baseline_pt, _NAME),
    )
    marks: list[Mark] = [*name.marks]
    bottom = 0.0
    for column, texts in enumerate((said[:half], said[half:])):
        y = name.height_pt
        for text in texts:
            height, words = paragraph(text, span_pt(6), _SMALL)
            marks += moved(words, column * (span_pt(6) + GUTTER_PT), y)
            y += height + STEP_PT * 0.75
        bottom = max(bottom, y)
    return Flowable(bottom, tuple(marks), before_pt=5 * STEP_PT)
