"""Eight-point stars of single diamonds: pairs, quarters with a set-in triangle, halves, the star, set-in squares.

Roles: the diamonds 0 and 1 in turn, side triangles 2, corner squares 3. Pictures of what is sewn are finished.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Final

from blockdsl.geometry import Exact, Point, Polygon
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.sewing.message import Length
from blockdsl.sewing.techniques.cloth import (
    ZERO,
    at,
    box,
    cut_outline,
    cutting_pair,
    dimensions,
    patches_together,
    pressed,
    reflected,
    trimmed,
)
from blockdsl.sewing.techniques.measures import ROOT_TWO, Measures
from blockdsl.sewing.techniques.scene import LessonStep, Line, SceneCloth, SceneDot, ScenePicture, lesson_step, show
from blockdsl.shapes import star45
from blockdsl.shapes.star45 import POINTS

DRAWN: Final = (*((0, 1) * (POINTS // 2)), *(2,) * 4, *(3,) * 4)
"""The role of each patch: diamonds in turn, clockwise from the one right of the top, triangles, squares."""


def single_diamonds(measures: Measures) -> tuple[LessonStep, ...]:
    """Cut, dot, sew pairs, set in triangles, join, set in squares."""
    side, seam = measures.width, measures.seam
    patches = _patches(side)
    first, last, top = patches[0], patches[POINTS - 1], patches[POINTS]
    middle, dot, tip = first[0], first[1], first[2]
    together = patches_together(SceneCloth(DRAWN[POINTS - 1], last), SceneCloth(DRAWN[0], first), seam, (dot, middle))
    pair = _shown(patches, (POINTS - 1, 0))
    press = "open" if measures.open_seams else "side"
    arrows = pressed((middle, dot), first[3], Fraction(1, 3), open_seams=measures.open_seams)
    triangle = SceneCloth(2, reflected(cut_outline(top, seam), (dot, tip)), "wrong")
    quarter = _shown(patches, (POINTS - 1, 0, POINTS))
    half = _shown(patches, (POINTS - 1, 0, 1, 2, POINTS, POINTS + 1))
    sides = range(POINTS + 4)
    outer = [SceneCloth(DRAWN[place], cut_outline(patches[place], seam)) for place in range(POINTS, len(patches))]
    whole = (*trimmed(outer, side, side, seam), *_shown(patches, range(POINTS)))
    set_in = show("star-triangle", *pair, triangle, Line("sewn", dot, _past(dot, tip)), SceneDot(dot))
    return (
        lesson_step("star-cut", *_cut(measures), width=Length(measures.cut(0)[0])),
        lesson_step("star-dots", _dotted(first, seam), seam=measures.allowance),
        lesson_step("star-pairs", show("star-pair", *together, Line("sewn", _past(dot, middle), dot), SceneDot(dot))),
        lesson_step("star-press", show("star-pair-opened", *pair, *arrows), press=press),
        lesson_step("star-triangle", set_in),
        lesson_step("star-quarters", show("star-quarter", *quarter)),
        lesson_step("star-halves", show("star-half", *half, SceneDot(first[3])), press=press),
        lesson_step("star-join", show("star-joined", *_shown(patches, sides), SceneDot(middle)), press=press),
        lesson_step(
            "star-squares",
            show("star-measured", *whole, *dimensions(*measures.unfinished, -seam, -seam)),
            size=measures.size,
            seam=measures.allowance,
        ),
    )


def _patches(side: Exact) -> tuple[Polygon, ...]:
    filling = ShapeUse(star45.SHAPE.name, ("0", "1", "2", "3"), (Fraction(1),))
    return tuple(patch for _, patch in star45.SHAPE.draw(filling, side, side))


def _shown(patches: Sequence[Polygon], which: Iterable[int]) -> tuple[SceneCloth, ...]:
    return tuple(SceneCloth(DRAWN[place], patches[place]) for place in which)


def _past(start: Point, end: Point) -> Point:
    """A little beyond the end of a line."""
    share = Fraction(1, 14)
    return at(end.x + (end.x - start.x) * share, end.y + (end.y - start.y) * share)


def _dotted(patch: Polygon, seam: Exact) -> ScenePicture:
    """A diamond, wrong side up, with a dot at each corner where the seams cross."""
    return show("star-dots", SceneCloth(0, cut_outline(patch, seam), "wrong"), *(SceneDot(corner) for corner in patch))


def _cut(measures: Measures) -> tuple[ScenePicture, ScenePicture]:
    """A strip cut at 45 degrees into diamonds."""
    width = measures.cut(0)[0]
    along = width * ROOT_TWO
    strip = SceneCloth(0, box(along * 3 + width, width))
    ways = [Line("cut", at(along * n, ZERO), at(along * n + width, width)) for n in range(4)]
    drawn = (Line("drawn", ways[0].start, ways[0].end), Line("drawn", ways[2].start, ways[2].end))
    return cutting_pair((strip, *drawn), ways[1], "diamonds-cut", (1, 1))
