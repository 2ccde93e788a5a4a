"""What the search is asked: sizes and how many of each are still wanted, and the cloth that strips can come from."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from math import gcd

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.cutting.cloth.filling import Filled, Plan, Stack, filled, strip_heights
from blockdsl.cutting.cloth.pieces import PieceSize

Column = tuple[Filled, int]
"""A strip and where it is cut: ACROSS the whole width, or beside the panel of that place."""
ACROSS = -1


class Task(Struct, frozen=True):
    """Pieces to be cut from cloth `width` wide; `sides`: (width, length) of what is left beside each panel.

    `stacked`: sections may be cut once more, into pieces above one another.
    """

    sizes: tuple[PieceSize, ...]
    counts: tuple[int, ...]
    width: int
    sides: tuple[tuple[int, int], ...] = ()
    stacked: bool = False

    @property
    def heights(self) -> list[int]:
        """Heights of strips worth cutting."""
        return strip_heights(self.sizes, self.counts)

    @property
    def step(self) -> int:
        """Every length is a multiple of it."""
        return gcd(*self.heights) or 1

    @property
    def wanted(self) -> list[int]:
        """Places of the sizes of which some are wanted."""
        return [place for place, count in enumerate(self.counts) if count]

    def with_counts(self, counts: Sequence[int]) -> Task:
        """The same cloth for other numbers of pieces."""
        return replace(self, counts=tuple(counts))


Answer = dict[Column, int]
"""Strips with their place, and how often each is cut."""


def answer_length(answer: Mapping[Column, int]) -> int:
    """Cloth that the strips across take; those beside panels take none."""
    return sum(strip.height * times for (strip, side), times in answer.items() if side == ACROSS)


def across_only(plan: Plan) -> Answer:
    """A plan of strips across as an answer."""
    return {(strip, ACROSS): times for strip, times in plan.items()}


def alone(task: Task) -> list[Column]:
    """A strip of each size by itself, so that there is always a plan."""
    strips = []
    for place in task.wanted:
        high, wide = task.sizes[place].ways[0]
        strips.append((filled(high, {(place, 0): min(task.counts[place], task.width // wide)}), ACROSS))
    return strips


def order_of(column: Column) -> tuple[int, int, tuple[tuple[Stack, int], ...]]:
    """A settled order: the highest strips first."""
    return -column[0].height, column[1], column[0].sections


def is_enough(task: Task, answer: Mapping[Column, int]) -> bool:
    """Whether the strips give all that is wanted, and those beside the panels fit there."""
    missing = list(task.counts)
    room = [length for _, length in task.sides]
    for (strip, side), times in answer.items():
        for place, number in strip.counts.items():
            missing[place] -= number * times
        if side != ACROSS:
            room[side] -= strip.height * times
    return max(missing, default=0) <= 0 <= min(room, default=0)


def without_surplus(task: Task, answer: Mapping[Column, int]) -> Answer:
    """The same strips with no more pieces than are wanted: the rest stays uncut, and strips sink where they can.

    What is too many comes off the highest strips first, since there it may lower them.
    """
    over = [-count for count in task.counts]
    for (strip, _), times in answer.items():
        for place, number in strip.counts.items():
            over[place] += number * times
    kept: Answer = {}
    for strip, side in sorted(answer, key=order_of):
        left = answer[strip, side]
        while left:
            one = _thinned(task, strip, over)
            times = left if one is strip else 1
            left -= times
            if one is not None:
                kept[one, side] = kept.get((one, side), 0) + times
    return kept


def _thinned(task: Task, strip: Filled, over: list[int]) -> Filled | None:
    """The strip without pieces of which there are too many; None when nothing is left of it. `over` is kept true."""
    if not any(over[place] > 0 for place in strip.counts):
        return strip
    sections: list[tuple[Stack, int]] = []
    for stack, times in strip.sections:
        left = times
        while left and any(over[place] > 0 for place, _ in stack):
            kept = []
            for piece in stack:
                if over[piece[0]] > 0:
                    over[piece[0]] -= 1
                else:
                    kept.append(piece)
            left -= 1
            if kept:
                sections.append((tuple(kept), 1))
        if left:
            sections.append((stack, left))
    return sunk(task.sizes, sections) if sections else None


def sunk(sizes: Sequence[PieceSize], sections: Iterable[tuple[Stack, int]]) -> Filled:
    """The lowest strip for some sections."""
    together: Counter[Stack] = Counter()
    for stack, times in sections:
        together[stack] += times
    height = max(sum(sizes[size].ways[way][0] for size, way in stack) for stack in together)
    return Filled(height, tuple(sorted(together.items())))
