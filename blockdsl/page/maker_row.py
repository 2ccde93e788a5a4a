"""What a maker prints at the foot of every page: her lines and her link, in one row above the page's number."""

from __future__ import annotations

from typing import Final

from msgspec.structs import replace

from blockdsl.marks.display_list import Link, Mark, unread
from blockdsl.marks.prose import TextStyle, line, width_of
from blockdsl.marks.theme import QUIET, SMALL_PT, Box
from blockdsl.model.maker import Maker

_ROW: Final = TextStyle(SMALL_PT, "regular", QUIET)
_BETWEEN: Final = " · "


def maker_row(maker: Maker, box: Box, baseline_pt: float) -> tuple[Mark, ...]:
    """The row from the left edge of the box; nothing for a maker who prints nothing there.

    Its letters are made smaller where they are so wide that they would not fit.
    """
    said = _BETWEEN.join(maker.lines)
    shown = maker.link_shown
    whole = _BETWEEN.join(part for part in (said, shown) if part)
    if not whole:
        return ()
    style = replace(_ROW, size_pt=min(_ROW.size_pt, _ROW.size_pt * box.width_pt / width_of(whole, _ROW)))
    marks = unread(line(whole.removesuffix(shown), box.x_pt, baseline_pt, style))
    if not shown:
        return marks
    start, wide = box.x_pt + width_of(whole.removesuffix(shown), style), width_of(shown, style)
    words = line(shown, start, baseline_pt, style)
    return (*marks, Link(maker.link, start, baseline_pt - style.size_pt, wide, style.line_pt, words))
