"""Rectangles cut corner to corner, kites, octagons, tumblers and their like lie as their words say.

Places are counted from the top left corner of the block; areas were worked out by hand.
"""

import pytest

from blockdsl.geometry import square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.shapes import SHAPES
from tests.unit.model.blocks import around, block, cloth_at, corners, errors, exactly, letters, one_error


def test_a_half_rectangle_has_its_first_fabric_at_the_top_left_and_its_line_runs_up_to_the_right() -> None:
    assert around(block("row (half-rectangle fog lantern)", size="6 x 12 in")) == "fog lantern lantern fog"


def test_the_two_slants_of_half_rectangles_are_mirror_images_and_no_turn_makes_one_the_other() -> None:
    turned = block("row (half-rectangle fog lantern) (half-rectangle fog lantern)>>", size="6 x 6 in")
    mirrored = block("row (half-rectangle fog lantern) (half-rectangle fog lantern)~", size="6 x 6 in")
    assert letters(turned) == "A A A A"
    assert letters(mirrored) == "A A Ar Ar"


@pytest.mark.parametrize(
    ("cell", "mend"),
    [
        ("fog/slate", "(half-rectangle fog slate)"),
        ("fog\\slate", "(half-rectangle slate fog)~"),
        ("(half fog slate)", "(half-rectangle fog slate)"),
    ],
)
def test_a_pair_in_an_oblong_cell_is_told_of_half_rectangles_and_the_mend_fits(cell: str, mend: str) -> None:
    problem = one_error(f"row {cell}", size="3 x 6 in")
    assert problem.code == "unit-does-not-fit"
    assert problem.help is not None
    assert problem.help.endswith(f"a rectangle cut corner to corner is `{mend}`")
    square, oblong = block(f"row {cell}", size="6 in"), block(f"row {mend}", size="3 x 6 in")
    assert around(oblong) == around(square)
    assert corners(oblong) == corners(square)


def test_a_peak_stands_on_the_whole_lower_side_with_its_point_in_the_middle_of_the_upper_one() -> None:
    facts = block("row (triangle-in-square lantern on fog moss)", size="6 x 8 in")
    assert corners(facts) == "fog moss lantern lantern"
    assert dict(facts.area_by_fabric) == {"fog": 12, "lantern": 24, "moss": 12}
    assert letters(facts) == "A B Ar"


def test_a_peak_has_the_same_sky_on_both_sides_unless_another_is_said() -> None:
    assert corners(block("row (triangle-in-square lantern on fog)", size="6 in")) == "fog fog lantern lantern"


def test_a_long_diamond_touches_the_middles_of_the_sides_of_any_box() -> None:
    facts = block("row (long-diamond lantern on fog slate moss fog)", size="6 x 3 in")
    assert around(facts) == "lantern lantern lantern lantern"
    assert corners(facts) == "fog slate moss fog"
    assert dict(facts.area_by_fabric) == {
        "fog": Fraction(9, 2),
        "lantern": 9,
        "slate": Fraction(9, 4),
        "moss": Fraction(9, 4),
    }
    assert letters(facts) == "A Ar B A Ar"


def test_a_kite_flies_from_the_bottom_left_to_the_top_right() -> None:
    # the triangles beside it have legs of 4 and 2
    facts = block("row (kite lantern on fog moss)", size="4 in")
    assert corners(facts) == "fog lantern moss moss"
    assert cloth_at(facts, Fraction(1, 4), Fraction(15, 4)) == "lantern"
    assert dict(facts.area_by_fabric) == {"fog": 4, "lantern": 8, "moss": 4}
    assert [patch.shape for patch in facts.patches if patch.fabric == "lantern"] == ["kite"]


def test_a_kite_with_a_small_head_leaves_more_to_its_sides() -> None:
    # a head of 1 in: the triangles have legs of 4 and 3
    assert dict(block("row (kite lantern on fog cut 1/4)", size="4 in").area_by_fabric) == {"fog": 12, "lantern": 4}


def test_a_trapezoid_with_a_third_cut_off_three_squares_has_half_square_corners() -> None:
    facts = block("row (trapezoid lantern on fog moss cut 1/3)", size="9 x 3 in")
    assert exactly([(patch.shape, patch.finished) for patch in facts.patches if patch.fabric != "lantern"]) == [
        ("half-square triangle", (3, 3)),
        ("half-square triangle", (3, 3)),
    ]
    assert corners(facts) == "fog moss lantern lantern"


def test_a_slanting_strip_in_two_squares_leans_at_45_degrees_to_the_right() -> None:
    facts = block("row (slant lantern between fog moss)", size="8 x 4 in")
    assert corners(facts) == "fog lantern moss lantern"
    assert {patch.fabric: patch.shape for patch in facts.patches} == {
        "fog": "half-square triangle",
        "lantern": "parallelogram",
        "moss": "half-square triangle",
    }
    assert dict(facts.area_by_fabric) == {"fog": 8, "lantern": 16, "moss": 8}


def test_a_spool_has_its_ends_above_and_below_and_mitred_corners() -> None:
    facts = block("row (spool centre lantern with fog moss)", size="8 in")
    assert around(facts) == "fog moss fog moss"
    assert cloth_at(facts, 4, 4) == "lantern"
    assert dict(facts.area_by_fabric) == {"fog": 24, "lantern": 16, "moss": 24}


def test_all_sides_of_an_octagon_are_equal() -> None:
    # corners with legs of 12 - 6 sqrt 2: what is left of a side is 12 sqrt 2 - 12, and so is the long edge of a corner
    facts = block("row (octagon lantern with fog)")
    root = square_root(2)
    assert exactly([patch.finished for patch in facts.patches if patch.fabric == "fog"]) == [
        (12 - 6 * root, 12 - 6 * root)
    ]
    assert dict(facts.area_by_fabric) == {"fog": 432 - 288 * root, "lantern": 288 * root - 288}


def test_four_corners_of_an_octagon_run_clockwise_from_the_top_left() -> None:
    assert corners(block("row (octagon lantern with fog slate moss fog)")) == "fog slate moss fog"


def test_tumblers_stand_on_their_narrow_and_their_wide_ends_in_turn_between_two_halves() -> None:
    # 12 in for a half, two tumblers and a half: 4 in each on the mean, 16/3 at the wide end and 8/3 at the narrow one
    facts = block("row (tumblers fog moss lantern slate)", size="12 x 4 in")
    assert dict(facts.area_by_fabric) == {"fog": 8, "lantern": 16, "moss": 16, "slate": 8}
    at_the_top = [cloth_at(facts, x, Fraction(1, 100)) for x in (Fraction(5, 2), Fraction(11, 4), 5, Fraction(11, 2))]
    assert at_the_top == ["fog", "moss", "moss", "lantern"]
    at_the_bottom = [
        cloth_at(facts, x, Fraction(399, 100)) for x in (Fraction(5, 4), Fraction(3, 2), Fraction(13, 2), 7)
    ]
    assert at_the_bottom == ["fog", "moss", "moss", "lantern"]
    assert letters(facts) == "A B B A"


def test_a_taper_near_1_makes_tumblers_nearly_upright() -> None:
    # 12 in for one tumbler and two halves: 6 in on the mean; 3/5: 15/2 and 9/2 at the ends
    facts = block("row (tumblers fog moss slate taper 3/5)", size="12 x 4 in")
    first = facts.placed[0].outline
    assert exactly([first[1].x, first[2].x]) == [Fraction(15, 4), Fraction(9, 4)]


@pytest.mark.parametrize(
    "words",
    [
        "half-rectangle fog",
        "half-rectangle fog slate moss",
        "triangle-in-square fog slate",
        "triangle-in-square fog on",
        "triangle-in-square fog on slate moss lantern",
        "long-diamond fog on slate moss",
        "kite fog on",
        "kite fog on slate moss lantern",
        "kite fog on slate cut 1",
        "trapezoid fog on slate cut 1/2",
        "trapezoid fog slate",
        "slant fog between slate",
        "slant fog between slate moss cut 0",
        "spool fog with slate moss",
        "spool centre fog with slate",
        "spool centre fog with slate moss cut 1/2",
        "octagon fog on slate",
        "octagon fog with slate moss",
        "tumblers fog",
        "tumblers fog slate taper 1",
    ],
)
def test_words_that_a_straight_shape_cannot_read_are_answered_with_how_it_is_written(words: str) -> None:
    problem = one_error(f"row ({words})")
    assert problem.code == "shape-words"
    assert f"`{SHAPES[words.split(maxsplit=1)[0]].usage}`" in problem.message


@pytest.mark.parametrize("words", ["kite fog on slate", "octagon fog with slate", "spool centre fog with slate moss"])
def test_what_belongs_in_a_square_is_never_stretched(words: str) -> None:
    assert one_error(f"row ({words})", size="12 x 6 in").code == "unit-does-not-fit"


@pytest.mark.parametrize(
    "words",
    [
        "half-rectangle fog slate",
        "triangle-in-square fog on slate",
        "long-diamond fog on slate",
        "trapezoid fog on slate",
        "slant fog between slate moss",
        "tumblers fog slate",
    ],
)
def test_rectangles_cut_aslant_fill_any_box(words: str) -> None:
    assert errors(f"row ({words})", size="12 x 5 in") == []


def test_a_half_rectangle_in_a_square_is_the_usual_half_and_is_made_with_the_others() -> None:
    # four halves, two of them by the other name: two pairs of squares, 3 in + 7/8 in
    facts = block(
        "row fog/slate (half-rectangle slate fog)",
        "row (half-rectangle slate fog) fog/slate",
        "make half as two at a time",
        size="6 in",
    )
    assert [(cut.count, exactly(cut.cut[0])) for cut in facts.cutting] == [(2, Fraction(31, 8))] * 2
