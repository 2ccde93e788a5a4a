"""Strip sets and the segments cut from them; pairs made alike."""

from __future__ import annotations

import re
from collections.abc import Iterator

from tests.outside.reader.bench import Bench, reads
from tests.outside.reader.cloth import HAIR, Cloth
from tests.outside.reader.cutting import cut_patches, ends_kept, put_together
from tests.outside.reader.joining import Sewing, sewn_on
from tests.outside.reader.landmarks import edges_at
from tests.outside.reader.table import Refused, Table, ways
from tests.outside.reader.words import LENGTH, length, number


@reads(
    r"Sew (?P<what>.+?) to each long edge of (?P<base>.+?)(?:, right sides together)?"
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
    for place in ("top", "bottom"):
        item = bench.one(found["what"])
        sewn_on(bench, item, base, Sewing(lambda cloth, place=place: edges_at(cloth, place), nest=nest))  # type: ignore[misc]
    bench.base = [base.key]


@reads(r"Square up one end", r"Square up again after (?:the|every) third")
def square_up(bench: Bench, found: re.Match[str]) -> None:
    """The cut ends are made square; the length of the set has room for it."""


@reads(rf"Cut (?P<n>\d+) segments (?P<d>{LENGTH}) (?:in|cm) wide")
def cut_segments(bench: Bench, found: re.Match[str]) -> None:
    count, wide = number(found["n"]), float(length(found["d"]))
    if count != bench.title.count:
        raise Refused(f"{count} are cut, {bench.title.count} are made")

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
