"""Finishing in words: backing, layers, quilting, a sleeve, binding, a label."""

from __future__ import annotations

from typing import Final

from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.facts.quiltstepfacts import QuiltStepFacts
from blockdsl.geometry.fraction import Fraction
from blockdsl.wording.quilt_names import QuiltNames
from blockdsl.wording.steptext import StepPart

_TAIL: Final = {"in": Fraction(8), "cm": Fraction(20)}
"""What is left loose where a binding begins. Common practice, no source."""


def finishing_size(step: QuiltStepFacts, names: QuiltNames) -> str:
    """What stands beside the name of a step: how far it is around the quilt, how large the backing is."""
    facts = names.facts
    if step.makes == "binding" and facts.binding is not None:
        return names.words("quilt-binding-around", around=names.length(facts.binding.plan.around))
    if step.makes == "backing" and facts.backing is not None:
        return names.size(facts.backing.plan.size)
    return ""


def finishing_parts(step: QuiltStepFacts, names: QuiltNames) -> tuple[StepPart, ...]:
    """What is done in a step of finishing."""
    match step.makes:
        case "backing":
            return _backing(names)
        case "layers":
            return _layers(names)
        case "quilting":
            return (StepPart((names.words("quilt-quilting-quilt"), names.words("quilt-quilting-trim"))),)
        case "sleeve":
            return _sleeve(names)
        case "binding":
            return _binding(names)
    return (StepPart((names.words("quilt-label-sew"),)),)


def _backing(names: QuiltNames) -> tuple[StepPart, ...]:
    words, facts = names.words, names.facts
    assert facts.backing is not None  # noqa: S101  there is such a step only where it can be
    plan = facts.backing.plan
    said = [
        words(
            "quilt-backing-cut",
            count=plan.widths,
            length=names.length(plan.piece_length),
            fabric=names.fabric(facts.backing.fabric),
        )
    ]
    if plan.widths > 1:
        key = "upright" if plan.seams == "vertical" else "level"
        said.append(words(f"quilt-backing-join-{key}", join=names.length(plan.join)))
    said.append(words("quilt-backing-trim", size=names.size(plan.size), overage=names.length(plan.overage)))
    if plan.one_fewer is not None:
        said.append(words("quilt-backing-fewer", overage=names.length(plan.one_fewer)))
    return (StepPart(tuple(said)),)


def _layers(names: QuiltNames) -> tuple[StepPart, ...]:
    words, wadding = names.words, names.facts.wadding
    sized, size = ("no", "") if wadding is None else ("yes", names.size(wadding.size))
    return (
        StepPart(
            (
                words("quilt-layers-press"),
                words("quilt-layers-lay"),
                words("quilt-layers-batting", sized=sized, size=size),
                words("quilt-layers-baste"),
            )
        ),
    )


def _sleeve(names: QuiltNames) -> tuple[StepPart, ...]:
    words, facts = names.words, names.facts
    assert facts.sleeve is not None  # noqa: S101  there is such a step only where it can be
    plan = facts.sleeve.plan
    fabric, size = names.fabric(facts.sleeve.fabric), names.size(plan.cut)
    if plan.strips > 1:
        cut = [
            words("quilt-sleeve-join", count=plan.strips, width=names.length(plan.cut[1])),
            words("quilt-sleeve-cut-joined", size=size, fabric=fabric),
        ]
    else:
        cut = [words("quilt-sleeve-cut", size=size, fabric=fabric)]
    baste = [words("quilt-sleeve-baste", seam=_half(facts, names))]
    if facts.binding is None:
        baste.append(words("quilt-sleeve-hang"))
    return (StepPart((*cut, words("quilt-sleeve-fold"))), StepPart(tuple(baste)))


def _half(facts: QuiltFacts, names: QuiltNames) -> str:
    """Basting lies within the seam allowance: at half of it."""
    return names.length(facts.seam / 2)


def _binding(names: QuiltNames) -> tuple[StepPart, ...]:
    words, facts = names.words, names.facts
    assert facts.binding is not None  # noqa: S101  there is such a step only where it can be
    plan = facts.binding.plan
    fabric, seam = names.fabric(facts.binding.fabric), names.length(facts.seam)
    width = names.length(plan.strip_width)
    if plan.square is None:
        made = [words("quilt-binding-strips", count=plan.strips, fabric=fabric, width=width)]
        if plan.strips > 1:
            made.append(words("quilt-binding-join", seam=seam))
    else:
        side = names.size((plan.square, plan.square))
        made = [
            words("quilt-binding-squares", count=plan.squares, fabric=fabric, side=side),
            words("quilt-binding-tube", width=width, seam=seam),
        ]
        if plan.squares > 1:
            made.append(words("quilt-binding-join-bias"))
    made += [
        words("quilt-binding-measures", length=names.figure(plan.length), around=names.length(plan.around)),
        words("quilt-binding-fold"),
    ]
    sewn = (
        words("quilt-binding-start", tail=names.length(_TAIL[facts.unit]), seam=seam),
        words("quilt-binding-corner", seam=seam),
    )
    closed = [words("quilt-binding-close"), words("quilt-binding-turn")]
    if facts.sleeve is not None:
        closed.append(words("quilt-sleeve-hang"))
    return (StepPart(tuple(made)), StepPart(sewn), StepPart(tuple(closed)))
