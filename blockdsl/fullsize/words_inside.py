"""The words of a template and its grain arrow, set inside an outline where they fit."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from msgspec import Struct

from blockdsl.fullsize.pattern import TemplatePattern, TemplateWords
from blockdsl.fullsize.room import box_ring, centroid, find_room, find_room_along
from blockdsl.fullsize.template_marks import grain_arrow, reading_direction, words_along
from blockdsl.marks.display_list import Contour, Mark, PagePoint, TextMark, Weight, moved
from blockdsl.marks.theme import BODY_PT, SMALL_PT
from blockdsl.marks.typeset import cap_height, ellipsis, measure, wrap

# Letter, words and width of a line; words are set smaller before they are broken into shorter lines.
_SETTINGS: Final = (
    (34.0, BODY_PT, 150.0),
    (28.0, BODY_PT, 118.0),
    (24.0, 8.0, 106.0),
    (20.0, SMALL_PT, 98.0),
    (24.0, 8.0, 82.0),
    (20.0, SMALL_PT, 66.0),
)
_PADDING_PT: Final = 5.0
_ARROW_PADDING_PT: Final = 3.0


class TextBlock(Struct, frozen=True):
    """Words set and measured, from their own top left corner."""

    width_pt: float
    height_pt: float
    marks: tuple[TextMark, ...]


def blocks(words: TemplateWords) -> Iterator[TextBlock]:
    """Ways to set the words, the most generous first."""
    for letter_pt, size_pt, width_pt in _SETTINGS:
        yield set_words(words, letter_pt, size_pt, width_pt, stacked=False)
        yield set_words(words, letter_pt, size_pt, width_pt, stacked=True)
    joined = TemplateWords(
        words.letter, words.title, (" · ".join(part for part in (*words.lines, words.block) if part),)
    )
    for width_pt in (420, 300, 200, 140):
        yield set_words(joined, 20, 8.0, width_pt, stacked=False)


def set_words(words: TemplateWords, letter_pt: float, size_pt: float, width_pt: float, *, stacked: bool) -> TextBlock:
    """The letter with the title and the lines to its right, or below it when stacked; the block's name on one line."""
    leading = size_pt * 1.28
    rows: list[tuple[str, Weight]] = [(row, "bold") for row in wrap(words.title, size_pt, "bold", width_pt) if row]
    rows += [(row, "regular") for line in words.lines for row in wrap(line, size_pt, "regular", width_pt)]
    if words.block:
        rows.append((ellipsis(words.block, size_pt, "regular", width_pt), "regular"))
    letter_width = measure(words.letter, letter_pt, "bold")
    left, top = (0.0, cap_height(letter_pt) + leading * 0.6) if stacked else (letter_width + letter_pt * 0.28, 0.0)
    texts = [TextMark(0.0, cap_height(letter_pt), words.letter, letter_pt, "bold")]
    y = top + cap_height(size_pt)
    for row, weight in rows:
        texts.append(TextMark(left, y, row, size_pt, weight))
        y += leading
    widest = max((measure(text.text, text.size_pt, text.weight) for text in texts[1:]), default=0.0)
    height = max(cap_height(letter_pt), y - leading + size_pt * 0.25)
    return TextBlock(max(left + widest, letter_width), height, tuple(texts))


def words_inside(pattern: TemplatePattern, ring: Contour, taken: Sequence[Contour] = ()) -> tuple[Mark, ...] | None:
    """All words and the grain arrow within the ring and clear of what is taken, or None when they do not fit."""
    middle = centroid(ring)
    for block in blocks(pattern.words):
        room = find_room(ring, taken, block.width_pt + 2 * _PADDING_PT, block.height_pt + 2 * _PADDING_PT, middle)
        if room is None:
            continue
        for length in (72.0, 52.0, 36.0):
            arrow = _arrow(
                pattern.grain, ring, [*taken, box_ring(room)], length, middle, word=pattern.messages("templates-grain")
            )
            if arrow is not None:
                return (*moved(block.marks, room.x_pt + _PADDING_PT, room.y_pt + _PADDING_PT), *arrow)
    return None


def _arrow(
    grain: PagePoint, ring: Contour, taken: Sequence[Contour], length: float, near: PagePoint, *, word: str = ""
) -> tuple[Mark, ...] | None:
    """A grain arrow with or without its word where there is room for it."""
    word_room = cap_height(SMALL_PT) + 4.0 if word else 0.0
    padding = _ARROW_PADDING_PT if length > 12 else 1.0
    breadth = 2 * padding + 4.0 + word_room
    bar = find_room_along(ring, taken, reading_direction(grain), length + 2 * padding, breadth, near)
    if bar is None:
        return None
    _, _, right, left = bar
    up = ((bar[0][0] - left[0]) / breadth, (bar[0][1] - left[1]) / breadth)
    along = ((right[0] - left[0]) / (length + 2 * padding), (right[1] - left[1]) / (length + 2 * padding))
    rise = padding + 2.0
    start = (left[0] + up[0] * rise + along[0] * padding, left[1] + up[1] * rise + along[1] * padding)
    stop = (start[0] + along[0] * length, start[1] + along[1] * length)
    marks: list[Mark] = [grain_arrow(start, stop)]
    if word:
        marks.append(words_along(start, stop, word, SMALL_PT))
    return tuple(marks)


def letter_inside(pattern: TemplatePattern, ring: Contour, taken: Sequence[Contour] = ()) -> tuple[Mark, ...] | None:
    """As much as a small shape holds: its letter and a bare arrow, or the arrow alone; None when not even that."""
    middle = centroid(ring)
    for size_pt in (20.0, 14.0, 11.0, 8.5, 7.0):
        block = set_words(TemplateWords(pattern.letter, ""), size_pt, SMALL_PT, 10.0, stacked=True)
        padding = size_pt * 0.16
        room = find_room(ring, taken, block.width_pt + 2 * padding, cap_height(size_pt) + 2 * padding, middle)
        if room is None:
            continue
        for length in (30.0, 20.0, 14.0, 10.0):
            arrow = _arrow(pattern.grain, ring, [*taken, box_ring(room)], length, middle)
            if arrow is not None:
                return (*moved(block.marks, room.x_pt + padding, room.y_pt + padding), *arrow)
    for length in (14.0, 10.0, 7.0):
        arrow = _arrow(pattern.grain, ring, taken, length, middle)
        if arrow is not None:
            return arrow
    return None
