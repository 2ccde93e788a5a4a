"""The order of sewing at large: `python -m tests.fuzz.piecing`.

A thousand grids of shapes and units, two hundred squares cut across at random, and some hundreds of small blocks
against the search through every way. The same blocks every time. Exit 1 when one is not made by its order, or when
the search finds fewer seams.
"""

from __future__ import annotations

import random
import sys
from collections.abc import Callable

from hypothesis import given, settings

from blockdsl.sewing.order import count_seams
from tests.outside.test_order_bruteforce import EveryWay, found
from tests.unit.model.any_block import AnyBlock, any_blocks
from tests.unit.sewing.order_sample import grown_together, guillotine, order_of, read_block, with_pinwheels

GRIDS = 1000
CUT_ACROSS = 200
SEARCHED = 500


@given(any_blocks())
@settings(max_examples=GRIDS, deadline=None, derandomize=True, database=None)
def grids(any_block: AnyBlock) -> None:
    """Every grid is sewn straight."""
    block = read_block(any_block.text())
    assert count_seams(order_of(block)).straight == len(block.patches) - 1


def cut_across() -> None:
    """From a few patches to a thousand."""
    for number in range(CUT_ACROSS):
        count = 2 + number * number % 1000
        seams = count_seams(order_of(guillotine(random.Random(number), count)))  # noqa: S311  the same every time
        assert (seams.straight, seams.partial, seams.set_in) == (count - 1, 0, 0), f"square {number}"


def searched() -> None:
    """No order has fewer set-in and partial seams."""
    for number in range(SEARCHED):
        rng = random.Random(1_000_000 + number)  # noqa: S311  the same every time
        count = rng.randrange(3, 9)
        outlines = grown_together(rng, count) if number % 2 else with_pinwheels(rng, max(count, 5), side=6)
        assert found(outlines, rng) == EveryWay(outlines).least(), f"block {number}"


def main() -> int:
    """One line for each kind of block."""
    jobs: tuple[tuple[str, Callable[[], None]], ...] = (
        (f"{GRIDS} grids of shapes and units", grids),
        (f"{CUT_ACROSS} squares cut right across at random", cut_across),
        (f"{SEARCHED} small blocks against every way to part them", searched),
    )
    failed = 0
    for name, job in jobs:
        try:
            job()
        except AssertionError as fault:
            failed += 1
            print(f"{name}: {str(fault).splitlines()[0] if str(fault) else 'not made by its order'}", flush=True)
        else:
            print(f"{name}: hold", flush=True)
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
