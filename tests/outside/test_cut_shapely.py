"""Shapely as judge: patches cover the block, and the cloth that is cut holds the patches with their allowance.

The allowance is drawn here by shapely's own buffer with mitred corners, not by our offset.
"""

from itertools import combinations, pairwise
from math import atan2, degrees, hypot, sqrt

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import affinity
from shapely.geometry import Point, Polygon, box
from shapely.ops import unary_union

from blockdsl.facts import BlockFacts
from blockdsl.facts.blockfacts import CutFacts
from blockdsl.geometry import to_float
from tests.outside.virtual.cloth import fitted
from tests.outside.virtual.plan import plan_of
from tests.unit.model.any_block import AnyBlock, any_blocks
from tests.unit.model.blocks import block, block_of

NEAR = 1e-7
MORE = 0.01


def finished(outline: object) -> Polygon:
    return Polygon([(to_float(corner.x), to_float(corner.y)) for corner in outline])  # type: ignore[attr-defined]


def with_allowance(patch: Polygon, seam: float) -> Polygon:
    return patch.buffer(seam, join_style="mitre", mitre_limit=100)


# --- cover ---------------------------------------------------------------------------------------


@given(any_blocks())
@settings(max_examples=18)
def test_patches_lie_side_by_side_and_fill_the_block(any_block: AnyBlock) -> None:
    facts = block_of(any_block.text())
    patches = [finished(patch.outline) for patch in facts.placed]
    width, height = (to_float(side) for side in facts.finished)
    assert sum(patch.area for patch in patches) == pytest.approx(width * height)
    assert unary_union(patches).symmetric_difference(box(0, 0, width, height)).area < NEAR


def test_patches_with_roots_lie_side_by_side_and_fill_the_block() -> None:
    lines = (
        "grid 2 x 2",
        "patch fog at 2-r2,0 r2,0 2,2-r2 2,r2 r2,2 2-r2,2 0,r2 0,2-r2",
        "patch slate at 0,0 2-r2,0 0,2-r2",
        "patch slate at r2,0 2,0 2,2-r2",
        "patch slate at 2,r2 2,2 r2,2",
        "patch slate at 0,r2 2-r2,2 0,2",
    )
    patches = [finished(patch.outline) for patch in block(*lines, size="7 in").placed]
    assert unary_union(patches).symmetric_difference(box(0, 0, 7, 7)).area < NEAR
    assert sum(patch.area for patch in patches) == pytest.approx(49)


# --- patches cut by themselves -------------------------------------------------------------------


def laid_straight(piece: Polygon) -> Polygon:
    """Turned so that its longest edge lies along the bottom, from the origin to the right, the piece above it."""
    corners = list(piece.exterior.coords)
    (x, y), (to_x, to_y) = max(pairwise(corners), key=lambda edge: Point(edge[0]).distance(Point(edge[1])))
    length = hypot(to_x - x, to_y - y)
    cos, sin = (to_x - x) / length, (to_y - y) / length
    straight = affinity.affine_transform(piece, [cos, sin, -sin, cos, -(cos * x + sin * y), sin * x - cos * y])
    if straight.bounds[1] < -NEAR:
        straight = affinity.affine_transform(straight, [-1, 0, 0, -1, length, 0])
    return straight


def in_the_square(piece: Polygon, side: float, subcut: str) -> list[Polygon]:
    """Where all triangles of a square lie: long edges along its diagonal, or along its four sides."""
    straight = laid_straight(piece)
    if subcut == "once":
        length = straight.bounds[2] - straight.bounds[0]
        # centred on the diagonal from bottom left to top right, half of it on each side
        slid = affinity.translate(straight, (side * sqrt(2) - length) / 2, 0)
        upper = affinity.rotate(slid, 45, origin=(0, 0))
        return [upper, affinity.rotate(upper, 180, origin=(side / 2, side / 2))]
    centred = affinity.translate(straight, (side - straight.bounds[2]) / 2, 0)
    return [affinity.rotate(centred, 90 * quarter, origin=(side / 2, side / 2)) for quarter in range(4)]


def judge_square(piece: Polygon, side: float, subcut: str) -> None:
    cloth = box(0, 0, side, side).buffer(NEAR)
    pieces = in_the_square(piece, side, subcut)
    assert all(cloth.covers(each) for each in pieces)
    # a hair smaller, since the areas of two triangles along one slanted line are beyond floating point
    assert not any(one.buffer(-NEAR).intersects(other.buffer(-NEAR)) for one, other in combinations(pieces, 2))


def judge_loose(cut: CutFacts, facts: BlockFacts) -> None:
    patch = next(p for p in facts.placed if p.label == cut.label)
    if patch.curved is not None:
        judge_curved(cut, facts)
        return
    piece = with_allowance(finished(patch.outline), to_float(facts.seam))
    one, other = sorted(to_float(side) for side in cut.cut)
    if cut.strip is not None and cut.strip.form != "template":
        judge_strip(cut, piece, facts)
        return
    if cut.subcut != "none" and cut.piece == "rectangle":
        judge_half_rectangle(piece, one, other)
        return
    if cut.subcut != "none":
        judge_square(piece, one, cut.subcut)
        return
    # templates lie along their grain, all others along their own sides
    around = laid_by_grain(piece, cut, facts).envelope if cut.piece == "template" else piece.minimum_rotated_rectangle
    corners = list(around.exterior.coords)
    sides = sorted(Point(corners[place]).distance(Point(corners[place + 1])) for place in (0, 1))
    assert sides[0] <= one + NEAR
    assert sides[1] <= other + NEAR


def judge_curved(cut: CutFacts, facts: BlockFacts) -> None:
    """The template, its arcs in steps, holds its patches with their allowance and lies on the cloth cut for it."""
    plan = plan_of(facts)
    template, seam = plan.templates[cut.label], to_float(facts.seam)
    patches = [patch.shape for patch in plan.placed if patch.label == cut.label]
    assert all(fitted(template.cutting, patch, seam) is not None for patch in patches)
    # one hundredth more all round and it would not hold them
    assert fitted(template.cutting, patches[0], seam + MORE) is None
    grain = 90 - degrees(atan2(template.grain[1], template.grain[0]))
    left, top, right, bottom = affinity.rotate(template.cutting, grain, origin=(0, 0)).bounds
    sides = sorted(to_float(side) for side in cut.cut)
    assert sides[0] >= min(right - left, bottom - top) - NEAR
    assert sides[1] >= max(right - left, bottom - top) - NEAR


@pytest.mark.parametrize("size", ["4 7/8 in", "10 cm"])
@pytest.mark.parametrize(
    "cells",
    [
        "(curve fog in slate)",
        "(curve fog in slate radius 1/2)",
        "(fan fog slate moss on lantern handle moss radius 3/4)",
    ],
)
def test_curved_pieces_are_cut_with_their_allowance_along_arcs_too(size: str, cells: str) -> None:
    facts = block(f"row {cells}", size=size)
    assert any(patch.curved is not None for patch in facts.placed)
    for cut in facts.cutting:
        judge_loose(cut, facts)


def judge_strip(cut: CutFacts, piece: Polygon, facts: BlockFacts) -> None:
    """No wider than the strip, and no larger than what is cut off it; angles are judged in test_angled_shapely."""
    assert cut.strip is not None
    width = to_float(cut.strip.width)
    assert any(height <= width + NEAR for height in heights(piece))
    lengths = [to_float(length) for length in (cut.strip.length, cut.cut[1])]
    assert lengths[0] <= (40 if facts.unit == "in" else 100)
    assert piece.area <= width * lengths[1] + NEAR
    assert piece.area * min(cut.strip.each, cut.count) <= width * lengths[0] + NEAR


def heights(piece: Polygon) -> list[float]:
    """How high the piece is as it stands on each of its edges."""
    return [
        affinity.rotate(piece, -angle, origin=(0, 0)).bounds[3]
        - affinity.rotate(piece, -angle, origin=(0, 0)).bounds[1]
        for angle in (degrees(atan2(y - b, x - a)) for (a, b), (x, y) in pairwise(piece.exterior.coords))
    ]


def judge_half_rectangle(piece: Polygon, short: float, long: float) -> None:
    """The legs of the piece, square corner on square corner, lie within the legs of the half rectangle."""
    legs = sorted(Point(a).distance(Point(b)) for a, b in pairwise(piece.exterior.coords))
    assert legs[0] <= short + NEAR
    assert legs[1] <= long + NEAR
    assert legs[2] == pytest.approx(hypot(legs[0], legs[1]))


def laid_by_grain(piece: Polygon, cut: CutFacts, facts: BlockFacts) -> Polygon:
    """The piece with the grain of its template upright; patches of a letter lie as their template up to a turn."""
    template = next(each for each in facts.templates if each.label == cut.label)
    if cut.upright is not None or cut.outside:
        return piece
    angle = degrees(atan2(to_float(template.grain[1]), to_float(template.grain[0])))
    return affinity.rotate(with_allowance(finished(template.sewing), to_float(facts.seam)), 90 - angle, origin=(0, 0))


@given(any_blocks())
@settings(max_examples=24)
def test_every_piece_holds_its_patches_with_their_allowance(any_block: AnyBlock) -> None:
    facts = block_of(any_block.text())
    for cut in facts.cutting:
        if not cut.unit:
            judge_loose(cut, facts)


@pytest.mark.parametrize("size", ["3 in", "2 7/8 in", "10 cm", "7.3 cm"])
@pytest.mark.parametrize(
    "cells", ["fog/slate", "(hourglass fog slate)", "(split fog slate moss)", "(diamond fog on slate)"]
)
def test_a_square_a_whole_mark_smaller_would_not_hold_them(size: str, cells: str) -> None:
    facts = block(f"row {cells}", size=size)
    for cut in facts.cutting:
        judge_loose(cut, facts)
        if cut.subcut != "none":
            patch = next(p for p in facts.placed if p.label == cut.label)
            piece = with_allowance(finished(patch.outline), to_float(facts.seam))
            with pytest.raises(AssertionError):
                judge_square(piece, to_float(cut.cut[0] - facts.measure), cut.subcut)


# --- batches, sewn on paper ----------------------------------------------------------------------


def halves(one: float, other: float, seam: float) -> float:
    """Side of the two units when two squares are sewn on both sides of a diagonal, cut on it and opened.

    Each half keeps what lies between its square corner and the seam; opened, its legs are the sides of the unit.
    """
    square = min(one, other)
    corner = Polygon([(0, 0), (square, 0), (0, square)])
    # the seam runs beside the diagonal, `seam` away: everything nearer to it is allowance
    kept = corner.difference(Polygon([(square, 0), (0, square), (square, square)]).buffer(seam, join_style="mitre"))
    return float(kept.bounds[2])


SIZES = st.sampled_from(["3 in", "2 1/2 in", "6 in", "4 7/8 in", "10 cm", "7.5 cm"])


def sides(facts: BlockFacts) -> dict[str, float]:
    return {cut.fabric: to_float(cut.cut[0]) for cut in facts.cutting}


def judge_unit(sewn: float, facts: BlockFacts, marks: float = 1) -> None:
    """Large enough for the unfinished unit, and no larger than the ruler's rounding makes it."""
    wanted = to_float(facts.units[0].unfinished[0])
    assert wanted - NEAR <= sewn < wanted + marks * to_float(facts.measure)


@given(SIZES)
def test_halves_two_at_a_time_open_to_the_unfinished_unit(size: str) -> None:
    facts = block("row fog/slate", "make half as two at a time", size=size)
    cut = sides(facts)
    judge_unit(halves(cut["fog"], cut["slate"], to_float(facts.seam)), facts)


@given(SIZES)
def test_halves_eight_at_a_time_open_to_the_unfinished_unit(size: str) -> None:
    facts = block("row fog/slate", "make half as eight at a time", size=size)
    cut = sides(facts)
    judge_unit(halves(cut["fog"] / 2, cut["slate"] / 2, to_float(facts.seam)), facts)


@given(SIZES)
def test_hourglasses_two_at_a_time_open_to_the_unfinished_unit(size: str) -> None:
    facts = block("row (hourglass fog slate)", "make hourglass as two at a time", size=size)
    cut, seam = sides(facts), to_float(facts.seam)
    half = halves(cut["fog"], cut["slate"], seam)
    judge_unit(halves(half, half, seam), facts)


@given(SIZES)
def test_split_squares_two_at_a_time_open_to_the_unfinished_unit(size: str) -> None:
    facts = block("row (split fog slate moss)", "make split as two at a time", size=size)
    cut, seam = sides(facts), to_float(facts.seam)
    judge_unit(halves(cut["fog"], halves(cut["slate"], cut["moss"], seam), seam), facts)


@given(SIZES, st.sampled_from(["1/8 in", "1/4 in"]))
def test_trim_leaves_at_least_that_much_to_cut_off(size: str, trim: str) -> None:
    if size.endswith("cm"):
        trim = "3 mm"
    facts = block("row fog/slate", "make half as two at a time", f"trim {trim}", size=size)
    cut = sides(facts)
    extra = {"1/8 in": 0.125, "1/4 in": 0.25, "3 mm": 0.3}[trim]
    judge_unit(halves(cut["fog"], cut["slate"], to_float(facts.seam)) - extra, facts)


@given(st.sampled_from(["6 x 3 in", "5 x 2 1/2 in", "4 1/4 x 2 1/8 in", "20 x 10 cm", "15 x 7.5 cm"]))
def test_geese_four_at_a_time_find_room_in_their_squares(size: str) -> None:
    facts = block("row (geese lantern on fog)", "make geese as four at a time", size=size)
    cut, seam = sides(facts), to_float(facts.seam)
    for patch in facts.placed:
        piece = with_allowance(finished(patch.outline), seam)
        judge_square(piece, cut[patch.fabric], "twice" if patch.fabric == "lantern" else "once")
