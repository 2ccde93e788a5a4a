"""Borders and the rounds of medallions: their sizes, their corners, what they are pieced from."""

import pytest

from blockdsl.geometry import square_root
from blockdsl.geometry.fraction import Fraction as F  # noqa: N817 - they stand in tables of sizes
from blockdsl.geometry.symmetry import HALF_TURN, IDENTITY, QUARTER_ANTICLOCKWISE, QUARTER_CLOCKWISE
from tests.unit.model.blocks import exactly
from tests.unit.model.quilts import design, one_told, quilt, told

FOURS = 'set straight 3 x 4 of "Four"'


def cuts(*lines: str, role: str = "border") -> list[tuple[tuple[F, F], int]]:
    """Cut sizes and counts of the pieces of a role; strips of a border have 2 in to spare."""
    return [(piece.cut, piece.count) for piece in quilt(FOURS, *lines).pieces if piece.role == role]


def test_a_butted_border_is_sewn_to_the_sides_first_and_then_to_top_and_bottom() -> None:
    # round 18 x 24: sides as long as the top, top and bottom as wide as it and both sides; 1/4 in for each seam, and
    # 2 in to spare: 24 1/2 and 22 1/2 become 26 1/2 and 24 1/2
    assert cuts("border 2 in slate") == [((F(5, 2), F(53, 2)), 2), ((F(5, 2), F(49, 2)), 2)]


def test_top_first_turns_that_round() -> None:
    assert cuts("border 2 in slate butted top first") == [((F(5, 2), F(61, 2)), 2), ((F(5, 2), F(41, 2)), 2)]


def test_corner_squares_leave_all_four_strips_as_long_as_the_top() -> None:
    lines = ("border 2 in slate corners lantern",)
    assert cuts(*lines) == [((F(5, 2), F(53, 2)), 2), ((F(5, 2), F(41, 2)), 2)]
    assert cuts(*lines, role="border corner") == [((F(5, 2), F(5, 2)), 4)]


def test_a_mitred_border_is_cut_as_long_as_the_outer_edge_of_the_raw_top_and_two_inches() -> None:
    # finished 22 and 28 long, raw 22 1/2 and 28 1/2, and 2 in to spare. The tips reach less far: moved outward by
    # 1/4 in all round, a corner of 45° moves on by (1 + √2)/4 in = 0.6036, twice: 23.21 and 29.21
    assert cuts("border 2 in slate mitred") == [((F(5, 2), F(61, 2)), 2), ((F(5, 2), F(49, 2)), 2)]


def test_borders_lie_round_one_another_from_the_inside_out() -> None:
    facts = quilt(FOURS, "border 1 in fog", "border 2 1/2 in slate mitred")
    assert exactly([(ring.before, ring.after) for ring in facts.rings]) == [((18, 24), (20, 26)), ((20, 26), (25, 31))]
    assert facts.rings[1].unfinished == (F(51, 2), F(63, 2))
    assert exactly(facts.finished) == (25, 31)
    assert min(place.x for place in facts.placed) == F(7, 2)


def test_a_border_may_be_cut_along_the_length_of_its_cloth() -> None:
    facts = quilt(FOURS, "border 2 in slate along length")
    assert all(piece.lengthwise for piece in facts.pieces if piece.role == "border")
    assert not any(piece.joined for piece in facts.pieces)


def test_what_is_longer_than_the_cloth_is_wide_is_joined_unless_it_is_cut_along_the_length() -> None:
    long_ = quilt('set straight 3 x 8 of "Four"', "border 2 in slate")
    assert {piece.cut[1]: piece.joined for piece in long_.pieces} == {F(101, 2): True, F(49, 2): False}


def test_a_pieced_border_is_a_whole_number_of_units_on_every_side_their_tops_outward() -> None:
    # geese of 3 in, 6 in along the edge: 3 above, 4 beside
    laid = design(FOURS, "border 3 in pieced beam corners slate")
    places = [place for place in laid.blocks if place.ring == 1]
    assert [sum(place.row == side for place in places) for side in range(4)] == [3, 4, 3, 4]
    turns = {place.row: place.symmetry for place in places}
    assert turns == {0: IDENTITY, 1: QUARTER_CLOCKWISE, 2: HALF_TURN, 3: QUARTER_ANTICLOCKWISE}
    first = next(place for place in places if place.row == 0 and place.column == 0)
    assert exactly((first.x, first.y)) == (3, 0)


def test_units_may_be_turned_to_run_along_the_border() -> None:
    # on its side a goose of 3 in is 1 1/2 in along the edge: 12 above, 16 beside
    laid = design(FOURS, "border 3 in pieced beam> corners slate")
    assert [sum(p.row == side for p in laid.blocks if p.ring) for side in range(4)] == [12, 16, 12, 16]


def test_a_block_may_be_the_unit_of_a_border_at_its_height() -> None:
    facts = quilt(FOURS, 'border 2 in pieced "Chain" corners slate')
    kind = facts.kinds[1]
    assert exactly((kind.name, kind.role, kind.count, kind.block.finished)) == (
        "Chain",
        "border unit",
        2 * 9 + 2 * 12,
        (2, 2),
    )


def test_a_pieced_border_that_does_not_come_out_even_names_what_does() -> None:
    # 18 and 24 in: units of 5 in do not divide them; their common measure 6 in over 2 gives units of 3 in, geese of
    # 1 1/2 in; over 1 units of 6 in, geese of 3 in; a plain border of 1 in makes 20 of 18, but 26 of 24
    problem = one_told(FOURS, "border 2 1/2 in pieced beam corners slate")
    assert problem.code == "border-does-not-divide"
    assert "1 1/2 in or 3 in" in str(problem.help)


def test_a_plain_border_makes_room_for_whole_units_where_one_width_does_for_both_sides() -> None:
    # 14 x 18 in, geese 4 in along the edge: 1 in all round makes 16 and 20
    strips = 'set strippy 2 x 3 of "Four"'
    problem = one_told(strips, "sash 2 in slate", "border 2 in pieced beam corners slate")
    assert "`border 1 in …` inside it" in str(problem.help)
    whole = quilt(strips, "sash 2 in slate", "border 1 in fog", "border 2 in pieced beam corners slate")
    assert exactly(whole.finished) == (14 + 2 + 4, 18 + 2 + 4)


def test_a_plain_border_that_is_there_is_told_the_widths_that_make_room() -> None:
    # 14 x 18 in; geese of 4 in fill 16 and 20 or 20 and 24: 1 in or 3 in all round
    strips = 'set strippy 2 x 3 of "Four"'
    problem = one_told(strips, "sash 2 in slate", "border 1 1/2 in fog", "border 2 in pieced beam corners slate")
    assert problem.help == "make the plain border inside it 1 in or 3 in wide, so that the units fit"
    whole = quilt(strips, "sash 2 in slate", "border 3 in fog", "border 2 in pieced beam corners slate")
    assert exactly(whole.finished) == (14 + 6 + 4, 18 + 6 + 4)


def test_sides_that_no_plain_border_evens_out_are_told_by_how_much_they_differ() -> None:
    # with sashes of 1/2 in 19 x 25 1/2 in: 6 1/2 in apart, and no plain border makes that 6 in, as long as a goose;
    # they are 38 and 51 halves, with no measure in common but half an inch: geese of 1/4 in, which nobody meant
    problem = one_told(FOURS, "sash 1/2 in slate", "border 3 in pieced beam corners slate")
    assert "differs by 6 1/2 in" in str(problem.help)
    assert "1/4 in" not in str(problem.help)


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ("border 19 in slate", "border-too-wide"),
        ("border 3 in pieced beam mitred", "border-corners"),
        ("border 3 in slate mitred corners fog", "border-corners"),
        ("border 0 in slate", "length-not-positive"),
        ("border 3 cm slate", "units-mixed"),
        ("border 3 in slat", "name-unknown"),
        ("border 3 in beam", "name-unknown"),
        ("border 3 in pieced fog", "name-unknown"),
        ('border 3 in pieced "Fore"', "name-unknown"),
    ],
)
def test_a_border_that_cannot_be_is_told_once(line: str, code: str) -> None:
    assert [problem.code for problem in told(FOURS, line)] == [code]


def test_a_block_that_cannot_be_sewn_so_small_is_told_at_its_border() -> None:
    curved = 'block "Curved"\n size 6 in\n row (curve lantern in fog)'
    problem = one_told(FOURS, 'border 1/2 in pieced "Curved" corners fog', above=curved)
    assert (problem.code, problem.span.text) == ("curve-too-tight", "1/2 in")


def test_a_medallion_grows_round_by_round() -> None:
    facts = quilt('set medallion of "Four"', "round 3 in lantern", 'round "Four"', "border 2 in slate")
    # 6, then 12, then blocks of 6 all round: 24, then 28
    assert exactly([ring.after for ring in facts.rings]) == [(12, 12), (24, 24), (28, 28)]
    assert [ring.word for ring in facts.rings] == ["round", "round", "border"]
    # one in the middle, 2 on each side, one at each corner
    assert facts.blocks == (("Four", 1 + 8 + 4),)


def test_a_medallion_on_point_has_four_corner_triangles() -> None:
    facts = quilt('set medallion on point of "Four"', "fill fog")
    assert facts.finished == (6 * square_root(F(2)), 6 * square_root(F(2)))
    (corners,) = facts.pieces
    assert (corners.role, corners.count, corners.cut) == ("corner triangle", 4, (F(41, 8), F(41, 8)))
