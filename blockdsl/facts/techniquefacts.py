"""A technique as plain data: steps in words and scenes, the units of the block at hand, a table of common sizes.

All lengths are exact. Scenes are those of the sewing room: cloth, lines and tools in true measure.
"""

from __future__ import annotations

from collections.abc import Mapping

from msgspec import Struct

from blockdsl.cutting.sizes import Extent
from blockdsl.facts.blockrecord import CutFacts, FabricFacts, RulerUnit
from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.language import Language
from blockdsl.sewing.techniques.scene import (
    Cutting,
    Gap,
    Item,
    LessonStep,
    Line,
    LineKind,
    Measured,
    PressArrow,
    SceneCloth,
    SceneDot,
    ScenePaper,
    ScenePicture,
    SceneWords,
)

__all__ = [
    "Cutting",
    "Gap",
    "Item",
    "LessonStep",
    "Line",
    "LineKind",
    "Measured",
    "PressArrow",
    "SceneCloth",
    "SceneDot",
    "ScenePaper",
    "ScenePicture",
    "SceneWords",
    "SizeRow",
    "SizeTable",
    "TechniqueFacts",
    "TechniqueSection",
    "UnitUse",
]


class SizeRow(Struct, frozen=True):
    """One finished size: what is cut of each piece (one side of a square or strip, two of a rectangle)."""

    finished: tuple[Exact, ...]
    cuts: tuple[tuple[Fraction, ...], ...]
    unfinished: tuple[Exact, ...]


class SizeTable(Struct, frozen=True):
    """Common sizes. `heads` are keys of the pieces of each row's `cuts`, and whether they are cut oversized.

    `oversized` is what such pieces are larger by, or 0; `proportion` the width and height of every unit, in whole
    numbers.
    """

    heads: tuple[tuple[str, bool], ...]
    rows: tuple[SizeRow, ...]
    oversized: Fraction
    proportion: tuple[int, int] = (1, 1)


class UnitUse(Struct, frozen=True):
    """A unit of a block that is made in this way, and the lines of the block's cutting table that are for it.

    Lengths are in the block's own `unit`; `fabrics` are what is printed for the names of its fabrics.
    """

    block: str
    unit: RulerUnit
    title: str
    count: int
    spare: int
    finished: Extent
    unfinished: Extent
    cuts: tuple[CutFacts, ...]
    fabrics: Mapping[str, str]
    language: Language = "en-US"


class TechniqueSection(Struct, frozen=True):
    """One kind of unit; `key` is that of its title.

    `fabrics` are those of its roles, for the pictures; `finished` the size that the steps give, if
    they are `sized`. Lengths are in the
    section's own `unit`, all but those of `uses`; `language` is that in which it is told.
    """

    shape: str
    key: str
    unit: RulerUnit
    seam: Fraction
    finished: Extent
    fabrics: tuple[FabricFacts, ...]
    steps: tuple[LessonStep, ...]
    table: SizeTable
    uses: tuple[UnitUse, ...]
    sized: bool = True
    language: Language = "en-US"


class TechniqueFacts(Struct, frozen=True):
    """One method with the kinds of unit that are of interest."""

    method: str
    sections: tuple[TechniqueSection, ...]
