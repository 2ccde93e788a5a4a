"""Numbers of the facts: `2 7/8`, `7.3`, `81/2+1/2r2`."""

from __future__ import annotations

import re
from fractions import Fraction

TERM = re.compile(r"([+-]?)\s*(?:(\d+) (?=\d+/))?(\d+(?:\.\d+)?(?:/\d+)?)?(?:r(\d+))?")
CM = 2.54
SHOP = {"yd": {"in": 36.0, "cm": 36 * CM}, "m": {"in": 100 / CM, "cm": 100.0}, "cm": {"in": 1 / CM, "cm": 1.0}}
"""What is bought, in inches and in centimetres."""


def exact(text: str) -> Fraction:
    """A number without roots. Errors: ValueError for one with a root."""
    total = Fraction(0)
    for sign, whole, part, root in _terms(text):
        if root:
            raise ValueError(f"{text} has a root")
        total += (-1 if sign == "-" else 1) * (Fraction(whole or 0) + Fraction(part or 0))
    return total


def near(text: str) -> float:
    """Any number as a float."""
    total = 0.0
    for sign, whole, part, root in _terms(text):
        value = float(Fraction(whole or 0) + Fraction(part or (1 if root else 0)))
        total += (-1 if sign == "-" else 1) * value * (float(root) ** 0.5 if root else 1)
    return total


def _terms(text: str) -> list[tuple[str, str, str, str]]:
    found, place = [], 0
    while place < len(text):
        term = TERM.match(text, place)
        if term is None or term.end() == place:
            raise ValueError(f"no number: {text}")
        found.append((term[1], term[2] or "", term[3] or "", term[4] or ""))
        place = term.end()
    return found


def bought(words: str, unit: str) -> float:
    """`1 3/8 yd`, `1.2 m`, `40 cm` as a length in the quilt's unit."""
    number, measure = words.rsplit(" ", 1)
    return near(number) * SHOP[measure][unit]
