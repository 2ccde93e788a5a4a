"""A foundation paper as it is drawn: outlines, seams, numbers in the patches, and its words and list beside it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.fullsize.foundation_marks import allowance_marks
from blockdsl.fullsize.foundation_pattern import PaperPattern, turned
from blockdsl.fullsize.foundation_table import paper_table
from blockdsl.fullsize.pattern import TemplatePattern
from blockdsl.fullsize.room import box_ring, centroid, find_room
from blockdsl.fullsize.template import Drawings
from blockdsl.fullsize.template_marks import centred, cutting_lines, sewing_lines
from blockdsl.fullsize.words_beside import DrawnTemplate
from blockdsl.fullsize.words_inside import set_words
from blockdsl.marks.display_list import Contour, Mark, Path, Segment, moved
from blockdsl.marks.theme import BODY_PT, INK, SMALL_PT, THIN_PT, Box
from blockdsl.marks.typeset import cap_height, measure

_AWAY_PT: Final = 12.0
_BESIDE_PT: Final = 190.0
_LETTER_PT: Final = 20.0
_APART_PT: Final = 6.0
_PADDING_PT: Final = 4.0
_SETTINGS: Final = (
    (28.0, BODY_PT, 150.0),
    (22.0, BODY_PT, 110.0),
    (18.0, 8.5, 90.0),
    (14.0, 8.5, 70.0),
)
"""Number, words and width of a line."""
_NUMBERS_PT: Final = (20.0, 14.0, 11.0, 8.5, 7.0)
_TINY_PT: Final = 5.5


def paper_marks(paper: PaperPattern) -> tuple[Mark, ...]:
    """The outlines and the seams; the sewing line of a seam is solid, for the needle follows it."""
    pattern = paper.pattern
    return (
        cutting_lines((pattern.cutting,), closed=True),
        sewing_lines((pattern.sewing,), closed=True),
        *seam_lines(paper.seams),
        *allowance_marks(paper),
    )


def seam_lines(seams: Sequence[Segment]) -> tuple[Path, ...]:
    """The lines to sew on, inside a paper."""
    return (Path(tuple(seams), closed=False, stroke=INK, stroke_width_pt=2 * THIN_PT),) if seams else ()


def patch_words(patch: TemplatePattern, ring: Contour, taken: Sequence[Contour] = ()) -> tuple[Mark, ...]:
    """As much of number, fabric and size as the ring holds; its number at least, however small."""
    middle = centroid(ring)
    for letter_pt, size_pt, width_pt in _SETTINGS:
        block = set_words(patch.words, letter_pt, size_pt, width_pt, stacked=False)
        room = find_room(ring, taken, block.width_pt + 2 * _PADDING_PT, block.height_pt + 2 * _PADDING_PT, middle)
        if room is not None:
            return moved(block.marks, room.x_pt + _PADDING_PT, room.y_pt + _PADDING_PT)
    for size_pt in _NUMBERS_PT:
        wide, high = measure(patch.letter, size_pt, "bold") + 2.0, cap_height(size_pt) + 2.0
        room = find_room(ring, taken, wide, high, middle)
        if room is not None:
            return (centred((room.x_pt + wide / 2, room.y_pt + high / 2), patch.letter, size_pt, "bold"),)
    return (centred(middle, patch.letter, _TINY_PT, "bold"),)


class PaperDrawings(Drawings):
    """Every paper in every turn that was asked for."""

    def __init__(self, papers: tuple[PaperPattern, ...]) -> None:
        super().__init__(tuple(paper.pattern for paper in papers))
        self._papers: dict[tuple[int, int], PaperPattern] = {(number, 0): each for number, each in enumerate(papers)}
        self._done: dict[tuple[int, int], DrawnTemplate] = {}

    def paper(self, number: int, turns: int) -> PaperPattern:
        """A paper after so many quarter turns clockwise."""
        found = self._papers.get((number, turns))
        if found is None:
            found = self._papers[number, turns] = turned(self.paper(number, turns - 1))
        return found

    def pattern(self, number: int, turns: int) -> TemplatePattern:
        """Its outlines after so many quarter turns clockwise."""
        return self.paper(number, turns).pattern

    def drawn(self, number: int, turns: int) -> DrawnTemplate:
        """The turned paper with its words, which stay upright."""
        found = self._done.get((number, turns))
        if found is None:
            found = self._done[number, turns] = _drawn(self.paper(number, turns))
        return found


def inner_marks(paper: PaperPattern) -> tuple[Mark, ...]:
    """A whole paper without the words beside it."""
    words = (mark for patch in paper.patches for mark in patch_words(patch, patch.sewing))
    return (*paper_marks(paper), *words)


def _drawn(paper: PaperPattern) -> DrawnTemplate:
    """The paper with its words at its right, or below it where it is wide and low."""
    pattern = paper.pattern
    wide = pattern.width_pt > 1.6 * pattern.height_pt and pattern.width_pt > _BESIDE_PT
    width_pt = min(pattern.width_pt, 360.0) if wide else _BESIDE_PT
    said, said_width, said_height = beside_words(paper, width_pt)
    shape = inner_marks(paper)
    if wide:
        top = pattern.height_pt + _AWAY_PT * 0.75
        room = box_ring(Box(0.0, top, said_width, said_height))
        marks = (*shape, *moved(said, 0.0, top))
        return DrawnTemplate(max(pattern.width_pt, said_width), top + said_height, marks, (pattern.cutting, room))
    left = pattern.width_pt + _AWAY_PT
    room = box_ring(Box(left, 0.0, said_width, said_height))
    marks = (*shape, *moved(said, left, 0.0))
    return DrawnTemplate(left + said_width, max(pattern.height_pt, said_height), marks, (pattern.cutting, room))


def beside_words(paper: PaperPattern, width_pt: float) -> tuple[tuple[Mark, ...], float, float]:
    """The paper's letter and words, and below them its table; with their width and height."""
    block = set_words(paper.pattern.words, _LETTER_PT, SMALL_PT, width_pt - 22.0, stacked=False)
    if not paper.listed:
        return block.marks, block.width_pt, block.height_pt
    width, height, table = paper_table(paper, width_pt)
    top = block.height_pt + _APART_PT
    return (*block.marks, *moved(table, 0.0, top)), max(block.width_pt, width), top + height
