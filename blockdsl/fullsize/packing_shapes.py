"""Outlines onto pages by their true shape, so that slanting sides nest; the same result every time.

The page is a grid of small cells, each row of it one whole number whose bits are its taken cells. An outline, grown by
half the gap, takes one run of cells in each row, from its leftmost to its rightmost point there: never less than the
outline, so that two of them never touch; a hollow on its left or right is filled. A run of n cells fits where none of
n bits is set, which a few shifts answer for all places of a row at once. The place with the highest lower edge
wins, then the farthest left, then the turn that leaves the more useful hollow.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import ceil, floor, sqrt
from typing import Final

from msgspec import Struct

from blockdsl.fullsize.packing import PackedItem, Room, page_count
from blockdsl.marks.clip import area, bounds, edges
from blockdsl.marks.display_list import Contour, PagePoint
from blockdsl.marks.theme import Box

# Cells in proportion to what is packed: a twenty-eighth of the side of a square as large as the average shape.
_CELLS_ALONG: Final = 28
_FINEST_PT: Final = 6.0
_COARSEST_PT: Final = 12.0
MOST_SHAPES: Final = 150
"""Beyond this many the search would be slow; boxes do then."""

_OPEN_PAGES: Final = 4
_SLACK: Final = 1e-6

BitRun = tuple[int, int]


class NestingShape(Struct, frozen=True):
    """What a template takes, from its own top left corner, in each of its turns: (quarter turns, its rings)."""

    ways: tuple[tuple[int, tuple[Contour, ...]], ...]


def pack_shapes(
    shapes: Sequence[NestingShape], room: Room, gap_pt: float, *, least_pages: int = 1
) -> tuple[PackedItem, ...]:
    """All shapes on as few pages, and then in as little height, as the method finds.

    Units:  points; shapes stay at least `gap_pt` apart. The search ends early at `least_pages`, 0 for never.
    Errors: ValueError when a shape fits an empty page in none of its turns.
    """
    grid = _Grid.of(room.box, gap_pt, _cell_for(shapes))
    cut = [sorted((_cells(turns, rings, grid) for turns, rings in shape.ways), key=_height_of_mass) for shape in shapes]
    best: tuple[tuple[int, float], tuple[PackedItem, ...]] | None = None
    for order in _orders(shapes):
        places, low = _pack(cut, order, room, grid)
        score = (page_count(places), low)
        if best is None or score < best[0]:
            best = (score, places)
        if score[0] <= least_pages:
            break
    return best[1] if best is not None else ()


def _cover(shape: NestingShape) -> float:
    """The area that a shape takes."""
    return sum(abs(area(ring)) for ring in shape.ways[0][1])


def _cell_for(shapes: Sequence[NestingShape]) -> float:
    average = sum(_cover(shape) for shape in shapes) / max(1, len(shapes))
    return min(max(sqrt(average) / _CELLS_ALONG, _FINEST_PT), _COARSEST_PT)


def _orders(shapes: Sequence[NestingShape]) -> tuple[list[int], ...]:
    """Large ones first: by their area, and by their longer side."""

    def size(number: int) -> tuple[float, float]:
        left, top, right, bottom = bounds(tuple(dot for ring in shapes[number].ways[0][1] for dot in ring))
        return max(right - left, bottom - top), min(right - left, bottom - top)

    numbers = range(len(shapes))
    by_area = sorted(numbers, key=lambda number: (-_cover(shapes[number]), number))
    by_length = sorted(numbers, key=lambda number: (tuple(-side for side in size(number)), number))
    return (by_area, by_length) if by_area != by_length else (by_area,)


class _Grid(Struct, frozen=True):
    """A page's grid begins and ends half a gap outside its box, so that what fits the box fits the grid."""

    columns: int
    rows: int
    cell_width_pt: float
    cell_height_pt: float
    gap_pt: float

    @staticmethod
    def of(box: Box, gap_pt: float, cell_pt: float) -> _Grid:
        """The grid of about that fineness with whole cells to its edges."""
        width, height = box.width_pt + gap_pt, box.height_pt + gap_pt
        columns, rows = max(1, floor(width / cell_pt)), max(1, floor(height / cell_pt))
        return _Grid(columns, rows, width / columns, height / rows, gap_pt)


class _Cells(Struct, frozen=True):
    """A turned shape on the grid: the runs (first cell, length) of each row, and its width in cells.

    `widest_first` has all runs with their rows, long ones first: they are the ones that find no place soonest.
    """

    turns: int
    rows: tuple[tuple[BitRun, ...], ...]
    width: int
    widest_first: tuple[tuple[int, int, int], ...]


def _cells(turns: int, rings: tuple[Contour, ...], grid: _Grid) -> _Cells:
    """The cells that the rings, grown by half the gap, take; they have the same corner as the grid."""
    wide, gap = grid.cell_width_pt, grid.gap_pt
    height = ceil((max(bounds(ring)[3] for ring in rings) + gap) / grid.cell_height_pt - _SLACK)
    rows: list[list[BitRun]] = [[] for _ in range(height)]
    for ring in rings:
        reach: list[tuple[float, float] | None] = [None] * height
        for a, b in edges(ring):
            _reach_of_side(a, b, grid, reach)
        for row, extent in enumerate(reach):
            if extent is not None:
                first = max(0, floor(extent[0] / wide + _SLACK))
                last = ceil((extent[1] + gap) / wide - _SLACK)
                rows[row].append((first, max(1, last - first)))
    width = max(first + length for runs in rows for first, length in runs)
    every = [(row, first, length) for row, runs in enumerate(rows) for first, length in runs]
    return _Cells(turns, tuple(tuple(runs) for runs in rows), width, tuple(sorted(every, key=lambda run: -run[2])))


def _height_of_mass(cells: _Cells) -> tuple[float, float, int]:
    """Of two turns that end alike, the one with more of it above and at the left leaves its hollow to what follows."""
    mass = sum(length for _, _, length in cells.widest_first)
    down = sum(row * length for row, _, length in cells.widest_first) / mass
    across = sum((first + length / 2) * length for _, first, length in cells.widest_first) / mass
    return round(down), round(across), cells.turns


def _reach_of_side(a: PagePoint, b: PagePoint, grid: _Grid, reach: list[tuple[float, float] | None]) -> None:
    """Widen each row's extent by the part of a side that comes within half the gap of the row.

    Seen from the grid's corner, half a gap above the ring's, that is a gap above the side and none below.
    """
    (ax, ay), (bx, by) = (a, b) if a[1] <= b[1] else (b, a)
    tall, gap = grid.cell_height_pt, grid.gap_pt
    slope = (bx - ax) / (by - ay) if by - ay > _SLACK else None
    first = max(0, floor(ay / tall + _SLACK))
    last = min(len(reach), ceil((by + gap) / tall - _SLACK))
    for row in range(first, last):
        if slope is None:
            low, high = min(ax, bx), max(ax, bx)
        else:
            top = ax + (max(row * tall - gap, ay) - ay) * slope
            bottom = ax + (min((row + 1) * tall, by) - ay) * slope
            low, high = (top, bottom) if top <= bottom else (bottom, top)
        now = reach[row]
        reach[row] = (low, high) if now is None else (min(low, now[0]), max(high, now[1]))


def _pack(
    cut: Sequence[Sequence[_Cells]], order: Sequence[int], room: Room, grid: _Grid
) -> tuple[tuple[PackedItem, ...], float]:
    """The places in the order of the shapes, and the lowest row used on any page."""
    pages = [_Page(room, grid)]
    places: list[PackedItem] = []
    low = 0
    for number in order:
        for index in range(max(0, len(pages) - _OPEN_PAGES), len(pages) + 1):
            if index == len(pages):
                pages.append(_Page(Room(room.box), grid))
            found = pages[index].best(cut[number])
            if found is not None:
                break
        else:
            raise ValueError("a shape does not fit the page")
        row, column, cells = found
        pages[index].take(row, column, cells)
        low = max(low, row + len(cells.rows))
        x, y = room.box.x_pt + column * grid.cell_width_pt, room.box.y_pt + row * grid.cell_height_pt
        places.append(PackedItem(number, index, x, y, cells.turns))
    return tuple(sorted(places, key=lambda place: place.item)), float(low)


class _Page:
    """The taken cells of one page."""

    def __init__(self, room: Room, grid: _Grid) -> None:
        self._width = grid.columns
        self._rows = [0] * grid.rows
        self._spread: dict[tuple[int, int], int] = {}
        if room.head is not None:
            across = ceil((room.head.right_pt - room.box.x_pt + grid.gap_pt) / grid.cell_width_pt)
            down = ceil((room.head.bottom_pt - room.box.y_pt + grid.gap_pt) / grid.cell_height_pt)
            for row in range(min(down, grid.rows)):
                self._rows[row] = (1 << across) - 1

    def best(self, ways: Sequence[_Cells]) -> tuple[int, int, _Cells] | None:
        """Row, column and turn whose lower edge is highest, then farthest left, then the first way."""
        found: tuple[int, int, int] | None = None
        for way, cells in enumerate(ways):
            deep = len(cells.rows)
            end = len(self._rows) if found is None else found[0]
            for row in range(end - deep + 1):
                column = self._leftmost(row, cells)
                if column is not None:
                    place = (row + deep, column, way)
                    found = place if found is None else min(found, place)
                    break
        return None if found is None else (found[0] - len(ways[found[2]].rows), found[1], ways[found[2]])

    def _leftmost(self, row: int, cells: _Cells) -> int | None:
        if cells.width > self._width:
            return None
        free = (1 << (self._width - cells.width + 1)) - 1
        rows, known = self._rows, self._spread
        for down, first, length in cells.widest_first:
            if rows[row + down]:
                bits = known.get((row + down, length)) or self._widened(row + down, length)
                free &= ~(bits >> first)
                if not free:
                    return None
        return (free & -free).bit_length() - 1

    def _widened(self, row: int, length: int) -> int:
        """The places of a row where a run of that length meets a taken cell."""
        bits, reach = self._rows[row], 1
        while reach < length:
            step = min(reach, length - reach)
            bits |= bits >> step
            reach += step
        self._spread[row, length] = bits
        return bits

    def take(self, row: int, column: int, cells: _Cells) -> None:
        """Mark a placed shape's cells."""
        for down, runs in enumerate(cells.rows, row):
            for first, length in runs:
                self._rows[down] |= ((1 << length) - 1) << (first + column)
        rows = range(row, row + len(cells.rows))
        self._spread = {key: bits for key, bits in self._spread.items() if key[0] not in rows}
