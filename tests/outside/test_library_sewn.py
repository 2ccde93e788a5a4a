"""Every block of the library at four sizes: covered, sewn on the virtual machine, its templates large enough."""

from __future__ import annotations

import json
from dataclasses import dataclass, replace
from itertools import islice
from math import inf
from typing import Any
from zlib import crc32

import pytest
from shapely import hausdorff_distance, union_all
from shapely.geometry import box

from blockdsl.facts.document import block_document, write_json
from blockdsl.fullsize.templates import template_pages
from tests.outside.virtual import slips
from tests.outside.virtual.cloth import HAIR, Fault, grown
from tests.outside.virtual.curves import has_curves
from tests.outside.virtual.library import FAMILIES, OWN, SIZES, Tried, blocks_of, others, tried
from tests.outside.virtual.machine import sew
from tests.outside.virtual.plan import Plan, drawn, number, plan_of

SHARE = 11
"""One slip in so many is tried in every run, other ones of each block."""
PLACE = {"in": 1 / 16, "cm": 0.15}
"""How far a seam may lie from its place: half an eighth of an inch, or a millimetre and a half."""
WARNINGS = {"size-off-ruler", "rounding-adds-up"}
"""Of these sizes she is told before the first cut that seams will not lie in their places."""


@dataclass(frozen=True, slots=True)
class Blocks:
    size: str
    tried: tuple[Tried, ...]


@pytest.fixture(scope="module", params=[f"{name}, {size}" for name in FAMILIES for size in SIZES])
def blocks(request: pytest.FixtureRequest) -> Blocks:
    """The blocks of a file of the library at a size, without those whose own size that is: they come as they stand."""
    name, size = str(request.param).split(", ")
    return Blocks(size, others(name, size))


def test_every_block_is_sewn_with_its_seams_in_their_places_or_a_warning_says_that_they_will_not_be(
    blocks: Blocks,
) -> None:
    for each in blocks.tried:
        facts, warned = each.facts, bool(each.warned & WARNINGS)
        assert not warned or blocks.size != OWN, facts.name
        # Diamonds of half an inch and less, cut an eighth too large, do not make the picture at all.
        drift = drift_of(plan_of(facts), may_fail=warned)
        assert warned or drift <= PLACE[facts.unit], (facts.name, drift)
        # She confirms every warning that rounding adds up, in one of the ways in which parts can be laid along a seam.
        if "rounding-adds-up" in each.warned and drift <= PLACE[facts.unit]:
            drift = drift_of(replace(plan_of(facts), ends_even=True), may_fail=True)
            assert drift > PLACE[facts.unit], (facts.name, drift)


def drift_of(plan: Plan, *, may_fail: bool) -> float:
    """How far its seams lie from their places; without end where it cannot be sewn at all, if that may be."""
    try:
        return sew(plan).drift
    except Fault:
        if not may_fail:
            raise
        return inf


@pytest.mark.parametrize("block", ["Blazing Star", "Star of Bethlehem"])
def test_stars_of_small_diamonds_can_be_sewn_with_a_finer_measure(block: str) -> None:
    (coarse,) = tried("eight-point", "6 in", only=frozenset({block}))
    assert "rounding-adds-up" in coarse.warned
    with pytest.raises(Fault):
        sew(plan_of(coarse.facts))
    (fine,) = tried("eight-point", "6 in", "measure 1/16 in", frozenset({block}))
    sew(plan_of(fine.facts))


def test_the_patches_of_every_block_fill_it_side_by_side(blocks: Blocks) -> None:
    for each in blocks.tried:
        plan = plan_of(each.facts)
        shapes = [patch.shape for patch in plan.placed]
        # The steps of a curve lie alike on both sides of it.
        assert union_all(shapes).symmetric_difference(box(0, 0, *plan.finished)).area < 1e-7, each.facts.name
        assert sum(shape.area for shape in shapes) == pytest.approx(plan.finished[0] * plan.finished[1], abs=1e-7)


def test_every_template_holds_its_patch_with_the_allowance_all_round(blocks: Blocks) -> None:
    for each in blocks.tried:
        document: dict[str, Any] = json.loads(write_json(block_document(each.facts)))
        seam = number(document["seam"])
        wanted = {patch["label"] for patch in document["placed"]}
        assert wanted <= {template["label"] for template in document["templates"]}
        for template in document["templates"]:
            sewing = drawn(template["sewing"], template.get("sewing_bends"))
            cutting = drawn(template["cutting"], template.get("cutting_bends"))
            what = (each.facts.name, template["label"])
            if has_curves(sewing):
                assert cutting.boundary.distance(sewing.boundary) == pytest.approx(seam, abs=1e-5), what
                assert cutting.covers(sewing), what
            else:
                offset = grown(sewing, seam)
                assert offset.difference(cutting).area < 1e-9, what
                assert hausdorff_distance(offset, cutting) < HAIR, what


@pytest.mark.parametrize("name", FAMILIES)
def test_the_templates_of_every_block_are_printed(name: str) -> None:
    for facts in blocks_of(name):
        pages = template_pages(facts, paper="letter").pages
        assert pages, facts.name


# --- slips are found -----------------------------------------------------------------------------------


@pytest.mark.parametrize("name", FAMILIES)
def test_a_cut_size_an_angle_or_a_count_that_is_off_by_one_is_found_at_the_machine(name: str) -> None:
    for facts in blocks_of(name):
        plan = plan_of(facts)
        for what, wrong in islice(slips.slips_of_the_cutter(plan), crc32(facts.name.encode()) % 3, None, SHARE):
            with pytest.raises(Fault):
                pytest.fail(f"{facts.name}, {what}: sewn all the same, {sew(wrong)}")


@pytest.mark.parametrize("name", FAMILIES)
def test_a_part_turned_the_wrong_way_or_of_another_cloth_is_found_at_the_machine(name: str) -> None:
    for facts in blocks_of(name)[::5]:
        plan = plan_of(facts)
        for kind in (slips.slips_of_the_seamstress, slips.slips_of_the_pen):
            for what, wrong in islice(kind(plan), crc32(facts.name.encode()) % 3, None, SHARE):
                with pytest.raises(Fault):
                    pytest.fail(f"{facts.name}, {what}: sewn all the same, {sew(wrong)}")
