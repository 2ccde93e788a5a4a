"""Lengths as a quilter reads them: fractions for inches, decimals for centimetres.

A length that no fraction states (a diagonal, say) or that no ruler shows is rounded to the nearest sixteenth
of an inch or millimetre and says "about". Nothing is cut from such a length: cut sizes are always on the ruler.
"""

from __future__ import annotations

from fractions import Fraction
from typing import Final

from blockdsl.drawing.typeset import fraction_text
from blockdsl.facts.blockfacts import Extent, RulerUnit
from blockdsl.geometry import Exact, to_float

# Beyond this a fraction says nothing to a reader: 1 37/113 in is better told as "about 1 5/16".
_LARGEST_DENOMINATOR: Final = 64
_NEAREST: Final[dict[str, Fraction]] = {"in": Fraction(1, 16), "cm": Fraction(1, 10)}


def plain_length(x: Exact, unit: RulerUnit) -> str:
    """The length with ordinary fractions and without its unit: `2 7/8`, `7.5`, `about 4 1/4`."""
    if isinstance(x, (int, Fraction)):
        stated = _stated(Fraction(x), unit)
        if stated is not None:
            return stated
    step = _NEAREST[unit]
    nearest = Fraction(round(to_float(x) / float(step))) * step
    return f"about {_stated(nearest, unit) or ''}"


def _stated(x: Fraction, unit: RulerUnit) -> str | None:
    """The exact words for a rational length, or None when it has none that can be read."""
    return _as_fraction(x) if unit == "in" else _as_decimal(x)


def _as_fraction(x: Fraction) -> str | None:
    if x.denominator > _LARGEST_DENOMINATOR:
        return None
    sign = "-" if x < 0 else ""
    whole, rest = divmod(abs(x.numerator), x.denominator)
    if not rest:
        return f"{sign}{whole}"
    fraction = f"{rest}/{x.denominator}"
    return f"{sign}{whole} {fraction}" if whole else f"{sign}{fraction}"


def _as_decimal(x: Fraction) -> str | None:
    hundredths = x * 100
    if hundredths.denominator != 1:
        return None
    sign = "-" if x < 0 else ""
    whole, rest = divmod(abs(hundredths.numerator), 100)
    return f"{sign}{whole}.{rest:02d}".rstrip("0").rstrip(".") if rest else f"{sign}{whole}"


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
