"""The outline that a path of SVG draws, as a polygon so fine that its corners cannot be seen.

Path data are an open standard (Scalable Vector Graphics, W3C): commands M L H V C S Q T A Z, capital for places in the
grid, small for steps from the last place. Numbers are read exactly, curves are followed in even steps of their own
measure, and every corner comes to lie on a fine grid, so that what comes out is exact from then on.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from math import atan2, ceil, cos, hypot, pi, radians, sin, sqrt
from typing import Final

from msgspec import Struct

from blockdsl.geometry.fraction import Fraction, read_fraction
from blockdsl.geometry.polygon import Point, Polygon, bounding_box, clockwise, drop_straight_corners, is_simple

MOST_CORNERS: Final = 1000
_FINENESS: Final = 1 << 14
"""Corners lie on this many lines across the larger side of the box."""
_FLATNESS: Final = 6000
"""A curve is left by its steps by no more than the larger side over this."""
_TOKEN: Final = re.compile(r"[\s,]*(?:([A-Za-z])|([-+]?(?:[0-9]+\.?[0-9]*|\.[0-9]+)(?:[eE][-+]?[0-9]{1,2})?))")
_NUMBERS: Final = {"M": 2, "L": 2, "H": 1, "V": 1, "C": 6, "S": 4, "Q": 4, "T": 2, "A": 7, "Z": 0}
_FLAGS: Final = re.compile(r"[\s,]*([01])")
_MOST_DIGITS: Final = 30
_LARGEST: Final = 10**6

_Place = tuple[Fraction, Fraction]


class PathFault(Exception):
    """What is wrong with a path, in words."""


class _Command(Struct, frozen=True):
    letter: str
    numbers: tuple[Fraction, ...]

    @property
    def relative(self) -> bool:
        return self.letter.islower()


def outline_of_path(path: str, grid: tuple[Fraction, Fraction], size: tuple[Fraction, Fraction]) -> Polygon:
    """The one closed outline that a path draws in a grid, scaled to a box of that size; clockwise as seen.

    Shape:  straight sides stay as they are but for the fine grid; curves have corners at every step.
    Errors: PathFault when the path cannot be read, draws several outlines, crosses itself or has too many corners.
    """
    scale = size[0] / grid[0], size[1] / grid[1]
    larger = max(size)
    places = [(x * scale[0], y * scale[1]) for x, y in _places(path, float(max(grid)) / _FLATNESS)]
    step = larger / _FINENESS
    corners = [Point(_snapped(x, step), _snapped(y, step)) for x, y in places]
    if len(corners) > MOST_CORNERS:
        raise PathFault(f"its curves need more than {MOST_CORNERS} corners")
    outline = drop_straight_corners(tuple(corners))
    if not outline:
        raise PathFault("it encloses nothing")
    if not is_simple(outline):
        raise PathFault("its outline crosses or touches itself")
    return clockwise(outline)


def reaches_beyond(outline: Polygon, width: Fraction, height: Fraction) -> bool:
    """Whether some of it lies outside its box."""
    left, top, right, bottom = bounding_box(outline)
    return left < 0 or top < 0 or right > width or bottom > height


def _snapped(length: Fraction, step: Fraction) -> Fraction:
    return round(length / step) * step


# --- reading ---------------------------------------------------------------------------------------


def _commands(path: str) -> Iterator[_Command]:
    place, letter = 0, ""
    while path[place:].strip(" \t\r\n,"):
        found = _TOKEN.match(path, place)
        if found is None:
            raise PathFault(f"`{path[place:].split(maxsplit=1)[0][:12]}` is no command and no number")
        if found[1]:
            letter, place = found[1], found.end()
            if letter.upper() not in _NUMBERS:
                raise PathFault(f"`{letter}` is no command; there are M L H V C S Q T A Z")
            if letter in "Zz":
                yield _Command(letter, ())
                continue
        elif not letter or letter in "Zz":
            raise PathFault("it begins with `M` and a place" if not letter else "a command is missing after `Z`")
        numbers, place = _read_numbers(path, place, letter)
        yield _Command(letter, numbers)
        letter = {"M": "L", "m": "l"}.get(letter, letter)  # further places are lines


def _read_numbers(path: str, place: int, letter: str) -> tuple[tuple[Fraction, ...], int]:
    numbers = []
    for count in range(_NUMBERS[letter.upper()]):
        flag = letter in "Aa" and count in (3, 4)  # flags may stand without a space between them
        found = _FLAGS.match(path, place) if flag else _TOKEN.match(path, place)
        text = None if found is None else found[1] if flag else found[2]
        if found is None or text is None:
            raise PathFault(f"`{letter}` wants {_NUMBERS[letter.upper()]} numbers")
        if len(text) > _MOST_DIGITS:
            raise PathFault("a number has too many digits")
        number = read_fraction(text)
        if abs(number) > _LARGEST or number.denominator > 10**_MOST_DIGITS:
            raise PathFault(f"the outline goes too far, to {text[:12]}")
        numbers.append(number)
        place = found.end()
    return tuple(numbers), place


# --- following -------------------------------------------------------------------------------------


def _places(path: str, flat: float) -> list[_Place]:
    """The corners in grid coordinates, without the last where it repeats the first."""
    drawn: list[_Place] = []
    handle: _Place | None = None
    closed = False
    for command in _commands(path):
        letter = command.letter.upper()
        if closed or (letter == "M" and drawn):
            raise PathFault("it draws more than one outline; give each an `applique` line of its own")
        if not drawn and letter != "M":
            raise PathFault("it begins with `M` and a place")
        if letter == "Z":
            closed = True
        elif letter == "M":
            drawn.append((command.numbers[0], command.numbers[1]))
        else:
            further, handle = _drawn(command, drawn[-1], handle, flat)
            drawn += further
        if len(drawn) > 4 * MOST_CORNERS:
            raise PathFault(f"its curves need more than {MOST_CORNERS} corners")
    if not closed and (len(drawn) < 2 or drawn[-1] != drawn[0]):
        raise PathFault("its outline is not closed; end it with `Z`")
    return drawn[:-1] if drawn[-1] == drawn[0] else drawn


def _drawn(command: _Command, here: _Place, before: _Place | None, flat: float) -> tuple[list[_Place], _Place | None]:
    """What a command draws on from a place, and the handle of its curve; `before` is that of the last command."""
    ends, letter = _absolute(command, here), command.letter.upper()
    end = ends[-1]
    match letter:
        case "C" | "S":
            first = ends[0] if letter == "C" else _mirrored(before, here)
            return _cubic(here, first, ends[-2], end, flat), ends[-2]
        case "Q" | "T":
            handle = ends[0] if letter == "Q" else _mirrored(before, here)
            thirds = (_between(here, handle, Fraction(2, 3)), _between(end, handle, Fraction(2, 3)))
            return _cubic(here, *thirds, end, flat), handle
        case "A":
            return _arc(here, command.numbers, end, flat), None
    return [end], None


def _absolute(command: _Command, here: _Place) -> list[_Place]:
    """The places of a command in the grid."""
    dx, dy = here if command.relative else (Fraction(0), Fraction(0))
    numbers = command.numbers
    match command.letter.upper():
        case "H":
            return [(numbers[0] + dx, here[1])]
        case "V":
            return [(here[0], numbers[0] + dy)]
        case "A":
            return [(numbers[5] + dx, numbers[6] + dy)]
    return [(x + dx, y + dy) for x, y in zip(numbers[::2], numbers[1::2], strict=True)]


def _mirrored(handle: _Place | None, here: _Place) -> _Place:
    return here if handle is None else (2 * here[0] - handle[0], 2 * here[1] - handle[1])


def _between(one: _Place, other: _Place, share: Fraction) -> _Place:
    return one[0] + share * (other[0] - one[0]), one[1] + share * (other[1] - one[1])


def _cubic(start: _Place, one: _Place, two: _Place, end: _Place, flat: float) -> list[_Place]:
    """Even steps of its own measure: within d / 8n² of the curve, d six times its bend at the sharper end."""
    bends = [
        hypot(float(a[0] - 2 * b[0] + c[0]), float(a[1] - 2 * b[1] + c[1]))
        for a, b, c in ((start, one, two), (one, two, end))
    ]
    count = min(MOST_CORNERS, max(1, ceil(sqrt(6 * max(bends) / (8 * flat)))))
    places = []
    for step in range(1, count):
        t = Fraction(step, count)
        shares = ((1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t**3)
        corners = (start, one, two, end)
        x = sum((share * corner[0] for share, corner in zip(shares, corners, strict=True)), Fraction(0))
        y = sum((share * corner[1] for share, corner in zip(shares, corners, strict=True)), Fraction(0))
        places.append((x, y))
    return [*places, end]


def _arc(start: _Place, numbers: tuple[Fraction, ...], end: _Place, flat: float) -> list[_Place]:
    """An arc of an ellipse; sines have no exact form, and the fine grid takes up what they lack.

    Source: implementation notes of SVG (W3C), "conversion from endpoint to center parameterization".
    """
    rx, ry, lean = (abs(float(numbers[0])), abs(float(numbers[1])), radians(float(numbers[2])))
    large, clockwise_arc = bool(numbers[3]), bool(numbers[4])
    if start == end:
        return []
    if not rx or not ry:
        return [end]
    half_x, half_y = float(start[0] - end[0]) / 2, float(start[1] - end[1]) / 2
    x, y = cos(lean) * half_x + sin(lean) * half_y, -sin(lean) * half_x + cos(lean) * half_y
    short = (x / rx) ** 2 + (y / ry) ** 2
    if short > 1:
        rx, ry = rx * sqrt(short), ry * sqrt(short)
    rest = max(0.0, (rx * ry) ** 2 - (rx * y) ** 2 - (ry * x) ** 2)
    share = sqrt(rest / ((rx * y) ** 2 + (ry * x) ** 2)) * (1 if large != clockwise_arc else -1)
    cx, cy = share * rx * y / ry, -share * ry * x / rx
    first = atan2((y - cy) / ry, (x - cx) / rx)
    turn = (atan2((-y - cy) / ry, (-x - cx) / rx) - first) % (2 * pi)
    if not clockwise_arc:
        turn -= 2 * pi
    middle_x, middle_y = float(start[0] + end[0]) / 2, float(start[1] + end[1]) / 2
    count = min(MOST_CORNERS, max(4, ceil(abs(turn) * sqrt(max(rx, ry) / (8 * flat)))))
    places = []
    for step in range(1, count):
        angle = first + turn * step / count
        u, v = rx * cos(angle) + cx, ry * sin(angle) + cy
        places.append(
            (
                Fraction(cos(lean) * u - sin(lean) * v + middle_x),
                Fraction(sin(lean) * u + cos(lean) * v + middle_y),
            )
        )
    return [*places, end]
