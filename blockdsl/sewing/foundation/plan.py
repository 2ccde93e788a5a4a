"""A unit as papers: its sections by letter, their patches by number, and the joins between them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.geometry import Point, Polygon, sign
from blockdsl.geometry.polygon import cross, edges, step
from blockdsl.model import BlockDesign
from blockdsl.sewing.classes import UnitGroup
from blockdsl.sewing.foundation.peel import Added
from blockdsl.sewing.foundation.search import SectionSearch, SplitLine
from blockdsl.sewing.order.net import Net, make_net
from blockdsl.shapes import SHAPES

MOST_PATCHES: Final = 200
"""Patches of a unit that is sewn to papers; more are refused."""


class SewnPatch(Struct, frozen=True):
    """A patch in its turn: which of the unit's it is, from 0, and the seam from end to end; none for the first."""

    index: int
    seam: tuple[Point, Point] | None


class PaperSection(Struct, frozen=True):
    """What one paper holds: a convex outline, clockwise, and its patches in the order of sewing."""

    letter: str
    outline: Polygon
    patches: tuple[SewnPatch, ...]


class SectionJoin(Struct, frozen=True):
    """Two runs of sections, by their letters, joined by one straight seam from end to end.

    `seam` runs from its upper end, of a level seam from its left end.
    """

    before: tuple[str, ...]
    after: tuple[str, ...]
    seam: tuple[Point, Point]


class FoundationPlan(Struct, frozen=True):
    """A unit on papers: its sections, and the joins between them in order."""

    group: UnitGroup
    sections: tuple[PaperSection, ...]
    joins: tuple[SectionJoin, ...]


class NoFoundation(Struct, frozen=True):
    """Why a unit cannot be sewn to papers: patches (numbers within it) that no straight seam parts, or too many."""

    stuck: tuple[int, ...]
    too_many: bool = False


def plan_foundation(group: UnitGroup, design: BlockDesign) -> FoundationPlan | NoFoundation:
    """The papers of a unit as drawn, before turning.

    Shape:  sections in the order in which they are joined; sections are as few as straight seams allow, unless the
            unit has so many patches that not all ways can be looked through.
    Errors: NoFoundation when some patches are not parted by a straight line, or the unit has more than 200 patches.
    """
    if len(group.picture) > MOST_PATCHES:
        return NoFoundation((), too_many=True)
    # The box of a unit may have roots in it, which no block has; the net takes both.
    drawn = replace(design, patches=group.picture, units=(), width=group.width, height=group.height)
    net = make_net(drawn)
    shape = SHAPES[group.filling.shape] if group.filling else None
    search = SectionSearch(net, in_rounds=shape is not None and shape.rounds is not None)
    whole = search.fewest(range(len(group.picture)))
    if whole is None:
        return NoFoundation(search.stuck)
    leaves = list(_leaves(whole))
    letters = {leaf.patches: letter_of(place) for place, leaf in enumerate(leaves)}
    sections = tuple(_section(letters[leaf.patches], leaf.order, net) for leaf in leaves)
    outlines = {section.letter: section.outline for section in sections}
    joins = tuple(
        SectionJoin(before, after, _seam_between(*([outlines[letter] for letter in run] for run in (before, after))))
        for before, after in _joins(whole, letters)
    )
    return FoundationPlan(group, sections, joins)


def letter_on(plans: Sequence[FoundationPlan]) -> tuple[FoundationPlan, ...]:
    """The plans of a block with their letters going on from one to the next, so that no two papers are called alike."""
    lettered = []
    done = 0
    for plan in plans:
        letters = {section.letter: letter_of(done + place) for place, section in enumerate(plan.sections)}
        done += len(plan.sections)
        sections = tuple(replace(section, letter=letters[section.letter]) for section in plan.sections)
        joins = tuple(
            replace(
                join,
                before=tuple(letters[letter] for letter in join.before),
                after=tuple(letters[letter] for letter in join.after),
            )
            for join in plan.joins
        )
        lettered.append(replace(plan, sections=sections, joins=joins))
    return tuple(lettered)


def letter_of(place: int) -> str:
    """A, B … Z, AA, AB …: the letter of a section by its place from 0."""
    letters = ""
    place += 1
    while place:
        place, rest = divmod(place - 1, 26)
        letters = chr(ord("A") + rest) + letters
    return letters


def _leaves(cut: SplitLine) -> Iterator[SplitLine]:
    if not cut.parts:
        yield cut
    for part in cut.parts:
        yield from _leaves(part)


def _joins(cut: SplitLine, letters: dict[tuple[int, ...], str]) -> Iterator[tuple[tuple[str, ...], tuple[str, ...]]]:
    """What is inside is joined first; then the parts from the first to the last."""
    for part in cut.parts:
        yield from _joins(part, letters)
    before: tuple[str, ...] = ()
    for part in cut.parts:
        own = tuple(letters[leaf.patches] for leaf in _leaves(part))
        if before:
            yield before, own
        before += own


def _seam_between(before: Sequence[Polygon], after: Sequence[Polygon]) -> tuple[Point, Point]:
    """The line between two runs of sections, from its upper (or left) end.

    The first lie on one side of it, the second on the other, and both have edges on it.
    """
    corners, others = ([corner for outline in run for corner in outline] for run in (before, after))
    for start, end in (edge for outline in before for edge in edges(outline)):
        way = step(start, end)
        sides = [sign(cross(way, step(start, corner))) for corner in corners]
        beyond = [sign(cross(way, step(start, corner))) for corner in others]
        # Outlines run clockwise: a section lies at the right hand of its own edges.
        if min(sides) >= 0 and max(beyond) <= 0 and beyond.count(0) > 1:
            on_line = [corner for corner, side in zip(corners, sides, strict=True) if not side]
            on_line.sort(key=lambda corner: (corner.y, corner.x))
            return on_line[0], on_line[-1]
    raise ValueError("no straight line lies between the sections")


def _section(letter: str, order: Sequence[Added], net: Net) -> PaperSection:
    corners = {net.points[corner] for added in order for corner in net.rings[added.patch]}
    return PaperSection(letter, _hull(corners), tuple(SewnPatch(added.patch, _ends(added, net)) for added in order))


def _ends(added: Added, net: Net) -> tuple[Point, Point] | None:
    if not added.seam:
        return None
    return net.points[net.start[added.seam[0]]], net.points[net.end[added.seam[-1]]]


def _hull(corners: set[Point]) -> Polygon:
    """The convex outline round the corners, clockwise as seen, without straight corners (Andrew's monotone chain)."""
    ordered = sorted(corners)

    def chain(points: Sequence[Point]) -> list[Point]:
        kept: list[Point] = []
        for point in points:
            while len(kept) > 1 and cross(step(kept[-2], kept[-1]), step(kept[-1], point)) <= 0:
                kept.pop()
            kept.append(point)
        return kept[:-1]

    return (*chain(ordered), *chain(ordered[::-1]))
