"""Lengths as a quilter reads them."""

import pytest

from blockdsl.geometry import square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.wording import messages
from blockdsl.wording.lengths import drafted_length, plain_extent, plain_length, show_extent, show_length, show_measure


@pytest.mark.parametrize(
    ("length", "words"),
    [
        (Fraction(3), "3"),
        (Fraction(7, 8), "7/8"),
        (Fraction(23, 8), "2 7/8"),
        (Fraction(13, 16), "13/16"),
        (Fraction(0), "0"),
        (Fraction(-1, 2), "-1/2"),
    ],
)
def test_inches_are_told_as_whole_numbers_with_fractions(length: Fraction, words: str) -> None:
    assert plain_length(length, "in", messages()) == words


@pytest.mark.parametrize(
    ("length", "words"),
    [(Fraction(15, 2), "7.5"), (Fraction(3, 4), "0.75"), (Fraction(30), "30"), (Fraction(1, 3), "about 0.3")],
)
def test_centimetres_are_told_as_decimals(length: Fraction, words: str) -> None:
    assert plain_length(length, "cm", messages()) == words


def test_a_diagonal_is_told_to_the_nearest_eighth_of_an_inch_and_says_about() -> None:
    # 3√2 = 4.2426…; in eighths 33.94, so 34/8 = 4 1/4.
    assert plain_length(3 * square_root(Fraction(2)), "in", messages()) == "about 4 1/4"


def test_a_diagonal_in_centimetres_is_told_to_the_nearest_millimetre() -> None:
    # 7.5√2 = 10.6066…
    assert plain_length(Fraction(15, 2) * square_root(Fraction(2)), "cm", messages()) == "about 10.6"


@pytest.mark.parametrize(
    ("length", "words"),
    [
        # 5/6 of an inch is 6.67 eighths, so 7/8; 37/113 = 0.3274… is 2.62 eighths, so 3/8; 2/5 is 3.2 eighths
        (Fraction(11, 6), "about 1 7/8"),
        (1 + Fraction(37, 113), "about 1 3/8"),
        (Fraction(12, 5), "about 2 3/8"),
    ],
)
def test_a_fraction_that_no_ruler_shows_is_told_about(length: Fraction, words: str) -> None:
    assert plain_length(length, "in", messages()) == words


def test_the_lines_of_a_grid_are_told_exactly() -> None:
    assert drafted_length(Fraction(12, 5), "in", messages()) == "2 ²⁄₅"
    assert drafted_length(Fraction(63, 32), "in", messages()) == "1 ³¹⁄₃₂"
    assert drafted_length(3 * square_root(Fraction(2)), "in", messages()) == "about 4 ¹⁄₄"


def test_fractions_are_set_with_raised_and_lowered_figures() -> None:
    assert show_length(Fraction(23, 8), "in", messages()) == "2 ⁷⁄₈"
    assert show_measure(Fraction(1, 4), "in", messages()) == "¹⁄₄ in"


def test_both_sides_of_a_square_are_told() -> None:
    assert plain_extent((Fraction(7, 2), Fraction(7, 2)), "in", messages()) == "3 1/2 × 3 1/2"
    assert show_extent((Fraction(13, 2), Fraction(7, 2)), "in", messages()) == "6 ¹⁄₂ × 3 ¹⁄₂ in"
