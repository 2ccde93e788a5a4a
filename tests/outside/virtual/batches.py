"""Units made in batches: squares laid right sides together, sewn on both sides of a line, cut apart, opened.

Every unit comes out with the middle of its finished outline at the origin.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import atan2, pi

from shapely import affinity
from shapely.geometry import box

from tests.outside.virtual.cloth import Work, half_plane, kept, moved, turned, turned_over
from tests.outside.virtual.plan import Patch, Spot

HALF = 0.5**0.5
Take = Callable[[Patch], float]
"""Takes the next square for a patch from the pile: the length of its side."""


@dataclass(frozen=True, slots=True)
class Squares:
    """The squares of one batch are taken by the patches that they become."""

    take: Take
    seam: float
    picture: tuple[Patch, ...]
    height: float


def square(patch: Patch, side: float, x: float = 0, y: float = 0) -> Work:
    """A square of cloth, its corner at a place."""
    return Work((Patch(patch.label, patch.fabric, box(x, y, x + side, y + side)),))


def both_sides(bottom: Work, tops: Sequence[Work], through: Spot, normal: Spot, seam: float) -> tuple[Work, Work]:
    """Sewn on both sides of a line, cut on it and opened; `tops` lie wrong side up. First the side of the normal."""
    (x, y), opened = through, []
    for nx, ny in (normal, (-normal[0], -normal[1])):
        stitches = (x + nx * seam, y + ny * seam)
        side = half_plane(stitches, (nx, ny))
        angle = atan2(ny, nx) + pi / 2
        faces = list(kept(bottom, side).faces)
        for top in tops:
            faces += turned_over(kept(top, side), stitches, angle).faces
        opened.append(Work(tuple(faces)))
    return opened[0], opened[1]


def halves(one: Patch, large: float, other: Patch, small: float, seam: float) -> tuple[Work, Work]:
    """Two half-square units, each with its seam from corner to corner through the origin."""
    gap = (large - small) / 2
    middle = large / 2
    opened = both_sides(square(one, large), [square(other, small, gap, gap)], (0, 0), (-HALF, HALF), seam)
    units = []
    for unit, (nx, ny) in zip(opened, ((-HALF, HALF), (HALF, -HALF)), strict=True):
        units.append(moved(unit, -middle - nx * seam, -middle - ny * seam))
    # Both with the first fabric on the same side of the seam.
    return units[0], turned(units[1], 180)


def crossed(under: Work, over: Work, seam: float) -> tuple[Work, Work]:
    """A unit laid on another one, right sides together, the seams or diagonals on each other, and cut across them."""
    face_down = turned_over(over, (0, 0), pi / 4)
    first, second = both_sides(under, [face_down], (0, 0), (HALF, HALF), seam)
    return moved(first, -HALF * seam, -HALF * seam), moved(second, HALF * seam, HALF * seam)


# --- the methods -------------------------------------------------------------------------------------


def half_two(squares: Squares) -> list[list[Work]]:
    one, other = squares.picture
    return [list(halves(one, squares.take(one), other, squares.take(other), squares.seam))]


def half_eight(squares: Squares) -> list[list[Work]]:
    """The large squares are cut through the middle both ways as well: four smaller pairs."""
    one, other = squares.picture
    sides = squares.take(one) / 2, squares.take(other) / 2
    return [[unit for _ in range(4) for unit in halves(one, sides[0], other, sides[1], squares.seam)]]


def _around(picture: tuple[Patch, ...]) -> list[Patch]:
    """The four patches of a square in their order about its middle."""
    x = sum(patch.shape.centroid.x for patch in picture) / len(picture)
    y = sum(patch.shape.centroid.y for patch in picture) / len(picture)
    return sorted(picture, key=lambda p: atan2(p.shape.centroid.y - y, p.shape.centroid.x - x))


def hourglass_two(squares: Squares) -> list[list[Work]]:
    one, other, *_ = _around(squares.picture)
    pair = halves(one, squares.take(one), other, squares.take(other), squares.seam)
    return [list(crossed(*pair, squares.seam))]


def quarters_two(squares: Squares) -> list[list[Work]]:
    """Two pairs; which way round the second lies on the first decides which patches meet, so both ways are shown."""
    a, b, c, d = _around(squares.picture)
    first = halves(a, squares.take(a), b, squares.take(b), squares.seam)
    second = halves(c, squares.take(c), d, squares.take(d), squares.seam)
    return [_pairs_crossed(first, second, angle, squares.seam) for angle in (0, 180)]


def split_two(squares: Squares) -> list[list[Work]]:
    small_one, small_other, large = sorted(squares.picture, key=lambda patch: patch.shape.area)
    pair = halves(small_one, squares.take(small_one), small_other, squares.take(small_other), squares.seam)
    wholes = []
    for _ in pair:
        side = squares.take(large)
        wholes.append(square(large, side, -side / 2, -side / 2))
    return [_pairs_crossed(pair, (wholes[0], wholes[1]), 0, squares.seam)]


def _pairs_crossed(first: tuple[Work, Work], second: tuple[Work, Work], angle: float, seam: float) -> list[Work]:
    return [
        unit for under, over in zip(first, second, strict=True) for unit in crossed(under, turned(over, angle), seam)
    ]


def geese_four(squares: Squares) -> list[list[Work]]:
    """A large square with two small ones on opposite corners; then one more on each of the two halves."""
    goose = max(squares.picture, key=lambda patch: patch.shape.area)
    left, right = (patch for patch in squares.picture if patch is not goose)
    side, seam = squares.take(goose), squares.seam
    first, second = squares.take(left), squares.take(left)
    tops = [square(left, first), square(left, second, side - second, side - second)]
    hearts = both_sides(square(goose, side), tops, (0, 0), (-HALF, HALF), seam)
    units = []
    for heart, n, corner in zip(hearts, ((-HALF, HALF), (HALF, -HALF)), ((0, side), (side, 0)), strict=True):
        last = squares.take(right)
        laid = square(right, last, max(corner[0] - last, 0), max(corner[1] - last, 0))
        pair = both_sides(heart, [laid], corner, (HALF, HALF), seam)
        for unit, sign in zip(pair, (1, -1), strict=True):
            # The tip of the goose: the middle of the large square, an allowance away from both lines of cutting.
            down = (n[0] + sign * HALF, n[1] + sign * HALF)
            x, y = side / 2 + down[0] * seam, side / 2 + down[1] * seam
            drop = squares.height / 2 * HALF
            units.append(moved(unit, -x - down[0] * drop, -y - down[1] * drop))
    return [units]


METHODS: dict[tuple[str, str], Callable[[Squares], list[list[Work]]]] = {
    ("two at a time", "half"): half_two,
    ("eight at a time", "half"): half_eight,
    ("two at a time", "hourglass"): hourglass_two,
    ("two at a time", "quarters"): quarters_two,
    ("two at a time", "split"): split_two,
    ("four at a time", "geese"): geese_four,
}
"""Each gives one or more batches of which the one that looks like the picture is meant."""


def turnings(work: Work) -> list[Work]:
    """The unit in its four turns."""
    return [turned(work, 90 * quarter) for quarter in range(4)]


def as_drawn(work: Work, width: float, height: float) -> Work:
    """From its middle to the corner of its box."""
    return Work(
        tuple(
            Patch(face.label, face.fabric, affinity.translate(face.shape, width / 2, height / 2)) for face in work.faces
        ),
        work.drift,
    )
