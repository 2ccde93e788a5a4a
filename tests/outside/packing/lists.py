"""Lists of many sizes in few copies and in many, on cloth of odd widths: `python -m tests.outside.packing.lists`.

Each number is a list, the same one every time. Its plan must end within the time that its effort states, give every
piece by cuts that can be made, and be no longer than the shelves of the textbooks; how far plan and bound lie apart is
told in the mean. Five thousand lists, in several processes; the line that is printed says with which number to go on.
"""

from __future__ import annotations

import argparse
import os
import random
import time
from collections.abc import Iterator
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass
from itertools import islice

from blockdsl.cutting.cloth import ClothPiece, Effort, plan_length
from blockdsl.geometry.fraction import Fraction
from tests.outside.packing.checker import check_cloth
from tests.outside.packing.shelves import shelf_length

LISTS = 5_000
PART = 5
"""Lists that a process plans before it tells what came of them."""
SECONDS = 10.0
"""Of the processor. The usual effort states about three at most, of which a busy machine makes twice as many."""
MEAN_GAP = 3.0
"""Per cent between plan and bound that the lists may have in the mean."""
LONGEST_SIDE = 130
ONE = Fraction(1)


@dataclass(frozen=True)
class Planned:
    """What came of a list: the gap between plan and bound in per cent, how long it took, and what is wrong."""

    number: int
    sizes: int
    pieces: int
    gap: float
    seconds: float
    longer: bool
    wrong: str = ""


def listed(number: int) -> tuple[list[ClothPiece], int]:
    """The list of this number, and the width of its cloth, in units of the cutter's measure."""
    chance = random.Random(number)  # noqa: S311 - the same list every time
    width = 241 if number % 4 == 0 else chance.randint(150, 400)
    few, may_turn = chance.random() < 0.5, number % 2 == 0
    pieces = []
    for place in range(chance.randint(20, 60)):
        wide, high = (Fraction(chance.randint(8, LONGEST_SIDE)) for _ in range(2))
        count = chance.randint(1, 8) if few else chance.choice((12, 24, 48, 96))
        pieces.append(ClothPiece(f"size {place}", wide, high, count, may_turn))
    return pieces, width


def shortest_shelves(pieces: list[ClothPiece], width: int) -> int:
    """The shortest that first-fit and best-fit decreasing height come to, pieces as given, lying or standing."""
    as_given = [(int(p.width), int(p.height), p.may_turn) for p in pieces for _ in range(p.count)]
    lying = [(max(w, h), min(w, h)) if turns else (w, h) for w, h, turns in as_given]
    standing = [(min(w, h), max(w, h)) if turns else (w, h) for w, h, turns in as_given]
    ways = ([(w, h) for w, h, _ in as_given], lying, standing)
    return min(shelf_length(sides, width, best_fit=best) for sides in ways for best in (False, True))


def planned(number: int, effort: Effort = Effort.USUAL) -> Planned:
    """Plan a list and have the plan judged."""
    pieces, width = listed(number)
    start = time.process_time()
    plan = plan_length(pieces, Fraction(width), ONE, effort)
    seconds, wrong = time.process_time() - start, ""
    try:
        check_cloth(plan, pieces, Fraction(width), plan.stages)
    except AssertionError as fault:
        wrong = str(fault).partition("\n")[0] or "the plan cannot be cut"
    return Planned(
        number,
        len(pieces),
        sum(piece.count for piece in pieces),
        100 * float(plan.length / plan.bound - 1),
        seconds,
        plan.length > shortest_shelves(pieces, width),
        wrong,
    )


def _part(numbers: range, effort: Effort) -> list[Planned]:
    return [planned(number, effort) for number in numbers]


def run(numbers: range, effort: Effort, processes: int, minutes: float = float("inf")) -> Iterator[Planned]:
    """Plan these lists in order, or as many as are begun within the time."""
    parts = iter([numbers[at : at + PART] for at in range(0, len(numbers), PART)])
    stop = time.monotonic() + 60 * minutes
    with ProcessPoolExecutor(processes) as pool:
        waiting = [pool.submit(_part, part, effort) for part in islice(parts, processes + 1)]
        while waiting:
            yield from waiting.pop(0).result()
            if time.monotonic() < stop:
                waiting += [pool.submit(_part, part, effort) for part in islice(parts, 1)]


def main() -> int:
    """Plan them all, print what came of them; 1 when a plan is wrong, too long or too slow, or the gap too wide."""
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--lists", type=int, default=LISTS)
    options.add_argument("--first", type=int, default=0, help="the number to begin with")
    options.add_argument("--processes", type=int, default=os.cpu_count() or 1)
    options.add_argument("--minutes", type=float, default=float("inf"), help="begin no further lists after so many")
    options.add_argument("--effort", choices=[each.value for each in Effort], default=Effort.USUAL.value)
    chosen = options.parse_args()
    numbers = range(chosen.first, chosen.first + chosen.lists)
    done, gap, widest, slowest, longer, slow, wrong = 0, 0.0, 0.0, 0.0, 0, 0, 0

    def told() -> str:
        return (
            f"{done} lists, {chosen.effort}: gap {gap / max(done, 1):.2f} % in the mean, {widest:.2f} % at most; "
            f"{longer} longer than shelves, {wrong} wrong; {slowest:.1f} s at most, "
            f"{slow} over {SECONDS} s; next is {chosen.first + done}"
        )

    for each in run(numbers, Effort(chosen.effort), chosen.processes, chosen.minutes):
        done, gap = done + 1, gap + each.gap
        widest, slowest = max(widest, each.gap), max(slowest, each.seconds)
        longer, slow, wrong = longer + each.longer, slow + (each.seconds > SECONDS), wrong + bool(each.wrong)
        if each.longer or each.wrong or each.seconds > SECONDS:
            print(each, flush=True)
        if done % (5 * PART) == 0:
            print(told(), flush=True)
    print(told())
    return 1 if longer or wrong or slow or gap > MEAN_GAP * done else 0


if __name__ == "__main__":
    raise SystemExit(main())
