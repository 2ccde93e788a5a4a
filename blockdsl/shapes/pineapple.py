"""`pineapple centre a with straight b diagonal c rounds 4`: a log cabin with logs across its corners as well.

A round is four straight logs and then four diagonal ones, all equally wide. Each is as long as the edge that it is
added to and ends at 45°, flush with its neighbours. The first diagonals touch the corners of the centre; the last
are triangles that fill the corners of the block.
"""

from __future__ import annotations

from blockdsl.geometry import Exact, square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes.outlines import outline
from blockdsl.shapes.shape import Cloth, Round, Shape
from blockdsl.shapes.words import WordReader

MOST_ROUNDS = 12
USUAL_STRIP, NARROWEST = Fraction(1, 2), Fraction(1, 20)
"""Widths of a log as parts of the middle\'s side. Common practice, no source."""
OPTIONS = ("rounds", "strip")
Corner = tuple[Exact, Exact]
Corners = tuple[Corner, ...]


def _read(words: WordReader) -> ShapeUse | None:
    if not words.is_next("centre", "center") or not (centre := words.word()) or not words.is_next("with"):
        return None
    straight = words.several(until="diagonal") if words.is_next("straight") else ()
    diagonal = words.several(*OPTIONS) if words.is_next("diagonal") else ()
    rounds = words.count(MOST_ROUNDS) if words.is_next("rounds") else None
    strip = words.number() if words.is_next("strip") else USUAL_STRIP
    if not straight or not diagonal or rounds is None or strip is None or not words.done:
        return None
    if not NARROWEST <= strip <= USUAL_STRIP or max(len(straight), len(diagonal)) > rounds:
        return None
    fabrics = [centre]
    for number in range(rounds):
        fabrics += (straight[number % len(straight)], diagonal[number % len(diagonal)])
    return ShapeUse("pineapple", tuple(fabrics), (Fraction(rounds), strip))


def _draw(filling: ShapeUse, width: Exact, _height: Exact) -> tuple[Cloth, ...]:
    rounds, strip = filling.numbers
    side = width / (1 + 2 * rounds * strip)
    wide = side * strip
    # Seen from the middle: straight edges lie `flat` from it; on diagonal ones both ways together come to `reach`.
    flat, reach = side / 2, side
    corner = (-flat, -flat)
    found: list[tuple[str, Corners]] = [(filling.fabrics[0], tuple(_turned(corner, turns) for turns in range(4)))]
    for number in range(int(rounds)):
        straight, diagonal = filling.fabrics[1 + 2 * number : 3 + 2 * number]
        further = flat + wide
        beyond = 2 * further if number == rounds - 1 else reach + wide * square_root(2)
        found += _all_round(straight, _straight(flat, further, reach))
        found += _all_round(diagonal, _diagonal(further, reach, beyond))
        flat, reach = further, beyond
    middle = width / 2
    return tuple((fabric, outline(*((x + middle, y + middle) for x, y in corners))) for fabric, corners in found)


def _straight(flat: Exact, further: Exact, reach: Exact) -> Corners:
    """The log at the top: as long as its edge inside, narrowing at 45° to nothing at the least."""
    inner, outer = reach - flat, reach - further
    ends = ((-outer, -further), (outer, -further)) if outer else ((outer, -further),)
    return (*ends, (inner, -flat), (-inner, -flat))


def _diagonal(further: Exact, reach: Exact, beyond: Exact) -> Corners:
    """The log across the corner at the top right, between the straight logs there; the last fills the corner."""
    inner, outer = reach - further, beyond - further
    ends = ((outer, -further), (further, -outer)) if outer != further else ((further, -further),)
    return ((inner, -further), *ends, (further, -inner))


def _all_round(fabric: str, corners: Corners) -> list[tuple[str, Corners]]:
    """The four logs of a round, opposite ones after each other, as they are sewn."""
    return [(fabric, tuple(_turned(corner, turns) for corner in corners)) for turns in (0, 2, 3, 1)]


def _turned(corner: Corner, turns: int) -> Corner:
    """A place after so many quarter turns clockwise about the middle."""
    for _ in range(turns):
        corner = (-corner[1], corner[0])
    return corner


def _rounds(filling: ShapeUse) -> tuple[Round, ...]:
    numbers = range(1, 1 + int(filling.numbers[0]))
    return tuple(Round(f"{way} round", number, (2, 2)) for number in numbers for way in ("straight", "diagonal"))


SHAPE = Shape(
    "pineapple",
    "pineapple centre CENTRE with straight STRAIGHT diagonal DIAGONAL rounds 4 [strip 1/2]",
    "pineapple",
    "a square with rounds of four straight logs and four across the corners; several fabrics after straight or "
    "diagonal are taken in turn, round by round; strip is the width of a log as a part of the centre's side, half of "
    "it at the most",
    Fraction(1),
    _read,
    _draw,
    rounds=_rounds,
    middle=0,
    family="rounds",
)
