"""Quarter circles: cut by template, matched at the middle and the ends, sewn with the hollow piece on top."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import Final

from blockdsl.geometry import Exact, Point, Polygon, square_root
from blockdsl.geometry.arc import cosine, sine
from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.message import Length
from blockdsl.sewing.techniques.cloth import ZERO, at, box, cutting_pair, dimensions, moved, outline
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import Item, LessonStep, Line, Measured, PressArrow, SceneCloth, lesson_step, show

_FINE: Final = 32
"""Steps along a quarter circle in the pictures, so fine that no corner shows."""
_NOTCHES: Final = (2, 3, 4)
"""Where templates are marked, in steps of fifteen degrees: the thirds and the middle."""
_PINS: Final = (0, *_NOTCHES, 6)


def _arc(radius: Exact, height: Exact, hollow_by: Exact = ZERO) -> list[Point]:
    """From the left edge to the lower edge about the lower left corner of a box; the edges lie `hollow_by` outside.

    Exact:  (1 - t²)/(1 + t²) and 2t/(1 + t²) are cosine and sine of one angle for every t, from 0 to a right one at 1.
    """
    places = []
    for step in range(_FINE + 1):
        t = Fraction(step, _FINE)
        up, over = (1 - t * t) / (1 + t * t), 2 * t / (1 + t * t)
        places.append(at(radius * over, height - radius * up))
    if hollow_by:
        places = [at(-hollow_by, places[0].y), *places, at(places[-1].x, height + hollow_by)]
    return places


def _surround(radius: Exact, width: Exact, height: Exact, seam: Exact) -> Polygon:
    """What lies round it as it is cut."""
    rim = outline((-seam, -seam), (width + seam, -seam), (width + seam, height + seam))
    return (*rim, *reversed(_arc(radius - seam, height, seam)))


def _band(radius: Exact, height: Exact, seam: Exact) -> Polygon:
    """A strip along the outside of the quarter circle as it is cut, half as broad as its radius."""
    return (*_arc(radius + seam, height, seam), *reversed(_arc(radius / 2, height, seam)))


def _marks(inner: Exact, outer: Exact, height: Exact, turns: Sequence[int] = _NOTCHES) -> tuple[Line, ...]:
    """Marks across an allowance, or pins."""
    return tuple(
        Line(
            "drawn",
            at(inner * sine(turn), height - inner * cosine(turn)),
            at(outer * sine(turn), height - outer * cosine(turn)),
        )
        for turn in turns
    )


def _sewn(radius: Exact, height: Exact) -> tuple[Line, ...]:
    """The seam as short straight lines."""
    places = _arc(radius, height)[::2]
    return tuple(Line("sewn", a, b) for a, b in pairwise(places))


def quarter_circles(measures: Measures) -> tuple[LessonStep, ...]:
    """A quarter circle in a square. Roles: surround 0, quarter circle 1."""
    f, seam = measures.width, measures.seam
    radius = measures.radius or f * Fraction(2, 3)
    pie, surround = (*_arc(radius + seam, f, seam), at(-seam, f + seam)), _surround(radius, f, f, seam)
    apart = f / 5 + 2 * seam
    pie_marks, ground_marks = _marks(radius, radius + seam, f), _marks(radius - seam, radius, f)
    pieces: tuple[Item, ...] = (
        *moved((SceneCloth(0, surround), *ground_marks), apart, -apart),
        SceneCloth(1, pie),
        *pie_marks,
    )
    # The surround's wrong side, laid along the curve; the rest of it lies in folds and is left out.
    laid = (SceneCloth(1, pie), SceneCloth(0, _band(radius, f, seam), "wrong"))
    pins = _marks(radius - seam, radius + seam, f, _PINS)
    whole = (SceneCloth(0, surround), SceneCloth(1, _arc_fill(radius, f, seam)))
    near, far = radius - f / 10, radius + f / 8
    arrow = PressArrow(_on_middle(near, f), _on_middle(far, f))
    width, height = measures.unfinished
    side = measures.side(0)
    strip: tuple[Item, ...] = (
        SceneCloth(0, box(side * Fraction(8, 5), side)), Measured(at(ZERO, side), at(side, side), side),
    )  # fmt: skip
    square = Line("cut", at(side, side), at(side, ZERO))
    cut = show("curve-pieces", *pieces)
    checked = show("curve-measured", *whole, *dimensions(width, height, -seam, -seam), size=measures.size)
    return (
        lesson_step(
            "curve-squares",
            *cutting_pair(strip, square, "square-from-strip", (0, 4)),
            surround=measures.piece(0),
            quarter=measures.piece(1),
        ),
        lesson_step("curve-cut", cut),
        lesson_step("curve-pin", show("curve-pinned", *laid, *pins)),
        lesson_step("curve-sew", show("curve-sewn", *laid, *_sewn(radius, f)), seam=measures.allowance),
        lesson_step("curve-press", show("curve-opened", *whole, arrow)),
        lesson_step("curve-measure", checked, size=measures.size, end=Length(f - radius + seam)),
    )


def _arc_fill(radius: Exact, height: Exact, seam: Exact) -> Polygon:
    """The quarter circle as it shows once it is sewn: to the seam, with its outer allowances."""
    return (*_arc(radius, height, seam), at(-seam, height + seam))


def _on_middle(radius: Exact, height: Exact) -> Point:
    """A place on the line from the corner through the middle of the arc."""
    share = square_root(Fraction(1, 2))
    return at(radius * share, height - radius * share)
