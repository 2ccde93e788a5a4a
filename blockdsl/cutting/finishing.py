"""What finishes a quilt besides its binding: backing, wadding and a sleeve to hang it by.

Backing and wadding lie under the whole unfinished top, so they are worked out from its raw size; all exactly, before
anything is added for washing (`buying.py` does that).
"""

from __future__ import annotations

from typing import Annotated, Literal

from msgspec import Struct, field

from blockdsl.cutting.buying import SHRINKAGE, Buy, buy
from blockdsl.cutting.sizes import Extent
from blockdsl.cutting.strips import USABLE
from blockdsl.geometry import Exact, ceil_to, floor_to
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.fabric import RulerUnit
from blockdsl.record import Count, Record, says

Seams = Literal["none", "vertical", "horizontal"]

OVERAGE: dict[RulerUnit, Fraction] = {"in": Fraction(4), "cm": Fraction(10)}
"""How far backing and wadding extend beyond the raw top on each side: 4 in, as long-arm quilters ask."""

LEAST_OVERAGE: dict[RulerUnit, Fraction] = {"in": Fraction(2), "cm": Fraction(5)}
"""The least that a guild asks for: 2 in on each side."""

JOIN: dict[RulerUnit, Fraction] = {"in": Fraction(1, 2), "cm": Fraction(3, 2)}
"""Seam allowance where widths of backing are joined: wider than in piecing. Common practice, no source."""

SLEEVE_SHORTER: dict[RulerUnit, Fraction] = {"in": Fraction(2), "cm": Fraction(5)}
"""How much shorter than the quilt is wide a sleeve is cut, so that the rod's ends can be held."""


class BackingMeasures(Record, frozen=True):
    """The back of a quilt: so many widths of cloth, each so long."""

    size: Annotated[Extent, says("The quilt and its overage.")]
    overage: Fraction
    usable_width: Fraction
    widths: Count
    piece_length: Fraction = field(name="length")
    seams: Seams
    join: Annotated[Fraction, says("Seam allowance where widths are joined.")]
    sewn: Annotated[Extent, says("What the widths give.")]
    need: Fraction
    one_fewer: Annotated[
        Fraction | None, says("The overage with which one width fewer would do, where there is such a one.")
    ] = field(name="one_width_fewer_with_overage")


class BackingPlan(BackingMeasures, frozen=True):
    """How the back is put together, and what to buy for it."""

    buy: Buy


class WaddingPlan(Record, frozen=True):
    """The wadding of a quilt, in one piece, whatever the cloth's width."""

    size: Annotated[tuple[Fraction, Fraction], says("The raw top and the overage.")]
    overage: Annotated[Fraction, says("On each side.")]


class SleevePlan(Record, frozen=True):
    """A tube to hang a quilt by: its strips are joined, and cut so long and so wide."""

    depth: Annotated[Fraction, says("Finished.")]
    cut: tuple[Fraction, Fraction]
    strips: Count
    last: Annotated[Fraction, says("How long the last strip is.")]
    need: Fraction


class AskedOfBack(Struct, frozen=True):
    """What the maker asks of a back; None where she leaves it to custom."""

    overage: Fraction | None = None
    usable_width: Fraction | None = None
    shrinkage: Fraction = SHRINKAGE


def backing_plan(top: tuple[Exact, Exact], unit: RulerUnit, measure: Fraction, asked: AskedOfBack) -> BackingPlan:
    """The back with the least cloth: one, two, three or more widths, with upright seams or level ones.

    Shape:  the unfinished top's (width, height) with the overage on each side; lengths of cloth, selvages cut off.
    Exact:  with n widths, n × usable width - (n - 1) × 2 × join cover one way, the lengths the other way; the need
            is n × that length, rounded up to `measure`. Of two ways that need the same, fewer seams, then upright.
    Units:  all in `unit`; usable width 40 in or 100 cm when not asked for.
    Errors: ValueError when the cloth is no wider than a join takes.
    Source: the better of both directions agrees with six published backings (tests/outside/finishing.toml).
    """
    overage = OVERAGE[unit] if asked.overage is None else asked.overage
    across = USABLE[unit] if asked.usable_width is None else asked.usable_width
    join = JOIN[unit]
    size = backing_size(top, overage, measure)
    ways = [_way(size, across, join, upright=upright) for upright in (True, False)]
    widths, length, upright = min(ways, key=lambda way: (way[0] * way[1], way[0]))
    covered = widths * across - (widths - 1) * 2 * join
    seams: Seams = "none" if widths == 1 else "vertical" if upright else "horizontal"
    need = widths * length
    return BackingPlan(
        size=size,
        sewn=(covered, length) if upright else (length, covered),
        overage=overage,
        usable_width=across,
        widths=widths,
        seams=seams,
        piece_length=length,
        join=join,
        need=need,
        buy=buy(need, unit, asked.shrinkage),
        one_fewer=_one_fewer(top, (widths, across, join), (LEAST_OVERAGE[unit], overage), measure, need),
    )


def backing_size(top: tuple[Exact, Exact], overage: Fraction, measure: Fraction) -> tuple[Fraction, Fraction]:
    """Width and height of backing or wadding: the raw top and the overage on each side, rounded up to `measure`."""
    width, height = top
    return ceil_to(width + 2 * overage, measure), ceil_to(height + 2 * overage, measure)


def widths_for(side: Exact, across: Fraction, join: Fraction) -> int:
    """How many widths of cloth cover `side` when each join takes `join` of both: the least whole number."""
    if across <= 2 * join:
        raise ValueError("the cloth is no wider than its joins")
    return max(1, int(ceil_to((side - 2 * join) / (across - 2 * join), Fraction(1))))


def _way(
    size: tuple[Fraction, Fraction], across: Fraction, join: Fraction, *, upright: bool
) -> tuple[int, Fraction, bool]:
    """Widths, the length of each, and whether the cloth's length runs down the quilt."""
    width, height = size
    covered, along = (width, height) if upright else (height, width)
    return widths_for(covered, across, join), along, upright


def _one_fewer(
    top: tuple[Exact, Exact],
    cloth: tuple[int, Fraction, Fraction],
    between: tuple[Fraction, Fraction],
    measure: Fraction,
    need: Fraction,
) -> Fraction | None:
    """The largest overage from the first of `between` up to the second with which a width fewer takes less cloth."""
    (widths, across, join), (least, asked) = cloth, between
    fewer = widths - 1
    covered = fewer * across - (fewer - 1) * 2 * join
    found: list[Fraction] = []
    for side, other in (top, top[::-1]) if fewer else ():
        overage = floor_to((covered - side) / 2, measure)
        if least <= overage < asked and fewer * ceil_to(other + 2 * overage, measure) < need:
            found.append(overage)
    return max(found, default=None)


def wadding_plan(
    top: tuple[Exact, Exact], unit: RulerUnit, measure: Fraction, overage: Fraction | None = None
) -> WaddingPlan:
    """Wadding for a quilt: the raw top and the overage (4 in or 10 cm when not given) on each side."""
    beyond = OVERAGE[unit] if overage is None else overage
    return WaddingPlan(backing_size(top, beyond, measure), beyond)


def sleeve_plan(
    quilt_width: Exact, depth: Fraction, seam: Fraction, unit: RulerUnit, cloth: tuple[Fraction, Fraction]
) -> SleevePlan:
    """The sleeve that a quilt hangs by; its ends are turned in twice, so it ends up a little shorter still.

    Shape:  a strip folded lengthwise to a tube; `cloth` is (usable width, ruler's measure).
    Exact:  length: quilt's width - 2 in or 5 cm, at least half the width of a small quilt; width: 2 × depth + 2 seams
            (4 in deep with 1/4 in seams: 8 1/2 in). Joins of strips lose two seams each.
    Units:  all in `unit`.
    Errors: ValueError when the depth is not positive.
    Source: common practice, no source.
    """
    if depth <= 0:
        raise ValueError("a sleeve has some depth")
    usable, measure = cloth
    half = quilt_width / 2
    shorter = quilt_width - SLEEVE_SHORTER[unit]
    cut_length = ceil_to(max(half, shorter), measure)
    cut_width = ceil_to(2 * depth + 2 * seam, measure)
    strips = widths_for(cut_length, usable, seam)
    last = cut_length - (strips - 1) * (usable - 2 * seam)
    return SleevePlan(depth, (cut_length, cut_width), strips, last, strips * cut_width)
