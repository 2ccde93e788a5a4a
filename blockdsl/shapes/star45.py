"""`star45 points a b … [rows 3] ground c [corners d]`: the eight-point star of 45° diamonds.

With S for the side of the cell and c for the side of a corner square, a diamond's side is c too, and a side triangle
stands with its long edge c√2 on the edge of the cell: S = 2c + c√2, so c = S/(2 + √2) = S(1 - √2/2).
Round the middle lie eight steps v of length c, an eighth of a turn apart. A diamond has its corners at the middle, v,
v + v' and v', where v' is the next step; a corner square and a side triangle lie between two diamonds' tips.
"""

from __future__ import annotations

from collections.abc import Iterator

from blockdsl.geometry import Exact, Point, square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes.outlines import outline
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader

POINTS = 8
MOST_ROWS = 20
HALF_ROOT = square_root(2) / 2

# How many of the fabrics are the ground's: the side triangles and the corner squares.
_GROUNDS = 2
_SPLIT = 2


def _read(words: WordReader) -> ShapeUse | None:
    split = words.is_next("split")
    if not split and not words.is_next("points"):
        return None
    fabrics: list[str] = []
    rows = Fraction(1)
    while not words.is_next("ground"):
        if words.is_next("rows"):
            found = words.number()
            if found is None or found.denominator != 1 or not 2 <= found <= MOST_ROWS or split or rows > 1:
                return None
            rows = found
        elif fabric := words.word():
            fabrics.append(fabric)
        else:
            return None
    ground = words.word()
    corners = words.word() if words.is_next("corners") else ground
    if not ground or not corners or not words.done or not fabrics or (split and len(fabrics) != _SPLIT):
        return None
    return ShapeUse("star45", (*fabrics, ground, corners), (rows,), ("split",) if split else ())


def steps_round(corner: Exact) -> list[Point]:
    """The eight steps of length `corner` from the middle, clockwise from straight up."""
    aslant = HALF_ROOT * corner
    zero = 0 * corner
    ways = ((zero, -corner), (aslant, -aslant), (corner, zero), (aslant, aslant))
    return [Point(x, y) for x, y in (*ways, *((-x, -y) for x, y in ways))]


def corner_side(width: Exact) -> Exact:
    """Side of a corner square and of a diamond in a star `width` across: exactly width × (1 - √2/2)."""
    return width * (1 - HALF_ROOT)


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    ground, corners = filling.fabrics[-_GROUNDS:]
    return (*_points(filling, width), *_sides(ground, width, height), *_squares(corners, width, height))


def _points(filling: ShapeUse, width: Exact) -> Iterator[Cloth]:
    """The diamonds clockwise, the first one right of the top; those of one point row by row from the middle."""
    fabrics = filling.fabrics[:-_GROUNDS]
    rows = int(filling.numbers[0])
    corner = corner_side(width)
    around = steps_round(corner / rows)
    middle = Point(width / 2, width / 2)
    for number, one in enumerate(around):
        other = around[(number + 1) % POINTS]
        if filling.places:
            yield from _halves(fabrics, middle, one, other)
            continue
        for i in range(rows):
            for j in range(rows):
                x, y = middle.x + one.x * i + other.x * j, middle.y + one.y * i + other.y * j
                fabric = fabrics[(i + j if rows > 1 else number) % len(fabrics)]
                yield (
                    fabric,
                    outline(
                        (x, y),
                        (x + one.x, y + one.y),
                        (x + one.x + other.x, y + one.y + other.y),
                        (x + other.x, y + other.y),
                    ),
                )


def _parts(filling: ShapeUse, _width: Exact, _height: Exact) -> tuple[tuple[int, int], ...]:
    """The points of the star, where each is made of several patches."""
    of_a_point = 2 if filling.places else int(filling.numbers[0]) ** 2
    return tuple((number * of_a_point, (number + 1) * of_a_point) for number in range(POINTS))


def _halves(fabrics: tuple[str, ...], middle: Point, one: Point, other: Point) -> Iterator[Cloth]:
    """A diamond parted from the middle to its tip."""
    x, y = middle
    tip = (x + one.x + other.x, y + one.y + other.y)
    yield fabrics[0], outline((x, y), (x + one.x, y + one.y), tip)
    yield fabrics[1], outline((x, y), tip, (x + other.x, y + other.y))


def _sides(ground: str, width: Exact, height: Exact) -> Iterator[Cloth]:
    """The triangles at top, right, bottom and left."""
    corner, depth = corner_side(width), corner_side(width) * HALF_ROOT
    zero, far = 0 * width, width - corner
    yield ground, outline((corner, zero), (far, zero), (width / 2, depth))
    yield ground, outline((width, corner), (width, far), (width - depth, height / 2))
    yield ground, outline((far, height), (corner, height), (width / 2, height - depth))
    yield ground, outline((zero, far), (zero, corner), (depth, height / 2))


def _squares(corners: str, width: Exact, height: Exact) -> Iterator[Cloth]:
    """The squares at top left, top right, bottom right and bottom left."""
    corner, zero = corner_side(width), 0 * width
    for left, top in ((zero, zero), (width - corner, zero), (width - corner, height - corner), (zero, height - corner)):
        right, bottom = left + corner, top + corner
        yield corners, outline((left, top), (right, top), (right, bottom), (left, bottom))


SHAPE = Shape(
    "star45",
    "star45 points FABRIC … [rows 3] ground FABRIC [corners FABRIC], or star45 split LEFT RIGHT ground FABRIC",
    "eight-point star",
    "eight diamonds of 45° round the middle, their fabrics in turn clockwise from the top; with rows each is made of "
    "rows of small diamonds, their fabrics in turn from the middle outward; split parts each from the middle to its "
    "tip",
    Fraction(1),
    _read,
    _draw,
    parts=_parts,
    also_called=("eight point star", "eight pointed star"),
    family="eight-point star",
)
