"""The pieces of a block at full size for cutting machines: outlines with true arcs, side by side, in millimetres.

Here the exact numbers of the facts become floats, once. x runs to the right, y down, from the top left corner of all.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import atan2, hypot, pi
from typing import Final

from msgspec import Struct

from blockdsl.facts.blockfacts import BlockFacts, RulerUnit, TemplateFacts
from blockdsl.geometry import Point, Polygon, to_float
from blockdsl.geometry.arc import Curved
from blockdsl.geometry.offset import trim_points
from blockdsl.marks.clip import bounds
from blockdsl.model.block import APPLIQUE
from blockdsl.pictures.arcs import notches_of, outline_places

MM: Final[dict[RulerUnit, float]] = {"in": 25.4, "cm": 10.0}
MM_PT: Final = 72 / 25.4
_GAP_MM: Final = 10.0
_ARROW: Final = 0.5
"""Of the piece's lesser side: how long its grain is drawn."""

Place = tuple[float, float]


class Edge(Struct, frozen=True):
    """From where the edge before ended to `end`; `turn` is the angle of an arc, clockwise positive, 0 for a line."""

    end: Place
    turn: float = 0.0
    radius_mm: float = 0.0


class Loop(Struct, frozen=True):
    """A closed outline: where it starts, and its edges; the last one ends where it starts."""

    start: Place
    edges: tuple[Edge, ...]

    @property
    def corners(self) -> tuple[Place, ...]:
        """The ends of its edges."""
        return tuple(edge.end for edge in self.edges)


class CutShape(Struct, frozen=True):
    """One piece: what the blade follows, what is sewn, and marks that are only drawn. `letter` stands at `middle`."""

    letter: str
    cutting: Loop
    sewing: Loop
    marks: tuple[tuple[Place, Place], ...]
    middle: Place
    width_mm: float
    height_mm: float


def cut_shapes(facts: BlockFacts) -> tuple[CutShape, ...]:
    """A shape for each template of the block, each with its top left corner at the origin."""
    return tuple(_shape(template, facts) for template in facts.templates)


def in_a_row(shapes: tuple[CutShape, ...]) -> Iterator[tuple[CutShape, float]]:
    """Each shape with how far to the right it is moved, so that all lie side by side."""
    x = 0.0
    for shape in shapes:
        yield shape, x
        x += shape.width_mm + _GAP_MM


def _shape(template: TemplateFacts, facts: BlockFacts) -> CutShape:
    scale = MM[facts.unit]
    cutting: Polygon | Curved = template.cutting
    sewing: Polygon | Curved = template.sewing
    notches: tuple[tuple[Place, Place], ...] = ()
    if template.curved is not None:
        sewing, cutting = template.curved
        notches = notches_of(sewing, facts.seam, scale)
    elif template.shape != APPLIQUE:
        cutting = trim_points(template.cutting, template.sewing, facts.seam)
    outer = _loop(cutting, scale)
    fine = MM_PT * scale
    left, top, right, bottom = bounds(tuple((x * scale, y * scale) for x, y in outline_places(cutting, fine)))

    def placed(place: Place) -> Place:
        return place[0] - left, place[1] - top

    middle = (right - left) / 2, (bottom - top) / 2
    grain = _grain(template.grain, middle, min(right - left, bottom - top) * _ARROW)
    return CutShape(
        template.label,
        _moved(outer, left, top),
        _moved(_loop(sewing, scale), left, top),
        (grain, *((placed(a), placed(b)) for a, b in notches)),
        middle,
        right - left,
        bottom - top,
    )


def _grain(grain: Point | tuple[object, object], middle: Place, length: float) -> tuple[Place, Place]:
    dx, dy = (to_float(side) for side in grain)  # type: ignore[arg-type]
    reach = length / 2 / (hypot(dx, dy) or 1.0)
    return (middle[0] - dx * reach, middle[1] - dy * reach), (middle[0] + dx * reach, middle[1] + dy * reach)


def _loop(outline: Polygon | Curved, scale: float) -> Loop:
    if not isinstance(outline, Curved):
        places = [(to_float(x) * scale, to_float(y) * scale) for x, y in outline]
        return Loop(places[0], tuple(Edge(place) for place in (*places[1:], places[0])))
    edges = []
    for start, end, bend in outline.sides():
        (ax, ay), (bx, by) = ((to_float(x) * scale, to_float(y) * scale) for x, y in (start, end))
        if bend is None:
            edges.append(Edge((bx, by)))
            continue
        cx, cy = to_float(bend.centre.x) * scale, to_float(bend.centre.y) * scale
        turn = (atan2(by - cy, bx - cx) - atan2(ay - cy, ax - cx) + pi) % (2 * pi) - pi
        edges.append(Edge((bx, by), turn, to_float(bend.radius) * scale))
    first = outline.corners[0]
    return Loop((to_float(first.x) * scale, to_float(first.y) * scale), tuple(edges))


def _moved(loop: Loop, left: float, top: float) -> Loop:
    start = loop.start[0] - left, loop.start[1] - top
    edges = (Edge((edge.end[0] - left, edge.end[1] - top), edge.turn, edge.radius_mm) for edge in loop.edges)
    return Loop(start, tuple(edges))
