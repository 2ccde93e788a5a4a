"""Whatever a designer writes, the patches of the block cover it once, and the numbers agree with one another."""

from hypothesis import given, settings

from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import area
from tests.unit.model.any_block import FABRICS, AnyBlock, any_blocks
from tests.unit.model.blocks import block_of


@given(any_blocks())
@settings(max_examples=10)
def test_the_patches_of_any_block_cover_it_once(any_block: AnyBlock) -> None:
    facts = block_of(any_block.text())
    whole = facts.finished[0] * facts.finished[1]
    assert facts.cover.area == whole
    assert sum((area(patch.outline) for patch in facts.placed), Fraction(0)) == whole
    assert sum((part for _, part in facts.area_by_fabric), Fraction(0)) == whole


@given(any_blocks())
@settings(max_examples=10)
def test_all_patches_are_counted(any_block: AnyBlock) -> None:
    facts = block_of(any_block.text())
    assert sum(patch.count for patch in facts.patches) == len(facts.placed)
    assert sum(count for template in facts.templates for count in template.uses.values()) == len(facts.placed)
    assert {template.label for template in facts.templates} == {patch.label for patch in facts.placed}


@given(any_blocks())
@settings(max_examples=12)
def test_letters_do_not_ask_for_the_fabrics(any_block: AnyBlock) -> None:
    letters = [patch.label for patch in block_of(any_block.text()).placed]
    for fabrics in (FABRICS[::-1], ("fog", "fog", "slate", "slate"), ("moss",) * 4):
        assert [patch.label for patch in block_of(any_block.text(fabrics)).placed] == letters


@given(any_blocks())
@settings(max_examples=12)
def test_every_unit_fits_its_picture(any_block: AnyBlock) -> None:
    for unit in block_of(any_block.text()).units:
        assert sum((area(patch.outline) for patch in unit.picture), Fraction(0)) == unit.finished[0] * unit.finished[1]
