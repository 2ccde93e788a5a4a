"""Numbers of areas in the pictures of foundation papers can be read, however many they are."""

from __future__ import annotations

import re
from itertools import combinations

import pytest

from blockdsl.marks.display_list import TextMark
from blockdsl.marks.prose import TextStyle, width_of
from blockdsl.marks.theme import Box
from blockdsl.pictures.scene import technique_picture
from tests.unit.model.blocks import block

PINEAPPLE = "(pineapple centre lantern with straight fog diagonal moss rounds {} strip 1/8)"


@pytest.mark.parametrize("rounds", [1, 3])
def test_no_number_of_an_area_lies_on_another(rounds: int) -> None:
    facts = block(f"row {PINEAPPLE.format(rounds)}", "make pineapple as foundation", size="10 in")
    pictures = [part.pictures[0] for step in facts.steps for part in step.lesson]
    most = 0
    for picture in pictures:
        figure = technique_picture(picture, facts.steps[0].fabrics, "in", Box(0, 0, 150, 75), "en-US")
        numbers = [mark for mark in figure.marks if isinstance(mark, TextMark) and re.fullmatch(r"A\d+", mark.text)]
        most = max(most, len(numbers))
        for one, other in combinations(numbers, 2):
            left, right = sorted((one, other), key=lambda mark: mark.x_pt)
            beside = right.x_pt - left.x_pt >= width_of(left.text, TextStyle(left.size_pt, "bold", "#000000"))
            below = abs(one.y_pt - other.y_pt) >= TextStyle(one.size_pt, "bold", "#000000").capitals_pt
            assert beside or below, (one.text, other.text)
    # The middle and what is sewn to it first are always named.
    assert most >= 9
