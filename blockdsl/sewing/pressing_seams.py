"""The seams of each unit as the choice of pressing needs them: which way they lead, what lies beside them, their ends.

Everything is in the unit's own frame, which has the box of the unit's first place at (0, 0).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence

from msgspec import Struct

from blockdsl.geometry import Point, sign
from blockdsl.geometry.polygon import cross, dot, edges, step
from blockdsl.model import BlockDesign
from blockdsl.sewing.order import Joined, SeamKind
from blockdsl.sewing.pressing_frames import Frames, moved

_MEETING_AT_A_HUB = 3
SeamKey = tuple[int, int]
"""A seam that is pressed alike in every copy of its unit: the unit's number, and which of the unit's seams."""


class SeamEnd(Struct, frozen=True):
    """A seam that ends at its unit's outline. `inward` leads into the seam, `over` across it to its part 1."""

    place: Point
    inward: Point
    over: Point
    key: SeamKey


class UnitSeam(Struct, frozen=True):
    """Seam number `key[1]` of a unit: the line through all its corners, and the patches that lie along either side.

    `over` is square to its first stretch and points from part 0 (the unit's part of that number) to part 1, the next.
    `kind` is how it is sewn.
    """

    key: SeamKey
    line: tuple[Point, ...]
    over: Point
    beside: tuple[tuple[int, ...], tuple[int, ...]]
    kind: SeamKind


class UnitSeams:
    """The seams of every unit of an order, and for each unit the seams that end at its outline."""

    def __init__(self, design: BlockDesign, frames: Frames) -> None:
        self._design = design
        self._frames = frames
        self._ends: dict[int, list[SeamEnd]] = {}
        self._by_part: dict[int, list[list[SeamEnd]]] = {}
        self._unfanned: set[SeamKey] = set()
        self._seams: dict[int, tuple[UnitSeam, ...]] = {}

    def of(self, number: int) -> tuple[UnitSeam, ...]:
        """The seams that join the unit's own parts."""
        known = self._seams.get(number)
        if known is None:
            node, origin = self._frames.units[number].assembly, self._frames.origin(number)
            known = self._seams[number] = tuple(
                self._seam(node, (number, place), origin) for place in range(len(node.seams))
            )
        return known

    def parts(self, number: int) -> list[tuple[str, object]]:
        """What the parts of a unit are, so that those which are called alike are alike: patches by their fabric."""
        return [
            ("unit", self._frames.number_of(part))
            if isinstance(part, Joined)
            else ("patch", self._design.patches[part.patch].fabric)
            for part in self._frames.units[number].assembly.parts
        ]

    def copies(self, number: int) -> int:
        """How often a unit is made: what holds for it holds for so many seams."""
        return len(self._frames.units[number].places)

    def _seam(self, node: Joined, key: SeamKey, origin: Point) -> UnitSeam:
        seam = node.seams[key[1]]
        line = (seam.start, *seam.turns, seam.end)
        before, after = node.parts[key[1]], node.parts[key[1] + 1]
        here, along = self._beside(after.patches, line)
        back, against = self._beside(before.patches, line)
        # An outline runs clockwise: what lies along an edge lies at its right hand.
        forward = along or (not here and not against)
        way = step(line[0], line[1])
        over = Point(-way.y, way.x) if forward else Point(way.y, -way.x)
        return UnitSeam(key, moved(line, origin), over, (back, here), seam.kind)

    def _beside(self, patches: Sequence[int], line: Sequence[Point]) -> tuple[tuple[int, ...], bool]:
        """The patches with an edge on the line's stretches, and whether the edges of the first run the line's way."""
        found: list[int] = []
        forward = False
        for patch in patches:
            for stretch in range(len(line) - 1):
                a, b = line[stretch], line[stretch + 1]
                way = step(a, b)
                for start, end in edges(self._design.patches[patch].outline):
                    side = step(start, end)
                    if sign(cross(way, side)) or sign(cross(way, step(a, start))):
                        continue
                    low, high = sorted((dot(way, step(a, start)), dot(way, step(a, end))))
                    if sign(high) > 0 and sign(low - dot(way, way)) < 0:
                        found.append(patch)
                        forward = forward or (stretch == 0 and sign(dot(way, side)) > 0)
        return tuple(dict.fromkeys(found)), forward

    def ends(self, number: int) -> list[SeamEnd]:
        """The seams inside a unit that end at its outline, its own and those of its parts."""
        known = self._ends.get(number)
        if known is None:
            known = self._ends[number] = [end for part in self.ends_by_part(number) for end in part]
            for seam in self.of(number):
                known.append(SeamEnd(seam.line[0], step(seam.line[0], seam.line[1]), seam.over, seam.key))
                back = step(seam.line[-1], seam.line[-2])
                last = seam.over if len(seam.line) == 2 else _turned_like(seam)
                if self.hub(seam.key) is not None:  # from the hub on it is pressed to the other side
                    last = Point(-last.x, -last.y)
                known.append(SeamEnd(seam.line[-1], back, last, seam.key))
        return known

    def ends_by_part(self, number: int) -> list[list[SeamEnd]]:
        """For each part of the unit the seams inside it that end at the part's outline, in the unit's frame."""
        if number not in self._by_part:
            self._by_part[number] = self._find_ends_by_part(number)
        return self._by_part[number]

    def _find_ends_by_part(self, number: int) -> list[list[SeamEnd]]:
        found: list[list[SeamEnd]] = []
        for part in self._frames.units[number].assembly.parts:
            if not isinstance(part, Joined):
                found.append([])
                continue
            placed = self._frames.within(part, number)
            found.append(
                [
                    SeamEnd(placed.point(end.place), placed.direction(end.inward), placed.direction(end.over), end.key)
                    for end in self.ends(self._frames.number_of(part))
                ]
            )
        return found

    def hub(self, key: SeamKey) -> Point | None:
        """The place inside a straight seam where at least three seams of either side end, as in the middle of a star.

        There all seams are pressed the same way round, this one too: from the hub on to its other side. None where
        there is no such place, or where it has been said that it cannot be fanned.
        """
        seam = self.of(key[0])[key[1]]
        if seam.kind != "straight" or key in self._unfanned:
            return None
        by_part = self.ends_by_part(key[0])
        sides = [Counter(end.place for end in by_part[key[1] + side]) for side in (0, 1)]
        return next(
            (
                place
                for place, count in sides[0].items()
                if min(count, sides[1][place]) >= _MEETING_AT_A_HUB
                and place not in (seam.line[0], seam.line[-1])
                and on_line(place, seam.line) is not None
            ),
            None,
        )

    def alike(self, number: int) -> list[tuple[SeamKey, SeamKey, bool]]:
        """The seams at a unit's outline that change places when it is turned so that it looks as before.

        Hands cannot tell which of them is which, so they must be pressed alike; where the last is true the choices are
        then opposite ones.
        """
        found = []
        at = {(end.place, _way(end.inward)): end for end in self.ends(number)}
        for placed in self._frames.onto_itself(number):
            for end in at.values():
                other = at.get((placed.point(end.place), _way(placed.direction(end.inward))))
                if other is not None and other.key != end.key:
                    found.append((end.key, other.key, sign(dot(placed.direction(end.over), other.over)) < 0))
        return found

    def leave_unfanned(self, keys: Iterable[SeamKey]) -> None:
        """These seams are pressed to one side from end to end, though seams meet in the middle of them."""
        self._unfanned.update(keys)
        self._ends.clear()
        self._by_part.clear()


def _way(direction: Point) -> tuple[object, object, object]:
    """The same for all lengths of one direction: its slope, and which way along it."""
    if not sign(direction.x):
        return None, sign(direction.y), 0
    return direction.y / direction.x, sign(direction.x), 1


def _turned_like(seam: UnitSeam) -> Point:
    """`over` for the last stretch of a seam that turns: on the same hand as for the first."""
    first, last = step(seam.line[0], seam.line[1]), step(seam.line[-2], seam.line[-1])
    right_hand = sign(dot(Point(-first.y, first.x), seam.over)) > 0
    return Point(-last.y, last.x) if right_hand else Point(last.y, -last.x)


def on_line(place: Point, line: Sequence[Point]) -> int | None:
    """On which stretch of the line the place lies, ends included; None beside it."""
    for stretch in range(len(line) - 1):
        a, b = line[stretch], line[stretch + 1]
        way, to = step(a, b), step(a, place)
        if not sign(cross(way, to)) and sign(dot(way, to)) >= 0 and sign(dot(way, step(place, b))) >= 0:
            return stretch
    return None
