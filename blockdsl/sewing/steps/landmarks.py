"""What shows how a part lies: the shortest landmark that leaves one placing, proved by trying all of them.

A part can be sewn by each of its edges that are as long as the one that lies along the seam. Each such turning gives a
placing; those that look the same are one. A landmark is taken when it holds in the true placing and in no other.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import combinations
from typing import Final

from msgspec import Struct, structs

from blockdsl.geometry import Exact, Point, Polygon, sign, to_float
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import cross, dot, edges, step
from blockdsl.model import Patch
from blockdsl.sewing.steps.action import Landmark, LandmarkKind, Position
from blockdsl.sewing.steps.directions import OPPOSITE, ORDER, corner_positions, outward, towards
from blockdsl.sewing.steps.step import Ingredient

_KINDS: Final[tuple[LandmarkKind, ...]] = ("edge", "corner", "middle")
Turn = tuple[Exact, Exact]
"""Cosine and sine of a turn clockwise on the page."""
_NO_TURN: Final[Turn] = (Fraction(1), Fraction(0))
_DIAMOND, _HEXAGON = 4, 6
_PLAINLY: Final = 1e-6
"""Twice the area of a triangle that is surely not flat, far above what rounding does to grid squares."""
Told = dict[tuple[LandmarkKind, Position], str]
"""What is seen where: a fabric along an edge, at a corner, in the middle of an edge."""


class Lying(Struct, frozen=True):
    """How a part is said to lie. `landmarks` are none where it looks the same every way.

    `is_open` says that several placings are left that nothing tells apart but a mark at the top.
    """

    landmarks: tuple[Landmark, ...] = ()
    is_open: bool = False


NOTHING: Final = Lying()


def lying(part: Ingredient, line: Sequence[Point], *, by_edge: bool = False) -> Lying:
    """How a part lies that is sewn along the line, by fabrics and for a single patch by its form.

    `by_edge`: of a patch by its long edge rather than by a corner.
    """
    outline = part.outline
    side = None if outline is None else along(outline, line)
    if outline is None or side is None:
        return NOTHING
    turns = [turn for turn in _turns(outline, side) if not _looks_alike(part.picture, turn)]
    if not turns:
        return NOTHING
    if len(part.picture) == 1:
        return _of_patch(outline, turns, by_edge=by_edge)
    return _of_unit(part, outline, turns)


def _of_unit(part: Ingredient, outline: Polygon, turns: Sequence[Turn]) -> Lying:
    """By its point, its fabrics, or the letters of its patches; at last by a mark at its top."""
    view = _View(part.picture, outline, [patch.fabric for patch in part.picture])
    point = view.point()
    if point is not None and not any(point in view.tips(turn) for turn in turns):
        return Lying((Landmark("point", (point,)),))
    found = _first(view.told(_NO_TURN), [view.told(turn) for turn in turns], view.shares)
    if found:
        return Lying(found)
    view = _View(part.picture, outline, part.letters)
    found = _first(view.told(_NO_TURN), [view.told(turn) for turn in turns], view.shares)
    if found:
        return Lying(tuple(structs.replace(each, fabric="", letter=each.fabric) for each in found))
    return Lying((Landmark("mark", (towards(part.top),)),), is_open=True)


def along(outline: Polygon, line: Sequence[Point]) -> int | None:
    """Which edge of the outline lies along the first stretch of a seam."""
    way = step(line[0], line[1])
    plain = [(to_float(corner.x), to_float(corner.y)) for corner in (*line[:2], *outline)]
    for number, (start, end) in enumerate(edges(outline)):
        if _is_off(plain[:2], plain[2 + number]):
            continue
        if sign(cross(way, step(start, end))) or sign(cross(way, step(line[0], start))):
            continue
        low, high = sorted((dot(way, step(line[0], start)), dot(way, step(line[0], end))))
        if sign(high) > 0 and sign(low - dot(way, way)) < 0:
            return number
    return None


def seen_along(part: Ingredient, line: Sequence[Point]) -> str:
    """The fabric all along the edge that lies along a seam, and along no other edge of the part; else nothing."""
    outline = part.outline
    side = None if outline is None else along(outline, line)
    if outline is None or side is None:
        return ""
    return _View(part.picture, outline, [patch.fabric for patch in part.picture]).alone_along(side)


def is_longest(outline: Polygon, side: int) -> bool:
    """Whether no edge of an outline is longer than this one."""
    lengths = [dot(way, way) for way in (step(start, end) for start, end in edges(outline))]
    return all(sign(lengths[side] - length) >= 0 for length in lengths)


def _is_off(line: Sequence[tuple[float, float]], spot: tuple[float, float]) -> bool:
    """Whether a spot plainly lies beside a line, so that nothing need be worked out exactly."""
    (ax, ay), (bx, by) = line
    return abs((bx - ax) * (spot[1] - ay) - (by - ay) * (spot[0] - ax)) > _PLAINLY


def _turns(outline: Polygon, side: int) -> list[Turn]:
    """The turns, but none at all, that lay another edge of the same length where this one lies."""
    ways = [step(start, end) for start, end in edges(outline)]
    here = ways[side]
    square = dot(here, here)
    found: list[Turn] = []
    for number, way in enumerate(ways):
        if number != side and dot(way, way) == square:
            found.append((_share(dot(way, here), square), _share(cross(way, here), square)))
    return found


def _share(part: Exact | int, whole: Exact | int) -> Exact:
    """Exact for whole numbers too."""
    if isinstance(part, int) and isinstance(whole, int):
        return Fraction(part, whole)
    return part * Fraction(1) / whole


def _turned(point: Point, turn: Turn) -> Point:
    cosine, sine = turn
    if not sine:
        return point if sign(cosine) > 0 else Point(-point.x, -point.y)
    if not cosine:
        return Point(-point.y, point.x) if sign(sine) > 0 else Point(point.y, -point.x)
    return Point(cosine * point.x - sine * point.y, sine * point.x + cosine * point.y)


def _looks_alike(picture: Sequence[Patch], turn: Turn) -> bool:
    """Whether the picture looks the same after a turn, wherever it comes to lie."""
    shapes = [(patch.fabric, patch.outline) for patch in picture]
    return _settled(shapes) == _settled([(name, tuple(_turned(c, turn) for c in ring)) for name, ring in shapes])


def _settled(shapes: Sequence[tuple[str, Polygon]]) -> frozenset[tuple[str, frozenset[Point]]]:
    """Fabrics and corners, moved so that the box round all of them begins at (0, 0)."""
    left = min(corner.x for _, ring in shapes for corner in ring)
    top = min(corner.y for _, ring in shapes for corner in ring)
    return frozenset((name, frozenset(Point(c.x - left, c.y - top) for c in ring)) for name, ring in shapes)


def half_turned(one: Sequence[Patch], other: Sequence[Patch]) -> bool:
    """Whether the second picture is the first one rotated a half turn."""
    turned = [(patch.fabric, tuple(Point(-c.x, -c.y) for c in patch.outline)) for patch in one]
    return _settled(turned) == _settled([(patch.fabric, patch.outline) for patch in other])


class _View:
    """A part of several patches: which fabrics or letters its edges and corners show, however it is turned."""

    def __init__(self, picture: Sequence[Patch], outline: Polygon, names: Sequence[str]) -> None:
        self._outline = outline
        self._picture = picture
        self.shares: dict[str, int] = {}
        for name in names:
            self.shares[name] = self.shares.get(name, 0) + 1
        self._edges: list[str] = []
        self._middles: list[str] = []
        self._corners: list[str] = []
        self._geese: list[Point] | None = None
        self._outward: tuple[Point, ...] | None = None
        at: dict[Point, set[str]] = {}
        for patch, name in zip(picture, names, strict=True):
            for corner in patch.outline:
                at.setdefault(corner, set()).add(name)
        for start, end in edges(outline):
            way = step(start, end)
            square = dot(way, way)
            seen: set[str] = set()
            inside: set[str] = set()
            for patch, name in zip(picture, names, strict=True):
                for a, b in edges(patch.outline):
                    if _off(start, way, a) or _off(start, way, b):
                        continue
                    seen.add(name)
                    low, high = dot(way, step(start, a)), dot(way, step(start, b))
                    if sign(2 * low - square) <= 0 <= sign(2 * high - square):
                        inside.add(name)
            self._edges.append(seen.pop() if len(seen) == 1 else "")
            self._middles.append(inside.pop() if len(inside) == 1 else "")
            here = at.get(start, set())
            self._corners.append(next(iter(here)) if len(here) == 1 else "")

    def alone_along(self, side: int) -> str:
        """What is seen along the whole of an edge, and of no other."""
        return self._edges[side] if self._edges.count(self._edges[side]) == 1 else ""

    def told(self, turn: Turn) -> Told:
        """What is seen where after a turn."""
        ring = tuple(_turned(corner, turn) for corner in self._outline)
        found: Told = {}
        clash: set[tuple[LandmarkKind, Position]] = set()
        positions = corner_positions(ring)
        for number, (start, end) in enumerate(edges(ring)):
            place = towards(outward(start, end))
            corner = positions[number]
            seen: list[tuple[LandmarkKind, Position | None, str]] = [
                ("edge", place, self._edges[number]),
                ("middle", place, self._middles[number]),
                ("corner", corner, self._corners[number]),
            ]
            for kind, where, fabric in seen:
                if where is None:
                    continue
                if (kind, where) in found:
                    clash.add((kind, where))
                found[kind, where] = fabric
        return {key: "" if key in clash else fabric for key, fabric in found.items()}

    def point(self, turn: Turn = _NO_TURN) -> Position | None:
        """Where the point of the one goose in it lies; None when there is none or more than one.

        A goose is a triangle whose long edge lies along an outer edge and whose corner opposite that touches the
        outer edge across from it.
        """
        if self._geese is None:
            triangles = (patch.outline for patch in self._picture if len(patch.outline) == 3)
            self._geese = [way for ring in triangles if (way := self._point_of(ring)) is not None]
        return towards(_turned(self._geese[0], turn)) if len(self._geese) == 1 else None

    def tips(self, turn: Turn) -> frozenset[Position]:
        """At which edges a point is seen after a turn: seams meet inside the edge there, leaning in from both sides."""
        if self._outward is None:
            self._outward = tuple(
                outward(start, end) for start, end in edges(self._outline) if self._has_tip(start, step(start, end))
            )
        return frozenset(towards(_turned(way, turn)) for way in self._outward)

    def _has_tip(self, start: Point, way: Point) -> bool:
        """Whether a point lies inside an edge of the outline, which goes this way from its start."""
        square = dot(way, way)
        leans: dict[Point, set[int]] = {}
        for patch in self._picture:
            for a, b in edges(patch.outline):
                for at, to in ((a, b), (b, a)):
                    if _off(start, way, at) or not _off(start, way, to):
                        continue
                    if sign(dot(way, step(start, at))) > 0 and sign(dot(way, step(start, at)) - square) < 0:
                        leans.setdefault(at, set()).add(sign(dot(way, step(at, to))))
        return any({-1, 1} <= found for found in leans.values())

    def _point_of(self, ring: Polygon) -> Point | None:
        """The way in which a goose flies: from its long edge to the corner opposite, when both lie as they should."""
        ways = [step(start, end) for start, end in edges(ring)]
        lengths = [dot(way, way) for way in ways]
        for number in range(3):
            if lengths[number - 1] != lengths[number - 2]:
                continue
            tip, start = ring[number - 1], ring[number]
            for a, b in edges(self._outline):
                side = step(a, b)
                if sign(cross(side, ways[number])) or _off(a, side, tip) or tip in (a, b):
                    continue
                # the tip lies inside an edge of the outline that runs along the goose's long edge
                for c, d in edges(self._outline):
                    if not _off(c, step(c, d), start) and not sign(cross(step(c, d), ways[number])):
                        return outward(a, b)
        return None


def _off(start: Point, way: Point, place: Point) -> bool:
    """Whether a place does not lie on the line."""
    if not way.x:
        return place.x != start.x
    if not way.y:
        return place.y != start.y
    return bool(sign(cross(way, step(start, place))))


def _first(true: Told, others: Sequence[Told], shares: dict[str, int]) -> tuple[Landmark, ...]:
    """The first landmark, or pair of landmarks, that no other placing shares."""
    candidates = list(_candidates(true, shares))
    for landmark in candidates:
        if not any(_holds(landmark, other) for other in others):
            return (landmark,)
    for one, two in combinations(candidates, 2):
        if not any(_holds(one, other) and _holds(two, other) for other in others):
            return one, two
    return ()


def _candidates(true: Told, shares: dict[str, int]) -> Iterator[Landmark]:
    """Landmarks in the order of the trade: whole edges, corners, middles; of each the rarest fabric first."""
    late: list[Landmark] = []
    for kind in _KINDS:
        places: dict[str, list[Position]] = {}
        for place in ORDER:
            fabric = true.get((kind, place), "")
            if fabric:
                places.setdefault(fabric, []).append(place)
        for fabric in sorted(places, key=lambda name: shares[name]):
            where = places[fabric]
            together = Landmark(kind, tuple(where), fabric)
            if len(where) == 1 or (len(where) == 2 and (kind != "edge" or OPPOSITE[where[0]] == where[1])):
                yield together
            elif len(where) == 2:
                late.append(together)
            else:
                late += [Landmark(kind, (place,), fabric) for place in where]
    yield from late


def _holds(landmark: Landmark, told: Told) -> bool:
    """Whether the words for a landmark may be said there too.

    An edge and a corner at one place have the same words. At the top, an edge is meant before a corner.
    """
    return all(
        any(told.get((kind, place)) == landmark.fabric for kind in _said_alike(landmark.kind, place))
        for place in landmark.places
    )


def _said_alike(kind: LandmarkKind, place: Position) -> tuple[LandmarkKind, ...]:
    return ("edge", "corner") if kind == "corner" or (kind == "edge" and "-" in place) else (kind,)


def steadied(part: Ingredient, marks: tuple[Landmark, ...], *, slanted: bool) -> tuple[Landmark, ...]:
    """A diamond or hexagon that lies with two edges upright or level might lie so by other edges: which, is said too.

    Either way a diamond may have a sharp corner at one place, and an edge at the upper left: it matters where what is
    sewn to it is `slanted`. Of a hexagon a corner or an edge may be at the top.
    """
    outline = part.outline or ()
    ways = [step(start, end) for start, end in edges(outline)] if outline else []
    if len({dot(way, way) for way in ways}) != 1 or len(marks) != 1:
        return marks
    is_diamond = len(ways) == _DIAMOND and sign(dot(ways[0], ways[1])) and slanted
    if not (is_diamond and marks[0].kind.endswith("sharp-corner")) and len(ways) != _HEXAGON:
        return marks
    kind: LandmarkKind = "upright-edges" if any(not way.x for way in ways) else "level-edges"
    return (Landmark(kind, ()), *marks) if any(not way.x or not way.y for way in ways) else marks


# --- single patches --------------------------------------------------------------------------------


def _of_patch(outline: Polygon, turns: Sequence[Turn], *, by_edge: bool) -> Lying:
    """By the form of its corners and edges."""
    true, others = _form(outline), [_form(tuple(_turned(c, turn) for c in outline)) for turn in turns]
    # Of a trapezoid, two of whose corners are sharp, the long edge says more than either.
    alone = len(outline) == 4 and any(each.kind == "long-edge" and len(each.places) == 1 for each in true)
    for landmark in sorted(true, key=lambda each: (by_edge or alone) and each.kind != "long-edge"):
        if not any(landmark in other for other in others):
            return Lying((landmark,))
    return Lying((Landmark("mark", ("top",)),), is_open=True)


def _form(outline: Polygon) -> list[Landmark]:
    """What a patch shows by its form alone, plainest first."""
    ring = list(edges(outline))
    ways = [step(start, end) for start, end in ring]
    positions = corner_positions(outline)
    found: list[Landmark] = []
    square = [number for number, way in enumerate(ways) if not sign(dot(ways[number - 1], way))]
    if len(square) == 1:
        found += _at("square-corner", positions[square[0]])
    if len(outline) in (3, 4):
        sharp = [number for number in range(len(outline)) if _is_sharpest(ways, number)]
        for number in sharp:
            found += _at("sharp-corner" if len(sharp) == 1 else "a-sharp-corner", positions[number])
    lengths = [dot(way, way) for way in ways]
    kinds: tuple[tuple[LandmarkKind, Exact], ...] = (("long-edge", max(lengths)), ("short-edge", min(lengths)))
    for kind, wanted in kinds:
        those = [towards(outward(*ring[number])) for number, length in enumerate(lengths) if length == wanted]
        if len(those) < 3 and len(outline) > len(those) + 1:
            found.append(Landmark(kind, tuple(sorted(those, key=ORDER.index))))
    if len(outline) == 4:
        found += [Landmark("upright-edges", ())] if sum(not way.x for way in ways) == 2 else []
        found += [Landmark("level-edges", ())] if sum(not way.y for way in ways) == 2 else []
    return found


def _at(kind: LandmarkKind, place: Position | None) -> list[Landmark]:
    return [] if place is None else [Landmark(kind, (place,))]


def _back(way: Point) -> Point:
    return Point(-way.x, -way.y)


def _sharpness(ways: Sequence[Point], number: int) -> tuple[int, Exact]:
    """Rises as the corner gets sharper: the sign and the square of the cosine between its two edges."""
    back, on = _back(ways[number - 1]), ways[number]
    along_both = dot(back, on)
    way = sign(along_both)
    return way, way * along_both * along_both / (dot(back, back) * dot(on, on))


def _is_sharpest(ways: Sequence[Point], number: int) -> bool:
    own = _sharpness(ways, number)
    if own[0] <= 0:
        return False
    return all(sign(_sharpness(ways, other)[1] - own[1]) <= 0 for other in range(len(ways)))
