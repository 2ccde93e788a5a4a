"""The facts of steps on foundation papers: what each paper takes, and what the work on it looks like."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from blockdsl.cutting.foundation import RoomyPiece, laid_outline
from blockdsl.facts.blockfacts import BlockFacts, FabricFacts
from blockdsl.facts.foundationfacts import PaperFacts, PaperPatch
from blockdsl.facts.stepfacts import JoinFacts, StepFacts
from blockdsl.geometry.offset import trim_points
from blockdsl.sewing.steps import MakingStep
from blockdsl.sewing.techniques.foundation import PaperArea, section_lesson
from blockdsl.sewing.techniques.scene import Step


def on_papers(made: StepFacts, step: MakingStep, block: BlockFacts) -> StepFacts:
    """A step of a section with its pieces and pictures, or one that joins sections."""
    place = next(place for place, found in enumerate(block.foundations) if found.unit == step.unit)
    made = replace(made, sections=step.sections, foundation=place)
    if len(step.sections) > 1:
        return made
    paper = next(paper for paper in block.foundations[place].papers if paper.letter == step.sections[0])
    fabrics = _fabrics(paper, block)
    return replace(made, joins=_pieces(paper, made.count), lesson=_lesson(paper, fabrics, block), fabrics=fabrics)


def _pieces(paper: PaperFacts, count: int) -> tuple[JoinFacts, ...]:
    """What all copies of a paper take; half of a square is a triangle, told by the side of the square."""
    counts: dict[tuple[str, str, str, tuple[Fraction, ...]], int] = {}
    for patch in paper.patches:
        square = patch.cut[0] == patch.cut[1]
        piece = "triangle" if patch.subcut == "once" else "square" if square else "rectangle"
        key = patch.label, patch.fabric, piece, patch.cut[:1] if square else patch.cut
        counts[key] = counts.get(key, 0) + count
    return tuple(JoinFacts(name, many, 0, fabric, piece, size) for (name, fabric, piece, size), many in counts.items())


def _fabrics(paper: PaperFacts, block: BlockFacts) -> tuple[FabricFacts, ...]:
    known = {fabric.name: fabric for fabric in block.fabrics}
    return tuple(known[name] for name in dict.fromkeys(patch.fabric for patch in paper.patches))


def _lesson(paper: PaperFacts, fabrics: tuple[FabricFacts, ...], block: BlockFacts) -> tuple[Step, ...]:
    roles = {fabric.name: role for role, fabric in enumerate(fabrics)}
    areas = [_area(patch, roles[patch.fabric], block.seam) for patch in paper.patches]
    outline = trim_points(paper.cutting, paper.sewing, block.seam)
    return section_lesson(areas, outline, block.seam)


def _area(patch: PaperPatch, role: int, seam: Fraction) -> PaperArea:
    piece = RoomyPiece(patch.cut, patch.cut, patch.subcut, patch.edge)
    return PaperArea(
        patch.number, role, patch.outline, patch.seam, laid_outline(patch.outline, patch.seam, piece, seam)
    )
