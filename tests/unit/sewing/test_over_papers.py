"""English paper piecing: which patches get papers, and what the steps say of needle, tacking and papers."""

from collections.abc import Sequence

import pytest

from blockdsl.facts import BlockFacts
from tests.unit.model.blocks import block
from tests.unit.wording.said import texts

HONEYCOMB = ("row (hexagons lantern slate across 8)", "make hexagons as over papers")
STAR = ("row (star45 points slate lantern ground fog)", "make star45 as over papers")
BESIDE = ("row (diamond slate on fog) fog/slate", "make diamond as over papers")

HALF = {"fog", "lantern"}


def counts(facts: BlockFacts) -> dict[str, int]:
    return {paper.label: paper.count for paper in facts.papers}


def test_a_star_needs_a_paper_for_each_diamond_and_each_piece_of_its_ground() -> None:
    """By hand: eight points, four sides, four corners."""
    assert sorted(counts(block(*STAR, size="10 in")).values()) == [4, 4, 8]


@pytest.mark.parametrize("lines", [HONEYCOMB, STAR])
def test_a_block_that_is_all_over_papers_has_a_paper_for_each_patch(lines: Sequence[str]) -> None:
    facts = block(*lines, size="8 in")
    assert sum(counts(facts).values()) == len(facts.placed)
    assert {step.method for step in facts.steps} == {"over papers"}


def test_patches_beside_the_unit_have_no_papers_and_are_sewn_by_machine() -> None:
    facts = block(*BESIDE, size="12 x 6 in")
    assert sum(counts(facts).values()) == 5
    assert [(step.makes, step.method) for step in facts.steps] == [
        ("half-square triangle", "cut patches"),
        ("square in a square", "over papers"),
        ("block", "cut patches"),
    ]


def test_papers_have_the_finished_size_of_their_patch() -> None:
    """By hand: a square in a square of 6 in; its corners have legs of 3 in, its middle sides of 3 times root 2."""
    facts = block(*BESIDE, size="12 x 6 in")
    sizes = {paper.shape: [str(side) for side in paper.finished] for paper in facts.papers}
    assert sizes == {"half-square triangle": ["3", "3"], "square": ["3r2", "3r2"]}


def test_the_cloth_is_that_of_patches_cut_by_themselves() -> None:
    folded, cut = block(*STAR, size="10 in"), block(STAR[0], size="10 in")
    assert folded.cutting == cut.cutting


def test_hands_stop_at_no_dot_and_press_to_no_side() -> None:
    facts = block(*STAR, size="10 in")
    seams = [seam for step in facts.steps for hand in step.hands for stage in hand.stages for seam in stage.seams]
    assert any(len(seam.line) > 2 for seam in seams)
    assert all(seam.toward is None and not seam.dots and not seam.meetings for seam in seams)
    told = " ".join(texts(facts))
    for never in ("mark a dot", "Press the seam", "Stop at", "dog-ears", "extends"):
        assert never not in told


def test_folding_is_told_in_full_once_and_papers_come_out_at_the_end() -> None:
    told = texts(block(*STAR, size="10 in"))
    assert ["Fold the edges of each piece over its paper" in text for text in told] == [True, False, False]
    assert ["Leave the papers in" in text for text in told] == [True, True, False]
    assert "Take out the basting and the papers" in told[-1]
    assert told[-1].endswith("☐ 10 1/2 × 10 1/2 in, with 1/4 in beyond each point")


def test_what_lies_inside_is_sewn_over_papers_too() -> None:
    unit = "unit corner\n  row fog fog/lantern\n  row fog/lantern slate"
    chosen = ("row corner fog/lantern", "make corner as over papers", "make half as two at a time")
    facts = block(*chosen, size="12 x 6 in", above=unit)
    assert sum(counts(facts).values()) == 6
    assert sorted((made.method, made.count) for made in facts.units) == [("over papers", 1), ("two at a time", 1)]


def test_the_same_patches_sewn_by_hand_and_by_machine_are_two_steps() -> None:
    above = "unit corner\n  row fog fog/lantern\n  row fog/lantern slate\nunit plain\n  row fog/lantern fog/lantern\n"
    facts = block("row corner plain", "make corner as over papers", size="12 x 6 in", above=f"{above}  row slate -")
    halves = [step.method for step in facts.steps if {part.fabric for part in step.hands[0].ingredients} == HALF]
    assert sorted(halves) == ["cut patches", "over papers"]
    assert [step.count for step in facts.steps if step.method == "over papers"] == [2, 1]


def test_papers_are_compared_with_other_ways_only_where_they_are_chosen() -> None:
    plain, chosen = block("row fog/slate"), block("row fog/slate", "make half as over papers")
    assert "over papers" not in {way.method for way in plain.alternatives[0]}
    (way,) = (way for way in chosen.alternatives[0] if way.chosen)
    assert way.method == "over papers"
