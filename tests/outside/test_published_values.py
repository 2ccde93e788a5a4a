"""Cut sizes against values published by quilters and magazines; each value stands beside its source in published/.

Binding, backing and lengths to buy are judged in test_finishing.py, fat quarters in test_fat_quarters.py, the cloth of
whole quilts in test_published_quilts.py.

Not covered yet, for want of the thing itself: on-point settings, borders, sashing, mattress and paper sizes, log cabin,
curves, an eight-point star by the side of its diamonds, half-square triangles four at a time with a seam all round,
leftover triangles of stitch and flip, the test square, tolerance of a seam.
"""

from __future__ import annotations

from typing import Any

import pytest

from blockdsl.geometry.fraction import read_fraction
from tests.outside.published.judge import (
    assert_holds,
    block_facts,
    count_of,
    cutting,
    facts_of_lines,
    length,
    load,
    pieces,
)

VALUES = load("values.toml")
RULES = [(rule, size) for rule in load("rules.toml") for size in rule["sizes"]]


def _name(row: dict[str, Any]) -> str:
    return f"{row['what']}: {row['input']}"


@pytest.mark.parametrize("row", VALUES, ids=_name)
def test_a_published_cut_size_is_ours_or_differs_by_just_what_is_said(row: dict[str, Any]) -> None:
    facts, problems = facts_of_lines(row["block"])
    assert problems == row.get("warns", [])
    found = pieces(row)
    for published in found:
        assert count_of(facts, published) == published.count, f"{published.ours} is not in {sorted(cutting(facts))}"
    assert_holds(row, facts, found)


@pytest.mark.parametrize("row", [row for row in VALUES if "sewn" in row], ids=_name)
def test_a_unit_is_as_large_before_it_is_sewn_in_as_published(row: dict[str, Any]) -> None:
    facts, _ = facts_of_lines(row["block"])
    sides = [length(side) for side in row["sewn"].split(" x ")]
    unfinished = facts.units[0].unfinished if facts.units else facts.unfinished
    assert unfinished == (sides[0], sides[-1])


@pytest.mark.parametrize(("rule", "size"), RULES, ids=[f"{rule['what']} of {size} in" for rule, size in RULES])
def test_the_rules_of_the_trade_hold_at_every_size(rule: dict[str, Any], size: str) -> None:
    facts, _ = facts_of_lines([line.replace("{f}", size) for line in rule["block"]])
    fabric, count, piece, *subcut = rule["piece"].split()
    side = rule["times"] * length(size) + length(rule["add"])
    assert cutting(facts)[fabric, piece, (side,), subcut[0] if subcut else "none"] == int(count)


def test_every_published_value_names_its_source_and_how_sure_it_is() -> None:
    for row in (*VALUES, *load("rules.toml"), *load("block_lists.toml")):
        assert "http" in row["source"] or "withheld" in row["source"], row["input"]
        assert row["confidence"] in {"high", "medium", "low"}, row["input"]


def test_a_quarter_inch_seam_in_centimetres_is_0_64_to_two_places() -> None:
    # 0.64 cm against the exact 0.635: https://serendipity-quilts.de/hexagon-quilt-tropical
    measured = "size 3 cm\nmeasure 0.005 cm\nrow dark\n"
    exact, _ = block_facts(_square(f"{measured}seam 0.635 cm"))
    rounded, _ = block_facts(_square(f"{measured}seam 0.64 cm"))
    assert exact.cutting[0].cut[0] == read_fraction("4.27")
    assert rounded.cutting[0].cut[0] - exact.cutting[0].cut[0] == read_fraction("0.01")


def test_a_triangle_of_7_62_cm_is_cut_as_large_as_one_of_3_in_with_the_same_seam() -> None:
    inches, _ = block_facts(_square("size 3 in\nrow dark/light"))
    centimetres, _ = block_facts(_square("size 7.62 cm\nseam 0.635 cm\nmeasure 0.01 cm\nrow dark/light"))
    for one, other in zip(inches.cutting, centimetres.cutting, strict=True):
        assert other.exact[0] == one.exact[0] * read_fraction("2.54")


def _square(lines: str) -> str:
    return f'fabric dark "Dark" #202020\nfabric light "Light" #f4f4f4\nblock "Square"\n{lines}\n'
