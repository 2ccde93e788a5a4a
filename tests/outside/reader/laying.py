"""How things are laid on the table."""

from __future__ import annotations

import re
from collections.abc import Iterator

from tests.outside.reader.bench import Bench, reads
from tests.outside.reader.cloth import HAIR, Cloth, pattern_of, quarter, runs
from tests.outside.reader.landmarks import (
    Test,
    best,
    best_with_mark,
    different,
    in_the_middle,
    is_upright,
    lies,
    turns_of,
)
from tests.outside.reader.table import Item, Refused, Table
from tests.outside.reader.words import PLACE, Unreadable, stem

HOW = re.compile(
    rf"(?:(?P<two>two edges) (?P<level>upright|level)"
    rf"|(?:its |their |a |an |the )?(?P<x>(?:(?! at the | in the middle| edges (?:upright|level)).)+?)"
    rf"(?: at the (?P<pos>{PLACE}(?:(?:,| and|, and) (?:at the |the )?{PLACE}(?= |,|$))*)(?: edge)?"
    rf"| in the middle of (?:its|their|the) (?P<mid>{PLACE}(?: and {PLACE})*) edges?))(?:(?:,? and |, )(?=\S)|$)"
)


def tests_of(bench: Bench, text: str) -> list[Test]:
    """`its point at the top and Tide at the lower left` as tests of a laid piece."""
    text = text.strip()
    tests: list[Test] = []
    at = 0
    while at < len(text):
        found = HOW.match(text, at)
        if not found:
            raise Unreadable(f"how it lies: {text!r}")
        at = found.end()
        if found["two"]:
            tests.append(_two_edges(level=found["level"] == "level"))
            continue
        seen = shown(bench, found["x"])
        tests.extend(_middle_test(seen, place) for place in re.findall(PLACE, found["mid"] or ""))
        tests.extend(_place_test(seen, place) for place in re.findall(PLACE, found["pos"] or ""))
    return tests


def _place_test(seen: str, place: str) -> Test:
    return lambda cloth: lies(cloth, seen, place)


def _two_edges(*, level: bool) -> Test:
    """Two edges of it lie level, or stand upright; the others neither."""

    def test(cloth: Cloth) -> int:
        found = [run for run in runs(cloth) if abs((run.b - run.a).imag if level else (run.b - run.a).real) < HAIR]
        return 3 * int(len(found) == 2)

    return test


def _middle_test(seen: str, place: str) -> Test:
    return lambda cloth: in_the_middle(cloth, seen, place)


def shown(bench: Bench, what: str) -> str:
    """A fabric, a letter, or a unit by its name."""
    if what in bench.stock.fabrics or re.fullmatch(r"[A-Z][A-Za-z0-9]*(?: \(.+\))?", what):
        return what
    return stem(what)


@reads(r"Lay (?P<a>row|column) (?P<n>\d+) and (?:row|column) (?P<m>\d+) with (?P<how>.+)")
def lay_two_rows(bench: Bench, found: re.Match[str]) -> None:
    for number_ in (found["n"], found["m"]):
        lay(bench, bench.one(f"{found['a']} {number_}"), tests_of(bench, found["how"]))


@reads(r"Lay (?P<kind>rows|columns) (?P<numbers>\d+(?:, \d+)*,? and \d+) with (?P<how>.+)")
def lay_rows(bench: Bench, found: re.Match[str]) -> None:
    for number_ in re.findall(r"\d+", found["numbers"]):
        lay(bench, bench.one(f"{stem(found['kind'])} {number_}"), tests_of(bench, found["how"]))


@reads(r"Lay both(?: (?P<what>.+?))? with (?P<how>.+)", r"Lay (?P<what>each .+?|all(?: .+?)?) with (?P<how>.+)")
def lay_both(bench: Bench, found: re.Match[str]) -> None:
    tests = tests_of(bench, found["how"])
    what = found["what"]
    items = bench.named(what) if what and what != "all" else bench.items
    if not items or (len(items) != 2 and not what):
        raise Refused("both of what?")
    if found[0].startswith("Lay both") and len(items) != 2:
        raise Refused("there are not two of them")
    bench.in_order = items[0].group
    for item in items:
        lay(bench, item, tests)


@reads(r"Lay (?P<what>.+?) on point(?:, with (?P<how>.+))?")
def lay_on_point(bench: Bench, found: re.Match[str]) -> None:
    item = bench.one(found["what"])
    tests = tests_of(bench, found["how"]) if found["how"] else []

    def follow(table: Table) -> Iterator[Table]:
        place = table.home[item.key]
        for cloth in best([lying.bodies[place] for lying in bench.lying(table, item, on_point=True)], tests):
            yield table.with_body(place, cloth)

    bench.follow(follow, "it cannot lie on point so")
    bench.base = [item.key]


@reads(r"Lay (?!each with )(?P<what>.+?) with (?P<how>.+)")
def lay_one(bench: Bench, found: re.Match[str]) -> None:
    item = bench.one(found["what"])
    lay(bench, item, tests_of(bench, found["how"]))
    if re.match(r"(?:an?|one) ", found["what"]):
        bench.used.add(item.key)
    bench.base = [item.key]


def lay(bench: Bench, item: Item, tests: list[Test]) -> None:
    """Lay a thing so that all that is said of it holds."""

    def follow(table: Table) -> Iterator[Table]:
        place = table.home[item.key]
        body = table.bodies[place]
        level = [body] if place in table.laid else different(body.moved(turn) for turn in turns_of(body))
        fitting, mark = best_with_mark(level, tests)
        if ((mark < 2.5 and not is_upright(body)) or not mark) and place not in table.laid:
            tilted = different(body.moved(turn) for turn in turns_of(body, on_point=True))
            other, better = best_with_mark(tilted, tests)
            fitting = other if better > mark else fitting
        for cloth in fitting:
            yield table.with_body(place, cloth)

    bench.follow(follow, f"it cannot lie so: {sorted(item.names)}")


@reads(
    r"(?P<what>(?:Row|Column|Part) \d+) is (?P<like>(?:row|column|part) \d+) rotated a (?P<turn>half|quarter) turn"
    r"(?: (?P<way>clockwise|counterclockwise))?"
)
def rotated(bench: Bench, found: re.Match[str]) -> None:
    item, like = bench.one(found["what"].lower()), bench.one(found["like"])

    def follow(table: Table) -> Iterator[Table]:
        if table.home[like.key] not in table.laid:
            raise Refused("it is not said yet how the first one lies")
        turns = 2 if found["turn"] == "half" else 3 if found["way"] == "counterclockwise" else 1
        if found["turn"] == "quarter" and not found["way"]:
            raise Refused("a quarter turn to the left or to the right?")
        wanted = pattern_of(table.body(like.key).patches(quarter(turns)))
        place = table.home[item.key]
        for turn in turns_of(table.bodies[place]):
            cloth = table.bodies[place].moved(turn)
            if pattern_of(cloth.patches()) == wanted:
                yield table.with_body(place, cloth)
                return

    bench.follow(follow, f"{found['what']} is not like {found['like']}")
