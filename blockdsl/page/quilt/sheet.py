"""The sheets of a quilt: all that a maker needs to buy, cut, sew and finish it, on as few pages as it takes."""

from __future__ import annotations

from blockdsl.document.quilt_sizes import sizes_said
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.marks.display_list import Document, Mark
from blockdsl.marks.theme import FOOTER_HEIGHT_PT, Box, PaperSize, paper_named
from blockdsl.page.flow import Flowable, run_over_pages
from blockdsl.page.quilt.assembly import assembly
from blockdsl.page.quilt.blocks import blocks_to_make, is_alone, makings
from blockdsl.page.quilt.cutting import quilt_cutting
from blockdsl.page.quilt.finishing import finishing
from blockdsl.page.quilt.head import quilt_head
from blockdsl.page.quilt.materials import materials
from blockdsl.page.quilt.scraps import scraps
from blockdsl.page.sheet.notes import closing_flowable, designer_notes
from blockdsl.page.sheet.sheet import numbered_pages
from blockdsl.wording.lengths import plain_size
from blockdsl.wording.messages import words_of


def quilt_sheet(facts: QuiltFacts, *, paper: str = "letter", author: str = "") -> Document:
    """Picture, materials, cutting, blocks, assembly, borders, finishing, on pages of one size.

    Errors: ValueError for an unknown paper.
    """
    sheet = paper_named(paper)
    words = words_of(facts)
    size = plain_size(facts.finished, facts.unit, words)
    return Document(
        title=f"{facts.name}, {size}",
        pages=numbered_pages(quilt_bodies(facts, sheet), facts.name, sheet, words),
        author=author,
        subject=words("quilt-sheet-subject", size=size),
        language=facts.language,
    )


def quilt_bodies(facts: QuiltFacts, paper: PaperSize) -> list[tuple[Mark, ...]]:
    """What stands on each page above its foot. The making of each block begins on a page of its own."""
    content = paper.content
    room = Box(content.x_pt, content.y_pt, content.width_pt, content.height_pt - FOOTER_HEIGHT_PT)
    bodies: list[tuple[Mark, ...]] = []
    for part in quilt_parts(facts):
        bodies += run_over_pages(part, room)
    return bodies


def quilt_parts(facts: QuiltFacts) -> list[list[Flowable]]:
    """The parts of the sheet, each to begin a page."""
    made = makings(facts)
    front = [
        *quilt_head(facts),
        *materials(facts),
        *designer_notes(facts),
        closing_flowable(sizes_said(facts), words_of(facts)),
        *quilt_cutting(facts),
        *([] if made and is_alone(facts) else blocks_to_make(facts)),
    ]
    together = [*assembly(facts), *scraps(facts), *finishing(facts)]
    return [front, *made, together]
