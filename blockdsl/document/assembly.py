"""Putting a quilt together: its rows, its steps with borders and layers, and which block is of which print."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from typing import Final

from blockdsl.document.content import (
    Cards,
    DataCell,
    DataColumn,
    Paragraph,
    Part,
    Picture,
    RowGroup,
    Section,
    Step,
    Steps,
    Table,
    TickCell,
    plain,
    section,
    strong,
)
from blockdsl.document.materials import finishing_of
from blockdsl.document.pictures import filling, pictured
from blockdsl.document.quilt_cuts import cloth_card
from blockdsl.document.steps import step_part, step_with
from blockdsl.facts.finishingfacts import ScrapsFacts
from blockdsl.facts.quiltfacts import QuiltFacts, RingFacts
from blockdsl.facts.quiltstepfacts import Makes, QuiltStepFacts
from blockdsl.marks.theme import CONTENT_WIDTH_PT, span_pt
from blockdsl.pictures.border import mitre_picture, ring_picture
from blockdsl.pictures.cloth import sheet_pictures
from blockdsl.pictures.finishing import backing_picture, corner_picture, join_picture, layers_picture, sleeve_picture
from blockdsl.pictures.quilt import rows_picture
from blockdsl.pictures.spread import prints_picture
from blockdsl.wording import StepText, quilt_names, quilt_step_texts
from blockdsl.wording.grammar import in_thousands, many
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.quilt_words import format_strips_of_ring

_ROWS_PT: Final = CONTENT_WIDTH_PT
_RING_PT: Final = 150.0
_MITRE_PT: Final = (290.0, 74.0)
_SMALL_PT: Final = (span_pt(4), 112.0)


def assembly(facts: QuiltFacts) -> list[Part]:
    """The rows drawn apart, what each row measures, then the steps; borders with a picture each."""
    words = words_of(facts)
    rows: list[Part] = []
    if len(facts.rows) > 1:
        rows.append(pictured(partial(rows_picture, facts), _ROWS_PT))
        rows += _rows_table(facts)
    steps = tuple(_step_of_top(facts, step, text) for step, text in steps_with_words(facts) if step.of_top)
    return [section(2, words("assembly-title"), *rows, Steps(steps, "rows"), aside=words("assembly-aside"))]


def steps_with_words(facts: QuiltFacts) -> list[tuple[QuiltStepFacts, StepText]]:
    """Every step of the quilt with its words."""
    return list(zip(facts.steps, quilt_step_texts(facts), strict=True))


# --- rows ----------------------------------------------------------------------------------------------


def alike_rows(facts: QuiltFacts) -> Iterator[tuple[str, str, str]]:
    """(which rows, what one takes, what it should measure), as their steps say."""
    names = quilt_names(facts)
    for step, text in steps_with_words(facts):
        if step.makes == "rows":
            yield text.name, names.takes(step.takes), text.parts[-1].measure


def _rows_table(facts: QuiltFacts) -> list[Part]:
    """Rows that are alike share a line."""
    words = words_of(facts)
    rows: list[tuple[DataCell, ...]] = []
    for name, members, size in alike_rows(facts):
        tick = TickCell(words("site-done", what=words("rows-tick", rows=name, size=size)))
        rows.append((tick, strong(name), plain(members), strong(size)))
    heads = ("rows-head-row", "rows-head-takes", "rows-head-measure")
    columns = (DataColumn(words("head-done"), "tick"), *(DataColumn(words(key), "words") for key in heads))
    return [Table(words("rows-caption", quilt=facts.name), columns, (RowGroup(tuple(rows)),))] if rows else []


# --- steps ---------------------------------------------------------------------------------------------


def _step_of_top(facts: QuiltFacts, step: QuiltStepFacts, text: StepText) -> Step:
    """A step of the top; of a border with its picture and what its strips are cut from."""
    ring = next((ring for ring in facts.rings if ring.number == step.ring), None) if step.ring else None
    remark = format_strips_of_ring(facts, ring) if ring is not None else ""
    return _step(text, tuple(_of_ring(facts, ring)) if ring is not None else (), remark or "")


def _of_ring(facts: QuiltFacts, ring: RingFacts) -> Iterator[Picture]:
    yield pictured(partial(ring_picture, facts, ring), _RING_PT)
    if ring.corners == "mitred":
        words = words_of(facts)
        yield filling(lambda box: mitre_picture(box, words), *_MITRE_PT)


def _step(text: StepText, pictures: tuple[Picture, ...], remark: str = "") -> Step:
    return step_with(text, tuple(step_part(letter, part) for letter, part in text.lettered), pictures, remark)


def finishing(facts: QuiltFacts) -> list[Part]:
    """All that is done to the top when it is sewn, in order; nothing where nothing is known of it."""
    if finishing_of(facts) is None:
        return []
    words = words_of(facts)
    steps = tuple(
        _step(text, tuple(_small_pictures(facts, step.makes)))
        for step, text in steps_with_words(facts)
        if not step.of_top
    )
    title, aside = words("finishing-title"), words("finishing-aside")
    return [section(2, title, Steps(steps, "rows"), aside=aside)] if steps else []


def _small_pictures(facts: QuiltFacts, makes: Makes) -> Iterator[Picture]:
    """The small pictures of a step of finishing, in order."""
    words, backing = words_of(facts), facts.backing
    if makes == "backing" and backing is not None:
        yield filling(lambda box: backing_picture(backing.plan, facts.unfinished, box, words), *_SMALL_PT)
    if makes == "layers":
        names = (words("quilt-top-right"), words("quilt-batting"), words("quilt-backing-wrong"))
        yield filling(lambda box: layers_picture(box, names, words), *_SMALL_PT)
    if makes == "sleeve":
        yield filling(lambda box: sleeve_picture(box, words), *_SMALL_PT)
    if makes == "binding" and facts.binding is not None:
        if facts.binding.plan.square is None:
            yield filling(lambda box: join_picture(box, words), *_SMALL_PT)
        yield filling(lambda box: corner_picture(box, words), *_SMALL_PT)


# --- prints --------------------------------------------------------------------------------------------


def prints(facts: QuiltFacts) -> Iterator[Section]:
    """A picture and a few words for each role that is spread over prints, and how one fat quarter is cut."""
    told, words = finishing_of(facts), words_of(facts)
    for spread in told.scraps if told is not None else ():
        fabric = next(fabric for fabric in facts.fabrics_used if fabric.name == spread.role)
        parts: list[Part] = [Paragraph(plain(format_prints(spread, words)))]
        parts.append(Picture(partial(prints_picture, facts, spread, fabric), CONTENT_WIDTH_PT, CONTENT_WIDTH_PT))
        if spread.layout is not None:
            size, count = (spread.layout.sheet_width, spread.layout.sheet_length), spread.layout_blocks
            how = words("prints-fat-quarter", count=count, number=in_thousands(count, words))
            rows = sheet_pictures(spread.layout.sheets, size, facts, fabric.colour, lambda key: key)
            parts += [Paragraph(plain(how)), Cards("cloth", tuple(map(cloth_card, rows)))]
        title = words("prints-title", fabric=fabric.label or fabric.name)
        yield section(2, title, *parts, aside=many(spread.prints, "prints", words))


def format_prints(spread: ScrapsFacts, words: Messages) -> str:
    """How the prints are spread, and what each gives."""
    if spread.clashes == 0:
        apart = words("prints-apart")
    else:
        key = "prints-share-least" if spread.proved else "prints-share"
        apart = words(key, count=spread.clashes, bound=spread.bound)
    least, most = min(spread.uses), max(spread.uses)
    if least == most:
        used = words("prints-used", count=most)
    else:
        used = words("prints-used-or" if most == least + 1 else "prints-used-to", least=least, most=most)
    gives = words("prints-gives", count=spread.blocks_each) if spread.blocks_each else words("prints-takes-more")
    return " ".join((words("prints-numbered"), apart, used, gives))
