"""Lengths as a quilter reads them: fractions for inches, decimals for centimetres.

A length that no ruler shows is rounded as in the words of the steps and says "about", so that one measure is one number
wherever it is printed. Nothing is cut from such a length: cut sizes are always on the ruler.
"""

from __future__ import annotations

from typing import Final

from blockdsl.facts.blockfacts import Extent, RulerUnit
from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.marks.typeset import fraction_text
from blockdsl.model.lengths import write_length
from blockdsl.wording.measures import figure, is_on_ruler

_LARGEST_DENOMINATOR: Final = 64


def plain_length(x: Exact, unit: RulerUnit) -> str:
    """The length with ordinary fractions and without its unit: `2 7/8`, `7.5`, `about 4 1/4`."""
    return figure(x, unit) if is_on_ruler(x, unit) else f"about {figure(x, unit)}"


def drafted_length(x: Exact, unit: RulerUnit) -> str:
    """The length with set fractions and without its unit, exactly where it can be read: `2 ²⁄₅`.

    For what is drafted or compared with a ruler, not cut and sewn: the lines of a grid, the bars of a scale check.
    """
    if unit == "in" and isinstance(x, Fraction) and x.denominator <= _LARGEST_DENOMINATOR:
        return fraction_text(write_length(x, unit))
    return show_length(x, unit)


def show_length(x: Exact, unit: RulerUnit) -> str:
    """The length with set fractions and without its unit: `2 ⁷⁄₈`, `7.5`, `about 4 ¹⁄₄`."""
    return fraction_text(plain_length(x, unit))


def show_measure(x: Exact, unit: RulerUnit) -> str:
    """The length with set fractions and its unit: `2 ⁷⁄₈ in`."""
    return f"{show_length(x, unit)} {unit}"


def plain_extent(extent: Extent, unit: RulerUnit) -> str:
    """Both sides with ordinary fractions and without the unit: `2 7/8 × 5`, `about 4 1/4 × 3`."""
    return " × ".join(plain_length(side, unit) for side in extent).replace("× about", "×")


def show_extent(extent: Extent, unit: RulerUnit) -> str:
    """Both sides and the unit with set fractions: `2 ⁷⁄₈ × 5 in`; a square too says both sides."""
    return f"{fraction_text(plain_extent(extent, unit))} {unit}"
