"""English paper piecing: the units whose patches are folded round papers of their finished size and sewn by hand.

The cloth is that of patches cut by themselves and the order of sewing the same; only the needle is another. Any patch
with straight edges can be folded so; a curve would have to be gathered round its paper.
"""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.diagnostics import Problems
from blockdsl.model import Choice
from blockdsl.sewing.classes import UnitGroup


def choose_over_papers(chosen: Sequence[tuple[UnitGroup, Choice]], problems: Problems) -> tuple[UnitGroup, ...]:
    """Of the units that are chosen for it those that have straight edges alone; others are told, once for a choice."""
    told: set[object] = set()
    found = []
    for group, choice in chosen:
        if not any(patch.curved for patch in group.picture):
            found.append(group)
        elif choice.method_span not in told:
            told.add(choice.method_span)
            advice = "make it as `cut patches`: its curves are sewn by templates"
            problems.report("papers-curved", choice.method_span, what=choice.what, help=advice)
    return tuple(found)
