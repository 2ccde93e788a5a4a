"""A pattern book: title page, contents, chapters of blocks and quilts, techniques, glossary, index and a test page."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from functools import partial
from typing import Final

from blockdsl.document.content import Prose, TextRun
from blockdsl.document.front import front_parts
from blockdsl.document.glossary import glossary_list
from blockdsl.document.index import index_parts
from blockdsl.document.reading import read_text
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.bookfacts import BookBlockFacts, BookFacts, ChapterFacts, WordsFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.marks.display_list import Bookmark, Mark, Page, PageLabels, Publication
from blockdsl.marks.theme import PaperSize, paper_named
from blockdsl.model.language import Language
from blockdsl.page.book.block import BEGIN, Elsewhere, block_pages, making_elsewhere, quilt_pages, told_elsewhere
from blockdsl.page.book.chapter import chapter_pages
from blockdsl.page.book.contents import contents_pages
from blockdsl.page.book.cover import cover
from blockdsl.page.book.lessons import technique_parts
from blockdsl.page.book.parts import Bodies, BookPart, NoPageCache, PageCache, foot, page_top, texts_of
from blockdsl.page.flow import PageNumbers
from blockdsl.page.parts import pages_of, title_flowable
from blockdsl.page.scale_check_page import check_print_page
from blockdsl.wording.glossary import TermUsed, terms_used
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.sheet import format_count

CONTENTS: Final = "contents"
TEST: Final = "test"
_ROMAN: Final = (("x", 10), ("ix", 9), ("v", 5), ("iv", 4), ("i", 1))


def book_document(book: BookFacts, keeper: PageCache | None = None) -> Publication:
    """The book as pages that are drawn one after the other, as they are asked for; some the `keeper` may have.

    Units:  points at real size; every page has the size of the book's paper, and breaks are the same on all papers.
    Errors: ValueError for an unknown paper.
    """
    plan = _Plan(book, paper_named(book.paper), keeper or NoPageCache())
    return Publication(
        title=book.name,
        pages=plan.pages(),
        author=book.author,
        rights=book.maker.rights,
        subject=words_of(book)("book-subject", count=format_count(book)),
        language=book.language,
        outline=plan.outline(),
        labels=(PageLabels(0, "roman"), PageLabels(plan.ahead, "decimal")),
    )


class _Plan:
    """All parts of a book and the page on which each begins."""

    def __init__(self, book: BookFacts, paper: PaperSize, keeper: PageCache) -> None:
        """Draw everything once to see how long it is; keep the words of each page, for the glossary, and no drawing."""
        self._book, self._words = book, words_of(book)
        self._paper = paper
        self._parts = _body(book, paper, keeper)
        # How many pages a part takes does not depend on the numbers that it tells; those before it are known already.
        known: dict[str, str] = {}
        self._lengths = [0] * len(self._parts)
        texts: dict[str, str] = {}
        first = 1
        for place, part in enumerate(self._parts):
            known[part.anchor] = str(first)
            bodies = part.draw(known)
            self._lengths[place] = len(bodies)
            for number, marks in enumerate(bodies, start=first):
                texts[str(number)] = " ".join(texts_of(marks))
            first += len(bodies)
        self._add(*self._behind(terms_used(texts, self._words)))
        self.ahead = 1 + len(contents_pages(self._parts, {}, paper, self._words))
        self._numbers = self._page_numbers()

    def _behind(self, terms: Sequence[TermUsed]) -> Sequence[BookPart]:
        """What ends the book: glossary, index, test page."""
        blocks = [part for part in self._parts if part.pictured]
        glossary = partial(_glossary, terms, self._words, self._paper)
        index = partial(_index, blocks, self._words, self._paper)
        test = partial(_test_page, self._paper, self._book.language)
        parts = [BookPart("words", self._words("glossary-title"), 0, glossary)] if terms else []
        ends = (
            BookPart("index", self._words("book-index"), 0, index),
            BookPart(TEST, self._words("book-test-page"), 0, test),
        )
        return [*parts, *ends]

    def _add(self, *parts: BookPart) -> None:
        self._parts = [*self._parts, *parts]
        self._lengths += [len(part.draw({})) for part in parts]

    def _page_numbers(self) -> PageNumbers:
        numbers = {CONTENTS: roman(2)}
        first = 1
        for part, length in zip(self._parts, self._lengths, strict=True):
            numbers[part.anchor] = str(first)
            first += length
        return numbers

    def pages(self) -> Iterator[Page]:
        """Every page in order."""
        book, paper = self._book, self._paper
        yield self._page(cover(book, paper))
        for number, marks in enumerate(contents_pages(self._parts, self._numbers, paper, self._words), start=2):
            top = (page_top(CONTENTS, paper),) if number == 2 else ()
            said = (book.name, self._words("book-contents"))
            yield self._page((*top, *marks, *foot(said, roman(number), paper, book.maker)))
        chapter, number = "", 0
        for part in self._parts:
            chapter = part.title if part.level == 0 else chapter
            for place, marks in enumerate(part.draw(self._numbers)):
                number += 1
                top = (page_top(part.anchor, paper),) if place == 0 else ()
                left = (book.name, chapter, part.title) if part.level else (book.name, chapter)
                yield self._page((*top, *marks, *foot(left, str(number), paper, book.maker)))

    def _page(self, marks: Iterable[Mark]) -> Page:
        return Page(self._paper.width_pt, self._paper.height_pt, tuple(marks))

    def outline(self) -> tuple[Bookmark, ...]:
        """Title, contents, and every part, the blocks below their chapter."""
        found: list[tuple[BookPart, int, list[Bookmark]]] = []
        first = self.ahead
        for part, length in zip(self._parts, self._lengths, strict=True):
            if part.level and found:
                found[-1][2].append(Bookmark(part.title, first))
            else:
                found.append((part, first, []))
            first += length
        lines = (
            Bookmark(f"{part.over}: {part.title}" if part.over else part.title, page, tuple(inner))
            for part, page, inner in found
        )
        return (Bookmark(self._book.name, 0), Bookmark(self._words("book-contents"), 1), *lines)


def roman(number: int) -> str:
    """A page's number in small Roman figures, as the pages before the first chapter are counted."""
    words = ""
    for figure, worth in _ROMAN:
        while number >= worth:
            words += figure
            number -= worth
    return words


# --- the parts -------------------------------------------------------------------------------------


def _body(book: BookFacts, paper: PaperSize, keeper: PageCache) -> list[BookPart]:
    """What the maker ordered, with what every book has."""
    sizes = [facts for block in book.blocks for facts in block.sizes]
    words = words_of(book)
    opening, chapters = _opening_apart(book)
    parts = [
        _words_part(text, f"opening-{number}", words, paper, keeper) for number, text in enumerate(opening, start=1)
    ]
    front = partial(_front, [*sizes, *book.of_quilts], words, any(book.quilts), paper)
    parts.append(BookPart(BEGIN, words("begin-title"), 0, front))
    numbered = list(enumerate(chapters, start=1))
    elsewhere = making_elsewhere(
        (f"block-{number}-{place}", item)
        for number, chapter in numbered
        for place, (item, _) in enumerate(_items_with_words(chapter)[1], start=1)
        if isinstance(item, BookBlockFacts)
    )
    for number, chapter in numbered:
        parts += _chapter_parts(chapter, number, words, elsewhere, paper, keeper)
    if book.techniques:
        parts += technique_parts(book, paper, keeper)
    return parts


def _opening_apart(book: BookFacts) -> tuple[list[WordsFacts], list[ChapterFacts]]:
    """Words before the first block and chapter open the book; blocks without a chapter get one called The blocks."""
    chapters = book.chapters
    if not chapters or chapters[0].title:
        return [], list(chapters)
    items = list(chapters[0].items)
    opening: list[WordsFacts] = []
    while items and isinstance(items[0], WordsFacts):
        opening.append(items[0])
        items = items[1:]
    rest = [ChapterFacts(words_of(book)("book-blocks"), tuple(items))] if items else []
    return opening, [*rest, *chapters[1:]]


def _words_part(text: WordsFacts, anchor: str, words: Messages, paper: PaperSize, keeper: PageCache) -> BookPart:
    reading = read_text(text.markdown)
    title = reading.title or words("book-begin")

    def draw(pages: PageNumbers) -> Bodies:
        del pages
        parts = (Prose(reading.parts),)
        return keeper.pages(("words", text), paper, lambda: pages_of(title_flowable(title), parts, words, paper))

    return BookPart(anchor, title, 0, draw)


def _chapter_parts(
    chapter: ChapterFacts, number: int, words: Messages, elsewhere: Elsewhere, paper: PaperSize, keeper: PageCache
) -> list[BookPart]:
    """The chapter's opening, then its blocks and quilts, each with the words that follow it."""
    opening, items = _items_with_words(chapter)
    parts = []
    for place, (item, texts) in enumerate(items, start=1):
        if isinstance(item, BookBlockFacts):
            draw = partial(_block, item, tuple(texts), chapter.title, paper, keeper)
            parts.append(BookPart(f"block-{number}-{place}", item.name, 1, draw, block=item))
        else:
            draw = partial(_quilt, item, tuple(texts), chapter.title, elsewhere, paper, keeper)
            parts.append(BookPart(f"quilt-{number}-{place}", item.name, 1, draw, quilt=item))
    over = words("book-chapter", number=number)
    draw = partial(_chapter, chapter.title, over, opening, parts, words, paper)
    return [BookPart(f"chapter-{number}", chapter.title, 0, draw, over), *parts]


def _items_with_words(
    chapter: ChapterFacts,
) -> tuple[list[WordsFacts], list[tuple[BookBlockFacts | QuiltFacts, list[WordsFacts]]]]:
    """The words that open the chapter, and its blocks and quilts, each with the words that follow it."""
    opening: list[WordsFacts] = []
    items: list[tuple[BookBlockFacts | QuiltFacts, list[WordsFacts]]] = []
    for item in chapter.items:
        if not isinstance(item, WordsFacts):
            items.append((item, []))
        elif items:
            items[-1][1].append(item)
        else:
            opening.append(item)
    return opening, items


def _front(sizes: Sequence[BlockFacts], words: Messages, quilts: bool, paper: PaperSize, pages: PageNumbers) -> Bodies:
    parts = front_parts(sizes, words, quilts=quilts, test=TEST)
    return pages_of(title_flowable(words("begin-title")), parts, words, paper, pages)


def _chapter(
    title: str,
    over: str,
    texts: Sequence[WordsFacts],
    parts: Sequence[BookPart],
    words: Messages,
    paper: PaperSize,
    pages: PageNumbers,
) -> Bodies:
    return chapter_pages(title, over, texts, parts, words, pages, paper)


def _block(
    block: BookBlockFacts,
    words: tuple[WordsFacts, ...],
    over: str,
    paper: PaperSize,
    keeper: PageCache,
    pages: PageNumbers,
) -> Bodies:
    return keeper.pages(
        ("block", block, words, over, pages.get(BEGIN, "0")),
        paper,
        lambda: block_pages(block, words, over, pages, paper),
    )


def _quilt(
    quilt: QuiltFacts,
    words: tuple[WordsFacts, ...],
    over: str,
    elsewhere: Elsewhere,
    paper: PaperSize,
    keeper: PageCache,
    pages: PageNumbers,
) -> Bodies:
    told = told_elsewhere(quilt, elsewhere)
    numbers = {anchor: pages.get(anchor, "0") for anchor in (BEGIN, *told.values())}
    return keeper.pages(
        ("quilt", quilt, words, over, told, numbers),
        paper,
        lambda: quilt_pages(quilt, words, over, told, numbers, paper),
    )


def _glossary(terms: Sequence[TermUsed], words: Messages, paper: PaperSize, pages: PageNumbers) -> Bodies:
    found = glossary_list(terms, lambda page: (TextRun(page),))
    return pages_of(title_flowable(words("glossary-title")), (found,), words, paper, pages)


def _index(parts: Sequence[BookPart], words: Messages, paper: PaperSize, pages: PageNumbers) -> Bodies:
    blocks = [(part.block, part.anchor) for part in parts if part.block is not None]
    quilts = [(part.quilt, part.anchor) for part in parts if part.quilt is not None]
    found = index_parts(blocks, words, quilts, brief=True)
    return pages_of(title_flowable(words("book-index")), found, words, paper, pages)


def _test_page(paper: PaperSize, language: Language, pages: PageNumbers) -> Bodies:
    del pages
    return [check_print_page(paper.name, language).marks]
