"""Stitch and flip: small squares sewn across the corners of a base. Roles: base 0, corners from 1."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.geometry import Exact, Point, sign
from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.message import SizeArgument
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
from blockdsl.sewing.techniques.scene import (
    Item,
    LessonStep,
    Line,
    PressArrow,
    SceneCloth,
    ScenePicture,
    lesson_step,
    show,
)


def _square_at(place: str, base: tuple[Exact, Exact], c: Exact) -> tuple[Exact, Exact]:
    """The upper left corner of a small square of side `c` laid on that corner of the base."""
    return (ZERO if "l" in place else base[0] - c), (ZERO if "t" in place else base[1] - c)


def _line_at(place: str, base: tuple[Exact, Exact], c: Exact) -> tuple[Point, Point]:
    """The diagonal of that small square which cuts the corner off."""
    x, y = _square_at(place, base, c)
    if place in ("tl", "br"):
        return at(x, y + c), at(x + c, y)
    return at(x, y), at(x + c, y + c)


def _flipped(place: str, role: int, base: tuple[Exact, Exact], c: Exact) -> SceneCloth:
    """The small square pressed over its corner: the triangle of it that is seen."""
    x, y = _square_at(place, base, c)
    corner = {"tl": (x, y), "tr": (x + c, y), "br": (x + c, y + c), "bl": (x, y + c)}[place]
    first, second = _line_at(place, base, c)
    return SceneCloth(role, outline((first.x, first.y), (second.x, second.y), corner))


def _roles(measures: Measures, places: Sequence[str]) -> list[int]:
    """The role of each corner; corners of one fabric share the first of them."""
    known = [role for role in measures.cuts if role]
    return [place + 1 if place + 1 in measures.cuts else known[-1] for place in range(len(places))]


def _ground(measures: Measures) -> tuple[SceneCloth, tuple[Exact, Exact], Exact]:
    """The base with its longer side at the top, its sides, and the side of a small square."""
    base, c = measures.cut(0), measures.side(1)
    if base[0] < base[1]:
        base = base[1], base[0]
    return SceneCloth(0, box(*base)), base, c


def flipped(measures: Measures, count: int) -> list[SceneCloth]:
    """The base with its first corners pressed over."""
    ground, base, c = _ground(measures)
    roles = _roles(measures, measures.corners)
    pairs = zip(measures.corners[:count], roles, strict=False)
    return [ground, *(_flipped(place, role, base, c) for place, role in pairs)]


def marked(measures: Measures) -> ScenePicture:
    """A small square with its line."""
    c = measures.side(1)
    role = _roles(measures, measures.corners)[0]
    return show("square-marked", SceneCloth(role, box(c, c), "wrong"), rising("drawn", c))


def laid(measures: Measures, number: int) -> tuple[Item, ...]:
    """The base with the corners before this one pressed over, and the next small square sewn on."""
    _, base, c = _ground(measures)
    place = measures.corners[number]
    role = _roles(measures, measures.corners)[number]
    x, y = _square_at(place, base, c)
    small = SceneCloth(role, box(c, c, x, y), "wrong")
    return (*flipped(measures, number), small, Line("sewn", *_line_at(place, base, c)))


def sewn_on(measures: Measures, number: int) -> ScenePicture:
    """A small square sewn across a corner."""
    return show("corner-sewn" if number == 0 else "next-corner-sewn", *laid(measures, number))


def turned_over(measures: Measures) -> ScenePicture:
    """The first corner pressed over its seam."""
    _, base, c = _ground(measures)
    return show("corner-flipped", *flipped(measures, 1), _over(measures.corners[0], base, c))


def checked(measures: Measures) -> ScenePicture:
    """The finished unit with what it should measure."""
    _, base, _ = _ground(measures)
    return show("flip-measured", *flipped(measures, 4), *dimensions(*base), size=SizeArgument(*base))


def corner_by_corner(measures: Measures) -> tuple[LessonStep, ...]:
    """The steps for whatever corners the unit has."""
    places = measures.corners
    _, base, c = _ground(measures)
    roles = list(dict.fromkeys(_roles(measures, places)))
    pieces = [(0, *base), *((role, c, c) for role in roles[:2])]
    squares = show("base-and-square", *laid_out(pieces, max(base) * GAP))
    cut = _trim_pictures(laid(measures, 0), places[0], base, c, measures.slant, measures.seam)
    count, seam = len(places), measures.allowance
    overlap = "yes" if has_points(measures) else "no"
    return (
        lesson_step("flip-cut", squares, base=measures.piece(0), small=measures.piece(1), count=count),
        lesson_step("flip-mark", marked(measures)),
        lesson_step("flip-sew", sewn_on(measures, 0)),
        lesson_step("flip-cut-corner", *cut, seam=seam),
        lesson_step("flip-press", turned_over(measures)),
        *(
            (lesson_step("flip-repeat", sewn_on(measures, 1), count=count, overlap=overlap, seam=seam),)
            if count > 1
            else ()
        ),
        lesson_step("flip-measure", checked(measures), size=measures.size),
    )


def has_points(measures: Measures) -> bool:
    """Whether two flipped corners of one edge meet in a point: together they are as long as the edge.

    Squares at opposite corners may overlap as they are cut; they make no point.
    """
    over = max(measures.cut(0)) - max(measures.unfinished)
    both = 2 * (measures.side(1) - over - 2 * measures.seam)
    edges = (("tl", "tr", 0), ("bl", "br", 0), ("tl", "bl", 1), ("tr", "br", 1))
    return any(
        {one, other} <= set(measures.corners) and sign(both - measures.finished[side]) >= 0
        for one, other, side in edges
    )


def _trim_pictures(
    items: Sequence[Item], place: str, base: tuple[Exact, Exact], c: Exact, slant: Exact, seam: Exact
) -> tuple[ScenePicture, ScenePicture]:
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
    return cutting_pair(items, cut, "corner-cut-off", (kept_left, kept_left + 4), beside)


def _over(place: str, base: tuple[Exact, Exact], c: Exact) -> PressArrow:
    """From inside the base out to the corner."""
    x, y = _square_at(place, base, c)
    near, far = c * Fraction(3, 5), c * Fraction(1, 5)
    mirrored_x, mirrored_y = "r" in place, "b" in place

    def inside(distance: Exact) -> Point:
        return at(x + (c - distance if mirrored_x else distance), y + (c - distance if mirrored_y else distance))

    return PressArrow(inside(near), inside(far))
