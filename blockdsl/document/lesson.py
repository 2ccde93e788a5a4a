"""A technique: how a method is sewn, step by step, each kind of unit with its pictures and its common sizes."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from blockdsl.document.content import (
    Columns,
    DataCell,
    DataColumn,
    Listing,
    Paragraph,
    Part,
    Parts,
    Picture,
    RowGroup,
    Section,
    Sign,
    Signs,
    SizeCell,
    Step,
    StepPart,
    Steps,
    Table,
    plain,
    quiet,
    section,
)
from blockdsl.document.pictures import filling
from blockdsl.facts.techniquefacts import LessonStep, LineKind, TechniqueFacts, TechniqueSection
from blockdsl.facts.techniquefacts import ScenePicture as Scene
from blockdsl.geometry import Exact
from blockdsl.marks.display_list import Mark, moved
from blockdsl.pictures.scene import arrow_marks, cloth_marks, line_marks, technique_picture
from blockdsl.wording.lengths import plain_length
from blockdsl.wording.lessons import (
    section_shown,
    section_title,
    sizes_aside,
    sizes_caption,
    sizes_remark,
    sizes_title,
    step_title,
    step_words,
    table_heads,
    take_care,
    technique_about,
    use_words,
    uses_more,
    uses_title,
)
from blockdsl.wording.messages import words_of
from blockdsl.wording.sheet import cautions

_SCENE_PT: Final = (180.0, 136.0)
_SIGN_PT: Final = (24.0, 12.0)
_LINES: Final[tuple[tuple[str, LineKind], ...]] = (("pencil-line", "drawn"), ("seam", "sewn"), ("cut", "cut"))
_MOST_USES: Final = 12
_MOST_BOUND: Final = 20  # a table of no more rows stands on one page


def lesson_parts(technique: TechniqueFacts, *, cautioned: bool = False) -> Parts:
    """What the method is good for, the signs, the steps of each kind of unit, all sizes; the cautions but once."""
    return (
        Paragraph(plain(technique_about(technique))),
        _signs(technique.sections[0]),
        *map(_lesson, technique.sections),
        *(part for each in technique.sections for part in (*_uses(each), *_common_sizes(each))),
        *_remark(technique),
        *(() if cautioned else (_care(technique),)),
    )


def _lesson(lesson: TechniqueSection) -> Section:
    """A kind of unit and its steps."""
    steps = tuple(_step(step, lesson, number) for number, step in enumerate(lesson.steps, start=1))
    return section(2, section_title(lesson), Steps(steps, "lesson"), aside=section_shown(lesson))


def _step(step: LessonStep, lesson: TechniqueSection, number: int) -> Step:
    pictures = tuple(_picture(scene, lesson) for scene in step.pictures)
    return Step(number, step_title(step, lesson), (StepPart((step_words(step, lesson),)),), pictures=pictures)


def _picture(scene: Scene, lesson: TechniqueSection) -> Picture:
    caption = words_of(lesson)(f"hand-{scene.hand}") if scene.hand else ""
    drawn = filling(lambda box: technique_picture(scene, lesson.fabrics, lesson.unit, box, lesson.language), *_SCENE_PT)
    return Picture(drawn.draw, *_SCENE_PT, caption)


def _signs(lesson: TechniqueSection) -> Signs:
    """What the pictures' signs mean."""
    words = words_of(lesson)
    dark = max(lesson.fabrics, key=lambda fabric: ("light", "medium", "dark").index(fabric.value))
    width, height = _SIGN_PT
    start, end = (0.0, height / 2), (width, height / 2)
    ring = ((0.0, 0.0), (width, 0.0), (width, height), (0.0, height))
    entries: list[tuple[str, Sequence[Mark]]] = [
        ("right-side", cloth_marks(ring, dark, wrong=False)),
        ("wrong-side", cloth_marks(ring, dark, wrong=True)),
        *((sign, line_marks(kind, start, end)) for sign, kind in _LINES),
        ("press", arrow_marks(start, end)),
    ]
    return Signs(tuple(Sign(_sign(tuple(marks)), words(f"sign-{sign}")) for sign, marks in entries))


def _sign(marks: tuple[Mark, ...]) -> Picture:
    return Picture(lambda box: (moved(marks, box.x_pt, box.y_pt), box), *_SIGN_PT, repeats=True)


# --- sizes ---------------------------------------------------------------------------------------------


def _uses(lesson: TechniqueSection) -> Iterator[Part]:
    """For each unit of the block that is made in this way a line or two; nothing without a block."""
    if lesson.uses:
        named = len({use.block for use in lesson.uses}) > 1
        texts = [use_words(use, named=named) for use in lesson.uses[:_MOST_USES]]
        more = len(lesson.uses) - _MOST_USES
        texts += [uses_more(more, lesson)] if more > 0 else []
        yield section(2, uses_title(lesson), *(Paragraph(plain(text)) for text in texts))


def _common_sizes(lesson: TechniqueSection) -> Iterator[Part]:
    """A row for each finished size: what to cut, oversized or not, and what the unit should measure."""
    table = lesson.table
    if table.rows:
        columns = tuple(DataColumn(head, "size") for head in table_heads(lesson))
        rows = tuple(
            tuple(_cell(lengths, lesson) for lengths in (row.finished, *row.cuts, row.unfinished)) for row in table.rows
        )
        sizes = Table(sizes_caption(lesson), columns, (RowGroup(rows),), whole=len(rows) <= _MOST_BOUND)
        yield section(2, sizes_title(lesson), sizes, aside=sizes_aside(lesson))


def _cell(lengths: Sequence[Exact], lesson: TechniqueSection) -> DataCell:
    return SizeCell(tuple(plain_length(length, lesson.unit, words_of(lesson)) for length in lengths))


def _remark(technique: TechniqueFacts) -> Iterator[Part]:
    """What the columns of all the tables mean; nothing without a table."""
    sections = [each for each in technique.sections if each.table.rows]
    if sections:
        yield Paragraph(quiet(sizes_remark(sections)))


def _care(technique: TechniqueFacts) -> Columns:
    """The usual cautions, half of them beside the others."""
    said = cautions(words_of(technique.sections[0]))
    half = (len(said) + 1) // 2
    first, second = (
        Listing(tuple((Paragraph(plain(text)),) for text in texts)) for texts in (said[:half], said[half:])
    )
    return Columns((section(2, take_care(technique), first), section(2, "", second)))
