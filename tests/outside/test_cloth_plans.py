"""Plans for cutting cloth against a judge of their own, published values and the textbooks' simple ways.

The instances: packing/cintra2008_gcutd.jsonl has the twelve of Cintra, Miyazawa, Wakabayashi and Xavier, "Algorithms
for two-dimensional cutting stock and strip packing problems using dynamic programming and column generation",
European Journal of Operational Research 191 (2008), 61-85; packing/patchwork_lists.jsonl has lists of patches made up
for this, free to use. packing/known_values.csv has the best value known for each and a bound.
"""

from __future__ import annotations

import csv
import json
import random
from pathlib import Path
from typing import Any

import pytest

from blockdsl.cutting.cloth import ClothPiece, Effort, plan_length, plan_sheets
from blockdsl.geometry.fraction import Fraction
from tests.outside.packing.checker import check_cloth, check_sheets
from tests.outside.packing.lists import MEAN_GAP, SECONDS, planned
from tests.outside.packing.shelves import shelf_length

WIDTH, EIGHTH = Fraction(40), Fraction(1, 8)
FAT_QUARTER = (Fraction(35, 2), Fraction(41, 2))


PACKING = Path(__file__).parent / "packing"
QUICKLY_PROVED = ["gcut1d", "gcut2d", "gcut5d", "gcut6d", "gcut9d"]
"""Those that take well under a second each; `make bench` tries all of them."""
SHORT_LISTS = ["few02", "few18", "few22", "few26", "few34", "small00", "small06", "small12"]


def instances() -> dict[str, dict[str, Any]]:
    """Every instance by its name."""
    files = [PACKING / "cintra2008_gcutd.jsonl", PACKING / "patchwork_lists.jsonl"]
    rows = [json.loads(line) for file in files for line in file.read_text(encoding="utf-8").splitlines()]
    return {row["name"].removesuffix(".txt"): row for row in rows}


def known_values() -> dict[tuple[str, str], tuple[int, int]]:
    """Lower bound and best value by problem and instance."""
    with (PACKING / "known_values.csv").open(encoding="utf-8", newline="") as file:
        return {
            (row["problem"], row["instance"]): (int(row["lower_bound"]), int(row["best"]))
            for row in csv.DictReader(file)
        }


INSTANCES, KNOWN = instances(), known_values()
SHEET = (Fraction(144), Fraction(168))
"""18 × 21 in, in eighths."""


def pieces_of(name: str, *, may_turn: bool) -> list[ClothPiece]:
    """The pieces of an instance."""
    return [
        ClothPiece(f"size {number}", Fraction(width), Fraction(height), count, may_turn)
        for number, (width, height, count) in enumerate(INSTANCES[name]["items"])
    ]


@pytest.mark.parametrize("may_turn", [False, True], ids=["as given", "turning"])
@pytest.mark.parametrize("name", QUICKLY_PROVED)
def test_the_published_instances_are_cut_from_the_shortest_length(name: str, may_turn: bool) -> None:
    pieces, width = pieces_of(name, may_turn=may_turn), Fraction(INSTANCES[name]["bins"][0][0])
    plan = plan_length(pieces, width, Fraction(1), three_stage=False)
    problem = "2-stage strip, turning, trim" if may_turn else "2-stage strip, no turning, trim"
    assert plan.length == KNOWN[problem, name][1]
    assert plan.proved
    check_cloth(plan, pieces, width, 2)


@pytest.mark.parametrize("name", SHORT_LISTS)
def test_a_list_of_few_sizes_is_proved_the_shortest(name: str) -> None:
    pieces = pieces_of(name, may_turn=True)
    plan = plan_length(pieces, Fraction(320), Fraction(1), three_stage=False)
    assert plan.length == plan.bound == KNOWN["2-stage strip, turning, trim (1/8 in)", name][1]
    check_cloth(plan, pieces, Fraction(320), 2)


@pytest.mark.parametrize("name", ["few02", "few34", "small00", "small06"])
def test_a_third_cut_never_takes_more_cloth(name: str) -> None:
    pieces = pieces_of(name, may_turn=True)
    plan = plan_length(pieces, Fraction(320), Fraction(1))
    assert plan.length <= KNOWN["2-stage strip, turning, trim (1/8 in)", name][1]
    check_cloth(plan, pieces, Fraction(320), plan.stages)


@pytest.mark.parametrize("name", [name for name in SHORT_LISTS if name.startswith("few")])
def test_fat_quarters_are_at_most_one_over_the_fewest(name: str) -> None:
    pieces = pieces_of(name, may_turn=True)
    plan = plan_sheets(pieces, *SHEET, Fraction(1))
    low, _ = KNOWN["2-stage sheets 18x21 in, turning, trim", name]
    assert low <= plan.count <= low + 1
    assert plan.bound <= low
    check_sheets(plan, pieces, *SHEET)


def test_the_same_list_gives_the_same_plan_in_any_order() -> None:
    pieces = pieces_of("few18", may_turn=True)
    plan = plan_length(pieces, Fraction(320), Fraction(1), three_stage=False)
    again = plan_length(pieces, Fraction(320), Fraction(1), three_stage=False)
    backward = plan_length(pieces[::-1], Fraction(320), Fraction(1), three_stage=False)
    assert plan == again
    assert (plan.length, plan.bound, plan.cuts) == (backward.length, backward.bound, backward.cuts)


def any_pieces(seed: int) -> list[ClothPiece]:
    """A list of pieces such as a quilt may have, a different one for each seed."""
    chance = random.Random(seed)  # noqa: S311
    pieces = []
    for number in range(chance.randint(1, 12)):
        width, height = (Fraction(chance.randint(8, 130), 8) for _ in range(2))
        count = chance.choice([1, 2, 4, 12, 48, 96])
        pieces.append(ClothPiece(f"piece {number}", width, height, count, chance.random() < 0.7))
    return pieces


def with_borders(seed: int) -> list[ClothPiece]:
    """The same with borders, some asked lengthwise, some longer than the cloth is wide."""
    chance = random.Random(seed)  # noqa: S311
    borders = [
        ClothPiece(
            f"border {number}",
            Fraction(chance.randint(12, 60), 8),
            Fraction(chance.randint(160, 700), 8),
            chance.choice([1, 2, 4]),
            may_turn=chance.random() < 0.8,
            lengthwise=chance.random() < 0.8,
        )
        for number in range(chance.randint(1, 4))
    ]
    return [*borders, *any_pieces(seed)]


@pytest.mark.parametrize("seed", range(25))
def test_every_piece_of_a_list_is_cut_free_just_once(seed: int) -> None:
    pieces = any_pieces(seed)
    check_cloth(plan_length(pieces, WIDTH, EIGHTH, Effort.QUICK), pieces, WIDTH, 3)
    check_sheets(plan_sheets(pieces, *FAT_QUARTER, EIGHTH, Effort.QUICK), pieces, *FAT_QUARTER)


@pytest.mark.parametrize("seed", range(25))
def test_borders_lie_along_the_cloth_and_narrower_strips_beside_them(seed: int) -> None:
    pieces = with_borders(seed)
    plan = plan_length(pieces, WIDTH, EIGHTH, Effort.QUICK)
    assert plan.panels
    check_cloth(plan, pieces, WIDTH, 3)


@pytest.mark.parametrize("seed", [3, 5])
def test_looking_longer_never_gives_a_longer_plan(seed: int) -> None:
    pieces = with_borders(seed)
    quick = plan_length(pieces, WIDTH, EIGHTH, Effort.QUICK)
    usual = plan_length(pieces, WIDTH, EIGHTH, Effort.USUAL)
    assert usual.length <= quick.length
    check_cloth(usual, pieces, WIDTH, usual.stages)


@pytest.mark.parametrize("seed", range(40))
def test_no_plan_is_longer_than_shelves_filled_first_fit_or_best_fit(seed: int) -> None:
    pieces = any_pieces(seed)
    plan = plan_length(pieces, WIDTH, EIGHTH, Effort.QUICK)
    as_given = [(int(p.width * 8), int(p.height * 8), p.may_turn) for p in pieces for _ in range(p.count)]
    lying = [(max(w, h), min(w, h)) if turns else (w, h) for w, h, turns in as_given]
    standing = [(min(w, h), max(w, h)) if turns else (w, h) for w, h, turns in as_given]
    for sides in ([(w, h) for w, h, _ in as_given], lying, standing):
        for best_fit in (False, True):
            assert plan.length * 8 <= shelf_length(sides, 320, best_fit=best_fit)


@pytest.mark.parametrize("effort", [Effort.QUICK, Effort.USUAL])
def test_many_sizes_on_cloth_of_odd_widths_are_planned_in_time_and_no_longer_than_shelves(effort: Effort) -> None:
    """A sample: `python -m tests.outside.packing.lists` plans five thousand."""
    numbers = range(1_000_000, 1_000_020) if effort is Effort.QUICK else (1, 3)
    found = [planned(number, effort) for number in numbers]
    assert [each for each in found if each.wrong or each.longer or each.seconds > SECONDS] == []
    assert sum(each.gap for each in found) / len(found) <= MEAN_GAP
