"""The fonts of a web site, as files beside its style sheet.

The shipped subsets hold the letters of most European languages, and the figures of fractions and tables. Letters of
other scripts come in a second file, cut for the one site, that browsers load for those letters alone.
"""

from __future__ import annotations

from collections.abc import Set as AbstractSet
from functools import cache
from importlib.resources import files
from typing import Final

from msgspec import Struct

from blockdsl.export.embedded import others_subset
from blockdsl.fonts import FAMILY, FontWeight

_WEIGHTS: Final[dict[FontWeight, int]] = {"regular": 400, "bold": 600}


class WebFonts(Struct, frozen=True):
    """The rules that name the font files, and the files."""

    rules: str
    files: dict[str, bytes]


def web_fonts(letters: AbstractSet[str]) -> WebFonts:
    """The files and rules for a site whose pages are made of those letters."""
    rules: list[str] = []
    written: dict[str, bytes] = {}
    for weight, css_weight in _WEIGHTS.items():
        name = f"{weight}.woff2"
        written[name] = shipped_bytes(weight)
        rules.append(_rule(css_weight, name, "woff2"))
        others = others_subset(weight, letters)
        if others is not None:
            font, codes = others
            name = f"{weight}-others.ttf"
            written[name] = font
            rules.append(_rule(css_weight, name, "truetype", f"unicode-range:{codes};"))
    return WebFonts("\n".join(rules), written)


def _rule(css_weight: int, name: str, kind: str, more: str = "") -> str:
    source = f'url("{name}") format("{kind}")'
    return f"@font-face{{font-family:{FAMILY};font-weight:{css_weight};font-display:swap;{more}src:{source}}}"


@cache
def shipped_bytes(weight: FontWeight) -> bytes:
    """The WOFF2 file of one weight that `tests/fonts/make_core.py` made; read once."""
    return files(__package__).joinpath(f"{weight}.woff2").read_bytes()
