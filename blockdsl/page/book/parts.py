"""What a book is made of: parts that begin on a page of their own, and how each page of them looks at its foot.

A part is drawn twice: once to learn how many pages it takes and which words it uses, and once when all page numbers
are known. Between the two nothing of it is kept, so that a book of any length takes little memory. A part's length may
not depend on the numbers that it shows.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from typing import Final, Protocol

from msgspec import Struct

from blockdsl.facts.bookfacts import BookBlockFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.marks.display_list import Anchor, Figure, Kept, Link, Mark, Path, Stamp, TextMark
from blockdsl.marks.prose import TextStyle, fitted, line, line_ending, lines_of, rule, width_of
from blockdsl.marks.theme import (
    ACCENT,
    BOLD_RULE_PT,
    CONTENT_WIDTH_PT,
    FOOTER_HEIGHT_PT,
    GUTTER_PT,
    HAIRLINE_PT,
    INK,
    LEAD_PT,
    QUIET,
    RULE,
    SMALL_PT,
    STEP_PT,
    TITLE_PT,
    Box,
    PaperSize,
    span_pt,
)
from blockdsl.page.flow import Flowable, run_over_pages

PageNumbers = Mapping[str, str]
"""What each anchor's page is called; empty while the book is measured."""
Bodies = Sequence[tuple[Mark, ...]]


class PageCache(Protocol):
    """Has pages that were drawn before, so that a book of which little has changed is soon made again."""

    def pages(self, depends: tuple[object, ...], paper: PaperSize, draw: Callable[[], Bodies]) -> Bodies:
        """What `draw` gives or gave, which follows from the paper and from what it `depends` on, and nothing else."""


class NoPageCache:
    """Draws everything anew."""

    def pages(self, depends: tuple[object, ...], paper: PaperSize, draw: Callable[[], Bodies]) -> Bodies:
        """What `draw` gives."""
        del depends, paper
        return draw()


def texts_of(marks: Iterable[Mark]) -> Iterator[str]:
    """All texts among the marks, as they come."""
    for mark in marks:
        match mark:
            case TextMark():
                yield mark.text
            case Figure() | Link() | Stamp():
                yield from texts_of(mark.marks)
            case Kept():
                yield mark.words
            case Anchor() | Path():
                pass


READING: Final = TextStyle(10.0)
"""Running text that is read, not looked up."""
SIDE_PT: Final = span_pt(4) + GUTTER_PT
"""Where running text begins: its headings stand in the four columns at its left."""
READING_PT: Final = span_pt(8)
NUMBER_PT: Final = 30.0
"""Room for a page's number at the end of a line."""

_FOOT: Final = TextStyle(SMALL_PT, colour=QUIET)
_FOLIO: Final = TextStyle(SMALL_PT + 0.5, "bold", INK)
_OVER: Final = TextStyle(LEAD_PT, "bold", ACCENT)
_TITLE_SIZES_PT: Final = (TITLE_PT, 22.0, 17.0)
_TITLE_LINES: Final = 2
_TITLE_LEADING: Final = 1.14


class BookPart(Struct, frozen=True):
    """A piece of the book from the top of a page. `level` 0 stands by itself, 1 lies in the chapter before it.

    `over` is what stands above its title (`Chapter 2`); `block` or `quilt` what a part of level 1 is about. `draw`
    gives what stands on its pages above their feet.
    """

    anchor: str
    title: str
    level: int
    draw: Callable[[PageNumbers], Bodies]
    over: str = ""
    block: BookBlockFacts | None = None
    quilt: QuiltFacts | None = None

    @property
    def pictured(self) -> bool:
        """Whether it is about a block or a quilt, to be found by its picture and in the index."""
        return self.block is not None or self.quilt is not None


def room(paper: PaperSize) -> Box:
    """Where a part may draw: the content box above its foot."""
    box = paper.content
    return Box(box.x_pt, box.y_pt, box.width_pt, box.height_pt - FOOTER_HEIGHT_PT)


def flowed(flowables: Sequence[Flowable], paper: PaperSize) -> Bodies:
    """The flowables run over as many pages as they take."""
    return run_over_pages(flowables, room(paper))


def page_top(anchor: str, paper: PaperSize) -> Anchor:
    """The top left corner of a page, for links and bookmarks."""
    return Anchor(anchor, paper.content.x_pt, paper.content.y_pt)


def foot(left: Sequence[str], number: str, paper: PaperSize) -> tuple[Mark, ...]:
    """The running foot: book and chapter at the left, the page's number at the right."""
    box = paper.content
    baseline = box.bottom_pt - 1
    space = box.width_pt - NUMBER_PT
    first, *rest = left
    marks = [*line(fitted(first, space * 0.6, _FOLIO), box.x_pt, baseline, _FOLIO)]
    x = box.x_pt + width_of(fitted(first, space * 0.6, _FOLIO), _FOLIO) + 3 * STEP_PT
    words = " · ".join(dict.fromkeys(rest))
    marks += line(fitted(words, box.right_pt - NUMBER_PT - x, _FOOT), x, baseline, _FOOT)
    marks += line_ending(number, box.right_pt, baseline, _FOLIO)
    return tuple(marks)


def part_title(title: str, over: str = "", sizes_pt: Sequence[float] = _TITLE_SIZES_PT) -> Flowable:
    """A part's title under a strong rule, smaller when it is long; `over` stands above it in the accent."""
    for size in sizes_pt:
        style = TextStyle(size, "bold", INK)
        lines = lines_of(title, CONTENT_WIDTH_PT, style)
        if len(lines) <= _TITLE_LINES:
            break
    marks: list[Mark] = [rule(BOLD_RULE_PT / 2, CONTENT_WIDTH_PT, INK, BOLD_RULE_PT)]
    y = 4 * STEP_PT
    if over:
        marks += line(over, 0.0, y + _OVER.baseline_pt, _OVER)
        y += _OVER.line_pt + 1.5 * STEP_PT
    y += style.capitals_pt + 2
    pitch = style.size_pt * _TITLE_LEADING
    for place, words in enumerate(lines):
        marks += line(words, -0.04 * style.size_pt, y + place * pitch, style)
    return Flowable(y + (len(lines) - 1) * pitch + 6 * STEP_PT, tuple(marks), keep_with_next=True)


def linked(target: str, width_pt: float, height_pt: float, marks: Iterable[Mark], y_pt: float = 0.0) -> Link:
    """Marks drawn from (0, 0) that lead to an anchor."""
    return Link(target, 0.0, y_pt, width_pt, height_pt, tuple(marks))


def hairline(y_pt: float, width_pt: float = CONTENT_WIDTH_PT) -> Mark:
    """A pale level line between entries of a list."""
    return rule(y_pt, width_pt, RULE, HAIRLINE_PT)
