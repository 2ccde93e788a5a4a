"""Fractions in text set as one sign each."""

from __future__ import annotations

import re
from typing import Final

SUPERSCRIPTS: Final = dict(zip(map(ord, "0123456789"), "⁰¹²³⁴⁵⁶⁷⁸⁹", strict=True))
SUBSCRIPTS: Final = dict(zip(map(ord, "0123456789"), "₀₁₂₃₄₅₆₇₈₉", strict=True))
_FRACTION: Final = re.compile(r"(?<![\w/.,])(\d+)/(\d+)(?![\w/]|[.,]\d)", re.ASCII)


def fraction_text(text: str) -> str:
    """Every plain fraction of the text set as one: `2 7/8` becomes `2 ⁷⁄₈`.

    Superscript figures, U+2044 and subscript figures, so that it looks the same in every painter and stays text.
    A date, a word or a decimal with a slash in it is left alone.
    """
    return _FRACTION.sub(
        lambda found: found[1].translate(SUPERSCRIPTS) + "⁄" + found[2].translate(SUBSCRIPTS),
        text,
    )
