"""The marks of a template: its two outlines, grain arrow, leader, and what joins tiles; thin lines, no fills."""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache
from math import atan2, cos, degrees, hypot, sin
from typing import Final

from blockdsl.marks.display_list import Contour, Mark, PagePoint, Path, TextMark, Weight
from blockdsl.marks.theme import ACCENT, HAIRLINE_PT, INK, QUIET, RULE, SMALL_PT, THIN_PT, TINT, Box
from blockdsl.marks.typeset import cap_height, measure

SEWING_DASH_PT: Final = (4.0, 2.5)
_JOIN_DASH_PT: Final = (8.0, 4.0)
_DIAMOND_PT: Final = 6.0
_HEAD_PT: Final = 4.5
_MANY_TILES: Final = 100
"""Of more a map shows the edges as a grid: a box for each, on a page for each, would be half a million of them."""


def cutting_lines(rings: tuple[Contour, ...], *, closed: bool) -> Path:
    """Where the scissors go: solid."""
    return Path(rings, closed=closed, stroke=INK, stroke_width_pt=THIN_PT)


def sewing_lines(rings: tuple[Contour, ...], *, closed: bool) -> Path:
    """Where the seam goes: dashed."""
    return Path(rings, closed=closed, stroke=INK, stroke_width_pt=THIN_PT, dash=SEWING_DASH_PT)


def notch_lines(notches: tuple[tuple[PagePoint, PagePoint], ...]) -> tuple[Mark, ...]:
    """Marks across the allowance, to match two curved edges by; none for straight ones."""
    return (Path(notches, closed=False, stroke=INK, stroke_width_pt=THIN_PT),) if notches else ()


def grain_arrow(start: PagePoint, stop: PagePoint) -> Path:
    """A line with a head at both ends, along the straight grain."""
    length = hypot(stop[0] - start[0], stop[1] - start[1])
    along = ((stop[0] - start[0]) / length, (stop[1] - start[1]) / length)
    head = min(_HEAD_PT, length / 3)
    return Path(
        ((start, stop), _head(start, along, head), _head(stop, (-along[0], -along[1]), head)),
        closed=False,
        stroke=QUIET,
        stroke_width_pt=THIN_PT,
    )


def _head(tip: PagePoint, inward: PagePoint, size: float) -> Contour:
    """Two short strokes from the tip, 25 degrees to either side."""
    angle = atan2(inward[1], inward[0])
    first, last = ((tip[0] + size * cos(angle + s), tip[1] + size * sin(angle + s)) for s in (0.44, -0.44))
    return first, tip, last


def reading_direction(direction: PagePoint) -> PagePoint:
    """The direction or its opposite, as words run along it: to the right, or upward."""
    x, y = direction
    return (-x, -y) if x < -1e-9 or (abs(x) <= 1e-9 and y > 0) else (x, y)


def words_along(start: PagePoint, stop: PagePoint, words: str, size_pt: float) -> TextMark:
    """Small words just above a line and in its middle; the line runs in reading direction."""
    length = hypot(stop[0] - start[0], stop[1] - start[1])
    along = ((stop[0] - start[0]) / length, (stop[1] - start[1]) / length)
    lead = (length - measure(words, size_pt)) / 2
    lift = 2.5
    x = start[0] + along[0] * lead + along[1] * lift
    y = start[1] + along[1] * lead - along[0] * lift
    return TextMark(x, y, words, size_pt, colour=QUIET, turn_degrees=degrees(atan2(along[1], along[0])))


def leader(start: PagePoint, stop: PagePoint) -> tuple[Mark, ...]:
    """A thin line from words to the shape they speak of, with a dot at the shape's end."""
    x, y = stop
    r = 1.1
    dot = tuple((x + r * cos(a * 0.7854), y + r * sin(a * 0.7854)) for a in range(8))
    return (
        Path(((start, stop),), closed=False, stroke=QUIET, stroke_width_pt=HAIRLINE_PT),
        Path((dot,), fill=QUIET),
    )


def registration_mark(at: PagePoint, letter: str, *, upright: bool) -> tuple[Mark, ...]:
    """A diamond with its cross, and its letter on both sides of the join line, so that each tile keeps one."""
    x, y = at
    d = _DIAMOND_PT
    diamond = ((x, y - d), (x + d, y), (x, y + d), (x - d, y))
    cross = (((x - d, y), (x + d, y)), ((x, y - d), (x, y + d)))
    away = d + 7.0
    sides = ((x - away, y), (x + away, y)) if upright else ((x, y - away), (x, y + away))
    return (
        Path((diamond,), stroke=ACCENT, stroke_width_pt=THIN_PT),
        Path(cross, closed=False, stroke=ACCENT, stroke_width_pt=HAIRLINE_PT),
        *(centred(place, letter, 9.0, "bold", ACCENT) for place in sides),
    )


def join_line(start: PagePoint, stop: PagePoint) -> Path:
    """Where two tiles meet."""
    return Path(((start, stop),), closed=False, stroke=ACCENT, stroke_width_pt=THIN_PT, dash=_JOIN_DASH_PT)


def centred(at: PagePoint, words: str, size_pt: float, weight: Weight = "regular", colour: str = INK) -> TextMark:
    """Words with their middle at a place."""
    x = at[0] - measure(words, size_pt, weight) / 2
    return TextMark(x, at[1] + cap_height(size_pt) / 2, words, size_pt, weight, colour)


@lru_cache(maxsize=4)
def _edges(tiles: tuple[Box, ...]) -> tuple[tuple[PagePoint, PagePoint], ...]:
    """The edges of tiles that lie side by side, each run of them along one line as one line."""
    along: dict[tuple[bool, float], list[tuple[float, float]]] = {}
    for tile in tiles:
        for x in (tile.x_pt, tile.right_pt):
            along.setdefault((True, round(x, 3)), []).append((tile.y_pt, tile.bottom_pt))
        for y in (tile.y_pt, tile.bottom_pt):
            along.setdefault((False, round(y, 3)), []).append((tile.x_pt, tile.right_pt))
    lines = []
    for (upright, at), stretches in sorted(along.items()):
        start, stop = min(stretches)
        for low, high in sorted(stretches):
            if low > stop + 0.01:
                lines.append((upright, at, start, stop))
                start = low
            stop = max(stop, high)
        lines.append((upright, at, start, stop))
    return tuple(((at, a), (at, b)) if upright else ((a, at), (b, at)) for upright, at, a, b in lines)


def tile_map(box: Box, outline: Contour, tiles: tuple[tuple[str, Box], ...], current: str) -> tuple[Mark, ...]:
    """The template in small with its tiles, each with its number; the one at hand is drawn heavier.

    `outline` and the tiles' boxes are in the template's coordinates; they are scaled to fit the box.
    """
    shape, grid, places = _map_parts(box, outline, tiles)
    others = [mark for name, _, quiet in places if name != current for mark in quiet]
    here = [mark for name, ring, _ in places if name == current for mark in _in_map(name, ring, here=True)]
    return (shape, *grid, *others, *here)


_Placed = tuple[str, tuple[PagePoint, PagePoint], tuple[Mark, ...]]
"""A tile's number, two corners in the map, and its marks where it is not the one at hand."""


@lru_cache(maxsize=4)
def _map_parts(
    box: Box, outline: Contour, tiles: tuple[tuple[str, Box], ...]
) -> tuple[Path, tuple[Path, ...], tuple[_Placed, ...]]:
    """What the map has on the page of every tile; asked by each of hundreds, and drawn once."""
    left = min(tile.x_pt for _, tile in tiles)
    top = min(tile.y_pt for _, tile in tiles)
    right = max(tile.right_pt for _, tile in tiles)
    bottom = max(tile.bottom_pt for _, tile in tiles)
    scale = min(box.width_pt / (right - left), box.height_pt / (bottom - top))

    def small(x: float, y: float) -> PagePoint:
        return box.x_pt + (x - left) * scale, box.y_pt + (y - top) * scale

    grid: tuple[Path, ...] = ()
    many = len(tiles) > _MANY_TILES
    if many:
        edges = _edges(tuple(tile for _, tile in tiles))
        lines = tuple((small(*start), small(*stop)) for start, stop in edges)
        grid = (Path(lines, closed=False, stroke=QUIET, stroke_width_pt=HAIRLINE_PT),)
    places = []
    for name, tile in tiles:
        corners = (small(tile.x_pt, tile.y_pt), small(tile.right_pt, tile.bottom_pt))
        places.append((name, corners, tuple(_in_map(name, corners, here=False, boxed=not many))))
    shape = Path((tuple(small(x, y) for x, y in outline),), fill=TINT, stroke=RULE, stroke_width_pt=THIN_PT)
    return shape, grid, tuple(places)


def _in_map(name: str, corners: tuple[PagePoint, PagePoint], *, here: bool, boxed: bool = True) -> Iterator[Mark]:
    (x0, y0), (x1, y1) = corners
    if boxed:
        ring = ((x0, y0), (x1, y0), (x1, y1), (x0, y1))
        yield Path((ring,), stroke=ACCENT if here else QUIET, stroke_width_pt=1.4 if here else HAIRLINE_PT)
    size = min(SMALL_PT, (y1 - y0) * 0.6, (x1 - x0) * 0.8)
    if size >= 3:
        weight: Weight = "bold" if here else "regular"
        yield centred(((x0 + x1) / 2, (y0 + y1) / 2), name, size, weight, ACCENT if here else QUIET)
