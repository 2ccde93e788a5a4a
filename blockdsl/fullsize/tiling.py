"""A template larger than the page, cut into tiles that overlap.

Tiles stand in rows and columns. A tile's *window* is what it shows; its *core* is the part that is its own: the
middle of each overlap is a join line, and the cores, which meet there, cover the template exactly once. A tile is
printed only when the template reaches into its core. Each join of two printed tiles has two marks, a long one more, at
places of the template that both windows show; lengths are points in the template's own coordinates.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import ceil
from typing import Final

from msgspec import Struct

from blockdsl.marks.clip import area, bounds, clip_ring, meets_box
from blockdsl.marks.display_list import Contour
from blockdsl.marks.theme import POINTS_PER_MILLIMETRE, Box

# A little over a centimetre and a half, so that no rounding ever brings it below.
OVERLAP_PT: Final = 16 * POINTS_PER_MILLIMETRE

# Half the room that a mark and its two letters take along its join line, and across it.
MARK_ALONG_PT: Final = 9.0
MARK_ACROSS_PT: Final = 20.0
_FROM_CORNER_PT: Final = 26.0
_LETTERS: Final = "abcdefghjkmnpqrstuvwxyz"  # without i, l and o, which look like figures
_CHOICES: Final = 24

# About how far apart the marks of a long join are: two marks for every tile of a sheet up to Legal, more on rolls.
_APART_PT: Final = 400.0
_LEAST_AREA_PT2: Final = 1e-3


class Tile(Struct, frozen=True):
    """One tile: its row and column from 0, what it shows, and what of that is its own."""

    row: int
    column: int
    window: Box
    core: Box


class RegistrationMark(Struct, frozen=True):
    """A registration mark: its letter and its place in the template's coordinates."""

    letter: str
    x_pt: float
    y_pt: float


class Join(Struct, frozen=True):
    """The line where two tiles meet: `upright` when they stand side by side; `at_pt` is its x (or y)."""

    first: int
    second: int
    upright: bool
    at_pt: float
    marks: tuple[RegistrationMark, ...]


class Tiling(Struct, frozen=True):
    """The printed tiles, row by row, and their joins."""

    rows: int
    columns: int
    tiles: tuple[Tile, ...]
    joins: tuple[Join, ...]


def tile(outlines: Sequence[Contour], width_pt: float, height_pt: float, overlap_pt: float = OVERLAP_PT) -> Tiling:
    """Tiles for a template: the first outline is what must be covered, marks keep clear of all of them.

    Units:  points; `width_pt` × `height_pt` is the room for one tile.
    Errors: ValueError when a tile is no larger than the overlap.
    """
    left, top, right, bottom = bounds(outlines[0])
    across = _stretches(left, right, width_pt, overlap_pt)
    down = _stretches(top, bottom, height_pt, overlap_pt)
    tiles = tuple(
        tile
        for row, (y_window, y_core) in enumerate(down)
        for column, (x_window, x_core) in enumerate(across)
        if _reaches(outlines[0], tile := Tile(row, column, _box(x_window, y_window), _box(x_core, y_core)))
    )
    return Tiling(len(down), len(across), tiles, _joins(outlines, tiles))


Stretch = tuple[float, float]


def _stretches(start: float, stop: float, room: float, overlap: float) -> list[tuple[Stretch, Stretch]]:
    """Windows of equal length from start to stop with that overlap, each with its core."""
    if room <= overlap:
        raise ValueError("a tile must be larger than the overlap")
    length = stop - start
    count = 1 if length <= room + 1e-6 else ceil((length - overlap) / (room - overlap) - 1e-9)
    window = (length + (count - 1) * overlap) / count
    step = window - overlap
    found = []
    for number in range(count):
        low = start + number * step
        high = low + window
        found.append(
            (
                (low, high),
                (low + overlap / 2 if number else low, high - overlap / 2 if number < count - 1 else high),
            )
        )
    return found


def _box(across: Stretch, down: Stretch) -> Box:
    return Box(across[0], down[0], across[1] - across[0], down[1] - down[0])


def _reaches(outline: Contour, candidate: Tile) -> bool:
    return abs(area(clip_ring(outline, candidate.core))) > _LEAST_AREA_PT2


def _joins(outlines: Sequence[Contour], tiles: Sequence[Tile]) -> tuple[Join, ...]:
    places = {(tile.row, tile.column): number for number, tile in enumerate(tiles)}
    joins: list[Join] = []
    used = 0
    for number, own in enumerate(tiles):
        for upright, neighbour in ((True, (own.row, own.column + 1)), (False, (own.row + 1, own.column))):
            other = places.get(neighbour)
            if other is None or not _crosses(outlines[0], own.core, upright):
                continue
            at = own.core.right_pt if upright else own.core.bottom_pt
            marks = _marks(outlines, own.core, upright, used)
            used += len(marks)
            joins.append(Join(number, other, upright, at, marks))
    return tuple(joins)


def _crosses(outline: Contour, core: Box, upright: bool) -> bool:
    """Whether the template runs over that side of the core: looked for in a narrow band about it."""
    thin = 0.02
    if upright:
        band = Box(core.right_pt - thin, core.y_pt, 2 * thin, core.height_pt)
    else:
        band = Box(core.x_pt, core.bottom_pt - thin, core.width_pt, 2 * thin)
    return abs(area(clip_ring(outline, band))) > _LEAST_AREA_PT2


def _marks(outlines: Sequence[Contour], core: Box, upright: bool, used: int) -> tuple[RegistrationMark, ...]:
    """Marks near both ends of the join and, on a long one, between; each clear of the outlines where that is possible.

    `used` letters are taken by other joins.
    """
    low, high = (core.y_pt, core.bottom_pt) if upright else (core.x_pt, core.right_pt)
    count = max(2, round((high - low) / _APART_PT))
    inset = min(_FROM_CORNER_PT, (high - low) / 6)
    low, high = low + inset, high - inset
    at = core.right_pt if upright else core.bottom_pt
    found = []
    for number in range(count):
        aim = low + (high - low) * number / (count - 1)
        reach = (high - low) / (count - 1) / 3
        tried = [aim + way * reach * step / _CHOICES for step in range(_CHOICES + 1) for way in (1, -1)]
        found.append(_first_clear(outlines, [along for along in tried if low <= along <= high], at, upright))
    letters = (_letter(used + number) for number in range(count))
    return tuple(
        RegistrationMark(letter, at, along) if upright else RegistrationMark(letter, along, at)
        for letter, along in zip(letters, found, strict=True)
    )


def _first_clear(outlines: Sequence[Contour], places: Sequence[float], at: float, upright: bool) -> float:
    for along in places:
        if upright:
            room = Box(at - MARK_ACROSS_PT, along - MARK_ALONG_PT, 2 * MARK_ACROSS_PT, 2 * MARK_ALONG_PT)
        else:
            room = Box(along - MARK_ALONG_PT, at - MARK_ACROSS_PT, 2 * MARK_ALONG_PT, 2 * MARK_ACROSS_PT)
        if not any(meets_box(ring, room) for ring in outlines):
            return along
    return places[0]


def _letter(number: int) -> str:
    """a, b, … z, aa, ab, …: small letters, so that no mark is taken for a template's letter."""
    name = ""
    number += 1
    while number:
        number, place = divmod(number - 1, len(_LETTERS))
        name = _LETTERS[place] + name
    return name
