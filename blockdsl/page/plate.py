"""What a page is about, large: the picture in colour, others beside it, and the key, arranged by their proportion."""

from __future__ import annotations

from itertools import groupby
from typing import Final

from msgspec.structs import replace

from blockdsl.document.content import FabricKey, Picture, Plate
from blockdsl.marks.display_list import Element, Mark, moved, tagged
from blockdsl.marks.prose import line
from blockdsl.marks.theme import CONTENT_WIDTH_PT, GUTTER_PT, STEP_PT, Box, span_pt
from blockdsl.page.cards import column
from blockdsl.page.flow import Drawn, Flowable
from blockdsl.page.key import key_column, key_columns
from blockdsl.page.text import CAPTION
from blockdsl.wording.messages import Messages

_LARGE_COLUMNS: Final = 7
_SMALL_COLUMNS: Final = 5
_WIDE: Final = 2.6
_TALL: Final = 0.6
_WIDEST: Final = 1.6
_TALLEST: Final = 0.7
_COLOUR_COLUMNS: Final = 5
_LETTER_COLUMNS: Final = 4
_KEY_COLUMNS: Final = 3
_BEFORE_PT: Final = 3.5 * STEP_PT
_TALLEST_PT: Final = 330.0
_SMALL_PT: Final = 150.0


def plate_flowables(plate: Plate, words: Messages, *, compact: bool = False) -> list[Flowable]:
    """The pictures and their key; compact ones leave the cutting room on the same page."""
    first, *others = plate.pictures
    ratio = first.width_pt / first.height_pt
    if not others:
        return _alone(plate, words)
    if plate.small:
        return _small(plate)
    if compact and plate.simple and _TALLEST < ratio < _WIDEST and (row := _in_a_row(plate)):
        return row
    if ratio >= _WIDE:
        return _one_under_the_other(plate)
    return _three_beside(plate) if ratio <= _TALL else _two_beside(plate)


def _two_beside(plate: Plate) -> list[Flowable]:
    """Colour at the left, letters at the right, the key under the letters.

    A key that would hang below the picture goes under both, and then both pictures are of one size.
    """
    first, second = plate.pictures[:2]
    large, small = span_pt(_LARGE_COLUMNS), span_pt(_SMALL_COLUMNS)
    key_height, key = key_column(plate.key, small)
    letters_height = small / max(1.0, second.width_pt / second.height_pt)
    if letters_height + CAPTION.line_pt + 3 * STEP_PT + key_height <= large:
        height, marks, bottom = _pair(first, second, large, small)
        top = max(bottom + 2 * STEP_PT, height - key_height)
        marks += moved(key, large + GUTTER_PT, top)
        return [Flowable(max(height, top + key_height), marks, before_pt=_BEFORE_PT)]
    height, marks, _ = _pair(first, second, span_pt(6), span_pt(6))
    return [Flowable(height, marks, before_pt=_BEFORE_PT), *_key_below(plate.key)]


def _pair(first: Picture, second: Picture, left_pt: float, right_pt: float) -> tuple[float, tuple[Mark, ...], float]:
    """Both pictures beside each other: their height, their marks, and where the right one with its caption ends."""
    colour, filled = first.draw(Box(0.0, 0.0, left_pt, left_pt))
    bottom, letters = _captioned(second, Box(0.0, 0.0, right_pt, right_pt))
    return max(filled.height_pt, bottom), (*colour, *moved(letters, left_pt + GUTTER_PT, 0.0)), bottom


def _captioned(picture: Picture, box: Box) -> Drawn:
    """The picture with its caption: where they end, and their marks."""
    marks, filled = picture.draw(box)
    top = filled.bottom_pt + STEP_PT
    words = line(picture.caption, filled.x_pt, top + CAPTION.baseline_pt, CAPTION)
    caption = tagged(words, Element("Caption"))
    return top + CAPTION.line_pt, (*marks, *caption)


def _three_beside(plate: Plate) -> list[Flowable]:
    """For a tall block: colour, letters and key, four columns of the page each."""
    first, second = plate.pictures[:2]
    width, height = span_pt(4), span_pt(_LARGE_COLUMNS)
    colour, filled = first.draw(Box(0.0, 0.0, width, height))
    bottom, letters = _captioned(second, Box(0.0, 0.0, width, height))
    key_height, key = key_column(plate.key, width)
    below = key_height > height
    marks = (*colour, *moved(letters, width + GUTTER_PT, 0.0))
    marks += () if below else moved(key, 2 * (width + GUTTER_PT), 0.0)
    pictures = Flowable(max(filled.height_pt, bottom, 0.0 if below else key_height), marks, before_pt=_BEFORE_PT)
    return [pictures, *(_key_below(plate.key) if below else [])]


def _one_under_the_other(plate: Plate) -> list[Flowable]:
    """For a wide block: colour and letters over the whole width, then the key."""
    first, second = plate.pictures[:2]
    colour, filled = first.draw(Box(0.0, 0.0, CONTENT_WIDTH_PT, CONTENT_WIDTH_PT))
    bottom, letters = _captioned(second, Box(0.0, 0.0, CONTENT_WIDTH_PT, CONTENT_WIDTH_PT))
    return [
        Flowable(filled.height_pt, colour, before_pt=_BEFORE_PT),
        Flowable(bottom, letters, before_pt=3 * STEP_PT),
        *_key_below(plate.key),
    ]


def compact_height(plate: Plate) -> float:
    """About how high the compact arrangement is, without drawing it; nothing is promised of what does not fit."""
    first = plate.pictures[0]
    picture = span_pt(_COLOUR_COLUMNS) / max(1.0, first.width_pt / first.height_pt)
    return max(picture, key_column(plate.key, span_pt(_KEY_COLUMNS))[0])


def _in_a_row(plate: Plate) -> list[Flowable]:
    """Colour, letters and key side by side; nothing where the key is higher than the row."""
    first, second = plate.pictures[:2]
    side, width = span_pt(_COLOUR_COLUMNS), span_pt(_LETTER_COLUMNS)
    key_height, key = key_column(plate.key, span_pt(_KEY_COLUMNS))
    if key_height > side:
        return []
    colour, filled = first.draw(Box(0.0, 0.0, side, side))
    bottom, letters = _captioned(second, Box(0.0, 0.0, width, side))
    marks = (*colour, *moved(letters, side + GUTTER_PT, 0.0), *moved(key, side + width + 2 * GUTTER_PT, 0.0))
    return [Flowable(max(filled.height_pt, bottom, key_height), marks, before_pt=4 * STEP_PT)]


def _alone(plate: Plate, words: Messages) -> list[Flowable]:
    """One picture at the left; at its right the key, then what belongs beside it as far as it finds room."""
    colour, filled = plate.pictures[0].draw(Box(0.0, 0.0, span_pt(8), _TALLEST_PT))
    x = filled.width_pt + 2 * GUTTER_PT
    width = CONTENT_WIDTH_PT - x
    y, key = key_column(plate.key, width)
    marks = [*colour, *moved(key, x, 0.0)]
    for _, group in groupby(plate.beside, key=type):
        height, drawn = column(tuple(group), width, words)
        if y + 4 * STEP_PT + height <= filled.height_pt:
            marks += moved(drawn, x, y + 4 * STEP_PT)
            y += 4 * STEP_PT + height
    return [Flowable(max(filled.height_pt, y), tuple(marks), before_pt=_BEFORE_PT)]


def _small(plate: Plate) -> list[Flowable]:
    """Two pictures beside each other, the first six columns from the second."""
    first, second = plate.pictures
    colour, one = first.draw(Box(0.0, 0.0, _SMALL_PT, _SMALL_PT))
    height, letters = _captioned(second, Box(0.0, 0.0, _SMALL_PT + 60.0, _SMALL_PT))
    marks = (*colour, *moved(letters, span_pt(6) + GUTTER_PT, 0.0))
    return [Flowable(max(one.height_pt, height), marks, keep_with_next=True)]


def _key_below(key: FabricKey) -> list[Flowable]:
    rows = key_columns(key)
    return [replace(rows[0], before_pt=3 * STEP_PT), *rows[1:]] if rows else []
