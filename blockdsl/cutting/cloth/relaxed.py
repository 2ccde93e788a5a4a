"""The problem with parts of strips allowed: how short it could be at best, and the strips that are worth trying.

Column generation: a linear program over the strips known so far gives every piece a worth; the filling that is worth
more than the cloth it takes is a new strip for the program, until there is none. The worths are then rounded to whole
numbers and the bound worked out from them exactly (Farley, "A note on bounding a class of linear programming problems,
including cutting stock problems", Operations Research 38, 1990), so that no float has a say in what is proved.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from math import ceil

import highspy
import numpy as np
from highspy._core import _Highs
from msgspec import Struct

from blockdsl.cutting.cloth.filling import StripFilling
from blockdsl.cutting.cloth.stacking import Stacking
from blockdsl.cutting.cloth.task import ACROSS, Column, Task, alone
from blockdsl.geometry.fraction import Fraction

Solver = _Highs
SCALE = 1 << 24
"""Whole parts that a measure of worth is divided into."""


def quiet_solver() -> Solver:
    """A solver that says nothing, uses one thread and does the same each time.

    It is the plain class below `highspy.Highs`, which greets on the standard output when it is made.
    """
    solver = Solver()
    for option, value in (("output_flag", False), ("threads", 1), ("parallel", "off"), ("random_seed", 1)):
        solver.setOptionValue(option, value)
    return solver


class DualPrices(Struct, frozen=True):
    """A worth for each size, in whole parts, for which no strip is worth more than `ratio` of the cloth it takes.

    `bound`: length that is needed at least, exactly. `per_length`: what a measure of length beside each panel is worth.
    """

    values: tuple[int, ...]
    ratio: Fraction
    per_length: tuple[Fraction, ...]
    bound: Fraction

    def whole_bound(self, step: int) -> int:
        """The bound, rounded up to a length that there is."""
        return max(0, ceil(self.bound / step) * step)


class Relaxed:
    """The linear program, which stays warm while strips are added and counts change."""

    def __init__(self, task: Task) -> None:
        self.task = task
        self.columns: list[Column] = []
        self._known: dict[Column, int] = {}
        self._row = {place: row for row, place in enumerate(task.wanted)}
        self._solver = quiet_solver()
        for place in self._row:
            self._solver.addRow(task.counts[place], highspy.kHighsInf, 0, np.array([], np.int32), np.array([], float))
        for _, length in task.sides:
            self._solver.addRow(-highspy.kHighsInf, length, 0, np.array([], np.int32), np.array([], float))

    def add(self, columns: Iterable[Column]) -> int:
        """Let the program use these strips; how many of them are new."""
        before = len(self.columns)
        for column in columns:
            if column not in self._known:
                self._known[column] = len(self.columns)
                self.columns.append(column)
                self._add(column)
        return len(self.columns) - before

    def _add(self, column: Column) -> None:
        strip, side = column
        entries = {self._row[place]: number for place, number in strip.counts.items() if place in self._row}
        if side != ACROSS:
            entries[len(self._row) + side] = strip.height
        rows = np.array(list(entries), np.int32)
        cost = strip.height if side == ACROSS else 0
        self._solver.addCol(cost, 0, highspy.kHighsInf, len(rows), rows, np.array(list(entries.values()), float))

    def change_counts(self, task: Task) -> None:
        """Ask for other numbers of the same sizes; strips that hold more than is wanted are put aside."""
        self.task = task
        for place, row in self._row.items():
            self._solver.changeRowBounds(row, task.counts[place], highspy.kHighsInf)
        for side, (_, length) in enumerate(task.sides):
            self._solver.changeRowBounds(len(self._row) + side, -highspy.kHighsInf, length)
        self.add(alone(task))
        for place, (strip, _) in enumerate(self.columns):
            spilt = any(number > task.counts[size] for size, number in strip.counts.items())
            self._solver.changeColBounds(place, 0, 0 if spilt else highspy.kHighsInf)

    def solve(self) -> tuple[float, list[float], list[int]]:
        """Length, how often each strip is used, and the worths of the sizes in whole parts."""
        self._solver.run()
        found = self._solver.getSolution()
        values = [0] * len(self.task.sizes)
        for place, row in self._row.items():
            values[place] = max(0, int(found.row_dual[row] * SCALE)) if self.task.counts[place] else 0
        return self._solver.getObjectiveValue(), list(found.col_value), values

    def grow(self, rounds: int) -> tuple[list[float], DualPrices]:
        """Add strips until none helps, or for so many rounds; how often each is used, and the worths."""
        kind: type[StripFilling | Stacking] = Stacking if self.task.stacked else StripFilling
        heights, best = self.task.heights, None
        while True:
            _, used, values = self.solve()
            filling = kind(self.task.sizes, self.task.counts, values, heights, self.task.width)
            worths = bound_of(self.task, values, filling)
            best = worths if best is None or worths.bound > best.bound else best
            rounds -= 1
            if not rounds or not self.add(improving(self.task, filling)):
                return used, best


def bound_of(task: Task, values: Sequence[int], filling: StripFilling | Stacking) -> DualPrices:
    """The lower bound that some dual prices prove."""
    heights = filling.heights
    ratio = max(
        [Fraction(1), *(Fraction(int(filling.best[row, -1]), high * SCALE) for row, high in enumerate(heights))]
    )
    per_length = tuple(
        max(
            (Fraction(int(filling.best[row, wide]), high) for row, high in enumerate(heights) if high <= long),
            default=Fraction(0),
        )
        / SCALE
        / ratio
        for wide, long in task.sides
    )
    total = Fraction(sum(value * count for value, count in zip(values, task.counts, strict=True)), SCALE) / ratio
    bound = total - sum((long * each for (_, long), each in zip(task.sides, per_length, strict=True)), Fraction(0))
    return DualPrices(tuple(values), ratio, per_length, bound)


def overcost(worths: DualPrices, column: Column) -> Fraction:
    """What a strip costs over what its pieces are worth; never less than nothing."""
    strip, side = column
    cost = Fraction(strip.height) * (1 if side == ACROSS else worths.per_length[side])
    return cost - sum(worths.values[place] * number for place, number in strip.counts.items()) / (worths.ratio * SCALE)


def improving(task: Task, filling: StripFilling | Stacking) -> list[Column]:
    """The best strip of each height, where it is worth more than it takes."""
    found = []
    slack = SCALE >> 16
    for row, high in enumerate(filling.heights):
        if int(filling.best[row, -1]) > high * (SCALE + slack):
            found.append((filling.strip(row), ACROSS))
    for side, (wide, long) in enumerate(task.sides):
        best = max(
            (row for row, high in enumerate(filling.heights) if high <= long),
            key=lambda row: Fraction(int(filling.best[row, wide]), filling.heights[row]),
            default=None,
        )
        if best is not None and filling.best[best, wide]:
            found.append((filling.strip(best, wide), side))
    return found
