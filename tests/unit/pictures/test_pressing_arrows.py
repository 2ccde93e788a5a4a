"""Arrows over new seams show which way each is pressed."""

from __future__ import annotations

from blockdsl.marks.display_list import TextMark
from blockdsl.marks.theme import Box
from blockdsl.pictures.step import joined_picture
from tests.unit.model.blocks import block


def test_rows_that_are_pressed_opposite_ways_have_an_arrow_each_with_their_number() -> None:
    """Two rows alike: the seam of row 1 goes to the right, that of row 2 to the left."""
    facts = block("row fog slate", "row fog slate", size="6 in")
    fabrics = {fabric.name: fabric for fabric in facts.fabrics}
    figure, _ = joined_picture(facts.steps[0].hands[0], fabrics, Box(0, 0, 100, 60), "both rows")
    numbers = {mark.text: (mark.x_pt, mark.y_pt) for mark in figure.marks if isinstance(mark, TextMark)}
    assert set(numbers) == {"1", "2"}
    # One above the other along the seam, which runs down the middle.
    assert numbers["1"][1] < numbers["2"][1]
    assert abs(numbers["1"][0] - numbers["2"][0]) < 1
