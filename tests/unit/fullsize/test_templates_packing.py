"""Boxes on pages: inside, apart, the same every time, and turned only for a reason."""

from __future__ import annotations

from itertools import combinations
from random import Random

import pytest

from blockdsl.fullsize.packing import PackedItem, PackingItem, Room, lowest, pack_fewest, pack_shortest
from blockdsl.marks.theme import Box

FIRST = Box(40.0, 300.0, 500.0, 340.0)
REST = Box(40.0, 40.0, 500.0, 600.0)
GAP = 14.0
# The head with the gap below it leaves FIRST of the first page: 40 + 246 + 14 = 300.
ROOM = Room(REST, Box(40.0, 40.0, 500.0, 246.0))


def mixed_items(count: int, seed: int) -> list[PackingItem]:
    chance = Random(seed)  # noqa: S311 - sizes for a test, the same every time
    sizes = [(chance.uniform(10, 480), chance.uniform(10, 480)) for _ in range(count)]
    return [PackingItem((width, height), (height, width)) for width, height in sizes]


def taken(item: PackingItem, place: PackedItem) -> Box:
    size = item.turned if place.turned else item.upright
    assert size is not None
    return Box(place.x_pt, place.y_pt, size[0], size[1])


@pytest.mark.parametrize("seed", range(6))
def test_no_two_templates_come_nearer_than_the_gap(seed: int) -> None:
    items = mixed_items(60, seed)
    placed = [(place.page, taken(items[place.item], place)) for place in pack_fewest(items, ROOM, GAP)]
    for (page, one), (other_page, two) in combinations(placed, 2):
        apart = (
            one.right_pt + GAP <= two.x_pt + 1e-3
            or two.right_pt + GAP <= one.x_pt + 1e-3
            or one.bottom_pt + GAP <= two.y_pt + 1e-3
            or two.bottom_pt + GAP <= one.y_pt + 1e-3
        )
        assert page != other_page or apart


@pytest.mark.parametrize("seed", range(6))
def test_every_template_lies_once_and_inside_the_page(seed: int) -> None:
    items = mixed_items(60, seed)
    places = pack_fewest(items, ROOM, GAP)
    assert [place.item for place in places] == list(range(60))
    for place in places:
        room = REST if place.page else FIRST
        box = taken(items[place.item], place)
        assert box.x_pt >= room.x_pt
        assert box.y_pt >= room.y_pt
        assert box.right_pt <= room.right_pt + 1e-3
        assert box.bottom_pt <= room.bottom_pt + 1e-3


def test_the_same_templates_are_packed_the_same_every_time() -> None:
    assert pack_fewest(mixed_items(300, 3), ROOM, GAP) == pack_fewest(mixed_items(300, 3), ROOM, GAP)


def test_templates_stand_upright_where_turning_saves_no_page() -> None:
    items = [PackingItem((100.0, 50.0), (50.0, 100.0))] * 10
    assert not any(place.turned for place in pack_fewest(items, ROOM, GAP))


def test_a_template_too_wide_for_the_page_is_turned() -> None:
    (place,) = pack_fewest([PackingItem((590.0, 100.0), (100.0, 590.0))], ROOM, GAP)
    assert place.turned
    assert place.page == 1


def test_templates_are_turned_where_that_saves_a_page() -> None:
    # Upright, the first page's 500 × 340 hold one of 260 × 140 beside nothing and two below one another; they hold
    # three of 140 × 260 side by side (3 · 140 + 2 · 14 = 448).
    items = [PackingItem((260.0, 140.0), (140.0, 260.0))] * 3
    places = pack_fewest(items, ROOM, GAP)
    assert {place.page for place in places} == {0}
    assert any(place.turned for place in places)


def test_a_box_larger_than_every_page_is_refused() -> None:
    with pytest.raises(ValueError, match="does not fit the page"):
        pack_fewest([PackingItem((700.0, 700.0), (700.0, 700.0))], ROOM, GAP)


def test_beside_a_narrow_head_there_is_room_on_the_first_page() -> None:
    # The head leaves 500 - 300 = 200 at its right, less the gap: 186.
    room = Room(REST, Box(40.0, 40.0, 300.0, 590.0))
    (place,) = pack_fewest([PackingItem((186.0, 590.0))], room, GAP)
    assert (place.page, place.x_pt, place.y_pt) == (0, 354.0, 40.0)
    (place,) = pack_fewest([PackingItem((187.0, 590.0))], room, GAP)
    assert place.page == 1


def test_on_a_roll_templates_are_turned_where_that_makes_the_print_shorter() -> None:
    # 500 wide: 400 × 100 twice below one another take 214; on end, side by side, 400.
    # 100 × 400 twice side by side take 400; laid down below one another 214.
    items = [PackingItem((100.0, 400.0), (400.0, 100.0))] * 2
    places = pack_shortest(items, Room(Box(0.0, 0.0, 500.0, 14_000.0)), GAP)
    assert lowest(items, places) == pytest.approx(214.0)
    assert all(place.turned for place in places)


def test_nothing_to_place_takes_no_page() -> None:
    assert pack_fewest([], ROOM, GAP) == ()


def test_pages_after_the_first_come_in_the_order_of_the_templates_on_them() -> None:
    page = (ROOM.box.width_pt * 0.9, ROOM.box.height_pt * 0.9)
    places = pack_fewest([PackingItem(page)] * 4, ROOM, GAP)
    assert [place.page for place in sorted(places, key=lambda place: place.item)] == sorted(
        place.page for place in places
    )
