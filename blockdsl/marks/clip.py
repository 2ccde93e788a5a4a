"""Outlines in points against upright boxes: what of them lies inside, and whether they come near."""

from __future__ import annotations

from collections.abc import Iterator

from blockdsl.marks.display_list import Contour, PagePoint, Segment
from blockdsl.marks.theme import Box


def bounds(ring: Contour) -> tuple[float, float, float, float]:
    """Left, top, right and bottom of a ring."""
    xs = [x for x, _ in ring]
    ys = [y for _, y in ring]
    return min(xs), min(ys), max(xs), max(ys)


def area(ring: Contour) -> float:
    """Signed area, positive when clockwise as seen on the page."""
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in edges(ring)) / 2


def edges(ring: Contour) -> Iterator[Segment]:
    """The sides of a ring, the closing one last."""
    return zip(ring, (*ring[1:], *ring[:1]), strict=True)


def contains(ring: Contour, x: float, y: float) -> bool:
    """Whether a point lies inside: an odd number of sides lie to the right of it."""
    inside = False
    for (ax, ay), (bx, by) in edges(ring):
        if (ay > y) != (by > y) and x < ax + (y - ay) / (by - ay) * (bx - ax):
            inside = not inside
    return inside


def clip_line(line: Segment, box: Box) -> Segment | None:
    """The part of a line inside the box, or None (after Liang and Barsky, 1984)."""
    (ax, ay), (bx, by) = line
    dx, dy = bx - ax, by - ay
    enter, leave = 0.0, 1.0
    left, top = box.x_pt, box.y_pt
    right, bottom = left + box.width_pt, top + box.height_pt
    # Most lines lie on one outer side altogether.
    if (ax < left and bx < left) or (ax > right and bx > right):
        return None
    if (ay < top and by < top) or (ay > bottom and by > bottom):
        return None
    sides = ((-dx, ax - left), (dx, right - ax), (-dy, ay - top), (dy, bottom - ay))
    for towards, room in sides:
        if towards == 0:
            if room < 0:
                return None
            continue
        share = room / towards
        if towards < 0:
            enter = max(enter, share)
        else:
            leave = min(leave, share)
        if enter > leave:
            return None
    # Ends that lie inside stay exactly as they were, so that the parts of an outline still meet.
    start = (ax + enter * dx, ay + enter * dy) if enter > 0 else line[0]
    stop = (ax + leave * dx, ay + leave * dy) if leave < 1 else line[1]
    return start, stop


def clip_outline(ring: Contour, box: Box) -> tuple[Contour, ...]:
    """The parts of an outline inside the box as open lines; sides that go on are one line."""
    runs: list[list[PagePoint]] = []
    for side in edges(ring):
        part = clip_line(side, box)
        if part is None or part[0] == part[1]:
            continue
        if runs and runs[-1][-1] == part[0] == side[0]:
            runs[-1].append(part[1])
        else:
            runs.append(list(part))
    if len(runs) > 1 and runs[-1][-1] == runs[0][0] == ring[0]:
        runs[0] = runs.pop() + runs[0][1:]
    return tuple(tuple(run) for run in runs)


def clip_ring(ring: Contour, box: Box) -> Contour:
    """The ring cut to the box (after Sutherland and Hodgman, 1974).

    Where a hollow ring falls apart the parts stay tied along the box's edge: area and inside remain right.
    """
    ring = _clip_half(_clip_half(ring, 0, box.x_pt, keep_above=True), 0, box.right_pt, keep_above=False)
    return _clip_half(_clip_half(ring, 1, box.y_pt, keep_above=True), 1, box.bottom_pt, keep_above=False)


def _clip_half(ring: Contour, axis: int, limit: float, *, keep_above: bool) -> Contour:
    kept: list[PagePoint] = []
    for a, b in edges(ring):
        a_in, b_in = (a[axis] >= limit, b[axis] >= limit) if keep_above else (a[axis] <= limit, b[axis] <= limit)
        if a_in:
            kept.append(a)
        if a_in != b_in:
            share = (limit - a[axis]) / (b[axis] - a[axis])
            kept.append((a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])))
    return tuple(kept)


def meets_box(ring: Contour, box: Box) -> bool:
    """Whether any side of the ring comes into the box."""
    return any(clip_line(side, box) is not None for side in edges(ring))
