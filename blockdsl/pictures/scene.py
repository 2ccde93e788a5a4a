"""One scene of a technique as marks: cloth of both sides, seams, cuts, arrows, measures, tools."""

from __future__ import annotations

from collections.abc import Sequence
from math import cos, hypot, pi, sin
from typing import Final

from blockdsl.facts.blockfacts import FabricFacts, RulerUnit
from blockdsl.facts.techniquefacts import (
    Cutting,
    Gap,
    Item,
    Line,
    LineKind,
    Measured,
    PressArrow,
    SceneCloth,
    SceneDot,
    ScenePaper,
    ScenePicture,
    SceneWords,
)
from blockdsl.geometry import Point
from blockdsl.geometry.polygon import bounding_box
from blockdsl.marks.display_list import Figure, Mark, PagePoint, Path
from blockdsl.marks.hatch import LINE_WIDTH_PT, HatchLines, clipped_lines, hatch, hatch_ink
from blockdsl.marks.prose import TextStyle, line_centred, line_ending, rectangle, width_of
from blockdsl.marks.theme import ACCENT, INK, QUIET, SMALL_PT, TINT, WHITE, Box
from blockdsl.model.language import Language
from blockdsl.pictures.scene_placing import ScenePlacing, set_scene
from blockdsl.pictures.tools import tools
from blockdsl.wording.lengths import show_measure
from blockdsl.wording.lessons import describe_picture
from blockdsl.wording.messages import Messages, messages

_TOLD: Final = TextStyle(SMALL_PT, "regular", INK)
_NUMBERS: Final = tuple(TextStyle(size_pt, "bold", INK) for size_pt in (11.0, 9.0, 7.5, 6.0, 5.0))
"""The largest in which no number lies on another is taken; those that do so even in the smallest are left out."""
_WRONG_SIDE: Final = HatchLines(0, 3.4, 1.0, 3.0)
_PALE: Final = 0.68
_GROUND_PT: Final = 0.8
"""How far the white ground of a small number reaches beyond it."""
_STROKES: Final[dict[LineKind, tuple[str, float, tuple[float, ...]]]] = {
    "drawn": (QUIET, 0.7, ()),
    "sewn": (INK, 1.1, (3.2, 2.0)),
    "cut": (ACCENT, 1.5, ()),
    "printed": (INK, 0.6, ()),
}
_ORDER: Final = (ScenePaper, SceneCloth, Line, SceneDot, PressArrow, Cutting, Measured, Gap, SceneWords)


def technique_picture(
    picture: ScenePicture, fabrics: Sequence[FabricFacts], unit: RulerUnit, box: Box, language: Language
) -> Figure:
    """The scene in the middle of the box, with what it shows for those who cannot see it."""
    setting = set_scene(picture, box)
    marks: list[Mark] = []
    style, said = _numbers([item for item in picture.items if isinstance(item, SceneWords)], setting)
    # Cloth lies as it is listed; everything else lies on it.
    for item in sorted(picture.items, key=_layer):
        if isinstance(item, SceneWords):
            marks += _number(item, setting, style, on_cloth=_is_on_cloth(item.place, picture)) if item in said else ()
        else:
            marks += _drawn(item, picture, setting, fabrics, unit, messages(language))
    return Figure(describe_picture(picture, unit, language), tuple(marks))


def _layer(item: Item) -> int:
    return max(1, _ORDER.index(type(item)))


def _drawn(
    item: Item,
    picture: ScenePicture,
    setting: ScenePlacing,
    fabrics: Sequence[FabricFacts],
    unit: RulerUnit,
    words: Messages,
) -> tuple[Mark, ...]:
    match item:
        case SceneCloth():
            fabric = fabrics[min(item.role, len(fabrics) - 1)]
            marks = cloth_marks(setting.ring(item.outline), fabric, wrong=item.side == "wrong")
        case ScenePaper():
            marks = (Path((setting.ring(item.outline),), fill=WHITE, stroke=QUIET, stroke_width_pt=0.5),)
        case Line():
            marks = line_marks(item.kind, setting.place(item.start), setting.place(item.end))
        case SceneDot():
            marks = (_dot(setting.place(item.place), 3.4, WHITE), _dot(setting.place(item.place), 2.4, ACCENT))
        case PressArrow():
            marks = arrow_marks(setting.place(item.start), setting.place(item.end))
        case Measured():
            marks = _measured(item, setting, unit, words, over=bool(picture.hand))
        case Gap():
            marks = _gap(item, setting, unit, words)
        case Cutting():
            start, end = setting.place(item.start), setting.place(item.end)
            reach = setting.top_pt, setting.bottom_pt
            right = picture.hand != "left"
            marks = tools(start, end, reach, setting.room_pt, right_handed=right, unit_pt=setting.scale)
    return marks


def cloth_marks(ring: tuple[PagePoint, ...], fabric: FabricFacts, *, wrong: bool) -> tuple[Mark, ...]:
    """A piece of cloth: its colour and hatch, or paler and speckled where its wrong side is seen."""
    edge = Path((ring,), stroke=INK, stroke_width_pt=0.5)
    if not wrong:
        return (Path((ring,), fill=fabric.colour), *hatch(ring, fabric.number, fabric.colour), edge)
    pale = _paler(fabric.colour)
    specks = tuple(clipped_lines(ring, _WRONG_SIDE))
    speckled = (Path(specks, closed=False, stroke=hatch_ink(pale), stroke_width_pt=LINE_WIDTH_PT),) if specks else ()
    return (Path((ring,), fill=pale), *speckled, edge)


def _dot(place: PagePoint, radius: float, colour: str) -> Path:
    ring = tuple((place[0] + radius * cos(pi * step / 8), place[1] + radius * sin(pi * step / 8)) for step in range(16))
    return Path((ring,), fill=colour)


def _paler(colour: str) -> str:
    parts = bytes.fromhex(colour[1:])
    return "#" + "".join(f"{round(part + (255 - part) * _PALE):02x}" for part in parts)


def line_marks(kind: LineKind, start: PagePoint, end: PagePoint) -> tuple[Mark, ...]:
    """A line of its kind, on a white one that keeps it off dark cloth."""
    colour, thickness, dash = _STROKES[kind]
    under = Path((_shorter(start, end, 3.0),), closed=False, stroke=WHITE, stroke_width_pt=thickness + 1.2)
    over = Path(((start, end),), closed=False, stroke=colour, stroke_width_pt=thickness, dash=dash)
    return (under, over)


def _shorter(start: PagePoint, end: PagePoint, by: float) -> tuple[PagePoint, PagePoint]:
    """The line without so much of both its ends, so that the white ground stays within the cloth."""
    dx, dy = end[0] - start[0], end[1] - start[1]
    share = min(0.4, by / (hypot(dx, dy) or 1.0))
    return (start[0] + dx * share, start[1] + dy * share), (end[0] - dx * share, end[1] - dy * share)


def arrow_marks(start: PagePoint, end: PagePoint) -> tuple[Mark, ...]:
    """A stout arrow."""
    dx, dy = end[0] - start[0], end[1] - start[1]
    length = hypot(dx, dy) or 1.0
    ux, uy = dx / length, dy / length
    neck = (end[0] - 7.0 * ux, end[1] - 7.0 * uy)

    def beside(place: PagePoint, by: float) -> PagePoint:
        return place[0] - uy * by, place[1] + ux * by

    ring = (
        beside(start, 1.5), beside(neck, 1.5), beside(neck, 4.5), end,
        beside(neck, -4.5), beside(neck, -1.5), beside(start, -1.5),
    )  # fmt: skip
    return (
        Path((ring,), stroke=WHITE, stroke_width_pt=2.0),
        Path((ring,), fill=INK),
    )


def _measured(
    item: Measured, setting: ScenePlacing, unit: RulerUnit, words: Messages, *, over: bool
) -> tuple[Mark, ...]:
    """A length below a level side (or `over` it) or at the left of an upright one, between two ticks."""
    (x0, y0), (x1, y1) = setting.place(item.start), setting.place(item.end)
    said = show_measure(item.length, unit, words)
    if abs(x1 - x0) > abs(y1 - y0):
        low = y0 if y0 > (setting.top_pt + setting.bottom_pt) / 2 else setting.bottom_pt
        y, left, right = (setting.top_pt if over else low) + (-5.0 if over else 5.0), min(x0, x1), max(x0, x1)
        beyond = y + (-7.5 if over else 7.5)
        ticks = (((left, y), (right, y)), ((left, y - 2), (left, y + 2)), ((right, y - 2), (right, y + 2)))
        middle, wide, high = (left + right) / 2, width_of(said, _TOLD) + 3.0, _TOLD.capitals_pt + 3.0
        ground = rectangle(middle - wide / 2, beyond - high / 2, wide, high, fill=TINT)
        told: tuple[Mark, ...] = (ground, *line_centred(said, middle, beyond, _TOLD))
    else:
        x, top, bottom = min(x0, x1) - 5.0, min(y0, y1), max(y0, y1)
        ticks = (((x, top), (x, bottom)), ((x - 2, top), (x + 2, top)), ((x - 2, bottom), (x + 2, bottom)))
        told = line_ending(said, x - 4.0, (top + bottom) / 2 + _TOLD.capitals_pt / 2, _TOLD)
    return (Path(ticks, closed=False, stroke=QUIET, stroke_width_pt=0.5), *told)


def _is_on_cloth(place: Point, picture: ScenePicture) -> bool:
    """Whether some cloth's box holds a place."""
    boxes = (bounding_box(item.outline) for item in picture.items if isinstance(item, SceneCloth))
    return any(left < place.x < right and top < place.y < bottom for left, top, right, bottom in boxes)


def _numbers(items: Sequence[SceneWords], setting: ScenePlacing) -> tuple[TextStyle, list[SceneWords]]:
    """In which style the numbers of a picture are drawn, and which of them find room."""
    kept: list[SceneWords] = []
    for style in _NUMBERS:
        kept = []
        for item in items:
            if not any(_overlap(item, other, setting, style) for other in kept):
                kept.append(item)
        if len(kept) == len(items):
            return style, kept
    return _NUMBERS[-1], kept


def _overlap(one: SceneWords, other: SceneWords, setting: ScenePlacing, style: TextStyle) -> bool:
    (ax, ay), (bx, by) = setting.place(one.place), setting.place(other.place)
    wide = (width_of(one.text, style) + width_of(other.text, style)) / 2 + 2 * _GROUND_PT
    return abs(ax - bx) < wide and abs(ay - by) < style.capitals_pt + 2 * _GROUND_PT


def _number(item: SceneWords, setting: ScenePlacing, style: TextStyle, *, on_cloth: bool) -> tuple[Mark, ...]:
    """A number, on a white ground where there is cloth that may be as dark as ink."""
    x, y = setting.place(item.place)
    told = line_centred(item.text, x, y, style)
    if not on_cloth:
        return told
    around = 2 * _GROUND_PT if style != _NUMBERS[0] else 4.0
    wide, high = width_of(item.text, style) + around, style.capitals_pt + around
    return (rectangle(x - wide / 2, y - high / 2, wide, high, fill=WHITE), *told)


def _gap(item: Gap, setting: ScenePlacing, unit: RulerUnit, words: Messages) -> tuple[Mark, ...]:
    """The short way between two lines, its length on a white ground a little further on."""
    start, end = setting.place(item.start), setting.place(item.end)
    dx, dy = start[0] - end[0], start[1] - end[1]
    length = hypot(dx, dy) or 1.0
    said = show_measure(item.length, unit, words)
    width, height = width_of(said, _TOLD) + 4.0, _TOLD.capitals_pt + 4.0
    reach = 6.0 + (abs(dx) * width + abs(dy) * height) / (2 * length)
    x, y = start[0] + dx / length * reach, start[1] + dy / length * reach
    return (
        Path(((start, end),), closed=False, stroke=WHITE, stroke_width_pt=3.4),
        Path(((start, end), (start, (x, y))), closed=False, stroke=ACCENT, stroke_width_pt=0.9),
        rectangle(x - width / 2, y - height / 2, width, height, fill=WHITE, stroke=ACCENT, stroke_width_pt=0.4),
        *line_centred(said, x, y, _TOLD),
    )
