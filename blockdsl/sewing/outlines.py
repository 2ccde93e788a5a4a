"""Finished patches that recipes speak of, by their measures."""

from __future__ import annotations

from blockdsl.geometry import Exact, Point, Polygon


def half_square_triangle(leg: Exact) -> Polygon:
    """Right triangle with two equal legs along the straight grain."""
    zero = 0 * leg
    return (Point(zero, zero), Point(leg, zero), Point(zero, leg))


def quarter_square_triangle(long_edge: Exact) -> Polygon:
    """Right triangle with two equal legs, its long edge along the straight grain."""
    zero = 0 * long_edge
    return (Point(zero, zero), Point(long_edge, zero), Point(long_edge / 2, long_edge / 2))


def rectangle(width: Exact, height: Exact) -> Polygon:
    """Upright rectangle."""
    zero = 0 * width
    return (Point(zero, zero), Point(width, zero), Point(width, height), Point(zero, height))
