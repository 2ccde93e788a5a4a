"""Small units that nobody has named: half squares, hourglasses, striped squares, points of stars, boxes of cubes.

What should be sewn first was worked out by hand; common practice, no source.
"""

from __future__ import annotations

from tests.unit.sewing.order_sample import drawn, seams, told


def free(*patches: str, grid: str = "2 x 2") -> tuple[str, ...]:
    """Patches drawn one by one: `slate 0,0 1,0 0,1`."""
    lines = (patch.split(" ", maxsplit=1) for patch in patches)
    return (f"grid {grid}", *(f"patch {fabric} at {places}" for fabric, places in lines))


def test_a_half_square_drawn_as_two_triangles_is_sewn_before_anything_takes_its_edges() -> None:
    # A small half square in the corner, a triangle at its right and one below it, the large triangle last.
    duck = free("fog 0,0 1,0 0,1", "slate 1,0 1,1 0,1", "fog 1,0 2,0 1,1", "fog 0,1 1,1 0,2", "moss 2,0 2,2 0,2")
    assert told(drawn(*duck)) == "((((f s) f) f) m)"


def test_a_staircase_of_half_squares_is_sewn_in_rows_and_not_in_ragged_diagonals() -> None:
    birds = free(
        "slate 0,0 1,0 0,1", "fog 1,0 1,1 0,1", "slate 1,0 2,0 1,1", "fog 2,0 2,1 1,1", "slate 2,0 3,0 2,1",
        "slate 0,1 1,1 0,2", "fog 1,1 1,2 0,2", "slate 1,1 2,1 1,2", "slate 0,2 1,2 0,3", "moss 3,0 3,3 0,3",
        grid="3 x 3",
    )  # fmt: skip
    # Two half squares and a triangle, one and a triangle, a triangle; the rows joined, and then the large half.
    assert told(drawn(*birds)) == "((((s f) (s f) s) ((s f) s) s) m)"


def test_a_half_rectangle_drawn_as_two_triangles_is_sewn_first_too() -> None:
    long = free("fog 0,0 2,0 0,1", "slate 2,0 2,1 0,1", "moss 0,1 1,1 1,2 0,2", "slate 1,1 2,1 2,2 1,2")
    assert told(drawn(*long)) == "((f s) (m s))"


def test_an_hourglass_drawn_as_four_triangles_comes_before_the_triangles_round_it() -> None:
    # On point about it lie four triangles, whose long edges are its sides; each meets it as a half square would.
    middle = ("fog 1,1 3,1 2,2", "slate 3,1 3,3 2,2", "fog 3,3 1,3 2,2", "slate 1,3 1,1 2,2")
    round_it = ("moss 2,0 3,1 1,1", "moss 4,2 3,3 3,1", "moss 2,4 1,3 3,3", "moss 0,2 1,1 1,3")
    corners = ("lantern 0,0 2,0 0,2", "lantern 2,0 4,0 4,2", "lantern 4,2 4,4 2,4", "lantern 2,4 0,4 0,2")
    assert told(drawn(*free(*middle, *round_it, *corners, grid="4 x 4"))) == ("(l (l (m (m ((f s) (s f)) m) m) l) l)")


def test_a_half_square_on_its_corner_is_sewn_first_where_no_hourglass_claims_its_triangles() -> None:
    # At the top of the square on point lies a smaller one, fog and moss, parted upright along its diagonal.
    half = ("fog 2,0 2,2 1,1", "slate 1,1 2,2 0,2")
    squares = ("moss 2,0 3,1 2,2", "lantern 3,1 4,2 2,2", "fog 4,2 3,3 2,2", "moss 3,3 2,4 2,2", "fog 2,4 0,2 2,2")
    corners = ("slate 0,0 2,0 0,2", "slate 2,0 4,0 4,2", "slate 4,2 4,4 2,4", "slate 2,4 0,4 0,2")
    order = told(drawn(*free(*half, *squares, *corners, grid="4 x 4")))
    assert "(f m)" in order


def test_a_square_of_three_stripes_comes_before_what_lies_beside_it() -> None:
    striped = free(
        "slate 0,0 4,0 4,1 0,1", "fog 0,1 4,1 4,3 0,3", "slate 0,3 4,3 4,4 0,4",
        "moss 4,0 6,0 6,1 4,1", "lantern 4,1 6,1 6,4 4,4", "moss 0,4 3,4 3,6 0,6", "lantern 3,4 6,4 6,6 3,6",
        grid="6 x 6",
    )  # fmt: skip
    # Without the stripes a seam would run right across at the height of the first of them.
    assert told(drawn(*striped)) == "(((s f s) (m l)) (m l))"


def test_squares_side_by_side_are_no_stripes() -> None:
    assert told(drawn(*free("fog 0,0 1,0 1,1 0,1", "slate 1,0 2,0 2,1 1,1", "moss 0,1 2,1 2,2 0,2"))) == "((f s) m)"


def test_a_small_unit_is_opened_up_where_it_would_cost_a_partial_seam() -> None:
    # Five patches round each other; two of them are a square together, and sewing them first would lock the ring.
    ring = free(
        "slate 0,0 2,0 2,1 0,1", "fog 2,0 3,0 3,2 2,2", "slate 1,2 3,2 3,3 1,3", "fog 0,1 1,1 1,3 0,3",
        "moss 1,1 2,1 2,2 1,2", grid="3 x 3",
    )  # fmt: skip
    assert seams(drawn(*ring)) == (3, 1, 0)


def test_the_split_points_of_a_star_are_eight_diamonds_before_they_are_joined() -> None:
    order = told(drawn("row (star45 split fog slate ground moss)"))
    assert order.count("(f s)") + order.count("(s f)") == 8


def test_a_field_of_cubes_is_sewn_box_by_box_and_then_in_rows() -> None:
    order = told(drawn("row (cubes fog slate moss across 2)", size="6 in"))
    # Of each box left and right first, then the top set in.
    # Two boxes, trimmed at the top; half a box, a box, half a box; two boxes, trimmed at the bottom.
    first = "(((s m) f)!set-in ((s m) f)!set-in)"
    second = "((f m) ((s m) f)!set-in (f s))"
    assert order == f"({first} {second} {first})!set-in"


def test_what_lies_in_the_middle_is_whole_before_triangles_are_sewn_round_it() -> None:
    # A four patch on which two triangles lie at the left and right, two at top and bottom, four corners round all.
    four = ("fog 2,2 4,2 4,4 2,4", "slate 4,2 6,2 6,4 4,4", "slate 2,4 4,4 4,6 2,6", "fog 4,4 6,4 6,6 4,6")
    first = ("moss 2,2 2,6 0,4", "moss 6,2 8,4 6,6")
    second = ("lantern 2,2 4,0 6,2", "lantern 2,6 6,6 4,8")
    corners = ("fog 0,0 4,0 0,4", "fog 4,0 8,0 8,4", "fog 8,4 8,8 4,8", "fog 0,4 4,8 0,8")
    block = drawn(*free(*four, *first, *second, *corners, grid="8 x 8"))
    assert told(block) == "(f (f (l (m ((f s) (s f)) m) l) f) f)"
