"""A die or speciality ruler that the maker owns."""

from __future__ import annotations

from typing import Final, Literal

from msgspec import Struct

from blockdsl.geometry.fraction import Fraction
from blockdsl.model.fabric import RulerUnit

CutterShape = Literal["square", "rectangle", "half", "quarter", "strip", "diamond"]
CUTTER_SHAPES: Final[dict[CutterShape, str]] = {
    "square": "3 in",
    "rectangle": "2 x 4 in",
    "half": "2 in",
    "quarter": "4 in",
    "strip": "2 1/2 in",
    "diamond": "3 in",
}
"""What a cutter can cut, each with a size as an example."""


class Cutter(Struct, frozen=True):
    """`label` is her own word for it. `size` is finished, shorter side first; of a strip alone it is the cut width.

    Squares by their side, halves (half-square triangles) by their short sides, quarters (quarter-square triangles) by
    their long side, diamonds of 45 degrees by their side: all four say the one measure twice.
    """

    label: str
    shape: CutterShape
    size: tuple[Fraction, Fraction]
    unit: RulerUnit
