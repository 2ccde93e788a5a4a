"""The font that an SVG drawing carries with it, as style rules.

The shipped subset covers what most sheets say. Other letters (Greek, Cyrillic, Hebrew, …) get a second face, cut for
the one drawing, that browsers use for those letters alone.
"""

from __future__ import annotations

from base64 import b64encode
from collections.abc import Mapping
from collections.abc import Set as AbstractSet
from functools import cache, lru_cache
from typing import Any, Final

import uharfbuzz

from blockdsl.fonts import FAMILY, FontWeight, core_bytes, font_bytes, in_core

__all__ = ["FAMILY", "font_faces"]

_CSS_WEIGHTS: Final[dict[FontWeight, int]] = {"regular": 400, "bold": 600}


def font_faces(letters: Mapping[FontWeight, AbstractSet[str]]) -> str:
    """The `@font-face` rules for the letters of each weight; nothing for no letters."""
    rules = []
    for weight in _CSS_WEIGHTS:
        used = letters.get(weight, frozenset())
        if used:
            rules.append(_core_rule(weight))
        others = frozenset(letter for letter in used if not in_core(letter)) & _drawn_letters(weight) if used else None
        if others:
            rules.append(_own_rule(weight, others))
    return "".join(rules)


@cache
def _core_rule(weight: FontWeight) -> str:
    return _rule(weight, core_bytes(weight), "woff2", "")


@lru_cache(maxsize=64)
def _own_rule(weight: FontWeight, letters: frozenset[str]) -> str:
    font, codes = _subset(weight, letters)
    return _rule(weight, font, "truetype", f";unicode-range:{codes}")


def others_subset(weight: FontWeight, letters: AbstractSet[str]) -> tuple[bytes, str] | None:
    """TrueType of those letters that the shipped subset has not, with their `unicode-range`; None without any."""
    others = frozenset(letter for letter in letters if not in_core(letter)) & _drawn_letters(weight)
    return _subset(weight, others) if others else None


def _subset(weight: FontWeight, letters: frozenset[str]) -> tuple[bytes, str]:
    wanted = uharfbuzz.SubsetInput()
    wanted.unicode_set.update(map(ord, letters))
    wanted.flags = uharfbuzz.SubsetFlags.NO_HINTING | uharfbuzz.SubsetFlags.NOTDEF_OUTLINE
    subset = uharfbuzz.subset(_face(weight), wanted)
    return bytes(subset.blob.data), ",".join(f"U+{ord(letter):X}" for letter in sorted(letters))


def _rule(weight: FontWeight, font: bytes, kind: str, more: str) -> str:
    media = "font/woff2" if kind == "woff2" else "font/ttf"
    source = f'url("data:{media};base64,{b64encode(font).decode()}") format("{kind}")'
    return f"@font-face{{font-family:{FAMILY};font-weight:{_CSS_WEIGHTS[weight]};src:{source}{more}}}"


@cache
def _face(weight: FontWeight) -> Any:
    return uharfbuzz.Face(font_bytes(weight))


@cache
def _drawn_letters(weight: FontWeight) -> frozenset[str]:
    """All letters that the font can draw."""
    return frozenset(map(chr, _face(weight).unicodes))
