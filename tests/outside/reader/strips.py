"""Strip sets and the segments cut from them; pairs made alike."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator
from dataclasses import replace

from tests.outside.reader.bench import Bench, reads
from tests.outside.reader.cloth import HAIR, Cloth
from tests.outside.reader.cutting import cut_patches, ends_kept, put_together, stretched
from tests.outside.reader.joining import Sewing, sewn_on
from tests.outside.reader.landmarks import edges_at
from tests.outside.reader.table import Refused, Table, ways
from tests.outside.reader.taking import take_list
from tests.outside.reader.words import LENGTH, length, number

RULER = 1 / 8
"""So much at most is a strip cut wider than it would be without a ruler."""


@reads(
    r"Sew (?P<what>.+?) to (?P<which>each|a) long edge of (?P<base>.+?)(?:, right sides together)?"
    r"(?P<nest>, nesting the seams|, matching the seams)?(?:, starting the second seam at the opposite end)?"
)
def sew_to_long_edges(bench: Bench, found: re.Match[str]) -> None:
    base = bench.one(found["base"])
    nest = None if not found["nest"] else "nest" if "nest" in found["nest"] else "match"

    def lay(table: Table) -> Iterator[Table]:
        for lying in bench.lying(table, base):
            wide, high = lying.body(base.key).size()
            if wide > high + HAIR:
                yield lying

    bench.follow(lay, "it has no long edges")
    for place in ("top", "bottom") if found["which"] == "each" else ("top",):
        item = bench.one(found["what"])
        sewn_on(bench, item, base, Sewing(lambda cloth, place=place: edges_at(cloth, place), nest=nest))  # type: ignore[misc]
    bench.base = [base.key]


@reads(r"Square up one end(?: of each set)?")
def square_up(bench: Bench, found: re.Match[str]) -> None:
    """The cut ends are made square; the length of the set has room for it."""


@reads(r"Square up again after (?P<how>the|every) third")
def square_up_again(bench: Bench, found: re.Match[str]) -> None:
    """After every third, but not after the last."""
    most = bench.method.get("segments", 0)
    if most < 4 or (found["how"] == "every") != (most > 6):
        raise Refused("that is not after every third but the last")


@reads(r"For each set but the last, take (?P<list>.+)")
def take_for_sets(bench: Bench, found: re.Match[str]) -> None:
    source = re.fullmatch(r"(\d+) strip sets", bench.title.source or "")
    if not source:
        raise Refused("the title says nothing of sets")
    bench.method["full sets"] = int(source[1]) - 1
    take_list(bench, found["list"], int(source[1]) - 1)


@reads(rf"For the last set, take the same strips, (?P<w>{LENGTH}) × (?P<h>{LENGTH}) (?:in|cm)")
def take_for_last_set(bench: Bench, found: re.Match[str]) -> None:
    for kind, count in Counter(bench.for_one).items():
        last = replace(kind, cut=(found["w"], found["h"]))
        if not bench.stock.pieces[last]:
            raise Refused(f"nothing is cut {found['w']} × {found['h']}")
        bench.taken.append((last, count, len(bench.taken)))
    bench.method["last set"] = float(length(found["h"]))


@reads(rf"Cut (?P<n>\d+) segments? (?P<d>{LENGTH}) (?:in|cm) wide(?: from each(?:, (?P<last>\d+) from the last)?)?")
def cut_segments(bench: Bench, found: re.Match[str]) -> None:
    count, wide = number(found["n"]), float(length(found["d"]))
    last = int(found["last"] or 0)
    source = re.match(r"\d+", bench.title.source or "")
    sets = bench.method.get("full sets", int(source[0]) if source else 1)
    if count * sets + last != bench.title.count + bench.title.spare:
        raise Refused(f"{count * sets + last} are cut, {bench.title.count} are made")
    if last and last * wide > bench.method.get("last set", 0) + HAIR:
        raise Refused("the last set is shorter")
    bench.method["segments"] = count

    def follow(table: Table) -> Iterator[Table]:
        if table.waiting:
            raise Refused("the set is not pressed yet")
        for place, cloth in table.bodies.items():
            low, _ = cloth.box()
            across, down = cloth.size()
            if down > across:
                cloth, across, low = cloth.moved(-1j), down, cloth.moved(-1j).box()[0]  # noqa: PLW2901
            if count * wide > across + HAIR:
                raise Refused(f"{count} × {wide} in is more than the {across} in of the strips")
            at = low + wide - 2 * bench.stock.seam
            patches = cut_patches(cloth.patches(), at, at + 1j)
            ends = ends_kept(cloth, at, at + 1j)
            yield table.with_body(place, put_together(patches, ends))

    bench.follow(follow, "there is nothing to cut")
    bench.measured = True


@reads(rf"Trim the set to (?P<d>{LENGTH}) (?:in|cm) across, the same amount off each long edge")
def trim_set(bench: Bench, found: re.Match[str]) -> None:
    """Strips that were cut wider than they finish: the set is as wide as the unit, all strips alike for the reader."""
    across = float(length(found["d"])) - 2 * bench.stock.seam

    def follow(table: Table) -> Iterator[Table]:
        if table.waiting:
            raise Refused("the set is not pressed yet")
        for place, cloth in table.bodies.items():
            wide, high = cloth.size()
            if across > min(wide, high) - HAIR:
                raise Refused("nothing is to be trimmed")
            rate = (1, across / high) if wide > high else (across / wide, 1)
            yield table.with_body(place, stretched(cloth, *rate))

    bench.follow(follow, "there is nothing to trim")


def as_drawn(bench: Bench, cloth: Cloth) -> Cloth:
    """A segment of rounded strips as its letters are drawn: so much wider are its seam allowances, not its patches.

    Errors: Refused where a strip or segment is no patch of its letter, even as the ruler rounds it up.
    """
    if "segments" not in bench.method:
        return cloth
    rates = []
    for is_down in (False, True):
        drawn = made = 0.0
        for patch in cloth.patches():
            shape = [point.imag if is_down else point.real for point in patch.points]
            own = max(shape) - min(shape)
            letter = bench.stock.letters[patch.label].points
            sides = [abs(a - b) for a, b in zip(letter, letter[1:] + letter[:1], strict=True)]
            fitting = [side for side in sides if -HAIR < own - side < RULER]
            if not fitting:
                raise Refused(f"{patch.label} is not {own:.4g} wide")
            drawn, made = drawn + min(fitting, key=lambda side: own - side), made + own
        rates.append(drawn / made)
    return cloth if all(abs(rate - 1) < HAIR for rate in rates) else stretched(cloth, rates[0], rates[1])


@reads(r"Make (?P<n>\d+) (?P<what>pairs) alike")
def pairs_alike(bench: Bench, found: re.Match[str]) -> None:
    count = number(found["n"])
    if not bench.each_pair:
        raise Refused("no pair was begun")
    results: list[Cloth] = []
    for table in bench.tables:
        if len(table.bodies) != 1 or table.waiting:
            raise Refused("the pair is not finished")
        results.extend(table.bodies.values())
    different = list(ways(results))
    if len(different) != 1:
        raise Refused("the pair can be made in two ways")
    bench.each_pair = 0
    bench.taken = [(kind, n * count, group) for kind, n, group in bench.taken]
    bench.items, bench.used, bench.base = [], set(), []
    bench.tables = [Table()]
    for _ in range(count):
        bench.add({"pair"}, different[0].tagged("pair"), group=1000)
