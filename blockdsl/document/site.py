"""A book, or the blocks of a file, as a web site: the pages in reading order behind a home page of contents."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from functools import partial
from itertools import groupby
from pathlib import PurePosixPath
from typing import Final

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.document.block import block_parts
from blockdsl.document.content import (
    Card,
    Cards,
    Heading,
    Paragraph,
    Part,
    Places,
    Section,
    TextRun,
    WebPage,
    WebSite,
    plain,
)
from blockdsl.document.front import front_parts
from blockdsl.document.glossary import glossary_page
from blockdsl.document.index import index_parts
from blockdsl.document.lesson import lesson_parts
from blockdsl.document.pictures import in_colour, of_quilt
from blockdsl.document.quilt import PageOf, format_size, quilt_parts
from blockdsl.document.reading import read_text
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.bookfacts import BookBlockFacts, BookFacts, WordsFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.facts.techniques import techniques_for
from blockdsl.wording.grammar import many
from blockdsl.wording.lessons import technique_title
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.quilt_words import format_blocks
from blockdsl.wording.sheet import format_count, format_finished

HOME: Final = "index"
BLOCKS: Final = "blocks"
GLOSSARY: Final = "words"
SEARCH: Final = "search"
RESERVED: Final = (HOME, BLOCKS, GLOSSARY, SEARCH)
"""Names of pages that no block or text may take."""
ChapterItem = WordsFacts | BookBlockFacts | QuiltFacts


class _Entry(Struct, frozen=True):
    """A page with what the contents show of it; `mark` tells its picture there from others, in ASCII."""

    page: WebPage
    block: BookBlockFacts | None = None
    quilt: QuiltFacts | None = None
    mark: str = ""

    @property
    def pictured(self) -> bool:
        """Whether the contents show a picture of it."""
        return self.block is not None or self.quilt is not None


_Chapter = tuple[str, list[_Entry]]
_Chapters = Sequence[_Chapter]


def web_site(book: BookFacts, name_of: Callable[[str], str]) -> WebSite:
    """The whole site. `name_of` gives each page its file's name from its title, never one twice nor one of RESERVED."""
    names = _names(book, name_of)
    told = [
        (facts, names[chapter, place])
        for chapter, place, item in _items(book)
        if isinstance(item, BookBlockFacts)
        for facts in item.sizes
    ]
    page_of = partial(_page_of, told)
    chapters = [
        (
            chapter.title,
            [
                replace(_entry(item, chapter.title, names[number, place], page_of), mark=f"card-{number}-{place}")
                for place, item in enumerate(chapter.items)
            ],
        )
        for number, chapter in enumerate(book.chapters)
    ]
    if sum(len(entries) for _, entries in chapters) > 1:
        chapters = list(_with_front(chapters, book, name_of))
    if book.techniques:
        chapters.append((words_of(book)("book-techniques"), list(_techniques(book, name_of))))
    pages = [entry.page for _, entries in chapters for entry in entries]
    back = list(_back(chapters, pages, words_of(book)))
    home = WebPage(HOME, book.name, tuple(_contents(chapters, back, words_of(book))), under=_under(book))
    return WebSite(book.name, book.author, book.language, (home, *pages, *back), book.maker)


def _with_front(chapters: _Chapters, book: BookFacts, name_of: Callable[[str], str]) -> Iterator[_Chapter]:
    """The chapters, and what to read before the first cut: behind the words that open the book, as on paper."""
    words = words_of(book)
    blocks = [*(facts for block in book.blocks for facts in block.sizes), *book.of_quilts]
    title = words("begin-title")
    front = _Entry(WebPage(name_of(title), title, front_parts(blocks, words, quilts=any(book.quilts))))
    opening, rest = list(chapters[0][1]) if not chapters[0][0] else [], chapters
    if opening:
        rest = chapters[1:]
    after = next((place for place, entry in enumerate(opening) if entry.pictured), len(opening))
    yield "", [*opening[:after], front, *opening[after:]]
    yield from rest


def _techniques(book: BookFacts, name_of: Callable[[str], str]) -> Iterator[_Entry]:
    """A page for each way of making that the blocks use."""
    blocks = [*(facts for block in book.blocks for facts in block.sizes), *book.of_quilts]
    for technique in techniques_for(blocks, tuple(book.quilts)):
        title = technique_title(technique)
        over = words_of(book)("book-techniques")
        yield _Entry(WebPage(name_of(title), title, lesson_parts(technique), over=over))


def _back(chapters: _Chapters, pages: Sequence[WebPage], words: Messages) -> Iterator[WebPage]:
    """What is looked up: the blocks when there are several, and the words of the trade."""
    found = [(entry.block, entry.page.name) for _, entries in chapters for entry in entries if entry.block is not None]
    quilts = [(entry.quilt, entry.page.name) for _, entries in chapters for entry in entries if entry.quilt is not None]
    if len(found) > 1:
        yield WebPage(BLOCKS, words("index-title"), index_parts(found, words, quilts))
    glossary = glossary_page(pages, GLOSSARY, words)
    if glossary is not None:
        yield glossary


def _items(book: BookFacts) -> Iterator[tuple[int, int, ChapterItem]]:
    """The places of chapter and item, and the item."""
    for number, chapter in enumerate(book.chapters):
        for place, item in enumerate(chapter.items):
            yield number, place, item


def _names(book: BookFacts, name_of: Callable[[str], str]) -> dict[tuple[int, int], str]:
    """The name of each item's page, given in reading order."""
    return {(number, place): name_of(_title(item)) for number, place, item in _items(book)}


def _title(item: ChapterItem) -> str:
    if isinstance(item, WordsFacts):
        return read_text(item.markdown).title or _title_of(item.path)
    return item.name


def _page_of(told: Sequence[tuple[BlockFacts, str]], block: BlockFacts) -> str:
    """The page that tells of this very block at its size."""
    return next((page for facts, page in told if facts.name == block.name and facts == block), "")


def _entry(item: ChapterItem, chapter: str, name: str, page_of: PageOf) -> _Entry:
    if isinstance(item, BookBlockFacts):
        return _Entry(WebPage(name, item.name, block_parts(item.sizes), over=chapter, sizes=_sizes(item)), block=item)
    if isinstance(item, QuiltFacts):
        return _Entry(WebPage(name, item.name, quilt_parts(item, page_of), over=chapter), quilt=item)
    return _Entry(WebPage(name, _title(item), read_text(item.markdown).parts, over=chapter))


def _sizes(block: BookBlockFacts) -> tuple[str, ...]:
    """The finished sizes to choose from; nothing for a block of one."""
    return tuple(map(format_finished, block.sizes)) if len(block.sizes) > 1 else ()


def _title_of(path: str) -> str:
    """A text without a heading goes by its file's name."""
    words = PurePosixPath(path).stem.replace("-", " ").replace("_", " ").strip()
    return words[:1].upper() + words[1:] or "Words"


def _under(book: BookFacts) -> str:
    words = words_of(book)
    by = [words("sheet-by-maker", maker=book.author)] if book.author else []
    said = [book.subtitle, *by, words("book-to-sew", count=format_count(book))]
    return " · ".join(filter(None, said))


# --- contents ------------------------------------------------------------------------------------------


def _contents(chapters: _Chapters, back: Sequence[WebPage], words: Messages) -> Iterator[Part]:
    for title, entries in chapters:
        parts = tuple(_chapter(entries))
        if title and parts:
            yield Section(Heading(2, plain(title)), parts)
        else:
            yield from parts
    if back:
        links = tuple(TextRun(page.title, target=page.name) for page in back)
        yield Section(Heading(2, plain(words("book-at-the-back"))), (Places(links),))


def _chapter(entries: Sequence[_Entry]) -> Iterator[Part]:
    """Texts as lines, blocks and quilts as cards, in the order of the book."""
    for pictured, group in groupby(entries, key=lambda entry: entry.pictured):
        if pictured:
            yield Cards("blocks", tuple(card for entry in group for card in _cards(entry)))
        else:
            yield Places(tuple(TextRun(entry.page.title, target=entry.page.name) for entry in group))


def _cards(entry: _Entry) -> Iterator[Card]:
    """The card of a block or a quilt."""
    if entry.block is not None:
        yield _card(entry.page, entry.block)
    if entry.quilt is not None:
        words = words_of(entry.quilt)
        about = words("site-quilt-line", size=format_size(entry.quilt), blocks=format_blocks(entry.quilt))
        yield Card(
            (
                of_quilt(entry.quilt, entry.mark, small=True),
                Paragraph((TextRun(entry.quilt.name, "strong"),)),
                Paragraph((TextRun(about, "quiet"),)),
            ),
            entry.page.name,
        )


def _card(page: WebPage, block: BookBlockFacts) -> Card:
    first = block.sizes[0]
    sizes = ", ".join(format_finished(facts) for facts in block.sizes)
    words = words_of(first)
    patches, fabrics = many(len(first.placed), "patches", words), many(len(first.fabrics), "fabrics", words)
    about = words("site-block-line", sizes=sizes, patches=patches, fabrics=fabrics)
    return Card(
        (
            in_colour(first, small=True),
            Paragraph((TextRun(block.name, "strong"),)),
            Paragraph((TextRun(about, "quiet"),)),
        ),
        page.name,
    )
