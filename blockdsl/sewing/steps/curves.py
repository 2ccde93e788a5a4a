"""A curved seam in words: which piece lies on top, what is matched, how it is sewn and made to lie flat.

Matching the middle and the ends, sewing with the hollow piece on top and clipping the hollow edge alone: common
practice, no source.
"""

from __future__ import annotations

from blockdsl.geometry import Point, sign
from blockdsl.geometry.polygon import dot, step
from blockdsl.sewing.steps.step import StepSeam


def hollow_part(seam: StepSeam) -> int:
    """Which of the seam's two parts, 0 or 1, has the hollow edge: the one on the far side of the chord from the centre.

    Errors: ValueError for a seam that is not curved.
    """
    if seam.bend is None:
        raise ValueError("a straight seam has no hollow side")
    over = seam.arrow if seam.toward != 0 else Point(-seam.arrow.x, -seam.arrow.y)
    outward = step(seam.bend.centre, seam.line[0])
    return 1 if sign(dot(over, outward)) > 0 else 0


def first_curve(hollow: str, full: str, from_edge: str) -> list[str]:
    """The first curved seam of a step, in full."""
    pin = (
        f"Lay {hollow} on {full}, right sides together, its hollow edge on the curved one: match the middles, then "
        "both ends, then the marks between, and pin at each."
    )
    sew = (
        f"Sew slowly with {hollow} on top{from_edge}, easing its edge along the curve; take each pin out before the "
        "needle reaches it."
    )
    snip = (
        "If the seam does not lie flat, snip into the allowance of the hollow edge in a few places, no deeper than "
        "half of it."
    )
    return [pin, sew, snip]


def next_curve(hollow: str, full: str) -> list[str]:
    """Another one in the same step."""
    return [f"Sew {hollow} on {full} along the curve in the same way, with {hollow} on top."]
