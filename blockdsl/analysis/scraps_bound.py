"""How few clashes a spread of prints can have: bounds that are proofs, and the whole search for small quilts.

Each bound counts groups of blocks that share no pair, each of which must have a clash of its own: with one print every
pair; with two prints every ring of an odd number of blocks; with more, one block more than there are prints, all side
by side with one another.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Sequence
from itertools import combinations

Pair = tuple[int, int]
Sides = Sequence[Sequence[int]]
STEPS = 200_000
"""How far the whole search goes before it gives up. Counted, not timed."""


def least_clashes(count: int, pairs: Sequence[Pair], prints: int) -> int:
    """A number of clashes that no spread of so many prints comes below."""
    if prints == 1:
        return len(pairs)
    left: list[set[int]] = [set() for _ in range(count)]
    for one, other in pairs:
        left[one].add(other)
        left[other].add(one)
    return _odd_rings(left) if prints == 2 else _crowds(left, prints + 1)


def _odd_rings(left: list[set[int]]) -> int:
    """Rings of an odd number of blocks, taken away one by one, short ones first: three in a ring, then any."""
    found = _crowds(left, 3)
    while ring := _odd_ring(left):
        found += 1
        for one, other in zip(ring, [*ring[1:], ring[0]], strict=True):
            left[one].discard(other)
            left[other].discard(one)
    return found


def _odd_ring(left: list[set[int]]) -> list[int] | None:
    """A ring of an odd number of blocks, or None: going out from a block in layers, two of one layer side by side."""
    came: dict[int, int] = {}
    layer: dict[int, int] = {}
    for start in range(len(left)):
        if start in came:
            continue
        came[start], layer[start], queue = start, 0, deque([start])
        while queue:
            block = queue.popleft()
            for other in sorted(left[block]):
                if other not in came:
                    came[other], layer[other] = block, layer[block] + 1
                    queue.append(other)
                elif layer[other] == layer[block]:
                    return _ring(came, block, other)
    return None


def _ring(came: dict[int, int], one: int, other: int) -> list[int]:
    """From two blocks of one layer back to where their ways part."""
    one_way, other_way = [one], [other]
    while one_way[-1] != other_way[-1]:
        one_way.append(came[one_way[-1]])
        other_way.append(came[other_way[-1]])
    return [*one_way, *reversed(other_way[:-1])]


def _crowds(left: list[set[int]], size: int) -> int:
    """Groups of `size` blocks, all side by side with one another, no pair in two of them; they are taken away."""
    found = 0
    for block in range(len(left)):
        while crowd := _crowd(left, [block], sorted(left[block]), size):
            found += 1
            for one, other in combinations(crowd, 2):
                left[one].discard(other)
                left[other].discard(one)
    return found


def _crowd(left: list[set[int]], members: list[int], others: Sequence[int], size: int) -> list[int] | None:
    if len(members) == size:
        return members
    if len(members) + len(others) < size:
        return None
    for place, other in enumerate(others):
        further = [each for each in others[place + 1 :] if each in left[other]]
        if crowd := _crowd(left, [*members, other], further, size):
            return crowd
    return None


def fewest_clashes(beside: Sides, prints: int, known: Sequence[int]) -> tuple[tuple[int, ...], int] | None:
    """The spread with the fewest clashes and their number, by going through all that could be better than `known`.

    None when that would take too long; then nothing is proved.
    """
    order = sorted(range(len(beside)), key=lambda block: (-len(beside[block]), block))
    earlier = [[other for other in beside[block] if order.index(other) < place] for place, block in enumerate(order)]
    best = list(known)
    fewest = sum(known[block] == known[other] for place, block in enumerate(order) for other in earlier[place])
    spread = [-1] * len(beside)
    steps = 0
    # Each entry: how many blocks have a print, the print of the last one, clashes up to it, prints in use.
    todo = [(0, -1, 0, 0)]
    while todo:
        placed, number, clashes, used = todo.pop()
        steps += 1
        if steps > STEPS:
            return None
        if placed:
            spread[order[placed - 1]] = number
        if clashes >= fewest:
            continue
        if placed == len(order):
            best, fewest = list(spread), clashes
            continue
        choices = []
        for choice in range(min(used + 1, prints)):
            more = sum(1 for other in earlier[placed] if spread[other] == choice)
            choices.append((more, choice))
        for more, choice in sorted(choices, reverse=True):
            todo.append((placed + 1, choice, clashes + more, max(used, choice + 1)))
    return tuple(best), fewest
