"""Stitch and flip: small squares sewn across the corners of a base. Roles: base 0, corners from 1."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from blockdsl.geometry import Exact, Point
from blockdsl.sewing.techniques.cloth import (
    ZERO,
    at,
    box,
    cutting_pair,
    dimensions,
    laid_out,
    outline,
    rising,
)
from blockdsl.sewing.techniques.halves import GAP
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import Cloth, Item, Line, Picture, Press, Step

ALL_CORNERS = ("tl", "tr", "br", "bl")


def _square_at(place: str, base: tuple[Exact, Exact], c: Exact) -> tuple[Exact, Exact]:
    """The upper left corner of a small square of side `c` laid on that corner of the base."""
    return (ZERO if "l" in place else base[0] - c), (ZERO if "t" in place else base[1] - c)


def _line_at(place: str, base: tuple[Exact, Exact], c: Exact) -> tuple[Point, Point]:
    """The diagonal of that small square which cuts the corner off."""
    x, y = _square_at(place, base, c)
    if place in ("tl", "br"):
        return at(x, y + c), at(x + c, y)
    return at(x, y), at(x + c, y + c)


def _flipped(place: str, role: int, base: tuple[Exact, Exact], c: Exact) -> Cloth:
    """The small square pressed over its corner: the triangle of it that is seen."""
    x, y = _square_at(place, base, c)
    corner = {"tl": (x, y), "tr": (x + c, y), "br": (x + c, y + c), "bl": (x, y + c)}[place]
    first, second = _line_at(place, base, c)
    return Cloth(role, outline((first.x, first.y), (second.x, second.y), corner))


def _roles(measures: Measures, places: Sequence[str]) -> list[int]:
    """The role of each corner; corners of one fabric share the first of them."""
    known = [role for role in measures.cuts if role]
    return [place + 1 if place + 1 in measures.cuts else known[-1] for place in range(len(places))]


def corner_by_corner(measures: Measures) -> tuple[Step, ...]:
    """The steps for whatever corners the unit has."""
    places = measures.corners
    base, c, slant = measures.cut(0), measures.side(1), measures.slant
    if base[0] < base[1]:
        base = base[1], base[0]
    roles = _roles(measures, places)
    ground = Cloth(0, box(*base))
    first = places[0]
    x, y = _square_at(first, base, c)
    line = Line("sewn", *_line_at(first, base, c))
    laid: tuple[Item, ...] = (ground, Cloth(roles[0], box(c, c, x, y), "wrong"), line)
    count = {1: "one", 2: "two", 3: "three", 4: "four"}[len(places)]
    squares = "square" if len(places) == 1 else "squares"
    opened = [ground]
    opened += [_flipped(place, role, base, c) for place, role in zip(places, roles, strict=True)]
    pieces = [(0, *base), *((role, c, c) for role in list(dict.fromkeys(roles))[:2])]
    return (
        Step(
            "Cut",
            f"For each unit cut one {measures.say_piece(0)} for the base and {count} {measures.say(c)} {squares} for "
            f"the corner{'s' * (len(places) > 1)}.",
            (Picture(laid_out(pieces, max(base) * GAP), f"The base and a {measures.say(c)} square."),),
        ),
        Step(
            "Draw a line",
            "On the wrong side of each small square draw a thin pencil line from corner to corner. This time you will "
            "sew on the line.",
            (Picture((Cloth(roles[0], box(c, c), "wrong"), rising("drawn", c)), "A small square with a diagonal."),),
        ),
        Step(
            "Sew on the line",
            "Lay a small square on a corner of the base, right sides together (the printed faces inside), its line "
            "across the corner. Sew just "
            "beside the line, a thread's width toward the corner: the fold takes up that much.",
            (Picture(laid, "A small square on a corner of the base, sewn corner to corner."),),
        ),
        Step(
            "Cut the corner off",
            f"Cut {measures.say_seam} outside the seam, through both layers. The ruler covers the part that you keep: "
            "hold it down with the flat hand and roll the cutter away from yourself.",
            _trim_pictures(laid, first, base, c, slant, measures.seam),
        ),
        Step(
            "Flip and press",
            "Fold the triangle over the seam, right side up, and press. Its edges should be level with those of the "
            "base. If they are not, sew the next one a thread nearer to the corner.",
            (Picture((*opened[:2], _over(first, base, c)), "The corner pressed over its seam."),),
        ),
        *_others(measures, base, c, roles, opened),
        Step(
            "Measure",
            f"Each unit should now measure {measures.say_unfinished}, as large as the base was cut.",
            (Picture((*opened, *dimensions(*base)), f"The finished unit, {measures.say_unfinished}."),),
        ),
    )


def _trim_pictures(
    laid: Sequence[Item], place: str, base: tuple[Exact, Exact], c: Exact, slant: Exact, seam: Exact
) -> tuple[Picture, Picture]:
    """The cut outside the seam; the cloth is turned so that what is kept lies under the ruler."""
    start, end = _line_at(place, base, c)
    outward = {"tl": (-1, -1), "tr": (1, -1), "br": (1, 1), "bl": (-1, 1)}[place]
    half = slant / 2
    ends = (at(corner.x + outward[0] * half, corner.y + outward[1] * half) for corner in (start, end))
    # The line ends at the edges of the square, a little sooner than the seam does.
    first, second = ends
    share = half
    dx, dy = (1, -1) if place in ("tl", "br") else (1, 1)
    cut = Line("cut", at(first.x + dx * share, first.y + dy * share), at(second.x - dx * share, second.y - dy * share))
    beside = (at(-outward[0] * half, -outward[1] * half), seam)
    kept_left = {"tl": 3, "br": -1, "tr": 5, "bl": 1}[place]
    says = "The corner cut off outside the seam"
    return cutting_pair(laid, cut, says, (kept_left, kept_left + 4), beside)


def _over(place: str, base: tuple[Exact, Exact], c: Exact) -> Press:
    """From inside the base out to the corner."""
    x, y = _square_at(place, base, c)
    near, far = c * Fraction(3, 5), c * Fraction(1, 5)
    mirrored_x, mirrored_y = "r" in place, "b" in place

    def inside(distance: Exact) -> Point:
        return at(x + (c - distance if mirrored_x else distance), y + (c - distance if mirrored_y else distance))

    return Press(inside(near), inside(far))


def _others(
    measures: Measures, base: tuple[Exact, Exact], c: Exact, roles: Sequence[int], opened: Sequence[Cloth]
) -> tuple[Step, ...]:
    """The other corners, when there are any."""
    places = measures.corners
    if len(places) < 2:
        return ()
    second = places[1]
    x, y = _square_at(second, base, c)
    laid: tuple[Item, ...] = (
        *opened[:2],
        Cloth(roles[1], box(c, c, x, y), "wrong"),
        Line("sewn", *_line_at(second, base, c)),
    )
    overlap = (
        f" The squares overlap, as they should: so the point comes out {measures.say_seam} below the edge."
        if 2 * c > base[0]
        else ""
    )
    text = (
        "Do the same at the other end."
        if len(places) == 2
        else "Do the same at the other corners, one after the other."
    )
    return (Step("Repeat", text + overlap, (Picture(laid, "The next small square laid on and sewn."),)),)
