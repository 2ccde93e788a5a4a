"""What a step's picture is made of: cloth, lines, tools and measures, in the true sizes of the unit at hand."""

from __future__ import annotations

from typing import Literal

from msgspec import Struct

from blockdsl.geometry import Exact, Point, Polygon
from blockdsl.sewing.message import Argument, Message, message

Side = Literal["right", "wrong"]
Hand = Literal["right", "left"]
LineKind = Literal["drawn", "sewn", "cut", "printed"]


class SceneCloth(Struct, frozen=True):
    """A piece of the fabric of `role` (the shape's own order of fabrics), the side that is seen."""

    role: int
    outline: Polygon
    side: Side = "right"


class ScenePaper(Struct, frozen=True):
    """A foundation paper."""

    outline: Polygon


class Line(Struct, frozen=True):
    """A straight line on the cloth: drawn with a pencil, sewn, to be cut, or printed on a foundation."""

    kind: LineKind
    start: Point
    end: Point


class SceneDot(Struct, frozen=True):
    """A dot on the cloth, where a seam begins or stops."""

    place: Point


class PressArrow(Struct, frozen=True):
    """An arrow: the seam allowances are pressed that way."""

    start: Point
    end: Point


class Measured(Struct, frozen=True):
    """A length written beside the picture, between two places on its left or lower edge."""

    start: Point
    end: Point
    length: Exact


class Gap(Struct, frozen=True):
    """The seam allowance written where a scene shows it: between a line and the place beside it."""

    start: Point
    end: Point
    length: Exact


class SceneWords(Struct, frozen=True):
    """A short word or number in the picture, its middle at a place."""

    place: Point
    text: str


class Cutting(Struct, frozen=True):
    """Ruler, cutter and hand along a line that is cut away from the body, from `start` to `end`."""

    start: Point
    end: Point


Item = SceneCloth | ScenePaper | Line | SceneDot | PressArrow | Measured | Gap | SceneWords | Cutting


class ScenePicture(Struct, frozen=True):
    """One picture, what it shows, for those who cannot see it, and how far it is turned (clockwise, eighths).

    `hand` says for whom the tools lie as they do.
    """

    items: tuple[Item, ...]
    shows: Message
    turn_eighths: int = 0
    hand: Hand | None = None


class LessonStep(Struct, frozen=True):
    """One thing to do: the key of what is said of it, and one picture or a pair for right and left hand."""

    key: str
    pictures: tuple[ScenePicture, ...]
    arguments: tuple[tuple[str, Argument], ...] = ()

    @property
    def title(self) -> Message:
        """Its name."""
        return Message(f"{self.key}.title", self.arguments)

    @property
    def text(self) -> Message:
        """What to do, and why."""
        return Message(self.key, self.arguments)


def lesson_step(key: str, *pictures: ScenePicture, **arguments: Argument) -> LessonStep:
    """A step of a lesson with the arguments of its message."""
    return LessonStep(f"lesson-{key}", pictures, tuple(arguments.items()))


def show(key: str, *items: Item, turn: int = 0, **arguments: Argument) -> ScenePicture:
    """A picture with the message that says what it shows."""
    return ScenePicture(items, message(f"picture-{key}", **arguments), turn)
