"""Partial seams: four strips around a square, the first sewn in part and finished last.

Roles: the square 0, the strips 1 and 2 in turn.
"""

from __future__ import annotations

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.techniques.cloth import ZERO, at, box, cut_outline, dimensions, pressed, reflected
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import Item, LessonStep, Line, SceneCloth, SceneDot, lesson_step, show

_Box = tuple[Exact, Exact, Exact, Exact]
_JOINED = ("", "bottom", "left", "top", "right")
"""Which edge of the square and of each strip, clockwise from the top, is sewn to what was there before."""


def round_a_square(measures: Measures) -> tuple[LessonStep, ...]:
    """Part of the first seam, the other strips, the rest of the first seam."""
    side, seam = measures.width, measures.seam
    t = side / 3
    stop = at(t * Fraction(4, 3), t)
    pieces = [_opened(place, side, seam) for place in range(5)]
    square, top = pieces[0], pieces[1]
    laid = [_laid(place, side, seam) for place in range(5)]
    part = Line("sewn", at(2 * t + seam, t), stop)
    rest = Line("sewn", at(stop.x + seam * 2, t), at(-seam, t))
    loose = box(stop.x + seam, t + seam, -seam, -seam)
    kept = SceneCloth(1, box(2 * t + seam - stop.x, t + seam, stop.x, -seam))
    folded = SceneCloth(1, reflected(loose, (at(stop.x, t), at(stop.x, ZERO))), "wrong")
    up = pressed((stop, at(2 * t, t)), at((stop.x + 2 * t) / 2, ZERO), Fraction(1, 2), open_seams=False)
    press = "open" if measures.open_seams else "side"
    away: tuple[Item, ...] = (square, pieces[2], pieces[3], kept, folded)
    last: tuple[Item, ...] = (square, pieces[2], pieces[3], pieces[4], laid[1])
    whole = (square, *pieces[2:], top)
    second = show("partial-strip-laid", square, top, laid[2], _seam(2, side, seam))
    third = show("partial-strip-laid", square, top, pieces[2], laid[3], _seam(3, side, seam))
    return (
        lesson_step("partial-lay", show("partial-laid", square, laid[1], part, SceneDot(stop))),
        lesson_step("partial-press", show("partial-opened", square, top, *up)),
        lesson_step("partial-second", second, press=press),
        lesson_step("partial-third", third, press=press),
        lesson_step("partial-last", show("partial-folded", *away, laid[4], _seam(4, side, seam)), press=press),
        lesson_step("partial-finish", show("partial-finish", *last, rest, SceneDot(stop)), press=press),
        lesson_step(
            "partial-measure",
            show("partial-measured", *whole, *dimensions(*measures.unfinished, -seam, -seam)),
            size=measures.size,
        ),
    )


def _place(number: int, side: Exact) -> _Box:
    """The square in the middle, then the strips clockwise from the top: a third wide, two thirds long, finished."""
    t = side / 3
    return (
        (t, t, 2 * t, 2 * t),
        (ZERO, ZERO, 2 * t, t),
        (2 * t, ZERO, side, 2 * t),
        (t, 2 * t, side, side),
        (ZERO, t, t, side),
    )[number]


def _opened(number: int, side: Exact, seam: Exact) -> SceneCloth:
    """A piece as it shows when it is opened: to its seam, and with its allowance at all other edges."""
    left, top, right, bottom = _place(number, side)
    joined = _JOINED[number]
    x0, x1 = (left if joined == "left" else left - seam), (right if joined == "right" else right + seam)
    y0, y1 = (top if joined == "top" else top - seam), (bottom if joined == "bottom" else bottom + seam)
    return SceneCloth(_role(number), box(x1 - x0, y1 - y0, x0, y0))


def _laid(number: int, side: Exact, seam: Exact) -> SceneCloth:
    """A piece right sides together on what it is sewn to."""
    left, top, right, bottom = _place(number, side)
    outline = cut_outline(box(right - left, bottom - top, left, top), seam)
    line = _seam(number, side, ZERO)
    return SceneCloth(_role(number), reflected(outline, (line.start, line.end)), "wrong")


def _seam(number: int, side: Exact, beyond: Exact) -> Line:
    """The seam along the whole joined edge of a strip."""
    left, top, right, bottom = _place(number, side)
    match _JOINED[number]:
        case "left":
            return Line("sewn", at(left, top - beyond), at(left, bottom + beyond))
        case "right":
            return Line("sewn", at(right, top - beyond), at(right, bottom + beyond))
        case "top":
            return Line("sewn", at(left - beyond, top), at(right + beyond, top))
        case _:
            return Line("sewn", at(left - beyond, bottom), at(right + beyond, bottom))


def _role(number: int) -> int:
    return 0 if number == 0 else 1 + (number + 1) % 2
