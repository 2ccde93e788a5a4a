"""What lies in a row in few words: parts in order, what repeats once and how often."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.facts.quiltstepfacts import QuiltGroup, QuiltPart

_LONGEST = 8
"""So many parts repeat at the most; longer repeats would not be easier to read than the parts one by one."""
_GROUP = 3
_REPEAT = 1
"""What a group, and that it repeats, cost in reading, where a part costs 5."""
_PART = 5


def groups_of(parts: Sequence[QuiltPart]) -> tuple[QuiltGroup, ...]:
    """The row as the fewest parts in groups that repeat.

    Shape:  together the groups, each as often as it says, are the row; of groupings as short, the one whose first
            groups are the smallest (a block, then a sash and a block 5 times).
    """
    count = len(parts)
    best: list[tuple[int, int, int]] = [(0, 0, 0)] * (count + 1)  # cost from here on, period, times
    for start in range(count - 1, -1, -1):
        best[start] = min(_ways(parts, start, best), key=lambda way: (way[0], way[1]))
    groups = []
    start = 0
    while start < count:
        _, period, times = best[start]
        groups.append(QuiltGroup(tuple(parts[start : start + period]), times))
        start += period * times
    return tuple(groups)


def _ways(parts: Sequence[QuiltPart], start: int, best: Sequence[tuple[int, int, int]]) -> list[tuple[int, int, int]]:
    found = []
    for period in range(1, min(_LONGEST, len(parts) - start) + 1):
        unit = parts[start : start + period]
        times = 1
        while parts[start + period * times : start + period * (times + 1)] == unit:
            times += 1
        for often in {1, times}:
            after = best[start + period * often][0]
            found.append((period * _PART + _GROUP + (_REPEAT if often > 1 else 0) + after, period, often))
    return found
