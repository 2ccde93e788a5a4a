"""Looking for a spread of prints: a first one, evening out, exchanging. Prints are numbered from 0 here."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from heapq import heappop, heappush

Sides = Sequence[Sequence[int]]
Spread = tuple[Sides, Sides]
"""For each block the blocks beside it, and those at its corners."""

ROUNDS = 12
"""How often all blocks that clash are gone through. Counted, not timed: the same spread on every machine."""
TRIED = 400
"""With how many other blocks one block tries to exchange."""
ALL_TRIES = 60_000
"""How many exchanges are tried in all: quilts of thousands of blocks are left as they are sooner."""


def first_spread(problem: Spread, prints: int, *, equal: bool) -> list[int]:
    """A print for each block, those with the most different prints beside them first.

    `equal`: no print is used more often than all prints equally used would be.
    Source: the rule of choosing the most constrained place first (saturation degree, Brélaz 1979).
    """
    beside, corner = problem
    count = len(beside)
    spread, seen, used = [-1] * count, [set[int]() for _ in range(count)], [0] * prints
    most, extra = divmod(count, prints)
    queue: list[tuple[int, int, int]] = []
    for block in range(count):
        heappush(queue, (0, -len(beside[block]), block))
    while queue:
        saturation, _, block = heappop(queue)
        if spread[block] >= 0 or -saturation != len(seen[block]):
            continue
        limit = most + (1 if extra else 0) if equal else count
        numbers = [number for number in range(prints) if used[number] < limit]
        number = _choose(block, (beside[block], corner[block]), spread, numbers, used)
        spread[block] = number
        used[number] += 1
        extra -= 1 if equal and used[number] == most + 1 else 0
        for other in beside[block]:
            if spread[other] < 0 and number not in seen[other]:
                seen[other].add(number)
                heappush(queue, (-len(seen[other]), -len(beside[other]), other))
    return spread


def _choose(
    block: int,
    around: tuple[Sequence[int], Sequence[int]],
    spread: Sequence[int],
    numbers: Sequence[int],
    used: list[int],
) -> int:
    """The print that clashes least, at the sides, then at the corners; then the least used; then as if by chance."""
    sides, corners = (Counter(spread[other] for other in others) for others in around)
    return min(numbers, key=lambda number: (sides[number], corners[number], used[number], _scatter(block, number)))


def _scatter(block: int, number: int) -> int:
    """A number without any order to the eye, the same each time, so that prints make no stripes."""
    return (block * 2654435761 + number * 40503 * (block + 7) + number * 97) % 65521


def balance(problem: Spread, spread: list[int], prints: int) -> list[int]:
    """The spread evened out: chains of blocks that alternate between two prints change over, which adds no clash."""
    beside = problem[0]
    spread = list(spread)
    for _ in range(len(spread)):
        used = Counter(dict.fromkeys(range(prints), 0))
        used.update(spread)
        order = sorted(range(prints), key=lambda number: (used[number], number))
        pairs = ((much, little) for little in order for much in reversed(order) if used[much] - used[little] > 1)
        chain = next((found for pair in pairs if (found := _chain(beside, spread, pair, used))), None)
        if chain is None:
            break
        members, (much, little) = chain
        for block in members:
            spread[block] = little if spread[block] == much else much
    return spread


def _chain(
    beside: Sides, spread: Sequence[int], pair: tuple[int, int], used: Counter[int]
) -> tuple[list[int], tuple[int, int]] | None:
    """The blocks of a connected part in two prints whose change makes the two more nearly equal."""
    much, little = pair
    room = used[much] - used[little]
    done: set[int] = set()
    for start, number in enumerate(spread):
        if number != much or start in done:
            continue
        members, todo = [start], [start]
        done.add(start)
        while todo:
            block = todo.pop()
            for other in beside[block]:
                if other not in done and spread[other] in pair:
                    done.add(other)
                    members.append(other)
                    todo.append(other)
        moved = sum(1 if spread[block] == much else -1 for block in members)
        if 0 < moved < room:
            return members, pair
    return None


def exchange(problem: Spread, spread: list[int], prints: int) -> list[int]:
    """Blocks exchange prints two and two, which keeps the use of each, while clashes at sides or corners grow fewer."""
    if prints < 2:
        return spread
    spread, tries = list(spread), ALL_TRIES
    for round_number in range(ROUNDS):
        better = False
        for block in _clashing(problem, spread):
            others = _others(len(spread), block, round_number)
            tries -= len(others)
            if tries < 0:
                return spread
            partner = _partner(problem, spread, block, others)
            if partner is not None:
                spread[block], spread[partner] = spread[partner], spread[block]
                better = True
        if not better:
            break
    return spread


def _clashing(problem: Spread, spread: Sequence[int]) -> list[int]:
    return [
        block
        for block, number in enumerate(spread)
        if any(spread[other] == number for sides in problem for other in sides[block])
    ]


def _others(count: int, block: int, round_number: int) -> Sequence[int]:
    """The blocks to exchange with: all, or of a large quilt some from everywhere, others in each round."""
    if count <= TRIED:
        return range(count)
    return [(block + 1 + (each * 7919 + round_number * 104729) % (count - 1)) % count for each in range(TRIED)]


def _partner(problem: Spread, spread: list[int], block: int, others: Sequence[int]) -> int | None:
    """The block with which an exchange helps most; None when none of those tried helps."""
    if not any(_cost(problem, spread, block)):
        return None
    best, found = (0, 0), None
    for other in others:
        if spread[other] == spread[block]:
            continue
        gain = _gain(problem, spread, block, other)
        if gain < best:
            best, found = gain, other
    return found


def _gain(problem: Spread, spread: list[int], block: int, other: int) -> tuple[int, int]:
    """What an exchange changes in clashes at sides and at corners, below nothing when it helps."""
    before = [one + two for one, two in zip(_cost(problem, spread, block), _cost(problem, spread, other), strict=True)]
    spread[block], spread[other] = spread[other], spread[block]
    after = [one + two for one, two in zip(_cost(problem, spread, block), _cost(problem, spread, other), strict=True)]
    spread[block], spread[other] = spread[other], spread[block]
    return after[0] - before[0], after[1] - before[1]


def _cost(problem: Spread, spread: Sequence[int], block: int) -> tuple[int, int]:
    number = spread[block]
    beside, corner = problem
    return (
        sum(1 for other in beside[block] if spread[other] == number),
        sum(1 for other in corner[block] if spread[other] == number),
    )
