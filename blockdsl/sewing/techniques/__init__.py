"""How each method is sewn, step by step, for someone who has never sewn.

Takes:    the measures of one unit: finished, seam allowance, what is cut.
Gives:    numbered steps, each in words and as a scene of cloth, seams, cuts and tools.
Measures: exact, in the block's own unit; x to the right, y downward.
Reports:  nothing.
Does not know: paper, colours, how a scene is drawn.
"""

from blockdsl.sewing.techniques.lessons import LESSONS
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.topic import Lesson, Topic

__all__ = ["LESSONS", "Lesson", "Measures", "Topic"]
