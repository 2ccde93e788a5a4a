"""The facts of a unit that is sewn to printed papers.

Outlines and seams are finished, in the block's unit, from the top left corner of the unit as drawn and as seen from
the right side of the cloth; a paper is printed as the mirror image, for cloth is laid on its back.
"""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta

from blockdsl.cutting.foundation import Edge, RoomySubcut, Seam
from blockdsl.cutting.sizes import Extent
from blockdsl.geometry import Point, Polygon, sign
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import Outline, cross, edges, step
from blockdsl.record import Count, Letter, Name, Record, Rest, says


class PaperPatch(Record, frozen=True):
    """A patch in its turn on a paper."""

    number: Annotated[Name, says("A1, A2 …")]
    label: Letter
    fabric: Name
    outline: Outline
    seam: Annotated[
        Seam | None,
        says("Along which it is sewn to those before it, from end to end; null for the first patch."),
    ]
    cut: Annotated[tuple[Fraction, Fraction], says("The piece of fabric on the ruler, the shorter side first.")]
    subcut: Annotated[
        RoomySubcut, says("`once`: a square of the size in `cut`, cut corner to corner, gives two such pieces.")
    ]
    edge: Annotated[
        Edge | None,
        says(
            "The edge of the piece that is laid along its seam, one allowance beyond the line; null for the first "
            "patch, which is laid right side up over its area."
        ),
    ]


class PaperFacts(Record, frozen=True):
    """One section of a unit on papers, as seen from the right side of the cloth."""

    letter: Name
    sewing: Outline
    cutting: Annotated[Polygon, says("The same with the seam allowance round it."), Meta(min_length=3)]
    patches: Annotated[tuple[PaperPatch, ...], says("In the order of sewing.")]


class PaperJoin(Record, frozen=True):
    """Two runs of sections that are joined."""

    before: Annotated[tuple[str, ...], says("Sections by their letters.")]
    after: Annotated[tuple[str, ...], says("Those that they are joined to.")]
    seam: Annotated[Seam, says("From its upper end, of a level seam from its left end.")]
    name: Annotated[Name, says("What the edges that meet are marked: `A–B`, `AB–C`, `A…F–G`.")]

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


class FoundationFacts(Record, frozen=True):
    """A unit that is sewn to papers, whose letters no other unit of the block has."""

    unit: Annotated[Rest, says("Its place in the list of units.")]
    name: Name
    title: Name
    count: Count
    finished: Extent
    papers: tuple[PaperFacts, ...]
    joins: Annotated[tuple[PaperJoin, ...], says("The sections run to run, in the order in which they are joined.")]
