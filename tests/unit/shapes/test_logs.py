"""Log cabins, courthouse steps and pineapples lie as their words say.

Places are counted from the top left corner of a 12 in block unless another size is said; sizes were worked out by hand.
"""

import pytest

from blockdsl.geometry import square_root
from blockdsl.shapes import SHAPES
from tests.unit.model.blocks import around, block, cloth_at, corners, errors, exactly, letters, one_error


def test_logs_go_round_clockwise_from_the_top_each_across_those_before_it() -> None:
    # centre 4 x 4 in the middle; top 4 x 4, right and bottom 4 x 8, left 4 x 12
    facts = block("row (log centre lantern with fog moss slate fog)")
    assert cloth_at(facts, 6, 6) == "lantern"
    assert around(facts) == "fog moss slate fog"
    assert corners(facts) == "fog moss slate fog"
    assert exactly({(patch.fabric, patch.finished) for patch in facts.patches}) == {
        ("lantern", (4, 4)),
        ("fog", (4, 4)),
        ("moss", (4, 8)),
        ("slate", (4, 8)),
        ("fog", (4, 12)),
    }


def test_logs_of_the_same_length_share_a_letter_and_the_centre_comes_first() -> None:
    assert letters(block("row (log centre lantern with fog moss slate fog)")) == "A A B B C"


def test_a_strip_of_a_half_makes_logs_half_as_wide_as_the_centre() -> None:
    facts = block("row (log centre lantern with fog moss slate fog strip 1/2)")
    assert exactly([patch.finished for patch in facts.patches if patch.fabric == "lantern"]) == [(6, 6)]
    assert exactly({patch.finished[0] for patch in facts.patches if patch.fabric != "lantern"}) == {3}


def test_narrow_logs_lie_at_the_top_and_on_the_right() -> None:
    # 1 + 1/2 + 1 = 2 1/2 centres each way: 10 in gives a centre of 4, narrow logs of 2 and wide ones of 4
    facts = block("row (log centre lantern with fog moss slate fog narrow 1/2)", size="10 in")
    widths = {patch.fabric: patch.finished[0] for patch in facts.patches if patch.fabric != "fog"}
    assert exactly(widths) == {"lantern": 4, "moss": 2, "slate": 4}
    assert [cloth_at(facts, x, y) for x, y in ((6, 1), (9, 5), (6, 8), (2, 5))] == ["fog", "moss", "slate", "fog"]


def test_logs_on_two_sides_leave_the_centre_in_the_bottom_left_corner() -> None:
    facts = block("row (log centre lantern with fog moss slate fog on two sides)")
    assert corners(facts) == "slate fog fog lantern"
    assert cloth_at(facts, 2, 6) == "fog"
    assert cloth_at(facts, 6, 10) == "moss"


def test_rounds_go_through_the_fabrics_again() -> None:
    written_out = block("row (log centre lantern with fog fog moss moss fog fog moss moss)")
    said = block("row (log centre lantern with fog fog moss moss rounds 2)")
    assert said.placed == written_out.placed


def test_a_fabric_may_be_called_like_an_option() -> None:
    above = 'fabric strip "Strips" #905070 dark'
    facts = block("row (log centre strip with strip fog strip fog strip 1/2)", above=above)
    assert around(facts) == "strip fog strip fog"


def test_an_unfinished_round_has_the_proportion_that_its_logs_give() -> None:
    # centre, top, right, bottom: 2 centres wide and 3 high
    words = "row (log centre lantern with fog moss slate)"
    assert errors(words, size="8 x 12 in") == []
    problem = one_error(words)
    assert problem.code == "unit-does-not-fit"
    assert "2 : 3" in problem.message


def test_courthouse_steps_have_the_sides_across_the_top_and_the_bottom() -> None:
    facts = block("row (courthouse centre lantern with fog moss slate fog)")
    assert around(facts) == "fog fog moss slate"
    assert corners(facts) == "slate fog fog slate"
    assert letters(facts) == "A A A B B"


def test_courthouse_steps_may_end_with_the_pair_at_the_top_and_the_bottom() -> None:
    # 5 high, 3 wide: a round of four, then two
    assert errors("row (courthouse centre lantern with fog fog moss moss fog fog)", size="6 x 10 in") == []


def test_a_pineapple_of_one_round_is_a_square_in_a_square_in_a_square() -> None:
    # 8 in: a centre of 4; triangles on it with a long edge of 4; corners with legs of 4
    facts = block("row (pineapple centre lantern with straight fog diagonal moss rounds 1)", size="8 in")
    assert exactly([(patch.shape, patch.finished, patch.fabric, patch.count) for patch in facts.patches]) == [
        ("square", (4, 4), "lantern", 1),
        ("quarter-square triangle", (4, 2), "fog", 4),
        ("half-square triangle", (4, 4), "moss", 4),
    ]


def test_the_logs_of_a_pineapple_are_equally_wide_both_ways() -> None:
    # 7 in with strips of a third: a centre of 3, logs of 1. The straight logs narrow by twice their width, from 3 to 1
    # in the first round, from 2 sqrt 2 + 1 to 2 sqrt 2 - 1 in the second; the rest of 49 lies across the corners.
    words = "row (pineapple centre lantern with straight fog diagonal moss rounds 2 strip 1/3)"
    facts = block(words, size="7 in")
    root = square_root(2)
    assert dict(facts.area_by_fabric) == {"lantern": 9, "fog": 8 + 8 * root, "moss": 32 - 8 * root}
    assert sum(patch.count for patch in facts.patches if patch.shape == "trapezoid") == 12


def test_a_pineapple_takes_its_fabrics_in_turn_round_by_round() -> None:
    facts = block("row (pineapple centre lantern with straight fog slate diagonal moss rounds 2)", size="12 in")
    # centre 4, logs 2: straight logs at 2 to 4 and 0 to 2 in from the top
    assert [cloth_at(facts, 6, y) for y in (6, 3, 1)] == ["lantern", "fog", "slate"]


@pytest.mark.parametrize(
    "words",
    [
        "log fog",
        "log centre fog",
        "log centre fog with",
        "log centre fog with slate strip 0",
        "log centre fog with slate strip 21",
        "log centre fog with slate strip 1 strip 1",
        "log centre fog with slate rounds 0",
        "log centre fog with slate rounds 1 1/2",
        "log centre fog with slate rounds 21",
        "log centre fog with slate slate slate slate slate rounds 1",
        "log centre fog with slate on three sides",
        "log centre fog with slate on two",
        "log centre fog with slate 1/2",
        "courthouse centre fog with slate slate slate",
        "courthouse fog with slate slate",
        "pineapple centre fog with straight slate diagonal moss",
        "pineapple centre fog with straight slate rounds 3",
        "pineapple centre fog with diagonal slate rounds 3",
        "pineapple centre fog with straight slate diagonal moss rounds 13",
        "pineapple centre fog with straight slate diagonal moss rounds 2 strip 2/3",
        "pineapple centre fog with straight slate moss fog diagonal moss rounds 2",
    ],
)
def test_words_that_rounds_of_logs_cannot_read_are_answered_with_how_they_are_written(words: str) -> None:
    problem = one_error(f"row ({words})")
    assert problem.code == "shape-words"
    assert f"`{SHAPES[words.split(maxsplit=1)[0]].usage}`" in problem.message


@pytest.mark.parametrize(
    ("words", "size", "count"),
    [
        ("log centre fog with slate moss slate moss slate", "12 x 16 in", 6),
        ("log centre fog with slate on two sides rounds 3", "12 in", 7),
        ("courthouse centre fog with slate slate moss moss slate slate", "6 x 10 in", 7),
        ("pineapple centre fog with straight slate diagonal moss rounds 3", "12 in", 25),
    ],
)
def test_the_rounds_of_a_shape_hold_all_its_patches_but_the_first(words: str, size: str, count: int) -> None:
    assert len(block(f"row ({words})", size=size).placed) == count
