"""A template too small for its words: they stand beside it, or below it when it is wide and low.

A thin leader ends with a dot in the seam allowance, so that it touches nothing that is written inside.
"""

from __future__ import annotations

from typing import Final

from msgspec import Struct

from blockdsl.fullsize.pattern import TemplatePattern
from blockdsl.fullsize.room import box_ring, centroid, gaps
from blockdsl.fullsize.template_marks import leader
from blockdsl.fullsize.words_inside import letter_inside, set_words
from blockdsl.marks.display_list import Contour, Mark, PagePoint, moved
from blockdsl.marks.theme import SMALL_PT, Box

_AWAY_PT: Final = 14.0
_WIDTH_PT: Final = 118.0
_LETTER_PT: Final = 14.0
_BEFORE_WORDS_PT: Final = 4.0
_DOT_INSIDE_PT: Final = 5.0


class DrawnTemplate(Struct, frozen=True):
    """A template ready to be placed: the box that it takes with its words, and its marks from the box's corner.

    `rings` are what it takes of that box more closely: its outline, and its words with their leader.
    """

    width_pt: float
    height_pt: float
    marks: tuple[Mark, ...]
    rings: tuple[Contour, ...]


def words_beside(pattern: TemplatePattern, outlines: tuple[Mark, ...]) -> DrawnTemplate:
    """A small template with its words outside it."""
    shape = (*outlines, *(letter_inside(pattern, pattern.sewing) or ()))
    if pattern.width_pt > 2.2 * pattern.height_pt and pattern.width_pt > _WIDTH_PT:
        return _below(pattern, shape)
    return _at_right(pattern, shape)


def _below(pattern: TemplatePattern, shape: tuple[Mark, ...]) -> DrawnTemplate:
    width_pt = min(max(_WIDTH_PT, pattern.width_pt - 30), 300.0)
    block = set_words(pattern.words, _LETTER_PT, SMALL_PT, width_pt, stacked=False)
    end = _inside_right(tuple((y, x) for x, y in pattern.cutting), pattern.width_pt / 3)
    top = pattern.height_pt + _AWAY_PT
    line = leader((end[1], top - _BEFORE_WORDS_PT), (end[1], end[0]))
    words = moved(block.marks, 0.0, top)
    said = box_ring(Box(0.0, top, block.width_pt, block.height_pt))
    tie = ((end[1], top), (end[1], end[0]))
    width = max(pattern.width_pt, block.width_pt)
    return DrawnTemplate(width, top + block.height_pt, (*shape, *line, *words), (pattern.cutting, said, tie))


def _at_right(pattern: TemplatePattern, shape: tuple[Mark, ...]) -> DrawnTemplate:
    block = set_words(pattern.words, _LETTER_PT, SMALL_PT, _WIDTH_PT, stacked=True)
    height = max(pattern.height_pt, block.height_pt)
    x = pattern.width_pt + _AWAY_PT
    end = _inside_right(pattern.cutting, pattern.height_pt / 2)
    line = leader((x - _BEFORE_WORDS_PT, end[1]), end)
    down = (height - pattern.height_pt) / 2
    words = moved(block.marks, x, (height - block.height_pt) / 2)
    drawn = moved((*shape, *line), 0.0, down)
    cutting = tuple((at, y + down) for at, y in pattern.cutting)
    said = box_ring(Box(x, (height - block.height_pt) / 2, block.width_pt, block.height_pt))
    tie = ((x, end[1] + down), (end[0], end[1] + down))
    return DrawnTemplate(x + block.width_pt, height, (*drawn, *words), (cutting, said, tie))


def _inside_right(ring: Contour, y: float) -> PagePoint:
    """A place just inside the rightmost side at a height."""
    found = list(gaps(ring, (), y - 0.5, y + 0.5))
    if not found:
        return centroid(ring)
    low, high = found[-1]
    return max(high - _DOT_INSIDE_PT, (low + high) / 2), y
