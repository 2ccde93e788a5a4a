"""Sewing to foundation papers: area after area in the order of the words, on the lines that the paper has."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from math import cos, pi, sin, tan

from tests.outside.reader.bench import Bench, merged, reads
from tests.outside.reader.cloth import HAIR, TOP, Cloth, Misfit, Run, joined, near, piece, runs, shared
from tests.outside.reader.landmarks import inner_angles
from tests.outside.reader.measuring import raw_length
from tests.outside.reader.nests import check_nest
from tests.outside.reader.stock import Area, Kind
from tests.outside.reader.table import Item, Refused, Seam, Table
from tests.outside.reader.taking import take_list
from tests.outside.reader.words import LENGTH, length, listed, number

SEAM = r"(?:1/4 in|0\.75 cm)"
EDGE = r"(?:its long edge|an? (?:long edge|short edge|edge))"
EACH = r"in the order of their numbers, each on the line between it and those before it"


@reads(r"Print (?P<n>\d+) papers? (?P<letter>\S+) at actual size and check the test square")
def print_papers(bench: Bench, found: re.Match[str]) -> None:
    if found["letter"] not in bench.stock.papers or number(found["n"]) != bench.title.count:
        raise Refused("so many papers are not needed")
    kind = Kind(f"paper {found['letter']}", form="paper")
    bench.add({kind.label}, bench.stock.cloth(kind), form="paper", group=998)


@reads(
    r"Cut them apart outside the solid line",
    r"Cut it out outside the solid line",
    r"Set a short stitch, about \d+ to the (?:inch|centimet(?:er|re))",
    rf"It must cover area \S+ and {SEAM} beyond it all around; shift it if it does not, then fold it forward and pin",
    r"Turn the paper over",
)
def no_more(bench: Bench, found: re.Match[str]) -> None:
    """Care that changes nothing of what lies where."""


def area_of(bench: Bench, number_: str) -> Area:
    """An area of the paper that was taken.

    Errors: Refused where it has none of that number, or where its piece was not taken.
    """
    paper = next((item for item in bench.items if item.form == "paper"), None)
    if paper is None:
        raise Refused("no paper was taken")
    letter = next(iter(paper.names)).removeprefix("paper ")
    for area in bench.stock.papers[letter]:
        if area.number == number_:
            return area
    raise Refused(f"paper {letter} has no area {number_}")


def piece_of(bench: Bench, what: str) -> Item:
    item = bench.one(what)
    if item.form == "paper":
        raise Refused("a piece and not the paper")
    return item


def on_paper(bench: Bench, item: Item, area: Area) -> Cloth:
    if item.extra != area.kind:
        raise Refused(f"another piece belongs on area {area.number}")
    return piece(area.kind.label, area.kind.fabric, area.points).tagged(item.mark)


@reads(
    rf"Place (?P<what>\S+) on the blank side of the paper, right side up, over area (?P<area>\S+) and at least {SEAM} "
    r"beyond it all around(?:; pin)?"
)
def first_piece(bench: Bench, found: re.Match[str]) -> None:
    if "sewn" in bench.method:
        raise Refused("there is a first piece already")
    if found["what"] != found["area"]:
        raise Refused("it belongs on its own area")
    item, area = piece_of(bench, found["what"]), area_of(bench, found["area"])
    cloth = on_paper(bench, item, area)
    bench.follow(lambda table: [table.with_body(item.key, cloth)], "")
    bench.method["sewn"] = [item]
    bench.method["areas"] = [area]
    bench.used.add(item.key)


@reads(
    rf"Place (?P<what>\S+) on (?P<base>\S+), right sides together, {EDGE} {SEAM} beyond the line "
    r"between the two areas"
)
def next_piece(bench: Bench, found: re.Match[str]) -> None:
    bench.method["adding"] = (found["what"], found["base"])


@reads(r"Fold (?P<what>\S+) back along the line")
def fold_back(bench: Bench, found: re.Match[str]) -> None:
    if bench.method.get("adding", ("",))[0] != found["what"]:
        raise Refused("that piece is not placed")


@reads(rf"Sew on the line, from {SEAM} before it to {SEAM} beyond it")
def sew_line(bench: Bench, found: re.Match[str]) -> None:
    if "adding" not in bench.method:
        raise Refused("nothing is placed")
    bench.method["line sewn"] = True


@reads(r"Fold the paper back along the line and trim the seam to (?:1/4 in|0\.75 cm)")
def trim_seam(bench: Bench, found: re.Match[str]) -> None:
    if not bench.method.get("line sewn"):
        raise Refused("nothing is sewn")


@reads(r"Press (?P<what>\S+) over its area")
def press_over_area(bench: Bench, found: re.Match[str]) -> None:
    if not bench.method.pop("line sewn", False):
        raise Refused("nothing is sewn")
    what, base = bench.method.pop("adding")
    if what != found["what"]:
        raise Refused("another piece was sewn")
    add(bench, what, base)
    bench.method["as before"] = True


@reads(
    r"Add (?P<what>\S+) in the same way, on the line between (?P<a>\S+) and (?P<b>\S+)",
    rf"Add (?P<what>\S+) in the same way, with {EDGE} along the line between (?P<a>\S+) and (?P<b>\S+)",
)
def add_alike(bench: Bench, found: re.Match[str]) -> None:
    if not bench.method.get("as before"):
        raise Refused("in the same way as what?")
    if found["what"] not in (found["a"], found["b"]):
        raise Refused("that is not a line of its area")
    add(bench, found["what"], found["a"] if found["what"] == found["b"] else found["b"])


@reads(r"Sew them as in step (?P<n>\d+): (?P<first>\S+) first, then (?P<more>.+)")
def as_before(bench: Bench, found: re.Match[str]) -> None:
    if not any("on the blank side of the paper" in sentence for sentence in bench.texts.get(int(found["n"]), [])):
        raise Refused("that step sews nothing to papers")
    item, area = piece_of(bench, found["first"]), area_of(bench, found["first"])
    cloth = on_paper(bench, item, area)
    bench.follow(lambda table: [table.with_body(item.key, cloth)], "")
    bench.method.update({"sewn": [item], "areas": [area]})
    bench.used.add(item.key)
    for part in re.split(r",? (?:and )?then ", found["more"]):
        if more := re.fullmatch(rf"(?P<first>\S+) to (?P<last>\S+),? {EACH}", part):
            add_range(bench, more["first"], more["last"])
            continue
        how = re.fullmatch(
            rf"(?P<what>\S+) (?:on|with {EDGE} along) the line between (?P<a>\S+) and (?P<b>[^\s,]+)", part
        )
        if not how or how["what"] not in (how["a"], how["b"]):
            raise Refused(f"on which line? {part!r}")
        add(bench, how["what"], how["a"] if how["what"] == how["b"] else how["b"])
    cut_out(bench, found)


@reads(rf"Add (?P<first>\S+) to (?P<last>\S+) in the same way, {EACH}")
def add_in_order(bench: Bench, found: re.Match[str]) -> None:
    if not bench.method.get("as before"):
        raise Refused("in the same way as what?")
    add_range(bench, found["first"], found["last"])


def add_range(bench: Bench, first: str, last: str) -> None:
    """Areas one after the other, each beside one that is covered already."""
    numbers = numbered(first, last)
    if [area.number for area in bench.method["areas"]] != numbered(f"{_letter(first)}1", first)[:-1]:
        raise Refused("that is not the next one")
    for what in numbers:
        area = area_of(bench, what)
        beside = [
            other.number
            for other in bench.method["areas"]
            if shared(piece("", "", area.points), piece("", "", other.points))
        ]
        if not beside:
            raise Refused(f"{what} lies beside nothing that is sewn on")
        add(bench, what, beside[0])


def numbered(first: str, last: str) -> list[str]:
    """A1 to A8."""
    letter = _letter(first)
    if letter != _letter(last):
        raise Refused("from one paper to another")
    return [f"{letter}{n}" for n in range(int(first[len(letter) :]), int(last[len(letter) :]) + 1)]


def _letter(number_: str) -> str:
    return number_.rstrip("0123456789")


@reads(r"(?:For each, take|Take) the pieces (?P<first>\S+) to (?P<last>\S+) of its table")
def take_table(bench: Bench, found: re.Match[str]) -> None:
    letter = _letter(found["first"])
    numbers = numbered(found["first"], found["last"])
    if [area.number for area in bench.stock.papers.get(letter, ())] != numbers:
        raise Refused(f"the table of paper {letter} has other pieces")
    if not any(item.form == "paper" for item in bench.items):
        take_list(bench, f"1 paper {letter}", bench.title.count)
    take_list(bench, ", ".join(f"1 {number_}" for number_ in numbers), bench.title.count)


def add(bench: Bench, what: str, beside: str) -> None:
    """Sew one more piece on the line between its area and another that is covered already."""
    sewn, areas = bench.method["sewn"], bench.method["areas"]
    item, area = piece_of(bench, what), area_of(bench, what)
    if beside not in [other.number for other in areas]:
        raise Refused(f"{beside} is not sewn on yet")
    other = area_of(bench, beside)
    cloth = on_paper(bench, item, area)
    if not shared(cloth, piece("", "", other.points)):
        raise Refused(f"there is no line between {what} and {beside}")
    number_ = bench.next_seam()

    def follow(table: Table) -> Iterator[Table]:
        place = table.home[sewn[0].key]
        lying = table.with_body(item.key, cloth)
        try:
            whole, _ = joined(cloth, table.bodies[place], number_)
        except Misfit as misfit:
            raise Refused(str(misfit)) from None
        ends = tuple(replace(end, pressed="on") if end.seam == number_ else end for end in whole.ends)
        yield merged(lying, item.key, place, replace(whole, ends=ends), None)

    bench.follow(follow, "it does not fit")
    sewn.append(item)
    areas.append(area)
    bench.used.add(item.key)


def with_top(cloth: Cloth) -> Cloth:
    """Cloth on its paper, which has TOP printed at its upper edge."""
    low, _ = cloth.box()
    edges = (
        replace(edge, tags=edge.tags | {TOP}) if max(edge.a.imag, edge.b.imag) < low.imag + HAIR else edge
        for edge in cloth.edges
    )
    return replace(cloth, edges=tuple(edges))


@reads(r"Cut paper and fabric on the solid line")
def cut_out(bench: Bench, found: re.Match[str]) -> None:
    paper = next((item for item in bench.items if item.form == "paper"), None)
    if paper is None:
        raise Refused("there is no paper")
    letter = next(iter(paper.names)).removeprefix("paper ")
    if [area.number for area in bench.method.get("areas", [])] != [area.number for area in bench.stock.papers[letter]]:
        raise Refused("not every area is covered, in the order of the numbers")

    def follow(table: Table) -> Iterator[Table]:
        bodies = {place: with_top(body) for place, body in table.bodies.items() if place != paper.key}
        yield replace(table, bodies=bodies, home={key: at for key, at in table.home.items() if key != paper.key})

    bench.follow(follow, "")
    bench.method["cut out"] = True


@reads(r"Cut it as in step (?P<n>\d+)")
def cut_as_before(bench: Bench, found: re.Match[str]) -> None:
    if not any(sentence.startswith("Cut paper and fabric") for sentence in bench.texts.get(int(found["n"]), [])):
        raise Refused("that step cuts no paper")
    cut_out(bench, found)


# --- sections -------------------------------------------------------------------------------------------


@reads(
    r"Place (?P<what>sections? .+?)(?P<joined>, joined,)? on (?P<base>sections? .+?)(?:, joined)?, "
    r"right sides together, the edges marked (?P<mark>\S+) even, the (?:TOP marks|dots) at the same end(?:; pin)?"
)
def place_section(bench: Bench, found: re.Match[str]) -> None:
    on, base = (sections_of(bench, found[name]) for name in ("what", "base"))
    marks = re.split("[–-]", found["mark"])
    if len(marks) != 2 or sorted(map(letters_of, marks)) != sorted(
        ("".join(letters for letters, _ in on), "".join(letters for letters, _ in base))
    ):
        raise Refused("those edges carry other marks")
    bench.method["sections"] = (on[0][1], base[0][1])


def sections_of(bench: Bench, phrase: str) -> list[tuple[str, Item]]:
    """Sections by their letters: section A, sections A and B, sections A to C."""
    names = phrase.split(" ", 1)[1]
    if run := re.fullmatch(r"([A-Z]) to ([A-Z])", names):
        letters = [chr(code) for code in range(ord(run[1]), ord(run[2]) + 1)]
    else:
        letters = listed(names)
    return [(letter, bench.one(f"section {letter}")) for letter in letters]


def letters_of(mark: str) -> str:
    """AB, or A…F for A to F."""
    if run := re.fullmatch(r"([A-Z])…([A-Z])", mark):
        return "".join(chr(code) for code in range(ord(run[1]), ord(run[2]) + 1))
    return mark


@reads(r"Sew on the dashed line")
def sew_sections(bench: Bench, found: re.Match[str]) -> None:
    if "sections" not in bench.method:
        raise Refused("nothing is placed")
    on, base = bench.method.pop("sections")
    number_ = bench.next_seam()
    said = bench.method.pop("nest", None)

    def follow(table: Table) -> Iterator[Table]:
        # Papers lie beside each other as their marks say: as they were printed.
        on_place, base_place = table.home[on.key], table.home[base.key]
        if on_place == base_place:
            raise Refused("they are sewn together already")
        cloth, ground = table.bodies[on_place], table.bodies[base_place]
        whole, stretches = joined(cloth, ground, number_)
        check_nest(cloth, ground, stretches, said)
        yield merged(table, on_place, base_place, whole, Seam(number_, tuple(stretches)))

    bench.follow(follow, "the sections do not fit")
    bench.used.add(on.key)
    bench.note_joint(on.key, base.key)
    bench.base = [base.key]


def printed_length(cloth: Cloth, run: Run, seam: float) -> float:
    """How long an edge is on the solid line of a paper, whose sharp points are cut square an allowance beyond them.

    At an end with a sharp angle the edge, moved outward by the seam s, is cut square to the other side of the point:
    there it is s (1 - sin) / cos longer than the finished edge.
    """
    angles = [angle for at, angle in inner_angles(cloth) if near(at, run.a) or near(at, run.b)]
    sharp = [angle for angle in angles if angle < pi / 2 - HAIR]
    over = sum(seam / tan(angle / 2) - seam * (1 - sin(angle)) / cos(angle) for angle in sharp)
    return raw_length(cloth, run, seam) - over


@reads(rf"☐ (?P<about>about )?(?P<d>{LENGTH}) (?:in|cm) along the edge marked (?P<mark>\S+)")
def measure_edge(bench: Bench, found: re.Match[str]) -> None:
    """The edge of a section that is no rectangle."""
    said = float(length(found["d"]))
    room = 1 / 16 + HAIR if found["about"] else HAIR

    def follow(table: Table) -> Iterator[Table]:
        for cloth in table.bodies.values():
            sizes = [printed_length(cloth, run, bench.stock.seam) for run in runs(cloth)]
            if any(abs(size - said) < room for size in sizes):
                yield table
                return
            raise Refused(f"its edges measure {', '.join(f'{size:.4g}' for size in sizes)}")

    bench.follow(follow, "it measures something else")
    bench.measured = True
