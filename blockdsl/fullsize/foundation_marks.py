"""What stands in the seam allowance of a foundation paper: its name, TOP, and the marks where sections meet."""

from __future__ import annotations

from collections.abc import Iterator
from math import atan2, degrees, hypot
from typing import Final

from blockdsl.fullsize.foundation_pattern import EdgeMark, PaperPattern
from blockdsl.fullsize.template_marks import reading_direction
from blockdsl.marks.clip import edges
from blockdsl.marks.display_list import Contour, Mark, PagePoint, Path, Segment, TextMark, Weight
from blockdsl.marks.theme import ACCENT, INK, QUIET, SMALL_PT
from blockdsl.marks.typeset import cap_height, ellipsis, measure

_TALLEST: Final = 0.5
"""Of the allowance: the size of the words in it."""
_LARGEST_PT: Final = 8.5
_FROM_END_PT: Final = 3.0
_APART_PT: Final = 8.0
_DOT_PT: Final = 2.6
_NEAR_PT: Final = 0.5


def allowance_marks(paper: PaperPattern, middle: float = 0.5) -> tuple[Mark, ...]:
    """All that stands along the sides, outside the sewing outline and inside the cutting outline.

    `middle` is where words stand, as a share of their side: of a paper in tiles not in its middle, where two may meet.
    """
    marks: list[Mark] = []
    for mark in paper.marks:
        marks += _edge_mark(mark, paper, middle)
    free = [side for side in edges(paper.pattern.sewing) if not any(_same(side, mark.line) for mark in paper.marks)]
    name = f"{paper.pattern.letter} · {paper.pattern.words.title}"
    top_is_free = any(_same(side, paper.top) for side in free)
    if top_is_free:
        free = [side for side in free if not _same(side, paper.top)] or [paper.top]
    words = paper.pattern.messages("papers-sheet-top") if top_is_free else ""
    longest = max(free, key=lambda side: (round(_length(side), 3), -side[0][1] - side[1][1]), default=None)
    if words and longest is not None and _same(longest, paper.top):
        return (*marks, *_along(paper, paper.top, middle, f"{words} · {name}", INK))
    if words:
        marks += _along(paper, paper.top, middle, words, INK, "bold")
    if longest is not None:
        marks += _along(paper, longest, middle, name, QUIET)
    return tuple(marks)


def _edge_mark(mark: EdgeMark, paper: PaperPattern, middle: float) -> Iterator[Mark]:
    """The mark in the middle of its edge, and what tells its ends apart at its upper one."""
    side = _side_of(mark.line, paper.pattern.sewing)
    yield from _along(paper, side, middle, mark.name, ACCENT, "bold")
    if not mark.end:
        return
    away, length = _allowance(paper, side), _length(mark.line)
    size = min(_LARGEST_PT, away * _TALLEST)
    (x0, y0), (x1, y1) = mark.line
    ux, uy = (x1 - x0) / length, (y1 - y0) / length
    if mark.end.isalpha():
        reach = _FROM_END_PT + measure(mark.end, size, "bold") / 2
        share = reach / length
        if reach * 2 + measure(mark.name, size, "bold") + _APART_PT < length:
            yield from _along(paper, side, share if _close(side, mark.line) else 1 - share, mark.end, INK, "bold")
            return
    nx, ny = _outward(side)
    x = x0 + ux * (_FROM_END_PT + _DOT_PT) + nx * away / 2
    y = y0 + uy * (_FROM_END_PT + _DOT_PT) + ny * away / 2
    yield Path((_round(x, y),), fill=INK)


def _round(x: float, y: float) -> Contour:
    turns = ((1.0, 0.0), (0.7, 0.7), (0.0, 1.0), (-0.7, 0.7), (-1.0, 0.0), (-0.7, -0.7), (0.0, -1.0), (0.7, -0.7))
    return tuple((x + _DOT_PT * dx, y + _DOT_PT * dy) for dx, dy in turns)


def _along(
    paper: PaperPattern, side: Segment, share: float, words: str, colour: str, weight: Weight = "regular"
) -> tuple[TextMark, ...]:
    """Words along a side in the allowance, their middle at a share of its length from its start."""
    length, away = _length(side), _allowance(paper, side)
    size = min(_LARGEST_PT, away * _TALLEST)
    nx, ny = _outward(side)
    (x0, y0), (x1, y1) = side
    x = x0 + (x1 - x0) * share + nx * away / 2
    y = y0 + (y1 - y0) * share + ny * away / 2
    ax, ay = reading_direction(((x1 - x0) / length, (y1 - y0) / length))
    fitted = ellipsis(words, min(size, SMALL_PT) if weight == "regular" else size, weight, length)
    size = min(size, SMALL_PT) if weight == "regular" else size
    half, drop = measure(fitted, size, weight) / 2, cap_height(size) / 2
    at = (x - ax * half - ay * drop, y - ay * half + ax * drop)
    return (TextMark(*at, fitted, size, weight, colour, turn_degrees=degrees(atan2(ay, ax))),)


def _outward(side: Segment) -> PagePoint:
    """Clockwise, with y downward, the outside is at the left hand."""
    (x0, y0), (x1, y1) = side
    length = _length(side)
    return (y1 - y0) / length, -(x1 - x0) / length


def _length(side: Segment) -> float:
    return hypot(side[1][0] - side[0][0], side[1][1] - side[0][1])


def _allowance(paper: PaperPattern, side: Segment) -> float:
    """How far the cutting outline lies outside a side of the sewing outline."""
    (x0, y0), (nx, ny) = side[0], _outward(side)
    return max((x - x0) * nx + (y - y0) * ny for x, y in paper.pattern.cutting)


def _side_of(line: Segment, ring: Contour) -> Segment:
    """The side of a ring that a line is, running as the ring does."""
    return next((side for side in edges(ring) if _same(side, line)), line)


def _same(side: Segment, line: Segment) -> bool:
    return _close(side, line) or _close(side, (line[1], line[0]))


def _close(one: Segment, other: Segment) -> bool:
    return all(hypot(a[0] - b[0], a[1] - b[1]) < _NEAR_PT for a, b in zip(one, other, strict=True))
