"""Lengths on pages: fractions for inches, decimals for centimetres, with the mark that the language has.

A length that no ruler shows is rounded as in the words of the steps and says "about", so that one measure is one number
wherever it is printed. Nothing is cut from such a length: cut sizes are always on the ruler.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.facts.blockfacts import Extent
from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.geometry.number import ceil_to, floor_to
from blockdsl.model.fabric import RulerUnit
from blockdsl.model.lengths import write_length
from blockdsl.wording.grammar import in_figures
from blockdsl.wording.messages import Messages

_LARGEST_DENOMINATOR: Final = 64


def plain_length(x: Exact, unit: RulerUnit, words: Messages) -> str:
    """The length with ordinary fractions and without its unit: `2 7/8`, `7.5`, `about 4 1/4`."""
    text = figure(x, unit, words)
    return text if is_on_ruler(x, unit) else words("figure-about", figure=text)


def plain_measure(x: Exact, unit: RulerUnit, words: Messages) -> str:
    """The length with ordinary fractions and its unit: `2 7/8 in`."""
    return words("length", length=plain_length(x, unit, words), unit=unit)


def plain_extent(extent: Sequence[Exact], unit: RulerUnit, words: Messages) -> str:
    """Both sides with ordinary fractions and without the unit: `2 7/8 × 5`, `about 4 1/4 × 3`."""
    text = " × ".join(figure(side, unit, words) for side in extent)
    return text if all(is_on_ruler(side, unit) for side in extent) else words("figure-about", figure=text)


def plain_size(extent: Extent, unit: RulerUnit, words: Messages) -> str:
    """Both sides and the unit with ordinary fractions: `2 7/8 × 5 in`."""
    return words("length", length=plain_extent(extent, unit, words), unit=unit)


def drafted_length(x: Exact, unit: RulerUnit, words: Messages) -> str:
    """The length with set fractions and without its unit, exactly where it can be read: `2 ²⁄₅`.

    For what is drafted or compared with a ruler, not cut and sewn: the lines of a grid, the bars of a scale check.
    """
    if unit == "in" and isinstance(x, Fraction) and x.denominator <= _LARGEST_DENOMINATOR:
        return fraction_text(exact_figure(x, unit, words))
    return show_length(x, unit, words)


def show_length(x: Exact, unit: RulerUnit, words: Messages) -> str:
    """The length with set fractions and without its unit: `2 ⁷⁄₈`, `7.5`, `about 4 ¹⁄₄`."""
    return fraction_text(plain_length(x, unit, words))


def show_measure(x: Exact, unit: RulerUnit, words: Messages) -> str:
    """The length with set fractions and its unit: `2 ⁷⁄₈ in`."""
    return fraction_text(plain_measure(x, unit, words))


def show_extent(extent: Extent, unit: RulerUnit, words: Messages) -> str:
    """Both sides and the unit with set fractions: `2 ⁷⁄₈ × 5 in`; a square too says both sides."""
    return fraction_text(plain_size(extent, unit, words))


_SHOWN: Final = {"in": Fraction(1, 16), "cm": Fraction(1, 20)}
"""What a ruler shows."""
_NEAREST: Final = {"in": Fraction(1, 8), "cm": Fraction(1, 10)}
"""What other lengths are rounded to, as *about* so much."""


def is_on_ruler(length: Exact, unit: RulerUnit) -> bool:
    """Whether a ruler shows it."""
    return isinstance(length, (int, Fraction)) and Fraction(length) % _SHOWN[unit] == 0


def figure(length: Exact, unit: RulerUnit, words: Messages) -> str:
    """The length alone, `3 1/2`, `7,5`; rounded to the nearest eighth or millimetre where no ruler shows it."""
    return exact_figure(rounded(length, unit), unit, words)


def exact_figure(length: Exact, unit: RulerUnit, words: Messages) -> str:
    """The length alone, as it is: for what is on the ruler, or is drafted rather than cut."""
    return in_figures(write_length(length, unit), words)


def rounded(length: Exact, unit: RulerUnit) -> Exact:
    """The length where a ruler shows it, else the nearest eighth or millimetre."""
    if is_on_ruler(length, unit):
        return length
    below, above = floor_to(length, _NEAREST[unit]), ceil_to(length, _NEAREST[unit])
    return below if length - below < above - length else above


def length_words(length: Exact, unit: RulerUnit, words: Messages) -> str:
    """`3 1/2 in`, `about 6 1/8 in`."""
    key = "length" if is_on_ruler(length, unit) else "length-about"
    return words(key, length=figure(length, unit, words), unit=unit)


def size_words(extent: tuple[Exact, Exact], unit: RulerUnit, words: Messages) -> str:
    """`6 1/2 × 3 1/2 in`, `about 6 1/8 × 6 1/8 in`."""
    key = "size" if all(is_on_ruler(side, unit) for side in extent) else "size-about"
    return words(key, width=figure(extent[0], unit, words), height=figure(extent[1], unit, words), unit=unit)


def nearest_words(length: float, unit: RulerUnit, words: Messages, *, about: bool) -> str:
    """A length that is given to the nearest eighth or millimetre: how far a point extends, say."""
    key = "length-about" if about else "length"
    return words(key, length=exact_figure(_nearest(length, unit), unit, words), unit=unit)


def is_too_little(length: float, unit: RulerUnit) -> bool:
    """Whether a length to the nearest eighth or millimetre is nothing: a thread that nobody measures."""
    return not _nearest(length, unit)


def _nearest(length: float, unit: RulerUnit) -> Fraction:
    return Fraction(round(length / float(_NEAREST[unit]))) * _NEAREST[unit]
