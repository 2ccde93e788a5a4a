"""A font of the maker's own, for letters that ours lacks."""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import lru_cache
from hashlib import sha256
from typing import Any

MOST_BYTES = 32 << 20


class NotAFont(ValueError):
    """The file is no font that letters can be taken from."""


@dataclass(frozen=True, slots=True)
class FurtherFont:
    """The bytes of a font file; two are the same when their digests are."""

    digest: str
    data: bytes = field(repr=False, compare=False)


def further_font(data: bytes) -> FurtherFont:
    """The font in these bytes, TrueType or OpenType.

    Errors: NotAFont where no letter with an outline is in it.
    """
    font = FurtherFont(sha256(data).hexdigest(), data)
    try:
        letters = letters_of(font)
    except Exception:  # noqa: BLE001 - whatever a damaged file does to the library that reads it
        letters = frozenset()
    if not letters:
        raise NotAFont("no letters")
    return font


@lru_cache(maxsize=4)
def letters_of(font: FurtherFont) -> frozenset[int]:
    """Every letter that the font has, by its code point."""
    import uharfbuzz  # noqa: PLC0415 - for texts in other scripts alone

    return frozenset(uharfbuzz.Face(font.data).unicodes)


@lru_cache(maxsize=4)
def shaper_of(font: FurtherFont) -> Any:
    """HarfBuzz's font, scaled to 1000 units to the em."""
    import uharfbuzz  # noqa: PLC0415

    shaper = uharfbuzz.Font(uharfbuzz.Face(font.data))
    shaper.scale = (1000, 1000)
    return shaper
