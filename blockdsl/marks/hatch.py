"""Hatching: fabrics told apart without their colours, by lines and dots clipped to each patch.

A hatch hangs on the page and not on its patch, so that neighbouring patches of one fabric run on as cloth does.
Painters know no patterns: every line is drawn.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from functools import lru_cache
from itertools import groupby
from math import ceil, cos, floor, radians, sin
from typing import Final

from msgspec import Struct

from blockdsl.marks.display_list import PagePoint, Path, Segment

LINE_WIDTH_PT: Final = 0.4
_PHASE: Final = 0.37
"""Hatch lines keep off round numbers, where seams lie."""
_CONTRAST: Final = 2.2
"""Of hatch to fabric: seen in print, yet quieter than seams and letters."""
_DOT_PT: Final = 0.05
"""A dot is a dash of next to no length with round ends; of none at all some painters leave it out."""


class HatchLines(Struct, frozen=True):
    """Parallel lines: angle clockwise from the x axis, spacing, and dash and gap along them when broken (points)."""

    angle_degrees: float
    spacing_pt: float
    dash_pt: float = 0.0
    gap_pt: float = 0.0


class Dots(Struct, frozen=True):
    """Dots of a radius, every other row moved by half a step (points)."""

    spacing_pt: float
    radius_pt: float


Hatch = tuple[HatchLines | Dots, ...]

HATCHES: Final[tuple[Hatch, ...]] = (
    (),
    (HatchLines(-45, 4.5),),
    (Dots(5.5, 0.55),),
    (HatchLines(45, 4.5),),
    (HatchLines(0, 4.5),),
    (HatchLines(-45, 7), HatchLines(45, 7)),
    (HatchLines(90, 4.5),),
    (HatchLines(0, 4, 5, 4),),
    (HatchLines(0, 7), HatchLines(90, 7)),
    (HatchLines(-45, 11),),
    (HatchLines(90, 5, 2.5, 2.5),),
    (Dots(10, 1.3),),
)
"""By fabric number, from 1; the thirteenth fabric begins again."""


def hatch(polygon: Sequence[PagePoint], number: int, fill: str = "#ffffff") -> tuple[Path, ...]:
    """The hatch of fabric `number` (from 1) on one patch, in an ink that shows on `fill`.

    Units:  points on the page. The outline may be hollow or cross itself (even-odd rule).
    """
    return hatch_all((polygon,), number, fill)


def hatch_all(polygons: Iterable[Sequence[PagePoint]], number: int, fill: str = "#ffffff") -> tuple[Path, ...]:
    """The hatch of many patches of one fabric, as few marks as can be: one for all lines, one for all dots."""
    style = HATCHES[(number - 1) % len(HATCHES)]
    if not style:
        return ()
    patches = [polygon for polygon in polygons if len(polygon) > 2]
    ink = hatch_ink(fill)
    marks = []
    lines = tuple(
        line
        for part in style
        if isinstance(part, HatchLines)
        for patch in patches
        for line in clipped_lines(patch, part)
    )
    if lines:
        marks.append(Path(lines, closed=False, stroke=ink, stroke_width_pt=LINE_WIDTH_PT))
    for dots in (part for part in style if isinstance(part, Dots)):
        rows = tuple(row for patch in patches for row in clipped_dots(patch, dots))
        if rows:
            marks.append(_dotted(rows, dots, ink))
    return tuple(marks)


def _dotted(rows: tuple[Segment, ...], dots: Dots, ink: str) -> Path:
    """The rows as one dashed mark: a line for a row is a small part of what a ring for each dot would be."""
    dash = (_DOT_PT, dots.spacing_pt - _DOT_PT)
    return Path(rows, closed=False, stroke=ink, stroke_width_pt=2 * dots.radius_pt, dash=dash, round_ends=True)


def clipped_lines(polygon: Sequence[PagePoint], lines: HatchLines) -> Iterator[Segment]:
    """The parts of the lines that lie within the polygon."""
    turn = radians(lines.angle_degrees)
    cosine, sine = cos(turn), sin(turn)
    turned = [(x * cosine + y * sine, y * cosine - x * sine) for x, y in polygon]
    for row, v in _rows(turned, lines.spacing_pt):
        for start, end in _spans(turned, v):
            for left, right in _dashes(start, end, lines, row):
                yield (
                    (left * cosine - v * sine, left * sine + v * cosine),
                    (right * cosine - v * sine, right * sine + v * cosine),
                )


def clipped_dots(polygon: Sequence[PagePoint], dots: Dots) -> Iterator[Segment]:
    """Rows of dots that lie within the polygon altogether, each from its first dot's middle to its last dot's.

    Where a dot would not lie within, a row ends and another begins. The end is a dot's length beyond the middle.
    """
    radius, step = dots.radius_pt, dots.spacing_pt
    for row, y in _rows(polygon, step * 0.75):
        above, below = _spans(polygon, y - radius), _spans(polygon, y + radius)
        shift = step * (_PHASE + (0.5 if row % 2 else 0))
        for start, end in _spans(polygon, y):
            first, last = ceil((start + radius - shift) / step), floor((end - radius - shift) / step)
            inside = [
                p
                for p in range(first, last + 1)
                if _within(p * step + shift, above) and _within(p * step + shift, below)
            ]
            for left, right in _runs(inside):
                yield ((left * step + shift, y), (right * step + shift + _DOT_PT, y))


def _runs(places: Sequence[int]) -> Iterator[tuple[int, int]]:
    """The first and the last of every stretch of numbers without a gap."""
    for _, group in groupby(enumerate(places), key=lambda pair: pair[1] - pair[0]):
        stretch = [place for _, place in group]
        yield stretch[0], stretch[-1]


def _rows(polygon: Sequence[PagePoint], spacing: float) -> Iterator[tuple[int, float]]:
    """The number and height of every hatch line that may meet the polygon."""
    heights = [y for _, y in polygon]
    first, last = ceil(min(heights) / spacing - _PHASE), floor(max(heights) / spacing - _PHASE)
    return ((row, (row + _PHASE) * spacing) for row in range(first, last + 1))


def _spans(polygon: Sequence[PagePoint], height: float) -> list[tuple[float, float]]:
    """Where a level line at `height` runs within the polygon, by the even-odd rule."""
    meets = []
    x0, y0 = polygon[-1]
    for x1, y1 in polygon:
        if (y0 <= height) != (y1 <= height):
            meets.append(x0 + (height - y0) * (x1 - x0) / (y1 - y0))
        x0, y0 = x1, y1
    meets.sort()
    return list(zip(meets[::2], meets[1::2], strict=True))


def _dashes(start: float, end: float, lines: HatchLines, row: int) -> Iterator[tuple[float, float]]:
    """The line itself, or its dashes; every other row's dashes stand over the gaps of the row before."""
    if not lines.gap_pt:
        yield start, end
        return
    period = lines.dash_pt + lines.gap_pt
    shift = period / 2 if row % 2 else 0.0
    for place in range(floor((start - shift) / period), ceil((end - shift) / period)):
        left = place * period + shift
        if max(start, left) < min(end, left + lines.dash_pt):
            yield max(start, left), min(end, left + lines.dash_pt)


def _within(x: float, spans: list[tuple[float, float]]) -> bool:
    return any(start <= x <= end for start, end in spans)


@lru_cache(maxsize=1024)
def hatch_ink(fill: str) -> str:
    """An ink that shows on the colour `fill`: darker on a light fabric, lighter on a dark one, no stronger than needed.

    Source: relative luminance and contrast by WCAG 2.2; on a luminance of 0.179 black and white show alike.
    """
    parts = tuple(bytes.fromhex(fill[1:]))
    under = luminance(fill)
    target = 0 if under > 0.179 else 255
    ink = fill
    for strength in range(1, 21):
        ink = "#" + "".join(f"{round(part + (target - part) * strength / 20):02x}" for part in parts)
        if contrast(under, luminance(ink)) >= _CONTRAST:
            break
    return ink


def contrast(one: float, other: float) -> float:
    """Contrast of two luminances, from 1 to 21."""
    return (max(one, other) + 0.05) / (min(one, other) + 0.05)


def luminance(colour: str) -> float:
    """Relative luminance of `#rrggbb` from 0 (black) to 1 (white)."""
    red, green, blue = (_linear(part / 255) for part in bytes.fromhex(colour[1:]))
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def _linear(part: float) -> float:
    return part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4
