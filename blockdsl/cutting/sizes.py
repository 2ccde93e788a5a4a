"""Cut sizes: the finished patch, its allowance all round, and the upright piece of cloth that holds it.

The allowance is added in one place only, by moving every edge outward; the trade's constants follow from it
(with a 1/4 in seam: 1/2 in on a side, 7/8 in on the leg and 1 1/4 in on the long edge of a triangle) and are
never typed in. Rounding up to the ruler's measure happens here and nowhere else.
"""

from __future__ import annotations

from functools import lru_cache

from blockdsl.geometry import Exact, Polygon, ceil_to, floor_to, square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.offset import offset_outward
from blockdsl.geometry.polygon import Point, bounding_box, dot, edges, step

Extent = tuple[Exact, Exact]


def round_up(extent: Extent, measure: Fraction) -> tuple[Fraction, Fraction]:
    """Both sides rounded up to a multiple of `measure`, never down, so that cloth is never short."""
    return ceil_to(extent[0], measure), ceil_to(extent[1], measure)


def round_corner(corner: Exact, exact: Extent, cut: Extent, measure: Fraction) -> Fraction:
    """How far from each corner of a piece its corners are cut off at 45°, on the ruler; nothing when it reads no less.

    Exact:  `corner` of the exact piece and half of what both its sides were rounded up by: so far the cut may move from
            the corner of the larger piece and leave as much cloth. Rounded down, so that cloth is never short.
    """
    return floor_to(corner + ((cut[0] - exact[0]) + (cut[1] - exact[1])) / 2, measure)


def edge_lengths(polygon: Polygon) -> list[Exact]:
    """Lengths of the edges in order. Exact: square roots of sums of squares."""
    lengths: list[Exact] = []
    for start, end in edges(polygon):
        across, down = end.x - start.x, end.y - start.y
        lengths.append(square_root(across * across + down * down) if across and down else _size(across + down))
    return lengths


def _size(x: Exact) -> Exact:
    return x if x >= 0 else -x


@lru_cache(maxsize=4096)
def edge_lengths_with_allowance(patch: Polygon, allowance: Fraction) -> tuple[Exact, ...]:
    """Lengths of the edges of the piece that is cut, remembered: every letter of every block asks again."""
    return tuple(edge_lengths(with_allowance(patch, allowance)))


@lru_cache(maxsize=4096)
def with_allowance(patch: Polygon, allowance: Fraction) -> Polygon:
    """The patch with its seam allowance: every edge moved outward by `allowance`, corners not yet trimmed."""
    return offset_outward(patch, allowance)


def rectangle_for(patch: Polygon, allowance: Fraction) -> Extent:
    """Sides of the rectangle or square to cut for a patch with four right angles, at any angle to the block.

    Shape:  (along the first edge, along the second).
    Exact:  each finished side + 2 × allowance.
    Source: offset of the four edges.
    """
    first, second, *_ = edge_lengths_with_allowance(patch, allowance)
    return first, second


def square_for_half_square_triangle(patch: Polygon, allowance: Fraction) -> Exact:
    """Side of the square that, cut once corner to corner, gives the triangle twice.

    Shape:  right triangle with two equal legs, the legs on the straight grain.
    Exact:  finished leg + allowance × (2 + √2).
    Errors: ValueError when the patch is no such triangle.
    Source: offset of the three edges; agrees with the published "finished + 7/8 in" for quarter-inch seams.
    """
    legs = sorted(edge_lengths_with_allowance(patch, allowance))[:2]
    if len(patch) != 3 or legs[0] != legs[1]:
        raise ValueError("a half-square triangle has two equal legs")
    return legs[0]


def square_for_quarter_square_triangle(patch: Polygon, allowance: Fraction) -> Exact:
    """Side of the square that, cut twice corner to corner, gives the triangle four times.

    Shape:  right triangle with two equal legs, its long edge on the straight grain.
    Exact:  finished long edge + allowance × (2 + 2√2).
    Errors: ValueError when the patch is no such triangle.
    Source: offset of the three edges; agrees with the published "finished + 1 1/4 in" for quarter-inch seams.
    """
    leg, other, long_edge = sorted(edge_lengths_with_allowance(patch, allowance))
    if leg != other:
        raise ValueError("a quarter-square triangle has two equal legs")
    return long_edge


def rectangle_for_right_triangle(patch: Polygon, allowance: Fraction) -> Extent:
    """Sides of the rectangle that, cut once corner to corner, gives a right triangle twice; (shorter, longer).

    Exact:  for legs w, h and long edge d: w + s(1 + (w + d)/h) and h + s(1 + (h + d)/w), s the allowance.
    Shape:  rounding a side up keeps its two edges and moves the cut outward, since the right corner stays where it is:
            the rounded triangle holds the exact one.
    Errors: ValueError when the patch is no right triangle.
    Source: offset of the three edges.
    """
    shorter, longer, long_edge = sorted(edge_lengths_with_allowance(patch, allowance))
    first, second, _ = sorted(((step(a, b)) for a, b in edges(patch)), key=lambda side: dot(side, side))
    if len(patch) != 3 or dot(first, second) != 0 or not long_edge > longer:
        raise ValueError("a right triangle has two edges square to each other")
    return shorter, longer


def box_for(patch: Polygon, allowance: Fraction, grain: Point) -> Extent:
    """Across and along the grain, the rectangle that holds the patch with its allowance.

    Shape:  any; for templates, the cloth that one of them takes. `grain` is any step along the straight grain.
    """
    cut = with_allowance(patch, allowance)
    grain_x, grain_y = grain
    if grain_x and grain_y:
        length = square_root(grain_x * grain_x + grain_y * grain_y)
        along = [(corner.x * grain_x + corner.y * grain_y) / length for corner in cut]
        across = [(corner.x * grain_y - corner.y * grain_x) / length for corner in cut]
        return max(across) - min(across), max(along) - min(along)
    left, top, right, bottom = bounding_box(cut)
    return (right - left, bottom - top) if not grain_x else (bottom - top, right - left)
