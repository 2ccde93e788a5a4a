"""Letters in the patches of a lettered diagram: inside where there is room, else beside the block on a thin leader."""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import lru_cache
from typing import Final

from msgspec import Struct

from blockdsl.marks.display_list import Contour, Mark, Path
from blockdsl.marks.prose import TextStyle, line, line_centred, line_ending
from blockdsl.marks.theme import ACCENT, HAIRLINE_PT, QUIET, Box
from blockdsl.marks.typeset import CAP_HEIGHT
from blockdsl.pictures.placing import middle, toward_side

# A few sizes only, so that a drawing looks set and not blown up patch by patch.
SIZES_PT: Final = (12.0, 9.5, 7.5, 6.0, 5.0)
OUTSIDE_PT: Final = 7.0
MARGIN_PT: Final = 20.0
_LETTER_EM: Final = 0.66
_ROOM: Final = 0.9  # share of the deepest circle that a letter may fill
_EVERY_PATCH: Final = 400  # beyond this many patches only the first few of each letter are written
_FIRST_FEW: Final = 3


class Lettering(Struct, frozen=True):
    """What can be written inside (x, y, text, style), and where each letter lies that must stand outside."""

    inside: tuple[tuple[float, float, str, TextStyle], ...]
    outside: tuple[tuple[str, tuple[Contour, ...]], ...]


def letter_patches(labels: Sequence[str], rings: Sequence[Contour], colour: str = ACCENT) -> Lettering:
    """Which letters go where, for patches placed on the page.

    With more than 400 patches only the first three of each letter are written. A letter that has room in none of
    its patches goes outside, once.
    """
    inside: list[tuple[float, float, str, TextStyle]] = []
    seen: dict[str, int] = {}
    without_room: dict[str, list[Contour]] = {}
    for label, ring in zip(labels, rings, strict=True):
        if len(rings) > _EVERY_PATCH and seen.get(label, 0) >= _FIRST_FEW:
            continue
        x, y, radius = middle(ring)
        size = _size_for(len(label), round(radius, 2))
        if size is None:
            without_room.setdefault(label, []).append(ring)
            continue
        seen[label] = seen.get(label, 0) + 1
        inside.append((x, y, label, TextStyle(size, "bold", colour)))
    outside = tuple((label, tuple(rings)) for label, rings in without_room.items() if label not in seen)
    return Lettering(tuple(inside), outside)


@lru_cache(maxsize=4096)
def _size_for(letters: int, radius_pt: float) -> float | None:
    """The largest of the sizes at which so many letters fit in a circle; None when none does.

    All letters count as equally wide, so that patches of one shape have letters of one size.
    """
    for size in SIZES_PT:
        if size * math.hypot(letters * _LETTER_EM, CAP_HEIGHT) / 2 <= radius_pt * _ROOM:
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
    left, right = _sides(lettering, block)
    centre = block.x_pt + block.width_pt / 2
    style = TextStyle(OUTSIDE_PT, "bold", ACCENT)
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


def _sides(lettering: Lettering, block: Box) -> tuple[list[_Item], list[_Item]]:
    """Letters for the left and the right side, with where their leaders end, from top to bottom.

    Letters are dealt to the sides in turn, and each takes that one of its patches that lies nearest to where its
    letter would stand if all were spread evenly.
    """
    most = max(1, int(block.height_pt // (OUTSIDE_PT * 1.15)))
    letters = lettering.outside[: 2 * most]
    sides: tuple[list[_Item], list[_Item]] = ([], [])
    rows = (len(letters) + 1) // 2
    for place, (label, rings) in enumerate(letters):
        side = place % 2
        x = block.right_pt if side else block.x_pt
        y = block.y_pt + block.height_pt * (place // 2 + 0.5) / rows
        ring = min(rings, key=lambda ring: abs(ring[0][0] - x) + 2 * abs(ring[0][1] - y))
        inside_x, inside_y, _ = middle(ring)
        sides[side].append((label, *toward_side(ring, (inside_x, inside_y), x)))
    for items in sides:
        items.sort(key=lambda item: item[2])
    return sides


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
    ring: Contour = tuple((x + radius * math.cos(turn), y + radius * math.sin(turn)) for turn in _EIGHTHS)
    return Path((ring,), fill=ACCENT)


_EIGHTHS: Final = tuple(place * math.pi / 4 for place in range(8))
