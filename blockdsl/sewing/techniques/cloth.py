"""Cloth laid, sewn, opened and trimmed: the exact outlines of what is seen.

A seam line is kept as the step along it from one place; the cloth on its right hand (walking along it, y downward)
is the part that `clipped` keeps.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from blockdsl.geometry import Exact, Point, Polygon, sign
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.offset import offset_outward
from blockdsl.geometry.polygon import cross, dot, edges, step
from blockdsl.sewing.message import message
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import (
    Cutting,
    Gap,
    Hand,
    Item,
    Line,
    LineKind,
    Measured,
    PressArrow,
    SceneCloth,
    ScenePicture,
    show,
)

ZERO = Fraction(0)
Seam = tuple[Point, Point]

_FAR_SHARE = Fraction(17, 20)

_SINES = (0, 1, 1, 1, 0, -1, -1, -1)
"""Sines of the eighths of a turn, those of 45 degrees as 1: enough to tell which of two places lies lower."""


def at(x: Exact | int, y: Exact | int) -> Point:
    """A place."""
    return Point(x + ZERO, y + ZERO)


def outline(*corners: tuple[Exact | int, Exact | int]) -> Polygon:
    """A polygon from plain numbers."""
    return tuple(at(x, y) for x, y in corners)


def box(width: Exact, height: Exact, x: Exact = ZERO, y: Exact = ZERO) -> Polygon:
    """An upright rectangle from its top left corner."""
    return outline((x, y), (x + width, y), (x + width, y + height), (x, y + height))


def moved(items: Iterable[Item], dx: Exact, dy: Exact) -> tuple[Item, ...]:
    """Cloth, lines and measures further right and down."""
    return tuple(_moved(item, dx, dy) for item in items)


def _moved(item: Item, dx: Exact, dy: Exact) -> Item:
    if isinstance(item, SceneCloth):
        return SceneCloth(item.role, tuple(at(p.x + dx, p.y + dy) for p in item.outline), item.side)
    if isinstance(item, Line):
        return Line(item.kind, at(item.start.x + dx, item.start.y + dy), at(item.end.x + dx, item.end.y + dy))
    if isinstance(item, Measured):
        return Measured(at(item.start.x + dx, item.start.y + dy), at(item.end.x + dx, item.end.y + dy), item.length)
    raise TypeError(f"{type(item).__name__} stays where it is")


# --- lines across a square -------------------------------------------------------------------------


def rising(kind: LineKind, side: Exact, shift: Exact = ZERO, x: Exact = ZERO, y: Exact = ZERO) -> Line:
    """The line of a square from its lower left to its upper right corner; `shift` along the edges, to the right."""
    if sign(shift) <= 0:
        return Line(kind, at(x, y + side + shift), at(x + side + shift, y))
    return Line(kind, at(x + shift, y + side), at(x + side, y + shift))


def falling(kind: LineKind, side: Exact, shift: Exact = ZERO, x: Exact = ZERO, y: Exact = ZERO) -> Line:
    """The line of a square from its upper left to its lower right corner; `shift` along the edges, to the right."""
    if sign(shift) >= 0:
        return Line(kind, at(x + shift, y), at(x + side, y + side - shift))
    return Line(kind, at(x, y - shift), at(x + side + shift, y + side))


def both_sides(side: Exact, slant: Exact) -> tuple[Line, ...]:
    """The drawn line of a square with a seam on each side of it."""
    return rising("drawn", side), rising("sewn", side, -slant), rising("sewn", side, slant)


# --- outlines --------------------------------------------------------------------------------------


def clipped(polygon: Polygon, seam: Seam) -> Polygon:
    """The part of a convex outline on the right hand of a line.

    Source: Sutherland and Hodgman, Reentrant Polygon Clipping, 1974, with exact numbers.
    """
    start, end = seam
    along = step(start, end)
    kept: list[Point] = []
    for first, second in edges(polygon):
        before, after = (sign(cross(along, step(start, corner))) for corner in (first, second))
        if before >= 0:
            kept.append(first)
        if before * after < 0:
            side = step(first, second)
            share = cross(along, step(first, start)) / cross(along, side)
            kept.append(at(first.x + share * side.x, first.y + share * side.y))
    return tuple(kept)


def reflected(polygon: Polygon, seam: Seam) -> Polygon:
    """The outline folded over along a line."""
    start, end = seam
    along = step(start, end)
    length = dot(along, along)
    folded = []
    for corner in polygon:
        reach = step(start, corner)
        share = 2 * dot(reach, along) / length
        folded.append(at(start.x + share * along.x - reach.x, start.y + share * along.y - reach.y))
    return tuple(reversed(folded))


def cut_outline(patch: Polygon, seam: Exact) -> Polygon:
    """The piece that is cut for a finished patch."""
    return offset_outward(patch, seam)


def trimmed(cloths: Sequence[SceneCloth], width: Exact, height: Exact, seam: Exact) -> tuple[SceneCloth, ...]:
    """Cloth cut off at the edges of the unfinished unit, whose finished corner is (0, 0)."""
    left, top, right, bottom = -seam, -seam, width + seam, height + seam
    rim = edges(outline((left, top), (right, top), (right, bottom), (left, bottom)))
    sides = tuple(rim)
    kept = []
    for cloth in cloths:
        shape = cloth.outline
        for side in sides:
            shape = clipped(shape, side) if shape else shape
        if len(shape) > 2:
            kept.append(SceneCloth(cloth.role, shape, cloth.side))
    return tuple(kept)


# --- right sides together --------------------------------------------------------------------------


def turned_corner(side: Exact) -> Exact:
    """How much of a square's corner is folded back, to show what lies underneath."""
    return side * Fraction(3, 10)


def squares_together(top: int, under: int, side: Exact) -> tuple[SceneCloth, ...]:
    """Two squares right sides together, the lower right corner of the upper one folded back."""
    fold = turned_corner(side)
    rest = side - fold
    return (
        SceneCloth(under, box(side, side)),
        SceneCloth(top, outline((0, 0), (side, 0), (side, rest), (rest, side), (0, side)), "wrong"),
        SceneCloth(top, outline((side, rest), (rest, side), (rest, rest))),
    )


def patches_together(under: SceneCloth, over: SceneCloth, seam: Exact, line: Seam) -> tuple[Item, ...]:
    """Two cut patches right sides together along the seam that they share in the finished unit.

    `line` is that seam; `over` lies on its left hand in the finished unit and is folded over onto `under`.
    """
    upper = reflected(cut_outline(over.outline, seam), line)
    return (SceneCloth(under.role, cut_outline(under.outline, seam)), SceneCloth(over.role, upper, "wrong"))


def pressed(seam: Seam, toward: Point, reach: Exact, *, open_seams: bool) -> tuple[PressArrow, ...]:
    """Across the middle of a seam toward a place beside it; both ways when seams are pressed open.

    `reach` is a share of the way from the middle of the seam to that place.
    """
    start, end = seam
    middle = at((start.x + end.x) / 2, (start.y + end.y) / 2)
    dx, dy = (toward.x - middle.x) * reach, (toward.y - middle.y) * reach
    far, near = at(middle.x + dx, middle.y + dy), at(middle.x - dx, middle.y - dy)
    if open_seams:
        return PressArrow(middle, far), PressArrow(middle, near)
    return (PressArrow(near, far),)


# --- tools and measures ----------------------------------------------------------------------------


def dimensions(width: Exact, height: Exact, x: Exact = ZERO, y: Exact = ZERO) -> tuple[Measured, Measured]:
    """The two sides of a rectangle, written below it and at its left."""
    below = Measured(at(x, y + height), at(x + width, y + height), width)
    beside = Measured(at(x, y), at(x, y + height), height)
    return below, beside


def laid_out(pieces: Sequence[tuple[int, Exact, Exact]], gap: Exact) -> tuple[Item, ...]:
    """Rectangles (role, width, height) side by side on one level, each with its measures."""
    items: list[Item] = []
    x: Exact = ZERO
    tallest = max(height for _, _, height in pieces)
    for role, width, height in pieces:
        y = tallest - height
        items.append(SceneCloth(role, box(width, height, x, y)))
        below, beside = dimensions(width, height, x, y)
        items.append(below)
        if width != height:
            items.append(beside)
        x = x + width + gap
    return tuple(items)


def last_check(cloths: Sequence[SceneCloth], measures: Measures, key: str) -> ScenePicture:
    """The finished unit with its allowance, trimmed, and what it should measure."""
    width, height = measures.unfinished
    kept = trimmed(cloths, measures.width, measures.height, measures.seam)
    items: tuple[Item, ...] = (*kept, *dimensions(width, height, -measures.seam, -measures.seam))
    return show(key, *items, size=measures.size)


def cutting_pair(
    items: Sequence[Item],
    cut: Line,
    key: str,
    turns: tuple[int, int],
    beside: tuple[Point, Exact] | None = None,
) -> tuple[ScenePicture, ScenePicture]:
    """The same cut for a right-handed and a left-handed maker, each turned so that the cut leads straight away.

    `beside`: the step from the cut to the seam that it runs along, and how far that is, to be written.
    """

    def picture(hand: Hand, turn: int) -> ScenePicture:
        forward = _forward(cut, turn)
        gap: tuple[Item, ...] = ()
        if beside is not None:
            far = _FAR_SHARE
            x, y = (near + (end - near) * far for near, end in zip(forward.start, forward.end, strict=True))
            gap = (Gap(at(x, y), at(x + beside[0].x, y + beside[0].y), beside[1]),)
        shown = (*items, Line("cut", cut.start, cut.end), *gap, forward)
        return ScenePicture(shown, message(f"picture-{key}"), turn, hand)

    return picture("right", turns[0]), picture("left", turns[1])


def _forward(cut: Line, turn_eighths: int) -> Cutting:
    """From the end that lies nearer to the body once the picture is turned."""
    sine, cosine = _SINES[turn_eighths % 8], _SINES[(turn_eighths + 2) % 8]
    across, down = cut.start.x - cut.end.x, cut.start.y - cut.end.y
    if sign(across * sine + down * cosine) > 0:
        return Cutting(cut.start, cut.end)
    return Cutting(cut.end, cut.start)
