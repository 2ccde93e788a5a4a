"""The order of sewing and the methods put together: numbered steps.

Takes:    a block, its making, its order of sewing.
Gives:    steps in the order of making: what each takes, its seams, which way they are pressed, what to do in words.
Measures: exact, finished, in the block's unit; x to the right, y downward from the corner of what is made.
Reports:  nothing; a block that no order sews has no steps.
Does not know: cut sizes, paper, how a picture is drawn.
"""

from blockdsl.sewing.steps.build import MOST_PATCHES, build_steps
from blockdsl.sewing.steps.step import Ingredient, MakingStep, Stage, StepSeam, Variant

__all__ = ["MOST_PATCHES", "Ingredient", "MakingStep", "Stage", "StepSeam", "Variant", "build_steps"]
