"""A book as plain data: its chapters, the maker's words, each block with all its numbers at every size asked for."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from msgspec import Struct

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.model.fabric import PressingChoice
from blockdsl.model.language import Language
from blockdsl.model.maker import NOBODY, Maker


class WordsFacts(Struct, frozen=True):
    """The maker's own words in Markdown; `path` is as she wrote it."""

    path: str
    markdown: str


class BookBlockFacts(Struct, frozen=True):
    """One block at one or more sizes, in the order asked for; never none."""

    name: str
    sizes: tuple[BlockFacts, ...]


class ChapterFacts(Struct, frozen=True):
    """`title` is empty for what stands before the first chapter."""

    title: str
    items: tuple[WordsFacts | BookBlockFacts | QuiltFacts, ...]

    @property
    def blocks(self) -> tuple[BookBlockFacts, ...]:
        """Its blocks alone, in order."""
        return tuple(item for item in self.items if isinstance(item, BookBlockFacts))

    @property
    def quilts(self) -> tuple[QuiltFacts, ...]:
        """Its quilts alone, in order."""
        return tuple(item for item in self.items if isinstance(item, QuiltFacts))


class BookFacts(Struct, frozen=True):
    """A whole book. `paper` is a paper's name such as `letter` or `roll 36 in`; `language` that of its pages.

    `maker` is what stands at their foot.
    """

    name: str
    author: str
    paper: str
    chapters: tuple[ChapterFacts, ...]
    techniques: bool
    pressing: PressingChoice = "as it nests"
    language: Language = "en-US"
    maker: Maker = NOBODY
    subtitle: str = ""

    @property
    def blocks(self) -> Iterator[BookBlockFacts]:
        """Every block of every chapter, in order."""
        return (block for chapter in self.chapters for block in chapter.blocks)

    @property
    def quilts(self) -> Iterator[QuiltFacts]:
        """Every quilt of every chapter, in order."""
        return (quilt for chapter in self.chapters for quilt in chapter.quilts)

    @property
    def of_quilts(self) -> Iterator[BlockFacts]:
        """Every block, half block and unit of a border that its quilts are made of, at the size that it has there."""
        return (kind.block for quilt in self.quilts for kind in quilt.kinds)


def book_of(blocks: Iterable[BlockFacts], name: str, paper: str, quilts: Iterable[QuiltFacts] = ()) -> BookFacts:
    """A plain book of what nobody has put in order: quilts, then blocks, each at its own size; with the techniques."""
    items: list[BookBlockFacts | QuiltFacts] = [*quilts]
    items += [BookBlockFacts(block.name, (block,)) for block in blocks]
    languages = [found.sizes[0].language if isinstance(found, BookBlockFacts) else found.language for found in items]
    language = languages[0] if languages else "en-US"
    maker = next(
        (found.sizes[0].maker if isinstance(found, BookBlockFacts) else found.maker for found in items), NOBODY
    )
    chapters = (ChapterFacts("", tuple(items)),)
    return BookFacts(name, maker.name, paper, chapters, techniques=True, language=language, maker=maker)
