"""Simple ways of planning strips: quick, and the plan that every longer search must better.

Shelves: the pieces by height, each into the first strip that has room for it, or into the one that it fills best.
Filling: a strip as high as the highest piece that is left, filled as full as can be, again and again.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence
from itertools import product

from msgspec import Struct, field

from blockdsl.cutting.cloth.filling import Filled, Lying, Plan, StripFilling, filled
from blockdsl.cutting.cloth.pieces import PieceSize

Chooser = Callable[[PieceSize], int]
"""Which way a size lies when it begins a strip."""
Lots = Callable[[PieceSize, int], tuple[tuple[int, int], ...]]
"""The same for shelves: (way, how many) of some pieces of a size."""


def _lowest(_size: PieceSize) -> int:
    return 0


def _highest(size: PieceSize) -> int:
    return len(size.ways) - 1


def greedy_plans(sizes: Sequence[PieceSize], counts: Sequence[int], width: int) -> list[Plan]:
    """All the simple plans."""
    plans = [fill_by_height(sizes, counts, width, choose) for choose in (_lowest, _highest)]
    ways_to_begin = (_as_given, _all(_lowest), _all(_highest), _all(_narrowest_waste(width)))
    for lots, best_fit, turn in product(ways_to_begin, (False, True), (False, True)):
        plans.append(_shelves(sizes, counts, width, _Rule(lots, best_fit, turn)))
    return plans


def _as_given(size: PieceSize, count: int) -> tuple[tuple[int, int], ...]:
    low = min(count, size.given[0])
    return ((0, low), (len(size.ways) - 1, count - low))


def _all(choose: Chooser) -> Lots:
    return lambda size, count: ((choose(size), count),)


def _narrowest_waste(width: int) -> Chooser:
    """The way in which a strip of nothing else wastes least at its end."""

    def choose(size: PieceSize) -> int:
        return min(range(len(size.ways)), key=lambda way: (width % size.ways[way][1] * size.ways[way][0], way))

    return choose


# --- shelves ---------------------------------------------------------------------------------------


class _Rule(Struct, frozen=True):
    """How shelves are filled: the way a piece begins a strip, whether the best strip is sought, whether pieces turn."""

    lots: Lots
    best_fit: bool
    turn: bool


class _Shelf(Struct):
    """`times` strips begun alike, with `left` over at their ends."""

    height: int
    left: int
    times: int
    lying: Counter[Lying] = field(default_factory=Counter)


def _shelves(sizes: Sequence[PieceSize], counts: Sequence[int], width: int, rule: _Rule) -> Plan:
    """First-fit or best-fit decreasing height, whole lots of equal pieces at a time."""
    lots = [(place, *lot) for place, size in enumerate(sizes) for lot in rule.lots(size, counts[place]) if lot[1]]
    lots.sort(key=lambda lot: (*(-side for side in sizes[lot[0]].ways[lot[1]]), lot[0]))
    shelves: list[_Shelf] = []
    for place, way, count in lots:
        _place_lot(sizes[place], (place, way), count, (shelves, width), rule)
    plan: Counter[Filled] = Counter()
    for shelf in shelves:
        plan[filled(shelf.height, shelf.lying)] += shelf.times
    return dict(plan)


def _place_lot(size: PieceSize, begins: Lying, count: int, onto: tuple[list[_Shelf], int], rule: _Rule) -> None:
    shelves, width = onto
    place, way = begins
    for shelf in sorted(shelves, key=lambda shelf: shelf.left) if rule.best_fit else list(shelves):
        lies = size.under(shelf.height) if rule.turn else way
        if count and lies is not None and size.ways[lies][1] <= shelf.left:
            count -= _add_to(shelf, (place, lies), size.ways[lies][1], count, shelves)
    high, wide = size.ways[way]
    each = width // wide
    for pieces, times in ((each, count // each), (count % each, 1)):
        if pieces and times:
            shelves.append(_Shelf(high, width - pieces * wide, times, Counter({begins: pieces})))


def _add_to(shelf: _Shelf, lying: Lying, wide: int, count: int, shelves: list[_Shelf]) -> int:
    """Put up to `count` pieces on shelves that are alike; those that get fewer are kept apart. How many went on."""
    each = shelf.left // wide
    full = min(shelf.times, count // each)
    rest = min(each, count - full * each) if full < shelf.times else 0
    groups = [(each, full), (rest, 1 if rest else 0), (0, shelf.times - full - (1 if rest else 0))]
    parts = [
        _Shelf(shelf.height, shelf.left - pieces * wide, times, shelf.lying + Counter({lying: pieces}))
        for pieces, times in groups
        if times
    ]
    place = next(place for place, known in enumerate(shelves) if known is shelf)
    shelves[place : place + 1] = parts
    return each * full + rest


# --- filling ---------------------------------------------------------------------------------------


def fill_by_height(sizes: Sequence[PieceSize], counts: Sequence[int], width: int, choose: Chooser) -> Plan:
    """Strips as high as the highest piece left, each filled with the most cloth that it can hold."""
    left = list(counts)
    plan: Counter[Filled] = Counter()
    while any(left):
        wanted = [place for place in range(len(sizes)) if left[place]]
        first = max(wanted, key=lambda place: (sizes[place].ways[choose(sizes[place])][0], sizes[place].area, -place))
        high, wide = sizes[first].ways[choose(sizes[first])]
        offered = [count - 1 if place == first else count for place, count in enumerate(left)]
        areas = [size.area for size in sizes]
        beside = StripFilling(sizes, offered, areas, [high], width - wide).strip(0)
        lying = Counter({piece: times for (piece,), times in beside.sections})
        lying[first, choose(sizes[first])] += 1
        strip = filled(high, lying)
        times = min(left[place] // number for place, number in strip.counts.items())
        plan[strip] += times
        take(left, strip, times)
    return dict(plan)


def take(left: list[int], strip: Filled, times: int) -> None:
    """Take the pieces of some strips from what is left to be cut."""
    for place, number in strip.counts.items():
        left[place] -= number * times
