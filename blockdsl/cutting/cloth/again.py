"""Some strips of a plan asked again: their pieces alone, whether they can be cut from less cloth."""

from __future__ import annotations

import random
from collections import Counter

from msgspec.structs import replace

from blockdsl.cutting.cloth.choosing import choose_strips
from blockdsl.cutting.cloth.listing import useful_strips
from blockdsl.cutting.cloth.relaxed import Relaxed
from blockdsl.cutting.cloth.task import ACROSS, Answer, Task, alone, answer_length, order_of

FEWEST, MOST = 4, 6
"""Strips asked again at a time."""


def some_again(task: Task, answer: Answer, chosen: Answer, listed: int, nodes: int) -> tuple[Answer | None, int]:
    """The plan with the chosen strips cut better, or None; and the work that it took to find out."""
    part = replace(task, counts=_counts(task, chosen), sides=_room(task, answer, chosen))
    length = answer_length(chosen)
    aim = length - task.step
    relaxed = Relaxed(part)
    relaxed.add(chosen)
    relaxed.add(alone(part))
    _, worths = relaxed.grow(60)
    if worths.whole_bound(task.step) > aim:
        return None, len(relaxed.columns)
    columns = None if task.stacked else useful_strips(part, worths, aim, listed)
    if columns is None:
        columns = relaxed.columns
    choice = choose_strips(part, columns, length, nodes)
    if choice.answer is None:
        return None, choice.work + len(relaxed.columns)
    kept = Counter(answer)
    kept.subtract(chosen)
    kept.update(choice.answer)
    return {column: times for column, times in kept.items() if times}, choice.work + len(relaxed.columns)


def some_strips(answer: Answer, chance: random.Random) -> Answer:
    """Some strips by chance: neighbours in height, or anywhere."""
    all_strips = [column for column in sorted(answer, key=order_of) for _ in range(min(answer[column], MOST))]
    number = min(len(all_strips), chance.randint(FEWEST, MOST))
    if chance.random() < 0.5:
        first = chance.randrange(len(all_strips) - number + 1)
        return dict(Counter(all_strips[first : first + number]))
    return dict(Counter(chance.sample(all_strips, number)))


def _counts(task: Task, chosen: Answer) -> tuple[int, ...]:
    counts = [0] * len(task.counts)
    for (strip, _), times in chosen.items():
        for place, number in strip.counts.items():
            counts[place] += number * times
    return tuple(counts)


def _room(task: Task, answer: Answer, chosen: Answer) -> tuple[tuple[int, int], ...]:
    """What is free beside each panel while the chosen strips are taken away."""
    left = [length for _, length in task.sides]
    for column, times in answer.items():
        if column[1] != ACROSS:
            left[column[1]] -= column[0].height * (times - chosen.get(column, 0))
    return tuple((wide, length) for (wide, _), length in zip(task.sides, left, strict=True))
