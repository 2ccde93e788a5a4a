"""Finishing: layers, quilting, binding and a sleeve, in words and small pictures."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from blockdsl.drawing.finishing_pictures import (
    backing_picture,
    corner_picture,
    join_picture,
    layers_picture,
    sleeve_picture,
)
from blockdsl.drawing.flow import Slice, moved
from blockdsl.drawing.lengths import plain_extent, plain_length
from blockdsl.drawing.marks import Figure, Mark
from blockdsl.drawing.prose import Style, heading, line, paragraph
from blockdsl.drawing.quilt_materials import finishing_of
from blockdsl.drawing.theme import ACCENT, BODY_PT, CONTENT_WIDTH_PT, GUTTER_PT, INK, LEAD_PT, STEP_PT, Box, span_pt
from blockdsl.drawing.typeset import fraction_text
from blockdsl.drawing.words import many
from blockdsl.facts.finishingfacts import BackingFacts, BindingFacts, FinishingFacts, SleeveFacts
from blockdsl.facts.quiltfacts import QuiltFacts

_NAME: Final = Style(LEAD_PT, "bold", INK)
_NUMBER: Final = Style(LEAD_PT, "bold", ACCENT)
_BODY: Final = Style(BODY_PT, "regular", INK)
_LEFT_PT: Final = 18.0
PICTURE: Final = Box(CONTENT_WIDTH_PT - span_pt(4), 0.0, span_pt(4), 112.0)
"""Where on its step a small picture stands."""
_WORDS_PT: Final = CONTENT_WIDTH_PT - _LEFT_PT - PICTURE.width_pt - GUTTER_PT


@dataclass(frozen=True, slots=True)
class FinishingStep:
    """A step of finishing: its name, its words, its picture."""

    name: str
    words: tuple[str, ...]
    picture: Figure | None


def finishing(facts: QuiltFacts) -> list[Slice]:
    """The heading, then step by step."""
    steps = finishing_steps(facts)
    if not steps:
        return []
    slices = [heading("Finishing", aside="layer, quilt, bind")]
    return slices + [_slice(number, step) for number, step in enumerate(steps, start=1)]


def finishing_steps(facts: QuiltFacts) -> list[FinishingStep]:
    """All that is done to the top when it is sewn, in order; nothing where nothing is known of it."""
    told = finishing_of(facts)
    return list(_parts(facts, told)) if told is not None else []


def _parts(facts: QuiltFacts, told: FinishingFacts) -> Iterator[FinishingStep]:
    if told.backing is not None:
        yield _back(facts, told.backing)
    yield _layers(facts, told)
    yield FinishingStep("Quilt", _QUILTING, None)
    if told.sleeve is not None:
        yield _sleeve(facts, told.sleeve)
    if told.binding is not None:
        yield _strips(facts, told.binding)
        yield FinishingStep("Bind", _binding_words(facts), corner_picture(PICTURE))
    yield FinishingStep(
        "Label", ("Sew a label to the back: the quilt's name, yours, the year, and how to wash it.",), None
    )


def _slice(number: int, part: FinishingStep) -> Slice:
    marks: list[Mark] = [
        *line(str(number), 0.0, _NUMBER.baseline_pt, _NUMBER),
        *line(part.name, _LEFT_PT, _NAME.baseline_pt, _NAME),
    ]
    y = _NAME.line_pt
    room = _WORDS_PT if part.picture is not None else span_pt(10)
    for text in part.words:
        height, words = paragraph(fraction_text(text), room, _BODY)
        marks += moved(words, _LEFT_PT, y)
        y += height + STEP_PT / 2
    if part.picture is not None:
        marks.append(part.picture)
        y = max(y, PICTURE.height_pt)
    return Slice(y, tuple(marks), before_pt=3 * STEP_PT)


def _back(facts: QuiltFacts, backing: BackingFacts) -> FinishingStep:
    plan, unit = backing.plan, facts.unit
    length = f"{plain_length(plan.piece_length, unit)} {unit}"
    size = f"{plain_extent(plan.size, unit)} {unit}"
    join = f"{plain_length(plan.join, unit)} {unit}"
    label = next(fabric.label or fabric.name for fabric in facts.fabrics_used if fabric.name == backing.fabric)
    words = [f"Cut {many(plan.widths, 'length')} of {length} from {label}, the whole width of the cloth, selvages off."]
    if plan.widths > 1:
        run = "up and down" if plan.seams == "vertical" else "from side to side"
        words.append(
            f"Join them along the long edges with {join} seams, which then run {run} the quilt, and press these open."
        )
    words.append(
        f"Trim the back to at least {size}: {plain_length(plan.overage, unit)} {unit} more than the top, raw edge to "
        "raw edge, on every side."
    )
    if plan.one_fewer is not None:
        fewer = f"{plain_length(plan.one_fewer, unit)} {unit}"
        words.append(f"With {fewer} over on each side instead, one length less would do.")
    return FinishingStep("Make the back", tuple(words), backing_picture(plan, facts.finished, PICTURE))


def _layers(facts: QuiltFacts, told: FinishingFacts) -> FinishingStep:
    wadding = told.wadding
    size = f", {plain_extent(wadding.size, facts.unit)} {facts.unit}," if wadding is not None else ""
    smooth = (
        "Lay the back on the floor or a table, wrong side up, and tape its edges so that it is flat but not stretched. "
        f"Lay the wadding{size} on it and smooth it from the middle; then the top, right side up, its seams straight."
    )
    return FinishingStep("Layer", (_PRESSING, smooth, _HOLDING), layers_picture(PICTURE))


_PRESSING: Final = "Press the top and the back and snip all threads."
_HOLDING: Final = (
    "Hold the three layers together with rows of tacking or with pins made for quilts, a hand's width apart, from the "
    "middle outward. Count pins in and out; keep them from children and pets."
)
_TRIMMING: Final = (
    "Trim wadding and back level with the edge of the top, the corners square: rotary cutter away from you, blade "
    "closed when you put it down."
)
_LINES: Final = (
    "Quilt by hand or machine as you like, from the middle outward, so that no fold is sewn in. How far apart the "
    "lines may be is printed on the wadding's wrapper: follow its maker."
)
_QUILTING: Final = (_LINES, _TRIMMING)


def _sleeve(facts: QuiltFacts, sleeve: SleeveFacts) -> FinishingStep:
    plan, unit = sleeve.plan, facts.unit
    size = f"{plain_extent((plan.cut_length, plan.cut_width), unit)} {unit}"
    joined = f"Join {many(plan.strips, 'strip')} end to end for it. " if plan.strips > 1 else ""
    cut = (
        f"{joined}Cut a strip {size}. Hem both short ends, fold it lengthwise, wrong sides together, and tack its raw "
        "edges to the upper edge of the back, in the middle, before the binding goes on."
    )
    sewn = (
        "When the quilt is bound, push the folded edge up a little, so that a rod has room, and sew it to the back by "
        "hand through back and wadding alone."
    )
    return FinishingStep("Hanging sleeve", (cut, sewn), sleeve_picture(PICTURE))


def _strips(facts: QuiltFacts, binding: BindingFacts) -> FinishingStep:
    plan, unit = binding.plan, facts.unit
    width, sewn = f"{plain_length(plan.strip_width, unit)} {unit}", f"{plain_length(plan.length, unit)} {unit}"
    around = f"{plain_length(plan.around, unit)} {unit}"
    if plan.square is not None:
        side = f"{plain_length(plan.square, unit)} {unit}"
        first = (
            f"Cut {many(plan.squares, 'square')} of {side}. Cut each once corner to corner and sew the two triangles "
            f"together along straight edges to a slanted piece. Draw lines {width} apart along its bias edges, roll it "
            "to a tube with the lines met one step along, sew, press open, and cut round and round on the line."
        )
    else:
        first = (
            f"Cut {many(plan.strips, 'strip')} {width} wide across the cloth. Lay two ends across each other at a "
            "right angle, right sides together, sew from corner to corner, trim to a seam and press open; so with all."
        )
    needed = f"The strip measures about {sewn}; the edge of the quilt takes {around}."
    folded = "Fold the strip lengthwise, wrong sides together, and press."
    picture = join_picture(PICTURE) if plan.square is None else None
    return FinishingStep("Make the binding", (first, needed, folded), picture)


def _binding_words(facts: QuiltFacts) -> tuple[str, ...]:
    seam = f"{plain_length(facts.seam, facts.unit)} {facts.unit}"
    tail = "8 in" if facts.unit == "in" else "20 cm"
    begin = (
        f"Begin in the middle of a side, raw edges level with the edge of the quilt, and leave {tail} loose. Sew "
        f"{seam} from the edge."
    )
    corner = (
        f"Stop {seam} before a corner (1), turn the quilt, fold the strip straight up so that it makes a slanted fold "
        "(2), then straight down, its new fold level with the edge (3), and sew on from the edge."
    )
    end = (
        "Cut the loose ends to fit, join them with a slanted seam too, and sew the rest. Turn the fold over to the "
        "back and sew it down by hand, just over the seam, the corners folded into mitres."
    )
    return begin, corner, end
