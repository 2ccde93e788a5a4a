"""Scraps: one fabric role spread over many prints, so that no two blocks side by side have the same.

A graph comes in (which blocks lie side by side, which touch at a corner), a print for each block goes out. It is the
old question of colouring a map: where there are enough prints no neighbours are alike, which anybody can check by
going through the pairs; where there are too few, as few pairs as could be found, with a number that no spread comes
below. Nothing here is left to chance: the same quilt gives the same spread.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from msgspec import Struct

from blockdsl.analysis.scraps_bound import fewest_clashes, least_clashes
from blockdsl.analysis.scraps_search import Spread, balance, exchange, first_spread
from blockdsl.analysis.scraps_tabu import fewer_clashes

Pair = tuple[int, int]
SMALL = 18
"""Up to so many blocks every spread is tried where the quick way leaves a doubt."""


class Neighbours(Struct, frozen=True):
    """`count` blocks; pairs of them that lie side by side, and pairs that touch at a corner alone."""

    count: int
    beside: tuple[Pair, ...]
    corner: tuple[Pair, ...] = ()


class PrintSpread(Struct, frozen=True):
    """The print of each block, from 1.

    `clashes`: pairs side by side with the same print; no spread has fewer than `bound`. `corner_clashes`: pairs at a
    corner. `balanced`: prints are used equally often, to within one block.
    """

    prints: int
    assignment: tuple[int, ...]
    clashes: int
    corner_clashes: int
    bound: int
    balanced: bool

    @property
    def proved(self) -> bool:
        """Whether no spread over so many prints has fewer clashes."""
        return self.clashes == self.bound

    @property
    def uses(self) -> tuple[int, ...]:
        """In how many blocks each print is."""
        counted = Counter(self.assignment)
        return tuple(counted[number] for number in range(1, self.prints + 1))


def spread_prints(neighbours: Neighbours, prints: int) -> PrintSpread:
    """A print for each block: fewest clashes side by side, then equal use, then fewest clashes at corners.

    Shape:  a number from 1 to `prints` for each block, in the blocks' order.
    Errors: ValueError when there is no print.
    Method: blocks with the least choice first (the greatest number of different prints beside them), each given the
            print that clashes least and is used least; then blocks change prints, two and two, while that helps.
            Where clashes are left, blocks change their prints one by one (`scraps_tabu`), and of a small quilt all
            spreads are tried.
    """
    if prints < 1:
        raise ValueError("scraps are cut from at least one print")
    problem = (_sides(neighbours.count, neighbours.beside), _sides(neighbours.count, neighbours.corner))
    bound = least_clashes(neighbours.count, neighbours.beside, prints)
    best = _equal_use(problem, prints)

    def better_of(*spreads: list[int]) -> list[int]:
        return min(spreads, key=lambda spread: _worth(neighbours, prints, spread))

    if _clashes(neighbours.beside, best) > bound:
        best = better_of(best, _free_use(problem, prints))
    if _clashes(neighbours.beside, best) > bound:
        best = better_of(best, _settled(problem, fewer_clashes(problem[0], best, prints, bound), prints))
    if _clashes(neighbours.corner, best):
        best = better_of(best, _apart_at_corners(problem, prints))
    clashes = _clashes(neighbours.beside, best)
    if bound < clashes and neighbours.count <= SMALL:
        found = fewest_clashes(problem[0], prints, best)
        if found is not None:
            spread, bound = found
            best = better_of(best, _settled(problem, list(spread), prints))
    return _said(neighbours, prints, best, bound)


def _equal_use(problem: Spread, prints: int) -> list[int]:
    """Every print used equally often from the start; blocks only exchange prints afterwards."""
    return exchange(problem, first_spread(problem, prints, equal=True), prints)


def _free_use(problem: Spread, prints: int) -> list[int]:
    """Prints used as the neighbours ask for, then evened out where that costs no clash."""
    return _settled(problem, first_spread(problem, prints, equal=False), prints)


def _settled(problem: Spread, spread: list[int], prints: int) -> list[int]:
    """Evened out where that costs no clash, then exchanged."""
    return exchange(problem, balance(problem, spread, prints), prints)


def _apart_at_corners(problem: Spread, prints: int) -> list[int]:
    """Blocks at a corner kept apart from the start as if they lay side by side, as four prints can just do."""
    beside, corner = problem
    around = tuple((*sides, *corners) for sides, corners in zip(beside, corner, strict=True))
    alone = (around, ((),) * len(around))
    return exchange(problem, balance(alone, first_spread(alone, prints, equal=False), prints), prints)


def _worth(neighbours: Neighbours, prints: int, spread: Sequence[int]) -> tuple[int, int, int]:
    counts = Counter(spread)
    uneven = max(counts[number] for number in range(prints)) - min(counts[number] for number in range(prints))
    return _clashes(neighbours.beside, spread), max(uneven, 1), _clashes(neighbours.corner, spread)


def _said(neighbours: Neighbours, prints: int, spread: Sequence[int], bound: int) -> PrintSpread:
    clashes, uneven, corners = _worth(neighbours, prints, spread)
    return PrintSpread(
        prints=prints,
        assignment=tuple(number + 1 for number in spread),
        clashes=clashes,
        corner_clashes=corners,
        bound=bound,
        balanced=uneven <= 1,
    )


def _clashes(pairs: Sequence[Pair], spread: Sequence[int]) -> int:
    return sum(1 for one, other in pairs if spread[one] == spread[other])


def _sides(count: int, pairs: Sequence[Pair]) -> tuple[tuple[int, ...], ...]:
    """For each block the blocks that it is paired with."""
    sides: list[list[int]] = [[] for _ in range(count)]
    for one, other in pairs:
        sides[one].append(other)
        sides[other].append(one)
    return tuple(tuple(sorted(each)) for each in sides)
