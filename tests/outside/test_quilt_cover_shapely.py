"""Every setting covers its quilt with no gap and no overlap, and half blocks are halves: Shapely is the judge."""

from itertools import pairwise

import pytest
from shapely import STRtree
from shapely.geometry import Polygon as Shape
from shapely.geometry import box
from shapely.ops import unary_union

from blockdsl.analysis.quilt.halves import Side, half_of
from blockdsl.geometry import Polygon
from blockdsl.geometry.fraction import Fraction as F  # noqa: N817 - they stand in tables of sizes
from blockdsl.geometry.halves import Edge, kept_of
from blockdsl.geometry.polygon import Point, area, clockwise, is_simple
from tests.unit.model.quilts import covered, design, outline_of

SETTINGS = {
    "straight": ['set straight 3 x 4 of "Pin"', "alternate fog"],
    "sashed": ['set straight 3 x 4 of "Pin"', "sash 1 1/2 in slate posts lantern outer"],
    "strips between rows": ['set straight 3 x 2 of "Wide"', "sash 1 in slate", "border 2 in fog mitred"],
    "dropped": ['set dropped columns 4 x 3 of "Pin"', "turn > on every second"],
    "dropped and sashed": ['set dropped columns 3 x 4 of "Wide"', "fill fog", "sash 1 in slate posts moss outer"],
    "dropped, strips": ['set dropped columns 3 x 4 of "Pin"', "sash 3/4 in slate", "border 1 in fog top first"],
    "strippy": ['set strippy 3 x 5 of "Pin"', "sash 2 in slate outer"],
    "on point": ['set on point 3 x 4 of "Pin"', "fill fog", "border 2 in slate corners moss"],
    "on point, alternate": ['set on point 4 x 2 of "Pin"', "alternate slate", "border 1 in fog mitred"],
    "on point, sashed": ['set on point 3 x 2 of "Pin"', "fill fog", "sash 1 in slate posts moss"],
    "one on point": ['set medallion on point of "Pin"', "fill fog", "round 2 in slate"],
    "rounds": ['set medallion of "Pin"', 'round "Four"', "round 3 in pieced beam", "border 1 1/2 in slate mitred"],
    "pieced": ['set straight 3 x 4 of "Pin"', "border 3 in pieced beam corners fog", "border 3 in pieced beam>"],
    "rows": ['row "Pin" fog', 'row fog "Pin"~'],
}


def shape(outline: Polygon) -> Shape:
    return Shape([(float(corner.x), float(corner.y)) for corner in outline])


@pytest.mark.parametrize("name", SETTINGS)
def test_blocks_and_cloth_cover_the_quilt_with_no_gap_and_no_overlap(name: str) -> None:
    laid = design(*SETTINGS[name])
    assert covered(laid) == laid.width * laid.height
    parts = [shape(outline_of(laid, place)) for place in range(len(laid.blocks))]
    parts += [shape(cloth.outline) for cloth in laid.cloth]
    assert all(part.is_valid and part.exterior.is_ccw for part in parts)  # y runs down: clockwise on the page
    whole = box(0, 0, float(laid.width), float(laid.height))
    assert unary_union(parts).symmetric_difference(whole.buffer(0)).area < 1e-6
    tree = STRtree(parts)
    for i, j in zip(*tree.query(parts, predicate="intersects"), strict=True):
        assert i == j or parts[i].intersection(parts[j]).area < 1e-9


@pytest.mark.parametrize("name", SETTINGS)
def test_every_block_and_piece_is_in_one_row_or_in_a_border_or_is_a_corner(name: str) -> None:
    laid = design(*SETTINGS[name])
    seen = [(member.what, member.index) for row in laid.rows for member in row.members]
    assert len(seen) == len(set(seen))
    inside = {("block", place) for place, block in enumerate(laid.blocks) if not block.ring}
    inside |= {
        ("cloth", place) for place, cloth in enumerate(laid.cloth) if not cloth.ring and cloth.role != "corner triangle"
    }
    assert set(seen) == inside


@pytest.mark.parametrize("name", SETTINGS)
def test_rows_sewn_end_to_end_touch_one_another_in_order(name: str) -> None:
    laid = design(*SETTINGS[name])
    for row in laid.rows:
        outlines = [
            shape(outline_of(laid, each.index) if each.what == "block" else laid.cloth[each.index].outline)
            for each in row.members
        ]
        for one, other in pairwise(outlines):
            assert one.intersection(other).length > 0.1


HALF_PLANES: list[tuple[Side, F]] = [("upper", F(5, 2)), ("lower", F(3)), ("left", F(1)), ("right", F(4))]


@pytest.mark.parametrize(("side", "depth"), HALF_PLANES)
@pytest.mark.parametrize("name", ["Pin", "Chain", "Four"])
def test_a_part_of_a_block_is_what_a_straight_cut_leaves_of_each_patch(name: str, side: Side, depth: F) -> None:
    whole = design(f'set straight 1 x 1 of "{name}"').kinds[0].design
    part = half_of(whole, side, depth)
    kept = {
        "upper": box(0, 0, 6, float(depth)),
        "lower": box(0, 6 - float(depth), 6, 6),
        "left": box(0, 0, float(depth), 6),
        "right": box(6 - float(depth), 0, 6, 6),
    }[side]
    left, top, _, _ = kept.bounds
    for fabric in ("fog", "slate"):
        ours = unary_union([shape(patch.outline) for patch in part.patches if patch.fabric == fabric])
        cloth = unary_union([shape(patch.outline) for patch in whole.patches if patch.fabric == fabric])
        theirs = Shape(kept.exterior).intersection(cloth)
        moved = unary_union([Shape([(x + left, y + top) for x, y in each.exterior.coords]) for each in _parts(ours)])
        assert moved.symmetric_difference(theirs).area < 1e-9
    assert sum(part.columns) == part.width
    assert sum(part.heights) == part.height


def _parts(found: Shape) -> list[Shape]:
    return list(getattr(found, "geoms", [found]))


CORNERS = [
    # a comb whose teeth are cut off, a tooth that ends on the line, a side that lies on it
    ([(0, 0), (6, 0), (6, 4), (5, 1), (4, 4), (3, 2), (2, 4), (1, 1), (0, 4)], 3),
    ([(0, 0), (4, 0), (4, 5), (3, 3), (1, 3), (0, 5)], 3),
    ([(2, 1), (4, 6), (0, 1), (3, 4)], 4),
    ([(0, 0), (6, 0), (6, 6), (0, 6)], 6),
]


@pytest.mark.parametrize(("corners", "level"), CORNERS)
@pytest.mark.parametrize("down", [1, -1])
def test_a_shape_with_inward_corners_is_cut_into_all_its_pieces(
    corners: list[tuple[int, int]], level: int, down: int
) -> None:
    outline = clockwise(tuple(Point(F(x), F(y)) for x, y in corners))
    pieces = kept_of(outline, Edge(Point(F(0), F(down)), F(down * level)))
    plane = box(-9, level, 9, 99) if down == 1 else box(-9, -99, 9, level)
    theirs = shape(outline).intersection(plane)
    assert all(is_simple(piece) for piece in pieces)
    assert sum(float(area(piece)) for piece in pieces) == pytest.approx(theirs.area)
    assert unary_union([shape(piece) for piece in pieces]).symmetric_difference(theirs).area < 1e-9
