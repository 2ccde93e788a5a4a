"""Mitered border corners. Roles: the quilt center 0, the border 1. Shown is the lower right corner of a top."""

from __future__ import annotations

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.techniques.cloth import ZERO, at, box, clipped, outline, pressed
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import Gap, Item, LessonStep, Line, SceneCloth, SceneDot, lesson_step, show


def border_corner(measures: Measures) -> tuple[LessonStep, ...]:
    """Sew to the dot, fold, draw, sew outward, trim, press open."""
    f, seam, slant = measures.width, measures.seam, measures.slant
    b = f / 3
    inner = f - b
    dot = at(inner, inner)
    center = SceneCloth(0, box(inner + seam, inner + seam))
    tail = b + seam
    # Both strips laid on the top, wrong side up; their ends reach beyond the corner.
    below_laid = SceneCloth(1, box(f + tail, b + 2 * seam, ZERO, inner - b - seam), "wrong")
    right_laid = SceneCloth(1, box(b + 2 * seam, f + tail, inner - b - seam), "wrong")
    below = SceneCloth(1, box(f + tail, b + seam, ZERO, inner))
    right = SceneCloth(1, box(b + seam, f + tail, inner))
    apart = (_aside(right, b / 4, ZERO), _aside(below, ZERO, b / 4))
    first = Line("sewn", at(ZERO, inner), dot)
    second = Line("sewn", at(inner, ZERO), dot)
    # Folded on the diagonal the strips lie edge to edge; the line of the fold runs on over them.
    folded = clipped(box(inner + seam, inner + seam), (at(inner + seam, inner + seam), at(ZERO, ZERO)))
    half = SceneCloth(0, folded, "wrong")
    strip = SceneCloth(1, box(b + seam, f + tail, inner), "wrong")
    line = Line("drawn", dot, at(f + seam, f + seam))
    sewn = Line("sewn", dot, at(f + seam, f + seam))
    cut = Line("cut", at(inner + slant, inner), at(f + seam, f + seam - slant))
    gap = Gap(at(inner + b / 2, inner + b / 2), at(inner + b / 2 + slant / 2, inner + b / 2 - slant / 2), seam)
    miter = (dot, at(f, f))
    right_done = SceneCloth(1, outline((inner, 0), (f + seam, 0), (f + seam, f + seam), (inner, inner)))
    below_done = SceneCloth(1, outline((0, inner), (inner, inner), (f + seam, f + seam), (0, f + seam)))
    done: tuple[Item, ...] = (SceneCloth(0, box(inner, inner)), right_done, below_done)
    arrows = pressed(miter, at(f, inner + b / 2), Fraction(1, 4), open_seams=True)
    return (
        lesson_step("miter-cut", show("miter-strips", center, *apart), seam=measures.allowance),
        lesson_step(
            "miter-sew", show("miter-first", center, below_laid, first, SceneDot(dot)), seam=measures.allowance
        ),
        lesson_step("miter-second", show("miter-second", center, below, right_laid, second, SceneDot(dot))),
        lesson_step("miter-fold", show("miter-folded", strip, half, line, SceneDot(dot))),
        lesson_step("miter-stitch", show("miter-sewn", strip, half, sewn, SceneDot(dot))),
        lesson_step("miter-trim", show("miter-trimmed", strip, half, sewn, cut, gap), seam=measures.allowance),
        lesson_step("miter-press", show("miter-opened", *done, *arrows)),
    )


def _aside(cloth: SceneCloth, dx: Exact, dy: Exact) -> SceneCloth:
    return SceneCloth(cloth.role, tuple(at(corner.x + dx, corner.y + dy) for corner in cloth.outline))
