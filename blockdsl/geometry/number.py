"""Exact numbers: fractions, and sums of square roots of whole numbers.

Plain squared paper needs only fractions. Diagonals bring √2, sixty-degree work √3; both together √6. The arithmetic
of such sums is in surd.py; here they are rounded, written, and their own square roots found.
"""

from __future__ import annotations

import math
from functools import lru_cache

from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.surd import Exact, Surd, bounds, sign, split, surd, write_exact

__all__ = ["Exact", "Surd", "ceil_to", "floor_to", "sign", "square_root", "to_float", "write_exact"]

# Square factors are looked for by trial division up to here, which settles every number below its cube.
_TRIAL_LIMIT = 20_000


def to_float(x: Exact | int) -> float:
    """The nearest float, or its neighbour."""
    return float(x)


def floor_to(x: Exact | int, measure: Fraction) -> Fraction:
    """Greatest multiple of `measure` that is not more than x, exactly.

    Errors: ValueError when the measure is not positive.
    """
    if measure <= 0:
        raise ValueError("a ruler's measure must be more than nothing")
    quotient = x / measure if isinstance(x, Surd) else Fraction(x) / measure
    if isinstance(quotient, Fraction):
        return math.floor(quotient) * measure
    bits = 32
    low, high = bounds(quotient, bits)
    while low >> bits != high >> bits:  # an irrational number lies strictly between two whole ones
        bits *= 2
        low, high = bounds(quotient, bits)
    return (low >> bits) * measure


def ceil_to(x: Exact | int, measure: Fraction) -> Fraction:
    """Least multiple of `measure` that is not less than x, exactly.

    Errors: ValueError when the measure is not positive.
    """
    return -floor_to(-x, measure)


@lru_cache(maxsize=4096)
def _square_factor(n: int) -> tuple[int, int] | None:
    """(s, m) with n = s²m and m free of squares; None when n is too large to tell."""
    if math.isqrt(n) ** 2 == n:
        return math.isqrt(n), 1
    root, rest, free, p = 1, n, 1, 2
    while p <= _TRIAL_LIMIT and p * p * p <= rest:
        while rest % (p * p) == 0:
            rest //= p * p
            root *= p
        if rest % p == 0:
            rest //= p
            free *= p
        p += 1 if p == 2 else 2
    whole = math.isqrt(rest)
    if whole * whole == rest:
        return root * whole, free
    # Every factor of what is left is at least p, so a square in it would leave a cofactor of at least p, or none.
    return (root, free * rest) if p * p * p > rest else None


def _roots(x: Exact) -> tuple[int, ...]:
    return x.roots if isinstance(x, Surd) else ()


def _exact_root(x: Exact) -> Exact | None:
    """The square root as an exact number, or None. For x = A + B√q: √x = √((A+d)/2) ± √((A-d)/2), d² = A² - B²q."""
    if isinstance(x, Fraction):
        parts = _square_factor(x.numerator * x.denominator)
        return None if parts is None else surd([(parts[1], parts[0])], x.denominator)
    q, a, b = split(x)
    square = a * a - b * b * q
    d = _exact_root(square) if sign(square) >= 0 and sign(a) > 0 else None
    known = math.lcm(*_roots(a), *_roots(b))
    if d is None or any(known % n for n in _roots(d)):  # a root that is new here would have to cancel: no answer
        return None
    more, less = _exact_root((a + d) / 2), _exact_root((a - d) / 2)
    if more is None or less is None:
        return None
    root = more + less if sign(b) > 0 else more - less
    return root if root * root == x else None


def square_root(x: Exact | int) -> Exact:
    """Square root: exact for fractions, and for sums such as 2 + √3 whose root is again a sum of roots.

    Exact:  where no sum of roots is the answer (√(4 - 2√2)), or a fraction's terms run to more than a dozen digits
            and its square factors cannot be found, a Fraction not less than the root and more by less than 10⁻³⁰.
            This is the one place where exactness ends, and it ends outward: cloth is never cut too small.
    Errors: ValueError when x is negative.
    """
    if sign(x) < 0:
        raise ValueError("a negative number has no square root")
    value = x if isinstance(x, Surd) else Fraction(x)
    exact = _exact_root(value) if value else Fraction(0)
    if exact is not None:
        return exact
    bits = 112
    if isinstance(value, Surd):
        high = bounds(value, 2 * bits)[1]
    else:
        high = -((-value.numerator << (2 * bits)) // value.denominator)
    return Fraction(math.isqrt(high) + 1, 1 << bits)
