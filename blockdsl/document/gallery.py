"""A contact sheet: many blocks side by side, small, by family."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.document.content import (
    Card,
    Cards,
    Paragraph,
    Parts,
    Section,
    WebPage,
    WebSite,
    plain,
    quiet,
    section,
    strong,
)
from blockdsl.document.pictures import in_colour
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.wording.grammar import many
from blockdsl.wording.lengths import plain_size
from blockdsl.wording.messages import Messages, messages, words_of
from blockdsl.wording.sheet import families_in_order, format_family


def gallery_parts(blocks: Sequence[BlockFacts]) -> Parts:
    """The families in the order of an index of families; within one the blocks as they come."""
    found: dict[str, list[BlockFacts]] = {}
    for block in blocks:
        found.setdefault(format_family(block), []).append(block)
    words = words_of_all(blocks)
    return tuple(_section(family, found[family], words) for family in families_in_order(found, words))


def gallery_site(blocks: Sequence[BlockFacts], title: str) -> WebSite:
    """The contact sheet as a web page: each picture says in words what is seen, and where the block comes from."""
    under = words_of_all(blocks)(
        "gallery-by-family", blocks=many(len(blocks), "patchwork-blocks", words_of_all(blocks))
    )
    page = WebPage("index", title, gallery_parts(blocks), under=under)
    return WebSite(title, "", blocks[0].language if blocks else "en-US", (page,))


def words_of_all(blocks: Sequence[BlockFacts]) -> Messages:
    """The messages of a sheet of many blocks: those of the first."""
    return messages(blocks[0].language) if blocks else messages()


def _section(family: str, blocks: Sequence[BlockFacts], words: Messages) -> Section:
    cards = Cards("gallery", tuple(map(_card, blocks)))
    return section(2, family, cards, aside=many(len(blocks), "blocks", words))


def _card(block: BlockFacts) -> Card:
    words = words_of(block)
    size, patches = plain_size(block.finished, block.unit, words), many(len(block.placed), "patches", words)
    about = words("gallery-line", size=size, patches=patches)
    sources = (Paragraph(plain(source), small=True) for source in block.sources)
    return Card((in_colour(block, small=True), Paragraph(strong(block.name)), Paragraph(quiet(about)), *sources))
