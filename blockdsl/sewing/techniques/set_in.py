"""Set-in seams: a square set into the V of two pieces whose seam stops at a dot. Roles: square 0, left 1, below 2."""

from __future__ import annotations

from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.techniques.cloth import (
    ZERO,
    at,
    clipped,
    cut_outline,
    dimensions,
    outline,
    patches_together,
    pressed,
    reflected,
    trimmed,
)
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import Item, LessonStep, Line, SceneCloth, SceneDot, lesson_step, show


def into_a_corner(measures: Measures) -> tuple[LessonStep, ...]:
    """Dots, the seam that stops, press, the first edge, the second edge, press and check."""
    f, seam, slant = measures.width, measures.seam, measures.slant
    third = f / 3
    low = f - third
    inner, corner = at(third, low), at(ZERO, f)
    left: Polygon = outline((0, 0), (third, 0), (third, low), (0, f))
    below: Polygon = outline((third, low), (f, low), (f, f), (0, f))
    square: Polygon = outline((third, 0), (f, 0), (f, low), (third, low))
    miter = (corner, inner)
    together = patches_together(SceneCloth(2, below), SceneCloth(1, left), seam, (inner, corner))
    stops = Line("sewn", at(-slant / 2, f + slant / 2), inner)
    under = SceneCloth(2, cut_outline(below, seam))
    over = SceneCloth(1, clipped(cut_outline(left, seam), miter[::-1]))
    pair: tuple[Item, ...] = (under, over)
    arrows = pressed(miter, at(ZERO, low), Fraction(1, 3), open_seams=measures.open_seams)
    whole_square = cut_outline(square, seam)
    first_edge, second_edge = (at(third, ZERO), inner), (inner, at(f, low))
    on_left = SceneCloth(0, reflected(whole_square, first_edge), "wrong")
    sewn_first = Line("sewn", inner, at(third, -seam))
    opened = SceneCloth(0, _inside(whole_square, third, low))
    on_below = SceneCloth(0, reflected(whole_square, second_edge), "wrong")
    sewn_second = Line("sewn", inner, at(f + seam, low))
    pieces = (
        SceneCloth(1, _aside(cut_outline(left, seam), -third / 2, ZERO)),
        SceneCloth(2, _aside(cut_outline(below, seam), ZERO, third / 2)),
        SceneCloth(0, _aside(whole_square, third / 3, -third / 3)),
    )
    dots = (
        SceneDot(at(inner.x - third / 2, inner.y)),
        SceneDot(at(inner.x, inner.y + third / 2)),
        SceneDot(at(inner.x + third / 3, inner.y - third / 3)),
    )
    return (
        lesson_step("set-in-dots", show("set-in-dots", *pieces, *dots), seam=measures.allowance),
        lesson_step("set-in-stop", show("set-in-stopped", *together, stops, SceneDot(inner))),
        lesson_step("set-in-press", show("set-in-pair", *pair, *arrows, SceneDot(inner))),
        lesson_step("set-in-first", show("set-in-first", *pair, on_left, sewn_first, SceneDot(inner))),
        lesson_step("set-in-second", show("set-in-second", *pair, on_below, sewn_second, SceneDot(inner))),
        lesson_step(
            "set-in-measure",
            show(
                "set-in-measured",
                *trimmed((under, over, opened), f, f, seam),
                *dimensions(*measures.unfinished, -seam, -seam),
            ),
            size=measures.size,
        ),
    )


def _inside(shape: Polygon, left: Exact, bottom: Exact) -> Polygon:
    """What shows of the square once both its inner edges are sewn."""
    return tuple(at(max(corner.x, left), min(corner.y, bottom)) for corner in shape)


def _aside(shape: Polygon, dx: Exact, dy: Exact) -> Polygon:
    return tuple(at(corner.x + dx, corner.y + dy) for corner in shape)
