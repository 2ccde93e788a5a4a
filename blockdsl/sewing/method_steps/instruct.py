"""Which function gives the step of a method for a shape."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from blockdsl import shapes as shape
from blockdsl.sewing.method_steps import corners, geese, halves, quarters
from blockdsl.sewing.method_steps.parts import MethodStep, MethodUnit
from blockdsl.sewing.techniques.quarters import HOURGLASS, QUARTERS, SPLIT

METHOD_STEPS: Mapping[tuple[str, str], Callable[[MethodUnit], MethodStep]] = {
    ("two at a time", shape.half.SHAPE.name): halves.two_at_a_time,
    ("two at a time", shape.hourglass.SHAPE.name): quarters.two_at_a_time(HOURGLASS),
    ("two at a time", shape.quarters.SHAPE.name): quarters.two_at_a_time(QUARTERS),
    ("two at a time", shape.split.SHAPE.name): quarters.two_at_a_time(SPLIT),
    ("four at a time", shape.geese.SHAPE.name): geese.four_at_a_time,
    ("eight at a time", shape.half.SHAPE.name): halves.eight_at_a_time,
    ("stitch and flip", shape.geese.SHAPE.name): corners.geese,
    ("stitch and flip", shape.half.SHAPE.name): corners.half,
    ("stitch and flip", shape.snowball.SHAPE.name): corners.snowball,
    ("stitch and flip", shape.diamond.SHAPE.name): corners.diamond,
}
"""By method and shape; strip sets, which make segments first, are in `strip_sets`."""
