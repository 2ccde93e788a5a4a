"""Fabrics of different widths sewn together, pieces wider than their fabric, names that share a picture."""

from __future__ import annotations

from blockdsl.geometry.fraction import Fraction
from tests.unit.model.blocks import block, errors, one_error, read, warnings, written


def test_strips_of_one_set_are_cut_as_long_as_the_narrowest_fabric_allows() -> None:
    thin = 'fabric thin "Thin" #f0f0f0 light width 22 in'
    lines = ["row " + "(rails thin slate) " * 4, "make rails as strip set"]
    facts = block(*lines, size="24 x 6 in", above=thin)
    lengths = {
        fabric: sorted(cut.cut[1] for cut in facts.cutting if cut.fabric == fabric) for fabric in ("thin", "slate")
    }
    # Segments of 6 1/2 in; 20 in of the narrow fabric can be used: two segments, 13 + 1 in, in each of two sets.
    assert lengths == {"thin": [Fraction(14)], "slate": [Fraction(14)]}


def test_a_piece_wider_than_its_fabric_is_warned_of_once() -> None:
    found = warnings("row fog fog", "row fog fog", size="90 in")
    assert [problem.code for problem in found] == ["piece-wider-than-fabric"]


def test_a_unit_is_found_by_each_of_its_names_in_the_designers_checks() -> None:
    above = "unit one = half fog slate\nunit two = half fog slate"
    assert errors("row one two", "row two one", "expect unit two 6 in count 4", above=above) == []


def test_a_seam_of_fourteen_inches_is_refused() -> None:
    assert one_error("row fog slate", "seam 14 in", size="12 x 6 in").code == "setting-too-large"


def test_a_cloth_measured_on_the_other_ruler_gives_strips_of_whole_measures() -> None:
    # 20 in less 2 in of selvages are 45.72 cm; the ruler reads to 1 mm, so whole strips are 45.7 cm long.
    thin = 'fabric thin "Thin" #f0f0f0 light width 20 in'
    quilt = 'quilt "Wide"\n  set straight 3 x 2 of "Mine"\n  border 2 cm thin butted\n'
    facts, problems = read(written("row fog slate", "row slate fog", size="30 cm", above=thin) + quilt)
    assert not [problem for problem in problems if problem.severity == "error"]
    (cloth,) = (each for each in facts.quilts[0].fabrics if each.fabric == "thin")
    assert cloth.usable_width == Fraction(457, 10)
    assert cloth.plan is not None
