"""A unit made by a method, as the step on its sheet: what one batch takes, and what is done to it, in order.

Takes:    the unit's measures, its pieces by letter and fabric, how many of it are made.
Gives:    parts of a step, each as messages (a key and its arguments) and pictures of cloth.
Measures: exact, in the block's own unit.
Reports:  nothing.
Does not know: words, paper, colours.
"""

from blockdsl.sewing.method_steps.instruct import METHOD_STEPS
from blockdsl.sewing.method_steps.parts import MethodPart, MethodPiece, MethodStep, MethodUnit

__all__ = ["METHOD_STEPS", "MethodPart", "MethodPiece", "MethodStep", "MethodUnit"]
