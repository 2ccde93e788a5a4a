"""A book as its maker orders it: chapters of words and of blocks, each block at the sizes that she wants."""

from __future__ import annotations

from typing import Final

from msgspec import Struct

from blockdsl.diagnostics import Span
from blockdsl.model.block import BlockDesign
from blockdsl.model.fabric import PressingChoice
from blockdsl.model.language import Language
from blockdsl.model.maker import NOBODY, Maker
from blockdsl.model.quilt import QuiltDesign

SHEETS: Final = ("letter", "a4", "legal", "tabloid", "a3")
"""Papers that are named by a word; a roll is named by its width, `roll 36 in`."""


class WordsInBook(Struct, frozen=True):
    """The maker's own words in Markdown, its lines ended the usual way; `path` is as she wrote it."""

    path: str
    markdown: str


class BlockInBook(Struct, frozen=True):
    """One block at one or more sizes, in the order asked for; never none."""

    name: str
    sizes: tuple[BlockDesign, ...]


class QuiltInBook(Struct, frozen=True):
    """A quilt, printed whole."""

    design: QuiltDesign


class ChapterDesign(Struct, frozen=True):
    """`title` is empty for what stands before the first chapter."""

    title: str
    items: tuple[WordsInBook | BlockInBook | QuiltInBook, ...]


class BookDesign(Struct, frozen=True):
    """A whole book. `paper` is one of `SHEETS` or `roll 36 in`, `roll 90 cm`.

    `pressing` is how the seams of its blocks and quilts are pressed, where they do not say. `language` is that of the
    book and of all that is printed in it, `maker` what stands at the foot of its pages.
    """

    name: str
    span: Span
    author: str
    paper: str
    chapters: tuple[ChapterDesign, ...]
    techniques: bool
    pressing: PressingChoice | None = None
    language: Language | None = None
    maker: Maker = NOBODY
    subtitle: str = ""
