"""The facts of steps on foundation papers: what each paper takes, and what the work on it looks like."""

from __future__ import annotations

from msgspec.structs import replace

from blockdsl.cutting.foundation import RoomyPiece, laid_outline
from blockdsl.facts.blockrecord import BlockRecord, FabricFacts
from blockdsl.facts.foundationfacts import PaperFacts, PaperPatch
from blockdsl.facts.stepfacts import JoinFacts, StepFacts, join_of
from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.offset import trim_points
from blockdsl.geometry.polygon import bounding_box
from blockdsl.sewing.steps import MakingStep
from blockdsl.sewing.techniques.foundation import PaperArea, section_lesson
from blockdsl.sewing.techniques.scene import LessonStep


def on_papers(made: StepFacts, step: MakingStep, block: BlockRecord) -> StepFacts:
    """A step of a section with its pieces and pictures, or one that joins sections."""
    place = next(place for place, found in enumerate(block.foundations) if found.unit == step.unit)
    made = replace(made, sections=step.sections, foundation=place)
    if len(step.sections) > 1:
        return made
    paper = next(paper for paper in block.foundations[place].papers if paper.letter == step.sections[0])
    fabrics = paper_fabrics(paper, block)
    return replace(made, joins=_pieces(paper, made.count), lesson=paper_lesson(paper, fabrics, block), fabrics=fabrics)


def _pieces(paper: PaperFacts, count: int) -> tuple[JoinFacts, ...]:
    """What all copies of a paper take; half of a square is a triangle, given by the side of the square."""
    counts: dict[tuple[str, str, str, tuple[Fraction, ...]], int] = {}
    for patch in paper.patches:
        square = patch.cut[0] == patch.cut[1]
        piece = "triangle" if patch.subcut == "once" else "square" if square else "rectangle"
        key = patch.label, patch.fabric, piece, patch.cut[:1] if square else patch.cut
        counts[key] = counts.get(key, 0) + count
    return tuple(join_of(name, many, 0, fabric, piece, size) for (name, fabric, piece, size), many in counts.items())


def paper_fabrics(paper: PaperFacts, block: BlockRecord) -> tuple[FabricFacts, ...]:
    """The fabrics of a section, each once, in the order of its areas."""
    known = {fabric.name: fabric for fabric in block.fabrics}
    return tuple(known[name] for name in dict.fromkeys(patch.fabric for patch in paper.patches))


def paper_lesson(paper: PaperFacts, fabrics: tuple[FabricFacts, ...], block: BlockRecord) -> tuple[LessonStep, ...]:
    """The work on a section in pictures, and what a lesson says of it."""
    roles = {fabric.name: role for role, fabric in enumerate(fabrics)}
    areas = [_area(patch, roles[patch.fabric], block.seam) for patch in paper.patches]
    outline = trim_points(paper.cutting, paper.sewing, block.seam)
    return section_lesson(areas, outline, block.seam, _unfinished(paper, block))


def _unfinished(paper: PaperFacts, block: BlockRecord) -> tuple[Exact, Exact] | None:
    """What a section measures before it is joined, of a rectangle along the unit's sides."""
    left, top, right, bottom = bounding_box(paper.sewing)
    if any(corner.x not in (left, right) or corner.y not in (top, bottom) for corner in paper.sewing):
        return None
    return right - left + 2 * block.seam, bottom - top + 2 * block.seam


def _area(patch: PaperPatch, role: int, seam: Fraction) -> PaperArea:
    piece = RoomyPiece(patch.cut, patch.cut, patch.subcut, patch.edge)
    return PaperArea(
        patch.number, role, patch.outline, patch.seam, laid_outline(patch.outline, patch.seam, piece, seam)
    )
