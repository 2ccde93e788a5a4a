"""Two and four at a time, corners turned over, strip sets, pairs made alike."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace

from tests.outside.reader.bench import Bench, press, reads
from tests.outside.reader.cloth import HAIR, Cloth, Patch, Stretch, cross, near, unit
from tests.outside.reader.cutting import (
    cut_patches,
    ends_kept,
    put_together,
    rectangle,
    sewn_beside_line_and_cut,
    turned_over_corner,
)
from tests.outside.reader.joining import sewn_on
from tests.outside.reader.landmarks import edges_at
from tests.outside.reader.stock import Kind
from tests.outside.reader.table import Item, Refused, Seam, Table, ways
from tests.outside.reader.words import LENGTH, PLACE, PLACES, Unreadable, length, number

QUARTER_INCH = r"(?:1/4 in|0\.75 cm)"


def is_raw(item: Item) -> bool:
    return isinstance(item.extra, Kind) and item.form in ("square", "rectangle", "strip")


# --- marking --------------------------------------------------------------------------------------------


@reads(
    r"On the wrong side of (?P<what>.+?), draw (?P<two>a line|both diagonals|2 lines|two lines)"
    r"(?: from corner to corner(?: (?:both ways|each way))?)?"
)
def mark(bench: Bench, found: re.Match[str]) -> None:
    items = bench.named(found["what"])
    if not items or not all(item.form == "square" or not is_raw(item) for item in items):
        raise Refused("a line from corner to corner is drawn on squares")
    if not found["what"].startswith("each ") and len(items) > 1 and len({item.group for item in items}) > 1:
        raise Refused("more than one square may be meant")
    lines = bench.method.setdefault("lines", {})
    for item in items:
        lines[item.key] = 1 if found["two"] == "a line" else 2
    bench.base = [items[0].key]


# --- two at a time --------------------------------------------------------------------------------------


def square_of(bench: Bench, side: float, item: Item) -> Cloth:
    """A raw square as large as what comes of it."""
    kind = item.extra
    assert isinstance(kind, Kind)
    return rectangle(kind.label, kind.fabric, side, side)


@reads(rf"Sew {QUARTER_INCH} (?:in )?from the line on both sides of it")
def sew_both_sides(bench: Bench, found: re.Match[str]) -> None:
    if bench.method.get("stage") != "placed":
        raise Refused("nothing is placed to be sewn")
    if "stack" in bench.method and bench.method["stack"][0].key not in bench.method.get("lines", {}):
        raise Refused("no line is drawn on what lies on top")
    bench.method["stage"] = "sewn"


@reads(r"Cut on the line")
def cut_on_line(bench: Bench, found: re.Match[str]) -> None:
    if bench.method.get("stage") != "sewn":
        raise Refused("it is not sewn yet")
    bench.method["stage"] = "cut"
    if "stack" in bench.method:
        _cut_two(bench)
    elif "corners" in bench.method:
        _cut_geese(bench)
    elif "square corner" in bench.method:
        _cut_last_geese(bench)
    else:
        raise Refused("there is no line")


def _finished_side(bench: Bench) -> float:
    if not bench.title.finished:
        raise Refused("the title says no size")
    return bench.title.finished[0]


def _cut_two(bench: Bench) -> None:
    """Two squares become two squares of two triangles, alike."""
    on, base = bench.method.pop("stack")
    seam = bench.next_seam()
    kind = on.extra
    if not (is_raw(on) and is_raw(base) and isinstance(kind, Kind)):
        raise Unreadable("units two at a time")
    letter = bench.stock.letters[kind.label]
    side = min(abs(a - b) for a, b in zip(letter.points, letter.points[1:] + letter.points[:1], strict=True))
    top, bottom = square_of(bench, side, on), square_of(bench, side, base)
    halves = sewn_beside_line_and_cut(bottom, top.patches(), 0, complex(side, side), seam)
    keys = {on.key, base.key}

    def follow(table: Table) -> Iterator[Table]:
        place = base.key
        waiting = Seam(seam, (_stretch([on], base),))
        bodies = {key: body for key, body in table.bodies.items() if key not in keys}
        home = {**table.home, on.key: place}
        yield replace(table, bodies={**bodies, place: halves[0]}, home=home, waiting=(*table.waiting, waiting))

    bench.follow(follow, "it cannot be cut")
    bench.method["copies"] = 2
    if bench.title.each_batch not in (2, None):
        raise Refused("two come of a pair of squares")
    if bench.title.each_batch is None and bench.title.count != 2:
        raise Refused("two come of a pair of squares")


def _stretch(on: list[Item], base: Item) -> Stretch:
    """A seam of which only what lies on both sides is of matter."""
    laid_on = frozenset().union(*(item.names | {item.mark} for item in on))
    return Stretch(0, 1, laid_on, frozenset(base.names | {base.mark}))


# --- geese, four at a time ------------------------------------------------------------------------------


@reads(r"Place an? (?P<what>.+?) on each of two opposite corners of (?P<base>.+?), right sides together, edges even")
def place_on_corners(bench: Bench, found: re.Match[str]) -> None:
    items, base = [item for item in bench.named(found["what"]) if item.key not in bench.used], bench.one(found["base"])
    if len(items) < 2 or base.key in {item.key for item in items}:
        raise Refused("there are not two to place")
    bench.method["corners"] = (items[:2], base)
    bench.used |= {items[0].key, items[1].key}


@reads(r"Turn both so that their lines make one line across (?P<base>.+?)(?:; pin)?")
def lines_in_one(bench: Bench, found: re.Match[str]) -> None:
    items, base = bench.method.get("corners", ([], None))
    if not items or bench.one(found["base"]) is not base:
        raise Refused("there are no two lines")
    if any(item.key not in bench.method.get("lines", {}) for item in items):
        raise Refused("no lines are drawn on them")
    bench.method["stage"] = "placed"


def _cut_geese(bench: Bench) -> None:
    items, base = bench.method.pop("corners")
    kind = base.extra
    letter = bench.stock.letters[kind.label]
    side = max(abs(a - b) for a, b in zip(letter.points, letter.points[1:] + letter.points[:1], strict=True))
    small = side / 2
    ground = square_of(bench, side, base)
    tops: list[Patch] = []
    for item, at in zip(items, (0, complex(small, small)), strict=True):
        tops.extend(rectangle(item.extra.label, item.extra.fabric, small, small, at).patches())
    seam = bench.next_seam()
    half = sewn_beside_line_and_cut(ground, tops, complex(side, side), 0, seam)[0]
    bench.method["half"] = (side, base)
    bench.method["copies"] = 4
    bench.method["made of"] = [*items, base]
    _replace_all(bench, half, [*items, base], [(seam, items, base)])


@reads(r"On each half, place an? (?P<what>.+?) on the square corner of (?P<base>.+?), right sides together, edges even")
def place_on_square_corner(bench: Bench, found: re.Match[str]) -> None:
    if "half" not in bench.method:
        raise Refused("there are no halves")
    items = [item for item in bench.named(found["what"]) if item.key not in bench.used]
    base = bench.one(found["base"])
    if len(items) != 2 or base is not bench.method["half"][1]:
        raise Refused("there is not one for each half")
    if any(item.key not in bench.method.get("lines", {}) for item in items):
        raise Refused("no lines are drawn on them")
    bench.method["square corner"] = items
    bench.used |= {item.key for item in items}


@reads(r"Turn it so that its line runs into the notch between the other two (?P<what>.+?)(?:; pin)?")
def into_notch(bench: Bench, found: re.Match[str]) -> None:
    if "square corner" not in bench.method:
        raise Refused("nothing to turn")
    bench.method["stage"] = "placed"


def _cut_last_geese(bench: Bench) -> None:
    items = bench.method.pop("square corner")
    side, base = bench.method["half"]
    small, seam = side / 2, bench.next_seam()
    table = bench.tables[0]
    half = table.bodies[table.home[base.key]]
    if table.waiting:
        raise Refused("the seams are not pressed yet")
    # Of the square from 0 to side the half on the side of its upper right or lower left corner is there.
    for corner in (complex(side, 0), complex(0, side)):
        if any(near(edge.a, corner) for edge in half.edges):
            break
    else:
        raise Refused("there is no square corner")
    middle = complex(small, small)
    low = complex(min(corner.real, small), min(corner.imag, small))
    top = list(rectangle(items[0].extra.label, items[0].extra.fabric, small, small, low).patches())
    geese = sewn_beside_line_and_cut(half, top, corner, middle, seam)
    _replace_all(bench, geese[0], [*items, *bench.method["made of"]], [(seam, items, base)])
    if bench.title.count != 4 * bench.title.batches:
        raise Refused("four come of five squares")


def _replace_all(bench: Bench, cloth: Cloth, items: list[Item], seams: list[tuple[int, list[Item], Item]]) -> None:
    """Pieces become one body."""
    keys = {item.key for item in items}
    place = seams[0][2].key
    waiting = tuple(Seam(number_, (_stretch(on, base),)) for number_, on, base in seams)

    def follow(table: Table) -> Iterator[Table]:
        homes = {table.home[key] for key in keys}
        bodies = {key: body for key, body in table.bodies.items() if key not in homes}
        home = {**table.home, **dict.fromkeys(keys, place)}
        yield replace(table, bodies={**bodies, place: cloth}, home=home, waiting=(*table.waiting, *waiting))

    bench.follow(follow, "it cannot be cut")


# --- corners turned over --------------------------------------------------------------------------------


@reads(
    rf"Place (?P<what>.+?) on (?:its|the) (?P<end>left|right|top|bottom) end(?:, right sides together, edges even)?"
    rf"(?P<way> in the same way, its line from (?P<a>{PLACE}) to (?P<b>{PLACE}))?"
)
def place_on_end(bench: Bench, found: re.Match[str]) -> None:
    item = bench.one(found["what"])
    if item.key not in bench.method.get("lines", {}):
        raise Refused("no line is drawn on it")
    if not bench.base:
        raise Refused("its end: of what?")
    base = bench.items[bench.base[0]]
    kind = item.extra
    if not isinstance(kind, Kind):
        raise Refused("a unit is not turned over")
    side = bench.stock.raw_size(kind)[0]
    low, high = bench.tables[0].body(base.key).box()
    if base.key not in bench.tables[0].laid:
        raise Refused("it is not said how it lies")
    right, bottom = complex(high.real - side, low.imag), complex(low.real, high.imag - side)
    at = {"left": low, "top": low, "right": right, "bottom": bottom}[found["end"]]
    bench.method["flip"] = {"item": item, "base": base, "at": at, "side": side}
    if found["way"]:
        _line(bench, found["a"], found["b"])


def _line(bench: Bench, start: str, stop: str) -> None:
    flip = bench.method.get("flip")
    if not flip:
        raise Refused("there is no line to turn")
    ends = []
    for name in (start, stop):
        where = PLACES[name]
        if not (where.real and where.imag):
            raise Refused("a line runs from corner to corner")
        ends.append(flip["at"] + flip["side"] / 2 * (1 + 1j + where))
    if not near(ends[0] - flip["at"] + ends[1] - flip["at"], flip["side"] * (1 + 1j)):
        raise Refused("a line runs from one corner to the opposite one")
    flip["line"] = tuple(ends)


@reads(rf"Turn (?P<what>.+?) so that its line runs from (?P<a>{PLACE}) to (?P<b>{PLACE})(?:; pin)?")
def turn_line(bench: Bench, found: re.Match[str]) -> None:
    flip = bench.method.get("flip")
    if not flip or (flip["item"] not in bench.named(found["what"]) and found["what"] != "it"):
        raise Refused("nothing of that name is placed")
    _line(bench, found["a"], found["b"])


@reads(rf"Sew just outside the line, toward the (?P<pos>{PLACE})")
def sew_outside(bench: Bench, found: re.Match[str]) -> None:
    flip = bench.method.get("flip", {})
    if "line" not in flip:
        raise Refused("it is not said how the line runs")
    flip["toward"] = found["pos"]


@reads(rf"Cut {QUARTER_INCH} outside the seam")
def cut_outside(bench: Bench, found: re.Match[str]) -> None:
    if "toward" not in bench.method.get("flip", {}):
        raise Refused("there is no seam")
    bench.method["flip"]["cut"] = True


@reads(r"Press (?P<what>.+?) over the corner")
def press_over(bench: Bench, found: re.Match[str]) -> None:
    flip = bench.method.get("flip", {})
    if not flip.get("cut") or flip["item"] not in bench.named(found["what"]):
        raise Refused("nothing is there to be pressed over a corner")
    _flip(bench)


@reads(
    rf"Sew, cut, and press in the same way, toward the (?P<pos>{PLACE})",
    rf"Sew, cut and press in the same way, toward the (?P<pos>{PLACE})",
)
def flip_again(bench: Bench, found: re.Match[str]) -> None:
    if "line" not in bench.method.get("flip", {}) or not bench.method.get("flipped"):
        raise Refused("nothing was sewn so before")
    bench.method["flip"]["toward"] = found["pos"]
    _flip(bench)


def _flip(bench: Bench) -> None:
    flip = bench.method.pop("flip")
    bench.method["flipped"] = True
    item, base, (a, b) = flip["item"], flip["base"], flip["line"]
    where = PLACES[flip["toward"]]
    lean = cross(unit(b - a), where)
    if abs(lean) < HAIR:
        raise Refused("the line runs that way itself")
    if lean > 0:
        a, b = b, a
    number_ = bench.next_seam()
    square = next(
        iter(rectangle(item.extra.label, item.extra.fabric, flip["side"], flip["side"], flip["at"]).patches())
    )

    def follow(table: Table) -> Iterator[Table]:
        place = table.home[base.key]
        cloth = turned_over_corner(table.bodies[place], square, a, b, number_)
        bodies = {key: body for key, body in table.bodies.items() if key not in (place, item.key)}
        after = replace(
            table, bodies={**bodies, place: cloth}, home={**table.home, item.key: place}, laid=table.laid | {place}
        )
        yield press(after, {number_: "on"})

    bench.follow(follow, "it cannot be turned over")
    bench.used.add(item.key)
    bench.base = [base.key]


# --- strip sets -----------------------------------------------------------------------------------------


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
        sewn_on(bench, item, base, lambda cloth, place=place: edges_at(cloth, place), [], nest)  # type: ignore[misc]
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


# --- pairs made alike -----------------------------------------------------------------------------------


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
