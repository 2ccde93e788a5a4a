"""Templates: one for each different patch, with its allowance and its grain."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Annotated

from blockdsl.analysis.letters import Lettered
from blockdsl.cutting.curved import curved_with_allowance
from blockdsl.cutting.grain import GrainPlan, plan_grain
from blockdsl.cutting.sizes import Extent, with_allowance
from blockdsl.geometry.arc import Bends, Curved
from blockdsl.geometry.polygon import Outline, Point, bounding_box, translate
from blockdsl.geometry.recognise import directed
from blockdsl.model import BlockDesign
from blockdsl.record import Count, Letter, Name, Record, says


class Template(Record, frozen=True, omit_defaults=True):
    """One patch at full size, its outlines around the same origin (top left of the sewing outline's box).

    Where sides are curved, the cutting outline has its points trimmed.
    """

    label: Letter
    shape: Name
    finished: Extent
    sewing: Outline
    cutting: Outline
    grain: Annotated[Extent, says("A step (x, y) along the straight grain.")]
    uses: Annotated[Mapping[str, Count], says("How many of which fabric.")]
    mirror_of: Annotated[Letter | None, says("The letter whose mirror image this is.")]
    sewing_bends: Bends = ()
    cutting_bends: Bends = ()

    @property
    def curved(self) -> tuple[Curved, Curved] | None:
        """Both outlines as they are, where sides are curved."""
        if not self.sewing_bends:
            return None
        return Curved(self.sewing, self.sewing_bends), Curved(self.cutting, self.cutting_bends)


def templates(design: BlockDesign, lettered: Lettered, grain: GrainPlan | None = None) -> tuple[Template, ...]:
    """The templates of a block, by letter."""
    uses: dict[str, dict[str, int]] = {}
    for patch, letter in zip(design.patches, lettered.letters, strict=True):
        of_letter = uses.setdefault(letter, {})
        of_letter[patch.fabric] = of_letter.get(patch.fabric, 0) + 1
    ways = (grain or plan_grain(design, lettered)).ways
    return tuple(_template(letter, design, lettered, uses[letter], ways[letter].grain) for letter in lettered.first)


def _template(letter: str, design: BlockDesign, lettered: Lettered, uses: Mapping[str, int], grain: Point) -> Template:
    shape, first = lettered.shapes[letter], lettered.first[letter]
    if letter in lettered.curved:
        return _curved_template(letter, design, lettered, uses)
    left, top, _, _ = bounding_box(first)
    sewing = translate(first, -left, -top)
    cutting = with_allowance(sewing, design.seam)
    mirror_of = lettered.mirror_of.get(letter)
    return Template(letter, shape.kind, shape.finished, sewing, cutting, directed(grain), uses, mirror_of)


def _curved_template(letter: str, design: BlockDesign, lettered: Lettered, uses: Mapping[str, int]) -> Template:
    shape, first = lettered.shapes[letter], lettered.curved[letter]
    left, top, _, _ = bounding_box(first.corners)
    sewing = first.moved(-left, -top)
    cutting = curved_with_allowance(sewing, design.seam)
    outlines = (sewing.corners, cutting.corners)
    mirror_of = lettered.mirror_of.get(letter)
    bends = (sewing.bends, cutting.bends)
    return Template(letter, shape.kind, shape.finished, *outlines, shape.grain, uses, mirror_of, *bends)
