"""Collecting the facts of a book: every block at every size, each worked out once."""

from __future__ import annotations

from collections.abc import Callable

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.bookfacts import BookBlockFacts, BookFacts, ChapterFacts, WordsFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.model import BlockDesign, BlockInBook, BookDesign, ChapterDesign, QuiltDesign, QuiltInBook, WordsInBook

FactsOf = Callable[[BlockDesign], BlockFacts]
FactsOfQuilt = Callable[[QuiltDesign], QuiltFacts]


def collect_book(book: BookDesign, facts_of: FactsOf, facts_of_quilt: FactsOfQuilt) -> BookFacts:
    """The book with the facts of its blocks and quilts, which the two functions give."""
    chapters = tuple(_chapter(chapter, facts_of, facts_of_quilt) for chapter in book.chapters)
    pressing, language = book.pressing or "as it nests", book.language or "en-US"
    return BookFacts(book.name, book.author, book.paper, chapters, book.techniques, pressing, language)


def _chapter(chapter: ChapterDesign, facts_of: FactsOf, facts_of_quilt: FactsOfQuilt) -> ChapterFacts:
    return ChapterFacts(chapter.title, tuple(_item(item, facts_of, facts_of_quilt) for item in chapter.items))


def _item(
    item: WordsInBook | BlockInBook | QuiltInBook, facts_of: FactsOf, facts_of_quilt: FactsOfQuilt
) -> WordsFacts | BookBlockFacts | QuiltFacts:
    if isinstance(item, WordsInBook):
        return WordsFacts(item.path, item.markdown)
    if isinstance(item, QuiltInBook):
        return facts_of_quilt(item.design)
    return BookBlockFacts(item.name, tuple(facts_of(design) for design in item.sizes))
