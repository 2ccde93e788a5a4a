"""Ruler, cutter and hand, drawn where they lie along a cut that leads straight up the picture.

Drawn for a right-handed maker: the left hand holds the ruler, which lies at the left of the cut; the cutter is rolled
along its right edge. For a left-handed maker all of it is mirrored in the cut.
"""

from __future__ import annotations

from math import atan2, cos, hypot, pi, sin
from typing import Final

from msgspec import Struct

from blockdsl.marks.display_list import Mark, PagePoint, Path
from blockdsl.marks.theme import ACCENT, INK, QUIET, WHITE
from blockdsl.pictures.scene_placing import RULER_PT

Capsule = tuple[float, float, float, float, float]
"""A bar with round ends: from (dx, dy) to (dx, dy), and its width."""

_OVER_PT: Final = 8.0
_LEAST_RULER_PT: Final = 38.0
_SKIN: Final = "#f6ece1"
_CUTTER_AT: Final = 0.3
_LEAST_TICK_PT: Final = 3.5
_HAND_SIZE: Final = 0.82
_HAND_LOW_PT: Final = 16.0
_FROM_CUT_PT: Final = 6.0
_ARROW_PT: Final = 39.0

# A left hand seen from above, its fingers pointing away from the body; dx from the cut, dy upward from the wrist.
_HAND: Final[tuple[Capsule, ...]] = (
    (22.0, -14.0, 22.0, 4.0, 13.0),  # wrist
    (17.5, 12.0, 26.5, 12.0, 15.0),  # palm
    (20.0, 6.0, 24.0, 6.0, 15.0),
    (14.5, 16.0, 11.5, 33.0, 4.6),  # forefinger
    (19.5, 17.0, 18.5, 37.0, 4.8),
    (24.5, 17.0, 25.5, 35.0, 4.6),
    (29.5, 15.0, 32.5, 29.0, 4.2),  # little finger
    (15.0, 6.0, 9.0, 16.0, 5.0),  # thumb, kept in
)


class _Cut(Struct, frozen=True):
    """The line of the cut; places are given by their distance from it, on the ruler's side."""

    x_pt: float
    side: float

    def at(self, dx: float, y: float) -> PagePoint:
        return self.x_pt + self.side * dx, y

    def ring(self, *places: PagePoint) -> tuple[PagePoint, ...]:
        return tuple(self.at(dx, y) for dx, y in places)


def tools(
    start: PagePoint, end: PagePoint, reach: PagePoint, room: PagePoint, *, right_handed: bool, unit_pt: float
) -> tuple[Mark, ...]:
    """Marks for the cut from `start` (nearer to the body) to `end`.

    Units:  points; `reach` is where the cloth begins and ends, top and bottom: the ruler lies over all of it, and no
            further than the picture has `room`. `unit_pt` is an inch or a centimetre of the scene.
    """
    cut = _Cut(start[0], -1.0 if right_handed else 1.0)
    bottom, top = start[1], end[1]
    half = min(max((reach[1] - reach[0]) / 2 + _OVER_PT, _LEAST_RULER_PT), (room[1] - room[0]) / 2)
    middle = min(max((reach[0] + reach[1]) / 2, room[0] + half), room[1] - half)
    rolled = bottom + (top - bottom) * _CUTTER_AT
    done = ((start, (start[0], rolled)),)
    return (
        *_ruler(cut, middle - half, middle + half, unit_pt),
        *_hand(cut, middle + _HAND_LOW_PT),
        Path(done, closed=False, stroke=WHITE, stroke_width_pt=3.0),
        Path(done, closed=False, stroke=ACCENT, stroke_width_pt=1.6),
        *_cutter(cut, rolled),
    )


def _ruler(cut: _Cut, top: float, bottom: float, unit_pt: float) -> tuple[Mark, ...]:
    """A clear ruler: its outline, and a line across its edge at every inch or centimetre."""
    ring = cut.ring((0.0, top), (RULER_PT, top), (RULER_PT, bottom), (0.0, bottom))
    step = unit_pt
    while step < _LEAST_TICK_PT:
        step *= 5
    count = int((bottom - top) / step)
    ticks = tuple(
        cut.ring((0.0, bottom - number * step), (6.0 if number % 5 else 10.0, bottom - number * step))
        for number in range(1, count + 1)
    )
    return (
        Path((ring,), stroke=WHITE, stroke_width_pt=2.2),
        Path((ring,), stroke=INK, stroke_width_pt=0.8),
        Path(ticks, closed=False, stroke=QUIET, stroke_width_pt=0.4),
    )


def _hand(cut: _Cut, wrist: float) -> tuple[Mark, ...]:
    """The hand's parts, first as outlines and then as fills, so that they make one shape."""
    size = _HAND_SIZE
    parts = [
        (_FROM_CUT_PT + x0 * size, y0 * size, _FROM_CUT_PT + x1 * size, y1 * size, width * size)
        for x0, y0, x1, y1, width in _HAND
    ]
    outlines = tuple(_capsule(cut, part, wrist, 0.6) for part in parts)
    fills = tuple(_capsule(cut, part, wrist, 0.0) for part in parts)
    return (
        *(Path((ring,), fill=INK) for ring in outlines),
        *(Path((ring,), fill=_SKIN) for ring in fills),
    )


def _capsule(cut: _Cut, part: Capsule, wrist: float, grown: float) -> tuple[PagePoint, ...]:
    x0, y0, x1, y1, width = part
    radius = width / 2 + grown
    along = atan2(y1 - y0, x1 - x0) if hypot(x1 - x0, y1 - y0) else 0.0
    ring = []
    for (x, y), first in (((x1, y1), along - pi / 2), ((x0, y0), along + pi / 2)):
        for place in range(9):
            angle = first + pi * place / 8
            ring.append(cut.at(x + radius * cos(angle), wrist - (y + radius * sin(angle))))
    return tuple(ring)


def _circle(cut: _Cut, dx: float, y: float, radius: float) -> tuple[PagePoint, ...]:
    return tuple(cut.at(dx + radius * cos(pi * place / 16), y + radius * sin(pi * place / 16)) for place in range(32))


def _cutter(cut: _Cut, y: float) -> tuple[Mark, ...]:
    """Wheel and handle at the open side of the ruler, and the way it is rolled."""
    handle = _capsule(cut, (-7.0, 0.0, -21.0, -19.0, 6.0), y, 0.0)
    rim = _capsule(cut, (-7.0, 0.0, -21.0, -19.0, 6.0), y, 0.7)
    shaft = cut.ring((-_ARROW_PT, y + 2.0), (-_ARROW_PT, y - 18.0))
    head = cut.ring((-_ARROW_PT, y - 25.0), (-_ARROW_PT - 3.5, y - 18.0), (-_ARROW_PT + 3.5, y - 18.0))
    return (
        Path((rim,), fill=WHITE),
        Path((handle,), fill=QUIET),
        Path((_circle(cut, -4.5, y, 6.4),), fill=WHITE, stroke=INK, stroke_width_pt=0.9),
        Path((_circle(cut, -4.5, y, 1.5),), fill=INK),
        Path((shaft,), closed=False, stroke=WHITE, stroke_width_pt=3.2),
        Path((head,), fill=ACCENT, stroke=WHITE, stroke_width_pt=0.6),
        Path((shaft,), closed=False, stroke=ACCENT, stroke_width_pt=1.6),
    )
