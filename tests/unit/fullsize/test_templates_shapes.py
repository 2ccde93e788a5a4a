"""Outlines nest by their true shape: apart, inside the page, and on fewer pages than their boxes."""

from __future__ import annotations

from itertools import combinations
from random import Random

import pytest
from shapely.geometry import Polygon, box

from blockdsl.fullsize.packing import PackedItem, Room
from blockdsl.fullsize.packing_shapes import NestingShape, pack_shapes
from blockdsl.marks.clip import bounds
from blockdsl.marks.display_list import Contour
from blockdsl.marks.theme import Box

PAGE = Box(36.0, 36.0, 540.0, 600.0)
HEAD = Box(36.0, 36.0, 300.0, 200.0)
GAP = 8.0


def in_four_turns(ring: Contour) -> NestingShape:
    """A ring in all its quarter turns, each with its corner at the origin."""
    ways = []
    for turns in range(4):
        left, top, _, _ = bounds(ring)
        ways.append((turns, (tuple((x - left, y - top) for x, y in ring),)))
        ring = tuple((-y, x) for x, y in ring)
    return NestingShape(tuple(ways))


def right_triangle(wide: float, tall: float) -> NestingShape:
    return in_four_turns(((0.0, 0.0), (wide, tall), (0.0, tall)))


def laid(shape: NestingShape, place: PackedItem) -> Polygon:
    rings = dict(shape.ways)[place.turns]
    return Polygon([(x + place.x_pt, y + place.y_pt) for x, y in rings[0]])


def mixed(count: int, seed: int) -> list[NestingShape]:
    chance = Random(seed)  # noqa: S311 - sizes for a test, the same every time
    shapes = []
    for number in range(count):
        a, b, c = (chance.uniform(30, 300) for _ in range(3))
        kind = number % 3
        if kind == 0:
            shapes.append(right_triangle(a, b))
        elif kind == 1:
            shapes.append(in_four_turns(((0.0, 0.0), (a + c, 0.0), (c, b))))
        else:
            shapes.append(in_four_turns(((c / 2, 0.0), (a + c / 2, 0.0), (a, b), (0.0, b))))
    return shapes


def test_two_right_triangles_nest_into_a_rectangle() -> None:
    # Legs of 500 and 300 on a page of 540 × 600: as boxes with a gap they need 608 of its height; nested, long edge to
    # long edge, each sits in the other's empty corner: less than 400.
    shapes = [right_triangle(500.0, 300.0)] * 2
    places = pack_shapes(shapes, Room(PAGE), GAP)
    assert {place.page for place in places} == {0}
    assert (places[1].turns - places[0].turns) % 4 == 2
    assert max(laid(shape, place).bounds[3] for shape, place in zip(shapes, places, strict=True)) < PAGE.y_pt + 400


@pytest.mark.parametrize("seed", range(8))
def test_no_two_outlines_come_nearer_than_the_gap(seed: int) -> None:
    shapes = mixed(24, seed)
    places = pack_shapes(shapes, Room(PAGE, HEAD), GAP)
    found = [(place.page, laid(shapes[place.item], place)) for place in places]
    for (page, one), (other_page, two) in combinations(found, 2):
        assert page != other_page or one.distance(two) >= GAP - 1e-6


@pytest.mark.parametrize("seed", range(8))
def test_every_outline_lies_once_inside_its_page_and_clear_of_the_head(seed: int) -> None:
    shapes = mixed(24, seed)
    places = pack_shapes(shapes, Room(PAGE, HEAD), GAP)
    assert [place.item for place in places] == list(range(24))
    page = box(PAGE.x_pt, PAGE.y_pt, PAGE.right_pt, PAGE.bottom_pt).buffer(1e-6)
    head = box(HEAD.x_pt, HEAD.y_pt, HEAD.right_pt, HEAD.bottom_pt)
    for place in places:
        shape = laid(shapes[place.item], place)
        assert page.contains(shape)
        assert place.page > 0 or shape.distance(head) >= GAP - 1e-6


def test_the_same_outlines_nest_the_same_every_time() -> None:
    assert pack_shapes(mixed(40, 3), Room(PAGE, HEAD), GAP) == pack_shapes(mixed(40, 3), Room(PAGE, HEAD), GAP)


def test_an_outline_as_large_as_the_page_still_fits_it() -> None:
    shape = in_four_turns(((0.0, 0.0), (540.0, 0.0), (540.0, 600.0), (0.0, 600.0)))
    (place,) = pack_shapes([NestingShape(shape.ways[:1])], Room(PAGE), GAP)
    assert (place.page, place.x_pt, place.y_pt) == (0, 36.0, 36.0)


def test_words_that_stand_beside_an_outline_keep_others_away() -> None:
    triangle = ((0.0, 0.0), (200.0, 200.0), (0.0, 200.0))
    words = ((210.0, 80.0), (300.0, 80.0), (300.0, 120.0), (210.0, 120.0))
    tie = ((210.0, 100.0), (90.0, 100.0))
    shape = NestingShape(((0, (triangle, words, tie)),))
    places = pack_shapes([shape] * 4, Room(PAGE), GAP)
    taken = [
        [Polygon([(x + place.x_pt, y + place.y_pt) for x, y in ring]) for ring in (triangle, words)] for place in places
    ]
    for (one, first), (two, second) in combinations(zip(places, taken, strict=True), 2):
        apart = min(a.distance(b) for a in first for b in second)
        assert one.page != two.page or apart >= GAP - 1e-6


def test_an_outline_larger_than_the_page_is_refused() -> None:
    with pytest.raises(ValueError, match="does not fit the page"):
        pack_shapes([right_triangle(700.0, 700.0)], Room(PAGE), GAP)


def test_nothing_to_nest_takes_no_page() -> None:
    assert pack_shapes([], Room(PAGE), GAP) == ()
