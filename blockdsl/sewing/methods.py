"""The methods of sewing a unit, and which shapes each can make.

A new method is one recipe file and one entry in `METHODS`; the errors, the help and the facts learn of it here.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from fractions import Fraction

from blockdsl.geometry import Exact
from blockdsl.model import Filling
from blockdsl.sewing import at_a_time, flip, strips
from blockdsl.sewing.recipe import Recipe

CUT_PATCHES = "cut patches"
MakeRecipe = Callable[[Filling, Exact, Exact, Fraction], Recipe]
"""(filling, finished width, finished height, trim) → recipe; the unit as drawn, before turning."""

METHODS: Mapping[str, Mapping[str, MakeRecipe]] = {
    CUT_PATCHES: {},
    "two at a time": at_a_time.TWO,
    "four at a time": at_a_time.FOUR,
    "eight at a time": at_a_time.EIGHT,
    "stitch and flip": flip.STITCH_AND_FLIP,
    "strip set": strips.STRIP_SET,
}
"""Methods by name; for each the recipes by shape. Each patch cut by itself needs no recipe and fits every shape."""

NOT_YET = ("foundation",)
"""Methods of the language that this version cannot work out."""


def methods_for(shape: str) -> tuple[str, ...]:
    """The methods that can make a shape, `cut patches` first."""
    return tuple(name for name, recipes in METHODS.items() if name == CUT_PATCHES or shape in recipes)
