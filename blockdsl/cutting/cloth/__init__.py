"""How to cut the pieces of one fabric from the least cloth.

Takes:    pieces (how wide, how high, how many), the usable width of the cloth or the size of a sheet.
Gives:    a plan: strips across the cloth, each sub-cut into sections; the length that it takes, and a length below
          which no such plan can come.
Measures: exact at the door, whole multiples of the cutter's measure inside.
Reports:  nothing; ValueError for a piece that the cloth cannot hold, which callers ask about before.
Does not know: what the pieces are for, seams, paper. The solver that it works with is loaded with the first plan.
"""

from blockdsl.cutting.cloth.effort import Effort
from blockdsl.cutting.cloth.pieces import ClothPiece, fits_cloth, fits_sheet
from blockdsl.cutting.cloth.plan import ClothPlan, CutSheet, Panel, PlacedPiece, SheetPlan, Strip, StripSection
from blockdsl.cutting.cloth.planning import plan_length, plan_sheets

__all__ = [
    "ClothPiece",
    "ClothPlan",
    "CutSheet",
    "Effort",
    "Panel",
    "PlacedPiece",
    "SheetPlan",
    "Strip",
    "StripSection",
    "fits_cloth",
    "fits_sheet",
    "plan_length",
    "plan_sheets",
]
