"""A whole plan out of the relaxed one: strips that it uses often enough are kept, and the rest is asked anew."""

from __future__ import annotations

import random
from math import floor

from msgspec.structs import replace

from blockdsl.cutting.cloth.relaxed import Relaxed
from blockdsl.cutting.cloth.task import ACROSS, Answer, Column, Task, alone, without_surplus

ALMOST = 1e-6
ROUNDS = 30
LUCK = 0.5
"""How far chance outweighs the part to which a strip is used."""


def dive(task: Task, relaxed: Relaxed, used: list[float], chance: random.Random | None = None) -> Answer:
    """Fix strips step by step: whole numbers of them at once, else the one that is used most nearly whole.

    With `chance`, not always that one: several dives find different plans. Each step fixes at least one piece, so that
    the dive ends: where the program's strips give none that is wanted, a strip of one size alone is taken.
    """
    answer: Answer = {}
    left = task
    while left.wanted:
        whole = {column: floor(times + ALMOST) for column, times in zip(relaxed.columns, used, strict=True)}
        chosen = {column: times for column, times in whole.items() if times}
        if not chosen:
            chosen = {_most_used(left, relaxed.columns, used, chance): 1}
        before = sum(left.counts)
        for column, times in chosen.items():
            left = _fix(left, _fitting(left, column, times), answer)
        if sum(left.counts) == before:
            left = _fix(left, _fitting(left, alone(left)[0], 1), answer)
        if left.wanted:
            relaxed.change_counts(left)
            used, _ = relaxed.grow(ROUNDS)
    return answer


def _fix(left: Task, kept: Answer, answer: Answer) -> Task:
    """Put strips into the answer; what is left to do after them."""
    for strip, number in kept.items():
        answer[strip] = answer.get(strip, 0) + number
    return less(left, kept)


def _most_used(left: Task, columns: list[Column], used: list[float], chance: random.Random | None) -> Column:
    """The strip to round up: used most, where no piece of it is too many; of equals, the highest."""

    def rank(place: int) -> tuple[float, int]:
        strip, side = columns[place]
        fits = side == ACROSS or strip.height <= left.sides[side][1]
        spilt = sum(max(0, number - left.counts[size]) for size, number in strip.counts.items())
        luck = chance.random() * LUCK if chance else 0.0
        return (used[place] - (spilt > 0) + luck if fits else -2.0, strip.height)

    best = max((place for place in range(len(used)) if used[place] > ALMOST), key=rank, default=None)
    return alone(left)[0] if best is None else columns[best]


def _fitting(left: Task, column: Column, times: int) -> Answer:
    """So many of a strip, without the pieces that are no longer wanted, and no more than there is room for."""
    strip, side = column
    if side != ACROSS:
        times = min(times, left.sides[side][1] // strip.height)
    only = left.with_counts([min(count, strip.counts.get(place, 0) * times) for place, count in enumerate(left.counts)])
    return without_surplus(only, {column: times}) if times and only.wanted else {}


def less(task: Task, answer: Answer) -> Task:
    """What is left to do after some strips."""
    counts, sides = list(task.counts), list(task.sides)
    for (strip, side), times in answer.items():
        for place, number in strip.counts.items():
            counts[place] -= number * times
        if side != ACROSS:
            sides[side] = (sides[side][0], sides[side][1] - strip.height * times)
    return replace(task, counts=tuple(counts), sides=tuple(sides))
