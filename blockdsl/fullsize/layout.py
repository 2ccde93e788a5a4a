"""Where every template goes: how the paper lies, what shares a page, what has one of its own, what needs tiles.

All ways are tried that may save pages: the paper upright or on its side, templates packed by their boxes or by
their shapes. Of equals the plainer one is taken. All pages of a file have the same size. A roll is cut to the length
that its fullest page needs.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import ceil
from typing import Final

from msgspec import Struct

from blockdsl.fullsize.packing import (
    PackedItem,
    PackingItem,
    Room,
    fits,
    lowest,
    pack_fewest,
    pack_shortest,
    page_count,
)
from blockdsl.fullsize.packing_shapes import MOST_SHAPES, NestingShape, pack_shapes
from blockdsl.fullsize.pattern import TemplatePattern
from blockdsl.fullsize.template import Drawings
from blockdsl.fullsize.tiles import tiled
from blockdsl.fullsize.tiling import Tiling
from blockdsl.marks.clip import area
from blockdsl.marks.display_list import Contour
from blockdsl.marks.theme import CONTENT_WIDTH_PT, FOOTER_HEIGHT_PT, LONGEST_PAGE_PT, Box, PaperSize
from blockdsl.page.scale_check import TEST_SQUARE_PT

_GAP_PT: Final = 14.0

# Slanting sides keep 1.4 times the gap of upright ones, for outlines grow into squares.
_NESTED_GAP_PT: Final = 8.0
_STRIP_GAP_PT: Final = 10.0
_STRIP_START_PT: Final = 252.0
_STRIP_WIDTH_PT: Final = CONTENT_WIDTH_PT - _STRIP_START_PT

# Strokes lie half outside their outline; this keeps them, and the marks' ends, on the page.
_INSET_PT: Final = 0.5
_FOOT_PT: Final = FOOTER_HEIGHT_PT + 3.0
"""The foot, with the maker's row in it, and white above that."""

_BELOW_ROOM_PT: Final = _STRIP_GAP_PT + TEST_SQUARE_PT + _FOOT_PT

# Less than this of a roll is not worth turning templates about.
_WORTH_SAVING_PT: Final = 36.0


class PageGeometry(Struct, frozen=True):
    """A paper as it lies, and the box of it that is printed on."""

    paper: PaperSize
    box: Box

    @property
    def room(self) -> Box:
        """Where templates go: the box above the strip with the scale check and the foot."""
        box = self.box
        return Box(
            box.x_pt + _INSET_PT,
            box.y_pt + _INSET_PT,
            box.width_pt - 2 * _INSET_PT,
            box.height_pt - _BELOW_ROOM_PT - _INSET_PT,
        )

    @property
    def strip(self) -> Box:
        """What is free beside the scale check."""
        return Box(self.box.x_pt + _STRIP_START_PT, self.check_y_pt, _STRIP_WIDTH_PT, TEST_SQUARE_PT)

    @property
    def check_y_pt(self) -> float:
        """The top of the scale check."""
        return self.box.bottom_pt - _FOOT_PT - TEST_SQUARE_PT

    def cut_at(self, room_bottom_pt: float) -> PageGeometry:
        """A roll's geometry, just long enough for room down to there."""
        margin = self.box.y_pt
        bottom = room_bottom_pt + _BELOW_ROOM_PT
        return PageGeometry(
            self.paper.cut_at(bottom + margin), Box(self.box.x_pt, margin, self.box.width_pt, bottom - margin)
        )


class PageLayout(Struct, frozen=True):
    """The geometry of every page; the templates that share pages, those that fill one, and those in tiles."""

    geometry: PageGeometry
    shared: tuple[PackedItem, ...]
    alone: tuple[tuple[int, int], ...]
    tiles: tuple[tuple[TemplatePattern, Tiling], ...]

    @property
    def pages(self) -> int:
        """How many pages there are; the first is always there, for its head."""
        return max(1, page_count(self.shared)) + len(self.alone) + sum(len(tiling.tiles) for _, tiling in self.tiles)


def lay_out(
    patterns: Sequence[TemplatePattern], drawings: Drawings, paper: PaperSize, margin_pt: float, head_pt: float
) -> PageLayout:
    """The layout with the fewest pages; of two alike the upright one.

    Units:  points; `head_pt` is the height of the head on the first page, which is as wide as the shared box.
    Errors: ValueError from `Paper.printable`.
    """
    if paper.roll:
        longest = paper.cut_at(LONGEST_PAGE_PT)
        return _cut_roll(
            _on(patterns, drawings, PageGeometry(longest, longest.printable(margin_pt)), head_pt), drawings, head_pt
        )
    upright = _on(patterns, drawings, PageGeometry(paper, paper.printable(margin_pt)), head_pt)
    if upright.pages == 1:
        return upright
    landscape = _on(patterns, drawings, PageGeometry(paper.landscape, paper.landscape.printable(margin_pt)), head_pt)
    return landscape if landscape.pages < upright.pages else upright


def _cut_roll(layout: PageLayout, drawings: Drawings, head_pt: float) -> PageLayout:
    """The same places on pages no longer than the fullest."""
    room = layout.geometry.room
    ends = [room.y_pt + head_pt]
    ends += [place.y_pt + drawings.drawn(place.item, place.turns).height_pt for place in layout.shared]
    ends += [room.y_pt + drawings.pattern(number, turns).height_pt for number, turns in layout.alone]
    ends += [room.y_pt + tile.window.height_pt for _, tiling in layout.tiles for tile in tiling.tiles]
    geometry = layout.geometry.cut_at(min(max(ends), room.bottom_pt))
    return PageLayout(geometry, layout.shared, layout.alone, layout.tiles)


def _on(patterns: Sequence[TemplatePattern], drawings: Drawings, geometry: PageGeometry, head_pt: float) -> PageLayout:
    """The layout on that geometry."""
    box = geometry.room
    whole = [number for number, pattern in enumerate(patterns) if _fits_a_page(pattern, box)]
    items = {number: _item(drawings, number) for number in whole}
    # A template that all but fills the page and has no room inside leaves its words to the foot of a page of its own.
    sharing = [number for number in whole if fits(items[number].upright, box) or fits(items[number].turned, box)]
    alone = [(number, _stand(patterns[number], box)) for number in whole if number not in set(sharing)]
    large = [pattern for number, pattern in enumerate(patterns) if number not in items]
    room = Room(box, Box(box.x_pt, box.y_pt, CONTENT_WIDTH_PT - 2 * _INSET_PT, head_pt))
    places = _shared(sharing, items, drawings, room, roll=geometry.paper.roll)
    tiles = tuple(tiled(pattern, box.width_pt, box.height_pt) for pattern in large)
    return PageLayout(geometry, places, tuple(alone), tiles)


def _item(drawings: Drawings, number: int) -> PackingItem:
    upright, turned = drawings.drawn(number, 0), drawings.drawn(number, 1)
    return PackingItem((upright.width_pt, upright.height_pt), (turned.width_pt, turned.height_pt))


def _fits_a_page(pattern: TemplatePattern, box: Box) -> bool:
    width, height = pattern.width_pt, pattern.height_pt
    return fits((width, height), box) or fits((height, width), box)


def _stand(pattern: TemplatePattern, box: Box) -> int:
    """The quarter turns with which a template goes into the box."""
    return 0 if fits((pattern.width_pt, pattern.height_pt), box) else 1


def _shared(
    numbers: Sequence[int], items: dict[int, PackingItem], drawings: Drawings, room: Room, *, roll: bool
) -> tuple[PackedItem, ...]:
    """The places of the templates that share pages: by boxes, or by shapes where that saves something."""
    chosen = [items[number] for number in numbers]
    boxed = pack_shortest(chosen, room, _GAP_PT) if roll else pack_fewest(chosen, room, _GAP_PT)
    best = boxed
    pages = page_count(boxed)
    least = _least_pages([drawings.pattern(number, 0).cutting for number in numbers], room)
    if len(numbers) <= MOST_SHAPES and (roll or pages > least) and len(numbers) > 1:
        shapes = [_shape(drawings, number, room.box) for number in numbers]
        nested = pack_shapes(shapes, room, _NESTED_GAP_PT, least_pages=0 if roll else least)
        if page_count(nested) < pages:
            best = nested
        elif roll and page_count(nested) == pages:
            saved = lowest(chosen, boxed) - _lowest_shape(numbers, nested, drawings)
            best = nested if saved > _WORTH_SAVING_PT else boxed
    return tuple(PackedItem(numbers[place.item], place.page, place.x_pt, place.y_pt, place.turns) for place in best)


def _shape(drawings: Drawings, number: int, box: Box) -> NestingShape:
    ways = []
    for turns in range(4):
        drawn = drawings.drawn(number, turns)
        if fits((drawn.width_pt, drawn.height_pt), box):
            ways.append((turns, drawn.rings))
    return NestingShape(tuple(ways))


def _lowest_shape(numbers: Sequence[int], places: Sequence[PackedItem], drawings: Drawings) -> float:
    return max(place.y_pt + drawings.drawn(numbers[place.item], place.turns).height_pt for place in places)


def _least_pages(outlines: Sequence[Contour], room: Room) -> int:
    """No packing needs fewer pages than this: the templates' area over the page's."""
    page = room.box.width_pt * room.box.height_pt
    taken = sum(abs(area(outline)) for outline in outlines)
    taken += room.head.width_pt * room.head.height_pt if room.head is not None else 0.0
    return max(1, ceil(taken / page))
