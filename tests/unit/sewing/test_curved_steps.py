"""Curved seams in the steps: which piece lies on top, what is matched, which way it is pressed."""

from __future__ import annotations

import pytest

from blockdsl.facts import BlockFacts
from blockdsl.facts.stepfacts import StepFacts
from blockdsl.geometry import Point
from blockdsl.geometry.arc import Bend
from blockdsl.geometry.fraction import Fraction
from tests.unit.model.blocks import CLOTH, block_of
from tests.unit.wording.said import texts

F = Fraction


def facts_of(row: str, size: str = "4 in", more: str = "") -> BlockFacts:
    """A block of one row."""
    return block_of(f'{CLOTH}\nblock "Curves"\n  size {size}\n  row {row}\n{more}')


def only_step(facts: BlockFacts) -> StepFacts:
    (step,) = facts.steps
    return step


def test_the_surround_is_sewn_on_top_and_the_seam_pressed_toward_it() -> None:
    facts = facts_of("(curve slate in fog)")
    assert only_step(facts).seam == "curved"
    # Worked out in the design for a cove: the same sentences with the letters of this block.
    assert texts(facts)[0] == (
        "Take 1 A (Harbour fog) and 1 B (Wet slate). Crease the middle of each curved edge. Place A on B, right sides "
        "together, curved edges even, middles matched; pin. Bring the straight ends even and pin both, then the marks "
        "between. Sew the curved edge with A on top, easing it to lie flat under the needle. Press the seam toward A. "
        "☐ 4 1/2 × 4 1/2 in"
    )


@pytest.mark.parametrize("turn", ["", ">", "<", ">>", "~"])
def test_the_hollow_piece_is_known_however_the_unit_is_turned(turn: str) -> None:
    facts = facts_of(f"(curve slate in fog){turn}")
    ground = next(part for part in only_step(facts).hands[0].ingredients if part.fabric == "fog")
    assert f"Sew the curved edge with {ground.name} on top" in texts(facts)[0]


def test_the_seam_of_a_quarter_circle_runs_from_end_to_end_along_its_arc() -> None:
    (stage,) = only_step(facts_of("(curve slate in fog radius 3/4)")).hands[0].stages
    (seam,) = stage.seams
    assert {seam.line[0], seam.line[-1]} == {Point(F(0), F(1)), Point(F(3), F(4))}
    assert seam.bend == Bend(Point(F(0), F(4)), F(3), hollow=True)


def test_the_blades_of_a_fan_are_joined_before_the_one_curved_seam_to_the_ground() -> None:
    facts = facts_of("(fan slate lantern slate on fog)", "8 in")
    assert facts.seams is not None
    assert (facts.seams.straight, facts.seams.curved) == (2, 1)
    *_, last = only_step(facts).hands[0].stages
    assert [seam.kind for seam in last.seams] == ["curved"]


def test_seams_between_blades_are_drawn_to_the_curve_itself() -> None:
    """The first of three blades ends at (6 sin 30, 8 - 6 cos 30)."""
    step = only_step(facts_of("(fan slate lantern slate on fog)", "8 in"))
    ends = {place for stage in step.hands[0].stages for seam in stage.seams for place in (seam.line[0], seam.line[-1])}
    assert any(place.x == 3 and (8 - place.y) * (8 - place.y) == 27 for place in ends)


def test_a_quarter_circle_and_a_triangle_are_never_made_in_one_step() -> None:
    facts = facts_of("(curve slate in fog radius 1/2)  (snowball fog with slate at bl cut 1/2)", "8 x 4 in")
    assert len({patch.label for patch in facts.placed}) == 4
    assert [step.count for step in facts.steps] == [1, 1, 1]


def test_handle_and_ground_each_have_a_curved_seam_told_on_its_own() -> None:
    (text,) = texts(facts_of("(fan slate lantern slate on fog handle lantern)", "8 in"))
    assert text.count("right sides together, curved edges even, middles matched; pin.") == 1
    assert "along the curve in the same way, with the joined pieces on top" in text
