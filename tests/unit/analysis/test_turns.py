"""Turns: `>` a quarter turn clockwise, `<` anticlockwise, `~` mirrored left for right, in the order written."""

import pytest

from tests.unit.model.blocks import around, block, cloth_at, corners, one_error

QUARTERS = "(quarters fog lantern slate moss)"


@pytest.mark.parametrize(
    ("turns", "expected"),
    [
        ("", "fog lantern slate moss"),
        (">", "moss fog lantern slate"),
        ("<", "lantern slate moss fog"),
        ("~", "fog moss slate lantern"),
        (">>", "slate moss fog lantern"),
        ("<<", "slate moss fog lantern"),
        (">>>", "lantern slate moss fog"),
        (">>>>", "fog lantern slate moss"),
        ("><", "fog lantern slate moss"),
        ("~~", "fog lantern slate moss"),
        ("~>", "lantern fog moss slate"),
        (">~", "moss slate lantern fog"),
        ("~<", "moss slate lantern fog"),
        ("~>>", "slate lantern fog moss"),
        (">~>~", "fog lantern slate moss"),
    ],
)
def test_turns_apply_in_the_order_written(turns: str, expected: str) -> None:
    assert around(block(f"row {QUARTERS}{turns}")) == expected


@pytest.mark.parametrize(
    ("pair", "expected"),
    [
        ("fog/lantern", "fog lantern lantern fog"),
        ("fog\\lantern", "lantern lantern fog fog"),
        ("fog/lantern>", "fog fog lantern lantern"),
        ("fog\\lantern>", "fog lantern lantern fog"),
        ("fog/lantern<", "lantern lantern fog fog"),
        ("fog\\lantern<", "lantern fog fog lantern"),
        ("fog/lantern~", "fog fog lantern lantern"),
        ("fog\\lantern~", "lantern fog fog lantern"),
        ("fog/lantern>>", "lantern fog fog lantern"),
        ("fog\\lantern>>", "fog fog lantern lantern"),
        ("fog/lantern~>", "lantern fog fog lantern"),
    ],
)
def test_a_pair_is_drawn_as_it_looks_and_turned_after(pair: str, expected: str) -> None:
    assert around(block(f"row {pair}")) == expected


def test_both_slashes_keep_the_left_word_left_of_the_line() -> None:
    for pair in ("fog/lantern", "fog\\lantern"):
        facts = block(f"row {pair}")
        assert cloth_at(facts, "1/16", 6) == "fog"
        assert cloth_at(facts, "191/16", 6) == "lantern"


def test_a_pair_is_the_half_of_the_same_fabrics() -> None:
    assert block("row fog/lantern").placed == block("row (half fog lantern)").placed


def test_a_goose_turned_anticlockwise_points_left() -> None:
    facts = block("row (geese lantern on fog)<", size="6 x 12 in")
    assert cloth_at(facts, "1/16", 6) == "lantern"
    assert corners(facts).split()[0] == "fog"
    assert corners(facts).split()[3] == "fog"


def test_a_goose_with_two_skies_turned_clockwise_has_its_left_sky_on_top() -> None:
    facts = block("row (geese lantern on fog slate)>", size="6 x 12 in")
    assert cloth_at(facts, "95/16", "1/4") == "fog"
    assert cloth_at(facts, "95/16", "47/4") == "slate"


def test_a_mirrored_goose_has_its_right_sky_on_the_left() -> None:
    facts = block("row (geese lantern on fog slate)~", size="12 x 6 in")
    assert corners(facts) == "slate fog lantern lantern"


def test_a_plain_patch_may_be_turned() -> None:
    assert block("row fog> slate~", size="12 x 6 in").placed == block("row fog slate", size="12 x 6 in").placed


def test_a_turn_that_lays_a_goose_across_its_cell_is_told_to_turn_or_not_to() -> None:
    standing = one_error("row (geese lantern on fog)", size="6 x 12 in")
    assert standing.code == "unit-does-not-fit"
    assert "turn it with" in (standing.help or "")
    lying = one_error("row (geese lantern on fog)>", size="12 x 6 in")
    assert "take the turn off" in (lying.help or "")


def test_a_unit_of_rows_turns_as_a_whole() -> None:
    corner = "unit corner\n  row fog lantern\n  row slate moss\n"
    # fog lantern      slate fog
    # slate moss   →   moss  lantern
    assert corners(block("row corner", above=corner)) == "fog lantern moss slate"
    assert corners(block("row corner>", above=corner)) == "slate fog lantern moss"
    assert corners(block("row corner<", above=corner)) == "lantern moss slate fog"
    assert corners(block("row corner~", above=corner)) == "lantern fog slate moss"
    # mirrored it reads lantern fog over moss slate; then the left side, from below, becomes the top
    assert corners(block("row corner~>", above=corner)) == "moss lantern fog slate"
