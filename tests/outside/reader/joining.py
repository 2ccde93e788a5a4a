"""Sewing one thing to an edge of another."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace

from tests.outside.reader.bench import Bench, merged, reads
from tests.outside.reader.cloth import HAIR, Cloth, Misfit, Run, Stretch, joined, near, runs, unit
from tests.outside.reader.landmarks import Test, best, different, edges_at, edges_of, turns_of
from tests.outside.reader.laying import shown, tests_of
from tests.outside.reader.nests import BY_HAND, NEST, check_nest, nesting
from tests.outside.reader.table import Item, Refused, Seam, Table
from tests.outside.reader.words import PLACE, PLACES, Unreadable


def fitted(on: Cloth, run: Run, edge: Run, *, laid: bool) -> Cloth | None:
    """A piece laid with one of its runs against an edge, both ends even; None where it does not fit."""
    if abs(run.length - edge.length) > HAIR or run.length < HAIR:
        return None
    turn = -unit(edge.b - edge.a) / unit(run.b - run.a)
    if laid and not near(turn, 1):
        return None
    turn /= abs(turn)
    return on.moved(turn, edge.b - run.a * turn)


Check = Callable[[Cloth, Cloth, list[Stretch]], None]
"""Raises Refused where a joint is not as the words say."""


@dataclass(frozen=True, slots=True)
class Sewing:
    """What is said of a seam: at which edge of the base, along which of the piece, how the piece lies, what meets."""

    choose: Callable[[Cloth], list[Run]]
    tests: Sequence[Test] = ()
    nest: str | None = None
    which: Callable[[Cloth], list[Run]] = runs
    zigzag: bool = False
    """Whether it goes on round corners, from dot to dot."""
    way: str = ""
    """Where the edge of the base lies in a row: squarely, rather than nearly so."""


def sewn_on(bench: Bench, item: Item, base: Item, sewing: Sewing) -> int:
    """Sew a thing to an edge of another, in every way that the words leave open; the number of the seam."""
    number_ = bench.next_seam()

    problems: list[str] = []

    def follow(table: Table) -> Iterator[Table]:
        if table.home[item.key] == table.home[base.key]:
            raise Refused("it is sewn on already")
        for lying in bench.lying(table, base):
            yield from ways_of(lying, item, base, sewing, number_, problems, by_hand=bench.by_hand)

    try:
        bench.follow(follow, f"{max(item.names, key=len)} does not fit there")
    except Refused as refused:
        raise Refused(problems[0] if problems else str(refused)) from None
    bench.used.add(item.key)
    bench.note_joint(item.key, base.key)
    return number_


def ways_of(
    lying: Table, item: Item, base: Item, sewing: Sewing, seam: int, problems: list[str], *, by_hand: bool = False
) -> Iterator[Table]:
    """Every way of sewing a thing on, the base lying as it does; of broken edges those that leave nothing open."""
    on_place, base_place = lying.home[item.key], lying.home[base.key]
    on, ground = lying.bodies[on_place], lying.bodies[base_place]
    found: list[tuple[float, Table]] = []
    for edge in sewing.choose(ground):
        ways = [fitted(on, run, edge, laid=on_place in lying.laid) for run in sewing.which(on)]
        fitting = best(different(way for way in ways if way), sewing.tests)
        along = None if sewing.zigzag else edge
        # From dot to dot every seam that ends there is matched at its dot, and nothing more need be said.
        nest = BY_HAND if by_hand else sewing.nest or ("match where any" if sewing.zigzag else None)
        for whole, stretches in tried(fitting, ground, seam, along, as_said(nest), problems):
            long = sum(abs(s.b - s.a) for s in stretches)
            after = merged(lying, on_place, base_place, whole, Seam(seam, tuple(stretches)))
            if sewing.way and not near(edge.outward, unit(PLACES[sewing.way])):
                after = replace(after, tilted=after.tilted + 1)
            found.append((long, after))
    most = max((long for long, _ in found), default=0)
    yield from (table for long, table in found if not sewing.zigzag or long > most - HAIR)


def as_said(nest: str | None) -> Check:
    return lambda on, ground, stretches: check_nest(on, ground, stretches, nest)


def tried(
    ways: Iterable[Cloth], ground: Cloth, seam: int, along: Run | None, check: Check, problems: list[str]
) -> Iterator[tuple[Cloth, list[Stretch]]]:
    """Each way in which something can be sewn on, with the joint; what is wrong with the others goes to `problems`."""
    for cloth in ways:
        try:
            whole, stretches = joined(cloth, ground, seam, along)
            check(cloth, ground, stretches)
        except (Misfit, Refused) as fault:
            problems.append(str(fault))
            continue
        yield whole, stretches


def raising_late(follow: Callable[[Table], Iterator[Table]]) -> Callable[[Table], list[Table]]:
    """What went wrong in one way is told only where no way is left."""

    def all_ways(table: Table) -> list[Table]:
        found = []
        ways = follow(table)
        while True:
            try:
                found.append(next(ways))
            except StopIteration:
                return found
            except Refused:
                if found:
                    return found
                raise

    return all_ways


EDGES = "longest edge|long edge|middle edge|shortest edge|short edge"


def edges_of_kind(kind: str) -> Callable[[Cloth], list[Run]]:
    """The long, short or middle edges of a piece.

    Errors: Refused, when it is asked, where all edges are of one length.
    """

    def choose(cloth: Cloth) -> list[Run]:
        found = edges_of(cloth, kind)
        if not found:
            raise Refused("no edge is longer than the others")
        return found

    return choose


@reads(
    rf"Sew (?P<what>[^;]+?)(?: by its (?P<by>{EDGES}))? to (?P<whose>its|the) (?P<pos>{PLACE}) edge"
    r"(?: of (?P<base>.+?))?"
    rf"(?P<way> in the same way)?(?:, right sides together)?(?:, with (?P<how>.+?))?(?:, starting at the opposite end)?"
    r"(?P<zigzag>, one stretch at a time, from dot to dot|, from dot to dot, turning at each)?"
    rf"(?:, (?:creases|middles) matched|, creases? at the corners? of .+?)?{NEST}"
)
def sew_to_edge(bench: Bench, found: re.Match[str]) -> None:
    how = tests_of(bench, found["how"]) if found["how"] else []
    nest = nesting(found["nest"])
    if found["way"] and not nest:
        nest = bench.last.get("nest")
    first = bench.one(found["what"]) if re.match(r"one ", found["what"]) else None
    if first:
        bench.used.add(first.key)
    bases, marks = bases_of(bench, found["base"], found["whose"])
    item = first or bench.one(found["what"])
    which = edges_of_kind(found["by"]) if found["by"] else runs
    if found["zigzag"]:
        which = runs
    sewing = Sewing(edges_with(found["pos"], marks, bases), how, nest, which, zigzag=bool(found["zigzag"]))
    sewn_on(bench, item, bases[0], sewing)
    bench.base = [base.key for base in bases]
    bench.last = {"nest": nest, "how": found["how"]}


@reads(
    r"Sew the (?P<x>[^,]+?) edge of (?P<what>one .+?|the .+?) to the (?P<y>[^,]+?) edge of (?P<base>.+?)"
    rf"(?:, right sides together)?{NEST}"
)
def sew_edge_of_fabric(bench: Bench, found: re.Match[str]) -> None:
    """The edges that are of one fabric alone, however both lie."""
    item = bench.one(found["what"])
    bench.used.add(item.key)
    base = bench.one(
        f"the other {found['what'].removeprefix('one ')}" if found["base"] == "the other" else found["base"]
    )
    number = bench.next_seam()
    problems: list[str] = []

    def follow(table: Table) -> Iterator[Table]:
        on_place, base_place = table.home[item.key], table.home[base.key]
        on, body = table.bodies[on_place], table.bodies[base_place]
        ground = body.moved(turns_of(body)[0])
        for edge in _wholly(ground, found["y"]):
            ways = [fitted(on, run, edge, laid=False) for run in _wholly(on, found["x"])]
            check = as_said(BY_HAND if bench.by_hand else nesting(found["nest"]))
            for whole, stretches in tried((way for way in ways if way), ground, number, edge, check, problems):
                after = merged(table, on_place, base_place, whole, Seam(number, tuple(stretches)))
                yield replace(after, laid=after.laid - {base_place})

    try:
        bench.follow(follow, "those edges do not fit")
    except Refused as refused:
        raise Refused(problems[0] if problems else str(refused)) from None
    bench.used.add(base.key)
    bench.note_joint(item.key, base.key)
    bench.base = [base.key]


def _wholly(cloth: Cloth, fabric: str) -> list[Run]:
    """The edges along which nothing but one fabric lies."""
    return [run for run in runs(cloth) if not run.curve and all(fabric in edge.tags for edge in run.edges)]


@reads(
    rf"(?!.+, (?:creases|middles) )Sew 2 (?P<what>.+?)(?: by their (?P<by>{EDGES})s)? "
    rf"to (?P<whose>its|the) (?P<p>{PLACE}) and (?P<q>{PLACE}) edges"
    rf"(?: of (?P<base>.+?))?(?:, right sides together)?(?:, with (?P<how>.+?))?{NEST}"
)
def sew_one_on_each(bench: Bench, found: re.Match[str]) -> None:
    """One on each of two edges that do not touch."""
    if PLACES[found["p"]] != -PLACES[found["q"]]:
        raise Refused("one of them lies on the other")
    bases, marks = bases_of(bench, found["base"], found["whose"])
    how = tests_of(bench, found["how"]) if found["how"] else []
    which = edges_of_kind(found["by"]) if found["by"] else runs
    for place in (found["p"], found["q"]):
        item = bench.one(f"a {found['what']}")
        if item.key in bench.used:
            raise Refused("there are not two of them")
        sewing = Sewing(edges_with(place, marks, bases), how, nesting(found["nest"]), which)
        sewn_on(bench, item, bases[0], sewing)
    bench.base = [base.key for base in bases]
    bench.last = {"nest": nesting(found["nest"]), "how": found["how"]}


def bases_of(bench: Bench, text: str | None, whose: str) -> tuple[list[Item], list[frozenset[str]]]:
    """What is sewn to, and what must lie along the edge."""
    if bool(text) == (whose == "its"):
        raise Unreadable("whose edge?")
    if not text:
        if not bench.base:
            raise Refused("its edge: of what?")
        return [bench.items[key] for key in bench.base], []
    owners = bench.several(text)
    marks = [
        frozenset({shown(bench, phrase)})
        if bench.brought(owner)
        else bench.marks(phrase) & _of_body(bench, owner) or frozenset({owner.mark})
        for phrase, owner in owners
    ]
    if re.match(r"(?:a|an|one) ", text) and owners[0][1].key not in bench.used:
        marks = [frozenset({owners[0][1].mark})]
        bench.used.add(owners[0][1].key)
    return [owner for _, owner in owners], marks


def _of_body(bench: Bench, owner: Item) -> frozenset[str]:
    """The marks of all that is in one body with a thing."""
    table = bench.tables[0]
    return frozenset(f"#{key}" for key, home in table.home.items() if home == table.home[owner.key])


def edges_with(place: str, marks: list[frozenset[str]], bases: list[Item]) -> Callable[[Cloth], list[Run]]:
    """The edges at a place that belong to all things named; to the base, where only `its` edge is named."""

    def choose(cloth: Cloth) -> list[Run]:
        found = edges_at(cloth, place)
        if marks:
            return [run for run in found if all(run.tags & mark for mark in marks)]
        own = [run for run in found if bases[0].mark in run.tags]
        return own or found

    return choose
