"""Which way seams are pressed."""

from __future__ import annotations

import re
from collections.abc import Iterator

from tests.outside.reader.bench import Bench, press, press_added, reads
from tests.outside.reader.cloth import EITHER, HAIR, OPEN, dot, pattern_of, unit
from tests.outside.reader.laying import shown
from tests.outside.reader.table import Refused, Seam, Table
from tests.outside.reader.words import PLACE, PLACES, number

WHICH = r"(?P<which>the (?:sewn part|seams?)|both (?:long )?seams|all (?:\w+ )?(?:long )?seams|each seam)"
WHERE = r"(?: of (?P<of>(?:row|column) \d+|the \w+ (?:row|column|pair|part|strip)|the (?:row|column|pair|strip)))?"


@reads(r"Press each seam (?P<way>toward|away from) the piece just added")
def press_each(bench: Bench, found: re.Match[str]) -> None:
    bench.press_each = "on" if found["way"] == "toward" else "base"
    if not all(table.waiting for table in bench.tables):
        raise Refused("there is no seam to press")
    bench.follow(press_added(bench.press_each), "nothing can be pressed so")


@reads(r"Press the seam as before")
def press_as_before(bench: Bench, found: re.Match[str]) -> None:
    """The rest of a partial seam, pressed as its first part was."""
    before = bench.method.get("partial pressed")

    def follow(table: Table) -> Iterator[Table]:
        if before is None or len(table.waiting) != 1:
            raise Refused("no part of a seam was pressed before")
        yield press(table, {table.waiting[0].number: before})

    bench.follow(follow, "nothing can be pressed so")


@reads(r"Press the seam of (?P<a>row \d+) toward (?P<x>.+?) and that of (?P<b>row \d+) toward (?P<y>.+)")
def press_by_row(bench: Bench, found: re.Match[str]) -> None:
    def follow(table: Table) -> Iterator[Table]:
        check_count(bench, table, "the seam")
        for row, what in ((found["a"], found["x"]), (found["b"], found["y"])):
            if row not in bench.title.names:
                raise Refused(f"{row} is not made in this step")
            bench.pressed_by_row[row] = {seam.number: side_of(bench, table, seam, what) for seam in table.waiting}
        yield press(table, {seam.number: EITHER for seam in table.waiting})

    bench.follow(follow, "nothing can be pressed so")


@reads(rf"Press {WHICH}{WHERE} (?P<way>toward|away from) (?P<what>(?!.* and those of ).+)")
def press_toward(bench: Bench, found: re.Match[str]) -> None:
    what = found["what"]

    def follow(table: Table) -> Iterator[Table]:
        seams = meant(bench, table, found["which"], found["of"])
        sides = {}
        for seam in seams:
            side = side_of(bench, table, seam, what)
            sides[seam.number] = side if found["way"] == "toward" else {"on": "base", "base": "on"}[side]
        yield press(table, sides)

    bench.follow(follow, "nothing can be pressed so")


def meant(bench: Bench, table: Table, which: str, of: str | None) -> list[Seam]:
    """The seams that wait and that the words mean.

    Errors: Refused where their number is another.
    """
    seams = list(table.waiting)
    if of:
        marks = bench.marks(of)
        seams = [seam for seam in seams if all(marks & s.on and marks & s.base for s in seam.stretches)]
        if not seams:
            raise Refused(f"no seam of {of} is to be pressed")
        if which == "the seam" and len(seams) != 1:
            raise Refused(f"{of} has {len(seams)} seams")
        return seams
    check_count(bench, table, which)
    return seams


def edges_of(seam: Seam) -> int:
    """How many straight edges a seam has: more than one where it goes on round corners. A curve is one edge."""
    ways: list[complex] = []
    for stretch in seam.stretches:
        along = unit(stretch.b - stretch.a)
        if stretch.curved and ways:
            continue
        if not any(abs(along - way) < HAIR for way in ways):
            ways.append(along)
    return len(ways)


def check_count(bench: Bench, table: Table, which: str) -> None:
    count = sum(edges_of(seam) for seam in table.waiting) * bench.method.get("copies", 1)
    if not count:
        raise Refused("there is no seam to press")
    said = re.search(r"all (\w+) seams", which)
    if said and said[1] != "long" and number(said[1]) != count:
        raise Refused(f"{which}: there are {count}")
    if (which in ("the seam", "the sewn part") and count != 1) or (which.startswith("both") and count != 2):
        raise Refused(f"{which}: there are {count}")
    if which.startswith("all") and count < 3:
        raise Refused(f"{which}: there are {count}")


NUMBERED = r"seams? \d+(?:,? (?:and )?\d+)*"


@reads(
    rf"Press (?P<some>{NUMBERED})(?: of (?P<of>(?:row|column) \d+))? toward (?P<x>.+?)"
    rf" and (?P<others>{NUMBERED}) toward (?P<y>.+)"
)
def press_by_number(bench: Bench, found: re.Match[str]) -> None:
    numbers = bench.seams_of_row.get(found["of"] or "", bench.row_seams)
    wanted: dict[int, str] = {}
    for which, what in (("some", "x"), ("others", "y")):
        for place in map(int, re.findall(r"\d+", found[which])):
            if place > len(numbers) or numbers[place - 1] in wanted:
                raise Refused(f"there is no seam {place}, or it is named twice")
            wanted[numbers[place - 1]] = found[what]
    if len(wanted) != len(numbers):
        raise Refused("not every seam is named")

    def follow(table: Table) -> Iterator[Table]:
        seams = [seam for seam in table.waiting if seam.number in wanted]
        if len(seams) != len(wanted) or (not found["of"] and len(seams) != len(table.waiting)):
            raise Refused("other seams are to be pressed")
        yield press(table, {seam.number: side_of(bench, table, seam, wanted[seam.number]) for seam in seams})

    bench.follow(follow, "nothing can be pressed so")


def side_of(bench: Bench, table: Table, seam: Seam, what: str) -> str:
    """On which side of a seam something lies: what was sewn on, or the base.

    Errors: Refused where it lies on neither or on both.
    """
    if place := re.fullmatch(rf"the ({PLACE})(?: edge)?", what):
        leans = [dot(unit(s.b - s.a) * -1j, PLACES[place[1]]) for s in seam.stretches]
        if not (all(lean > HAIR for lean in leans) or all(lean < -HAIR for lean in leans)):
            raise Refused(f"{what} is on neither side of a seam")
        return "on" if leans[0] > 0 else "base"
    if what in ("the middle", "its middle") and not bench.marks(what):
        return _toward_middle(table, seam)
    # What the hands hold by that name goes before what only lies along the seam.
    on = base = False
    for wanted in (set(bench.marks(what)), {shown(bench, re.sub(r"^(?:the|a|an) ", "", what))}):
        on = any(wanted & stretch.on for stretch in seam.stretches)
        base = any(wanted & stretch.base for stretch in seam.stretches)
        if on or base:
            break
    if on == base and what in ("the middle", "its middle"):
        return _toward_middle(table, seam)
    if on == base:
        raise Refused(f"{what} lies on {'both sides' if on else 'neither side'} of a seam")
    return "on" if on else "base"


def _toward_middle(table: Table, seam: Seam) -> str:
    """The side of a seam on which the middle of the whole row lies."""
    s = seam.stretches[0]
    body = next(cloth for cloth in table.bodies.values() if any(end.seam == seam.number for end in cloth.ends))
    low, high = body.box()
    lean = dot(unit(s.b - s.a) * -1j, (low + high) / 2 - (s.a + s.b) / 2)
    if abs(lean) < HAIR:
        raise Refused("the middle of the row is that seam")
    return "on" if lean > 0 else "base"


@reads(rf"Press {WHICH}{WHERE} (?P<way>open|to either side)")
def press_open(bench: Bench, found: re.Match[str]) -> None:
    def follow(table: Table) -> Iterator[Table]:
        seams = meant(bench, table, found["which"], found["of"])
        if found["way"] == "to either side":
            for cloth in table.bodies.values():
                if pattern_of(cloth.patches()) != pattern_of(cloth.patches(-1)):
                    raise Refused("to either side is said only of what looks the same turned half round")
        side = OPEN if found["way"] == "open" else EITHER
        yield press(table, {seam.number: side for seam in seams})

    bench.follow(follow, "nothing can be pressed so")
