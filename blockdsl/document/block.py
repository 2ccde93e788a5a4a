"""A block: all that a maker needs to cut and sew it, in the order in which she needs it.

Its sections stand in `block_parts`, on a sheet, in a book and on a site alike.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial
from typing import Final

from blockdsl.document.content import (
    NO_LESSONS,
    AtSize,
    AtSizes,
    Card,
    Cards,
    Columns,
    DataCell,
    DataColumn,
    Definition,
    DefinitionList,
    Heading,
    Lessons,
    Listing,
    Paragraph,
    Part,
    Parts,
    Plate,
    Reference,
    RowGroup,
    Section,
    Table,
    beside,
    plain,
    section,
    strong,
)
from blockdsl.document.cutting import cuts_at_an_angle, cutters, cutting, recutting
from blockdsl.document.pictures import by_letter, in_colour, key_of
from blockdsl.document.steps import photos_of, steps_of, web_links
from blockdsl.document.units import methods_compared, units_to_make
from blockdsl.facts.blockfacts import BlockFacts, ColourwayFacts, FabricFacts
from blockdsl.pictures.block import fabrics_of
from blockdsl.wording.applique import format_applique, is_told_in_a_step
from blockdsl.wording.bias import format_bias
from blockdsl.wording.grammar import many
from blockdsl.wording.lengths import plain_measure, plain_size
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.sheet import (
    cautions,
    format_allowance,
    format_between_marks,
    format_drift,
    format_finished,
    format_grid,
    format_metric_rule,
    format_sides,
    format_sources,
    format_squaring,
    format_templates,
)

_SIZE_HEADS: Final = ("finished", "unfinished", "grid", "cells", "seam", "ruler")
_SIMPLE: Final = 100  # with more patches the letters want a larger picture
_MOST_TOLD: Final = 6  # of more fabrics a colourway names those alone that take another's place


def block_parts(sizes: Sequence[BlockFacts], *, begin: str = "", lessons: Lessons = NO_LESSONS) -> Parts:
    """The block at one finished size or more, which differ in measures alone: pictures are drawn once.

    `begin` is where the sizes and the cautions are explained for a whole book; without it they are said here.
    `lessons` are where the methods are taught.
    """
    first, words = sizes[0], words_of(sizes[0])
    remark = words("book-other-sizes", size=format_finished(first)) if len(sizes) > 1 else ""
    return (
        _measures(first) if len(sizes) == 1 else _sizes(sizes),
        Plate(
            (in_colour(first, caption=words("sheet-in-color")), by_letter(first)),
            key_of(first.fabrics, words),
            simple=len(first.placed) <= _SIMPLE,
        ),
        *_level_and_time(first),
        *beside(words("sheet-notes"), *(Paragraph(plain(note)) for note in notes_with_block(first))),
        *beside(words("sheet-photos"), *photos_of(first.remarks_with_block, dict(first.photos))),
        *beside(words("sheet-see"), *web_links(first.remarks_with_block, words)),
        *beside(words("sheet-source"), *(Paragraph(plain(text), small=True) for text in format_sources(first))),
        *before_the_first_cut(sizes, begin),
        *cutting(sizes, 2),
        *cuts_at_an_angle(first, 2, remark=remark and words("angle-one-size", size=format_finished(first))),
        *cutters(first, 2),
        *units_to_make(sizes, 2, lessons),
        *methods_compared(first, 2),
        *_steps(sizes, remark, lessons),
        *_applique(first),
        *_colourways(first),
        *recutting(first, 2),
    )


def _level_and_time(facts: BlockFacts) -> tuple[Section, ...]:
    """For whom it is and how long one takes, as far as the designer says."""
    said = {"level": facts.level, "time": facts.time}
    title = "-".join(("sheet", *(what for what, text in said.items() if text)))
    texts = " · ".join(filter(None, said.values()))
    return beside(words_of(facts)(title), Paragraph(plain(texts))) if texts else ()


def notes_with_block(facts: BlockFacts) -> tuple[str, ...]:
    """The designer's notes that stand in no step."""
    return (
        *facts.notes,
        *(remark.text for remark in facts.remarks_with_block if remark.is_note),
    )


# --- its head ------------------------------------------------------------------------------------------


def _measures(facts: BlockFacts) -> DefinitionList:
    """What a block measures: finished, unfinished, its grid, how much there is of it."""
    words = words_of(facts)
    made_of = (many(len(facts.placed), "patches", words), many(len(facts.fabrics), "fabrics", words))
    entries = (
        Definition(words("sheet-finished"), (plain(plain_size(facts.finished, facts.unit, words)),)),
        Definition(words("sheet-unfinished"), (plain(plain_size(facts.unfinished, facts.unit, words)),)),
        Definition(words("sheet-grid"), tuple(plain(text) for text in format_grid(facts) if text)),
        Definition(words("sheet-made-of"), tuple(map(plain, made_of))),
    )
    return DefinitionList(entries)


def _sizes(sizes: Sequence[BlockFacts]) -> Table:
    """A row for each size: finished, unfinished, the squares of the grid, the seam allowance, the ruler's measure."""
    words = words_of(sizes[0])
    columns = tuple(DataColumn(words(f"sizes-head-{name}"), "words") for name in _SIZE_HEADS)
    rows = tuple(map(_size_row, sizes))
    return Table(words("site-sizes"), columns, (RowGroup(rows, by_size=True),), whole=True)


def _size_row(facts: BlockFacts) -> tuple[DataCell, ...]:
    words = words_of(facts)
    cell = unfinished_cell = words("sizes-uneven")
    if facts.cell is not None:
        one, other = facts.cell
        grown = (one + 2 * facts.seam, other + 2 * facts.seam)
        finished, unfinished_cell = (
            format_sides(size, facts.unit, words, square=one == other) for size in (facts.cell, grown)
        )
        cell = words("sizes-cells", columns=facts.grid[0], rows=facts.grid[1], size=finished)
    return (
        strong(plain_size(facts.finished, facts.unit, words)),
        plain(plain_size(facts.unfinished, facts.unit, words)),
        plain(cell),
        plain(unfinished_cell),
        plain(plain_measure(facts.seam, facts.unit, words)),
        plain(plain_measure(facts.measure, facts.unit, words)),
    )


# --- before the first cut ------------------------------------------------------------------------------


def before_the_first_cut(sizes: Sequence[BlockFacts], begin: str) -> list[Part]:
    """Where rounding to the ruler adds up, what the sizes mean, what to take care of, each thing once."""
    words = words_of(sizes[0])
    title = words("sheet-before-cutting")
    drift = [Paragraph(plain(text)) for text in dict.fromkeys(text for facts in sizes for text in format_drift(facts))]
    always = () if begin else (format_allowance, format_squaring, format_metric_rule)
    says = (*always, format_between_marks, _format_templates_of_book if begin else format_templates, format_bias)
    texts = [text for text in dict.fromkeys(say(facts) for say in says for facts in sizes) if text]
    if not begin:
        return [*beside(title, *drift), sizes_and_care(texts, words)]
    return list(beside(title, *drift, *(Paragraph(plain(text)) for text in texts), _read_first(begin, words)))


def _format_templates_of_book(facts: BlockFacts) -> str:
    return words_of(facts)("book-templates") if format_templates(facts) else ""


def _read_first(begin: str, words: Messages) -> Reference:
    return Reference(words("book-read-first"), begin)


def sizes_and_care(texts: Sequence[str], words: Messages) -> Columns:
    """What is said of the sizes, and the cautions beside it."""
    said = section(2, words("sheet-sizes"), *(Paragraph(plain(text)) for text in texts))
    items = tuple((Paragraph(plain(text)),) for text in cautions(words))
    return Columns((said, section(2, words("sheet-care"), Listing(items))))


# --- sewing --------------------------------------------------------------------------------------------


def _steps(sizes: Sequence[BlockFacts], remark: str, lessons: Lessons) -> list[Section]:
    """The steps; of several sizes those of the first, for whoever cannot choose."""
    first, words = sizes[0], words_of(sizes[0])
    if len(sizes) == 1 or not first.steps:
        parts = steps_of(first, lessons)
    else:
        each = (
            AtSize(
                words("site-at-size", size=format_finished(facts)), f"size-{number}", partial(steps_of, facts, lessons)
            )
            for number, facts in enumerate(sizes, start=1)
        )
        parts = (AtSizes(tuple(each), remark),)
    return [section(2, words("sheet-steps"), *parts, aside=words("steps-aside"))] if parts else []


def _applique(facts: BlockFacts) -> tuple[Section, ...]:
    """How appliqué is prepared and sewn on, where no step tells it."""
    texts = () if is_told_in_a_step(facts) else format_applique(facts)
    return beside(words_of(facts)("sheet-applique"), *(Paragraph(plain(text)) for text in texts))


# --- colourways ----------------------------------------------------------------------------------------


def _colourways(facts: BlockFacts) -> list[Part]:
    """The other plans of colour, each with its key; nothing when the block has one alone."""
    words = words_of(facts)
    cards = tuple(
        Card((in_colour(facts, plan), Heading(3, plain(plan.name)), key_of(_told(facts, plan), words, brief=True)))
        for plan in facts.colourways
    )
    return [section(2, words("book-other-colorways"), Cards("colourways", cards))] if cards else []


def _told(facts: BlockFacts, colourway: ColourwayFacts) -> list[FabricFacts]:
    """The fabrics of a colourway, each once; of many those alone that take another's place."""
    fabrics = fabrics_of(facts, colourway)
    seen = {fabric.name: fabric for fabric in fabrics.values()}
    if len(seen) > _MOST_TOLD:
        seen = {fabric.name: fabric for name, fabric in fabrics.items() if fabric.name != name}
    return list(seen.values())
