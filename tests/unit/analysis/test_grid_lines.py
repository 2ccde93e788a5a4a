"""Rows, columns, heights, and cells that go on over several places."""

import pytest

from blockdsl.geometry.fraction import Fraction
from tests.unit.model.blocks import block, cloth_at, errors, exactly, one_error


def finished(*lines: str, size: str = "12 in") -> list[tuple[str, object]]:
    return [(patch.fabric, patch.finished) for patch in block(*lines, size=size).patches]


def test_cells_are_alike_when_nothing_is_said() -> None:
    facts = block("row fog slate fog", "row slate fog slate", size="12 x 10 in")
    assert exactly(facts.columns) == (4, 4, 4)
    assert exactly(facts.heights) == (5, 5)


def test_columns_share_the_width_and_heights_the_height() -> None:
    facts = block("columns 1 2 1", "heights 2 1", "row fog slate fog", "row slate fog slate")
    assert exactly(facts.columns) == (3, 6, 3)
    assert exactly(facts.heights) == (8, 4)
    assert facts.grid == (4, 3)
    assert cloth_at(facts, 6, 7) == "slate"


def test_a_column_may_be_one_and_a_half_wide() -> None:
    facts = block("columns 1 1/2 1", "row fog slate", size="10 in")
    assert exactly(facts.columns) == (6, 4)


def test_a_narrow_cross_has_columns_of_its_own_measure() -> None:
    # 7 in, the cross a fifth of the rest: 3 in, 1 in, 3 in
    facts = block("columns 3 1 3", "row fog slate fog", size="7 x 3 in")
    assert exactly(facts.columns) == (3, 1, 3)


def test_a_dash_goes_on_with_the_cell_on_its_left() -> None:
    assert finished("row fog - slate", size="12 x 4 in") == [("fog", (4, 8)), ("slate", (4, 4))]


def test_a_bar_goes_on_with_the_cell_above() -> None:
    facts = block("row fog slate", "row | moss", size="6 in")
    assert exactly([(patch.fabric, patch.finished) for patch in facts.patches]) == [
        ("fog", (3, 6)),
        ("slate", (3, 3)),
        ("moss", (3, 3)),
    ]


@pytest.mark.parametrize("below", ["| |", "| -"])
def test_a_cell_over_two_rows_and_two_columns_is_one_patch(below: str) -> None:
    facts = block("row fog - slate", f"row {below} slate", size="6 x 4 in")
    assert exactly([(patch.fabric, patch.finished, patch.count) for patch in facts.patches]) == [
        ("fog", (4, 4), 1),
        ("slate", (2, 2), 2),
    ]


def test_a_unit_may_lie_over_several_cells() -> None:
    facts = block("row (geese lantern on fog) -", "row fog slate", size="6 in")
    assert exactly([(unit.title, unit.finished) for unit in facts.units]) == [("flying geese", (6, 3))]


def test_a_unit_over_unequal_columns_fills_their_sum() -> None:
    facts = block("columns 1 2", "heights 3 1", "row fog/slate -", "row fog slate", size="12 x 16 in")
    assert exactly([unit.finished for unit in facts.units]) == [(12, 12)]


@pytest.mark.parametrize("row", ["row - fog", "row | fog"])
def test_there_is_nothing_to_go_on_with_at_the_edge(row: str) -> None:
    assert one_error(row).code == "nothing-to-continue"


def test_a_cell_that_goes_on_round_a_corner_is_no_rectangle() -> None:
    assert one_error("row fog slate", "row | -").code == "continue-not-rectangular"
    assert one_error("row fog - slate", "row | moss slate").code == "continue-not-rectangular"


def test_a_row_with_a_cell_too_many_is_marked_from_that_cell() -> None:
    problem = one_error("row fog slate", "row slate fog moss")
    assert problem.code == "row-too-long"
    assert problem.span.text == "moss"


def test_a_row_with_a_cell_too_few_is_told_how_many_the_first_has() -> None:
    problem = one_error("row fog slate", "row slate")
    assert problem.code == "row-too-short"
    assert "the row has 1 cell;" in problem.message
    assert "2" in problem.message


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ("columns 1 2 1", "columns-do-not-match"),
        ("columns 1", "columns-do-not-match"),
        ("heights 1 2", "heights-do-not-match"),
        ("columns 0 1", "length-not-positive"),
        ("heights 0", "length-not-positive"),
    ],
)
def test_columns_and_heights_agree_with_the_rows(line: str, code: str) -> None:
    assert one_error(line, "row fog slate").code == code


def test_columns_said_twice_are_one_mistake() -> None:
    assert one_error("columns 1 2", "columns 2 1", "row fog slate").code == "setting-twice"


def test_rows_and_free_patches_do_not_stand_in_one_block() -> None:
    assert one_error("row fog", "grid 1 x 1", "patch slate at 0,0 1,0 1,1").code == "grid-mixed"


def test_a_block_without_rows_is_told_what_to_give() -> None:
    problem = one_error('note "Nothing yet"')
    assert problem.code == "rows-missing"
    assert problem.message == "the block `Mine` has no rows"


def test_two_hundred_cells_are_enough_and_two_hundred_and_one_too_many() -> None:
    assert errors("row " + "fog slate " * 100, size="200 x 1 in") == []
    assert one_error("row " + "fog " * 201, size="201 x 1 in").code == "too-many-cells"
    assert one_error(*["row fog"] * 201, size="1 x 201 in").code == "too-many-cells"


def test_squared_paper_counts_the_least_even_grid() -> None:
    facts = block("columns 2 1 1", "heights 3 1", "row fog slate fog", "row slate fog slate", size="8 in")
    assert facts.grid == (4, 4)
    assert exactly(facts.cell) == (2, 2)


def test_no_squared_paper_helps_a_narrow_cross() -> None:
    # 12 in as 5 7/8, 1/4, 5 7/8 would take 48 squares for three columns
    facts = block("columns 47 2 47", "heights 1", "row fog slate fog", size="12 x 6 in")
    assert facts.columns == (Fraction(47, 8), Fraction(1, 4), Fraction(47, 8))
    assert facts.grid == (3, 1)
    assert facts.cell is None
