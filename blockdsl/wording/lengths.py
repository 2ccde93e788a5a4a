"""Lengths on pages: fractions for inches, decimals for centimetres, with the mark that the language has.

A length that no ruler shows is rounded as in the words of the steps and says "about", so that one measure is one number
wherever it is printed. Nothing is cut from such a length: cut sizes are always on the ruler.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.facts.blockfacts import Extent, RulerUnit
from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.wording.measures import exact_figure, figure, is_on_ruler
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
