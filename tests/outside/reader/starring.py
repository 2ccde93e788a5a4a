"""Seams from dot to dot: eight-point stars, pieces set into a corner."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import replace
from itertools import combinations

from tests.outside.reader.bench import Bench, merged, reads
from tests.outside.reader.cloth import HAIR, Cloth, Misfit, Run, Stretch, cross, dot, joined, near, runs, unit
from tests.outside.reader.joining import fitted, raising_late, tried
from tests.outside.reader.landmarks import Test, best, different
from tests.outside.reader.laying import tests_of
from tests.outside.reader.nests import check_nest
from tests.outside.reader.placing import chosen, sew_placed, two_things
from tests.outside.reader.pressing import side_of
from tests.outside.reader.table import Item, Refused, Seam, Table
from tests.outside.reader.words import LENGTH, PLACE, PLACES, length


@reads(rf"Sew the (?P<pos>{PLACE}) edge from the .+? to the dot at its \w+ end(?:; backstitch)?")
def sew_to_dot(bench: Bench, found: re.Match[str]) -> None:
    if "placed" not in bench.method:
        raise Refused("nothing is placed to be sewn")
    if not bench.method.get("dots") and not bench.stock.dotted:
        raise Refused("no dot is marked")
    sew_placed(bench, bench.method.pop("placed"), chosen("edge", found["pos"]))


# --- setting in -----------------------------------------------------------------------------------------


def hollows(cloth: Cloth) -> list[tuple[Run, Run]]:
    """The corners of an outline that point inward: the runs before and after."""
    all_runs = runs(cloth)
    pairs = [(all_runs[place - 1], all_runs[place]) for place in range(len(all_runs))]
    return [(a, b) for a, b in pairs if cross(unit(a.b - a.a), unit(b.b - b.a)) < -HAIR]


Fits = Callable[[Cloth, Run, Run], bool]
"""Whether a hollow corner between two runs is the one that the words mean."""


def set_in(bench: Bench, item: Item, base: Item, fits: Fits, tests: list[Test] | None = None) -> None:
    """Sew a piece into a hollow corner that the words mean, both edges."""
    first, second = bench.next_seam(), bench.next_seam()

    def follow(table: Table) -> Iterator[Table]:
        on_place, base_place = table.home[item.key], table.home[base.key]
        on, ground = table.bodies[on_place], table.bodies[base_place]
        for before, after in hollows(ground):
            if not fits(ground, before, after):
                continue
            ways = [
                cloth
                for run in runs(on)
                if (cloth := fitted(on, run, after, laid=on_place in table.laid))
                and any(near(other.a, before.b) and near(other.b, before.a) for other in runs(cloth))
            ]
            for cloth in best(different(ways), tests or []):
                whole, stretches = joined(cloth, ground, first)
                one = [s for s in stretches if abs(cross(unit(after.b - after.a), s.b - s.a)) < HAIR]
                other = [s for s in stretches if s not in one]
                if not one or not other:
                    raise Misfit
                numbered = tuple(
                    replace(end, seam=second) if end.seam == first and _ends(end.at, other) else end
                    for end in whole.ends
                )
                after_it = merged(table, on_place, base_place, replace(whole, ends=numbered), Seam(first, tuple(one)))
                yield replace(after_it, waiting=(*after_it.waiting, Seam(second, tuple(other))))

    bench.follow(follow, "it does not fit into any corner that may be meant")
    bench.used.add(item.key)
    bench.note_joint(item.key, base.key)


def _ends(at: complex, stretches: list[Stretch]) -> bool:
    return any(near(at, s.a) or near(at, s.b) for s in stretches)


@reads(
    r"Place (?P<what>.+?) on (?P<on>.+?), right sides together, its square corner at the dot where the seam stops, "
    r"a short edge along the free edge of (?P<again>.+?)"
)
def place_in_corner(bench: Bench, found: re.Match[str]) -> None:
    if found["on"] != found["again"]:
        raise Refused("on one, along another")
    bench.method["setting"] = (bench.one(found["what"]), found["on"])


@reads(r"Sew from that dot to the outer end(?:; backstitch)?")
def sew_from_dot(bench: Bench, found: re.Match[str]) -> None:
    if "setting" in bench.method and "swung" not in bench.method:
        return
    item, first, second = bench.method.pop("swung", (None, "", ""))
    if item is None:
        raise Refused("nothing is placed there")
    bench.method.pop("setting")
    bases = [other for other in bench.items if other.key != item.key]
    if len(bases) != 1:
        raise Refused("what is it set into?")
    stops = {first, second}

    def fits(cloth: Cloth, before: Run, after: Run) -> bool:
        seam_there = any(near(end.at, after.a) for end in cloth.ends)
        return seam_there and all(any(name in run.tags for run in (before, after)) for name in stops)

    set_in(bench, item, bases[0], fits)
    bench.base = [bases[0].key]


@reads(r"Swing the other short edge of (?P<what>.+?) to the free edge of (?P<to>.+)")
def swing(bench: Bench, found: re.Match[str]) -> None:
    if "setting" not in bench.method or bench.method["setting"][0] not in bench.named(found["what"]):
        raise Refused("nothing of that name is set in")
    item, first = bench.method["setting"]
    if first == found["to"]:
        raise Refused("both edges go to the same piece")
    bench.method["swung"] = (item, first, found["to"])


@reads(
    rf"Set (?P<what>.+?) into (?:the V at the (?P<pos>{PLACE})|(?P<each>each V)), as (?P<like>.+?) in step (?P<n>\d+)"
)
def set_like(bench: Bench, found: re.Match[str]) -> None:
    if int(found["n"]) not in bench.texts:
        raise Refused("that step comes later")
    alike = bench.named(found["what"])
    bases = [item for item in bench.items if item not in alike]
    if not alike or not bases:
        raise Refused("what is set into what?")
    for item in alike if found["each"] else [bench.one(found["what"])]:
        set_in(bench, item, bases[0], _at(found["pos"]))
    bench.base = [bases[0].key]


@reads(rf"In the same way, set (?P<what>.+?) into the V at the (?P<pos>{PLACE})(?:, with (?P<how>.+))?")
def set_alike(bench: Bench, found: re.Match[str]) -> None:
    if not bench.base:
        raise Refused("the V of what?")
    tests = tests_of(bench, found["how"]) if found["how"] else []
    set_in(bench, bench.one(found["what"]), bench.items[bench.base[0]], _at(found["pos"]), tests)


@reads(
    rf"Set (?P<what>.+?) into the V at the (?P<pos>{PLACE})(?: of (?P<base>.+?))?(?:, with (?P<how>.+?))?"
    r"(?P<hand>, folding the papers at the corner)?(?P<way> in the same way)?(?:, as .+? in step (?P<n>\d+))?"
    r"(?:: pin the dot of its corner to the dot where the seam stops, and sew each edge from that dot to its "
    r"outer end)?"
)
def set_at(bench: Bench, found: re.Match[str]) -> None:
    if not found["base"] and not bench.base:
        raise Refused("the V of what?")
    if bool(found["hand"]) != bench.by_hand:
        raise Refused("papers are folded at a corner where there are papers")
    if found["n"] and int(found["n"]) not in bench.texts:
        raise Refused("that step comes later")
    base = bench.one(found["base"], base=True) if found["base"] else bench.items[bench.base[0]]
    tests = tests_of(bench, found["how"]) if found["how"] else []
    set_in(bench, bench.one(found["what"]), base, _at(found["pos"]), tests)
    bench.base = [base.key]


@reads(
    r"Place one edge at a time, right sides together, the corner of the V at the dot where the seam stops",
    r"Sew each edge from that dot to its outer end(?:; backstitch at the dot)?",
)
def each_edge(bench: Bench, found: re.Match[str]) -> None:
    """How a piece is set in, told once."""


def _at(pos: str | None) -> Fits:
    def fits(cloth: Cloth, before: Run, after: Run) -> bool:
        if pos is None:
            return True
        # The V opens the way that both its edges face.
        return dot(unit(before.outward + after.outward), unit(PLACES[pos])) > 0.9

    return fits


# --- joining what was sewn to the dot -------------------------------------------------------------------


@reads(
    r"Place (?P<what>.+?) on (?P<base>.+?), right sides together, (?P<x>[^,]+?) on (?P<y>[^,]+?)"
    r"(?P<both> along both halves of the edge)?"
)
def place_on_other(bench: Bench, found: re.Match[str]) -> None:
    on, base = two_things(bench, found["what"], found["base"])
    bench.method["dotted"] = (on, base, found["x"], found["y"], bool(found["both"]))


@reads(r"Sew from (?P<a>.+?) to (?P<b>.+? dot)(?:; backstitch(?: at both)?)?")
def sew_dot_to_dot(bench: Bench, found: re.Match[str]) -> None:
    if "dotted" not in bench.method:
        raise Refused("nothing is placed to be sewn")
    on_item, base_item, x, y, both = bench.method.pop("dotted")
    number_ = bench.next_seam()
    said = bench.method.pop("nest", None)

    def check(cloth: Cloth, ground: Cloth, stretches: list[Stretch]) -> None:
        pairs = [(x in s.on and y in s.base, y in s.on and x in s.base) for s in stretches]
        alike = len(pairs) > 1 and all(a or b for a, b in pairs) if both else all(a for a, _ in pairs)
        if not alike:
            raise Refused(f"{x} does not lie on {y}")
        check_nest(cloth, ground, stretches, said)

    def follow(table: Table) -> Iterator[Table]:
        on_place, base_place = table.home[on_item.key], table.home[base_item.key]
        on, ground = table.bodies[on_place], table.bodies[base_place]
        problems: list[str] = []
        for edge in runs(ground):
            ways = [fitted(on, run, edge, laid=on_place in table.laid) for run in runs(on)]
            for whole, stretches in tried(
                different(way for way in ways if way), ground, number_, None, check, problems
            ):
                yield merged(table, on_place, base_place, whole, Seam(number_, tuple(stretches)))
        if problems:
            raise Refused(problems[0])

    bench.follow(raising_late(follow), "it does not fit")
    bench.used.add(on_item.key)
    bench.base = [base_item.key]


def halves_of(seam: Seam) -> list[tuple[Stretch, tuple[Stretch, ...]]]:
    """A seam in two, from its middle outward: what lies at the middle, and all of it."""
    ends = [end for s in seam.stretches for end in (s.a, s.b)]
    a, b = max(combinations(ends, 2), key=lambda pair: abs(pair[0] - pair[1]))
    middle = (a + b) / 2
    first = tuple(s for s in seam.stretches if abs((s.a + s.b) / 2 - a) < abs((s.a + s.b) / 2 - b))
    second = tuple(s for s in seam.stretches if s not in first)
    inner = [next((s for s in half if near(s.a, middle) or near(s.b, middle)), None) for half in (first, second)]
    if inner[0] is None or inner[1] is None:
        raise Refused("no seams meet in the middle of it")
    return [(inner[0], first), (inner[1], second)]


def _side_at(at: complex, halves: list[tuple[Stretch, str]]) -> str:
    for stretch, side in halves:
        if _ends(at, [stretch]):
            return side
    raise Refused("the seam does not end where its halves do")


def _toward(said: dict[str, str], seam: Seam, half: tuple[Stretch, ...]) -> str:
    """Where the half of a seam that lies at a place is pressed."""
    ends = [end for s in seam.stretches for end in (s.a, s.b)]
    middle = sum(ends) / len(ends)
    own = sum(s.a + s.b for s in half) / (2 * len(half))
    first = dot(own - middle, PLACES[said["p"]]) > HAIR
    if first == (dot(own - middle, PLACES[said["q"]]) > HAIR):
        raise Refused("which half?")
    return said["x"] if first else said["y"]


@reads(
    r"From the center outward, press the seam toward (?P<what>.+?), and fan the seams open at the center",
    rf"From the center outward, press the (?P<p>{PLACE}) half of the seam toward the (?P<x>{PLACE}) and "
    rf"the (?P<q>{PLACE}) half toward the (?P<y>{PLACE}), and fan the seams open at the center",
)
def press_fanned(bench: Bench, found: re.Match[str]) -> None:
    said = found.groupdict()

    def follow(table: Table) -> Iterator[Table]:
        if len(table.waiting) != 1:
            raise Refused("more than one seam, or none")
        seam = table.waiting[0]
        halves: list[tuple[Stretch, str]] = []
        for inner, half in halves_of(seam):
            toward = said.get("what") or f"the {_toward(said, seam, half)}"
            side = side_of(bench, table, Seam(seam.number, (inner,)), toward)
            halves += [(stretch, side) for stretch in half]
        bodies = {}
        for place, cloth in table.bodies.items():
            ends = [
                replace(end, pressed=_side_at(end.at, halves)) if end.seam == seam.number else end for end in cloth.ends
            ]
            bodies[place] = replace(cloth, ends=tuple(ends))
        yield replace(table, bodies=bodies, waiting=())

    bench.follow(follow, "it cannot be pressed so")


@reads(rf"☐ (?:about )?(?P<d>{LENGTH}) (?:in|cm) (?:from the (?:bottom|center) dot to .+|between the side dots)")
def measure_star(bench: Bench, found: re.Match[str]) -> None:
    said = float(length(found["d"]))
    between = found[0].endswith("side dots")

    def follow(table: Table) -> Iterator[Table]:
        for cloth in table.bodies.values():
            corners = [run.a for run in runs(cloth)]
            across = [abs(a - b) for a, b in combinations(corners, 2)]
            low, high = cloth.box()
            reach = [abs(part) for end in cloth.ends for part in _reach(end.at, low, high)]
            sizes = across if between else [size + bench.stock.seam for size in reach]
            if any(abs(size - said) < (1 / 16 if found[0].startswith("☐ about") else HAIR) for size in sizes):
                yield table
                return
            raise Refused(f"it measures {sizes}")

    bench.follow(follow, "it measures something else")
    bench.measured = True


def _reach(at: complex, low: complex, high: complex) -> tuple[float, ...]:
    return at.real - low.real, high.real - at.real, at.imag - low.imag, high.imag - at.imag
