"""Taking, laying, sewing edge to edge, nesting, pressing."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator

from tests.outside.reader.bench import Bench, merged, press, reads
from tests.outside.reader.cloth import (
    EITHER,
    HAIR,
    OPEN,
    Cloth,
    End,
    Misfit,
    Run,
    Stretch,
    cross,
    dot,
    joined,
    near,
    pattern_of,
    quarter,
    runs,
    unit,
)
from tests.outside.reader.landmarks import Test, best, different, edges_at, in_the_middle, lies, turns_of
from tests.outside.reader.stock import Kind
from tests.outside.reader.table import Item, Refused, Seam, Table
from tests.outside.reader.words import LENGTH, PLACE, Unreadable, listed, number, stem

ALONG = ", right sides together"
NEST = r"(?P<nest>, nesting(?: the seams| all seams)?|, matching(?: the seams| all seams)?)?"


# --- taking ---------------------------------------------------------------------------------------------


@reads(r"(?P<each>For each(?P<pair> (?:pair|set)(?: of squares)?)?, take|Take) (?P<list>.+)")
def take(bench: Bench, found: re.Match[str]) -> None:
    per_pair = bool(found["pair"]) and bench.title.each_batch is None
    if found["pair"] and not per_pair:
        times = bench.title.batches
    elif found["each"].startswith("For each"):
        times = bench.title.count
    else:
        times = bench.title.batches if bench.title.each_batch else 1
        if bench.title.count > 1 and not bench.title.source:
            raise Refused("several are made of what is taken for one")
    bench.each_pair = bench.each_pair or int(per_pair)
    text = found["list"]
    cuts = None
    if size := re.search(rf",? ({LENGTH}) × ({LENGTH}) (?:in|cm)$", text):
        text, cuts = text[: size.start()], (size[1], size[2])
    for entry in _rows(listed(text)):
        _take_one(bench, entry, times, cuts)


def _rows(entries: list[str]) -> list[str]:
    """Rows 1, 2, and 3 are row 1, row 2 and row 3; columns likewise."""
    written = []
    kind = ""
    for entry in entries:
        if found := re.fullmatch(r"(rows|columns|parts) (\d+)", entry):
            kind = stem(found[1])
            written.append(f"{kind} {found[2]}")
        elif kind and re.fullmatch(r"\d+", entry):
            written.append(f"{kind} {entry}")
        else:
            written.append(entry)
    return written


def _take_one(bench: Bench, entry: str, times: int, cuts: tuple[str, str] | None) -> None:
    count, kinds = bench.stock.kinds(entry)
    there = [kind for kind in kinds if bench.stock.is_there(kind, 1)] or kinds
    if cuts and not (there := [kind for kind in there if kind.cut == cuts]):
        raise Refused(f"nothing is cut {cuts[0]} × {cuts[1]}")
    if len({(kind.label, kind.fabric, kind.form) for kind in there}) > 1:
        raise Refused(f"{entry!r} may be one thing or another")
    kind = there[0]
    bench.taken.append((kind, count * times, len(bench.taken)))
    group = len(bench.taken)
    for _ in range(count):
        if kind.form in ("unit", "paper"):
            bench.add({kind.label}, bench.stock.cloth(kind), form=kind.form, group=group)
        else:
            names = {kind.label, kind.fabric, f"{kind.label} ({kind.fabric})"}
            form = kind.form
            names |= {f"{name} {word}" for name in (kind.label, kind.fabric) for word in (form, "piece")}
            names |= {stem(f"{name} {word}") for name in (kind.label, kind.fabric) for word in ("triangle", form)}
            names |= {f"{name} {word}" for name in (kind.label, kind.fabric) for word in ("triangle", "square")}
            names |= {f"{kind.label} {form} ({kind.fabric})"}
            if numbered := re.match(r"\d+ ([A-Z]+\d+)\b", entry):
                names |= {numbered[1], f"{numbered[1]} ({kind.fabric})"}
            bench.add(names, bench.stock.cloth(kind), form=form, group=group, extra=kind)


# --- how things lie -------------------------------------------------------------------------------------


def tests_of(bench: Bench, text: str) -> list[Test]:
    """`its point at the top and Tide at the lower left` as tests of a laid piece."""
    text = text.strip()
    tests: list[Test] = []
    pattern = (
        rf"(?:its |a |an |the )?(?P<x>(?:(?! at the | in the middle).)+?)"
        rf"(?: at the (?P<pos>{PLACE}(?:(?:,| and) (?:at the |the )?{PLACE}(?= |,|$))*)"
        rf"| in the middle of (?:its|the) (?P<mid>{PLACE}) edge)(?:(?:,? and |, )(?=\S)|$)"
    )
    at = 0
    while at < len(text):
        found = re.compile(pattern).match(text, at)
        if not found:
            raise Unreadable(f"how it lies: {text!r}")
        shows = _shown(bench, found["x"])
        if found["mid"]:
            tests.append(_middle_test(shows, found["mid"]))
        else:
            tests.extend(_place_test(shows, place) for place in re.findall(PLACE, found["pos"]))
        at = found.end()
    return tests


def _place_test(shows: str, place: str) -> Test:
    return lambda cloth: lies(cloth, shows, place)


def _middle_test(shows: str, place: str) -> Test:
    return lambda cloth: in_the_middle(cloth, shows, place)


def _shown(bench: Bench, what: str) -> str:
    """A fabric, a letter, or a unit by its name."""
    if what in bench.stock.fabrics or re.fullmatch(r"[A-Z][A-Za-z0-9]*(?: \(.+\))?", what):
        return what
    return stem(what)


@reads(r"Lay both(?: (?P<what>.+?))? with (?P<how>.+)", r"Lay (?P<what>each .+?|all .+?) with (?P<how>.+)")
def lay_both(bench: Bench, found: re.Match[str]) -> None:
    tests = tests_of(bench, found["how"])
    items = bench.named(found["what"]) if found["what"] else bench.items[:2] if len(bench.items) == 2 else []
    if not items:
        raise Refused("both of what?")
    if found[0].startswith("Lay both") and len(items) != 2:
        raise Refused("there are not two of them")
    for item in items:
        lay(bench, item, tests)


@reads(r"Lay (?P<what>.+?) with (?P<how>.+)")
def lay_one(bench: Bench, found: re.Match[str]) -> None:
    item = bench.one(found["what"])
    lay(bench, item, tests_of(bench, found["how"]))
    bench.base = [item.key]


@reads(r"Lay (?P<what>.+?) on point")
def lay_on_point(bench: Bench, found: re.Match[str]) -> None:
    item = bench.one(found["what"])
    bench.follow(lambda table: bench.lying(table, item, on_point=True), "it cannot lie on point")
    bench.base = [item.key]


def lay(bench: Bench, item: Item, tests: list[Test]) -> None:
    """Lay a thing so that all that is said of it holds."""

    def follow(table: Table) -> Iterator[Table]:
        place = table.home[item.key]
        body = table.bodies[place]
        level = [body] if place in table.laid else different(body.moved(turn) for turn in turns_of(body))
        fitting = best(level, tests)
        if not fitting and place not in table.laid:
            fitting = best(different(body.moved(turn) for turn in turns_of(body, on_point=True)), tests)
        for cloth in fitting:
            yield table.with_body(place, cloth)

    bench.follow(follow, f"it cannot lie so: {sorted(item.names)}")
    if len(bench.tables) > 1 and len({table.key() for table in bench.tables}) > 1:
        bench.method["open"] = f"{sorted(item.names)} may lie in two ways"


@reads(
    r"(?P<what>(?:Row|Column|Part) \d+) is (?P<like>(?:row|column|part) \d+) rotated a (?P<turn>half|quarter) turn"
    r"(?: (?P<way>clockwise|counterclockwise))?"
)
def rotated(bench: Bench, found: re.Match[str]) -> None:
    item, like = bench.one(found["what"].lower()), bench.one(found["like"])

    def follow(table: Table) -> Iterator[Table]:
        if table.home[like.key] not in table.laid:
            raise Refused("it is not said yet how the first one lies")
        turns = 2 if found["turn"] == "half" else 3 if found["way"] == "counterclockwise" else 1
        wanted = pattern_of(table.body(like.key).patches(quarter(turns)))
        place = table.home[item.key]
        for turn in turns_of(table.bodies[place]):
            cloth = table.bodies[place].moved(turn)
            if pattern_of(cloth.patches()) == wanted:
                yield table.with_body(place, cloth)
                return

    bench.follow(follow, f"{found['what']} is not like {found['like']}")


# --- sewing edge to edge --------------------------------------------------------------------------------


def fitted(on: Cloth, run: Run, edge: Run, *, laid: bool) -> Cloth | None:
    """A piece laid with one of its runs against an edge, both ends even; None where it does not fit."""
    if abs(run.length - edge.length) > HAIR or run.length < HAIR:
        return None
    turn = -unit(edge.b - edge.a) / unit(run.b - run.a)
    if laid and not near(turn, 1):
        return None
    turn /= abs(turn)
    return on.moved(turn, edge.b - run.a * turn)


def sewn_on(
    bench: Bench,
    item: Item,
    base: Item,
    choose: Callable[[Cloth], list[Run]],
    tests: list[Test],
    nest: str | None,
    which: Callable[[Cloth], list[Run]] = runs,
) -> None:
    """Sew a thing to an edge of another, in every way that the words leave open."""
    number_ = bench.next_seam()

    def check(on: Cloth, ground: Cloth, stretches: list[Stretch]) -> None:
        check_nest(on, ground, stretches, nest)

    def follow(table: Table) -> Iterator[Table]:
        if table.home[item.key] == table.home[base.key]:
            raise Refused("it is sewn on already")
        problems: list[str] = []
        for lying in bench.lying(table, base):
            on_place, base_place = lying.home[item.key], lying.home[base.key]
            on, ground = lying.bodies[on_place], lying.bodies[base_place]
            laid = on_place in lying.laid
            for edge in choose(ground):
                ways = [fitted(on, run, edge, laid=laid) for run in which(on)]
                fitting = best(different(way for way in ways if way), tests)
                for whole, stretches in tried(fitting, ground, number_, edge, check, problems):
                    yield merged(lying, on_place, base_place, whole, Seam(number_, tuple(stretches)))
        if problems:
            raise Refused(problems[0])

    bench.follow(raising_late(follow), f"{sorted(item.names)} does not fit there")
    bench.used.add(item.key)


Check = Callable[[Cloth, Cloth, list[Stretch]], None]
"""Raises Refused where a joint is not as the words say."""


def tried(
    ways: Iterable[Cloth], ground: Cloth, seam: int, along: Run | None, check: Check, problems: list[str]
) -> Iterator[tuple[Cloth, list[Stretch]]]:
    """Each way in which something can be sewn on, with the joint; what is wrong with the others goes to `problems`."""
    for cloth in ways:
        try:
            whole, stretches = joined(cloth, ground, seam, along)
            check(cloth, ground, stretches)
        except (Misfit, Refused) as fault:
            problems.append(str(fault))
            continue
        yield whole, stretches


def raising_late(follow: Callable[[Table], Iterator[Table]]) -> Callable[[Table], list[Table]]:
    """What went wrong in one way is told only where no way is left."""

    def all_ways(table: Table) -> list[Table]:
        found = []
        ways = follow(table)
        while True:
            try:
                found.append(next(ways))
            except StopIteration:
                return found
            except Refused:
                if found:
                    return found
                raise

    return all_ways


def crossings(on: Cloth, base: Cloth, stretches: list[Stretch]) -> list[bool]:
    """At each place inside a joint where straight seams of both meet: whether their allowances lie opposite."""
    along = unit(stretches[0].b - stretches[0].a)
    found: list[bool] = []
    for mine, theirs in meetings(on, base, stretches):
        straight = [(p, q) for p in mine for q in theirs if near(p.into, -q.into)]
        upright = [(p, q) for p, q in straight if abs(dot(p.into, along)) < HAIR]
        if straight:
            # Where a seam crosses squarely the slanted ones beside it are not held to anything.
            found.extend(p.lies * q.lies > 0 for p, q in upright or straight)
        else:
            sides = [(p, q) for p in mine for q in theirs]
            found.extend(p.lies * q.lies * dot(1j * p.into, along) * dot(1j * q.into, along) < -HAIR for p, q in sides)
    return found


def meetings(on: Cloth, base: Cloth, stretches: list[Stretch]) -> list[tuple[list[End], list[End]]]:
    inner: list[complex] = []
    for end in on.ends:
        if not any(near(end.at, at) for at in inner) and _is_inside(end.at, stretches):
            inner.append(end.at)
    found = []
    for at in inner:
        mine = [end for end in on.ends if near(end.at, at)]
        theirs = [end for end in base.ends if near(end.at, at)]
        if mine and theirs:
            found.append((mine, theirs))
    return found


def _is_inside(point: complex, stretches: list[Stretch]) -> bool:
    """Whether a point lies in a joint, not at either end of it."""
    on = any(
        abs(cross(unit(s.b - s.a), point - s.a)) < HAIR
        and -HAIR < dot(unit(s.b - s.a), point - s.a) < abs(s.b - s.a) + HAIR
        for s in stretches
    )
    touching = sum(near(point, end) for s in stretches for end in (s.a, s.b))
    return on and touching != 1


def check_nest(on: Cloth, base: Cloth, stretches: list[Stretch], nest: str | None) -> None:
    """`Nesting` must nest at every crossing; where seams meet and it is not said, or nothing meets and it is, is wrong.

    Errors: Refused.
    """
    meet = crossings(on, base, stretches)
    if nest == "nest" and not meet:
        raise Refused("nothing is there to nest")
    if nest == "nest" and not all(meet):
        raise Refused(f"{meet.count(False)} of {len(meet)} crossings do not nest")
    if nest == "match" and not meet:
        raise Refused("no seams meet that could be matched")
    if nest is None and meet:
        raise Refused(f"seams meet at {len(meet)} places, and neither nesting nor matching is said")


def nesting(said: str | None) -> str | None:
    return None if not said else "nest" if "nest" in said else "match"


@reads(
    rf"Sew (?P<what>[^;]+?) to (?P<whose>its|the) (?P<pos>{PLACE}) edge(?: of (?P<base>.+?))?(?P<way> in the same way)?"
    rf"(?:, right sides together)?(?:, with (?P<how>.+?))?(?:, starting at the opposite end)?{NEST}"
)
def sew_to_edge(bench: Bench, found: re.Match[str]) -> None:
    if bool(found["base"]) == (found["whose"] == "its"):
        raise Unreadable("whose edge?")
    item = bench.one(found["what"])
    how = tests_of(bench, found["how"]) if found["how"] else []
    nest = nesting(found["nest"])
    if found["way"]:
        nest = bench.last.get("nest") if not found["nest"] else nest
    if found["base"]:
        parts = listed(found["base"])
        owners = [bench.one(part) for part in parts]
        bench.method["shown"] = [
            _shown(bench, part) if bench.brought(owner) else owner.mark
            for part, owner in zip(parts, owners, strict=True)
        ]
    else:
        if not bench.base:
            raise Refused("its edge: of what?")
        owners = [bench.items[key] for key in bench.base]
    place = found["pos"]
    sew_at(bench, item, owners, place, how, nest)
    bench.base = [owner.key for owner in owners]
    bench.last = {"nest": nest, "how": found["how"]}


def sew_at(bench: Bench, item: Item, owners: list[Item], place: str, how: list[Test], nest: str | None) -> None:
    wanted = bench.method.pop("shown", [])

    def choose(cloth: Cloth) -> list[Run]:
        found = edges_at(cloth, place)
        if len(owners) > 1:
            found = [run for run in found if all(tag in run.tags for tag in wanted)]
        return found

    sewn_on(bench, item, owners[0], choose, how, nest)


# --- pressing -------------------------------------------------------------------------------------------


@reads(
    r"Press (?P<which>the (?:sewn part|seams?)|both (?:long )?seams|all (?:\w+ )?(?:long )?seams|each seam)"
    r" (?P<way>toward|away from) (?P<what>.+)"
)
def press_toward(bench: Bench, found: re.Match[str]) -> None:
    what = found["what"]

    def follow(table: Table) -> Iterator[Table]:
        check_count(bench, table, found["which"])
        sides = {}
        for seam in table.waiting:
            side = side_of(bench, table, seam, what)
            sides[seam.number] = side if found["way"] == "toward" else {"on": "base", "base": "on"}[side]
        yield press(table, sides)

    bench.follow(follow, "nothing can be pressed so")


def check_count(bench: Bench, table: Table, which: str) -> None:
    count = len(table.waiting) * bench.method.get("copies", 1)
    if not count:
        raise Refused("there is no seam to press")
    said = re.search(r"all (\w+) seams", which)
    if said and said[1] != "long" and number(said[1]) != count:
        raise Refused(f"{which}: there are {count}")
    if (which in ("the seam", "the sewn part") and count != 1) or (which.startswith("both") and count != 2):
        raise Refused(f"{which}: there are {count}")
    if which.startswith("all") and count < 3:
        raise Refused(f"{which}: there are {count}")


def side_of(bench: Bench, table: Table, seam: Seam, what: str) -> str:
    """On which side of a seam something lies: what was sewn on, or the base.

    Errors: Refused where it lies on neither or on both.
    """
    if re.fullmatch(rf"the {PLACE}(?: edge)?", what):
        raise Unreadable(what)
    wanted = {item.mark for item in named_or_none(bench, what) if not bench.brought(item)}
    if not what.startswith("the ") or not wanted:
        wanted.add(_shown(bench, re.sub(r"^(?:the|a|an) ", "", what)))
    on = any(wanted & stretch.on for stretch in seam.stretches)
    base = any(wanted & stretch.base for stretch in seam.stretches)
    if on == base:
        raise Refused(f"{what} lies on {'both sides' if on else 'neither side'} of a seam")
    return "on" if on else "base"


def named_or_none(bench: Bench, what: str) -> list[Item]:
    try:
        return bench.named(what)
    except Refused:
        return []


@reads(r"Press (?P<which>the seam|both seams|all (?:\w+ )?seams|the seams) (?P<way>open|to either side)")
def press_open(bench: Bench, found: re.Match[str]) -> None:
    def follow(table: Table) -> Iterator[Table]:
        check_count(bench, table, found["which"])
        if found["way"] == "to either side":
            for cloth in table.bodies.values():
                if pattern_of(cloth.patches()) != pattern_of(cloth.patches(-1)):
                    raise Refused("to either side is said only of what looks the same turned half round")
        side = OPEN if found["way"] == "open" else EITHER
        yield press(table, {seam.number: side for seam in table.waiting})

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


# --- said, and nothing to be done -----------------------------------------------------------------------


@reads(
    r"Trim the dog-ears",
    r"Match the slanted seams (?:1/4 in|0\.75 cm) below the \w+ edge",
    r"They are mirror images of the first \w+; keep the two kinds apart",
    r"Crease the middle of each .+",
    r"If it is larger, lay the 45° line of the ruler on the seam and trim all four edges",
    r"Leave the paper in",
    r"Remove the papers?(?: from the seam allowance)?",
)
def no_more(bench: Bench, found: re.Match[str]) -> None:
    """Care that changes nothing of what lies where."""


__all__ = ["Kind", "fitted", "lay", "sew_at", "sewn_on"]
