"""The steps of units on foundation papers in words: a section sewn to its paper, sections joined, papers taken out."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import Final

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.foundationfacts import PaperFacts, PaperJoin, PaperPatch, edge_on
from blockdsl.facts.stepfacts import LessonStep, StepFacts, StepSeam
from blockdsl.geometry import Exact, Point, sign, square_root
from blockdsl.geometry.offset import trim_points
from blockdsl.geometry.polygon import cross, dot, edges, step
from blockdsl.wording.grammar import listed
from blockdsl.wording.lengths import figure, length_words, size_words
from blockdsl.wording.messages import Messages
from blockdsl.wording.steptext import StepPart

MOST_NAMED: Final = 6
"""Pieces of a paper that are taken, and added, one by one in words; of more the paper's table says which."""


def paper_parts(step: StepFacts, block: BlockFacts, words: Messages, taught: dict[str, int]) -> tuple[StepPart, ...]:
    """The parts of a step on papers. `taught` remembers where sewing on paper was explained in full."""
    if len(step.sections) > 1:
        return _join_parts(step, block, words)
    paper = _paper(step, block)
    measure = _measure(step, paper, block, words)
    teaching = taught.get("areas")
    if teaching is None or (len(paper.patches) > 1 and "two areas" not in taught):
        taught["areas"] = step.number
        if len(paper.patches) > 1:
            taught["two areas"] = step.number
        return _taught(step, paper, block, words, measure)
    number = taught.get("two areas", teaching)
    return (
        StepPart((_take(step, paper, block, words, with_paper=True), *_again(paper, number, block, words)), measure),
    )


def without_papers(step: StepFacts, block: BlockFacts, words: Messages) -> str:
    """What is said of the papers at the end of a block's last step; nothing where there are none."""
    if not block.foundations or step.number != len(block.steps) - (1 if block.appliques else 0):
        return ""
    return words("papers-stay" if step.sections else "papers-out")


def _paper(step: StepFacts, block: BlockFacts) -> PaperFacts:
    assert step.foundation is not None  # noqa: S101  a step with sections has a foundation
    return next(paper for paper in block.foundations[step.foundation].papers if paper.letter == step.sections[0])


# --- a section -------------------------------------------------------------------------------------


def _taught(
    step: StepFacts, paper: PaperFacts, block: BlockFacts, words: Messages, measure: str
) -> tuple[StepPart, ...]:
    seam = length_words(block.seam, block.unit, words)
    first, *others = paper.patches
    said: list[tuple[str, list[str]]] = [
        ("print", [words("papers-print", count=step.count, section=paper.letter)]),
        ("first", [_take(step, paper, block, words), words("papers-first", area=first.number, seam=seam)]),
    ]
    if others:
        second, *rest = others
        edge = _edge(second, words)
        said.append(("sew", [words("papers-second", area=second.number, first=first.number, edge=edge, seam=seam)]))
        said.append(("press", [words("papers-sew", area=second.number, seam=seam)]))
        if rest:
            said.append(("go-on", _added(rest, second, paper, words)))
    said.append(("cut", [words("papers-cut")]))
    pictures = {
        each.key.removeprefix("lesson-papers-"): place
        for place, each in enumerate(step.lesson)
        if isinstance(each, LessonStep)
    }
    last = said[-1]
    return tuple(StepPart(tuple(each[1]), measure if each is last else "", "", pictures[each[0]]) for each in said)


def _take(step: StepFacts, paper: PaperFacts, block: BlockFacts, words: Messages, *, with_paper: bool = False) -> str:
    labels = {fabric.name: fabric.label for fabric in block.fabrics}
    taken = [words("papers-paper", section=paper.letter)] if with_paper else []
    if len(paper.patches) > MOST_NAMED:
        taken.append(words("papers-pieces-many", first=paper.patches[0].number, last=paper.patches[-1].number))
    else:
        taken += [words("papers-piece", area=each.number, fabric=labels[each.fabric]) for each in paper.patches]
    return words("step-take-each" if step.count > 1 else "step-take", list=listed(taken, words))


def _added(rest: Sequence[PaperPatch], second: PaperPatch, paper: PaperFacts, words: Messages) -> list[str]:
    """What is said of the third area and those after it; an edge is named where it is another than before."""
    if len(paper.patches) > MOST_NAMED:
        return [words("papers-add-many", first=rest[0].number, last=rest[-1].number)]
    said = []
    for before, patch in pairwise((second, *rest)):
        key = "papers-add" if _lies_like(patch, before) else "papers-add-edge"
        said.append(words(key, area=patch.number, before=_neighbour(patch, paper), edge=_edge(patch, words)))
    return said


def _again(paper: PaperFacts, number: int, block: BlockFacts, words: Messages) -> list[str]:
    """A section sewn as in an earlier step."""
    first, *others = paper.patches
    if not others:
        seam = length_words(block.seam, block.unit, words)
        return [words("papers-as-in-one", number=number, area=first.number, seam=seam)]
    if len(paper.patches) > MOST_NAMED:
        rest = words("papers-then-many", first=others[0].number, last=others[-1].number)
        return [words("papers-as-in", number=number, first=first.number, rest=rest)]
    told = []
    for patch in others:
        # Taught with a long edge; another edge is named.
        key = "papers-then" if patch.edge != "short" else "papers-then-edge"
        told.append(words(key, area=patch.number, before=_neighbour(patch, paper), edge=_edge(patch, words)))
    return [words("papers-as-in", number=number, first=first.number, rest=_in_turn(told, words))]


def _in_turn(told: Sequence[str], words: Messages) -> str:
    """What is added one after the other."""
    first, *rest = told
    for each in rest:
        first = words("papers-then-next", before=first, next=each)
    return first


def _lies_like(patch: PaperPatch, before: PaperPatch) -> bool:
    """Whether the same words say which edge lies along the line; any edge of a square is as long as the other."""
    return patch.edge == before.edge or "any" in (patch.edge, before.edge)


def _edge(patch: PaperPatch, words: Messages) -> str:
    return words("papers-edge-cut" if patch.subcut == "once" else f"papers-edge-{patch.edge or 'any'}")


def _neighbour(patch: PaperPatch, paper: PaperFacts) -> str:
    """The area sewn before whose edge on the patch's seam is the longest, the first of equals: it names the line."""
    assert patch.seam is not None  # noqa: S101  every area but the first has one
    best, longest = "", None
    for other in paper.patches:
        if other is patch:
            break
        edge = edge_on(patch.seam, other.outline)
        shared = None if edge is None else dot(step(*edge), step(*edge))
        if shared is not None and (longest is None or shared > longest):
            best, longest = other.number, shared
    return best


def section_size(step: StepFacts, block: BlockFacts, words: Messages) -> str:
    """About how wide and how high a section is that is no rectangle, finished."""
    width, height = (figure(side, block.unit, words) for side in step.hands[0].extent)
    return words("size-about", width=width, height=height, unit=block.unit)


# --- sizes -----------------------------------------------------------------------------------------


def _measure(step: StepFacts, paper: PaperFacts, block: BlockFacts, words: Messages) -> str:
    """The size of a rectangle; of any other section how long its first marked edge is."""
    if step.unfinished:
        return size_words(step.unfinished, block.unit, words)
    assert step.foundation is not None  # noqa: S101  a step with sections has a foundation
    for join in block.foundations[step.foundation].joins:
        if paper.letter in (*join.before, *join.after):
            length = edge_beyond(paper, join, block)
            if length is not None:
                said = length_words(length, block.unit, words)
                return words("papers-along", length=said, join=join.name)
    return ""


def edge_beyond(paper: PaperFacts, join: PaperJoin, block: BlockFacts) -> Exact | None:
    """How long the edge that a section is cut to is along a join; None where it has none there."""
    start, end = join.seam
    way = step(start, end)
    outline = trim_points(paper.cutting, paper.sewing, block.seam)
    if edge_on(join.seam, paper.sewing) is None:
        return None
    found = [(a, b) for a, b in edges(outline) if not sign(cross(way, step(a, b))) and _away(a, join) == block.seam]
    lengths: list[Exact] = [square_root(dot(step(a, b), step(a, b))) for a, b in found]
    return max(lengths) if lengths else None


def _away(point: Point, join: PaperJoin) -> Exact:
    """How far a point lies from the line of a join."""
    start, end = join.seam
    way = step(start, end)
    far = cross(way, step(start, point)) / square_root(dot(way, way))
    return -far if sign(far) < 0 else far


# --- joining ---------------------------------------------------------------------------------------


def _join_parts(step: StepFacts, block: BlockFacts, words: Messages) -> tuple[StepPart, ...]:
    assert step.foundation is not None  # noqa: S101  a step with sections has a foundation
    joins = block.foundations[step.foundation].joins
    taken = [f"1 {words('papers-section', letters=letter)}" for letter in step.sections]
    take = words("step-take-each" if step.count > 1 else "step-take", list=listed(taken, words))
    last = len(joins) - 1
    return tuple(
        StepPart(
            (*((take,) if place == 0 else ()), _join(join, stage.seams[0], words)),
            size_words(step.unfinished, block.unit, words) if step.unfinished and place == last else "",
        )
        for place, (join, stage) in enumerate(zip(joins, step.hands[0].stages, strict=True))
    )


def _join(join: PaperJoin, seam: StepSeam, words: Messages) -> str:
    return words(
        "papers-join",
        pin="plain" if not seam.meetings else "match" if seam.unnested else "nest",
        before=_run(join.before, words, "papers-sections"),
        after=_run(join.after, words, "papers-sections"),
        join=join.name,
        marks=words("papers-marks-dot" if join.is_level else "papers-marks-top"),
        press=_pressed(join, words),
    )


def _pressed(join: PaperJoin, words: Messages) -> str:
    """Toward the sections that come before; said from the other side where that is a single one."""
    if len(join.before) > 1 and len(join.after) == 1:
        return words("papers-press-away", section=_run(join.after, words, ""))
    return words("papers-press-toward", section=_run(join.before, words, "papers-sections-plain"))


def _run(letters: Sequence[str], words: Messages, several: str) -> str:
    if len(letters) == 1:
        return words("papers-section", letters=letters[0])
    return words(several, letters=listed(letters, words))
