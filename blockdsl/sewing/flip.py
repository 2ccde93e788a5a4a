"""Stitch and flip: a square laid on a corner, sewn corner to corner, trimmed and pressed over."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.sewing.outlines import rectangle
from blockdsl.sewing.recipe import Recipe, RecipePart
from blockdsl.shapes import diamond, geese, half, snowball


def _recipe(
    base: tuple[str, int],
    extent: tuple[Exact, Exact],
    corners: Sequence[tuple[str, int]],
    side: Exact,
    trim: Fraction,
) -> Recipe:
    """One base and a square for each corner (fabrics and roles); corners of one fabric are counted together.

    Shape:  with `trim` the unit comes out larger by half of it on every side: the base by `trim` each way, and the
            squares too, whose seams run at 45° and so move inward by half of it from either edge.
    """
    square = rectangle(side + trim, side + trim)
    roles = dict(reversed(corners))
    counted = Counter(fabric for fabric, _ in corners).items()
    flipped = tuple(RecipePart(fabric, square, "rectangle", count, roles[fabric]) for fabric, count in counted)
    whole = rectangle(extent[0] + trim, extent[1] + trim)
    return Recipe((RecipePart(base[0], whole, "rectangle", 1, base[1]), *flipped), alike=1, trimmed=True)


def _geese(filling: ShapeUse, width: Exact, height: Exact, trim: Fraction) -> Recipe:
    goose, left, right = filling.fabrics
    return _recipe((goose, 1), (width, height), ((left, 0), (right, 2)), height, trim)


def _half(filling: ShapeUse, width: Exact, height: Exact, trim: Fraction) -> Recipe:
    left, right = filling.fabrics
    return _recipe((left, 0), (width, height), ((right, 1),), width, trim)


def _snowball(filling: ShapeUse, width: Exact, height: Exact, trim: Fraction) -> Recipe:
    ball, corner = filling.fabrics
    corners = [(corner, 1 + place) for place in range(len(filling.places))]
    return _recipe((ball, 0), (width, height), corners, filling.numbers[0] * width, trim)


def _diamond(filling: ShapeUse, width: Exact, height: Exact, trim: Fraction) -> Recipe:
    centre, *corners = filling.fabrics
    return _recipe((centre, 2), (width, height), tuple(zip(corners, (0, 1, 3, 4), strict=True)), width / 2, trim)


STITCH_AND_FLIP = {
    geese.SHAPE.name: _geese,
    half.SHAPE.name: _half,
    snowball.SHAPE.name: _snowball,
    diamond.SHAPE.name: _diamond,
}
