"""What an earlier step has said, done with other pieces."""

from __future__ import annotations

import re

from tests.outside.reader.bench import Bench, follow, reads
from tests.outside.reader.stock import Kind
from tests.outside.reader.table import Refused
from tests.outside.reader.words import Unreadable

SKIPPED = r"(?:For each.*?, take|Take|☐|Trim|Make the mirror|Lay each|Keep|Half have) "


def said_in(bench: Bench, number: str, must: str = "") -> list[str]:
    """The sentences of an earlier step, without what is taken and what is measured.

    Errors: Refused where there is no such step, or where it says nothing of the kind.
    """
    before = bench.texts.get(int(number))
    if before is None or int(number) == bench.number or (must and not any(must in sentence for sentence in before)):
        raise Refused(f"step {number} does not say that")
    return [sentence for sentence in before if not re.match(SKIPPED, sentence)]


def renamed(sentence: str, names: dict[str, str]) -> str:
    """A sentence with other letters and fabrics, all changed at once."""
    known = sorted((name for name in names if name), key=len, reverse=True)
    whole = re.compile("|".join(rf"(?<!\w){re.escape(name)}(?!\w)" for name in known))
    return whole.sub(lambda hit: names[hit[0]], sentence)


def names_for(before: list[Kind], now: list[Kind]) -> dict[str, str]:
    """Which letter and fabric of now stands for which of then.

    Errors: Refused where the two do not take alike things.
    """
    if len(before) != len(now):
        raise Refused("it takes other things")
    names: dict[str, str] = {}
    for old, new in zip(before, now, strict=True):
        pairs = [(old.label, new.label), (old.fabric, new.fabric)]
        if old.form != new.form:
            raise Refused("it takes other things")
        for a, b in pairs:
            if names.setdefault(a, b) != b:
                raise Refused(f"{a} would be {names[a]} and {b}")
    return names


@reads(r"Sew them as in step (?P<n>\d+)(?P<toward>, and press toward (?P<to>.+))?")
def as_in_step(bench: Bench, found: re.Match[str]) -> None:
    names = names_for(bench.takes.get(int(found["n"]), []), bench.for_one)
    for sentence in said_in(bench, found["n"]):
        said = renamed(sentence, names)
        if found["to"] and (press := re.match(r"Press (both|all) seams ", said)):
            said = f"Press {press[1]} seams toward {found['to']}"
        follow(bench, said)


@reads(r"Sew them as in step (?P<n>\d+); draw the line on (?P<on>.+?)(?: and press toward (?P<to>.+))?")
def pair_as_in_step(bench: Bench, found: re.Match[str]) -> None:
    before = said_in(bench, found["n"], "on both sides of it")
    squares = [item for item in bench.items if item.form == "square"]
    marked = bench.one(found["on"])
    others = [item for item in squares if item is not marked]
    if len(others) != 1:
        raise Refused("that is no pair of squares")
    kind, other = marked.extra, others[0].extra
    if not isinstance(kind, Kind) or not isinstance(other, Kind):
        raise Unreadable("squares of what?")
    on, base = f"the {kind.label} square ({kind.fabric})", f"the {other.label} square ({other.fabric})"
    for sentence in before:
        if sentence.startswith("On the wrong side of the "):
            follow(bench, re.sub(r"of the .+ square, draw", f"of {on}, draw", sentence))
        elif sentence.startswith("Place it on the "):
            follow(bench, re.sub(r"on the .+ square, right", f"on {base}, right", sentence))
        elif press := re.match(r"Press (both|all) seams (toward|open)", sentence):
            if (press[2] == "toward") != bool(found["to"]):
                raise Refused("pressed toward what?")
            follow(bench, f"Press {press[1]} seams toward {found['to']}" if found["to"] else sentence)
        else:
            follow(bench, sentence)


@reads(r"Sew them as in step (?P<n>\d+), with (?P<a>.+?) on the left end and (?P<b>.+?) on the right end")
def geese_as_in_step(bench: Bench, found: re.Match[str]) -> None:
    before = said_in(bench, found["n"], " end in the same way")
    old = bench.takes[int(found["n"])]
    bases = [item for item in bench.items if item.form == "rectangle"]
    if len(bases) != 1:
        raise Refused("on which rectangle?")
    letters = {kind.label: bases[0].extra.label for kind in old if kind.form == "rectangle"}  # type: ignore[attr-defined]
    ends = {"left": bench.one(found["a"]), "right": None}
    bench.used.add(ends["left"].key)  # type: ignore[union-attr]
    ends["right"] = bench.one(found["b"])
    bench.used.discard(ends["left"].key)  # type: ignore[union-attr]
    for sentence in before:
        if place := re.match(r"Place .+? on (its|the) (left|right) end(.*)", sentence):
            item = ends[place[2]]
            bench.items_said = item
            follow(bench, f"Place {_name(item)} on {place[1]} {place[2]} end{place[3]}")
        elif turn := re.match(r"Turn .+? so that (.+)", sentence):
            follow(bench, f"Turn {_name(bench.items_said)} so that {turn[1]}")
        elif re.match(r"Press .+ over the corner", sentence):
            follow(bench, f"Press {_name(bench.items_said)} over the corner")
        elif re.match(r"On the wrong side of each", sentence):
            for item in bench.items:
                if item.form == "square":
                    bench.method.setdefault("lines", {})[item.key] = 1
        else:
            follow(bench, renamed(sentence, letters))


def _name(item: object) -> str:
    kind = item.extra  # type: ignore[attr-defined]
    return f"{kind.label} ({kind.fabric})"


@reads(r"Sew them as in step (?P<n>\d+), with (?P<on>.+?) on (?P<base>.+)")
def flip_as_in_step(bench: Bench, found: re.Match[str]) -> None:
    before = said_in(bench, found["n"], "Turn both so that the line runs")
    for sentence in before:
        if sentence.startswith("On the wrong side of "):
            follow(bench, f"On the wrong side of {found['on']}, draw a line from corner to corner")
        elif sentence.startswith("Place it on "):
            follow(bench, f"Place it on {found['base']}, right sides together, edges even")
        elif sentence.endswith("over the corner"):
            follow(bench, f"Press {found['on']} over the corner")
        else:
            follow(bench, sentence)
