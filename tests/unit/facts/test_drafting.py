"""On what squared paper a block is drawn, and at which sizes a ruler reads it."""

import pytest

from blockdsl.facts.drafting import DraftFacts, SizeFacts, at_width, draft, size_table
from blockdsl.geometry.fraction import Fraction, read_fraction
from tests.unit.model.blocks import block, exactly

NINE = ("row fog slate fog", "row slate fog slate", "row fog slate fog")


def drawn(*lines: str, size: str) -> DraftFacts:
    """What such a block is drawn on."""
    return draft(block(*lines, size=size))


def at(width: str, *lines: str, size: str) -> SizeFacts:
    """Such a block at another width in inches."""
    facts = block(*lines, size=size)
    return at_width(facts, read_fraction(width), "in", draft(facts))


def test_a_nine_patch_is_drawn_on_three_by_three_squares() -> None:
    drawing = drawn(*NINE, size="6 in")
    assert exactly((drawing.kind, drawing.across, drawing.down, drawing.cell, drawing.family)) == (
        "squares",
        3,
        3,
        2,
        "nine-patch",
    )


def test_the_crossing_of_an_hourglass_asks_for_squares_of_half_the_size() -> None:
    # 3 x 3 cells, the hourglass crossing in the middle of its cell: 6 x 6 squares; halving keeps the family
    drawing = drawn("row fog fog fog", "row fog (hourglass slate fog) fog", "row fog fog fog", size="6 in")
    assert exactly((drawing.across, drawing.down, drawing.cell, drawing.family)) == (6, 6, 1, "nine-patch")


@pytest.mark.parametrize(
    ("columns", "squares", "family"),
    [("1 2 1", 4, "four-patch"), ("2 1 2", 5, "five-patch"), ("2 2 1 2", 7, "seven-patch"), ("1", 1, "one-patch")],
)
def test_columns_of_whole_numbers_lie_on_as_many_squares_as_they_add_up_to(
    columns: str, squares: int, family: str
) -> None:
    count = len(columns.split())
    rows = [f"row {' '.join(('fog', 'slate')[(row + column) % 2] for column in range(count))}" for row in range(count)]
    drawing = drawn(f"columns {columns}", f"heights {columns}", *rows, size=f"{squares} in")
    assert exactly((drawing.across, drawing.down, drawing.cell, drawing.family)) == (squares, squares, 1, family)


def test_the_squares_are_square_on_an_oblong_block() -> None:
    drawing = drawn("row fog slate", size="6 x 2 in")
    assert exactly((drawing.across, drawing.down, drawing.cell)) == (6, 2, 1)


def test_corners_at_roots_of_two_lie_on_no_squared_paper() -> None:
    drawing = drawn("grid 2 x 2", "patch fog at 0,0 2-r2,0 0,2", "patch slate at 2-r2,0 2,0 2,2 0,2", size="6 in")
    assert drawing.kind == "eight-point"


def test_corners_at_roots_of_three_are_sixty_degree_work() -> None:
    drawing = drawn("grid 2 x 2", "patch fog at 0,0 1,0 0,r3", "patch slate at 1,0 2,0 2,2 0,2 0,r3", size="6 in")
    assert drawing.kind == "sixty degrees"


def test_a_drawing_finer_than_sixty_four_squares_has_no_grid_of_use() -> None:
    drawing = drawn("columns 1 99", "row fog slate", size="6 in")
    assert (drawing.kind, drawing.cell) == ("none", None)


def test_a_size_is_read_off_the_ruler_when_every_square_is() -> None:
    # thirds of 9 in are 3 in; thirds of 7 in are 2 1/3 in, which no eighth shows
    assert at("9", *NINE, size="6 in").off is None
    assert at("7", *NINE, size="6 in").off == Fraction(7, 3)


def test_a_friendly_size_has_its_measures_on_halves_and_no_narrow_patch() -> None:
    # 4 1/2 in makes squares of 1 1/2 in; 3 3/4 in makes 1 1/4 in, on the ruler but on no half; 1 1/2 in makes 1/2 in
    friendly = {width: at(width, *NINE, size="6 in").friendly for width in ("9/2", "15/4", "3/2")}
    assert friendly == {"9/2": True, "15/4": False, "3/2": False}


def test_the_smallest_patch_and_the_cell_grow_with_the_block() -> None:
    row = at("9", "columns 1 2", "heights 1", "row fog slate", size="6 in")
    assert exactly((row.cell, row.smallest, row.finished, row.unfinished)) == (
        3,
        ("A", (3, 9)),
        (9, 9),
        (Fraction(19, 2), Fraction(19, 2)),
    )


def test_diagonal_sizes_are_told_apart_from_those_off_the_ruler() -> None:
    row = at("6", "row (diamond fog on slate)", size="6 in")
    assert row.rooted
    assert row.off is None


@pytest.mark.parametrize(("unit", "first", "last", "rows"), [("in", 3, 24, 43), ("cm", 8, 60, 53)])
def test_the_table_goes_from_3_to_24_inches_by_halves_and_from_8_to_60_centimetres(
    unit: str, first: int, last: int, rows: int
) -> None:
    table = size_table(block(*NINE, size="6 in"), unit)  # type: ignore[arg-type]
    assert exactly((table[0].finished[0], table[-1].finished[0], len(table))) == (first, last, rows)


def test_in_the_other_unit_the_usual_seam_holds() -> None:
    table = size_table(block(*NINE, size="6 in"), "cm")
    assert table[1].unfinished == (Fraction(21, 2), Fraction(21, 2))


def test_an_eight_point_star_is_drawn_on_the_lines_through_its_corners() -> None:
    # lines at both sides, the points, the inner corners and the middle: seven each way
    drawing = drawn("row (star45 points slate lantern ground fog)", size="8 in")
    assert (drawing.kind, drawing.across, drawing.down, drawing.cell) == ("eight-point", 6, 6, None)
    assert drawing.family == "eight-point star"


def test_a_log_cabin_is_drawn_on_as_many_squares_as_its_logs_are_wide() -> None:
    # a centre of 1 and two rounds of 1: five squares
    drawing = drawn("row (log centre moss with fog fog slate slate rounds 2)", size="5 in")
    assert exactly((drawing.across, drawing.down, drawing.cell, drawing.family)) == (5, 5, 1, "rounds")


def test_quarter_circles_are_drawn_on_squares_with_a_compass() -> None:
    # radius two thirds of the side: three squares
    drawing = drawn("row (curve slate in fog)", size="3 in")
    assert (drawing.kind, drawing.across, drawing.family) == ("squares", 3, "curved")
