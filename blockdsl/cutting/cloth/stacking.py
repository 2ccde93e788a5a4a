"""Filling strips whose sections are cut once more: pieces above one another within a section.

First the stacks: for every width of section and every height, the pieces that are worth most above one another, each
no wider than the section. Then the sections side by side, as single pieces are in `StripFilling`. That no size is used
oftener than it is wanted is held for a single stack only, so `best` is an upper bound and proves as well.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from blockdsl.cutting.cloth.filling import Filled, Lying, Stack, Whole, portions
from blockdsl.cutting.cloth.pieces import PieceSize


class Stacking:
    """As `StripFilling`, for strips with stacks in their sections."""

    def __init__(
        self,
        sizes: Sequence[PieceSize],
        counts: Sequence[int],
        values: Sequence[int],
        heights: Sequence[int],
        width: int,
    ) -> None:
        self.heights, self.width = list(heights), width
        self._sizes, self._counts = sizes, counts
        self._stack_steps: list[tuple[Lying, int, int, NDArray[np.bool_]]] = []
        self._widths: list[tuple[int, int]] = []  # (width of a section, how many steps of stacking it may use)
        stacks = self._stacks(values)
        self.best: Whole = np.zeros((len(self.heights), width + 1), dtype=np.int64)
        self._steps: list[tuple[int, int, int, NDArray[np.bool_]]] = []
        for place, (wide, _) in enumerate(self._widths):
            worth = stacks[place][self.heights][:, None]
            for portion in portions(width // wide):
                takes = portion * wide
                offered = self.best[:, : width + 1 - takes] + portion * worth
                better = offered > self.best[:, takes:]
                np.copyto(self.best[:, takes:], offered, where=better)
                self._steps.append((place, portion, takes, better))

    def _stacks(self, values: Sequence[int]) -> list[Whole]:
        """The best stacks of every height, for each width of section from the narrowest on."""
        ways = sorted(
            (wide, place, way)
            for place, size in enumerate(self._sizes)
            if self._counts[place] and values[place] > 0
            for way, (high, wide) in enumerate(size.ways)
            if wide <= self.width and high <= self.heights[-1]
        )
        worth: Whole = np.zeros(max(self.heights, default=0) + 1, dtype=np.int64)
        found: list[Whole] = []
        for number, (wide, place, way) in enumerate(ways):
            high = self._sizes[place].ways[way][0]
            for portion in portions(min(self._counts[place], self.heights[-1] // high)):
                takes = portion * high
                offered = worth[: len(worth) - takes] + portion * values[place]
                better = offered > worth[takes:]
                np.copyto(worth[takes:], offered, where=better)
                self._stack_steps.append(((place, way), portion, takes, better))
            if number + 1 == len(ways) or ways[number + 1][0] > wide:
                self._widths.append((wide, len(self._stack_steps)))
                found.append(worth.copy())
        return found

    def strip(self, row: int, width: int | None = None) -> Filled:
        """The strip behind `best[row, width]`, without pieces of which there are not so many."""
        left = self.width if width is None else width
        wanted = list(self._counts)
        sections: Counter[Stack] = Counter()
        for place, portion, takes, better in reversed(self._steps):
            if left >= takes and better[row, left - takes]:
                left -= takes
                for _ in range(portion):
                    stack = self._stack(self._widths[place][1], self.heights[row], wanted)
                    sections.update([stack] if stack else [])
        return Filled(self.heights[row], tuple(sorted(sections.items())))

    def _stack(self, steps: int, height: int, wanted: list[int]) -> Stack:
        stack: list[Lying] = []
        for (place, way), portion, takes, better in reversed(self._stack_steps[:steps]):
            if height >= takes and better[height - takes]:
                height -= takes
                number = min(portion, wanted[place])
                wanted[place] -= number
                stack.extend([(place, way)] * number)
        stack.sort(key=lambda piece: (-self._sizes[piece[0]].ways[piece[1]][0], piece))
        return tuple(stack)
