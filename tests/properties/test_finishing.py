"""What holds for the finishing of every quilt, straight or on point, in inches or centimetres."""

from __future__ import annotations

from typing import get_args

from hypothesis import given
from hypothesis import strategies as st

from blockdsl.cutting.buying import SHOP_STEP, buy
from blockdsl.cutting.finishing import AskedOfBack, backing_plan, sleeve_plan, wadding_plan
from blockdsl.cutting.finishing_binding import BindingCloth, binding_plan, edge_length
from blockdsl.geometry import Exact, square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.fabric import RulerUnit

MEASURE: dict[RulerUnit, Fraction] = {"in": Fraction(1, 8), "cm": Fraction(1, 10)}
LARGEST: dict[RulerUnit, int] = {"in": 3150, "cm": 10_000}
UNITS = st.sampled_from(get_args(RulerUnit))
WIDTHS = st.integers(20, 300).map(Fraction)
EIGHTHS = st.integers(1, 1200).map(lambda number: Fraction(number, 8))


def sides() -> st.SearchStrategy[Exact]:
    """A finished side: of blocks set straight, or on point with borders."""
    straight: st.SearchStrategy[Exact] = EIGHTHS
    return st.one_of(straight, st.builds(lambda root, more: root * square_root(2) + more, EIGHTHS, EIGHTHS))


@given(sides(), sides(), UNITS, WIDTHS, st.integers(0, 60))
def test_the_widths_of_a_back_cover_the_quilt_and_its_overage_and_one_fewer_would_not(
    width: Exact, height: Exact, unit: RulerUnit, usable: Fraction, eighths: int
) -> None:
    overage = Fraction(eighths, 8)
    plan = backing_plan((width, height), unit, MEASURE[unit], AskedOfBack(overage, usable))
    assert plan.sewn[0] >= width + 2 * overage
    assert plan.sewn[1] >= height + 2 * overage
    assert plan.need == plan.widths * plan.piece_length
    across, wanted = (plan.sewn[0], plan.size[0]) if plan.seams == "vertical" else (plan.sewn[1], plan.size[1])
    if plan.widths > 1:
        assert across - usable + 2 * plan.join < wanted
    if plan.one_fewer is not None:
        snug = backing_plan((width, height), unit, MEASURE[unit], AskedOfBack(plan.one_fewer, usable))
        assert plan.one_fewer < overage
        assert snug.need < plan.need


@given(sides(), sides(), UNITS, st.integers(20, 120), st.integers(8, 40), st.sampled_from(["straight", "bias"]))
def test_a_binding_with_every_join_sewn_goes_round_the_raw_edge_and_has_its_room(
    width: Exact, height: Exact, unit: RulerUnit, usable: int, eighths: int, cut: str
) -> None:
    strip_width = Fraction(eighths, 8)
    cloth = BindingCloth(Fraction(usable), MEASURE[unit], Fraction(1, 4), unit)
    around = edge_length((width, height))
    plan = binding_plan(around, strip_width, "bias" if cut == "bias" else "straight", cloth)
    assert plan.gives >= around + {"in": 10, "cm": 25}[unit]
    assert plan.length == plan.gives + strip_width
    if plan.square is not None:
        assert plan.square <= usable
        rows = -(-plan.squares // int(usable // plan.square))
        assert plan.need == rows * plan.square
        # no square gives more than its area
        assert plan.gives * strip_width <= plan.squares * plan.square**2
    else:
        assert plan.need == plan.strips * strip_width


@given(EIGHTHS, UNITS, st.integers(0, 25))
def test_what_is_bought_is_never_less_than_what_is_needed_and_never_a_step_too_much(
    need: Fraction, unit: RulerUnit, percent: int
) -> None:
    bought = buy(need, unit, Fraction(percent, 100))
    assert bought.length >= need + bought.allowed
    assert bought.length - SHOP_STEP[unit] < need + bought.allowed
    assert bought.length % SHOP_STEP[unit] == 0
    assert bought.allowed >= need * Fraction(percent, 100)


@given(sides(), UNITS, WIDTHS, st.integers(4, 80))
def test_the_strips_of_a_sleeve_are_as_long_as_the_sleeve_once_they_are_joined(
    width: Exact, unit: RulerUnit, usable: Fraction, eighths: int
) -> None:
    seam, depth = Fraction(1, 4), Fraction(eighths, 8)
    plan = sleeve_plan(width, depth, seam, unit, (usable, MEASURE[unit]))
    assert (plan.strips - 1) * usable + plan.last - (plan.strips - 1) * 2 * seam == plan.cut[0]
    assert 0 < plan.last <= usable
    assert plan.cut[0] - MEASURE[unit] < max(width / 2, width - 2)


@given(sides(), sides(), UNITS)
def test_wadding_is_larger_than_the_quilt_by_the_overage_and_no_more_than_the_rulers_measure(
    width: Exact, height: Exact, unit: RulerUnit
) -> None:
    plan = wadding_plan((width, height), unit, MEASURE[unit])
    for given_side, side in zip((width, height), plan.size, strict=True):
        assert 0 <= side - 2 * plan.overage - given_side < MEASURE[unit]
