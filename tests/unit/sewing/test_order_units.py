"""The units of an order: how many, how large, joined from what, and which are mirror images."""

from blockdsl.geometry import Point
from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.order import SubUnit, subunits
from tests.unit.sewing.order_sample import drawn, order_of, star_of_diamonds

STAR = (
    "columns 1 2 1",
    "heights 1 2 1",
    "row fog beam fog",
    "row beam< moss beam>",
    "row fog beam>> fog",
)
BEAM = "unit beam = geese slate on lantern"


def units_of(*lines: str, size: str = "8 in", above: str = "") -> tuple[SubUnit, ...]:
    design = drawn(*lines, size=size, above=above)
    return subunits(order_of(design), design)


def measures(units: tuple[SubUnit, ...]) -> list[str]:
    return [f"{unit.count} of {unit.width} x {unit.height}" for unit in units]


def point(x: int, y: int) -> Point:
    return Point(Fraction(x), Fraction(y))


def test_a_star_lists_its_units_small_to_large_with_how_many_of_each() -> None:
    # 2 in corners and 4 in middle; a goose with one sky reaches over 4 × 2 in.
    assert measures(units_of(*STAR, above=BEAM)) == [
        "4 of 4 x 2",
        "4 of 4 x 2",
        "2 of 8 x 2",
        "1 of 8 x 4",
        "1 of 8 x 8",
    ]


def test_a_unit_is_joined_from_patches_and_from_units_that_come_before_it() -> None:
    sky_and_goose, goose, row, middle, block = units_of(*STAR, above=BEAM)
    assert [part.unit for part in sky_and_goose.joins] == [None, None]
    assert [part.unit for part in goose.joins] == [0, None]
    assert [(part.patch, part.unit) for part in row.joins] == [(0, None), (None, 1), (4, None)]
    assert [part.unit for part in middle.joins] == [1, None, 1]
    assert [part.unit for part in block.joins] == [2, 3, 2]


def test_the_picture_of_a_unit_lies_in_its_own_box() -> None:
    four = units_of("row moss four", "row four moss", above="unit four = checker 2 x 2 fog slate")[1]
    assert measures((four,)) == ["2 of 4 x 4"]
    assert [patch.fabric for patch in four.picture] == ["fog", "slate", "slate", "fog"]
    assert four.picture[3].outline[0] == point(2, 2)
    assert four.outline == (point(0, 0), point(4, 0), point(4, 4), point(0, 4))


def test_the_places_of_a_unit_say_where_it_lies() -> None:
    four = units_of("row moss four", "row four moss", above="unit four = checker 2 x 2 fog slate")[1]
    assert [place.corner for place in four.places] == [point(4, 0), point(0, 4)]
    assert [place.patches for place in four.places] == [(1, 2, 3, 4), (5, 6, 7, 8)]


def test_a_unit_that_is_only_turned_is_one_unit() -> None:
    pair = units_of("row fog/slate fog/slate>", "row fog/slate< fog/slate>>")[0]
    assert pair.count == 4
    assert len({place.turn for place in pair.places}) == 4


def test_mirror_images_are_two_units_side_by_side() -> None:
    above = "unit lean\n  grid 2 x 2\n  patch fog at 0,0 2,0 0,1\n  patch slate at 2,0 2,2 0,2 0,1"
    first, second, block = units_of("row lean lean~", size="8 x 4 in", above=above)
    assert (first.count, second.count, block.count) == (1, 1, 1)
    assert (first.mirror_of, second.mirror_of) == (None, 0)
    assert [part.unit for part in block.joins] == [0, 1]


def test_what_is_its_own_mirror_image_is_one_unit_however_it_is_mirrored() -> None:
    first, block = units_of("row fog/slate fog/slate~", size="8 x 4 in")
    assert (first.count, first.mirror_of) == (2, None)
    assert block.count == 1


def test_the_quarters_of_a_star_of_diamonds_are_one_unit_made_four_times() -> None:
    # Two diamonds and the triangle between them; the four quarters are turned by right angles.
    star = star_of_diamonds()
    quarter = next(unit for unit in subunits(order_of(star), star) if unit.count == 4 and len(unit.picture) == 3)
    assert quarter.kind == "set-in"
    assert sorted(patch.fabric for patch in quarter.picture) == ["f", "l", "s"]


def test_a_block_of_one_patch_has_no_units() -> None:
    assert units_of("row fog") == ()


def test_the_points_of_a_star_are_one_unit_made_eight_times_though_each_lies_an_eighth_round() -> None:
    lines = "row (star45 points fog moss slate rows 3 ground lantern)"
    point_of_star = next(unit for unit in units_of(lines) if len(unit.picture) == 9)
    assert point_of_star.count == 8
    assert sorted(place.turn.eighth for place in point_of_star.places) == [False] * 4 + [True] * 4


def test_every_place_of_a_unit_is_its_first_place_turned_and_moved() -> None:
    for line in ("row (star45 points fog moss rows 2 ground slate)", "row (star45 split fog slate ground moss)"):
        design = drawn(line)
        for unit in subunits(order_of(design), design):
            first = [design.patches[patch] for patch in unit.places[0].patches]
            for place in unit.places:
                turned = {
                    (
                        patch.fabric,
                        frozenset(_moved(place.turn.apply_direction(corner), place.shift) for corner in patch.outline),
                    )
                    for patch in first
                }
                lying = {(design.patches[n].fabric, frozenset(design.patches[n].outline)) for n in place.patches}
                assert turned == lying


def _moved(corner: Point, shift: Point) -> Point:
    return Point(corner.x + shift.x, corner.y + shift.y)
