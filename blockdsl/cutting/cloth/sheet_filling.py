"""Filling one sheet: the strips that are worth most together within its length."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.cutting.cloth.filling import Filled, StripFilling, strip_heights
from blockdsl.cutting.cloth.pieces import PieceSize

Strips = tuple[tuple[Filled, int], ...]
SheetOf = tuple[int, Strips]
"""What is cut from one sheet: which way it lies, then strips, and how often each, the highest first."""


class SheetWay(Struct, frozen=True):
    """A way for the sheet to lie: its width and length, and how the sizes lie on it."""

    sizes: tuple[PieceSize, ...]
    width: int
    length: int

    def turned(self) -> SheetWay:
        """The sheet turned a quarter, and the pieces on it with it."""
        sizes = tuple(
            replace(size, ways=tuple(sorted((wide, high) for high, wide in size.ways)), given=size.given[::-1])
            for size in self.sizes
        )
        return SheetWay(sizes, self.length, self.width)


class SheetTask(Struct, frozen=True):
    """Pieces to be cut from sheets, which may lie in one way or more."""

    ways: tuple[SheetWay, ...]
    counts: tuple[int, ...]

    @property
    def wanted(self) -> list[int]:
        """Places of the sizes of which some are wanted."""
        return [place for place, count in enumerate(self.counts) if count]

    def with_counts(self, counts: Sequence[int]) -> SheetTask:
        """The same sheets for other numbers of pieces."""
        return SheetTask(self.ways, tuple(counts))


def sheet_of(way: int, strips: Iterable[Filled]) -> SheetOf:
    """Strips as a sheet, in a settled order."""
    return way, tuple(
        sorted(
            Counter(strip for strip in strips if strip.sections).items(),
            key=lambda item: (-item[0].height, item[0].sections),
        )
    )


def counts_of(sheet: SheetOf) -> Counter[int]:
    """How many pieces of each size a sheet gives."""
    counted: Counter[int] = Counter()
    for strip, times in sheet[1]:
        for place, number in strip.counts.items():
            counted[place] += number * times
    return counted


class SheetFilling:
    """The best sheets for one set of values: strips of each height filled best, then the best heights together."""

    def __init__(self, task: SheetTask, way: int, values: Sequence[int]) -> None:
        self._lies, self._place, self._counts, self._values = task.ways[way], way, task.counts, values
        lies = self._lies
        heights = [height for height in strip_heights(lies.sizes, task.counts) if height <= lies.length]
        self.filling = StripFilling(lies.sizes, task.counts, values, heights, lies.width)
        self._worth: list[int] = self.filling.best[:, -1].tolist()
        self._together = [0] * (lies.length + 1)
        self._last = [-1] * (lies.length + 1)
        for long in range(1, lies.length + 1):
            self._fill(long)

    def _fill(self, long: int) -> None:
        """The best heights within a length: one of them, and the best for what it leaves."""
        best, last = self._together[long - 1], -1
        for row, high in enumerate(self.filling.heights):
            if high > long:
                break
            worth = self._worth[row] + self._together[long - high]
            if worth > best:
                best, last = worth, row
        self._together[long], self._last[long] = best, last

    @property
    def best(self) -> int:
        """What a sheet is worth at most."""
        return self._together[-1]

    def sheets(self, more_than: int, most: int) -> list[SheetOf]:
        """Sheets that are worth more than that, with different strips first; the best of them, so many at most."""
        length, heights = self._lies.length, self.filling.heights
        worths = [self._worth[row] + self._together[length - high] for row, high in enumerate(heights)]
        rows = sorted((row for row in range(len(heights)) if worths[row] > more_than), key=lambda row: -worths[row])
        found = []
        for row in rows[:most]:
            chosen = [row, *self._rows(length - heights[row])]
            sheet = sheet_of(self._place, (self.filling.strip(one) for one in chosen))
            found.append(sheet)
            if any(number > self._counts[place] for place, number in counts_of(sheet).items()):
                found.append(self._as_wanted(chosen))
        return found

    def _rows(self, long: int) -> list[int]:
        rows = []
        while long > 0:
            row = self._last[long]
            long -= 1 if row < 0 else self.filling.heights[row]
            rows.extend([row] if row >= 0 else [])
        return rows

    def _as_wanted(self, rows: Iterable[int]) -> SheetOf:
        """Strips of these heights with no more pieces than are wanted, and whatever else then fits below them."""
        left, long = list(self._counts), self._lies.length
        strips = []
        for high in sorted((self.filling.heights[row] for row in rows), reverse=True):
            strip = StripFilling(self._lies.sizes, left, self._values, [high], self._lies.width).strip(0)
            if strip.counts:
                long -= high
                strips.append(strip)
                for place, number in strip.counts.items():
                    left[place] -= number
        strips.extend(fill_below(self._lies, left, long))
        return sheet_of(self._place, strips)


def fill_below(lies: SheetWay, left: list[int], long: int) -> list[Filled]:
    """Strips for what is left of a sheet's length, the fullest first; `left` loses what they take."""
    strips = []
    areas = [size.area for size in lies.sizes]
    while heights := [height for height in strip_heights(lies.sizes, left) if height <= long]:
        filling = StripFilling(lies.sizes, left, areas, heights, lies.width)
        row = max(range(len(heights)), key=lambda row: (int(filling.best[row, -1]), -heights[row]))
        strip = filling.strip(row)
        long -= strip.height
        strips.append(strip)
        for place, number in strip.counts.items():
            left[place] -= number
    return strips
