"""A book, or the blocks of a file, as a web site: the pages in reading order behind a home page of contents."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby
from pathlib import PurePosixPath
from typing import Final

from blockdsl.drawing.web_block import block_page, say_finished
from blockdsl.drawing.web_index import index_page
from blockdsl.drawing.web_parts import (
    Card,
    Cards,
    Heading,
    Listing,
    Paragraph,
    Part,
    Picture,
    Places,
    Run,
    Section,
    WebPage,
    WebSite,
    plain,
)
from blockdsl.drawing.web_pictures import small_page
from blockdsl.drawing.web_reading import read_text
from blockdsl.drawing.words import many
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.bookfacts import BookBlockFacts, BookFacts, ChapterFacts, WordsFacts

HOME: Final = "index"
BLOCKS: Final = "blocks"
RESERVED: Final = (HOME, BLOCKS)
"""Names of pages that no block or text may take."""


@dataclass(frozen=True, slots=True)
class _Entry:
    """A page with what the contents show of it."""

    page: WebPage
    block: BookBlockFacts | None = None


def book_of(title: str, blocks: Sequence[BlockFacts]) -> BookFacts:
    """Blocks that no book was declared for, as a book of one nameless chapter."""
    items = tuple(BookBlockFacts(block.name, (block,)) for block in blocks)
    return BookFacts(title, "", "letter", (ChapterFacts("", items),), techniques=False)


def web_site(book: BookFacts, name_of: Callable[[str], str]) -> WebSite:
    """The whole site. `name_of` gives each page its file's name from its title, never one twice nor one of RESERVED."""
    chapters = [
        (chapter.title, [_entry(item, chapter.title, name_of) for item in chapter.items]) for chapter in book.chapters
    ]
    entries = [entry for _, of_chapter in chapters for entry in of_chapter]
    found = [(entry.block, entry.page.name) for entry in entries if entry.block is not None]
    back = [index_page(found, BLOCKS)] if len(found) > 1 else []
    home = WebPage(HOME, book.name, (*_contents(chapters), *_back(back)), under=_under(book))
    return WebSite(book.name, book.author, book.language, (home, *(entry.page for entry in entries), *back))


def _entry(item: WordsFacts | BookBlockFacts, chapter: str, name_of: Callable[[str], str]) -> _Entry:
    if isinstance(item, BookBlockFacts):
        return _Entry(block_page(item.sizes, name_of(item.name), over=chapter), item)
    reading = read_text(item.markdown)
    title = reading.title or _title_of(item.path)
    return _Entry(WebPage(name_of(title), title, reading.parts, over=chapter))


def _title_of(path: str) -> str:
    """A text without a heading goes by its file's name."""
    words = PurePosixPath(path).stem.replace("-", " ").replace("_", " ").strip()
    return words[:1].upper() + words[1:] or "Words"


def _under(book: BookFacts) -> str:
    count = many(len(list(book.blocks)), "patchwork block")
    return f"{f'by {book.author}, ' if book.author else ''}{count} to cut and sew"


# --- contents ------------------------------------------------------------------------------------------


def _contents(chapters: Sequence[tuple[str, Sequence[_Entry]]]) -> Iterator[Part]:
    for title, entries in chapters:
        parts = tuple(_chapter(entries))
        if title:
            yield Section(Heading(2, plain(title)), parts)
        else:
            yield from parts


def _chapter(entries: Sequence[_Entry]) -> Iterator[Part]:
    """Texts as lines, blocks as cards, in the order of the book."""
    for is_block, group in groupby(entries, key=lambda entry: entry.block is not None):
        if is_block:
            yield Cards("blocks", tuple(_card(entry.page, entry.block) for entry in group if entry.block is not None))
        else:
            yield Places("Texts", tuple(Run(entry.page.title, target=entry.page.name) for entry in group))


def _card(page: WebPage, block: BookBlockFacts) -> Card:
    first = block.sizes[0]
    sizes = ", ".join(say_finished(facts) for facts in block.sizes)
    about = f"{sizes}; {many(len(first.placed), 'patch', 'patches')}, {many(len(first.fabrics), 'fabric')}"
    return Card(
        (
            Picture(small_page(first), beside=True),
            Paragraph((Run(block.name, "strong"),)),
            Paragraph((Run(about, "quiet"),)),
        ),
        page.name,
    )


def _back(pages: Sequence[WebPage]) -> Iterator[Part]:
    if pages:
        links = tuple((Paragraph((Run(page.title, target=page.name),)),) for page in pages)
        yield Section(Heading(2, plain("At the back")), (Listing(links),))
