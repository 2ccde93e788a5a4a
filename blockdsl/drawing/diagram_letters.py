"""Letters in the patches of a line drawing: inside where there is room, else beside the block on a thin leader."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from blockdsl.drawing.diagram_place import Placing, Ring, middle
from blockdsl.drawing.marks import Mark, Path
from blockdsl.drawing.prose import Style, line, line_centred, line_ending, width_of
from blockdsl.drawing.theme import ACCENT, HAIRLINE_PT, QUIET, Box
from blockdsl.facts.blockfacts import PlacedPatch

# A few sizes only, so that a drawing looks set and not blown up patch by patch.
SIZES_PT: Final = (12.0, 9.5, 7.5, 6.0, 5.0)
OUTSIDE_PT: Final = 7.0
MARGIN_PT: Final = 20.0
_ROOM: Final = 0.92  # share of the deepest circle that a letter may fill
_EVERY_PATCH: Final = 400  # beyond this many patches only the first few of each letter are written
_FIRST_FEW: Final = 3


@dataclass(frozen=True, slots=True)
class Lettering:
    """What can be written inside (x, y, text, style), and one place (x, y) of each letter that must stand outside."""

    inside: tuple[tuple[float, float, str, Style], ...]
    outside: tuple[tuple[str, float, float], ...]


def letter_patches(patches: Sequence[PlacedPatch], placing: Placing, colour: str = ACCENT) -> Lettering:
    """Which letters go where, for a block placed on the page.

    With more than 400 patches only the first three of each letter are written. A letter that has room in none of
    its patches goes outside, once.
    """
    inside: list[tuple[float, float, str, Style]] = []
    seen: dict[str, int] = {}
    first: dict[str, tuple[float, float]] = {}
    for patch in patches:
        if len(patches) > _EVERY_PATCH and seen.get(patch.label, 0) >= _FIRST_FEW:
            continue
        x, y, radius = middle(placing.ring(patch.outline))
        size = _size_for(patch.label, radius)
        if size is None:
            first.setdefault(patch.label, (x, y))
            continue
        seen[patch.label] = seen.get(patch.label, 0) + 1
        inside.append((x, y, patch.label, Style(size, "bold", colour)))
    outside = tuple((label, *place) for label, place in first.items() if label not in seen)
    return Lettering(tuple(inside), outside)


def _size_for(label: str, radius_pt: float) -> float | None:
    """The largest of the sizes whose letters fit in a circle; None when none does."""
    for size in SIZES_PT:
        style = Style(size, "bold")
        if math.hypot(width_of(label, style), style.capitals_pt) / 2 <= radius_pt * _ROOM:
            return size
    return None


def written_inside(lettering: Lettering) -> tuple[Mark, ...]:
    """The letters that stand in their patches."""
    marks: list[Mark] = []
    for x, y, label, style in lettering.inside:
        marks += line_centred(label, x, y, style)
    return tuple(marks)


def written_outside(lettering: Lettering, block: Box) -> tuple[Mark, ...]:
    """The other letters, down both sides of the block, each with a leader to a dot in one of its patches.

    Letters keep the order of their places from top to bottom, so leaders do not cross. When the sides are full the
    rest are left out: the list of patches names them all the same.
    """
    centre = block.x_pt + block.width_pt / 2
    by_height = sorted(lettering.outside, key=lambda item: (item[2], item[1]))
    left = [item for item in by_height if item[1] < centre]
    right = [item for item in by_height if item[1] >= centre]
    most = max(1, int(block.height_pt // (OUTSIDE_PT * 1.15)))
    left, right = _balanced(left, right, most)
    style = Style(OUTSIDE_PT, "bold", ACCENT)
    marks: list[Mark] = []
    for side, x_end in ((left, block.x_pt - 4), (right, block.right_pt + 4)):
        for (label, x, y), y_label in zip(side, _spread([item[2] for item in side], block), strict=True):
            marks.append(_dot(x, y))
            leader = ((x, y), (x_end, y_label))
            marks.append(Path((leader,), closed=False, stroke=QUIET, stroke_width_pt=HAIRLINE_PT))
            baseline = y_label + style.capitals_pt / 2
            at_left = x_end < centre
            marks += (
                line_ending(label, x_end - 2, baseline, style) if at_left else line(label, x_end + 2, baseline, style)
            )
    return tuple(marks)


_Item = tuple[str, float, float]


def _balanced(left: list[_Item], right: list[_Item], most: int) -> tuple[list[_Item], list[_Item]]:
    """Neither side fuller than it can be: what is too much on one goes to the other while there is room."""
    while len(left) > most and len(right) < most:
        right.append(left.pop(len(left) // 2))
    while len(right) > most and len(left) < most:
        left.append(right.pop(len(right) // 2))
    right.sort(key=lambda item: item[2])
    left.sort(key=lambda item: item[2])
    return left[:most], right[:most]


def _spread(heights: Sequence[float], block: Box) -> list[float]:
    """Heights as near as may be to the wished ones, in the same order, a line apart, within the block's height."""
    pitch = OUTSIDE_PT * 1.15
    placed: list[float] = []
    for wish in heights:
        placed.append(max(wish, placed[-1] + pitch) if placed else max(wish, block.y_pt + pitch / 2))
    limit = block.bottom_pt - pitch / 2
    for place in range(len(placed) - 1, -1, -1):
        placed[place] = min(placed[place], limit)
        limit = placed[place] - pitch
    return placed


def _dot(x: float, y: float, radius: float = 0.9) -> Path:
    ring: Ring = tuple((x + radius * math.cos(turn), y + radius * math.sin(turn)) for turn in _EIGHTHS)
    return Path((ring,), fill=ACCENT)


_EIGHTHS: Final = tuple(place * math.pi / 4 for place in range(8))
