"""The blocks of a quilt to be made: a picture of each kind in each of its colourways, how many, what it measures."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from typing import Final

from msgspec.structs import replace

from blockdsl.cutting.quilt_cuts import listed_names, with_mirror_image
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.quiltfacts import QuiltFacts, QuiltKindFacts
from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.prose import TextStyle, line, lines_of, paragraph
from blockdsl.marks.theme import (
    BODY_PT,
    CONTENT_WIDTH_PT,
    GUTTER_PT,
    INK,
    LEAD_PT,
    QUIET,
    SMALL_PT,
    STEP_PT,
    Box,
    span_pt,
)
from blockdsl.page.flow import Flowable
from blockdsl.page.headings import continued, heading
from blockdsl.page.sheet.cutting import cutting_table
from blockdsl.page.sheet.units import unit_list
from blockdsl.page.steps import step_list
from blockdsl.page.table import tick_cell
from blockdsl.pictures.block import block_picture, letter_diagram
from blockdsl.wording.bias import format_bias
from blockdsl.wording.grammar import in_thousands, many
from blockdsl.wording.lengths import show_extent
from blockdsl.wording.messages import words_of
from blockdsl.wording.quilt_words import title_of
from blockdsl.wording.sheet import format_between_marks

_ACROSS: Final = 3
_COLUMNS: Final = 4
_PICTURE_PT: Final = 108.0
_TITLE: Final = TextStyle(LEAD_PT, "bold", INK)
_BOLD: Final = TextStyle(BODY_PT, "bold", INK)
_QUIET: Final = TextStyle(BODY_PT, "regular", QUIET)
_SMALL: Final = TextStyle(SMALL_PT, "regular", QUIET)
_LETTERS_PT: Final = 150.0
_ROLES: Final = {"block": "", "half block": "blocks-half", "border unit": "blocks-for-border"}


def blocks_to_make(facts: QuiltFacts) -> list[Flowable]:
    """The heading and three cards beside each other on each flowable."""
    cards = [_card(kind, colourway, count) for kind in facts.kinds for colourway, count in kind.colourways]
    words = words_of(facts)
    title = words("blocks-title")
    flowables = [heading(title, aside=words("blocks-aside"))]
    for start in range(0, len(cards), _ACROSS):
        group = cards[start : start + _ACROSS]
        marks: list[Mark] = []
        for place, (_, card) in enumerate(group):
            marks += moved(card, place * (span_pt(_COLUMNS) + GUTTER_PT), 0.0)
        height = max(height for height, _ in group)
        head = (continued(title, words),)
        flowables.append(Flowable(height, tuple(marks), before_pt=3 * STEP_PT if start else 0.0, head=head))
    return flowables


def _card(kind: QuiltKindFacts, colourway: str, count: int) -> tuple[float, tuple[Mark, ...]]:
    """Picture above, words below."""
    block, words = kind.block, words_of(kind.block)
    plan = next((plan for plan in block.colourways if plan.name == colourway), None)
    picture, placed = block_picture(block, Box(0.0, 0.0, _PICTURE_PT, _PICTURE_PT), colourway=plan)
    marks: list[Mark] = [picture]
    y = placed.height_pt + 1.5 * STEP_PT
    for text in lines_of(title_of(kind, words), span_pt(_COLUMNS), _TITLE):
        marks += line(text, 0.0, y + _TITLE.baseline_pt, _TITLE)
        y += _TITLE.line_pt
    marks += line(words("units-make", count=in_thousands(count, words)), 0.0, y + _BOLD.baseline_pt, _BOLD)
    y += _BOLD.line_pt
    for text in _about(kind, colourway):
        height, quiet = paragraph(text, span_pt(_COLUMNS), _QUIET)
        marks += moved(quiet, 0.0, y)
        y += height
    marks += moved(tick_cell(_BOLD).marks, 0.0, y)
    indent = 3.5 * STEP_PT
    measure = words("units-measure", size=show_extent(block.unfinished, block.unit, words))
    height, bold = paragraph(measure, span_pt(_COLUMNS) - indent, _BOLD)
    marks += moved(bold, indent, y)
    return y + height, tuple(marks)


def _about(kind: QuiltKindFacts, colourway: str) -> Iterator[str]:
    block, words = kind.block, words_of(kind.block)
    if colourway:
        yield words("blocks-in-colorway", name=colourway)
    if role := _ROLES[kind.role]:
        yield words(role)
    patches = many(len(block.placed), "patches", words)
    yield words("blocks-about", size=show_extent(block.finished, block.unit, words), patches=patches)


def makings(facts: QuiltFacts, *, without: Collection[int] = ()) -> list[list[Flowable]]:
    """For each kind that is pieced its letters, what one takes, its units and steps; each begins on a new page.

    `without`: kinds that are shown elsewhere, by their place in the quilt's list.
    """
    kinds = [kind for place, kind in enumerate(facts.kinds) if place not in without]
    return [_making(facts, kind, alone=is_alone(facts)) for kind in kinds if len(kind.block.placed) > 1]


def is_alone(facts: QuiltFacts) -> bool:
    """Whether all blocks are alike, so that a list of them would say no more than the making of the one."""
    return len(facts.kinds) == 1 and len(facts.kinds[0].colourways) == 1


def _making(facts: QuiltFacts, kind: QuiltKindFacts, *, alone: bool) -> list[Flowable]:
    block, words = kind.block, words_of(facts)
    size, count = show_extent(block.unfinished, block.unit, words), in_thousands(kind.count, words)
    first = heading(
        words("blocks-title-one", block=block.name) if alone else title_of(kind, words),
        aside=words("blocks-make-each", count=count, size=size),
    )
    colourway = kind.colourways[0][0] if alone else ""
    table = [*_cutting(block, block_totals(facts, kind)), *_beware(block)]
    return [first, _pictures(block, colourway), *table, *unit_list(block), *step_list(block)]


def _pictures(block: BlockFacts, colourway: str) -> Flowable:
    """The block in colour, and its patches by letter."""
    plan = next((plan for plan in block.colourways if plan.name == colourway), None)
    colour, one = block_picture(block, Box(0.0, 0.0, _LETTERS_PT, _LETTERS_PT), colourway=plan)
    x = span_pt(6) + GUTTER_PT
    letters, other = letter_diagram(block, Box(x, 0.0, _LETTERS_PT + 60.0, _LETTERS_PT))
    caption = line(words_of(block)("sheet-letters"), x, other.bottom_pt + STEP_PT + _SMALL.baseline_pt, _SMALL)
    height = max(one.height_pt, other.bottom_pt + STEP_PT + _SMALL.line_pt)
    return Flowable(height, (colour, letters, *caption), keep_with_next=True)


def _beware(block: BlockFacts) -> list[Flowable]:
    """What is said of this block's sizes and bias edges alone; nothing of most."""
    said = [text for say in (format_between_marks, format_bias) if (text := say(block))]
    paragraphs = (paragraph(text, CONTENT_WIDTH_PT, _QUIET) for text in said)
    return [Flowable(height, marks, before_pt=2 * STEP_PT) for height, marks in paragraphs]


def block_totals(facts: QuiltFacts, kind: QuiltKindFacts) -> dict[int, int]:
    """For each line of a block's table, by its place, how many the whole quilt takes for that part of this block.

    Batches that serve its mirror image too are counted with them.
    """
    names = listed_names((each.name, each.role) for each in facts.kinds)
    name = names[facts.kinds.index(kind)]
    shared = with_mirror_image(name.removesuffix(", mirror image"))
    totals: dict[int, int] = {}
    for place, cut in enumerate(kind.block.cutting):
        uses = {f"{each}: {cut.unit or cut.label}" for each in (name, shared)}
        totals[place] = sum(
            count
            for whole in facts.cutting
            if (whole.fabric, whole.piece, sorted(whole.cut)) == (cut.fabric, cut.piece, sorted(cut.cut))
            and whole.subcut == cut.subcut
            for used, count in whole.uses.items()
            if used in uses
        )
    return totals


def _cutting(block: BlockFacts, totals: Mapping[int, int]) -> Sequence[Flowable]:
    """The table of one block, with the remark that it is for one alone."""
    table = cutting_table(block, totals)
    if not table:
        return ()
    words = words_of(block)
    height, marks = paragraph(words("blocks-totals"), span_pt(12), _QUIET)
    title = heading(words("cutting-one"), aside=words(f"cutting-sizes-{block.unit}"))
    head = replace(title, before_pt=4 * STEP_PT)
    return (head, Flowable(height + STEP_PT, marks, keep_with_next=True), *table[1:])
