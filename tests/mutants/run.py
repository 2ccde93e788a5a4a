"""Do the tests notice? A hundred changes of one operator or constant, one at a time: `make mutants`.

The same changes every time, from a seed, out of the rooms where numbers are made. The nearest tests come first and stop
at the first failure; what they let pass is tried on the whole suite. A change that nothing notices is listed, unless
harmless.toml beside this file says why it can do no harm. `--first` and `--count` try a part of them.
"""

from __future__ import annotations

import argparse
import os
import random
import shutil
import subprocess
import sys
import tempfile
import time
import tomllib
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Final

from tests.mutants.change import Change, changed, changes_in

ROOMS: Final = ("analysis", "sewing", "cutting", "facts")
PICTURES: Final = Path("blockdsl", "sewing", "techniques")
"""The scenes of lessons are pictures: they are looked at, and half of a sixteenth more in them is no fault."""

SEED: Final = 22
CHANGES: Final = 100
WANTED: Final = 90
PROJECT: Final = Path(__file__).resolve().parents[2]
COPIED: Final = ("blockdsl", "tests", "grammars", "library", "pyproject.toml", "README.md", "DEVELOPERS.md", "Makefile")

NEAR: Final[dict[str, tuple[tuple[str, ...], ...]]] = {
    "analysis": (
        ("tests/unit/analysis", "tests/spec"),
        ("tests/unit/facts", "tests/library", "tests/outside/test_quilt_values.py",
         "tests/outside/test_quilt_cover_shapely.py"),
    ),
    "sewing": (
        ("tests/unit/sewing", "tests/unit/wording"),
        ("tests/outside/test_virtual_sewing.py", "tests/outside/test_order_bruteforce.py",
         "tests/outside/test_reader.py"),
        ("tests/outside/test_library_sewn.py",),
    ),
    "cutting": (
        ("tests/unit/cutting", "tests/outside/test_published_values.py", "tests/outside/test_block_lists.py"),
        ("tests/outside/test_cut_shapely.py", "tests/outside/test_finishing.py",
         "tests/outside/test_published_quilts.py",
         "tests/outside/test_fat_quarters.py", "tests/library", "tests/spec"),
        ("tests/outside/test_cloth_plans.py", "tests/outside/test_library_sewn.py"),
    ),
    "facts": (
        ("tests/unit/facts", "tests/spec"),
        ("tests/library", "tests/outside/test_published_values.py", "tests/outside/test_quilt_values.py",
         "tests/outside/test_published_quilts.py", "tests/outside/test_virtual_sewing.py"),
    ),
}  # fmt: skip
"""For each room its nearest tests, in the order in which they are tried."""


def sample() -> list[Change]:
    """The changes of the seed, in an order that does not follow the files."""
    os.chdir(PROJECT)
    paths = sorted(
        path for room in ROOMS for path in Path("blockdsl", room).rglob("*.py") if PICTURES not in path.parents
    )
    every = [change for path in paths for change in changes_in(path)]
    return random.Random(SEED).sample(every, CHANGES)  # noqa: S311 - the same ones every time


def notice(change: Change, copy: Path) -> str | None:
    """The first tests that fail with the change; None when it goes unseen."""
    place = copy / change.path
    before = place.read_text(encoding="utf-8")
    place.write_text(changed(change), encoding="utf-8")
    try:
        for tests in _near(change):
            if failed := _failing(tests, copy):
                return failed
        return _failing(("-n", "auto", "--dist", "worksteal", "tests"), copy)
    finally:
        place.write_text(before, encoding="utf-8")


def _near(change: Change) -> Sequence[Sequence[str]]:
    return NEAR[change.path.parts[1]]


def _failing(tests: Sequence[str], copy: Path) -> str | None:
    """The first test that fails, or what stopped pytest; None when all pass."""
    there = [word for word in tests if not word.startswith("tests/") or (copy / word).exists()]
    command = (sys.executable, "-m", "pytest", "-x", "-q", "-p", "no:cacheprovider", "--tb=no", *there)
    environment = {**os.environ, "PYTHONPATH": str(copy), "PYTHONDONTWRITEBYTECODE": "1"}
    try:
        ended = subprocess.run(
            command, cwd=copy, env=environment, capture_output=True, text=True, timeout=1800, check=False
        )
    except subprocess.TimeoutExpired:
        return f"{tests[0]}: no end"
    if ended.returncode == 0:
        return None
    failed = [line for line in ended.stdout.splitlines() if line.startswith(("FAILED", "ERROR"))]
    return failed[0] if failed else f"pytest ends with {ended.returncode}"


def harmless() -> dict[str, str]:
    """Changes that can do no harm, each with the reason."""
    path = Path(__file__).with_name("harmless.toml")
    rows = tomllib.loads(path.read_text(encoding="utf-8")).get("change", [])
    return {row["what"]: row["why"] for row in rows}


def main() -> int:
    """Try them; print each with what noticed it, and the sum. Gives 1 when fewer than wanted are noticed."""
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--first", type=int, default=0)
    options.add_argument("--count", type=int, default=CHANGES)
    options.add_argument("--list", action="store_true", help="name the changes and try none")
    chosen = options.parse_args()
    changes = sample()[chosen.first : chosen.first + chosen.count]
    if chosen.list:
        print("\n".join(change.name for change in changes))
        return 0
    known, noticed, excused, unseen = harmless(), 0, 0, []
    for copy in _copies():
        for room in sorted({change.path.parts[1] for change in changes}):
            if failed := next(filter(None, (_failing(tests, copy) for tests in NEAR[room])), None):
                print(f"without any change the tests of {room} fail already: {failed}")
                return 1
        for number, change in enumerate(changes, start=chosen.first):
            start = time.monotonic()
            found = notice(change, copy)
            why = known.get(change.name)
            told = found or (f"harmless: {why}" if why else "UNSEEN")
            print(f"{number:3} {change.name}\n    {told} ({time.monotonic() - start:.0f} s)", flush=True)
            noticed += found is not None
            excused += found is None and why is not None
            unseen += [] if found or why else [change.name]
    print(f"{len(changes)} changes: {noticed} noticed, {excused} harmless, {len(unseen)} unseen")
    return 0 if (noticed + excused) * CHANGES >= WANTED * len(changes) else 1


def _copies() -> Iterator[Path]:
    """One copy of the project, so that the checkout itself is never changed."""
    with tempfile.TemporaryDirectory() as folder:
        copy = Path(folder) / "project"
        copy.mkdir()
        for name in COPIED:
            source = PROJECT / name
            if source.is_dir():
                shutil.copytree(
                    source, copy / name, ignore=shutil.ignore_patterns("__pycache__", "node_modules"), symlinks=True
                )
            else:
                shutil.copy2(source, copy / name)
        yield copy


if __name__ == "__main__":
    raise SystemExit(main())
