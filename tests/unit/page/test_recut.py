"""What a sheet says of cutting in other colourways."""

from blockdsl.document.cutting import recutting
from blockdsl.marks.display_list import Figure, Mark, TextMark
from blockdsl.page.parts import flowables
from blockdsl.wording import messages
from tests.unit.model.blocks import block


def words(marks: tuple[Mark, ...]) -> str:
    told = [
        words(mark.marks) if isinstance(mark, Figure) else mark.text
        for mark in marks
        if isinstance(mark, Figure | TextMark)
    ]
    return " ".join(told)


def said(*lines: str) -> list[str]:
    return [words(each.marks) for each in flowables(recutting(block(*lines, size="6 in"), 2), messages())]


def test_a_fabric_that_only_takes_the_place_of_another_is_cut_as_in_the_table() -> None:
    """By hand: two half-square triangles of each fabric are one square, cut once."""
    told = said("row fog/slate fog", "row fog slate/fog", 'colourway "Night" slate=moss')
    assert "In the colorway Night" in told[0]
    assert [row for row in told if "Moss" in row] == ["Moss Wet slate 1 piece, as in the cutting table"]
    assert not any(row.startswith("Harbour fog") for row in told)


def test_two_fabrics_that_become_one_are_told_together() -> None:
    """By hand: a square of 3 in is cut 3 1/2 in: two of fog and two of slate are four."""
    told = said("row fog slate", "row slate fog", 'colourway "Plain" slate=fog')
    assert [row for row in told if "4 squares" in row] == [
        "Harbour fog Harbour fog and Wet slate 4 pieces: 4 squares 3 ¹⁄₂, patch A"
    ]


def test_a_block_without_colourways_has_no_such_table() -> None:
    assert said("row fog slate") == []
