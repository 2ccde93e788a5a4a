"""The proof of cover; areas counted on squared paper."""

from time import process_time

from blockdsl.geometry.cover import MOST_REGIONS, prove_cover
from blockdsl.geometry.fraction import Fraction, read_fraction
from blockdsl.geometry.number import Exact, Surd, square_root
from blockdsl.geometry.polygon import Point, Polygon

FOUR = Fraction(4)


def exact(*numbers: Exact | int) -> tuple[Exact, ...]:
    return tuple(number if isinstance(number, Surd) else Fraction(number) for number in numbers)


def shape(corners: str) -> Polygon:
    return tuple(Point(*(read_fraction(part) for part in corner.split(","))) for corner in corners.split())


def box(left: int, top: int, width: int = 1, height: int = 1) -> Polygon:
    x, y = Fraction(left), Fraction(top)
    return (Point(x, y), Point(x + width, y), Point(x + width, y + height), Point(x, y + height))


def test_a_goose_and_its_two_skies_cover_their_box() -> None:
    cover = prove_cover([shape("2,0 4,2 0,2"), shape("0,0 2,0 0,2"), shape("2,0 4,0 4,2")], FOUR, Fraction(2))
    assert cover.is_proved
    assert cover.area == 8
    assert cover.complete


def test_corners_that_meet_the_middle_of_a_side_are_no_gap() -> None:
    bricks = [box(0, 0, 4, 1), *(box(x, 1) for x in range(4)), box(0, 2, 2, 2), box(2, 2, 2, 2)]
    assert prove_cover(bricks, FOUR, FOUR).is_proved


def test_it_does_not_matter_which_way_an_outline_runs() -> None:
    assert prove_cover([box(0, 0, 2, 4), box(2, 0, 2, 4)[::-1]], FOUR, FOUR).is_proved


def test_roots_cover_exactly() -> None:
    # a square on point in a square whose corners are cut at 2 - √2
    near, far = 2 - square_root(2), square_root(2)
    zero, two = Fraction(0), Fraction(2)
    octagon = tuple(
        Point(x, y)
        for x, y in [
            (near, zero),
            (far, zero),
            (two, near),
            (two, far),
            (far, two),
            (near, two),
            (zero, far),
            (zero, near),
        ]
    )
    corners = [
        (Point(zero, zero), Point(near, zero), Point(zero, near)),
        (Point(far, zero), Point(two, zero), Point(two, near)),
        (Point(two, far), Point(two, two), Point(far, two)),
        (Point(near, two), Point(zero, two), Point(zero, far)),
    ]
    assert prove_cover([octagon, *corners], two, two).is_proved
    gap = prove_cover([octagon, *corners[1:]], two, two).gaps
    # half of (2 - √2)²
    assert [region.area for region in gap] == [3 - 2 * square_root(2)]


def test_a_missing_patch_is_a_gap_with_its_area_and_place() -> None:
    cover = prove_cover([box(x, y) for x in range(4) for y in range(4) if (x, y) != (2, 1)], FOUR, FOUR)
    (gap,) = cover.gaps
    assert gap.area == 1
    assert gap.place == exact(Fraction(5, 2), Fraction(3, 2))
    assert gap.box == exact(2, 1, 3, 2)
    assert gap.patches == ()
    assert not cover.overlaps
    assert not cover.outside
    assert cover.area == 15


def test_a_patch_drawn_twice_is_an_overlap_that_names_all_patches_there() -> None:
    patches = [box(0, 0, 2, 4), box(2, 0, 2, 4), box(1, 1, 2, 2)]
    cover = prove_cover(patches, FOUR, FOUR)
    (overlap,) = cover.overlaps
    assert overlap.area == 4
    assert overlap.patches == exact(0, 1, 2)
    assert overlap.box == exact(1, 1, 3, 3)


def test_crossing_outlines_give_the_exact_area_they_share() -> None:
    # the triangle is a third as wide as tall at x: at height 1 it is 8/3 wide, at height 2 it is 4/3 wide
    patches = [shape("0,0 4,0 2,3"), box(0, 1, 4, 1)]
    cover = prove_cover(patches, FOUR, FOUR)
    (overlap,) = cover.overlaps
    assert overlap.area == 2
    assert overlap.patches == exact(0, 1)
    # 16 - 6 - 4 + 2
    assert sum(gap.area for gap in cover.gaps) == 8


def test_what_sticks_out_of_the_block_is_told_apart_from_an_overlap() -> None:
    cover = prove_cover([box(0, 0, 4, 4), box(3, 1, 3, 2)], FOUR, FOUR)
    assert [region.area for region in cover.overlaps] == [2]
    assert [region.area for region in cover.outside] == [4]
    assert cover.outside[0].patches == (1,)
    assert cover.overlaps[0].patches == exact(0, 1)


def test_a_gap_and_an_overlap_of_one_size_do_not_make_up_for_each_other() -> None:
    patches = [box(0, 0, 2, 4), box(1, 0, 2, 4)]
    cover = prove_cover(patches, FOUR, FOUR)
    assert cover.area == 16
    assert [region.area for region in cover.gaps] == [4]
    assert [region.area for region in cover.overlaps] == [4]


def test_gaps_that_touch_only_at_a_corner_are_two_gaps() -> None:
    cover = prove_cover([box(2, 0, 2, 2), box(0, 2, 2, 2)], FOUR, FOUR)
    assert [region.area for region in cover.gaps] == [4, 4]


def test_a_gap_with_a_patch_in_its_middle_is_one_gap() -> None:
    cover = prove_cover([box(1, 1, 2, 2)], FOUR, FOUR)
    assert [region.area for region in cover.gaps] == [12]


def test_a_block_without_patches_is_one_gap() -> None:
    cover = prove_cover([], FOUR, FOUR)
    assert [region.area for region in cover.gaps] == [16]
    assert cover.area == 0


def test_forty_thousand_squares_are_proved_in_a_moment() -> None:
    grid = [box(x, y) for y in range(200) for x in range(200)]
    side = Fraction(200)
    start = process_time()
    assert prove_cover(grid, side, side).is_proved
    # measured at 0.2 s; the promise is 0.6 s, the test allows for a slow machine
    assert process_time() - start < 2


def test_a_block_full_of_faults_lists_the_first_and_says_there_are_more() -> None:
    checker = [box(x, y) for y in range(100) for x in range(100) if (x + y) % 2]
    cover = prove_cover(checker, Fraction(100), Fraction(100))
    assert len(cover.gaps) == MOST_REGIONS
    assert not cover.complete
    assert [gap.area for gap in cover.gaps] == [1] * MOST_REGIONS
    assert cover.gaps[0].box == exact(0, 0, 1, 1)
