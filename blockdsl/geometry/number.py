"""Exact numbers: fractions, and sums of square roots of whole numbers.

Plain squared paper needs only fractions. Diagonals bring √2, sixty-degree work √3; both together √6.
A `Surd` is a sum c₁√n₁ + c₂√n₂ + …, each n a different whole number with no square factor, each c a fraction
that is not zero. Such roots are independent over the fractions, so two surds are equal only when their terms are,
and a surd is never zero. A result that turns out rational is always a plain `Fraction`.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from typing import TypeAlias

Terms: TypeAlias = tuple[tuple[int, Fraction], ...]

# Square factors are looked for by trial division up to here, which settles every number below its cube.
_TRIAL_LIMIT = 20_000


@dataclass(frozen=True, slots=True)
class Surd:
    """An irrational sum of square roots; `terms` are (n, c) for c√n, sorted by n, with n = 1 for the rational part.

    Made by arithmetic on `square_root`, not by hand: the terms must be canonical (see the module's first lines).
    """

    terms: Terms

    def __add__(self, other: Surd | Fraction | int) -> Exact:
        """Exact sum."""
        if not isinstance(other, (Surd, Fraction, int)):
            return NotImplemented
        return _collect((*self.terms, *_terms(other)))

    def __radd__(self, other: Fraction | int) -> Exact:
        """Exact sum."""
        return self + other

    def __sub__(self, other: Surd | Fraction | int) -> Exact:
        """Exact difference."""
        if not isinstance(other, (Surd, Fraction, int)):
            return NotImplemented
        return self + (-other)

    def __rsub__(self, other: Fraction | int) -> Exact:
        """Exact difference."""
        return -self + other

    def __mul__(self, other: Surd | Fraction | int) -> Exact:
        """Exact product."""
        if isinstance(other, Surd):
            return _collect(_product(m, n, c * d) for m, c in self.terms for n, d in other.terms)
        if not isinstance(other, (Fraction, int)):
            return NotImplemented
        if not other:
            return Fraction(0)
        return Surd(tuple((n, c * other) for n, c in self.terms))

    def __rmul__(self, other: Fraction | int) -> Exact:
        """Exact product."""
        return self * other

    def __truediv__(self, other: Surd | Fraction | int) -> Exact:
        """Exact quotient; ZeroDivisionError for a divisor of zero."""
        if isinstance(other, Surd):
            return self * _inverse(other)
        if not isinstance(other, (Fraction, int)):
            return NotImplemented
        return self * (1 / Fraction(other))

    def __rtruediv__(self, other: Fraction | int) -> Exact:
        """Exact quotient."""
        return _inverse(self) * other

    def __neg__(self) -> Surd:
        """The same with the other sign."""
        return Surd(tuple((n, -c) for n, c in self.terms))

    def __abs__(self) -> Surd:
        """The magnitude."""
        return self if sign(self) > 0 else -self

    def __lt__(self, other: Surd | Fraction | int) -> bool:
        """Exact comparison."""
        return sign(self - other) < 0

    def __le__(self, other: Surd | Fraction | int) -> bool:
        """Exact comparison."""
        return sign(self - other) <= 0

    def __gt__(self, other: Surd | Fraction | int) -> bool:
        """Exact comparison."""
        return sign(self - other) > 0

    def __ge__(self, other: Surd | Fraction | int) -> bool:
        """Exact comparison."""
        return sign(self - other) >= 0

    def __float__(self) -> float:
        """The nearest float, or its neighbour."""
        bits = 128
        low, high = _bounds(self, bits)
        while abs(low + high) < (high - low) << 64:  # the terms nearly cancel: look closer
            bits *= 2
            low, high = _bounds(self, bits)
        return float(Fraction(low + high, 1 << (bits + 1)))

    def __str__(self) -> str:
        """As the language writes it."""
        return write_exact(self)


Exact: TypeAlias = Fraction | Surd


def _terms(x: Surd | Fraction | int) -> Terms:
    return x.terms if isinstance(x, Surd) else ((1, Fraction(x)),)


def _product(m: int, n: int, coefficient: Fraction) -> tuple[int, Fraction]:
    """√m·√n = g√(mn/g²) with g the greatest common divisor; no square factor is left."""
    g = math.gcd(m, n)
    return (m // g) * (n // g), coefficient * g


def _collect(terms: Iterable[tuple[int, Fraction]]) -> Exact:
    sums: dict[int, Fraction] = {}
    for n, c in terms:
        sums[n] = sums[n] + c if n in sums else c
    kept = tuple(sorted((n, c) for n, c in sums.items() if c))
    if not kept:
        return Fraction(0)
    if len(kept) == 1 and kept[0][0] == 1:
        return kept[0][1]
    return Surd(kept)


def _split(x: Surd) -> tuple[int, Exact, Exact]:
    """q, A, B with x = A + B√q, B not zero, and every root in A and B coprime to q.

    q starts as the largest radicand and shrinks to its common divisor with each other radicand it touches;
    since no radicand has a square factor, each one ends up either divisible by q or coprime to it.
    """
    q = x.terms[-1][0]
    for n, _ in x.terms:
        g = math.gcd(q, n)
        q = g if g > 1 else q
    without = _collect((n, c) for n, c in x.terms if n % q)
    within = _collect((n // q, c) for n, c in x.terms if n % q == 0)
    return q, without, within


def _inverse(x: Exact) -> Exact:
    """1/(A + B√q) = (A - B√q)/(A² - B²q); the divisor on the right no longer holds √q."""
    if isinstance(x, Fraction):
        return 1 / x
    q, a, b = _split(x)
    conjugate = a - b * Surd(((q, Fraction(1)),))
    return conjugate * _inverse(a * a - b * b * q)


def _bounds(x: Surd, bits: int) -> tuple[int, int]:
    """Whole numbers low, high with low ≤ x·2^bits ≤ high and high - low at most the number of terms plus one."""
    denominator = math.lcm(*(c.denominator for _, c in x.terms))
    low = high = 0
    for n, c in x.terms:
        whole = c.numerator * (denominator // c.denominator)
        square = whole * whole * n << (2 * bits)
        floor = math.isqrt(square)
        ceiling = floor if floor * floor == square else floor + 1
        low, high = (low + floor, high + ceiling) if whole > 0 else (low - ceiling, high - floor)
    return low // denominator, -(-high // denominator)


def sign(x: Exact | int) -> int:
    """-1, 0 or 1, exactly.

    Exact:  intervals of whole square roots, twice as fine until zero is outside. It ends: a surd is never zero.
    """
    if not isinstance(x, Surd):
        return (x > 0) - (x < 0)
    bits = 32
    while True:
        low, high = _bounds(x, bits)
        if low >= 0:
            return 1
        if high <= 0:
            return -1
        bits *= 2


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
    low, high = _bounds(quotient, bits)
    while low >> bits != high >> bits:  # an irrational number lies strictly between two whole ones
        bits *= 2
        low, high = _bounds(quotient, bits)
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


def _exact_root(x: Exact) -> Exact | None:
    """The square root as an exact number, or None. For x = A + B√q: √x = √((A+d)/2) ± √((A-d)/2), d² = A² - B²q."""
    if isinstance(x, Fraction):
        parts = _square_factor(x.numerator * x.denominator)
        return None if parts is None else _collect([(parts[1], Fraction(parts[0], x.denominator))])
    q, a, b = _split(x)
    square = a * a - b * b * q
    d = _exact_root(square) if sign(square) >= 0 and sign(a) > 0 else None
    known = math.lcm(*(n for n, _ in (*_terms(a), *_terms(b))))
    if d is None or any(known % n for n, _ in _terms(d)):  # a root that is new here would have to cancel: no answer
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
        high = _bounds(value, 2 * bits)[1]
    else:
        high = -((-value.numerator << (2 * bits)) // value.denominator)
    return Fraction(math.isqrt(high) + 1, 1 << bits)


def write_exact(x: Exact | int) -> str:
    """The number in the language's own notation: `3`, `1/2`, `2 7/8`, `2-r2`, `1/2r3`."""
    if isinstance(x, Surd):
        written = "".join(_write_term(n, c) for n, c in x.terms)
        return written.removeprefix("+")
    top, bottom = x.as_integer_ratio()
    minus = "-" if top < 0 else ""
    whole, part = divmod(abs(top), bottom)
    if not part:
        return f"{minus}{whole}"
    return f"{minus}{whole} {part}/{bottom}" if whole else f"{minus}{part}/{bottom}"


def _write_term(n: int, c: Fraction) -> str:
    """A term with its sign; fractions stay improper here, since a space would end the number."""
    size = "" if n > 1 and abs(c) == 1 else str(abs(c))
    return ("-" if c < 0 else "+") + size + (f"r{n}" if n > 1 else "")
