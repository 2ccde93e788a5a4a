"""Which of two parts has the inward curve of a curved seam: it lies on top while they are sewn."""

from __future__ import annotations

from blockdsl.geometry import sign
from blockdsl.geometry.polygon import dot, step
from blockdsl.sewing.steps.step import StepSeam


def hollow_part(seam: StepSeam) -> int:
    """Which of the seam's two parts, 0 or 1, has the hollow edge: the one on the far side of the chord from the centre.

    Errors: ValueError for a seam that is not curved.
    """
    if seam.bend is None:
        raise ValueError("a straight seam has no hollow side")
    return 1 if sign(dot(seam.over, step(seam.bend.centre, seam.line[0]))) > 0 else 0
