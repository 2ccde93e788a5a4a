"""A contact sheet as a web page: many blocks side by side, small, by family."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from blockdsl.document.parts import (
    Card,
    Cards,
    Heading,
    Paragraph,
    Part,
    Picture,
    Run,
    Section,
    WebPage,
    WebSite,
    plain,
)
from blockdsl.document.pictures import small_page
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.page.gallery import families_of
from blockdsl.pictures.lengths import show_extent
from blockdsl.pictures.words import many

_LANGUAGE: Final = "en"


def gallery_site(blocks: Sequence[BlockFacts], title: str) -> WebSite:
    """The contact sheet as a web page: each picture tells in words what is seen, and where the block comes from."""
    sections = tuple(
        Section(
            Heading(2, plain(f"{family}, {many(len(found), 'block')}")), (Cards("blocks", tuple(map(_card, found))),)
        )
        for family, found in families_of(blocks)
    )
    parts: tuple[Part, ...] = sections
    page = WebPage("index", title, parts, under=f"{many(len(blocks), 'patchwork block')}, by family")
    return WebSite(title, "", _LANGUAGE, (page,))


def _card(block: BlockFacts) -> Card:
    about = f"{show_extent(block.finished, block.unit)}; {many(len(block.placed), 'patch', 'patches')}"
    sources = tuple(Paragraph((Run(words, "quiet"),)) for words in block.sources)
    picture = replace(Picture(small_page(block)), beside=False)
    return Card((picture, Paragraph((Run(block.name, "strong"),)), Paragraph((Run(about, "quiet"),)), *sources))
