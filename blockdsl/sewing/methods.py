"""The methods of sewing a unit, and which shapes each can make.

A new method is one recipe file and one entry in `METHODS`; the errors, the help and the facts learn of it here.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.sewing import at_a_time, flip, strips
from blockdsl.sewing.recipe import Recipe

CUT_PATCHES = "cut patches"
FOUNDATION = "foundation"
OVER_PAPERS = "over papers"
STRIPS = "strip set"
MakeRecipe = Callable[[ShapeUse, Exact, Exact, Fraction], Recipe]
"""(filling, finished width, finished height, trim) → recipe; the unit as drawn, before turning."""

METHODS: Mapping[str, Mapping[str, MakeRecipe]] = {
    CUT_PATCHES: {},
    "two at a time": at_a_time.TWO,
    "four at a time": at_a_time.FOUR,
    "eight at a time": at_a_time.EIGHT,
    "stitch and flip": flip.STITCH_AND_FLIP,
    STRIPS: strips.STRIP_SET,
    FOUNDATION: {},
    OVER_PAPERS: {},
}
"""Methods by name; for each the recipes by shape."""

FOR_ALL = (CUT_PATCHES, FOUNDATION, OVER_PAPERS)
"""Methods that need no recipe: they take a unit patch by patch, and fit every shape and every unit of rows."""

PATCH_BY_PATCH = (CUT_PATCHES, OVER_PAPERS)
"""Methods whose patches are cut each by itself and joined seam by seam."""


def makes(method: str, filling: ShapeUse) -> bool:
    """Whether a method can make this very shape: a star of single diamonds has no rows to sew as strips."""
    if method in FOR_ALL:
        return True
    is_single = strips.is_star(filling) and filling.numbers[0] == 1
    return filling.shape in METHODS[method] and not is_single


def methods_for(shape: str) -> tuple[str, ...]:
    """The methods that can make a shape, `cut patches` first; an empty name stands for a unit of rows or patches."""
    return tuple(name for name, recipes in METHODS.items() if name in FOR_ALL or shape in recipes)
