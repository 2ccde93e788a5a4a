"""From the cloth that is needed to the cloth to ask for in the shop.

A plan's length is exact and assumes cloth that lies straight and does not shrink. What washing and squaring up take
is stated apart, so that a quilter who washes nothing can leave it out, and only the sum is rounded up to what a shop
cuts. This is the one place where lengths are rounded to a shop's measure.
"""

from __future__ import annotations

from msgspec import Struct

from blockdsl.geometry import ceil_to
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.number import write_exact
from blockdsl.model.fabric import RulerUnit

SHRINKAGE = Fraction(5, 100)
"""Part of the length that a first wash may take of quilting cotton. Common practice, no source."""

SQUARING: dict[RulerUnit, Fraction] = {"in": Fraction(2), "cm": Fraction(5)}
"""The least that is kept for a crooked cut end, squared up: 2 in or 5 cm. Common practice, no source."""

SHOP_STEP: dict[RulerUnit, Fraction] = {"in": Fraction(36, 8), "cm": Fraction(10)}
"""What shops cut by: an eighth of a yard (4 1/2 in), or 10 cm."""

SHOP_UNIT: dict[RulerUnit, tuple[str, Fraction]] = {"in": ("yd", Fraction(36)), "cm": ("m", Fraction(100))}


class Buy(Struct, frozen=True):
    """A length of cloth in the quilt's unit: `need` as planned, `allowed` for washing and squaring, `length` to buy."""

    need: Fraction
    allowed: Fraction
    length: Fraction
    unit: RulerUnit

    @property
    def words(self) -> str:
        """What to say in the shop: `2 3/4 yd`, `1.2 m`; `0 yd` for nothing."""
        name, whole = SHOP_UNIT[self.unit]
        amount = self.length / whole
        return f"{write_exact(amount)} yd" if name == "yd" else f"{float(amount):g} m"


def buy(need: Fraction, unit: RulerUnit, shrinkage: Fraction = SHRINKAGE, squaring: Fraction | None = None) -> Buy:
    """The length to buy for a length that is needed.

    Shape:  of the width that the plan was made for.
    Exact:  need + the larger of need × shrinkage and `squaring` (2 in or 5 cm when not given), rounded up to
            1/8 yd or 10 cm; nothing for nothing. With both nought, the need rounded up.
    Units:  `need`, `squaring` in `unit`; shrinkage is a part of the length, 5 % when not given.
    Errors: ValueError when one of them is less than nothing.
    Source: rounding up to 1/8 yd (4 1/2 in), and the allowance: common practice, no source.
    """
    least = SQUARING[unit] if squaring is None else squaring
    if need < 0 or shrinkage < 0 or least < 0:
        raise ValueError("a length to buy is never less than nothing")
    if not need:
        return Buy(need, Fraction(0), Fraction(0), unit)
    allowed = max(need * shrinkage, least)
    return Buy(need, allowed, ceil_to(need + allowed, SHOP_STEP[unit]), unit)
