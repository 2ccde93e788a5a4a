"""A contact sheet on paper, and as one picture."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.document.gallery import gallery_parts, words_of_all
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.marks.display_list import Document, Page
from blockdsl.marks.prose import TextStyle, fitted, line
from blockdsl.marks.theme import CONTENT_WIDTH_PT, INK, STEP_PT, TITLE_PT, paper_named
from blockdsl.page.flow import Flowable, in_columns
from blockdsl.page.parts import flowables, flowed
from blockdsl.page.sheet import numbered_pages
from blockdsl.page.single import TALLEST_PT
from blockdsl.wording.grammar import many

_TITLE: Final = TextStyle(TITLE_PT, "bold", INK)
_MARGIN_PT: Final = 18.0


def gallery_document(blocks: Sequence[BlockFacts], title: str, *, paper: str = "letter") -> Document:
    """The contact sheet on pages of paper."""
    sheet, words = paper_named(paper), words_of_all(blocks)
    pages = numbered_pages(flowed(_flowables(blocks, title), sheet), title, sheet, words)
    subject = words("gallery-subject", blocks=many(len(blocks), "patchwork-blocks", words))
    return Document(title, pages, subject=subject, language=blocks[0].language if blocks else "en-US")


def gallery_page(blocks: Sequence[BlockFacts], title: str) -> Page:
    """The whole contact sheet as one page, as wide as a sheet's content; a very long one in several columns."""
    return in_columns(_flowables(blocks, title), CONTENT_WIDTH_PT, TALLEST_PT, _MARGIN_PT)


def _flowables(blocks: Sequence[BlockFacts], title: str) -> list[Flowable]:
    name = line(fitted(title, CONTENT_WIDTH_PT, _TITLE), 0.0, _TITLE.baseline_pt, _TITLE)
    head = Flowable(_TITLE.line_pt + STEP_PT, name, keep_with_next=True)
    return [head, *flowables(gallery_parts(blocks), words_of_all(blocks))]
