"""Choosing where a region is joined last: rows before columns, many parts alike before few, equal before unequal.

Whichever full line is taken first, what can be sewn straight stays so: each part of a line across stays a line across
its half. So nothing is lost by looking one step ahead, and the choice is one of good order only.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator, Sequence
from itertools import pairwise

from msgspec import Struct

from blockdsl.geometry import Exact
from blockdsl.sewing.order.alike import Looks
from blockdsl.sewing.order.net import Net
from blockdsl.sewing.order.region import Region, Sides, box_of, chords, flood, reading_place

MOST_BANDS_GROUPED = 16
MOST_PATCHES_COMPARED = 800
Parts = list[list[int]]
_SLANTED = 2
"""Any way but level and upright."""


class Division(Struct, frozen=True):
    """Parts in reading order, parted by lines of one direction (0 level, 1 upright, others slanting)."""

    parts: Parts
    way: int


def choose_division(region: Region, looks: Looks) -> Division | None:
    """How to part the region along straight lines, or None when none leads right across."""
    found = list(divisions(region))
    if not found:
        return None
    judge = _Judge(region.net, looks, compare=len(region.patches) <= MOST_PATCHES_COMPARED)
    best = [min(judge.groupings(division), key=judge.cost) for division in found]
    return min(best, key=judge.cost)


def divisions(region: Region) -> Iterator[Division]:
    """For each direction the region parted along all its lines; corners cut off apart, one after the other."""
    net = region.net
    by_way: dict[int, list[Sides]] = defaultdict(list)
    for chord in chords(region):
        by_way[net.way[chord[0]]].append(chord)
    for way, lines in sorted(by_way.items()):
        bands = _bands(region, lines)
        if bands and way > 1 and _corners_apart(region, bands, lines):
            bands = None
        if bands:
            yield Division(_in_reading_order(net, bands), way)
        else:
            for chord in lines:
                yield Division(_in_reading_order(net, flood(region, frozenset(chord))), way)
    row = _leaning_row(region, [lines for way, lines in by_way.items() if way > 1])
    if row:
        yield Division(row, _SLANTED)


def _leaning_row(region: Region, by_way: Sequence[Sequence[Sides]]) -> Parts | None:
    """Single patches in a row whose lines lean to and fro, as tumblers do; None when they are no such row.

    Triangles are no such row: they are corners, and sewn one after the other. Nor are the blades of a fan.
    """
    net = region.net
    if net.bends or any(len(net.rings[patch]) == 3 for patch in region.patches):
        return None
    lines = [chord for each in by_way for chord in each]
    ends = {corner for chord in lines for corner in (net.start[chord[0]], net.end[chord[-1]])}
    if len(by_way) != 2 or len(region.patches) != len(lines) + 1 or len(ends) != 2 * len(lines):
        return None
    beside: dict[int, list[int]] = defaultdict(list)
    for chord in lines:
        beside[net.left[chord[0]]].append(net.right[chord[0]])
        beside[net.right[chord[0]]].append(net.left[chord[0]])
    row = [min((patch for patch in beside if len(beside[patch]) == 1), key=lambda patch: reading_place(net, [patch]))]
    while len(row) <= len(lines):
        onward = [patch for patch in beside[row[-1]] if patch not in row[-2:]]
        if len(onward) != 1:
            return None
        row += onward
    return _in_reading_order(net, [[patch] for patch in row])


def _bands(region: Region, lines: Sequence[Sides]) -> Parts | None:
    """The parts between parallel lines, in their order; None when they do not lie one after the other."""
    net = region.net
    parts = flood(region, frozenset(side for chord in lines for side in chord))
    if len(parts) != len(lines) + 1:
        return None
    part_of = {patch: number for number, part in enumerate(parts) for patch in part}
    order = [part_of[net.left[lines[0][0]]]]
    for chord in lines:
        before, after = part_of[net.left[chord[0]]], part_of[net.right[chord[0]]]
        if before != order[-1]:
            return _backwards(region, lines, parts, part_of)
        order.append(after)
    return [parts[number] for number in order] if len(set(order)) == len(parts) else None


def _backwards(region: Region, lines: Sequence[Sides], parts: Parts, part_of: dict[int, int]) -> Parts | None:
    """Upright lines are numbered from the left, but their left hand is on the right."""
    net = region.net
    order = [part_of[net.right[lines[0][0]]]]
    for chord in lines:
        before, after = part_of[net.right[chord[0]]], part_of[net.left[chord[0]]]
        if before != order[-1]:
            return None
        order.append(after)
    return [parts[number] for number in order] if len(set(order)) == len(parts) else None


def _corners_apart(region: Region, bands: Parts, lines: Sequence[Sides]) -> bool:
    """Two small triangles cut off the corners of something larger: a snowball, not a square in a square.

    There the outline goes straight on where the cut meets it; and no other cut comes to the same place.
    """
    net = region.net
    if len(lines) != 2 or any(len(band) > 1 or len(net.rings[band[0]]) > 3 for band in (bands[0], bands[-1])):
        return False
    ends = {corner for chord in lines for corner in (net.start[chord[0]], net.end[chord[-1]])}
    outline: dict[int, set[int]] = {corner: set() for corner in ends}
    meeting: dict[int, set[int]] = {corner: set() for corner in ends}
    for patch in region.patches:
        for side in net.sides[patch]:
            within = net.left[side] in region.inside and net.right[side] in region.inside
            for corner in ends & {net.start[side], net.end[side]}:
                (meeting if within else outline)[corner].add(net.line[side])
    return all(len(outline[corner]) == 1 and len(meeting[corner]) == 1 for corner in ends)


def _in_reading_order(net: Net, parts: Parts) -> Parts:
    first, last = reading_place(net, parts[0]), reading_place(net, parts[-1])
    return parts[::-1] if last < first else parts


class _Judge:
    """Compares ways of parting one region."""

    def __init__(self, net: Net, looks: Looks, *, compare: bool) -> None:
        self._net = net
        self._looks = looks
        self._compare = compare

    def cost(self, division: Division) -> tuple[object, ...]:
        """Less is better: a round, many alike, equal in size, few different or else balanced, few, in order."""
        parts = division.parts
        alike, mirrored, different = self._repeats(parts)
        unequal = len({self._area(part) for part in parts}) > 1
        return (
            not self._is_round(parts),
            -alike,
            unequal,
            different if alike > 1 else 0,
            max(len(part) for part in parts) if unequal else 0,
            len(parts),
            -mirrored,
            min(division.way, 2),
            self._late(parts) if division.way > 1 else (0, 0),
            division.way,
        )

    def _is_round(self, parts: Parts) -> bool:
        """Whether two triangles alike come last, on two opposite sides of a square or rectangle that is pieced."""
        if len(parts) != 3 or any(len(part) > 1 or len(self._net.rings[part[0]]) != 3 for part in parts[::2]):
            return False
        return (
            self._area(parts[0]) == self._area(parts[2])
            and len(parts[1]) > 1
            and (self._fills_its_box(parts[1]) or self._fills_its_box_on_point(parts[1]))
        )

    def _fills_its_box(self, part: Sequence[int]) -> bool:
        net = self._net
        left, top, right, bottom = box_of(net, part)
        if net.is_whole:
            return self._area(part) == 2 * (net.across[right] - net.across[left]) * (net.down[bottom] - net.down[top])
        across, down = net.exact_across, net.exact_down
        return self._area(part) == (across[right] - across[left]) * (down[bottom] - down[top])

    def _fills_its_box_on_point(self, part: Sequence[int]) -> bool:
        """Whether a part is a square whose edges lie at 45°: as large in x + y as in x - y, and twice its area."""
        net = self._net
        ring = [corner for patch in part for corner in net.rings[patch]]
        if net.is_whole:
            rising, falling = ([x + sign * y for x, y in map(net.whole.__getitem__, ring)] for sign in (1, -1))
            side = max(rising) - min(rising)
            return side == max(falling) - min(falling) and self._area(part) == side * side
        ups, downs = ([place.x + sign * place.y for place in map(net.points.__getitem__, ring)] for sign in (1, -1))
        width = max(ups) - min(ups)
        return width == max(downs) - min(downs) and self._area(part) == width * width / 2

    def _area(self, part: Sequence[int]) -> Exact | int:
        return sum(self._net.areas[patch] for patch in part)

    def _late(self, parts: Parts) -> tuple[int, int]:
        """Slanting lines: what is small and comes first in reading order is sewn first, so parted last."""
        top, left = reading_place(self._net, min(parts, key=len))
        return -top, -left

    def _repeats(self, parts: Parts) -> tuple[int, int, int]:
        """The most parts of several patches that are alike, the same with mirror images, and how many differ."""
        if not self._compare:
            return 1, 1, len(parts)
        made = [part for part in parts if len(part) > 1]
        measures = Counter(self._measure(part) for part in made)
        twins = [part for part in made if measures[self._measure(part)] > 1]
        if not twins:
            return 1, 1, len(made)
        looks = [self._looks.likeness(part) for part in twins]
        turned = Counter(look.turned for look in looks)
        either = Counter(look.either for look in looks)
        return max(turned.values()), max(either.values()), len(turned) + len(made) - len(twins)

    def groupings(self, division: Division) -> Iterator[Division]:
        """The division itself, and its bands taken together where that gives units that are made several times."""
        yield division
        count = len(division.parts)
        if not self._compare or not 3 <= count <= MOST_BANDS_GROUPED:
            return
        plain = all(len(part) == 1 for part in division.parts)
        if count > 3 and self._is_round((round_it := _grouped(division, (0, 1, count - 1, count))).parts):
            yield round_it
        for size in range(2, count // 2 + 1):
            if count % size == 0:
                grouped = _grouped(division, range(0, count + 1, size))
                alike = self._repeats(grouped.parts)[0]
                if alike == len(grouped.parts) or (alike > 1 and not plain):
                    yield grouped
        if not plain:
            yield from self._windows(division)

    def _windows(self, division: Division) -> Iterator[Division]:
        """Every run of bands of which there is another of the same measure, the bands of each taken together."""
        count = len(division.parts)
        bands = [self._measure(part) for part in division.parts]
        places: dict[tuple[int, Exact | int], list[tuple[int, int]]] = defaultdict(list)
        for start in range(count):
            patches: int = 0
            area: Exact | int = 0
            for stop in range(start + 1, count + (start > 0)):
                patches, area = patches + bands[stop - 1][0], area + bands[stop - 1][1]
                places[patches, area].append((start, stop))
        tried: list[set[int]] = []
        for runs_alike in places.values():
            apart: list[tuple[int, int]] = []
            for run in runs_alike:
                if not apart or run[0] >= apart[-1][1]:
                    apart.append(run)
            taken = {place for start, stop in apart for place in range(start + 1, stop)}
            if len(apart) > 1 and taken and taken not in tried:
                tried.append(taken)
                grouped = _grouped(division, [place for place in range(count + 1) if place not in taken])
                if self._repeats(grouped.parts)[0] > 1:
                    yield grouped

    def _measure(self, part: Sequence[int]) -> tuple[int, Exact | int]:
        return len(part), self._area(part)


def _grouped(division: Division, marks: Sequence[int]) -> Division:
    groups = [sorted(patch for part in division.parts[start:stop] for patch in part) for start, stop in pairwise(marks)]
    return Division(groups, division.way)
