"""What is cut along the length of the cloth: long pieces side by side, and the cloth that is left beside them."""

from __future__ import annotations

from collections.abc import Sequence
from math import ceil, floor

from msgspec import Struct, field

from blockdsl.cutting.cloth.pieces import ClothPiece, long_size
from blockdsl.geometry.fraction import Fraction


class LongPiece(Struct, frozen=True):
    """A long piece in measures, as it lies; `line`: which of the caller's it is."""

    height: int
    width: int
    line: int
    turned: bool


class LongPanel(Struct):
    """A length of cloth with columns of long pieces, each column as wide as its first piece; `beside` is over."""

    height: int
    beside: int
    columns: list[list[LongPiece]] = field(default_factory=list)


def long_panels(
    pieces: Sequence[ClothPiece], lines: Sequence[int], usable_width: Fraction, measure: Fraction
) -> list[LongPanel]:
    """Panels for the long pieces: each as long as the longest piece left, filled with columns from the longest down.

    Below a piece shorter than its panel come others that fit its column, so that little is trimmed away.
    Errors: ValueError for a piece that the cloth does not hold.
    """
    left: dict[LongPiece, int] = {}
    for line in lines:
        high, wide, turned = long_size(pieces[line], usable_width)
        left[LongPiece(ceil(high / measure), ceil(wide / measure), line, turned)] = pieces[line].count
    order = sorted(
        (piece for piece in left if left[piece]), key=lambda piece: (-piece.height, -piece.width, piece.line)
    )
    panels: list[LongPanel] = []
    while any(left[piece] for piece in order):
        panel = LongPanel(next(piece.height for piece in order if left[piece]), floor(usable_width / measure))
        while column := _column(order, left, panel.height, panel.beside):
            panel.columns.append(column)
            panel.beside -= column[0].width
        panels.append(panel)
    return panels


def _column(order: Sequence[LongPiece], left: dict[LongPiece, int], height: int, width: int) -> list[LongPiece]:
    """One column: the first piece that fits, and below it what still fits its width and the height."""
    column: list[LongPiece] = []
    for piece in order:
        while left[piece] and piece.height <= height and piece.width <= width:
            column.append(piece)
            left[piece] -= 1
            height -= piece.height
            width = column[0].width
    return column
