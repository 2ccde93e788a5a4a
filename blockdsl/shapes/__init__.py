"""The shapes of the language, one file each.

Takes:    the words after a shape's name.
Gives:    its fabrics in their roles, its proportion, its patches in a box, its usual methods, words for help.
Measures: whatever the box measures, exact.
Reports:  nothing: words that do not fit give None and the caller reports the usage.
Does not know: seams, paper.
"""

from blockdsl.shapes.listed import SHAPES
from blockdsl.shapes.shape import Shape

__all__ = ["SHAPES", "Shape"]
