"""Templates: one for each different patch, with its allowance and its grain."""

from __future__ import annotations

from dataclasses import dataclass

from blockdsl.analysis.letters import Lettered
from blockdsl.cutting.curved import curved_with_allowance
from blockdsl.cutting.grain import GrainPlan, plan_grain
from blockdsl.cutting.sizes import with_allowance
from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.arc import Curved
from blockdsl.geometry.polygon import Point, bounding_box, translate
from blockdsl.geometry.recognise import directed
from blockdsl.model import BlockDesign


@dataclass(frozen=True, slots=True)
class Template:
    """One patch: sewing and cutting outline around the same origin (top left of the sewing outline's box).

    Where sides are curved, `curved` has both outlines as they are, and `sewing` and `cutting` have their corners alone.
    """

    label: str
    shape: str
    finished: tuple[Exact, Exact]
    sewing: Polygon
    cutting: Polygon
    grain: tuple[Exact, Exact]
    uses: tuple[tuple[str, int], ...]
    mirror_of: str | None
    curved: tuple[Curved, Curved] | None = None


def templates(design: BlockDesign, lettered: Lettered, grain: GrainPlan | None = None) -> tuple[Template, ...]:
    """The templates of a block, by letter."""
    uses: dict[str, dict[str, int]] = {}
    for patch, letter in zip(design.patches, lettered.letters, strict=True):
        of_letter = uses.setdefault(letter, {})
        of_letter[patch.fabric] = of_letter.get(patch.fabric, 0) + 1
    ways = (grain or plan_grain(design, lettered)).ways
    return tuple(
        _template(letter, design, lettered, tuple(uses[letter].items()), ways[letter].grain)
        for letter in lettered.first
    )


def _template(
    letter: str, design: BlockDesign, lettered: Lettered, uses: tuple[tuple[str, int], ...], grain: Point
) -> Template:
    shape, first = lettered.shapes[letter], lettered.first[letter]
    if letter in lettered.curved:
        return _curved_template(letter, design, lettered, uses)
    left, top, _, _ = bounding_box(first)
    sewing = translate(first, -left, -top)
    cutting = with_allowance(sewing, design.seam)
    mirror_of = lettered.mirror_of.get(letter)
    return Template(letter, shape.kind, shape.finished, sewing, cutting, directed(grain), uses, mirror_of)


def _curved_template(
    letter: str, design: BlockDesign, lettered: Lettered, uses: tuple[tuple[str, int], ...]
) -> Template:
    shape, first = lettered.shapes[letter], lettered.curved[letter]
    left, top, _, _ = bounding_box(first.corners)
    sewing = first.moved(-left, -top)
    cutting = curved_with_allowance(sewing, design.seam)
    outlines = (sewing.corners, cutting.corners)
    mirror_of = lettered.mirror_of.get(letter)
    return Template(letter, shape.kind, shape.finished, *outlines, shape.grain, uses, mirror_of, (sewing, cutting))
