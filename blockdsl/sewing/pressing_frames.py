"""Where each unit of the order lies inside the unit that takes it."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import Struct

from blockdsl.geometry import Point, Polygon
from blockdsl.geometry.symmetry import IDENTITY, Turn
from blockdsl.sewing.order import Assembly, Joined, SubUnit


class Placement(Struct, frozen=True):
    """How a unit, drawn as in its first place, is turned and moved."""

    turn: Turn
    shift: Point

    def point(self, point: Point) -> Point:
        """Where a point of the unit's own box comes to lie."""
        turned = self.turn.apply_direction(point)
        return Point(turned.x + self.shift.x, turned.y + self.shift.y)

    def direction(self, direction: Point) -> Point:
        """Where a direction points afterwards."""
        return self.turn.apply_direction(direction)


class Frames:
    """Looks up units by their patches. Every unit's own frame has its box in the first place at (0, 0)."""

    def __init__(self, units: Sequence[SubUnit]) -> None:
        self.units = units
        self._at: dict[tuple[int, ...], tuple[int, int]] = {}
        for number, unit in enumerate(units):
            for place, found in enumerate(unit.places):
                self._at[found.patches] = number, place

    def number_of(self, node: Assembly) -> int:
        """The number of the unit that a joined node is."""
        return self._at[node.patches][0]

    def origin(self, number: int) -> Point:
        """The corner of a unit's box in its first place, in the block."""
        return self.units[number].places[0].corner

    def direction(self, node: Joined, way: Point) -> Point:
        """Where a direction in a unit's own frame points at this place of it."""
        number, place = self._at[node.patches]
        return self.units[number].places[place].turn.apply_direction(way) if place else way

    def within(self, node: Joined, parent: int) -> Placement:
        """How a part of a unit lies in the unit's own frame."""
        number, place = self._at[node.patches]
        found, own = self.units[number].places[place], self.origin(number)
        if place:
            return self._placement(found.turn, found.shift, own, parent)
        return self._placement(Turn(IDENTITY), Point(own.x - own.x, own.y - own.y), own, parent)

    def onto_itself(self, number: int) -> list[Placement]:
        """The turns of a unit after which it looks as before, in its own frame: hands cannot tell them apart."""
        own = self.origin(number)
        return [self._placement(turn, shift, own, number) for turn, shift in self.units[number].onto_itself]

    def _placement(self, turn: Turn, shift: Point, own: Point, parent: int) -> Placement:
        origin, corner = self.origin(parent), turn.apply_direction(own)
        return Placement(turn, Point(corner.x + shift.x - origin.x, corner.y + shift.y - origin.y))


def moved(points: Sequence[Point], origin: Point) -> Polygon:
    """Points of the block in the frame that has `origin` as its corner."""
    return tuple(Point(point.x - origin.x, point.y - origin.y) for point in points)
