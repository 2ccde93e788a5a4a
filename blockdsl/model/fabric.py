"""A fabric's role and how light it looks."""

from __future__ import annotations

from functools import lru_cache
from typing import Literal

from msgspec import Struct

from blockdsl.geometry.fraction import Fraction

Value = Literal["light", "medium", "dark"]
RulerUnit = Literal["in", "cm"]
PressingChoice = Literal["open", "as it nests", "toward dark"]
"""How seams are pressed: open, to the side that nests best, or toward the darker fabric."""


class Fabric(Struct, frozen=True):
    """What a fabric does in the block. `colour` is `#rrggbb`; `width` is the whole width, selvages and all, if said."""

    name: str
    label: str
    colour: str
    value: Value
    directional: bool
    width: tuple[Fraction, RulerUnit] | None = None


@lru_cache(maxsize=4096)
def luminance(colour: str) -> float:
    """Relative luminance of `#rrggbb`, 0 (black) to 1 (white).

    Source: the relative luminance of sRGB in the Web Content Accessibility Guidelines 2.1 (W3C).
    """

    def linear(channel: int) -> float:
        share = channel / 255
        return share / 12.92 if share <= 0.04045 else ((share + 0.055) / 1.055) ** 2.4

    red, green, blue = (linear(int(colour[place : place + 2], 16)) for place in (1, 3, 5))
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    """Contrast ratio of two colours, 1 (alike) to 21 (black on white). Source: as `luminance`."""
    lighter, darker = sorted((luminance(one), luminance(other)), reverse=True)
    return (lighter + 0.05) / (darker + 0.05)


def value_of(colour: str) -> Value:
    """Light, medium or dark, when the designer does not say.

    The bounds cut the scale of perceived lightness (about the cube root of luminance) near
    two thirds and two fifths: our own choice.
    """
    light_from, dark_to = 0.40, 0.12
    shine = luminance(colour)
    if shine >= light_from:
        return "light"
    return "dark" if shine <= dark_to else "medium"
