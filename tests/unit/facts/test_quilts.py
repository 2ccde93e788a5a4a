"""The facts of quilts: batches over the whole quilt, what to measure, the order of sewing."""

import pytest

from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.facts.quiltstepfacts import MeasuredBorder
from blockdsl.geometry import square_root
from blockdsl.geometry.fraction import Fraction as F  # noqa: N817 - they stand in tables of sizes
from tests.unit.model.blocks import CLOTH, exactly, read
from tests.unit.model.quilts import BLOCKS, one_told, quilt, text, told

THREE = """
block "Three"
  size 4 in
  make half as two at a time
  row fog/slate  fog/slate
  row fog/slate  lantern
"""
GOOSE = """
block "Goose"
  size 4 x 2 in
  make geese as four at a time
  row (geese lantern on fog)
"""


def cut(facts: QuiltFacts, fabric: str) -> list[tuple[tuple[F, F], int, str]]:
    """Size, count and sub-cut of all that is cut of a fabric."""
    return [(each.cut, each.count, each.subcut) for each in facts.cutting if each.fabric == fabric]


def test_batches_are_counted_over_the_whole_quilt() -> None:
    # 3 half-square units in each of 4 blocks, two at a time: 6 pairs of squares, not 4 times 2
    facts = quilt('set straight 2 x 2 of "Three"', above=THREE)
    assert exactly(cut(facts, "fog")) == [((F(23, 8), F(23, 8)), 6, "none")]
    assert exactly(cut(facts, "slate")) == [((F(23, 8), F(23, 8)), 6, "none")]
    # one block by itself takes 2 pairs
    assert [each.count for each in facts.kinds[0].block.cutting if each.fabric == "fog"] == [2]


def test_a_batch_of_four_gives_whole_batches_only() -> None:
    # 6 geese, four at a time: 2 batches, each a large square and four small ones
    facts = quilt('set straight 2 x 3 of "Goose"', above=GOOSE)
    assert exactly(cut(facts, "lantern")) == [((F(21, 4), F(21, 4)), 2, "none")]
    assert exactly(cut(facts, "fog")) == [((F(23, 8), F(23, 8)), 8, "none")]


def test_triangles_of_one_size_come_from_common_squares_whatever_they_are_for() -> None:
    # 3 triangles of slate in each of 3 blocks: 9 of them are 5 squares cut once, not 3 times 2
    facts = quilt('set straight 3 x 1 of "Three"', above=THREE.replace("  make half as two at a time\n", ""))
    assert exactly(cut(facts, "slate")) == [((F(23, 8), F(23, 8)), 5, "once")]


def test_each_colour_plan_is_cut_from_its_own_fabrics() -> None:
    facts = quilt('set straight 2 x 2 of "Pin"', 'colourway "Night" on even rows')
    # four half-square units in a block of 6 in, two at a time: 2 squares of 3 7/8 of each fabric, 4 blocks
    size = (F(31, 8), F(31, 8))
    assert exactly(cut(facts, "slate")) == [(size, 8, "none")]
    assert exactly(cut(facts, "fog")) == [(size, 4, "none")]
    assert exactly(cut(facts, "lantern")) == [(size, 4, "none")]
    assert facts.kinds[0].colourways == (("", 2), ("Night", 2))
    assert [fabric.name for fabric in facts.fabrics_used] == ["fog", "lantern", "slate"]


def test_the_cut_list_says_what_each_piece_is_for() -> None:
    facts = quilt('set straight 2 x 2 of "Four"', "sash 3 in slate posts fog")
    sashes = next(each for each in facts.cutting if each.fabric == "slate" and each.cut == (F(7, 2), F(13, 2)))
    assert sashes.uses == {"sash": 4}
    # the post of 3 in is cut like the patches of the block: 8 patches and one post
    squares = next(each for each in facts.cutting if each.fabric == "fog")
    assert squares.count == 9
    assert squares.uses == {"Four: A": 8, "post": 1}


def test_a_directional_fabric_keeps_its_print_upright_in_sashes() -> None:
    cloth = CLOTH + 'fabric waves "Waves" #224466 directional\n'
    facts, problems = read(text('set straight 2 x 2 of "Four"', "sash 1 in waves").replace(CLOTH, cloth))
    assert [problem.code for problem in problems if problem.severity == "error"] == []
    waves = [each for each in facts.quilts[0].cutting if each.fabric == "waves"]
    # across the cloth first: upright sashes 1 1/2 across and 6 1/2 along, the strip from side to side 13 1/2 across,
    # and 2 in to spare
    assert {(each.cut, each.count, each.may_turn) for each in waves} == {
        ((F(3, 2), F(13, 2)), 2, False),
        ((F(31, 2), F(3, 2)), 1, False),
    }


def test_rows_and_rounds_say_what_to_measure() -> None:
    facts = quilt('set straight 3 x 4 of "Four"', "sash 1 in slate posts fog", "border 2 in slate")
    row = next(row for row in facts.rows if row.kind == "row")
    assert exactly((row.finished, row.unfinished)) == ((20, 6), (F(41, 2), F(13, 2)))
    assert facts.rings[0].unfinished == (F(49, 2), F(63, 2))


def test_a_row_of_sashes_on_point_is_measured_along_its_middle_from_slant_to_slant() -> None:
    facts = quilt('set on point 2 x 2 of "Four"', "fill fog", "sash 1 in slate posts moss")
    first = next(row for row in facts.rows if row.kind == "sash row")
    # half a post, a sash of 6 in, half a post: 7 in through the middle; the quilt's edge crosses it at 45°, so 1/4 in
    # square to that edge is √2/4 in along the row
    assert exactly(first.finished) == (7, 1)
    assert first.unfinished == (7 + square_root(F(2)) / 2, F(3, 2))


def made(*lines: str) -> list[str]:
    return [step.makes for step in quilt(*lines).steps]


def test_the_order_of_sewing_is_rows_then_borders_then_the_rest() -> None:
    finishing = ["backing", "layers", "quilting", "sleeve", "binding", "label"]
    lines = ("border 2 in slate", "binding 2 1/4 in slate", "backing fog", "sleeve 4 in fog")
    assert made('set straight 3 x 4 of "Four"', *lines) == ["rows", "center", "border", *finishing]
    plain = ["layers", "quilting", "label"]
    assert made('set dropped columns 2 x 2 of "Four"', "sash 1 in slate posts fog") == [*["rows"] * 3, "center", *plain]
    # rows of one, three and one block; the triangles of the first and the last lie the other way round
    assert made('set on point 2 x 2 of "Four"', "fill fog") == [*["rows"] * 3, "center", *plain]


def test_a_border_is_measured_through_the_middle_before_it_is_trimmed() -> None:
    facts = quilt('set straight 3 x 4 of "Four"', "border 2 in slate")
    step = next(step for step in facts.steps if step.makes == "border")
    (action,) = step.actions
    assert isinstance(action, MeasuredBorder)
    # 24 in down with its seams is 24 1/2; 18 in and two borders of 2 in across is 22 1/2
    assert (action.first[0], action.second[0]) == (F(49, 2), F(45, 2))
    assert step.measures == (F(45, 2), F(57, 2))


def test_steps_are_numbered_from_one() -> None:
    steps = quilt('set straight 3 x 4 of "Four"', "border 1 in slate", "border 2 in fog mitred").steps
    assert [step.number for step in steps] == list(range(1, len(steps) + 1))


@pytest.mark.parametrize(
    ("lines", "code"),
    [
        (['set straight 2 x 2 of "Four"', "expect finished 12 x 13 in"], "expect-finished"),
        (['set straight 2 x 2 of "Four"', 'expect blocks "Four" 5'], "expect-blocks"),
        (['set straight 2 x 2 of "Four"', 'expect blocks "Fore" 4'], "expect-blocks"),
        (['set on point 2 x 2 of "Four"', "fill fog", "blocks 33 in"], "piece-wider-than-fabric"),
    ],
)
def test_what_does_not_hold_is_told_once(lines: list[str], code: str) -> None:
    assert one_told(*lines).code == code


def test_expectations_that_hold_are_not_told() -> None:
    assert told('set straight 2 x 2 of "Four"', "expect finished 12 in", 'expect blocks "Four" 4') == []


def test_a_book_prints_a_quilt_of_another_file_whose_blocks_are_in_a_third() -> None:
    files = {"cloth.block": f"{CLOTH}{BLOCKS}"}
    files["shore.block"] = 'use "cloth.block"\nquilt "Shore"\n set straight 2 x 2 of "Four"\n'
    facts, problems = read('use "shore.block"\nbook "All"\n quilt "Shore"\n block "Four"\n', files)
    assert [problem.code for problem in problems] == []
    (chapter,) = facts.books[0].chapters
    assert chapter.quilts[0].kinds[0].block == chapter.blocks[0].sizes[0]
    assert [block.name for block in facts.blocks] == ["Four"]


def test_a_book_prints_the_quilts_that_it_names_in_its_own_colours() -> None:
    shore = f'{CLOTH}{BLOCKS}quilt "Shore"\n set straight 2 x 2 of "Four"\n'
    book = 'use "shore.block"\nfabric slate "Sea" #2f6f6a\nbook "All"\n chapter "One"\n  quilt "Shore"\n'
    facts, problems = read(book, {"shore.block": shore})
    assert [problem.code for problem in problems] == []
    (chapter,) = facts.books[0].chapters
    assert [found.name for found in chapter.quilts] == ["Shore"]
    assert [fabric.colour for fabric in chapter.quilts[0].fabrics_used if fabric.name == "slate"] == ["#2f6f6a"]
    assert [block.name for block in facts.blocks] == ["Four"]
