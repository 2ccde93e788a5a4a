"""Squares sewn together in pairs, on both sides of a line, and cut apart: two, four and eight at a time."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace

from tests.outside.reader.bench import Bench, press, reads
from tests.outside.reader.cloth import HAIR, Cloth, Patch, Stretch, cross, pattern_of, quarter
from tests.outside.reader.cutting import mirrored, rectangle, sewn_beside_line_and_cut
from tests.outside.reader.geese import cut_geese
from tests.outside.reader.landmarks import best, different, turns_of
from tests.outside.reader.laying import tests_of
from tests.outside.reader.pressing import side_of
from tests.outside.reader.stock import Kind, value
from tests.outside.reader.table import Item, Refused, Seam, Table, ways
from tests.outside.reader.words import LENGTH, length, stem

QUARTER_INCH = r"(?:1/4 in|0\.75 cm)"
HALF = "half-square triangle"


@dataclass(slots=True)
class Stack:
    """One thing placed on another, as often as a batch has it."""

    on: Item
    base: Item
    over: tuple[str, str] | None = None
    """What of it must lie on what."""
    times: int = 1
    sewn: bool = False


def is_raw(item: Item) -> bool:
    return isinstance(item.extra, Kind) and item.form in ("square", "rectangle", "strip")


# --- marking --------------------------------------------------------------------------------------------


@reads(
    r"On the wrong side of (?P<what>.+?), draw (?P<two>a line|both lines|both diagonals) from corner to corner"
    r"(?P<across>, across the seam)?"
)
def mark(bench: Bench, found: re.Match[str]) -> None:
    parts = re.split(r" and of ", found["what"])
    if found["across"]:
        halves = _halves_named(bench, re.sub(r"^(?:one|each) ", "", found["what"]))
        if re.match(r"one ", found["what"]) and len(bench.method["stage two"]) != 1:
            raise Refused("one of which?")
        bench.method["marked halves"] = halves
        return
    lines = bench.method.setdefault("lines", {})
    for part in parts:
        items = bench.named(part)
        if not items or not all(item.form == "square" for item in items):
            raise Refused("a line from corner to corner is drawn on squares")
        if not part.startswith("each ") and len({item.group for item in items}) > 1:
            raise Refused("more than one square may be meant")
        for item in items:
            lines[item.key] = 1 if found["two"] == "a line" else 2
        bench.base = [items[0].key]


# --- placing --------------------------------------------------------------------------------------------


def put_squares(bench: Bench, on: Item, base: Item) -> None:
    """A marked square on one that is not: to be sewn on both sides of the line."""
    lines = bench.method.get("lines", {})
    if on.key in lines and base.key in lines:
        raise Refused("both squares are marked")
    bench.method.setdefault("stacks", []).append(Stack(on, base))
    bench.base = [on.key]


@reads(
    r"Place (?P<a>the .+? square) on (?P<b>the .+? square) and (?P<c>the .+? square) on (?P<d>the .+? square), "
    r"right sides together, edges even, and pin"
)
def place_two_pairs(bench: Bench, found: re.Match[str]) -> None:
    for on, base in (("a", "b"), ("c", "d")):
        put_squares(bench, bench.one(found[on]), bench.one(found[base]))


@reads(
    r"Place (?P<what>it|each) on (?P<base>the other|one of .+?|an? .+?), right sides together, edges even"
    r"(?:, (?P<x>[^,]+?) on (?P<y>[^,]+?))?(?:, and pin)?"
)
def place_halves(bench: Bench, found: re.Match[str]) -> None:
    marked = bench.method.get("marked halves")
    if marked is None:
        raise Refused("no line is drawn across a seam")
    halves = bench.method["stage two"]
    on = halves[marked]
    if found["base"] == "the other":
        if len(halves) != 1 or found["what"] != "it":
            raise Refused("the other of what?")
        base, times = on, 1
    elif found["base"].startswith("one of "):
        base, times = halves[_halves_named(bench, f"{HALF} of {found['base'].removeprefix('one of ')}")], 2
        if base is on:
            raise Refused("one on its like")
    else:
        plain = [item for item in bench.named(found["base"]) if item.form == "square" and item.key not in bench.used]
        if len(plain) != 2:
            raise Refused("there is not one for each")
        bench.used |= {item.key for item in plain}
        base, times = plain[0], 2
        bench.method["under"] = plain
    over = (found["x"], found["y"]) if found["x"] else None
    bench.method["crossing"] = Stack(on, base, over, times)


def _halves_named(bench: Bench, name: str) -> int:
    """Which of the half-square triangles made in this step a name means."""
    halves: list[Item] = bench.method.get("stage two", [])
    if not halves:
        raise Refused("there are no half-square triangles yet")
    fits = [place for place, item in enumerate(halves) if stem(name) in item.names]
    if len(fits) != 1:
        raise Refused(f"{name!r} may be one or another")
    return fits[0]


# --- sewing and cutting ---------------------------------------------------------------------------------


@reads(rf"Sew {QUARTER_INCH} from (?P<which>the line on both sides of it|each line on both sides of it)")
@reads(rf"Sew {QUARTER_INCH} in from (?P<which>the line on both sides of it)")
def sew_both_sides(bench: Bench, found: re.Match[str]) -> None:
    if "crossing" in bench.method:
        bench.method["crossing"].sewn = True
        return
    if "geese" in bench.method:
        bench.method["geese sewn"] = True
        return
    stacks: list[Stack] = [stack for stack in bench.method.get("stacks", []) if not stack.sewn]
    lines = bench.method.get("lines", {})
    if not stacks or any(stack.on.key not in lines for stack in stacks):
        raise Refused("no line is drawn on what lies on top")
    several = len(stacks) > 1 or lines[stacks[0].on.key] > 1
    if several != found["which"].startswith("each"):
        raise Refused("more than one line, or only one")
    for stack in stacks:
        stack.sewn = True


@reads(rf"Cut in half both ways through the middle, (?P<d>{LENGTH}) (?:in|cm) from the edges")
def cut_quarters(bench: Bench, found: re.Match[str]) -> None:
    stacks = bench.method.get("stacks", [])
    if len(stacks) != 1 or not stacks[0].sewn or bench.method["lines"][stacks[0].on.key] != 2:
        raise Refused("quarters are cut of a pair with two lines")
    if abs(float(length(found["d"])) - value(stacks[0].on.extra.cut[0]) / 2) > HAIR:
        raise Refused("that is not the middle")
    bench.method["quarters"] = True


@reads(r"Cut on the (?P<which>lines?)")
def cut_on_line(bench: Bench, found: re.Match[str]) -> None:
    if "crossing" in bench.method:
        _cut_crossing(bench)
    elif "geese" in bench.method:
        cut_geese(bench)
    else:
        _cut_stacks(bench, found["which"])


def side_of_result(bench: Bench, letter_points: tuple[complex, ...]) -> float:
    """How large what comes of squares is: of the letter's lengths the one that the title names."""
    if not bench.title.finished:
        raise Refused("the title says no size")
    lengths = [abs(a - b) for a, b in zip(letter_points, letter_points[1:] + letter_points[:1], strict=True)]
    largest = max(bench.title.finished)
    return min(lengths, key=lambda side: abs(side - largest))


def _cut_stacks(bench: Bench, which: str) -> None:
    """Each pair of squares becomes half-square triangles, all alike."""
    stacks: list[Stack] = bench.method.get("stacks", [])
    if not stacks or not all(stack.sewn for stack in stacks):
        raise Refused("it is not sewn yet")
    two_lines = bench.method["lines"][stacks[0].on.key] == 2
    if (which == "lines") != (len(stacks) > 1 or two_lines):
        raise Refused("more than one line, or only one")
    if two_lines and not bench.method.get("quarters"):
        raise Refused("it is not cut in quarters")
    bench.method.pop("stacks")
    bench.method["copies"] = 8 if two_lines else 2
    made = []
    for stack in stacks:
        on, base = stack.on.extra, stack.base.extra
        assert isinstance(on, Kind)
        assert isinstance(base, Kind)
        side = side_of_result(bench, bench.stock.letters[on.label].points)
        top, bottom = (rectangle(kind.label, kind.fabric, side, side) for kind in (on, base))
        seam = bench.next_seam()
        half = sewn_beside_line_and_cut(bottom, top.patches(), 0, complex(side, side), seam)[0]
        _replace_all(bench, half, [stack.on, stack.base], seam, _stretch([stack.on], stack.base))
        pair = {f"{HALF} of {stem(f)} and {stem(g)}" for f, g in (_both(on, base), _both(base, on))}
        made.append(replace(stack.base, names=frozenset({HALF, *pair}), form="unit"))
    bench.method["stage two"] = made


def _both(one: Kind, other: Kind) -> tuple[str, str]:
    return one.fabric, other.fabric


def _stretch(on: Iterable[Item], base: Item) -> Stretch:
    """A seam of which only what lies on both sides is of matter."""
    laid_on = frozenset().union(*(item.names | {item.mark} for item in on))
    return Stretch(0, 1, laid_on, frozenset(base.names | {base.mark}))


def _replace_all(bench: Bench, cloth: Cloth, items: list[Item], seam: int, stretch: Stretch) -> None:
    """Pieces become one body, in the place of the last of them."""
    keys, place = {item.key for item in items}, items[-1].key

    def follow(table: Table) -> Iterator[Table]:
        homes = {table.home[key] for key in keys}
        bodies = {key: body for key, body in table.bodies.items() if key not in homes}
        home = {**table.home, **dict.fromkeys(keys, place)}
        waiting = (*table.waiting, Seam(seam, (stretch,)))
        yield replace(table, bodies={**bodies, place: cloth}, home=home, waiting=waiting)

    bench.follow(follow, "it cannot be cut")


# --- across the seam ------------------------------------------------------------------------------------


def _cut_crossing(bench: Bench) -> None:
    """A half-square triangle on another, or on a square, cut across its seam: two units, maybe in two kinds."""
    stack: Stack = bench.method.pop("crossing")
    if not stack.sewn:
        raise Refused("it is not sewn yet")
    table = bench.tables[0]
    if table.waiting:
        raise Refused("the seams are not pressed yet")
    on = table.body(stack.on.key)
    side = max(on.size())
    a, b = complex(0, side), complex(side, 0)
    if is_raw(stack.base):
        kind = stack.base.extra
        assert isinstance(kind, Kind)
        ground = rectangle(kind.label, kind.fabric, side, side)
    else:
        ground = _with_seam(table.body(stack.base.key), 0, complex(side, side))
    tops = _laid_on(on, ground, stack, side)
    _check_crossing_nest(bench, stack)
    seam = bench.next_seam()
    pieces = sewn_beside_line_and_cut(ground, tops, a, b, seam)
    stretch = Stretch(0, 1, frozenset(p.fabric for p in tops) | {p.label for p in tops},
                      frozenset(p.fabric for p in ground.patches()) | {p.label for p in ground.patches()})  # fmt: skip
    halves = list(ways(pieces))
    waiting = (Seam(seam, (stretch,)),)
    bench.items = [Item(place, frozenset({"unit", bench.title.names[0]})) for place in range(len(halves))]
    bodies = dict(enumerate(halves))
    bench.tables = [Table(bodies, {place: place for place in bodies}, frozenset(), waiting)]
    bench.method["copies"] = 2 * stack.times
    bench.method["kinds"] = len(halves)


def _with_seam(half: Cloth, a: complex, b: complex) -> Cloth:
    """A half-square triangle turned so that its seam runs along a line from a to b."""
    for turns in range(4):
        cloth = half.moved(quarter(turns))
        cloth = cloth.moved(1, -cloth.box()[0])
        sides = [
            {(cross(b - a, p - a) > HAIR) - (cross(b - a, p - a) < -HAIR) for p in patch.points} - {0}
            for patch in cloth.patches()
        ]
        if all(len(side) == 1 for side in sides):
            return cloth
    raise Refused("that is no half-square triangle")


def _laid_on(on: Cloth, ground: Cloth, stack: Stack, side: float) -> list[Patch]:
    """What lies on top, as it is seen when it lies face down: with its seam on the seam, or where there is none."""
    end = complex(side, side)
    lying = []
    for turns in (0, 2):
        cloth = _with_seam(on, 0, end).moved(quarter(turns))
        cloth = cloth.moved(1, -cloth.box()[0])
        flat = [replace(p, points=tuple(reversed(mirrored(p.points, 0, end)))) for p in cloth.patches()]
        # Face down and turned so that the seam lies on the seam again: each half keeps its place or they change.
        lying.append(flat)
    if not stack.over:
        if not is_raw(stack.base):
            raise Refused("it is not said what lies on what")
        return lying[0]
    x, y = stack.over
    fits = [flat for flat in lying if _lies_over(flat, list(ground.patches()), x, y, end)]
    if len(fits) != 1:
        raise Refused(f"{x} cannot lie on {y}")
    return fits[0]


def _lies_over(tops: list[Patch], ground: list[Patch], x: str, y: str, end: complex) -> bool:
    def place(patch: Patch) -> bool:
        return sum(cross(end, p) for p in patch.points) > 0

    return any({x} & {t.fabric, t.label} and {y} & {g.fabric, g.label} and place(t) == place(g)
               for t in tops for g in ground)  # fmt: skip


def _check_crossing_nest(bench: Bench, stack: Stack) -> None:
    """Seams that lie on each other are nested where they are pressed to a side, matched where they are open."""
    said = bench.method.pop("nest", None)
    two = not is_raw(stack.base)
    if (said is not None) != two:
        raise Refused("seams are nested or matched where two lie on each other, and only there")
    pressed = all(end.pressed in ("on", "base") for end in bench.tables[0].body(stack.on.key).ends)
    if two and (said == "nest") != pressed:
        raise Refused("what is pressed open is matched; what is pressed to a side nests")


# --- after cutting --------------------------------------------------------------------------------------


@reads(r"Press the seams of the first pair toward (?P<x>.+?) and those of the second toward (?P<y>.+)")
def press_two_pairs(bench: Bench, found: re.Match[str]) -> None:
    def follow(table: Table) -> Iterator[Table]:
        if len(table.waiting) != 2:
            raise Refused("there are not two pairs")
        sides = {
            seam.number: side_of(bench, table, seam, found[what])
            for seam, what in zip(table.waiting, "xy", strict=True)
        }
        yield press(table, sides)

    bench.follow(follow, "nothing can be pressed so")


@reads(r"Lay each with (?P<how>.+)")
def lay_each(bench: Bench, found: re.Match[str]) -> None:
    tests = tests_of(bench, found["how"])
    if "kinds" not in bench.method:
        raise Refused("each of what?")

    def follow(table: Table) -> Iterator[Table]:
        bodies = {}
        for place, body in table.bodies.items():
            lying = best(different(body.moved(turn) for turn in turns_of(body)), tests)
            if len(lying) != 1:
                raise Refused("that leaves it to lie in two ways, or in none")
            bodies[place] = lying[0]
        yield replace(table, bodies=bodies, laid=frozenset(bodies))

    bench.follow(follow, "they cannot lie so")


@reads(
    r"(?P<keep>Keep those|Half have) (?:with )?(?P<how>.+?); the others(?:, with (?P<other>.+?),)? are "
    r"(?P<rest>reversed, and spare|reversed)"
)
def sort_kinds(bench: Bench, found: re.Match[str]) -> None:
    tests = tests_of(bench, found["how"])
    table = bench.tables[0]
    if len(table.bodies) != 2:
        raise Refused("they are all alike")
    first = [place for place, body in table.bodies.items() if best([body], tests)]
    if len(first) == 2:
        marks = {place: min(test(body) for test in tests) for place, body in table.bodies.items()}
        first = [place for place in first if marks[place] == max(marks.values())]
    if len(first) != 1:
        raise Refused("that is true of both kinds, or of neither")
    (other,) = set(table.bodies) - set(first)
    if found["other"] and not best([table.bodies[other]], tests_of(bench, found["other"])):
        raise Refused("that is not true of the others")
    if pattern_of(table.bodies[first[0]].patches()) == pattern_of(table.bodies[other].patches()):
        raise Refused("they are all alike")
    keeps_both = found["keep"] == "Half have"
    if keeps_both != bool(bench.title.mirrored):
        raise Refused("the title says another thing")
    bench.method["sorted"] = (table.bodies[first[0]], table.bodies[other] if keeps_both else None)


@reads(r"Keep the two kinds apart")
def keep_apart(bench: Bench, found: re.Match[str]) -> None:
    if "sorted" not in bench.method:
        raise Refused("which two kinds?")
