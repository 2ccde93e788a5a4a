"""English paper piecing: cloth folded round papers, tacked, and whipped together edge to edge. Shown with hexagons.

The pictures show three hexagons whose sides are four seam allowances long, from the back but for the last one. Large
tacking stitches, about a dozen whip stitches to the inch, papers left in until all neighbours are sewn on: common
practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

from blockdsl.geometry import Exact, Point, Polygon, square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import edges
from blockdsl.sewing.techniques.cloth import ZERO, at, cut_outline, reflected
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import (
    Item,
    LessonStep,
    Line,
    SceneCloth,
    ScenePaper,
    SceneWords,
    lesson_step,
    show,
)

_ROOT_THREE = square_root(3)
_STITCHES = 9


def over_papers(measures: Measures) -> tuple[LessonStep, ...]:
    """Cut papers, pin, fold and tack, whip two together, set in a third, take the papers out."""
    seam = measures.seam
    side = 4 * seam
    half = side * _ROOT_THREE / 2
    left, right = _hexagon(at(ZERO, ZERO), side), _hexagon(at(2 * half, ZERO), side)
    below = _hexagon(at(half, side * Fraction(3, 2)), side)
    first, second, third = _tacked(0, left, seam), _tacked(1, right, seam), _tacked(0, below, seam)
    pair = (*first, *second, *_whipped(left[1], left[2]))
    inner = (*_whipped(below[5], below[0]), *_whipped(below[0], below[1]))
    pin = Line("drawn", at(-side / 2, side / 8), at(side / 2, side / 8))
    opened = (SceneCloth(0, left), SceneCloth(1, right), SceneCloth(0, below))
    cloth = SceneCloth(0, cut_outline(left, seam), "wrong")
    return (
        lesson_step("epp-cut", show("epp-paper", ScenePaper(left), SceneWords(at(ZERO, ZERO), "A"))),
        lesson_step("epp-pin", show("epp-pinned", cloth, ScenePaper(left), pin), seam=measures.allowance),
        lesson_step("epp-fold", show("epp-folded", *first)),
        lesson_step("epp-whip", show("epp-whipped", *pair)),
        lesson_step("epp-next", show("epp-set-in", *pair, *third, *inner)),
        lesson_step("epp-take-out", show("epp-opened", *opened)),
    )


def _hexagon(middle: Point, side: Exact) -> Polygon:
    """A regular hexagon, a corner at the top, clockwise from there."""
    half, short = side * _ROOT_THREE / 2, side / 2
    steps = ((ZERO, -side), (half, -short), (half, short), (ZERO, side), (-half, short), (-half, -short))
    return tuple(at(middle.x + dx, middle.y + dy) for dx, dy in steps)


def _tacked(role: int, patch: Polygon, seam: Exact) -> tuple[Item, ...]:
    """A paper with the cloth folded over it, the right side of the allowances up, and tacked."""
    cut = cut_outline(patch, seam)
    rims = zip(edges(patch), edges(cut), strict=True)
    folds = (SceneCloth(role, reflected((start, out, far, end), (start, end))) for (start, end), (out, far) in rims)
    return (ScenePaper(patch), *folds, *_tacking(patch, seam))


def _tacking(patch: Polygon, seam: Exact) -> Iterator[Line]:
    """Large stitches in the middle of the folded allowances."""
    middle = at(sum((p.x for p in patch), ZERO) / 6, sum((p.y for p in patch), ZERO) / 6)
    # From the middle to a corner is the side, and the allowance a quarter of it; half of that, square to an edge.
    share = 1 - (seam / 2) / ((middle.y - patch[0].y) * _ROOT_THREE / 2)
    inner = [at(middle.x + (p.x - middle.x) * share, middle.y + (p.y - middle.y) * share) for p in patch]
    for place, start in enumerate(inner):
        yield Line("sewn", start, inner[(place + 1) % 6])


def _whipped(start: Point, end: Point) -> Iterator[Line]:
    """Small slanting stitches over an edge."""
    across, down = end.x - start.x, end.y - start.y
    reach = Fraction(1, 28)
    for place in range(1, _STITCHES + 1):
        share = Fraction(place, _STITCHES + 1)
        x, y = start.x + across * share, start.y + down * share
        dx, dy = (across - 2 * down) * reach, (down + 2 * across) * reach
        yield Line("printed", at(x - dx, y - dy), at(x + dx, y + dy))
