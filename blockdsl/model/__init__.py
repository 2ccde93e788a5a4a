"""The nouns of patchwork: fabric, patch, unit, block, quilt, book.

Takes:    exact numbers and outlines.
Gives:    frozen descriptions of a finished block, of what its units are and of the designer's choices.
Measures: exact inches or centimetres, finished.
Reports:  nothing.
Does not know: seams sewn, paper.
"""

from blockdsl.model.block import Applique, BlockDesign, Choice, ColourPlan, GrainChoice, Patch, ShapeUse, UnitPlace
from blockdsl.model.book import BlockInBook, BookDesign, ChapterDesign, QuiltInBook, WordsInBook
from blockdsl.model.fabric import Fabric, PressingChoice, RulerUnit, contrast, luminance, value_of
from blockdsl.model.quilt import QuiltDesign

__all__ = [
    "Applique",
    "BlockDesign",
    "BlockInBook",
    "BookDesign",
    "ChapterDesign",
    "Choice",
    "ColourPlan",
    "Fabric",
    "GrainChoice",
    "Patch",
    "PressingChoice",
    "QuiltDesign",
    "QuiltInBook",
    "RulerUnit",
    "ShapeUse",
    "UnitPlace",
    "WordsInBook",
    "contrast",
    "luminance",
    "value_of",
]
