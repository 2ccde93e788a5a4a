"""Pieces of appliqué: one letter for each different outline, its template with what is turned under, its cloth."""

from __future__ import annotations

from collections import Counter
from functools import lru_cache
from typing import Final

from msgspec import Struct

from blockdsl.analysis.letters import Lettered, spell
from blockdsl.cutting.templates import Template
from blockdsl.geometry import Polygon
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.parallel import parallel_outside
from blockdsl.geometry.polygon import bounding_box, translate
from blockdsl.geometry.symmetry import MIRROR
from blockdsl.model import Applique, BlockDesign, RulerUnit
from blockdsl.model.block import APPLIQUE

USUAL_TURN_UNDER: Final[dict[RulerUnit, Fraction]] = {"in": Fraction(1, 4), "cm": Fraction(3, 4)}
"""What is turned under where nothing is said: as much as a seam takes (common practice, no source)."""
_IN_UNIT: Final = {
    ("in", "in"): Fraction(1),
    ("cm", "cm"): Fraction(1),
    ("in", "cm"): Fraction(254, 100),
    ("cm", "in"): Fraction(100, 254),
}


class AppliquePiece(Struct, frozen=True):
    """All pieces of one letter and their template; `uses` says how many of which fabric."""

    label: str
    turn_under: Fraction
    template: Template
    uses: tuple[tuple[str, int], ...]


def turn_under_of(piece: Applique, unit: RulerUnit) -> Fraction:
    """The allowance that is folded under, in the block's unit; nothing for a raw edge."""
    if piece.raw_edge:
        return Fraction(0)
    if piece.turn_under is None:
        return USUAL_TURN_UNDER[unit]
    length, given = piece.turn_under
    return length * _IN_UNIT[given, unit]


def applique_letters(design: BlockDesign, lettered: Lettered) -> tuple[str, ...]:
    """The letter of each piece, going on from those of the patches; a mirror image has an r behind its partner's."""
    first = len(lettered.shapes) - len(lettered.mirror_of)
    known: dict[tuple[Polygon, Fraction], str] = {}
    letters = []
    for piece in design.appliques:
        key = (_at_origin(piece.drawn), turn_under_of(piece, design.unit))
        letter = known.setdefault(key, spell(first + len(known)))
        letters.append(f"{letter}r" if piece.mirrored else letter)
    return tuple(letters)


def applique_pieces(design: BlockDesign, lettered: Lettered) -> tuple[AppliquePiece, ...]:
    """Every different piece, in the order of its letter's first place."""
    letters = applique_letters(design, lettered)
    first: dict[str, Applique] = {}
    for letter, piece in zip(letters, design.appliques, strict=True):
        first.setdefault(letter, piece)
    counted = Counter((letter, piece.fabric) for letter, piece in zip(letters, design.appliques, strict=True))
    found = []
    for letter, piece in first.items():
        uses = tuple((fabric, count) for (label, fabric), count in counted.items() if label == letter)
        found.append(_piece(letter, piece, uses, design.unit))
    return tuple(found)


def _piece(letter: str, piece: Applique, uses: tuple[tuple[str, int], ...], unit: RulerUnit) -> AppliquePiece:
    under = turn_under_of(piece, unit)
    outline = _at_origin(piece.drawn)
    left, top, right, bottom = bounding_box(outline)
    size = right - left, bottom - top
    if piece.mirrored:
        outline = MIRROR.apply_polygon(outline, *size)
    partner = letter.removesuffix("r") if piece.mirrored else None
    down = (0 * size[0], 0 * size[0] + 1)
    template = Template(letter, APPLIQUE, size, outline, _cut(outline, under), down, dict(uses), partner)
    return AppliquePiece(letter, under, template, uses)


@lru_cache(maxsize=512)
def _cut(outline: Polygon, under: Fraction) -> Polygon:
    return parallel_outside(outline, under)


def _at_origin(outline: Polygon) -> Polygon:
    left, top, _, _ = bounding_box(outline)
    return translate(outline, -left, -top)
