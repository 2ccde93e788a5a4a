"""The pieces to be cut from one cloth, and the same as whole multiples of the cutter's measure."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from math import ceil, floor, gcd

from msgspec import Struct

from blockdsl.geometry.fraction import Fraction


class ClothPiece(Struct, frozen=True):
    """`count` pieces of one cut size.

    Shape:  `width` across the cloth, from selvage to selvage; `height` along its length.
    Turns:  a piece that may not turn (a directional print) is cut just so. `lengthwise` asks that the longer side
            lies along the length of the cloth, as for long borders; so does a side that no width holds.
    `key` is the caller's own, and is given back with every piece in the plan; two lines may have the same key.
    """

    key: str
    width: Fraction
    height: Fraction
    count: int
    may_turn: bool = True
    lengthwise: bool = False


class PieceSize(Struct, frozen=True):
    """All pieces of one size, in measures. `lines`: which of the caller's lines they come from, and how many of each.

    `ways`: how a piece may lie, as (height, width), the lowest first and each further one narrower. `given`: how many
    the caller gave in each way; where that is a way in which no piece fits, they count for the other.
    """

    area: int
    count: int
    ways: tuple[tuple[int, int], ...]
    lines: tuple[tuple[int, int], ...]
    given: tuple[int, ...]

    def under(self, height: int) -> int | None:
        """Which way is the narrowest in a strip of this height, or None when the piece does not fit under it."""
        best = None
        for way, (lies_high, _) in enumerate(self.ways):
            if lies_high <= height:
                best = way
        return best


def fits_cloth(piece: ClothPiece, usable_width: Fraction) -> bool:
    """Whether cloth of this usable width, as long as you like, holds the piece in a way that it may lie."""
    return bool(_ways(piece, usable_width, None))


def fits_sheet(piece: ClothPiece, sheet_width: Fraction, sheet_length: Fraction) -> bool:
    """Whether a sheet of this size holds the piece in a way that it may lie."""
    return bool(_ways(piece, sheet_width, sheet_length))


def _ways(piece: ClothPiece, usable_width: Fraction, length: Fraction | None) -> list[tuple[Fraction, Fraction, bool]]:
    """(height, width, turned) of each way that the piece may lie; for one that must lie lengthwise, that way alone."""
    ways = [(piece.height, piece.width, False)]
    if piece.may_turn and piece.width != piece.height:
        ways.append((piece.width, piece.height, True))
        if piece.lengthwise:
            ways = [max(ways)]
    return [way for way in ways if way[1] <= usable_width and (length is None or way[0] <= length)]


def is_long(piece: ClothPiece, usable_width: Fraction) -> bool:
    """Whether the piece is cut along the length of the cloth: because it is asked for, or because no width holds it."""
    return piece.lengthwise or max(piece.width, piece.height) > usable_width


def long_size(piece: ClothPiece, usable_width: Fraction) -> tuple[Fraction, Fraction, bool]:
    """(height, width, turned) of a piece cut along the length. ValueError when the cloth does not hold it."""
    ways = _ways(piece, usable_width, None)
    if not ways:
        raise ValueError(f"{piece.key}: no way to lie on cloth {usable_width} wide")
    return max(ways)


def coarsest(pieces: Sequence[ClothPiece], measure: Fraction) -> Fraction:
    """The largest multiple of the measure that measures every side: less to try, and nothing is lost."""
    return measure * (gcd(*(side for piece in pieces for side in whole_sides(piece, measure))) or 1)


def merge_sizes(
    pieces: Sequence[ClothPiece],
    which: Iterable[int],
    usable_width: Fraction,
    length: Fraction | None,
    measure: Fraction,
) -> tuple[PieceSize, ...]:
    """Equal sizes of these lines made one, in measures: pieces rounded up, the cloth down, so that nothing is short.

    Order:  the largest area first, then the lowest way to lie; no order of the caller's matters.
    Errors: ValueError for a piece that does not fit, or of no size.
    """
    across, along = floor(usable_width / measure), None if length is None else floor(length / measure)
    merged: dict[tuple[tuple[int, int], ...], list[tuple[int, int]]] = {}
    for line in which:
        piece = pieces[line]
        ways = _whole_ways(piece, across, along, measure)
        if piece.count:
            merged.setdefault(ways, []).append((line, piece.count))
    sizes = []
    for ways, lines in merged.items():
        count = sum(count for _, count in lines)
        low = sum(count for line, count in lines if whole_sides(pieces[line], measure)[::-1] == ways[0])
        given = (low, count - low) if len(ways) > 1 else (count,)
        sizes.append(PieceSize(ways[0][0] * ways[0][1], count, ways, tuple(lines), given))
    return tuple(sorted(sizes, key=lambda size: (-size.area, size.ways)))


def whole_sides(piece: ClothPiece, measure: Fraction) -> tuple[int, int]:
    """Width and height in measures, rounded up. ValueError for a piece of no size."""
    if min(piece.width, piece.height, measure) <= 0 or piece.count < 0:
        raise ValueError(f"{piece.key}: a piece, its count and the measure are more than nothing")
    return ceil(piece.width / measure), ceil(piece.height / measure)


def _whole_ways(piece: ClothPiece, across: int, along: int | None, measure: Fraction) -> tuple[tuple[int, int], ...]:
    """The ways that the piece may lie, in measures; there are two at most, and the higher one is the narrower."""
    width, height = whole_sides(piece, measure)
    ways = {(height, width), (width, height)} if piece.may_turn else {(height, width)}
    if piece.lengthwise and piece.may_turn:
        ways = {max(ways)}
    ways = {way for way in ways if way[1] <= across and (along is None or way[0] <= along)}
    if not ways:
        raise ValueError(f"{piece.key}: no way to lie on this cloth")
    return tuple(sorted(ways))
