"""Lengths and sizes in the words of steps, in plain figures: pages set the fractions."""

from __future__ import annotations

from typing import Final

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.number import ceil_to, floor_to
from blockdsl.model.fabric import RulerUnit
from blockdsl.model.lengths import write_length
from blockdsl.wording.grammar import in_figures
from blockdsl.wording.messages import Messages

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
    nearest = Fraction(round(length / float(_NEAREST[unit]))) * _NEAREST[unit]
    return words("length-about" if about else "length", length=exact_figure(nearest, unit, words), unit=unit)
