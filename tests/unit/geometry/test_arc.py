"""Outlines with arcs: areas, turns, allowances and names, worked out by hand."""

from __future__ import annotations

from math import atan2, pi

import pytest

from blockdsl.geometry import Point, square_root, to_float
from blockdsl.geometry.arc import Bend, Curved, CurvedArea, reach, sweep, tidy
from blockdsl.geometry.arc_cover import CurvedPatch, in_sliver, prove_arcs
from blockdsl.geometry.arc_offset import offset_curved, trim_curved
from blockdsl.geometry.arc_recognise import curved_key, recognise_curved
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import dot, step
from blockdsl.geometry.recognise import congruence_key
from blockdsl.geometry.symmetry import ALL_EIGHT, QUARTER_CLOCKWISE
from blockdsl.model import ShapeUse
from blockdsl.shapes import SHAPES
from blockdsl.shapes.curve import quarter_circle, surround

F = Fraction
QUARTER = F(1, 4)


def fan(*blades: str, handle: Fraction | None = None) -> list[CurvedPatch]:
    """The patches of a fan with a radius of 6 in a square of 8."""
    side = F(8)
    filling = ShapeUse("fan", ("ground", *blades, *(("held",) if handle else ())), (F(3, 4), handle or F(0)))
    shape = SHAPES["fan"]
    assert shape.bend is not None
    pairs = zip(shape.bend(filling, side, side), shape.draw(filling, side, side), strict=True)
    return [CurvedPatch(true, twin) for true, (_, twin) in pairs if true is not None]


def test_a_quarter_circle_has_a_quarter_of_the_area_of_its_circle() -> None:
    """πr²/4 with r = 3."""
    assert quarter_circle(F(3), F(4)).area == CurvedArea(F(0), F(9, 4))


def test_the_surround_has_what_the_quarter_circle_leaves_of_the_square() -> None:
    """16 - 9π/4."""
    assert surround(F(3), F(4), F(4)).area == CurvedArea(F(16), F(-9, 4))
    assert str(surround(F(3), F(4), F(4)).area) == "16-9/4pi"


def test_a_blade_of_a_fan_of_three_has_a_third_of_the_ring_between_its_curves() -> None:
    """π(6² - 2²)/4 / 3 = 8π/3."""
    blades = fan("a", "b", "c", handle=QUARTER)[1:4]
    assert [patch.true.area for patch in blades] == [CurvedArea(F(0), F(8, 3))] * 3


def test_an_area_is_written_as_facts_have_it() -> None:
    assert str(CurvedArea(F(0), F(1))) == "pi"
    assert str(CurvedArea(F(2), F(-1))) == "2-pi"
    assert str(CurvedArea(F(144), F(0))) == "144"
    assert str(CurvedArea(F(1), square_root(F(2)))) == "1+(r2)pi"


@pytest.mark.parametrize(("count", "twelfths"), [(2, 3), (3, 2), (6, 1)])
def test_the_corners_of_blades_lie_exactly_on_their_arcs(count: int, twelfths: int) -> None:
    for patch in fan(*"abcdef"[:count], handle=QUARTER)[1 : count + 1]:
        for start, end, bend in patch.true.sides():
            if bend is not None:
                assert sweep(start, end, bend) == twelfths
                for place in (start, end):
                    outward = step(bend.centre, place)
                    assert dot(outward, outward) == bend.radius * bend.radius


def test_an_arc_that_is_no_multiple_of_fifteen_degrees_is_refused() -> None:
    bend = Bend(Point(F(0), F(0)), F(5), hollow=False)
    with pytest.raises(ValueError, match="fifteen degrees"):
        sweep(Point(F(3), F(4)), Point(F(4), F(3)), bend)


def test_the_arcs_of_a_fan_are_shared_by_its_patches() -> None:
    for blades in ("ab", "abc", "abcdef"):
        assert prove_arcs(fan(*blades, handle=QUARTER)) == ()


def test_a_blade_that_is_left_out_is_found_by_its_arc() -> None:
    patches = fan("a", "b", "c")
    assert prove_arcs(patches[:2] + patches[3:])


def test_an_arc_about_another_centre_is_found() -> None:
    """The same chord, with an arc that bends the other way, about (3, 1)."""
    ground, pie = surround(F(3), F(4), F(4)), quarter_circle(F(3), F(4))
    other = Curved(pie.corners, (Bend(Point(F(3), F(1)), F(3), hollow=True), None, None))
    both = [CurvedPatch(ground, ground.corners), CurvedPatch(pie, pie.corners)]
    assert prove_arcs(both) == ()
    assert prove_arcs([both[0], CurvedPatch(other, pie.corners)])


def test_a_place_between_chord_and_arc_is_in_the_sliver() -> None:
    """The chord from (0, 1) to (3, 4) runs through (1.5, 2.5), the arc through (2.12, 1.88)."""
    side = next(quarter_circle(F(3), F(4)).sides())
    assert in_sliver(Point(F(9, 5), F(11, 5)), side)
    assert not in_sliver(Point(F(1), F(3)), side)
    assert not in_sliver(Point(F(3), F(1)), side)
    assert not in_sliver(Point(F(0), F(1)), side)


def test_an_arc_keeps_its_centre_and_grows_by_the_allowance() -> None:
    """The moved straight edge lies 1/4 beyond the centre: √(3.25² - 0.25²) = √(21/2) from its foot."""
    cut = offset_curved(quarter_circle(F(3), F(4)), QUARTER)
    assert cut.bends[0] == Bend(Point(F(0), F(4)), F(13, 4), hollow=False)
    root = square_root(F(21, 2))
    assert cut.corners == (Point(-QUARTER, 4 - root), Point(root, F(17, 4)), Point(-QUARTER, F(17, 4)))


def test_a_hollow_arc_shrinks_by_the_allowance() -> None:
    """√(2.75² - 0.25²) = √(15/2)."""
    cut = offset_curved(surround(F(3), F(4), F(4)), QUARTER)
    assert cut.bends[3] == Bend(Point(F(0), F(4)), F(11, 4), hollow=True)
    root = square_root(F(15, 2))
    assert cut.corners[:3] == (
        Point(-QUARTER, -QUARTER), Point(F(17, 4), -QUARTER), Point(F(17, 4), F(17, 4)),
    )  # fmt: skip
    assert cut.corners[3:] == (Point(root, F(17, 4)), Point(-QUARTER, 4 - root))


def test_an_allowance_that_closes_a_hollow_arc_is_refused() -> None:
    offset_curved(surround(F(51, 100), F(4), F(4)), QUARTER)
    with pytest.raises(ValueError, match="closes"):
        offset_curved(surround(F(1, 2), F(4), F(4)), QUARTER)


def test_the_long_point_of_a_blade_is_trimmed_one_allowance_beyond_its_corner() -> None:
    blade = fan("a", "b", "c")[1].true
    cut = offset_curved(blade, QUARTER)
    trimmed = trim_curved(cut, blade, QUARTER)
    assert len(trimmed.corners) == len(cut.corners) + 2
    centre = blade.corners[0]
    away = [to_float(dot(step(centre, place), step(centre, place))) ** 0.5 for place in trimmed.corners[:3]]
    assert all(0.25 <= each <= 0.36 for each in away)


def test_the_cloth_of_a_quarter_circle_reaches_to_the_top_of_its_arc() -> None:
    """The corners of the cut outline lie lower than the arc's own top, 3 1/4 above the centre."""
    cut = offset_curved(quarter_circle(F(3), F(4)), QUARTER)
    assert reach(cut, Point(F(0), F(1))) == (F(3, 4), F(17, 4))
    assert reach(cut, Point(F(1), F(0))) == (-QUARTER, F(13, 4))


def test_four_quarter_turns_bring_a_curve_back() -> None:
    for patch in fan("a", "b", "c", handle=QUARTER):
        turned = patch.true
        for _ in range(4):
            turned = turned.turned(QUARTER_CLOCKWISE, F(8), F(8))
        assert turned == patch.true


def test_a_turned_curve_runs_clockwise_and_keeps_its_area() -> None:
    for patch in fan("a", "b", "c", handle=QUARTER):
        for symmetry in ALL_EIGHT:
            assert patch.true.turned(symmetry, F(8), F(8)).area == patch.true.area


def test_blades_are_one_piece_however_they_lie() -> None:
    blades = fan(*"abcdef", handle=QUARTER)[1:7]
    assert len({curved_key(blade.true) for blade in blades}) == 1
    assert {curved_key(blade.true, mirrored=True) for blade in blades} == {curved_key(blades[0].true)}


def test_a_quarter_circle_is_never_taken_for_a_triangle() -> None:
    pie = quarter_circle(F(3), F(4))
    assert curved_key(pie) != congruence_key(pie.corners)
    assert curved_key(pie) != curved_key(quarter_circle(F(2), F(4)))


def test_curved_patches_have_the_names_of_the_trade() -> None:
    ground, blade, _, _, held = (patch.true for patch in fan("a", "b", "c", handle=QUARTER))
    assert recognise_curved(held).kind == "quarter circle"
    assert recognise_curved(held).finished == (F(2), F(2))
    assert recognise_curved(ground).kind == "quarter-circle surround"
    assert recognise_curved(ground).finished == (F(8), F(8))
    assert recognise_curved(blade).kind == "fan blade"
    assert recognise_curved(blade).finished[0] == 4


def test_the_grain_runs_down_the_middle_of_a_blade() -> None:
    """The first of three blades leans 15 degrees to the right of upright."""
    across, down = (to_float(part) for part in recognise_curved(fan("a", "b", "c")[1].true).grain)
    assert atan2(-across, down) == pytest.approx(pi / 12)


def test_a_length_without_a_short_exact_form_is_rounded_up_to_a_thousandth() -> None:
    assert tidy(square_root(F(2))) == square_root(F(2))
    assert tidy(F(1, 3)) == F(1, 3)
    assert tidy(F(10**40 + 1, 10**40)) == F(1001, 1000)
