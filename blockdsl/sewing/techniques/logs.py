"""Log cabins: strips sewn round a middle square, each across all that is there. Roles: middle 0, light 1, dark 2."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import bounding_box
from blockdsl.model import ShapeUse
from blockdsl.sewing.message import Length, SizeArgument
from blockdsl.sewing.techniques.cloth import (
    ZERO,
    Seam,
    at,
    box,
    cut_outline,
    cutting_pair,
    dimensions,
    pressed,
    reflected,
)
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import (
    Item,
    LessonStep,
    Line,
    Measured,
    PressArrow,
    SceneCloth,
    ScenePicture,
    lesson_step,
    show,
)
from blockdsl.shapes import log

ROUNDS: Final = 2
SIDES: Final = 4
LOGS: Final = ROUNDS * SIDES
DRAWN: Final = (0, *((1, 1, 2, 2) * ROUNDS))
"""The role of each patch of the cabin that is shown: two light logs, then two dark ones, round after round."""


def log_cabin(measures: Measures) -> tuple[LessonStep, ...]:
    """Cut, the first log, the second, a round, measure, go on."""
    seam = measures.seam
    patches = _patches(measures.width)
    log = (measures.width / (1 + 2 * ROUNDS)) + 2 * seam
    first_round = _grown_box(patches[: SIDES + 1], seam)
    left, top, right, bottom = first_round
    side = right - left
    press = "open" if measures.open_seams else "side"
    strip: tuple[Item, ...] = (SceneCloth(1, box(log * 4, log)),)
    cut = Line("cut", at(log * 3 / 2, log), at(log * 3 / 2, ZERO))
    measured = (Measured(at(left, bottom), at(right, bottom), side), Measured(at(left, top), at(left, bottom), side))
    opened = show("log-opened", *_so_far(patches, 2, seam), *_arrows(measures, patches))
    round_one = show("log-round-measured", *_so_far(patches, SIDES + 1, seam), *measured)
    return (
        lesson_step("log-cut", *cutting_pair(strip, cut, "square-from-strip", (0, 4)), width=Length(log)),
        lesson_step("log-first", _laid(patches, 1, seam), seam=measures.allowance),
        lesson_step("log-press", opened, press=press),
        lesson_step("log-second", _laid(patches, 2, seam)),
        lesson_step("log-round", _laid(patches, SIDES, seam)),
        lesson_step("log-square", round_one, size=SizeArgument(side, side)),
        lesson_step("log-next", _laid(patches, SIDES + 1, seam)),
        lesson_step(
            "log-measure",
            show("log-measured", *_so_far(patches, LOGS + 1, seam), *dimensions(*measures.unfinished, -seam, -seam)),
            size=measures.size,
        ),
    )


def _patches(side: Exact) -> tuple[Polygon, ...]:
    """The middle and its logs, in the order in which they are sewn."""
    filling = ShapeUse(
        log.SHAPE.name,
        tuple(str(role) for role in DRAWN),
        (Fraction(1), Fraction(1)),
        ("top", "right", "bottom", "left"),
    )
    return tuple(patch for _, patch in log.SHAPE.draw(filling, side, side))


def _grown_box(patches: Sequence[Polygon], seam: Exact) -> tuple[Exact, Exact, Exact, Exact]:
    boxes = [bounding_box(patch) for patch in patches]
    return (
        min(each[0] for each in boxes) - seam,
        min(each[1] for each in boxes) - seam,
        max(each[2] for each in boxes) + seam,
        max(each[3] for each in boxes) + seam,
    )


def _so_far(patches: Sequence[Polygon], count: int, seam: Exact) -> tuple[SceneCloth, ...]:
    """The first patches, pressed: those at the outside keep their allowance there."""
    left, top, right, bottom = _grown_box(patches[:count], seam)
    cloths = []
    for place, patch in enumerate(patches[:count]):
        x0, y0, x1, y1 = bounding_box(patch)
        x0, x1 = (left if x0 == left + seam else x0), (right if x1 == right - seam else x1)
        y0, y1 = (top if y0 == top + seam else y0), (bottom if y1 == bottom - seam else y1)
        cloths.append(SceneCloth(DRAWN[place], box(x1 - x0, y1 - y0, x0, y0)))
    return tuple(cloths)


def _laid(patches: Sequence[Polygon], place: int, seam: Exact) -> ScenePicture:
    """The next log right sides together on what there is, sewn."""
    edge = _edge(patches, place)
    log = SceneCloth(DRAWN[place], reflected(cut_outline(patches[place], seam), edge), "wrong")
    start, end = edge
    along_x = start.y == end.y
    x, y = (seam, ZERO) if along_x else (ZERO, seam)
    low, high = (start, end) if (start.x, start.y) < (end.x, end.y) else (end, start)
    sewn = Line("sewn", at(low.x - x, low.y - y), at(high.x + x, high.y + y))
    return show("log-laid", *_so_far(patches, place, seam), log, sewn)


def _edge(patches: Sequence[Polygon], place: int) -> Seam:
    """The seam of a log, what is sewn already on its right hand."""
    x0, y0, x1, y1 = bounding_box(patches[place])
    match (place - 1) % SIDES:
        case 0:
            return at(x0, y1), at(x1, y1)
        case 1:
            return at(x0, y0), at(x0, y1)
        case 2:
            return at(x1, y0), at(x0, y0)
        case _:
            return at(x1, y1), at(x1, y0)


def _arrows(measures: Measures, patches: Sequence[Polygon]) -> tuple[PressArrow, ...]:
    """From the middle out over the first log."""
    x0, y0, x1, y1 = bounding_box(patches[1])
    middle = at((x0 + x1) / 2, y0)
    return pressed((at(x0, y1), at(x1, y1)), middle, Fraction(1, 2), open_seams=measures.open_seams)
