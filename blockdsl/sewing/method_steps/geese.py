"""Flying geese, four from five squares."""

from __future__ import annotations

from blockdsl.sewing.message import Message, PieceName, message
from blockdsl.sewing.method_steps.common import measure, method_step, press, press_word, sew_both_sides, take
from blockdsl.sewing.method_steps.parts import MethodPart, MethodStep, MethodUnit
from blockdsl.sewing.method_steps.quarters import sort_out
from blockdsl.sewing.techniques import geese as scenes


def four_at_a_time(unit: MethodUnit) -> MethodStep:
    """With two skies the first two squares are of the left one: half of the geese are mirror images."""
    measures = unit.measures
    two_skies = not unit.same(1, 2)
    mark = message("method-mark-each", letter=PieceName(1, "letter"))
    place = message("method-place-two-corners", piece=PieceName(1, "a"), base=PieceName(0))
    last = message("method-place-square-corner", piece=PieceName(2, "a"), base=PieceName(0))
    notch = message("method-turn-to-notch", pieces=PieceName(1, "letter"))
    cut = message("method-cut-on-line", lines=1)
    trim = message("method-trim-geese", size=measures.size, seam=measures.allowance, count=unit.count)
    return method_step(
        unit,
        ("set", 4),
        (
            MethodPart((take("set", unit, 0, 1, 2), mark), scenes.marked(measures)),
            MethodPart(
                (place, message("method-turn-in-one", base=PieceName(0)), sew_both_sides(unit), cut, press(unit, 4, 1)),
                scenes.two_on(measures),
            ),
            MethodPart((last, notch, sew_both_sides(unit), cut, press(unit, 4, 2)), scenes.third_on(measures)),
            MethodPart(
                (message("method-trim-ears"), trim),
                scenes.checked(measures),
                measure(unit),
                _which(unit) if two_skies else (),
            ),
        ),
        ("four geese", *((unit.pieces[1].fabric, unit.pieces[2].fabric) if two_skies else ())),
        message("method-again-geese", toward=PieceName(1), press=press_word(unit)),
    )


def _which(unit: MethodUnit) -> tuple[Message, ...]:
    """With the point at the top, where the first sky lies."""
    return sort_out(unit, None, "top", PieceName(1, "fabric"), "left", "right")
