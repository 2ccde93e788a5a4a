"""Plans for cutting cloth against a judge of their own, published values and the textbooks' simple ways.

The instances: packing/cintra2008_gcutd.jsonl has the twelve of Cintra, Miyazawa, Wakabayashi and Xavier, "Algorithms
for two-dimensional cutting stock and strip packing problems using dynamic programming and column generation",
European Journal of Operational Research 191 (2008), 61-85; packing/patchwork_lists.jsonl has lists of patches made up
for this, free to use. packing/known_values.csv has the best value known for each and a bound.
"""

from __future__ import annotations

import random
from fractions import Fraction

import pytest

from blockdsl.cutting.cloth import ClothPiece, Effort, plan_length, plan_sheets
from tests.outside.packing.checker import check_cloth, check_sheets
from tests.outside.packing.shelves import shelf_length

WIDTH, MEASURE = Fraction(40), Fraction(1, 8)
FAT_QUARTER = (Fraction(35, 2), Fraction(41, 2))


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


@pytest.mark.parametrize("seed", range(40))
def test_every_piece_of_a_list_is_cut_free_just_once(seed: int) -> None:
    pieces = any_pieces(seed)
    check_cloth(plan_length(pieces, WIDTH, MEASURE, Effort.QUICK), pieces, WIDTH, 3)
    check_sheets(plan_sheets(pieces, *FAT_QUARTER, MEASURE, Effort.QUICK), pieces, *FAT_QUARTER)


@pytest.mark.parametrize("seed", range(40))
def test_borders_lie_along_the_cloth_and_narrower_strips_beside_them(seed: int) -> None:
    pieces = with_borders(seed)
    plan = plan_length(pieces, WIDTH, MEASURE, Effort.QUICK)
    assert plan.panels
    check_cloth(plan, pieces, WIDTH, 3)


@pytest.mark.parametrize("seed", range(60))
def test_no_plan_is_longer_than_shelves_filled_first_fit_or_best_fit(seed: int) -> None:
    pieces = any_pieces(seed)
    plan = plan_length(pieces, WIDTH, MEASURE, Effort.QUICK)
    as_given = [(int(p.width * 8), int(p.height * 8), p.may_turn) for p in pieces for _ in range(p.count)]
    lying = [(max(w, h), min(w, h)) if turns else (w, h) for w, h, turns in as_given]
    standing = [(min(w, h), max(w, h)) if turns else (w, h) for w, h, turns in as_given]
    for sides in ([(w, h) for w, h, _ in as_given], lying, standing):
        for best_fit in (False, True):
            assert plan.length * 8 <= shelf_length(sides, 320, best_fit=best_fit)
