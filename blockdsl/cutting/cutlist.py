"""The cut list of a block: every piece of cloth, how many, and what becomes of it."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from math import ceil
from typing import Annotated, Literal

from msgspec import Meta, Struct
from msgspec.structs import replace

from blockdsl.analysis.letters import Lettered, letter_patches
from blockdsl.cutting.angled import Slant
from blockdsl.cutting.applique import applique_pieces
from blockdsl.cutting.foundation import RoomyPiece, roomy_piece
from blockdsl.cutting.grain import GrainPlan, at_origin, plan_grain
from blockdsl.cutting.sizes import (
    Extent,
    rectangle_for,
    round_corner,
    round_up,
    square_for_half_square_triangle,
    square_for_quarter_square_triangle,
)
from blockdsl.cutting.strip_sets import cut_sets
from blockdsl.cutting.strips import StripCut, cut_from_strips, usable_width
from blockdsl.cutting.upright import upright_pieces
from blockdsl.cutting.ways import Piece, Subcut, Way, ways_to_cut
from blockdsl.diagnostics import Problems
from blockdsl.geometry import Exact, Polygon, ceil_to
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import Point, bounding_box, clockwise, drop_straight_corners
from blockdsl.geometry.turning import turn_between
from blockdsl.model import BlockDesign, Patch
from blockdsl.model.lengths import write_size
from blockdsl.record import Count, Letter, Name, Record, Rest, says
from blockdsl.sewing import Making, NeededPart
from blockdsl.sewing.methods import CUT_PATCHES, FOUNDATION

Share = tuple[tuple[int, ...], int]
"""Places of units in the making's list, two where mirror images come of one batch, and how many pieces are for them."""
TRIANGLES = {"once": 2, "twice": 4}


class CutPiece(Record, frozen=True):
    """Pieces of one size."""

    fabric: Name
    label: Letter
    piece: Piece
    cut: Annotated[
        tuple[Fraction, Fraction],
        says(
            "What the ruler reads, the shorter side first; of a piece from a strip the width of the strip and the "
            "length of it that one piece takes alone."
        ),
    ]
    exact: Annotated[Extent, says("The size before rounding up.")]
    count: Count
    subcut: Subcut


class Cut(CutPiece, frozen=True):
    """One line of the cutting list."""

    yields: Annotated[Count, says("How many patches all the pieces give; for the methods, how many units they serve.")]
    spare: Annotated[Rest, says("How many of those are left over.")]
    method: Annotated[Name, says("The way of making that the pieces are for.")]
    unit: Annotated[str, says("The unit that they are for; empty for patches that are cut by themselves.")] = ""
    shares: Annotated[
        tuple[Share, ...],
        says(
            "How many of the pieces are for which units, by their places in the list of units: for two of them where "
            "mirror images come of one batch."
        ),
    ] = ()
    strip: Annotated[StripCut | None, says("How it comes out of strips across the fabric, if it does.")] = None
    slant: Annotated[
        Slant | None,
        says("Of a cut corner to corner where it matters: the piece stands on its shorter side, the right side up."),
    ] = None
    upright_side: Annotated[
        Literal[0, 1] | None,
        says("Which side of `cut` runs up the print of a directional fabric; null where either may."),
    ] = None
    print_up: Annotated[
        Point | None,
        says(
            "Of a piece by template from a directional fabric: where its print runs up on the template, as a step "
            "(x, y) with y downward."
        ),
    ] = None
    outside: Annotated[
        bool, says("For patches at the edge of the block alone, cut so that their outer edge is straight.")
    ] = False
    corner: Annotated[
        Fraction | None,
        says("How far from each corner the four corners of an octagon are cut off at 45°; null for other pieces."),
    ] = None
    areas: Annotated[
        tuple[Annotated[str, Meta(pattern="^[A-Z]+[0-9]+$")], ...],
        says("The areas of foundation papers that the pieces are for, by their numbers; none for other pieces."),
    ] = ()

    @property
    def cloth(self) -> Exact:
        """The cloth that the pieces take, without what is left of strips."""
        if self.strip is not None and self.strip.form != "template":
            return self.count * self.strip.width * self.strip.length / min(self.strip.each, self.count)
        return self.count * self.cut[0] * self.cut[1]


def cut_list(
    design: BlockDesign, making: Making, lettered: Lettered, copies: int = 1, grain: GrainPlan | None = None
) -> tuple[Cut, ...]:
    """All pieces by fabric, then by patch: patches cut by themselves first, then what the methods ask for.

    `copies` are those that the making has been planned for; `grain` saves planning anew which way patches are cut.
    """
    cuts = [
        *_loose_cuts(design, making, lettered, copies, grain),
        *_part_cuts(design, making, lettered),
        *_foundation_cuts(design, making, lettered),
        *_applique_cuts(design, lettered, copies),
    ]
    return in_order(_merge(cuts), design)


def in_order(cuts: Iterable[Cut], design: BlockDesign) -> tuple[Cut, ...]:
    """By fabric, large before small."""
    order = {fabric.name: place for place, fabric in enumerate(design.fabrics)}
    return tuple(
        sorted(cuts, key=lambda cut: (order[cut.fabric], -cut.cut[1], -cut.cut[0], cut.label, cut.unit, cut.method))
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
        key = (*_look(cut), cut.unit, cut.method)
        before = merged.get(key)
        if before is None:
            merged[key] = cut
        else:
            count, yields, spare = before.count + cut.count, before.yields + cut.yields, before.spare + cut.spare
            strip = before.strip
            if strip is not None and cut.strip is not None:
                length = max(strip.length, cut.strip.length)
                strip = replace(strip, strips=strip.strips + cut.strip.strips, length=length)
            shares = before.shares + cut.shares
            merged[key] = replace(before, count=count, yields=yields, spare=spare, shares=shares, strip=strip)
    return list(merged.values())


def _merge_parts(cuts: Sequence[Cut]) -> Iterable[Cut]:
    """Lines that are for the very same units; those for patches by themselves are left as they are."""
    merged: dict[tuple[object, ...], Cut] = {}
    for number, cut in enumerate(cuts):
        hands = [hands for hands, _ in cut.shares]
        key = (*_look(cut), cut.unit, cut.method, *(hands or [(number,)]))
        before = merged.get(key)
        if before is None:
            merged[key] = cut
        else:
            adds = cut.piece == "strip" or cut.method == FOUNDATION
            count, yields = before.count + cut.count, before.yields + (cut.yields if adds else 0)
            merged[key] = replace(before, count=count, yields=yields, shares=tuple((each, count) for each in hands))
    return merged.values()


def _look(cut: Cut) -> tuple[object, ...]:
    strip = cut.strip and (cut.strip.form, cut.strip.slant)
    lies = cut.slant, cut.upright_side, cut.print_up, cut.outside
    return cut.fabric, cut.label, cut.piece, cut.cut, cut.subcut, *lies, strip


# --- patches cut by themselves -------------------------------------------------------------------


class PieceUse(Struct, frozen=True):
    """`count` patches of one letter and fabric that are cut alike; `standing` is the first of those that stand upright.

    `pieces` are to be cut where that is more than the sub-cuts ask for; `outside` and `upright` are as in `Cut`.
    """

    fabric: str
    label: str
    way: Way
    count: int
    outside: bool = False
    pieces: int | None = None
    upright: Literal[0, 1] | None = None
    standing: Patch | None = None


def loose_uses(
    design: BlockDesign, loose: Iterable[int], lettered: Lettered, copies: int, grain: GrainPlan
) -> list[PieceUse]:
    """What these patches are cut as, each by itself."""
    upright = {fabric.name for fabric in design.fabrics if fabric.directional}
    needed: dict[tuple[str, str, Way | None], int] = {}
    standing: dict[tuple[str, str], list[Patch]] = {}
    for index in loose:
        patch, label = design.patches[index], lettered.letters[index]
        if patch.fabric in upright:
            standing.setdefault((patch.fabric, label), []).append(patch)
        else:
            key = (patch.fabric, label, grain.exceptions.get(index))
            needed[key] = needed.get(key, 0) + copies
    return [
        *(
            PieceUse(fabric, label, way or grain.ways[label], count, outside=way is not None)
            for (fabric, label, way), count in needed.items()
        ),
        *(
            PieceUse(
                fabric, label, each.way, each.count * copies, upright=each.upright, standing=each.patch,
                pieces=each.pieces * copies if each.way.subcut != "none" else None,
            )
            for (fabric, label), patches in standing.items()
            for each in upright_pieces(patches, design.seam)
        ),
    ]  # fmt: skip


def cut_use(use: PieceUse, design: BlockDesign) -> Cut:
    """The cloth for it."""
    cut = cut_way(use.fabric, use.label, use.way, use.count, design, use.pieces)
    return replace(cut, outside=use.outside, upright_side=use.upright)


def _loose_cuts(
    design: BlockDesign, making: Making, lettered: Lettered, copies: int, grain: GrainPlan | None
) -> list[Cut]:
    if not making.loose:
        return []
    cuts = []
    for use in loose_uses(design, making.loose, lettered, copies, grain or plan_grain(design, lettered)):
        cut = cut_use(use, design)
        if use.standing is not None and cut.piece == "template":
            cut = replace(cut, print_up=_print_up(use.label, use.standing, lettered))
        cuts.append(cut)
    return cuts


def _print_up(label: str, patch: Patch, lettered: Lettered) -> Point | None:
    """Where the print runs up on the letter's template, which is drawn as the first patch of the letter lies."""
    if patch.curved is not None:
        turn = turn_between(lettered.curved[label], patch.curved)
    else:
        first, here = (clockwise(drop_straight_corners(each)) for each in (lettered.first[label], patch.outline))
        turn = turn_between(first, here)
    if turn is None:
        return None
    cosine, sine = turn
    return Point(-sine, -cosine)


def cut_patches(fabric: str, label: str, patch: Polygon, count: int, design: BlockDesign) -> Cut:
    """The cloth for `count` patches of one letter, each cut by itself in the usual way."""
    return cut_way(fabric, label, ways_to_cut(at_origin(patch), design.seam)[0], count, design)


def cut_way(fabric: str, label: str, way: Way, count: int, design: BlockDesign, pieces: int | None = None) -> Cut:
    """The cloth for `count` patches cut in a certain way; `pieces` when more are cut than the sub-cuts ask for."""
    each = TRIANGLES.get(way.subcut, 1)
    pieces = ceil(count / each) if pieces is None else pieces
    cut, strip, exact = round_up(way.exact, design.measure), None, way.exact
    if way.strip is not None:
        found = cut_from_strips(way.strip, count, fabric, design)
        if found is not None:
            strip, real = found
            cut = (strip.width, ceil_to(real.run, design.measure))
    made = pieces * each
    corner = None if way.corner is None else round_corner(way.corner, exact, cut, design.measure)
    piece: Piece = "template" if way.piece == "octagon" and not corner else way.piece
    return Cut(
        fabric, label, piece, cut, exact, pieces, way.subcut, made, made - count, CUT_PATCHES, "",
        strip=strip, slant=way.slant, corner=corner or None,
    )  # fmt: skip


# --- what the methods ask for --------------------------------------------------------------------


def _part_cuts(design: BlockDesign, making: Making, lettered: Lettered) -> list[Cut]:
    cuts: list[Cut] = []
    places = {unit.group.key: place for place, unit in enumerate(making.units)}
    for needed in making.parts:
        label = lettered.letters[needed.becomes]
        hands = tuple(places[key] for key in needed.made_for if key in places)
        strips = needed.part.segments > 0
        found = _strip_cuts(needed, label, design) if strips else [_square_cut(needed, label, design)]
        cuts.extend(replace(cut, shares=((hands, cut.count),)) for cut in found)
    return cuts


def _strip_cuts(needed: NeededPart, label: str, design: BlockDesign) -> list[Cut]:
    fabric, method, unit = needed.part.fabric, needed.method, needed.unit
    return [
        Cut(
            fabric, label, "strip", found.size, found.exact, found.sets * needed.count, "none",
            found.sets * found.segments, 0, method, unit,
        )
        for found in cut_sets(needed, design)
    ]  # fmt: skip


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
    """A line for the pieces of a unit that are cut alike, as often as the unit and its mirror image are made.

    Two triangles come of a square, whichever of the units they are for.
    """
    needed: dict[tuple[object, ...], list[tuple[RoomyPiece, str, tuple[int, ...], int]]] = {}
    names: dict[tuple[object, ...], tuple[str, str, str]] = {}
    for plan in making.foundations:
        group, first = plan.group, plan.group.places[0].first
        unit = group.name or (group.filling.shape if group.filling else "unit")
        hands = tuple(place for place, made in enumerate(making.units) if made.group.key == group.key)
        sewn_on = ((f"{each.letter}{n}", sewn) for each in plan.sections for n, sewn in enumerate(each.patches, 1))
        for number, sewn in sewn_on:
            patch = group.picture[sewn.index]
            piece = roomy_piece(patch.outline, sewn.seam, patch.fabric, design)
            name = patch.fabric, lettered.letters[first + sewn.index], unit
            key = *name, piece.cut, piece.subcut
            names[key] = name
            needed.setdefault(key, []).append((piece, number, hands, len(group.places)))
    return [_foundation_cut(*names[key], uses) for key, uses in needed.items()]


def _foundation_cut(
    fabric: str, label: str, unit: str, uses: Sequence[tuple[RoomyPiece, str, tuple[int, ...], int]]
) -> Cut:
    """The line for areas whose pieces are cut alike: of each its piece, its number, its units and how many of them."""
    piece = max((use[0] for use in uses), key=lambda each: each.exact)
    each = TRIANGLES.get(piece.subcut, 1)
    wanted: dict[tuple[int, ...], int] = {}
    for _, _, hands, count in uses:
        wanted[hands] = wanted.get(hands, 0) + count
    shares: list[Share] = []
    pieces = total = 0
    for hands, count in wanted.items():
        total += count
        more = ceil(total / each) - pieces
        shares.append((hands, more))
        pieces += more
    kind: Piece = "square" if piece.cut[0] == piece.cut[1] else "rectangle"
    yields, spare = pieces * each, pieces * each - total
    return Cut(
        fabric, label, kind, piece.cut, piece.exact, pieces, piece.subcut, yields, spare, FOUNDATION, unit,
        tuple(shares), areas=tuple(use[1] for use in uses),
    )  # fmt: skip


# --- what is sewn onto the pieced ground -----------------------------------------------------------


def _applique_cuts(design: BlockDesign, lettered: Lettered, copies: int) -> list[Cut]:
    """A line for each letter and fabric: by template, in the box of cloth that holds it with what is turned under."""
    cuts: list[Cut] = []
    for piece in applique_pieces(design, lettered):
        left, top, right, bottom = bounding_box(piece.template.cutting)
        shorter, longer = sorted((right - left, bottom - top))
        cut = round_up((shorter, longer), design.measure)
        for fabric, each in piece.uses:
            count = each * copies
            exact = (shorter, longer)
            cuts.append(Cut(fabric, piece.label, "template", cut, exact, count, "none", count, 0, CUT_PATCHES, ""))
    return cuts


class BlockCuts(Struct, frozen=True):
    """A block with its making, the letters of its patches, the way each is cut, and the cut list of one copy."""

    design: BlockDesign
    making: Making
    lettered: Lettered
    grain: GrainPlan
    cuts: tuple[Cut, ...]


def cut_block(design: BlockDesign, making: Making) -> BlockCuts:
    """All that is cut for one copy of a block that is made so."""
    lettered = letter_patches(design.patches)
    grain = plan_grain(design, lettered)
    return BlockCuts(design, making, lettered, grain, cut_list(design, making, lettered, grain=grain))
