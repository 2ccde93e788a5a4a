"""How the patches become a block.

Takes:    the model.
Gives:    the making: units to sew, how many of each, the method for each, and the cloth that the methods ask for.
Measures: exact, finished.
Reports:  what cannot be sewn as the designer chose.
Does not know: paper.
"""

from blockdsl.sewing.making import Making, NeededPart, UnitClass, is_known_method, plan_making

__all__ = ["Making", "NeededPart", "UnitClass", "is_known_method", "plan_making"]
