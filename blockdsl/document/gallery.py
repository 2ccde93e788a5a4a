"""A contact sheet as a web page: many blocks side by side, small, by family."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.document.content import (
    Card,
    Cards,
    Heading,
    Paragraph,
    Part,
    Section,
    TextRun,
    WebPage,
    WebSite,
    plain,
)
from blockdsl.document.pictures import in_colour
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.wording.grammar import many
from blockdsl.wording.lengths import show_extent
from blockdsl.wording.messages import Messages, messages, words_of
from blockdsl.wording.sheet import families_in_order, format_family


def gallery_site(blocks: Sequence[BlockFacts], title: str) -> WebSite:
    """The contact sheet as a web page: each picture says in words what is seen, and where the block comes from."""
    words = words_of_all(blocks)
    sections = tuple(_section(family, found, words) for family, found in families_of(blocks))
    parts: tuple[Part, ...] = sections
    under = words("gallery-by-family", blocks=many(len(blocks), "patchwork-blocks", words))
    page = WebPage("index", title, parts, under=under)
    return WebSite(title, "", blocks[0].language if blocks else "en-US", (page,))


def _section(family: str, blocks: Sequence[BlockFacts], words: Messages) -> Section:
    title = words("gallery-family", family=family, blocks=many(len(blocks), "blocks", words))
    return Section(Heading(2, plain(title)), (Cards("blocks", tuple(map(_card, blocks))),))


def _card(block: BlockFacts) -> Card:
    words = words_of(block)
    size, patches = show_extent(block.finished, block.unit, words), many(len(block.placed), "patches", words)
    about = words("gallery-line", size=size, patches=patches)
    sources = tuple(Paragraph((TextRun(source, "quiet"),)) for source in block.sources)
    return Card(
        (
            in_colour(block, small=True),
            Paragraph((TextRun(block.name, "strong"),)),
            Paragraph((TextRun(about, "quiet"),)),
            *sources,
        )
    )


def words_of_all(blocks: Sequence[BlockFacts]) -> Messages:
    """The messages of a sheet of many blocks: those of the first."""
    return messages(blocks[0].language) if blocks else messages()


def families_of(blocks: Sequence[BlockFacts]) -> list[tuple[str, list[BlockFacts]]]:
    """The blocks by family, in the order of an index of families; within one as they come."""
    found: dict[str, list[BlockFacts]] = {}
    for block in blocks:
        found.setdefault(format_family(block), []).append(block)
    words = words_of_all(blocks)
    return [(family, found[family]) for family in families_in_order(found, words)]
