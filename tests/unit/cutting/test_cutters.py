"""Which of the maker's own cutters cut which patch, and what she lacks."""

import pytest

from blockdsl.diagnostics import Source
from blockdsl.document.cutting import cutters
from blockdsl.facts import BlockFacts
from blockdsl.geometry.number import write_exact
from blockdsl.marks.display_list import TextMark
from blockdsl.page.parts import flowables
from blockdsl.syntax.format import format_text
from blockdsl.wording import messages
from blockdsl.wording.cutting_rows import cutting_rows
from tests.unit.model.blocks import block, read, written


def cuts(facts: BlockFacts) -> dict[str, tuple[str, ...]]:
    """The cutters of each patch by its letter; a block here has one line for each letter."""
    return {cut.label: cut.cutters for cut in facts.cutting}


def lacking(facts: BlockFacts) -> list[str]:
    return [
        f"{each.shape} {' x '.join(write_exact(side) for side in each.size)}: {', '.join(each.labels)}"
        for each in facts.lacking
    ]


# --- the finished shape ---------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("row", "size", "cutter"),
    [
        ("row fog", "3 in", "square 3 in"),
        ("row fog", "3 x 2 in", "rectangle 2 x 3 in"),
        ("row fog", "3 x 2 in", "rectangle 3 x 2 in"),
        ("row fog/fog", "2 1/2 in", "half 2 1/2 in"),
        ("row (hourglass fog fog)", "4 in", "quarter 4 in"),
        ("row fog", "8 cm", "square 80 mm"),
    ],
)
def test_a_cutter_of_the_finished_size_cuts_the_patch(row: str, size: str, cutter: str) -> None:
    facts = block(row, size=size, above=f'cutter "Mine" {cutter}')
    assert cuts(facts) == {"A": ("Mine",)}
    assert lacking(facts) == []


@pytest.mark.parametrize("cutter", ["square 3 1/2 in", "half 3 in", "square 2 in", "square 7.62 cm"])
def test_a_cutter_of_another_size_shape_or_unit_does_not(cutter: str) -> None:
    assert cuts(block("row fog", size="3 in", above=f'cutter "Mine" {cutter}')) == {"A": ()}


def test_a_rectangle_of_equal_sides_is_a_square() -> None:
    assert cuts(block("row fog", size="3 in", above='cutter "Mine" rectangle 3 x 3 in')) == {"A": ("Mine",)}


def test_a_diamond_of_45_degrees_is_known_by_its_side() -> None:
    """By hand: the side from (0, 1) to (1, 0) is the root of two, the level side too: 45 degrees between them."""
    rows = (
        "grid 3 x 1",
        "patch fog at 0,0 1,0 0,1",
        "patch slate at 1,0 1+r2,0 r2,1 0,1",
        "patch fog at 1+r2,0 3,0 3,1 r2,1",
    )
    facts = block(*rows, size="3 x 1 in", above='cutter "Mine" diamond 1 in')
    assert {cut.cutters for cut in facts.cutting} == {()}
    assert [each for each in lacking(facts) if each.startswith("diamond")] == ["diamond r2 x r2: B"]


# --- pieces for the methods and strips ------------------------------------------------------------


def test_squares_for_a_method_are_cut_by_the_cutter_that_fits_their_cut_size() -> None:
    """By hand: stitch and flip lays squares of 1 in finished on the corners, cut 1 1/2 in."""
    rows = ("row (geese fog on slate)", "make geese as stitch and flip")
    facts = block(*rows, size="2 x 1 in", above='cutter "Inches" square 1 in')
    assert cuts(facts) == {"B": (), "A": ("Inches",)}
    assert lacking(facts) == ["rectangle 1 x 2: B"]


def test_a_strip_is_told_by_the_width_that_it_cuts() -> None:
    """By hand: rails of 2 in finished are cut 2 1/2 in wide."""
    rows = ("row (rails fog slate)", "make rails as strip set")
    assert cuts(block(*rows, size="4 in", above='cutter "Strips" strip 2 1/2 in')) == {"A": ("Strips",)}
    assert lacking(block(*rows, size="4 in", above='cutter "Strips" strip 2 in')) == ["strip 2 1/2 x 2 1/2: A"]


def test_a_strip_as_wide_as_a_square_gives_it_with_one_more_cut() -> None:
    assert cuts(block("row fog", size="2 in", above='cutter "Strips" strip 2 1/2 in')) == {"A": ("Strips",)}


# --- what she lacks -------------------------------------------------------------------------------


def test_a_maker_who_declares_no_cutters_lacks_none() -> None:
    facts = block("row fog/slate")
    assert (facts.cutters, lacking(facts), cuts(facts)) == ((), [], {"A": ()})


def test_what_no_cutter_can_cut_is_not_lacking() -> None:
    rows = ("grid 2 x 2", "patch fog at 0,0 2,0 1,1", "patch slate at 0,0 1,1 2,0 2,2 0,2")
    facts = block(*rows, size="2 in", above='cutter "Mine" square 3 in')
    assert lacking(facts) == ["quarter 2 x 2: A"]


def test_the_sheet_and_the_table_name_her_cutters_by_her_words() -> None:
    above = 'cutter "Granny’s squares" square 3 in\ncutter "Unused" square 9 in'
    facts = block("row fog fog/slate", "row fog/slate fog", size="6 in", above=above)
    said = [
        mark.text
        for each in flowables(cutters(facts, 2), messages())
        for mark in each.marks
        if isinstance(mark, TextMark)
    ]
    assert "Granny’s squares" in said
    assert "patch A" in said
    assert "Unused" not in said
    assert "patch B: half-square triangle, 3 in finished" in said
    headers, rows = cutting_rows(facts)
    assert headers[-1] == "cutter"
    assert {row[5]: row[-1] for row in rows} == {"A": "Granny’s squares", "B": ""}


def test_the_sheet_of_a_maker_without_cutters_does_not_speak_of_them() -> None:
    assert cutters(block("row fog"), 2) == []
    assert "cutter" not in cutting_rows(block("row fog"))[0]


# --- the declaration ------------------------------------------------------------------------------


def codes(above: str, files: dict[str, str] | None = None) -> list[str]:
    problems = read(written("row fog", size="3 in", above=above), files)[1]
    return [problem.code for problem in problems if problem.code != "fabric-unused"]


def test_cutters_may_stand_in_a_file_of_their_own() -> None:
    files = {"tools.block": 'cutter "Mine" square 3 in\n'}
    facts, _ = read(written("row fog", size="3 in", above='use "tools.block"'), files)
    assert cuts(facts.blocks[0]) == {"A": ("Mine",)}


def test_a_label_said_twice_in_one_file_is_one_mistake_and_in_two_files_none() -> None:
    assert codes('cutter "Mine" square 3 in\ncutter "Mine" square 4 in') == ["name-twice"]
    files = {"tools.block": 'cutter "Mine" square 9 in\n'}
    assert codes('use "tools.block"\ncutter "Mine" square 3 in', files) == []


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ('cutter "Mine" circle 3 in', "cutter-shape-unknown"),
        ('cutter "Mine" half 3 x 4 in', "cutter-size"),
        ('cutter "Mine" square 0 in', "length-not-positive"),
        ('cutter "Mine" square 3', "length-needs-unit"),
        ('cutter "Mine"', "line-ends-early"),
        ("cutter mine square 3 in", "word-unexpected"),
    ],
)
def test_a_slip_in_a_cutter_is_told_once(line: str, code: str) -> None:
    assert codes(line) == [code]


def test_a_shape_that_is_misspelt_is_answered_with_the_nearest() -> None:
    problems = read(written("row fog", size="3 in", above='cutter "Mine" sqare 3 in'))[1]
    assert "did you mean `square`?" in [problem.help for problem in problems]


def test_cutters_are_laid_out_one_under_the_other() -> None:
    text = 'cutter   “A die”  square   3   in\ncutter "B" rectangle 2x4 in\n'
    assert format_text(Source("mine.block", text)) == 'cutter "A die" square 3 in\ncutter "B" rectangle 2 x 4 in\n'


def test_a_triangle_whose_long_edge_is_kept_straight_asks_for_a_quarter() -> None:
    # legs of 3 in, the long edge 3√2 in: no die for halves gives it with that edge on the grain
    dies = 'cutter "My 3 in halves" half 3 in'
    usual = block("row fog/slate", size="3 in", above=dies)
    assert [cut.cutters for cut in usual.cutting] == [("My 3 in halves",)] * 2
    turned = block("row fog/slate", "grain A long edge", size="3 in", above=dies)
    assert [cut.cutters for cut in turned.cutting] == [()] * 2
    assert [lacking.shape for lacking in turned.lacking] == ["quarter"]


def test_a_strip_die_cuts_the_strips_for_slanted_pieces() -> None:
    rows = ("grid 6 x 2", "patch fog at 0,0 2,0 0,2", "patch slate at 2,0 5,0 3,2 0,2", "patch moss at 5,0 6,0 6,2 3,2")
    facts = block(*rows, size="6 x 2 in", above='cutter "My 2 1/2 in strips" strip 2 1/2 in')
    (slate,) = [cut for cut in facts.cutting if cut.fabric == "slate"]
    assert slate.cutters == ("My 2 1/2 in strips",)
