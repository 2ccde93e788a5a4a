"""Which blocks of a quilt are neighbours: side by side, across a sash, at a corner, or not at all."""

from __future__ import annotations

import pytest

from blockdsl.analysis import TextReader, analyse
from blockdsl.analysis.scraps import Neighbours
from blockdsl.analysis.scraps_places import block_neighbours, blocks_with
from blockdsl.diagnostics import Problems, Source
from blockdsl.model.quilt import QuiltDesign

BLOCKS = """
fabric fog     "Fog"     #dfe3e0
fabric lantern "Lantern" #e0a030
fabric slate   "Slate"   #3a4750

block "Light"
  size 6 in
  row lantern/fog
  colourway "Night" lantern=slate

block "Plain Sailing"
  size 6 in
  row slate/fog

quilt "Q"
"""


def quilt(*lines: str) -> QuiltDesign:
    problems = Problems()
    text = BLOCKS + "".join(f"  {line}\n" for line in lines)
    program = analyse(Source("quilt.block", text), TextReader(), problems)
    assert [problem.message for problem in problems if problem.severity == "error"] == []
    (design,) = program.quilts
    return design


def neighbours(*lines: str) -> Neighbours:
    design = quilt(*lines)
    return block_neighbours(design, blocks_with(design, "lantern"))


def counts(found: Neighbours) -> tuple[int, int, int]:
    return found.count, len(found.beside), len(found.corner)


def test_blocks_set_straight_have_neighbours_at_sides_and_corners() -> None:
    # 3 x 2: 4 pairs across, 3 down, and two diagonals in each of two squares of four
    assert counts(neighbours('set straight 3 x 2 of "Light"')) == (6, 7, 4)


@pytest.mark.parametrize(
    "sash", ["sash 1 1/2 in slate posts fog", "sash 2 in slate", "sash 1 in slate posts fog outer"]
)
def test_blocks_across_a_sash_are_neighbours(sash: str) -> None:
    assert counts(neighbours('set straight 3 x 2 of "Light"', sash)) == (6, 7, 4)


def test_blocks_on_point_are_side_by_side_along_their_diagonals() -> None:
    # 2 x 2 on point and the one in the middle: it lies beside all four, which touch each other at corners
    found = neighbours('set on point 2 x 2 of "Light"', "fill fog")
    assert counts(found) == (5, 4, 4)
    sides = [side for pair in found.beside for side in pair]
    assert max(sides.count(block) for block in range(5)) == 4


def test_blocks_on_point_across_a_sash_are_side_by_side_too() -> None:
    found = neighbours('set on point 2 x 2 of "Light"', "fill fog", "sash 1 in slate posts lantern")
    assert counts(found) == (5, 4, 4)


def test_blocks_between_plain_squares_meet_at_corners_alone() -> None:
    assert counts(neighbours('set on point 2 x 2 of "Light"', "alternate fog", "fill fog")) == (4, 0, 4)


def test_blocks_of_dropped_columns_have_two_neighbours_on_each_side() -> None:
    # two columns: three whole blocks, and two whole blocks half a block lower between halves of plain fabric: each
    # lower one lies beside two of the first column
    found = neighbours('set dropped columns 2 x 3 of "Light"', "fill fog")
    assert counts(found) == (5, 2 + 1 + 4, 0)


def test_pieced_half_blocks_count_as_blocks() -> None:
    # each column three deep: whole, whole, whole; and half, whole, whole, half, so seven in all, each of the second
    # column beside one (the halves) or two of the first
    found = neighbours('set dropped columns 2 x 3 of "Light"')
    assert counts(found) == (7, 2 + 3 + (1 + 2 + 2 + 1), 0)


def test_blocks_across_a_plain_strip_are_no_neighbours() -> None:
    # three columns of two, each column for itself
    assert counts(neighbours('set strippy 3 x 2 of "Light"', "sash 3 in fog")) == (6, 3, 0)


def test_blocks_without_the_role_take_no_print() -> None:
    design = quilt('set straight 3 x 3 of "Light"', 'alternate "Plain Sailing"')
    assert len(blocks_with(design, "lantern")) == 5
    assert len(blocks_with(design, "fog")) == 9
    assert counts(block_neighbours(design, blocks_with(design, "lantern"))) == (5, 0, 4)


def test_a_colour_plan_that_replaces_the_role_takes_its_blocks_out() -> None:
    design = quilt('set straight 2 x 2 of "Light"', 'colourway "Night" on even rows')
    assert len(blocks_with(design, "lantern")) == 2
