"""Files that pass the check, with words, sizes and choices as odd as they may be: every kind of output is made of them.

Each number is a file, the same one every time. What comes of it is judged by how `blockdsl build` ends: 0, or 1 with
problems told, and never 3.
"""

from __future__ import annotations

import contextlib
import io
import random
import tempfile
from collections import Counter
from dataclasses import dataclass
from pathlib import Path

from blockdsl.cli import main

KINDS = "sheet,templates,diagrams,table,web"
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
_SIZES_IN = ("6 in", "12 in", "1/2 in", "1 in", "7 3/7 in", "2.875 in", "393 in", "36 in", "9 x 3 in", "1 x 90 in")
_SIZES_CM = ("15 cm", "30 cm", "0.5 cm", "1000 cm", "7.35 cm", "100 mm", "12 x 4 cm")
_SQUARE = (
    "{a}", "{a}/{b}", "{a}\\{b}", "(half {a} {b})", "(quarters {a} {b} {c} {a})", "(hourglass {a} {b})",
    "(split {a} {b} {c})", "(diamond {a} on {b})", "(snowball {a} with {b} at tl br)", "(rails {a} {b} {c})",
    "(bars {a} {b})", "(checker 2 x 2 {a} {b})", "(checker 3 x 3 {a} {b})", "(log centre {a} with {b} {c})",
    "(courthouse centre {a} with {b} {c})", "(curve {a} in {b} radius 2/3)", "(star45 points {a} ground {b})",
    "(spool {a} on {b})", "(kite {a} on {b})", "(octagon {a} on {b})", "(fan {a} {c} on {b})",
    "(cubes {a} {b} {c} across 2)", "(hexagons {a} {b} across 2)", "(triangles60 {a} {b} rows 2)",
    "(pineapple centre {a} with {b} {c} rounds 2)",
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
    "backing {b} overage 1/2 in", "wadding", "sleeve", "scraps {a} from 4 fat quarters",
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
    return "\n".join(lines) + "\n"


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
    lines = [_filled(chance, line, names, title) for line in chosen]
    if metric:
        lines = [line.replace(" in ", " cm ", 1) for line in lines]
    return [f"quilt {_words(chance)}", *(f"  {line}" for line in lines)]


@dataclass(frozen=True)
class Ending:
    """How the build of a file ended, and what it said."""

    status: int
    said: str


def built(text: str, kinds: str = KINDS) -> Ending:
    """Build every kind of output of a file, in this process, into a folder that is thrown away."""
    asked = f"{kinds},book" if "\nbook " in text else kinds
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "odd.block"
        path.write_text(text, encoding="utf-8")
        said = io.StringIO()
        out = io.TextIOWrapper(io.BytesIO(), encoding="utf-8")
        with contextlib.redirect_stderr(said), contextlib.redirect_stdout(out):
            status = main(
                ["build", str(path), "-o", str(Path(folder) / "out"), "--only", asked, "--no-cache", "--jobs", "1"]
            )
        return Ending(status, said.getvalue())


def run(first: int, files: int) -> int:
    """Build so many files; print how they ended, and each fault of ours. The number of faults."""
    ended: Counter[int] = Counter()
    for number in range(first, first + files):
        ending = built(valid_text(number), KINDS + (",steps" if number % 20 == 0 else ""))
        ended[ending.status] += 1
        if ending.status not in (0, 1):
            print(f"file {number}: {ending.said.strip().splitlines()[-1][:300]}", flush=True)
    print(f"{files} files built in every kind: {ended[0]} made, {ended[1]} with errors told, {ended[3]} faults of ours")
    return ended[3]
