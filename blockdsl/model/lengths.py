"""Lengths in words: inches as mixed fractions, centimetres as decimals."""

from __future__ import annotations

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.number import ceil_to, floor_to, write_exact
from blockdsl.model.fabric import RulerUnit

SHORT_DECIMAL = 10**6


def write_length(length: Exact, unit: RulerUnit) -> str:
    """`2 7/8` in inches, `7.3` in centimetres; what has no short decimal stays a fraction, roots stay roots (`3r2`)."""
    if unit == "cm" and isinstance(length, Fraction) and SHORT_DECIMAL % length.denominator == 0:
        return f"{float(length):f}".rstrip("0").rstrip(".")
    return write_exact(length)


def write_size(width: Exact, height: Exact, unit: RulerUnit) -> str:
    """`12 in`, or `12 x 9 in` when the two differ."""
    if width == height:
        return f"{write_length(width, unit)} {unit}"
    return f"{write_length(width, unit)} x {write_length(height, unit)} {unit}"


def about(length: Exact, unit: RulerUnit, measure: Fraction) -> str:
    """The length as `write_length` says it; one with roots, which no ruler shows, as `about 33 7/8`."""
    if isinstance(length, Fraction):
        return write_length(length, unit)
    below, above = floor_to(length, measure), ceil_to(length, measure)
    nearest = below if length - below < above - length else above
    return f"about {write_length(nearest, unit)}"
