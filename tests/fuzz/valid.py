"""Files that pass the check, with words, sizes and choices as odd as they may be: every kind of output is made of them.

Each number is a file, the same one every time. What comes of it is judged by how `blockdsl check` and `blockdsl build`
end: both with 0, or with 1 and problems told, and never with 3. `python -m tests.fuzz.valid` builds twenty thousand.
"""

from __future__ import annotations

import argparse
import contextlib
import io
import os
import random
import re
import tempfile
import time
from collections import Counter, deque
from concurrent.futures import Future, ProcessPoolExecutor
from dataclasses import dataclass
from itertools import islice
from pathlib import Path
from unittest.mock import patch

from blockdsl.cli import main
from blockdsl.cutting.cloth import Effort
from blockdsl.export.svg import write_svg

KINDS = "sheet,templates,diagrams,table,web,steps"
FILES = 20_000
PART = 50
"""Files that a process builds before it tells how they ended."""
_POOLS = (
    "ABCdefghij klmno",
    "äöüßéñøÅœ ",
    "αβγДЖЯ ",
    "שלום עולם ",
    "قماش ",
    "<>&'%$#\\|`*_~[]{}()/;:!?=+^ ",
    "\t\u00a0\u2009\u200d ",
    "e\u0301a\u0308o\u0303 ",
    "雪花😀🧵 ",
    "0123456789/ x×½ ",
    "-–—…“”".replace("“", "").replace("”", ""),
    "\ue000\uf8ff\ufffd\u00ad",
)
_SIZES_IN = ("6 in", "12 in", "1/2 in", "1 in", "7 3/7 in", "2.875 in", "36 in", "9 x 3 in")
_SIZES_CM = ("15 cm", "30 cm", "0.5 cm", "7.35 cm", "100 mm", "12 x 4 cm")
_HUGE = ("393 in", "1 x 90 in", "1000 cm")
"""Up to the limit: their templates run over hundreds of pages, so these are rare."""
_SQUARE = (
    "{a}", "{a}/{b}", "{a}\\{b}", "(half {a} {b})", "(quarters {a} {b} {c} {a})", "(hourglass {a} {b})",
    "(split {a} {b} {c})", "(diamond {a} on {b})", "(snowball {a} with {b} at tl br)", "(rails {a} {b} {c})",
    "(bars {a} {b})", "(checker 2 x 2 {a} {b})", "(checker 3 x 3 {a} {b})", "(log centre {a} with {b} {c})",
    "(courthouse centre {a} with {b} {c} {a} {b} rounds 2)", "(curve {a} in {b} radius 2/3)",
    "(star45 points {a} ground {b})",
    "(spool {a} on {b})", "(kite {a} on {b})", "(octagon {a} on {b})", "(fan {a} {c} on {b})",
    "(cubes {a} {b} {c} across 2)", "(hexagons {a} {b} across 2)", "(triangles60 {a} {b} rows 2)",
    "(pineapple centre {a} with straight {b} diagonal {c} rounds 2)",
)  # fmt: skip
"""Shapes that fill a square."""

_MAKES = (
    "make half as two at a time", "make half as eight at a time", "make half as stitch and flip",
    "make rails as strip set", "make hourglass as two at a time", "make checker as strip set",
    "make diamond as stitch and flip", "make snowball as stitch and flip", "make half as foundation",
    "make diamond as foundation", "make split as foundation", "make log as foundation",
    "make half as over papers", "make hexagons as over papers",
)  # fmt: skip
_SETTINGS = (
    "set straight {m} x {n} of {t}", "set on point {m} x {n} of {t}", "set dropped columns {m} x {n} of {t}",
    "set strippy {m} x {n} of {t}", "set medallion of {t}",
)  # fmt: skip
_QUILT_LINES = (
    "fill {a}", "sash 1 in {b}", "sash 1 1/2 in {b} posts {c} outer", "border 2 in {a} butted",
    "border 3 in {b} mitred", "border 2 in {a} corners {c}", "border 4 in {b} along length",
    "binding 2 1/4 in {c} straight", "binding 2 1/2 in {a} bias", "backing {a} overage 4 in",
    "backing {b} overage 1/2 in", "wadding", "sleeve 4 in {c}", "scraps {a} from 4 fat quarters",
    "scraps {c} from 3 fat quarters", "fabric width 42 in usable", "alternate {b}", "shrinkage 3 %", "note {w}",
)  # fmt: skip


def valid_text(number: int) -> str:
    """The file of this number."""
    chance = random.Random(number)  # noqa: S311 - the same file every time
    names = ["fog", "lamp", "Tide-2", "ünï"][: chance.randint(2, 4)]
    lines = [f"fabric {name} {_words(chance)} #{chance.randrange(1 << 24):06x}{_print(chance)}" for name in names]
    metric = chance.random() < 0.3
    title = _words(chance)
    lines += _block(chance, title, names, metric=metric)
    if chance.random() < 0.35:
        lines += _quilt(chance, title, names, metric=metric)
    if chance.random() < 0.3:
        sizes = " sizes 5 7 1/2 in" if not metric and chance.random() < 0.4 else ""
        lines += [f"book {_words(chance)}", f"  by {_words(chance)}", f"  chapter {_words(chance)}"]
        lines += [f"    block {title}{sizes}", "  techniques"]
    if number >= WITH_HER_OWN:
        lines = _with_her_own(random.Random(-number), lines)  # noqa: S311 - apart, so that older files stay as they were
    return "\n".join(lines) + "\n"


WITH_HER_OWN = 20_000_000
"""From here on files have a maker's own lines and notes too."""
_IN_A_BLOCK = (
    "note {w}",
    "note {w} at half",
    "note {w} at rows",
    "note {w} at last",
    'see "https://marsh-street.example/{n}" {w}',
    'see "https://marsh-street.example/a?b=c&d={n}" {w} at last',
    "level {w}",
    "time {w}",
    "expect symmetric by half turn",
    "expect no symmetry",
)
_HERS = ("line {w}", 'link "https://marsh-street.example/"', "colour #1f5c4d", "press open", "language de", "line {w}")


def _with_her_own(chance: random.Random, lines: list[str]) -> list[str]:
    """The same file with lines of a maker's, some of them in its blocks."""
    found: list[str] = []
    for line in lines:
        found.append(line)
        if line.startswith("  size "):
            found += [f"  {_said(chance, form)}" for form in chance.sample(_IN_A_BLOCK, chance.randint(0, 3))]
        if line.startswith(("  by ", "  set ", "  size ")) and chance.random() < 0.3:
            found.append(f"  {_said(chance, chance.choice(_HERS))}")
    hers = [f"  {_said(chance, form)}" for form in chance.sample(_HERS, chance.randint(0, 3))]
    return [*found, f"maker {_words(chance)}", *hers] if chance.random() < 0.6 else found


def _said(chance: random.Random, form: str) -> str:
    return form.format(w=_words(chance), n=chance.randrange(10_000))


def _words(chance: random.Random) -> str:
    pool = "".join(chance.sample(_POOLS, chance.randint(1, 3)))
    longest = 120 if chance.random() < 0.1 else 14
    return f'"{"".join(chance.choice(pool) for _ in range(chance.randint(1, longest)))}a"'


def _print(chance: random.Random) -> str:
    return chance.choice(("", "", "", " directional", " dark", " width 20 in", " light width 60 in"))


def _filled(chance: random.Random, form: str, names: list[str], title: str = "") -> str:
    some = {letter: chance.choice(names) for letter in "abc"}
    return form.format(**some, t=title, w=_words(chance), m=chance.randint(1, 3), n=chance.randint(1, 3))


def _block(chance: random.Random, title: str, names: list[str], *, metric: bool) -> list[str]:
    size = chance.choice(_SIZES_CM if metric else _SIZES_IN)
    if chance.random() < 0.02:
        size = chance.choice(_HUGE[2:] if metric else _HUGE[:2])
    across = down = chance.randint(1, 3)
    if " x " in size:
        across, down = 3, 1
    lines = [f"block {title}", f"  size {size}"]
    if "90" in size:
        across, down = 1, 90
    form = chance.sample(_SQUARE, chance.randint(1, 3))
    for _ in range(down):
        cells = [
            _filled(chance, chance.choice(form), names) + chance.choice(("", "", ">", "<", "~", ">>"))
            for _ in range(across)
        ]
        lines.append("  row " + "  ".join(cells))
    lines += [f"  {line}" for line in chance.sample(_MAKES, chance.randint(0, 3))]
    if chance.random() < 0.3:
        lines.append(f"  note {_words(chance)}")
    if chance.random() < 0.3:
        lines.append(f"  colourway {_words(chance)} {names[0]}={names[1]} {names[1]}={names[0]}")
    if chance.random() < 0.2:
        lines.append("  measure 1 mm" if metric else "  measure 1/16 in")
    if chance.random() < 0.2:
        lines.append(chance.choice(("  press open", "  press toward dark", "  compare methods")))
    return lines


def _quilt(chance: random.Random, title: str, names: list[str], *, metric: bool) -> list[str]:
    chosen = [chance.choice(_SETTINGS), *chance.sample(_QUILT_LINES, chance.randint(0, 6))]
    if chance.random() < 0.9:  # what would be refused at once is seldom worth a file
        chosen = list({_said_once(line): line for line in chosen}.values())
        if "on point" in chosen[0] and not any(line.startswith("fill") for line in chosen):
            chosen.append("fill {a}")
    lines = [_filled(chance, line, names, title) for line in chosen]
    if metric:
        lines = [line if line.startswith("note") else re.sub(r" in\b", " cm", line) for line in lines]
    return [f"quilt {_words(chance)}", *(f"  {line}" for line in lines)]


def _said_once(line: str) -> str:
    """What may be said once of a quilt: of borders, notes and scraps there may be several."""
    word = line.split(maxsplit=1)[0]
    return line if word in ("border", "note", "scraps") else word


@dataclass(frozen=True)
class Ending:
    """How the check and the build of a file ended, and what the build said."""

    checked: int
    status: int
    said: str

    @property
    def is_good(self) -> bool:
        """Whether what passed the check was made, and what did not was told of an error."""
        told = self.status == 1 and "error[" in self.said
        return (self.checked, self.status) == (0, 0) or (self.checked == 1 and told)


def _run(*words: str) -> tuple[int, str]:
    """How a command ends in this process, and what it says."""
    said, out = io.StringIO(), io.TextIOWrapper(io.BytesIO(), encoding="utf-8")
    with contextlib.redirect_stderr(said), contextlib.redirect_stdout(out):
        return main(list(words)), said.getvalue()


def built(text: str, kinds: str = KINDS, *, painted: bool = False) -> Ending:
    """Check a file and build outputs of it, every kind, in this process, into a folder that is thrown away.

    What is put in place of the images of the steps, unless they are `painted`, is their SVG, and cloth is planned
    quickly: painting and the solver are what takes the time, and both are another library's work. Plans at the usual
    effort have a run of their own (`python -m tests.outside.packing.lists`).
    """
    asked = f"{kinds},book" if "\nbook " in text else kinds
    if painted:
        return _built(text, asked)
    with (
        patch("blockdsl.export.png.write_png", lambda page, _: write_svg(page, title="step")),
        patch("blockdsl.facts.collect_cloth.effort_for", lambda _: Effort.QUICK),
    ):
        return _built(text, asked)


def _built(text: str, asked: str) -> Ending:
    with tempfile.TemporaryDirectory() as folder:
        path, out = str(Path(folder) / "odd.block"), str(Path(folder) / "out")
        Path(path).write_text(text, encoding="utf-8")
        checked, _ = _run("check", path)
        return Ending(checked, *_run("build", path, "-o", out, "--only", asked, "--no-cache", "--jobs", "1"))


def is_painted(number: int) -> bool:
    """Whether the bounded run paints the images of the steps and plans cloth as usual: every fiftieth time."""
    return number % 50 == 0


Tally = tuple[Counter[str], list[str]]
"""How many files ended in which way, and the faults of ours in words."""


def run_some(numbers: range) -> Tally:
    """Build the files of these numbers."""
    ended: Counter[str] = Counter()
    faults = []
    for number in numbers:
        ending = built(valid_text(number), painted=is_painted(number))
        ended["made" if ending.status == 0 else "told" if ending.is_good else "fault"] += 1
        if not ending.is_good:
            last = (ending.said.strip().splitlines() or [""])[-1][:300]
            faults.append(f"file {number}: check ends with {ending.checked}, build with {ending.status}: {last}")
    return ended, faults


def run(first: int, files: int, processes: int = 1, minutes: float = float("inf")) -> int:
    """Build so many files, in the order of their numbers, or as many as fit into the time; print how they ended.

    The line that is printed says which number to begin with next. Gives the number of faults of ours.
    """
    parts = [range(start, min(start + PART, first + files)) for start in range(first, first + files, PART)]
    stop, ended, done = time.monotonic() + 60 * minutes, Counter[str](), 0
    with ProcessPoolExecutor(processes) as pool:
        waiting: deque[Future[Tally]] = deque()
        left = iter(parts)
        waiting.extend(pool.submit(run_some, part) for part in islice(left, processes + 1))
        while waiting:
            tally, faults = waiting.popleft().result()
            ended += tally
            done += tally.total()
            for fault in faults:
                print(fault, flush=True)
            print(_told(done, first + done, ended), flush=True)
            if time.monotonic() < stop:
                waiting.extend(pool.submit(run_some, part) for part in islice(left, 1))
    return ended["fault"]


def _told(done: int, after: int, ended: Counter[str]) -> str:
    counts = f"{ended['made']} made, {ended['told']} with errors told, {ended['fault']} faults of ours"
    return f"{done} files checked and built in every kind: {counts}; next is {after}"


def _main() -> int:
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--files", type=int, default=FILES)
    options.add_argument("--first", type=int, default=0, help="the number to begin with")
    options.add_argument("--processes", type=int, default=os.cpu_count() or 1)
    options.add_argument("--minutes", type=float, default=float("inf"), help="begin no further part after so many")
    chosen = options.parse_args()
    return 1 if run(chosen.first, chosen.files, chosen.processes, chosen.minutes) else 0


if __name__ == "__main__":
    raise SystemExit(_main())
