"""Where a scene lies in its picture: turned, scaled and centred; here its exact places become floats, once."""

from __future__ import annotations

from collections.abc import Iterable
from math import cos, pi, sin
from typing import Final

from msgspec import Struct

from blockdsl.facts.techniquefacts import (
    Cutting,
    Item,
    Line,
    Measured,
    SceneCloth,
    ScenePaper,
    ScenePicture,
    SceneWords,
)
from blockdsl.geometry import Point, to_float
from blockdsl.marks.display_list import PagePoint
from blockdsl.marks.theme import Box

DIMENSION_PT: Final = 17.0
"""Room for a length written below a scene."""
BESIDE_PT: Final = 34.0
"""Room for a length written at the side of a scene."""
TOOLS_PT: Final = 10.0
"""How far a ruler stands out over the cloth at both its ends."""
BESIDE_TOOLS_PT: Final = 7.0
"""What is kept free at both sides of a scene with tools."""
RULER_PT: Final = 42.0
"""Width of the ruler."""
_LARGEST_SCALE: Final = 60.0


class ScenePlacing(Struct, frozen=True):
    """Scene to page: turned by `turn_eighths`, `scale` points for a unit, then moved.

    `top_pt` and `bottom_pt` are where the cloth begins and ends, `room_pt` where the picture does.
    """

    turn_eighths: int
    scale: float
    x_pt: float
    y_pt: float
    top_pt: float
    bottom_pt: float
    room_pt: tuple[float, float]

    def place(self, point: Point) -> PagePoint:
        """The point on the page."""
        x, y = _turned(point, self.turn_eighths)
        return self.x_pt + x * self.scale, self.y_pt + y * self.scale

    def ring(self, points: Iterable[Point]) -> tuple[PagePoint, ...]:
        """An outline on the page."""
        return tuple(self.place(point) for point in points)


def _turned(point: Point, eighths: int) -> PagePoint:
    angle = eighths * pi / 4
    x, y = to_float(point.x), to_float(point.y)
    return x * cos(angle) - y * sin(angle), x * sin(angle) + y * cos(angle)


def _points(items: Iterable[Item]) -> list[Point]:
    points: list[Point] = []
    for item in items:
        match item:
            case SceneCloth() | ScenePaper():
                points += item.outline
            case Line() | Measured():
                points += (item.start, item.end)
            case SceneWords():
                points.append(item.place)
    return points


def set_scene(picture: ScenePicture, box: Box) -> ScenePlacing:
    """The scene as large as the box allows, in its middle, with room for its measures and tools."""
    turn = picture.turn_eighths
    places = [_turned(point, turn) for point in _points(picture.items)]
    left, top = min(x for x, _ in places), min(y for _, y in places)
    width, height = max(x for x, _ in places) - left, max(y for _, y in places) - top
    below, beside = _measure_room(picture)
    above = TOOLS_PT if picture.hand else 0.0
    across = box.width_pt - beside - (2 * BESIDE_TOOLS_PT if picture.hand else 0.0)
    down = box.height_pt - below - 2 * above
    scale = min(across / width, down / height, _LARGEST_SCALE)
    x = box.x_pt + box.width_pt - across - (BESIDE_TOOLS_PT if picture.hand else 0.0) + (across - width * scale) / 2
    # Where there is room the cloth itself stands in the middle, not the cloth with the words at its left.
    x -= min(beside, across - width * scale) / 2
    x += _room_for_ruler(picture, scale, x - left * scale, box)
    # Under the tools a measure stands above the cloth: below it would lie across the wrist.
    y = box.y_pt + above + (below if picture.hand else 0.0) + (down - height * scale) / 2
    room = box.y_pt, box.y_pt + box.height_pt
    return ScenePlacing(turn, scale, x - left * scale, y - top * scale, y, y + height * scale, room)


def _room_for_ruler(picture: ScenePicture, scale: float, x_pt: float, box: Box) -> float:
    """How far to move the scene so that the ruler beside its cut stays in the box."""
    for item in picture.items:
        if isinstance(item, Cutting):
            cut = x_pt + _turned(item.start, picture.turn_eighths)[0] * scale
            if picture.hand == "right":
                return max(0.0, box.x_pt + RULER_PT - cut)
            return min(0.0, box.x_pt + box.width_pt - RULER_PT - cut)
    return 0.0


def _measure_room(picture: ScenePicture) -> tuple[float, float]:
    below = beside = 0.0
    for item in picture.items:
        if isinstance(item, Measured):
            (x0, y0), (x1, y1) = _turned(item.start, picture.turn_eighths), _turned(item.end, picture.turn_eighths)
            if abs(x1 - x0) > abs(y1 - y0):
                below = DIMENSION_PT
            else:
                beside = BESIDE_PT
    return below, beside
