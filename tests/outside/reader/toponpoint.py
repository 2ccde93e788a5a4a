"""Reading the steps of tops on point: diagonal rows, arranged by the blocks at their ends, and corner triangles."""

from __future__ import annotations

import re
from dataclasses import replace
from itertools import pairwise

from tests.outside.reader.cloth import HAIR
from tests.outside.reader.tops import Lying, Piece, Table, lying_of_part, one, reads, tests_of, turn_of
from tests.outside.reader.topstock import Part
from tests.outside.reader.words import LENGTH, PLACE, PLACES, Refused, Unreadable, length

UP = (1 - 1j) / 2**0.5
"""Half of a quarter turn back: rows lead to the upper right then, and the first lies at the upper left."""
ITEM = re.compile(
    rf"(?P<n>an?|\d+) (?P<what>.+?)(?: \(square corner at the (?P<square>{PLACE})\))?(?: (?P<times>twice|\d+ times))?"
)


@reads(
    r"Sew them together from left to right(?:, right sides together)?(?:: (?P<list>.+))?",
    diagonal=True,
)
def sew_diagonal(table: Table, found: re.Match[str]) -> None:
    if table.rows:
        raise Unreadable("rows are sewn from top to bottom")
    high = min(max(part.size) for part in table.stock.parts if part.key[0] == "block")
    counts: dict[object, int] = {}
    lying: list[Lying] = []
    seams: list[tuple[float, str]] = []
    at = 0.0
    for part, square in _listed(table, found["list"]):
        counts[part.key] = counts.get(part.key, 0) + 1
        if square:
            lying.append(_triangle(part, at, high, square))
        else:
            turn = turn_of(table, part, [], high, 1 + 0j)
            lying.append(lying_of_part(part, complex(at + high / 2, high / 2), turn))
        if at:
            seams.append((at, ""))
        at += high
    if counts != {part.key: count for part, count in table.taken}:
        raise Refused("what is sewn is not what was taken")
    table.way = "right"
    table.result = Piece(tuple(lying), (at, high), tuple(seams))


def _listed(table: Table, text: str | None) -> list[tuple[Part, str]]:
    """What comes one after another: a side triangle (square corner at the lower right), then 3 blocks."""
    if text is None:
        if len(table.taken) != 1:
            raise Refused("in which order?")
        return [(table.taken[0][0], "")] * table.taken[0][1]
    found: list[tuple[Part, str]] = []
    for group in text.split(", then "):
        times = 1
        if again := re.fullmatch(r"(.+) (twice|\d+ times)", group):
            group, times = again[1], 2 if again[2] == "twice" else int(again[2].split()[0])  # noqa: PLW2901
        entries: list[tuple[Part, str]] = []
        for entry in re.split(r"(?:, and |, | and )(?=(?:an?|\d+) )", group):
            read = ITEM.fullmatch(entry)
            if not read:
                raise Unreadable(f"what comes next: {entry!r}")
            taken = {part.key for part, _ in table.taken}
            part = one([each for each in table.stock.find(read["what"]) if each.key in taken])
            count = 1 if read["n"].startswith("a") else int(read["n"])
            entries += [(part, read["square"] or "")] * count
        found += entries * times
    return found


def _triangle(part: Part, at: float, high: float, square: str) -> Lying:
    """Half of a square cell of the row, with its square corner at a corner of the cell."""
    if abs(max(part.size) - high * 2**0.5) > HAIR:
        raise Refused("the triangle is not as high as the row")
    middle, corner = complex(at + high / 2, high / 2), PLACES[square]
    corners = (complex(x, y) for x, y in ((-1, -1), (1, -1), (1, 1), (-1, 1)))
    points = tuple(middle + each * high / 2 for each in corners if abs(each + corner) > HAIR)
    return Lying(part, middle, 1 + 0j, points)


@reads(r"The left end of a diagonal row is its lower left end in the picture of the quilt", diagonal=True)
def which_end(table: Table, found: re.Match[str]) -> None:
    """How the picture of the quilt is to be seen."""


@reads(rf"☐ (?P<h>{LENGTH}) (?:in|cm) high", diagonal=True)
def measure_high(table: Table, found: re.Match[str]) -> None:
    if table.result is None or abs(table.result.size[1] + 2 * table.stock.seam - float(length(found["h"]))) > HAIR:
        raise Refused("it measures something else")
    table.measured = True


# --- joining the rows -----------------------------------------------------------------------------------

ROWS = r"Rows? (?P<rows>\d+(?:(?:, and |, | and )\d+)*)(?: each)? "


@reads(r"Arrange the rows from top to bottom, row 1 at the top", diagonal=True)
def arrange(table: Table, found: re.Match[str]) -> None:
    table.ends = {1: (0, 0)}


@reads(
    ROWS + r"(?P<how>extends?) one block beyond the row above at both ends",
    ROWS + r"(?P<how>ends?) one block short of the row above at both ends",
    ROWS + r"(?P<how>begins?) one block beyond the row above at the left and ends? one block short of it at the right",
    ROWS + r"(?P<how>begins?) one block short of the row above at the left and ends? one block beyond it at the right",
    diagonal=True,
)
def place_row(table: Table, found: re.Match[str]) -> None:
    left = -1 if " beyond the row above" in found[0] else 1
    right = (1 if " beyond" in found[0].rpartition("above")[2] else -1) if "begin" in found["how"] else -left
    for number in map(int, re.findall(r"\d+", found["rows"])):
        above = table.ends.get(number - 1)
        if above is None:
            raise Refused(f"it is not said how row {number - 1} lies")
        table.ends[number] = (above[0] + left, above[1] + right)


@reads(
    r"Sew them together from top to bottom(?P<nest>, (?:nesting|matching) the seams)?",
    diagonal=True,
)
def join_diagonal(table: Table, found: re.Match[str]) -> None:
    numbers = [int(name.split()[1]) for name, _ in table.rows]
    if numbers != list(range(1, len(numbers) + 1)) or set(numbers) != set(table.ends):
        raise Refused("a row is missing, or it is not said how it lies")
    lying: list[Lying] = []
    seams: list[dict[float, str]] = []
    high = table.rows[0][1].size[1]
    first = _blocks(table.rows[0][1], high)
    for number, (name, row) in enumerate(table.rows, start=1):
        begin, end = _blocks(row, high)
        left, right = table.ends[number]
        if abs((end - begin) - (first[1] - first[0]) - (right - left) * high) > HAIR:
            raise Refused(f"{name} does not reach from end to end so")
        shift = first[0] + left * high - begin
        lying += [part.moved(complex(shift, (number - 1) * high)) for part in row.lying]
        seams.append({round(at + shift, 3): side for at, side in row.seams})
    for above, below in pairwise(seams):
        if found["nest"] and any(above[at] == below[at] != "open" for at in above if at in below):
            raise Refused("seams of two rows do not nest")
    table.result = Piece(tuple(lying), (0.0, 0.0))
    table.way = "bottom"


def _blocks(row: Piece, high: float) -> tuple[float, float]:
    """Where the whole squares of a row begin and end."""
    at = [part.at.real for part in row.lying if len(part.points) > 3]
    return min(at) - high / 2, max(at) + high / 2


@reads(
    r"Crease the middle of the long edge of each of 4 corner triangles",
    r"The short edges of the triangles become the edges of the quilt center",
    rf"Trim the edges {LENGTH} (?:in|cm) outside the points of the (?:blocks|sashes), corners square",
    diagonal=True,
)
def no_more(table: Table, found: re.Match[str]) -> None:
    """Care that moves nothing."""


@reads(r"Turn the quilt center so that row 1 is at the upper left", diagonal=True)
def turn_center(table: Table, found: re.Match[str]) -> None:
    if table.result is None:
        raise Refused("nothing is there to be turned")
    table.result = _on_point(table.result)


def _on_point(piece: Piece) -> Piece:
    """Turned so that what was its top is at the upper left, its box from the origin on."""
    turned = [
        replace(each, at=each.at * UP, turn=each.turn * UP, points=tuple(p * UP for p in each.points))
        for each in piece.lying
    ]
    low = complex(min(p.real for e in turned for p in e.points), min(p.imag for e in turned for p in e.points))
    high = complex(max(p.real for e in turned for p in e.points), max(p.imag for e in turned for p in e.points))
    return Piece(tuple(each.moved(-low) for each in turned), ((high - low).real, (high - low).imag))


@reads(
    r"Lay the (?P<what>.+?) with (?P<how>.+), then turn it so that its top edge is at the upper left",
    r"Lay the (?P<what>.+?) on point",
    diagonal=True,
)
def lay_on_point(table: Table, found: re.Match[str]) -> None:
    """A single block."""
    how = found.groupdict().get("how")
    part = one([part for part in table.stock.find(found["what"]) if part in [taken for taken, _ in table.taken]])
    turn = turn_of(table, part, tests_of(table, how) if how else [], part.size[1], 1 + 0j)
    table.result = _on_point(Piece((lying_of_part(part, complex(*part.size) / 2, turn),), part.size))


@reads(
    rf"Sew (?:2|the other 2) corner triangles by their long edges to the (?P<a>{PLACE}) and (?P<b>{PLACE}) edges"
    r"(?:, creases at the middle| in the same way)",
    diagonal=True,
)
def sew_two_corner_triangles(table: Table, found: re.Match[str]) -> None:
    part = one([part for part, _ in table.taken if "corner triangle" in part.names])
    if table.result is None or PLACES[found["a"]] != -PLACES[found["b"]]:
        raise Refused("there is nothing to sew them to, or the edges do not face each other")
    triangles = [_in_corner(part, table.result.size, PLACES[found[which]]) for which in "ab"]
    table.result = Piece((*table.result.lying, *triangles), table.result.size)


def _in_corner(part: Part, size: tuple[float, float], where: complex) -> Lying:
    """A triangle with its square corner at a corner of the box."""
    at = complex(size[0] if where.real > 0 else 0, size[1] if where.imag > 0 else 0)
    leg = max(part.size)
    return Lying(part, at, 1 + 0j, (at, at - where.real * leg, at - where.imag * leg * 1j))


@reads(
    r"Sew a corner triangle by its long edge to each of the four corners, the crease at the middle of the edge",
    diagonal=True,
)
def sew_corner_triangles(table: Table, found: re.Match[str]) -> None:
    part = one([part for part in table.stock.parts if "corner triangle" in part.names])
    table.stock.take(part, 4)
    assert table.result is not None
    corners = (_in_corner(part, table.result.size, complex(x, y)) for y in (-1, 1) for x in (-1, 1))
    table.result = Piece((*table.result.lying, *corners), table.result.size)
