"""The steps of a block: what they take and make, how few they are, what they say.

What the steps should be was worked out by hand; ways of pressing are common practice, no source.
"""

import pytest

from blockdsl.facts import BlockFacts
from blockdsl.facts.stepfacts import GridPlace, StepFacts
from tests.unit.model.blocks import block, block_of, written
from tests.unit.wording.said import texts, titles


def told(facts: BlockFacts) -> list[str]:
    """The steps in words: `1 corner x4: 2 A fog, 1 half-square triangle of step 1`."""
    return [f"{step.number} {step.makes} x{step.count}: {', '.join(_takes(step))}" for step in facts.steps]


def _takes(step: StepFacts) -> list[str]:
    return [f"{join.count} {join.name} {f'of step {join.step}' if join.step else join.fabric}" for join in step.joins]


def step_of(facts: BlockFacts, makes: str) -> StepFacts:
    (found,) = [step for step in facts.steps if step.makes == makes]
    return found


def arrows(step: StepFacts) -> list[tuple[int, int]]:
    """Which way the seams of the first hand are pressed, as (-1, 0 or 1, -1, 0 or 1), in the order of sewing."""
    ways = [seam.arrow for stage in step.hands[0].stages for seam in stage.seams]
    return [((way.x > 0) - (way.x < 0), (way.y > 0) - (way.y < 0)) for way in ways]


def unnested(facts: BlockFacts) -> int:
    return sum(seam.unnested for step in facts.steps for hand in step.hands for s in hand.stages for seam in s.seams)


# --- what is made -----------------------------------------------------------------------------------


def test_a_nine_patch_is_its_rows_each_kind_once_and_then_the_rows_joined() -> None:
    nine = block("row slate fog slate", "row fog slate fog", "row slate fog slate")
    assert told(nine) == [
        "1 rows 1 and 3 x2: 4 A slate, 2 A fog",
        "2 row 2 x1: 2 A fog, 1 A slate",
        "3 block x1: 1 row 1 of step 1, 1 row 2 of step 2, 1 row 3 of step 1",
    ]


def test_units_that_are_alike_up_to_a_turn_are_made_in_one_step() -> None:
    pinwheel = block("row fog\\slate fog/slate", "row slate/fog slate\\fog")
    assert told(pinwheel) == [
        "1 half-square triangle x4: 4 A slate, 4 A fog",
        "2 rows 1 and 2 x2: 4 half-square triangle of step 1",
        "3 block x1: 1 row 1 of step 2, 1 row 2 of step 2",
    ]


def test_mirror_images_are_two_steps_each_with_its_own_takes() -> None:
    above = "unit leaf\n  row fog slate\n  row moss moss"
    steps = block("row leaf leaf~", above=above, size="8 x 4 in").steps
    made = [(step.makes, step.count) for step in steps]
    assert made[-3:] == [("leaf", 1), ("reversed leaf", 1), ("block", 1)]
    assert [[join.count for join in step.joins] for step in steps[-3:]] == [[1, 1]] * 3


def test_what_nobody_has_named_is_called_by_what_it_is_joined_from() -> None:
    steps = block("row (hexagons lantern fog moss across 4)", size="12 in").steps
    assert [step.makes for step in steps] == ["strip", "second strip", "third strip", "reversed strip", "block"]


def test_a_unit_made_by_a_method_is_one_step_and_its_patches_are_not_sewn_again() -> None:
    star = block(
        "row fog (geese fog on slate)>> fog",
        "row (geese fog on slate)> moss (geese fog on slate)<",
        "row fog (geese fog on slate) fog",
        "columns 1 2 1",
        "heights 1 2 1",
        "make geese as four at a time",
    )
    assert told(star)[0] == "1 flying geese x4: 1 C fog, 4 B slate"
    assert [step.makes for step in star.steps] == ["flying geese", "rows 1 and 3", "row 2", "block"]


def test_eight_half_squares_two_at_a_time_are_four_pairs_of_squares() -> None:
    rows = ["row fog/slate fog/slate fog/slate fog/slate", "row slate/fog slate/fog slate/fog slate/fog"]
    step = block(*rows, "make half as two at a time", size="12 x 6 in").steps[0]
    assert step.made_by is not None
    assert (step.count, step.made_by.batches, step.made_by.gives) == (8, 4, 2)


def test_two_at_a_time_for_three_leaves_one_over() -> None:
    step = block("row fog/slate fog/slate fog/slate", "make half as two at a time", size="9 x 3 in").steps[0]
    assert step.made_by is not None
    assert (step.count, step.spare, step.made_by.batches) == (3, 1, 2)


def test_small_parts_that_go_into_one_unit_alone_are_sewn_on_the_way() -> None:
    above = "unit corner\n  row fog slate\n  row moss lantern"
    four = block("row corner corner>", "row corner< corner>>", above=above)
    assert [step.makes for step in four.steps] == ["corner", "rows 1 and 2", "block"]
    assert "Sew the first row to the top edge of the second" in texts(four)[0]


def test_a_round_of_triangles_is_one_step() -> None:
    economy = block(
        "grid 4 x 4",
        "patch fog at 0,0 2,0 0,2",
        "patch fog at 2,0 4,0 4,2",
        "patch fog at 4,2 4,4 2,4",
        "patch fog at 2,4 0,4 0,2",
        "patch slate at 2,0 3,1 1,1",
        "patch slate at 3,1 4,2 3,3",
        "patch slate at 3,3 2,4 1,3",
        "patch slate at 1,3 0,2 1,1",
        "patch moss at 1,1 3,1 3,3 1,3",
    )
    assert told(economy) == ["1 middle x1: 4 B slate, 1 C moss", "2 block x1: 4 A fog, 1 middle of step 1"]


def test_a_block_of_one_patch_has_no_steps() -> None:
    assert block("row fog").steps == ()


def test_a_block_of_more_than_1000_patches_has_no_steps_and_is_not_searched() -> None:
    row = "row " + " ".join(["fog slate"] * 16)
    other = "row " + " ".join(["slate fog"] * 16)
    facts = block(*[row, other] * 16, size="32 in")
    assert facts.steps == ()
    assert facts.seams is None
    assert facts.sewing is not None
    assert not facts.sewing.is_told


# --- words and measures -------------------------------------------------------------------------------


def test_a_corner_of_four_1_1_2_in_squares_should_measure_3_1_2_in() -> None:
    above = "unit corner\n  row fog slate\n  row moss lantern"
    facts = block("row corner corner>", "row corner< corner>>", above=above, size="6 in")
    assert texts(facts)[0].endswith("☐ 3 1/2 × 3 1/2 in")
    assert titles(facts)[0] == "Corners · make 4 · 3 × 3 in finished"


def test_centimetres_and_a_seam_of_0_75_cm_are_told_as_such() -> None:
    told = texts(block("row fog slate", "row slate fog", size="20 cm"))
    assert [text.rpartition("☐ ")[2] for text in told] == ["21.5 × 11.5 cm", "21.5 × 21.5 cm"]


def test_two_triangles_are_sewn_along_their_long_edges_and_lose_their_dog_ears() -> None:
    (told,) = texts(block("row fog/slate", size="3 in"))
    assert "all edges even. Sew the long edge." in told
    assert "Trim the dog-ears." in told


def test_a_triangle_on_a_square_is_matched_in_the_middle() -> None:
    # By hand: the allowance beyond 45 degrees is 1/4 in × (1 + r2), beyond a square corner 1/4 in: 0.354 in between.
    (told,) = texts(block("row (diamond fog on slate)", size="6 in"))
    assert "Crease the middle of each edge of B and of each long edge of A." in told
    assert "creases matched. Their points extend 3/8 in at both ends." in told


def test_a_partial_seam_says_where_it_stops_and_when_it_is_closed() -> None:
    wheel = block(
        "grid 3 x 3",
        "patch fog at 0,0 2,0 2,1 0,1",
        "patch fog at 2,0 3,0 3,2 2,2",
        "patch fog at 1,2 3,2 3,3 1,3",
        "patch fog at 0,1 1,1 1,3 0,3",
        "patch slate at 1,1 2,1 2,2 1,2",
    )
    text = " ".join(texts(wheel))
    assert "on the top edge of B, right ends even. The left end of A extends beyond B." in text
    assert "from the right end; backstitch. Leave the rest open." in text
    assert "Sew from 1/2 in before the stop to the left end." in text
    assert "partial" in {step.seam for step in wheel.steps}
    assert wheel.seams is not None
    assert (wheel.seams.straight, wheel.seams.partial, wheel.seams.set_in) == (3, 1, 0)


def test_a_set_in_seam_says_to_stop_turn_and_sew_on() -> None:
    frame = block(
        "grid 4 x 4",
        "patch fog at 0,0 4,0 3,1 1,1",
        "patch slate at 4,0 4,4 3,3 3,1",
        "patch fog at 4,4 0,4 1,3 3,3",
        "patch slate at 0,4 0,0 1,1 1,3",
        "patch moss at 1,1 3,1 3,3 1,3",
    )
    (told,) = texts(frame)
    assert "On the wrong side of each A and B, mark a dot 1/4 in from both edges at each corner." in told
    assert "Set B into the V" in told
    assert "Stop at the dot at the lower right end; backstitch." in told
    assert "set-in" in {step.seam for step in frame.steps}


def test_steps_say_which_cells_of_the_grid_they_fill() -> None:
    four = block("row fog/slate fog", "row slate fog/slate")
    assert four.steps[0].cells == (GridPlace(1, 1, 1, 1), GridPlace(2, 2, 1, 1))


# --- pressing -----------------------------------------------------------------------------------------


def test_the_rows_of_a_nine_patch_are_pressed_toward_the_dark_and_so_lock() -> None:
    nine = block("row slate fog slate", "row fog slate fog", "row slate fog slate")
    # Toward the dark squares: outward in rows 1 and 3, inward in row 2.
    assert arrows(nine.steps[0]) == [(-1, 0), (1, 0)]
    assert arrows(nine.steps[1]) == [(1, 0), (-1, 0)]
    assert unnested(nine) == 0
    assert "Sew row 1 to the top edge of row 2, nesting the seams." in texts(nine)[2]


def test_copies_that_are_turned_about_lock_by_themselves() -> None:
    four = block("row fog slate", "row slate fog")
    assert [step.makes for step in four.steps] == ["rows 1 and 2", "block"]
    assert arrows(four.steps[0]) == [(1, 0)]
    assert unnested(four) == 0


def test_copies_side_by_side_that_cannot_lock_are_told() -> None:
    above = "unit pair\n  columns 1\n  row fog\n  row slate"
    facts = block("row pair pair pair", above=above, size="6 x 4 in")
    # The same unit three times, none turned: in both upright seams the allowances lie the same way.
    assert unnested(facts) == 2
    assert texts(facts)[-1].count("matching the seams") == 2


def test_geese_are_pressed_away_from_the_goose() -> None:
    facts = block("row (geese fog on slate)", size="6 x 3 in")
    (step,) = facts.steps
    assert texts(facts)[0].count("Press the seam toward A.") == 2
    # The goose points up: its skies lie at the upper left and the upper right.
    assert sorted(arrows(step)) == [(-1, -1), (1, -1)]


@pytest.mark.parametrize(("left", "right", "way"), [("fog", "slate", 1), ("slate", "fog", -1)])
def test_two_squares_are_pressed_toward_the_darker(left: str, right: str, way: int) -> None:
    assert arrows(block(f"row {left} {right}", size="6 x 3 in").steps[0]) == [(way, 0)]


def test_equal_blocks_have_equal_steps_however_they_are_written() -> None:
    lines = ["row fog/slate fog", "row slate fog/slate"]
    once, again = block_of(written(*lines)), block_of("\n\n# lower down\n" + written(*lines))
    assert once.steps == again.steps


def test_two_kinds_of_half_squares_take_each_their_own_squares() -> None:
    rows = ["row fog/slate fog/moss", "row fog/slate fog/moss"]
    facts = block(*rows, "make half as two at a time", size="6 in")
    assert told(facts)[:2] == [
        "1 half-square triangle of Harbour fog and Wet slate x2: 1 A fog, 1 A slate",
        "2 half-square triangle of Harbour fog and Moss x2: 1 A fog, 1 A moss",
    ]


def test_twenty_rows_alike_are_not_told_one_by_one() -> None:
    rows = ["row " + "fog slate " * 10, "row " + "slate fog " * 10] * 10
    facts = block(*rows, size="40 in")
    assert [step.makes for step in facts.steps] == ["rows 1 to 20", "block"]
    row, whole = texts(facts)
    assert "from left to right, right sides together: A (Harbour fog) and A (Wet slate) 10 times" in row
    assert whole.startswith("Take rows 1 to 20.")
    assert "Sew them together in order from top to bottom, nesting the seams." in whole


def test_two_patches_alike_are_named_without_an_s() -> None:
    (told,) = texts(block("row moss moss", size="4 x 2 in"))
    assert told.startswith("Take 2 A (Moss). Sew one A to the right edge of the other")


def test_the_seams_of_a_row_of_hexagons_stop_where_the_next_row_is_set_in() -> None:
    # By hand: a row in the middle has hexagons above and below each of its seams, the first row below alone.
    facts = block("row (hexagons fog slate moss across 4)", size="12 in")
    first, second = texts(facts)[:2]
    assert "Stop each seam at the dot at the bottom end; backstitch." in first
    assert "Sew each seam from dot to dot." in second  # step 1 says to backstitch at dots
