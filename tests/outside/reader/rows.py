"""Rows and columns sewn in one sentence, from one end to the other."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator

from tests.outside.reader.bench import Bench, reads
from tests.outside.reader.cloth import Cloth, Run
from tests.outside.reader.joining import Sewing, sewn_on
from tests.outside.reader.landmarks import Test, best, edges_at, edges_exactly_at
from tests.outside.reader.laying import lay, tests_of
from tests.outside.reader.nests import NEST, nesting
from tests.outside.reader.table import Item, Refused, Table
from tests.outside.reader.words import PLACE, Unreadable, stem

Place = tuple[str, list[Test], str]
"""What comes next in a row, how it lies, in words too."""


def parts_of(bench: Bench, text: str) -> list[Place]:
    """A, B (point at the top), A: brackets are not cut through; `then a B and an A 3 times` is written out.

    Errors: Unreadable.
    """
    each: list[Test] = []
    if whole := re.search(r"(?:^|, )each with (?P<how>.+)$", text):
        each = tests_of(bench, whole["how"])
        text = text[: whole.start()]
    if again := re.fullmatch(r"(?P<first>.+), then (?P<other>.+) and (?P<more>.+) (?:(?P<n>\d+) times|twice)", text):
        written = [again["first"], *[again["other"], again["more"]] * int(again["n"] or 2)]
    else:
        # A list with `each with` behind it has no `and` of its own: half-square triangles of Ground and Main.
        last = "" if each else r"| and (?=[^ ]+$)"
        written = re.split(rf"(?:, and |, {last})(?![^(]*\))", text)
    found: list[Place] = []
    for part in written:
        if not (read := re.fullmatch(r"(?:(?P<n>\d+) )?(?P<what>.+?)(?P<how> \((?=[^()]* (?:at|in) the ).+\))?", part)):
            raise Unreadable(f"what comes next in a row: {part!r}")
        how = read["how"][2:-1].removeprefix("each with ") if read["how"] else ""
        tests = tests_of(bench, how) if how else []
        found.extend([(read["what"], [*tests, *each], how)] * int(read["n"] or 1))
    return found


def sew_row(bench: Bench, parts: list[Place], way: str, nest: str | None, *, zigzag: bool = False) -> list[Item]:
    """Sew one thing after another; each lies as it is said, its edge on the edge of the one before."""
    items: list[Item] = []
    last: frozenset[str] = frozenset()
    each = nest and f"{nest} where any"
    bench.row_seams = []
    for what, tests, _ in parts:
        item = bench.one(what if re.match(r"(?:an?|the) ", what) else f"a {what}")
        bench.used.add(item.key)
        if not items:
            if tests:
                lay(bench, item, tests if zigzag else [*tests, _has_edge_at(way)])
        else:
            bench.row_seams.append(
                sewn_on(
                    bench,
                    item,
                    items[0],
                    Sewing(_beside(last, way), tests, each, zigzag=zigzag, way="" if zigzag else way),
                )
            )
        items.append(item)
        last = _marks(bench, what, item)
    bench.base = [items[0].key]
    return items


def _has_edge_at(way: str) -> Test:
    """What begins a row has an edge where the next one comes: squarely there, if it can lie so."""
    return lambda cloth: 3 if edges_exactly_at(cloth, way) else 1


def _marks(bench: Bench, what: str, item: Item) -> frozenset[str]:
    """What lies along the outline of a thing: its own mark; of what this step has sewn, those of all that is in it."""
    own = {item.mark}
    if re.match(r"the .*\b(?:row|column|pair|part)$", what):
        own |= {other.mark for other in bench.named(what)}
    return frozenset(own)


def _beside(last: frozenset[str], way: str) -> Callable[[Cloth], list[Run]]:
    return lambda cloth: [run for run in edges_at(cloth, way) if last & run.tags]


@reads(
    rf"Sew them together from (?P<a>{PLACE}) to (?P<b>{PLACE}), right sides together, starting each seam at the "
    r"opposite end: (?P<list>.+)(?P<nest>x)?",
    rf"Sew them together from (?P<a>{PLACE}) to (?P<b>{PLACE})(?:, right sides together)?{NEST}: (?P<list>.+)",
    rf"Sew them together from (?P<a>{PLACE}) to (?P<b>{PLACE}), one stretch at a time, from dot to dot"
    r"(?P<nest>x)?(?P<zigzag>): (?P<list>.+)",
)
def sew_them(bench: Bench, found: re.Match[str]) -> None:
    zigzag = "zigzag" in found.groupdict() or bench.by_hand
    items = sew_row(bench, parts_of(bench, found["list"]), found["b"], nesting(found["nest"]), zigzag=zigzag)
    bench.joined_last = {item.key for item in items}


@reads(
    rf"Lay them (?P<way>one below the other|side by side), (?P<x>[^,]+?) and (?P<y>[^,]+?) at the "
    rf"(?P<pos>{PLACE}) in turn",
)
def lay_in_turn(bench: Bench, found: re.Match[str]) -> None:
    """Alike things, turned about one after the other."""
    if len({item.group for item in bench.items}) != 1:
        raise Refused("they are not all alike")
    for place, item in enumerate(bench.items):
        lay(bench, item, tests_of(bench, f"{found['xy'[place % 2]]} at the {found['pos']}"))
    bench.method["in turn"] = "bottom" if found["way"] == "one below the other" else "right"


@reads(rf"Sew them together in order from (?P<a>{PLACE}) to (?P<b>{PLACE})(?:, right sides together)?{NEST}")
def sew_in_order(bench: Bench, found: re.Match[str]) -> None:
    """Rows or columns by their numbers, each as it was laid."""
    numbered = []
    for item in bench.items:
        names = [re.fullmatch(r"(?:row|column|part) (\d+)(?: .+)?", name) for name in item.names]
        number_ = next((int(name[1]) for name in names if name), None)
        if number_ is None:
            raise Refused("in which order?")
        numbered.append((number_, item))
    if len(numbered) < 2:
        raise Refused("there is only one")
    parts: list[Place] = [(min(item.names), [], "") for _, item in sorted(numbered, key=lambda pair: pair[0])]
    sew_row(bench, parts, found["b"], nesting(found["nest"]))


@reads(rf"Sew them together from (?P<a>{PLACE}) to (?P<b>{PLACE})(?:, right sides together)?{NEST}")
def sew_all(bench: Bench, found: re.Match[str]) -> None:
    """All that was taken, alike, in the way in which it was laid."""
    if bench.method.get("in turn", found["b"]) != found["b"] or len({item.group for item in bench.items}) != 1:
        raise Refused("that is not how they were laid, or they are not all alike")
    parts: list[Place] = [(f"a {name}", [], "") for item in bench.items for name in sorted(item.names)[:1]]
    sew_row(bench, parts, found["b"], nesting(found["nest"]))


@reads(rf"(?P<name>(?:Rows?|Columns?) \d+(?:(?:, and |, | and )\d+)*), (?P<a>{PLACE}) to (?P<b>{PLACE}): (?P<list>.+)")
def list_row(bench: Bench, found: re.Match[str]) -> None:
    rows = bench.method.setdefault("rows", [])
    kind = stem(found["name"].split()[0])
    for number_ in re.findall(r"\d+", found["name"]):
        rows.append((f"{kind} {number_}", parts_of(bench, found["list"]), found["b"]))


@reads(rf"Sew each (?:row|column) together(?:, right sides together)?{NEST}")
def sew_each_row(bench: Bench, found: re.Match[str]) -> None:
    rows = bench.method.pop("rows", [])
    if not rows:
        raise Refused("no row was listed")
    for name, parts, way in rows:
        bench.joined_last = set()
        items = sew_row(bench, parts, way, nesting(found["nest"]))
        bench.assemblies[name] = {item.key for item in items}
        bench.seams_of_row[name] = bench.row_seams


__all__ = ["Iterator", "Table", "best"]
