"""Whole quilts as magazines print them: from their cutting lists never more cloth than they ask for, nor too little."""

from __future__ import annotations

import tomllib
from collections import Counter
from math import ceil
from pathlib import Path
from typing import Any

import pytest

from blockdsl.cutting.buying import buy
from blockdsl.cutting.cloth import ClothPiece, ClothPlan, Effort, plan_length
from blockdsl.cutting.fat_quarters import sheets_for
from blockdsl.cutting.finishing_binding import BindingCloth, square_for_bias
from blockdsl.geometry.fraction import Fraction
from tests.outside.published.judge import length

QUILTS = tomllib.loads((Path(__file__).parent / "published" / "quilts.toml").read_text(encoding="utf-8"))["quilt"]
FABRICS = [(quilt, fabric) for quilt in QUILTS for fabric in quilt["fabric"] if "yards" in fabric]
SHEETS = [(quilt, fabric) for quilt in QUILTS for fabric in quilt["fabric"] if "sheet" in fabric]
WIDTH = Fraction(42)
EIGHTH = Fraction(1, 8)
NOTHING = Fraction(0)


def _pieces(fabric: dict[str, Any]) -> list[ClothPiece]:
    pieces = [
        _piece(line, lengthwise=key == "lengthwise") for key in ("lengthwise", "pieces") for line in fabric.get(key, ())
    ]
    if "bias" in fabric:
        inches, width = (length(part) for part in fabric["bias"].split(" @ "))
        cloth = BindingCloth(WIDTH, EIGHTH, Fraction(1, 4), "in", NOTHING)
        side = square_for_bias(inches, 1, width, cloth)
        pieces.append(ClothPiece("bias", side, side, 1))
    return pieces


def _piece(line: str, *, lengthwise: bool = False) -> ClothPiece:
    count, sides = line.split(" @ ")
    width, *height = (length(side) for side in sides.split(" x "))
    return ClothPiece(line, width, height[0] if height else width, int(count), lengthwise=lengthwise)


def _plan(fabric: dict[str, Any]) -> ClothPlan:
    return plan_length(_pieces(fabric), WIDTH, EIGHTH, Effort.QUICK)


def _cut_out(plan: ClothPlan) -> Counter[str]:
    """How many pieces of each line the plan gives."""
    found: Counter[str] = Counter()
    for panel in plan.panels:
        for section in panel.columns:
            for piece in section.pieces:
                found[piece.key] += panel.times
    strips = [(strip, panel.times) for panel in plan.panels for strip in panel.strips]
    for strip, times in [*strips, *((strip, 1) for strip in plan.strips)]:
        for section in strip.sections:
            for piece in section.pieces:
                found[piece.key] += strip.times * times
    return found


def _names(pair: tuple[dict[str, Any], dict[str, Any]]) -> str:
    return f"{pair[0]['name']}, {pair[1]['name']}"


@pytest.mark.parametrize("pair", FABRICS, ids=_names)
def test_a_published_quilt_is_cut_from_no_more_cloth_than_printed(pair: tuple[dict[str, Any], dict[str, Any]]) -> None:
    fabric = pair[1]
    plan = _plan(fabric)
    printed = length(fabric["yards"]) * 36
    assert plan.length <= printed
    # in steps of 1/8 yd, as far as the source prints such; thirds lie between them
    assert buy(plan.length, "in", NOTHING, NOTHING).length <= ceil(printed / Fraction(9, 2)) * Fraction(9, 2)


@pytest.mark.parametrize("pair", FABRICS, ids=_names)
def test_every_piece_of_a_published_quilt_is_cut_and_no_cloth_is_made_up(
    pair: tuple[dict[str, Any], dict[str, Any]],
) -> None:
    pieces, plan = _pieces(pair[1]), _plan(pair[1])
    assert _cut_out(plan) == Counter({piece.key: piece.count for piece in pieces})
    area = sum(piece.width * piece.height * piece.count for piece in pieces)
    assert area <= plan.bound * WIDTH <= plan.length * WIDTH


@pytest.mark.parametrize("pair", FABRICS, ids=_names)
def test_what_we_say_to_buy_is_more_than_printed_only_for_washing_and_by_what_is_said(
    pair: tuple[dict[str, Any], dict[str, Any]],
) -> None:
    fabric = pair[1]
    printed = length(fabric["yards"]) * 36
    bought = buy(_plan(fabric).length, "in")
    if "washed" in fabric:
        assert fabric["why"]
        assert printed < bought.length == length(fabric["washed"]) * 36
    else:
        assert bought.length <= printed


@pytest.mark.parametrize("pair", SHEETS, ids=_names)
def test_a_published_fat_quarter_is_enough(pair: tuple[dict[str, Any], dict[str, Any]]) -> None:
    fabric = pair[1]
    along, across = (length(side) for side in fabric["sheet"].split(" x "))
    assert sheets_for(_pieces(fabric), (across, along), EIGHTH, Effort.QUICK).count == 1


def test_every_published_quilt_names_its_source_and_how_sure_it_is() -> None:
    for quilt in QUILTS:
        assert "http" in quilt["source"], quilt["name"]
        assert quilt["confidence"] in {"high", "medium", "low"}, quilt["name"]
