"""A pattern book: title page, contents, the sheets of all blocks one after the other, and a test page."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from blockdsl.drawing.book_cover import cover
from blockdsl.drawing.diagram import block_picture
from blockdsl.drawing.flow import Slice, moved, run_over_pages, stacked
from blockdsl.drawing.lengths import show_extent
from blockdsl.drawing.marks import Document, Mark, Page
from blockdsl.drawing.prose import Style, continued, fitted, heading, line, line_ending, paragraph, rule
from blockdsl.drawing.scale_check import ACTUAL_SIZE, long_bars, square_and_bar
from blockdsl.drawing.sheet import footer, sheet_bodies
from blockdsl.drawing.theme import (
    BODY_PT,
    CONTENT_WIDTH_PT,
    FOOTER_HEIGHT_PT,
    HAIRLINE_PT,
    LEAD_PT,
    QUIET,
    RULE,
    STEP_PT,
    Box,
    Paper,
    paper_named,
    span_pt,
)
from blockdsl.drawing.words import many
from blockdsl.facts.blockfacts import BlockFacts

_NAME: Final = Style(LEAD_PT, "bold")
_PLAIN: Final = Style(LEAD_PT)
_BODY: Final = Style(BODY_PT)
_QUIET: Final = Style(BODY_PT, colour=QUIET)
_PICTURE_PT: Final = 44.0
_TEST_PAGE: Final = "Test page"
_TEST_WORDS: Final = (
    f"{' '.join(ACTUAL_SIZE)}. Then measure the square and the bars on this page with the ruler that you cut with. "
    "The square shows a large fault only; a small one is seen at the long bars. Below each bar stands what it may "
    "measure and the scale that this means. If it is not 100 %, change the printer's setting and print again."
)


@dataclass(frozen=True, slots=True)
class _Part:
    """A chapter of the book: what the contents say of it, and its pages without their feet."""

    title: str
    pages: tuple[tuple[Mark, ...], ...]
    block: BlockFacts | None = None


def book_pages(blocks: Sequence[BlockFacts], *, title: str, paper: str, author: str = "") -> Document:
    """The book of these blocks, in their order, with a bookmark for each.

    Units:  points at real size; every page has the size of `paper`, and breaks are the same on all papers.
    Errors: ValueError for an unknown paper.
    """
    sheet = paper_named(paper)
    parts = [_Part(block.name, tuple(sheet_bodies(block, sheet)), block) for block in blocks]
    parts.append(_Part(_TEST_PAGE, (_test_page(sheet),)))
    # How many pages the contents take does not depend on the numbers that they tell.
    ahead = 1 + len(_contents(parts, [0] * len(parts), sheet))
    starts = _starts(parts, ahead + 1)
    contents = _contents(parts, starts, sheet)
    bodies = [(title, marks) for marks in contents]
    bodies += [(part.title if part.block else title, marks) for part in parts for marks in part.pages]
    count = 1 + len(bodies)
    pages = [Page(sheet.width_pt, sheet.height_pt, cover(blocks, title, sheet))]
    pages += [
        Page(sheet.width_pt, sheet.height_pt, (*marks, *footer(foot, number, count, sheet)))
        for number, (foot, marks) in enumerate(bodies, start=2)
    ]
    chapters = [(part.title, start - 1) for part, start in zip(parts, starts, strict=True)]
    return Document(
        title=title,
        pages=tuple(pages),
        author=author,
        subject=f"Pattern book of {many(len(blocks), 'patchwork block')}",
        outline=((title, 0), ("Contents", 1), *chapters),
    )


def _starts(parts: Sequence[_Part], first: int) -> list[int]:
    """The number of each part's first page, counted from 1 for the title page."""
    starts = []
    for part in parts:
        starts.append(first)
        first += len(part.pages)
    return starts


# --- contents --------------------------------------------------------------------------------------


def _contents(parts: Sequence[_Part], starts: Sequence[int], paper: Paper) -> list[tuple[Mark, ...]]:
    rows = [_row(part, start) for part, start in zip(parts, starts, strict=True)]
    box = paper.content
    room = Box(box.x_pt, box.y_pt, box.width_pt, box.height_pt - FOOTER_HEIGHT_PT)
    return run_over_pages([heading("Contents"), *rows], room)


def _row(part: _Part, start: int) -> Slice:
    """A small picture, the name over what it is, the page's number at the right; a pale rule below."""
    left = _PICTURE_PT + 4 * STEP_PT
    words = CONTENT_WIDTH_PT - left - span_pt(1)
    height = _PICTURE_PT + 4 * STEP_PT
    lines_height = _NAME.line_pt + _QUIET.line_pt
    top = (height - lines_height) / 2
    marks: list[Mark] = []
    if part.block is not None:
        marks.append(_small_picture(part.block))
    marks += line(fitted(part.title, words, _NAME), left, top + _NAME.baseline_pt, _NAME)
    about = _about(part)
    marks += line(fitted(about, words, _QUIET), left, top + _NAME.line_pt + _QUIET.baseline_pt, _QUIET)
    marks += line_ending(str(start), CONTENT_WIDTH_PT, top + _NAME.baseline_pt, _PLAIN)
    marks.append(rule(height, CONTENT_WIDTH_PT, RULE, HAIRLINE_PT))
    return Slice(height, tuple(marks), head=(continued("Contents"),))


def _small_picture(block: BlockFacts) -> Mark:
    picture, placed = block_picture(block, Box(0.0, 0.0, _PICTURE_PT, _PICTURE_PT))
    (mark,) = moved(
        [picture],
        (_PICTURE_PT - placed.width_pt) / 2 - placed.x_pt,
        2 * STEP_PT + (_PICTURE_PT - placed.height_pt) / 2 - placed.y_pt,
    )
    return mark


def _about(part: _Part) -> str:
    if part.block is None:
        return "was it printed at actual size?"
    block = part.block
    counts = f"{many(len(block.placed), 'patch', 'patches')}, {many(len(block.fabrics), 'fabric')}"
    return f"{show_extent(block.finished, block.unit)} finished, {counts}"


# --- the test page ---------------------------------------------------------------------------------


def _test_page(paper: Paper) -> tuple[Mark, ...]:
    box = paper.content
    height, words = paragraph(_TEST_WORDS, span_pt(9), _BODY)
    top_height, top = stacked([heading("Was this printed at actual size?"), Slice(height, words)])
    y = box.y_pt + top_height + 8 * STEP_PT
    return (
        *moved(top, box.x_pt, box.y_pt),
        *square_and_bar(box.x_pt, y),
        *long_bars(box.x_pt, y + 72.0 + 10 * STEP_PT),
    )
