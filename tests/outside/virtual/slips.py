"""Slips of the cutter, the pen and the seamstress, put into a plan one at a time: each must be found."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from shapely import affinity

from tests.outside.virtual.cloth import joined
from tests.outside.virtual.plan import Hand, Line, Part, Patch, Plan, Step, Strip

Slip = tuple[str, Plan]
"""(what was done, the plan in which it was done)"""
METRIC = 0.1
"""The mark of a ruler in centimetres."""
OVER = {True: 2 * 0.75 + 1, False: 2 * 0.25 + 0.5}
"""What a piece for a paper has over for placing, both sides together, and by rounding up to 1 cm or 1/2 in."""
OTHER_LINE = {45: 60, 60: 45}
"""The slanted line of the ruler that is taken for the right one."""


def slips_of_the_cutter(plan: Plan) -> Iterator[Slip]:
    """For one line of each kind: a mark of the ruler too small and too large, and one piece too few or too many.

    Pieces for papers are trimmed when they are sewn: too large is no fault, and too small is one when as much is
    missing as they have over at most, so that the area and its allowances are not covered.
    """
    seen = set()
    for place, line in enumerate(plan.cutting):
        kind = (line.piece, line.subcut, line.purpose, line.strip is None)
        if kind in seen:
            continue
        seen.add(kind)
        for what, wrong in _wrong_lines(line, plan.measure):
            cutting = (*plan.cutting[:place], *([wrong] if wrong.count else []), *plan.cutting[place + 1 :])
            yield f"{line.fabric} {line.label} {line.cut} {line.purpose}: {what}", replace(plan, cutting=cutting)


def _wrong_lines(line: Line, mark: float) -> Iterator[tuple[str, Line]]:
    one, other = line.cut
    on_papers = line.purpose.startswith("foundation ")
    for sign in (-OVER[mark == METRIC],) if on_papers else (-mark, mark):
        if line.piece == "square" or line.subcut != "none":
            yield f"{sign} each way", replace(line, cut=(one + sign, other + sign))
        else:
            yield f"{sign} across", replace(line, cut=(one + sign, other))
            yield f"{sign} along", replace(line, cut=(one, other + sign))
        if line.strip is not None:
            yield from ((what, replace(line, strip=strip)) for what, strip in _wrong_strips(line.strip, sign))
    yield "one more", replace(line, count=line.count + 1)
    yield "one less", replace(line, count=line.count - 1)


def _wrong_strips(strip: Strip, off: float) -> Iterator[tuple[str, Strip]]:
    yield f"the strip {off} wide", replace(strip, width=strip.width + off)
    if strip.form != "template":
        yield f"the strip {off} long", replace(strip, length=strip.length + off)
    elif off < 0:
        # templates may lie a little closer than the list counts on
        yield "half the strip", replace(strip, length=strip.length / 2)
    for place, angle in enumerate(strip.angles if off > 0 else ()):
        if angle in OTHER_LINE:
            angles = (*strip.angles[:place], OTHER_LINE[angle], *strip.angles[place + 1 :])
            yield f"cut {place + 1} at {OTHER_LINE[angle]} degrees", replace(strip, angles=angles)
    if strip.every is not None:
        yield f"the cuts {off} apart", replace(strip, every=strip.every + off)
    if strip.across is not None:
        yield f"the points {off} apart", replace(strip, across=strip.across + off)
    if off > 0:
        yield "a strip more", replace(strip, strips=strip.strips + 1)
        if strip.form != "template":
            yield "a piece more of each strip", replace(strip, each=strip.each + 1)
    if strip.slant and strip.form == "turned":
        yield "slanted the other way", replace(strip, slant="rising" if strip.slant == "falling" else "falling")


def slips_of_the_seamstress(plan: Plan) -> Iterator[Slip]:
    """Each part of each step turned where it lies, when the turn shows."""
    for at, step in enumerate(plan.steps):
        for hand in step.hands[:1]:
            for place, part in enumerate(hand.parts):
                wrong = _turned(part.picture)
                if wrong is not None:
                    parts = (*hand.parts[:place], replace(part, picture=wrong), *hand.parts[place + 1 :])
                    yield f"step {step.number}: {part.name} turned", _with_hand(plan, at, replace(hand, parts=parts))


def slips_of_the_pen(plan: Plan) -> Iterator[Slip]:
    """The picture of the block with one part of its last step turned, its fabrics changed over, or mirrored."""
    if not plan.steps:
        return
    for part in plan.steps[-1].hands[0].parts:
        wrong = _turned(part.picture)
        # A part that lies elsewhere when it is turned would hide what is there, and leave its own place open.
        if wrong is not None and _fills(part.picture, wrong):
            yield f"{part.name} turned in the picture", replace(plan, placed=_repainted(plan.placed, part, wrong))
    fabrics = sorted({patch.fabric for patch in plan.placed})
    if len(fabrics) > 1:
        other = dict(zip(fabrics, [*fabrics[1:], fabrics[0]], strict=True))
        placed = tuple(replace(patch, fabric=other[patch.fabric]) for patch in plan.placed)
        yield "another colour plan", replace(plan, placed=placed)


def _repainted(placed: tuple[Patch, ...], part: Part, wrong: tuple[Patch, ...]) -> tuple[Patch, ...]:
    whole = joined(patch.shape for patch in part.picture)
    rest = [patch for patch in placed if patch.shape.intersection(whole).area < patch.shape.area / 2]
    return (*rest, *wrong)


def _with_hand(plan: Plan, at: int, hand: Hand) -> Plan:
    step: Step = replace(plan.steps[at], hands=(hand, *plan.steps[at].hands[1:]))
    return replace(plan, steps=(*plan.steps[:at], step, *plan.steps[at + 1 :]))


def _turned(picture: tuple[Patch, ...]) -> tuple[Patch, ...] | None:
    """A square part after a quarter turn, another one after half a turn; None when that cannot be seen."""
    left, top, right, bottom = joined(patch.shape for patch in picture).bounds
    middle = ((left + right) / 2, (top + bottom) / 2)
    for angle in (90, 180) if abs((right - left) - (bottom - top)) < 1e-6 else (180,):
        wrong = tuple(replace(patch, shape=affinity.rotate(patch.shape, angle, origin=middle)) for patch in picture)
        if not _alike(picture, wrong):
            return wrong
    return None


def _fills(one: tuple[Patch, ...], other: tuple[Patch, ...]) -> bool:
    """Whether two pictures fill the same place."""
    shapes = [joined(patch.shape for patch in side) for side in (one, other)]
    return bool(shapes[0].symmetric_difference(shapes[1]).area < 1e-3)


def _alike(one: tuple[Patch, ...], other: tuple[Patch, ...]) -> bool:
    """Whether two pictures of the same place show the same, letters and all."""
    names = {(patch.fabric, patch.label) for patch in one}
    for name in names:
        shapes = [joined(p.shape for p in side if (p.fabric, p.label) == name) for side in (one, other)]
        if shapes[0].symmetric_difference(shapes[1]).area > 1e-3:
            return False
    return True
