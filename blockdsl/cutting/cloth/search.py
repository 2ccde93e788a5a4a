"""The search for the shortest strips: simple plans first, then better ones, until one is proved or the work is done."""

from __future__ import annotations

import random
from collections.abc import Iterable
from math import ceil

from msgspec import Struct

from blockdsl.cutting.cloth.again import some_again, some_strips
from blockdsl.cutting.cloth.choosing import choose_strips
from blockdsl.cutting.cloth.dive import dive
from blockdsl.cutting.cloth.effort import Effort
from blockdsl.cutting.cloth.listing import useful_strips
from blockdsl.cutting.cloth.relaxed import DualPrices, Relaxed, overcost
from blockdsl.cutting.cloth.task import Answer, Column, Task, alone, answer_length
from blockdsl.cutting.cloth.tidy import tidied
from blockdsl.geometry.fraction import Fraction


class Limits(Struct, frozen=True):
    """How much is done: dives, strips listed at most, nodes of the search among them; and for some strips asked again.

    `work` is counted in steps of the solver, of which there are some thousands in a second.
    """

    dives: int
    listed: int
    nodes: int
    listed_again: int
    nodes_again: int
    work: int


LIMITS = {
    Effort.USUAL: Limits(dives=6, listed=4_000, nodes=60, listed_again=300, nodes_again=10, work=3_000),
    Effort.THOROUGH: Limits(dives=20, listed=8_000, nodes=1_000, listed_again=500, nodes_again=20, work=12_000),
}
ROUNDS = 1_000
MANY, MORE_NODES = 2_000, 10
"""Nodes among fewer strips than that are quick, so that there may be more of them, up to so many times."""
NEAR, FEW, FEW_NODES = Fraction(1, 1000), 450, 30
DIVE = 3_000
"""Sizes times heights from which a dive takes so long that fewer are made."""
TRIES = 400
"""Times that some strips are asked again at most; each costs a little even when it takes the solver no steps."""


class FoundPlan(Struct):
    """The best plan so far, and the length below which none can come."""

    answer: Answer
    bound: int

    @property
    def length(self) -> int:
        """Cloth that it takes."""
        return answer_length(self.answer)

    @property
    def proved(self) -> bool:
        """Whether there is nothing shorter."""
        return self.length <= self.bound

    def better(self, answer: Answer | None) -> None:
        """Keep an answer that is shorter."""
        if answer is not None and answer_length(answer) < self.length:
            self.answer = answer


def search(task: Task, starts: Iterable[Answer], effort: Effort) -> FoundPlan:
    """The shortest plan found, starting from simple ones, and the bound that is proved."""
    starts = list(starts)
    found = FoundPlan(min(starts, key=lambda answer: (answer_length(answer), len(answer))), 0)
    if not task.wanted:
        return found
    relaxed = Relaxed(task)
    relaxed.add(column for answer in starts for column in answer)
    relaxed.add(alone(task))
    used, worths = relaxed.grow(ROUNDS)
    found.bound = worths.whole_bound(task.step)
    if effort is Effort.QUICK:
        return found
    limits = LIMITS[effort]
    _dive_often(task, relaxed, used, found, limits)
    _choose_among_few(task, relaxed, worths, found)
    if not _choose_among_all(task, worths, found, limits):
        _ask_again(task, found, limits)
        _choose_among_all(task, worths, found, limits)
    found.answer = tidied(task, found.answer, relaxed.columns, worths)
    return found


def _dive_often(task: Task, relaxed: Relaxed, used: list[float], found: FoundPlan, limits: Limits) -> None:
    """Dive, then again with some luck."""
    each = max(1, len(task.wanted) * len(task.heights) * (3 if task.stacked else 1) // DIVE)
    for number in range(-(-limits.dives // each)):
        if found.proved:
            break
        chance = random.Random(number) if number else None  # noqa: S311 - nothing secret: the same plan everywhere
        found.better(dive(task, relaxed, used, chance))
        relaxed.change_counts(task)
        used, _ = relaxed.grow(ROUNDS)


def _choose_among_few(task: Task, relaxed: Relaxed, worths: DualPrices, found: FoundPlan) -> None:
    """Choose from the strips met so far, where the plan is so near the bound that only few of them can be of use."""
    gap = found.length - worths.bound
    if found.proved or gap > found.length * NEAR:
        return
    costs = {column: overcost(worths, column) for column in relaxed.columns}
    columns = sorted((column for column in costs if costs[column] <= gap), key=lambda column: costs[column])[:FEW]
    choice = choose_strips(task, columns, found.length, FEW_NODES)
    found.better(choice.answer)


def _choose_among_all(task: Task, worths: DualPrices, found: FoundPlan, limits: Limits) -> bool:
    """Choose from all strips that a shorter plan could use, if they are not too many; whether they are not."""
    if found.proved:
        return True
    if task.stacked:
        return False
    columns = useful_strips(task, worths, found.length - task.step, limits.listed)
    if columns is None:
        return False
    nodes = limits.nodes * max(1, min(MORE_NODES, MANY // max(1, len(columns))))
    choice = choose_strips(task, columns, found.length, nodes) if columns else None
    found.better(choice.answer if choice else None)
    raised = ceil((choice.bound - 1e-6) / task.step) * task.step if choice else found.length
    found.bound = max(found.bound, min(raised, found.length))
    return True


def _ask_again(task: Task, found: FoundPlan, limits: Limits) -> None:
    """Ask some strips again, until the work is done; the chances are the same each time."""
    chance = random.Random(1)  # noqa: S311 - nothing secret: the same plan on every machine
    left = limits.work // (4 if task.stacked else 1)
    asked: set[frozenset[tuple[Column, int]]] = set()
    for _ in range(TRIES):
        if left <= 0 or found.proved:
            break
        chosen = some_strips(found.answer, chance)
        if frozenset(chosen.items()) in asked:
            continue
        asked.add(frozenset(chosen.items()))
        answer, work = some_again(task, found.answer, chosen, limits.listed_again, limits.nodes_again)
        found.better(answer)
        left -= work
