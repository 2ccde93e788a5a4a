"""Strip sets: long strips sewn side by side and cut across into segments."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from msgspec.structs import replace

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.sewing.outlines import rectangle
from blockdsl.sewing.recipe import Recipe, RecipePart
from blockdsl.shapes import bars, checker, rails, star45
from blockdsl.shapes.star45 import POINTS


def _set(
    fabrics: Sequence[str], extent: tuple[Exact, Exact], rows: Sequence[int], segments: int, first: int = 0
) -> tuple[RecipePart, ...]:
    """The strips of one strip set whose bands are all alike.

    `extent` is (band, segment), finished; `rows` are those of the unit that its `segments` are, from 1, and `first` is
    where their first patch is drawn.
    """
    band, segment = extent
    patch, bands = rectangle(band, segment), tuple(fabrics)
    return tuple(
        RecipePart(fabric, patch, "strip", count, first + fabrics.index(fabric), segment, segments, bands, tuple(rows))
        for fabric, count in Counter(fabrics).items()
    )


def _rails(filling: ShapeUse, width: Exact, height: Exact, _trim: Fraction) -> Recipe:
    return Recipe(_set(filling.fabrics, (height / len(filling.fabrics), width), (1,), 1), alike=1)


def _bars(filling: ShapeUse, width: Exact, height: Exact, _trim: Fraction) -> Recipe:
    return Recipe(_set(filling.fabrics, (width / len(filling.fabrics), height), (1,), 1), alike=1)


def _checker(filling: ShapeUse, width: Exact, height: Exact, _trim: Fraction) -> Recipe:
    """Rows are segments of one strip set when they have an even number of patches: turned about, they alternate."""
    down, across = (int(number) for number in filling.numbers)
    first = [filling.fabrics[column % 2] for column in range(across)]
    extent, rows = (width / across, height / down), range(1, down + 1)
    if across % 2 == 0 or down == 1:
        return Recipe(_set(first, extent, rows, down), alike=1)
    second = [filling.fabrics[(column + 1) % 2] for column in range(across)]
    odd, even = rows[::2], rows[1::2]
    sets = (*_set(first, extent, odd, len(odd)), *_set(second, extent, even, len(even), first=across))
    return Recipe(sets, alike=1)


def _star45(filling: ShapeUse, width: Exact, height: Exact, _trim: Fraction) -> Recipe:
    """One set for each row of a point: its strips are those of the row, each begun one strip further in than the last.

    Cut at 45° into segments as wide as the strips, the set gives that row for all eight points. Squares and triangles
    are cut as they are for single patches.
    """
    *points, ground, corners = filling.fabrics
    rows = int(filling.numbers[0])
    patches = star45.SHAPE.draw(filling, width, height)
    level = patches[POINTS // 4 * rows * rows][1]  # in the third point one edge of each diamond lies level
    sets = tuple(
        replace(part, cut_as="slanted strip", patch=level, role=row * rows + part.role)
        for row in range(rows)
        for part in _set(_row_of(points, row, rows), (width, width), (row + 1,), POINTS)
    )
    first = POINTS * rows * rows
    triangle = RecipePart(ground, patches[first][1], "quarter square", 1, first)
    square = RecipePart(corners, patches[-1][1], "rectangle", 4, len(patches) - 1)
    return Recipe((*sets, triangle, square), alike=1)


def _row_of(points: Sequence[str], row: int, rows: int) -> tuple[str, ...]:
    """The fabrics of one row of a star's point, from the middle of the star outward."""
    return tuple(points[(row + place) % len(points)] for place in range(rows))


STRIP_SET = {
    rails.SHAPE.name: _rails,
    bars.SHAPE.name: _bars,
    checker.SHAPE.name: _checker,
    star45.SHAPE.name: _star45,
}


def steps_before(filling: ShapeUse) -> int:
    """How many steps come before the one that makes a unit of strip sets; none where each segment is one.

    Of a checkerboard one for each kind of set; of a star the same, then large diamonds, pairs, quarters and halves.
    """
    if is_star(filling):
        return int(filling.numbers[0]) + 4
    if filling.shape != checker.SHAPE.name:
        return 0
    down, across = (int(number) for number in filling.numbers)
    return 0 if down == 1 else 1 + across % 2


def is_star(filling: ShapeUse | None) -> bool:
    """Whether it is the eight-point star, whose points come out of strip sets that are cut at 45°."""
    return filling is not None and filling.shape == star45.SHAPE.name


def seams_of_strip_sets(filling: ShapeUse, patches: int, strips: int, count: int) -> int:
    """How many seams `count` units of `patches` patches take whose sets have so many `strips` in all."""
    if is_star(filling):
        rows = int(filling.numbers[0])
        # Strips to sets, segments to points, points to a star, and its ground set in.
        return strips - strips // rows + count * (POINTS * (rows - 1) + POINTS - 1 + POINTS)
    rows, across = (int(n) for n in filling.numbers) if filling.shape == checker.SHAPE.name else (1, patches)
    sets = -(-strips // across)
    return strips - sets + (rows - 1) * count
