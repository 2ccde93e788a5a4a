"""Each shape lies as its words say; places are counted from the top left corner of a 12 in block."""

import pytest

from blockdsl.geometry.fraction import Fraction
from blockdsl.shapes import SHAPES
from tests.unit.model.blocks import around, block, cloth_at, corners, errors, exactly, one_error


def test_a_square_is_one_patch() -> None:
    facts = block("row (square fog)")
    assert exactly([(patch.shape, patch.finished, patch.count) for patch in facts.patches]) == [("square", (12, 12), 1)]


def test_a_half_has_its_first_fabric_at_the_top_left_and_its_line_runs_up_to_the_right() -> None:
    assert around(block("row (half fog lantern)")) == "fog lantern lantern fog"


def test_quarters_are_named_top_right_bottom_left() -> None:
    assert around(block("row (quarters fog lantern slate moss)")) == "fog lantern slate moss"


def test_an_hourglass_has_its_first_fabric_above_and_below() -> None:
    assert around(block("row (hourglass fog lantern)")) == "fog lantern fog lantern"


def test_a_split_square_has_its_half_at_the_top_left_then_right_then_bottom() -> None:
    assert around(block("row (split fog lantern slate)")) == "fog lantern slate fog"


def test_a_goose_points_up_with_the_same_sky_on_both_sides() -> None:
    facts = block("row (geese lantern on fog)", size="12 x 6 in")
    assert cloth_at(facts, 6, "1/16") == "lantern"
    assert corners(facts) == "fog fog lantern lantern"


def test_the_last_word_of_geese_is_the_right_sky() -> None:
    assert corners(block("row (geese lantern on fog slate)", size="12 x 6 in")) == "fog slate lantern lantern"


def test_a_square_in_a_square_touches_the_middles_of_the_sides() -> None:
    facts = block("row (diamond slate on fog)")
    assert cloth_at(facts, 6, 6) == "slate"
    assert around(facts) == "slate slate slate slate"
    assert corners(facts) == "fog fog fog fog"
    assert dict(facts.area_by_fabric) == {"fog": 72, "slate": 72}


def test_four_corners_of_a_square_in_a_square_run_clockwise_from_the_top_left() -> None:
    facts = block("row (diamond fog on fog lantern slate moss)")
    assert corners(facts) == "fog lantern slate moss"


def test_a_snowball_has_all_four_corners_cut_at_a_third_when_nothing_is_said() -> None:
    facts = block("row (snowball fog with slate)")
    assert corners(facts) == "slate slate slate slate"
    assert exactly(
        [(patch.shape, patch.finished, patch.count) for patch in facts.patches if patch.fabric == "slate"]
    ) == [("half-square triangle", (4, 4), 4)]


@pytest.mark.parametrize(
    ("places", "expected"),
    [
        ("tl", "slate fog fog fog"),
        ("tr", "fog slate fog fog"),
        ("br", "fog fog slate fog"),
        ("bl", "fog fog fog slate"),
        ("tl br", "slate fog slate fog"),
        ("bl tr", "fog slate fog slate"),
        ("bl br tl", "slate fog slate slate"),
    ],
)
def test_a_snowball_has_the_corners_cut_that_are_named(places: str, expected: str) -> None:
    assert corners(block(f"row (snowball fog with slate at {places} cut 1/4)")) == expected


def test_a_quarter_cut_of_a_12_in_snowball_takes_3_in_off_each_side() -> None:
    facts = block("row (snowball fog with slate at tl cut 1/4)")
    assert exactly([patch.finished for patch in facts.patches if patch.fabric == "slate"]) == [(3, 3)]


def test_a_snowball_cut_at_the_half_is_a_square_in_a_square() -> None:
    facts = block("row (snowball fog with slate cut 1/2)")
    assert [(patch.shape, patch.count) for patch in facts.patches] == [("square", 1), ("half-square triangle", 4)]
    assert dict(facts.area_by_fabric) == {"fog": 72, "slate": 72}


def test_rails_lie_one_below_the_other() -> None:
    facts = block("row (rails fog lantern slate)")
    assert [cloth_at(facts, 6, y) for y in (1, 5, 9)] == ["fog", "lantern", "slate"]
    assert exactly({patch.finished for patch in facts.patches}) == {(4, 12)}


def test_bars_stand_side_by_side() -> None:
    facts = block("row (bars fog lantern slate)")
    assert [cloth_at(facts, x, 6) for x in (1, 5, 9)] == ["fog", "lantern", "slate"]


def test_a_checkerboard_is_rows_by_columns_and_starts_at_the_top_left() -> None:
    facts = block("row (checker 2 x 3 fog slate)", size="12 x 8 in")
    rows = [[cloth_at(facts, x, y) for x in (2, 6, 10)] for y in (2, 6)]
    assert rows == [["fog", "slate", "fog"], ["slate", "fog", "slate"]]


@pytest.mark.parametrize(
    "words",
    [
        "square",
        "square fog slate",
        "half fog",
        "half fog slate moss",
        "half fog 2",
        "quarters fog slate moss",
        "quarters fog slate moss fog slate",
        "hourglass fog",
        "hourglass fog slate moss",
        "split fog slate",
        "split fog slate moss fog",
        "geese fog slate",
        "geese fog on",
        "geese fog on slate moss fog",
        "diamond fog slate",
        "diamond fog on",
        "diamond fog on slate moss",
        "diamond fog on slate moss fog slate moss",
        "snowball fog",
        "snowball fog with",
        "snowball fog with slate at",
        "snowball fog with slate at top",
        "snowball fog with slate cut",
        "snowball fog with slate cut 0",
        "snowball fog with slate cut 2/3",
        "snowball fog with slate at tl cut 1/4 tr",
        "rails",
        "rails fog 2",
        "bars",
        "checker fog slate",
        "checker 2 x 2 fog",
        "checker 2 x 2 fog slate moss",
        "checker 1 1/2 x 2 fog slate",
        "checker 0 x 2 fog slate",
        "checker 2 x 201 fog slate",
    ],
)
def test_words_that_a_shape_cannot_read_are_answered_with_how_it_is_written(words: str) -> None:
    problem = one_error(f"row ({words})")
    assert problem.code == "shape-words"
    assert f"`{SHAPES[words.split(maxsplit=1)[0]].usage}`" in problem.message


@pytest.mark.parametrize(
    "words", ["geese fog on slate", "half fog slate", "split fog slate moss", "hourglass fog slate"]
)
def test_a_shape_is_never_stretched(words: str) -> None:
    size = "12 x 12 in" if words.startswith("geese") else "12 x 6 in"
    problem = one_error(f"row ({words})", size=size)
    assert problem.code == "unit-does-not-fit"
    assert "2 : 1" in problem.message
    assert "1 : 1" in problem.message


@pytest.mark.parametrize("words", ["rails fog slate", "bars fog slate", "checker 3 x 2 fog slate", "square fog"])
def test_strips_squares_and_checkers_fill_any_box(words: str) -> None:
    assert errors(f"row ({words})", size="12 x 5 in") == []


def test_a_square_block_of_three_cells_by_two_is_told_of_oblong_sizes() -> None:
    """Each place is 3 in wide and 4 1/2 in high, and no square unit fits it; in 9 x 6 in it is 3 in square."""
    rows = "row (half fog slate) fog fog\n  row fog fog fog"
    problem = one_error(rows, size="9 in")
    assert problem.code == "unit-does-not-fit"
    assert "`size 9 x 6 in`" in str(problem.help)
    assert errors(rows, size="9 x 6 in") == []


def test_every_shape_says_how_it_is_written_and_what_it_is() -> None:
    for name, shape in SHAPES.items():
        assert shape.usage.split()[0] == name
        assert shape.title
        assert shape.summary


def test_a_shape_that_is_not_known_is_answered_with_the_nearest() -> None:
    problem = one_error("row (hourglas fog slate)")
    assert problem.code == "shape-unknown"
    assert problem.help == "did you mean `hourglass`?"
    assert one_error("row (hst fog slate)").help == "it is written `half LEFT RIGHT`"
    geese = one_error("row (flying geese fog on slate)", size="8 x 4 in")
    assert geese.help == "it is written `geese GOOSE on SKY [RIGHT-SKY]`"


def test_shapes_ask_for_the_proportion_that_the_trade_gives_them() -> None:
    assert SHAPES["geese"].proportion == 2
    assert all(SHAPES[name].proportion == Fraction(1) for name in ("half", "quarters", "hourglass", "split", "diamond"))
