"""The families that a book's index puts blocks into: the designer's word, or the grid (common practice, no source)."""

from __future__ import annotations

import pytest

from blockdsl.facts.drafting import draft
from blockdsl.wording import messages
from blockdsl.wording.sheet import families_in_order, format_family
from tests.unit.model.blocks import block


def squares(across: int) -> tuple[str, ...]:
    """Rows of squares, the fabrics in turn."""
    return tuple("row " + " ".join(("fog", "slate")[(x + y) % 2] for x in range(across)) for y in range(across))


@pytest.mark.parametrize(
    ("across", "family"),
    [
        (2, "Four-patch"),
        (3, "Nine-patch"),
        (4, "Four-patch"),
        (5, "Five-patch"),
        (6, "Nine-patch"),
        (7, "Seven-patch"),
        (11, "Other grids"),
        (18, "Nine-patch"),
    ],
)
def test_a_block_of_squares_belongs_to_the_family_of_its_grid(across: int, family: str) -> None:
    assert format_family(block(*squares(across), size=f"{across} in")) == family


@pytest.mark.parametrize("across", [2, 9, 10, 11, 14, 18])
def test_the_index_and_the_table_of_sizes_name_the_same_family(across: int) -> None:
    facts = block(*squares(across), size=f"{across} in")
    told = draft(facts).family
    assert format_family(facts).lower() == ("other grids" if "grid" in told else told)


def test_eighteen_squares_across_are_a_nine_patch() -> None:
    assert format_family(block(*squares(18), size="18 in")) == "Nine-patch"


def test_a_block_of_one_shape_has_the_family_of_its_shape() -> None:
    assert format_family(block("row (log centre fog with slate moss rounds 2)", size="6 in")) == "Rounds"


def test_columns_of_1_2_1_make_a_four_patch() -> None:
    facts = block("columns 1 2 1", "heights 1 2 1", *squares(3), size="12 in")
    assert format_family(facts) == "Four-patch"


def test_a_block_that_is_no_square_grid_is_put_with_the_others() -> None:
    assert format_family(block("row fog slate fog", "row slate fog slate", size="6 x 4 in")) == "Other grids"


def test_the_designers_own_word_goes_before_the_grid() -> None:
    facts = block("family basket", *squares(5), size="10 in")
    assert format_family(facts) == "Basket"


def test_families_of_grids_come_first_and_other_grids_last() -> None:
    said = ("Other grids", "Tree", "Five-patch", "Basket", "Four-patch")
    assert families_in_order(said, messages()) == ["Four-patch", "Five-patch", "Basket", "Tree", "Other grids"]
