"""Fewer clashes where some are left: one block after another changes its print, and may not change straight back.

For quilts in which prints are too few for their neighbours. Change by change the best is taken, even where it is for
the worse, so that the search leaves a place where no single change helps; the best spread seen is kept.
"""

from __future__ import annotations

from collections.abc import Sequence

LOOKED_AT = 300_000
"""How many changes are looked at in all. Counted, not timed: the same spread on every machine."""
REST = 7
"""For how many changes at least a block keeps off a print that it has given up."""


def fewer_clashes(beside: Sequence[Sequence[int]], spread: Sequence[int], prints: int, bound: int) -> list[int]:
    """The spread with the fewest clashes that was met, `spread` itself among them; `bound`: fewer there cannot be."""
    now = list(spread)
    around = [[0] * prints for _ in now]
    for block, others in enumerate(beside):
        for other in others:
            around[block][now[other]] += 1
    clashing = {block for block, number in enumerate(now) if around[block][number]}
    count = sum(around[block][now[block]] for block in clashing) // 2
    best, fewest, looked, step = list(now), count, 0, 0
    resting: dict[tuple[int, int], int] = {}
    while fewest > bound and clashing and looked < LOOKED_AT:
        step += 1
        looked += len(clashing) * prints
        change = _best_change(now, around, clashing, (resting, step, fewest - count))
        if change is None:
            continue
        gain, block, number = change
        resting[block, now[block]] = step + REST + (step * 31 + block) % REST + len(clashing) // 2
        _change(beside, now, around, clashing, (block, number))
        count += gain
        if count < fewest:
            best, fewest = list(now), count
    return best


def _best_change(
    now: Sequence[int],
    around: Sequence[Sequence[int]],
    clashing: set[int],
    state: tuple[dict[tuple[int, int], int], int, int],
) -> tuple[int, int, int] | None:
    """(change in clashes, block, print): the best that does not rest, or that beats all before."""
    resting, step, record = state
    found: tuple[int, int, int] | None = None
    for block in sorted(clashing):
        sides, own = around[block], around[block][now[block]]
        for number, there in enumerate(sides):
            if number == now[block] or (found is not None and there - own >= found[0]):
                continue
            if resting.get((block, number), 0) <= step or there - own < record:
                found = (there - own, block, number)
    return found


def _change(
    beside: Sequence[Sequence[int]],
    now: list[int],
    around: list[list[int]],
    clashing: set[int],
    change: tuple[int, int],
) -> None:
    """Give a block its new print and count anew what lies around its neighbours."""
    block, number = change
    before = now[block]
    now[block] = number
    for other in (block, *beside[block]):
        if other != block:
            around[other][before] -= 1
            around[other][number] += 1
        if around[other][now[other]]:
            clashing.add(other)
        else:
            clashing.discard(other)
