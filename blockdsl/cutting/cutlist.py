"""The cut list of a block: every piece of cloth, how many, and what becomes of it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from math import ceil
from typing import Literal

from blockdsl.analysis.letters import Lettered
from blockdsl.cutting.foundation import generous_piece
from blockdsl.cutting.sizes import (
    Extent,
    box_for,
    rectangle_for,
    round_up,
    square_for_half_square_triangle,
    square_for_quarter_square_triangle,
)
from blockdsl.cutting.strips import cut_strips, usable_width
from blockdsl.diagnostics import Problems
from blockdsl.geometry import Polygon
from blockdsl.geometry.polygon import bounding_box, translate
from blockdsl.geometry.recognise import recognise
from blockdsl.model import BlockDesign
from blockdsl.model.lengths import write_size
from blockdsl.sewing import Making, NeededPart
from blockdsl.sewing.methods import CUT_PATCHES, FOUNDATION

Piece = Literal["square", "rectangle", "strip", "triangle", "template"]
Subcut = Literal["none", "once", "twice"]
Share = tuple[tuple[int, ...], int]
"""Places of units in the making's list, two where mirror images come of one batch, and how many pieces are for them."""
TRIANGLES = {"once": 2, "twice": 4}


@dataclass(frozen=True, slots=True)
class Cut:
    """`count` pieces of one size. `yields`: what they give in all, `spare` of it not needed.

    `method` and `unit` say what for; `unit` is empty for patches that are cut by themselves. `shares` say how
    many of the pieces are for which units.
    """

    fabric: str
    label: str
    piece: Piece
    cut: tuple[Fraction, Fraction]
    exact: Extent
    count: int
    subcut: Subcut
    yields: int
    spare: int
    method: str
    unit: str
    shares: tuple[Share, ...] = ()


def cut_list(design: BlockDesign, making: Making, lettered: Lettered) -> tuple[Cut, ...]:
    """All pieces by fabric, then by patch: patches cut by themselves first, then what the methods ask for."""
    cuts = [
        *_loose_cuts(design, making, lettered),
        *_part_cuts(design, making, lettered),
        *_foundation_cuts(design, making, lettered),
    ]
    order = {fabric.name: place for place, fabric in enumerate(design.fabrics)}
    merged = _merge(cuts)
    return tuple(
        sorted(merged, key=lambda cut: (order[cut.fabric], -cut.cut[1], -cut.cut[0], cut.label, cut.unit, cut.method))
    )


def report_pieces_wider_than_fabric(design: BlockDesign, cuts: Sequence[Cut], problems: Problems) -> None:
    """Warn of the first piece that no width of its fabric holds; the block is too large for all of them then."""
    for cut in cuts:
        across = max(cut.cut) if cut.piece == "strip" and cut.cut[1] > cut.cut[0] else min(cut.cut)
        width = usable_width(cut.fabric, design)
        if across > width:
            problems.report(
                "piece-wider-than-fabric",
                design.span,
                piece=f"a {cut.piece} of {write_size(*cut.cut, design.unit)}",
                name=cut.fabric,
                width=write_size(width, width, design.unit),
                help="make the block smaller, give the fabric its `width`, or join two widths before you cut",
            )
            return


def _merge(cuts: Sequence[Cut]) -> list[Cut]:
    """Lines that say the same piece for the same purpose become one line.

    Two parts of the same units (a square and one flipped onto it) make no more units than either; strip sets that are
    cut alike do give more segments, and so do units of another kind that are made in the same way.
    """
    merged: dict[tuple[object, ...], Cut] = {}
    for cut in _merge_parts(cuts):
        key = (cut.fabric, cut.label, cut.piece, cut.cut, cut.subcut, cut.unit, cut.method)
        before = merged.get(key)
        if before is None:
            merged[key] = cut
        else:
            count, yields, spare = before.count + cut.count, before.yields + cut.yields, before.spare + cut.spare
            merged[key] = replace(before, count=count, yields=yields, spare=spare, shares=before.shares + cut.shares)
    return list(merged.values())


def _merge_parts(cuts: Sequence[Cut]) -> Iterable[Cut]:
    """Lines that are for the very same units."""
    merged: dict[tuple[object, ...], Cut] = {}
    for cut in cuts:
        hands = [hands for hands, _ in cut.shares]
        key = (cut.fabric, cut.label, cut.piece, cut.cut, cut.subcut, cut.unit, cut.method, *hands)
        before = merged.get(key)
        if before is None:
            merged[key] = cut
        else:
            adds = cut.piece == "strip" or cut.method == FOUNDATION
            count, yields = before.count + cut.count, before.yields + (cut.yields if adds else 0)
            merged[key] = replace(before, count=count, yields=yields, shares=tuple((each, count) for each in hands))
    return merged.values()


# --- patches cut by themselves -------------------------------------------------------------------


def _loose_cuts(design: BlockDesign, making: Making, lettered: Lettered) -> list[Cut]:
    needed: dict[tuple[str, str], int] = {}
    for index in making.loose:
        key = (design.patches[index].fabric, lettered.letters[index])
        needed[key] = needed.get(key, 0) + 1
    return [
        cut_patches(fabric, label, _at_origin(lettered.first[label]), count, design)
        for (fabric, label), count in needed.items()
    ]


def _at_origin(patch: Polygon) -> Polygon:
    left, top, _, _ = bounding_box(patch)
    return translate(patch, -left, -top)


def cut_patches(fabric: str, label: str, patch: Polygon, count: int, design: BlockDesign) -> Cut:
    """The cloth for `count` patches of one letter, each cut by itself."""
    piece, exact, subcut = piece_for(patch, design.seam)
    squares = ceil(count / TRIANGLES[subcut]) if subcut != "none" else count
    yields = squares * TRIANGLES.get(subcut, 1)
    cut = round_up(exact, design.measure)
    return Cut(fabric, label, piece, cut, exact, squares, subcut, yields, yields - count, CUT_PATCHES, "")


def piece_for(patch: Polygon, allowance: Fraction) -> tuple[Piece, Extent, Subcut]:
    """What to cut for one patch: a square to be cut corner to corner, a rectangle, or by template."""
    match recognise(patch).kind:
        case "square" | "rectangle":
            exact = rectangle_for(patch, allowance)
            shorter, longer = sorted(exact)
            return ("square" if shorter == longer else "rectangle"), (shorter, longer), "none"
        case "half-square triangle":
            side = square_for_half_square_triangle(patch, allowance)
            return "square", (side, side), "once"
        case "quarter-square triangle":
            side = square_for_quarter_square_triangle(patch, allowance)
            return "square", (side, side), "twice"
        case _:
            return "template", box_for(patch, allowance), "none"


# --- what the methods ask for --------------------------------------------------------------------


def _part_cuts(design: BlockDesign, making: Making, lettered: Lettered) -> list[Cut]:
    cuts: list[Cut] = []
    places = {unit.group.key: place for place, unit in enumerate(making.units)}
    for needed in making.parts:
        label = lettered.letters[needed.becomes]
        hands = tuple(places[key] for key in needed.made_for if key in places)
        strips = needed.part.cut_as == "strip"
        found = _strip_cuts(needed, label, design) if strips else [_square_cut(needed, label, design)]
        cuts.extend(replace(cut, shares=((hands, cut.count),)) for cut in found)
    return cuts


def _strip_cuts(needed: NeededPart, label: str, design: BlockDesign) -> list[Cut]:
    fabric, method, unit = needed.part.fabric, needed.method, needed.unit
    return [
        Cut(fabric, label, "strip", size, exact, count, "none", segments, 0, method, unit)
        for size, exact, count, segments in cut_strips(needed, design)
    ]


def _square_cut(needed: NeededPart, label: str, design: BlockDesign) -> Cut:
    part = needed.part
    match part.cut_as:
        case "half square":
            side = square_for_half_square_triangle(part.patch, design.seam)
        case "doubled half square":
            side = 2 * square_for_half_square_triangle(part.patch, design.seam)
        case "quarter square":
            side = square_for_quarter_square_triangle(part.patch, design.seam)
        case _:
            shorter, longer = sorted(rectangle_for(part.patch, design.seam))
            return _cut_of(needed, label, (shorter, longer), design)
    return _cut_of(needed, label, (side, side), design)


def _cut_of(needed: NeededPart, label: str, exact: Extent, design: BlockDesign) -> Cut:
    cut = round_up(exact, design.measure)
    piece: Piece = "square" if cut[0] == cut[1] else "rectangle"
    yields = needed.units + needed.spare
    count, spare, fabric = needed.count, needed.spare, needed.part.fabric
    return Cut(fabric, label, piece, cut, exact, count, "none", yields, spare, needed.method, needed.unit)


# --- what is sewn to papers ----------------------------------------------------------------------


def _foundation_cuts(design: BlockDesign, making: Making, lettered: Lettered) -> list[Cut]:
    """A line for each patch of a unit, those alike together, as often as the unit is made."""
    cuts: list[Cut] = []
    for plan in making.foundations:
        group, first, units = plan.group, plan.group.places[0].first, len(plan.group.places)
        unit = group.name or (group.filling.shape if group.filling else "unit")
        hands = tuple(place for place, made in enumerate(making.units) if made.group.key == group.key)
        counted = Counter(
            (patch.fabric, lettered.letters[first + index], generous_piece(patch.outline, design))
            for index, patch in enumerate(group.picture)
        )
        for (fabric, label, (cut, exact)), each in counted.items():
            piece: Piece = "square" if cut[0] == cut[1] else "rectangle"
            count = each * units
            shares = ((hands, count),)
            cuts.append(Cut(fabric, label, piece, cut, exact, count, "none", units, 0, FOUNDATION, unit, shares))
    return cuts
