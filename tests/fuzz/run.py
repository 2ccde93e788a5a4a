"""Twenty thousand spoiled block files through the whole house: `make fuzz`.

The same files every time. Whatever goes wrong is saved under the folder named last, with its text. Options:
how many files, and the number to start from, so that one file can be tried again by itself.
"""

from __future__ import annotations

import argparse
import os
import tempfile
from collections import Counter
from pathlib import Path

from tests.fuzz.judge import Verdict, judge
from tests.fuzz.mutate import mutated
from tests.fuzz.seeds import seed_texts
from tests.fuzz.valid import run as run_valid

FILES = 20_000
DRAW_EVERY = 40
BUILD_EVERY = 250
MOST_SAVED = 5
VALID_EVERY = 20
"""For so many spoiled files one that passes the check is built in every kind of output."""


def trial(number: int, seeds: list[str], *, draw_every: int, build_every: int) -> tuple[str, Verdict]:
    """The spoiled file with this number, and what came of it."""
    text = mutated(number, seeds)
    return text, judge(text, draw=number % draw_every == 0, build=number % build_every == 0)


def main() -> int:
    """Try them all; print a line, or the faults first. Gives 1 when anything is wrong."""
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--files", type=int, default=FILES)
    options.add_argument("--first", type=int, default=0)
    chosen = options.parse_args()
    seeds = seed_texts()
    faults: Counter[str] = Counter()
    saved = Path(tempfile.gettempdir()) / "blockdsl-fuzz"
    slowest, slowest_number, slowest_text, made = 0.0, 0, "", 0
    for number in range(chosen.first, chosen.first + chosen.files):
        text, verdict = trial(number, seeds, draw_every=DRAW_EVERY, build_every=BUILD_EVERY)
        made += verdict.blocks
        if verdict.seconds > slowest:
            slowest, slowest_number, slowest_text = verdict.seconds, number, text
        for fault in verdict.faults:
            faults[fault] += 1
            if faults[fault] == 1 and len(faults) <= MOST_SAVED * 20:
                print(f"file {number}: {fault}", flush=True)
                _save(saved / f"{number}.block", text)
    _save(saved / "slowest.block", slowest_text)
    failed = run_valid(chosen.first, chosen.files // VALID_EVERY, os.cpu_count() or 1)
    print(
        f"{chosen.files} files, {made} blocks made, {sum(faults.values())} faults of {len(faults)} kinds; "
        f"slowest {slowest:.2f} s (file {slowest_number}); see {saved}"
    )
    return 1 if faults or failed else 0


def _save(path: Path, text: str) -> None:
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_bytes(text.encode("utf-8", "surrogatepass"))


if __name__ == "__main__":
    raise SystemExit(main())
