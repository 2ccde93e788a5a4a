"""Pattern sheets: all that a maker needs to cut and sew one block or one quilt, on as few pages as it takes."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.document.block import block_parts
from blockdsl.document.quilt import quilt_parts
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.marks.display_list import Document, Mark, Page, unread
from blockdsl.marks.prose import TextStyle, fitted, line, line_ending, width_of
from blockdsl.marks.theme import QUIET, SMALL_PT, STEP_PT, PaperSize, paper_named
from blockdsl.model.maker import NOBODY, Maker
from blockdsl.page.maker_row import maker_row
from blockdsl.page.parts import pages_of, title_flowable
from blockdsl.wording.lengths import plain_size
from blockdsl.wording.messages import Messages, words_of

_FOOTER: Final = TextStyle(SMALL_PT, "regular", QUIET)


def block_sheet(facts: BlockFacts, *, paper: str = "letter") -> Document:
    """The pattern sheet of one block, at its own size and those that it names, on pages of one size.

    Units:  points at real size; everything lies in the box that prints on Letter and A4 alike, so that both
            papers break the pages at the same places.
    Errors: ValueError for an unknown paper.
    """
    sheet = paper_named(paper)
    words = words_of(facts)
    size = plain_size(facts.finished, facts.unit, words)
    bodies = pages_of(title_flowable(facts.name), block_parts((facts, *facts.sizes)), words, sheet)
    return Document(
        title=f"{facts.name}, {size}",
        pages=numbered_pages(bodies, facts.name, sheet, words, facts.maker),
        author=facts.maker.name,
        rights=facts.maker.rights,
        subject=words("sheet-subject", size=size),
        language=facts.language,
    )


def numbered_pages(
    bodies: Sequence[tuple[Mark, ...]], name: str, paper: PaperSize, words: Messages, maker: Maker = NOBODY
) -> tuple[Page, ...]:
    """A page for each body; at its foot the name and the page's number, above them what its maker prints there."""
    return tuple(
        Page(paper.width_pt, paper.height_pt, (*marks, *footer(name, number, len(bodies), paper, words, maker)))
        for number, marks in enumerate(bodies, start=1)
    )


def footer(
    name: str, number: int, pages: int, paper: PaperSize, words: Messages, maker: Maker = NOBODY
) -> tuple[Mark, ...]:
    """The name and the page's number, at the foot of the content box; above them what the maker prints there."""
    box = paper.content
    page = words("page-of", page=number, pages=pages)
    room = box.width_pt - width_of(page, _FOOTER) - 6 * STEP_PT
    baseline = box.bottom_pt - 1
    return (
        *maker_row(maker, box, baseline - _FOOTER.size_pt * 1.2),
        *unread(line(fitted(name, room, _FOOTER), box.x_pt, baseline, _FOOTER)),
        *unread(line_ending(page, box.right_pt, baseline, _FOOTER)),
    )


def quilt_sheet(facts: QuiltFacts, *, paper: str = "letter") -> Document:
    """The sheet of one quilt, with the making of its blocks.

    Errors: ValueError for an unknown paper.
    """
    sheet = paper_named(paper)
    words = words_of(facts)
    size = plain_size(facts.finished, facts.unit, words)
    bodies = pages_of(title_flowable(facts.name), quilt_parts(facts), words, sheet)
    return Document(
        title=f"{facts.name}, {size}",
        pages=numbered_pages(bodies, facts.name, sheet, words, facts.maker),
        author=facts.maker.name,
        rights=facts.maker.rights,
        subject=words("quilt-sheet-subject", size=size),
        language=facts.language,
    )
