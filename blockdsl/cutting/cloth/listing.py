"""All strips that a shorter plan could use.

With worths that no strip exceeds, a plan costs at least the bound plus what each of its strips costs over its worth.
So a strip that alone costs more than the gap between the bound and the length aimed at is in no plan so short. Of the
others only the full ones are listed: a strip with room for one more wanted piece is never better than the same with it.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import floor

import numpy as np

from blockdsl.cutting.cloth.filling import Lying, Whole, filled, portions
from blockdsl.cutting.cloth.relaxed import SCALE, DualPrices
from blockdsl.cutting.cloth.task import ACROSS, Column, Task
from blockdsl.geometry.fraction import Fraction


def useful_strips(task: Task, worths: DualPrices, aim: int, most: int) -> list[Column] | None:
    """Every full strip that a plan of length `aim` or less can use; None when there are more than `most`."""
    gap = aim - worths.bound
    if gap < 0:
        return []
    found: list[Column] = []
    for high in task.heights:
        places = [(task.width, high, ACROSS, Fraction(high))]
        for side, (wide, long) in enumerate(task.sides):
            if high <= long:
                places.append((wide, high, side, high * worths.per_length[side]))
        for wide, _, side, cost in places:
            least = (cost - gap) * worths.ratio * SCALE
            lister = _Lister(task, worths.values, high, wide)
            for lying in lister.full(max(0, -floor(-least))):
                found.append((filled(high, lying), side))
                if len(found) > most:
                    return None
    return found


class _Lister:
    """The full strips of one height and width."""

    def __init__(self, task: Task, values: tuple[int, ...], height: int, width: int) -> None:
        self._width = width
        self._pieces: list[tuple[Lying, int, int, int]] = []
        for place in task.wanted:
            way = task.sizes[place].under(height)
            if way is not None and task.sizes[place].ways[way][1] <= width:
                wide = task.sizes[place].ways[way][1]
                self._pieces.append(((place, way), wide, values[place], min(task.counts[place], width // wide)))
        # The widest first: few of them fit, the narrow ones fill up. `_rest[k]`: what the pieces from k on are worth.
        self._pieces.sort(key=lambda piece: (-piece[1], piece[0]))
        self._rest: list[Whole] = [np.zeros(width + 1, dtype=np.int64)]
        for _, wide, value, count in reversed(self._pieces):
            worth = self._rest[0].copy()
            for portion in portions(count):
                takes = portion * wide
                if takes <= width:
                    worth[takes:] = np.maximum(worth[takes:], worth[: width + 1 - takes] + portion * value)
            self._rest.insert(0, worth)
        self._bounds = [rest.tolist() for rest in self._rest]

    def full(self, least: int) -> Iterator[dict[Lying, int]]:
        """Each strip with no room for one more piece that is worth at least so much."""
        if self._pieces and self._bounds[0][self._width] >= least:
            yield from self._from(0, self._width, least, [0] * len(self._pieces))

    def _from(self, place: int, left: int, least: int, taken: list[int]) -> Iterator[dict[Lying, int]]:
        if place == len(self._pieces):
            if not any(wide <= left and taken[other] < count for other, (_, wide, _, count) in enumerate(self._pieces)):
                yield {piece: number for (piece, *_), number in zip(self._pieces, taken, strict=True) if number}
            return
        _, wide, value, count = self._pieces[place]
        bounds = self._bounds[place + 1]
        for number in range(min(count, left // wide), -1, -1):
            if number * value + bounds[left - number * wide] >= least:
                taken[place] = number
                yield from self._from(place + 1, left - number * wide, least - number * value, taken)
        taken[place] = 0
