"""Areas, allowances and faults of cover judged by Shapely, which works in floats with code of its own."""

import pytest
import shapely
from hypothesis import assume, given
from hypothesis import strategies as st

from blockdsl.geometry.cover import MOST_REGIONS, prove_cover
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.number import Exact, square_root, to_float
from blockdsl.geometry.offset import offset_outward
from blockdsl.geometry.polygon import (
    Point,
    Polygon,
    area,
    clockwise,
    cross,
    drop_straight_corners,
    inside_point,
    is_simple,
    step,
    turn_at,
)
from tests.unit.model.blocks import block

SIDE = Fraction(12)
coordinates = st.integers(min_value=0, max_value=12).map(Fraction)
places = st.builds(Point, coordinates, coordinates)

ROOT_2, ROOT_3, ROOT_6 = (square_root(n) for n in (2, 3, 6))


def rooted(a: int, b: int, c: int, d: int) -> Exact:
    return Fraction(a, 2) + b * ROOT_2 + c * ROOT_3 + d * ROOT_6


small = st.integers(min_value=-1, max_value=1)
with_roots = st.builds(rooted, st.integers(min_value=8, max_value=14), small, small, small)
places_with_roots = st.builds(Point, with_roots, with_roots)


def judged(polygon: Polygon) -> shapely.Polygon:
    return shapely.Polygon([(to_float(corner.x), to_float(corner.y)) for corner in polygon])


@st.composite
def simple_polygons(draw: st.DrawFn, corner: st.SearchStrategy[Point] = places) -> Polygon:
    """An outline out along what lies above a line from leftmost to rightmost corner, and back along the rest."""
    corners = sorted(draw(st.lists(corner, min_size=3, max_size=7, unique=True)))
    line = step(corners[0], corners[-1])
    above = [corner for corner in corners[1:-1] if cross(line, step(corners[0], corner)) < 0]
    below = [corner for corner in corners[1:-1] if corner not in above]
    polygon = drop_straight_corners((corners[0], *above, corners[-1], *reversed(below)))
    assume(polygon)
    return clockwise(polygon)


@given(st.lists(places, min_size=3, max_size=6, unique=True))
def test_shapely_agrees_which_outlines_are_simple(corners: list[Point]) -> None:
    polygon = tuple(corners)
    assume(drop_straight_corners(polygon) == polygon)
    assert is_simple(polygon) == judged(polygon).is_valid


@given(simple_polygons())
def test_shapely_agrees_about_areas_and_inside_points(polygon: Polygon) -> None:
    assert to_float(area(polygon)) == pytest.approx(judged(polygon).area, abs=1e-9)
    place = inside_point(polygon)
    assert judged(polygon).contains(shapely.Point(to_float(place.x), to_float(place.y)))


@given(simple_polygons(), st.sampled_from([Fraction(1, 4), Fraction(1, 10)]))
def test_shapely_agrees_about_the_allowance(polygon: Polygon, allowance: Fraction) -> None:
    ours = judged(offset_outward(polygon, allowance))
    theirs = judged(polygon).buffer(to_float(allowance), join_style="mitre", mitre_limit=1000)
    # Where two arms of a shape reach over each other only the outer line counts.
    assume(ours.is_valid)
    assume(not theirs.interiors)
    assert ours.symmetric_difference(theirs).area == pytest.approx(0, abs=1e-9)


@given(simple_polygons(places_with_roots))
def test_shapely_agrees_about_areas_and_allowances_with_roots(polygon: Polygon) -> None:
    assert to_float(area(polygon)) == pytest.approx(judged(polygon).area, abs=1e-9)
    ours = judged(offset_outward(polygon, Fraction(1, 4)))
    theirs = judged(polygon).buffer(0.25, join_style="mitre", mitre_limit=1e6)
    assume(ours.is_valid)
    assume(not theirs.interiors)
    # The sharper a point, the further its mitre reaches, and the less of it floats get right.
    assert ours.symmetric_difference(theirs).area == pytest.approx(0, abs=1e-9 * max(1, ours.length) ** 2)


@given(places_with_roots, places_with_roots, places_with_roots)
def test_turns_at_corners_with_roots_are_those_of_exact_arithmetic(a: Point, b: Point, c: Point) -> None:
    exact = cross(step(a, b), step(b, c))
    assert turn_at(a, b, c) == (exact > 0) - (exact < 0)


@given(st.lists(simple_polygons(), min_size=1, max_size=6))
def test_shapely_agrees_about_gaps_overlaps_and_what_sticks_out(polygons: list[Polygon]) -> None:
    agree_about_cover(polygons)


@given(st.lists(simple_polygons(places_with_roots), min_size=1, max_size=3))
def test_shapely_agrees_about_gaps_and_overlaps_with_roots(polygons: list[Polygon]) -> None:
    agree_about_cover(polygons)


def agree_about_cover(polygons: list[Polygon]) -> None:
    side = Fraction(10)
    cover = prove_cover(polygons, side, side)
    assume(cover.complete)
    assert len(cover.gaps) + len(cover.overlaps) + len(cover.outside) <= MOST_REGIONS
    block, shapes = shapely.box(0, 0, 10, 10), [judged(polygon) for polygon in polygons]
    union = shapely.union_all(shapes)
    doubled = shapely.union_all([a.intersection(b) for i, a in enumerate(shapes) for b in shapes[:i]])
    gaps = sum(to_float(region.area) for region in cover.gaps)
    overlaps = sum(to_float(region.area) for region in cover.overlaps)
    outside = sum(to_float(region.area) for region in cover.outside)
    assert gaps == pytest.approx(block.difference(union).area, abs=1e-9)
    assert overlaps == pytest.approx(doubled.intersection(block).area, abs=1e-9)
    assert outside == pytest.approx(union.difference(block).area, abs=1e-9)


@given(st.lists(simple_polygons(), min_size=2, max_size=5))
def test_shapely_agrees_which_patches_lie_over_an_overlap(polygons: list[Polygon]) -> None:
    shapes = [judged(polygon) for polygon in polygons]
    for overlap in prove_cover(polygons, SIDE, SIDE).overlaps:
        place = shapely.Point(to_float(overlap.place.x), to_float(overlap.place.y))
        over = {i for i, shape in enumerate(shapes) if shape.contains(place) and shape.exterior.distance(place) > 1e-9}
        assert over <= set(overlap.patches)
        assert len(overlap.patches) >= 2


@pytest.mark.parametrize(
    "words",
    [
        "star45 points slate lantern ground fog",
        "star45 points slate lantern moss rows 4 ground fog",
        "star45 split slate lantern ground fog",
        "triangles60 slate fog rows 5",
        "hexagons slate fog lantern across 5",
        "hexagons slate fog lantern across 4 halves",
        "cubes fog slate moss across 5",
    ],
)
def test_shapely_agrees_that_stars_and_fields_fill_their_box_once(words: str) -> None:
    shapes = [judged(patch.outline) for patch in block(f"row ({words})", size="10 in").placed]
    assert sum(shape.area for shape in shapes) == pytest.approx(100, abs=1e-9)
    assert shapely.union_all(shapes).area == pytest.approx(100, abs=1e-9)
    tree = shapely.STRtree(shapes)
    for number, shape in enumerate(shapes):
        beside = [shapes[other] for other in tree.query(shape) if other != number]
        assert sum(shape.intersection(other).area for other in beside) == pytest.approx(0, abs=1e-9)
