"""Flying geese, four at a time: small squares on opposite corners of a large one, cut, and on the corner left over."""

from __future__ import annotations

import re
from dataclasses import replace

from tests.outside.reader.bench import Bench, reads
from tests.outside.reader.cloth import Patch, Stretch, near
from tests.outside.reader.cutting import rectangle, sewn_beside_line_and_cut
from tests.outside.reader.stock import Kind
from tests.outside.reader.table import Item, Refused, Seam, Table, ways


def _marked(bench: Bench, items: list[Item]) -> None:
    if any(item.key not in bench.method.get("lines", {}) for item in items):
        raise Refused("no lines are drawn on them")


@reads(
    r"Place (?:an?|the) (?P<what>.+?) on each of two opposite corners of (?P<base>.+?), right sides together, "
    r"edges even"
)
def place_on_corners(bench: Bench, found: re.Match[str]) -> None:
    items = [item for item in bench.named(found["what"]) if item.key not in bench.used]
    base = bench.one(found["base"])
    if len(items) < 2 or base.key in {item.key for item in items} or len({item.group for item in items}) > 1:
        raise Refused("there are not two alike to place")
    bench.method["geese"] = {"corners": items[:2], "base": base}
    bench.used |= {items[0].key, items[1].key}


@reads(r"Turn both so that their lines make one line across (?P<base>.+?)(?:; pin)?")
def lines_in_one(bench: Bench, found: re.Match[str]) -> None:
    geese = bench.method.get("geese")
    if not geese or bench.one(found["base"]) is not geese["base"]:
        raise Refused("there are no two lines")
    _marked(bench, geese["corners"])
    geese["turned"] = True


@reads(r"On each half, place an? (?P<what>.+?) on the square corner of (?P<base>.+?), right sides together, edges even")
def place_on_square_corner(bench: Bench, found: re.Match[str]) -> None:
    half = bench.method.get("half")
    if not half:
        raise Refused("there are no halves")
    items = [item for item in bench.named(found["what"]) if item.key not in bench.used]
    if len(items) != 2 or bench.one(found["base"]) is not half["base"]:
        raise Refused("there is not one for each half")
    _marked(bench, items)
    bench.method["geese"] = {"square corner": items}
    bench.used |= {item.key for item in items}


@reads(r"Turn it so that its line runs into the notch between the other two (?P<what>.+?)(?:; pin)?")
def into_notch(bench: Bench, found: re.Match[str]) -> None:
    if "square corner" not in bench.method.get("geese", {}):
        raise Refused("nothing to turn")
    bench.method["geese"]["turned"] = True


def cut_geese(bench: Bench) -> None:
    geese = bench.method.pop("geese")
    if not geese.get("turned") or not bench.method.pop("geese sewn", False):
        raise Refused("it is not sewn yet")
    if "corners" in geese:
        _cut_in_halves(bench, geese["corners"], geese["base"])
    else:
        _cut_halves(bench, geese["square corner"])


def _cut_in_halves(bench: Bench, items: list[Item], base: Item) -> None:
    kind = base.extra
    assert isinstance(kind, Kind)
    points = bench.stock.letters[kind.label].points
    side = max(abs(a - b) for a, b in zip(points, points[1:] + points[:1], strict=True))
    tops: list[Patch] = []
    for item, at in zip(items, (0j, complex(side / 2, side / 2)), strict=True):
        assert isinstance(item.extra, Kind)
        tops.extend(rectangle(item.extra.label, item.extra.fabric, side / 2, side / 2, at).patches())
    ground, seam = rectangle(kind.label, kind.fabric, side, side), bench.next_seam()
    half = sewn_beside_line_and_cut(ground, tops, complex(side, side), 0, seam)[0]
    bench.method["half"] = {"side": side, "base": base}
    bench.method["copies"] = 4
    table = bench.tables[0]
    gone = {item.key for item in items}
    bodies = {key: body for key, body in table.bodies.items() if key not in gone} | {base.key: half}
    home = table.home | dict.fromkeys(gone, base.key)
    bench.tables = [replace(table, bodies=bodies, home=home, waiting=(_seam(seam, items, base),))]


def _cut_halves(bench: Bench, items: list[Item]) -> None:
    side, base = bench.method["half"]["side"], bench.method["half"]["base"]
    table, small = bench.tables[0], side / 2
    if table.waiting:
        raise Refused("the seams are not pressed yet")
    half = table.body(base.key)
    corner = next(at for at in (complex(side, 0), complex(0, side)) if any(near(edge.a, at) for edge in half.edges))
    low = complex(min(corner.real, small), min(corner.imag, small))
    kind = items[0].extra
    assert isinstance(kind, Kind)
    top = list(rectangle(kind.label, kind.fabric, small, small, low).patches())
    seam = bench.next_seam()
    geese = list(ways(sewn_beside_line_and_cut(half, top, corner, complex(small, small), seam)))
    bench.items = [*items, base]
    home = {item.key: base.key for item in bench.items}
    bodies = {base.key: geese[0]}
    if len(geese) > 1:
        bodies[items[0].key] = geese[1]
        home[items[0].key] = items[0].key
        bench.method["kinds"] = 2
    bench.tables = [Table(bodies, home, frozenset(), (_seam(seam, items, base),))]


def _seam(number: int, on: list[Item], base: Item) -> Seam:
    laid_on = frozenset().union(*(item.names | {item.mark} for item in on))
    return Seam(number, (Stretch(0, 1, laid_on, frozenset(base.names | {base.mark})),))
