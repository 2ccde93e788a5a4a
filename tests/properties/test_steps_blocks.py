"""The steps of any block: every patch is sewn once, and everything that is made is used."""

from collections import Counter

from hypothesis import given, settings

from blockdsl.facts import BlockFacts
from tests.unit.model.any_block import AnyBlock, any_blocks
from tests.unit.model.blocks import block_of


def sewn_by_hand(facts: BlockFacts) -> int:
    """Patches that steps take singly."""
    return sum(
        hand.count * sum(part.fabric is not None for part in hand.ingredients)
        for step in facts.steps
        for hand in step.hands
    )


@given(any_blocks())
@settings(max_examples=12, deadline=None)
def test_every_patch_is_taken_by_one_step_or_comes_out_of_a_method(any_block: AnyBlock) -> None:
    facts = block_of(any_block.text())
    by_method = sum(hand.count * len(hand.patches) for step in facts.steps for hand in step.hands if not hand.stages)
    if facts.steps:
        assert sewn_by_hand(facts) + by_method == len(facts.placed)


@given(any_blocks())
@settings(max_examples=12, deadline=None)
def test_as_many_as_are_made_are_taken_by_later_steps(any_block: AnyBlock) -> None:
    facts = block_of(any_block.text())
    taken: Counter[int] = Counter()
    for step in facts.steps:
        for join in step.joins:
            if join.step:
                assert join.step < step.number
                taken[join.step] += join.count
    assert [step.count for step in facts.steps[:-1]] == [taken[step.number] for step in facts.steps[:-1]]


@given(any_blocks())
@settings(max_examples=10, deadline=None)
def test_the_seams_of_the_steps_are_those_of_the_order(any_block: AnyBlock) -> None:
    facts = block_of(any_block.text())
    if all(unit.method == "cut patches" for unit in facts.units) and facts.steps:
        assert facts.seams is not None
        made = sum(
            hand.count * len(stage.seams) for step in facts.steps for hand in step.hands for stage in hand.stages
        )
        straight_ways = facts.seams.straight + facts.seams.partial
        assert made == straight_ways or facts.seams.set_in
