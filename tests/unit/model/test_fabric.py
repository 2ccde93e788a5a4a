"""How light a fabric looks."""

import pytest

from blockdsl.model import contrast, luminance, value_of


def test_black_and_white_are_the_ends_of_the_scale() -> None:
    assert luminance("#000000") == 0
    assert luminance("#ffffff") == pytest.approx(1)


def test_black_on_white_has_the_contrast_that_the_guidelines_give() -> None:
    # Web Content Accessibility Guidelines 2.1: the ratio runs from 1:1 to 21:1
    assert contrast("#000000", "#ffffff") == pytest.approx(21)
    assert contrast("#808080", "#808080") == pytest.approx(1)


def test_contrast_does_not_ask_which_comes_first() -> None:
    assert contrast("#804020", "#e0d0c0") == contrast("#e0d0c0", "#804020")


def test_green_looks_lighter_than_red_and_red_than_blue() -> None:
    # the weights of the three are 0.7152, 0.2126 and 0.0722
    assert [luminance(colour) for colour in ("#00ff00", "#ff0000", "#0000ff")] == pytest.approx(
        [0.7152, 0.2126, 0.0722]
    )


@pytest.mark.parametrize(("colour", "value"), [("#ffffff", "light"), ("#000000", "dark"), ("#a08060", "medium")])
def test_a_colour_has_a_value_of_its_own(colour: str, value: str) -> None:
    assert value_of(colour) == value
