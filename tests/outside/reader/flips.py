"""Squares sewn onto a corner along a line, cut off outside it and pressed over the corner."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace

from tests.outside.reader.bench import Bench, press, reads
from tests.outside.reader.cloth import HAIR, cross, near, unit
from tests.outside.reader.cutting import put_together, rectangle, turned_over_corner
from tests.outside.reader.stock import Kind
from tests.outside.reader.strips import RULER
from tests.outside.reader.table import Item, Refused, Table
from tests.outside.reader.words import PLACE, PLACES

QUARTER_INCH = r"(?:1/4 in|0\.75 cm)"


@reads(
    rf"Place (?P<what>.+?) on (?:its|the) (?P<end>left|right|top|bottom) end(?:, right sides together, edges even)?"
    rf"(?P<way> in the same way, its line from (?P<a>{PLACE}) to (?P<b>{PLACE}))?",
    rf"Place (?P<what>.+?) on the (?P<corner>{PLACE}) corner(?: of (?P<base>.+?))?"
    r"(?:, right sides together, edges even)?"
    rf"(?P<way> in the same way, its line from (?P<a>{PLACE}) to (?P<b>{PLACE}))?",
)
def place_on_end(bench: Bench, found: re.Match[str]) -> None:
    said = found.groupdict()
    item = bench.one(found["what"])
    if said.get("base"):
        bench.base = [bench.one(found["base"], base=True).key]
    if not bench.base:
        raise Refused("its end: of what?")
    begin(bench, item, bench.items[bench.base[0]], said.get("end") or found["corner"])
    if found["way"]:
        line(bench, found["a"], found["b"])


def begin(bench: Bench, item: Item, base: Item, where: str) -> None:
    """A marked square placed on a corner or an end of what lies on the table."""
    if item.key not in bench.method.get("lines", {}):
        raise Refused("no line is drawn on it")
    kind = item.extra
    if not isinstance(kind, Kind):
        raise Refused("a unit is not turned over")
    side = _as_drawn(bench, kind.label, bench.stock.raw_size(kind)[0])
    body = bench.tables[0].body(base.key)
    low, high = body.box()
    square = abs(body.size()[0] - body.size()[1]) < HAIR
    if base.key not in bench.tables[0].laid and not square:
        raise Refused("it is not said how it lies")
    if where in ("left", "right", "top", "bottom") and abs(side - min(body.size())) > HAIR:
        raise Refused("it does not cover that end")
    x = high.real - side if "right" in where else low.real
    y = high.imag - side if "lower" in where or where == "bottom" else low.imag
    bench.method["flip"] = {"item": item, "base": base, "at": complex(x, y), "side": side}


def _as_drawn(bench: Bench, label: str, side: float) -> float:
    """The side of a square without what the ruler rounded it up by, where its letter shows what was meant."""
    points = bench.stock.letters[label].points
    drawn = [abs(a - b) for a, b in zip(points, points[1:] + points[:1], strict=True)]
    return max((each for each in drawn if -HAIR < side - each < RULER), default=side)


@reads(
    r"Flip an? (?P<what>.+?) onto each of the other three corners in the same way, the opposite corner first, its line "
    r"cutting off the corner"
)
def flip_the_rest(bench: Bench, found: re.Match[str]) -> None:
    first = bench.method.get("flipped")
    items = [item for item in bench.named(found["what"]) if item.key not in bench.used]
    if not first or len(items) != 3 or len({item.group for item in items}) != 1:
        raise Refused("there are not three left, or nothing was sewn so before")
    base = bench.items[bench.base[0]]
    across = {"upper left": "lower right", "lower right": "upper left", "upper right": "lower left",
              "lower left": "upper right"}  # fmt: skip
    sides = [name for name in across if name not in (first, across[first])]
    for item, corner in zip(items, [across[first], *sides], strict=True):
        begin(bench, item, base, corner)
        start, stop = [name for name in across if name not in (corner, across[corner])]
        line(bench, start, stop)
        bench.method["flip"]["toward"] = corner
        _flip(bench)


@reads(rf"Turn both so that the line runs from (?P<a>{PLACE}) to (?P<b>{PLACE})(?:; pin)?")
def turn_both(bench: Bench, found: re.Match[str]) -> None:
    """A square on one of its size: the line goes over all of it."""
    stacks = bench.method.pop("stacks", [])
    if len(stacks) != 1 or stacks[0].on.key not in bench.method.get("lines", {}):
        raise Refused("nothing that is marked is placed on another square")
    begin(bench, stacks[0].on, stacks[0].base, "upper left")
    line(bench, found["a"], found["b"])


@reads(r"Make the reversed ones? in the same way, left and right exchanged")
def mirror_images(bench: Bench, found: re.Match[str]) -> None:
    if not bench.title.mirrored or (found[0].startswith("Make the reversed ones ")) != (bench.title.mirrored > 1):
        raise Refused("the title says another number")
    (body,) = bench.tables[0].bodies.values()
    patches = [
        replace(patch, points=tuple(reversed([-point.conjugate() for point in patch.points])))
        for patch in body.patches()
    ]
    ends = [replace(end, at=-end.at.conjugate(), into=-end.into.conjugate(), side=-end.side) for end in body.ends]
    bench.method["sorted"] = (body, put_together(patches, ends))


def line(bench: Bench, start: str, stop: str) -> None:
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
    line(bench, found["a"], found["b"])


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
    bench.method["flipped"] = flip["toward"]
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
