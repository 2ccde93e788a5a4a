"""Do the tests notice? A hundred changes of one operator or constant, one at a time: `make mutants`.

The changes are drawn by a seed from the rooms where numbers are made; a place keeps its rank as long as its own code
stays. First the tests are run once over code that reports which of the places each test reaches. A change is then tried
on the tests that reach it, the quickest first, and stops at the first that fails; what they let pass is tried on all
files that hold one of them, and what is worked out when modules are imported on all tests. A change that nothing
notices is listed, unless harmless.toml beside this file says why it can do no harm.

`--first` and `--count` try a part of the changes; `--reached` names a file that keeps which test reaches what, so that
parts need not find that out again.
"""

from __future__ import annotations

import argparse
import json
import os
import shutil
import subprocess
import sys
import tempfile
import time
import tomllib
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Final

from tests.mutants.change import Change, changed, changes_in, watched

ROOMS: Final = ("analysis", "sewing", "cutting", "facts")
PICTURES: Final = Path("blockdsl", "sewing", "techniques")
"""The scenes of lessons are pictures: they are looked at, and half of a sixteenth more in them is no fault."""

SEED: Final = 22
CHANGES: Final = 100
WANTED: Final = 90
PROJECT: Final = Path(__file__).resolve().parents[2]
COPIED: Final = ("blockdsl", "tests", "grammars", "library", "pyproject.toml", "README.md", "DEVELOPERS.md", "Makefile")

SUITE: Final = ("tests/unit/*", "tests/spec", "tests/library", "tests/properties/*.py", "tests/outside/*.py")
"""Each match is run by itself. What starts the program anew for every test (e2e, fuzz) and what judges web pages and
the bytes of pictures is left out: it asks whether files are whole, not whether their numbers are right."""
LEFT_OUT: Final = (
    "unit/export",
    "conftest",
    "__pycache__",
    "test_web",
    "test_fuzz",
    "test_outputs",
    "_print",
    "test_painters",
    "test_pdf_readers",
)
FIRST_SECONDS: Final = (6.0, 60.0)
"""How long the tests of the first and the second try take together, as they took when nothing was changed."""


@dataclass(frozen=True, slots=True)
class Test:
    """A test, how long it takes, and the changes that it reaches."""

    name: str
    seconds: float
    reaches: frozenset[int]


@dataclass(frozen=True, slots=True)
class Reach:
    """What reaches what; `by_import` is worked out when modules are imported, which every test stands on."""

    tests: tuple[Test, ...]
    by_import: frozenset[int]
    failing: tuple[str, ...]
    """Tests that fail without any change."""


def sample() -> list[Change]:
    """The changes of the seed, in an order that does not follow the files."""
    os.chdir(PROJECT)
    paths = sorted(
        path for room in ROOMS for path in Path("blockdsl", room).rglob("*.py") if PICTURES not in path.parents
    )
    every = [change for path in paths for change in changes_in(path)]
    return sorted(every, key=lambda change: change.rank(SEED))[:CHANGES]


def find_reach(changes: Sequence[Change], kept: Path) -> Reach:
    """Which tests reach which of the changes, by their numbers; from the file that keeps it, if it is there."""
    if not kept.exists():
        with _copy() as copy:
            for path in {change.path for change in changes}:
                places = {change.place: number for number, change in enumerate(changes) if change.path == path}
                (copy / path).write_text(watched(path, places), encoding="utf-8")
            half = kept.with_suffix(".half")
            half.unlink(missing_ok=True)
            for tests in _suite(copy):
                _pytest([tests, "-p", "tests.mutants.reach"], copy, {"BLOCKDSL_REACHED": str(half)})
            half.rename(kept)
    rows = [json.loads(line) for line in kept.read_text(encoding="utf-8").splitlines()]
    return Reach(
        tests=tuple(Test(name, seconds, frozenset(places)) for name, seconds, bad, places in rows if name and not bad),
        by_import=frozenset(place for name, _, _, places in rows if not name for place in places),
        failing=tuple(name for name, _, failed, _ in rows if failed),
    )


def _suite(copy: Path) -> list[str]:
    found = [path.relative_to(copy).as_posix() for pattern in SUITE for path in sorted(copy.glob(pattern))]
    return [path for path in found if not any(word in path for word in LEFT_OUT)]


def notice(number: int, change: Change, reach: Reach, copy: Path) -> str | None:
    """The first test that fails with the change; None when it goes unseen."""
    place = copy / change.path
    before = place.read_text(encoding="utf-8")
    _write(place, changed(change), 2 * number)
    try:
        return next(filter(None, (_failing(tests, copy) for tests in _tries(number, reach, copy) if tests)), None)
    finally:
        _write(place, before, 2 * number + 1)


def _write(place: Path, code: str, age: int) -> None:
    """Write code with a time of its own: by that Python tells whether what it compiled before is still the same."""
    place.write_text(code, encoding="utf-8")
    os.utime(place, (age, age))


def _tries(number: int, reach: Reach, copy: Path) -> Iterator[list[str]]:
    """Lists of tests to try, one after another: those that reach the place, then all of their files."""
    reached = [test for test in reach.tests if number in test.reaches]
    if number in reach.by_import or not reached:
        yield from ([tests] for tests in _suite(copy))
        return
    reached.sort(key=lambda test: (test.seconds, test.name))
    start = 0
    for most in FIRST_SECONDS:
        stop, seconds = start, 0.0
        while stop < len(reached) and (seconds := seconds + reached[stop].seconds) <= most:
            stop += 1
        yield [test.name for test in reached[start:stop]]
        start = stop
    yield [test.name for test in reached[start:]]
    yield sorted({test.name.partition("::")[0] for test in reached})


def _failing(tests: Sequence[str], copy: Path) -> str | None:
    """The first test that fails, or what stopped pytest; None when all pass."""
    try:
        ended = _pytest(["-x", *tests], copy, {})
    except subprocess.TimeoutExpired:
        return f"{tests[0]}: no end"
    if ended.returncode == 0:
        return None
    failed = [line for line in ended.stdout.splitlines() if line.startswith(("FAILED", "ERROR"))]
    return failed[0] if failed else f"pytest ends with {ended.returncode}: {ended.stdout[-300:]}"


def _pytest(words: Sequence[str], copy: Path, more: Mapping[str, str]) -> subprocess.CompletedProcess[str]:
    command = (sys.executable, "-m", "pytest", "-q", "-p", "no:cacheprovider", "--tb=no", *words)
    environment = {**os.environ, "PYTHONPATH": str(copy), "PYTHONPYCACHEPREFIX": str(copy.parent / "compiled"), **more}
    environment.pop("PYTHONDONTWRITEBYTECODE", None)
    return subprocess.run(command, cwd=copy, env=environment, capture_output=True, text=True, timeout=3600, check=False)


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
    options.add_argument("--reached", type=Path, help="a file that keeps which test reaches what")
    options.add_argument("--list", action="store_true", help="name the changes and try none")
    chosen = options.parse_args()
    changes = sample()
    numbers = range(chosen.first, min(chosen.first + chosen.count, len(changes)))
    if chosen.list:
        print("\n".join(changes[number].name for number in numbers))
        return 0
    with tempfile.TemporaryDirectory() as folder:
        reach = find_reach(changes, chosen.reached.resolve() if chosen.reached else Path(folder, "reached"))
    for name in reach.failing:
        print(f"fails without any change, and is left out: {name}")
    known, noticed, excused, unseen = harmless(), 0, 0, 0
    with _copy() as copy:
        for number in numbers:
            change, start = changes[number], time.monotonic()
            found = notice(number, change, reach, copy)
            why = known.get(change.name)
            told = found or (f"harmless: {why}" if why else "UNSEEN")
            print(
                f"{number:3} {change.name} (line {change.line})\n    {told} ({time.monotonic() - start:.0f} s)",
                flush=True,
            )
            noticed += found is not None
            excused += found is None and why is not None
            unseen += found is None and why is None
    print(f"{len(numbers)} changes: {noticed} noticed, {excused} harmless, {unseen} unseen")
    return 0 if (noticed + excused) * CHANGES >= WANTED * len(numbers) else 1


@contextmanager
def _copy() -> Iterator[Path]:
    """A copy of the project, so that the checkout itself is never changed."""
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
