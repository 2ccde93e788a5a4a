"""What holds for every shape: symmetries, allowances, cover."""

from hypothesis import assume, given
from hypothesis import strategies as st

from blockdsl.geometry.cover import prove_cover
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.number import Exact, sign
from blockdsl.geometry.offset import offset_outward, trim_points
from blockdsl.geometry.polygon import (
    Point,
    Polygon,
    area,
    clockwise,
    contains,
    cross,
    dot,
    drop_straight_corners,
    edges,
    inside_point,
    is_convex,
    is_simple,
    signed_area,
    step,
    translate,
)
from blockdsl.geometry.recognise import congruence_key, mirrored_key, recognise
from blockdsl.geometry.symmetry import ALL_EIGHT, IDENTITY, Symmetry, from_turns

SIDE = Fraction(12)
coordinates = st.integers(min_value=0, max_value=24).map(lambda n: Fraction(n, 2))
places = st.builds(Point, coordinates, coordinates)
symmetries = st.sampled_from(ALL_EIGHT)
allowances = st.sampled_from([Fraction(1, 4), Fraction(3, 4), Fraction(1, 10)])


def hull(corners: list[Point]) -> Polygon:
    """The clockwise convex outline round the corners (gift wrapping on sorted corners)."""

    def half(ordered: list[Point]) -> list[Point]:
        kept: list[Point] = []
        for corner in ordered:
            while len(kept) > 1 and cross(step(kept[-2], kept[-1]), step(kept[-1], corner)) <= 0:
                kept.pop()
            kept.append(corner)
        return kept[:-1]

    ordered = sorted(set(corners))
    return (*half(ordered), *half(ordered[::-1]))


@st.composite
def convex_polygons(draw: st.DrawFn) -> Polygon:
    polygon = hull(draw(st.lists(places, min_size=3, max_size=7, unique=True)))
    assume(len(polygon) > 2)
    return polygon


@st.composite
def simple_polygons(draw: st.DrawFn) -> Polygon:
    """An outline out along what lies above a line from leftmost to rightmost corner, and back along the rest."""
    corners = sorted(draw(st.lists(places, min_size=3, max_size=7, unique=True)))
    line = step(corners[0], corners[-1])
    above = [corner for corner in corners[1:-1] if cross(line, step(corners[0], corner)) < 0]
    below = [corner for corner in corners[1:-1] if corner not in above]
    polygon = drop_straight_corners((corners[0], *above, corners[-1], *reversed(below)))
    assume(polygon)
    return clockwise(polygon)


def squared_distance_times(line: tuple[Point, Point], place: Point) -> tuple[Exact, Exact]:
    """(d·|line|)² with the line's squared length, so that no root is needed."""
    along = step(*line)
    apart = cross(along, step(line[0], place))
    return apart * apart, dot(along, along)


@given(convex_polygons(), allowances)
def test_the_allowance_is_everywhere_exactly_the_allowance(polygon: Polygon, allowance: Fraction) -> None:
    moved = offset_outward(polygon, allowance)
    assert len(moved) == len(polygon)
    for old, new in zip(edges(polygon), edges(moved), strict=True):
        for corner in new:
            apart, length = squared_distance_times(old, corner)
            assert apart == allowance * allowance * length
        assert sign(cross(step(*old), step(old[0], new[0]))) < 0
        assert cross(step(*old), step(*new)) == 0
        assert dot(step(*old), step(*new)) > 0


@given(convex_polygons(), allowances)
def test_trimmed_points_never_come_nearer_than_the_allowance(polygon: Polygon, allowance: Fraction) -> None:
    cutting = offset_outward(polygon, allowance)
    trimmed = trim_points(cutting, polygon, allowance)
    assert is_convex(trimmed)
    assert area(trimmed) <= area(cutting)
    for side in edges(trimmed):
        along = step(*side)
        for corner in polygon:
            apart = cross(along, step(side[0], corner))
            assert apart > 0
            assert apart * apart >= allowance * allowance * dot(along, along)


@given(symmetries, symmetries, symmetries)
def test_the_eight_symmetries_are_a_group(a: Symmetry, b: Symmetry, c: Symmetry) -> None:
    assert a.then(b) in ALL_EIGHT
    assert a.then(b).then(c) == a.then(b.then(c))
    assert a.then(IDENTITY) == IDENTITY.then(a) == a
    assert a.then(a.inverse) == IDENTITY
    assert a.then(b).is_mirrored == (a.is_mirrored != b.is_mirrored)


@given(symmetries, symmetries, places)
def test_one_turn_after_another_is_their_product(a: Symmetry, b: Symmetry, place: Point) -> None:
    width, height = Fraction(13), Fraction(14)
    once = b.apply(a.apply(place, width, height), *a.turned_extent(width, height))
    assert once == a.then(b).apply(place, width, height)
    assert a.then(b).turned_extent(width, height) == b.turned_extent(*a.turned_extent(width, height))


@given(st.text(alphabet="><~", max_size=8), st.text(alphabet="><~", max_size=8))
def test_turns_written_one_after_another_add_up(one: str, two: str) -> None:
    assert from_turns(one + two) == from_turns(one).then(from_turns(two))


@given(simple_polygons(), symmetries)
def test_turning_keeps_area_and_piece_and_mirroring_turns_the_piece_over(polygon: Polygon, way: Symmetry) -> None:
    turned = way.apply_polygon(polygon, SIDE, SIDE)
    assert signed_area(turned) == signed_area(polygon) > 0
    expected = mirrored_key(polygon) if way.is_mirrored else congruence_key(polygon)
    assert congruence_key(turned) == expected
    assert recognise(turned).kind == recognise(polygon).kind


@given(simple_polygons(), coordinates, coordinates, st.integers(min_value=0, max_value=5))
def test_where_a_piece_lies_and_which_corner_is_named_first_do_not_matter(
    polygon: Polygon, dx: Fraction, dy: Fraction, first: int
) -> None:
    first %= len(polygon)
    other = translate(polygon[first:] + polygon[:first], dx, dy)
    assert congruence_key(other) == congruence_key(polygon)
    assert recognise(other) == recognise(polygon)


@given(simple_polygons())
def test_an_outline_out_above_a_line_and_back_below_is_simple(polygon: Polygon) -> None:
    assert is_simple(polygon)


@given(simple_polygons())
def test_the_point_inside_is_inside_and_on_no_side(polygon: Polygon) -> None:
    place = inside_point(polygon)
    assert contains(polygon, place)
    assert all(
        cross(step(a, b), step(a, place)) != 0 or not min(a.x, b.x) <= place.x <= max(a.x, b.x)
        for a, b in edges(polygon)
    )


def cut_apart(polygon: Polygon, start: Point, end: Point) -> list[Polygon]:
    """A convex polygon cut by the line through both points into what lies right and left of it."""
    sides: list[Polygon] = []
    for way in (1, -1):
        kept: list[Point] = []
        for a, b in edges(polygon):
            from_a, from_b = (way * cross(step(start, end), step(start, each)) for each in (a, b))
            if from_a >= 0:
                kept.append(a)
            if sign(from_a) * sign(from_b) < 0:
                part = from_a / (from_a - from_b)
                kept.append(Point(a.x + part * (b.x - a.x), a.y + part * (b.y - a.y)))
        sides.append(drop_straight_corners(tuple(kept)))
    return [side for side in sides if side]


@given(st.lists(st.tuples(places, places), max_size=5), st.integers(min_value=0, max_value=40))
def test_a_block_cut_apart_is_covered_and_misses_exactly_what_is_taken_away(
    lines: list[tuple[Point, Point]], taken: int
) -> None:
    zero = Fraction(0)
    patches: list[Polygon] = [(Point(zero, zero), Point(SIDE, zero), Point(SIDE, SIDE), Point(zero, SIDE))]
    for start, end in lines:
        if start != end:
            patches = [part for patch in patches for part in cut_apart(patch, start, end)]
    assert prove_cover(patches, SIDE, SIDE).is_proved
    lost = patches[taken % len(patches)]
    left = [patch for patch in patches if patch is not lost]
    (gap,) = prove_cover(left, SIDE, SIDE).gaps
    assert gap.area == area(lost)
    assert contains(lost, gap.place)
    (overlap,) = prove_cover([*patches, lost], SIDE, SIDE).overlaps
    assert overlap.area == area(lost)
    assert set(overlap.patches) == {taken % len(patches), len(patches)}
