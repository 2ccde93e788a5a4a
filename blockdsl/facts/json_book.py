"""A book in the JSON of the facts: what it prints, and what to cut and make at each size."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from itertools import chain

from blockdsl.facts.blockfacts import BlockFacts, Extent
from blockdsl.facts.bookfacts import BookBlockFacts, BookFacts, WordsFacts
from blockdsl.facts.quiltfacts import QuiltFacts

OF_A_SIZE = ("unit", "seam", "measure", "finished", "unfinished", "cutting", "units")
"""What differs from size to size; the rest is told once, of the block."""


def asked_sizes(block: BlockFacts, books: Iterable[BookFacts]) -> list[Extent]:
    """The further sizes that the block or books ask for, each once, those in the block's own unit alone."""
    asked = (size for book in books for found in book.blocks if found.name == block.name for size in found.sizes)
    sizes = (
        size.finished
        for size in chain(block.sizes, asked)
        if size.unit == block.unit and size.finished != block.finished
    )
    return list(dict.fromkeys(sizes))


def size_documents(
    sizes: Iterable[BlockFacts], block_document: Callable[[BlockFacts], dict[str, object]]
) -> list[dict[str, object]]:
    """What differs from size to size, for each of them."""
    documents = (block_document(size) for size in sizes)
    return [{key: document[key] for key in OF_A_SIZE} for document in documents]


def book_document(book: BookFacts, block_document: Callable[[BlockFacts], dict[str, object]]) -> dict[str, object]:
    """One book as plain lists, dictionaries and strings; `block_document` gives those of a block."""

    def item(found: WordsFacts | BookBlockFacts | QuiltFacts) -> dict[str, object]:
        if isinstance(found, WordsFacts):
            return {"text": found.path}
        if isinstance(found, QuiltFacts):
            return {"quilt": found.name}
        return {"block": found.name, "sizes": size_documents(found.sizes, block_document)}

    return {
        "name": book.name,
        "author": book.author,
        "paper": book.paper,
        "pressing": book.pressing,
        "language": book.language,
        "chapters": [
            {"title": chapter.title, "items": [item(found) for found in chapter.items]} for chapter in book.chapters
        ],
        "techniques": book.techniques,
    }
