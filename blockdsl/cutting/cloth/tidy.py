"""Of plans that take the same cloth, one with fewer different strips to measure, then with fewer cuts."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

import highspy
import numpy as np

from blockdsl.cutting.cloth.choosing import fill
from blockdsl.cutting.cloth.filling import Filled
from blockdsl.cutting.cloth.pieces import PieceSize
from blockdsl.cutting.cloth.relaxed import DualPrices, Solver, overcost, quiet_solver
from blockdsl.cutting.cloth.task import ACROSS, Answer, Column, Task, answer_length, is_enough, without_surplus

MOST, SIZES, NODES = 80, 30, 25
A_CUT = 1 / 1024
"""What a cut weighs beside a further kind of strip."""


def cuts_of(sizes: Sequence[PieceSize], strip: Filled) -> int:
    """Cuts for one strip: to take it off, to take off each section, to part a stack, to trim what is lower."""
    cuts = 1
    for stack, times in strip.sections:
        high = sum(sizes[size].ways[way][0] for size, way in stack)
        cuts += times * (len(stack) + (1 if high < strip.height else 0))
    return cuts


def effort_of(task: Task, answer: Answer) -> tuple[int, int]:
    """Different strips, then cuts: what is to be few."""
    return len(answer), sum(cuts_of(task.sizes, strip) * times for (strip, _), times in answer.items())


def tidied(task: Task, answer: Answer, met: Iterable[Column], worths: DualPrices) -> Answer:
    """A plan that takes no more cloth, chosen from the strips of this one and the cheapest of those met."""
    costs = {column: overcost(worths, column) for column in met if column not in answer}
    gap = answer_length(answer) - worths.bound
    others = sorted((column for column in costs if costs[column] <= gap), key=lambda column: costs[column])
    columns = [*answer, *others[: max(0, MOST - len(answer))]]
    if len(answer) < 2 or len(columns) > MOST or len(task.wanted) > SIZES:
        return answer
    solver = quiet_solver()
    solver.setOptionValue("mip_max_nodes", NODES)
    fill(solver, task, columns)
    _allow_no_more(solver, columns, answer_length(answer))
    none = np.array([], np.int32)
    for place, (strip, _) in enumerate(columns):
        most = max(-(-task.counts[size] // number) for size, number in strip.counts.items())
        solver.changeColCost(place, A_CUT * cuts_of(task.sizes, strip) / max(1, most))
        solver.addCol(1.0, 0.0, 1.0, 0, none, np.array([], float))
        solver.changeColIntegrality(len(columns) + place, highspy.HighsVarType.kInteger)
        pair = np.array([place, len(columns) + place], np.int32)
        solver.addRow(-highspy.kHighsInf, 0.0, 2, pair, np.array([1.0, -float(most)]))
    start = highspy.HighsSolution()
    start.col_value = [
        *(float(answer.get(column, 0)) for column in columns),
        *(float(column in answer) for column in columns),
    ]
    solver.setSolution(start)
    solver.run()
    if solver.getInfo().primal_solution_status != 2:
        return answer
    values = solver.getSolution().col_value
    chosen = {column: round(times) for column, times in zip(columns, values, strict=False) if round(times)}
    if not is_enough(task, chosen):
        return answer
    found = without_surplus(task, chosen)
    fits = answer_length(found) <= answer_length(answer)
    return found if fits and effort_of(task, found) < effort_of(task, answer) else answer


def _allow_no_more(solver: Solver, columns: Sequence[Column], most: int) -> None:
    """Forbid plans that take more cloth."""
    across = np.array([place for place, (_, side) in enumerate(columns) if side == ACROSS], np.int32)
    heights = np.array([float(columns[place][0].height) for place in across])
    solver.addRow(-highspy.kHighsInf, float(most), len(across), across, heights)
