"""Seams sewn in two parts: begun, left open, and closed when what lies beside it is sewn on."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace

from tests.outside.reader.bench import Bench, merged, reads
from tests.outside.reader.cloth import HAIR, Misfit, closed, dot, is_open, joined, near, runs, unit
from tests.outside.reader.landmarks import different, edges_at, turns_of
from tests.outside.reader.placing import two_things
from tests.outside.reader.table import Refused, Seam, Table
from tests.outside.reader.words import LENGTH, PLACE, PLACES, length, listed


@reads(
    rf"Place (?P<what>.+?) on (?P<base>.+?), right sides together, an? (?P<d>{LENGTH}) (?:in|cm) edge of (?P<p>.+?) "
    rf"on the (?P<pos>{PLACE}) edge of (?P<q>.+?), (?P<end>{PLACE}) ends even"
)
def place_at_end(bench: Bench, found: re.Match[str]) -> None:
    on, base = two_things(bench, found["what"], found["base"])
    if on not in bench.named(found["p"]) or base not in bench.named(found["q"]):
        raise Refused("an edge of what on an edge of what?")
    bench.method["partial"] = (on, base, float(length(found["d"])), found["pos"], found["end"])
    bench.base = [base.key]


@reads(
    rf"Place (?P<what>.+?) on (?P<base>.+?), right sides together, on its (?P<pos>{PLACE}) edge, "
    rf"(?P<end>{PLACE}) ends even"
)
def place_level(bench: Bench, found: re.Match[str]) -> None:
    on, base = two_things(bench, found["what"], found["base"])
    bench.method["partial"] = (on, base, None, found["pos"], found["end"])
    bench.base = [base.key]


@reads(rf"The (?P<end>{PLACE}) end of (?P<what>.+?) extends beyond (?P<base>.+)")
def extends(bench: Bench, found: re.Match[str]) -> None:
    if PLACES[found["end"]] != -PLACES[bench.method["partial"][4]]:
        raise Refused("that end is even")


@reads(rf"Sew the first (?P<d>{LENGTH}) (?:in|cm) from the (?P<end>{PLACE}) end(?:; backstitch)?")
def sew_first_part(bench: Bench, found: re.Match[str]) -> None:
    if "partial" not in bench.method:
        raise Refused("nothing is placed")
    on_item, base_item, long, pos, even = bench.method.pop("partial")
    if found["end"] != even:
        raise Refused("it is sewn from the end that is even")
    number_ = bench.next_seam()

    def follow(table: Table) -> Iterator[Table]:
        for lying in bench.lying(table, base_item):
            on_place, base_place = lying.home[on_item.key], lying.home[base_item.key]
            on, ground = lying.bodies[on_place], lying.bodies[base_place]
            for edge in edges_at(ground, pos):
                if float(length(found["d"])) > edge.length:
                    raise Refused("the seam is shorter than that")
                for run in runs(on):
                    if long is not None and abs(run.length + 2 * bench.stock.seam - long) > HAIR:
                        continue
                    if run.length < edge.length - HAIR:
                        continue
                    turn = -unit(edge.b - edge.a) / unit(run.b - run.a)
                    right = dot(edge.b - edge.a, PLACES[even]) > 0
                    at = edge.b - run.a * turn if right else edge.a - run.b * turn
                    cloth = on.moved(turn, at)
                    whole, stretches = joined(cloth, ground, number_, edge)
                    yield merged(lying, on_place, base_place, whole, Seam(number_, tuple(stretches)))

    bench.follow(follow, "it does not fit there")
    bench.used.add(on_item.key)
    bench.method["half sewn"] = True


@reads(r"Leave the rest open", r"Fold the loose end of (?P<what>.+?) out of the way")
def leave_open(bench: Bench, found: re.Match[str]) -> None:
    """The seam stays open: what is sewn on beside it does not close it."""


@reads(
    rf"Place the loose end of (?P<what>.+?) on the (?P<pos>{PLACE}) edge of (?P<base>.+?), right sides together, "
    r"edges even"
)
def place_loose_end(bench: Bench, found: re.Match[str]) -> None:
    bench.one(found["what"])
    bench.method["loose"] = (found["what"], found["pos"], listed(found["base"]))


@reads(
    rf"Place the loose end even with the edge beside it, right sides together, and sew from {LENGTH} (?:in|cm) before "
    rf"the stop to the (?P<end>{PLACE}) end"
)
def close(bench: Bench, found: re.Match[str]) -> None:
    number_ = bench.next_seam()

    def follow(table: Table) -> Iterator[Table]:
        for place, cloth in table.bodies.items():
            if is_open(cloth):
                whole, stretches = closed(cloth, number_)
                outer = [end for end in whole.ends if end.seam == number_]
                if not any(dot(end.into, PLACES[found["end"]]) < 0 for end in outer):
                    raise Refused("the seam ends at the other end")
                seam = Seam(number_, tuple(stretches))
                yield replace(table, bodies={**table.bodies, place: whole}, waiting=(*table.waiting, seam))

    bench.follow(follow, "there is no open seam")
    bench.method["partial pressed"] = "on"


@reads(rf"Sew from {LENGTH} (?:in|cm) before the stop to the (?P<end>{PLACE}) end")
def sew_rest(bench: Bench, found: re.Match[str]) -> None:
    if "loose" not in bench.method:
        raise Refused("nothing is placed")
    what, pos, bases = bench.method.pop("loose")
    number_ = bench.next_seam()

    def follow(table: Table) -> Iterator[Table]:
        ((place, cloth),) = table.bodies.items()
        whole, stretches = closed(cloth, number_)
        mine = []
        for s in stretches:
            # A stretch runs as its base does, which lies on the side of 1j * along.
            on, base, outward = s.on, s.base, unit(s.b - s.a) * -1j
            if what in base:
                on, base, outward = base, on, -outward
            if what not in on or not any(part in base for part in bases) or not near(outward, PLACES[pos]):
                raise Refused("the open seam lies elsewhere")
            mine.append(replace(s, on=on, base=base))
        outer = [end for end in whole.ends if end.seam == number_]
        if not any(dot(end.into, PLACES[found["end"]]) < 0 for end in outer):
            raise Refused("the seam ends at the other end")
        flipped = any(what in s.base for s in stretches)
        ends = tuple(replace(end, side=-end.side) if end.seam == number_ and flipped else end for end in whole.ends)
        bodies = {**table.bodies, place: replace(whole, ends=ends)}
        yield replace(table, bodies=bodies, waiting=(*table.waiting, Seam(number_, tuple(mine))))

    bench.follow(follow, "there is no open seam")


__all__ = ["Misfit", "different", "turns_of"]
