"""Lengths as a quilter reads them."""

from fractions import Fraction

import pytest

from blockdsl.drawing.lengths import plain_extent, plain_length, show_extent, show_length, show_measure
from blockdsl.geometry import square_root


@pytest.mark.parametrize(
    ("length", "words"),
    [
        (Fraction(3), "3"),
        (Fraction(7, 8), "7/8"),
        (Fraction(23, 8), "2 7/8"),
        (Fraction(12, 5), "2 2/5"),
        (Fraction(0), "0"),
        (Fraction(-1, 2), "-1/2"),
    ],
)
def test_inches_are_told_as_whole_numbers_with_fractions(length: Fraction, words: str) -> None:
    assert plain_length(length, "in") == words


@pytest.mark.parametrize(
    ("length", "words"),
    [(Fraction(15, 2), "7.5"), (Fraction(3, 4), "0.75"), (Fraction(30), "30"), (Fraction(1, 3), "about 0.3")],
)
def test_centimetres_are_told_as_decimals(length: Fraction, words: str) -> None:
    assert plain_length(length, "cm") == words


def test_a_diagonal_is_told_to_the_nearest_sixteenth_of_an_inch_and_says_about() -> None:
    # 3√2 = 4.2426…; in sixteenths 67.88, so 68/16 = 4 1/4.
    assert plain_length(3 * square_root(Fraction(2)), "in") == "about 4 1/4"


def test_a_diagonal_in_centimetres_is_told_to_the_nearest_millimetre() -> None:
    # 7.5√2 = 10.6066…
    assert plain_length(Fraction(15, 2) * square_root(Fraction(2)), "cm") == "about 10.6"


def test_a_fraction_that_no_reader_can_picture_is_told_about() -> None:
    # 37/113 = 0.3274…; in sixteenths 5.24, so 5/16.
    assert plain_length(1 + Fraction(37, 113), "in") == "about 1 5/16"


def test_fractions_are_set_with_raised_and_lowered_figures() -> None:
    assert show_length(Fraction(23, 8), "in") == "2 ⁷⁄₈"
    assert show_measure(Fraction(1, 4), "in") == "¹⁄₄ in"


def test_both_sides_of_a_square_are_told() -> None:
    assert plain_extent((Fraction(7, 2), Fraction(7, 2)), "in") == "3 1/2 × 3 1/2"
    assert show_extent((Fraction(13, 2), Fraction(7, 2)), "in") == "6 ¹⁄₂ × 3 ¹⁄₂ in"
