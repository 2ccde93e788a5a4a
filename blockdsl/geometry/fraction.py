"""The fraction that all exact numbers are made of.

`quicktions` is the standard library's `Fraction`, compiled: the same to its users, ten to twenty times as fast in
arithmetic and in hashing. Where no compiled package is to be had, the standard library's own serves as well.

Never give it a text: version 1.24 writes the only letter of a text of one letter into the byte that Python shares
between all values of that byte (`bytes(1)` then reads as that figure). `read_fraction` is for texts.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from fractions import Fraction
else:
    try:
        from quicktions import Fraction
    except ImportError:
        from fractions import Fraction

__all__ = ["Fraction", "read_fraction"]


def read_fraction(text: str) -> Fraction:
    """The number that `3`, `1/2` or `2.5` stands for.

    Errors: ValueError for anything else, ZeroDivisionError for a fraction over zero.
    """
    return Fraction(int(text)) if text.isdecimal() else Fraction(text)
