"""Letters of appliqué in a lettered diagram, and of the patches that lie half under it."""

from __future__ import annotations

from collections.abc import Sequence
from math import hypot
from typing import Final

from msgspec.structs import replace

from blockdsl.marks.clip import contains, edges
from blockdsl.marks.display_list import Contour
from blockdsl.marks.prose import TextStyle
from blockdsl.pictures.block_letters import Lettering, letter_patches
from blockdsl.pictures.placing import middle

_TRIED: Final = 24
_LEAST_PT: Final = 4.0


def with_appliques(
    lettering: Lettering, rings: Sequence[Contour], labels: Sequence[str], laid_on: Sequence[Contour]
) -> Lettering:
    """The letters of the pieces too; letters of patches move to where they can be seen, or are left out.

    A piece's own letter stands where no later piece lies on it.
    """
    if not laid_on:
        return lettering
    kept = []
    for x, y, label, style in lettering.inside:
        place = _seen((x, y), [ring for ring in rings if contains(ring, x, y)][:1], laid_on, style)
        if place is not None:
            kept.append((*place, label, style))
    for number, (label, ring) in enumerate(zip(labels, laid_on, strict=True)):
        own = letter_patches([label], [ring]).inside
        x, y, _ = middle(ring)
        style = own[0][3] if own else TextStyle(5.0, "bold")
        place = _seen((x, y), [ring], laid_on[number + 1 :], style)
        if place is not None:
            kept.append((*place, label, style))
    return replace(lettering, inside=tuple(kept))


def _seen(
    place: tuple[float, float], within: Sequence[Contour], above: Sequence[Contour], style: TextStyle
) -> tuple[float, float] | None:
    """The place itself where nothing lies on it, else the clearest of the ring's; None when all is covered."""
    room = style.size_pt * 0.6
    if all(_distance(place, ring) >= room and not contains(ring, *place) for ring in above):
        return place
    best, clear = None, _LEAST_PT
    for ring in within:
        xs, ys = [x for x, _ in ring], [y for _, y in ring]
        for column in range(1, _TRIED):
            for row in range(1, _TRIED):
                x = min(xs) + (max(xs) - min(xs)) * column / _TRIED
                y = min(ys) + (max(ys) - min(ys)) * row / _TRIED
                if not contains(ring, x, y) or any(contains(other, x, y) for other in above):
                    continue
                depth = min(_distance((x, y), other) for other in (ring, *above))
                if depth > clear + 0.01:
                    best, clear = (x, y), depth
    return best


def _distance(place: tuple[float, float], ring: Contour) -> float:
    x, y = place
    least = float("inf")
    for (ax, ay), (bx, by) in edges(ring):
        dx, dy = bx - ax, by - ay
        length = dx * dx + dy * dy
        share = max(0.0, min(1.0, ((x - ax) * dx + (y - ay) * dy) / length)) if length else 0.0
        least = min(least, hypot(x - ax - share * dx, y - ay - share * dy))
    return least
