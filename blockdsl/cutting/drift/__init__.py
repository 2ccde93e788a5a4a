"""What the cut sizes, rounded up to the ruler, come to when they are sewn: the real size of every unit.

Takes:    the design, its making, its cut list and its order of sewing.
Gives:    how much each unit is larger than drawn, and where seams end up out of their places.
Measures: exact, in the block's unit; a first look in floats lets off what lies well beyond doubt.
Reports:  nothing; `facts` warns.
Does not know: sentences, paper.
"""

from blockdsl.cutting.drift.cloth import TOLERANCE
from blockdsl.cutting.drift.find import Drift, DriftFinder, RealSize

__all__ = ["TOLERANCE", "Drift", "DriftFinder", "RealSize"]
