"""Sizes, seams, rulers, colour plans."""

import pytest

from blockdsl.geometry.fraction import Fraction
from tests.unit.model.blocks import block, errors, exactly, one_error, read, warnings, written


def test_a_block_in_inches_has_a_quarter_inch_seam_and_an_eighth_inch_ruler() -> None:
    facts = block("row fog")
    assert (facts.unit, facts.seam, facts.measure) == ("in", Fraction(1, 4), Fraction(1, 8))
    assert facts.unfinished == (Fraction(25, 2), Fraction(25, 2))


def test_a_block_in_centimetres_has_a_seam_of_three_quarters_and_a_millimetre_ruler() -> None:
    facts = block("row fog", size="30 cm")
    assert (facts.unit, facts.seam, facts.measure) == ("cm", Fraction(3, 4), Fraction(1, 10))
    assert facts.unfinished == (Fraction(63, 2), Fraction(63, 2))


def test_millimetres_are_centimetres_written_another_way() -> None:
    facts = block("row fog", "seam 6 mm", size="300 mm")
    assert exactly((facts.unit, facts.finished, facts.seam)) == ("cm", (30, 30), Fraction(3, 5))


@pytest.mark.parametrize("size", ["12 1/2 in", "12.5 in", "25/2 in"])
def test_a_length_may_be_written_in_three_ways(size: str) -> None:
    assert block("row fog", size=size).finished == (Fraction(25, 2), Fraction(25, 2))


def test_a_block_need_not_be_square() -> None:
    assert exactly(block("row fog", size="12 x 9 in").finished) == (12, 9)


@pytest.mark.parametrize("line", ["seam 1 cm", "measure 1 mm", "trim 2 mm"])
def test_inches_and_centimetres_do_not_mix(line: str) -> None:
    assert one_error("row fog", line).code == "units-mixed"


@pytest.mark.parametrize("line", ["seam 0 in", "measure 0 in", "trim 0 in"])
def test_a_length_of_nothing_is_refused(line: str) -> None:
    problem = one_error("row fog", line)
    assert problem.code == "length-not-positive"
    assert "the the" not in problem.message


def test_a_ribbon_an_inch_wide_is_a_fabric_and_one_of_no_width_is_none() -> None:
    ribbon = 'fabric ribbon "Ribbon" #333333 width {} in'
    assert block("row ribbon", size="1/2 in", above=ribbon.format(1)).fabrics[0].name == "ribbon"
    assert one_error("row ribbon", above=ribbon.format(0)).code == "length-not-positive"


def test_a_size_of_nothing_is_one_mistake() -> None:
    assert one_error("row fog", size="0 in").message == "the finished size must be greater than zero"


@pytest.mark.parametrize(
    ("size", "fits"), [("1000 cm", True), ("1000.1 cm", False), ("393 in", True), ("394 in", False)]
)
def test_a_block_is_at_most_ten_metres(size: str, fits: bool) -> None:
    # 10 m are 393.7 in
    assert [problem.code for problem in errors("row fog", size=size)] == ([] if fits else ["size-too-large"])


def test_a_block_without_a_size_still_has_its_cells_looked_up() -> None:
    problems = read('fabric fog "Fog" #ffffff\nblock "B"\n  row fog fug\n')[1]
    assert sorted(problem.code for problem in problems) == ["name-unknown", "size-missing"]


@pytest.mark.parametrize("line", ["size 9 in", "seam 1/4 in", "measure 1/8 in", "trim 1/8 in"])
def test_a_setting_said_twice_shows_both_places(line: str) -> None:
    lines = ("row fog/slate", "make half as two at a time", line)
    problem = one_error(*(lines if line.startswith("size") else (*lines, line)))
    assert problem.code == "setting-twice"
    assert problem.message == f"`{line.split(maxsplit=1)[0]}` is given twice"
    assert [note for _, note in problem.related] == ["first set here"]


def test_a_grid_said_twice_is_called_a_grid() -> None:
    problem = one_error("grid 1 x 1", "grid 1 x 1", "patch fog at 0,0 1,0 1,1 0,1")
    assert problem.message == "`grid` is given twice"


# --- colour plans --------------------------------------------------------------------------------


def test_a_colour_plan_says_what_takes_whose_place() -> None:
    facts = block("row fog/slate", 'colourway "Night" fog=slate slate=moss')
    (night,) = facts.colourways
    assert night.name == "Night"
    assert night.replaces == {"fog": "slate", "slate": "moss"}
    assert [fabric.name for fabric in night.fabrics] == ["slate", "moss"]


def test_fabrics_change_places_at_once_not_one_after_the_other() -> None:
    (plan,) = block("row fog/slate", 'colourway "Turned" fog=slate slate=fog').colourways
    assert plan.replaces == {"fog": "slate", "slate": "fog"}


def test_a_fabric_keeps_its_number_in_every_plan() -> None:
    facts = block("row fog/slate", 'colourway "Night" fog=moss')
    numbers = {fabric.name: fabric.number for fabric in facts.fabrics}
    (night,) = facts.colourways
    assert numbers == {"fog": 1, "slate": 2}
    assert {fabric.name: fabric.number for fabric in night.fabrics} == {"moss": 3, "slate": 2}


def test_a_plan_with_an_unknown_fabric_is_answered_with_the_nearest() -> None:
    problem = one_error("row fog/slate", 'colourway "Night" fog=slat')
    assert problem.code == "name-unknown"
    assert problem.help == "did you mean `slate`?"


def test_a_plan_changes_fabrics_not_units() -> None:
    problem = one_error("row corner", 'colourway "Night" fog=corner', above="unit corner = half fog slate")
    assert problem.code == "name-unknown"
    assert "did you mean `corner`" not in (problem.help or "")


def test_two_plans_of_one_name_are_one_mistake() -> None:
    assert one_error("row fog/slate", *['colourway "Night" fog=moss'] * 2).code == "name-twice"


# --- the ruler -----------------------------------------------------------------------------------


def test_thirds_of_ten_inches_are_off_the_ruler_and_the_nearest_sizes_are_on_it() -> None:
    # thirds of whole inches are on the ruler at 9 in and 12 in, and of halves at 10 1/2 in, three times 3 1/2
    (problem,) = warnings("row fog slate fog", size="10 in")
    assert problem.code == "size-off-ruler"
    assert (problem.help or "").endswith("on the ruler: 9 in or 12 in; with half an inch: 10 1/2 in")


def test_odd_sizes_are_offered_only_where_no_whole_or_half_size_is_near() -> None:
    # 43 columns, and a height of a fifth of the width: 43 x 5 eighths are 26 7/8 in, the least width on the ruler; the
    # first of its multiples on halves is 107 1/2 in, more than twice as wide
    columns = "columns " + " ".join(["1"] * 43)
    (problem,) = warnings(columns, "row" + " fog slate" * 21 + " fog", size="50 x 10 in")
    assert (problem.help or "").endswith("on the ruler: 26 7/8 x 5 3/8 in or 53 3/4 x 10 3/4 in")


def test_metric_blocks_are_offered_whole_centimetres_first() -> None:
    # thirds of 20 cm are no whole millimetres; 18 and 21 cm give 6 and 7 cm, 19.5 cm gives 6.5 cm
    (problem,) = warnings("row fog slate fog", size="20 cm")
    assert (problem.help or "").endswith("on the ruler: 18 cm or 21 cm; with half a centimetre: 19.5 cm")


def test_the_sizes_that_are_offered_are_on_the_ruler() -> None:
    for size in ("9 in", "12 in", "10 1/2 in"):
        assert warnings("row fog slate fog", "row slate fog slate", "row fog slate fog", size=size) == []


def test_sevenths_want_a_size_of_sevenths() -> None:
    # on a 1/8 in ruler the least step of a block of sevenths is 7/8 in; seven whole inches go into 7 in and 14 in
    (problem,) = warnings("columns 3 1 3", "row fog slate fog", size="12 x 12 in")
    assert "7 in or 14 in" in (problem.help or "")
    assert "10 1/2 in" in (problem.help or "")


def test_a_coarser_ruler_asks_for_coarser_sizes() -> None:
    # halves of 9 in are whole inches at 8 in and at 10 in
    (problem,) = warnings("row fog slate", "measure 1 in", size="9 in")
    assert "8 in or 10 in" in (problem.help or "")


def test_the_sizes_that_are_offered_keep_the_proportion_of_the_block() -> None:
    # halves of 9 and the height of 4 are whole inches together first at 18 by 8
    (problem,) = warnings("row fog slate", "measure 1 in", size="9 x 4 in")
    assert "18 x 8 in" in (problem.help or "")


def test_the_slanted_sides_of_patches_need_not_be_on_the_ruler() -> None:
    assert warnings("row (diamond fog on slate)") == []


# --- fabrics -------------------------------------------------------------------------------------


def fabrics(one: str, other: str) -> list[str]:
    cloth = f'fabric one "One" {one}\nfabric other "Other" {other}\n'
    return [problem.code for problem in read(cloth + 'block "B"\n  size 6 in\n  row one/other\n')[1]]


def test_two_fabrics_that_look_alike_side_by_side_are_warned_of() -> None:
    assert fabrics("#804020", "#824222") == ["contrast-low"]
    assert fabrics("#804020 light", "#824222 dark") == ["contrast-low"]
    assert fabrics("#f0f0e0", "#202040") == []


def test_two_hues_of_one_value_can_be_told_apart() -> None:
    assert fabrics("#b04040", "#407840") == []


def test_alike_fabrics_that_never_touch_are_no_matter() -> None:
    cloth = 'fabric one "One" #804020\nfabric other "Other" #824222\nfabric between "Between" #f0f0e0\n'
    assert read(cloth + 'block "B"\n  size 6 x 2 in\n  row one between other\n')[1] == []


def test_fabrics_that_meet_at_a_corner_only_do_not_touch() -> None:
    cloth = 'fabric one "One" #804020\nfabric other "Other" #824222\nfabric between "Between" #f0f0e0\n'
    assert read(cloth + 'block "B"\n  size 6 in\n  row one between\n  row between other\n')[1] == []


def test_a_fabric_that_nothing_uses_is_warned_of_at_its_line() -> None:
    problems = read(written("row fog slate lantern", size="6 x 2 in"))[1]
    assert [(problem.code, problem.span.text) for problem in problems] == [("fabric-unused", "moss")]


def test_a_fabric_in_a_colour_plan_or_in_a_spare_unit_is_used() -> None:
    above = "unit spare = half lantern moss"
    problems = read(written("row fog", 'colourway "Night" fog=slate', above=above))[1]
    assert problems == []


def test_a_palette_may_hold_fabrics_that_nothing_uses() -> None:
    assert read('fabric fog "Fog" #ffffff\nfabric sea "Sea" #204060\n')[1] == []


def test_a_fabric_brought_in_and_not_used_is_no_matter() -> None:
    text = 'use "cloth.block"\nblock "B"\n  size 6 in\n  row fog\n'
    assert read(text, {"cloth.block": 'fabric fog "Fog" #ffffff\nfabric sea "Sea" #204060\n'})[1] == []


def test_a_fabric_has_the_value_that_is_said_or_that_its_colour_has() -> None:
    cloth = 'fabric one "One" #101010 light\nfabric two "Two" #101010\nfabric three "Three" #fafafa\n'
    facts = read(cloth + 'block "B"\n  size 6 x 2 in\n  row one two three\n')[0].blocks[0]
    assert [fabric.value for fabric in facts.fabrics] == ["light", "dark", "light"]


def test_a_value_that_is_none_of_three_is_refused() -> None:
    problems = read('fabric fog "Fog" #ffffff bright\nblock "B"\n  size 6 in\n  row fog\n')[1]
    assert [problem.code for problem in problems] == ["value-unknown"]
