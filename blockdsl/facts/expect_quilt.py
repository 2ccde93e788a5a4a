"""The designer's own checks of a quilt: `expect` lines against its facts."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.analysis.program import QuiltExpectation
from blockdsl.diagnostics import Problems, nearest_word
from blockdsl.facts.expect import in_unit_of
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry import Exact, ceil_to, floor_to
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.lengths import about, write_size
from blockdsl.syntax import ast


def check_quilt(facts: QuiltFacts, expectations: Sequence[QuiltExpectation], problems: Problems) -> None:
    """Report every expectation that does not hold, with both values.

    A quilt on point measures no number that a ruler shows: there the nearest that it does is meant.
    """
    for line in expectations:
        if isinstance(line, ast.ExpectFinished):
            wanted = in_unit_of(line.width, facts.unit), in_unit_of(line.height, facts.unit)
            if wanted != tuple(_nearest(side, facts.measure) for side in facts.finished):
                got = " x ".join(about(side, facts.unit, facts.measure) for side in facts.finished)
                problems.report(
                    "expect-finished",
                    line.span,
                    wanted=write_size(*wanted, facts.unit),
                    got=f"{got} {facts.unit}",
                    help=None,
                )
            continue
        counts = dict(facts.blocks)
        found = counts.get(line.block.text, 0)
        if found != line.count.value:
            near = nearest_word(line.block.text, counts)
            advice = f'it has "{near}"' if near and not found else None
            problems.report(
                "expect-blocks", line.span, wanted=line.count.value, name=line.block.text, got=found, help=advice
            )


def _nearest(length: Exact, measure: Fraction) -> Fraction:
    if isinstance(length, Fraction):
        return length
    below, above = floor_to(length, measure), ceil_to(length, measure)
    return below if length - below < above - length else above
