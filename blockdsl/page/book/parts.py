"""What a book is made of: parts that begin on a page of their own, and how each page of them looks at its foot.

A part is drawn twice: once to learn how many pages it takes and which words it uses, and once when all page numbers
are known. Between the two nothing of it is kept, so that a book of any length takes little memory. A part's length may
not depend on the numbers that it shows.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from typing import Final, Protocol

from msgspec import Struct

from blockdsl.facts.bookfacts import BookBlockFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.marks.display_list import Anchor, Figure, Kept, Link, Mark, Path, Stamp, TextMark, unread
from blockdsl.marks.prose import TextStyle, fitted, line, line_ending, rule, width_of
from blockdsl.marks.theme import (
    CONTENT_WIDTH_PT,
    HAIRLINE_PT,
    INK,
    QUIET,
    RULE,
    SMALL_PT,
    STEP_PT,
    PaperSize,
)
from blockdsl.model.maker import Maker
from blockdsl.page.flow import PageNumbers
from blockdsl.page.maker_row import maker_row
from blockdsl.page.prose import NUMBER_PT

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


_FOOT: Final = TextStyle(SMALL_PT, colour=QUIET)
_FOLIO: Final = TextStyle(SMALL_PT + 0.5, "bold", INK)


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


def page_top(anchor: str, paper: PaperSize) -> Anchor:
    """The top left corner of a page, for links and bookmarks."""
    return Anchor(anchor, paper.content.x_pt, paper.content.y_pt)


def foot(left: Sequence[str], number: str, paper: PaperSize, maker: Maker) -> tuple[Mark, ...]:
    """The running foot: book and chapter at the left, the page's number at the right, the maker's own row above."""
    box = paper.content
    baseline = box.bottom_pt - 1
    space = box.width_pt - NUMBER_PT
    first, *rest = left
    marks = [
        *maker_row(maker, box, baseline - _FOOT.line_pt),
        *unread(line(fitted(first, space * 0.6, _FOLIO), box.x_pt, baseline, _FOLIO)),
    ]
    x = box.x_pt + width_of(fitted(first, space * 0.6, _FOLIO), _FOLIO) + 3 * STEP_PT
    words = " · ".join(dict.fromkeys(rest))
    marks += unread(line(fitted(words, box.right_pt - NUMBER_PT - x, _FOOT), x, baseline, _FOOT))
    marks += unread(line_ending(number, box.right_pt, baseline, _FOLIO))
    return tuple(marks)


def linked(target: str, width_pt: float, height_pt: float, marks: Iterable[Mark], y_pt: float = 0.0) -> Link:
    """Marks drawn from (0, 0) that lead to an anchor."""
    return Link(target, 0.0, y_pt, width_pt, height_pt, tuple(marks))


def hairline(y_pt: float, width_pt: float = CONTENT_WIDTH_PT) -> Mark:
    """A pale level line between entries of a list."""
    return rule(y_pt, width_pt, RULE, HAIRLINE_PT)
