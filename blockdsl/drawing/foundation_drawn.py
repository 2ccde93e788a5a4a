"""A foundation paper as it is drawn: outlines, seams, numbers in the patches, and its words and list beside it."""

from __future__ import annotations

from collections.abc import Sequence
from math import atan2, degrees, hypot
from typing import Final

from blockdsl.drawing.flow import moved
from blockdsl.drawing.foundation_pattern import PaperPattern, turned
from blockdsl.drawing.marks import Mark, Path, Text
from blockdsl.drawing.template_marks import centred, cutting_lines, reading_direction, sewing_lines
from blockdsl.drawing.templates_beside import Drawn
from blockdsl.drawing.templates_drawn import Drawings
from blockdsl.drawing.templates_pattern import Pattern
from blockdsl.drawing.templates_room import box_ring, centroid
from blockdsl.drawing.templates_words import letter_inside, set_words, words_inside
from blockdsl.drawing.theme import ACCENT, INK, QUIET, SMALL_PT, THIN_PT, Box
from blockdsl.drawing.tiling_clip import Dot, Line, Ring, edges
from blockdsl.drawing.typeset import cap_height, ellipsis, measure, wrap

_AWAY_PT: Final = 12.0
_BESIDE_PT: Final = 132.0
_LETTER_PT: Final = 20.0
_LEADING_PT: Final = 9.6
_TINY_PT: Final = 5.5


def paper_marks(paper: PaperPattern) -> tuple[Mark, ...]:
    """The outlines and the seams; the sewing line of a seam is solid, for the needle follows it."""
    pattern = paper.pattern
    return (
        cutting_lines((pattern.cutting,), closed=True),
        sewing_lines((pattern.sewing,), closed=True),
        *seam_lines(paper.seams),
        *_name_in_allowance(pattern),
    )


def _name_in_allowance(pattern: Pattern) -> tuple[Mark, ...]:
    """Whose paper it is, along its longest side in the seam allowance: what stands beside it is cut off."""
    best = max(edges(pattern.sewing), key=lambda side: (round(hypot(*_step(side)), 3), -side[0][1] - side[1][1]))
    (dx, dy), length = _step(best), hypot(*_step(best))
    away = _allowance(pattern, best)
    # Clockwise, with y downward, the outside is at the left hand.
    nx, ny = dy / length * away / 2, -dx / length * away / 2
    middle = ((best[0][0] + best[1][0]) / 2 + nx, (best[0][1] + best[1][1]) / 2 + ny)
    ax, ay = reading_direction((dx / length, dy / length))
    size = min(SMALL_PT, away * 0.42)
    words = f"{pattern.letter} · {pattern.words.title}"
    fitted = ellipsis(words, size, "regular", length)
    half, drop = measure(fitted, size) / 2, cap_height(size) / 2
    x, y = middle[0] - ax * half - ay * drop, middle[1] - ay * half + ax * drop
    return (Text(x, y, fitted, size, colour=QUIET, turn_degrees=degrees(atan2(ay, ax))),)


def _step(side: Line) -> Dot:
    return side[1][0] - side[0][0], side[1][1] - side[0][1]


def _allowance(pattern: Pattern, side: Line) -> float:
    """How far the cutting outline lies outside a side of the sewing outline."""
    dx, dy = _step(side)
    length = hypot(dx, dy)
    return max(((x - side[0][0]) * dy - (y - side[0][1]) * dx) / length for x, y in pattern.cutting)


def seam_lines(seams: Sequence[Line]) -> tuple[Path, ...]:
    """The lines to sew on, inside a paper."""
    return (Path(tuple(seams), closed=False, stroke=INK, stroke_width_pt=2 * THIN_PT),) if seams else ()


def patch_words(patch: Pattern, ring: Ring, taken: Sequence[Ring] = ()) -> tuple[Mark, ...]:
    """As much of number, fabric, size and grain as the ring holds; its number at least, however small."""
    inside = words_inside(patch, ring, taken)
    if inside is not None:
        return inside
    letter = letter_inside(patch, ring, taken) or ()
    if any(isinstance(mark, Text) for mark in letter):
        return letter
    return (centred(centroid(ring), patch.letter, _TINY_PT, "bold"),)


class PaperDrawings(Drawings):
    """Every paper in every turn that was asked for."""

    def __init__(self, papers: tuple[PaperPattern, ...]) -> None:
        super().__init__(tuple(paper.pattern for paper in papers))
        self._papers: dict[tuple[int, int], PaperPattern] = {(number, 0): each for number, each in enumerate(papers)}
        self._done: dict[tuple[int, int], Drawn] = {}

    def paper(self, number: int, turns: int) -> PaperPattern:
        """A paper after so many quarter turns clockwise."""
        found = self._papers.get((number, turns))
        if found is None:
            found = self._papers[number, turns] = turned(self.paper(number, turns - 1))
        return found

    def pattern(self, number: int, turns: int) -> Pattern:
        """Its outlines after so many quarter turns clockwise."""
        return self.paper(number, turns).pattern

    def drawn(self, number: int, turns: int) -> Drawn:
        """The turned paper with its words, which stay upright."""
        found = self._done.get((number, turns))
        if found is None:
            found = self._done[number, turns] = _drawn(self.paper(number, turns))
        return found


def inner_marks(paper: PaperPattern) -> tuple[Mark, ...]:
    """A whole paper without the words beside it."""
    words = (mark for patch in paper.patches for mark in patch_words(patch, patch.sewing))
    return (*paper_marks(paper), *words)


def _drawn(paper: PaperPattern) -> Drawn:
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
        return Drawn(max(pattern.width_pt, said_width), top + said_height, marks, (pattern.cutting, room))
    left = pattern.width_pt + _AWAY_PT
    room = box_ring(Box(left, 0.0, said_width, said_height))
    marks = (*shape, *moved(said, left, 0.0))
    return Drawn(left + said_width, max(pattern.height_pt, said_height), marks, (pattern.cutting, room))


def beside_words(paper: PaperPattern, width_pt: float) -> tuple[tuple[Mark, ...], float, float]:
    """The paper's letter and words, and below them its list of patches; with their width and height."""
    block = set_words(paper.pattern.words, _LETTER_PT, SMALL_PT, width_pt - 22.0, stacked=False)
    marks: list[Mark] = list(block.marks)
    width, y = block.width_pt, block.height_pt
    if not paper.listed:
        return tuple(marks), width, y
    y += _LEADING_PT + 1.0
    indent = max(measure(number, SMALL_PT, "bold") for number, _ in paper.list_lines) + 5.0
    for number, words in paper.list_lines:
        marks.append(Text(0.0, y, number, SMALL_PT, "bold", ACCENT))
        for row in wrap(words, SMALL_PT, "regular", width_pt - indent):
            marks.append(Text(indent, y, row, SMALL_PT, colour=QUIET))
            width = max(width, indent + measure(row, SMALL_PT))
            y += _LEADING_PT
    return tuple(marks), width, y - _LEADING_PT + 2.0
