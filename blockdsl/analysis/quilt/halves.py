"""Half a block, for the ends of columns: its patches cut along a straight line, its units kept where they are whole."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import accumulate, pairwise
from typing import Final, Literal

from msgspec.structs import replace

from blockdsl.geometry import Point
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.halves import Edge, kept_of
from blockdsl.model import BlockDesign, Choice, Patch, UnitPlace

Side = Literal["upper", "lower", "left", "right"]
ZERO: Final = Fraction(0)
_TOWARDS: Final[dict[Side, Point]] = {
    "upper": Point(ZERO, Fraction(-1)),
    "lower": Point(ZERO, Fraction(1)),
    "left": Point(Fraction(-1), ZERO),
    "right": Point(Fraction(1), ZERO),
}


def side_towards(direction: Point) -> Side:
    """The side of a block that lies in a direction along its edges."""
    return next(side for side, towards in _TOWARDS.items() if towards == direction)


def can_be_halved(design: BlockDesign, side: Side, depth: Fraction) -> bool:
    """Whether the line of the cut goes through straight-sided patches only, and through nothing laid on them."""
    edge = _edge(design, side, depth)
    whole = [patch.outline for patch in design.patches if patch.curved is not None]
    whole += [piece.outline for piece in design.appliques]
    return not any(
        min(depths) < 0 < max(depths) for depths in ([edge.depth(corner) for corner in outline] for outline in whole)
    )


def half_of(design: BlockDesign, side: Side, depth: Fraction) -> BlockDesign:
    """The part of a block that is `depth` deep, counted from one side, as a design of its own at the origin.

    Units that the cut goes through are sewn patch by patch. Colour plans stay; what the designer has to say of
    the whole block does not.
    """
    edge = _edge(design, side, depth)
    width, height = (design.width, depth) if side in ("upper", "lower") else (depth, design.height)
    left = design.width - width if side == "right" else ZERO
    top = design.height - height if side == "lower" else ZERO
    patches: list[Patch] = []
    starts = [0]
    whole: list[bool] = []
    for patch in design.patches:
        pieces = _cut(patch, edge)
        whole.append(len(pieces) == 1 and pieces[0] is patch)
        patches += [piece.moved(-left, -top) for piece in pieces]
        starts.append(len(patches))
    units = tuple(
        replace(unit, x=unit.x - left, y=unit.y - top, first=starts[unit.first], stop=starts[unit.stop])
        for unit in design.units
        if all(whole[unit.first : unit.stop])
    )
    laid_on = tuple(
        piece.moved(-left, -top)
        for piece in design.appliques
        if all(edge.depth(corner) >= 0 for corner in piece.outline)
    )
    used = {patch.fabric for patch in patches} | {piece.fabric for piece in laid_on}
    return replace(
        design,
        name=f"{design.name}, {side} {'half' if 2 * depth == _extent(design, side) else 'part'}",
        width=width,
        height=height,
        columns=tuple(_lines_between(design.columns, left, left + width)),
        heights=tuple(_lines_between(design.heights, top, top + height)),
        cover_area=width * height,
        fabrics=tuple(fabric for fabric in design.fabrics if fabric.name in used),
        patches=tuple(patches),
        units=units,
        appliques=laid_on,
        choices=tuple(_choices_for(design.choices, units)),
        trim=design.trim if design.trim and _choices_for(design.choices, units) else ZERO,
        notes=(),
        grains=(),
        sizes=(),
        compares_methods=False,
    )


def _extent(design: BlockDesign, side: Side) -> Fraction:
    return design.height if side in ("upper", "lower") else design.width


def _edge(design: BlockDesign, side: Side, depth: Fraction) -> Edge:
    whole = _extent(design, side)
    return Edge(_TOWARDS[side], whole - depth if side in ("lower", "right") else -depth)


def _cut(patch: Patch, edge: Edge) -> list[Patch]:
    if all(edge.depth(corner) >= 0 for corner in patch.outline):
        return [patch]
    return [Patch(patch.fabric, piece, span=patch.span) for piece in kept_of(patch.outline, edge)]


def _lines_between(steps: Sequence[Fraction], start: Fraction, stop: Fraction) -> Iterator[Fraction]:
    """The steps of grid lines that lie between two places, the first and the last cut short."""
    for before, after in pairwise((ZERO, *accumulate(steps))):
        if min(after, stop) > max(before, start):
            yield min(after, stop) - max(before, start)


def _choices_for(choices: Sequence[Choice], units: Sequence[UnitPlace]) -> list[Choice]:
    """The ways of making that still have something to make."""
    names = {unit.name for unit in units} | {unit.filling.shape for unit in units if unit.filling}
    return [choice for choice in choices if choice.what in names]
