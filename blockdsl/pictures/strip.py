"""How a strip lies and where the ruler cuts it: small pictures beside the cutting table.

A strip lies across, its square end at the left, the right side up; y is downward. A rectangle stands on a short side.
"""

from __future__ import annotations

from itertools import pairwise
from math import cos, hypot, pi, radians, sin, tan
from typing import Final

from blockdsl.facts.blockfacts import CutFacts, RulerUnit, StripFacts
from blockdsl.geometry import to_float
from blockdsl.geometry.fraction import Fraction
from blockdsl.marks.display_list import Figure, Mark, Path
from blockdsl.marks.prose import TextStyle, line_centred, line_ending, rectangle, width_of
from blockdsl.marks.theme import ACCENT, INK, QUIET, SMALL_PT, STEP_PT, TINT, WHITE
from blockdsl.wording.lengths import show_length
from blockdsl.wording.messages import Messages
from blockdsl.wording.strips import format_direction, format_octagon, format_strips

Spot = tuple[float, float]
Cutline = tuple[float, float]
"""Where a cut meets the top and the bottom edge of the strip."""

STRIP_PT: Final = 40.0
"""How high a strip is drawn, where its pieces find room."""
_TALL_PT: Final = 74.0
_DIMENSION: Final = TextStyle(SMALL_PT, "regular", ACCENT)
_DASH: Final = (2.5, 2.0)
_MOST_CUTS: Final = 60
_SQUARE: Final = 90


def has_picture(cut: CutFacts) -> bool:
    """Whether a line of the table is cut in a way that wants showing."""
    slanted = (cut.strip is not None and cut.strip.form != "template") or (bool(cut.slant) and cut.cut[0] != cut.cut[1])
    return slanted or cut.corner is not None


def cut_picture(cut: CutFacts, unit: RulerUnit, width_pt: float, words: Messages) -> tuple[float, Figure]:
    """Height and picture of how the pieces of a line are cut, at most so wide, from (0, 0)."""
    if cut.strip is not None:
        height, marks = _strip(cut.strip, unit, width_pt, words)
        how = format_strips(cut, unit, words)
    elif cut.corner is not None:
        height, marks = _octagon(cut, cut.corner, unit, words)
        how = format_octagon(cut, unit, words)
    else:
        height, marks = _rectangle(cut, unit, words)
        how = format_direction(cut, words)
    return height, Figure(words("cut-picture", letter=cut.label, how=how), tuple(marks))


# --- a strip -----------------------------------------------------------------------------------------


def _strip(strip: StripFacts, unit: RulerUnit, room_pt: float, words: Messages) -> tuple[float, list[Mark]]:
    left = width_of(show_length(strip.width, unit, words), _DIMENSION) + 2.5 * STEP_PT
    top = _DIMENSION.line_pt + STEP_PT
    cuts = cut_lines(strip, _MOST_CUTS)
    # Two pieces and a half, or all that there are, must be seen.
    shown = max(cuts[min(2, len(cuts) - 1)]) * 1.12
    scale = min(STRIP_PT / to_float(strip.width), (room_pt - left) / shown)
    high, long = to_float(strip.width) * scale, min(room_pt - left, max(cuts[-1]) * scale + 2 * STEP_PT)
    lines = [(left + one * scale, left + other * scale) for one, other in cuts]
    seen = [each for each in lines if max(each) <= left + long]
    marks: list[Mark] = [rectangle(left, top, long, high, fill=WHITE)]
    pieces = [_piece(a, b, top, high) for a, b in pairwise(seen)]
    if strip.across is not None:
        pieces = [_without_points(piece, to_float(strip.across) * scale) for piece in pieces]
    marks += [Path((piece,), fill=TINT) for piece in pieces]
    marks.append(
        Path(
            (((left + long, top), (left, top), (left, top + high), (left + long, top + high)),),
            closed=False,
            stroke=INK,
        )
    )
    marks += [Path((((a, top), (b, top + high)),), closed=False, stroke=ACCENT, dash=_DASH) for a, b in seen]
    if strip.across is not None:
        marks += [Path((piece,), stroke=ACCENT, dash=_DASH) for piece in pieces]
    if pieces:
        marks.append(Path((pieces[0],), stroke=INK, stroke_width_pt=1.0))
    marks += _upright_dimension(show_length(strip.width, unit, words), left - 1.25 * STEP_PT, top, high)
    below, more = _along(strip, unit, seen, top, high, words)
    return top + high + below, marks + more


def cut_lines(strip: StripFacts, most: int) -> list[Cutline]:
    """The first cuts of a strip, as the maker makes them from the square end; in the block's own unit."""
    high, length = to_float(strip.width), to_float(strip.length)
    lean = [_lean(strip, place % 2, high) for place in range(2)]
    lines = [(max(lean[0], 0.0), max(-lean[0], 0.0))]
    while len(lines) < most:
        top, bottom = lines[-1]
        next_lean = lean[len(lines) % 2]
        if strip.form != "turned":
            along = to_float(strip.every or strip.width) / sin(radians(strip.angles[0]))
            lines.append((top + along, bottom + along))
        elif (top_is_longer := next_lean > top - bottom) and strip.every is None:
            lines.append((bottom + next_lean, bottom))
        elif strip.every is None:
            lines.append((top, top - next_lean))
        else:
            end = (top if top_is_longer else bottom) + to_float(strip.every)
            lines.append((end, end - next_lean) if top_is_longer else (end + next_lean, end))
        if max(lines[-1]) > length + to_float(strip.width) / 1000:
            del lines[-1]
            break
    return lines


def _lean(strip: StripFacts, place: int, high: float) -> float:
    """How much further right a cut meets the top than the bottom; turned, the steeper cut comes first."""
    turned = strip.form == "turned"
    angle = strip.angles[1 - place] if turned else strip.angles[0]
    if angle == _SQUARE:
        return 0.0
    rises = (strip.slant != "falling") == (place == 1 or not turned) if turned else strip.slant == "rising"
    return (1 if rises else -1) * high / tan(radians(angle))


def _piece(one: Cutline, other: Cutline, top: float, high: float) -> tuple[Spot, ...]:
    corners = ((one[0], top), (other[0], top), (other[1], top + high), (one[1], top + high))
    return tuple(corner for place, corner in enumerate(corners) if _apart(corner, corners[place - 1]) > 0.01)


def _without_points(diamond: tuple[Spot, ...], across: float) -> tuple[Spot, ...]:
    """A hexagon out of a diamond: its two sharp corners cut off square to the line through them."""
    if len(diamond) != 4:
        return diamond
    place = 0 if _apart(diamond[0], diamond[2]) > _apart(diamond[1], diamond[3]) else 1
    ring = diamond[place:] + diamond[:place]
    off = (_apart(ring[0], ring[2]) - across) / 2 / cos(pi / 6)
    corners: list[Spot] = []
    for at, corner in enumerate(ring):
        if at % 2:
            corners.append(corner)
        else:
            corners += [_toward(corner, ring[at - 1], off), _toward(corner, ring[(at + 1) % 4], off)]
    return tuple(corners)


def _apart(one: Spot, other: Spot) -> float:
    return hypot(one[0] - other[0], one[1] - other[1])


def _toward(one: Spot, other: Spot, by: float) -> Spot:
    share = by / (_apart(one, other) or 1.0)
    return one[0] + share * (other[0] - one[0]), one[1] + share * (other[1] - one[1])


# --- measures ----------------------------------------------------------------------------------------


def _along(
    strip: StripFacts, unit: RulerUnit, lines: list[Cutline], top: float, high: float, words: Messages
) -> tuple[float, list[Mark]]:
    """How far apart the first two cuts are, and the angle; and the height that the words below take."""
    below = 0.0
    marks: list[Mark] = []
    if len(lines) < 2:
        return below, marks
    (a_top, a_bottom), (b_top, b_bottom) = lines[:2]
    if strip.every is not None and strip.form == "turned":
        said = show_length(strip.every, unit, words)
        if b_top - a_top >= b_bottom - a_bottom:
            marks += _level_dimension(said, a_top, b_top, top - STEP_PT / 2, top - STEP_PT / 2 - _DIMENSION.line_pt / 2)
        else:
            y = top + high + STEP_PT / 2
            marks += _level_dimension(said, a_bottom, b_bottom, y, y + _DIMENSION.line_pt / 2 + 1)
            below = _DIMENSION.line_pt + STEP_PT
    elif strip.every is not None:
        marks += _square_dimension(show_length(strip.every, unit, words), lines, top, high)
    marks += _angle(strip, lines, top, high)
    return below, marks


def _upright_dimension(words: str, x: float, top: float, high: float) -> list[Mark]:
    line = Path((((x, top), (x, top + high)),), closed=False, stroke=ACCENT, stroke_width_pt=0.5)
    ends = [
        Path((((x - 2, y), (x + 2, y)),), closed=False, stroke=ACCENT, stroke_width_pt=0.5) for y in (top, top + high)
    ]
    baseline = top + high / 2 + _DIMENSION.capitals_pt / 2
    return [line, *ends, *line_ending(words, x - STEP_PT / 2 - 1, baseline, _DIMENSION)]


def _level_dimension(words: str, x: float, to_x: float, y: float, words_y: float) -> list[Mark]:
    line = Path((((x, y), (to_x, y)),), closed=False, stroke=ACCENT, stroke_width_pt=0.5)
    ends = [Path((((at, y - 2), (at, y + 2)),), closed=False, stroke=ACCENT, stroke_width_pt=0.5) for at in (x, to_x)]
    return [line, *ends, *line_centred(words, (x + to_x) / 2, words_y, _DIMENSION)]


def _square_dimension(words: str, lines: list[Cutline], top: float, high: float) -> list[Mark]:
    """Between the first two cuts, square to them, through the middle of the piece."""
    (a_top, a_bottom), (b_top, b_bottom) = lines[:2]
    middle = ((a_top + a_bottom + b_top + b_bottom) / 4, top + high / 2)
    lean = a_bottom - a_top
    length = hypot(lean, high)
    across = (b_top - a_top) * high / length
    nx, ny = high / length * across / 2, -lean / length * across / 2
    ends = ((middle[0] - nx, middle[1] - ny), (middle[0] + nx, middle[1] + ny))
    half = width_of(words, _DIMENSION) / 2 + 1.5
    label = rectangle(middle[0] - half, middle[1] - _DIMENSION.line_pt / 2, 2 * half, _DIMENSION.line_pt, fill=TINT)
    line = Path((ends,), closed=False, stroke=ACCENT, stroke_width_pt=0.5)
    return [line, label, *line_centred(words, *middle, _DIMENSION)]


def _angle(strip: StripFacts, lines: list[Cutline], top: float, high: float) -> list[Mark]:
    """An arc where the first slanted cut leaves the edge of the strip, with its degrees beside it."""
    place = 1 if strip.form == "turned" else 0
    cut_top, cut_bottom = lines[place]
    turned_up = cut_top > cut_bottom
    corner, sign = ((cut_bottom, top + high), -1) if turned_up else ((cut_top, top), 1)
    radius = min(high * 0.36, 13.0)
    degrees = strip.angles[0]
    steps = [radians(degrees) * part / 8 for part in range(9)]
    arc = tuple((corner[0] + radius * cos(step), corner[1] + sign * radius * sin(step)) for step in steps)
    words = f"{degrees}°"
    middle = radians(degrees) / 2
    reach = radius + 2 + width_of(words, _DIMENSION) / 2
    at = (corner[0] + reach * cos(middle), corner[1] + sign * (reach * sin(middle) + 0.5))
    return [
        Path((arc,), closed=False, stroke=QUIET, stroke_width_pt=0.5),
        *line_centred(words, *at, TextStyle(SMALL_PT, "regular", QUIET)),
    ]


# --- a rectangle -------------------------------------------------------------------------------------


def _rectangle(cut: CutFacts, unit: RulerUnit, words: Messages) -> tuple[float, list[Mark]]:
    short, long = sorted(to_float(side) for side in cut.cut)
    left = width_of(show_length(max(cut.cut), unit, words), _DIMENSION) + 2.5 * STEP_PT
    scale = _TALL_PT / long
    wide, tall = short * scale, _TALL_PT
    ends = ((left, tall), (left + wide, 0.0)) if cut.slant == "rising" else ((left, 0.0), (left + wide, tall))
    corner = (left, 0.0) if cut.slant == "rising" else (left, tall)
    marks: list[Mark] = [
        rectangle(left, 0.0, wide, tall, fill=WHITE),
        Path(((*ends, corner),), fill=TINT),
        rectangle(left, 0.0, wide, tall, stroke=INK),
        Path((ends,), closed=False, stroke=ACCENT, dash=_DASH),
        *_upright_dimension(show_length(max(cut.cut), unit, words), left - 1.25 * STEP_PT, 0.0, tall),
        *_level_dimension(
            show_length(min(cut.cut), unit, words), left, left + wide, tall + STEP_PT / 2 + 1, tall + STEP_PT + 4.0
        ),
    ]
    return tall + _DIMENSION.line_pt + STEP_PT, marks


# --- an octagon ----------------------------------------------------------------------------------------


def _octagon(cut: CutFacts, corner: Fraction, unit: RulerUnit, words: Messages) -> tuple[float, list[Mark]]:
    """The square or rectangle, on its shorter side, with its four cuts and how far from a corner they begin."""
    short, long = sorted(to_float(side) for side in cut.cut)
    left = width_of(show_length(max(cut.cut), unit, words), _DIMENSION) + 2.5 * STEP_PT
    scale = _TALL_PT / long
    wide, tall, off = short * scale, _TALL_PT, to_float(corner) * scale
    right = left + wide
    cuts: tuple[tuple[Spot, Spot], ...] = (
        ((left, off), (left + off, 0.0)),
        ((right - off, 0.0), (right, off)),
        ((right, tall - off), (right - off, tall)),
        ((left + off, tall), (left, tall - off)),
    )
    below = tall + STEP_PT / 2 + 1
    marks: list[Mark] = [
        rectangle(left, 0.0, wide, tall, fill=WHITE),
        Path((tuple(end for ends in cuts for end in ends),), fill=TINT),
        rectangle(left, 0.0, wide, tall, stroke=INK),
        *(Path((ends,), closed=False, stroke=ACCENT, dash=_DASH) for ends in cuts),
        *_upright_dimension(show_length(max(cut.cut), unit, words), left - 1.25 * STEP_PT, 0.0, tall),
        *_level_dimension(show_length(corner, unit, words), left, left + off, below, tall + STEP_PT + 4.0),
    ]
    return tall + _DIMENSION.line_pt + STEP_PT, marks
