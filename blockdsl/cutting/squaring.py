"""How long a strip set must be: its segments, and what squaring up its ends takes.

Strips that are sewn side by side never end quite even, and seams bow a little with every cut. So one end is squared
up before the first segment is cut, and again after every third, where the cuts would begin to lean; not after the
last. The first squaring, with what is uneven at the other end, takes 1 in, every further one 1/2 in (2.5 and 1.5 cm):
common practice, no source. This is the one place where a set's length is worked out.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.fabric import RulerUnit

SQUARED_FIRST: Final[dict[RulerUnit, Fraction]] = {"in": Fraction(1), "cm": Fraction(5, 2)}
SQUARED_AGAIN: Final[dict[RulerUnit, Fraction]] = {"in": Fraction(1, 2), "cm": Fraction(3, 2)}
SEGMENTS_BETWEEN: Final = 3
"""So many segments are cut before the end is squared up again."""


def times_squared_again(segments: int) -> int:
    """How often a set is squared up again while so many segments are cut from it.

    Exact:  (segments - 1) // 3: after the third, the sixth and so on, but not after the last.
    Errors: ValueError for no segments.
    """
    if segments < 1:
        raise ValueError("a strip set gives a segment or more")
    return (segments - 1) // SEGMENTS_BETWEEN


def squaring(segments: int, unit: RulerUnit) -> Fraction:
    """What squaring up takes of a set from which so many segments are cut, square to the cuts.

    Exact:  1 in and 1/2 in for each time that it is squared up again; 2.5 and 1.5 cm.
    """
    return SQUARED_FIRST[unit] + times_squared_again(segments) * SQUARED_AGAIN[unit]


def most_segments(length: Fraction, needed: int, length_of: Callable[[int], Exact]) -> int:
    """The most segments, at most those needed, whose set is no longer than `length`; 0 when one is too long.

    Takes:  `length_of`, the length of a set of so many segments, squaring included; it grows with their number.
    """
    low, high = 0, needed
    while low < high:
        middle = (low + high + 1) // 2
        if length_of(middle) <= length:
            low = middle
        else:
            high = middle - 1
    return low


def sets_of(length: Fraction, needed: int, length_of: Callable[[int], Exact]) -> tuple[tuple[int, int], ...]:
    """(sets, segments of each) for so many segments: as many full sets as go, then one for the rest.

    A segment that is too long for the cloth takes a set of its own; the cutting list says that it does not fit.
    """
    each = max(1, most_segments(length, needed, length_of))
    full, rest = divmod(needed, each)
    return tuple((sets, segments) for sets, segments in ((full, each), (1 if rest else 0, rest)) if sets)
