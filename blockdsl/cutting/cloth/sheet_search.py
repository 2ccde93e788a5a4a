"""The search for the fewest sheets: the relaxed problem, a whole plan out of it, and the best from all sheets met."""

from __future__ import annotations

import random
from collections.abc import Iterable
from math import ceil, floor

import highspy
import numpy as np

from blockdsl.cutting.cloth.effort import Effort
from blockdsl.cutting.cloth.relaxed import SCALE, quiet_solver
from blockdsl.cutting.cloth.sheet_filling import SheetFilling, SheetOf, SheetTask, counts_of
from blockdsl.geometry.fraction import Fraction

Sheets = dict[SheetOf, int]
"""Sheets, and how many of each are cut so."""
AT_ONCE = 4
ALMOST = 1e-6
DIVES = {Effort.USUAL: 4, Effort.THOROUGH: 16}
DIVE = 10_000
"""Sizes times sheets met from which a dive takes so long that fewer are made."""


class SheetProgram:
    """The linear program over the sheets met so far: as few of them, in parts, as give every piece."""

    def __init__(self, task: SheetTask) -> None:
        self.task = task
        self.sheets: dict[SheetOf, int] = {}
        self._counts: list[list[tuple[int, int]]] = []
        self._row = {place: row for row, place in enumerate(task.wanted)}
        self._solver = quiet_solver()
        for place in self._row:
            self._solver.addRow(task.counts[place], highspy.kHighsInf, 0, np.array([], np.int32), np.array([], float))

    def add(self, sheets: Iterable[SheetOf]) -> int:
        """Let the program use these sheets; how many of them are new."""
        before = len(self.sheets)
        for sheet in sheets:
            if sheet not in self.sheets:
                self.sheets[sheet] = len(self.sheets)
                counts = counts_of(sheet)
                self._counts.append(list(counts.items()))
                rows = np.array([self._row[place] for place in counts], np.int32)
                self._solver.addCol(1, 0, highspy.kHighsInf, len(rows), rows, np.array(list(counts.values()), float))
        return len(self.sheets) - before

    def change_counts(self, task: SheetTask) -> None:
        """Ask for other numbers of the same sizes; sheets that hold more than is wanted are put aside."""
        self.task = task
        for place, row in self._row.items():
            self._solver.changeRowBounds(row, task.counts[place], highspy.kHighsInf)
        self.add(one_piece(task))
        for column, counts in enumerate(self._counts):
            spilt = any(number > task.counts[place] for place, number in counts)
            self._solver.changeColBounds(column, 0, 0 if spilt else highspy.kHighsInf)

    def grow(self, rounds: int) -> tuple[list[float], Fraction]:
        """Add sheets until none helps, or for so many rounds; how often each is used, and the bound that is proved."""
        bound = Fraction(0)
        while True:
            self._solver.run()
            solution = self._solver.getSolution()
            values = [0] * len(self.task.counts)
            for place, row in self._row.items():
                values[place] = max(0, int(solution.row_dual[row] * SCALE)) if self.task.counts[place] else 0
            fillings = [SheetFilling(self.task, way, values) for way in range(len(self.task.ways))]
            total = sum(value * count for value, count in zip(values, self.task.counts, strict=True))
            bound = max(bound, Fraction(total, max(SCALE, *(filling.best for filling in fillings))))
            rounds -= 1
            better = [sheet for filling in fillings for sheet in filling.sheets(SCALE + (SCALE >> 16), AT_ONCE)]
            if not rounds or not self.add(better):
                return list(solution.col_value), bound


def one_piece(task: SheetTask) -> list[SheetOf]:
    """A sheet with one piece for each size, so that there is always a plan."""
    sheets = []
    for place in task.wanted:
        alone = [int(place == other) for other in range(len(task.counts))]
        sheets.append(SheetFilling(task.with_counts(alone), 0, alone).sheets(0, 1)[-1])
    return sheets


def fewest(task: SheetTask, start: Sheets, effort: Effort) -> tuple[Sheets, int]:
    """The fewest sheets found, and a number below which none can do."""
    way = task.ways[0]
    area = sum(size.area * count for size, count in zip(way.sizes, task.counts, strict=True))
    least, best = ceil(Fraction(area, way.width * way.length)), start
    if effort is Effort.QUICK or sum(best.values()) <= least:
        return best, least
    program = SheetProgram(task)
    program.add(start)
    used, bound = program.grow(400)
    least = max(least, ceil(bound))
    each = max(1, len(task.wanted) * len(program.sheets) // DIVE)
    for number in range(-(-DIVES[effort] // each)):
        if sum(best.values()) <= least:
            break
        chance = random.Random(number) if number else None  # noqa: S311 - nothing secret: the same plan everywhere
        found = dive_sheets(task, program, used, chance)
        best = min(best, found, key=lambda sheets: (sum(sheets.values()), len(sheets)))
        program.change_counts(task)
        used, _ = program.grow(50)
    return best, least


def dive_sheets(task: SheetTask, program: SheetProgram, used: list[float], chance: random.Random | None) -> Sheets:
    """Fix sheets step by step: whole numbers of them at once, else the one that is used most nearly whole.

    Each step fixes at least one piece, so that it ends: a sheet without any that is wanted is not taken.
    """
    answer: Sheets = {}
    left = task
    while left.wanted:
        chosen = {sheet: floor(used[column] + ALMOST) for sheet, column in program.sheets.items() if column < len(used)}
        chosen = {sheet: times for sheet, times in chosen.items() if times}
        if not chosen:
            chosen = {_most_used(left, program, used, chance): 1}
        chosen = {
            sheet: times for sheet, times in chosen.items() if any(left.counts[place] for place in counts_of(sheet))
        }
        counts = list(left.counts)
        for sheet, times in (chosen or {one_piece(left)[0]: 1}).items():
            answer[sheet] = answer.get(sheet, 0) + times
            for place, number in counts_of(sheet).items():
                counts[place] = max(0, counts[place] - number * times)
        left = left.with_counts(counts)
        if left.wanted:
            program.change_counts(left)
            used, _ = program.grow(20)
    return answer


def _most_used(left: SheetTask, program: SheetProgram, used: list[float], chance: random.Random | None) -> SheetOf:
    """The sheet to round up: used most, where no piece of it is too many."""

    def rank(sheet: SheetOf) -> tuple[float, int]:
        spilt = sum(max(0, number - left.counts[place]) for place, number in counts_of(sheet).items())
        luck = chance.random() / 2 if chance else 0.0
        return used[program.sheets[sheet]] - (spilt > 0) + luck, -program.sheets[sheet]

    used_at_all = (sheet for sheet, column in program.sheets.items() if column < len(used) and used[column] > ALMOST)
    return max(used_at_all, key=rank, default=None) or one_piece(left)[0]
