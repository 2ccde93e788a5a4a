"""Whether cloth looks like its picture, and how to lay what was made where it goes."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence
from functools import partial
from math import hypot
from typing import Any

from shapely import affinity

from tests.outside.virtual.cloth import NEAR, Work, covers, directions, grown, joined, moved, turned
from tests.outside.virtual.plan import Patch


def looks_like(work: Work, picture: Sequence[Patch], drift: float) -> str:
    """What is wrong with it; nothing when every patch, but for the drift, is of its fabric and letter."""
    return next((_told(patch) for patch in picture if not _is_under(_cloth_at(work, patch), patch, drift)), "")


def out_of_place(work: Work, picture: Sequence[Patch]) -> tuple[float, str]:
    """How far seams lie from their places, nearly, and which patch is not there though its drift is allowed for."""
    depths = _depths(work)
    deepest = 0
    for patch in picture:
        cloth = _cloth_at(work, patch)
        if _is_under(cloth, patch, NEAR):
            continue
        found = bisect_left(depths, x=True, lo=1, key=partial(_is_hidden, cloth, patch))
        if found == len(depths) or not _is_under(cloth, patch, depths[found]):
            return depths[deepest], _told(patch)
        deepest = max(deepest, found)
    return depths[deepest], ""


def lacking(work: Work, whole: Any) -> float:
    """How far a raw edge is short of its allowance, no more than its pieces were slid; nothing when it is shorter yet.

    What is shorter is found at the seam that is sewn there.
    """
    depths, cloth = _depths(work), work.cloth
    found = bisect_left(depths, x=True, key=lambda depth: covers(cloth, grown(whole, -depth)))
    return depths[found] if found < len(depths) else 0


def _depths(work: Work) -> list[float]:
    """Nothing, and ever a twentieth more up to what the pieces of the work were slid."""
    depths = [NEAR]
    while depths[-1] <= max(work.drift, NEAR):
        depths.append(depths[-1] * 1.05)
    return depths


def _told(patch: Patch) -> str:
    return f"{patch.label} ({patch.fabric}) at {tuple(round(x, 3) for x in patch.shape.bounds)}"


def _cloth_at(work: Work, patch: Patch) -> Any:
    """All cloth of a patch's fabric and letter near it."""
    left, top, right, bottom = patch.shape.bounds
    found = []
    for face in work.faces:
        if (face.fabric, face.label) == (patch.fabric, patch.label):
            a, b, c, d = face.shape.bounds
            if a < right and c > left and b < bottom and d > top:
                found.append(face.shape)
    return found[0] if len(found) == 1 else joined(found)


def _is_under(cloth: Any, patch: Patch, drift: float) -> bool:
    seen = grown(patch.shape, -max(drift, NEAR))
    return not seen.is_empty and covers(cloth, seen)


def _is_hidden(cloth: Any, patch: Patch, drift: float) -> bool:
    """The same, or nothing of the patch is left to be seen."""
    seen = grown(patch.shape, -drift)
    return seen.is_empty or covers(cloth, seen)


def laid_over(work: Work, picture: Sequence[Patch], place: Sequence[Patch]) -> Work | None:
    """The work turned and slid so that its picture lies where `place` has it; None when no turn does that."""
    first = min(picture, key=lambda patch: float(patch.shape.area))
    angles = [0.0, 90.0, 180.0, 270.0]
    angles += [(there - here) % 360 for p in place for there in directions(p.shape) for here in directions(first.shape)]
    x, y = _middle(place)
    for angle in dict.fromkeys(round(angle, 6) for angle in angles):
        drawn = [affinity.rotate(patch.shape, angle, origin=(0, 0)) for patch in picture]
        middle = _middle([Patch("", "", shape) for shape in drawn])
        dx, dy = x - middle[0], y - middle[1]
        shapes = [affinity.translate(shape, dx, dy) for shape in drawn]
        if all(_finds(patch, shape, place) for patch, shape in zip(picture, shapes, strict=True)):
            return moved(turned(work, angle), dx, dy)
    return None


def _middle(picture: Sequence[Patch]) -> tuple[float, float]:
    area = sum(patch.shape.area for patch in picture)
    return (
        sum(patch.shape.area * patch.shape.centroid.x for patch in picture) / area,
        sum(patch.shape.area * patch.shape.centroid.y for patch in picture) / area,
    )


def _finds(patch: Patch, shape: object, place: Sequence[Patch]) -> bool:
    centre = shape.centroid  # type: ignore[attr-defined]
    for other in place:
        if (other.fabric, len(other.shape.exterior.coords)) != (patch.fabric, len(patch.shape.exterior.coords)):
            continue
        if hypot(other.shape.centroid.x - centre.x, other.shape.centroid.y - centre.y) > NEAR:
            continue
        if other.shape.symmetric_difference(shape).area < NEAR:
            return True
    return False
