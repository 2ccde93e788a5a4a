"""A technique's page: how a method is sewn, step by step, each kind of unit with its pictures and its common sizes."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from blockdsl.document.parts import (
    Card,
    Cards,
    DataCell,
    DataColumn,
    DocumentPart,
    DocumentSection,
    Heading,
    Image,
    Paragraph,
    RowGroup,
    Sign,
    Signs,
    SizeCell,
    Table,
    TextRun,
    WebPage,
    plain,
)
from blockdsl.facts.techniquefacts import LineKind, Step, TechniqueFacts, TechniqueSection
from blockdsl.geometry import Exact
from blockdsl.marks.display_list import Mark, Page
from blockdsl.marks.theme import Box
from blockdsl.pictures.scene import arrow_marks, cloth_marks, line_marks, technique_picture
from blockdsl.wording.grammar import capital
from blockdsl.wording.lengths import plain_length
from blockdsl.wording.lessons import (
    section_shown,
    section_title,
    sizes_caption,
    sizes_remark,
    step_title,
    step_words,
    table_heads,
    technique_about,
    technique_title,
)
from blockdsl.wording.messages import words_of

_SCENE: Final = Box(4.0, 4.0, 172.0, 128.0)
_LINES: Final[tuple[tuple[str, LineKind], ...]] = (("pencil-line", "drawn"), ("seam", "sewn"), ("cut", "cut"))
_SIGN_PT: Final = (28.0, 16.0)


def technique_page(technique: TechniqueFacts, name: str, *, over: str) -> WebPage:
    """The page of one method; `name` is that of its file."""
    parts: list[DocumentPart] = [Paragraph(plain(technique_about(technique))), _signs(technique.sections[0])]
    for section in technique.sections:
        shown = f"{capital(section_shown(section))}."
        steps = tuple(_steps(section))
        size = (Paragraph((TextRun(shown, "quiet"),)),) if section.sized else ()
        inner = (*size, Cards("steps", steps), *_sizes(section))
        parts.append(DocumentSection(Heading(2, plain(section_title(section))), inner))
    return WebPage(name, technique_title(technique), tuple(parts), over=over)


def _steps(section: TechniqueSection) -> Iterator[Card]:
    for number, step in enumerate(section.steps, start=1):
        pictures = tuple(_pictures(section, step))
        heading = Heading(3, (TextRun(f"{number} "), TextRun(step_title(step, section))))
        yield Card((*pictures, heading, Paragraph(plain(step_words(step, section)))))


def _pictures(section: TechniqueSection, step: Step) -> Iterator[Image]:
    for scene in step.pictures:
        figure = technique_picture(scene, section.fabrics, section.unit, _SCENE, section.language)
        page = Page(_SCENE.right_pt + _SCENE.x_pt, _SCENE.bottom_pt + _SCENE.y_pt, (figure,))
        yield Image(page, words_of(section)(f"hand-{scene.hand}") if scene.hand else "")


# --- the signs -----------------------------------------------------------------------------------------


def _signs(section: TechniqueSection) -> Signs:
    """What the pictures' signs mean."""
    words = words_of(section)
    dark = max(section.fabrics, key=lambda fabric: ("light", "medium", "dark").index(fabric.value))
    width, height = _SIGN_PT
    start, end = (2.0, height / 2), (width - 2.0, height / 2)
    ring = ((2.0, 2.0), (width - 2.0, 2.0), (width - 2.0, height - 2.0), (2.0, height - 2.0))
    entries: list[tuple[str, Sequence[Mark]]] = [
        ("right-side", cloth_marks(ring, dark, wrong=False)),
        ("wrong-side", cloth_marks(ring, dark, wrong=True)),
        *((sign, line_marks(kind, start, end)) for sign, kind in _LINES),
        ("press", arrow_marks(start, end)),
    ]
    return Signs(tuple(Sign(Page(width, height, tuple(marks)), words(f"sign-{sign}")) for sign, marks in entries))


# --- sizes ---------------------------------------------------------------------------------------------


def _sizes(section: TechniqueSection) -> Iterator[DocumentPart]:
    """A row for each common finished size: what to cut, and what the unit should measure; nothing without any."""
    table = section.table
    if not table.rows:
        return
    heads = table_heads(section)
    columns = tuple(DataColumn(head, "size") for head in heads)
    rows = tuple(
        tuple(_cell(lengths, section) for lengths in (row.finished, *row.cuts, row.unfinished)) for row in table.rows
    )
    caption = sizes_caption(section)
    remark = Paragraph((TextRun(sizes_remark([section]), "quiet"),))
    yield DocumentSection(
        Heading(3, plain(words_of(section)("site-common-sizes"))), (Table(caption, columns, (RowGroup(rows),)), remark)
    )


def _cell(lengths: Sequence[Exact], section: TechniqueSection) -> DataCell:
    return SizeCell(tuple(plain_length(length, section.unit, words_of(section)) for length in lengths))
