"""The facts of a unit that is sewn to printed papers.

Outlines and seams are finished, in the block's unit, from the top left corner of the unit as drawn and as seen from
the right side of the cloth; a paper is printed as the mirror image, for cloth is laid on its back.
"""

from __future__ import annotations

from dataclasses import dataclass

from blockdsl.cutting.foundation import Edge, RoomySubcut
from blockdsl.geometry import Exact, Point, Polygon, sign
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import cross, edges, step

Extent = tuple[Exact, Exact]


@dataclass(frozen=True, slots=True)
class PaperPatch:
    """A patch in its turn on a paper. `number` is A1, A2 …; `label` its letter in the block.

    `seam` is the line from end to end along which it is sewn to those before it, None for the first. `cut` is the
    piece of fabric (shorter, longer) on the ruler, of a `subcut` the square that gives two. `edge` is the one that is
    laid along the line: `long`, `short`, or `any` of a square; None for the first.
    """

    number: str
    label: str
    fabric: str
    outline: Polygon
    seam: tuple[Point, Point] | None
    cut: tuple[Fraction, Fraction]
    subcut: RoomySubcut
    edge: Edge | None


@dataclass(frozen=True, slots=True)
class PaperFacts:
    """One section of a unit: what one paper holds. `cutting` is `sewing` with the seam allowance round it."""

    letter: str
    sewing: Polygon
    cutting: Polygon
    patches: tuple[PaperPatch, ...]


@dataclass(frozen=True, slots=True)
class PaperJoin:
    """Two runs of sections, by their letters, and the seam that joins them, from its upper (or left) end."""

    before: tuple[str, ...]
    after: tuple[str, ...]
    seam: tuple[Point, Point]

    @property
    def name(self) -> str:
        """What the edges that meet are marked: `A–B`, `AB–C`, `A…F–G`."""
        return f"{_run(self.before)}–{_run(self.after)}"

    @property
    def is_level(self) -> bool:
        """Whether neither end of the seam is the upper one."""
        return self.seam[0].y == self.seam[1].y


def edge_on(line: tuple[Point, Point], outline: Polygon) -> tuple[Point, Point] | None:
    """The edge of an outline that lies on a line; None where it has none there."""
    start, end = line
    way = step(start, end)
    for a, b in edges(outline):
        if not sign(cross(way, step(start, a))) and not sign(cross(way, step(start, b))):
            return a, b
    return None


def _run(letters: tuple[str, ...]) -> str:
    return "".join(letters) if len(letters) < 3 else f"{letters[0]}…{letters[-1]}"


@dataclass(frozen=True, slots=True)
class FoundationFacts:
    """A unit on papers, made `count` times; its `joins` in the order of sewing. `unit` is its place among the units."""

    unit: int
    name: str
    title: str
    count: int
    finished: Extent
    papers: tuple[PaperFacts, ...]
    joins: tuple[PaperJoin, ...]
