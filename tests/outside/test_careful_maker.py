"""A careful maker at her table: no batch mixes prints, strip sets are squared up, and rounding is not waved through.

What she found in earlier versions is kept here, each with the numbers that she needed.
"""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import suppress
from dataclasses import replace
from itertools import pairwise
from math import dist, hypot

import pytest
from shapely.geometry import LineString

from blockdsl.analysis.letters import letter_patches
from blockdsl.cutting import cut_list
from blockdsl.cutting.drift import DriftFinder, RealSize
from blockdsl.diagnostics import Problems
from blockdsl.facts import BlockFacts
from blockdsl.geometry import to_float
from blockdsl.sewing import plan_making
from blockdsl.sewing.order import Joined, find_order
from tests.outside.quilts_at_random import NUMBERS, quilt_text
from tests.outside.virtual.cloth import HAIR, Fault, Work, first_run, joined, normal_of
from tests.outside.virtual.curves import straight_edges
from tests.outside.virtual.library import EVERY_SIZE, FAMILIES, OWN, tried
from tests.outside.virtual.machine import sew
from tests.outside.virtual.plan import Patch, Spot, plan_of
from tests.outside.virtual.prints import short
from tests.outside.virtual.stripsets import segments_from
from tests.unit.cutting.test_drift import ON_POINT
from tests.unit.model.blocks import block, read

SAME = 1 / 64
"""Predicted sizes and those at her table agree so well."""

# --- prints ----------------------------------------------------------------------------------------

GEESE = """
fabric sky   "Sky"   #aaccee
fabric goose "Goose" #803020

block "Two Geese"
  size 6 in
  row (geese goose on sky)
  row (geese goose on sky)
  make geese as four at a time

quilt "Four"
  set straight 2 x 2 of "Two Geese"
  scraps goose from 4 fat quarters
"""


def test_four_blocks_of_two_geese_in_four_prints_take_four_batches() -> None:
    # One large square and four small make four geese; each print makes two, so each needs a batch of its own.
    quilt = read(GEESE)[0].quilts[0]
    assert {(cut.fabric, cut.count) for cut in quilt.cutting} == {("goose", 4), ("sky", 16)}
    assert short(quilt) == {}


def test_papers_in_eight_prints_take_a_square_of_each_though_a_square_gives_two_halves() -> None:
    quilt = read(quilt_text(18))[0].quilts[0]
    (fog,) = (cut for cut in quilt.cutting if cut.fabric == "fog")
    assert (fog.subcut, fog.count) == ("once", 8)


@pytest.mark.parametrize("number", NUMBERS)
def test_no_batch_of_a_quilt_mixes_prints(number: int) -> None:
    facts, problems = read(quilt_text(number))
    assert [problem.message for problem in problems if problem.severity == "error"] == []
    assert short(facts.quilts[0]) == {}


# --- strip sets --------------------------------------------------------------------------------------


def test_a_set_is_squared_up_once_and_again_after_every_third_segment_but_not_after_the_last() -> None:
    # 3 1/2 in segments: three need 1 + 10 1/2 in, a fourth 1/2 and 3 1/2 more, six 1 + 21 + 1/2.
    assert [segments_from(length, 3.5, (1, 0.5)) for length in (11.375, 11.5, 15.375, 15.5, 22.375, 22.5)] == [
        2,
        3,
        3,
        4,
        5,
        6,
    ]
    assert segments_from(28, 3.5, (1, 0.5)) == 7


@pytest.mark.parametrize("cells", [4, 5, 8])
def test_strips_are_long_enough_for_all_segments_also_where_these_alone_just_fill_the_width(cells: int) -> None:
    # 7 1/2 in segments of 7 in units: five with 1 1/2 in for squaring are 39 in; at 8 in five alone are 42 1/2.
    row = "row " + " ".join(["(rails fog slate moss)"] * cells)
    for size in (3, 7):
        sew(plan_of(block(row, "make rails as strip set", size=f"{size * cells} x {size} in")))


# --- rounding ----------------------------------------------------------------------------------------


def predicted(name: str, block_name: str, size: str | None) -> tuple[BlockFacts, tuple[RealSize, ...]]:
    """The facts of a block of the library, and what its units are said to measure."""
    found = next(each for each in tried(name, size or "own size") if each.facts.name == block_name)
    design = found.facts.sewing._design  # type: ignore[union-attr]
    making, lettered = plan_making(design, Problems()), letter_patches(design.patches)
    order = find_order(design, making.made_whole)
    assert isinstance(order, Joined)
    finder = DriftFinder(design, making, lettered.letters, order)
    return found.facts, finder.real_sizes(cut_list(design, making, lettered))


def beyond(work: Work, edge: tuple[Spot, Spot], patches: Sequence[Patch], seam: float) -> float:
    """How far a work reaches beyond a finished edge of its drawing and the allowance, on an average along the edge.

    Each patch is measured in the middle of its own edge there: points beside it, that are trimmed later, do not count.
    """
    nx, ny = normal_of(edge)
    on = LineString(edge).buffer(HAIR, cap_style="flat")
    total = 0.0
    for patch in patches:
        run = patch.shape.boundary.intersection(on)
        if run.length > 100 * HAIR:
            x, y = run.centroid.x, run.centroid.y
            # Outward is against the normal; the ray begins well within the seam line.
            ray = LineString([(x + nx * seam / 2, y + ny * seam / 2), (x - nx * 8 * seam, y - ny * 8 * seam)])
            total += run.length * (first_run(work.cloth, ray) - 1.5 * seam)
    return total / dist(*edge)


def compared(name: str, block_name: str, size: str | None) -> int:
    """How many measures of units that steps give the size of are as predicted."""
    facts, sizes = predicted(name, block_name, size)
    by_patches = {tuple(sorted(each.patches)): each for each in sizes}
    seen: dict[int, Work] = {}
    plan = replace(plan_of(facts), ends_even=True)
    with suppress(Fault):  # small diamonds cannot be sewn at all, and that is warned of
        sew(plan, seen)
    count = 0
    told_as = {told.number: told for told in facts.steps}
    for step in plan.steps:
        told = told_as[step.number]
        if not told.hands:  # a strip set is no part of the block yet
            continue
        real = by_patches.get(tuple(sorted(told.hands[0].patches)))
        if real is None or not real.is_trimmed or step.number not in seen:
            continue
        picture = step.hands[0].picture
        whole = joined(patch.shape for patch in picture)
        for way, drawn, across in real.across:
            x, y = to_float(way.x), to_float(way.y)
            along = [edge for edge in straight_edges(whole) if abs(cross_of(edge, (x, y))) < HAIR]
            assert len(along) == 2, (facts.name, step.makes)
            there = to_float(drawn) + sum(beyond(seen[step.number], edge, picture, plan.seam) for edge in along)
            assert there == pytest.approx(to_float(across), abs=SAME), (facts.name, step.makes, way)
            count += 1
    return count


def cross_of(edge: tuple[Spot, Spot], way: Spot) -> float:
    (a, b), (x, y) = edge
    return (x - a) * way[1] - (y - b) * way[0]


@pytest.mark.parametrize(
    ("name", "block_name", "size"),
    [
        ("squares", "Nautilus", None),
        ("squares", "Washington's Puzzle", "9 in"),
        ("slants", "Octagon", "9 in"),
        ("four-patch", "Economy", "9 in"),
        ("one-patch", "Variegated Hexagons", "9 in"),
        # Halves of rectangles that are rounded up to other proportions, and seams that are set in.
        ("triangles", "Storm at Sea", None),
        ("demo/pilots-star", "Pilot's Star", "9 in"),
        ("eight-point", "Eight-pointed Star", None),
        ("one-patch", "Honeycomb", "9 in"),
    ],
)
def test_units_measure_at_her_table_what_was_predicted(name: str, block_name: str, size: str | None) -> None:
    assert compared(name, block_name, size)


@pytest.mark.parametrize("size", [None, "9 in"])
@pytest.mark.parametrize("name", FAMILIES if EVERY_SIZE else ["slants", "demo/harbour-light"])
def test_units_of_every_block_measure_at_her_table_what_was_predicted(name: str, size: str | None) -> None:
    for each in tried(name, size or OWN):
        if has_slanted_seams(each.facts):
            compared(name, each.facts.name, size)


def has_slanted_seams(facts: BlockFacts) -> bool:
    return any(
        abs(x - a) > HAIR and abs(y - b) > HAIR
        for patch in plan_of(facts).placed
        for (a, b), (x, y) in straight_edges(patch.shape)
    )


@pytest.mark.parametrize(
    ("name", "block_name", "size"),
    [
        # Units that are turned in the block, with seams out of place inside them.
        ("five-patch", "Goose Tracks", "6 in"),
        ("five-patch", "Grandmother's Choice", "9 in"),
        ("squares", "Washington's Puzzle", "9 in"),
    ],
)
def test_the_seam_that_lies_furthest_out_does_so_at_her_table_too(name: str, block_name: str, size: str) -> None:
    facts = next(each.facts for each in tried(name, size) if each.facts.name == block_name)
    assert facts.drift is not None
    drift = sew(replace(plan_of(facts), ends_even=True)).drift
    assert to_float(facts.drift.off) == pytest.approx(drift, abs=SAME)


def test_nine_squares_on_point_come_out_4_1_2_in_at_her_table_too() -> None:
    facts = block(*ON_POINT, size="6 in")
    seen: dict[int, Work] = {}
    drift = sew(plan_of(facts), seen).drift
    # The seams round the squares lie half of what 4 1/2 is over 4.243 from their places; its corners a bit more.
    assert 0.1287 < drift < 0.1287 * 2**0.5
    row = min(seen.values(), key=lambda work: float(work.cloth.area))
    sides = sorted(hypot(x - a, y - b) for (a, b), (x, y) in edges_of(row))
    assert sides[-1] - 0.5 == pytest.approx(4.5, abs=1e-3)


def edges_of(work: Work) -> list[tuple[tuple[float, float], tuple[float, float]]]:
    corners = list(work.cloth.minimum_rotated_rectangle.exterior.coords)
    return list(pairwise(corners))
