"""Batches and prints: what is sewn together at once is cut from one print, so each print's units have their batches.

All counts are worked out by hand from the batches: common practice, no source.
"""

from __future__ import annotations

import pytest

from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry.fraction import Fraction as F  # noqa: N817 - they stand in tables of sizes
from tests.unit.model.quilts import quilt

GEESE = """
block "Geese"
  size 6 in
  make geese as four at a time
  row (geese lantern on fog)
  row (geese lantern on fog)
"""


def counts(facts: QuiltFacts, fabric: str) -> list[int]:
    """How many pieces of each size are cut of a fabric."""
    return [cut.count for cut in facts.cutting if cut.fabric == fabric]


def test_geese_of_four_prints_take_four_large_squares_and_sixteen_small_ones() -> None:
    # Four blocks of two geese: eight geese of one print are two batches, of four prints four, each a batch of its own.
    of_one = quilt('set straight 2 x 2 of "Geese"', above=GEESE)
    assert (counts(of_one, "lantern"), counts(of_one, "fog")) == ([2], [8])
    of_four = quilt('set straight 2 x 2 of "Geese"', "scraps lantern from 4 fat quarters", above=GEESE)
    assert (counts(of_four, "lantern"), counts(of_four, "fog")) == ([4], [16])


def test_triangles_of_several_prints_share_no_squares() -> None:
    # One triangle of lantern in each of four blocks: of one print two squares cut once, of four prints four.
    above = 'block "Half"\n  size 6 in\n  row fog/lantern'
    assert counts(quilt('set straight 2 x 2 of "Half"', above=above), "lantern") == [2]
    of_four = quilt('set straight 2 x 2 of "Half"', "scraps lantern from 4 fat quarters", above=above)
    assert (counts(of_four, "lantern"), counts(of_four, "fog")) == ([4], [2])


def test_two_blocks_of_each_print_share_its_batches() -> None:
    # Eight blocks in four prints: two blocks, four geese, of each print are one batch.
    facts = quilt('set straight 4 x 2 of "Geese"', "scraps lantern from 4 fat quarters", above=GEESE)
    assert facts.scraps[0].uses == (2, 2, 2, 2)
    assert (counts(facts, "lantern"), counts(facts, "fog")) == ([4], [16])


def test_units_without_the_fabric_of_many_prints_are_made_together() -> None:
    # Two geese in lantern and two half squares of fog and slate in a block; the half squares know no print.
    above = """block "Both"
  size 6 x 9 in
  make geese as four at a time
  make half as two at a time
  row (geese lantern on fog)
  row (geese lantern on fog)
  row pair
unit pair
  row fog/slate fog/slate
"""
    facts = quilt('set straight 2 x 2 of "Both"', "scraps lantern from 4 fat quarters", above=above)
    # eight half squares are four pairs of squares
    assert counts(facts, "slate") == [4]
    assert counts(facts, "lantern") == [4]


def test_a_batch_of_two_fabrics_of_many_prints_has_one_print_of_each() -> None:
    # Four blocks, each of another print of lantern and of another of fog: no two of them share a batch.
    lines = ("scraps lantern from 4 fat quarters", "scraps fog from 4 fat quarters")
    facts = quilt('set straight 2 x 2 of "Geese"', *lines, above=GEESE)
    assert (counts(facts, "lantern"), counts(facts, "fog")) == ([4], [16])


def test_strip_sets_of_several_prints_are_cut_print_by_print_and_from_fat_quarters() -> None:
    # Four segments of 3 1/2 in a block, strips of 2 in: 4 x 3 1/2 + 1 + 1/2 = 15 1/2 in, one set for each print. Of one
    # print sixteen segments: ten are 35 + 1 + 3 x 1/2 = 37 1/2 in, the other six 21 + 1 + 1/2 = 22 1/2.
    above = """block "Rails"
  size 6 in
  make rails as strip set
  row (rails lantern fog) (rails lantern fog)>
  row (rails lantern fog)> (rails lantern fog)
"""
    one = quilt('set straight 2 x 2 of "Rails"', above=above)
    assert [(cut.cut[1], cut.count) for cut in one.cutting if cut.fabric == "fog"] == [(F(75, 2), 1), (F(45, 2), 1)]
    four = quilt('set straight 2 x 2 of "Rails"', "scraps lantern from 4 fat quarters", above=above)
    assert [(cut.cut[1], cut.count) for cut in four.cutting if cut.fabric == "fog"] == [(F(31, 2), 4)]
    # Two blocks of one print: eight segments would be 28 + 1 + 2 x 1/2 = 30 in, longer than a fat quarter's 20 1/2:
    # five are 17 1/2 + 1 + 1/2 = 19 in, the other three 10 1/2 + 1.
    two = quilt('set straight 2 x 2 of "Rails"', "scraps lantern from 2 fat quarters", above=above)
    assert [(cut.cut[1], cut.count) for cut in two.cutting if cut.fabric == "lantern"] == [(F(19), 2), (F(23, 2), 2)]
    assert two.scraps[0].blocks_each >= 2


def test_a_fat_quarter_is_counted_with_the_batches_of_its_own_blocks() -> None:
    # Two geese in a block of 6 in, four at a time: a square of 7 1/4 in for two blocks. A fat quarter of 20 1/2 x
    # 17 1/2 in holds two by two of them: eight blocks, not four.
    facts = quilt('set straight 2 x 2 of "Geese"', "scraps lantern from 2 fat quarters", above=GEESE)
    assert facts.scraps[0].blocks_each == 8


# --- colour plans, mirror images, prints that stand upright --------------------------------------


def test_a_fabric_of_one_colour_plan_is_counted_for_the_blocks_that_have_it() -> None:
    # Three rows of two: the middle one has lantern in place of fog.
    facts = quilt('set straight 2 x 3 of "Pin"', 'colourway "Night" on even rows')
    cloth = {each.fabric: each.fat_quarters for each in facts.fabrics}
    assert [(name, use.blocks) for name, use in cloth.items() if use] == [("fog", 4), ("lantern", 2), ("slate", 6)]
    assert all(use.blocks_each for use in cloth.values() if use)


def test_a_block_and_its_mirror_image_share_batches() -> None:
    # One goose and a plain patch that tells left from right: two blocks and two mirror images are one batch of four.
    above = """block "Lone"
  size 9 x 3 in
  make geese as four at a time
  columns 2 1
  row (geese lantern on fog) slate
"""
    facts = quilt("set rows", 'row "Lone" "Lone"~', 'row "Lone" "Lone"~', above=above)
    assert len(facts.kinds) == 2
    assert (counts(facts, "lantern"), counts(facts, "fog")) == ([1], [4])
    (line,) = [cut for cut in facts.cutting if cut.fabric == "lantern"]
    assert line.uses == {"Lone and its mirror image: geese": 1}


def test_left_and_right_hands_of_a_block_and_its_mirror_image_come_of_one_batch() -> None:
    # A split square two at a time gives two of each hand: two blocks and two mirror images are one batch.
    above = 'block "Flag"\n  size 6 in\n  make split as two at a time\n  row (split fog slate lantern)'
    facts = quilt("set rows", 'row "Flag" "Flag"~', 'row "Flag"~ "Flag"', above=above)
    assert (counts(facts, "slate"), counts(facts, "lantern"), counts(facts, "fog")) == ([1], [1], [2])


def test_triangles_of_an_upright_print_that_lie_alike_share_no_squares_in_a_quilt() -> None:
    # Two triangles in a block that lie the same way: a square gives one of them and one that is left over.
    cloth = 'fabric stripe "Stripe" #a0a0a0 directional\n'
    above = cloth + 'block "Alike"\n  size 6 in\n  row stripe/fog stripe/fog\n  row fog fog'
    facts = quilt('set straight 2 x 1 of "Alike"', above=above)
    assert [cut.count for cut in facts.kinds[0].block.cutting if cut.fabric == "stripe"] == [2]
    assert counts(facts, "stripe") == [4]


def test_strips_of_a_quilt_are_as_long_as_its_own_cloth_allows() -> None:
    # Nine segments of 3 1/2 in are 31 1/2 + 1 + 2 x 1/2 = 33 1/2 in of 36, ten would be 37 1/2: sixteen are nine and
    # seven, 24 1/2 + 1 + 2 x 1/2.
    above = """block "Rails"
  size 6 in
  make rails as strip set
  row (rails lantern fog) (rails lantern fog)>
  row (rails lantern fog)> (rails lantern fog)
"""
    narrow = quilt('set straight 2 x 2 of "Rails"', "fabric width 36 in usable", above=above)
    assert [cut.cut[1] for cut in narrow.cutting if cut.fabric == "fog"] == [F(67, 2), F(53, 2)]


def test_a_print_in_two_kinds_of_blocks_has_the_batches_of_each() -> None:
    # The goose's square is 12 + 1 1/4 = 13 1/4 in: a fat quarter of 20 1/2 x 17 1/2 in holds one, which does for four
    # blocks of one kind. A print that is in both kinds takes a square for each of them.
    above = """block "Lone"
  size 12 x 6 in
  make geese as four at a time
  row (geese lantern on fog)

block "Other"
  size 12 x 6 in
  make geese as four at a time
  row (geese lantern on slate)
"""
    facts = quilt(
        "set rows", 'row "Lone" "Other"', 'row "Other" "Lone"', "scraps lantern from 2 fat quarters", above=above
    )
    # The goose's square is 12 + 1 1/4 = 13 1/4 in: a fat quarter holds one, enough for four blocks of one kind.
    (scraps,) = facts.scraps
    assert (scraps.blocks_each, scraps.uses) == (4, (2, 2))
    # Side by side no two share a print, so each print is in both blocks of one diagonal: two of one kind.
    assert scraps.fat_quarters == (1, 1)
    mixed = quilt("set rows", 'row "Lone" "Other" "Lone" "Other"', "scraps lantern from 1 fat quarters", above=above)
    assert mixed.scraps[0].fat_quarters == (2,)


def test_triangles_for_papers_of_several_prints_share_no_squares() -> None:
    # One triangle of lantern on the papers of each block: two come of a square of one print, and of another print none.
    above = 'block "Half"\n  size 6 in\n  make half as foundation\n  row fog/lantern'
    of_one = quilt('set straight 2 x 2 of "Half"', above=above)
    assert [(cut.count, cut.subcut) for cut in of_one.cutting if cut.fabric == "lantern"] == [(2, "once")]
    of_four = quilt('set straight 2 x 2 of "Half"', "scraps lantern from 4 fat quarters", above=above)
    assert (counts(of_four, "lantern"), counts(of_four, "fog")) == ([4], counts(of_one, "fog"))


@pytest.mark.parametrize("prints", [1, 2, 4, 5])
@pytest.mark.parametrize("geese", [1, 2, 3, 5])
def test_each_print_has_the_batches_of_its_own_blocks(geese: int, prints: int) -> None:
    # Six blocks: of each print as many batches of four as its own geese take, a large square and four small ones each.
    above = f'block "Row"\n  size {6 * geese} x 3 in\n  make geese as four at a time\n  row'
    above += " (geese lantern on fog)" * geese
    facts = quilt('set straight 2 x 3 of "Row"', f"scraps lantern from {prints} fat quarters", above=above)
    (scraps,) = facts.scraps
    assert sum(scraps.uses) == 6
    batches = sum(-(-geese * blocks // 4) for blocks in scraps.uses)
    assert (counts(facts, "lantern"), counts(facts, "fog")) == ([batches], [4 * batches])
