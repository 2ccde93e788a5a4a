"""Outlines that several shapes share."""

from __future__ import annotations

from typing import Final

from blockdsl.geometry import Exact, Point, Polygon

CORNER_NAMES: Final = ("tl", "tr", "br", "bl")
"""The corners of a unit, clockwise from the upper left."""
LETTERS: Final = "abcdefghijklmnopqrstuvwxyz"
"""What the roles of a shape are called where a lesson writes it."""


def outline(*corners: tuple[Exact, Exact]) -> Polygon:
    """A polygon from its corners, clockwise as seen."""
    return tuple(Point(x, y) for x, y in corners)


def box(left: Exact, top: Exact, right: Exact, bottom: Exact) -> Polygon:
    """An upright rectangle."""
    return outline((left, top), (right, top), (right, bottom), (left, bottom))
