"""Exact coordinates as whole numbers that can be added, subtracted and tested for equality."""

from __future__ import annotations

import math
from collections.abc import Iterable

from msgspec import Struct, field

from blockdsl.geometry import Exact, Polygon, Surd
from blockdsl.geometry.fraction import Fraction

_ROOM = 64


class WholeNumbers(Struct, frozen=True):
    """Whole numbers for the coordinates of one block.

    `scale`: where all coordinates are fractions, what they are multiplied by; then order is kept too. With roots it
    is 0: each coordinate c₁√n₁ + c₂√n₂ + … becomes d₁ + d₂B + …, with d the coefficients over their common
    denominator and B so large that sums of a few dozen coordinates are equal only when their coefficients are.
    """

    scale: int
    denominator: int = 1
    weights: dict[int, int] = field(default_factory=dict)

    def of(self, number: Exact) -> int:
        """The whole number of one of the coordinates."""
        if isinstance(number, Surd):
            times = self.denominator // number.below
            return sum(self.weights[n] * whole * times for n, whole in zip(number.roots, number.wholes, strict=True))
        return number.numerator * ((self.scale or self.denominator) // number.denominator)


def whole_numbers(outlines: Iterable[Polygon]) -> WholeNumbers:
    """Whole numbers for all coordinates of these outlines."""
    numbers = {number for outline in outlines for corner in outline for number in corner}
    if not any(isinstance(number, Surd) for number in numbers):
        return WholeNumbers(math.lcm(*(number.denominator for number in numbers if isinstance(number, Fraction))))
    terms = [term for number in numbers for term in (number.terms if isinstance(number, Surd) else ((1, number),))]
    denominator = math.lcm(*(c.denominator for _, c in terms))
    base = 1 + _ROOM * max(abs(int(c * denominator)) for _, c in terms)
    roots = sorted({n for n, _ in terms} | {1})
    return WholeNumbers(0, denominator, {n: base**place for place, n in enumerate(roots)})
