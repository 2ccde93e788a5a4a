"""Free patches: anything straight, roots of two and three included, in grid coordinates."""

import pytest

from blockdsl.geometry import square_root
from blockdsl.geometry.fraction import Fraction
from tests.unit.model.blocks import block, cloth_at, errors, exactly, letters, one_error

OCTAGON = (
    "grid 2 x 2",
    "patch fog at 2-r2,0 r2,0 2,2-r2 2,r2 r2,2 2-r2,2 0,r2 0,2-r2",
    "patch slate at 0,0 2-r2,0 0,2-r2",
    "patch slate at r2,0 2,0 2,2-r2",
    "patch slate at 2,r2 2,2 r2,2",
    "patch slate at 0,r2 2-r2,2 0,2",
)
EQUILATERAL = (
    "grid 2 x 2",
    "patch fog at 0,2 1,2-r3 2,2",
    "patch slate at 0,0 1,0 1,2-r3 0,2",
    "patch slate at 1,0 2,0 2,2 1,2-r3",
)


def test_an_octagon_with_eight_equal_sides_covers_with_its_corners() -> None:
    facts = block(*OCTAGON, size="4 in")
    # corners of leg 2 - √2 on a grid of 2: four halves of (2 - √2)² are 12 - 8√2; at 4 in all is four times that
    root = square_root(Fraction(2))
    assert dict(facts.area_by_fabric) == {"fog": 32 * root - 32, "slate": 48 - 32 * root}
    assert facts.cover.area == 16


def test_the_corners_of_an_octagon_are_one_triangle_four_times() -> None:
    facts = block(*OCTAGON, size="4 in")
    assert [(patch.label, patch.shape, patch.count) for patch in facts.patches] == [
        ("A", "octagon", 1),
        ("B", "half-square triangle", 4),
    ]
    # leg 2 × (2 - √2)
    assert facts.patches[1].finished[0] == 4 - 2 * square_root(Fraction(2))


def test_an_equilateral_triangle_stands_between_two_mirror_images() -> None:
    facts = block(*EQUILATERAL, size="6 in")
    assert letters(facts) == "A B Br"
    assert dict(facts.area_by_fabric)["fog"] == 9 * square_root(Fraction(3))


def test_patches_scale_from_their_grid_to_the_block() -> None:
    lines = ("grid 4 x 2", "patch fog at 0,0 4,0 4,1/2 0,1/2", "patch slate at 0,1/2 4,1/2 4,2 0,2")
    facts = block(*lines, size="12 x 6 in")
    assert exactly([patch.finished for patch in facts.patches]) == [(Fraction(3, 2), 12), (Fraction(9, 2), 12)]


def test_the_way_round_does_not_matter() -> None:
    one = block("grid 1 x 1", "patch fog at 0,0 1,0 1,1", "patch slate at 0,0 1,1 0,1")
    other = block("grid 1 x 1", "patch fog at 1,1 1,0 0,0", "patch slate at 0,1 1,1 0,0")
    assert one.area_by_fabric == other.area_by_fabric
    assert cloth_at(one, 9, 3) == cloth_at(other, 9, 3) == "fog"


def test_a_corner_on_a_straight_line_is_no_corner() -> None:
    facts = block("grid 2 x 2", "patch fog at 0,0 1,0 2,0 2,2 0,2 0,1")
    assert [patch.shape for patch in facts.patches] == ["square"]


def test_a_gap_is_told_with_its_area_and_place() -> None:
    problem = one_error("grid 4 x 4", "patch fog at 0,0 4,0 4,3 0,3", "patch slate at 0,3 3,3 3,4 0,4", size="8 in")
    assert problem.code == "patches-leave-gap"
    # one square of the grid is 2 in by 2 in, in the last row and column
    assert "4 square inches" in problem.message
    assert "row 4, column 4" in problem.message


def test_an_overlap_names_both_fabrics_and_points_at_the_later_patch() -> None:
    problem = one_error("grid 2 x 2", "patch fog at 0,0 2,0 2,2 0,2", "patch slate at 1,1 2,1 2,2 1,2")
    assert problem.code == "patches-overlap"
    assert "fog and slate" in problem.message
    assert problem.span.text.startswith("patch slate")
    assert [span.text.split()[1] for span, _ in problem.related] == ["fog"]


def test_a_patch_outside_its_grid_is_told_so() -> None:
    problem = one_error("grid 2 x 2", "patch fog at 0,0 2,0 2,2 0,2", "patch slate at 2,0 3,0 3,2 2,2")
    assert problem.code == "patch-outside"


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ("patch fog at 0,0 2,2 2,0 0,2", "patch-not-simple"),
        ("patch fog at 0,0 1,1 2,2", "patch-too-few-corners"),
        ("patch fog at 0,0 2,0 2,0", "patch-too-few-corners"),
        ("patch fug at 0,0 2,0 2,2 0,2", "name-unknown"),
    ],
)
def test_a_patch_that_is_no_patch_is_one_mistake(line: str, code: str) -> None:
    assert one_error("grid 2 x 2", line).code == code


@pytest.mark.parametrize("grid", ["0 x 2", "2 x 0"])
@pytest.mark.parametrize("in_a_unit", [False, True])
def test_a_grid_of_nothing_is_refused(grid: str, in_a_unit: bool) -> None:
    lines = (f"grid {grid}", "patch fog at 0,0 1,0 1,1")
    problem = one_error("row one", above="\n  ".join(["unit one", *lines])) if in_a_unit else one_error(*lines)
    assert problem.code == "length-not-positive"
    assert problem.message == "the grid must be greater than zero"


def test_a_grid_finer_than_two_hundred_squares_is_refused() -> None:
    assert one_error("grid 1000000000000 x 1", "patch fog at 0,0 1,0 1,1").code == "too-many-cells"


def test_a_grid_that_does_not_come_out_even_has_a_narrow_last_column() -> None:
    facts = block("grid 2.5 x 1", "patch fog at 0,0 2.5,0 2.5,1 0,1", size="10 x 4 in")
    assert exactly(facts.columns) == (4, 4, 2)
    assert exactly(block("grid 1/2 x 1/2", "patch fog at 0,0 1/2,0 1/2,1/2 0,1/2").columns) == (12,)


def test_free_patches_in_a_unit_turn_with_it() -> None:
    above = "unit half-cut\n  grid 2 x 2\n  patch fog at 0,0 2,0 0,1\n  patch slate at 2,0 2,2 0,2 0,1"
    plain, turned = block("row half-cut", above=above), block("row half-cut>", above=above)
    # fog lies along the top; after the quarter turn along the right side
    assert cloth_at(plain, 6, 1) == "fog"
    assert cloth_at(turned, 11, 6) == "fog"
    assert cloth_at(turned, 1, 6) == "slate"


def test_a_unit_of_free_patches_that_leaves_a_gap_is_told() -> None:
    above = "unit holed\n  grid 2 x 2\n  patch fog at 0,0 2,0 2,1 0,1"
    found = errors("row holed", above=above)
    assert [problem.code for problem in found] == ["patches-leave-gap"]


def test_patches_without_a_grid_ask_for_one() -> None:
    problem = one_error("patch fog at 0,0 1,0 1,1")
    assert problem.code == "rows-missing"
    assert "`grid`" in (problem.help or "")
