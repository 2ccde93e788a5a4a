"""What holds for the order of any block: it makes the block, and it is the same for a block that is turned."""

from __future__ import annotations

import random
from functools import cache
from pathlib import Path

from hypothesis import given, settings
from hypothesis import strategies as st

from blockdsl.analysis import FileReader, analyse
from blockdsl.diagnostics import Problems, Source
from blockdsl.model import BlockDesign
from blockdsl.sewing.order import Joined, Piece, count_seams, find_order, subunits, walk
from tests.unit.model.any_block import AnyBlock, any_blocks
from tests.unit.sewing.order_sample import (
    grown_together,
    guillotine,
    laid_on_paper,
    order_of,
    read_block,
    with_pinwheels,
)


@cache
def library_blocks(project: Path) -> list[BlockDesign]:
    found: list[BlockDesign] = []
    for path in sorted((project / "library").rglob("*.block")):
        source = Source(str(path), path.read_text("utf-8"))
        found.extend(analyse(source, FileReader(project), Problems()).blocks)
    return found


def test_every_block_of_the_library_is_made_by_its_order(project: Path) -> None:
    blocks = library_blocks(project)
    assert blocks
    for block in blocks:
        order_of(block)


def test_half_squares_are_sewn_before_anything_takes_an_edge_of_theirs(project: Path) -> None:
    found = 0
    for block in library_blocks(project):
        order = order_of(block)
        joined = {frozenset(node.patches) for node in walk(order) if isinstance(node, Joined)}
        for pair in half_squares(block):
            found += 1
            assert pair in joined, (block.name, pair)
    assert found > 400


def half_squares(block: BlockDesign) -> list[frozenset[int]]:
    """Upright squares and rectangles of two triangles: both have the same box, fill it and have a corner each."""
    boxes: dict[tuple[object, ...], list[int]] = {}
    for number, patch in enumerate(block.patches):
        if len(patch.outline) == 3 and patch.curved is None:
            xs, ys = zip(*patch.outline, strict=True)
            if len(set(xs)) == len(set(ys)) == 2:  # two of its edges lie level and upright
                boxes.setdefault((min(xs), min(ys), max(xs), max(ys)), []).append(number)
    return [frozenset(two) for two in boxes.values() if len(two) == 2]


def test_the_order_of_a_block_is_the_same_every_time(project: Path) -> None:
    for block in library_blocks(project):
        assert find_order(block) == find_order(block)


@given(any_blocks())
@settings(max_examples=30)
def test_a_grid_of_shapes_and_units_is_sewn_with_straight_seams_alone(any_block: AnyBlock) -> None:
    block = read_block(any_block.text())
    count = count_seams(order_of(block))
    assert (count.partial, count.set_in) == (0, 0)
    assert count.straight == len(block.patches) - 1


@given(any_blocks())
@settings(max_examples=15)
def test_a_block_in_the_mirror_takes_as_many_seams_and_units(any_block: AnyBlock) -> None:
    one, other = read_block(any_block.text()), read_block(any_block.text(turns="~"))
    assert count_seams(order_of(one)) == count_seams(order_of(other))


@given(any_blocks())
@settings(max_examples=15)
def test_the_units_of_an_order_are_joined_from_all_that_they_hold(any_block: AnyBlock) -> None:
    block = read_block(any_block.text())
    order = order_of(block)
    units = subunits(order, block)
    assert sum(unit.count for unit in units) == sum(isinstance(node, Joined) for node in walk(order))
    for number, unit in enumerate(units):
        assert all(part.unit is None or part.unit < number for part in unit.joins)
        held = sum(1 if part.unit is None else len(units[part.unit].picture) for part in unit.joins)
        assert held == len(unit.picture)


@given(st.integers(0, 1 << 30), st.integers(2, 60))
@settings(max_examples=15)
def test_a_square_cut_right_across_at_random_is_sewn_straight(seed: int, count: int) -> None:
    block = guillotine(random.Random(seed), count)  # noqa: S311  the same blocks every time
    seams = count_seams(order_of(block))
    assert (seams.straight, seams.partial, seams.set_in) == (count - 1, 0, 0)


@given(st.integers(0, 1 << 30), st.integers(5, 24))
@settings(max_examples=15)
def test_rectangles_of_any_arrangement_are_sewn_without_set_in_seams(seed: int, count: int) -> None:
    rng = random.Random(seed)  # noqa: S311  the same blocks every time
    outlines = with_pinwheels(rng, count, side=12)
    seams = count_seams(order_of(laid_on_paper(outlines, rng)))
    assert seams.set_in == 0
    assert seams.straight + seams.partial >= len(outlines) - 1


@given(st.integers(0, 1 << 30), st.integers(2, 14))
@settings(max_examples=20)
def test_patches_with_bends_are_sewn_and_each_seam_joins_two_parts(seed: int, count: int) -> None:
    rng = random.Random(seed)  # noqa: S311  the same blocks every time
    order = order_of(laid_on_paper(grown_together(rng, count, 5, 4), rng))
    assert sum(isinstance(node, Piece) for node in walk(order)) == count
