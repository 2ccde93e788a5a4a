"""Curved seams."""

from __future__ import annotations

import re
from collections.abc import Iterator

from tests.outside.reader.bench import Bench, merged, reads
from tests.outside.reader.cloth import HAIR, Cloth, Misfit, Run, joined, near, runs
from tests.outside.reader.joining import fitted
from tests.outside.reader.landmarks import different
from tests.outside.reader.placing import two_things
from tests.outside.reader.table import Item, Refused, Seam, Table


@reads(r"Place (?P<what>.+?) on (?P<base>.+?), right sides together, curved edges even, middles matched(?:; pin)?")
def place_curves(bench: Bench, found: re.Match[str]) -> None:
    bench.method["curve"] = two_things(bench, found["what"], found["base"])


@reads(
    r"Place (?P<what>.+?) on (?P<base>.+?), right sides together, curved edges even, and "
    r"sew the curve as in step (?P<n>\d+)"
)
def curve_as_in_step(bench: Bench, found: re.Match[str]) -> None:
    if not any(sentence.startswith("Sew the curved edge with") for sentence in bench.texts.get(int(found["n"]), [])):
        raise Refused("that step sews no curve")
    sew_on_curve(bench, *two_things(bench, found["what"], found["base"]))


@reads(r"Sew (?P<what>.+?) on (?P<base>.+?) along the curve in the same way, with (?P<top>.+?) on top")
def curve_again(bench: Bench, found: re.Match[str]) -> None:
    if found["top"] != found["what"]:
        raise Refused("another one lies on top")
    sew_on_curve(bench, *two_things(bench, found["what"], found["base"]))


@reads(r"Sew the curved edge with (?P<top>.+?) on top, easing it to lie flat under the needle")
def sew_curve(bench: Bench, found: re.Match[str]) -> None:
    on_item, base_item = bench.method.pop("curve", (None, None))
    if on_item is None:
        raise Refused("nothing is placed")
    if on_item not in bench.named(found["top"]):
        raise Refused("another one lies on top")
    sew_on_curve(bench, on_item, base_item)


def sew_on_curve(bench: Bench, on_item: Item, base_item: Item) -> None:
    """Sew one thing on another along a curve that both have."""
    number_ = bench.next_seam()

    def follow(table: Table) -> Iterator[Table]:
        on_place, base_place = table.home[on_item.key], table.home[base_item.key]
        on, ground = table.bodies[on_place], table.bodies[base_place]
        ways = [fitted(on, run, edge, laid=False) for edge in curves(ground) for run in curves(on)]
        for cloth in different(way for way in ways if way):
            try:
                whole, stretches = joined(cloth, ground, number_)
            except Misfit:
                continue
            # The two bend alike only if they lie together all along.
            if any(abs(sum(abs(s.b - s.a) for s in stretches) - _length(run)) < HAIR for run in curves(ground)):
                yield merged(table, on_place, base_place, whole, Seam(number_, tuple(stretches)))

    bench.follow(follow, "their curves do not fit")
    bench.used.add(on_item.key)
    bench.base = [base_item.key]


def _length(run: Run) -> float:
    return sum(abs(edge.along) for edge in run.edges)


def curves(cloth: Cloth) -> list[Run]:
    """The curved edges of a cloth; arcs that follow each other are one."""
    found: list[Run] = []
    for run in runs(cloth):
        if not run.curve:
            continue
        if found and near(found[-1].b, run.a):
            found[-1] = Run((*found[-1].edges, *run.edges))
        else:
            found.append(run)
    if len(found) > 1 and near(found[-1].b, found[0].a):
        found[0] = Run((*found.pop().edges, *found[0].edges))
    return found
