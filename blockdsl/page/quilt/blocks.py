"""The blocks of a quilt to be made: a picture of each kind in each of its colourings, how many, what it measures."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import replace
from typing import Final

from blockdsl.cutting.quilt_cuts import listed_names, with_mirror_image
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.quiltfacts import QuiltFacts, QuiltKindFacts
from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.prose import Style, line, lines_of, paragraph
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
from blockdsl.page.bias_words import say_bias
from blockdsl.page.flow import Slice
from blockdsl.page.headings import continued, heading
from blockdsl.page.sheet.cutting import cutting_table
from blockdsl.page.sheet.units import unit_list
from blockdsl.page.steps import step_list
from blockdsl.page.table import tick_cell
from blockdsl.pictures.block import block_picture, letter_diagram
from blockdsl.pictures.lengths import show_extent
from blockdsl.pictures.quilt_words import title_of
from blockdsl.pictures.words import many, say_between_marks, say_colourway

_ACROSS: Final = 3
_COLUMNS: Final = 4
_PICTURE_PT: Final = 108.0
_TITLE: Final = Style(LEAD_PT, "bold", INK)
_BOLD: Final = Style(BODY_PT, "bold", INK)
_QUIET: Final = Style(BODY_PT, "regular", QUIET)
_SMALL: Final = Style(SMALL_PT, "regular", QUIET)
_LETTERS_PT: Final = 150.0
_ROLES: Final = {"block": "", "half block": "half block", "border unit": "for the border"}
_ONE_ALONE: Final = (
    "The last column is the total for the quilt; units made in batches are counted over all of its blocks."
)


def blocks_to_make(facts: QuiltFacts) -> list[Slice]:
    """The heading and three cards beside each other on each slice."""
    cards = [_card(kind, colouring, count) for kind in facts.kinds for colouring, count in kind.colourings]
    slices = [heading("Blocks to make", aside="sew one and measure it before you cut for all")]
    for start in range(0, len(cards), _ACROSS):
        group = cards[start : start + _ACROSS]
        marks: list[Mark] = []
        for place, (_, card) in enumerate(group):
            marks += moved(card, place * (span_pt(_COLUMNS) + GUTTER_PT), 0.0)
        height = max(height for height, _ in group)
        head = (continued("Blocks to make"),)
        slices.append(Slice(height, tuple(marks), before_pt=3 * STEP_PT if start else 0.0, head=head))
    return slices


def _card(kind: QuiltKindFacts, colouring: str, count: int) -> tuple[float, tuple[Mark, ...]]:
    """Picture above, words below."""
    block = kind.block
    plan = next((plan for plan in block.colourings if plan.name == colouring), None)
    picture, placed = block_picture(block, Box(0.0, 0.0, _PICTURE_PT, _PICTURE_PT), colouring=plan)
    marks: list[Mark] = [picture]
    y = placed.height_pt + 1.5 * STEP_PT
    for words in lines_of(title_of(kind), span_pt(_COLUMNS), _TITLE):
        marks += line(words, 0.0, y + _TITLE.baseline_pt, _TITLE)
        y += _TITLE.line_pt
    marks += line(f"Make {count:,}", 0.0, y + _BOLD.baseline_pt, _BOLD)
    y += _BOLD.line_pt
    for words in _about(kind, colouring):
        height, quiet = paragraph(words, span_pt(_COLUMNS), _QUIET)
        marks += moved(quiet, 0.0, y)
        y += height
    marks += moved(tick_cell(_BOLD).marks, 0.0, y)
    indent = 3.5 * STEP_PT
    size = show_extent(block.unfinished, block.unit)
    height, bold = paragraph(f"should measure {size}", span_pt(_COLUMNS) - indent, _BOLD)
    marks += moved(bold, indent, y)
    return y + height, tuple(marks)


def _about(kind: QuiltKindFacts, colouring: str) -> Iterator[str]:
    if colouring:
        yield f"in the {say_colourway(kind.block.unit)} {colouring}"
    if role := _ROLES[kind.role]:
        yield role
    block = kind.block
    yield f"{show_extent(block.finished, block.unit)} finished; {many(len(block.placed), 'patch', 'patches')}"


def makings(facts: QuiltFacts, *, without: Collection[int] = ()) -> list[list[Slice]]:
    """For each kind that is pieced its letters, what one takes, its units and steps; each begins on a new page.

    `without`: kinds that are told elsewhere, by their place in the quilt's list.
    """
    kinds = [kind for place, kind in enumerate(facts.kinds) if place not in without]
    return [_making(facts, kind, alone=is_alone(facts)) for kind in kinds if len(kind.block.placed) > 1]


def is_alone(facts: QuiltFacts) -> bool:
    """Whether all blocks are alike, so that a list of them would say no more than the making of the one."""
    return len(facts.kinds) == 1 and len(facts.kinds[0].colourings) == 1


def _making(facts: QuiltFacts, kind: QuiltKindFacts, *, alone: bool) -> list[Slice]:
    block = kind.block
    first = heading(
        f"Blocks to make: {block.name}" if alone else title_of(kind),
        aside=f"make {kind.count:,}, each {show_extent(block.unfinished, block.unit)} unfinished",
    )
    colouring = kind.colourings[0][0] if alone else ""
    table = [*_cutting(block, block_totals(facts, kind)), *_beware(block)]
    return [first, _pictures(block, colouring), *table, *unit_list(block), *step_list(block)]


def _pictures(block: BlockFacts, colouring: str) -> Slice:
    """The block in colour, and its patches by letter."""
    plan = next((plan for plan in block.colourings if plan.name == colouring), None)
    colour, one = block_picture(block, Box(0.0, 0.0, _LETTERS_PT, _LETTERS_PT), colouring=plan)
    x = span_pt(6) + GUTTER_PT
    letters, other = letter_diagram(block, Box(x, 0.0, _LETTERS_PT + 60.0, _LETTERS_PT))
    caption = line("Patches by letter", x, other.bottom_pt + STEP_PT + _SMALL.baseline_pt, _SMALL)
    height = max(one.height_pt, other.bottom_pt + STEP_PT + _SMALL.line_pt)
    return Slice(height, (colour, letters, *caption), keep=True)


def _beware(block: BlockFacts) -> list[Slice]:
    """What is said of this block's sizes and bias edges alone; nothing of most."""
    said = [text for say in (say_between_marks, say_bias) if (text := say(block))]
    paragraphs = (paragraph(text, CONTENT_WIDTH_PT, _QUIET) for text in said)
    return [Slice(height, marks, before_pt=2 * STEP_PT) for height, marks in paragraphs]


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
            for used, count in whole.uses
            if used in uses
        )
    return totals


def _cutting(block: BlockFacts, totals: Mapping[int, int]) -> Sequence[Slice]:
    """The table of one block, with the remark that it is for one alone."""
    table = cutting_table(block, totals)
    if not table:
        return ()
    height, marks = paragraph(_ONE_ALONE, span_pt(12), _QUIET)
    head = replace(heading("Cutting for one block", aside="sizes with seam allowance"), before_pt=4 * STEP_PT)
    return (head, Slice(height + STEP_PT, marks, keep=True), *table[1:])
