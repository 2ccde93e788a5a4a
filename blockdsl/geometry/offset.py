"""The outline of a patch with its seam allowance, and the trimming of long points.

Every side moves outward by the allowance; neighbouring sides are lengthened until they meet (mitred corners).
For sides d₁ into and d₂ out of a corner V of a clockwise outline (y downward), the outward normal of d is
(d.y, -d.x)/|d|. The moved corner V + t lies on both moved sides when t·n₁ = t·n₂ = s. With t = m d₁ + n d₂ and
c = cross(d₁, d₂) this gives m = s|d₂|/c and n = -s|d₁|/c, so

    t = s(|d₂| d₁ - |d₁| d₂) / c.

For a right isosceles triangle this is where the cutting constants come from: each leg grows by s(2 + √2),
the long edge by s(2 + 2√2).
"""

from __future__ import annotations

from msgspec import Struct

from blockdsl.geometry.number import Exact, sign, square_root
from blockdsl.geometry.polygon import Point, Polygon, cross, dot, drop_straight_corners, edges, step


class _Side(Struct, frozen=True):
    """A line that a side lies on: a point of it, its step and the step's length."""

    start: Point
    along: Point
    length: Exact


def _sides(polygon: Polygon) -> list[_Side]:
    found = []
    for a, b in edges(polygon):
        along = step(a, b)
        found.append(_Side(a, along, square_root(dot(along, along))))
    return found


def offset_outward(polygon: Polygon, allowance: Exact) -> Polygon:
    """The outline that lies the allowance outside a clockwise, simple polygon, with mitred corners.

    Exact:  wherever `square_root` of the sides' squared lengths is; otherwise too large by less than 10⁻²⁸.
    Corners that point inward are kept; a notch too narrow for two allowances closes.
    Corner i of the result belongs to corner i of the polygon, unless the polygon has straight corners
    (which are dropped) or a notch closed.
    """
    sides = _sides(drop_straight_corners(polygon))
    moved = tuple(_mitre(sides[i - 1], sides[i], allowance) for i in range(len(sides)))
    if all(sign(dot(step(a, b), side.along)) > 0 for (a, b), side in zip(edges(moved), sides, strict=True)):
        return moved
    return _close_notches([_moved(side, allowance) for side in sides])


def _mitre(before: _Side, after: _Side, allowance: Exact) -> Point:
    """The moved corner between two sides that are not parallel (formula at the top of the module)."""
    turn = cross(before.along, after.along)
    ahead, back = allowance * after.length / turn, allowance * before.length / turn
    corner = after.start
    return Point(
        corner.x + ahead * before.along.x - back * after.along.x,
        corner.y + ahead * before.along.y - back * after.along.y,
    )


def _moved(side: _Side, allowance: Exact) -> _Side:
    out = allowance / side.length
    start = Point(side.start.x + out * side.along.y, side.start.y - out * side.along.x)
    return _Side(start, side.along, side.length)


def _close_notches(sides: list[_Side]) -> Polygon:
    """Drop, one at a time, sides that the allowance has swallowed, until the rest meet in order."""
    while len(sides) > 2:
        parallel = next((i for i in range(len(sides)) if cross(sides[i - 1].along, sides[i].along) == 0), None)
        if parallel is not None:
            # Two walls of a closed notch face each other, or its two shoulders are one line now: the longer one stays.
            del sides[min((parallel - 1) % len(sides), parallel, key=lambda i: sides[i].length)]
            continue
        corners = tuple(_meet(sides[i - 1], sides[i]) for i in range(len(sides)))
        runs = [dot(step(a, b), side.along) for (a, b), side in zip(edges(corners), sides, strict=True)]
        shortest = min(range(len(runs)), key=lambda i: runs[i] / sides[i].length)
        if runs[shortest] > 0:
            return corners
        del sides[shortest]
    return ()


def _meet(first: _Side, second: _Side) -> Point:
    """Where two lines that are not parallel meet."""
    part = cross(step(first.start, second.start), second.along) / cross(first.along, second.along)
    return Point(first.start.x + part * first.along.x, first.start.y + part * first.along.y)


def trim_points(cutting: Polygon, sewing: Polygon, allowance: Exact) -> Polygon:
    """The cutting outline with its long points (dog ears) trimmed.

    Shape:  where the sewing outline turns sharper than a right angle, the point is cut square to each of its two
            sides, one allowance beyond the sewing corner V: with unit steps u₁ into and u₂ out of V, what lies
            beyond q·u₁ = s or beyond q·u₂ = -s (q from V) goes. Nothing nearer to V than the allowance is lost,
            since all four lines there touch the circle of that radius.
    Takes:  the outline that `offset_outward` gave for `sewing` and `allowance`; corners it does not share stay.
    """
    sides = _sides(drop_straight_corners(sewing))
    trimmed: dict[Point, Polygon] = {}
    for i, after in enumerate(sides):
        before = sides[i - 1]
        if cross(before.along, after.along) > 0 and dot(before.along, after.along) < 0:
            trimmed[_mitre(before, after, allowance)] = _blunt(before, after, allowance)
    return tuple(corner for tip in cutting for corner in trimmed.get(tip, (tip,)))


def _blunt(before: _Side, after: _Side, allowance: Exact) -> Polygon:
    """The three corners that take the place of a sharp point.

    In order along the outline: moved side d₁ with the cut square to d₂, the two cuts, the cut square to d₁ with
    moved side d₂. Each solves two linear equations: q·(d₁.y, -d₁.x) = s|d₁| and q·d₂ = -s|d₂|; q·d₁ = s|d₁| and
    q·d₂ = -s|d₂|; q·d₁ = s|d₁| and q·(d₂.y, -d₂.x) = s|d₂|.
    """
    corner, one, two = after.start, before.along, after.along
    turn, bend = cross(one, two), dot(one, two)
    reach_one, reach_two = allowance * before.length, allowance * after.length
    from_corner = (
        Point((reach_one * two.y - reach_two * one.x) / bend, -(reach_two * one.y + reach_one * two.x) / bend),
        Point((reach_one * two.y + reach_two * one.y) / turn, -(reach_two * one.x + reach_one * two.x) / turn),
        Point((reach_two * one.y + reach_one * two.x) / bend, (reach_one * two.y - reach_two * one.x) / bend),
    )
    return tuple(Point(corner.x + q.x, corner.y + q.y) for q in from_corner)
