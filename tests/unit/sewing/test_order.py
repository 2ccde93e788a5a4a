"""The order in which a block is sewn: rows, pairs, corners, long seams last.

Orders were worked out on paper as a teacher would draw them: common practice, no source.
Written as parts in brackets; fog, lantern, slate and moss by their first letters.
"""

import pytest

from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.order import Joined, Unsewable, find_order, subunits
from tests.unit.sewing.order_sample import drawn, laid, order_of, rectangle, seams, told


def whole(*numbers: int) -> tuple[Fraction, ...]:
    return tuple(Fraction(number) for number in numbers)


def shape(words: str, size: str = "4 in") -> str:
    return told(drawn(f"row ({words})", size=size))


# --- one shape ----------------------------------------------------------------------------------------


def test_a_block_of_one_patch_is_that_patch() -> None:
    assert told(drawn("row fog")) == "f"


def test_a_half_square_triangle_is_one_seam() -> None:
    assert shape("half fog slate") == "(f s)"


def test_three_rails_are_sewn_side_by_side_along_two_parallel_seams() -> None:
    order = order_of(drawn("row (rails fog lantern slate)", size="3 in"))
    assert isinstance(order, Joined)
    assert len(order.parts) == 3
    assert [(*seam.start, *seam.end) for seam in order.seams] == [whole(0, 1, 3, 1), whole(0, 2, 3, 2)]
    assert [seam.kind for seam in order.seams] == ["straight", "straight"]


def test_a_split_square_joins_the_small_triangles_first_and_the_long_seam_last() -> None:
    assert shape("split fog lantern slate") == "(f (l s))"


def test_quarters_are_two_pairs_and_then_the_long_seam() -> None:
    assert shape("quarters fog lantern slate moss") == "((f l) (m s))"


def test_an_hourglass_is_one_pair_made_twice_and_then_the_long_seam() -> None:
    assert shape("hourglass fog slate") == "((f s) (s f))"


def test_geese_take_one_sky_and_then_the_other() -> None:
    assert shape("geese fog on slate lantern", "4 x 2 in") == "((s f) l)"


def test_a_square_in_a_square_takes_opposite_corners_first() -> None:
    assert shape("diamond fog on slate lantern slate lantern") == "(l (s f s) l)"


def test_a_nine_patch_on_point_is_sewn_whole_before_its_corners_are_added() -> None:
    """Its rows run on into two of the corners, but no row is sewn to a corner first."""
    corners = (((0, 0), (3, 0), (0, 3)), ((3, 0), (6, 0), (6, 3)), ((6, 3), (6, 6), (3, 6)), ((3, 6), (0, 6), (0, 3)))
    squares = [
        ((3 + x - y, x + y), (4 + x - y, 1 + x + y), (3 + x - y, 2 + x + y), (2 + x - y, 1 + x + y))
        for x in range(3)
        for y in range(3)
    ]
    fabrics = "lslslslsl"
    design = laid([*(("f", each) for each in corners), *zip(fabrics, squares, strict=True)], 6, 6)
    assert told(design) == "(f (f ((l s l) (s l s) (l s l)) f) f)"


def test_a_snowball_takes_its_corners_one_after_the_other() -> None:
    assert shape("snowball fog with slate cut 1/4") == "((((s f) s) s) s)"


def test_a_snowball_with_two_opposite_corners_takes_one_and_then_the_other() -> None:
    assert shape("snowball fog with slate at tl br cut 1/4") == "((s f) s)"


def test_bars_that_come_twice_over_are_sewn_in_pairs() -> None:
    assert shape("bars fog slate fog slate") == "((f s) (f s))"


def test_a_four_patch_is_one_pair_made_twice() -> None:
    assert shape("checker 2 x 2 fog slate") == "((f s) (s f))"


def test_a_nine_patch_is_three_rows() -> None:
    assert shape("checker 3 x 3 fog slate", "3 in") == "((f s f) (s f s) (f s f))"


# --- whole blocks -------------------------------------------------------------------------------------


def test_a_grid_is_sewn_into_rows_and_the_rows_into_the_block() -> None:
    assert told(drawn("row fog slate moss", "row slate lantern fog")) == "((f s m) (s l f))"


def test_columns_are_sewn_where_a_cell_goes_over_two_rows() -> None:
    assert told(drawn("row fog slate", "row fog |", "row moss slate")) == "((f f m) (s s))"


def test_a_star_is_three_rows_with_its_geese_made_first() -> None:
    star = drawn(
        "columns 1 2 1",
        "heights 1 2 1",
        "row fog beam fog",
        "row beam< moss beam>",
        "row fog beam>> fog",
        above="unit beam = geese slate on lantern",
    )
    # The first sky comes left of the goose; turned, it is above, on the right, below: parts are told as they lie.
    assert told(star) == "((f ((l s) l) f) (((s l) l) m ((l s) l)) (f ((s l) l) f))"


def test_units_are_sewn_before_the_rows_they_lie_in() -> None:
    # The two columns of squares on the left would line up across the block; the unit is kept together.
    block = drawn("row four fog", "row fog four", above="unit four = checker 2 x 2 fog slate")
    assert told(block) == "((((f s) (s f)) f) (f ((f s) (s f))))"


def test_units_in_units_are_sewn_from_the_inside_out() -> None:
    nested = "unit inner = checker 2 x 2 fog slate\nunit outer\n  row inner moss\n  row moss inner"
    four = "((f s) (s f))"
    outer = f"(({four} m) (m {four}))"
    assert told(drawn("row outer lantern", above=nested, size="8 x 4 in")) == f"({outer} l)"


def test_four_alike_quarters_are_sewn_as_one_unit_made_four_times() -> None:
    # Drawn square by square on a 4 × 4 grid; each quarter is the one before it turned.
    rows = ("row fog moss slate fog", "row slate lantern lantern moss")
    block = drawn(*rows, "row moss lantern lantern slate", "row fog slate moss fog")
    units = subunits(order_of(block), block)
    assert [unit.count for unit in units if len(unit.picture) == 4] == [4]
    assert told(block) == "((((f m) (s l)) ((s l) (f m))) (((m f) (l s)) ((l s) (m f))))"


def test_what_looks_like_a_unit_elsewhere_is_sewn_as_the_unit_is() -> None:
    # By the unit's own cells it is two columns; the same picture square by square would be sewn in rows.
    above = "unit pair\n  row (rails fog slate) (rails moss lantern)"
    block = drawn("row pair - fog moss", "row | | slate lantern", above=above, size="8 x 2 in")
    assert told(block) == "(((f s) (m l)) ((f s) (m l)))"


def test_a_unit_is_taken_apart_where_that_spares_a_partial_seam() -> None:
    # Four pairs turned round a square would be a pinwheel. With the first pair opened, its square on the left goes to
    # the column below it, and everything else is sewn straight.
    above = "unit pair\n  row fog slate"
    block = drawn("row pair - pair>", "row pair< moss |", "row | pair>> -", above=above)
    assert told(block) == "((f (s f)) (((s m) (f s)) (s f)))"
    assert seams(block) == (8, 0, 0)


def test_a_block_with_a_gap_cannot_be_sewn_and_says_where() -> None:
    gap = laid([("fog", rectangle(0, 0, 2, 1)), ("slate", rectangle(0, 1, 1, 2))], 2, 2)
    assert find_order(gap) == Unsewable((0, 1))


def test_overlapping_patches_cannot_be_sewn_and_are_named() -> None:
    overlap = laid(
        [("fog", rectangle(0, 0, 2, 1)), ("slate", rectangle(0, 0, 2, 1)), ("fog", rectangle(0, 1, 2, 2))], 2, 2
    )
    found = find_order(overlap)
    assert isinstance(found, Unsewable)
    assert set(found.patches) == {0, 1}


@pytest.mark.parametrize("turn", ["", ">", ">>", "<", "~", "~>"])
def test_a_unit_is_sewn_in_the_same_way_however_it_is_turned(turn: str) -> None:
    above = "unit corner\n  row fog fog/slate\n  row fog/slate moss"
    order = order_of(drawn(f"row corner corner{turn}", above=above, size="8 x 4 in"))
    assert isinstance(order, Joined)
    shapes = [sorted(len(part.patches) for part in unit.parts) for unit in order.parts if isinstance(unit, Joined)]
    assert shapes == [[3, 3], [3, 3]]
