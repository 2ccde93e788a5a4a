"""Which function tells how a method makes a shape."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from blockdsl.sewing.method_steps import corners, geese, halves, quarters
from blockdsl.sewing.method_steps.parts import MethodStep, MethodUnit
from blockdsl.sewing.techniques.quarters import HOURGLASS, QUARTERS, SPLIT

METHOD_STEPS: Mapping[tuple[str, str], Callable[[MethodUnit], MethodStep]] = {
    ("two at a time", "half"): halves.two_at_a_time,
    ("two at a time", "hourglass"): quarters.two_at_a_time(HOURGLASS),
    ("two at a time", "quarters"): quarters.two_at_a_time(QUARTERS),
    ("two at a time", "split"): quarters.two_at_a_time(SPLIT),
    ("four at a time", "geese"): geese.four_at_a_time,
    ("eight at a time", "half"): halves.eight_at_a_time,
    ("stitch and flip", "geese"): corners.geese,
    ("stitch and flip", "half"): corners.half,
    ("stitch and flip", "snowball"): corners.snowball,
    ("stitch and flip", "diamond"): corners.diamond,
}
"""By method and shape; strip sets, which make segments first, are told in `strip_sets`."""
