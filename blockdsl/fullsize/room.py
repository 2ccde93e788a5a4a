"""Room inside an outline: where a box of words or a grain arrow can stand without touching anything.

A box's height is a band across the outline. Every side of the outline, and everything already drawn, blocks the
stretch of the band that it passes through; between the blocked stretches lie gaps, and those inside the outline are
room. Exact for any straight-sided shape, hollow ones included; only the heights are tried in steps.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import atan2, cos, sin
from typing import Final

from blockdsl.marks.clip import area, bounds, clip_line, contains, edges
from blockdsl.marks.display_list import Contour, PagePoint
from blockdsl.marks.theme import Box

_BANDS: Final = 18
_FAR: Final = 1e7


def centroid(ring: Contour) -> PagePoint:
    """The balance point of a ring's area."""
    twice = 0.0
    x = y = 0.0
    for (ax, ay), (bx, by) in edges(ring):
        cross = ax * by - bx * ay
        twice += cross
        x += (ax + bx) * cross
        y += (ay + by) * cross
    if not twice:  # far smaller than a float can tell from nothing
        return ring[0]
    return x / (3 * twice), y / (3 * twice)


def box_ring(box: Box) -> Contour:
    """The four corners of a box."""
    left, top, right, bottom = box.x_pt, box.y_pt, box.right_pt, box.bottom_pt
    return (left, top), (right, top), (right, bottom), (left, bottom)


def gaps(ring: Contour, taken: Sequence[Contour], top: float, bottom: float) -> Iterator[tuple[float, float]]:
    """Stretches from left to right, inside the ring and clear of what is taken, for all heights from top to bottom."""
    band = Box(-_FAR, top, 2 * _FAR, bottom - top)
    blocked = [stretch for side in edges(ring) if (stretch := _stretch(clip_line(side, band)))]
    for other in taken:
        parts = [stretch for side in edges(other) if (stretch := _stretch(clip_line(side, band)))]
        if parts:
            blocked.append((min(low for low, _ in parts), max(high for _, high in parts)))
    blocked.sort()
    middle = (top + bottom) / 2
    reach = -_FAR
    for low, high in blocked:
        if low > reach > -_FAR and contains(ring, (reach + low) / 2, middle):
            yield reach, low
        reach = max(reach, high)


def _stretch(line: tuple[PagePoint, PagePoint] | None) -> tuple[float, float] | None:
    if line is None:
        return None
    (ax, _), (bx, _) = line
    return (ax, bx) if ax <= bx else (bx, ax)


def find_room(ring: Contour, taken: Sequence[Contour], width: float, height: float, near: PagePoint) -> Box | None:
    """The box of that size nearest to `near` by its middle, or None when there is no room."""
    if width * height > abs(area(ring)):
        return None
    left, top, right, bottom = bounds(ring)
    if width > right - left or height > bottom - top:
        return None
    best: tuple[float, float, float] | None = None
    steps = [top + (bottom - top - height) * step / _BANDS for step in range(_BANDS + 1)]
    for y in sorted({*steps, min(max(near[1] - height / 2, top), bottom - height)}):
        down = abs(y + height / 2 - near[1])
        if best is not None and down >= best[0]:
            continue
        for low, high in gaps(ring, taken, y, y + height):
            if high - low < width:
                continue
            x = min(max(near[0] - width / 2, low), high - width)
            away = down + abs(x + width / 2 - near[0])
            if best is None or away < best[0]:
                best = (away, x, y)
    return None if best is None else Box(best[1], best[2], width, height)


def find_room_along(
    ring: Contour, taken: Sequence[Contour], direction: PagePoint, length: float, breadth: float, near: PagePoint
) -> Contour | None:
    """Room for a bar along a direction: its four corners, the first two running along it on its left side.

    The whole place is turned until the direction runs to the right, then looked at in upright boxes.
    """
    angle = atan2(direction[1], direction[0])
    turned = turn(ring, -angle)
    box = find_room(turned, [turn(other, -angle) for other in taken], length, breadth, turn((near,), -angle)[0])
    return None if box is None else turn(box_ring(box), angle)


def turn(ring: Contour, angle: float) -> Contour:
    """The ring turned clockwise as seen about the origin; the angle in radians."""
    c, s = cos(angle), sin(angle)
    return tuple((c * x - s * y, s * x + c * y) for x, y in ring)
