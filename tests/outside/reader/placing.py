"""Pieces placed on each other and sewn along one edge: pairs of triangles, units on units, dots matched."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import replace
from typing import Any

from tests.outside.reader.bench import Bench, merged, reads
from tests.outside.reader.cloth import HAIR, Cloth, Run, Stretch, near, runs, unit
from tests.outside.reader.cutting import mirrored
from tests.outside.reader.halves import put_squares
from tests.outside.reader.joining import Check, Sewing, edges_of_kind, fitted, raising_late, sewn_on, tried
from tests.outside.reader.landmarks import different, edges_at, turns_of
from tests.outside.reader.laying import lay, tests_of
from tests.outside.reader.nests import BY_HAND, NEST, check_nest, nesting
from tests.outside.reader.table import Item, Refused, Seam, Table
from tests.outside.reader.words import PLACE, PLACES


@reads(
    r"Place (?!the loose end)(?P<what>.+?) on (?!each of |its |(?:the )?(?:\w+ ){1,2}(?:end|corner)\b)"
    r"(?P<base>.+?), right sides together, (?P<even>all edges|edges|long edges) even"
    r"(?:, (?P<corners>the narrow corner of each on the wide corner of the other)|, (?P<x>[^,]+?) on (?P<y>[^,]+?))?"
    r"(?:, (?P<how>.+ at the .+?))?(?:; pin|, and pin)?"
)
def place(bench: Bench, found: re.Match[str]) -> None:
    on, base = two_things(bench, found["what"], found["base"])
    if on.form == "square" and base.form == "square":
        put_squares(bench, on, base)
        return
    if found["how"]:
        lay(bench, base, tests_of(bench, found["how"].replace("sharp point", "sharp corner").replace("edges", "edge")))
    bench.method["placed"] = {"on": on, "base": base, "even": found["even"], "x": found["x"], "y": found["y"]}
    bench.method["placed"]["dots"] = bool(found["corners"])
    bench.base = [base.key]


def two_things(bench: Bench, what: str, base: str) -> tuple[Item, Item]:
    """Two things by their names; of two that are alike the first and the other."""
    on = bench.items[bench.base[0]] if what == "it" and bench.base else bench.one(what)
    bench.used.add(on.key)
    ground = bench.one(base, base=not re.match(r"(?:a|an|one) ", base))
    bench.used.add(ground.key)
    if on.key == ground.key:
        raise Refused("it is placed on itself")
    return on, ground


@reads(r"(?P<how>Nest|Match) the seams(?: at the center)?(?: and pin)?")
def nest(bench: Bench, found: re.Match[str]) -> None:
    bench.method["nest"] = found["how"].lower()


@reads(
    r"On the wrong side of each (?P<what>.+?), mark a dot .+ (?:in|cm) from both edges at each "
    r"(?:corner|end of its long edge)"
)
def dots(bench: Bench, found: re.Match[str]) -> None:
    bench.method["dots"] = True


@reads(r"Mark dots on each (?P<what>.+?), as in step (?P<n>\d+)")
def dots_as_before(bench: Bench, found: re.Match[str]) -> None:
    if not any("mark a dot" in sentence for sentence in bench.texts.get(int(found["n"]), [])):
        raise Refused("that step marks no dots")
    bench.method["dots"] = True


@reads(r"Match the dots, so that the narrow corner of each extends beyond the wide corner of the other; pin")
def match_dots(bench: Bench, found: re.Match[str]) -> None:
    if not bench.method.get("dots") or "placed" not in bench.method:
        raise Refused("there are no dots to match")
    bench.method["placed"]["dots"] = True


@reads(r"Place (?P<what>.+?) on (?P<base>.+?), dots matched, and sew the long edge as in step (?P<n>\d+)")
def long_edges_as_before(bench: Bench, found: re.Match[str]) -> None:
    before = bench.texts.get(int(found["n"]), [])
    if not any("mark a dot" in said for said in before) or "Sew the long edge" not in before:
        raise Refused("that step sews no long edges by their dots")
    on, base = two_things(bench, found["what"], found["base"])
    bench.method["dots"] = True
    placed = {"on": on, "base": base, "even": "long edges", "x": None, "y": None, "dots": True}
    bench.base = [base.key]
    sew_placed(bench, placed, chosen("long edge", None))


@reads(
    r"Sew the (?P<which>long edge|short edge|long edges|longest edge|middle edge|shortest edge|edge|"
    rf"(?P<upper>{PLACE}) edge)(?: at the (?P<pos>{PLACE}))?"
)
def sew_edge(bench: Bench, found: re.Match[str]) -> None:
    if "placed" not in bench.method:
        raise Refused("nothing is placed to be sewn")
    placed = bench.method.pop("placed")
    which, pos = found["upper"] or found["which"], found["upper"] or found["pos"]
    choose = chosen(which, pos)
    if found["pos"]:
        _lay_by_edge(bench, placed["base"], choose, pos)
    sew_placed(bench, placed, choose)


Choose = Callable[[Cloth], list[Run]]
"""The edges of a piece that the words may mean."""


def _lay_by_edge(bench: Bench, base: Item, choose: Choose, pos: str) -> None:
    """What is not laid yet lies so that the edge to be sewn is where the words say: squarely, if it can."""

    def follow(table: Table) -> Iterator[Table]:
        if table.home[base.key] in table.laid:
            yield table
            return
        lying = [(each, choose(each.body(base.key))) for each in bench.lying(table, base)]
        square = [each for each, found in lying if any(near(run.outward, unit(PLACES[pos])) for run in found)]
        yield from square or [each for each, found in lying if found]

    bench.follow(follow, f"no such edge lies at the {pos}")


def chosen(which: str, pos: str | None) -> Choose:
    def choose(cloth: Cloth) -> list[Run]:
        all_runs = runs(cloth)
        found = all_runs
        if which.startswith(("long", "short", "middle")):
            found = edges_of_kind(which)(cloth)
        if pos:
            here = edges_at(cloth, pos)
            if not here:
                here = [run for run in found if _faces(run, pos)]
            found = [run for run in found if any(near(run.a, other.a) for other in here)]
        return found

    return choose


def _faces(run: Run, pos: str) -> bool:
    where = PLACES[pos]
    return run.outward.real * where.real + run.outward.imag * where.imag > HAIR


def sew_placed(bench: Bench, placed: dict[str, Any], choose: Choose) -> None:
    """Sew what lies on another thing along an edge of it; the two lie edge on edge all round if the words say so."""
    on_item, base_item = placed["on"], placed["base"]
    number_ = bench.next_seam()
    said = BY_HAND if bench.by_hand else bench.method.pop("nest", None)

    def follow(table: Table) -> Iterator[Table]:
        on_place, base_place = table.home[on_item.key], table.home[base_item.key]
        on, whole_base = table.bodies[on_place], table.bodies[base_place]
        laid = base_place in table.laid
        problems: list[str] = []
        # However the base lies, the result is the same: edges are told by their length, or it is laid already.
        ground = whole_base if laid else whole_base.moved(turns_of(whole_base)[0])
        for edge in choose(ground):
            ways = [fitted(on, run, edge, laid=False) for run in runs(on)]
            fitting = different(way for way in ways if way)
            for whole, stretches in tried(fitting, ground, number_, edge, _as_placed(placed, edge, said), problems):
                after = merged(table, on_place, base_place, whole, Seam(number_, tuple(stretches)))
                yield after if laid else replace(after, laid=after.laid - {base_place})
        if problems:
            raise Refused(problems[0])

    bench.follow(raising_late(follow), "it does not fit")
    bench.used.add(on_item.key)
    bench.note_joint(on_item.key, base_item.key)


def _as_placed(placed: dict[str, Any], edge: Run, said: str | None) -> Check:
    """That a joint along an edge is as the words before it say."""

    def hold(cloth: Cloth, ground: Cloth, stretches: list[Stretch]) -> None:
        if placed["even"] in ("all edges", "edges") and not mirrored_on(cloth, ground, edge):
            raise Refused("their edges do not lie on each other")
        if placed["even"] == "long edges" and not _longest(cloth, edge):
            raise Refused("that is no long edge")
        if placed["x"] and not _on(stretches, placed["x"], placed["y"]):
            raise Refused(f"{placed['x']} does not lie on {placed['y']}")
        check_nest(cloth, ground, stretches, said)

    return hold


def _longest(cloth: Cloth, edge: Run) -> bool:
    return abs(max(run.length for run in runs(cloth)) - edge.length) < HAIR


def mirrored_on(on: Cloth, base: Cloth, edge: Run) -> bool:
    """Whether what is opened over an edge lies edge on edge with the base when it is closed."""
    closed = mirrored([run.a for run in runs(on)], edge.a, edge.b)
    corners = [run.a for run in runs(base)]
    return len(closed) == len(corners) and all(any(near(a, b) for b in corners) for a in closed)


def _on(stretches: list[Stretch], x: str, y: str) -> bool:
    """Whether along a joint one thing lies on the other, wherever both are."""
    return all(x in stretch.on and y in stretch.base for stretch in stretches) or (
        all((x in s.on and y in s.base) or (y in s.on and x in s.base) for s in stretches)
        and x in stretches[0].on | stretches[-1].on
    )


# --- two opposite edges at once -------------------------------------------------------------------------


@reads(
    rf"Sew 2 (?P<what>.+?) by their long edges to the (?P<p>{PLACE}) and (?P<q>{PLACE}) edges of (?P<base>.+?)"
    rf"(?:, right sides together)?{NEST}(?:, (?:creases matched|middles matched|creases at the corners of .+?))?"
)
def sew_two(bench: Bench, found: re.Match[str]) -> None:
    base = bench.one(found["base"])
    long = chosen("long edge", None)
    for place_name in (found["p"], found["q"]):
        item = bench.one(f"a {found['what']}")
        sewn_on(bench, item, base, Sewing(_edge_of(base, place_name), nest=nesting(found["nest"]), which=long))
    bench.base = [base.key]
    if PLACES[found["p"]] != -PLACES[found["q"]]:
        raise Refused("one of them lies on the other")


def _edge_of(base: Item, place_name: str) -> Choose:
    return lambda cloth: [run for run in edges_at(cloth, place_name) if base.mark in run.tags]


@reads(
    r"(?:Their points|Its points|Both ends|The points of .+) extend (?:about )?.+ (?:in|cm)(?: at both ends)?",
    r"(?:Its point|The point of .+) extends (?:about )?.+ (?:in|cm) at the .+ end(?:, that of .+ at the other)?",
    r"Stop at the dot at the .+ end(?:; backstitch)?",
    r"Sew from dot to dot(?:; backstitch at both)?",
    r"Sew (?:each seam|seams? [\d, and]+) from dot to dot(?:; backstitch at both ends)?",
    r"Stop (?:each seam|seams? [\d, and]+) at the dot at the .+ end(?:; backstitch)?",
    r"At each dot,? stop with the needle down and turn the work (?:until the next two edges are even|"
    r"to the next two edges)",
    r"The ends are not even: pin where the seam begins and ends, .+ (?:in|cm) from the edges",
    r"Offset the ends so that the edges cross .+ (?:in|cm) from the edge, where the seam runs",
    r"Sew just outside the corners of .+",
    r"Bring the straight ends even and pin both, then the marks between",
)
def no_more(bench: Bench, found: re.Match[str]) -> None:
    """Care that changes nothing of what lies where."""
