"""The papers of English paper piecing: which patches are folded round one, and how many of each the block needs."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass

from blockdsl.analysis.letters import Lettered
from blockdsl.cutting import Template
from blockdsl.geometry import Exact, Polygon
from blockdsl.sewing import Making

Say = Callable[[Exact], str]


@dataclass(frozen=True, slots=True)
class PaperOfPatch:
    """A paper of a patch's finished size, `count` of them for the block.

    `outline` is the finished patch as seen from the right side of the cloth, in the block's unit, from the top left of
    its box; `grain` a direction along the straight grain in it. What is printed is the mirror image: a paper lies on
    the wrong side of its piece.
    """

    label: str
    shape: str
    finished: tuple[Exact, Exact]
    outline: Polygon
    grain: tuple[Exact, Exact]
    count: int


def collect_papers(making: Making, lettered: Lettered, templates: tuple[Template, ...]) -> tuple[PaperOfPatch, ...]:
    """The papers by letter: each patch of a unit made `over papers` has one."""
    spans = sorted(making.over_papers)
    needed = Counter(lettered.letters[patch] for first, stop in spans for patch in range(first, stop))
    return tuple(
        PaperOfPatch(each.label, each.shape, each.finished, each.sewing, each.grain, needed[each.label])
        for each in templates
        if needed[each.label]
    )


def papers_document(papers: tuple[PaperOfPatch, ...], say: Say) -> list[dict[str, object]]:
    """The papers in the JSON of the facts; `say` writes a length."""
    return [
        {
            "label": paper.label,
            "shape": paper.shape,
            "finished": [say(side) for side in paper.finished],
            "outline": [[say(corner.x), say(corner.y)] for corner in paper.outline],
            "count": paper.count,
        }
        for paper in papers
    ]
