"""Strips across the fabric and the slanted cuts in them, made as the cut list tells, with cloth and a ruler's angles.

A strip lies across the table, the right side up: x to the right, y downward, its square end at the left.
"""

from __future__ import annotations

from dataclasses import replace
from math import atan2, degrees, radians, sin, tan
from typing import Any

from shapely import affinity
from shapely.geometry import Polygon

from tests.outside.virtual.cloth import NEAR, Fault, half_plane
from tests.outside.virtual.plan import Strip


def pieces_of_strip(strip: Strip, length: float) -> list[Any]:
    """All whole pieces that come out of a strip of this length, from the left."""
    pieces: list[Any] = []
    top, bottom = _first_cut(strip)
    for place in range(10_000):
        after = _next_cut(strip, place, top, bottom)
        if max(after) > length + NEAR:
            break
        if min(after[0] - top, after[1] - bottom) < -NEAR:
            raise Fault("two cuts of a strip cross")
        piece = _between(strip, (top, bottom), after)
        pieces.append(_without_points(piece, strip.across) if strip.across is not None else piece)
        top, bottom = after
    return pieces


def _lean(strip: Strip, cut: int) -> float:
    """How much further right a cut meets the top edge than the bottom; the cuts are numbered along the strip."""
    if strip.form != "turned":
        angle, rising = strip.angles[0], strip.slant == "rising"
    else:
        # begun with the steeper cut
        angle = strip.angles[1 - cut % 2]
        flat_rises = strip.slant != "falling"
        rising = flat_rises if cut % 2 else not flat_rises
    if angle == 90:
        return 0.0
    return (1 if rising else -1) * strip.width / tan(radians(angle))


def _first_cut(strip: Strip) -> tuple[float, float]:
    """Where it meets the top and the bottom edge; it begins in a corner of the square end."""
    lean = _lean(strip, 0)
    return (lean, 0.0) if lean > 0 else (0.0, -lean)


def _next_cut(strip: Strip, place: int, top: float, bottom: float) -> tuple[float, float]:
    lean = _lean(strip, place + 1)
    if strip.form != "turned":
        along = (strip.every or 0) / sin(radians(strip.angles[0]))
        return top + along, bottom + along
    top_is_longer = lean > top - bottom
    if strip.every is None:
        # from the end of the last cut on the edge where the piece has its point
        return (bottom + lean, bottom) if top_is_longer else (top, top - lean)
    end = (top if top_is_longer else bottom) + strip.every
    return (end, end - lean) if top_is_longer else (end + lean, end)


def _without_points(diamond: Any, across: float) -> Any:
    """Both sharp points cut off square to the line through them, so that so much is left between the cuts."""
    corners = list(diamond.exterior.coords)[:4]
    one, other = max(((corners[0], corners[2]), (corners[1], corners[3])), key=lambda pair: _apart(*pair))
    length = _apart(one, other)
    ux, uy = (other[0] - one[0]) / length, (other[1] - one[1]) / length
    x, y = diamond.centroid.x, diamond.centroid.y
    half = across / 2
    here = half_plane((x - ux * half, y - uy * half), (ux, uy))
    there = half_plane((x + ux * half, y + uy * half), (-ux, -uy))
    return diamond.intersection(here).intersection(there)


def _apart(one: Any, other: Any) -> float:
    return float(((one[0] - other[0]) ** 2 + (one[1] - other[1]) ** 2) ** 0.5)


def narrower(strip: Strip, measure: float) -> list[Strip]:
    """The strip and its cuts one measure of the ruler less, each by itself."""
    found = [replace(strip, width=strip.width - measure)]
    if strip.every is not None:
        found.append(replace(strip, every=strip.every - measure))
    if strip.across is not None:
        found.append(replace(strip, across=strip.across - measure))
    return found


def must_be_enough(strip: Strip, cut: tuple[float, float], count: int, usable: float, measure: float) -> None:
    """The strips that are told give just so many pieces, no strip too many, and the length that is told is theirs."""
    if not (strip.strips - 1) * strip.each < count <= strip.strips * strip.each:
        raise Fault(f"{strip.strips} strips of {strip.each} pieces do not give {count}")
    if strip.length > usable + NEAR:
        raise Fault(f"a strip of {strip.length} does not lie across the fabric")
    if strip.form != "turned" and len(set(strip.angles)) > 1:
        raise Fault(f"cuts at {strip.angles} degrees are not alongside each other")
    first = min(strip.each, count)
    exactly, less = (len(pieces_of_strip(strip, length)) for length in (strip.length, strip.length - measure))
    if exactly < first or less >= first:
        raise Fault(f"{strip.length} of a strip are not just enough for {first} pieces")
    if len(pieces_of_strip(strip, usable)) != strip.each:
        raise Fault(f"not {strip.each} pieces come out of a whole strip")
    left, _, right, _ = _whole(strip).bounds
    if cut[0] != strip.width or not -NEAR < cut[1] - (right - left) < measure - NEAR:
        raise Fault(f"a piece takes {right - left:.3f} of the strip, {cut} is told")


def _whole(strip: Strip) -> Any:
    """The first piece before any point is cut off."""
    top, bottom = _first_cut(strip)
    after = _next_cut(strip, 0, top, bottom)
    return _between(strip, (top, bottom), after)


def _between(strip: Strip, one: tuple[float, float], other: tuple[float, float]) -> Any:
    """What lies between two cuts; a triangle where they meet on an edge."""
    corners = [(one[0], 0.0), (other[0], 0.0), (other[1], strip.width), (one[1], strip.width)]
    return Polygon([corner for place, corner in enumerate(corners) if _apart(corner, corners[place - 1]) > NEAR])


def must_hold_templates(strip: Strip, template: Any, grain: tuple[float, float], count: int, usable: float) -> None:
    """So many templates lie in the strip without one on the other, each slid up to the one before, turned or not."""
    laid = affinity.rotate(template, -degrees(atan2(grain[1], grain[0])), origin=(0, 0))
    left, top, right, bottom = laid.bounds
    if bottom - top > strip.width + NEAR:
        raise Fault(f"the template does not lie in a strip of {strip.width}")
    laid = affinity.translate(laid, -left, (strip.width - bottom - top) / 2)
    turned = affinity.rotate(laid, 180, origin=((right - left) / 2, strip.width / 2))
    there, back, same = _slid(laid, turned), _slid(turned, laid), _slid(laid, laid)
    first = min(strip.each, count)
    pairs, odd = divmod(first - 1, 2)
    takes = (right - left) + min(pairs * (there + back) + odd * min(there, back), (first - 1) * same)
    if takes > strip.length + NEAR or strip.length > usable + NEAR:
        raise Fault(f"{first} templates take {takes:.3f} of a strip, {strip.length} is told")
    if not (strip.strips - 1) * strip.each < count <= strip.strips * strip.each:
        raise Fault(f"{strip.strips} strips of {strip.each} templates do not give {count}")


def _slid(one: Any, other: Any) -> float:
    """How far right of one the other must lie, at the least; both are without inward corners."""
    least, most = 0.0, float(one.bounds[2] - one.bounds[0])
    for _ in range(40):
        middle = (least + most) / 2
        if affinity.translate(other, middle, 0).intersection(one).area > NEAR * NEAR:
            least = middle
        else:
            most = middle
    return most


def without_corners(cut: tuple[float, float], off: float) -> Any:
    """A square or rectangle with its corners cut off at 45°, so far from each corner along both edges."""
    wide, tall = cut
    left, right = [(0.0, tall - off), (0.0, off)], [(wide, off), (wide, tall - off)]
    return Polygon([*left, (off, 0.0), (wide - off, 0.0), *right, (wide - off, tall), (off, tall)])


def standing_rectangle(cut: tuple[float, float], slant: str) -> list[Any]:
    """A rectangle on its shorter side, the right side up, cut once from corner to corner."""
    wide, tall = sorted(cut)
    left, right = ((0.0, 0.0), (0.0, tall)), ((wide, 0.0), (wide, tall))
    if slant == "rising":
        return [Polygon([*left, right[0]]), Polygon([*right, left[1]])]
    return [Polygon([*left, right[1]]), Polygon([*right, left[0]])]
