"""Numbers and places on squared paper, as written."""

from __future__ import annotations

import re
from typing import Final

from blockdsl.geometry import Exact, square_root
from blockdsl.geometry.fraction import Fraction, read_fraction

MOST_DIGITS: Final = 30
"""No cloth needs more; and reading a very long number takes very long."""

_TERM: Final = re.compile(r"(?P<sign>[-+]?)(?P<number>[0-9]+(?:[./][0-9]+)?)?(?:r(?P<root>[0-9]))?")


class NumberFault(Exception):
    """The number cannot stand; `code` is the problem. Never leaves this layer."""

    def __init__(self, code: str) -> None:
        super().__init__(code)
        self.code = code


def _rational(text: str) -> Fraction:
    if any(len(digits) > MOST_DIGITS for digits in re.split(r"[./\s]", text)):
        raise NumberFault("number-too-long")
    try:
        return read_fraction(text)
    except ZeroDivisionError:
        raise NumberFault("number-over-zero") from None


def read_numbers(text: str) -> tuple[Fraction, ...]:
    """The value of `3`, `1/2`, `2.5` or `1 1/2`.

    A whole number takes the fraction after it when that is a proper one; `1 3/2` gives two numbers.
    Errors: NumberFault.
    """
    parts = [_rational(part) for part in text.split()]
    if len(parts) == 2 and 0 < parts[1] < 1:
        return (parts[0] + parts[1],)
    return tuple(parts)


def read_place(text: str) -> tuple[Exact, Exact]:
    """The two coordinates of `2-r2,1/2`.

    Shape:  X,Y; each a sum of rational numbers and of rational multiples of √2, √3 and √6.
    Units:  grid units, y downward.
    Errors: NumberFault.
    """
    across, down = text.split(",")
    return _sum(across), _sum(down)


def _sum(text: str) -> Exact:
    total: Exact = Fraction(0)
    for term in _TERM.finditer(text):
        if not term.group():
            continue
        value: Exact = _rational(term["number"]) if term["number"] else Fraction(1)
        if term["root"]:
            value = value * square_root(Fraction(int(term["root"])))
        total = total - value if term["sign"] == "-" else total + value
    return total
