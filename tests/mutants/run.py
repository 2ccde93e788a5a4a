"""`make mutants`: a hundred changes of one operator or constant, drawn by lot; each should make a test fail.

Each is made in a copy of the project. The nearest tests are run first, then, for what they do not notice, all others.
What survives is listed, but for what `harmless.toml` gives a reason for.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import tempfile
import tomllib
from argparse import ArgumentParser
from pathlib import Path

from tests.mutants.changes import Change, chosen
from tests.mutants.nearest import nearest

ROOT = Path(__file__).parents[2]
HARMLESS = Path(__file__).with_name("harmless.toml")
COUNT = 100
WANTED = 90
"""So many of a hundred are to be noticed or harmless."""
LONGEST_S = 900.0
"""A change that makes the tests run for so long is noticed too."""
LEFT_OUT = shutil.ignore_patterns(
    ".git", ".venv", "out", "dist", "node_modules", "__pycache__", ".*_cache", ".hypothesis"
)


def main() -> int:
    """Try the changes that are asked for; 1 when too many survive."""
    parser = ArgumentParser(prog="make mutants")
    parser.add_argument("--first", type=int, default=0, help="leave out so many of the sample")
    parser.add_argument("--count", type=int, default=COUNT, help="try so many")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--near", action="store_true", help="run the nearest tests alone")
    asked = parser.parse_args()
    changes = chosen(ROOT, COUNT, asked.seed)[asked.first : asked.first + asked.count]
    known = {(each["file"], each["line"], each["old"], each["new"]) for each in harmless()}
    survived = []
    with tempfile.TemporaryDirectory() as folder:
        copy = Path(folder) / "project"
        shutil.copytree(ROOT, copy, ignore=LEFT_OUT)
        for number, change in enumerate(changes, start=asked.first + 1):
            if (change.file, change.line, change.old, change.new) in known:
                print(f"{number:3}  harmless  {change}", flush=True)
                continue
            noticed = is_noticed(change, copy, near=asked.near)
            print(f"{number:3}  {'noticed ' if noticed else 'SURVIVED'}  {change}", flush=True)
            survived += [] if noticed else [change]
    print(f"{len(changes) - len(survived)} of {len(changes)} noticed or harmless")
    return 0 if len(survived) * COUNT <= (COUNT - WANTED) * max(len(changes), 1) else 1


def harmless() -> list[dict[str, str]]:
    """Changes that alter nothing that a maker could notice, each with its reason."""
    found: list[dict[str, str]] = tomllib.loads(HARMLESS.read_text(encoding="utf-8")).get("change", [])
    return found


def is_noticed(change: Change, copy: Path, *, near: bool) -> bool:
    """Whether a test fails with the change in."""
    path = copy / change.file
    before = path.read_text(encoding="utf-8")
    path.write_text(change.made_in(before), encoding="utf-8")
    try:
        close = nearest(change.file, copy)
        return fails(close, copy) or (
            not near and fails(("tests", *(f"--ignore={test}" for test in close)), copy, "auto")
        )
    finally:
        path.write_text(before, encoding="utf-8")


def fails(tests: tuple[str, ...], copy: Path, processes: str = "0") -> bool:
    """Whether any of the tests fails, or they run on and on; the first failure is enough."""
    here = {**os.environ, "PYTHONPATH": str(copy), "PYTHONDONTWRITEBYTECODE": "1"}
    command = [sys.executable, "-m", "pytest", "-x", "-q", "-p", "no:cacheprovider", "-n", processes, *tests]
    try:
        done = subprocess.run(command, cwd=copy, env=here, capture_output=True, timeout=LONGEST_S, check=False)
    except subprocess.TimeoutExpired:
        return True
    return done.returncode == 1


if __name__ == "__main__":
    sys.exit(main())
