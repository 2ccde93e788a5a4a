"""The best whole plan from strips that are known: which of them, and how often, so that every piece is there."""

from __future__ import annotations

from collections.abc import Sequence

import highspy
import numpy as np
from msgspec import Struct

from blockdsl.cutting.cloth.relaxed import Solver, quiet_solver
from blockdsl.cutting.cloth.task import ACROSS, Answer, Column, Task, answer_length, is_enough, without_surplus


class StripChoice(Struct, frozen=True):
    """A plan, or None when no shorter one was found; a length that these strips cannot better; the steps it took."""

    answer: Answer | None
    bound: float
    work: int


def choose_strips(task: Task, columns: Sequence[Column], below: int, nodes: int) -> StripChoice:
    """The shortest plan from these strips that is shorter than `below`, looked for in so many nodes of the search.

    The length is a bound of the solver's own. A row of the problem that forbids longer plans kept it busy for minutes
    before the first node, because every strip stands in that row.
    """
    solver = quiet_solver()
    step = task.step
    for option, value in (
        ("mip_max_nodes", nodes),
        ("mip_rel_gap", 0.0),
        ("mip_abs_gap", step - 0.5),
        ("objective_bound", below - step + 0.5),
    ):
        solver.setOptionValue(option, value)
    fill(solver, task, columns)
    solver.run()
    info = solver.getInfo()
    status, work = solver.getModelStatus(), max(0, info.simplex_iteration_count)
    if status == highspy.HighsModelStatus.kInfeasible:
        return StripChoice(None, float(below), work)
    answer = None
    if info.primal_solution_status == 2:
        values = solver.getSolution().col_value
        chosen = {column: round(value) for column, value in zip(columns, values, strict=True) if round(value)}
        answer = without_surplus(task, chosen) if is_enough(task, chosen) else None
    shorter = answer is not None and answer_length(answer) < below
    return StripChoice(answer if shorter else None, min(info.mip_dual_bound, float(below)), work)


def fill(solver: Solver, task: Task, columns: Sequence[Column]) -> None:
    """Write the problem into the solver: enough of each size, no side too long."""
    rows = {place: row for row, place in enumerate(task.wanted)}
    sides = len(rows)
    lower = [float(task.counts[place]) for place in rows] + [-highspy.kHighsInf] * len(task.sides)
    upper = [highspy.kHighsInf] * len(rows) + [float(length) for _, length in task.sides]
    costs: list[float] = []
    starts: list[int] = []
    index: list[int] = []
    entries: list[float] = []
    for strip, side in columns:
        starts.append(len(index))
        costs.append(float(strip.height) if side == ACROSS else 0.0)
        for place, number in strip.counts.items():
            if place in rows:
                index.append(rows[place])
                entries.append(float(number))
        if side != ACROSS:
            index.append(sides + side)
            entries.append(float(strip.height))
    model = highspy.HighsLp()
    model.num_col_, model.num_row_ = len(columns), len(lower)
    model.col_cost_ = np.array(costs)
    model.col_lower_ = np.zeros(len(columns))
    model.col_upper_ = np.full(len(columns), highspy.kHighsInf)
    model.row_lower_, model.row_upper_ = np.array(lower), np.array(upper)
    model.a_matrix_.format_ = highspy.MatrixFormat.kColwise
    model.a_matrix_.start_ = np.array([*starts, len(index)], np.int32)
    model.a_matrix_.index_ = np.array(index, np.int32)
    model.a_matrix_.value_ = np.array(entries)
    model.integrality_ = [highspy.HighsVarType.kInteger] * len(columns)
    solver.passModel(model)
