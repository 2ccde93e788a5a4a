"""Sewing one thing to an edge of another."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass

from tests.outside.reader.bench import Bench, merged, reads
from tests.outside.reader.cloth import HAIR, Cloth, Misfit, Run, Stretch, joined, near, runs, unit
from tests.outside.reader.landmarks import Test, best, different, edges_at, edges_of
from tests.outside.reader.laying import shown, tests_of
from tests.outside.reader.nests import NEST, check_nest, nesting
from tests.outside.reader.table import Item, Refused, Seam, Table
from tests.outside.reader.words import PLACE, Unreadable


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


def sewn_on(bench: Bench, item: Item, base: Item, sewing: Sewing) -> int:
    """Sew a thing to an edge of another, in every way that the words leave open; the number of the seam."""
    number_ = bench.next_seam()

    def follow(table: Table) -> Iterator[Table]:
        if table.home[item.key] == table.home[base.key]:
            raise Refused("it is sewn on already")
        problems: list[str] = []
        for lying in bench.lying(table, base):
            yield from _ways(lying, problems)
        if problems:
            raise Refused(problems[0])

    def _ways(lying: Table, problems: list[str]) -> Iterator[Table]:
        on_place, base_place = lying.home[item.key], lying.home[base.key]
        on, ground = lying.bodies[on_place], lying.bodies[base_place]
        laid = on_place in lying.laid
        for edge in sewing.choose(ground):
            ways = [fitted(on, run, edge, laid=laid) for run in sewing.which(on)]
            fitting = best(different(way for way in ways if way), sewing.tests)
            for whole, stretches in tried(fitting, ground, number_, edge, as_said(sewing.nest), problems):
                yield merged(lying, on_place, base_place, whole, Seam(number_, tuple(stretches)))

    bench.follow(raising_late(follow), f"{' or '.join(sorted(item.names, key=len)[-1:])} does not fit there")
    bench.used.add(item.key)
    bench.note_joint(item.key, base.key)
    return number_


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
    rf"(?:, (?:creases|middles) matched|, creases? at the corners? of .+?)?{NEST}"
)
def sew_to_edge(bench: Bench, found: re.Match[str]) -> None:
    if bool(found["base"]) == (found["whose"] == "its"):
        raise Unreadable("whose edge?")
    how = tests_of(bench, found["how"]) if found["how"] else []
    nest = nesting(found["nest"])
    if found["way"] and not nest:
        nest = bench.last.get("nest")
    first = bench.one(found["what"]) if re.match(r"one ", found["what"]) else None
    if first:
        bench.used.add(first.key)
    if found["base"]:
        owners = bench.several(found["base"])
        marks = [
            frozenset({shown(bench, phrase)})
            if bench.brought(owner)
            else bench.marks(phrase) & _of_body(bench, owner) or frozenset({owner.mark})
            for phrase, owner in owners
        ]
        if re.match(r"(?:a|an|one) ", found["base"]):
            marks = [frozenset({owners[0][1].mark})]
            bench.used.add(owners[0][1].key)
        bases = [owner for _, owner in owners]
    else:
        if not bench.base:
            raise Refused("its edge: of what?")
        bases, marks = [bench.items[key] for key in bench.base], []
    item = first or bench.one(found["what"])
    which = edges_of_kind(found["by"]) if found["by"] else runs
    sewn_on(bench, item, bases[0], Sewing(edges_with(found["pos"], marks, bases), how, nest, which))
    bench.base = [base.key for base in bases]
    bench.last = {"nest": nest, "how": found["how"]}


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
