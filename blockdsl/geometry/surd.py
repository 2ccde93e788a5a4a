"""Sums of square roots of whole numbers, exactly: the arithmetic.

A `Surd` is a sum c₁√n₁ + c₂√n₂ + …, each n a different whole number with no square factor, each c a fraction
that is not zero. Such roots are independent over the fractions, so two surds are equal only when their terms are,
and a surd is never zero. A result that turns out rational is always a plain `Fraction`.

All c of a surd are kept over one denominator, as whole numbers, so that a sum costs a few whole-number steps. Nearly
all surds have one root beside their rational part, (p + q√n)/below, and the arithmetic of two such numbers with the
same root is written out. Two surds are compared by floats with a bound for their error first; only where those
intervals meet is the sign of the difference worked out: from squares where there is one root, else by intervals of
whole square roots.
"""

from __future__ import annotations

import math
from abc import ABCMeta
from collections.abc import Iterable
from functools import lru_cache
from typing import TYPE_CHECKING, TypeAlias

from blockdsl.geometry.fraction import Fraction

Terms: TypeAlias = tuple[tuple[int, Fraction], ...]

_BLIND = (0.0, math.inf)
# Each float step errs by at most 2⁻⁵³ of its result; this is twice that, and there are ten steps besides one a term.
_STEP_ERROR = 2.0**-52
_STEPS = 10
# Floats nearer to zero than this are not held to their relative error.
_LEAST_FLOAT = 1e-280


class Surd:
    """An irrational sum of square roots: (wholes₁√roots₁ + wholes₂√roots₂ + …) / below.

    Made by arithmetic on `square_root`, not by hand, and never changed. `roots` rise, 1 standing for the rational
    part; `below` is more than nothing and shares no factor with all of `wholes`. The rational part is always there,
    also when it is zero; no other part is zero.
    """

    __slots__ = ("_hash", "_near", "below", "roots", "wholes")

    def __init__(self, roots: tuple[int, ...], wholes: tuple[int, ...], below: int) -> None:
        """Take parts that are canonical already (see the class); `surd` makes them so."""
        self.roots = roots
        self.wholes = wholes
        self.below = below
        self._near: tuple[float, float] | None = None
        self._hash = 0

    @property
    def terms(self) -> Terms:
        """(n, c) for each c√n, by rising n."""
        return tuple(
            (n, Fraction(whole, self.below)) for n, whole in zip(self.roots, self.wholes, strict=True) if whole
        )

    def __eq__(self, other: object) -> bool:
        """Whether both are the same number; a surd is never a fraction."""
        if not isinstance(other, Surd):
            return False
        return self.wholes == other.wholes and self.below == other.below and self.roots == other.roots

    def __hash__(self) -> int:
        """Equal for equal numbers."""
        if not self._hash:
            self._hash = hash((self.roots, self.wholes, self.below))
        return self._hash

    def __add__(self, other: Surd | Fraction | int) -> Exact:
        """Exact sum."""
        if isinstance(other, Surd):
            if self.roots == other.roots and len(self.roots) == 2:
                (p, q), (r, s), below = self.wholes, other.wholes, self.below
                if below != other.below:
                    p, q, r, s, below = p * other.below, q * other.below, r * below, s * below, below * other.below
                return _single(self.roots, p + r, q + s, below)
            return _sum(self, other.roots, other.wholes, other.below)
        if isinstance(other, (Fraction, int)):
            top, bottom = other.as_integer_ratio()
            if len(self.roots) == 2:
                p, q = self.wholes
                return _single(self.roots, p * bottom + top * self.below, q * bottom, self.below * bottom)
            return _sum(self, _ONE, (top,), bottom)
        return NotImplemented

    __radd__ = __add__

    def __sub__(self, other: Surd | Fraction | int) -> Exact:
        """Exact difference."""
        if isinstance(other, Surd):
            if self.roots == other.roots and len(self.roots) == 2:
                (p, q), (r, s), below = self.wholes, other.wholes, self.below
                if below != other.below:
                    p, q, r, s, below = p * other.below, q * other.below, r * below, s * below, below * other.below
                return _single(self.roots, p - r, q - s, below)
            return _sum(self, other.roots, tuple([-whole for whole in other.wholes]), other.below)
        if isinstance(other, (Fraction, int)):
            top, bottom = other.as_integer_ratio()
            if len(self.roots) == 2:
                p, q = self.wholes
                return _single(self.roots, p * bottom - top * self.below, q * bottom, self.below * bottom)
            return _sum(self, _ONE, (-top,), bottom)
        return NotImplemented

    def __rsub__(self, other: Fraction | int) -> Exact:
        """Exact difference."""
        if len(self.roots) == 2 and isinstance(other, (Fraction, int)):
            (p, q), (top, bottom) = self.wholes, other.as_integer_ratio()
            return _single(self.roots, top * self.below - p * bottom, -q * bottom, self.below * bottom)
        return -self + other

    def __mul__(self, other: Surd | Fraction | int) -> Exact:
        """Exact product."""
        if isinstance(other, Surd):
            if self.roots == other.roots and len(self.roots) == 2:
                (p, q), (r, s) = self.wholes, other.wholes
                return _single(self.roots, p * r + q * s * self.roots[1], p * s + q * r, self.below * other.below)
            sums: dict[int, int] = {}
            for m, one in zip(self.roots, self.wholes, strict=True):
                for n, two in zip(other.roots, other.wholes, strict=True):
                    root, times = _product_of_roots(m, n)
                    sums[root] = sums.get(root, 0) + one * two * times
            return surd(sums.items(), self.below * other.below)
        if not isinstance(other, (Fraction, int)):
            return NotImplemented
        top, bottom = other.as_integer_ratio()
        return _multiple(self, top, bottom) if top else Fraction(0)

    __rmul__ = __mul__

    def __truediv__(self, other: Surd | Fraction | int) -> Exact:
        """Exact quotient; ZeroDivisionError for a divisor of zero."""
        if isinstance(other, Surd):
            return self * inverse(other)
        if not isinstance(other, (Fraction, int)):
            return NotImplemented
        top, bottom = other.as_integer_ratio()
        if not top:
            raise ZeroDivisionError("an exact number is not divided by nothing")
        return _multiple(self, bottom, top)

    def __rtruediv__(self, other: Fraction | int) -> Exact:
        """Exact quotient."""
        return inverse(self) * other

    def __neg__(self) -> Surd:
        """The same with the other sign."""
        return Surd(self.roots, tuple([-whole for whole in self.wholes]), self.below)

    def __abs__(self) -> Surd:
        """The magnitude."""
        return self if sign(self) > 0 else -self

    def __lt__(self, other: Surd | Fraction | int) -> bool:
        """Exact comparison."""
        return _compare(self, other) < 0

    def __le__(self, other: Surd | Fraction | int) -> bool:
        """Exact comparison."""
        return _compare(self, other) <= 0

    def __gt__(self, other: Surd | Fraction | int) -> bool:
        """Exact comparison."""
        return _compare(self, other) > 0

    def __ge__(self, other: Surd | Fraction | int) -> bool:
        """Exact comparison."""
        return _compare(self, other) >= 0

    def __float__(self) -> float:
        """The nearest float, or its neighbour."""
        bits = 128
        low, high = bounds(self, bits)
        while abs(low + high) < (high - low) << 64:  # the terms nearly cancel: look closer
            bits *= 2
            low, high = bounds(self, bits)
        return float(Fraction(low + high, 1 << (bits + 1)))

    def __repr__(self) -> str:
        """The terms, for those who look for a fault."""
        return f"Surd(terms={self.terms!r})"

    def __str__(self) -> str:
        """As the language writes it."""
        return write_exact(self)

    def near(self) -> tuple[float, float]:
        """A float, and how far from it the number lies at most (infinity where floats do not reach)."""
        if self._near is None:
            self._near = _near_surd(self)
        return self._near


if TYPE_CHECKING:
    Exact: TypeAlias = Fraction | Surd
else:

    class Exact(metaclass=ABCMeta):  # noqa: B024  it stands for two classes that exist and has nothing of its own
        """Either of the two: as one class a record can have fields of it, and its JSON schema is found."""

    Exact.register(Fraction)
    Exact.register(Surd)


_ONE = (1,)


def surd(parts: Iterable[tuple[int, int]], below: int) -> Exact:
    """The number (w₁√n₁ + w₂√n₂ + …)/below from (n, w); no n comes twice, and none has a square factor."""
    kept = sorted([part for part in parts if part[1]])
    if not kept:
        return Fraction(0)
    if kept[-1][0] == 1:
        return Fraction(kept[0][1], below)
    if kept[0][0] != 1:
        kept.insert(0, (1, 0))
    common = math.gcd(below, *[whole for _, whole in kept])
    if below < 0:
        common = -common
    return Surd(tuple([n for n, _ in kept]), tuple([whole // common for _, whole in kept]), below // common)


def _single(roots: tuple[int, ...], p: int, q: int, below: int) -> Exact:
    """(p + q√n)/below for the roots (1, n), in lowest terms; a Fraction where the root has gone."""
    if not q:
        return Fraction(p, below)
    common = math.gcd(p, q, below)
    if below < 0:
        common = -common
    if common == 1:
        return Surd(roots, (p, q), below)
    return Surd(roots, (p // common, q // common), below // common)


def _sum(one: Surd, roots: tuple[int, ...], wholes: tuple[int, ...], below: int) -> Exact:
    mine, common = one.wholes, one.below
    if common != below:
        shared = math.gcd(common, below)
        up, down = below // shared, common // shared
        mine, wholes = tuple([whole * up for whole in mine]), tuple([whole * down for whole in wholes])
        common *= up
    sums = dict(zip(one.roots, mine, strict=True))
    for n, whole in zip(roots, wholes, strict=True):
        sums[n] = sums.get(n, 0) + whole
    return surd(sums.items(), common)


def _multiple(one: Surd, top: int, bottom: int) -> Surd:
    """The number × top / bottom, for top and bottom that are not zero; it keeps its roots."""
    if bottom < 0:
        top, bottom = -top, -bottom
    if len(one.wholes) == 2:
        p, q = one.wholes
        p, q, below = p * top, q * top, one.below * bottom
        common = math.gcd(p, q, below)
        if common == 1:
            return Surd(one.roots, (p, q), below)
        return Surd(one.roots, (p // common, q // common), below // common)
    wholes, below = tuple([whole * top for whole in one.wholes]), one.below * bottom
    common = math.gcd(below, *wholes)
    if common != 1:
        wholes, below = tuple([whole // common for whole in wholes]), below // common
    return Surd(one.roots, wholes, below)


@lru_cache(maxsize=1024)
def _product_of_roots(m: int, n: int) -> tuple[int, int]:
    """√m·√n = g√(mn/g²) with g the greatest common divisor; no square factor is left."""
    g = math.gcd(m, n)
    return (m // g) * (n // g), g


def split(x: Surd) -> tuple[int, Exact, Exact]:
    """q, A, B with x = A + B√q, B not zero, and every root in A and B coprime to q.

    q starts as the largest radicand and shrinks to its common divisor with each other radicand it touches;
    since no radicand has a square factor, each one ends up either divisible by q or coprime to it.
    """
    q = x.roots[-1]
    for n in x.roots:
        g = math.gcd(q, n)
        q = g if g > 1 else q
    parts = list(zip(x.roots, x.wholes, strict=True))
    without = surd([(n, whole) for n, whole in parts if n % q], x.below)
    within = surd([(n // q, whole) for n, whole in parts if n % q == 0], x.below)
    return q, without, within


def inverse(x: Exact) -> Exact:
    """1/(A + B√q) = (A - B√q)/(A² - B²q); the divisor on the right no longer holds √q."""
    if isinstance(x, Fraction):
        return 1 / x
    if len(x.roots) == 2:
        p, q = x.wholes
        return _single(x.roots, x.below * p, -x.below * q, p * p - q * q * x.roots[1])
    n, a, b = split(x)
    conjugate = a - b * Surd((1, n), (0, 1), 1)
    return conjugate * inverse(a * a - b * b * n)


# --- order ---------------------------------------------------------------------------------------


def bounds(x: Surd, bits: int) -> tuple[int, int]:
    """Whole numbers low, high with low ≤ x·2^bits ≤ high and high - low at most the number of terms plus one."""
    low = high = 0
    for n, whole in zip(x.roots, x.wholes, strict=True):
        square = whole * whole * n << (2 * bits)
        floor = math.isqrt(square)
        ceiling = floor if floor * floor == square else floor + 1
        low, high = (low + floor, high + ceiling) if whole > 0 else (low - ceiling, high - floor)
    return low // x.below, -(-high // x.below)


def sign(x: Exact | int) -> int:
    """-1, 0 or 1, exactly.

    Exact:  a float with a bound for its error; where that does not tell, intervals of whole square roots, twice as
            fine until zero is outside. It ends: a surd is never zero.
    """
    if not isinstance(x, Surd):
        return (x > 0) - (x < 0)
    value, error = x.near()
    if value > error:
        return 1
    if value < -error:
        return -1
    if len(x.roots) == 2:
        p, q = x.wholes
        return 1 if (q if q * q * x.roots[1] > p * p else p) > 0 else -1
    bits = 32
    while True:
        low, high = bounds(x, bits)
        if low >= 0:
            return 1
        if high <= 0:
            return -1
        bits *= 2


def _compare(one: Surd, other: Surd | Fraction | int) -> int:
    """The sign of the difference; the difference itself is made only where floats do not tell it."""
    value, error = one.near()
    far, more = near(other)
    apart, doubt = value - far, error + more
    if apart > doubt:
        return 1
    if apart < -doubt:
        return -1
    return sign(one - other)


def near(number: Exact | int) -> tuple[float, float]:
    """A float, and how far from it the number lies at most (infinity where floats do not reach)."""
    if isinstance(number, Surd):
        return number.near()
    top, bottom = number.as_integer_ratio()
    try:
        value = top / bottom
    except OverflowError:
        return _BLIND
    return value, abs(value) * _STEP_ERROR + _LEAST_FLOAT


@lru_cache(maxsize=1024)
def _float_root(n: int) -> float:
    return math.sqrt(n)


def _near_surd(x: Surd) -> tuple[float, float]:
    value = size = 0.0
    try:
        for n, whole in zip(x.roots, x.wholes, strict=True):
            term = whole * _float_root(n)
            value += term
            size += abs(term)
        value, size = value / x.below, size / x.below
    except OverflowError:
        return _BLIND
    return value, size * (_STEPS + len(x.roots)) * _STEP_ERROR + _LEAST_FLOAT


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
