"""The step of a unit that a method makes as a whole: its measures, its pieces by role, what a batch of it takes."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Final

from blockdsl.facts.blockrecord import BlockRecord, CutFacts, FabricFacts, PlacedPatch, UnitFacts
from blockdsl.facts.technique_example import corners_of, counts_of, dark_roles, role_fabrics
from blockdsl.geometry import Exact, Polygon, sign
from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.method_steps import METHOD_STEPS, MethodPiece, MethodStep, MethodUnit
from blockdsl.sewing.techniques import LESSONS, Measures, Topic
from blockdsl.shapes import SHAPES, geese, snowball, split

_SHARES: Final[Mapping[tuple[str, str], Mapping[int, int]]] = {
    ("two at a time", split.SHAPE.name): {0: 2},
    ("four at a time", geese.SHAPE.name): {1: 2, 2: 2},
}
"""How many pieces of a role a batch takes, where it is not one."""


def method_step(
    hands: Sequence[int], cuts: Sequence[CutFacts], block: BlockRecord
) -> tuple[MethodStep, tuple[FabricFacts, ...]] | None:
    """The step of a unit, with its mirror image where that is made too, and the fabrics of its pictures by role.

    `hands` are their places in the block's units, `cuts` the lines of the cutting table that are for them. None for a
    method whose steps are told elsewhere.
    """
    unit = block.units[hands[0]]
    make = METHOD_STEPS.get((unit.method, unit.shape))
    if make is None:
        return None
    topic = LESSONS[unit.method].topics[unit.shape]
    pieces = _pieces(unit, topic, cuts)
    fabrics = role_fabrics(topic, unit, block)
    measures = Measures(
        unit=block.unit,
        seam=block.seam,
        finished=unit.finished,
        cuts={role: ((piece.cut[0], piece.cut[-1]), piece.count) for role, piece in pieces.items()},
        dark=dark_roles(fabrics),
        counts=counts_of(unit.shape, unit.picture),
        corners=corners_of(unit.shape, unit.picture),
        open_seams=block.pressing == "open",
    )
    return make(
        MethodUnit(
            measures=measures,
            pieces=pieces,
            batches=_batches(pieces, cuts),
            count=unit.count,
            mirrored=sum(block.units[other].count for other in hands[1:]),
            drawn=_is_drawn(unit, topic),
        )
    ), fabrics


def _pieces(unit: UnitFacts, topic: Topic, cuts: Sequence[CutFacts]) -> dict[int, MethodPiece]:
    """For each role the line of the cutting table with its letter and fabric."""
    shares = _SHARES.get((unit.method, unit.shape), {})
    pieces: dict[int, MethodPiece] = {}
    for place, patch in enumerate(unit.picture):
        role = topic.drawn[place] if place < len(topic.drawn) else topic.drawn[-1]
        cut = _line_of(patch, cuts)
        sides = cut.cut[:1] if cut.piece == "square" else cut.cut
        piece = MethodPiece(cut.label, cut.fabric, cut.piece, sides, shares.get(role, 1))
        if role in pieces and unit.shape == snowball.SHAPE.name:
            piece = MethodPiece(cut.label, cut.fabric, cut.piece, sides, pieces[role].count + 1)
        pieces[role] = piece
    return pieces


def _line_of(patch: PlacedPatch, cuts: Sequence[CutFacts]) -> CutFacts:
    same = [cut for cut in cuts if cut.fabric == patch.fabric]
    return next((cut for cut in same if cut.label == patch.label), same[0])


def _batches(pieces: Mapping[int, MethodPiece], cuts: Sequence[CutFacts]) -> int:
    """How many times the pieces of a batch are cut."""
    first = pieces[min(pieces)]
    key = first.label, first.fabric
    each = sum(piece.count for piece in pieces.values() if (piece.label, piece.fabric) == key)
    return max(1, sum(cut.count for cut in cuts if (cut.label, cut.fabric) == key) // each)


def _is_drawn(unit: UnitFacts, topic: Topic) -> bool:
    """Whether the unit lies as its shape is drawn, and not mirrored: two of its roles go round its middle clockwise."""
    roles = SHAPES[unit.shape].turning or None
    if roles is None:
        return True
    middle = unit.finished[0] / 2, unit.finished[1] / 2
    outlines = {topic.drawn[place]: patch.outline for place, patch in enumerate(unit.picture)}
    first, second = (_from(middle, outlines[role]) for role in roles)
    return sign(first[0] * second[1] - first[1] * second[0]) > 0


def _from(middle: tuple[Exact, Exact], outline: Polygon) -> tuple[Exact, Exact]:
    """From the middle of the unit to that of a patch."""
    count = Fraction(1, len(outline))
    x = sum((corner.x for corner in outline), Fraction(0)) * count
    y = sum((corner.y for corner in outline), Fraction(0)) * count
    return x - middle[0], y - middle[1]
