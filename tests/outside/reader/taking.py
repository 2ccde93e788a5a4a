"""What is taken for a step, and how many times."""

from __future__ import annotations

import re

from tests.outside.reader.bench import Bench, reads
from tests.outside.reader.table import Refused
from tests.outside.reader.words import LENGTH, stem


@reads(
    r"(?P<each>For each(?P<pair> (?:pair|set)(?: of squares)?)?, take|Take) "
    r"(?!out the basting|the pieces \S+ to )(?P<list>.+)"
)
def take(bench: Bench, found: re.Match[str]) -> None:
    per_pair = bool(found["pair"]) and bench.title.each_batch is None
    if found["pair"] and not per_pair:
        times = bench.title.batches
    elif found["each"].startswith("For each"):
        times = bench.title.count + bench.title.mirrored
    else:
        sets = re.fullmatch(r"(\d+) strip sets?", bench.title.source or "")
        times = bench.title.batches if bench.title.each_batch else int(sets[1]) if sets else 1
        if bench.title.total > 1 and not bench.title.source:
            raise Refused("several are made of what is taken for one")
    bench.each_pair = bench.each_pair or int(per_pair)
    take_list(bench, found["list"], times)


def take_list(bench: Bench, text: str, times: int) -> None:
    """Take what a list names, so many times."""
    cuts = None
    if size := re.search(rf",? ({LENGTH}) × ({LENGTH}) (?:in|cm)$", text):
        text, cuts = text[: size.start()], (size[1], size[2])
    for entry in _rows(_whole(text)):
        _take_one(bench, entry, times, cuts)


def _whole(text: str) -> list[str]:
    """Entries in one piece again where a name has an `and` in it: half-square triangles of Main and Pale."""
    begins = r"(?=\d|the |an? |both |one |rows? |columns? |(?:straight |diagonal )?round \d)"
    return [part for part in re.split(rf"(?:,? and |, ){begins}(?![^()]*\))", text) if part]


def _rows(entries: list[str]) -> list[str]:
    """Rows 1, 2, and 3 are row 1, row 2 and row 3; columns likewise."""
    written = []
    kind = ""
    for entry in entries:
        if run := re.fullmatch(r"(rows|columns|parts) (\d+) to (\d+)", entry):
            written += [f"{stem(run[1])} {n}" for n in range(int(run[2]), int(run[3]) + 1)]
        elif found := re.fullmatch(r"(rows|columns|parts) (\d+)", entry):
            kind = stem(found[1])
            written.append(f"{kind} {found[2]}")
        elif kind and re.fullmatch(r"\d+", entry):
            written.append(f"{kind} {entry}")
        else:
            written.append(entry)
    return written


def _take_one(bench: Bench, entry: str, times: int, cuts: tuple[str, str] | None) -> None:
    count, kinds = bench.stock.kinds(entry)
    there = [kind for kind in kinds if bench.stock.is_there(kind, 1)] or kinds
    if cuts and not (there := [kind for kind in there if kind.cut == cuts]):
        raise Refused(f"nothing is cut {cuts[0]} × {cuts[1]}")
    if len({(kind.label, kind.fabric, kind.form) for kind in there}) > 1:
        raise Refused(f"{entry!r} may be one thing or another")
    kind = there[0]
    bench.taken.append((kind, count * times, len(bench.taken)))
    bench.for_one.extend([kind] * count)
    group = len(bench.taken)
    for _ in range(count):
        if kind.form in ("unit", "paper"):
            bench.add({kind.label}, bench.stock.cloth(kind), form=kind.form, group=group)
        else:
            names = {kind.label, kind.fabric, f"{kind.label} ({kind.fabric})"}
            form = kind.form
            names |= {f"{name} {word}" for name in (kind.label, kind.fabric) for word in (form, "piece")}
            names |= {stem(f"{name} {word}") for name in (kind.label, kind.fabric) for word in ("triangle", form)}
            names |= {f"{name} {word}" for name in (kind.label, kind.fabric) for word in ("triangle", "square")}
            names |= {f"{kind.label} {form} ({kind.fabric})"}
            if numbered := re.match(r"\d+ ([A-Z]+\d+)\b", entry):
                names |= {numbered[1], f"{numbered[1]} ({kind.fabric})"}
            bench.add(names, bench.stock.cloth(kind), form=form, group=group, extra=kind)
