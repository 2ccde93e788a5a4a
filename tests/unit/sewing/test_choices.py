"""Which method a unit is made by, and choices that cannot be followed."""

import pytest

from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.methods import METHODS, methods_for
from blockdsl.shapes import SHAPES
from tests.unit.model.blocks import block, cut_lines, errors, one_error, unit_lines, warnings

BEAMS = "unit beam = geese lantern on fog"


def test_a_choice_for_a_unit_stands_over_one_for_its_shape() -> None:
    rows = ("row beam", "row (geese slate on moss)")
    for choices in (
        ("make geese as stitch and flip", "make beam as four at a time"),
        ("make beam as four at a time", "make geese as stitch and flip"),
    ):
        facts = block(*rows, *choices, size="6 in", above=BEAMS)
        assert [(unit.name, unit.method) for unit in facts.units] == [
            ("beam", "four at a time"),
            ("geese", "stitch and flip"),
        ]


def test_a_second_line_for_units_that_are_all_made_is_an_error() -> None:
    problem = one_error("row fog/slate", "make half as two at a time", "make half as eight at a time")
    assert problem.code == "nothing-left-to-make"
    assert (problem.span.line, problem.span.column) == (12, 8)
    assert "`make half as two at a time`" in problem.message


def test_a_line_for_a_shape_whose_units_all_have_lines_of_their_own_is_an_error() -> None:
    lines = ("row beam", "make beam as four at a time", "make geese as stitch and flip")
    assert one_error(*lines, size="6 x 3 in", above=BEAMS).code == "nothing-left-to-make"


def test_one_unit_may_be_cut_as_patches_among_others() -> None:
    rows = ("row beam", "row (geese slate on moss)", "make geese as four at a time", "make beam as cut patches")
    assert [unit.method for unit in block(*rows, size="6 in", above=BEAMS).units] == ["cut patches", "four at a time"]


def test_a_choice_reaches_units_inside_units() -> None:
    above = "unit corner\n  row fog fog/slate\n  row fog/slate slate"
    facts = block("row corner corner>", "row corner< corner>>", "make half as two at a time", above=above)
    assert unit_lines(facts) == [
        "half-square triangle: 8 of 3 x 3, two at a time",
        "corner: 4 of 6 x 6, cut patches",
    ]
    # the plain squares of the corners are still cut one by one
    assert cut_lines(facts, "fog") == ["fog: 4 square 3 7/8 for 8", "fog: 4 square 3 1/2 for 4"]


def test_units_are_told_apart_by_size() -> None:
    facts = block("columns 1 2", "heights 2 1", "row fog fog/slate", "row fog/slate slate", size="9 in")
    assert unit_lines(facts) == [
        "half-square triangle: 1 of 3 x 3, cut patches",
        "half-square triangle: 1 of 6 x 6, cut patches",
    ]


def test_a_unit_has_the_name_that_its_designer_gave_it() -> None:
    facts = block("row beam", size="6 x 3 in", above=BEAMS)
    assert [(unit.name, unit.title) for unit in facts.units] == [("beam", "beam (flying geese)")]


def test_the_unfinished_size_of_a_unit_has_a_seam_on_every_side() -> None:
    assert block("row beam", size="6 x 3 in", above=BEAMS).units[0].unfinished == (Fraction(13, 2), Fraction(7, 2))


def test_a_method_that_does_not_suit_a_shape_is_answered_with_those_that_do() -> None:
    problem = one_error("row (hourglass fog slate)", "make hourglass as strip set")
    assert problem.code == "method-does-not-fit"
    assert "`cut patches`, `two at a time`" in problem.message


def test_a_unit_of_rows_is_told_to_name_the_shapes_in_it() -> None:
    above = "unit corner\n  row fog fog/slate\n  row fog/slate slate"
    problem = one_error("row corner", "make corner as two at a time", above=above)
    assert problem.code == "method-does-not-fit"
    assert "name the shape" in (problem.help or "")


def test_a_slip_in_a_method_is_answered_with_the_nearest() -> None:
    problem = one_error("row fog/slate", "make half as two at the time")
    assert problem.code == "method-unknown"
    assert problem.help == "did you mean `two at a time`?"


def test_a_slip_in_the_name_of_a_unit_is_answered_with_the_nearest() -> None:
    problem = one_error("row beam", "make beem as four at a time", size="6 x 3 in", above=BEAMS)
    assert problem.code == "name-unknown"
    assert problem.help == "did you mean `beam`?"


def test_a_shape_that_the_block_does_not_have_is_warned_of() -> None:
    assert [problem.code for problem in warnings("row fog/slate", "make geese as four at a time")] == [
        "nothing-to-make"
    ]


def test_one_wrong_choice_is_one_mistake_however_many_units_it_means() -> None:
    rows = ("row (hourglass fog slate) (hourglass moss slate)", "make hourglass as four at a time")
    assert len(errors(*rows, size="12 x 6 in")) == 1


# --- trimming ------------------------------------------------------------------------------------


def test_trim_is_added_to_the_squares_of_a_batch() -> None:
    # 3 + 0.8536 + 0.125 = 3.979, on the ruler 4
    facts = block("row fog/slate", "make half as two at a time", "trim 1/8 in", size="3 in")
    assert cut_lines(facts, "fog") == ["fog: 1 square 4 for 2, 1 spare"]


def test_trim_of_geese_is_doubled_along_their_length() -> None:
    # the sky is 3 + 0.8536 + 0.125 = 3.979, the goose 6 + 1.2071 + 0.25 = 7.457
    facts = block("row (geese lantern on fog)", "make geese as four at a time", "trim 1/8 in", size="6 x 3 in")
    assert cut_lines(facts) == ["fog: 4 square 4 for 4, 3 spare", "lantern: 1 square 7 1/2 for 4, 3 spare"]


def test_trim_of_eight_halves_is_added_to_each_of_the_two_halves_of_the_square() -> None:
    # twice 3 + 0.8536 + 0.125 is 7.957, on the ruler 8
    facts = block("row fog/slate", "make half as eight at a time", "trim 1/8 in", size="3 in")
    assert cut_lines(facts, "fog") == ["fog: 1 square 8 for 8, 7 spare"]


def test_trim_leaves_patches_that_are_cut_by_themselves_alone() -> None:
    rows = ("row fog/slate fog", "row slate fog", "make half as two at a time", "trim 1/8 in")
    assert "slate: 1 square 3 1/2 for 1" in cut_lines(block(*rows, size="6 in"))


@pytest.mark.parametrize("choice", ["make rails as cut patches", "make rails as strip set"])
def test_trim_without_a_method_that_trims_is_warned_of(choice: str) -> None:
    found = warnings("row (rails fog slate)", choice, "trim 1/8 in")
    assert [problem.code for problem in found] == ["trim-without-method"]


def test_geese_by_stitch_and_flip_are_trimmed_by_half_on_every_side() -> None:
    # Rectangle 6 × 3 and squares of 3, all larger by 1/8 and with 1/2 in of seams. The squares' seams meet 1/16 + 1/4
    # in below the top edge, and 1/4 in below it once 1/16 in is trimmed off each side.
    facts = block("row (geese lantern on fog)", "make geese as stitch and flip", "trim 1/8 in", size="6 x 3 in")
    assert cut_lines(facts) == ["fog: 2 square 3 5/8 for 1", "lantern: 1 rectangle 3 5/8 x 6 5/8 for 1"]


def test_corners_by_stitch_and_flip_are_larger_by_the_trim_too() -> None:
    # square 6 + 1/4 + 1/2, corners a third of it: 2 + 1/4 + 1/2
    lines = ("row (snowball fog with slate at tl tr bl br cut 1/3)", "make snowball as stitch and flip", "trim 1/4 in")
    assert cut_lines(block(*lines, size="6 in")) == ["fog: 1 square 6 3/4 for 1", "slate: 4 square 2 3/4 for 1"]


# --- the list of methods -------------------------------------------------------------------------


def test_every_recipe_is_for_a_shape_of_the_language() -> None:
    assert {shape for recipes in METHODS.values() for shape in recipes} <= set(SHAPES)


@pytest.mark.parametrize(
    ("shape", "expected"),
    [
        ("half", ("cut patches", "two at a time", "eight at a time", "stitch and flip", "foundation", "over papers")),
        ("geese", ("cut patches", "four at a time", "stitch and flip", "foundation", "over papers")),
        ("snowball", ("cut patches", "stitch and flip", "foundation", "over papers")),
        ("checker", ("cut patches", "strip set", "foundation", "over papers")),
        ("square", ("cut patches", "foundation", "over papers")),
        ("", ("cut patches", "foundation", "over papers")),
    ],
)
def test_each_shape_has_its_usual_methods(shape: str, expected: tuple[str, ...]) -> None:
    assert methods_for(shape) == expected


# --- which units are the same unit ---------------------------------------------------------------


def test_a_unit_that_holds_nothing_but_a_shape_is_that_shape_once() -> None:
    above = "unit whole\n  row fog/slate"
    for choice in ("make half as two at a time", "make whole as two at a time"):
        facts = block("row whole whole>", choice, size="6 x 3 in", above=above)
        assert unit_lines(facts) == ["whole (half-square triangle): 2 of 3 x 3, two at a time"]
        assert cut_lines(facts) == ["fog: 1 square 3 7/8 for 2", "slate: 1 square 3 7/8 for 2"]


def test_a_unit_drawn_patch_by_patch_is_not_made_as_the_shape_that_looks_like_it() -> None:
    above = "unit squares\n  row fog slate\n  row slate fog"
    facts = block("row squares (checker 2 x 2 fog slate)", "make checker as strip set", size="8 x 4 in", above=above)
    assert [(unit.name, unit.count, unit.method) for unit in facts.units] == [
        ("squares", 1, "cut patches"),
        ("checker", 1, "strip set"),
    ]


def test_units_of_one_picture_are_made_together_whatever_they_are_called() -> None:
    above = "unit one = half fog slate\nunit other = half slate fog"
    # slate over fog turned about is fog over slate
    assert [unit.count for unit in block("row one other", size="6 x 3 in", above=above).units] == [2]


def test_a_mirror_image_that_turns_into_itself_is_no_unit_of_its_own() -> None:
    facts = block("row fog/slate fog/slate~ fog\\slate fog\\slate~", size="12 x 3 in")
    assert unit_lines(facts) == ["half-square triangle: 4 of 3 x 3, cut patches"]


def test_a_mirror_image_that_does_not_turn_into_itself_is_called_one() -> None:
    above = "unit flag = split fog slate moss"
    facts = block("row flag flag> flag~ flag~>", size="12 x 3 in", above=above)
    assert [(unit.title, unit.count) for unit in facts.units] == [
        ("flag (split square)", 2),
        ("flag (split square), mirror image", 2),
    ]


def test_a_unit_in_other_fabrics_is_another_unit() -> None:
    assert [unit.count for unit in block("row fog/slate fog/moss fog/slate", size="9 x 3 in").units] == [2, 1]


# --- several methods for one unit ----------------------------------------------------------------

SIX = ("row goose goose", "row goose goose>>", "row goose goose")
GOOSE = "unit goose = geese lantern on fog"
TWO_WAYS = ("make 4 of goose as four at a time", "make goose as stitch and flip")


def test_four_geese_four_at_a_time_leave_two_for_stitch_and_flip() -> None:
    facts = block(*SIX, *TWO_WAYS, size="12 x 9 in", above=GOOSE)
    assert [(unit.name, unit.count, unit.method) for unit in facts.units] == [
        ("goose", 4, "four at a time"),
        ("goose", 2, "stitch and flip"),
    ]
    assert cut_lines(facts) == [
        "fog: 4 square 3 7/8 for 4",
        "fog: 4 square 3 1/2 for 2",
        "lantern: 1 square 7 1/4 for 4",
        "lantern: 2 rectangle 3 1/2 x 6 1/2 for 2",
    ]


def test_each_way_is_a_step_of_its_own_that_makes_its_own_number() -> None:
    steps = block(*SIX, *TWO_WAYS, size="12 x 9 in", above=GOOSE).steps
    made = [(step.makes, step.method, step.count) for step in steps[:2]]
    assert made == [
        ("goose made four at a time", "four at a time", 4),
        ("goose made by stitch and flip", "stitch and flip", 2),
    ]
    assert sum(join.count for step in steps[2:] for join in step.joins if join.name.startswith("goose")) == 6


def test_the_order_of_the_lines_does_not_matter() -> None:
    other = block(*SIX, *reversed(TWO_WAYS), size="12 x 9 in", above=GOOSE)
    assert cut_lines(other) == cut_lines(block(*SIX, *TWO_WAYS, size="12 x 9 in", above=GOOSE))


def test_two_named_units_that_look_alike_keep_their_own_methods() -> None:
    above = "unit near = geese lantern on fog\nunit far = geese lantern on fog"
    lines = (
        "row near near",
        "row near near",
        "row far far",
        "make near as four at a time",
        "make far as stitch and flip",
    )
    facts = block(*lines, size="12 x 9 in", above=above)
    assert [(unit.name, unit.count, unit.method) for unit in facts.units] == [
        ("near", 4, "four at a time"),
        ("far", 2, "stitch and flip"),
    ]


def test_a_unit_without_a_line_is_not_made_as_another_that_looks_like_it() -> None:
    above = "unit near = geese lantern on fog\nunit far = geese lantern on fog"
    facts = block("row near far", "make near as four at a time", size="12 x 3 in", above=above)
    assert [(unit.name, unit.count, unit.method) for unit in facts.units] == [
        ("near", 1, "four at a time"),
        ("far", 1, "cut patches"),
    ]


def test_a_line_that_makes_more_than_there_are_is_an_error_at_its_own_place() -> None:
    problem = one_error("row goose goose", "make 4 of goose as four at a time", size="12 x 3 in", above=GOOSE)
    assert problem.code == "too-few-to-make"
    assert (problem.span.line, problem.span.text) == (11, "goose")
    assert problem.message == "this line makes 4 of goose, but there are 2"


def test_two_numbers_share_the_units_in_the_order_of_the_lines() -> None:
    lines = ("make 3 of goose as stitch and flip", "make 3 of goose as four at a time")
    assert one_error("row goose goose goose goose", *lines, size="24 x 3 in", above=GOOSE).message == (
        "this line makes 3 of goose, but apart from `make 3 of goose as stitch and flip` there is 1"
    )


def test_a_unit_and_its_mirror_image_share_batches_only_where_both_are_made_alike() -> None:
    # Two left-hand splits two at a time leave two right-hand ones over; the block's own are cut patch by patch.
    above = "unit flag = split fog slate moss"
    lines = ("row flag flag flag~ flag~", "make 2 of flag as two at a time", "make flag as cut patches")
    facts = block(*lines, size="12 x 3 in", above=above)
    assert [(unit.title, unit.method, unit.spare, unit.mirror) for unit in facts.units] == [
        ("flag (split square)", "two at a time", 2, None),
        ("flag (split square), mirror image", "cut patches", 0, None),
    ]


@pytest.mark.parametrize(("number", "code"), [("1/2", "count-not-whole"), ("0", "length-not-positive")])
def test_a_number_of_units_is_whole_and_more_than_nothing(number: str, code: str) -> None:
    assert (
        one_error("row goose", f"make {number} of goose as stitch and flip", size="6 x 3 in", above=GOOSE).code == code
    )


def test_a_line_whose_units_all_lie_on_papers_is_an_error() -> None:
    above = "unit corner\n  row fog fog/slate\n  row fog/slate slate"
    lines = ("row corner corner", "make corner as foundation", "make half as two at a time")
    problem = one_error(*lines, size="12 x 6 in", above=above)
    assert problem.code == "nothing-left-to-make"
    assert "`make corner as foundation`" in problem.message
    # One half square outside the papers is enough for the line to hold.
    beside = ("row corner fog/slate", *lines[1:])
    assert errors(*beside, size="12 x 6 in", above=above) == []
