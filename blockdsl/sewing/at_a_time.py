"""Units made in batches from whole squares: drawn line, a seam on each side, cut apart.

Counts and handedness of each batch are common practice (no source); the sizes follow from the triangles
that the squares must hold and are checked against published values in tests/outside.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.sewing.outlines import half_square_triangle, quarter_square_triangle
from blockdsl.sewing.recipe import CutAs, Recipe, RecipePart
from blockdsl.shapes import geese, half, hourglass, quarters, split


def _squares(fabrics: Sequence[str], large: Exact, cut_as: CutAs, first_role: int = 0) -> tuple[RecipePart, ...]:
    """One square for each fabric named, in the order in which the shape draws them; a fabric named twice gives two."""
    triangle = quarter_square_triangle(large) if cut_as == "quarter square" else half_square_triangle(large)
    return tuple(
        RecipePart(fabric, triangle, cut_as, count, first_role + fabrics.index(fabric))
        for fabric, count in Counter(fabrics).items()
    )


def _half_two(filling: ShapeUse, width: Exact, _height: Exact, trim: Fraction) -> Recipe:
    """A square of each fabric, sewn on both sides of one corner-to-corner line: two units."""
    return Recipe(_squares(filling.fabrics, width + trim, "half square"), alike=2, seams=2, trimmed=True)


def _half_eight(filling: ShapeUse, width: Exact, _height: Exact, trim: Fraction) -> Recipe:
    """A square of each fabric, sewn on both sides of both diagonals, cut into eight."""
    return Recipe(_squares(filling.fabrics, width + trim, "doubled half square"), alike=8, seams=4, trimmed=True)


def _hourglass_two(filling: ShapeUse, width: Exact, _height: Exact, trim: Fraction) -> Recipe:
    """Two half-square units of the same pair, crossed: two hourglasses."""
    return Recipe(_squares(filling.fabrics, width + trim, "quarter square"), alike=2, seams=4, trimmed=True)


def _quarters_two(filling: ShapeUse, width: Exact, _height: Exact, trim: Fraction) -> Recipe:
    """Half-square units of two pairs, crossed: the halves of each come out left- and right-handed.

    Each pair of squares gives two half-square units, each crossing of two gives two units: four in all.
    """
    return Recipe(_squares(filling.fabrics, width + trim, "quarter square"), alike=2, mirrored=2, seams=8, trimmed=True)


def _split_two(filling: ShapeUse, width: Exact, _height: Exact, trim: Fraction) -> Recipe:
    """Two half-square units of the small triangles, each crossed with a square of the large one."""
    large, right, bottom = filling.fabrics
    small = _squares((right, bottom), width + trim, "quarter square", first_role=1)
    whole = RecipePart(large, half_square_triangle(width + trim), "half square", 2, role=0)
    return Recipe((whole, *small), alike=2, mirrored=2, seams=6, trimmed=True)


def _geese_four(filling: ShapeUse, width: Exact, height: Exact, trim: Fraction) -> Recipe:
    """One large square for the geese, four small ones for the sky.

    The first two small squares become the left sky of two geese and the right sky of the other two, so that
    with two sky fabrics half of the geese are mirror images. A goose trimmed by `trim` in height is trimmed
    by twice that in width.
    """
    goose, left, right = filling.fabrics
    goose_squares = RecipePart(goose, quarter_square_triangle(width + 2 * trim), "quarter square", 1, role=1)
    sky = half_square_triangle(height + trim)
    if left == right:
        return Recipe((goose_squares, RecipePart(left, sky, "half square", 4, role=0)), alike=4, seams=6, trimmed=True)
    skies = (RecipePart(left, sky, "half square", 2, role=0), RecipePart(right, sky, "half square", 2, role=2))
    return Recipe((goose_squares, *skies), alike=2, mirrored=2, seams=6, trimmed=True)


TWO = {
    half.SHAPE.name: _half_two,
    hourglass.SHAPE.name: _hourglass_two,
    quarters.SHAPE.name: _quarters_two,
    split.SHAPE.name: _split_two,
}
FOUR = {geese.SHAPE.name: _geese_four}
EIGHT = {half.SHAPE.name: _half_eight}
