"""Methods: how many squares a batch takes, how many units come out, which of them are mirror images.

Counts and handedness of the batches are common practice, no source.
"""

import pytest

from tests.unit.model.blocks import block, cut_lines, unit_lines

FOUR_HALVES = ("row fog/slate fog/slate>", "row fog/slate< fog/slate>>")


def test_triangles_are_cut_by_themselves_when_nothing_is_chosen() -> None:
    facts = block(*FOUR_HALVES, size="6 in")
    assert unit_lines(facts) == ["half-square triangle: 4 of 3 x 3, cut patches"]
    assert cut_lines(facts) == ["fog: 2 square 3 7/8 once for 4", "slate: 2 square 3 7/8 once for 4"]


def test_two_at_a_time_takes_a_square_of_each_fabric_for_two_halves() -> None:
    facts = block(*FOUR_HALVES, "make half as two at a time", size="6 in")
    assert unit_lines(facts) == ["half-square triangle: 4 of 3 x 3, two at a time"]
    assert cut_lines(facts) == ["fog: 2 square 3 7/8 for 4", "slate: 2 square 3 7/8 for 4"]


def test_an_odd_half_leaves_one_to_spare() -> None:
    facts = block("row fog/slate fog", "row slate fog", "make half as two at a time", size="6 in")
    assert unit_lines(facts) == ["half-square triangle: 1 of 3 x 3, two at a time, 1 spare"]
    assert "fog: 1 square 3 7/8 for 2, 1 spare" in cut_lines(facts)


def test_eight_at_a_time_takes_one_square_of_each_of_twice_the_side() -> None:
    # 2 × (3 + 7/8) = 7 3/4
    facts = block(*FOUR_HALVES, "make half as eight at a time", size="6 in")
    assert unit_lines(facts) == ["half-square triangle: 4 of 3 x 3, eight at a time, 4 spare"]
    assert cut_lines(facts) == ["fog: 1 square 7 3/4 for 8, 4 spare", "slate: 1 square 7 3/4 for 8, 4 spare"]


def test_a_half_by_stitch_and_flip_takes_two_whole_squares() -> None:
    facts = block("row fog/slate", "make half as stitch and flip", size="3 in")
    assert cut_lines(facts) == ["fog: 1 square 3 1/2 for 1", "slate: 1 square 3 1/2 for 1"]


def test_a_half_of_one_fabric_twice_takes_two_squares_of_it() -> None:
    facts = block("row fog/fog", "make half as two at a time", size="3 in")
    assert cut_lines(facts) == ["fog: 2 square 3 7/8 for 2, 1 spare"]


GEESE = ("row (geese lantern on fog)", "row (geese lantern on fog)", "row (geese lantern on fog)>>")


def test_four_at_a_time_takes_one_large_square_for_the_geese_and_four_small_for_the_sky() -> None:
    facts = block(*GEESE, "make geese as four at a time", size="6 x 9 in")
    assert unit_lines(facts) == ["flying geese: 3 of 6 x 3, four at a time, 1 spare"]
    assert cut_lines(facts) == ["fog: 4 square 3 7/8 for 4, 1 spare", "lantern: 1 square 7 1/4 for 4, 1 spare"]


def test_five_geese_take_two_batches() -> None:
    facts = block(*["row (geese lantern on fog)"] * 5, "make geese as four at a time", size="6 x 15 in")
    assert cut_lines(facts) == ["fog: 8 square 3 7/8 for 8, 3 spare", "lantern: 2 square 7 1/4 for 8, 3 spare"]


def test_geese_by_stitch_and_flip_take_a_rectangle_and_two_squares_each() -> None:
    facts = block(*GEESE, "make geese as stitch and flip", size="6 x 9 in")
    assert cut_lines(facts) == ["fog: 6 square 3 1/2 for 3", "lantern: 3 rectangle 3 1/2 x 6 1/2 for 3"]


def test_geese_cut_as_patches_take_squares_cut_twice_and_once() -> None:
    facts = block(*GEESE, size="6 x 9 in")
    assert cut_lines(facts) == ["fog: 3 square 3 7/8 once for 6", "lantern: 1 square 7 1/4 twice for 4, 1 spare"]


def test_hourglasses_two_at_a_time_take_a_square_of_each_fabric() -> None:
    facts = block("row (hourglass fog slate)", "make hourglass as two at a time", size="6 in")
    assert unit_lines(facts) == ["hourglass: 1 of 6 x 6, two at a time, 1 spare"]
    assert cut_lines(facts) == ["fog: 1 square 7 1/4 for 2, 1 spare", "slate: 1 square 7 1/4 for 2, 1 spare"]


def test_an_hourglass_mirrored_or_turned_is_the_same_unit() -> None:
    rows = ("row (hourglass fog slate) (hourglass fog slate)~", "row (hourglass fog slate)> (hourglass slate fog)")
    facts = block(*rows, "make hourglass as two at a time", size="12 in")
    assert unit_lines(facts) == ["hourglass: 4 of 6 x 6, two at a time"]
    assert cut_lines(facts) == ["fog: 2 square 7 1/4 for 4", "slate: 2 square 7 1/4 for 4"]


# --- left and right hands ------------------------------------------------------------------------

SPLIT = "(split fog slate moss)"


def test_split_squares_two_at_a_time_come_out_two_left_and_two_right() -> None:
    # one pair of small squares gives two half units; each, crossed with a large square, gives one of each hand
    facts = block(f"row {SPLIT} {SPLIT}", f"row {SPLIT}~ {SPLIT}~", "make split as two at a time", size="12 in")
    assert unit_lines(facts) == [
        "split square: 2 of 6 x 6, two at a time",
        "split square, mirror image: 2 of 6 x 6, two at a time",
    ]
    assert cut_lines(facts) == [
        "fog: 2 square 6 7/8 for 4",
        "slate: 1 square 7 1/4 for 4",
        "moss: 1 square 7 1/4 for 4",
    ]


def test_split_squares_of_one_hand_leave_the_other_hand_to_spare() -> None:
    facts = block(f"row {SPLIT} {SPLIT}", f"row {SPLIT}> {SPLIT}<", "make split as two at a time", size="12 in")
    assert unit_lines(facts) == ["split square: 4 of 6 x 6, two at a time, 4 spare"]
    assert cut_lines(facts, "fog") == ["fog: 4 square 6 7/8 for 8, 4 spare"]


def test_three_left_and_one_right_take_two_batches() -> None:
    facts = block(f"row {SPLIT} {SPLIT}", f"row {SPLIT} {SPLIT}~", "make split as two at a time", size="12 in")
    assert unit_lines(facts) == [
        "split square: 3 of 6 x 6, two at a time, 1 spare",
        "split square, mirror image: 1 of 6 x 6, two at a time, 3 spare",
    ]
    assert cut_lines(facts, "slate") == ["slate: 2 square 7 1/4 for 8, 4 spare"]


def test_a_split_square_with_both_quarters_alike_has_no_hands() -> None:
    one = "(split fog slate slate)"
    facts = block(f"row {one} {one}~", f"row {one}> {one}~<", "make split as two at a time", size="12 in")
    assert unit_lines(facts) == ["split square: 4 of 6 x 6, two at a time"]
    assert cut_lines(facts) == ["fog: 2 square 6 7/8 for 4", "slate: 2 square 7 1/4 for 4"]


def test_quarters_of_four_fabrics_come_out_two_left_and_two_right() -> None:
    one = "(quarters fog lantern slate moss)"
    facts = block(f"row {one} {one}~", "make quarters as two at a time", size="12 x 6 in")
    assert unit_lines(facts) == [
        "quarter-square unit: 1 of 6 x 6, two at a time, 1 spare",
        "quarter-square unit, mirror image: 1 of 6 x 6, two at a time, 1 spare",
    ]
    assert cut_lines(facts) == [
        f"{fabric}: 1 square 7 1/4 for 4, 2 spare" for fabric in ("fog", "lantern", "slate", "moss")
    ]


def test_geese_with_two_skies_come_out_two_left_and_two_right() -> None:
    rows = ("row (geese lantern on fog moss)", "row (geese lantern on fog moss)~")
    facts = block(*rows, "make geese as four at a time", size="6 in")
    assert unit_lines(facts) == [
        "flying geese: 1 of 6 x 3, four at a time, 1 spare",
        "flying geese, mirror image: 1 of 6 x 3, four at a time, 1 spare",
    ]
    assert cut_lines(facts) == [
        "fog: 2 square 3 7/8 for 4, 2 spare",
        "lantern: 1 square 7 1/4 for 4, 2 spare",
        "moss: 2 square 3 7/8 for 4, 2 spare",
    ]


def test_geese_whose_skies_change_sides_are_mirror_images() -> None:
    rows = ("row (geese lantern on fog moss)", "row (geese lantern on moss fog)")
    facts = block(*rows, "make geese as four at a time", size="6 in")
    assert [(unit.count, unit.spare) for unit in facts.units] == [(1, 1), (1, 1)]
    assert cut_lines(facts, "lantern") == ["lantern: 1 square 7 1/4 for 4, 2 spare"]


def test_a_mirror_image_made_another_way_is_not_counted_with_the_batch() -> None:
    above = "unit left = split fog slate moss\nunit right = split fog moss slate"
    facts = block("row left right", "make left as two at a time", size="12 x 6 in", above=above)
    assert [(unit.name, unit.method) for unit in facts.units] == [("left", "two at a time"), ("right", "cut patches")]
    assert "fog: 1 square 6 7/8 once for 2, 1 spare" in cut_lines(facts)
    assert "fog: 2 square 6 7/8 for 4, 3 spare" in cut_lines(facts)


# --- corners and strips --------------------------------------------------------------------------


def test_a_snowball_by_stitch_and_flip_takes_a_square_and_its_corners() -> None:
    facts = block("row (snowball fog with slate)", "make snowball as stitch and flip", size="6 in")
    assert cut_lines(facts) == ["fog: 1 square 6 1/2 for 1", "slate: 4 square 2 1/2 for 1"]


def test_a_snowball_with_one_corner_takes_one_corner() -> None:
    facts = block("row (snowball fog with slate at br cut 1/4)", "make snowball as stitch and flip", size="6 in")
    assert cut_lines(facts) == ["fog: 1 square 6 1/2 for 1", "slate: 1 square 2 for 1"]


def test_a_square_in_a_square_by_stitch_and_flip_takes_corners_of_half_the_side() -> None:
    facts = block("row (diamond fog on slate slate moss moss)", "make diamond as stitch and flip", size="6 in")
    assert cut_lines(facts) == [
        "fog: 1 square 6 1/2 for 1",
        "slate: 2 square 3 1/2 for 1",
        "moss: 2 square 3 1/2 for 1",
    ]


def test_a_square_in_a_square_cut_as_patches_has_its_centre_cut_on_its_own_grain() -> None:
    # 6 / √2 = 4.243; and 1/2 in of seams is 4.743, on the ruler 4 3/4
    facts = block("row (diamond fog on slate)", size="6 in")
    assert cut_lines(facts) == ["fog: 1 square 4 3/4 for 1", "slate: 2 square 3 7/8 once for 4"]


def test_rails_are_cut_from_one_strip_of_each_fabric() -> None:
    rows = ("row (rails fog slate moss) (rails fog slate moss)>", "row (rails fog slate moss)> (rails fog slate moss)")
    facts = block(*rows, "make rails as strip set", size="12 in")
    # bands of 2 in are cut 2 1/2 in wide; four segments of 6 1/2 in take 26 in, squaring up 1 1/2
    assert cut_lines(facts) == [f"{fabric}: 1 strip 2 1/2 x 27 1/2 for 4" for fabric in ("fog", "slate", "moss")]
    assert unit_lines(facts) == ["rail unit: 4 of 6 x 6, strip set"]


def test_a_four_patch_is_two_segments_of_one_strip_set() -> None:
    facts = block("row (checker 2 x 2 fog slate)", "make checker as strip set", size="6 in")
    assert cut_lines(facts) == ["fog: 1 strip 3 1/2 x 8 for 2", "slate: 1 strip 3 1/2 x 8 for 2"]


def test_a_nine_patch_takes_two_strip_sets() -> None:
    # rows one and three: fog slate fog; row two: slate fog slate
    facts = block("row (checker 3 x 3 fog slate)", "make checker as strip set", size="6 in")
    assert sorted(cut_lines(facts)) == sorted(
        [
            "fog: 2 strip 2 1/2 x 6 for 2",
            "slate: 1 strip 2 1/2 x 6 for 2",
            "fog: 1 strip 2 1/2 x 3 1/2 for 1",
            "slate: 2 strip 2 1/2 x 3 1/2 for 1",
        ]
    )


def test_a_checker_of_three_rows_and_two_columns_takes_one_strip_set() -> None:
    facts = block("row (checker 3 x 2 fog slate)", "make checker as strip set", size="4 x 6 in")
    assert cut_lines(facts) == ["fog: 1 strip 2 1/2 x 8 1/2 for 3", "slate: 1 strip 2 1/2 x 8 1/2 for 3"]


def test_a_single_row_of_three_takes_one_strip_set() -> None:
    facts = block("row (checker 1 x 3 fog slate)", "make checker as strip set", size="6 x 2 in")
    assert cut_lines(facts) == ["fog: 2 strip 2 1/2 x 3 1/2 for 1", "slate: 1 strip 2 1/2 x 3 1/2 for 1"]


@pytest.mark.parametrize("spelled", ["two at a time", "two  at a  time"])
def test_spaces_in_a_method_do_not_matter(spelled: str) -> None:
    assert block("row fog/slate", f"make half as {spelled}").units[0].method == "two at a time"
