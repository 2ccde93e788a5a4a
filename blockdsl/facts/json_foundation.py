"""A unit on papers in the JSON of the facts."""

from __future__ import annotations

from collections.abc import Callable

from blockdsl.facts.foundationfacts import FoundationFacts, PaperFacts, PaperPatch
from blockdsl.geometry import Exact, Point

Say = Callable[[Exact], str]


def foundation_document(foundation: FoundationFacts, say: Say) -> dict[str, object]:
    """One unit as plain lists, dictionaries and strings; `say` writes a length."""
    return {
        "name": foundation.name,
        "title": foundation.title,
        "count": foundation.count,
        "papers": [_paper(paper, say) for paper in foundation.papers],
        "joins": [
            {
                "name": join.name,
                "before": list(join.before),
                "after": list(join.after),
                "seam": [_point(end, say) for end in join.seam],
            }
            for join in foundation.joins
        ],
    }


def _paper(paper: PaperFacts, say: Say) -> dict[str, object]:
    return {
        "letter": paper.letter,
        "sewing": [_point(corner, say) for corner in paper.sewing],
        "cutting": [_point(corner, say) for corner in paper.cutting],
        "patches": [_patch(patch, say) for patch in paper.patches],
    }


def _patch(patch: PaperPatch, say: Say) -> dict[str, object]:
    return {
        "number": patch.number,
        "label": patch.label,
        "fabric": patch.fabric,
        "cut": [say(side) for side in patch.cut],
        "subcut": patch.subcut,
        "edge": patch.edge,
        "outline": [_point(corner, say) for corner in patch.outline],
        "seam": [_point(end, say) for end in patch.seam] if patch.seam else None,
    }


def _point(point: Point, say: Say) -> list[str]:
    return [say(point.x), say(point.y)]
