"""An address as a QR code (ISO/IEC 18004), each run of dark modules a rectangle."""

from __future__ import annotations

from itertools import groupby
from typing import Final

import segno

from blockdsl.marks.display_list import Contour, Figure, Path

_QUIET_MODULES: Final = 4
"""The standard's white edge."""
_MODULE_PT: Final = 1.25
"""0.44 mm, which cameras of telephones read from a printed page at arm's length: common practice, no source."""
_LEAST_PT: Final = 45.0
_BLACK: Final = "#000000"


def qr_code(address: str, alternative: str) -> tuple[float, Figure]:
    """The side of the code's white square in points, and its marks from (0, 0).

    An address of 500 ASCII letters, the longest there is, takes a code of 85 modules at the level of repair M (15 %).
    """
    rows = list(segno.make_qr(address, error="m", boost_error=False).matrix)
    modules = len(rows) + 2 * _QUIET_MODULES
    side = max(_LEAST_PT, modules * _MODULE_PT)
    pitch = side / modules
    rings: list[Contour] = []
    for number, row in enumerate(rows, _QUIET_MODULES):
        column = _QUIET_MODULES
        for dark, run in groupby(row):
            wide = len(list(run))
            if dark:
                left, right, top = column * pitch, (column + wide) * pitch, number * pitch
                rings.append(((left, top), (right, top), (right, top + pitch), (left, top + pitch)))
            column += wide
    return side, Figure(alternative, (Path(tuple(rings), fill=_BLACK),))
