"""Blocks in straight rows, with or without sashing."""

from __future__ import annotations

from blockdsl.analysis.quilt.middle import BlockHere, Chooser, Sashing, Top
from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.quilt import InRow


def straight_size(
    across: int, down: int, block: tuple[Fraction, Fraction], sashing: Sashing | None
) -> tuple[Fraction, Fraction]:
    """Finished: the blocks, the sashes between them, and those on the outside where they are asked for."""
    sash = sashing.width if sashing else Fraction(0)
    more = 1 if sashing and sashing.outer else -1
    return across * block[0] + (across + more) * sash, down * block[1] + (down + more) * sash


def lay_straight(
    top: Top, across: int, down: int, block: tuple[Fraction, Fraction], sashing: Sashing | None, choose: Chooser
) -> None:
    """Row by row from the top, each from the left; rows of sashes between them, and round them."""
    width, _ = straight_size(across, down, block, sashing)
    sash = sashing.width if sashing else Fraction(0)
    y = Fraction(0)
    if sashing and sashing.outer:
        _sash_row(top, across, block[0], sashing, width, y)
        y += sash
    for row in range(down):
        if row and sashing:
            _sash_row(top, across, block[0], sashing, width, y)
            y += sash
        members: list[InRow] = []
        x = Fraction(0)
        for column in range(across):
            if sashing and (column or sashing.outer):
                members.append(top.put_box("sash", sashing.fabric, (x, y), (sash, block[1])))
                x += sash
            members.append(put_here(top, choose, (x, y), block, (row, column)))
            x += block[0]
        if sashing and sashing.outer:
            members.append(top.put_box("sash", sashing.fabric, (x, y), (sash, block[1])))
        top.end_row("row", members, width, block[1])
        y += block[1]
    if sashing and sashing.outer:
        _sash_row(top, across, block[0], sashing, width, y)


def put_here(
    top: Top, choose: Chooser, at: tuple[Exact, Exact], block: tuple[Fraction, Fraction], place: tuple[int, int]
) -> InRow:
    """The block or the plain square of one place."""
    here = choose(*place)
    if isinstance(here, BlockHere):
        return top.put_block(here, *at, *place)
    return top.put_box("plain square", here.fabric, at, block)


def _sash_row(top: Top, across: int, block: Fraction, sashing: Sashing, width: Fraction, y: Fraction) -> None:
    """Sashes and posts in turn; without posts one strip."""
    sash = sashing.width
    if sashing.posts is None:
        members = [top.put_box("sash strip", sashing.fabric, (Fraction(0), y), (width, sash))]
        top.end_row("sash row", members, width, sash)
        return
    members = []
    x = Fraction(0)
    for column in range(across):
        if column or sashing.outer:
            members.append(top.put_box("post", sashing.posts, (x, y), (sash, sash)))
            x += sash
        members.append(top.put_box("sash", sashing.fabric, (x, y), (block, sash)))
        x += block
    if sashing.outer:
        members.append(top.put_box("post", sashing.posts, (x, y), (sash, sash)))
    top.end_row("sash row", members, width, sash)
