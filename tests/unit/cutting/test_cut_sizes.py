"""Cut sizes: finished, and a quarter inch all round; worked out by hand, rounded up to the ruler."""

import pytest

from blockdsl.cutting.foundation import _half_square_over
from blockdsl.cutting.sizes import round_up
from blockdsl.geometry import Point, square_root, to_float
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import bounding_box
from blockdsl.model.lengths import write_length
from tests.unit.model.blocks import block, cut_lines, exactly

ROOT_TWO = square_root(Fraction(2))


def test_a_half_square_triangle_of_3_in_is_cut_from_3_7_8_squares() -> None:
    assert cut_lines(block("row fog/slate", size="3 in"), "fog") == ["fog: 1 square 3 7/8 once for 2, 1 spare"]


def test_a_quarter_square_triangle_of_6_in_is_cut_from_7_1_4_squares() -> None:
    facts = block("row (hourglass fog slate)", size="6 in")
    assert cut_lines(facts, "fog") == ["fog: 1 square 7 1/4 twice for 4, 2 spare"]


def test_a_square_of_3_in_is_cut_3_1_2() -> None:
    assert cut_lines(block("row fog", size="3 in")) == ["fog: 1 square 3 1/2 for 1"]


def test_a_rectangle_is_cut_half_an_inch_larger_both_ways() -> None:
    assert cut_lines(block("row fog", size="6 x 3 in")) == ["fog: 1 rectangle 3 1/2 x 6 1/2 for 1"]


def test_the_exact_sizes_are_kept_beside_the_rounded() -> None:
    # allowance × (2 + √2) on a leg, × (2 + 2√2) on a long edge
    (cut, _) = block("row fog/slate", size="3 in").cutting
    assert cut.exact == (3 + (2 + ROOT_TWO) / 4, 3 + (2 + ROOT_TWO) / 4)
    cut = next(cut for cut in block("row (hourglass fog slate)", size="6 in").cutting if cut.fabric == "fog")
    assert cut.exact[0] == 6 + (2 + 2 * ROOT_TWO) / 4


@pytest.mark.parametrize(
    ("size", "seam", "measure", "expected"),
    [
        # by hand: 3 + s(2 + √2)
        ("3 in", "1/4 in", "1/8 in", "3 7/8"),  # 3.8536
        ("3 in", "1/4 in", "1/16 in", "3 7/8"),  # 3.8536; 3 13/16 is 3.8125
        ("3 in", "1/4 in", "1/32 in", "3 7/8"),  # 3 27/32 is 3.84375
        ("3 in", "3/8 in", "1/8 in", "4 3/8"),  # 4.2803
        ("3 in", "1/8 in", "1/8 in", "3 1/2"),  # 3.4268
        ("3 in", "1/4 in", "1/4 in", "4"),
    ],
)
def test_the_leg_follows_from_the_seam_and_the_ruler(size: str, seam: str, measure: str, expected: str) -> None:
    facts = block("row fog/slate", f"seam {seam}", f"measure {measure}", size=size)
    assert cut_lines(facts, "fog") == [f"fog: 1 square {expected} once for 2, 1 spare"]


def test_metric_triangles_are_never_short() -> None:
    # 10 + 0.75 × 3.4142 = 12.561; the common 2.5 cm would fall short by 0.6 mm
    assert cut_lines(block("row fog/slate", size="10 cm"), "fog") == ["fog: 1 square 12 3/5 once for 2, 1 spare"]
    # 10 + 0.75 × 4.8284 = 13.621; the common 3.5 cm would fall short by 1.2 mm
    facts = block("row (hourglass fog slate)", size="10 cm")
    assert cut_lines(facts, "fog") == ["fog: 1 square 13 7/10 twice for 4, 2 spare"]


def test_metric_squares_are_cut_a_centimetre_and_a_half_larger() -> None:
    assert cut_lines(block("row fog", size="10 cm")) == ["fog: 1 square 11 1/2 for 1"]


def test_a_size_on_the_ruler_is_not_rounded() -> None:
    assert round_up((Fraction(7, 2), Fraction(29, 8)), Fraction(1, 8)) == (Fraction(7, 2), Fraction(29, 8))


def test_a_size_a_hair_over_the_mark_goes_to_the_next() -> None:
    hair = Fraction(1, 10**9)
    assert round_up((Fraction(7, 2) + hair, Fraction(7, 2) - hair), Fraction(1, 8)) == (Fraction(29, 8), Fraction(7, 2))


def test_one_triangle_of_a_square_is_spare_when_the_number_is_odd() -> None:
    facts = block("row fog/slate fog/moss fog/slate", size="9 x 3 in")
    assert cut_lines(facts) == [
        "fog: 2 square 3 7/8 once for 4, 1 spare",
        "slate: 1 square 3 7/8 once for 2",
        "moss: 1 square 3 7/8 once for 2, 1 spare",
    ]


def test_alike_patches_of_different_units_are_cut_together() -> None:
    # four corners of a square in a square of 6 in have legs of 3 in, as has the half of 3 in
    facts = block("heights 2 1", "row (diamond fog on slate) -", "row slate/fog slate/fog", size="6 x 9 in")
    assert "slate: 3 square 3 7/8 once for 6" in cut_lines(facts)


def test_an_octagon_is_a_square_whose_corners_are_cut_off() -> None:
    facts = block("row (snowball fog with slate)", size="6 in")
    assert cut_lines(facts) == ["fog: 1 octagon 6 1/2 x 6 1/2 for 1", "slate: 2 square 2 7/8 once for 4"]


@pytest.mark.parametrize(
    ("row", "size", "corner"),
    [
        # Finished 2 in are cut off; the slanted edge moves out by 1/4 in, as the others do: 2 + (2 - √2)/4 = 2.146.
        ("(snowball fog with slate)", "6 in", "2 1/8"),
        # A regular octagon of 6 in: (6 - 6(√2 - 1))/2 = 1.757 are cut off finished, 1.904 of the square of 6 1/2 in.
        ("(octagon fog with slate)", "6 in", "1 7/8"),
        # Of 20 cm: 5.858 finished, and 0.75 (2 - √2) = 0.439 more.
        ("(octagon fog with slate)", "20 cm", "6.2"),
        # Of 2 2/3 in: 3 1/6 in round up by 1/12 to 3 1/4; 0.781 + 0.146 + 1/12 = 1.011 of that may be cut off.
        ("(octagon fog with slate)", "2 2/3 in", "1"),
    ],
)
def test_so_much_is_cut_off_each_corner_that_the_slanted_edge_keeps_its_allowance(
    row: str, size: str, corner: str
) -> None:
    (octagon,) = (cut for cut in block(f"row {row}", size=size).cutting if cut.piece == "octagon")
    assert octagon.corner is not None
    assert write_length(octagon.corner, "cm" if "cm" in size else "in") == corner


def test_a_rectangle_loses_its_corners_in_the_same_way() -> None:
    """By hand: 9 x 6 in with 2 in off each corner; 2.146 with its allowances."""
    patches = ["patch fog at 2,0 7,0 9,2 9,4 7,6 2,6 0,4 0,2", "patch slate at 0,0 2,0 0,2"]
    patches += ["patch slate at 9,0 9,2 7,0", "patch slate at 9,6 7,6 9,4", "patch slate at 0,6 0,4 2,6"]
    facts = block("grid 9 x 6", *patches, size="9 x 6 in")
    assert cut_lines(facts, "fog") == ["fog: 1 octagon 6 1/2 x 9 1/2 for 1"]
    assert [cut.corner for cut in facts.cutting if cut.fabric == "fog"] == [Fraction(17, 8)]


def test_an_octagon_with_unlike_corners_is_cut_by_template() -> None:
    patches = ["patch fog at 1,0 4,0 6,2 6,4 4,6 2,6 0,4 0,1", "patch slate at 0,0 1,0 0,1"]
    patches += ["patch slate at 6,0 6,2 4,0", "patch slate at 6,6 4,6 6,4", "patch slate at 0,6 0,4 2,6"]
    assert "fog: 1 template 6 1/2 x 6 1/2 for 1" in cut_lines(block("grid 6 x 6", *patches, size="6 in"))


def test_the_lines_go_by_fabric_as_declared_and_from_large_to_small() -> None:
    facts = block("columns 1 2", "heights 2 1", "row slate fog", "row fog slate", size="9 in")
    assert cut_lines(facts) == [
        "fog: 1 square 6 1/2 for 1",
        "fog: 1 square 3 1/2 for 1",
        "slate: 2 rectangle 3 1/2 x 6 1/2 for 2",
    ]


# --- templates -----------------------------------------------------------------------------------


def test_there_is_a_template_for_each_letter_with_its_fabrics() -> None:
    facts = block("row fog/slate fog", "row slate fog/slate", size="6 in")
    assert [(template.label, template.shape, template.uses) for template in facts.templates] == [
        ("A", "half-square triangle", {"fog": 2, "slate": 2}),
        ("B", "square", {"fog": 1, "slate": 1}),
    ]


def test_a_template_has_its_allowance_on_every_side() -> None:
    (template,) = block("row fog", size="3 in").templates
    assert exactly(bounding_box(template.sewing)) == (0, 0, 3, 3)
    assert bounding_box(template.cutting) == (Fraction(-1, 4), Fraction(-1, 4), Fraction(13, 4), Fraction(13, 4))


def test_a_triangle_template_is_as_long_as_the_square_that_it_is_cut_from() -> None:
    template = block("row fog/slate", size="3 in").templates[0]
    left, top, right, bottom = bounding_box(template.cutting)
    leg = 3 + (2 + ROOT_TWO) / 4
    assert (right - left, bottom - top) == (leg, leg)


def test_the_grain_of_a_quarter_square_triangle_runs_along_its_long_edge() -> None:
    facts = block("row (hourglass fog slate)", size="6 in")
    # the first, at the top, has its long edge level
    dx, dy = facts.templates[0].grain
    assert dx != 0
    assert dy == 0


def test_half_of_a_square_lies_as_far_beyond_each_edge_of_a_triangle_on_a_paper() -> None:
    # Legs of 4 in and a square of 5: the inch over is 2 + √2 times what lies beyond each edge, so 0.2929 in.
    triangle = tuple(Point(Fraction(x), Fraction(y)) for x, y in ((0, 0), (4, 0), (0, 4)))
    found = _half_square_over(triangle, 0, Fraction(5))
    beyond = 1 / (2 + 2**0.5)
    far = 5 - beyond
    corners = sorted((round(to_float(corner.x), 9), round(to_float(corner.y), 9)) for corner in found)
    assert corners == sorted(
        (round(x, 9), round(y, 9)) for x, y in ((-beyond, -beyond), (far, -beyond), (-beyond, far))
    )
    # The long edge is x + y = 5 - 2 × 0.2929, that of the triangle x + y = 4: as far apart.
    assert abs((5 - 2 * beyond - 4) / 2**0.5 - beyond) < 1e-9
