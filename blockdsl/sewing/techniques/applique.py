"""Appliqué: a piece traced, cut, turned under and sewn onto the pieced ground. Shown with a leaf on a square.

Needle-turned edges, blind stitches about 3 mm apart, a close stitch round raw edges: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.parallel import parallel_outside
from blockdsl.sewing.techniques.cloth import at, box
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import Item, LessonStep, Line, SceneCloth, lesson_step, show

_FINE = 24
_EVERY = 2
"""Every second of the fine steps along the leaf has a stitch."""


def turned_and_raw(measures: Measures) -> tuple[LessonStep, ...]:
    """Trace and cut, turn under, lay on, sew down; and the other way, with a raw edge."""
    width, height, seam = measures.width, measures.height, measures.seam
    leaf = _leaf(width, height)
    ground = SceneCloth(0, box(width + 2 * seam, height + 2 * seam, -seam, -seam))
    on_top = SceneCloth(1, leaf)
    cut = SceneCloth(1, parallel_outside(leaf, seam))
    # As far as the leaf, which reaches from a fifth to four fifths of the square along its middle lines.
    creases = (
        Line("drawn", at(width / 2, -seam), at(width / 2, height / 5)),
        Line("drawn", at(width / 2, height * 4 / 5), at(width / 2, height + seam)),
        Line("drawn", at(-seam, height / 2), at(width / 5, height / 2)),
        Line("drawn", at(width * 4 / 5, height / 2), at(width + seam, height / 2)),
    )
    return (
        lesson_step("applique-cut", show("applique-cut", cut, on_top), seam=measures.allowance),
        lesson_step("applique-turn", show("applique-turned", on_top)),
        lesson_step("applique-lay", show("applique-laid", ground, on_top, *creases)),
        lesson_step("applique-sew", show("applique-sewn", ground, on_top, *_stitches(leaf))),
        lesson_step("applique-raw", show("applique-raw", ground, on_top, *_stitches(leaf, each=1))),
        lesson_step("applique-press", show("applique-done", ground, on_top)),
    )


def _leaf(width: Exact, height: Exact) -> Polygon:
    """Two arcs between opposite corners of the middle of the square, each the parabola of its three control points."""
    low, high = Fraction(3, 20), Fraction(17, 20)
    there = [_bent(low, high, low, low, high, low, Fraction(place, _FINE)) for place in range(_FINE)]
    back = [_bent(high, low, high, high, low, high, Fraction(place, _FINE)) for place in range(_FINE)]
    return tuple(at(width * x, height * y) for x, y in (*there, *back))


def _bent(
    x0: Fraction, y0: Fraction, x1: Fraction, y1: Fraction, x2: Fraction, y2: Fraction, t: Fraction
) -> tuple[Fraction, Fraction]:
    """A place on the curve that begins at the first point, ends at the last and leans toward the second."""
    u = 1 - t
    return u * u * x0 + 2 * u * t * x1 + t * t * x2, u * u * y0 + 2 * u * t * y1 + t * t * y2


def _stitches(outline: Polygon, each: int = _EVERY) -> Iterator[Item]:
    """Short stitches from outside the edge onto it, square to it; a longer one at every place where they lie close."""
    count = len(outline)
    reach = Fraction(1, 3) if each == 1 else Fraction(1, 4)
    for place in range(0, count, each):
        before, here, after = outline[place - 1], outline[place], outline[(place + 1) % count]
        along_x, along_y = (after.x - before.x) * reach, (after.y - before.y) * reach
        yield Line("printed", at(here.x + along_y, here.y - along_x), at(here.x - along_y, here.y + along_x))
