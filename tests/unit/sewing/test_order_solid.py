"""Units that a method of their own makes are never opened up by the piecing order."""

from __future__ import annotations

from tests.unit.model.blocks import block

ROUND_A_SQUARE = (
    "row (bars fog slate) -                     (bars fog slate)>",
    "row (bars fog slate)<  moss                |",
    "row |                  (bars fog slate)>>  -",
)


def test_bars_cut_by_themselves_are_opened_up_for_straight_seams_alone() -> None:
    seams = block(*ROUND_A_SQUARE, size="9 in").seams
    assert seams is not None
    assert (seams.partial, seams.set_in) == (0, 0)


def test_bars_that_come_from_a_strip_set_stay_whole_and_cost_one_partial_seam() -> None:
    facts = block(*ROUND_A_SQUARE, "make bars as strip set", size="9 in")
    assert facts.seams is not None
    assert (facts.seams.partial, facts.seams.set_in) == (1, 0)
    made = [step for step in facts.steps if step.method == "strip set"]
    assert [step.count for step in made] == [4]


def test_a_like_place_that_is_not_made_by_the_method_does_not_open_up_one_that_is() -> None:
    below = ("row fog slate fog", "row slate moss slate", "row fog slate fog")
    facts = block(*ROUND_A_SQUARE, *below, "make bars as strip set", size="9 x 18 in")
    assert [step.count for step in facts.steps if step.method == "strip set"] == [4]
    taken = [join for step in facts.steps for join in step.joins if join.name.startswith("bar unit")]
    assert sum(join.count for join in taken) == 4
