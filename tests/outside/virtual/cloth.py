"""Cloth: faces of fabric that lie side by side, cut, fitted, sewn together and trimmed."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import combinations, pairwise
from math import atan2, cos, degrees, dist, hypot, radians, sin
from typing import Any

from numpy import errstate
from numpy.linalg import lstsq
from shapely import affinity, buffer, set_precision, union_all
from shapely.geometry import LineString, Point, Polygon, box

from tests.outside.virtual.curves import band, has_curves, inset, straight_edges
from tests.outside.virtual.plan import Patch, Spot

NEAR = 1e-5
HAIR = 1e-6
"""A crack that floating point leaves between two shapes is narrower than twice that."""
FAR = 1e4
"""Half the side of what is laid over cloth to cut it along a line."""


MANY = 4096
"""Cloth that was joined and fitted lately is not joined and fitted anew: blocks are full of the same."""


class Fault(Exception):
    """What a maker would complain of."""


@dataclass(frozen=True, slots=True)
class Work:
    """What lies on the table, seen from the right side; `drift` is how far its seams may lie from their places."""

    faces: tuple[Patch, ...]
    drift: float = 0

    @property
    def cloth(self) -> Any:
        """All of it as one shape, hair cracks closed."""
        return joined(face.shape for face in self.faces)


def joined(shapes: Iterable[Any]) -> Any:
    """Shapes that lie side by side as one, hair cracks closed and corners that are none taken out."""
    return _joined(tuple(shapes))


@lru_cache(MANY)
def _joined(shapes: tuple[Any, ...]) -> Any:
    whole = union_all(grown(list(shapes), HAIR))
    plain = grown(whole, -HAIR).simplify(HAIR)
    clean = set_precision(plain if plain.is_valid else plain.buffer(0), 1e-9)
    parts = getattr(clean, "geoms", (clean,))
    return parts[0] if len(parts) == 1 else clean


def moved(work: Work, x: float, y: float) -> Work:
    if not x and not y:
        return work
    faces = tuple(replace(face, shape=affinity.translate(face.shape, x, y)) for face in work.faces)
    return replace(work, faces=faces)


def turned(work: Work, angle: float) -> Work:
    """Turned on the table about the origin."""
    faces = tuple(replace(face, shape=affinity.rotate(face.shape, angle, origin=(0, 0))) for face in work.faces)
    return replace(work, faces=faces)


def turned_over(work: Work, through: Spot, along: float) -> Work:
    """Turned over about a line through a point, at an angle in radians: the wrong side is up, or again the right."""
    c, s = cos(2 * along), sin(2 * along)
    x, y = through
    matrix = [c, s, s, -c, x - c * x - s * y, y - s * x + c * y]
    faces = tuple(replace(face, shape=affinity.affine_transform(face.shape, matrix)) for face in work.faces)
    return replace(work, faces=faces)


def half_plane(through: Spot, normal: Spot) -> Any:
    """All that lies on the side of a line to which its normal points."""
    (x, y), (nx, ny) = through, normal
    ux, uy = -ny, nx
    return Polygon(
        [
            (x + ux * FAR, y + uy * FAR),
            (x - ux * FAR, y - uy * FAR),
            (x - ux * FAR + nx * FAR, y - uy * FAR + ny * FAR),
            (x + ux * FAR + nx * FAR, y + uy * FAR + ny * FAR),
        ]
    )


def kept(work: Work, region: Any) -> Work:
    """What lies in a region; the rest is cut off or folded under."""
    faces = [replace(face, shape=face.shape.intersection(region)) for face in work.faces]
    return replace(work, faces=tuple(face for face in faces if face.shape.area > NEAR * NEAR))


def without(work: Work, region: Any) -> Work:
    faces = [replace(face, shape=face.shape.difference(region)) for face in work.faces]
    return replace(work, faces=tuple(face for face in faces if face.shape.area > NEAR * NEAR))


def grown(shape: Any, by: float) -> Any:
    """Every edge of a shape, or of each of a list, moved outward, or inward when it is negative, corners sharp."""
    # At corners that are hardly any the library divides by nothing, and says so; the shape is right all the same.
    with errstate(divide="ignore", invalid="ignore"):
        return buffer(shape, by, join_style="mitre", mitre_limit=1000)


def covers(cloth: Any, wanted: Any) -> bool:
    """Whether the cloth holds all that is wanted, but for a hair at the edges."""
    return wanted.is_empty or bool(grown(wanted, -NEAR).difference(cloth).area < NEAR * NEAR)


# --- a piece and its patch -------------------------------------------------------------------------


def corner_to_corner(side: float, subcut: str) -> list[Any]:
    """The pieces of a square: itself, its halves, its quarters."""
    square = box(0, 0, side, side)
    if subcut == "none":
        return [square]
    one, other = half_plane((0, 0), (0.5**0.5, -(0.5**0.5))), half_plane((0, side), (0.5**0.5, 0.5**0.5))
    halves = [square.intersection(one), square.difference(one)]
    if subcut == "once":
        return halves
    return [piece for half in halves for piece in (half.intersection(other), half.difference(other))]


def directions(shape: Any) -> list[float]:
    """The directions of the edges in degrees, around the shape the same way for all shapes."""
    return [degrees(atan2(y - b, x - a)) for (a, b), (x, y) in straight_edges(shape)]


@lru_cache(MANY)
def fitted(piece: Any, patch: Any, seam: float) -> Any | None:
    """The piece laid over its patch so that the allowance reaches all round, by turning and sliding; never turned over.

    None when it is too small. The excess is shared out: what is left within the seams and the patch have one centre.
    Of several turns she takes that which lays most edges along those of the patch: a triangle whose long edge was cut
    at another angle lies by its square corner.
    """
    angles = ((there - here) % 360 for there in directions(patch) for here in directions(piece))
    for angle, _ in Counter(round(angle, 6) for angle in angles).most_common():
        laid = affinity.rotate(piece, angle, origin=(0, 0))
        within = inset(laid, seam) if has_curves(laid) else grown(laid, -seam)
        if within.is_empty or within.geom_type != "Polygon":
            return None
        x, y = patch.centroid.x - within.centroid.x, patch.centroid.y - within.centroid.y
        if covers(affinity.translate(within, x, y), patch):
            return affinity.translate(laid, x, y)
        place = _room(within, patch)
        if place is not None and covers(affinity.translate(within, *place), patch):
            return affinity.translate(laid, *place)
    return None


def _room(within: Any, patch: Any) -> Spot | None:
    """How to slide what is within the seams so that it holds the patch, where one centre on the other will not do.

    Every corner of the patch must lie within: all slides that bring one there, laid over one another for all corners.
    """
    room = None
    for x, y in patch.exterior.coords:
        slides = affinity.scale(affinity.translate(grown(within, NEAR / 2), -x, -y), -1, -1, origin=(0, 0))
        room = slides if room is None else room.intersection(slides)
    if room is None or room.is_empty:
        return None
    return room.centroid.x, room.centroid.y


# --- sewing ----------------------------------------------------------------------------------------


def normal_of(line: tuple[Spot, Spot]) -> Spot:
    (a, b), (x, y) = line
    length = hypot(x - a, y - b)
    return -(y - b) / length, (x - a) / length


def allowance(cloth: Any, line: tuple[Spot, Spot], normal: Spot, seam: float) -> float:
    """How far the cloth reaches beyond a seam line, at the place where it reaches least."""
    (a, b), (x, y) = line
    nx, ny = normal
    deep = 8 * seam
    # A hair within both ends, where the corners of the cloth lie.
    ux, uy = (x - a) * 1e-4, (y - b) * 1e-4
    ends = (a + ux, b + uy), (x - ux, y - uy)
    beyond = Polygon([*ends, *((p + nx * deep, q + ny * deep) for p, q in reversed(ends))])
    gap = grown(beyond.difference(cloth), -HAIR)
    if gap.is_empty:
        return deep
    shapes = gap.geoms if hasattr(gap, "geoms") else [gap]
    depths = [(p - a) * nx + (q - b) * ny for shape in shapes for p, q in shape.exterior.coords]
    return float(min(depths)) - HAIR


def sewn(
    one: Work,
    other: Work,
    line: tuple[Spot, ...],
    seam: float,
    lies: tuple[Any, Any],
    kind: str = "",
    *,
    ends_even: bool = False,
) -> Work:
    """Two works joined along a seam; `lies` are the finished shapes of both.

    A seam is sewn an allowance from both raw edges, so that what is too large moves away from it; at a seam with
    corners both go where they have that beyond all stretches, as nearly as may be. `ends_even`: along a seam the other
    is slid until it stands out as far at both ends; else both as their own edges lead them.
    """
    ours, theirs = lies
    stretches = list(pairwise(line))
    normals = [_toward(stretch, theirs) for stretch in stretches]
    if kind == "curved":
        for cloth, sense in ((one.cloth, 1), (other.cloth, -1)):
            wanted = band(line, [(sense * x, sense * y) for x, y in normals], seam - 2 * NEAR)
            if not covers(cloth, wanted):
                raise Fault("the cloth does not reach to the allowance of a curved seam")
        stretches = []
    for stretch, (nx, ny) in zip(stretches, normals, strict=kind != "curved"):
        excess = allowance(one.cloth, stretch, (nx, ny), seam) - seam
        lack = allowance(other.cloth, stretch, (-nx, -ny), seam) - seam
        # What lies a little out of place may seem to lack by as much as that.
        if excess < -one.drift - NEAR or lack < -other.drift - NEAR:
            raise Fault(f"the cloth does not reach {-min(excess, lack):.3f} of the allowance beyond a seam")
        if len(stretches) == 1:
            square = _slid(one, (-nx * excess, -ny * excess)), _slid(other, (nx * lack, ny * lack))
            along = _even_at_both_ends(square, lies, stretch, seam) if ends_even else None
            if along is not None:
                one, other = square[0], _slid(square[1], along)
            else:
                one = _slid_aside(one, ours, (nx, ny), excess, seam)
                other = _slid_aside(other, theirs, (-nx, -ny), lack, seam)
    if len(stretches) > 1:
        one, other = _set_in(one, other, list(zip(stretches, normals, strict=True)), seam)
    start, normal = line[0], normals[0]
    beyond = half_plane(start, normal)
    apart = ours.intersection(beyond).area < NEAR and theirs.difference(beyond).area < NEAR
    # A partial seam leaves the allowance of its open end, which is closed later.
    if len(stretches) == 1 and apart and kind != "partial":
        one, other = without(one, beyond), kept(other, beyond)
    else:
        one, other = without(one, theirs), without(other, ours)
    return Work((*one.faces, *other.faces), max(one.drift, other.drift))


def _set_in(one: Work, other: Work, stretches: list[tuple[tuple[Spot, Spot], Spot]], seam: float) -> tuple[Work, Work]:
    """Both slid to where they have their allowance beyond all stretches of a seam with corners.

    Along each, n · slide = what is over; of too many equations the solution that misses least.
    """
    inner = [_inner(stretch, seam) for stretch, _ in stretches]
    ways = [way for _, way in stretches]
    mine = [seam - allowance(one.cloth, line, way, seam) for line, way in zip(inner, ways, strict=True)]
    yours = [allowance(other.cloth, line, (-x, -y), seam) - seam for line, (x, y) in zip(inner, ways, strict=True)]
    (a, b), (x, y) = (map(float, lstsq(ways, over, rcond=1e-6)[0]) for over in (mine, yours))
    return _slid(one, (a, b)), _slid(other, (x, y))


def _inner(line: tuple[Spot, Spot], seam: float) -> tuple[Spot, Spot]:
    """A stretch without its ends, where raw edges of the next pieces come in."""
    (a, b), (x, y) = line
    part = min(seam / dist(*line), 1 / 3)
    return (a + (x - a) * part, b + (y - b) * part), (x - (x - a) * part, y - (y - b) * part)


def _slid_aside(work: Work, shape: Any, normal: Spot, excess: float, seam: float) -> Work:
    """Slid away from a seam by what it is too large there: square to the seam, or along one of its own edges.

    Along an edge where that keeps its allowance: pieces with slanted seams are laid with their straight edges level.
    """
    nx, ny = normal
    slide = (-nx * excess, -ny * excess)
    slanted = [
        (cos(angle), sin(angle))
        for angle in (radians(each) for each in directions(shape))
        if min(abs(cos(angle) * nx + sin(angle) * ny), abs(sin(angle) * nx - cos(angle) * ny)) > NEAR
    ]
    if excess > NEAR and shape.geom_type == "Polygon" and slanted:
        edges = [edge for edge in _margins(work, shape, seam) if edge[0] * nx + edge[1] * ny < 1 - NEAR]
        ways = [(-x * excess / (x * nx + y * ny), -y * excess / (x * nx + y * ny)) for x, y in slanted]
        slide = max([slide, *ways], key=lambda way: round(min(m + way[0] * x + way[1] * y for x, y, m in edges), 6))
    return _slid(work, slide)


def _slid(work: Work, way: Spot) -> Work:
    return replace(moved(work, *way), drift=work.drift + hypot(*way))


def _even_at_both_ends(
    works: tuple[Work, Work], lies: tuple[Any, Any], line: tuple[Spot, Spot], seam: float
) -> Spot | None:
    """How to slide the other work along a seam, so that it stands out as far at both ends.

    None where the edge of either runs on beyond an end: nothing can be seen there.
    """
    beyond = [
        [_stands_out(work.cloth, shape, ends, seam) for work, shape in zip(works, lies, strict=True)]
        for ends in (line[::-1], line)
    ]
    start, end = (None if None in found else found[1] - found[0] for found in beyond)  # type: ignore[operator]
    if start is None or end is None:
        return None
    more = (start - end) / 2
    (a, b), (x, y) = line
    return (x - a) * more / dist(*line), (y - b) * more / dist(*line)


def _stands_out(cloth: Any, shape: Any, line: tuple[Spot, Spot], seam: float) -> float | None:
    """How far, along a seam, cloth reaches beyond where it should at the seam's end; None where its edge runs on."""
    (a, b), (x, y) = line
    length = dist(*line)
    ux, uy = (x - a) / length, (y - b) / length
    if shape.distance(Point(x + ux * seam / 16, y + uy * seam / 16)) < NEAR:
        return None
    deep = 12 * seam
    ray = LineString([((a + x) / 2, (b + y) / 2), (x + ux * deep, y + uy * deep)])
    reach = [first_run(each, ray) for each in (cloth, grown(shape, seam))]
    return reach[0] - reach[1] if min(reach) > 0 else None


def first_run(cloth: Any, ray: Any) -> float:
    """How far from its start a ray lies on cloth."""
    parts = ray.intersection(cloth)
    ends = [
        sorted(ray.project(Point(spot)) for spot in part.coords)
        for part in getattr(parts, "geoms", (parts,))
        if part.geom_type == "LineString" and not part.is_empty
    ]
    return max((end[-1] for end in ends if end[0] < NEAR), default=0)


def _margins(work: Work, shape: Any, seam: float) -> list[tuple[float, float, float]]:
    """For each edge of a finished shape its outward normal and how far the cloth reaches beyond it."""
    cloth, edges = work.cloth, []
    for stretch in straight_edges(shape):
        nx, ny = normal_of(stretch)
        edges.append((-nx, -ny, allowance(cloth, stretch, (-nx, -ny), seam)))
    return edges


def settled(work: Work, shape: Any, seam: float) -> Work:
    """Slid so that what reaches beyond the edges of its finished shape does so as evenly as it can."""
    if shape.geom_type != "Polygon":
        return work
    margins = _margins(work, shape, seam)
    x, y = _centred(margins) if len(margins) == 4 and shape.equals(shape.envelope) else _evenly(margins)
    return replace(moved(work, x, y), drift=work.drift + hypot(x, y))


def _centred(edges: list[tuple[float, float, float]]) -> Spot:
    """The slide (x, y) after which a rectangle has as much beyond either of two opposite edges."""
    out = {(round(p), round(q)): margin for p, q, margin in edges}
    return (out[-1, 0] - out[1, 0]) / 2, (out[0, -1] - out[0, 1]) / 2


def _evenly(edges: list[tuple[float, float, float]]) -> Spot:
    """The slide (x, y) after which the least of all margins is largest: margin + slide along the outward normal."""
    best, spot = min(margin for *_, margin in edges) + NEAR, (0.0, 0.0)
    for three in combinations(edges, 3):
        (a, b, m), (c, d, n), (e, f, o) = three
        # margin + a x + b y = r for all three
        det = (c - a) * (f - b) - (e - a) * (d - b)
        if abs(det) < NEAR:
            continue
        x = ((m - n) * (f - b) - (m - o) * (d - b)) / det
        y = ((c - a) * (m - o) - (e - a) * (m - n)) / det
        least = min(margin + p * x + q * y for p, q, margin in edges)
        if least > best and hypot(x, y) < 1:
            best, spot = least, (x, y)
    return spot


def _toward(stretch: tuple[Spot, Spot], theirs: Any) -> Spot:
    """The normal of a seam that points to the other part."""
    (a, b), (x, y) = stretch
    nx, ny = normal_of(stretch)
    near, far = (Point((a + x) / 2 + side * nx / 64, (b + y) / 2 + side * ny / 64) for side in (1, -1))
    return (nx, ny) if theirs.distance(near) < theirs.distance(far) else (-nx, -ny)
