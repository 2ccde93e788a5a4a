"""A quilt in a book: all that its own sheet has, and the page of each block that is explained elsewhere."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Final

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.bookfacts import BookBlockFacts, WordsFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.marks.prose import TextStyle, line, width_of
from blockdsl.marks.theme import BODY_PT, CONTENT_WIDTH_PT, INK, STEP_PT, PaperSize
from blockdsl.page.book.parts import Bodies, flowed, linked, part_title
from blockdsl.page.book.words import said
from blockdsl.page.flow import Flowable
from blockdsl.page.quilt.assembly import assembly
from blockdsl.page.quilt.blocks import blocks_to_make, is_alone, makings
from blockdsl.page.quilt.cutting import quilt_cutting
from blockdsl.page.quilt.finishing import finishing
from blockdsl.page.quilt.head import quilt_head
from blockdsl.page.quilt.materials import materials
from blockdsl.page.quilt.scraps import scraps
from blockdsl.page.sheet.notes import designer_notes
from blockdsl.wording.messages import words_of
from blockdsl.wording.quilt_words import kind_words

Elsewhere = Sequence[tuple[BlockFacts, str]]
"""Blocks at the size at which the book shows their steps, with the anchor of their pages."""
MakingPages = Mapping[int, tuple[str, str]]
"""For a kind of block, by its place in the quilt's list, the anchor and the page where its making is shown."""

_BODY: Final = TextStyle(BODY_PT, "regular", INK)
_PAGE: Final = TextStyle(BODY_PT, "bold", INK)


def making_elsewhere(blocks: Iterable[tuple[str, BookBlockFacts]]) -> Elsewhere:
    """The blocks of a book as they are shown there: steps give the measures of a block's first size alone."""
    return [(block.sizes[0], anchor) for anchor, block in blocks]


def told_elsewhere(quilt: QuiltFacts, elsewhere: Elsewhere) -> dict[int, str]:
    """The quilt's kinds whose very block has pages of its own at the same size, each with their anchor."""
    return {
        place: anchor
        for place, kind in enumerate(quilt.kinds)
        for block, anchor in elsewhere
        if block.name == kind.name and block == kind.block
    }


def quilt_pages(
    facts: QuiltFacts, words: Sequence[WordsFacts], over: str, told: MakingPages, paper: PaperSize
) -> Bodies:
    """All pages of one quilt without their feet; `over` stands above its name, `words` follow it."""
    made = makings(facts, without=set(told))
    front = [
        part_title(facts.name, over),
        *quilt_head(facts)[1:],
        *designer_notes(facts),
        *materials(facts),
        *quilt_cutting(facts),
        *([] if made and is_alone(facts) else blocks_to_make(facts)),
        *(_reference(facts, place, anchor, page) for place, (anchor, page) in told.items()),
    ]
    together = [*assembly(facts), *scraps(facts), *finishing(facts)]
    for text in words:
        together += said(text)
    return [page for part in [front, *made, together] for page in flowed(part, paper)]


def _reference(facts: QuiltFacts, place: int, anchor: str, page: str) -> Flowable:
    """Where the cutting of one block and its steps are, with the way there."""
    words = words_of(facts)
    said = words("book-elsewhere", block=kind_words(facts.kinds[place].name, words))
    baseline = STEP_PT + _BODY.baseline_pt
    height = _BODY.line_pt + 2 * STEP_PT
    marks = (
        *line(said, 0.0, baseline, _BODY),
        *line(page, width_of(said, _BODY) + STEP_PT, baseline, _PAGE),
    )
    return Flowable(height, (linked(anchor, CONTENT_WIDTH_PT, height, marks),), before_pt=STEP_PT)
