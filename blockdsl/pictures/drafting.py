"""The block on the smallest squared paper that it can be drawn on: what a teacher shows a beginner."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.drafting import DraftFacts, draft
from blockdsl.geometry import Exact, to_float
from blockdsl.marks.display_list import Figure, Mark, Page, Path
from blockdsl.marks.prose import Style, line, line_centred, line_ending
from blockdsl.marks.theme import BODY_PT, INK, QUIET, SMALL_PT, WHITE, Box
from blockdsl.marks.typeset import fraction_text
from blockdsl.pictures.block import block_picture
from blockdsl.pictures.lengths import plain_length

_SIDE_PT: Final = 432.0
_NUMBERS_PT: Final = 22.0
_WORDS_PT: Final = 42.0
_MARGIN_PT: Final = 12.0
_LINE_PT: Final = 0.9
_HALO_PT: Final = 2.4
_NUMBER: Final = Style(SMALL_PT, "regular", QUIET)
_BODY: Final = Style(BODY_PT, "regular", INK)
_TITLE: Final = Style(BODY_PT, "bold", INK)


def say_squares(block: BlockFacts, drawing: DraftFacts) -> str:
    """What it is drawn on, what the trade calls a block on such a grid, and the designer's own word for its kind."""
    squares = f"{drawing.across} × {drawing.down} squares"
    parts = f" of {drawing.across} × {drawing.down} parts" if drawing.across * drawing.down > 1 else ""
    match drawing.kind:
        case "squares" if any(patch.curved is not None for patch in block.placed):
            words = f"drawn on {squares} with a compass"
        case "squares":
            words = f"drawn on {squares}"
        case "eight-point":
            words = f"drawn on an eight-point grid (√2){parts}"
        case "sixty degrees":
            words = f"drawn on a grid of 60° (√3){parts}"
        case _:
            words = f"drawn on no even grid that is of use; its own parts are {drawing.across} × {drawing.down}"
    own = f", listed as {block.family}" if block.family and block.family != drawing.family else ""
    return f"{words}: {drawing.family}{own}"


def say_cell(block: BlockFacts, cell: Exact | None) -> str:
    """The square's finished and unfinished size in words with plain fractions."""
    if cell is None:
        return "its squares are not all alike"
    unfinished = plain_length(cell + 2 * block.seam, block.unit)
    return f"each square {plain_length(cell, block.unit)} {block.unit} finished, {unfinished} {block.unit} unfinished"


def drafting_page(block: BlockFacts) -> Page:
    """The block in colour, at most 6 in wide and high, its grid over it, the squares counted along two sides."""
    drawing = draft(block)
    box = Box(_MARGIN_PT + _NUMBERS_PT, _MARGIN_PT + _NUMBERS_PT, _SIDE_PT, _SIDE_PT)
    picture, placed = block_picture(block, box)
    scale = placed.width_pt / to_float(block.finished[0])
    xs = [placed.x_pt + to_float(x) * scale for x in drawing.xs]
    ys = [placed.y_pt + to_float(y) * scale for y in drawing.ys]
    lines = tuple(((x, placed.y_pt), (x, placed.bottom_pt)) for x in xs)
    lines += tuple(((placed.x_pt, y), (placed.right_pt, y)) for y in ys)
    words = f"{block.name}, {say_squares(block, drawing)}; {say_cell(block, drawing.cell)}."
    marks: tuple[Mark, ...] = (
        *picture.marks,
        # White below ink: the grid is seen on dark cloth and on light.
        Path(lines, closed=False, stroke=WHITE, stroke_width_pt=_HALO_PT),
        Path(lines, closed=False, stroke=INK, stroke_width_pt=_LINE_PT, dash=(3.0, 2.0)),
        *_counted(xs, placed, across=True),
        *_counted(ys, placed, across=False),
    )
    below = placed.bottom_pt + 18
    told = (
        *line(block.name, placed.x_pt, below, _TITLE),
        *line(fraction_text(_upper(say_squares(block, drawing))), placed.x_pt, below + _BODY.line_pt, _BODY),
        *line(fraction_text(_upper(say_cell(block, drawing.cell))), placed.x_pt, below + 2 * _BODY.line_pt, _BODY),
    )
    width = max(placed.right_pt, placed.x_pt + _SIDE_PT) + _MARGIN_PT
    return Page(width, placed.bottom_pt + _WORDS_PT + _MARGIN_PT + _BODY.line_pt, (Figure(words, marks), *told))


def _upper(words: str) -> str:
    return words[:1].upper() + words[1:]


def _counted(places: Sequence[float], placed: Box, *, across: bool) -> list[Mark]:
    """The squares numbered from 1, above or at the left; where they are narrow only every fifth, and the last."""
    last = len(places) - 1
    narrow = placed.width_pt / max(1, last) < 2 * SMALL_PT
    marks: list[Mark] = []
    for number in range(1, last + 1):
        if narrow and number % 5 and number != last:
            continue
        middle = (places[number - 1] + places[number]) / 2
        if across:
            marks += line_centred(str(number), middle, placed.y_pt - 9, _NUMBER)
        else:
            marks += line_ending(str(number), placed.x_pt - 6, middle + _NUMBER.capitals_pt / 2, _NUMBER)
    return marks
