"""How short the plans for cutting cloth are, and how long they take: part of `make bench`.

Every instance of tests/outside/packing against its known value: the published lengths, the patchwork lists, sheets;
random lists against the textbooks' shelves; a list of thousands of pieces. Seconds are of this process alone. What was
aimed at stands at the end, met or not met; every plan is checked by the judge of the tests.
"""

from __future__ import annotations

import sys
import time
from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TypeVar

from blockdsl.geometry.fraction import Fraction

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from blockdsl.cutting.cloth import ClothPiece, ClothPlan, Effort, plan_length, plan_sheets
from tests.outside.packing.checker import check_cloth, check_sheets
from tests.outside.packing.shelves import shelf_length
from tests.outside.test_cloth_plans import (
    EIGHTH,
    INSTANCES,
    KNOWN,
    SHEET,
    WIDTH,
    any_pieces,
    pieces_of,
)

ONE = Fraction(1)
LENGTHS = {False: "2-stage strip, no turning, trim", True: "2-stage strip, turning, trim"}
SHEETS = {False: "2-stage sheets, no turning, trim", True: "2-stage sheets, turning, trim"}
LISTS, FAT_QUARTERS = "2-stage strip, turning, trim (1/8 in)", "2-stage sheets 18x21 in, turning, trim"
Result = TypeVar("Result")
Aims = list[tuple[str, bool]]


def timed(job: Callable[[], Result]) -> tuple[Result, float]:
    """What it gives, and the seconds of this process."""
    start = time.process_time()
    return job(), time.process_time() - start


def over(length: Fraction, other: Fraction | int) -> float:
    """By how many per cent one length is over another."""
    return 100 * (float(length / other) - 1)


def row(name: str, plan: ClothPlan, known: int, seconds: float) -> None:
    """One line of the table."""
    word = "proved" if plan.proved else f"gap {over(plan.length, plan.bound):.3f} %"
    ratio = over(plan.length, known)
    print(
        f"{name:34} {plan.length!s:>8} {known:8} {ratio:8.3f} % {word:>14} {plan.cuts:6} {seconds:7.2f} s", flush=True
    )


def published(aims: Aims) -> None:
    """The published instances: lengths and sheets."""
    exact, slowest, sheets = True, 0.0, 0
    for name in (name for name in INSTANCES if name.startswith("gcut")):
        width, high = (Fraction(side) for side in INSTANCES[name]["bins"][0])
        for turn in (False, True):
            pieces, known = pieces_of(name, may_turn=turn), KNOWN[LENGTHS[turn], name][1]
            plan, seconds = timed(partial(plan_length, pieces, width, ONE, three_stage=False))
            check_cloth(plan, pieces, width, 2)
            row(f"{name}{' turning' if turn else ''}", plan, known, seconds)
            exact, slowest = exact and plan.length == known, max(slowest, seconds)
            cut, seconds = timed(partial(plan_sheets, pieces, width, high, ONE, either_way=False))
            check_sheets(cut, pieces, width, high)
            low = KNOWN[SHEETS[turn], name][0]
            print(f"{'    sheets':34} {cut.count:8} {low:8} {'':10} {'':14} {'':6} {seconds:7.2f} s", flush=True)
            sheets = max(sheets, cut.count - low)
    aims += [("every published length exactly", exact), (f"under 5 s each ({slowest:.1f})", slowest < 5)]
    aims.append((f"published sheets at most one over the bound ({sheets})", sheets <= 1))


def lists(aims: Aims, effort: Effort) -> None:
    """The patchwork lists at one effort."""
    few, many, large, slowest, proved = [], [], [], 0.0, 0
    for name in (name for name in INSTANCES if not name.startswith("gcut")):
        pieces, known = pieces_of(name, may_turn=True), KNOWN[LISTS, name][1]
        plan, seconds = timed(partial(plan_length, pieces, Fraction(320), ONE, effort, three_stage=False))
        check_cloth(plan, pieces, Fraction(320), 2)
        row(f"{name} {effort.value}", plan, known, seconds)
        slowest = max(slowest, seconds)
        if not name.startswith("many"):
            few.append(over(plan.length, known))
            proved += plan.proved
        elif sum(piece.count for piece in pieces) >= 500:
            large.append(over(plan.length, plan.bound))
        else:
            many.append(over(plan.length, plan.bound))
    said, mean = effort.value, sum(few) / len(few)
    if effort is Effort.USUAL:
        aims.append((f"{said}: few sizes within 0.5 % of the shortest in the mean ({mean:.3f})", mean <= 0.5))
    else:
        aims.append((f"{said}: each list of few sizes within 0.5 % of the shortest ({max(few):.3f})", max(few) <= 0.5))
        aims.append((f"{said}: nine in ten of them proved ({proved} of {len(few)})", proved >= 0.9 * len(few)))
    aims.append((f"{said}: many sizes, 500 pieces and more, within 0.75 % ({max(large):.3f})", max(large) <= 0.75))
    aims.append((f"{said}: many sizes, fewer pieces, within 3.5 % ({max(many):.3f})", max(many) <= 3.5))
    aim = 3 if effort is Effort.USUAL else 10
    aims.append((f"{said}: about {aim} s at most ({slowest:.1f})", slowest <= aim * 1.5))


def fat_quarters(aims: Aims) -> None:
    """The patchwork lists from sheets of 18 by 21 in."""
    most = 0
    for name in (name for problem, name in KNOWN if problem == FAT_QUARTERS):
        pieces, low = pieces_of(name, may_turn=True), KNOWN[FAT_QUARTERS, name][0]
        plan, seconds = timed(partial(plan_sheets, pieces, *SHEET, ONE))
        check_sheets(plan, pieces, *SHEET)
        print(f"{name + ' fat quarters':34} {plan.count:8} {low:8} {'':32} {seconds:7.2f} s", flush=True)
        most = max(most, plan.count - low)
    aims.append((f"fat quarters at most one over the bound ({most})", most <= 1))


def shelves(aims: Aims) -> None:
    """Random lists against the textbooks, and the third cut."""
    never, saved = True, []
    for seed in range(1_000, 1_300):
        pieces = any_pieces(seed)
        plan = plan_length(pieces, WIDTH, EIGHTH, Effort.QUICK)
        sides = [(int(p.width * 8), int(p.height * 8)) for p in pieces for _ in range(p.count)]
        never &= all(plan.length * 8 <= shelf_length(sides, 320, best_fit=best) for best in (False, True))
        if seed % 30 == 0:
            two, three = (plan_length(pieces, WIDTH, EIGHTH, three_stage=third) for third in (False, True))
            saved.append(over(two.length, three.length))
    print(f"a third cut saves {sum(saved) / len(saved):.2f} % in the mean, {max(saved):.2f} % at most")
    aims.append(("never longer than first-fit or best-fit decreasing height", never))


def thousands(aims: Aims) -> None:
    """Thousands of pieces of a hundred sizes, quickly."""
    pieces = [
        ClothPiece(str(n), Fraction(n % 89 + 8, 8), Fraction(n * 37 % 90 + 8, 8), n % 90 + 10) for n in range(100)
    ]
    plan, seconds = timed(partial(plan_length, pieces, WIDTH, EIGHTH, Effort.QUICK))
    count = sum(piece.count for piece in pieces)
    print(f"{count:,} pieces quickly: at most {over(plan.length, plan.bound):.2f} % too long, {seconds:.2f} s")
    aims.append((f"thousands of pieces of 100 sizes quickly in a second ({seconds:.2f})", seconds < 1))


def main() -> None:
    """Print the table and what was met."""
    aims: Aims = []
    print(f"{'':34} {'length':>8} {'known':>8} {'over':>10} {'':>14} {'cuts':>6} {'time':>9}")
    published(aims)
    lists(aims, Effort.USUAL)
    lists(aims, Effort.THOROUGH)
    fat_quarters(aims)
    shelves(aims)
    thousands(aims)
    for aim, met in aims:
        print(f"{'met    ' if met else 'NOT MET'}  {aim}")


if __name__ == "__main__":
    main()
