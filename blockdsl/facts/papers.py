"""The papers of English paper piecing: which patches are folded round one, and how many of each the block needs."""

from __future__ import annotations

from collections import Counter
from typing import Annotated

from msgspec import Meta

from blockdsl.analysis.letters import Lettered
from blockdsl.cutting import Template
from blockdsl.cutting.sizes import Extent
from blockdsl.geometry import Polygon
from blockdsl.record import Count, Letter, Name, Record, says
from blockdsl.sewing import Making


class PaperOfPatch(Record, frozen=True):
    """A paper that patches of one letter are folded round, of their finished size.

    What is printed is the mirror image: a paper lies on the wrong side of its piece.
    """

    label: Letter
    shape: Name
    finished: Extent
    outline: Annotated[Polygon, says("As seen from the right side of the cloth."), Meta(min_length=3)]
    grain: Annotated[Extent, says("A step (x, y) along the straight grain.")]
    count: Annotated[Count, says("How many the block takes.")]


def collect_papers(making: Making, lettered: Lettered, templates: tuple[Template, ...]) -> tuple[PaperOfPatch, ...]:
    """The papers by letter: each patch of a unit made `over papers` has one."""
    spans = sorted(making.over_papers)
    needed = Counter(lettered.letters[patch] for first, stop in spans for patch in range(first, stop))
    return tuple(
        PaperOfPatch(each.label, each.shape, each.finished, each.sewing, each.grain, needed[each.label])
        for each in templates
        if needed[each.label]
    )
