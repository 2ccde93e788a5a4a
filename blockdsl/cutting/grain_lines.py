"""Reports on grain and prints: `grain` lines that mean nothing, methods that turn a directional print."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.analysis.letters import Lettered
from blockdsl.cutting.grain import has_a_choice
from blockdsl.diagnostics import Problems, Span
from blockdsl.geometry.symmetry import IDENTITY
from blockdsl.model import BlockDesign, Choice
from blockdsl.sewing import Making, UnitClass
from blockdsl.sewing.methods import FOUNDATION, PATCH_BY_PATCH
from blockdsl.shapes import SHAPES


def report_grains(design: BlockDesign, lettered: Lettered, problems: Problems) -> None:
    """Report `grain` lines for letters that are not there, that are said twice, or that leave nothing to choose."""
    seen: dict[str, Span] = {}
    for choice in design.grains:
        letter = choice.letter
        if letter not in lettered.first:
            help_text = f"its letters are {', '.join(lettered.first)}"
            problems.report("grain-letter-unknown", choice.span, letter=letter, help=help_text)
        elif letter in seen:
            related = ((seen[letter], "first given here"),)
            problems.report(
                "grain-given-twice", choice.span, letter=letter, related=related, help="keep one of the two"
            )
        elif letter in lettered.curved or not has_a_choice(lettered.first[letter], design.seam):
            shape = lettered.shapes[letter].kind
            help_text = "take the line out; its edges are straight as far as they can be"
            problems.report("grain-without-choice", choice.span, letter=letter, shape=shape, help=help_text)
        seen.setdefault(letter, choice.span)


def report_turned_prints(design: BlockDesign, making: Making, problems: Problems) -> None:
    """Warn, once for each fabric and method, where a print with an up and a down will not stand upright."""
    told: set[tuple[str, str]] = set()
    directional = [fabric.name for fabric in design.fabrics if fabric.directional]
    for unit in making.units if directional else ():
        if unit.method in PATCH_BY_PATCH:
            continue
        for name in directional:
            if (name, unit.method) in told or not any(patch.fabric == name for patch in unit.group.picture):
                continue
            if not _stays_upright(unit, name, making):
                told.add((name, unit.method))
                span = _said_at(design.choices, unit) or design.span
                help_text = "make it as `cut patches`, or take a fabric whose print has no up and down"
                what = unit.group.name or unit.title
                problems.report("directional-method", span, help=help_text, name=name, what=what, method=unit.method)


def _stays_upright(unit: UnitClass, fabric: str, making: Making) -> bool:
    """Whether the method cuts the fabric as the unit is drawn, and the block turns no such unit."""
    if any(place.symmetry != IDENTITY for place in unit.group.places):
        return False
    if unit.method == FOUNDATION:
        return not any(
            seam and seam[0].x != seam[1].x and seam[0].y != seam[1].y
            for plan in making.foundations
            if plan.group.key == unit.group.key
            for seam in (sewn.seam for section in plan.sections for sewn in section.patches
                         if plan.group.picture[sewn.index].fabric == fabric)
        )  # fmt: skip
    filling = unit.group.filling
    return filling is not None and unit.method in SHAPES[filling.shape].upright_in


def _said_at(choices: Sequence[Choice], unit: UnitClass) -> Span | None:
    """The last line that chose this method."""
    return next((choice.method_span for choice in reversed(choices) if choice.method == unit.method), None)
