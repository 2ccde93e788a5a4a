"""Filling strips: for every height of strip at once, the pieces that are worth most within a width.

A strip filled in one way is a `Filled`: its height and the sections side by side; a section is one piece, or several
above one another. Pieces are named by their size and the way they lie.
"""

from __future__ import annotations

from bisect import bisect_left
from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from functools import cached_property

import numpy as np
from msgspec import Struct
from numpy.typing import NDArray

from blockdsl.cutting.cloth.pieces import PieceSize

Lying = tuple[int, int]
"""(size, way): a piece, and how it lies."""
Stack = tuple[Lying, ...]
"""What a section holds, from the edge of the strip on."""
Whole = NDArray[np.int64]


class Filled(Struct, frozen=True, dict=True):
    """A strip's height and its sections, each with how often it comes; equal when the strips are cut alike."""

    height: int
    sections: tuple[tuple[Stack, int], ...]

    @cached_property
    def counts(self) -> dict[int, int]:
        """How many pieces of each size."""
        counted: Counter[int] = Counter()
        for stack, times in self.sections:
            for size, _ in stack:
                counted[size] += times
        return dict(sorted(counted.items()))


Plan = dict[Filled, int]
"""Strips, and how often each is cut."""


def length_of(plan: Mapping[Filled, int]) -> int:
    """Cloth that the strips take, one after the other."""
    return sum(strip.height * times for strip, times in plan.items())


def filled(height: int, lying: Mapping[Lying, int]) -> Filled:
    """A strip of single pieces side by side, in a settled order."""
    return Filled(height, tuple(((piece,), times) for piece, times in sorted(lying.items()) if times))


def strip_heights(sizes: Sequence[PieceSize], counts: Sequence[int] | None = None) -> list[int]:
    """Heights worth cutting: those of the pieces, in each way that they lie."""
    wanted = [size for place, size in enumerate(sizes) if counts is None or counts[place]]
    return sorted({height for size in wanted for height, _ in size.ways})


class StripFilling:
    """The best fillings for one set of values, for every strip height and every width up to the cloth's.

    `best[row, width]`: what the pieces under `heights[row]` within `width` are worth at most together, no size oftener
    than `counts` says. Whole numbers throughout, so that what is proved with it is proved.
    """

    def __init__(
        self,
        sizes: Sequence[PieceSize],
        counts: Sequence[int],
        values: Sequence[int],
        heights: Sequence[int],
        width: int,
    ) -> None:
        self.heights, self.width = list(heights), width
        self.best: Whole = np.zeros((len(self.heights), width + 1), dtype=np.int64)
        self._steps: list[tuple[Lying, int, int, int, int, NDArray[np.bool_]]] = []
        for place, size in enumerate(sizes):
            if counts[place] and values[place] > 0:
                self._add(place, size, counts[place], values[place])

    def _add(self, place: int, size: PieceSize, count: int, value: int) -> None:
        """Offer one size, in portions of 1, 2, 4 … so that any number up to `count` can be put together."""
        tops = [*(bisect_left(self.heights, lies_high) for lies_high, _ in size.ways), len(self.heights)]
        for portion in portions(min(count, self.width // size.ways[-1][1])):
            for way, (_, wide) in enumerate(size.ways):
                first, last, takes = tops[way], tops[way + 1], portion * wide
                if first < last and takes <= self.width:
                    here = self.best[first:last]
                    offered = here[:, : self.width + 1 - takes] + portion * value
                    better = offered > here[:, takes:]
                    np.copyto(here[:, takes:], offered, where=better)
                    self._steps.append(((place, way), portion, takes, first, last, better))

    def strip(self, row: int, width: int | None = None) -> Filled:
        """The strip behind `best[row, width]`."""
        left = self.width if width is None else width
        lying: Counter[Lying] = Counter()
        for piece, portion, takes, first, last, better in reversed(self._steps):
            if first <= row < last and left >= takes and better[row - first, left - takes]:
                lying[piece] += portion
                left -= takes
        return filled(self.heights[row], lying)


def portions(count: int) -> Iterable[int]:
    """Whole numbers whose sums are all the numbers up to `count`, and no other: 10 gives 1, 2, 4, 3."""
    portion = 1
    while count > 0:
        yield min(portion, count)
        count -= portion
        portion *= 2
