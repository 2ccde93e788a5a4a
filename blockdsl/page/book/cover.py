"""The title page of a book: its name over pictures of its quilts and blocks in rows that fill the page's width."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.bookfacts import BookFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.prose import TextStyle, fitted, line, lines_of, rule
from blockdsl.marks.theme import BOLD_RULE_PT, GUTTER_PT, INK, LEAD_PT, QUIET, STEP_PT, Box, PaperSize
from blockdsl.pictures.block import block_picture
from blockdsl.pictures.quilt import quilt_picture
from blockdsl.wording.messages import words_of
from blockdsl.wording.sheet import format_count

_TITLE_SIZES_PT: Final = (44.0, 34.0, 26.0, 19.0)
_TITLE_LINES: Final = 3
_TITLE_LEADING: Final = 1.12
_BY: Final = TextStyle(LEAD_PT + 2)
_SUBTITLE: Final = TextStyle(LEAD_PT + 6)
_UNDER: Final = TextStyle(LEAD_PT, colour=QUIET)
_MOST_PICTURES: Final = 60


def cover(book: BookFacts, paper: PaperSize) -> tuple[Mark, ...]:
    """All marks of the title page; quilts come first, what is beyond the sixtieth picture is left out."""
    box = paper.content
    pictured: list[BlockFacts | QuiltFacts] = [*book.quilts, *(block.sizes[0] for block in book.blocks)]
    style, lines = _title_lines(book.name, box.width_pt)
    pitch = style.size_pt * _TITLE_LEADING
    marks: list[Mark] = list(moved([rule(BOLD_RULE_PT / 2, box.width_pt, INK, BOLD_RULE_PT)], box.x_pt, box.y_pt))
    y = box.y_pt + 8 * STEP_PT + style.capitals_pt
    for place, words in enumerate(lines):
        marks += line(words, box.x_pt - 0.04 * style.size_pt, y + place * pitch, style)
    y += (len(lines) - 1) * pitch + 5 * STEP_PT
    said = words_of(book)("book-to-sew", count=format_count(book))
    for text, under in ((book.subtitle, _SUBTITLE), (book.author, _BY), (said, _UNDER)):
        if text:
            marks += line(fitted(text, box.width_pt, under), box.x_pt, y + under.baseline_pt, under)
            y += under.line_pt
    y += 8 * STEP_PT
    return (*marks, *_pictures(pictured[:_MOST_PICTURES], Box(box.x_pt, y, box.width_pt, box.bottom_pt - y)))


def _title_lines(title: str, width_pt: float) -> tuple[TextStyle, list[str]]:
    """The largest type in which the title takes few lines."""
    for size in _TITLE_SIZES_PT:
        style = TextStyle(size, "bold", INK)
        lines = lines_of(title, width_pt, style)
        if len(lines) <= _TITLE_LINES:
            break
    return style, lines


def _pictures(pictured: Sequence[BlockFacts | QuiltFacts], room: Box) -> list[Mark]:
    """The pictures row by row, each row as wide as the page; at the foot of the room."""
    rows = rows_that_fit(len(pictured), room.width_pt, room.height_pt)
    marks: list[Mark] = []
    y = room.bottom_pt - _height(rows, room.width_pt)
    place = 0
    for count in rows:
        side = _side(count, room.width_pt)
        for column in range(count):
            box = Box(room.x_pt + column * (side + GUTTER_PT), y, side, side)
            marks.append(_picture(pictured[place], box, f"cover-{place}"))
            place += 1
        y += side + GUTTER_PT
    return marks


def _picture(facts: BlockFacts | QuiltFacts, box: Box, name: str) -> Mark:
    """The block or quilt in the middle of its square."""
    room = Box(0.0, 0.0, box.width_pt, box.height_pt)
    if isinstance(facts, QuiltFacts):
        picture, placed = quilt_picture(facts, room, name=name)
    else:
        picture, placed = block_picture(facts, room)
    dx = box.x_pt + (box.width_pt - placed.width_pt) / 2 - placed.x_pt
    dy = box.y_pt + (box.height_pt - placed.height_pt) / 2 - placed.y_pt
    return moved([picture], dx, dy)[0]


def rows_that_fit(count: int, width_pt: float, height_pt: float) -> tuple[int, ...]:
    """How many squares each row holds, the fewer and larger ones first: as many rows as the height has room for.

    Rows differ by one at most; a single row is always given, whatever its height.
    """
    best: tuple[int, ...] = (count,) if count else ()
    for number in range(2, count + 1):
        short, longer = divmod(count, number)
        rows = (short,) * (number - longer) + (short + 1,) * longer
        if _height(rows, width_pt) > height_pt:
            break
        best = rows
    return best


def _side(count: int, width_pt: float) -> float:
    return (width_pt - (count - 1) * GUTTER_PT) / count


def _height(rows: Sequence[int], width_pt: float) -> float:
    return sum(_side(count, width_pt) for count in rows) + GUTTER_PT * (len(rows) - 1)
