"""The block on the smallest squared paper that it can be drawn on: what a teacher shows a beginner."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.drafting import DraftFacts, draft
from blockdsl.geometry import Exact, to_float
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Figure, Mark, Page, Path
from blockdsl.marks.prose import TextStyle, line, line_centred, line_ending
from blockdsl.marks.theme import BODY_PT, INK, QUIET, SMALL_PT, WHITE, Box
from blockdsl.pictures.block import block_picture
from blockdsl.wording.grammar import capital
from blockdsl.wording.lengths import plain_measure
from blockdsl.wording.messages import words_of
from blockdsl.wording.sheet import family_words

_SIDE_PT: Final = 432.0
_NUMBERS_PT: Final = 22.0
_WORDS_PT: Final = 42.0
_MARGIN_PT: Final = 12.0
_LINE_PT: Final = 0.9
_HALO_PT: Final = 2.4
_NUMBER: Final = TextStyle(SMALL_PT, "regular", QUIET)
_BODY: Final = TextStyle(BODY_PT, "regular", INK)
_TITLE: Final = TextStyle(BODY_PT, "bold", INK)


def format_squares(block: BlockFacts, drawing: DraftFacts) -> str:
    """What it is drawn on, what the trade calls a block on such a grid, and the designer's own word for its kind."""
    words = words_of(block)
    kind = drawing.kind.replace(" ", "-")
    if kind == "squares" and any(patch.curved is not None for patch in block.placed):
        kind = "compass"
    elif kind in ("eight-point", "sixty-degrees") and drawing.across * drawing.down > 1:
        kind = f"{kind}-parts"
    family = family_words(drawing.family, words)
    said = words(f"drafted-{kind}", across=drawing.across, down=drawing.down, family=family)
    if block.family and block.family != drawing.family:
        return words("drafted-listed", squares=said, family=block.family)
    return said


def format_cell(block: BlockFacts, cell: Exact | None) -> str:
    """The square's finished and unfinished size in words with plain fractions."""
    words = words_of(block)
    if cell is None:
        return words("drafted-uneven")
    finished, unfinished = (plain_measure(side, block.unit, words) for side in (cell, cell + 2 * block.seam))
    return words("drafted-cell", finished=finished, unfinished=unfinished)


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
    squares, cell = format_squares(block, drawing), format_cell(block, drawing.cell)
    words = words_of(block)("drafted-picture", block=block.name, squares=squares, cell=cell)
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
        *line(fraction_text(capital(squares)), placed.x_pt, below + _BODY.line_pt, _BODY),
        *line(fraction_text(capital(cell)), placed.x_pt, below + 2 * _BODY.line_pt, _BODY),
    )
    width = max(placed.right_pt, placed.x_pt + _SIDE_PT) + _MARGIN_PT
    return Page(width, placed.bottom_pt + _WORDS_PT + _MARGIN_PT + _BODY.line_pt, (Figure(words, marks), *told))


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
