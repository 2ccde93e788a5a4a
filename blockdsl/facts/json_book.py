"""A book in the JSON of the facts: what it prints, and what to cut and make at each size."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from blockdsl.facts.blockfacts import BlockFacts, Extent
from blockdsl.facts.bookfacts import BookBlockFacts, BookFacts, WordsFacts

OF_A_SIZE = ("unit", "seam", "measure", "finished", "unfinished", "cutting", "units")
"""What differs from size to size; the rest is told once, of the block."""


def asked_sizes(block: BlockFacts, books: Iterable[BookFacts]) -> list[Extent]:
    """The sizes that books ask for beside the block's own, each once, those in the block's own unit alone."""
    sizes = (
        size.finished
        for book in books
        for found in book.blocks
        if found.name == block.name
        for size in found.sizes
        if size.unit == block.unit and size.finished != block.finished
    )
    return list(dict.fromkeys(sizes))


def book_document(book: BookFacts, block_document: Callable[[BlockFacts], dict[str, object]]) -> dict[str, object]:
    """One book as plain lists, dictionaries and strings; `block_document` gives those of a block."""

    def item(found: WordsFacts | BookBlockFacts) -> dict[str, object]:
        if isinstance(found, WordsFacts):
            return {"text": found.path}
        documents = [block_document(size) for size in found.sizes]
        sizes = [{key: document[key] for key in OF_A_SIZE} for document in documents]
        return {"block": found.name, "sizes": sizes}

    return {
        "name": book.name,
        "author": book.author,
        "paper": book.paper,
        "chapters": [
            {"title": chapter.title, "items": [item(found) for found in chapter.items]} for chapter in book.chapters
        ],
        "techniques": book.techniques,
    }
