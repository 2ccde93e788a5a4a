"""Running a column of flowables over pages.

A flowable is a piece of the page that is never divided: a table row, a heading, a line of words. Flowables are drawn
from (0, 0) and put in place here, so that what draws them need not know where they land.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from msgspec import Struct

from blockdsl.marks.display_list import Mark, Page, moved
from blockdsl.marks.theme import Box

PageNumbers = Mapping[str, str]
"""What each target's page is called; empty while a book is measured."""
Drawn = tuple[float, tuple[Mark, ...]]
"""How high something is, and its marks from (0, 0)."""


class Flowable(Struct, frozen=True):
    """Something of a known height that stays whole; its marks start at (0, 0).

    `before_pt` is white space above it, left out at the top of a page. `keep_with_next` binds it to the one after it.
    `head` is what is said again above it when it comes first on a page: a table's head, its group's name.
    """

    height_pt: float
    marks: tuple[Mark, ...] = ()
    before_pt: float = 0.0
    keep_with_next: bool = False
    head: tuple[Flowable, ...] = ()


def stacked(flowables: Sequence[Flowable]) -> tuple[float, tuple[Mark, ...]]:
    """All flowables one under the other without a page break: their height together and their marks."""
    y = 0.0
    marks: list[Mark] = []
    for place, piece in enumerate(flowables):
        y += piece.before_pt if place else 0.0
        marks += moved(piece.marks, 0.0, y)
        y += piece.height_pt
    return y, tuple(marks)


def in_columns(flowables: Sequence[Flowable], width_pt: float, tallest_pt: float, gap_pt: float) -> Page:
    """The flowables on one page of their own, in as many columns as keep it from growing taller than `tallest_pt`."""
    columns: list[list[Flowable]] = [[]]
    height = 0.0
    for group in _bound_together(flowables):
        tall = sum(piece.before_pt + piece.height_pt for piece in group)
        if columns[-1] and height + tall > tallest_pt:
            columns.append([*group[0].head])
            height = sum(piece.height_pt for piece in columns[-1])
        columns[-1] += group
        height += tall
    stacks = [stacked(column) for column in columns]
    marks = tuple(
        mark
        for place, (_, found) in enumerate(stacks)
        for mark in moved(found, gap_pt + place * (width_pt + gap_pt), gap_pt)
    )
    return Page(len(stacks) * (width_pt + gap_pt) + gap_pt, max(tall for tall, _ in stacks) + 2 * gap_pt, marks)


def _bound_together(flowables: Sequence[Flowable]) -> Iterator[list[Flowable]]:
    """Each flowable with those before it that are kept with it."""
    group: list[Flowable] = []
    for piece in flowables:
        group.append(piece)
        if not piece.keep_with_next:
            yield group
            group = []
    if group:
        yield group


def run_over_pages(flowables: Sequence[Flowable], box: Box) -> list[tuple[Mark, ...]]:
    """The marks of each page; flowables bound together start a new page together when they do not fit.

    Errors: none; a flowable taller than the box stands alone on its page and runs out below.
    """
    return [
        tuple([mark for y, piece in page for mark in moved(piece.marks, box.x_pt, y)])
        for page in _pages(flowables, box)
    ]


def pages_taken(flowables: Sequence[Flowable], box: Box) -> int:
    """How many pages the flowables take."""
    return len(_pages(flowables, box))


def on_first_page(flowables: Sequence[Flowable], box: Box) -> int:
    """How many of the flowables stand on the first page."""
    return len(_pages(flowables, box)[0])


def _pages(flowables: Sequence[Flowable], box: Box) -> list[list[tuple[float, Flowable]]]:
    """For each page what stands on it, and how far down."""
    pages: list[list[tuple[float, Flowable]]] = [[]]
    y = box.y_pt
    for chain in _chains(flowables):
        fresh = y == box.y_pt
        if not fresh and y + _height(chain, fresh=False) > box.bottom_pt + 0.01:
            pages.append([])
            y = box.y_pt
        for piece in chain:
            if y != box.y_pt and y + piece.before_pt + piece.height_pt > box.bottom_pt + 0.01:
                pages.append([])
                y = box.y_pt
            if y == box.y_pt and len(pages) > 1 and piece.head:
                height, marks = stacked(piece.head)
                pages[-1].append((y, Flowable(height, marks)))
                y += height
            elif y != box.y_pt:
                y += piece.before_pt
            pages[-1].append((y, piece))
            y += piece.height_pt
    return pages


def _chains(flowables: Sequence[Flowable]) -> list[list[Flowable]]:
    """Flowables that stay together, each chain ending with one that does not bind the next."""
    chains: list[list[Flowable]] = []
    bound = False
    for piece in flowables:
        if bound:
            chains[-1].append(piece)
        else:
            chains.append([piece])
        bound = piece.keep_with_next
    return chains


def _height(chain: Sequence[Flowable], *, fresh: bool) -> float:
    whole = sum(piece.before_pt + piece.height_pt for piece in chain)
    return whole - (chain[0].before_pt if fresh else 0.0)
