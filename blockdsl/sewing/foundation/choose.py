"""Which of a block's units are sewn to papers, and what else they take in."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from msgspec.structs import replace

from blockdsl.analysis.letters import letter_patches
from blockdsl.diagnostics import Problems, change_to
from blockdsl.model import BlockDesign, Choice
from blockdsl.sewing.classes import UnitGroup
from blockdsl.sewing.foundation.plan import MOST_PATCHES, FoundationPlan, NoFoundation, plan_foundation
from blockdsl.sewing.methods import CUT_PATCHES

_MOST_NAMED = 6


def plan_foundations(
    chosen: Sequence[tuple[UnitGroup, Choice]], design: BlockDesign, problems: Problems
) -> tuple[FoundationPlan, ...]:
    """The papers of the units that are chosen for them; a unit that no order sews is reported once for its choice."""
    plans: list[FoundationPlan] = []
    told: set[object] = set()
    for group, choice in chosen:
        if any(patch.curved for patch in group.picture):
            if choice.method_span not in told:
                told.add(choice.method_span)
                advice = "make it as `cut patches`: its curves are sewn by templates"
                fixes = (change_to(choice.method_span, CUT_PATCHES),)
                problems.report("foundation-curved", choice.method_span, what=choice.what, help=advice, fixes=fixes)
            continue
        plan = plan_foundation(group, design)
        if isinstance(plan, FoundationPlan):
            plans.append(plan)
        elif choice.method_span not in told:
            told.add(choice.method_span)
            _report(plan, group, choice, design, problems)
    return tuple(plans)


def _report(fault: NoFoundation, group: UnitGroup, choice: Choice, design: BlockDesign, problems: Problems) -> None:
    if fault.too_many:
        help_text = f"a unit on papers has at most {MOST_PATCHES} patches: make smaller units of it"
        problems.report("foundation-too-many", choice.method_span, what=choice.what, help=help_text)
        return
    letters = letter_patches(design.patches).letters
    names = list(dict.fromkeys(letters[group.places[0].first + index] for index in fault.stuck))
    shown = ", ".join(names[:_MOST_NAMED]) + (" …" if len(names) > _MOST_NAMED else "")
    problems.report(
        "foundation-no-order",
        choice.method_span,
        what=choice.what,
        patches=f"patches {shown}" if len(names) > 1 else f"the patches {shown}",
        help="make it as `cut patches`, or part one of these patches by a line that runs right across them",
    )


def without_what_papers_hold(groups: Sequence[UnitGroup], on_papers: Sequence[UnitGroup]) -> list[UnitGroup]:
    """The units that are still made for themselves: not those that lie within a unit on papers."""
    held = _spans(on_papers)
    kept = []
    for group in groups:
        places = [place for place in group.places if not _within(place.first, place.stop, held)]
        if places:
            kept.append(group if len(places) == len(group.places) else replace(group, places=places))
    return kept


def _spans(on_papers: Sequence[UnitGroup]) -> dict[int, tuple[int, int]]:
    """For each patch on papers the first and last of the largest such unit that holds it."""
    held: dict[int, tuple[int, int]] = {}
    for place in (place for group in on_papers for place in group.places):
        for patch in range(place.first, place.stop):
            before = held.get(patch)
            if before is None or place.stop - place.first > before[1] - before[0]:
                held[patch] = (place.first, place.stop)
    return held


def _within(first: int, stop: int, held: Mapping[int, tuple[int, int]]) -> bool:
    around = held.get(first)
    return around is not None and around != (first, stop) and around[0] <= first and stop <= around[1]
