"""Sewn cloth cut along a line, and what is laid on it opened over that line.

Everything is done with finished lines: what a seam takes is on both sides of the line, so nothing of it is seen.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from tests.outside.reader.cloth import (
    HAIR,
    Cloth,
    Edge,
    End,
    Patch,
    _chained,
    _without,
    area,
    corners,
    cross,
    dot,
    near,
    on_outline,
    piece,
    unit,
)


def rectangle(label: str, fabric: str, width: float, height: float, at: complex = 0) -> Cloth:
    """An upright rectangle with its upper left corner somewhere."""
    return piece(label, fabric, [at, at + width, at + complex(width, height), at + complex(0, height)])


def cut_patches(patches: Iterable[Patch], a: complex, b: complex) -> list[Patch]:
    """What of some patches lies on the side of 1j * (b - a)."""
    found = []
    for patch in patches:
        points = _half(list(patch.points), a, b)
        if len(points) > 2 and abs(area(points)) > HAIR:
            found.append(replace(patch, points=tuple(points)))
    return found


def _half(points: list[complex], a: complex, b: complex) -> list[complex]:
    along = unit(b - a)
    kept: list[complex] = []
    for p, q in zip(points, points[1:] + points[:1], strict=True):
        here, there = cross(along, p - a), cross(along, q - a)
        if here > -HAIR:
            kept.append(p)
        if (here > HAIR and there < -HAIR) or (here < -HAIR and there > HAIR):
            kept.append(p + (q - p) * here / (here - there))
    return kept


def mirrored(points: Iterable[complex], a: complex, b: complex) -> list[complex]:
    """Points on the other side of a line."""
    along = unit(b - a)
    return [a + along * ((point - a) / along).conjugate() for point in points]


def opened(patches: Iterable[Patch], a: complex, b: complex) -> list[Patch]:
    """Patches turned over a line."""
    return [replace(patch, points=tuple(reversed(mirrored(patch.points, a, b)))) for patch in patches]


def put_together(patches: Iterable[Patch], ends: Iterable[End] = ()) -> Cloth:
    """Patches that lie side by side as one cloth."""
    cloths = [piece(patch.label, patch.fabric, corners(list(patch.points))) for patch in patches]
    left: list[Edge] = []
    for cloth in cloths:
        others = [(edge.b, edge.a) for other in cloths if other is not cloth for edge in other.edges]
        left.extend(_without(cloth, others))
    edges = tuple(_chained(left))
    return Cloth(edges, tuple(ends), tuple((1 + 0j, 0j, cloth) for cloth in cloths))


def stretched(cloth: Cloth, across: float, down: float) -> Cloth:
    """Cloth with all widths and heights at another rate."""

    def moved(point: complex) -> complex:
        return complex(point.real * across, point.imag * down)

    patches = [replace(patch, points=tuple(map(moved, patch.points))) for patch in cloth.patches()]
    return put_together(patches, [replace(end, at=moved(end.at)) for end in cloth.ends])


def ends_kept(cloth: Cloth, a: complex, b: complex) -> list[End]:
    """The ends of seams on one side of a cut, and those that the cut makes."""
    along = unit(b - a)
    kept = []
    for end in cloth.ends:
        here = cross(along, end.at - a)
        if here > -HAIR:
            kept.append(end)
            continue
        rate = cross(along, end.into)
        if rate > HAIR:
            at = end.at + end.into * (-here / rate)
            if not any(near(at, other.at) and near(end.into, other.into) for other in kept):
                kept.append(replace(end, at=at))
    return kept


def sewn_beside_line_and_cut(
    base: Cloth, laid_on: Iterable[Patch], a: complex, b: complex, seam: int
) -> tuple[Cloth, Cloth]:
    """Both halves when what is laid on is sewn on both sides of a line and all is cut on it."""
    laid = list(laid_on)
    halves = []
    for start, stop in ((a, b), (b, a)):
        below = cut_patches(base.patches(), start, stop)
        above = opened(cut_patches(laid, start, stop), start, stop)
        ends = [end for end in ends_kept(base, start, stop) if not _on_line(end.at, start, stop) or _at_end(end, above)]
        cloth = put_together([*below, *above], ends)
        halves.append(replace(cloth, ends=(*_on_outline(ends, cloth), *_seam_ends(cloth, above, start, stop, seam))))
    return halves[0], halves[1]


def _on_line(at: complex, a: complex, b: complex) -> bool:
    return abs(cross(unit(b - a), at - a)) < HAIR


def _at_end(end: End, above: list[Patch]) -> bool:
    return bool(above) and end.seam != 0


def _on_outline(ends: Iterable[End], cloth: Cloth) -> list[End]:
    return [end for end in ends if on_outline(end.at, list(cloth.edges))]


def _seam_ends(cloth: Cloth, above: list[Patch], a: complex, b: complex, seam: int) -> list[End]:
    """Where the new seams end: the ends of each stretch of the line along which something was sewn on."""
    along = unit(b - a)
    reaches = sorted(
        (min(on), max(on))
        for patch in above
        if len(on := [dot(along, p - a) for p in patch.points if _on_line(p, a, b)]) > 1
    )
    ends = []
    for low, high in reaches:
        # What was sewn on lies on the side of -1j * along.
        for at, into, side in ((a + along * low, along, -1), (a + along * high, -along, 1)):
            inner = any(near(at, a + along * other) for pair in reaches if pair != (low, high) for other in pair)
            if on_outline(at, list(cloth.edges)) and not inner:
                ends.append(End(at, into, seam, side))
    return ends


def turned_over_corner(base: Cloth, square: Patch, a: complex, b: complex, seam: int) -> Cloth:
    """A square sewn on along a line from a to b, cut off on the side of -1j * (b - a), pressed over the corner."""
    below = cut_patches(base.patches(), a, b)
    above = opened(cut_patches([square], a, b), a, b)
    ends = [end for end in base.ends if cross(unit(b - a), end.at - a) > -HAIR]
    cloth = put_together([*below, *above], ends)
    return replace(cloth, ends=(*ends, *_seam_ends(cloth, above, a, b, seam)))
