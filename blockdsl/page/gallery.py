"""A contact sheet on paper, and as one picture."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.document.content import Parts
from blockdsl.document.gallery import gallery_parts, words_of_all
from blockdsl.document.possibilities import possibility_parts
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.possibility import Possibility
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.marks.display_list import Document, Page, tagged
from blockdsl.marks.prose import TextStyle, fitted, line
from blockdsl.marks.theme import CONTENT_WIDTH_PT, INK, STEP_PT, TITLE_PT, paper_named
from blockdsl.model.maker import NOBODY
from blockdsl.page.flow import Flowable, in_columns
from blockdsl.page.headings import heading_element
from blockdsl.page.parts import flowables, flowed
from blockdsl.page.sheet import numbered_pages
from blockdsl.page.single import TALLEST_PT
from blockdsl.wording.grammar import many
from blockdsl.wording.messages import Messages, messages, words_of

_TITLE: Final = TextStyle(TITLE_PT, "bold", INK)
_MARGIN_PT: Final = 18.0


def gallery_document(blocks: Sequence[BlockFacts], title: str, *, paper: str = "letter") -> Document:
    """The contact sheet on pages of paper."""
    words = words_of_all(blocks)
    subject = words("gallery-subject", blocks=many(len(blocks), "patchwork-blocks", words))
    return _document(gallery_parts(blocks), title, subject, blocks[0] if blocks else None, paper)


def possibility_document(found: Sequence[Possibility], title: str, *, paper: str = "letter") -> Document:
    """What a block can become, on pages of paper; there is at least one quilt."""
    words = words_of(found[0].quilt)
    subject = words("possible-subject", quilts=many(len(found), "quilts", words))
    return _document(possibility_parts(found), title, subject, found[0].quilt, paper)


def gallery_page(blocks: Sequence[BlockFacts], title: str) -> Page:
    """The whole contact sheet as one page, as wide as a sheet's content; a very long one in several columns."""
    return _page(gallery_parts(blocks), title, words_of_all(blocks))


def possibility_page(found: Sequence[Possibility], title: str) -> Page:
    """The same of what a block can become."""
    return _page(possibility_parts(found), title, words_of(found[0].quilt))


def _document(parts: Parts, title: str, subject: str, first: BlockFacts | QuiltFacts | None, paper: str) -> Document:
    """In the language of the first that is shown, and with what its maker prints at the foot."""
    language, maker = ("en-US", NOBODY) if first is None else (first.language, first.maker)
    sheet, words = paper_named(paper), messages(language)
    pages = numbered_pages(flowed(_flowables(parts, title, words), sheet), title, sheet, words, maker)
    return Document(title, pages, language, maker.name, subject, maker.rights)


def _page(parts: Parts, title: str, words: Messages) -> Page:
    return in_columns(_flowables(parts, title, words), CONTENT_WIDTH_PT, TALLEST_PT, _MARGIN_PT)


def _flowables(parts: Parts, title: str, words: Messages) -> list[Flowable]:
    words_of_title = line(fitted(title, CONTENT_WIDTH_PT, _TITLE), 0.0, _TITLE.baseline_pt, _TITLE)
    name = tagged(words_of_title, heading_element(1))
    head = Flowable(_TITLE.line_pt + STEP_PT, name, keep_with_next=True)
    return [head, *flowables(parts, words)]
