"""Cut patches: each piece of cloth cut by itself, sewn in pairs and rows; and squares with corners."""

from __future__ import annotations

from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.message import Length, SizeArgument
from blockdsl.sewing.techniques.cloth import (
    ZERO,
    at,
    box,
    clipped,
    cut_outline,
    cutting_pair,
    dimensions,
    laid_out,
    last_check,
    outline,
    patches_together,
    pressed,
    rising,
    squares_together,
)
from blockdsl.sewing.techniques.halves import GAP
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import Item, LessonStep, Line, Measured, SceneCloth, lesson_step, show


def squares(measures: Measures) -> tuple[LessonStep, ...]:
    """Plain squares and rectangles, sewn edge to edge: shown with two squares."""
    side, seam = measures.side(0), measures.seam
    inner = side - seam
    sewn = Line("sewn", at(inner, ZERO), at(inner, side))
    opened = (SceneCloth(0, box(inner, side)), SceneCloth(1, box(inner, side, inner)))
    strip = side * Fraction(8, 5)
    cut = Line("cut", at(side, side), at(side, ZERO))
    cloth: tuple[Item, ...] = (SceneCloth(0, box(strip, side)), Measured(at(ZERO, side), at(side, side), side))
    dark_right = 1 in measures.dark or 0 not in measures.dark
    toward = at(inner + side if dark_right else inner - side, side / 2)
    line = (at(inner, ZERO), at(inner, side))
    arrows = pressed(line, toward, Fraction(1, 6), open_seams=measures.open_seams)
    press = "open" if measures.open_seams else "side"
    return (
        lesson_step("squares-cut", *cutting_pair(cloth, cut, "square-from-strip", (0, 4))),
        lesson_step("squares-lay", show("squares-together", *squares_together(1, 0, side))),
        lesson_step(
            "squares-sew",
            show("squares-sewn", *squares_together(1, 0, side), sewn),
            seam=measures.allowance,
            side=Length(side),
            size=SizeArgument(2 * inner, side),
        ),
        lesson_step("squares-press", show("squares-opened", *opened, *arrows), press=press),
        lesson_step("squares-measure", show("squares-joined", *opened, *dimensions(2 * inner, side))),
    )


def diamond(measures: Measures) -> tuple[LessonStep, ...]:
    """A square on its point with a triangle on each side. Roles: centre 0, corners 1 to 4 from the upper left."""
    f, seam = measures.width, measures.seam
    m = f / 2
    top, right, bottom, left = at(m, ZERO), at(f, m), at(m, f), at(ZERO, m)
    centre = SceneCloth(0, (top, right, bottom, left))
    roles = [place if place in measures.cuts else 1 for place in (1, 2, 3, 4)]
    shapes = (
        (outline((0, 0), (m, 0), (0, m)), (top, left)),
        (outline((m, 0), (f, 0), (f, m)), (right, top)),
        (outline((f, m), (f, f), (m, f)), (bottom, right)),
        (outline((0, m), (m, f), (0, f)), (left, bottom)),
    )
    corners = [
        SceneCloth(role, clipped(cut_outline(shape, seam), line))
        for role, (shape, line) in zip(roles, shapes, strict=True)
    ]
    whole = SceneCloth(0, cut_outline(centre.outline, seam))
    upper_left = SceneCloth(roles[0], shapes[0][0])
    laid = patches_together(centre, upper_left, seam, (left, top))
    reach = measures.slant
    sewn = Line("sewn", at(-reach / 2, m + reach / 2), at(m + reach / 2, -reach / 2))
    third = patches_together(centre, SceneCloth(roles[1], shapes[1][0]), seam, (top, right))[1]
    sewn_third = Line("sewn", at(m - reach, -reach), at(f + reach, m + reach))
    s = measures.side(1)
    width, height = measures.cut(0)
    opposite = (whole, corners[0], corners[2])
    arrows = (
        *pressed((left, top), at(ZERO, ZERO), Fraction(3, 8), open_seams=measures.open_seams),
        *pressed((right, bottom), at(f, f), Fraction(3, 8), open_seams=measures.open_seams),
    )
    press = "open" if measures.open_seams else "side"
    opened = (*opposite, corners[1], corners[3])
    squares = show("squares", *laid_out([(0, width, height), (roles[0], s, s)], s * GAP))
    corner = (SceneCloth(roles[0], box(s, s)),)
    return (
        lesson_step("diamond-cut", squares, middle=measures.piece(0), corner=measures.piece(1)),
        lesson_step("diamond-cut-corners", *cutting_pair(corner, rising("cut", s), "cut-once", (-1, -1))),
        lesson_step("diamond-two-sides", show("diamond-first", *laid, sewn), seam=measures.allowance),
        lesson_step("diamond-press", show("diamond-two-opened", *opposite, *arrows), press=press),
        lesson_step("diamond-others", show("diamond-third", *opposite, third, sewn_third), press=press),
        lesson_step(
            "diamond-measure",
            last_check(opened, measures, "diamond-measured"),
            size=measures.size,
            seam=measures.allowance,
        ),
    )
