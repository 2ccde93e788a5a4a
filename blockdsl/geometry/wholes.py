"""All corners of a block as pairs of whole numbers, so that sides and areas cost no more with roots than without.

Where every coordinate is a fraction, the whole numbers are the coordinates over their common denominator. With roots
each coordinate c₁√n₁ + c₂√n₂ + … becomes d₁W₁ + d₂W₂ + …, with d the whole coefficients over a common denominator
and W = B^e a weight for each root. The exponents e are such that no two pairs of them have the same sum, and B is
more than twice what any sum made here can come to: then a sum of products is read back digit by digit, as a number is
from its decimals, each digit belonging to one product of two roots.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field
from fractions import Fraction

from blockdsl.geometry.number import Exact, Surd, sign
from blockdsl.geometry.polygon import Point, Polygon
from blockdsl.geometry.surd import surd


@dataclass(frozen=True, slots=True)
class WholeCorners:
    """`rings` are the polygons; whole numbers count in units of 1/scale.

    `digits`: with roots, for each place of a sum of products which root it stands for and how often; none without.
    """

    rings: list[list[tuple[int, int]]]
    scale: int
    bits: int = 0
    digits: tuple[tuple[int, int], ...] = ()
    exact: dict[int, Exact] = field(default_factory=dict)

    @property
    def has_roots(self) -> bool:
        """Whether some coordinate is no fraction; then whole numbers do not keep the order of places."""
        return bool(self.digits)

    def point(self, corner: tuple[int, int]) -> Point:
        """The corner itself."""
        if self.digits:
            return Point(self.exact[corner[0]], self.exact[corner[1]])
        return Point(Fraction(corner[0], self.scale), Fraction(corner[1], self.scale))

    def area_sign(self, twice: int) -> int:
        """Which way round a ring runs, from twice its area in whole numbers."""
        return sign(self.area(twice)) if self.digits else twice

    def area(self, twice: int) -> Exact:
        """The area from twice the area in whole numbers."""
        below = 2 * self.scale * self.scale
        if not self.digits:
            return Fraction(twice, below)
        sums: dict[int, int] = {}
        half, rest = 1 << (self.bits - 1), twice
        for root, times in self.digits:
            digit = ((rest + half) & ((half << 1) - 1)) - half
            rest = (rest - digit) >> self.bits
            if digit:
                sums[root] = sums.get(root, 0) + digit * times
        return surd(sums.items(), below)


def whole_corners(polygons: Sequence[Polygon]) -> WholeCorners:
    """Whole numbers for all corners of these polygons, and what leads back."""
    plain = _plain_corners(polygons)
    if plain is not None:
        return plain
    numbers = {number for polygon in polygons for corner in polygon for number in corner}
    roots = sorted({root for number in numbers if isinstance(number, Surd) for root in number.roots} | {1})
    scale = math.lcm(*{number.below if isinstance(number, Surd) else number.denominator for number in numbers})
    parts = {number: _parts(number, scale) for number in numbers}
    largest = max(abs(whole) for each in parts.values() for _, whole in each)
    corners = sum(len(polygon) for polygon in polygons)
    # A digit of all areas together: each corner adds two products, each of at most so many pairs of parts.
    bits = (4 * corners * len(roots) * len(roots) * largest * largest).bit_length() + 1
    exponents = _exponents(len(roots))
    weight = {root: exponent * bits for root, exponent in zip(roots, exponents, strict=True)}
    whole = {number: sum(each << weight[root] for root, each in parts[number]) for number in numbers}
    rings = [[(whole[x], whole[y]) for x, y in polygon] for polygon in polygons]
    return WholeCorners(rings, scale, bits, _digits(roots, exponents), {place: x for x, place in whole.items()})


def _plain_corners(polygons: Sequence[Polygon]) -> WholeCorners | None:
    """Whole numbers after the common denominator, where no root is among the coordinates."""
    belows = set()
    for polygon in polygons:
        for x, y in polygon:
            if isinstance(x, Surd) or isinstance(y, Surd):
                return None
            belows.add(x.denominator)
            belows.add(y.denominator)
    scale = math.lcm(*belows)
    factor = {below: scale // below for below in belows}
    rings = [
        [
            (x.numerator * factor[x.denominator], y.numerator * factor[y.denominator])
            for x, y in polygon
            if not isinstance(x, Surd) and not isinstance(y, Surd)
        ]
        for polygon in polygons
    ]
    return WholeCorners(rings, scale)


def _parts(number: Exact, scale: int) -> list[tuple[int, int]]:
    if isinstance(number, Surd):
        times = scale // number.below
        return [(root, whole * times) for root, whole in zip(number.roots, number.wholes, strict=True)]
    return [(1, number.numerator * (scale // number.denominator))]


def _exponents(count: int) -> list[int]:
    """The least rising numbers from 0 of which no two pairs have the same sum."""
    found: list[int] = []
    sums: set[int] = set()
    number = 0
    while len(found) < count:
        fresh = {number + each for each in (*found, number)}
        if not fresh & sums:
            found.append(number)
            sums |= fresh
        number += 1
    return found


def _digits(roots: Sequence[int], exponents: Sequence[int]) -> tuple[tuple[int, int], ...]:
    """For each power of the base the product of roots that it stands for: √m·√n = g√(mn/g²)."""
    digits = [(1, 0)] * (2 * exponents[-1] + 1)
    for m, one in zip(roots, exponents, strict=True):
        for n, two in zip(roots, exponents, strict=True):
            common = math.gcd(m, n)
            digits[one + two] = ((m // common) * (n // common), common)
    return tuple(digits)
