"""Which way seams are pressed: open, toward the dark, as they nest. Worked out by hand; common practice, no source."""

from __future__ import annotations

from blockdsl.facts import BlockFacts
from blockdsl.geometry import Point
from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.steps import StepSeam
from blockdsl.sewing.steps.step import ByRow
from blockdsl.wording import step_texts
from tests.unit.model.blocks import block

NINE = ("row slate fog slate", "row fog slate fog", "row slate fog slate")


def seams(facts: BlockFacts) -> list[StepSeam]:
    return [seam for step in facts.steps for hand in step.hands for stage in hand.stages for seam in stage.seams]


def ways(facts: BlockFacts) -> list[list[tuple[int, int]]]:
    """Step by step which way the seams of the first hand are pressed, as (-1, 0 or 1, -1, 0 or 1)."""
    return [
        [
            ((seam.arrow.x > 0) - (seam.arrow.x < 0), (seam.arrow.y > 0) - (seam.arrow.y < 0))
            for stage in step.hands[0].stages
            for seam in stage.seams
        ]
        for step in facts.steps
    ]


# --- open -------------------------------------------------------------------------------------------


def test_pressed_open_no_seam_of_a_nine_patch_has_a_side_and_none_nests() -> None:
    nine = block("press open", *NINE)
    assert all(seam.toward is None for seam in seams(nine))
    # Two rows' seams meet in each of the two long seams, in two places; none nests.
    assert sum(seam.meetings for seam in seams(nine)) == sum(seam.unnested for seam in seams(nine)) == 4


def test_a_curve_is_pressed_to_a_side_even_where_the_rest_is_pressed_open() -> None:
    facts = block("press open", "row (curve fog in slate) moss", size="6 x 3 in")
    by_kind = {seam.kind: seam.toward for seam in seams(facts)}
    assert by_kind["straight"] is None
    assert by_kind["curved"] is not None


def test_a_set_in_seam_is_pressed_to_a_side_even_where_the_rest_is_pressed_open() -> None:
    facts = block("press open", "row (star45 points fog slate ground moss)", size="6 in")
    assert {(seam.kind, seam.toward is None) for seam in seams(facts)} == {("straight", True), ("set-in", False)}


def test_the_first_half_of_a_partial_seam_is_pressed_to_a_side_even_where_the_rest_is_pressed_open() -> None:
    bright = (
        "grid 3 x 3",
        "patch fog at 0,0 2,0 2,1 0,1",
        "patch slate at 2,0 3,0 3,2 2,2",
        "patch moss at 1,2 3,2 3,3 1,3",
        "patch lantern at 0,1 1,1 1,3 0,3",
        "patch fog at 1,1 2,1 2,2 1,2",
    )
    facts = block("press open", *bright, size="6 in")
    assert {(seam.kind, seam.toward is None) for seam in seams(facts)} == {("straight", True), ("partial", False)}


# --- toward the dark --------------------------------------------------------------------------------


def test_pressed_toward_the_dark_the_darker_side_decides_even_where_seams_then_do_not_nest() -> None:
    # Three squares over three: as it nests the second row is pressed the other way.
    rows = ("row fog slate fog", "row fog slate fog")
    dark = block("press toward dark", *rows, size="6 x 4 in")
    assert ways(dark)[0] == [(1, 0), (-1, 0)]
    assert sum(seam.unnested for seam in seams(dark)) == 2


def test_pressed_toward_the_dark_a_dark_goose_is_pressed_toward() -> None:
    row = "row (geese slate on fog)"
    away, toward = block(row, size="6 x 3 in"), block("press toward dark", row, size="6 x 3 in")
    assert {way[1] for way in ways(away)[0]} == {-1}
    # The goose points up, and its skies lie at the upper left and the upper right: downward is toward the goose.
    assert {way[1] for way in ways(toward)[0]} == {1}


# --- as it nests ------------------------------------------------------------------------------------


def test_the_halves_of_an_hourglass_are_pressed_toward_the_darker_and_nest_in_the_middle() -> None:
    halves = (
        "patch fog at 0,0 2,0 1,1",
        "patch slate at 2,0 2,2 1,1",
        "patch fog at 2,2 0,2 1,1",
        "patch slate at 0,2 0,0 1,1",
    )
    facts = block("grid 2 x 2", *halves, size="6 in")
    pair, whole = (step.hands[0] for step in facts.steps)
    (seam,) = pair.stages[0].seams
    assert pair.ingredients[seam.parts[seam.toward or 0]].fabric == "slate"
    (last,) = whole.stages[0].seams
    assert (last.meetings, last.unnested) == (1, 0)


def test_in_the_middle_of_a_star_all_seams_are_pressed_the_same_way_round() -> None:
    facts = block("row (star45 points fog slate ground moss)", size="8 in")
    pair, quarter, whole = (step.hands[0] for step in facts.steps)
    # Pairs go toward the darker, and their joins, which have the other fabric there, toward the lighter.
    seam = pair.stages[0].seams[0]
    assert pair.ingredients[seam.parts[seam.toward or 0]].fabric == "slate"
    last = whole.stages[0].seams[0]
    assert last.fan is not None
    assert last.fan.place == Point(Fraction(4), Fraction(4))
    assert last.fan.fabrics == ("fog", "fog")
    assert (last.meetings, last.unnested) == (1, 0)
    join = quarter.stages[0].seams[0]
    assert join.toward is not None
    toward = quarter.ingredients[join.parts[join.toward]].picture
    # Of the two pairs it goes toward the one that has fog at the seam: the patch that touches it along its line.
    beside = [patch.fabric for patch in toward if {join.line[0], join.line[-1]} <= set(patch.outline)]
    assert beside == ["fog"]


def test_where_fewer_than_eight_seams_meet_the_last_is_pressed_to_one_side() -> None:
    four = block("row fog slate", "row slate fog", size="6 in")
    assert all(seam.fan is None for seam in seams(four))


def test_pressed_open_nothing_is_fanned() -> None:
    facts = block("press open", "row (star45 points fog slate ground moss)", size="8 in")
    assert all(seam.fan is None for seam in seams(facts))


WINDOW = "unit window\n  columns 1 2\n  heights 2 1\n  row slate fog\n  row slate moss"


def test_rows_that_lie_alike_are_pressed_each_the_other_way_where_their_seams_then_nest() -> None:
    facts = block("row window window", "row window window", above=WINDOW, size="12 in")
    (row,) = [step for step in facts.steps if step.makes == "rows 1 and 2"]
    (seam,) = row.hands[0].stages[-1].seams
    assert seam.by_row == ByRow((1,), (2,))
    # Inside a window the seams of its two rows lie opposite ways, and so they do from one window to the one below.
    (last,) = facts.steps[-1].hands[0].stages[-1].seams
    assert (last.meetings, last.unnested) == (3, 0)


def test_rows_that_are_turned_about_nest_as_they_are() -> None:
    facts = block("row fog slate", "row slate fog", size="6 in")
    assert all(seam.by_row is None for seam in seams(facts))


def test_rows_of_many_fabrics_are_pressed_all_one_way_and_the_next_rows_the_other() -> None:
    rows = ("row fog lantern slate moss", "row lantern slate moss fog", "row slate moss fog lantern")
    facts = block(*rows, size="8 x 6 in")
    first, second, third = ({way[0] for way in ways(facts)[step]} for step in (0, 1, 2))
    assert first == third
    assert {*first, *second} == {-1, 1}
    assert all(len(one) == 1 for one in (first, second, third))
    assert sum(seam.unnested for seam in seams(facts)) == 0


def test_what_is_alike_on_both_sides_of_a_middle_is_pressed_outward_or_inward() -> None:
    (step,) = block("row lantern fog lantern", size="9 x 3 in").steps
    assert len(ways(block("row lantern fog lantern", size="9 x 3 in"))[0]) == 2
    assert {seam.arrow.x > 0 for stage in step.hands[0].stages for seam in stage.seams} == {True, False}


def test_a_unit_that_looks_the_same_however_it_is_turned_is_pressed_alike_on_all_sides() -> None:
    # Octagons beside each other: corners that meet nest when one is pressed toward its corners, the next away.
    rows = (
        "row (octagon slate with fog) (octagon moss with fog)",
        "row (octagon moss with fog) (octagon slate with fog)",
    )
    facts = block(*rows, size="12 in")
    octagons = [step for step in facts.steps if step.makes.startswith("octagon")]
    assert len(octagons) == 2
    toward = []
    for step in octagons:
        hand = step.hands[0]
        pressed = [hand.ingredients[seam.parts[seam.toward or 0]] if seam.parts[seam.toward or 0] < 5 else None
                   for stage in hand.stages for seam in stage.seams]  # fmt: skip
        toward.append({part is not None and part.fabric == "fog" for part in pressed})
    assert sorted(toward, key=str) == [{False}, {True}]
    assert sum(seam.unnested for seam in seams(facts)) == 0


def test_a_star_of_small_diamonds_has_one_fabric_all_round_its_middle() -> None:
    facts = block("row (star45 points fog slate rows 2 ground moss)", size="12 in")
    last = facts.steps[-1].hands[0].stages[0].seams[0]
    assert last.fan is not None
    assert last.fan.fabrics == last.fan.across == ("fog", "fog")
    said = step_texts(facts)[-1].text
    # The seam leads from the upper left to the lower right, and its halves go to its two sides.
    assert "press the upper left half of the seam toward the " in said
    assert "and the lower right half toward the " in said
