"""A foundation paper in points, mirrored as it is printed: its outlines, its seams, and what each patch says.

Here the exact numbers of the facts become floats, once. The cutting outline's top left corner is the origin.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from blockdsl.drawing.lengths import show_extent
from blockdsl.drawing.templates_pattern import POINTS_PER_UNIT, Pattern, Words
from blockdsl.drawing.tiling_clip import Dot, Line, Ring, bounds
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.foundationfacts import FoundationFacts, PaperFacts, PaperPatch
from blockdsl.geometry import Point, Polygon, to_float
from blockdsl.geometry.offset import trim_points


@dataclass(frozen=True, slots=True)
class PaperPattern:
    """One paper: its outlines with its words, the seams inside it, and its patches with their own words.

    Of several copies the first alone is `listed`: it says which fabric and what size each number is.
    """

    pattern: Pattern
    seams: tuple[Line, ...]
    patches: tuple[Pattern, ...]
    listed: bool

    @property
    def list_lines(self) -> tuple[tuple[str, str], ...]:
        """Number and words of each patch, in the order of sewing."""
        return tuple((each.letter, ", ".join((each.words.title, *each.words.lines))) for each in self.patches)


def paper_patterns(foundation: FoundationFacts, facts: BlockFacts, copies: int) -> list[PaperPattern]:
    """The papers of a unit, copy by copy: all of the first, then all of the second."""
    return [
        _paper_pattern(paper, foundation, facts, copy, copies)
        for copy in range(1, copies + 1)
        for paper in foundation.papers
    ]


def _paper_pattern(
    paper: PaperFacts, foundation: FoundationFacts, facts: BlockFacts, copy: int, copies: int
) -> PaperPattern:
    place = _Place(facts, trim_points(paper.cutting, paper.sewing, facts.seam))
    words = Words(paper.letter, foundation.title, _lines(paper, foundation, copy, copies))
    grain = (0.0, 1.0)
    seams = tuple((place.dot(patch.seam[0]), place.dot(patch.seam[1])) for patch in paper.patches if patch.seam)
    return PaperPattern(
        Pattern(words, place.cutting, place.ring(paper.sewing), grain),
        seams,
        tuple(_patch_pattern(patch, facts, place) for patch in paper.patches),
        listed=copy == 1,
    )


class _Place:
    """From the unit seen from the right side to its back in points."""

    def __init__(self, facts: BlockFacts, cutting: Polygon) -> None:
        self._scale = POINTS_PER_UNIT[facts.unit]
        self._right, self._top = max(corner.x for corner in cutting), min(corner.y for corner in cutting)
        self.cutting = self.ring(cutting)

    def dot(self, point: Point) -> Dot:
        """A place in the mirror, from the top left corner of the mirrored cutting outline."""
        return to_float(self._right - point.x) * self._scale, to_float(point.y - self._top) * self._scale

    def ring(self, polygon: Polygon) -> Ring:
        """A ring that runs clockwise again."""
        return tuple(self.dot(corner) for corner in reversed(polygon))


def _patch_pattern(patch: PaperPatch, facts: BlockFacts, place: _Place) -> Pattern:
    labels = {fabric.name: fabric.label for fabric in facts.fabrics}
    words = Words(patch.number, labels[patch.fabric], (f"cut {show_extent(patch.cut, facts.unit)}",))
    ring = place.ring(patch.outline)
    return Pattern(words, ring, ring, (0.0, 1.0))


def _lines(paper: PaperFacts, foundation: FoundationFacts, copy: int, copies: int) -> tuple[str, ...]:
    """Which section and copy it is, and on the first paper of a unit how its sections are joined."""
    lines = []
    if len(foundation.papers) > 1:
        lines.append(f"section {paper.letter} of {foundation.papers[0].letter} to {foundation.papers[-1].letter}")
    if foundation.count > 1:
        lines.append(f"copy {copy} of {copies}" if copies > 1 else f"print {foundation.count}")
    if copy == 1 and paper is foundation.papers[0] and foundation.joins:
        lines.append("then join " + "; ".join(join.name for join in foundation.joins))
    return tuple(lines)


def turned(paper: PaperPattern) -> PaperPattern:
    """The paper turned a quarter clockwise with all that is on it."""
    height = paper.pattern.height_pt

    def dot(at: Dot) -> Dot:
        return height - at[1], at[0]

    def pattern(each: Pattern) -> Pattern:
        grain = (-each.grain[1], each.grain[0])
        return Pattern(each.words, tuple(map(dot, each.cutting)), tuple(map(dot, each.sewing)), grain)

    return replace(
        paper,
        pattern=pattern(paper.pattern),
        seams=tuple((dot(start), dot(stop)) for start, stop in paper.seams),
        patches=tuple(pattern(each) for each in paper.patches),
    )


def room_of(ring: Ring) -> float:
    """The shorter side of the box round a ring: about how much may be written in it."""
    left, top, right, bottom = bounds(ring)
    return min(right - left, bottom - top)
