"""What a way of making a unit asks for: cloth, in finished measures, and what comes out."""

from __future__ import annotations

from typing import Literal

from msgspec import Struct

from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.fraction import Fraction

CutAs = Literal["rectangle", "half square", "quarter square", "doubled half square", "strip", "slanted strip"]
"""How a piece lies in its cloth.

rectangle: the upright box of the patch. half square: the square that cut once corner to corner holds the patch
twice. quarter square: the square that cut twice holds it four times. doubled half square: twice as wide and
high as a half square. strip: a band across the fabric, from which segments are cut after sewing. slanted strip: such a
band whose set is cut at the slant of the patch, which has an edge along it.
"""


class RecipePart(Struct, frozen=True):
    """One kind of piece in a recipe: `count` pieces each time that the recipe is followed.

    `patch` is the finished patch that the piece holds (with the extra for trimming, if any); `role` is which
    of the shape's patches, in the order in which the shape draws them, it becomes (the first of several). Strips are
    counted once for a strip set, whose fabrics in order are its `bands`; the set gives `segments` segments of finished
    length `segment` for one unit, which are the unit's `rows`, counted from 1.
    """

    fabric: str
    patch: Polygon
    cut_as: CutAs
    count: int
    role: int
    segment: Exact = Fraction(0)
    segments: int = 0
    bands: tuple[str, ...] = ()
    rows: tuple[int, ...] = ()


class Recipe(Struct, frozen=True):
    """One making: the parts, how many units come out alike and how many as mirror images, and the seams it takes.

    `seams` is none where each unit is sewn by itself, one seam for each patch that is joined.
    """

    parts: tuple[RecipePart, ...]
    alike: int
    mirrored: int = 0
    seams: int = 0
    trimmed: bool = False
    """Whether units are cut large and trimmed when the block says `trim`."""
