"""Ways of making a unit side by side; every number worked out by hand from the squares that are cut."""

from blockdsl.facts import BlockFacts
from blockdsl.facts.blockrecord import Alternative
from blockdsl.geometry.fraction import Fraction
from blockdsl.marks.display_list import Figure, Mark, TextMark
from blockdsl.page.sheet import block_sheet
from tests.unit.model.blocks import block

EIGHT_HALVES = ["row " + "fog/slate " * 4, "row " + "fog/slate " * 4]


def ways(facts: BlockFacts, unit: int = 0) -> dict[str, Alternative]:
    return {way.method: way for way in facts.alternatives[unit]}


def said(facts: BlockFacts) -> str:
    def texts(marks: tuple[Mark, ...]) -> list[str]:
        inner = [text for mark in marks if isinstance(mark, Figure) for text in texts(mark.marks)]
        return [mark.text for mark in marks if isinstance(mark, TextMark)] + inner

    return " ".join(" ".join(texts(page.marks)) for page in block_sheet(facts).pages)


def test_eight_half_squares_of_1_1_2_in_take_8_seams_two_at_a_time_and_4_eight_at_a_time() -> None:
    found = ways(block(*EIGHT_HALVES, "make half as two at a time", size="6 x 3 in"))
    assert (found["two at a time"].seams, found["eight at a time"].seams) == (8, 4)
    assert [way.method for way in found.values() if way.chosen] == ["two at a time"]


def test_the_waste_is_the_cloth_cut_less_what_is_seen_of_it() -> None:
    found = ways(block(*EIGHT_HALVES, size="6 x 3 in"))
    # Eight squares of 2 3/8 in are 8 × 361/64; seen are eight squares of 1 1/2 in, 18 square inches.
    assert found["two at a time"].cloth == Fraction(361, 8)
    assert found["two at a time"].waste == Fraction(361, 8) - 18
    # Stitch and flip cuts a 2 in square of each fabric for each unit.
    assert found["stitch and flip"].cloth == 64


def test_four_geese_take_6_seams_four_at_a_time_and_8_from_patches() -> None:
    found = ways(block("row " + "(geese fog on slate) " * 4, size="24 x 3 in"))
    assert (found["four at a time"].seams, found["cut patches"].seams) == (6, 8)


def test_one_hourglass_two_at_a_time_leaves_one_over() -> None:
    assert ways(block("row (hourglass fog slate)", size="6 in"))["two at a time"].spare == 1


def test_four_rails_of_three_strips_are_two_seams_in_a_strip_set() -> None:
    found = ways(block("row " + "(rails fog slate moss) " * 4, size="12 x 3 in"))
    assert (found["strip set"].seams, found["cut patches"].seams) == (2, 8)


def test_a_method_that_cannot_make_the_unit_is_not_listed() -> None:
    found = ways(block("row (geese fog on slate)", size="6 x 3 in"))
    assert "two at a time" not in found
    assert "strip set" not in found


def test_a_unit_of_rows_is_cut_by_patches_alone() -> None:
    facts = block("row corner corner", above="unit corner\n  row fog slate\n  row slate moss", size="8 x 4 in")
    assert list(ways(facts)) == ["cut patches"]
    # Four patches are joined by three seams, twice.
    assert ways(facts)["cut patches"].seams == 6


def test_the_sheet_compares_methods_when_the_block_asks_and_only_then() -> None:
    assert "Methods compared" not in said(block(*EIGHT_HALVES, size="6 x 3 in"))
    words = said(block(*EIGHT_HALVES, "compare methods", size="6 x 3 in"))
    assert "Methods compared" in words
    assert "eight at a time" in words


def test_a_unit_of_patches_on_papers_is_compared_with_the_papers_chosen_for_it() -> None:
    above = "unit sail\n  grid 2 x 2\n  patch fog at 0,0 2,0 0,1\n  patch slate at 0,1 2,0 2,2 0,2"
    for method in ("foundation", "over papers"):
        found = ways(block("row sail", f"make sail as {method}", size="4 in", above=above))
        assert [(way.method, way.chosen) for way in found.values()] == [("cut patches", False), (method, True)]


def test_pieces_have_the_letters_that_their_patches_have_in_the_block() -> None:
    # A is the small square, B the rectangle, C the triangle in the corner.
    rows = ("columns 1 2", "heights 1 2", "row fog slate", "row slate slate/fog")
    found = ways(block(*rows, size="9 in"))
    assert {cut.label for way in found.values() for cut in way.cuts} == {"C"}


def test_pieces_of_a_mirror_image_have_the_letters_of_its_own_patches() -> None:
    facts = block("row (half-rectangle fog slate) (half-rectangle fog slate)~", size="6 x 6 in")
    assert [unit.mirror for unit in facts.units] == [1, 0]
    for number, unit in enumerate(facts.units):
        letters = {patch.label for patch in unit.picture}
        assert {cut.label for way in ways(facts, number).values() for cut in way.cuts} <= letters
