"""The eight symmetries of the square, as ways to turn and mirror what lies in a box.

A symmetry is a whole-number matrix; y runs downward, so a quarter turn clockwise on the page takes
right (1, 0) to down (0, 1). After the matrix the box is moved back, so that its top left corner is the origin again.
"""

from __future__ import annotations

from msgspec import Struct

from blockdsl.geometry.number import Exact, square_root
from blockdsl.geometry.polygon import Point, Polygon


class Symmetry(Struct, frozen=True):
    """(x, y) goes to (x_from_x·x + x_from_y·y, y_from_x·x + y_from_y·y), each number -1, 0 or 1."""

    x_from_x: int
    x_from_y: int
    y_from_x: int
    y_from_y: int

    def then(self, other: Symmetry) -> Symmetry:
        """This symmetry first, the other after it."""
        return Symmetry(
            other.x_from_x * self.x_from_x + other.x_from_y * self.y_from_x,
            other.x_from_x * self.x_from_y + other.x_from_y * self.y_from_y,
            other.y_from_x * self.x_from_x + other.y_from_y * self.y_from_x,
            other.y_from_x * self.x_from_y + other.y_from_y * self.y_from_y,
        )

    @property
    def inverse(self) -> Symmetry:
        """The symmetry that undoes this one; for such matrices the transpose."""
        return Symmetry(self.x_from_x, self.y_from_x, self.x_from_y, self.y_from_y)

    @property
    def is_mirrored(self) -> bool:
        """Whether a shape comes out as its mirror image."""
        return self.x_from_x * self.y_from_y - self.x_from_y * self.y_from_x < 0

    @property
    def swaps_sides(self) -> bool:
        """Whether the width of a box becomes its height."""
        return self.x_from_x == 0

    def turned_extent(self, width: Exact, height: Exact) -> tuple[Exact, Exact]:
        """Width and height of the turned box."""
        return (height, width) if self.swaps_sides else (width, height)

    def apply(self, point: Point, width: Exact, height: Exact) -> Point:
        """Where a point of a width × height box comes to lie; both boxes have their origin top left."""
        return Point(
            _place(self.x_from_x, point.x, width) if self.x_from_x else _place(self.x_from_y, point.y, height),
            _place(self.y_from_y, point.y, height) if self.y_from_y else _place(self.y_from_x, point.x, width),
        )

    def apply_polygon(self, polygon: Polygon, width: Exact, height: Exact) -> Polygon:
        """The polygon in the turned box; one that runs clockwise still does, from the same first corner."""
        corners = tuple(self.apply(corner, width, height) for corner in polygon)
        return (*corners[:1], *reversed(corners[1:])) if self.is_mirrored else corners

    def apply_direction(self, direction: Point) -> Point:
        """Where a direction points afterwards."""
        x, y = direction
        return Point(self.x_from_x * x + self.x_from_y * y, self.y_from_x * x + self.y_from_y * y)


class Turn(Struct, frozen=True):
    """A symmetry of the square, after an eighth turn clockwise where `eighth` is set: points of a star need both."""

    symmetry: Symmetry
    eighth: bool = False

    def apply_direction(self, direction: Point) -> Point:
        """Where a direction points afterwards; a point's place but for where the whole then lies."""
        return self.symmetry.apply_direction(eighth_clockwise(direction) if self.eighth else direction)


def eighth_clockwise(point: Point) -> Point:
    """A point after an eighth turn clockwise on the page about the origin."""
    return Point((point.x - point.y) * _HALF_ROOT, (point.x + point.y) * _HALF_ROOT)


def _place(way: int, along: Exact, length: Exact) -> Exact:
    return along if way > 0 else length - along


IDENTITY = Symmetry(1, 0, 0, 1)
QUARTER_CLOCKWISE = Symmetry(0, -1, 1, 0)
QUARTER_ANTICLOCKWISE = Symmetry(0, 1, -1, 0)
HALF_TURN = Symmetry(-1, 0, 0, -1)
MIRROR = Symmetry(-1, 0, 0, 1)  # left for right

_HALF_ROOT = square_root(2) / 2
_QUARTERS = (IDENTITY, QUARTER_CLOCKWISE, HALF_TURN, QUARTER_ANTICLOCKWISE)
ALL_EIGHT = (*_QUARTERS, *(MIRROR.then(quarter) for quarter in _QUARTERS))

_MARKS = {">": QUARTER_CLOCKWISE, "<": QUARTER_ANTICLOCKWISE, "~": MIRROR}


def from_turns(marks: str) -> Symmetry:
    """The symmetry that the marks `>`, `<` and `~` after a cell ask for, applied in order from left to right.

    Errors: KeyError for any other mark (the grammar lets none through).
    """
    whole = IDENTITY
    for mark in marks:
        whole = whole.then(_MARKS[mark])
    return whole
