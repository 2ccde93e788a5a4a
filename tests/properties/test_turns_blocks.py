"""Turning a block turns everything in it and changes nothing that is cut or sewn."""

from collections import Counter

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from blockdsl.facts import BlockFacts
from blockdsl.geometry import Polygon
from tests.unit.model.any_block import AnyBlock, any_blocks
from tests.unit.model.blocks import block_of


def lies(facts: BlockFacts) -> Counter[tuple[str, Polygon]]:
    """Where each fabric lies, from whichever corner an outline is told."""
    return Counter((patch.fabric, _from_least(patch.outline)) for patch in facts.placed)


def _from_least(outline: Polygon) -> Polygon:
    start = outline.index(min(outline))
    return outline[start:] + outline[:start]


def cloth(facts: BlockFacts) -> Counter[object]:
    """What is cut, without the letters, which go by reading order."""
    return Counter(
        (cut.fabric, cut.piece, cut.cut, cut.count, cut.subcut, cut.yields, cut.spare, cut.method)
        for cut in facts.cutting
    )


@pytest.mark.parametrize("turns", [">>>>", "<<<<", "~~", "><", "~>~>", ">~>~"])
@given(any_block=any_blocks())
@settings(max_examples=6)
def test_turns_that_undo_each_other_are_nothing(turns: str, any_block: AnyBlock) -> None:
    assert block_of(any_block.text(turns=turns)).placed == block_of(any_block.text()).placed


@pytest.mark.parametrize(("turns", "same"), [(">>", "<<"), (">>>", "<"), ("~>", "<~"), ("~>>", ">>~")])
@given(any_block=any_blocks())
@settings(max_examples=6)
def test_one_turn_may_be_written_two_ways(turns: str, same: str, any_block: AnyBlock) -> None:
    assert lies(block_of(any_block.text(turns=turns))) == lies(block_of(any_block.text(turns=same)))


@given(any_blocks(), st.sampled_from([">", "<", ">>"]))
@settings(max_examples=9)
def test_a_turned_block_takes_the_same_patches_and_the_same_cloth(any_block: AnyBlock, turns: str) -> None:
    plain, turned = block_of(any_block.text()), block_of(any_block.text(turns=turns))
    assert Counter((p.shape, p.finished, p.fabric, p.count) for p in turned.patches) == Counter(
        (p.shape, p.finished, p.fabric, p.count) for p in plain.patches
    )
    assert cloth(turned) == cloth(plain)
    assert turned.area_by_fabric == plain.area_by_fabric


@given(any_blocks())
@settings(max_examples=9)
def test_a_mirrored_block_takes_the_same_cloth(any_block: AnyBlock) -> None:
    plain, mirrored = block_of(any_block.text()), block_of(any_block.text(turns="~"))
    assert cloth(mirrored) == cloth(plain)


@given(any_blocks(), st.sampled_from(["", ">", "~", "~>"]))
@settings(max_examples=10)
def test_the_units_of_a_turned_block_are_as_many(any_block: AnyBlock, turns: str) -> None:
    def units(facts: BlockFacts) -> Counter[object]:
        return Counter((unit.name, unit.finished, unit.count, unit.method, unit.spare) for unit in facts.units)

    assert units(block_of(any_block.text(turns=turns))) == units(block_of(any_block.text()))
