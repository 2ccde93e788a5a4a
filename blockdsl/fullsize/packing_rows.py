"""Many copies of few shapes onto pages, in rows that lie close.

A row is filled from the left, each shape pushed against those before it, as it is or half turned, whichever lies
closer; then the row is pushed up against the rows above. A second way begins the row half a shape further in, as
bricks lie; of both the one that takes less height for each shape is taken. The same result every time.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.fullsize.packing import PackedItem, Room
from blockdsl.marks.clip import bounds, edges
from blockdsl.marks.display_list import Contour, PagePoint

_SLACK_PT: Final = 1e-6
_ROWS_ABOVE: Final = 2


class RepeatedShape(Struct, frozen=True):
    """A shape of which `count` are needed: its ring after no, one, two and three quarter turns, each from (0, 0).

    `turns` are those in which it may lie; the first of them is taken where another is no better.
    """

    rings: tuple[Contour, Contour, Contour, Contour]
    turns: tuple[int, ...]
    count: int


def pack_rows(kinds: Sequence[RepeatedShape], room: Room, gap_pt: float, *, mixed: bool) -> tuple[PackedItem, ...]:
    """All copies of all kinds, in their order; `item` of a place is the number of the kind.

    `mixed` rows are filled up with later kinds; others are of one kind until it is used up, and lie closer.

    Units:  points; about `gap_pt` is left between two shapes, less than that between slanted sides.
    Errors: ValueError when a shape is wider or higher than the page's room.
    """
    return _Packer(kinds, room, gap_pt, mixed=mixed).pack()


class _Lying(Struct, frozen=True):
    """A shape in a row: its kind, its turns and where its box begins."""

    kind: int
    turns: int
    x_pt: float
    y_pt: float = 0.0


class _Packer:
    def __init__(self, kinds: Sequence[RepeatedShape], room: Room, gap_pt: float, *, mixed: bool) -> None:
        self._kinds = kinds
        self._mixed = mixed
        self._room = room
        self._gap = gap_pt
        self._left = [kind.count for kind in kinds]
        self._beside: dict[tuple[int, int, int, int], float] = {}
        self._below: dict[tuple[int, int, int, int, float], float | None] = {}
        self._sizes = [[bounds(ring)[2:] for ring in kind.rings] for kind in kinds]

    def pack(self) -> tuple[PackedItem, ...]:
        """Row after row, page after page."""
        places: list[PackedItem] = []
        page = 0
        rows: list[list[_Lying]] = []
        box, head = self._room.box, self._room.head
        top = box.y_pt + (head.height_pt + self._gap if head is not None else 0.0)
        while any(self._left):
            row = self._next_row(rows, top)
            if row is None:
                if not rows and (page or head is None):
                    raise ValueError("a shape is larger than the page")
                page, rows, top = page + 1, [], box.y_pt
                continue
            for lying in row:
                self._left[lying.kind] -= 1
                places.append(PackedItem(lying.kind, page, lying.x_pt, lying.y_pt, lying.turns))
            rows.append(row)
        return tuple(places)

    def _next_row(self, rows: list[list[_Lying]], top: float) -> list[_Lying] | None:
        """The best row that the page still has room for; the highest shapes wait for the next page where they must."""
        for first in range(len(self._kinds)):
            if self._left[first]:
                found = self._best_row(first, rows, top)
                if found is not None:
                    return found
        return None

    def _best_row(self, first: int, rows: list[list[_Lying]], top: float) -> list[_Lying] | None:
        """A row from the left or half a shape further in, begun with a shape as it is or half turned."""
        found = []
        for start in range(len(self._kinds[first].turns)):
            plain = self._row(first, start, 0.0)
            if not plain:
                raise ValueError("a shape is wider than the page")
            half = (plain[1].x_pt - plain[0].x_pt if len(plain) > 1 else self._width(plain[0])) / 2
            for shift, row in ((0.0, plain), (half, self._row(first, start, half) if rows else [])):
                if not row:
                    continue
                y = self._height_for(row, rows, top)
                if max(y + self._height(lying) for lying in row) <= self._room.box.bottom_pt + _SLACK_PT:
                    taken = (y - (rows[-1][0].y_pt if rows else top - self._height(row[0]))) / len(row)
                    found.append((round(taken, 6), start, shift, [replace(lying, y_pt=y) for lying in row]))
        return min(found, key=lambda each: each[:3])[3] if found else None

    def _row(self, first: int, start: int, shift: float) -> list[_Lying]:
        """As many shapes as go beside each other, the highest that are left first, from the kind `first` on."""
        row: list[_Lying] = []
        for number, kind in enumerate(self._kinds[first:], start=first):
            before = len(row)
            for _ in range(self._left[number]):
                turns = kind.turns if row else kind.turns[start:]
                options = [(self._x_for(number, turn, row, shift), place) for place, turn in enumerate(turns)]
                x, place = min((round(x, 6), place) for x, place in options)
                lying = _Lying(number, turns[place], x)
                if x + self._width(lying) > self._room.box.right_pt + _SLACK_PT:
                    break
                row.append(lying)
            if not self._mixed and len(row) - before < self._left[number]:
                break
        return row

    def _x_for(self, kind: int, turns: int, row: Sequence[_Lying], shift: float) -> float:
        """As far left as the shapes before it let it, their tops level."""
        x = self._room.box.x_pt + shift
        for other in row:
            key = (other.kind, other.turns, kind, turns)
            apart = self._beside.get(key)
            if apart is None:
                first, second = (_on_its_side(ring) for ring in (self._ring(other), self._kinds[kind].rings[turns]))
                apart = self._beside[key] = _clear_below(first, second, 0.0) or 0.0
            x = max(x, other.x_pt + apart + self._gap)
        return x

    def _height_for(self, row: Sequence[_Lying], rows: Sequence[Sequence[_Lying]], top: float) -> float:
        """As high as the rows above let it."""
        y = top
        for above in rows[:-_ROWS_ABOVE]:
            y = max(y, *(other.y_pt + self._height(other) + self._gap for other in above))
        for other in (other for above in rows[-_ROWS_ABOVE:] for other in above):
            for lying in row:
                if lying.x_pt <= other.x_pt + self._width(other) and other.x_pt <= lying.x_pt + self._width(lying):
                    apart = self._apart(other, lying)
                    if apart is not None:
                        y = max(y, other.y_pt + apart + self._gap)
        return y

    def _apart(self, upper: _Lying, lower: _Lying) -> float | None:
        """How far below the one the other clears it; rows repeat themselves, so that it is worked out but once."""
        along = round(lower.x_pt - upper.x_pt, 6)
        key = (upper.kind, upper.turns, lower.kind, lower.turns, along)
        if key not in self._below:
            self._below[key] = _clear_below(self._ring(upper), self._ring(lower), along)
        return self._below[key]

    def _ring(self, lying: _Lying) -> Contour:
        return self._kinds[lying.kind].rings[lying.turns]

    def _width(self, lying: _Lying) -> float:
        return self._sizes[lying.kind][lying.turns][0]

    def _height(self, lying: _Lying) -> float:
        return self._sizes[lying.kind][lying.turns][1]


def _on_its_side(ring: Contour) -> Contour:
    """Down for across: what is said of below then holds of the right."""
    return tuple((y, x) for x, y in ring)


def _clear_below(upper: Contour, lower: Contour, along: float) -> float | None:
    """How far down a ring that begins `along` further right must begin to clear another; None when it lies beside it.

    Both outlines are straight from corner to corner, so that the closest place is at a corner of one of them.
    """
    start, stop = max(0.0, along), min(bounds(upper)[2], along + bounds(lower)[2])
    if start > stop:
        return None
    places = {start, stop, *(x for x, _ in upper), *(x + along for x, _ in lower)}
    return max(_ends(upper, x)[1] - _ends(lower, x - along)[0] for x in places if start <= x <= stop)


def _ends(ring: Contour, x: float) -> PagePoint:
    """The highest and the lowest place of a ring straight above or below x, which lies within it."""
    found: list[float] = []
    for (ax, ay), (bx, by) in edges(ring):
        if min(ax, bx) - _SLACK_PT <= x <= max(ax, bx) + _SLACK_PT:
            found += [ay, by] if abs(bx - ax) < _SLACK_PT else [ay + (by - ay) * (x - ax) / (bx - ax)]
    return min(found), max(found)
