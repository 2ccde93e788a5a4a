"""Strip sets: strips of one length sewn side by side and cut across into segments."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable
from math import ceil

from tests.outside.virtual.cloth import NEAR, Fault
from tests.outside.virtual.plan import Line, Patch

Cloth = tuple[str, str]
"""(fabric, letter)"""


def bands(picture: tuple[Patch, ...], shape: str) -> list[list[list[Patch]]]:
    """The patches of each segment: all of a rail unit in a row; the rows of a checker, or else its columns."""
    if shape != "checker":
        return [[sorted(picture, key=lambda p: (round(p.shape.centroid.y, 4), round(p.shape.centroid.x, 4)))]]
    rows: dict[float, list[Patch]] = {}
    columns: dict[float, list[Patch]] = {}
    for patch in sorted(picture, key=lambda p: (round(p.shape.centroid.y, 4), round(p.shape.centroid.x, 4))):
        rows.setdefault(round(patch.shape.centroid.y, 4), []).append(patch)
        columns.setdefault(round(patch.shape.centroid.x, 4), []).append(patch)
    return [list(rows.values()), [columns[x] for x in sorted(columns)]]


def on_ruler(length: float, measure: float) -> float:
    """Rounded up to what the ruler reads."""
    return ceil(length / measure - NEAR) * measure


def segments_from(length: float, segment: float, squared: tuple[float, float]) -> int:
    """Cut a set of this length: squared up at first, then again whenever three segments have been cut since."""
    left, cut = length - squared[0], 0
    while True:
        if cut and cut % 3 == 0:
            left -= squared[1]
        if left < segment - NEAR:
            return cut
        left, cut = left - segment, cut + 1


def cut_segments(
    rows: Iterable[list[Patch]], units: int, in_strip: Callable[[float], int], strips: dict[Line, int]
) -> dict[Line, tuple[int, int]]:
    """Strips sewn to sets and cut until there are all segments: (strips, segments) of each line.

    `strips` is how many of each line lie on the pile, `in_strip` how many segments come out of a set of a length.
    """
    used: dict[Line, tuple[int, int]] = {}
    wanted: dict[tuple[Cloth, ...], int] = {}
    for row in rows:
        cloths = tuple((patch.fabric, patch.label) for patch in row)
        key = min(cloths, cloths[::-1])
        wanted[key] = wanted.get(key, 0) + units
    for cloths, segments in wanted.items():
        fill(Counter(cloths), segments, in_strip, strips, used)
    return used


def fill(
    cloths: Counter[Cloth],
    segments: int,
    in_strip: Callable[[float], int],
    strips: dict[Line, int],
    used: dict[Line, tuple[int, int]],
) -> None:
    """Sew sets of these cloths until so many segments are cut; `in_strip` says how many come out of a length."""
    while segments > 0:
        sets: dict[int, list[Line]] = {}
        for length in {line.cut[1] for line in strips}:
            each = in_strip(length)
            chosen = [_with(strips, cloth, length, count) for cloth, count in cloths.items()]
            if each and all(chosen):
                sets[each] = [line for line in chosen if line]
        if not sets:
            raise Fault(f"no strips of one length are left for the {segments} segments of {sorted(cloths)}")
        fitting = [each for each in sets if each <= segments]
        each = max(fitting) if fitting else min(sets)
        for line in sets[each]:
            count = cloths[line.fabric, line.label]
            strips[line] -= count
            used[line] = (used.get(line, (0, 0))[0] + count, used.get(line, (0, 0))[1] + each)
        segments -= each


def _with(strips: dict[Line, int], cloth: Cloth, length: float, count: int) -> Line | None:
    for line, left in strips.items():
        if (line.fabric, line.label) == cloth and line.cut[1] == length and left >= count:
            return line
    return None
