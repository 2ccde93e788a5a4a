"""Templates: one for each different patch, with its allowance and its grain."""

from __future__ import annotations

from dataclasses import dataclass

from blockdsl.analysis.letters import Lettered
from blockdsl.cutting.sizes import with_allowance
from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.polygon import bounding_box, translate
from blockdsl.model import BlockDesign


@dataclass(frozen=True, slots=True)
class Template:
    """One patch: sewing and cutting outline around the same origin (top left of the sewing outline's box)."""

    label: str
    shape: str
    finished: tuple[Exact, Exact]
    sewing: Polygon
    cutting: Polygon
    grain: tuple[Exact, Exact]
    uses: tuple[tuple[str, int], ...]
    mirror_of: str | None


def templates(design: BlockDesign, lettered: Lettered) -> tuple[Template, ...]:
    """The templates of a block, by letter."""
    uses: dict[str, dict[str, int]] = {}
    for patch, letter in zip(design.patches, lettered.letters, strict=True):
        of_letter = uses.setdefault(letter, {})
        of_letter[patch.fabric] = of_letter.get(patch.fabric, 0) + 1
    return tuple(_template(letter, design, lettered, tuple(uses[letter].items())) for letter in lettered.first)


def _template(letter: str, design: BlockDesign, lettered: Lettered, uses: tuple[tuple[str, int], ...]) -> Template:
    shape, first = lettered.shapes[letter], lettered.first[letter]
    left, top, _, _ = bounding_box(first)
    sewing = translate(first, -left, -top)
    cutting = with_allowance(sewing, design.seam)
    mirror_of = lettered.mirror_of.get(letter)
    return Template(letter, shape.kind, shape.finished, sewing, cutting, shape.grain, uses, mirror_of)
