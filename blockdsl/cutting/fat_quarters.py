"""Fat quarters and other precut sheets: how many pieces and blocks one gives, and how many a quilt takes.

A fat quarter is half a yard cut in two across: 18 in by half the width of the cloth, 21 in by the trade's count;
by the metre 50 by 55 cm. Its edges are seldom straight, so half an inch is kept each way for squaring it up.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import lru_cache
from typing import Annotated

from msgspec import field
from msgspec.structs import replace

from blockdsl.cutting.cloth import ClothPiece, Effort, SheetPlan, fits_sheet, plan_sheets
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.fabric import RulerUnit
from blockdsl.record import Count, Record, Rest, says

SheetSize = tuple[Fraction, Fraction]
"""(across, along): across is the side on which the width of the cloth lies."""

NOMINAL: dict[RulerUnit, SheetSize] = {"in": (Fraction(21), Fraction(18)), "cm": (Fraction(55), Fraction(50))}
"""Checked against a published list (tests/outside/published/quilts.toml); metric: common practice, no source."""

SQUARED_UP: dict[RulerUnit, Fraction] = {"in": Fraction(1, 2), "cm": Fraction(3, 2)}
"""What squaring up takes each way. Common practice, no source."""

PiecesOf = Callable[[int], Sequence[ClothPiece]]
"""How many blocks → all that is cut of one fabric for them, from one print."""

_WHOLE_BATCHES = 8
"""So many blocks leave nothing over of two, four or eight at a time, or of squares cut into triangles."""

MOST_BLOCKS = 500
"""More blocks than this are never asked of one fat quarter."""


class PiecesOfSheet(Record, frozen=True):
    """How many pieces of one size a fat quarter gives."""

    cut: SheetSize
    each: Rest


class FatQuarterUse(Record, frozen=True):
    """What fat quarters do for one fabric of a quilt, in three ways of using them."""

    sheet: Annotated[SheetSize, says("What can be cut from, once it is squared up.")]
    blocks: Annotated[Rest, says("How many blocks have the fabric.")]
    blocks_each: Annotated[Rest, says("How many blocks' worth one gives, 0 when a block takes more than one.")]
    one_print_a_block: Annotated[
        Count | None, says("How many when each block is of one print; null when one gives no whole block.")
    ]
    mixed: Annotated[Rest, says("How many when prints mix freely.")]
    mixed_bound: Annotated[Rest, says("Fewer cannot do then.")]
    per_piece: tuple[PiecesOfSheet, ...] = field(name="pieces")


def usable_fat_quarter(unit: RulerUnit) -> SheetSize:
    """Across and along a fat quarter that is squared up: 20 1/2 x 17 1/2 in, 53.5 x 48.5 cm."""
    (across, along), less = NOMINAL[unit], SQUARED_UP[unit]
    return across - less, along - less


def pieces_from_sheet(piece: SheetSize, sheet: SheetSize, *, may_turn: bool = True) -> int:
    """How many pieces of one size a sheet gives, cut into strips that are then cut across.

    Exact:  strips one way or the other, and where the piece may turn, of both its sides: i strips as high as the piece
            and as many turned ones as the rest holds, for every i.
    Errors: ValueError when a side is not positive.
    """
    if min(*piece, *sheet) <= 0:
        raise ValueError("a piece and a sheet have some size")
    (across, along), (width, height) = sheet, piece
    return max(
        _strips((across, along), (width, height), may_turn=may_turn),
        _strips((along, across), (height, width), may_turn=may_turn),
    )


def _strips(sheet: SheetSize, piece: SheetSize, *, may_turn: bool) -> int:
    """With strips across the first side of the sheet."""
    (across, along), (width, height) = sheet, piece
    each, turned = int(across // width), int(across // height) if may_turn else 0
    most = 0
    for strips in range(int(along // height) + 1):
        rest = int((along - strips * height) // width)
        most = max(most, strips * each + rest * turned)
    return most


def sheets_for(pieces: Sequence[ClothPiece], sheet: SheetSize, measure: Fraction, effort: Effort) -> SheetPlan:
    """The plan with the fewest sheets, each cut into strips across the one side or the other.

    Errors: ValueError for a piece that no sheet holds.
    """
    return _plan(tuple(pieces), sheet, measure, effort)


@lru_cache(256)
def _plan(pieces: tuple[ClothPiece, ...], sheet: SheetSize, measure: Fraction, effort: Effort) -> SheetPlan:
    """The same question is asked once."""
    return plan_sheets(pieces, *sheet, measure, effort)


def blocks_from_sheet(pieces_of: PiecesOf, sheet: SheetSize, measure: Fraction) -> int:
    """Of how many blocks one sheet gives all the pieces; 0 when it does not give one block's.

    Takes:  what so many blocks of one print are cut from: batches and squares for triangles are shared among them.
    Method: between none and as many as the bare area allows, halving: the number for which one sheet was found to do
            and not for the next that was tried. A cleverer plan may give one more, never one less.
    """
    one = pieces_of(1)
    if not _area(one) or not all(fits_sheet(piece, *sheet) for piece in one):
        return 0
    low, high = 0, min(MOST_BLOCKS, int(sheet[0] * sheet[1] * _WHOLE_BATCHES // _area(pieces_of(_WHOLE_BATCHES))))
    while low < high:
        middle = (low + high + 1) // 2
        pieces = pieces_of(middle)
        fits = all(fits_sheet(piece, *sheet) for piece in pieces)
        if fits and sheets_for(pieces, sheet, measure, Effort.QUICK).count <= 1:
            low = middle
        else:
            high = middle - 1
    return low


def alike(per_block: Sequence[ClothPiece]) -> PiecesOf:
    """Blocks that share nothing: each takes the same pieces."""
    return lambda blocks: [replace(piece, count=piece.count * blocks) for piece in per_block]


def _area(pieces: Sequence[ClothPiece]) -> Fraction:
    return sum((piece.width * piece.height * piece.count for piece in pieces), Fraction(0))


def fat_quarters_of_prints(uses: Sequence[int], blocks_each: int) -> tuple[int, ...] | None:
    """How many fat quarters of each print, from how many blocks it is in; None when one gives no whole block."""
    return tuple(-(-count // blocks_each) for count in uses) if blocks_each else None


def fat_quarter_use(
    pieces_of: PiecesOf | None,
    blocks: int,
    whole: Sequence[ClothPiece],
    sheet: SheetSize,
    measure: Fraction,
    effort: Effort = Effort.USUAL,
) -> FatQuarterUse | None:
    """What fat quarters do for one fabric: its pieces in so many blocks of one print, and all of them in the quilt.

    None when a piece is too large for a fat quarter, so that this fabric is bought by its length.
    """
    if not whole or not all(fits_sheet(piece, *sheet) for piece in whole):
        return None
    each = blocks_from_sheet(pieces_of, sheet, measure) if pieces_of else 0
    mixed = sheets_for(whole, sheet, measure, effort)
    sizes = {(piece.width, piece.height): piece.may_turn for piece in whole}
    return FatQuarterUse(
        sheet=sheet,
        blocks=blocks,
        blocks_each=each,
        one_print_a_block=-(-blocks // each) if each else None,
        mixed=mixed.count,
        mixed_bound=mixed.bound,
        per_piece=tuple(
            PiecesOfSheet(size, pieces_from_sheet(size, sheet, may_turn=turns)) for size, turns in sizes.items()
        ),
    )
