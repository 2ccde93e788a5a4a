"""Top, right, upper left …: what an edge or a corner is called by where it lies."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.geometry import Exact, Point, sign
from blockdsl.geometry.polygon import Polygon, bounding_box
from blockdsl.sewing.steps.action import Position

_NAMES: Final[dict[tuple[int, int], Position]] = {
    (0, -1): "top",
    (1, -1): "upper-right",
    (1, 0): "right",
    (1, 1): "lower-right",
    (0, 1): "bottom",
    (-1, 1): "lower-left",
    (-1, 0): "left",
    (-1, -1): "upper-left",
}
ORDER: Final[tuple[Position, ...]] = (
    "top", "bottom", "left", "right", "upper-left", "upper-right", "lower-left", "lower-right"
)  # fmt: skip
"""The order in which places are tried and named."""
OPPOSITE: Final[dict[Position, Position]] = {name: _NAMES[-across, -down] for (across, down), name in _NAMES.items()}


def towards(way: Point) -> Position:
    """The one of eight directions that is nearest: slanted beyond 22 1/2 degrees from upright and from level."""
    across, down = sign(way.x), sign(way.y)
    wide, high = way.x * across, way.y * down
    # tan 22 1/2 degrees is the root of 2, less 1: high / wide > r2 - 1 says the same as (wide + high)² > 2 wide².
    both: Exact = (wide + high) * (wide + high)
    if sign(both - 2 * wide * wide) <= 0:
        down = 0
    elif sign(both - 2 * high * high) <= 0:
        across = 0
    return _NAMES[across, down]


def outward(start: Point, end: Point) -> Point:
    """The way out across an edge of a clockwise outline."""
    return Point(end.y - start.y, start.x - end.x)


def corner_positions(outline: Polygon) -> Sequence[Position | None]:
    """Where each corner lies on the box round an outline; None for one inside it."""
    left, top, right, bottom = bounding_box(outline)
    found: list[Position | None] = []
    for corner in outline:
        across = -1 if corner.x == left else 1 if corner.x == right else 0
        down = -1 if corner.y == top else 1 if corner.y == bottom else 0
        found.append(_NAMES.get((across, down)))
    return found
