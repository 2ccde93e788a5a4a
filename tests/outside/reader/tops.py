"""Reading the steps of a quilt's top: rows and columns, sashing, borders; by lengths and places."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from typing import Any

from tests.outside.reader.cloth import HAIR, Cloth, near, pattern_of
from tests.outside.reader.landmarks import Test, best, in_the_middle, lies
from tests.outside.reader.reading import Fault
from tests.outside.reader.sentences import SIZE, Step, Title, sentences_of, title_of
from tests.outside.reader.topstock import Part, TopStock
from tests.outside.reader.words import LENGTH, PLACE, Refused, Unreadable, length, number, stem

Handler = Callable[["Table", "re.Match[str]"], None]
SENTENCES: list[tuple[re.Pattern[str], Handler, bool]] = []


def reads(*patterns: str, diagonal: bool = False) -> Callable[[Handler], Handler]:
    """A sentence of one of these patterns is followed so; some in diagonal rows alone, before all others."""

    def keep(handler: Handler) -> Handler:
        SENTENCES.extend((re.compile(pattern), handler, diagonal) for pattern in patterns)
        SENTENCES.sort(key=lambda each: not each[2])
        return handler

    return keep


@dataclass(frozen=True, slots=True)
class Lying:
    """A part where it lies: its middle, how it is turned, its corners."""

    part: Part
    at: complex
    turn: complex
    points: tuple[complex, ...]

    def moved(self, shift: complex) -> Lying:
        return replace(self, at=self.at + shift, points=tuple(p + shift for p in self.points))


@dataclass(frozen=True, slots=True)
class Piece:
    """Parts sewn together, from the origin to the right and downward, with seams across it: where, and how pressed."""

    lying: tuple[Lying, ...]
    size: tuple[float, float]
    seams: tuple[tuple[float, str], ...] = ()


@dataclass
class Table:
    """A step of the top being sewn."""

    title: Title
    stock: TopStock
    made: dict[str, list[Piece]]
    lays: dict[int, dict[str, list[Test]]]
    number: int
    taken: list[tuple[Part, int]] = field(default_factory=list)
    rows: list[tuple[str, Piece]] = field(default_factory=list)
    strips: list[Piece] = field(default_factory=list)
    order: list[tuple[Part, list[Test]]] = field(default_factory=list)
    way: str = ""
    result: Piece | None = None
    pressed: dict[str, str] = field(default_factory=dict)
    trimmed: list[list[Part]] = field(default_factory=list)
    """Strips of a border that were trimmed to a length, two and two."""
    nested: bool = False
    measured: bool = False
    base: str = ""
    corner: Part | None = None
    ends: dict[int, tuple[int, int]] = field(default_factory=dict)
    """By how many blocks each diagonal row begins and ends after the first one, to the right."""
    turns: dict[tuple[str, int, str], complex] = field(default_factory=dict)
    """How the units of a pieced border lie with their tops up."""
    pieced: dict[str, tuple[Part, complex, int]] = field(default_factory=dict)
    """For each edge of a pieced border its unit, how it lies, and how many."""
    mitred: tuple[str, float, list[float]] | None = None

    @property
    def is_diagonal(self) -> bool:
        """Whether a row on point is sewn, or such rows are joined."""
        on_point = any({"side triangle", "corner triangle"} & part.names for part in self.stock.parts)
        return on_point and self.title.names[0].startswith(("diagonal row", "quilt center"))

    @property
    def names(self) -> tuple[str, ...]:
        """What the step makes: row 3 of a diagonal row 3."""
        if not self.title.names[0].startswith("diagonal row"):
            return self.title.names
        return tuple(f"row {n}" for n in re.findall(r"\d+", " ".join(self.title.names)))

    @property
    def across(self) -> float:
        """How high a row is, how wide a column."""
        assert self.title.finished
        return self.title.finished[1 if self.way == "right" else 0]


# --- taking and laying ----------------------------------------------------------------------------------


@reads(r"(?P<each>For each, take|Take) (?!\d+ strips \()(?P<list>.+)")
def take(table: Table, found: re.Match[str]) -> None:
    begins = r"(?=\d|the |rows? |columns? )"
    for entry in re.split(rf"(?:,? and |, ){begins}", found["list"]):
        if rows := re.fullmatch(r"(rows|columns) (\d+(?:(?:, and |, | and )\d+)*)", entry):
            kind = stem(rows[1])
            table.rows += [(f"{kind} {n}", made(table, f"{kind} {n}")) for n in re.findall(r"\d+", rows[2])]
            continue
        if re.fullmatch(r"\d+", entry) and table.rows:
            kind = table.rows[-1][0].split()[0]
            table.rows.append((f"{kind} {entry}", made(table, f"{kind} {entry}")))
            continue
        how_many = re.fullmatch(r"(?P<n>\d+|the) (?P<name>.+)", entry)
        if not how_many:
            raise Unreadable(f"to take: {entry!r}")
        count = 1 if how_many["n"] == "the" else int(how_many["n"])
        name = stem(how_many["name"])
        if table.made.get(name):
            table.strips += [made(table, name) for _ in range(count)]
            continue
        times = table.title.count if found["each"].startswith("For each") else 1
        if times == 1 and table.title.count > 1:
            raise Refused("several are made of what is taken for one")
        part = one(table.stock.find(how_many["name"]))
        table.stock.take(part, count * times)
        table.taken.append((part, count))


def made(table: Table, name: str) -> Piece:
    left = table.made.get(name)
    if not left:
        raise Refused(f"there is no {name}")
    return left.pop()


def one(parts: list[Part]) -> Part:
    if len(parts) != 1:
        raise Refused(f"it may be one thing or another: {[sorted(part.names) for part in parts]}")
    return parts[0]


@reads(r"Lay (?:each|the) (?P<what>.+?) with (?P<how>(?:(?!: its top ).)+)")
def lay(table: Table, found: re.Match[str]) -> None:
    table.lays.setdefault(table.number, {})[stem(found["what"])] = tests_of(table, found["how"])


@reads(r"Lay (?:each|the) (?P<what>.+?) as in step (?P<n>\d+)")
def lay_as(table: Table, found: re.Match[str]) -> None:
    before = table.lays.get(int(found["n"]), {}).get(stem(found["what"]))
    if before is None:
        raise Refused("that step does not say how it lies")
    table.lays.setdefault(table.number, {})[stem(found["what"])] = before


SIDES = {"above": -1j, "below": 1j, "to the left of": -1, "to the right of": 1}
HOW = re.compile(
    rf"(?P<x>[^,]+?) (?:at the (?P<pos>{PLACE}(?: and {PLACE})*)|in the middle of its (?P<mid>{PLACE}) edge"
    r"|(?P<side>above and below|to the left of and to the right of|above|below|to the (?:left|right) of) its center)"
    r"(?: and |, |$)"
)


def tests_of(table: Table, text: str) -> list[Test]:
    tests: list[Test] = []
    at = 0
    while at < len(text):
        found = HOW.match(text, at)
        if not found:
            raise Unreadable(f"how it lies: {text!r}")
        x = found["x"]
        if x not in table.stock.fabrics:
            raise Unreadable(f"what shows: {x!r}")
        tests += [_at(x, place) for place in re.findall(PLACE, found["pos"] or "")]
        tests += [_middle(x, place) for place in re.findall(PLACE, found["mid"] or "")]
        sides = (found["side"] or "").split(" and ")
        tests += [_center(x, SIDES[side]) for side in sides if side]
        at = found.end()
    return tests


def _at(x: str, place: str) -> Test:
    return lambda cloth: lies(cloth, x, place)


def _middle(x: str, place: str) -> Test:
    return lambda cloth: in_the_middle(cloth, x, place)


def _center(x: str, way: complex) -> Test:
    """A fabric that touches the center on a side of it."""

    def test(cloth: Cloth) -> int:
        low, high = cloth.box()
        probe = (low + high) / 2 + way * abs(high - low) / 100 + way * 1j * 1e-5
        return 3 * int(any(patch.fabric == x and _inside(probe, patch.points) for patch in cloth.patches()))

    return test


def _inside(probe: complex, points: Sequence[complex]) -> bool:
    hit = False
    for a, b in zip(points, [*points[1:], points[0]], strict=True):
        if (a.imag > probe.imag) != (b.imag > probe.imag):
            x = a.real + (probe.imag - a.imag) / (b.imag - a.imag) * (b.real - a.real)
            hit ^= x > probe.real
    return hit


# --- rows -----------------------------------------------------------------------------------------------


@reads(
    rf"Sew them together (?:from (?P<a>{PLACE}) to (?P<b>{PLACE})|(?P<ends>end to end))(?:, right sides together)?"
    r"(?P<nest>, (?:nesting|matching) the seams)?(?:: (?P<groups>(?!\d+ in each of ).+))?"
)
def sew_row(table: Table, found: re.Match[str]) -> None:
    if table.rows:
        join_rows(table, found["b"], nest=bool(found["nest"]), between=False, outer=False)
        return
    assert table.title.finished
    wide = table.title.finished[0] >= table.title.finished[1]
    table.way = found["b"] or ("right" if wide else "bottom")
    if table.way not in ("right", "bottom"):
        raise Unreadable("which way?")
    if found["groups"]:
        table.order = [entry for group in found["groups"].split(", then ") for entry in _group(table, group)]
    else:
        table.order = [(part, []) for part, count in table.taken for _ in range(count)]
        if len(table.taken) != 1:
            raise Refused("in which order?")
    counts: dict[Any, int] = {}
    for part, _ in table.order:
        counts[part.key] = counts.get(part.key, 0) + 1
    if counts != {part.key: count for part, count in table.taken}:
        raise Refused("what is sewn is not what was taken")
    table.result = _row(table)


def _group(table: Table, text: str) -> Iterator[tuple[Part, list[Test]]]:
    times = 1
    if again := re.fullmatch(r"(?P<what>.+) (?P<n>twice|\d+ times)", text):
        text, times = again["what"], 2 if again["n"] == "twice" else int(again["n"].split()[0])
    entries = []
    for part in re.split(r"(?:, and |, | and )(?=(?:an?|\d+) )(?![^(]*\))", text):
        read = re.fullmatch(
            r"(?P<n>an?|\d+) (?P<what>.+?)(?: \((?P<how>[^()]* (?:at|in|above|to|below) [^()]*)\))?", part
        )
        if not read:
            raise Unreadable(f"what comes next: {part!r}")
        wanted = {key for key, _ in ((part_.key, 0) for part_, _ in table.taken)}
        found = [each for each in table.stock.find(read["what"]) if each.key in wanted]
        tests = tests_of(table, read["how"]) if read["how"] else []
        entries += [(one(found), tests)] * (1 if read["n"].startswith("a") else int(read["n"]))
    for _ in range(times):
        yield from entries


def _row(table: Table) -> Piece:
    lying: list[Lying] = []
    seams: list[tuple[float, str]] = []
    along, at = (1 + 0j, 0.0) if table.way == "right" else (1j, 0.0)
    for part, tests in table.order:
        turn = turn_of(table, part, tests, table.across, along)
        width, height = turned_size(part.size, turn)
        reach = width if along == 1 else height
        middle = along * (at + reach / 2) + along * (1j if along == 1 else -1j) * table.across / 2
        lying.append(lying_of_part(part, middle, turn))
        if at:
            seams.append((at, ""))
        at += reach
    size = (at, table.across) if along == 1 else (table.across, at)
    return Piece(tuple(lying), size, tuple(seams))


def turned_size(size: tuple[float, float], turn: complex) -> tuple[float, float]:
    return size if abs(turn.imag) < HAIR else (size[1], size[0])


def lying_of_part(part: Part, middle: complex, turn: complex) -> Lying:
    width, height = part.size
    corners = (complex(x, y) for x, y in ((-1, -1), (1, -1), (1, 1), (-1, 1)))
    points = tuple(middle + turn * complex(c.real * width / 2, c.imag * height / 2) for c in corners)
    return Lying(part, middle, turn, points)


def turn_of(table: Table, part: Part, tests: list[Test], across: float, along: complex) -> complex:
    """How a part lies in a row: as it is said, and so that it is as high as the row.

    Errors: Refused where it may lie in two ways that look different, or in none.
    """
    turns = [
        turn
        for turn in (1 + 0j, 1j, -1 + 0j, -1j)
        if abs(turned_size(part.size, turn)[1 if along == 1 else 0] - across) < HAIR
    ]
    tests = tests or next((said for name, said in table.lays.get(table.number, {}).items() if name in part.names), [])
    if part.cloth is None:
        if not turns or tests:
            raise Refused(f"{min(part.names)} does not fit into the row")
        return turns[0]
    fitting = best([part.cloth.moved(turn) for turn in turns], tests)
    if len({pattern_of(cloth.patches()) for cloth in fitting}) != 1:
        raise Refused(f"{min(part.names)} may lie in {len(fitting)} ways")
    chosen = pattern_of(fitting[0].patches())
    return next(turn for turn in turns if pattern_of(part.cloth.patches(turn)) == chosen)


# --- pressing -------------------------------------------------------------------------------------------


@reads(
    r"Press (?P<which>all seams|the seams?|both seams|all long seams) (?:toward (?P<to>.+)|(?P<open>open|to one side))"
)
def press(table: Table, found: re.Match[str]) -> None:
    for name in table.title.names:
        table.pressed[name] = found["to"] or "open"


@reads(
    r"Press the seams of (?P<kind>rows?|columns?) (?P<a>[\d, and]+) toward (?P<x>.+?) and those of (?:rows?|columns?) "
    r"(?P<b>[\d, and]+) toward (?P<y>.+)"
)
def press_rows(table: Table, found: re.Match[str]) -> None:
    for which, to in (("a", found["x"]), ("b", found["y"])):
        for n in re.findall(r"\d+", found[which]):
            table.pressed[f"{stem(found['kind'])} {n}"] = to
    if set(table.pressed) != set(table.title.names):
        raise Refused("other rows are made here")


def side_at(piece: Piece, at: float, to: str, way: str) -> str:
    """On which side of a seam across a row its allowance lies: before or after it."""
    if to in ("the left", "the top"):
        return "before"
    if to in ("the right", "the bottom"):
        return "after"
    if to == "open":
        return "open"
    wanted = stem(to.removeprefix("the "))
    sides = []
    for lying in piece.lying:
        spans = [p.real if way == "right" else p.imag for p in lying.points]
        if any(name == wanted or name.endswith(f" {wanted}") for name in lying.part.names):
            if abs(max(spans) - at) < HAIR:
                sides.append("before")
            elif abs(min(spans) - at) < HAIR:
                sides.append("after")
    if len(sides) != 1:
        raise Refused(f"{to} lies on {len(sides)} sides of a seam")
    return sides[0]


# --- the center -----------------------------------------------------------------------------------------


@reads(
    rf"Arrange them from (?P<a>{PLACE}) to (?P<b>{PLACE}), a (?P<strip>sashing strip|plain strip) between each two "
    r"(?:rows|columns)(?P<outer> and one at the \w+ and(?: the)? \w+)?"
)
def arrange(table: Table, found: re.Match[str]) -> None:
    join_rows(table, found["b"], nest=False, between=True, outer=bool(found["outer"]))


def join_rows(table: Table, way: str, *, nest: bool, between: bool, outer: bool) -> None:
    """Rows or columns beside each other by their numbers, with strips between them where it is said."""
    numbers = [int(name.split()[1]) for name, _ in table.rows]
    if numbers != list(range(1, len(numbers) + 1)):
        raise Refused("a row is missing, or one comes before its turn")
    pieces: list[Piece] = []
    strips = list(table.strips)
    if len(strips) != (len(numbers) - 1 + 2 * int(outer)) * int(between):
        raise Refused(f"{len(strips)} strips do not lie between {len(numbers)} rows")
    for place, (_, row) in enumerate(table.rows):
        if between and (place or outer):
            pieces.append(strips.pop())
        pieces.append(row)
    pieces += strips
    lying: list[Lying] = []
    at = 0.0
    for piece in pieces:
        if abs(piece.size[0 if way == "bottom" else 1] - pieces[0].size[0 if way == "bottom" else 1]) > HAIR:
            raise Refused("rows are of different lengths")
        lying += [part.moved(at * (1j if way == "bottom" else 1)) for part in piece.lying]
        at += piece.size[1 if way == "bottom" else 0]
    size = (pieces[0].size[0], at) if way == "bottom" else (at, pieces[0].size[1])
    if nest:
        check_nest(table, "right" if way == "bottom" else "bottom")
    table.result = Piece(tuple(lying), size)
    table.way = way


def check_nest(table: Table, way: str) -> None:
    """Seams of rows that meet must be pressed opposite ways.

    Errors: Refused where two lie the same way.
    """
    for (name, row), (other_name, other) in zip(table.rows, table.rows[1:], strict=False):
        there = {round(at, 3): side for at, side in other.seams}
        for at, side in row.seams:
            against = there.get(round(at, 3))
            if against and against == side and side != "open":
                raise Refused(f"seams of {name} and {other_name} do not nest")
    del way


@reads(r"Pin the cornerstones to the ends of the (?:long )?sashes, (?:nesting|matching) the seams(?:: (?P<which>.+))?")
def pin_cornerstones(table: Table, found: re.Match[str]) -> None:
    if not found["which"]:
        return

    def along(at: complex) -> float:
        return at.imag if table.way == "right" else at.real

    strips = [part for part in table.strips[0].lying if "cornerstone" in part.part.names]
    for group in re.findall(
        r"cornerstones? ([\d, and]+?) to (?:columns?|rows?) ([\d, and]+?)(?:, and |$)", found["which"]
    ):
        stones, columns = ([int(n) for n in re.findall(r"\d+", text)] for text in group)
        for column in columns:
            sashes = [
                (min(map(along, part.points)), max(map(along, part.points)))
                for part in table.rows[column - 1][1].lying
                if "sash" in part.part.names
            ]
            for stone in stones:
                span = [along(p) for p in strips[stone - 1].points]
                if not any(abs(min(span) - a) < HAIR and abs(max(span) - b) < HAIR for a, b in sashes):
                    raise Refused(f"cornerstone {stone} does not lie at a sash of column {column}")


@reads(
    r"Sew the long edges", r"Pin with the marks at the seams of the blocks, and sew the long edges",
    r"Mark .+", r"The short edges of the triangles are on the bias: .+", r"Check that the corner lies flat",
    r"From the end of the seams, draw a line .+", r"Trim the seam to .+", r"Both ends extend equally, about .+",
    r"Sew each strip from .+ inside one corner to .+ inside the next; backstitch at both",
    r"At each corner, fold the top diagonally, right sides together, so that the two strips lie edge to edge",
)  # fmt: skip
def no_more(table: Table, found: re.Match[str]) -> None:
    """Care that moves nothing."""


@reads(rf"☐ {SIZE}")
def measure(table: Table, found: re.Match[str]) -> None:
    if table.result is None:
        raise Refused("there is nothing to measure")
    said = float(length(found[2])), float(length(found[4]))
    room = 1 / 16 + HAIR if found[1] or found[3] else HAIR
    size = tuple(side + 2 * table.stock.seam for side in table.result.size)
    if any(abs(a - b) > room for a, b in zip(size, said, strict=True)):
        raise Refused(f"it measures {size}")
    table.measured = True


# --- borders --------------------------------------------------------------------------------------------


@reads(
    rf"Measure(?: the (?P<what>.+?))? through the middle from (?P<way>top to bottom|side to side)"
    rf"(?:, (?:border|round) included)?, about (?P<d>{LENGTH}) (?:in|cm)",
    rf"Measure the (?P<rows>rows|columns) from end to end, about (?P<d>{LENGTH}) (?:in|cm)",
)
def measure_through(table: Table, found: re.Match[str]) -> None:
    said = found.groupdict()
    if said.get("rows"):
        names = [name for name in table.made if name.startswith(stem(said["rows"]))]
        size = max(table.made[names[0]][0].size)
    else:
        size = begin_round(table, found["what"] or "").size[1 if found["way"] == "top to bottom" else 0]
    if abs(size + 2 * table.stock.seam - float(length(found["d"]))) > 1 / 16 + HAIR:
        raise Refused(f"it measures {size + 2 * table.stock.seam}")
    table.lengths = size  # type: ignore[attr-defined]


def begin_round(table: Table, what: str) -> Piece:
    """What a border or round is sewn to."""
    if table.result is None:
        table.result = _center_block(table) if what == "center block" else made(table, table.base)
    return table.result


def _center_block(table: Table) -> Piece:
    """The one block in the middle of a medallion, as it is laid."""
    blocks = [part for part in table.stock.parts if part.key[0] == "block" and table.stock.left[part.key]]
    part = one(blocks)
    table.stock.take(part, 1)
    turn = turn_of(table, part, [], turned_size(part.size, 1)[1], 1)
    return Piece((lying_of_part(part, complex(*part.size) / 2, turn),), part.size)


@reads(r"Trim (?P<n>\d+) (?P<what>(?:\w+ )?strips) \((?P<fabric>.+)\) to that length")
def trim(table: Table, found: re.Match[str]) -> None:
    long = table.lengths  # type: ignore[attr-defined]
    role = stem(found["what"])
    parts = [
        part
        for part in table.stock.parts
        if part.fabric == found["fabric"]
        and abs(max(part.size) - long) < HAIR
        and (role in part.names if role != "strip" else part.names & {"border", "round"})
        and table.stock.left[part.key] >= number(found["n"])
    ]
    if not parts:
        raise Refused(f"no strips of {found['fabric']} are so long")
    table.stock.take(parts[0], number(found["n"]))
    if role == "strip":
        table.trimmed.append([parts[0]] * number(found["n"]))
        return
    width = min(parts[0].size)
    size = (long, width) if parts[0].size[0] >= 0 and _rows_lie_level(table) else (width, long)
    for _ in range(number(found["n"])):
        turn = 1 if near(complex(*parts[0].size), complex(*size)) else 1j
        strip = Piece((lying_of_part(parts[0], complex(*size) / 2, turn),), size)
        table.made.setdefault(role, []).append(strip)


def _rows_lie_level(table: Table) -> bool:
    return any(name.startswith("row") for name in table.made)


@reads(
    r"Sew a strip to the (?P<a>left|top) edge and a strip to the (?P<b>right|bottom) edge, marks matched",
    r"Sew (?:them|these strips) to the (?P<a>top|left) edge and the (?P<b>bottom|right) edge(?: in the same way)?",
)
def sew_strips(table: Table, found: re.Match[str]) -> None:
    if not table.trimmed or len(table.trimmed[0]) != 2 or table.result is None:
        raise Refused("there are not two strips")
    if (found["a"], found["b"]) not in (("left", "right"), ("top", "bottom")):
        raise Refused("those edges do not face each other")
    part = table.trimmed[0][0]
    width = min(part.size)
    upright = found["a"] == "left"
    long = table.result.size[1 if upright else 0]
    if abs(max(part.size) - long) > HAIR:
        raise Refused("the strips are as long as the other edges")
    shift = width if upright else width * 1j
    lying = [each.moved(shift) for each in table.result.lying]
    grown = (table.result.size[0] + 2 * width, table.result.size[1]) if upright else (
        table.result.size[0], table.result.size[1] + 2 * width)  # fmt: skip
    size = complex(width, long) if upright else complex(long, width)
    turn = 1 if near(complex(*part.size), size) else 1j
    lying += [lying_of_part(part, at, turn) for at in (size / 2, complex(*grown) - size / 2)]
    table.result = Piece(tuple(lying), grown)
    table.trimmed.pop(0)


@reads(r"Sew a corner square \((?P<fabric>.+)\) to each end of the other 2 strips")
def sew_corner_squares(table: Table, found: re.Match[str]) -> None:
    """The strips that are left get a square at both ends: they are as long as the border that they meet."""
    if not table.trimmed or len(table.trimmed[-1]) != 2 or table.result is None:
        raise Refused("there are not two strips")
    corners = [part for part in table.stock.parts if part.key[0] == "cloth" and "corner square" in part.names]
    part = next((part for part in corners if part.fabric == found["fabric"] and table.stock.left[part.key] >= 4), None)
    if part is None:
        raise Refused("there are no such corner squares")
    table.stock.take(part, 4)
    table.corner = part


@reads(
    r"Sew these strips to the (?P<a>top|left) edge and the (?P<b>bottom|right) edge"
    r"(?:, nesting|, matching) the seams of the corner squares"
)
def sew_strips_with_corners(table: Table, found: re.Match[str]) -> None:
    if table.corner is None or table.result is None:
        raise Refused("they have no corner squares")
    strip, corner = table.trimmed[0][0], table.corner
    width = min(strip.size)
    wide, high = table.result.size
    if found["a"] != "top" or abs(max(strip.size) + 2 * max(corner.size) - wide) > HAIR:
        raise Refused("they are not as long as that edge")
    lying = [each.moved(width * 1j) for each in table.result.lying]
    for y in (width / 2, high + 1.5 * width):
        lying += [lying_of_part(corner, complex(x, y), 1) for x in (width / 2, wide - width / 2)]
        turn = 1 if strip.size[0] > strip.size[1] else 1j
        lying.append(lying_of_part(strip, complex(wide / 2, y), turn))
    table.result, table.corner = Piece(tuple(lying), (wide, high + 2 * width)), None
    table.trimmed.pop(0)


# --- columns that are dropped ---------------------------------------------------------------------------


@reads(
    r"Sew them together from (?P<a>left to right|top to bottom), ends even, the middle of each block at the ends of "
    r"the blocks beside it(?:, right sides together)?"
)
def sew_dropped(table: Table, found: re.Match[str]) -> None:
    join_rows(table, "right" if found["a"] == "left to right" else "bottom", nest=False, between=False, outer=False)


# --- the whole ------------------------------------------------------------------------------------------


def sew_top(steps: Sequence[Step], stock: TopStock) -> Piece:
    """The top that the steps make.

    Errors: Fault where a sentence cannot be read or followed.
    """
    made: dict[str, list[Piece]] = {}
    lays: dict[int, dict[str, list[Test]]] = {}
    base, result = "", None
    for step in steps:
        sentence = step.title
        try:
            title = title_of(step)
            table = Table(title, stock, made, lays, step.number, base=base)
            for sentence in sentences_of(step.text):
                _follow(table, sentence)
            sentence = "(at the end)"
            result = _finish(table)
        except Refused as fault:
            raise Fault(step, sentence, str(fault)) from None
        base = title.names[0]
    if result is None:
        raise Refused("there are no steps")
    return result


def _follow(table: Table, sentence: str) -> None:
    for pattern, handler, diagonal in SENTENCES:
        if (table.is_diagonal or not diagonal) and (found := pattern.fullmatch(sentence)):
            handler(table, found)
            return
    raise Unreadable("no pattern reads this")


def _finish(table: Table) -> Piece:
    if table.result is None or not table.measured:
        raise Refused("nothing was made, or it was not measured")
    if table.trimmed or table.corner or table.pieced:
        raise Refused("strips are left on the table")
    if table.title.finished and any(
        abs(a - b) > 1 / 16 + HAIR for a, b in zip(table.title.finished, table.result.size, strict=True)
    ):
        raise Refused("the title says another size")
    if not table.pressed:
        raise Refused("nothing is pressed")
    each = table.title.count // len(table.names)
    for name in table.names:
        to = table.pressed.get(name, "open")
        seams = tuple((at, side_at(table.result, at, to, table.way)) for at, _ in table.result.seams)
        table.made[name] = [replace(table.result, seams=seams)] * each
    return table.result
