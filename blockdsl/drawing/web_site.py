"""A book, or the blocks of a file, as a web site: the pages in reading order behind a home page of contents."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby
from pathlib import PurePosixPath
from typing import Final

from blockdsl.drawing.web_block import block_page, say_finished
from blockdsl.drawing.web_glossary import glossary_page
from blockdsl.drawing.web_index import index_page
from blockdsl.drawing.web_parts import (
    Card,
    Cards,
    Heading,
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
from blockdsl.drawing.web_technique import technique_page
from blockdsl.drawing.words import many
from blockdsl.facts.bookfacts import BookBlockFacts, BookFacts, WordsFacts
from blockdsl.facts.techniques import techniques_for

HOME: Final = "index"
BLOCKS: Final = "blocks"
GLOSSARY: Final = "words"
RESERVED: Final = (HOME, BLOCKS, GLOSSARY)
"""Names of pages that no block or text may take."""
_TECHNIQUES: Final = "Techniques"


@dataclass(frozen=True, slots=True)
class _Entry:
    """A page with what the contents show of it."""

    page: WebPage
    block: BookBlockFacts | None = None


_Chapters = Sequence[tuple[str, Sequence[_Entry]]]


def web_site(book: BookFacts, name_of: Callable[[str], str]) -> WebSite:
    """The whole site. `name_of` gives each page its file's name from its title, never one twice nor one of RESERVED."""
    chapters = [
        (
            chapter.title,
            [
                _entry(item, chapter.title, name_of)
                for item in chapter.items
                if isinstance(item, WordsFacts | BookBlockFacts)
            ],
        )
        for chapter in book.chapters
    ]
    if book.techniques:
        chapters.append((_TECHNIQUES, list(_techniques(book, name_of))))
    pages = [entry.page for _, entries in chapters for entry in entries]
    back = list(_back(chapters, pages))
    home = WebPage(HOME, book.name, tuple(_contents(chapters, back)), under=_under(book))
    return WebSite(book.name, book.author, book.language, (home, *pages, *back))


def _techniques(book: BookFacts, name_of: Callable[[str], str]) -> Iterator[_Entry]:
    """A page for each way of making that the blocks use."""
    for technique in techniques_for([facts for block in book.blocks for facts in block.sizes]):
        yield _Entry(technique_page(technique, name_of(technique.title), over=_TECHNIQUES))


def _back(chapters: _Chapters, pages: Sequence[WebPage]) -> Iterator[WebPage]:
    """What is looked up: the blocks when there are several, and the words of the trade."""
    found = [(entry.block, entry.page.name) for _, entries in chapters for entry in entries if entry.block is not None]
    if len(found) > 1:
        yield index_page(found, BLOCKS)
    glossary = glossary_page(pages, GLOSSARY)
    if glossary is not None:
        yield glossary


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
    return f"{f'by {book.author} · ' if book.author else ''}{count} to cut and sew"


# --- contents ------------------------------------------------------------------------------------------


def _contents(chapters: _Chapters, back: Sequence[WebPage]) -> Iterator[Part]:
    for title, entries in chapters:
        parts = tuple(_chapter(entries))
        if title and parts:
            yield Section(Heading(2, plain(title)), parts)
        else:
            yield from parts
    if back:
        links = tuple(Run(page.title, target=page.name) for page in back)
        yield Section(Heading(2, plain("At the back")), (Places(links),))


def _chapter(entries: Sequence[_Entry]) -> Iterator[Part]:
    """Texts as lines, blocks as cards, in the order of the book."""
    for is_block, group in groupby(entries, key=lambda entry: entry.block is not None):
        if is_block:
            yield Cards("blocks", tuple(_card(entry.page, entry.block) for entry in group if entry.block is not None))
        else:
            yield Places(tuple(Run(entry.page.title, target=entry.page.name) for entry in group))


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
