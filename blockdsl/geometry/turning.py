"""By how much one outline is turned to lie as another does."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from blockdsl.geometry.arc import Bend, Curved
from blockdsl.geometry.number import Exact
from blockdsl.geometry.polygon import Point, Polygon, cross, dot, edges, step

Turn = tuple[Exact, Exact]
"""Cosine and sine of an angle, clockwise as seen: y is downward."""


def turn_between(one: Polygon | Curved, other: Polygon | Curved) -> Turn | None:
    """The turn that lays an outline on another; None when no turn does, mirror images among them.

    Takes:  outlines in the same direction, without straight corners, wherever they lie.
    Shape:  of several turns, for what looks the same turned, none at all before any other.
    """
    found = list(_turns(one, other))
    return next((turn for turn in found if turn[0] == 1), found[0] if found else None)


def _turns(one: Polygon | Curved, other: Polygon | Curved) -> Iterator[Turn]:
    sides, onto = _sides(one), _sides(other)
    if len(sides) != len(onto):
        return
    for shift in range(len(sides)):
        shifted = [*onto[shift:], *onto[:shift]]
        first, second = sides[0][0], shifted[0][0]
        length = dot(first, first)
        turn = (dot(first, second) / length, cross(first, second) / length)
        if [(turned(side, turn), bend) for side, bend in sides] == shifted:
            yield turn


def turned(side: Point, turn: Turn) -> Point:
    """A step turned about its beginning."""
    cosine, sine = turn
    return Point(side.x * cosine - side.y * sine, side.x * sine + side.y * cosine)


def _sides(outline: Polygon | Curved) -> Sequence[tuple[Point, tuple[Exact, bool] | None]]:
    """Each side as a step, and how it bends, wherever it lies."""
    if isinstance(outline, Curved):
        return [(step(side.start, side.end), _bend(side.bend)) for side in outline.sides()]
    return [(step(a, b), None) for a, b in edges(outline)]


def _bend(bend: Bend | None) -> tuple[Exact, bool] | None:
    return None if bend is None else (bend.radius, bend.hollow)
