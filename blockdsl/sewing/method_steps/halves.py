"""Half-square triangles, two or eight from a pair of squares."""

from __future__ import annotations

from blockdsl.sewing.message import Length, PieceName, message
from blockdsl.sewing.method_steps.common import (
    marked_and_under,
    measure,
    method_step,
    press,
    press_word,
    sew_both_sides,
    take,
)
from blockdsl.sewing.method_steps.parts import MethodPart, MethodStep, MethodUnit
from blockdsl.sewing.techniques import halves as scenes
from blockdsl.sewing.techniques.halves import darker


def two_at_a_time(unit: MethodUnit) -> MethodStep:
    """One line, a seam on each side of it."""
    measures = unit.measures
    top, under = marked_and_under(unit, 0, 1)
    mark = message("method-mark-diagonal", piece=PieceName(top, "the"))
    place = message("method-place-pair", piece=PieceName(under, "the"))
    cut = message("method-cut-on-line", lines=1)
    return method_step(
        unit,
        ("pair", 2),
        (
            MethodPart((take("pair", unit, 0, 1), mark), scenes.marked(measures.side(0), top)),
            MethodPart((place, sew_both_sides(unit)), scenes.sewn(measures)),
            MethodPart((cut, press(unit, 2, darker(measures, 0, 1))), scenes.opened(measures)),
            MethodPart(
                (message("method-trim-ears"),),
                scenes.checked(measures),
                measure(unit),
                (message("method-trim-half-if-larger"),),
            ),
        ),
        ("two half",),
        message(
            "method-again-pair", marked=PieceName(top), toward=PieceName(darker(measures, 0, 1)), press=press_word(unit)
        ),
    )


def eight_at_a_time(unit: MethodUnit) -> MethodStep:
    """Two lines, a seam on both sides of each."""
    measures = unit.measures
    side = measures.side(0)
    top, under = marked_and_under(unit, 0, 1)
    mark = message("method-mark-both-diagonals", piece=PieceName(top, "the"))
    place = message("method-place-pair", piece=PieceName(under, "the"))
    quarters = message("method-cut-quarters", half=Length(side / 2))
    return method_step(
        unit,
        ("pair", 8),
        (
            MethodPart((take("pair", unit, 0, 1), mark), scenes.marked(side, top, both=True)),
            MethodPart((place, sew_both_sides(unit, 2)), scenes.sewn_four_times(measures)),
            MethodPart(
                (quarters, message("method-cut-on-line", lines=2), press(unit, 8, darker(measures, 0, 1))),
                scenes.opened(measures),
            ),
            MethodPart(
                (message("method-trim-ears"),),
                scenes.checked(measures),
                measure(unit),
                (message("method-trim-half-if-larger"),),
            ),
        ),
        ("eight half",),
        message(
            "method-again-pair", marked=PieceName(top), toward=PieceName(darker(measures, 0, 1)), press=press_word(unit)
        ),
    )
