"""One page for each tile of a template that is larger than the page."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import lru_cache
from typing import Final

from blockdsl.fullsize.pattern import TemplatePattern, TemplateWords, quarter_turn
from blockdsl.fullsize.room import box_ring, centroid, find_room
from blockdsl.fullsize.template_marks import (
    cutting_lines,
    join_line,
    notch_lines,
    registration_mark,
    sewing_lines,
    tile_map,
)
from blockdsl.fullsize.tiling import MARK_ACROSS_PT, MARK_ALONG_PT, Join, Tile, Tiling, tile
from blockdsl.fullsize.words_inside import letter_inside, set_words, words_inside
from blockdsl.marks.clip import area, clip_line, clip_outline, clip_ring, meets_box
from blockdsl.marks.display_list import Contour, Figure, Mark, TextMark, moved
from blockdsl.marks.theme import ACCENT, BODY_PT, QUIET, SMALL_PT, Box
from blockdsl.marks.typeset import cap_height, ellipsis, measure, wrap
from blockdsl.wording.messages import Messages

_MAP_WIDTH_PT: Final = 84.0
_GUTTER_PT: Final = 14.0
_EDGE_PT: Final = 8.0
_MOST_ROWS: Final = 3


def tiled(pattern: TemplatePattern, width_pt: float, height_pt: float) -> tuple[TemplatePattern, Tiling]:
    """The template as it stands or turned a quarter, whichever needs fewer tiles, with its tiles."""
    upright = tile((pattern.cutting, pattern.sewing), width_pt, height_pt)
    turned = quarter_turn(pattern)
    other = tile((turned.cutting, turned.sewing), width_pt, height_pt)
    return (turned, other) if len(other.tiles) < len(upright.tiles) else (pattern, upright)


def tile_name(letter: str, tiling: Tiling, number: int, words: Messages) -> str:
    """`B, tile 2 of 4 (row 1, column 2)`."""
    own = tiling.tiles[number]
    place = {"tile": number + 1, "tiles": len(tiling.tiles), "row": own.row + 1, "column": own.column + 1}
    return words("tiles-name", letter=letter, **place)


Inside = Callable[[Tile, list[Contour]], Sequence[Mark]]
"""What is drawn inside a tile's part of the outlines, clear of the rings that are taken."""


def tile_marks(
    pattern: TemplatePattern, tiling: Tiling, number: int, area_box: Box, strip: Box, inside: Inside | None = None
) -> tuple[Mark, ...]:
    """A tile's page: its part of the template in `area_box`, its name and the map of all tiles in `strip`.

    Without an `inside` of its own it has the template's words there.
    """
    own = tiling.tiles[number]
    joins = [join for join in tiling.joins if number in (join.first, join.second)]
    taken = [_mark_room(mark.x_pt, mark.y_pt, join.upright) for join in joins for mark in join.marks]
    marks: list[Mark] = [
        cutting_lines(clip_outline(pattern.cutting, own.window), closed=False),
        sewing_lines(clip_outline(pattern.sewing, own.window), closed=False),
        *notch_lines(tuple(kept for notch in pattern.notches if (kept := clip_line(notch, own.window)) is not None)),
    ]
    for join in joins:
        marks += _join_marks(join, own, number, pattern, taken)
    marks += _words(pattern, tiling, number, taken) if inside is None else inside(own, taken)
    dx, dy = area_box.x_pt - own.window.x_pt, area_box.y_pt - own.window.y_pt
    place = {"tile": number + 1, "tiles": len(tiling.tiles)}
    said = pattern.messages("tiles-alternative", template=pattern.alternative, **place)
    figure = Figure(said, moved(marks, dx, dy))
    return (figure, *_strip(pattern, tiling, number, strip))


def _mark_room(x: float, y: float, upright: bool) -> Contour:
    across, along = (MARK_ACROSS_PT, MARK_ALONG_PT) if upright else (MARK_ALONG_PT, MARK_ACROSS_PT)
    return box_ring(Box(x - across, y - along, 2 * across, 2 * along))


def _join_marks(join: Join, own: Tile, number: int, pattern: TemplatePattern, taken: Sequence[Contour]) -> list[Mark]:
    window = own.window
    if join.upright:
        start, stop = (join.at_pt, window.y_pt), (join.at_pt, window.bottom_pt)
    else:
        start, stop = (window.x_pt, join.at_pt), (window.right_pt, join.at_pt)
    marks: list[Mark] = [join_line(start, stop)]
    for mark in join.marks:
        marks += registration_mark((mark.x_pt, mark.y_pt), mark.letter, upright=join.upright)
    other = join.second if number == join.first else join.first
    words, outlines = pattern.messages("tiles-join-here", tile=other + 1), (pattern.cutting, pattern.sewing)
    marks += _words_at_join(words, join, own, ahead=number == join.first, outlines=outlines, taken=taken)
    return marks


def _words_at_join(
    words: str, join: Join, own: Tile, *, ahead: bool, outlines: Sequence[Contour], taken: Sequence[Contour]
) -> list[Mark]:
    """The words on the far side of the join line, at the first place along it that is clear."""
    length, height = measure(words, SMALL_PT), cap_height(SMALL_PT)
    core = own.core
    low, high = (core.y_pt, core.bottom_pt) if join.upright else (core.x_pt, core.right_pt)
    middle = (low + high - length) / 2
    steps = sorted((low + (high - low - length) * k / 20 for k in range(1, 20)), key=lambda at: abs(at - middle))
    gap = 4.0
    near = join.at_pt + gap if ahead else join.at_pt - gap - height
    blocks = [*outlines, *taken]
    for at in steps:
        across, along = (near - 1, height + 2), (at - 2, length + 4)
        room = Box(across[0], along[0], across[1], along[1])
        if not join.upright:
            room = Box(along[0], across[0], along[1], across[1])
        if any(meets_box(ring, room) for ring in blocks):
            continue
        if join.upright:
            return [TextMark(near + height, at + length, words, SMALL_PT, colour=ACCENT, turn_degrees=-90.0)]
        return [TextMark(at, near + height, words, SMALL_PT, colour=ACCENT)]
    return []


def _words(pattern: TemplatePattern, tiling: Tiling, number: int, taken: Sequence[Contour]) -> tuple[Mark, ...]:
    """All words and the grain arrow on the tile with most of the template, its letter on the others."""
    cores = tuple(each.core for each in tiling.tiles)
    share = _share(pattern.sewing, cores[number])
    if not share or abs(area(share)) < 1.0:
        return ()
    if number == _fullest(pattern.sewing, cores):
        inside = words_inside(pattern, share, taken)
        if inside is not None:
            return inside
    for size_pt in (34.0, 20.0, 12.0):
        named = (pattern.messages("tiles-tile", tile=number + 1),)
        block = set_words(TemplateWords(pattern.letter, "", named), size_pt, SMALL_PT, 60.0, stacked=False)
        room = find_room(share, taken, block.width_pt + 10.0, block.height_pt + 10.0, centroid(share))
        if room is not None:
            return moved(block.marks, room.x_pt + 5.0, room.y_pt + 5.0)
    return letter_inside(pattern, share, taken) or ()


def _share(outline: Contour, core: Box) -> Contour:
    """What of an outline lies on a tile, clear of its edges; nothing where it only touches it."""
    share = clip_ring(outline, Box(core.x_pt + 6, core.y_pt + 6, core.width_pt - 12, core.height_pt - 12))
    return share if len(share) > 2 else ()


@lru_cache(maxsize=4)
def _fullest(outline: Contour, cores: tuple[Box, ...]) -> int:
    """The tile with most of the outline: asked by each of hundreds of tiles, and found once."""
    shares = [_share(outline, core) for core in cores]
    return max(range(len(shares)), key=lambda k: abs(area(shares[k])) if shares[k] else 0.0)


def _strip(pattern: TemplatePattern, tiling: Tiling, number: int, strip: Box) -> list[Mark]:
    """The tile's name and how to join, beside the small map."""
    room = Box(strip.right_pt - _MAP_WIDTH_PT, strip.y_pt, _MAP_WIDTH_PT, strip.height_pt)
    width = strip.width_pt - _MAP_WIDTH_PT - _GUTTER_PT
    marks: list[Mark] = []
    y = strip.y_pt + 7.0
    for row in wrap(tile_name(pattern.letter, tiling, number, pattern.messages), BODY_PT, "bold", width):
        marks.append(TextMark(strip.x_pt, y, row, BODY_PT, "bold"))
        y += 12.0
    said = wrap(" · ".join((pattern.words.title, *pattern.words.lines)), SMALL_PT, "regular", width)
    if len(said) > _MOST_ROWS:
        said = [*said[: _MOST_ROWS - 1], ellipsis(" ".join(said[_MOST_ROWS - 1 :]), SMALL_PT, "regular", width)]
    for row in said:
        marks.append(TextMark(strip.x_pt, y, row, SMALL_PT))
        y += 10.0
    y += 3.0
    for row in wrap(pattern.messages("tiles-join"), SMALL_PT, "regular", width):
        marks.append(TextMark(strip.x_pt, y, row, SMALL_PT, colour=QUIET))
        y += 10.0
    names = tuple((str(place + 1), each.core) for place, each in enumerate(tiling.tiles))
    counts = {"tiles": len(tiling.tiles), "rows": tiling.rows, "columns": tiling.columns}
    alternative = pattern.messages("tiles-map", **counts)
    marks.append(Figure(alternative, tile_map(room, pattern.sewing, names, str(number + 1))))
    return marks
