"""What the steps say of the size and the name of what lies aslant in the block."""

from __future__ import annotations

import pytest

from blockdsl.facts import BlockFacts
from blockdsl.geometry import to_float
from tests.outside.virtual.library import blocks_of
from tests.unit.wording.said import texts


def library_block(family: str, name: str) -> BlockFacts:
    return next(facts for facts in blocks_of(family) if facts.name == name)


def test_a_strip_on_point_is_measured_as_it_lies_on_the_table() -> None:
    # Album, 9 in of 6 × 6 squares: a square on point is 9/6 × √2 = 2.1213 in; in the middle strip lie a rectangle of
    # three, two squares, and at each end a corner that is half of a square's diagonal high: 5 × 2.1213 + 2 × 1.0607.
    middle = next(step for step in library_block("crosses", "Album").steps if step.makes == "middle")
    assert [to_float(side) for side in middle.size] == pytest.approx([2.1213, 12.7279], abs=1e-4)


@pytest.mark.parametrize(
    ("family", "name", "number", "makes"),
    [
        ("squares", "Nautilus", 3, "square in a square"),
        ("crosses", "At the Depot", 1, "corner"),
        ("crosses", "At the Depot", 2, "section"),
        ("eight-point", "Star of Bethlehem", 1, "strip"),
    ],
)
def test_parts_are_called_by_their_form_or_their_place(family: str, name: str, number: int, makes: str) -> None:
    assert library_block(family, name).steps[number - 1].makes == makes


def test_two_triangles_of_a_letter_that_is_also_cut_as_a_square_are_triangles() -> None:
    said = texts(library_block("triangles", "Ocean Waves"))
    assert any("take 2 B triangles (Main)" in text for text in said)
    assert not any("2 B triangle (" in text for text in said)
