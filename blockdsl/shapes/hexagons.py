"""`hexagons a b … across 4 [halves]`: a honeycomb of regular hexagons standing on their points.

With C across a box of width W a hexagon is w = W/C from flat to flat and its side is s = w/√3. Rows follow one another
at 3/2 s, each half a hexagon further to the side, so that every other row ends in half hexagons; at top and bottom the
field is trimmed. `halves` parts each hexagon from point to point: the patches then stand in columns w/2 wide, and only
straight seams are needed.
"""

from __future__ import annotations

from collections.abc import Iterator

from msgspec import Struct

from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes.fields import ROOT_THREE, reach, trimmed
from blockdsl.shapes.outlines import outline
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader

MOST_ACROSS = 40


def _read(words: WordReader) -> ShapeUse | None:
    rings = words.is_next("rings")
    fabrics = words.several("across")
    across = words.number() if words.is_next("across") else None
    halves = words.is_next("halves")
    if not fabrics or across is None or across.denominator != 1 or not 1 <= across <= MOST_ACROSS or not words.done:
        return None
    places = (*(("rings",) if rings else ()), *(("halves",) if halves else ()))
    return ShapeUse("hexagons", fabrics, (across,), places)


class Hexagon(Struct, frozen=True):
    """One hexagon: twice its place across in hexagons from the middle, its row from the middle, its centre."""

    twice_across: int
    row: int
    x: Exact
    y: Exact
    flat: Exact

    def outline(self) -> Polygon:
        """Clockwise from the point at the top."""
        side, x, y = self.flat / ROOT_THREE, self.x, self.y
        left, right, up = x - self.flat / 2, x + self.flat / 2, side / 2
        return outline((x, y - side), (right, y - up), (right, y + up), (x, y + side), (left, y + up), (left, y - up))


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    found: list[Cloth] = []
    for hexagon in honeycomb(int(filling.numbers[0]), width, height, centred="rings" in filling.places):
        fabric = _fabric(filling, hexagon)
        whole = hexagon.outline()
        top, right, lower_right, bottom, lower_left, left = whole
        halves = ((top, bottom, lower_left, left), (top, right, lower_right, bottom))
        for part in halves if "halves" in filling.places else (whole,):
            inside = trimmed(part, width, height)
            if inside:
                found.append((fabric, inside))
    return tuple(found)


def honeycomb(across: int, width: Exact, height: Exact, *, centred: bool = False) -> Iterator[Hexagon]:
    """Hexagons that reach into a box, in reading order.

    One stands in the middle, or (unless `centred`) a seam between two rows runs through it.
    """
    pitch = width / across / ROOT_THREE * Fraction(3, 2)
    between = not centred and _is_larger_between(width / across, height)
    rows = reach(height / 2, pitch) + 1
    for row in range(-rows, rows + 1):
        y = height / 2 + (row + (Fraction(1, 2) if between else 0)) * pitch
        if not -pitch < y < height + pitch:
            continue
        # The row in the middle has a hexagon in its own middle, each next row a seam, and so on in turn.
        for twice_across in range(-across - 1, across + 2):
            if (twice_across - row) % 2 == 0:
                yield Hexagon(twice_across, row, (width + twice_across * (width / across)) / 2, y, width / across)


def _is_larger_between(flat: Exact, height: Exact) -> bool:
    """Whether the pieces at top and bottom are larger when a seam between two rows lies in the middle.

    Rows come every 3/2 s and reach s up and down. What shows of the outermost row is then between nothing and 3/2 s;
    moving the field by half a row, 3/4 s, makes it larger when it is less than that.
    """
    side = flat / ROOT_THREE
    pitch = side * Fraction(3, 2)
    rows = reach(height / 2 - side, pitch) + 1
    while rows * pitch - side >= height / 2:
        rows -= 1
    return height / 2 - (rows * pitch - side) < pitch / 2


def _fabric(filling: ShapeUse, hexagon: Hexagon) -> str:
    fabrics = filling.fabrics
    # Steps along the row, and along the rows that fall to the right: the third way falls to the left.
    along = (hexagon.twice_across - hexagon.row) // 2
    if "rings" in filling.places:
        ring = max(abs(along), abs(hexagon.row), abs(along + hexagon.row))
        return fabrics[min(ring, len(fabrics) - 1)]
    return fabrics[(along - hexagon.row) % len(fabrics)]


def about_how_many(across: int, width: Exact, height: Exact) -> int:
    """No fewer than the hexagons of a honeycomb."""
    return (2 * reach(height / 2, width / across / ROOT_THREE * Fraction(3, 2)) + 3) * (across + 2)


def _count(filling: ShapeUse, width: Exact, height: Exact) -> int:
    return about_how_many(int(filling.numbers[0]), width, height) * (2 if "halves" in filling.places else 1)


def _measured(filling: ShapeUse, width: Exact, _height: Exact) -> Exact:
    """From flat to flat, or half of that where half hexagons are cut."""
    return width / int(filling.numbers[0]) / (2 if "halves" in filling.places else 1)


SHAPE = Shape(
    "hexagons",
    "hexagons FABRIC … across 4 [halves], or hexagons rings MIDDLE … OUTERMOST across 5 [halves]",
    "hexagon field",
    "a honeycomb of hexagons, points up, its fabrics in turn along each row, trimmed at top and bottom; rings gives "
    "them out from the middle; halves parts each hexagon in two, for straight seams",
    None,
    _read,
    _draw,
    count=_count,
    measured=_measured,
    also_called=("honeycomb",),
    family="one-patch of hexagons",
)
