"""A block or a quilt in a book: what its sheet has, under the name of its chapter, then the words that follow it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from blockdsl.document.block import block_parts
from blockdsl.document.quilt import quilt_parts
from blockdsl.document.reading import prose_of
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.bookfacts import BookBlockFacts, WordsFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.marks.theme import PaperSize
from blockdsl.page.book.parts import Bodies
from blockdsl.page.flow import PageNumbers
from blockdsl.page.parts import pages_of, title_flowable
from blockdsl.wording.messages import words_of

BEGIN = "begin"
"""Where a book explains its sizes and has its cautions."""
Elsewhere = Sequence[tuple[BlockFacts, str]]
"""Blocks at the size at which the book tells their steps, with the anchor of their pages."""


def block_pages(
    block: BookBlockFacts, words: Sequence[WordsFacts], over: str, pages: PageNumbers, paper: PaperSize
) -> Bodies:
    """All pages of one block without their feet; `over` stands above its name, `words` follow it."""
    parts = (*block_parts(block.sizes, begin=BEGIN), *map(prose_of, words))
    return pages_of(title_flowable(block.name, over), parts, words_of(block.sizes[0]), paper, pages)


def making_elsewhere(blocks: Iterable[tuple[str, BookBlockFacts]]) -> Elsewhere:
    """The blocks of a book as they are told there: steps give the measures of a block's first size alone."""
    return [(block.sizes[0], anchor) for anchor, block in blocks]


def told_elsewhere(quilt: QuiltFacts, elsewhere: Elsewhere) -> dict[int, str]:
    """The quilt's kinds whose very block is told at the same size on pages of its own, each with their anchor."""
    return {
        place: anchor
        for place, kind in enumerate(quilt.kinds)
        for block, anchor in elsewhere
        if block.name == kind.name and block == kind.block
    }


def quilt_pages(
    facts: QuiltFacts,
    words: Sequence[WordsFacts],
    over: str,
    told: Mapping[int, str],
    pages: PageNumbers,
    paper: PaperSize,
) -> Bodies:
    """All pages of one quilt without their feet; blocks that are `told` elsewhere are referred to."""
    anchors = {id(facts.kinds[place].block): anchor for place, anchor in told.items()}
    parts = quilt_parts(facts, lambda block: anchors.get(id(block), ""), begin=BEGIN)
    title = title_flowable(facts.name, over)
    return pages_of(title, (*parts, *map(prose_of, words)), words_of(facts), paper, pages)
