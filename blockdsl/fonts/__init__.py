"""The one font family that every sheet is measured with and printed in.

Takes:    nothing.
Gives:    the bytes of FiraGO Regular and SemiBold, and a small subset of each for drawings that embed their font.
Measures: nothing; the files hold 1000 units to the em.
Reports:  nothing; a missing file raises FileNotFoundError, for then the package itself is broken.
Does not know: text, pages, painters.
"""

from __future__ import annotations

from functools import cache
from pathlib import Path
from typing import Final, Literal

FAMILY: Final = "FiraGO"
FontWeight = Literal["regular", "bold"]

_FACES: Final[dict[FontWeight, str]] = {"regular": "FiraGO-Regular.ttf", "bold": "FiraGO-SemiBold.ttf"}
_CORES: Final[dict[FontWeight, str]] = {"regular": "core-regular.woff2", "bold": "core-bold.woff2"}

CORE_RANGES: Final[tuple[tuple[int, int], ...]] = (
    (0x0020, 0x007E),  # the letters, figures and signs of plain English
    (0x00A0, 0x017F),  # Latin-1 and Latin Extended-A, with × ° ½ and the superscripts 1 2 3
    (0x2010, 0x2022),  # dashes, quotation marks, bullet
    (0x2026, 0x2026),  # …
    (0x2044, 0x2044),  # fraction slash
    (0x2070, 0x2079),  # superscript figures
    (0x2080, 0x2089),  # subscript figures
    (0x2190, 0x2193),  # arrows
    (0x2212, 0x2212),  # minus
    (0x221A, 0x221A),  # root
    (0x2248, 0x2248),  # about
    (0x2264, 0x2265),  # at most, at least
)


@cache
def font_bytes(weight: FontWeight) -> bytes:
    """The whole TrueType file of one weight; read once."""
    return Path(__file__).with_name(_FACES[weight]).read_bytes()


@cache
def core_bytes(weight: FontWeight) -> bytes:
    """The shipped WOFF2 subset of one weight: the letters of CORE_RANGES with their kerning; read once."""
    return Path(__file__).with_name(_CORES[weight]).read_bytes()


def in_core(letter: str) -> bool:
    """Whether the shipped subset is meant to hold this letter."""
    code = ord(letter)
    return any(first <= code <= last for first, last in CORE_RANGES)


@cache
def _letters() -> frozenset[int]:
    """Every letter that both weights have, by its code point."""
    import uharfbuzz  # noqa: PLC0415 - asked for texts in other scripts alone

    regular, bold = (uharfbuzz.Face(font_bytes(weight)).unicodes for weight in _FACES)
    return frozenset(regular) & frozenset(bold)


def has_letter(letter: str) -> bool:
    """Whether the font can print this letter."""
    return in_core(letter) or ord(letter) in _letters()
