"""A contact sheet: many blocks side by side, small, by family."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from blockdsl.document.content import (
    Card,
    Cards,
    Paragraph,
    Parts,
    Places,
    Plate,
    Section,
    TextRun,
    WebPage,
    WebSite,
    beside,
    plain,
    quiet,
    section,
    strong,
)
from blockdsl.document.cutting import cutting
from blockdsl.document.pictures import by_letter, in_colour, key_of
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.wording.grammar import many
from blockdsl.wording.lengths import plain_size
from blockdsl.wording.messages import Messages, messages, words_of
from blockdsl.wording.sheet import families_in_order, format_family, format_sources


def gallery_parts(blocks: Sequence[BlockFacts], names: Sequence[str] = ()) -> Parts:
    """The families in the order of an index of families; within one the blocks as they come.

    `names` are those of the blocks' pages where they have some.
    """
    found: dict[str, list[Card]] = {}
    for place, block in enumerate(blocks):
        found.setdefault(format_family(block), []).append(_card(block, names[place] if names else ""))
    words = words_of_all(blocks)
    families = families_in_order(found, words)
    return tuple(_section(family, _anchor(place), found[family], words) for place, family in enumerate(families, 1))


def gallery_site(blocks: Sequence[BlockFacts], title: str, name_of: Callable[[str], str]) -> WebSite:
    """The contact sheet as a web site: the families on one page, and a page for each block, to which its picture leads.

    `name_of` gives each page its file's name, never one twice.
    """
    under = words_of_all(blocks)(
        "gallery-by-family", blocks=many(len(blocks), "patchwork-blocks", words_of_all(blocks))
    )
    names = [name_of(block.name) for block in blocks]
    home = WebPage("index", title, (_families(blocks), *gallery_parts(blocks, names)), under=under)
    pages = (_block_page(block, name) for block, name in _by_family(list(zip(blocks, names, strict=True))))
    return WebSite(title, "", blocks[0].language if blocks else "en-US", (home, *pages))


def _by_family(named: Sequence[tuple[BlockFacts, str]]) -> Iterator[tuple[BlockFacts, str]]:
    """The blocks in the order in which the families show them."""
    words = words_of_all([block for block, _ in named])
    for family in families_in_order({format_family(block) for block, _ in named}, words):
        yield from (each for each in named if format_family(each[0]) == family)


def _families(blocks: Sequence[BlockFacts]) -> Places:
    """The way to each family."""
    words = words_of_all(blocks)
    families = families_in_order({format_family(block) for block in blocks}, words)
    runs = (TextRun(family, target=f"index#{_anchor(place)}") for place, family in enumerate(families, start=1))
    return Places(tuple(runs), words("index-by-family"))


def _anchor(place: int) -> str:
    return f"family-{place}"


def _block_page(block: BlockFacts, name: str) -> WebPage:
    """A block large, with its letters, its fabrics, what is cut and where it comes from."""
    words = words_of(block)
    size, patches = plain_size(block.finished, block.unit, words), many(len(block.placed), "patches", words)
    parts = (
        Plate((in_colour(block, caption=words("sheet-in-color")), by_letter(block)), key_of(block.fabrics, words)),
        *beside(words("sheet-notes"), *(Paragraph(plain(note)) for note in block.notes)),
        *beside(words("sheet-source"), *(Paragraph(plain(text), small=True) for text in format_sources(block))),
        *cutting((block,), 2),
    )
    return WebPage(
        name, block.name, parts, over=format_family(block), under=words("gallery-line", size=size, patches=patches)
    )


def words_of_all(blocks: Sequence[BlockFacts]) -> Messages:
    """The messages of a sheet of many blocks: those of the first."""
    return messages(blocks[0].language) if blocks else messages()


def _section(family: str, anchor: str, cards: Sequence[Card], words: Messages) -> Section:
    return section(2, family, Cards("gallery", tuple(cards)), aside=many(len(cards), "blocks", words), anchor=anchor)


def _card(block: BlockFacts, page: str) -> Card:
    words = words_of(block)
    size, patches = plain_size(block.finished, block.unit, words), many(len(block.placed), "patches", words)
    about = words("gallery-line", size=size, patches=patches)
    sources = () if page else (Paragraph(plain(source), small=True) for source in block.sources)
    return Card((in_colour(block, small=True), Paragraph(strong(block.name)), Paragraph(quiet(about)), *sources), page)
