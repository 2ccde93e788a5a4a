"""Cloth and templates of curved patches and of appliqué."""

from __future__ import annotations

import pytest

from blockdsl.facts import BlockFacts
from blockdsl.facts.blockfacts import CutFacts, TemplateFacts
from blockdsl.geometry.fraction import Fraction, read_fraction
from tests.unit.model.blocks import CLOTH, block_of
from tests.unit.wording.said import texts

F = Fraction
LEAF = "M0.15 0.85 Q0.15 0.15 0.85 0.15 Q0.85 0.85 0.15 0.85 Z"


def facts_of(*lines: str, above: str = "") -> BlockFacts:
    return block_of(f'{CLOTH}\n{above}\nblock "Curves"\n' + "".join(f"  {line}\n" for line in lines))


def cut_for(facts: BlockFacts, fabric: str) -> CutFacts:
    return next(cut for cut in facts.cutting if cut.fabric == fabric)


def template(facts: BlockFacts, label: str) -> TemplateFacts:
    return next(each for each in facts.templates if each.label == label)


@pytest.mark.parametrize(("size", "radius", "ground", "pie"), [(4, "3/4", "9/2", "7/2"), (3, "2/3", "7/2", "5/2")])
def test_the_squares_for_a_drunkards_path_unit_differ_by_what_lies_beyond_the_circle(
    size: int, radius: str, ground: str, pie: str
) -> None:
    """Class handouts: the background square is 1 in larger, 4 1/2 and 3 1/2 in for 4 in with a radius of 3 in."""
    facts = facts_of(f"size {size} in", f"row (curve slate in fog radius {radius})")
    assert cut_for(facts, "fog").cut == (F(ground), F(ground))
    assert cut_for(facts, "slate").cut == (F(pie), F(pie))
    assert {cut.piece for cut in facts.cutting} == {"template"}


def test_an_arc_is_cut_about_the_same_centre_with_its_allowance() -> None:
    facts = facts_of("size 4 in", "row (curve slate in fog radius 3/4)")
    for label, cut_radius in (("A", F(11, 4)), ("B", F(13, 4))):
        curved = template(facts, label).curved
        assert curved is not None
        sewn, cut = (next(bend for bend in outline.bends if bend is not None) for outline in curved)
        assert (sewn.radius, cut.radius) == (F(3), cut_radius)
        assert sewn.centre == cut.centre


def test_a_cutter_of_the_makers_is_not_said_to_cut_a_curve() -> None:
    facts = facts_of("size 4 in", "row (curve slate in fog)", above='cutter "Mine" half 8/3 in')
    assert all(not cut.cutters for cut in facts.cutting)


def test_a_piece_of_applique_is_cut_with_a_quarter_inch_round_it() -> None:
    """A square of 3 in: 3 1/2 in of cloth; with 1/8 in 3 1/4, raw 3 in."""
    for behind, side in (("", "7/2"), (" turn-under 1/8 in", "13/4"), (" raw edge", "3")):
        facts = facts_of("size 6 in", "row fog", f'applique slate "M0.25 0.25 H0.75 V0.75 H0.25 Z"{behind}')
        assert cut_for(facts, "slate").cut == (read_fraction(side), read_fraction(side))


def test_a_turn_under_in_millimetres_holds_in_a_block_of_inches() -> None:
    facts = facts_of("size 6 in", "row fog", 'applique slate "M0.25 0.25 H0.75 V0.75 H0.25 Z" turn-under 6.35 mm')
    assert facts.appliques[0].turn_under == F(1, 4)
    # And the other way round: 1/4 in is 0.635 cm.
    facts = facts_of("size 15 cm", "row fog", 'applique slate "M0.25 0.25 H0.75 V0.75 H0.25 Z" turn-under 1/4 in')
    assert facts.appliques[0].turn_under == F(635, 1000)


def test_pieces_that_are_turned_share_a_letter_and_mirrored_ones_are_its_partner() -> None:
    unit = f'unit leaf\n  row fog\n  applique slate "{LEAF}"\n'
    skewed = 'unit flag\n  row fog\n  applique slate "M0.2 0.2 H0.8 L0.2 0.5 Z"\n'
    facts = facts_of("size 12 in", "row leaf leaf>", "row leaf< leaf>>", above=unit)
    assert [piece.label for piece in facts.appliques] == ["B"] * 4
    assert cut_for(facts, "slate").count == 4
    facts = facts_of("size 12 x 6 in", "row flag flag~", above=skewed)
    assert [piece.label for piece in facts.appliques] == ["B", "Br"]
    assert template(facts, "Br").mirror_of == "B"


def test_a_piece_lies_where_its_turned_unit_brings_it() -> None:
    """In the left half of the unit, turned a quarter clockwise in the upper half."""
    unit = 'unit half-leaf\n  row fog\n  applique slate "M0 0 H0.5 V1 H0 Z" raw edge\n'
    facts = facts_of("size 4 in", "row half-leaf>", above=unit)
    (piece,) = facts.appliques
    corners = {(F(0), F(0)), (F(4), F(0)), (F(4), F(2)), (F(0), F(2))}
    assert {(x, y) for x, y in piece.outline} == corners


def test_applique_changes_neither_the_proof_of_cover_nor_the_steps_of_the_ground() -> None:
    plain = facts_of("size 6 in", "row fog slate", "row slate fog")
    covered = facts_of("size 6 in", "row fog slate", "row slate fog", 'applique lantern "M0.5 0.5 h1 v1 h-1 z"')
    assert covered.cover == plain.cover
    *ground, laid_on = covered.steps
    assert texts(covered)[: len(ground)] == texts(plain)
    assert laid_on.method == "applique"
    assert "lantern" in {fabric.name for fabric in covered.fabrics}
