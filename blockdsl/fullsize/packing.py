"""Boxes onto pages: maximal rectangles, filled from the top left, the same result every time.

Each page keeps the largest rectangles that are still free (they may overlap one another). A box goes
where its lower edge comes out highest, then farthest to the left; the free rectangles that it cuts are replaced by
what is left of them. Large boxes go first. Quarter turns are used for what fits no other way, and
otherwise only where they save a page.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final, Literal

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.marks.theme import Box

BoxSize = tuple[float, float]
Order = Literal["tall", "wide", "long", "large"]

_ORDERS: Final[tuple[Order, ...]] = ("tall", "wide", "long", "large")
_MANY: Final = 200

# Thousands of boxes stay quick when only the last few pages are looked at again for room.
_OPEN_PAGES: Final = 6
_SLACK_PT: Final = 1e-6


class PackingItem(Struct, frozen=True):
    """A box to place: its width and height as it stands, and after a quarter turn (words stay upright, so they differ).

    A size is None where the box may not stand that way.
    """

    upright: BoxSize | None
    turned: BoxSize | None = None


class PackedItem(Struct, frozen=True):
    """Where an item went: its page from 0, its top left corner in points, and its quarter turns clockwise."""

    item: int
    page: int
    x_pt: float
    y_pt: float
    turns: int

    @property
    def turned(self) -> bool:
        """Whether it lies on its side."""
        return self.turns % 2 == 1


class Room(Struct, frozen=True):
    """The box of every page that may be filled, and what the first page's head takes of it."""

    box: Box
    head: Box | None = None


def fits(size: BoxSize | None, box: Box) -> bool:
    """Whether a box of that size goes into an empty page's box."""
    return size is not None and size[0] <= box.width_pt + _SLACK_PT and size[1] <= box.height_pt + _SLACK_PT


def pack_fewest(items: Sequence[PackingItem], room: Room, gap_pt: float) -> tuple[PackedItem, ...]:
    """All items on as few pages as the method finds, turned only where that is needed or saves a page.

    Units:  points; `gap_pt` is left between two boxes, and between a box and the head.
    Errors: ValueError when an item fits an empty page neither way.
    """
    stiff = [
        PackingItem(item.upright) if fits(item.upright, room.box) else PackingItem(None, item.turned) for item in items
    ]
    best = min(
        (pack(choice, room, gap_pt, order) for choice in (stiff, items) for order in _orders(len(items))),
        key=page_count,
    )
    return _in_reading_order(best)


def _in_reading_order(places: Sequence[PackedItem]) -> tuple[PackedItem, ...]:
    """The same pages, those after the first by the earliest item on each; the first has a room of its own."""
    earliest: dict[int, int] = {}
    for place in places:
        earliest[place.page] = min(place.item, earliest.get(place.page, place.item))
    later = sorted((page for page in earliest if page), key=earliest.__getitem__)
    number = {page: place for place, page in enumerate(later, start=1)} | {0: 0}
    return tuple(replace(place, page=number[place.page]) for place in places)


def pack_shortest(items: Sequence[PackingItem], room: Room, gap_pt: float) -> tuple[PackedItem, ...]:
    """All items on as short a piece of a roll as the method finds, turned where that makes it shorter."""
    return min(
        (pack(items, room, gap_pt, order) for order in _orders(len(items))),
        key=lambda places: (page_count(places), lowest(items, places)),
    )


def lowest(items: Sequence[PackingItem], places: Sequence[PackedItem]) -> float:
    """The y of the lowest edge of all that was placed, on whichever page."""
    return max((place.y_pt + _height(items[place.item], place) for place in places), default=0.0)


def _height(item: PackingItem, place: PackedItem) -> float:
    size = item.turned if place.turned else item.upright
    return size[1] if size is not None else 0.0


def _orders(count: int) -> tuple[Order, ...]:
    """The orders to try; for very many boxes the first one alone, which is as good on average and quick."""
    return _ORDERS if count <= _MANY else _ORDERS[:1]


def page_count(places: Sequence[PackedItem]) -> int:
    """How many pages the places need."""
    return max((place.page for place in places), default=-1) + 1


def pack(items: Sequence[PackingItem], room: Room, gap_pt: float, order: Order) -> tuple[PackedItem, ...]:
    """Place the items, largest first, each on the earliest open page that has room; in the order of the items."""
    pages: list[_Page] = [_Page(room.box, gap_pt)]
    if room.head is not None:
        pages[0].take(room.head.x_pt, room.head.y_pt, (room.head.width_pt, room.head.height_pt))
    opened = 0
    places: list[PackedItem] = []
    for number in sorted(range(len(items)), key=lambda i: (*_rank(items[i], order), i)):
        found = None
        for index in range(opened, len(pages)):
            found = pages[index].best(items[number])
            if found is not None:
                break
        else:
            index = len(pages)
            pages.append(_Page(room.box, gap_pt))
            found = pages[index].best(items[number])
            if found is None:
                raise ValueError(f"a box of {items[number]} points does not fit the page")
            opened = max(opened, len(pages) - _OPEN_PAGES)
        x, y, size, turned = found
        pages[index].take(x, y, size)
        places.append(PackedItem(number, index, x, y, int(turned)))
    return tuple(sorted(places, key=lambda place: place.item))


def _rank(item: PackingItem, order: Order) -> tuple[float, float]:
    width, height = item.upright or item.turned or (0.0, 0.0)
    return {
        "tall": (-height, -width),
        "wide": (-width, -height),
        "long": (-max(width, height), -min(width, height)),
        "large": (-width * height, -height),
    }[order]


class _Page:
    """The free rectangles of one page, each (left, top, right, bottom), grown by the gap on the right and below."""

    def __init__(self, box: Box, gap_pt: float) -> None:
        self._gap = gap_pt
        self._free = [(box.x_pt, box.y_pt, box.right_pt + gap_pt, box.bottom_pt + gap_pt)]

    def best(self, item: PackingItem) -> tuple[float, float, BoxSize, bool] | None:
        """The place whose lower edge is highest, then leftmost, then upright."""
        options = []
        for turned, size in ((False, item.upright), (True, item.turned)):
            if size is None:
                continue
            width, height = size[0] + self._gap - _SLACK_PT, size[1] + self._gap - _SLACK_PT
            options += [
                (top + height, left, turned, top, size)
                for left, top, right, bottom in self._free
                if right - left >= width and bottom - top >= height
            ]
        if not options:
            return None
        _, left, turned, top, size = min(options)
        return left, top, size, turned

    def take(self, x: float, y: float, size: BoxSize) -> None:
        """Cut the box out of the free rectangles and drop those that lie inside another."""
        right, bottom = x + size[0] + self._gap, y + size[1] + self._gap
        kept: list[tuple[float, float, float, float]] = []
        cut: list[tuple[float, float, float, float]] = []
        for free in self._free:
            if free[0] >= right or free[2] <= x or free[1] >= bottom or free[3] <= y:
                kept.append(free)
                continue
            left, top, end, low = free
            cut += [
                part
                for part in ((left, top, x, low), (right, top, end, low), (left, top, end, y), (left, bottom, end, low))
                if part[2] - part[0] > self._gap and part[3] - part[1] > self._gap
            ]
        for number, part in enumerate(cut):
            later = cut[number + 1 :]
            if not any(_inside(part, other) for other in kept) and not any(_inside(part, other) for other in later):
                kept.append(part)
        self._free = kept


def _inside(small: tuple[float, float, float, float], large: tuple[float, float, float, float]) -> bool:
    return small[0] >= large[0] and small[1] >= large[1] and small[2] <= large[2] and small[3] <= large[3]
