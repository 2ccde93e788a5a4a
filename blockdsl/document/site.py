"""A book, or the blocks of a file, as a web site: the pages in reading order behind a home page of contents."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from functools import partial
from itertools import groupby
from typing import Final

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.document.block import block_parts
from blockdsl.document.content import (
    Card,
    Cards,
    Heading,
    Lessons,
    Paragraph,
    Part,
    Parts,
    Places,
    Reference,
    RichText,
    Section,
    TextRun,
    WebFile,
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
from blockdsl.facts.bookfacts import BookBlockFacts, BookFacts, ChapterFacts, WordsFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.facts.techniquefacts import TechniqueFacts
from blockdsl.facts.techniques import sewn_in_quilt, taught_in, techniques_for
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
FilesOf = Callable[[BookBlockFacts | QuiltFacts, str], tuple[WebFile, ...]]
"""What is printed of a block or a quilt, whose page has that name."""
_OPENING: Final = 6


def no_files(item: BookBlockFacts | QuiltFacts, name: str) -> tuple[WebFile, ...]:
    """For a site of pages alone."""
    del item, name
    return ()


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


def web_site(book: BookFacts, name_of: Callable[[str], str], files_of: FilesOf = no_files) -> WebSite:
    """The whole site. `name_of` gives each page its file's name from its title, never one twice nor one of RESERVED.

    `files_of` says what is printed of a block or a quilt, by the name of its page.
    """
    names = _names(book, name_of)
    techniques = [
        (technique, name_of(technique_title(technique))) for technique in (_taught(book) if book.techniques else ())
    ]
    lessons = {technique.method: _reference(technique, name, words_of(book)) for technique, name in techniques}
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
                replace(
                    _entry(item, chapter.title, _Named(names[number, place], page_of, lessons, files_of)),
                    mark=f"card-{number}-{place}",
                )
                for place, item in enumerate(_with_titles(book, chapter))
            ],
        )
        for number, chapter in enumerate(book.chapters)
    ]
    if sum(len(entries) for _, entries in chapters) > 1:
        chapters = list(_with_front(chapters, book, name_of))
    if techniques:
        chapters = [
            (title, [_with_lessons(entry, techniques, words_of(book)) for entry in entries])
            for title, entries in chapters
        ]
        used = {method: list(_users(chapters, method)) for method in lessons}
        lessons_told = [_lesson(technique, name, used[technique.method]) for technique, name in techniques]
        chapters.append((words_of(book)("book-techniques"), lessons_told))
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


def _taught(book: BookFacts) -> tuple[TechniqueFacts, ...]:
    """The lessons on all that the blocks and quilts take."""
    blocks = [*(facts for block in book.blocks for facts in block.sizes), *book.of_quilts]
    return techniques_for(blocks, tuple(book.quilts))


def _reference(technique: TechniqueFacts, name: str, words: Messages) -> Reference:
    return Reference(words("site-lesson", lesson=technique_title(technique)), name)


def _lesson(technique: TechniqueFacts, name: str, users: Sequence[WebPage]) -> _Entry:
    """The page of a way of making, and the blocks and quilts that use it."""
    title, words = technique_title(technique), words_of(technique.sections[0])
    back = Places(tuple(TextRun(page.title, target=page.name) for page in users))
    parts = lesson_parts(technique)
    if users:
        parts = (*parts, Section(Heading(2, plain(words("site-used-by"))), (back,)))
    return _Entry(WebPage(name, title, parts, over=words("book-techniques")))


def _with_lessons(entry: _Entry, techniques: Sequence[tuple[TechniqueFacts, str]], words: Messages) -> _Entry:
    """The page of a block or a quilt with the way to the lessons on all that it takes, of its seams and borders too."""
    taken = _methods(entry)
    runs = tuple(
        TextRun(technique_title(technique), target=name) for technique, name in techniques if technique.method in taken
    )
    if not runs:
        return entry
    lessons = Section(Heading(2, plain(words("book-techniques"))), (Places(runs),))
    return replace(entry, page=replace(entry.page, parts=(*entry.page.parts, lessons)))


def _users(chapters: _Chapters, method: str) -> Iterator[WebPage]:
    """The pages of what is made by the method, in the order of the book."""
    for _, entries in chapters:
        for entry in entries:
            if method in _methods(entry):
                yield entry.page


def _methods(entry: _Entry) -> set[str]:
    blocks = entry.block.sizes if entry.block is not None else ()
    if entry.quilt is not None:
        blocks = tuple(kind.block for kind in entry.quilt.kinds)
    used = {method for block in blocks for method, _ in taught_in(block)}
    return used | set(sewn_in_quilt(entry.quilt) if entry.quilt is not None else ())


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
    return {
        (number, place): name_of(item.title if isinstance(item, _Titled) else item.name)
        for number, chapter in enumerate(book.chapters)
        for place, item in enumerate(_with_titles(book, chapter))
    }


class _Titled(Struct, frozen=True):
    """The maker's own words with the title of their page."""

    title: str
    parts: Parts


def _with_titles(book: BookFacts, chapter: ChapterFacts) -> Iterator[_Titled | BookBlockFacts | QuiltFacts]:
    """The items of a chapter. A text without a heading opens its chapter, or goes by the words that it begins with."""
    for place, item in enumerate(chapter.items):
        if not isinstance(item, WordsFacts):
            yield item
            continue
        told = read_text(item.markdown)
        title, parts = told.title, told.parts
        if not title and parts and isinstance(parts[0], Heading):
            title, parts = _run_together(parts[0].words), _raised(parts[1:])
        if not title:
            title = chapter.title if place == 0 else _opening(parts)
        yield _Titled(title or chapter.title or book.name, parts)


def _raised(parts: Parts) -> Parts:
    """The parts below a heading that became the title: none of theirs leaves out a level."""
    level = 1
    raised: list[Part] = []
    for part in parts:
        if isinstance(part, Heading):
            level = min(part.level, level + 1)
            raised.append(replace(part, level=level))
        else:
            raised.append(part)
    return tuple(raised)


def _opening(parts: Parts) -> str:
    """The first words of what is said, a few of them."""
    said = next((_run_together(part.words) for part in parts if isinstance(part, Paragraph)), "").split()
    return " ".join(said[:_OPENING]) + (" …" if len(said) > _OPENING else "")


def _run_together(words: RichText) -> str:
    return "".join(run.text for run in words)


def _page_of(told: Sequence[tuple[BlockFacts, str]], block: BlockFacts) -> str:
    """The page that tells of this very block at its size."""
    return next((page for facts, page in told if facts.name == block.name and facts == block), "")


class _Named(Struct, frozen=True):
    """The name of an item's page, and what it leads to."""

    name: str
    page_of: PageOf
    lessons: Lessons
    files_of: FilesOf


def _entry(item: _Titled | BookBlockFacts | QuiltFacts, chapter: str, named: _Named) -> _Entry:
    name, lessons = named.name, named.lessons
    if isinstance(item, _Titled):
        return _Entry(WebPage(name, item.title, item.parts, over=chapter))
    files = named.files_of(item, name)
    if isinstance(item, QuiltFacts):
        parts = quilt_parts(item, named.page_of, lessons=lessons)
        return _Entry(WebPage(name, item.name, parts, over=chapter, files=files), quilt=item)
    parts = block_parts(item.sizes, lessons=lessons)
    return _Entry(WebPage(name, item.name, parts, over=chapter, sizes=_sizes(item), files=files), block=item)


def _sizes(block: BookBlockFacts) -> tuple[str, ...]:
    """The finished sizes to choose from; nothing for a block of one."""
    return tuple(map(format_finished, block.sizes)) if len(block.sizes) > 1 else ()


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
