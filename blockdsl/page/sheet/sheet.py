"""The pattern sheet: all that a maker needs to cut and sew one block, on as few pages as it takes."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec.structs import replace

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.marks.display_list import Document, Mark, Page
from blockdsl.marks.prose import TextStyle, fitted, line, line_ending, width_of
from blockdsl.marks.theme import FOOTER_HEIGHT_PT, QUIET, SMALL_PT, STEP_PT, Box, PaperSize, paper_named
from blockdsl.page.flow import Flowable, run_over_pages
from blockdsl.page.headings import heading
from blockdsl.page.sheet.colourways import colourway_gallery
from blockdsl.page.sheet.cutters import cutter_list
from blockdsl.page.sheet.cutting import cutting_table
from blockdsl.page.sheet.head import sheet_head
from blockdsl.page.sheet.methods import method_list
from blockdsl.page.sheet.notes import applique_notes, before_the_first_cut, notes
from blockdsl.page.sheet.recut import recut_tables
from blockdsl.page.sheet.size_tables import cutting_tables, size_table
from blockdsl.page.sheet.size_units import units_at_sizes
from blockdsl.page.sheet.strips import strip_pictures
from blockdsl.page.sheet.units import unit_list
from blockdsl.page.steps import step_list
from blockdsl.wording.lengths import plain_size
from blockdsl.wording.messages import Messages, words_of

_FOOTER: Final = TextStyle(SMALL_PT, "regular", QUIET)


def block_sheet(facts: BlockFacts, *, paper: str = "letter", author: str = "") -> Document:
    """The pattern sheet of one block: pictures, cutting, units, colourways, notes, on pages of one size.

    Units:  points at real size; everything lies in the box that prints on Letter and A4 alike, so that both
            papers break the pages at the same places.
    Errors: ValueError for an unknown paper.
    """
    sheet = paper_named(paper)
    words = words_of(facts)
    size = plain_size(facts.finished, facts.unit, words)
    return Document(
        title=f"{facts.name}, {size}",
        pages=numbered_pages(sheet_bodies(facts, sheet), facts.name, sheet, words),
        author=author,
        subject=words("sheet-subject", size=size),
        language=facts.language,
    )


def sheet_bodies(facts: BlockFacts, paper: PaperSize) -> list[tuple[Mark, ...]]:
    """What stands on each page of the sheet above its foot, for whoever binds it with others."""
    content = paper.content
    room = Box(content.x_pt, content.y_pt, content.width_pt, content.height_pt - FOOTER_HEIGHT_PT)
    flowables = [
        *sheet_head(facts),
        *before_the_first_cut(facts),
        *cutting_table(facts),
        *strip_pictures(facts),
        *cutter_list(facts),
        *unit_list(facts),
        # Before the first cut: what the sizes mean and what to take care of; and no page is begun for them alone.
        *notes(facts),
        *method_list(facts),
        *step_list(facts),
        *applique_notes(facts),
        *colourway_gallery(facts),
    ]
    sizes = _other_sizes(facts)
    pages, recut = run_over_pages([*flowables, *sizes], room), recut_tables(facts)
    # What changes in a colourway can be read from its picture too: no page is begun for it.
    longer = run_over_pages([*flowables, *recut, *sizes], room) if recut else pages
    return longer if len(longer) == len(pages) else pages


def numbered_pages(
    bodies: Sequence[tuple[Mark, ...]], name: str, paper: PaperSize, words: Messages
) -> tuple[Page, ...]:
    """A page for each body, with the name and the page's number at its foot."""
    return tuple(
        Page(paper.width_pt, paper.height_pt, (*marks, *footer(name, number, len(bodies), paper, words)))
        for number, marks in enumerate(bodies, start=1)
    )


def footer(name: str, number: int, pages: int, paper: PaperSize, words: Messages) -> tuple[Mark, ...]:
    """The block's name and the page's number, at the foot of the content box."""
    box = paper.content
    page = words("page-of", page=number, pages=pages)
    room = box.width_pt - width_of(page, _FOOTER) - 6 * STEP_PT
    baseline = box.bottom_pt - 1
    return (
        *line(fitted(name, room, _FOOTER), box.x_pt, baseline, _FOOTER),
        *line_ending(page, box.right_pt, baseline, _FOOTER),
    )


def _other_sizes(facts: BlockFacts) -> list[Flowable]:
    """Nothing for a block at one size; else all its sizes beside each other, its own first."""
    if not facts.sizes:
        return []
    sizes = (facts, *facts.sizes)
    words = words_of(facts)
    head = replace(heading(words("sizes-title-other"), aside=words("sizes-aside-other")), keep_with_next=True)
    return [head, *size_table(sizes), *cutting_tables(sizes), *units_at_sizes(sizes)]
