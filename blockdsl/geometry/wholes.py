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

from msgspec import Struct

from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.number import Exact, Surd, sign
from blockdsl.geometry.polygon import Point, Polygon
from blockdsl.geometry.surd import surd

_DOUBT = 2.0**-40


class WholeCorners(Struct, frozen=True):
    """`rings` are the polygons; whole numbers count in units of 1/scale.

    With roots, `places` gives for each digit of a coordinate its root, and `products` for each digit of a sum of
    products its root and how often it counts; digits have so many `bits`. Without roots both are empty.
    """

    rings: list[list[tuple[int, int]]]
    scale: int
    bits: int = 0
    places: tuple[tuple[int, int], ...] = ()
    products: tuple[tuple[int, int], ...] = ()

    @property
    def has_roots(self) -> bool:
        """Whether some coordinate is no fraction; then whole numbers do not keep the order of places."""
        return bool(self.products)

    def point(self, corner: tuple[int, int]) -> Point:
        """The corner itself."""
        x, y = corner
        if self.products:
            return Point(self._exact(x, self.places, self.scale), self._exact(y, self.places, self.scale))
        return Point(Fraction(x, self.scale), Fraction(y, self.scale))

    def area(self, twice: int) -> Exact:
        """The area from twice the area in whole numbers."""
        below = 2 * self.scale * self.scale
        return self._exact(twice, self.products, below) if self.products else Fraction(twice, below)

    def area_sign(self, twice: int) -> int:
        """Which way round a ring runs, from twice its area in whole numbers."""
        if not self.products:
            return twice
        value = size = 0.0
        for root, whole in self._parts(twice, self.products):
            try:
                term = whole * math.sqrt(root)
            except OverflowError:
                return sign(self.area(twice))
            value += term
            size += abs(term)
        # Each term errs by less than four parts in 2⁵³, and each sum by one: far less than this.
        return sign(self.area(twice)) if abs(value) <= size * _DOUBT else 1 if value > 0 else -1

    def _exact(self, whole: int, digits: Sequence[tuple[int, int]], below: int) -> Exact:
        sums: dict[int, int] = {}
        for root, part in self._parts(whole, digits):
            sums[root] = sums.get(root, 0) + part
        return surd(sums.items(), below)

    def _parts(self, whole: int, digits: Sequence[tuple[int, int]]) -> list[tuple[int, int]]:
        """A whole number read back digit by digit, from the last: (root, how often)."""
        half = 1 << (self.bits - 1)
        mask = (half << 1) - 1
        found = []
        for root, times in digits:
            digit = ((whole + half) & mask) - half
            whole = (whole - digit) >> self.bits
            if digit:
                found.append((root, digit * times))
        return found


def whole_corners(polygons: Sequence[Polygon]) -> WholeCorners:
    """Whole numbers for all corners of these polygons, and what leads back."""
    plain = _plain_corners(polygons)
    if plain is not None:
        return plain
    belows, found, largest, corners = {1}, {1}, 1, 0
    for polygon in polygons:
        corners += len(polygon)
        for corner in polygon:
            for number in corner:
                if isinstance(number, Surd):
                    belows.add(number.below)
                    found.update(number.roots)
                    largest = max(largest, *map(abs, number.wholes))
                else:
                    belows.add(number.denominator)
                    largest = max(largest, abs(number.numerator))
    scale = math.lcm(*belows)
    largest *= scale
    roots = sorted(found)
    # A digit of all areas together: each corner adds two products, each of at most so many pairs of parts.
    bits = (4 * corners * len(roots) * len(roots) * largest * largest).bit_length() + 1
    exponents = _exponents(len(roots))
    shift = {root: exponent * bits for root, exponent in zip(roots, exponents, strict=True)}

    def whole(number: Exact) -> int:
        if isinstance(number, Surd):
            times, total = scale // number.below, 0
            for root, each in zip(number.roots, number.wholes, strict=True):
                total += each * times << shift[root]
            return total
        return number.numerator * (scale // number.denominator)

    rings = [[(whole(x), whole(y)) for x, y in polygon] for polygon in polygons]
    return WholeCorners(rings, scale, bits, _places(roots, exponents), _products(roots, exponents))


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


def _places(roots: Sequence[int], exponents: Sequence[int]) -> tuple[tuple[int, int], ...]:
    """For each power of the base the root that it stands for in a coordinate; none has any other digit."""
    digits = [(1, 0)] * (exponents[-1] + 1)
    for root, exponent in zip(roots, exponents, strict=True):
        digits[exponent] = (root, 1)
    return tuple(digits)


def _products(roots: Sequence[int], exponents: Sequence[int]) -> tuple[tuple[int, int], ...]:
    """For each power of the base the product of roots that it stands for: √m·√n = g√(mn/g²)."""
    digits = [(1, 0)] * (2 * exponents[-1] + 1)
    for m, one in zip(roots, exponents, strict=True):
        for n, two in zip(roots, exponents, strict=True):
            common = math.gcd(m, n)
            digits[one + two] = ((m // common) * (n // common), common)
    return tuple(digits)
