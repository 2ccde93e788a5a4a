"""Units on papers: which patches share a paper, in what order they are sewn, and what is cut for them."""

import pytest

from blockdsl.facts.foundationfacts import FoundationFacts
from blockdsl.geometry.fraction import Fraction
from blockdsl.wording.sheet import format_areas
from tests.unit.model.blocks import block, cut_lines, errors, one_error, unit_lines, warnings
from tests.unit.sewing.virtual_papers import sew

WHIRL = """unit whirl
  grid 3 x 3
  patch slate at 0,0 2,0 2,1 0,1
  patch fog at 2,0 3,0 3,2 2,2
  patch slate at 1,2 3,2 3,3 1,3
  patch fog at 0,1 1,1 1,3 0,3
  patch lantern at 1,1 2,1 2,2 1,2"""
LOGS = """unit logs
  grid 4 x 4
  patch lantern at 1,1 2,1 2,2 1,2
  patch fog at 1,0 2,0 2,1 1,1
  patch slate at 2,0 3,0 3,2 2,2
  patch moss at 1,2 3,2 3,3 1,3
  patch fog at 0,0 1,0 1,3 0,3
  patch slate at 0,3 3,3 3,4 0,4
  patch moss at 3,0 4,0 4,4 3,4"""


def foundation(*words: str, size: str, above: str = "") -> FoundationFacts:
    """The only unit on papers of a block whose only cell is that unit."""
    (found,) = block(*words, size=size, above=above).foundations
    sew(found)
    return found


def order(found: FoundationFacts) -> list[str]:
    """Each paper in words: `A: lantern, fog, fog`."""
    return [f"{paper.letter}: {', '.join(patch.fabric for patch in paper.patches)}" for paper in found.papers]


def joined(found: FoundationFacts) -> list[str]:
    return [join.name for join in found.joins]


# --- the order of the patches, each worked out by hand --------------------------------------------


def test_a_goose_is_sewn_before_its_skies() -> None:
    found = foundation("row (geese lantern on fog slate)", "make geese as foundation", size="6 x 3 in")
    assert order(found) == ["A: lantern, fog, slate"]
    seams = [patch.seam for patch in found.papers[0].patches]
    assert seams[0] is None
    assert seams[1] is not None
    # from the lower left corner of the unit to its point
    assert {tuple(map(str, corner)) for corner in seams[1]} == {("0", "3"), ("3", "0")}


def test_rails_are_sewn_from_the_first_to_the_last() -> None:
    found = foundation("row (rails fog slate moss lantern)", "make rails as foundation", size="4 in")
    assert order(found) == ["A: fog, slate, moss, lantern"]


def test_strips_of_different_widths_are_sewn_from_the_narrow_end() -> None:
    above = "unit steps\n  grid 6 x 1\n  patch moss at 0,0 3,0 3,1 0,1\n  patch fog at 3,0 5,0 5,1 3,1\n"
    above += "  patch slate at 5,0 6,0 6,1 5,1"
    found = foundation("row steps", "make steps as foundation", size="6 x 1 in", above=above)
    assert order(found) == ["A: slate, fog, moss"]


def test_a_square_in_a_square_is_sewn_from_its_centre() -> None:
    found = foundation("row (diamond lantern on fog slate fog slate)", "make diamond as foundation", size="4 in")
    assert order(found)[0].startswith("A: lantern, ")
    assert len(found.papers[0].patches) == 5


def test_logs_are_sewn_round_their_centre_in_the_only_order_there_is() -> None:
    found = foundation("row logs", "make logs as foundation", size="4 in", above=LOGS)
    fabrics = [patch.fabric for patch in found.papers[0].patches]
    # the centre touches four logs, the first log only three patches
    assert fabrics == ["lantern", "fog", "slate", "moss", "fog", "slate", "moss"]


# --- several papers -------------------------------------------------------------------------------


def test_an_hourglass_takes_two_papers_joined_along_a_diagonal() -> None:
    found = foundation("row (hourglass fog slate)", "make hourglass as foundation", size="4 in")
    assert [len(paper.patches) for paper in found.papers] == [2, 2]
    assert joined(found) == ["A–B"]


@pytest.mark.parametrize(("words", "papers"), [("2 x 2", 2), ("2 x 5", 2), ("3 x 3", 3), ("5 x 4", 4), ("1 x 6", 1)])
def test_a_checkerboard_takes_as_many_papers_as_its_shorter_side_has_patches(words: str, papers: int) -> None:
    """In a section of squares one line after the other must run right across: a single row or column."""
    down, across = words.split(" x ")
    choice = "make checker as foundation"
    found = foundation(f"row (checker {words} fog slate)", choice, size=f"{across} x {down} in")
    assert len(found.papers) == papers


def test_a_large_checkerboard_takes_its_rows_as_papers_too() -> None:
    found = foundation("row (checker 12 x 14 fog slate)", "make checker as foundation", size="14 x 12 in")
    assert len(found.papers) == 12


def test_papers_are_joined_from_the_first_to_the_last() -> None:
    found = foundation("row (checker 3 x 3 fog slate)", "make checker as foundation", size="3 in")
    assert joined(found) == ["A–B", "AB–C"]


def test_a_unit_of_rows_is_sewn_to_papers_of_its_own() -> None:
    above = "unit corner\n  row fog fog/lantern\n  row fog/lantern slate"
    found = foundation("row corner", "make corner as foundation", size="4 in", above=above)
    # in each row first the triangle that touches both others, then the other triangle, then the square
    assert order(found) == ["A: fog, lantern, fog", "B: lantern, fog, slate"]


# --- what papers take in --------------------------------------------------------------------------

NESTED = "unit corner\n  row fog fog/lantern\n  row fog/lantern slate"


def test_what_lies_inside_a_unit_on_papers_is_not_made_a_second_time() -> None:
    rows = ("row corner fog/lantern", "row fog corner>>")
    facts = block(*rows, "make half as two at a time", "make corner as foundation", size="8 in", above=NESTED)
    assert unit_lines(facts) == [
        "corner: 2 of 4 x 4, foundation",
        "half-square triangle: 1 of 4 x 4, two at a time, 1 spare",
    ]
    # two corners with a slate square of 2 in each: 2 + 2 x (1/4 + 1/4) = 3 in
    assert cut_lines(facts, "slate") == ["slate: 2 square 3 for 2"]


def test_a_unit_and_its_mirror_image_have_papers_of_their_own() -> None:
    rows = ("row one one~", "make one as foundation")
    facts = block(*rows, size="12 x 3 in", above="unit one = geese fog on lantern slate")
    assert [(found.title, found.count) for found in facts.foundations] == [
        ("one (flying geese)", 1),
        ("one (flying geese), mirror image", 1),
    ]
    for found in facts.foundations:
        sew(found)


def test_turned_units_are_sewn_to_the_same_paper() -> None:
    rows = ("row one one>>", "make one as foundation")
    (found,) = block(*rows, size="12 x 3 in", above="unit one = geese fog on lantern").foundations
    assert found.count == 2


# --- what cannot be sewn so -----------------------------------------------------------------------


def test_patches_that_turn_round_one_another_are_named() -> None:
    problem = one_error("row whirl", "make whirl as foundation", size="6 in", above=WHIRL)
    assert problem.code == "foundation-no-order"
    assert problem.span.text == "foundation"
    assert "no straight seam runs right across patches A, B" in problem.message


def test_only_the_patches_that_are_stuck_are_named() -> None:
    above = f"{WHIRL}\nunit framed\n  columns 3\n  heights 3 1\n  row whirl\n  row moss"
    rows = ("row framed", "make framed as foundation")
    problem = one_error(*rows, size="3 x 4 in", above=above)
    # the bar of moss below, 3 x 1, is patch C and can be parted
    assert "patches A, B" in problem.message
    assert "C" not in problem.message


def test_one_choice_that_cannot_be_followed_is_one_mistake() -> None:
    found = errors("row whirl whirl~", "make whirl as foundation", size="12 x 6 in", above=WHIRL)
    assert [problem.code for problem in found] == ["foundation-no-order"]


# --- what is cut ----------------------------------------------------------------------------------


TERN = """unit tern
  grid 6 x 6
  patch fog at 0,0 3,0 3,2 0,1
  patch slate at 0,1 3,2 3,4 0,5
  patch fog at 0,5 3,4 3,6 0,6
  patch fog at 3,0 6,0 6,3 3,1
  patch moss at 3,1 6,3 6,6 3,6"""


def pieces(found: FoundationFacts) -> list[str]:
    """Each area with its piece: `A2 3 x 9/2 long`, a half square as `A2 9/2 x 9/2 once long`."""
    told = []
    for patch in (patch for paper in found.papers for patch in paper.patches):
        once = patch.subcut if patch.subcut != "none" else ""
        told.append(" ".join(filter(None, (patch.number, " x ".join(map(str, patch.cut)), once, patch.edge))))
    return told


def test_slanted_pieces_are_measured_along_their_seams() -> None:
    """By hand, at 6 in, 1/4 in allowance and 1/4 in room on each side, up to the half inch.

    A2: its seam runs (3, 1); along it the area is 11/root 10 = 3.48 in, square to it 6/root 10 = 1.90 in; with 1 in
    more 4.48 x 2.90. B2: its seam runs (3, 2); 19/root 13 = 5.27 and 15/root 13 = 4.16; with 1 in more 6.27 x 5.16.
    A1 and B1 lie over their areas: boxes of 3 x 4 and 3 x 3 in.
    """
    found = foundation("row tern", "make tern as foundation", size="6 in", above=TERN)
    assert pieces(found) == ["A1 4 x 5", "A2 3 x 9/2 long", "A3 3 x 9/2 long", "B1 4 x 4", "B2 11/2 x 13/2 long"]


def test_the_skies_of_a_goose_are_halves_of_squares_cut_corner_to_corner() -> None:
    """By hand: 2 in legs; the long edge 1/4 in beyond the line adds 0.354 in to them, 1/2 in on each leg 1 in: 3.354.

    The goose with 1/2 in on each side is 3 x 5 in; to the tips of its 1/4 in allowance, 0.604 in beyond its corners of
    45 degrees, and 1/8 in further it is 5.46 in.
    """
    facts = block("row (geese lantern on fog)", "make geese as foundation", size="4 x 2 in")
    assert pieces(facts.foundations[0]) == ["A1 3 x 11/2", "A2 7/2 x 7/2 once long", "A3 7/2 x 7/2 once long"]
    assert cut_lines(facts) == ["fog: 1 square 3 1/2 once for 2", "lantern: 1 rectangle 3 x 5 1/2 for 1"]
    assert {cut.purpose for cut in facts.cutting} == {"foundation geese"}


def test_metric_pieces_have_15_mm_all_round_and_are_whole_centimetres() -> None:
    """By hand: 8 cm legs + 0.75 x root 2 + 2 x 1.5 = 12.06 cm; the goose 11 x 20.4."""
    facts = block("row (geese lantern on fog)", "make geese as foundation", size="16 x 8 cm")
    assert cut_lines(facts) == ["fog: 1 square 13 once for 2", "lantern: 1 rectangle 11 x 21 for 1"]


def test_triangles_of_a_unit_and_its_mirror_image_come_out_of_the_same_squares() -> None:
    """Three units with one half square each: two squares, a triangle of them left over."""
    above = "unit sail = split fog slate lantern"
    facts = block("row sail sail sail~", "make sail as foundation", size="18 x 6 in", above=above)
    halves = [cut for cut in facts.cutting if cut.subcut == "once"]
    assert [(cut.count, cut.yields, cut.spare) for cut in halves] == [(2, 4, 1)] * len(halves)


def test_pieces_for_papers_are_rounded_up_to_the_half_inch() -> None:
    """By hand: a third of 4 in is 1 1/3; with 1 in all round 2 1/3, to the next half inch 2 1/2."""
    facts = block("row (rails fog slate moss)", "make rails as foundation", size="4 in")
    assert {cut.cut for cut in facts.cutting} == {(Fraction(5, 2), Fraction(5))}


def test_a_piece_deeper_than_its_seam_is_long_lies_with_a_short_edge_along_it() -> None:
    """Rails of 1 in and 5 in, 1 in long: the second is 6 in deep and 2 in along its seam."""
    above = "unit step\n  grid 6 x 1\n  patch fog at 0,0 1,0 1,1 0,1\n  patch slate at 1,0 6,0 6,1 1,1"
    found = foundation("row step", "make step as foundation", size="6 x 1 in", above=above)
    assert pieces(found) == ["A1 2 x 2", "A2 2 x 6 short"]


def test_the_first_piece_lies_as_it_takes_less_fabric() -> None:
    """By hand: a square on point of 4.24 in sides, 5.24 along them, 7 along the block: 5 1/2 in square."""
    found = foundation("row (diamond lantern on fog)", "make diamond as foundation", size="6 in")
    assert pieces(found)[0] == "A1 11/2 x 11/2"


def test_a_print_with_an_up_and_a_down_is_not_cut_corner_to_corner() -> None:
    above = 'fabric vine "Vine" #405030 directional'
    facts = block("row (geese lantern on vine)", "make geese as foundation", size="4 x 2 in", above=above)
    assert [cut.subcut for cut in facts.cutting if cut.fabric == "vine"] == ["none"]


def test_the_allowance_of_the_block_is_round_every_paper() -> None:
    found = foundation("seam 3/8 in", "row (rails fog slate)", "make rails as foundation", size="4 in")
    xs = {corner.x for corner in found.papers[0].cutting}
    assert xs == {Fraction(-3, 8), Fraction(35, 8)}


def test_a_print_with_an_up_and_a_down_is_told_to_turn_where_its_seam_is_slanted() -> None:
    above = 'fabric vine "Vine" #405030 directional'
    slanted = warnings("row (geese lantern on vine)", "make geese as foundation", size="4 x 2 in", above=above)
    assert [problem.code for problem in slanted] == ["directional-method"]
    first = warnings("row (geese vine on fog)", "make geese as foundation", size="4 x 2 in", above=above)
    level = warnings("row (rails vine fog vine)", "make rails as foundation", size="3 in", above=above)
    # the goose is laid first, upright, and the rails are sewn along upright seams
    assert first == level == []


# --- how it is pressed ------------------------------------------------------------------------------

STEPS = """unit rising
  grid 6 x 1
  patch fog at 0,0 1,0 1,1 0,1
  patch slate at 1,0 3,0 3,1 1,1
  patch moss at 3,0 6,0 6,1 3,1
unit falling
  grid 6 x 1
  patch fog at 0,0 3,0 3,1 0,1
  patch slate at 3,0 5,0 5,1 3,1
  patch moss at 5,0 6,0 6,1 5,1"""


def test_seams_on_papers_lie_toward_the_piece_added_when_units_are_joined() -> None:
    """Sewn from the narrow end, rising to the right and falling to the left: they meet in the middle and nest there."""
    choices = ("make rising as foundation", "make falling as foundation")
    apart = block("row rising", "row falling", *choices, size="6 x 2 in", above=STEPS)
    (seam,) = (seam for hand in apart.steps[-1].hands for stage in hand.stages for seam in stage.seams)
    assert (seam.meetings, seam.unnested) == (1, 0)
    other = STEPS.replace("unit falling", "unit other").replace("0,0 3,0 3,1 0,1", "0,0 1,0 1,1 0,1")
    other = other.replace("3,0 5,0 5,1 3,1", "1,0 3,0 3,1 1,1").replace("5,0 6,0 6,1 5,1", "3,0 6,0 6,1 3,1")
    other = other[: other.index("unit other")] + other[other.index("unit other") :].replace("slate", "lantern")
    alike = block("row rising", "row other", choices[0], "make other as foundation", size="6 x 2 in", above=other)
    (seam,) = (seam for hand in alike.steps[-1].hands for stage in hand.stages for seam in stage.seams)
    assert (seam.meetings, seam.unnested) == (2, 2)


def test_the_cut_list_says_which_areas_its_pieces_are_for() -> None:
    facts = block("row tern", "make tern as foundation", size="6 in", above=TERN)
    assert [(cut.label, cut.areas) for cut in facts.cutting] == [
        ("A", ("A2",)), ("Ar", ("A3",)), ("C", ("B1",)), ("B", ("A1",)), ("D", ("B2",)),
    ]  # fmt: skip
    assert format_areas(("A2", "A4", "A5", "A7", "A8", "A9", "B1")) == "A2, A4, A5, A7–A9, B1"


def test_edges_that_papers_hold_are_not_called_bias_edges() -> None:
    facts = block("row tern", "make tern as foundation", size="6 in", above=TERN)
    assert facts.bias == ()
    assert [each.label for each in block("row tern", size="6 in", above=TERN).bias]


def test_the_picture_of_a_section_has_its_areas_in_the_order_in_which_they_are_sewn() -> None:
    """A square in a square is drawn with its corners first, and sewn from its middle."""
    facts = block("row (diamond lantern on fog slate fog moss)", "make diamond as foundation", size="4 in")
    (paper,) = facts.foundations[0].papers
    pictured = [patch.fabric for patch in facts.steps[0].hands[0].picture]
    assert pictured == [patch.fabric for patch in paper.patches]
    assert pictured[0] == "lantern"


def test_areas_have_the_letters_of_their_patches_wherever_the_unit_lies_in_the_block() -> None:
    facts = block("row slate fog (kite lantern on fog moss)", "make kite as foundation", size="9 x 3 in")
    (found,) = facts.foundations
    letters = {(patch.fabric, len(patch.outline)): patch.label for patch in facts.placed}
    papers = [patch for paper in found.papers for patch in paper.patches]
    assert {patch.fabric for patch in papers} == {"lantern", "fog", "moss"}
    assert [patch.label for patch in papers] == [letters[patch.fabric, len(patch.outline)] for patch in papers]
