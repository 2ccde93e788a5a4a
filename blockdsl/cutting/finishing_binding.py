"""Binding: strips across the cloth, or bias strips from a square.

How much binding a quilt takes. It is sewn to the raw edge of the top, which is longer than the edge of the finished
quilt by eight seam allowances. Along that edge a mitred corner takes nothing: the strip runs to the corner, is
folded up, and starts down the next side from the very same corner. What does take length is every join: two strips
lie across each other at right angles and are sewn from corner to corner of the square where they cross, so each
loses half a strip's width along its middle, both together one width. The last join closes the ring, so there are
as many joins as strips. Working room is wanted beside that, for the loose ends at the closing join and for ease at
corners: 10 in.
"""

from __future__ import annotations

from typing import Annotated, Literal

from msgspec import Struct, field

from blockdsl.cutting.buying import SHRINKAGE, Buy, buy
from blockdsl.geometry import Exact, ceil_to, floor_to, square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.fabric import RulerUnit
from blockdsl.record import Record, Rest, says

BindingCut = Literal["straight", "bias"]
ROOT_TWO = square_root(2)

WORKING_ROOM: dict[RulerUnit, Fraction] = {"in": Fraction(10), "cm": Fraction(25)}
"""Kept beyond the edge and all joins, for loose ends. Of 0, 8, 10, 15 to 20 and 24 in published, the commonest (common
practice; tests/outside/published/finishing.toml)."""


class BindingMeasures(Record, frozen=True):
    """The binding of a quilt: strips across the cloth, or squares for bias strips, each cut round and round a tube."""

    cut: BindingCut
    strip_width: Fraction = field(name="strip")
    around: Annotated[Exact, says("The raw edge of the top, all four sides.")]
    room: Annotated[Fraction, says("What is kept beyond the edge and beyond what the joins take.")]
    strips: Rest
    squares: Rest
    square: Fraction | None
    length: Annotated[Fraction, says("How long it is when its strips are sewn end to end.")]
    gives: Annotated[
        Fraction, says("How long it is when every join is sewn, the last one, which closes the ring, too.")
    ]
    need: Fraction


class BindingPlan(BindingMeasures, frozen=True):
    """The binding, and the length of cloth to buy for it."""

    buy: Buy


class BindingCloth(Struct, frozen=True):
    """The cloth it is cut from. `room` is what the maker keeps beyond edge and joins, None for custom."""

    usable_width: Fraction
    measure: Fraction
    seam: Fraction
    unit: RulerUnit
    room: Fraction | None = None
    shrinkage: Fraction = SHRINKAGE


def edge_length(top: tuple[Exact, Exact]) -> Exact:
    """The length of the edge of a top, all four sides; its raw edge where `top` is the size before it is bound."""
    return 2 * (top[0] + top[1])


def binding_plan(around: Exact, strip_width: Fraction, cut: BindingCut, cloth: BindingCloth) -> BindingPlan:
    """Straight or bias binding for an edge of length `around`."""
    return (straight_binding if cut == "straight" else bias_binding)(around, strip_width, cloth)


def room_for(cloth: BindingCloth) -> Fraction:
    """What is kept beyond the edge and all joins: 10 in or 25 cm, or what the maker keeps."""
    return WORKING_ROOM[cloth.unit] if cloth.room is None else cloth.room


def straight_binding(around: Exact, strip_width: Fraction, cloth: BindingCloth) -> BindingPlan:
    """Strips across the cloth, joined slantwise.

    Exact:  the least n with n × (usable width - strip width) ≥ around + working room; the cloth is n × strip width
            long.
    Units:  all in the cloth's unit.
    Errors: ValueError when a strip is not narrower than the cloth, or has no width.
    Source: geometry above; agrees with the strips of three published quilts, one of which (8 strips)
            the common rule "perimeter + 10, divided by the width" misses; others have a strip less, whose joins use
            up the room (tests/outside/published/finishing.toml).
    """
    _check(strip_width, cloth)
    usable = cloth.usable_width
    strips = max(1, int(ceil_to((around + room_for(cloth)) / (usable - strip_width), Fraction(1))))
    need = strips * strip_width
    return BindingPlan(
        cut="straight",
        strip_width=strip_width,
        around=around,
        room=room_for(cloth),
        strips=strips,
        squares=0,
        square=None,
        length=strips * usable - (strips - 1) * strip_width,
        gives=strips * (usable - strip_width),
        need=need,
        buy=buy(need, cloth.unit, cloth.shrinkage),
    )


def bias_binding(around: Exact, strip_width: Fraction, cloth: BindingCloth) -> BindingPlan:
    """Bias strips cut round and round a tube that is sewn from a square; several squares where one is too large.

    Exact:  the side is that whose yield (`continuous_bias`) is the length wanted, rounded up to the measure; as few
            squares as the width of the cloth allows, since each is a tube to sew.
    Units:  all in the cloth's unit.
    Errors: ValueError when a strip is not narrower than the cloth, has no width, or the cloth holds no square.
    Source: derived in `continuous_bias`.
    """
    _check(strip_width, cloth)
    squares, side = 1, square_for_bias(around, 1, strip_width, cloth)
    while side > cloth.usable_width:
        squares += 1
        side = square_for_bias(around, squares, strip_width, cloth)
    need = -(-squares // int(cloth.usable_width // side)) * side
    gives = floor_to(squares * (continuous_bias(side, strip_width, cloth.seam) - strip_width), cloth.measure)
    return BindingPlan(
        cut="bias",
        strip_width=strip_width,
        around=around,
        room=room_for(cloth),
        strips=0,
        squares=squares,
        square=side,
        length=gives + strip_width,
        gives=gives,
        need=need,
        buy=buy(need, cloth.unit, cloth.shrinkage),
    )


def square_for_bias(around: Exact, squares: int, strip_width: Fraction, cloth: BindingCloth) -> Fraction:
    """Side of each of so many squares that together bind an edge of length `around`; rounded up to the measure.

    Exact:  for n rounds the side is at least the larger of n × √2 × width (so that n rounds lie beside each other) and
            length / (n × √2), with two seam allowances more; of all n the one with the smallest square.
    """
    wanted = (around + room_for(cloth)) / squares + strip_width
    fewest = int(floor_to(square_root(wanted / (2 * strip_width)), Fraction(1)))
    across = min(max(wanted / (2 * rounds), rounds * strip_width) for rounds in (max(1, fewest), fewest + 1))
    return ceil_to(across * ROOT_TWO + 2 * cloth.seam, cloth.measure)


def continuous_bias(side: Fraction, strip_width: Fraction, seam: Fraction) -> Exact:
    """Length of bias strip from one square, cut round and round.

    Shape:  the square is cut corner to corner, its halves sewn along a side to a slanting piece, which is sewn to a
            tube one strip out of step and cut round and round.
    Exact:  n × √2 × (side - 2 × seam), where n is how many whole strips lie beside each other:
            (side - 2 × seam) / √2 divided by the strip width, rounded down. The first seam takes two allowances off
            the breadth of the slanting piece, the second off the length of each round.
    Source: derived as above. "Area divided by width" (`bias_by_area`) counts the seams and the last, too narrow round.
    """
    net = side - 2 * seam
    if net <= 0:
        return Fraction(0)
    return floor_to(net / ROOT_TWO / strip_width, Fraction(1)) * ROOT_TWO * net


def bias_by_area(side: Fraction, strip_width: Fraction) -> Fraction:
    """The handbooks' length of bias strip from a square, area divided by width: no square gives more.

    Source: the handbooks' rule; common practice, no source. It bounds ours from above.
    """
    return side * side / strip_width


def can_be_cut(strip_width: Fraction, cloth: BindingCloth) -> bool:
    """Whether strips so wide can be cut across the cloth, and a square for bias strips."""
    return 0 < 2 * strip_width + 4 * cloth.seam < cloth.usable_width


def _check(strip_width: Fraction, cloth: BindingCloth) -> None:
    if not can_be_cut(strip_width, cloth):
        raise ValueError("a strip of binding is narrower than its cloth")
