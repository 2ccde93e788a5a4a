"""The facts of a unit that is sewn to printed papers.

Outlines and seams are finished, in the block's unit, from the top left corner of the unit as drawn and as seen from
the right side of the cloth; a paper is printed as the mirror image, for cloth is laid on its back.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from blockdsl.cutting.foundation import Edge, RoomySubcut
from blockdsl.geometry import Exact, Point, Polygon

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
class FoundationFacts:
    """A unit on papers, made `count` times. `joins` are pairs of letters, runs as `A–B`, in the order of sewing.

    `unit` is its place among the block's units.
    """

    unit: int
    name: str
    title: str
    count: int
    finished: Extent
    papers: tuple[PaperFacts, ...]
    joins: tuple[tuple[str, str], ...]
