"""Triangle in a square: a peak with a narrow triangle on each side. Roles: peak 0, left 1, right 2.

The seams lie as those of flying geese do, only steeper: the pictures are made in the same way.
"""

from __future__ import annotations

from blockdsl.geometry import Exact, Polygon, sign
from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.techniques.cloth import (
    ZERO,
    Seam,
    at,
    box,
    cut_outline,
    cutting_pair,
    outline,
    patches_together,
)
from blockdsl.sewing.techniques.geese import checked, opened_goose, over_left, sky_role
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import (
    LessonStep,
    Line,
    Measured,
    SceneCloth,
    SceneDot,
    ScenePicture,
    lesson_step,
    show,
)


def triangle_in_square(measures: Measures) -> tuple[LessonStep, ...]:
    """Cut in mirrored pairs, dot, sew one side, press, sew the other, trim."""
    w, h, seam = measures.width, measures.height, measures.seam
    point, other = at(w / 2, ZERO), sky_role(measures)
    peak: Polygon = (point, at(w, h), at(ZERO, h))
    left, right = outline((0, 0), (w / 2, 0), (0, h)), outline((w / 2, 0), (w, 0), (w, h))
    left_seam, right_seam = (at(ZERO, h), point), (point, at(w, h))
    whole = SceneCloth(0, cut_outline(peak, seam))
    dots = tuple(SceneDot(place) for place in peak)
    first = patches_together(SceneCloth(0, peak), SceneCloth(1, left), seam, left_seam)
    folded = patches_together(SceneCloth(0, peak), SceneCloth(other, right), seam, right_seam)[1]
    half = opened_goose(measures, 1)
    press = "open" if measures.open_seams else "side"
    allowance, across = measures.allowance, w * Fraction(3, 5)
    pieces = (_beside(left, 1, seam, -across), whole, _beside(right, other, seam, across))
    return (
        lesson_step("peak-cut", *_rectangle(measures), piece=measures.piece(1)),
        lesson_step("peak-pairs", _pair(measures, other)),
        lesson_step("peak-dots", show("peak-dots", *pieces, *dots), seam=allowance),
        lesson_step("peak-first", show("peak-first", *first, _sewn(left_seam, seam), dots[0], dots[2]), seam=allowance),
        lesson_step("peak-press", show("peak-first-opened", *half, *over_left(measures)), press=press),
        lesson_step("peak-second", show("peak-second", *half, folded, _sewn(right_seam, seam)), press=press),
        lesson_step("peak-measure", checked(measures), size=measures.size, seam=allowance),
    )


def _beside(shape: Polygon, role: int, seam: Exact, by: Exact) -> SceneCloth:
    return SceneCloth(role, tuple(at(corner.x + by, corner.y) for corner in cut_outline(shape, seam)))


def _sewn(seam: Seam, beyond: Exact) -> Line:
    """The seam from edge to edge, a little beyond both of its ends."""
    start, end = seam
    reach = end.y - start.y
    share = beyond / (reach if sign(reach) > 0 else -reach)
    dx, dy = (end.x - start.x) * share, (end.y - start.y) * share
    return Line("sewn", at(start.x - dx, start.y - dy), at(end.x + dx, end.y + dy))


def _rectangle(measures: Measures) -> tuple[ScenePicture, ScenePicture]:
    """A rectangle cut from a strip."""
    wide, high = sorted(measures.cut(1))
    told = Measured(at(ZERO, high), at(wide, high), wide)
    strip = SceneCloth(1, box(wide * 3, high))
    return cutting_pair((strip, told), Line("cut", at(wide, high), at(wide, ZERO)), "rectangle-from-strip", (0, 4))


def _pair(measures: Measures, other: int) -> ScenePicture:
    """Two rectangles right sides together, cut once from corner to corner: two triangles and their mirror images."""
    wide, high = sorted(measures.cut(1))
    aside = measures.seam / 2
    under, over = SceneCloth(other, box(wide, high, aside, aside)), SceneCloth(1, box(wide, high), "wrong")
    return show("pair-cut", under, over, Line("cut", at(ZERO, high), at(wide, ZERO)))
