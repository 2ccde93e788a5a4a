"""Tiles: nothing of the template is lost, overlaps are wide enough, marks meet."""

from __future__ import annotations

from itertools import pairwise
from random import Random

import pytest

from blockdsl.fullsize.template_marks import tile_map
from blockdsl.fullsize.tiling import OVERLAP_PT, Tiling, tile
from blockdsl.marks.clip import area, clip_outline, clip_ring, contains
from blockdsl.marks.display_list import Contour, Path
from blockdsl.marks.theme import POINTS_PER_MILLIMETRE, Box

WIDTH, HEIGHT = 520.0, 617.0
TRIANGLE: Contour = ((0.0, 0.0), (1500.0, 1500.0), (0.0, 1500.0))
STRIP: Contour = ((0.0, 0.0), (2000.0, 0.0), (2000.0, 90.0), (0.0, 90.0))
ARROWHEAD: Contour = ((0.0, 0.0), (1400.0, 500.0), (0.0, 1000.0), (600.0, 500.0))
SHAPES = {"triangle": TRIANGLE, "strip": STRIP, "hollow arrowhead": ARROWHEAD}


@pytest.fixture(params=list(SHAPES), ids=list(SHAPES))
def shape(request: pytest.FixtureRequest) -> Contour:
    return SHAPES[str(request.param)]


def tiles_of(ring: Contour) -> Tiling:
    return tile((ring,), WIDTH, HEIGHT)


def holds(box: Box, x: float, y: float) -> bool:
    return box.x_pt - 1e-9 <= x <= box.right_pt + 1e-9 and box.y_pt - 1e-9 <= y <= box.bottom_pt + 1e-9


def test_every_point_of_a_template_is_on_some_tile(shape: Contour) -> None:
    tiling = tiles_of(shape)
    chance = Random(1)  # noqa: S311 - sizes for a test, the same every time
    inside = 0
    for _ in range(4000):
        x, y = chance.uniform(0, 2000), chance.uniform(0, 1500)
        if contains(shape, x, y):
            inside += 1
            assert any(holds(each.core, x, y) for each in tiling.tiles)
    assert inside > 300 or shape is STRIP


def test_the_cores_of_the_tiles_hold_the_whole_area_once(shape: Contour) -> None:
    parts = sum(area(clip_ring(shape, each.core)) for each in tiles_of(shape).tiles)
    assert parts == pytest.approx(area(shape), rel=1e-9)


def test_no_tile_is_larger_than_the_page(shape: Contour) -> None:
    for each in tiles_of(shape).tiles:
        assert each.window.width_pt <= WIDTH + 1e-6
        assert each.window.height_pt <= HEIGHT + 1e-6


def test_neighbouring_tiles_overlap_by_a_centimetre_and_a_half(shape: Contour) -> None:
    tiling = tiles_of(shape)
    assert tiling.joins
    least = 15 * POINTS_PER_MILLIMETRE
    for join in tiling.joins:
        one, two = tiling.tiles[join.first].window, tiling.tiles[join.second].window
        shared = one.right_pt - two.x_pt if join.upright else one.bottom_pt - two.y_pt
        assert shared >= least
        assert shared == pytest.approx(OVERLAP_PT)


def test_each_mark_lies_on_both_tiles_of_its_join_and_on_the_join_line(shape: Contour) -> None:
    tiling = tiles_of(shape)
    for join in tiling.joins:
        assert len(join.marks) == 2
        for mark in join.marks:
            assert holds(tiling.tiles[join.first].window, mark.x_pt, mark.y_pt)
            assert holds(tiling.tiles[join.second].window, mark.x_pt, mark.y_pt)
            assert (mark.x_pt if join.upright else mark.y_pt) == join.at_pt


def test_a_long_join_has_a_mark_about_every_14_cm() -> None:
    # A join of 4000 pt, 141 cm, has ten marks: more than 500 pt, 17.6 cm, apart they never are.
    square: Contour = ((0.0, 0.0), (4000.0, 0.0), (4000.0, 4000.0), (0.0, 4000.0))
    (join,) = tile((square,), 2400.0, 5000.0).joins
    places = sorted(mark.y_pt for mark in join.marks)
    assert len(places) == 10
    assert max(later - sooner for sooner, later in pairwise(places)) <= 500.0


def test_no_two_marks_of_a_template_have_the_same_letter(shape: Contour) -> None:
    letters = [mark.letter for join in tiles_of(shape).joins for mark in join.marks]
    assert len(set(letters)) == len(letters)
    assert letters[:3] == ["a", "b", "c"]


def test_letters_that_look_like_figures_are_left_out() -> None:
    tiling = tiles_of(((0.0, 0.0), (5000.0, 0.0), (5000.0, 5000.0), (0.0, 5000.0)))
    letters = {mark.letter for join in tiling.joins for mark in join.marks}
    assert "aa" in letters
    assert not any(set(letter) & set("ilo") for letter in letters)


def test_tiles_that_the_template_does_not_reach_are_not_printed() -> None:
    # 1500 pt need 4 columns of 520 and 3 rows of 617 with 45.4 pt of overlap. The part above the long edge of the
    # triangle is empty: 2 tiles are left in the first row, 3 in the second, 4 in the third.
    tiling = tiles_of(TRIANGLE)
    assert (tiling.rows, tiling.columns) == (3, 4)
    assert [(each.row, each.column) for each in tiling.tiles] == [
        *((0, column) for column in range(2)),
        *((1, column) for column in range(3)),
        *((2, column) for column in range(4)),
    ]


def test_a_template_that_fits_is_one_tile_without_joins() -> None:
    tiling = tiles_of(((0.0, 0.0), (520.0, 0.0), (520.0, 617.0)))
    assert len(tiling.tiles) == 1
    assert tiling.joins == ()


def test_every_tile_is_joined_to_the_others(shape: Contour) -> None:
    tiling = tiles_of(shape)
    reached = {0}
    for _ in tiling.tiles:
        for join in tiling.joins:
            if {join.first, join.second} & reached:
                reached |= {join.first, join.second}
    assert reached == set(range(len(tiling.tiles)))


def test_a_page_no_larger_than_the_overlap_is_refused() -> None:
    with pytest.raises(ValueError, match="larger than the overlap"):
        tile((TRIANGLE,), 40.0, 600.0)


def test_an_outline_is_cut_at_the_tile_and_goes_on_as_one_line() -> None:
    # The square from 0 to 100 seen through the box from 50 to 150: its right lower corner, as one line of three points.
    square: Contour = ((0.0, 0.0), (100.0, 0.0), (100.0, 100.0), (0.0, 100.0))
    assert clip_outline(square, Box(50.0, 50.0, 100.0, 100.0)) == (((100.0, 50.0), (100.0, 100.0), (50.0, 100.0)),)


def test_the_map_of_hundreds_of_tiles_has_the_edges_of_each_in_a_few_lines() -> None:
    ring: Contour = ((0.0, 0.0), (14000.0, 14000.0), (0.0, 14000.0))
    tiling = tiles_of(ring)
    assert len(tiling.tiles) > 300
    tiles = tuple((str(number), each.core) for number, each in enumerate(tiling.tiles))
    # As large as the template, so that nothing is made smaller and a place on the map is one on the template.
    _, grid, here = (mark for mark in tile_map(Box(0, 0, 14000, 14000), ring, tiles, "7") if isinstance(mark, Path))
    assert here.rings[0][0] == pytest.approx((tiles[7][1].x_pt, tiles[7][1].y_pt))
    assert len(grid.rings) <= tiling.rows + tiling.columns + 2
    lines = [(*start, *stop) for start, stop in grid.rings]
    for _, core in tiles:
        middle = core.y_pt + core.height_pt / 2
        assert any(x == pytest.approx(core.x_pt) and top < middle < low for x, top, _, low in lines)
        middle = core.x_pt + core.width_pt / 2
        assert any(y == pytest.approx(core.bottom_pt) and left < middle < right for left, y, right, _ in lines)
