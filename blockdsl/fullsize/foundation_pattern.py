"""A foundation paper in points, mirrored as it is printed: its outlines, its seams, and what each patch says.

Here the exact numbers of the facts become floats, once. The cutting outline's top left corner is the origin.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import hypot

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.foundationfacts import FoundationFacts, PaperFacts, PaperPatch, edge_on
from blockdsl.fullsize.pattern import POINTS_PER_UNIT, TemplatePattern, TemplateWords
from blockdsl.geometry import Point, Polygon, to_float
from blockdsl.geometry.offset import trim_points
from blockdsl.marks.clip import edges
from blockdsl.marks.display_list import Contour, PagePoint, Segment
from blockdsl.wording.lengths import show_extent
from blockdsl.wording.messages import Messages, messages, words_of
from blockdsl.wording.sheet import part_words


class EdgeMark(Struct, frozen=True):
    """An edge that meets other sections: its line in the sewing outline, and what it is marked.

    `end` is what stands at the start of the line, on both sides of the seam: `TOP`, or a dot; empty where the upper end
    of the seam lies on another section.
    """

    line: Segment
    name: str
    end: str


class TableLine(Struct, frozen=True):
    """A line of a paper's table: the area, its fabric, the letter of the diagram, what is cut."""

    number: str
    fabric: str
    letter: str
    cut: str
    is_half: bool = False
    on_short_edge: bool = False


class PaperPattern(Struct, frozen=True):
    """One paper: its outlines with its words, the seams inside it, and its areas with their own words.

    `top` is the side that is at the top in the unit as drawn; `marks` are the edges that meet other sections. Of
    several copies the first alone is `listed`: it has the paper's table beside it.
    """

    pattern: TemplatePattern
    seams: tuple[Segment, ...]
    patches: tuple[TemplatePattern, ...]
    top: Segment
    marks: tuple[EdgeMark, ...]
    table: tuple[TableLine, ...]
    listed: bool


def paper_patterns(foundation: FoundationFacts, facts: BlockFacts, copies: int) -> list[PaperPattern]:
    """The papers of a unit, section by section: all copies of the first, then all of the second."""
    words = messages(facts.language)
    return [
        _paper_pattern(paper, foundation, facts, (copy, copies), words)
        for paper in foundation.papers
        for copy in range(1, copies + 1)
    ]


def _paper_pattern(
    paper: PaperFacts, foundation: FoundationFacts, facts: BlockFacts, copies: tuple[int, int], words: Messages
) -> PaperPattern:
    place = _Place(facts, trim_points(paper.cutting, paper.sewing, facts.seam))
    said = TemplateWords(paper.letter, part_words(foundation.title, words), _lines(paper, foundation, copies, words))
    seams = tuple((place.dot(patch.seam[0]), place.dot(patch.seam[1])) for patch in paper.patches if patch.seam)
    return PaperPattern(
        TemplatePattern(said, place.cutting, place.ring(paper.sewing), (0.0, 1.0), language=facts.language),
        seams,
        tuple(_patch_pattern(patch, facts, place, words) for patch in paper.patches),
        _top(place.ring(paper.sewing)),
        tuple(_edge_marks(paper, foundation, place, words)),
        tuple(_table_line(patch, facts, words) for patch in paper.patches),
        listed=copies[0] == 1,
    )


def _top(ring: Contour) -> Segment:
    """The side whose outside points most nearly upward; the longest of equals."""

    def upward(side: Segment) -> tuple[float, float]:
        (x0, y0), (x1, y1) = side
        length = hypot(x1 - x0, y1 - y0) or 1.0
        return round((x1 - x0) / length, 6), length  # clockwise: upper sides run to the right

    return max(edges(ring), key=upward)


def _edge_marks(paper: PaperFacts, foundation: FoundationFacts, place: _Place, words: Messages) -> Iterator[EdgeMark]:
    for join in foundation.joins:
        stretch = edge_on(join.seam, paper.sewing)
        if paper.letter not in (*join.before, *join.after) or stretch is None:
            continue
        start, end = sorted(stretch, key=lambda point: (point.y, point.x))
        sign = words("papers-sheet-dot" if join.is_level else "papers-sheet-top") if start == join.seam[0] else ""
        yield EdgeMark((place.dot(start), place.dot(end)), join.name, sign)


class _Place:
    """From the unit seen from the right side to its back in points."""

    def __init__(self, facts: BlockFacts, cutting: Polygon) -> None:
        self._scale = POINTS_PER_UNIT[facts.unit]
        self._right, self._top = max(corner.x for corner in cutting), min(corner.y for corner in cutting)
        self.cutting = self.ring(cutting)

    def dot(self, point: Point) -> PagePoint:
        """A place in the mirror, from the top left corner of the mirrored cutting outline."""
        return to_float(self._right - point.x) * self._scale, to_float(point.y - self._top) * self._scale

    def ring(self, polygon: Polygon) -> Contour:
        """A ring that runs clockwise again."""
        return tuple(self.dot(corner) for corner in reversed(polygon))


def _patch_pattern(patch: PaperPatch, facts: BlockFacts, place: _Place, words: Messages) -> TemplatePattern:
    line = _table_line(patch, facts, words)
    ring = place.ring(patch.outline)
    said = TemplateWords(patch.number, line.fabric, (words("papers-sheet-cut", size=line.cut),))
    return TemplatePattern(said, ring, ring, (0.0, 1.0), language=facts.language)


def _table_line(patch: PaperPatch, facts: BlockFacts, words: Messages) -> TableLine:
    labels = {fabric.name: fabric.label for fabric in facts.fabrics}
    size = show_extent(patch.cut, facts.unit, words_of(facts))
    is_half = patch.subcut == "once"
    cut = words("papers-sheet-half", size=size) if is_half else size
    short = patch.edge == "short"
    return TableLine(patch.number, labels[patch.fabric], patch.label, cut, is_half=is_half, on_short_edge=short)


def _lines(paper: PaperFacts, foundation: FoundationFacts, copies: tuple[int, int], words: Messages) -> tuple[str, ...]:
    """Which section and copy it is."""
    copy, printed = copies
    lines = []
    if len(foundation.papers) > 1:
        lines.append(words("papers-sheet-section", section=paper.letter))
    if foundation.count > 1:
        again = words("papers-sheet-print", count=foundation.count)
        lines.append(words("papers-sheet-copy", copy=copy, copies=printed) if printed > 1 else again)
    return tuple(lines)


def turned(paper: PaperPattern) -> PaperPattern:
    """The paper turned a quarter clockwise with all that is on it."""
    height = paper.pattern.height_pt

    def dot(at: PagePoint) -> PagePoint:
        return height - at[1], at[0]

    def pattern(each: TemplatePattern) -> TemplatePattern:
        grain = (-each.grain[1], each.grain[0])
        cutting, sewing = tuple(map(dot, each.cutting)), tuple(map(dot, each.sewing))
        return replace(each, cutting=cutting, sewing=sewing, grain=grain, notches=())

    return replace(
        paper,
        pattern=pattern(paper.pattern),
        seams=tuple((dot(start), dot(stop)) for start, stop in paper.seams),
        patches=tuple(pattern(each) for each in paper.patches),
        top=(dot(paper.top[0]), dot(paper.top[1])),
        marks=tuple(replace(mark, line=(dot(mark.line[0]), dot(mark.line[1]))) for mark in paper.marks),
    )
