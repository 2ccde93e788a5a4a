"""How the patches become a block.

Takes:    the model.
Gives:    the making: units to sew, how many of each, the method for each, and the cloth that the methods ask for.
Measures: exact, finished.
Reports:  what cannot be sewn as the designer chose.
Does not know: paper.
"""

from blockdsl.sewing.batches import NeededPart, Prints
from blockdsl.sewing.choices import is_known_method
from blockdsl.sewing.making import ChosenMethods, Making, Run, UnitClass, choose_for_block, plan_making, plan_makings

__all__ = [
    "ChosenMethods",
    "Making",
    "NeededPart",
    "Prints",
    "Run",
    "UnitClass",
    "choose_for_block",
    "is_known_method",
    "plan_making",
    "plan_makings",
]
