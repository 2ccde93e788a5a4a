"""Stitch and flip: a square laid on a corner of the base, sewn corner to corner, trimmed, pressed over."""

from __future__ import annotations

from math import atan2, hypot, pi
from typing import Any

from shapely.geometry import box

from tests.outside.virtual.batches import HALF, square
from tests.outside.virtual.cloth import NEAR, Work, half_plane, kept, turned_over
from tests.outside.virtual.plan import Patch, Spot


def flips_and_base(picture: tuple[Patch, ...], width: float, height: float) -> tuple[Patch, list[tuple[Patch, Spot]]]:
    """The patch that the base ends as, and the others, each with the corner of the unit that it fills."""
    corners = [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)]
    found = [(patch, spot) for patch in picture if (spot := _right_corner(patch)) and _nearest(spot, corners) < NEAR]
    if len(found) == len(picture):
        # Either half of a square can be the base.
        return found[0][0], found[1:]
    (base,) = (patch for patch in picture if all(patch is not flip for flip, _ in found))
    return base, found


def _nearest(spot: Spot, corners: list[Spot]) -> float:
    return min(hypot(spot[0] - x, spot[1] - y) for x, y in corners)


def _right_corner(patch: Patch) -> Spot | None:
    """Where the two legs of a triangle meet, the corner across from its long edge."""
    corners = list(patch.shape.exterior.coords)[:-1]
    if len(corners) != 3:
        return None
    sides = [hypot(x - a, y - b) for (a, b), (x, y) in zip(corners, [*corners[1:], corners[0]], strict=True)]
    x, y = corners[(sides.index(max(sides)) + 2) % 3]
    return float(x), float(y)


def flipped(base: Patch, cloth: tuple[float, float], flips: list[tuple[Patch, Spot, float]], middle: Spot) -> Work:
    """The base about the middle of the unit, with squares (their sides last) sewn to its corners."""
    (width, height), (x, y) = cloth, middle
    left, top, right, bottom = x - width / 2, y - height / 2, x + width / 2, y + height / 2
    work = Work((Patch(base.label, base.fabric, box(left, top, right, bottom)),))
    for patch, (corner_x, corner_y), side in flips:
        at_x, at_y = (left if corner_x < x else right), (top if corner_y < y else bottom)
        inward_x, inward_y = (1 if corner_x < x else -1), (1 if corner_y < y else -1)
        laid = square(patch, side, min(at_x, at_x + inward_x * side), min(at_y, at_y + inward_y * side))
        # The stitches run between the two corners of the square that lie on the edges of the base.
        stitches = (at_x + inward_x * side, at_y)
        inside: Any = half_plane(stitches, (inward_x * HALF, inward_y * HALF))
        over = turned_over(kept(laid, inside), stitches, atan2(inward_y, inward_x) + pi / 2)
        work = Work((*kept(work, inside).faces, *over.faces))
    return work
