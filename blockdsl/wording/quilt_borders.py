"""Borders in words: trimmed to what the top measures, with mitred corners, or pieced of units."""

from __future__ import annotations

from collections.abc import Iterator

from blockdsl.facts.quiltstepfacts import MeasuredBorder, MitredBorder, PiecedBorder, QuiltStepFacts
from blockdsl.geometry import Exact
from blockdsl.wording.grammar import an
from blockdsl.wording.lengths import figure
from blockdsl.wording.quilt_names import QuiltNames
from blockdsl.wording.steptext import StepPart


def _what(names: QuiltNames, *, first_ring: bool) -> str:
    """What a border is sewn to: the center, which may be a single block, or the top so far."""
    if not first_ring:
        return names.words("quilt-top")
    made = any(step.makes == "center" for step in names.facts.steps)
    return names.words("quilt-center" if made else "quilt-center-block")


def _ring(step: QuiltStepFacts, names: QuiltNames) -> str:
    """`border` or `round`."""
    word = next(ring.word for ring in names.facts.rings if ring.number == step.ring)
    return names.words(f"quilt-ring-only-{word}")


def measured_border(action: MeasuredBorder, step: QuiltStepFacts, names: QuiltNames) -> list[StepPart]:
    """Measure, trim, sew on two sides; measure again, trim, sew on the other two."""
    words, ring = names.words, _ring(step, names)
    press = words("quilt-border-press-open" if action.open else "quilt-border-press", ring=ring)
    what = _what(names, first_ring=action.first_ring)
    ways = ("down", "across") if action.sides_first else ("across", "down")
    sides = ("quilt-side", "quilt-top-and-bottom") if action.sides_first else ("quilt-top-and-bottom", "quilt-side")
    ends = ("sides", "ends") if action.sides_first else ("ends", "sides")

    def trim(length: tuple[Exact, int]) -> str:
        return words("quilt-border-trim", count=2, fabric=names.fabric_of(length[1]))

    def measure(key: str, length: tuple[Exact, int]) -> str:
        return words(f"quilt-border-{key}", what=what, ring=ring, length=names.figure(length[0]))

    first = [measure(f"measure-{ways[0]}", action.first), trim(action.first)]
    sew = [
        words("quilt-border-mark", sides=words(sides[0])),
        words(f"quilt-border-sew-{ends[0]}"),
        press,
    ]
    if action.corner is None:
        second = [measure(f"again-{ways[1]}", action.second), trim(action.second)]
        same = words(f"quilt-border-sew-{ends[1]}-same")
        return [StepPart((*first, *sew)), StepPart((*second, same, press))]
    both = [measure(f"measure-{ways[1]}", action.second), trim(action.second)]
    meeting = words("quilt-matching" if action.open else "quilt-nesting")
    corner = an(names.piece(action.corner), words)
    squares = [
        words("quilt-border-corners", corner=corner, fabric=names.fabric_of(action.corner)),
        words("quilt-border-corners-open" if action.open else "quilt-border-corners-press"),
        words(f"quilt-border-corners-{ends[1]}", meeting=meeting),
        press,
    ]
    return [StepPart((*first, *both)), StepPart(tuple(sew)), StepPart(tuple(squares))]


def mitred_border(action: MitredBorder, step: QuiltStepFacts, names: QuiltNames) -> list[StepPart]:
    """Strips longer than the edges, sewn from corner to corner, their ends folded and sewn at 45°."""
    words, seam = names.words, names.length(names.facts.seam)
    side, end = (names.facts.pieces[piece] for piece in (action.sides, action.ends))
    fabric = names.fabric(side.fabric)
    width, sides = figure(min(side.cut), names.facts.unit, words), names.figure(max(side.cut))
    if action.sides == action.ends:
        take = words("quilt-mitre-take-four", fabric=fabric, width=width, sides=sides)
        pin = words("quilt-mitre-pin-four")
    else:
        ends = names.figure(max(end.cut))
        take = words("quilt-mitre-take", fabric=fabric, width=width, sides=sides, ends=ends)
        pin = words("quilt-mitre-pin" if max(side.cut) > max(end.cut) else "quilt-mitre-pin-wide")
    what = _what(names, first_ring=action.first_ring)
    laid = (
        take,
        words("quilt-mitre-mark", what=what),
        pin,
        words("quilt-mitre-beyond", length=names.figure(action.beyond)),
    )
    press = words("quilt-mitre-press-open" if action.open else "quilt-mitre-press", ring=_ring(step, names))
    keys = ("fold", "line", "stitch", "check")
    corner = (*(words(f"quilt-mitre-{key}") for key in keys), words("quilt-mitre-trim", seam=seam))
    return [StepPart(laid), StepPart((words("quilt-mitre-sew", seam=seam), press)), StepPart(corner)]


def pieced_border(action: PiecedBorder, step: QuiltStepFacts, names: QuiltNames) -> list[StepPart]:
    """Units sewn to strips, a square at the ends of two of them, and sewn on."""
    words, ring = names.words, _ring(step, names)
    unit = names.part(action.part)
    key = "quilt-units-lay" if action.part.landmarks else "quilt-units-alike"
    lay = words(key, unit=unit, how=names.lies(action.part.landmarks) if action.part.landmarks else "", ring=ring)
    alike = action.sides == action.ends
    sew = words("quilt-units-sew-alike" if alike else "quilt-units-sew", sides=action.sides, ends=action.ends)
    press = words("quilt-press-open" if action.open else "quilt-units-press")
    strips = [words("quilt-units-take", list=names.takes(step.takes)), lay, sew]
    if max(action.sides, action.ends) > 1:  # a unit alone has no seams
        strips.append(press)
    if action.corner is not None:
        strips.append(
            words(
                "quilt-units-corners",
                corner=an(names.piece(action.corner), words),
                fabric=names.fabric_of(action.corner),
                sides="yes" if action.sides_first else "no",
            )
        )
        strips.append(words("quilt-border-corners-open" if action.open else "quilt-units-corners-press"))
    return [StepPart(tuple(strips)), StepPart(tuple(_sewn_on(action, step, names)))]


def _sewn_on(action: PiecedBorder, step: QuiltStepFacts, names: QuiltNames) -> Iterator[str]:
    words, facts = names.words, names.facts
    what = _what(names, first_ring=action.first_ring)
    before = next(ring.before for ring in facts.rings if ring.number == step.ring)
    width, height = (names.figure(side + 2 * facts.seam) for side in before)
    yield words("quilt-units-check", what=what, width=width, height=height)
    toward = words("quilt-units-toward-open") if action.open else words("quilt-units-toward", what=what)
    order = ("sides", "ends") if action.sides_first else ("ends", "sides")
    for where in order:
        yield words(f"quilt-units-sew-{where}", units=names.part(action.part, 2))
        yield toward
