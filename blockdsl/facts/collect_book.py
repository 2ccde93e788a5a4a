"""Collecting the facts of a book: every block at every size, each worked out once."""

from __future__ import annotations

from collections.abc import Callable

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.bookfacts import BookBlockFacts, BookFacts, ChapterFacts, WordsFacts
from blockdsl.model import BlockDesign, BlockInBook, BookDesign, ChapterDesign, WordsInBook

FactsOf = Callable[[BlockDesign], BlockFacts]


def collect_book(book: BookDesign, facts_of: FactsOf) -> BookFacts:
    """The book with the facts of its blocks, which `facts_of` gives."""
    chapters = tuple(_chapter(chapter, facts_of) for chapter in book.chapters)
    return BookFacts(book.name, book.author, book.paper, chapters, book.techniques)


def _chapter(chapter: ChapterDesign, facts_of: FactsOf) -> ChapterFacts:
    return ChapterFacts(chapter.title, tuple(_item(item, facts_of) for item in chapter.items))


def _item(item: WordsInBook | BlockInBook, facts_of: FactsOf) -> WordsFacts | BookBlockFacts:
    if isinstance(item, WordsInBook):
        return WordsFacts(item.path, item.markdown)
    return BookBlockFacts(item.name, tuple(facts_of(design) for design in item.sizes))
