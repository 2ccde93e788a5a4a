"""The straight grain on the outside of a block, the designer's own choice of it, and what is left on the bias."""

from __future__ import annotations

import pytest

from blockdsl.facts import BlockFacts
from blockdsl.geometry import square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import edges, step
from blockdsl.wording.bias import format_bias
from tests.unit.model.blocks import block, cut_lines, one_error

# The corner triangle has its square corner inside and its long edge, of 45 degrees to nothing, on the outside: a right
# triangle of 3, 4, 5 whose long edge is the top of the block.
TILTED = ("grid 25 x 12", "patch fog at 0,0 25,0 9,12", "patch slate at 0,0 9,12 0,12", "patch moss at 25,0 25,12 9,12")


def bias(facts: BlockFacts) -> dict[str, tuple[str, int, int, int]]:
    """Which edges, how many of how many, and on how many patches outside."""
    return {each.label: (each.which, len(each.lengths), each.edges, each.outside) for each in facts.bias}


def test_half_squares_with_their_legs_on_the_outside_are_cut_once_so_that_the_long_edge_is_the_bias() -> None:
    facts = block("row fog/slate fog\\slate", "row slate\\fog slate/fog", size="6 in")
    assert cut_lines(facts, "fog") == ["fog: 2 square 3 7/8 once for 4"]
    assert bias(facts) == {"A": ("long", 1, 3, 0)}


@pytest.mark.parametrize(
    ("cell", "method"),
    [
        ("fog/slate", "half as two at a time"),
        ("fog/slate", "half as eight at a time"),
        ("(hourglass fog slate)", "hourglass as two at a time"),
        ("(snowball fog with slate)", "snowball as stitch and flip"),
        ("(rails fog slate)", "rails as strip set"),
    ],
)
def test_what_is_cut_as_squares_and_strips_has_no_edge_on_the_bias_before_it_is_sewn(cell: str, method: str) -> None:
    facts = block(f"row {cell} {cell}", f"row {cell} {cell}", f"make {method}", size="8 in")
    assert bias(facts) == {}
    assert format_bias(facts) == ""


def test_segments_of_a_star_that_are_cut_at_45_degrees_have_their_ends_on_the_bias() -> None:
    star = "row (star45 points lantern moss rows 3 ground fog corners slate)"
    facts = block(star, "make star45 as strip set", size="16 in")
    # the diamonds' cut ends; the triangles are quarters of squares; the corners are squares
    assert bias(facts) == {"A": ("some", 2, 4, 0), "B": ("short", 2, 3, 0)}


def test_quarter_squares_with_their_long_edge_on_the_outside_are_cut_twice() -> None:
    facts = block("row (hourglass fog slate)", size="6 in")
    assert cut_lines(facts, "fog") == ["fog: 1 square 7 1/4 twice for 4, 2 spare"]
    assert bias(facts) == {"A": ("short", 2, 3, 0)}


def test_a_right_triangle_with_its_long_edge_outside_is_cut_with_that_edge_on_the_grain() -> None:
    facts = block(*TILTED, size="25 x 12 in")
    (cut,) = [cut for cut in facts.cutting if cut.fabric == "fog"]
    assert cut.piece == "template"
    assert bias(facts)["A"] == ("some", 2, 3, 0)
    # the others have their legs outside, and are halves of rectangles
    assert {cut.piece for cut in facts.cutting if cut.fabric != "fog"} == {"rectangle"}


def test_a_trapezoid_with_its_slanted_end_outside_is_cut_with_that_end_on_the_grain() -> None:
    # lying at 45°, its slanted end is the upper right of the block's top edge
    facts = block(
        "grid 4 x 4",
        "patch fog at 2,0 4,0 1,3 0,2",
        "patch slate at 0,0 2,0 0,2",
        "patch moss at 4,0 4,4 0,4 0,2 1,3",
        size="4 in",
    )
    fog = next(cut for cut in facts.cutting if cut.fabric == "fog")
    assert fog.piece == "template"
    assert {each.label: each.outside for each in facts.bias}[fog.label] == 0


def test_a_diamond_may_be_turned_so_that_its_outer_edge_is_the_straight_one() -> None:
    # 45° diamonds with edges of 2√2 in, one with a level edge outside, the other a quarter turn on
    facts = block(
        "grid 8 x 8",
        "patch fog at 0,0 2r2,0 2+2r2,2 2,2",
        "patch fog at 8,0 8,2r2 6,2+2r2 6,2",
        "patch slate at 2r2,0 8,0 6,2 2+2r2,2",
        "patch slate at 0,0 2,2 6,2 6,2+2r2 8,2r2 8,8 0,8",
        size="8 in",
    )
    assert {cut.piece for cut in facts.cutting if cut.fabric == "fog"} == {"diamond"}
    assert bias(facts)["A"] == ("some", 2, 4, 0)


def test_the_other_hand_of_a_diamond_at_the_edge_is_cut_the_other_way() -> None:
    # the same diamond, but its mirror image lies along the left side: no turn lays its straight edges there
    facts = block(
        "grid 8 x 8",
        "patch fog at 0,0 2r2,0 2+2r2,2 2,2",
        "patch fog at 0,0 2,2 2,2+2r2 0,2r2",
        "patch slate at 2r2,0 8,0 8,2 2+2r2,2",
        "patch slate at 2,2 8,2 8,8 0,8 0,2r2 2,2+2r2",
        size="8 in",
    )
    cuts = [cut for cut in facts.cutting if cut.fabric == "fog"]
    assert [(cut.piece, cut.count, cut.outside) for cut in cuts] == [("diamond", 1, False), ("diamond", 1, True)]
    slants = [cut.strip.slant for cut in cuts if cut.strip]
    assert set(slants) == {"falling", "rising"}
    assert bias(facts)["A"] == ("some", 2, 4, 0)


def test_what_cannot_be_kept_straight_is_told_on_the_sheet() -> None:
    facts = block("row fog/slate fog\\slate", "row slate\\fog slate/fog", "grain A long edge", size="6 in")
    assert cut_lines(facts, "fog") == ["fog: 1 square 5 1/2 twice for 4"]  # 3√2 + 1/4 (2 + 2√2) = 5.4497
    # the four in the corners have both their short edges outside
    assert bias(facts) == {"A": ("short", 2, 3, 4)}
    assert "outer edge of A is on the bias" in format_bias(facts)


def test_a_parallelogram_is_cut_along_the_edges_that_the_designer_keeps_straight() -> None:
    rows = (
        "grid 6 x 2",
        "patch fog at 0,0 2,0 0,2",
        "patch slate at 2,0 5,0 3,2 0,2",
        "patch moss at 5,0 6,0 6,2 3,2",
    )
    long = next(cut for cut in block(*rows, size="6 x 2 in").cutting if cut.label == "B")
    short = next(cut for cut in block(*rows, "grain B short edges", size="6 x 2 in").cutting if cut.label == "B")
    assert long.strip is not None
    assert short.strip is not None
    # 2 in and 3/√2 in apart, half an inch more with the seams
    assert long.strip.exact == (Fraction(5, 2), 3 / square_root(Fraction(2)) + Fraction(1, 2))
    assert short.strip.exact == long.strip.exact[::-1]


def test_templates_show_the_grain_that_the_pieces_are_cut_by() -> None:
    template = block("row fog/slate", "grain A long edge", size="3 in").templates[0]
    long_edge = max((step(a, b) for a, b in edges(template.sewing)), key=lambda side: side.x * side.x + side.y * side.y)
    assert template.grain[0] * long_edge.y == template.grain[1] * long_edge.x


def test_a_grain_line_for_a_letter_that_is_not_there_is_told_with_the_letters_that_are() -> None:
    problem = one_error("row fog/slate lantern", "grain C long edge", size="6 x 3 in")
    assert (problem.code, problem.help) == ("grain-letter-unknown", "its letters are A, B")
    assert problem.span.text == "C"


def test_a_grain_line_for_a_square_leaves_nothing_to_choose() -> None:
    assert one_error("row fog/slate lantern", "grain B short edges", size="6 x 3 in").code == "grain-without-choice"


def test_a_block_of_squares_has_nothing_on_the_bias_and_says_nothing_of_it() -> None:
    facts = block("row fog slate", size="6 x 3 in")
    assert facts.bias == ()
    assert format_bias(facts) == ""
