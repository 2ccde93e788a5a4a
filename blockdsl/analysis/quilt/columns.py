"""Blocks in columns: dropped, every second one by half a block, or with plain strips between them."""

from __future__ import annotations

from blockdsl.analysis.quilt.middle import BlockHere, Chooser, PlainSquare, Sashing, Top
from blockdsl.analysis.quilt.straight import put_here, straight_size
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.quilt import InRow

Size = tuple[Fraction, Fraction]


def half_depth(block: Size, sashing: Sashing | None) -> Fraction:
    """How deep the halves at the ends of a dropped column are.

    Exact:  half of what a block is higher than a sash: a dropped column has one sash more and one block less.
    """
    return (block[1] - (sashing.width if sashing else 0)) / 2


def lay_dropped(
    top: Top, across: int, down: int, block: Size, sashing: Sashing | None, choose: Chooser, fill: str | None
) -> None:
    """Column by column from the left. Every second one begins and ends with a half: of plain cloth, or of the block.

    With sashing, strips run between the columns; with posts, posts lie in them beside the end of every sash.
    """
    _, height = straight_size(across, down, block, sashing)
    sash = sashing.width if sashing else Fraction(0)
    inside = sash if sashing and sashing.outer else Fraction(0)
    depth = half_depth(block, sashing)
    x = Fraction(0)
    for column in range(across):
        if sashing and (column or sashing.outer):
            _strip(top, x, height, sashing, depth, (inside, down))
            x += sash
        dropped = column % 2 == 1
        parts = [depth, *[block[1]] * (down - 1), depth] if dropped else [block[1]] * down
        members: list[InRow] = []
        if sashing and sashing.outer:
            members.append(top.put_box("sash", sashing.fabric, (x, Fraction(0)), (block[0], sash)))
        y = inside
        for row, part in enumerate(parts):
            if row and sashing:
                members.append(top.put_box("sash", sashing.fabric, (x, y), (block[0], sash)))
                y += sash
            place = (row, column)
            if dropped and row in (0, down):
                members.append(_end(top, choose, fill, (x, y), (block[0], part), place))
            else:
                members.append(put_here(top, choose, (x, y), block, place))
            y += part
        if sashing and sashing.outer:
            members.append(top.put_box("sash", sashing.fabric, (x, y), (block[0], sash)))
        top.end_row("column", members, height, block[0])
        x += block[0]
    if sashing and sashing.outer:
        _strip(top, x, height, sashing, depth, (inside, down))


def _end(top: Top, choose: Chooser, fill: str | None, at: Size, extent: Size, place: tuple[int, int]) -> InRow:
    """The half at one end of a dropped column: at the top its lower part, at the bottom its upper."""
    here = PlainSquare(fill) if fill is not None else choose(*place)
    if isinstance(here, BlockHere):
        return top.put_half(here, extent[1], lower=place[0] == 0, at=(*at, *place))
    return top.put_box("half block", here.fabric, at, extent)


def _strip(
    top: Top, x: Fraction, height: Fraction, sashing: Sashing, depth: Fraction, column: tuple[Fraction, int]
) -> None:
    """What runs between two columns. `column` is where the blocks begin and how many blocks make up its height."""
    sash = sashing.width
    if sashing.posts is None:
        members = [top.put_box("sash strip", sashing.fabric, (x, Fraction(0)), (sash, height))]
        top.end_row("strip", members, height, sash)
        return
    inside, down = column
    members = []
    y = Fraction(0)
    if inside:
        members.append(top.put_box("post", sashing.posts, (x, y), (sash, sash)))
        y += sash
    for place in range(2 * down):
        if place:
            members.append(top.put_box("post", sashing.posts, (x, y), (sash, sash)))
            y += sash
        members.append(top.put_box("sash", sashing.fabric, (x, y), (sash, depth)))
        y += depth
    if inside:
        members.append(top.put_box("post", sashing.posts, (x, y), (sash, sash)))
    top.end_row("strip", members, height, sash)


def strippy_size(across: int, down: int, block: Size, strip: Fraction, *, outer: bool) -> Size:
    """Finished: columns of blocks, and the strips between (and beside) them."""
    return across * block[0] + (across + (1 if outer else -1)) * strip, down * block[1]


def lay_strippy(
    top: Top, across: int, down: int, block: Size, strip: tuple[Fraction, str, bool], choose: Chooser
) -> None:
    """Columns of blocks with plain strips between them; `strip` is its width, its fabric, whether also at the sides."""
    width, fabric, outer = strip
    height = down * block[1]
    x = Fraction(0)
    for column in range(across):
        if column or outer:
            top.end_row("strip", [top.put_box("strip", fabric, (x, Fraction(0)), (width, height))], height, width)
            x += width
        members = [put_here(top, choose, (x, row * block[1]), block, (row, column)) for row in range(down)]
        top.end_row("column", members, height, block[0])
        x += block[0]
    if outer:
        top.end_row("strip", [top.put_box("strip", fabric, (x, Fraction(0)), (width, height))], height, width)
